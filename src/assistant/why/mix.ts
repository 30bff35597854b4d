import type { Correction, Mix, MixFigure, MixLimits } from '#core';
import { type Line, type Say, say } from '../say.ts';

const MOST_SOURCES = 4;

/** The figures behind a mix: what went in, what was taken for it, and where that stands written. */
function partLines(mix: Mix): Line[] {
  return mix.materials.slice(0, 5).map(({ material, kg }) => partSay(mix, material, kg));
}

/** What a mix comes to: water, C:N, density, and air by two published forms and with all spread. */
function comesTo({ moisturePct, cn, bulkKgPerM3, freeAirPct, freeAirLikelyPct }: Mix): Line[] {
  const lines: Line[] = [];
  if (moisturePct) {
    lines.push(
      say('why-mix-water', {
        pct: { pct: moisturePct.typical },
        range: { pctRange: [moisturePct.low, moisturePct.high] },
        cn: { number: cn?.typical ?? 0, digits: 0 },
        cnRange: { pctRange: [cn?.low ?? 0, cn?.high ?? 0] },
        hasCn: { text: cn ? 'yes' : 'no' },
      }),
    );
  }
  if (bulkKgPerM3 && freeAirPct && freeAirLikelyPct) {
    lines.push(
      say('why-mix-density', {
        density: { kgPerM3Range: [bulkKgPerM3.low, bulkKgPerM3.high] },
        air: { pctRange: [freeAirPct.low, freeAirPct.high] },
        likely: { pctRange: [freeAirLikelyPct.low, freeAirLikelyPct.high] },
      }),
    );
  }
  return lines;
}

function takenLines(why: Mix['why']): Line[] {
  const lines = why.assumed.map((assumed) => {
    const [code = '', of = ''] = assumed.split(':');
    return say(`mix-taken-${code}`, { material: { material: of } });
  });
  const sources = why.sources.slice(0, MOST_SOURCES);
  return [...lines, ...sources.map((text) => say('why-source', { text: { cite: text } }))];
}

/** What is aimed at: the site's recipe, or the window and floor in force. */
export function aimSay(limits: MixLimits): Say {
  const { low, high, never } = limits.moisturePct;
  return limits.recipe
    ? say('why-mix-recipe', {
        chips: { number: limits.recipe.chips },
        food: { number: limits.recipe.food },
        by: { term: limits.recipe.by, of: 'by' },
      })
    : say('why-mix-aim', {
        range: { pctRange: [low, high] },
        never: { pct: never },
        cn: { number: limits.cnLow, digits: 0 },
        top: { number: limits.cnHigh ?? 0, digits: 0 },
        hasTop: { text: limits.cnHigh === null ? 'no' : 'yes' },
        floor: { number: limits.structurePerFeed, digits: 1 },
      });
}

/**
 * How an advice on the mix came about: the figures, what they come to, what is aimed at and which limit asked for
 * the most, the formulas in words, what was assumed, and the sources.
 */
export function whyCorrection(correction: Correction, limits: MixLimits): Line[] {
  const { before, limiting } = correction;
  return [
    ...partLines(before),
    say('why-formula', { formula: { term: before.why.formula, of: 'formula' } }),
    ...comesTo(before),
    aimSay(limits),
    ...(limiting ? [say('why-mix-limiting', { limit: { term: limiting, of: 'limit' } })] : []),
    say('why-formula', { formula: { term: correction.why.formula, of: 'formula' } }),
    ...takenLines(before.why),
  ];
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
