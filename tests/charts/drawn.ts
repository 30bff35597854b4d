/** What an SVG holds, in the numbers of its own axes: read from the drawing alone, not from what it was drawn from. */
export function drawnIn(svg: string) {
  const texts = [...svg.matchAll(/<text([^>]*)>([^<]*)<\/text>/g)].map(([, how, text]) => ({
    text: unescaped(text!),
    anchor: /text-anchor="(\w+)"/.exec(how!)?.[1] ?? 'start',
    at: numbers(/translate\(([^)]*)\)/.exec(how!)?.[1] ?? `${attribute(how!, 'x')} ${attribute(how!, 'y')}`),
  }));
  const shapes = [...svg.matchAll(/<(path|polygon)([^>]*)>/g)].map(([, , how]) => how!);
  const inChart = shapes.filter((how) => how.includes('ecmeta_ssr_type="chart"'));

  /** Pixels into the values of an axis, from where two of its texts stand. */
  function scale(ticks: { at: number; text: string }[], axis: 'x' | 'y'): (pixel: number) => number {
    const anchor = axis === 'x' ? 'middle' : 'end';
    const i = axis === 'x' ? 0 : 1;
    const found = ticks.flatMap(({ at, text }) => {
      const label = texts.find((each) => each.text === text && each.anchor === anchor);
      return label ? [{ at, pixel: label.at[i]! }] : [];
    });
    if (found.length !== ticks.length)
      throw new Error(`${found.length} of ${ticks.length} ${axis} labels drawn`);
    const [a, b] = [found[0]!, found.at(-1)!];
    return (pixel) => a.at + ((pixel - a.pixel) / (b.pixel - a.pixel)) * (b.at - a.at);
  }

  return {
    texts: texts.map(({ text }) => text),
    scale,
    /** Where marks of a shape and colour stand, in pixels, left to right. */
    marks: (shape: keyof typeof SHAPES, colour: string): [number, number][] =>
      inChart
        .filter(
          (how) =>
            SHAPES[shape].test(attribute(how, 'd') ?? '') &&
            (attribute(how, 'stroke') ?? attribute(how, 'fill')) === colour,
        )
        .flatMap((how) => {
          const matrix = /matrix\(([^)]*)\)/.exec(how)?.[1];
          return matrix ? [numbers(matrix).slice(4) as [number, number]] : [];
        })
        .sort((a, b) => a[0] - b[0]),
    /** Upright bars of a colour: middle, foot and top in pixels. */
    bars: (colour: string) =>
      inChart
        .filter(
          (how) =>
            attribute(how, 'fill') === colour &&
            /^M[\d.-]+ [\d.-]+l[\d.]+ 0l0 -/.test(attribute(how, 'd') ?? ''),
        )
        .map((how) => {
          const [left, foot, width, , , height] = numbers(attribute(how, 'd')!.replaceAll(/[a-z]/gi, ' '));
          return { middle: left! + width! / 2, foot: foot!, top: foot! + height! };
        }),
    /** Lines with a dash: their ends in pixels. */
    dashed: (dash: string): number[][] =>
      inChart
        .filter((how) => attribute(how, 'stroke-dasharray') === dash)
        .map((how) => numbers(attribute(how, 'd')!.replaceAll(/[a-z]/gi, ' '))),
    /** The corners of filled areas. */
    areas: inChart.flatMap((how) => {
      const points = numbers(attribute(how, 'points') ?? '');
      return points.length > 0
        ? [Array.from({ length: points.length / 2 }, (_, i) => [points[2 * i]!, points[2 * i + 1]!])]
        : [];
    }),
    paths: inChart.map((how) => ({ d: attribute(how, 'd') ?? '', fill: attribute(how, 'fill') })),
  };
}

const SHAPES = {
  circle: /^M1 0A1 1/,
  square: /^M-1 -1l2 0l0 2/,
  triangle: /^M0 -1L1 1/,
  diamond: /^M0 -1L1 0/,
  pin: /^M-0\.5/,
};

const attribute = (how: string, name: string): string | null =>
  new RegExp(`(?:^|\\s)${name}="([^"]*)"`).exec(how)?.[1] ?? null;

const numbers = (text: string): number[] =>
  [...text.matchAll(/-?[\d.]+(?:e-?\d+)?/g)].map(([each]) => Number(each));

const unescaped = (text: string): string =>
  text
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&amp;', '&');
