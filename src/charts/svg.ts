import { createRequire } from 'node:module';
import type { EChartsOption } from 'echarts';
import type { z } from 'zod';
import { HeatData, MixData, WeekData, YearData } from './data.ts';
import { heatChart } from './heat.ts';
import { mixChart } from './mix.ts';
import { PAPER, WIDTH, widthOf } from './style.ts';
import { weekChart } from './week.ts';
import { yearChart } from './year.ts';

type Drawn = { option: object; height: number };

const drawer =
  <T>(schema: z.ZodType<T>, chart: (data: T) => Drawn) =>
  (data: unknown): Drawn =>
    chart(schema.parse(data));

/** What can be drawn, by the name that the outbox keeps. */
const DRAWERS = {
  heat: drawer(HeatData, heatChart),
  week: drawer(WeekData, weekChart),
  year: drawer(YearData, yearChart),
  mix: drawer(MixData, mixChart),
};
export type DrawName = keyof typeof DRAWERS;

export const isDrawn = (draw: string): draw is DrawName => Object.hasOwn(DRAWERS, draw);

let loaded: typeof import('echarts') | null = null;

/** The library is heavy and most messages need no picture: it is read when the first one is drawn. */
function library(): typeof import('echarts') {
  if (!loaded) {
    loaded = createRequire(import.meta.url)('echarts') as typeof import('echarts');
    // Without a browser there is nothing that measures a text; the library's own guess is for another font.
    loaded.setPlatformAPI({
      measureText: (text, font) =>
        ({
          width: widthOf(
            text,
            Number.parseFloat(/(\d+)px/.exec(font ?? '')?.[1] ?? '12'),
            /bold/.test(font ?? ''),
          ),
        }) as never,
    });
  }
  return loaded;
}

/** Signs that no picture file may hold: a name somebody typed must not make the whole of it unreadable. */
const FORBIDDEN =
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f\u200e\u200f\u202a-\u202e\u2066-\u2069\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

function cleaned(data: unknown): unknown {
  if (typeof data === 'string') return data.replace(FORBIDDEN, '');
  if (Array.isArray(data)) return data.map(cleaned);
  if (typeof data !== 'object' || data === null) return data;
  return Object.fromEntries(Object.entries(data).map(([key, value]) => [key, cleaned(value)]));
}

/** The drawing of a picture as SVG. Throws on a name that nothing draws, and on data of another shape. */
export function drawSvg(spec: { draw: string; data: unknown }): string {
  if (!isDrawn(spec.draw)) throw new RangeError(`nothing draws "${spec.draw}"`);
  const { option, height } = DRAWERS[spec.draw](cleaned(spec.data));
  const chart = library().init(null, null, {
    renderer: 'svg',
    ssr: true,
    width: WIDTH,
    height: Math.ceil(height),
  });
  try {
    chart.setOption({
      animation: false,
      backgroundColor: PAPER,
      useUTC: true,
      aria: { enabled: false, decal: { show: true } },
      ...option,
    } as EChartsOption);
    return chart.renderToSVGString();
  } finally {
    chart.dispose();
  }
}
