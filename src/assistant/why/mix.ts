import type { Mix, MixFigure } from '#core';
import { type Line, type Say, say } from '../say.ts';

const MOST_SOURCES = 4;

/** The figures behind a mix: what went in, what was taken for it, and where that stands written. */
export function whyMix(mix: Mix): Line[] {
  const lines: Line[] = mix.materials.slice(0, 5).map(({ material, kg }) => partSay(mix, material, kg));
  lines.push(say('why-formula', { formula: { term: mix.why.formula, of: 'formula' } }));
  if (mix.bulkKgPerM3 && mix.freeAirLikelyPct) {
    lines.push(
      say('why-mix-density', {
        density: { kgPerM3Range: [mix.bulkKgPerM3.low, mix.bulkKgPerM3.high] },
        air: { pctRange: [mix.freeAirLikelyPct.low, mix.freeAirLikelyPct.high] },
      }),
    );
  }
  for (const assumed of mix.why.assumed) {
    const [code = '', of = ''] = assumed.split(':');
    lines.push(say(`mix-taken-${code}`, { material: { material: of } }));
  }
  for (const source of mix.why.sources.slice(0, MOST_SOURCES))
    lines.push(say('why-source', { text: { text: source } }));
  return lines;
}

/** One material with the figures that were taken for it, and how firm they are. */
function partSay({ why }: Mix, material: string, kg: number): Say {
  const figure = (name: string): MixFigure | undefined =>
    why.figures.find((each) => each.name === `${material} ${name}`);
  const moisture = figure('moisture');
  const value = (one: MixFigure | undefined): number => (typeof one?.value === 'number' ? one.value : 0);
  return say('why-mix-part', {
    material: { material },
    kg: { kg, digits: 1 },
    pct: { pct: value(moisture) },
    range: { pctRange: [moisture?.low ?? value(moisture), moisture?.high ?? value(moisture)] },
    carbon: { number: value(figure('carbon')), digits: 1 },
    nitrogen: { number: value(figure('nitrogen')), digits: 2 },
    from: { term: moisture?.from ?? 'memory', of: 'figure' },
  });
}
