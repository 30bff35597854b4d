import {
  type Addition,
  type Correction,
  correctionFor,
  ingredientFor,
  type Mix,
  type MixPart,
  mixLimits,
  mixPartsOf,
  type OwnFigures,
  ownFiguresAt,
  type Picture,
  settingAt,
} from '#core';
import type { BookRecordOf, Entry, Recipe } from '#records';
import type { Draft } from '../draft.ts';
import { containersOf } from '../reading-context.ts';
import { type Arg, type Line, type Say, say } from '../say.ts';

/** Loads of one day that were put together: what today's mix is made of. */
export function loadsOf(picture: Picture, localDate: string): MixPart[] {
  return mixPartsOf(
    picture.mixLoads.filter((load) => load.localDate === localDate),
    (material) => ownFigures(picture, material, localDate),
  );
}

export const ownFigures = (picture: Picture, material: string, localDate: string): OwnFigures | null =>
  ownFiguresAt(picture.settings, material, localDate);

/** What chips are tipped in here: the site's own barrow or bucket, else a barrow as most have it. */
const USUAL_BARROW = { container: 'barrow', litres: 85 };
const WATER_BUCKET = 10;

export function additionsOf(picture: Picture, localDate: string): Addition[] {
  const containers = containersOf(picture, localDate);
  const known = ['barrow', 'bucket', 'loader-bucket']
    .map((container) => ({ container, litres: containers[container]?.litres ?? null }))
    .find(({ litres }) => litres !== null);
  const { container, litres } = known?.litres ? { ...known, litres: known.litres } : USUAL_BARROW;
  const bulk = ingredientFor('wood-chips')!.bulkKgPerM3.typical;
  return [
    {
      material: 'wood-chips',
      container,
      litres,
      kg: (litres * bulk) / 1000,
      stock: null,
      own: ownFigures(picture, 'wood-chips', localDate),
    },
    // Coarse stuff that is needed for its structure can make a mix too dry: water is at hand on most sites.
    { material: 'water', container: 'bucket', litres: WATER_BUCKET, kg: WATER_BUCKET, stock: null },
  ];
}

export function correctionOf(picture: Picture, localDate: string, parts: MixPart[]): Correction {
  const place = picture.base.drums.length > 0 ? 'drum' : 'static-pile';
  const recipe = (settingAt(picture, 'recipe', localDate) as Recipe | undefined) ?? null;
  return correctionFor({
    parts,
    additions: additionsOf(picture, localDate),
    limits: mixLimits({ place, recipe }),
  });
}

const isFeed = (part: MixPart): boolean =>
  !['wood-chips', 'sawdust', 'straw', 'leaves', 'cardboard', 'paper', 'water', 'finished-compost'].includes(
    part.material,
  );

/** The mix of the day, and what to add, or that it is enough. */
export function mixMatters(draft: Draft, written: readonly Entry[]): Line[] {
  const days = new Set(
    written
      .filter(
        (entry) => entry.record.kind === 'weigh-in' && isForMix(entry.record as BookRecordOf<'weigh-in'>),
      )
      .map((entry) => entry.localDate),
  );
  // A late entry of another day changes that day's mix, which nobody can mend any more.
  if (!days.has(draft.today)) return [];
  const parts = loadsOf(draft.picture(), draft.today);
  if (!parts.some(isFeed)) return [];
  const correction = correctionOf(draft.picture(), draft.today, parts);
  draft.why.push(...whyMix(correction.before));
  return mixLines(correction);
}

const isForMix = (record: BookRecordOf<'weigh-in'>): boolean => !record.place?.startsWith('pile');

const waterArgs = (mix: Mix): Record<string, Arg> => ({
  pct: { pct: mix.moisturePct?.typical ?? 0 },
  range: { pctRange: [mix.moisturePct?.low ?? 0, mix.moisturePct?.high ?? 0] },
  cn: { number: mix.cn?.typical ?? 0, digits: 0 },
  hasCn: { text: mix.cn ? 'yes' : 'no' },
});

/** A correction in one or two lines. */
export function mixLines(correction: Correction): Line[] {
  const { before, add, code } = correction;
  if (!before.moisturePct) return [];
  const water = waterArgs(before);
  const what = addedArgs(add);
  if (code === 'enough') return [say('mix-enough', water)];
  if (code === 'add' && add.length > 0) {
    const id = before.moisturePct.typical > 60 ? 'mix-wet-add' : 'mix-add';
    return [say(id, { ...water, ...what, after: { pct: correction.after.moisturePct?.typical ?? 0 } })];
  }
  if (code === 'squeeze-first') {
    return correction.ifWet && correction.ifWet.length > 0
      ? [say('mix-squeeze-or-add', { ...water, ...addedArgs(correction.ifWet) })]
      : [say('mix-squeeze', water)];
  }
  if (code === 'infeasible') {
    const { blocked } = correction;
    return [
      say('mix-infeasible', {
        ...water,
        ...addedArgs(blocked?.best ?? []),
        limit: { term: blocked?.limits[0] ?? 'moisture-high', of: 'limit' },
        solve: { material: blocked?.wouldSolve ?? '' },
        hasSolve: { text: blocked?.wouldSolve ? 'yes' : 'no' },
      }),
    ];
  }
  return [];
}

type AddedOne = { material: string; container: string; count: number; kg: number };

/** `2 barrows of chips (about 49 kg)`, or two such things. */
export function addedSay(add: readonly AddedOne[]): Say {
  const each = add.map(({ material, container, count, kg }) =>
    say('mix-added', {
      what: { container, count },
      material: { material },
      kg: { kg: Math.round(kg) },
    }),
  );
  if (each.length < 2) return each[0] ?? say('mix-added-nothing');
  return say('mix-added-two', { first: { say: each[0]! }, second: { say: each[1]! } });
}

const addedArgs = (add: readonly AddedOne[]): Record<string, Arg> => ({ added: { say: addedSay(add) } });

/** The figures behind a mix: what went in, what was taken for it, and where that stands written. */
export function whyMix(mix: Mix): Line[] {
  const lines: Line[] = [
    say('why-mix', {
      loads: {
        text: mix.materials
          .map(({ material, kg }) => `${material} ${Math.round(kg * 10) / 10} kg`)
          .join(' + '),
      },
    }),
    say('why-formula', { formula: { term: mix.why.formula, of: 'formula' } }),
  ];
  if (mix.bulkKgPerM3 && mix.freeAirLikelyPct) {
    lines.push(
      say('why-mix-density', {
        density: { kgPerM3Range: [mix.bulkKgPerM3.low, mix.bulkKgPerM3.high] },
        air: { pctRange: [mix.freeAirLikelyPct.low, mix.freeAirLikelyPct.high] },
      }),
    );
  }
  for (const source of mix.why.sources.slice(0, 4)) lines.push(say('why-source', { text: { text: source } }));
  return lines;
}
