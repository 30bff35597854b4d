import {
  type Added,
  type Addition,
  type Correction,
  correctionFor,
  drumTest,
  type Mix,
  type MixPart,
  mixOf,
  mixPartsOf,
  type OwnFigures,
  ownFiguresAt,
  type Picture,
  siteAdditions,
  siteLimits,
} from '#core';
import type { BookRecordOf, Entry } from '#records';
import type { Draft } from '../draft.ts';
import { type Arg, type Line, say } from '../say.ts';
import { whyMix } from '../why/mix.ts';

/** Loads of one day that were put together: what today's mix is made of. */
export function loadsOf(picture: Picture, localDate: string): MixPart[] {
  return mixPartsOf(
    picture.mixLoads.filter((load) => load.localDate === localDate),
    (material) => ownFigures(picture, material, localDate),
  );
}

export const ownFigures = (picture: Picture, material: string, localDate: string): OwnFigures | null =>
  ownFiguresAt(picture.settings, material, localDate);

/** What can be added here to a mix of so much water: by the site's own containers, stock and figures. */
export function additionsOf(picture: Picture, localDate: string, parts: MixPart[] = []): Addition[] {
  const moisturePct = mixOf(parts).moisturePct;
  return siteAdditions(picture, localDate, moisturePct !== null && moisturePct.high < DRY_PCT);
}

const DRY_PCT = 55;

export function correctionOf(picture: Picture, localDate: string, parts: MixPart[], now: string): Correction {
  const [drum] = Object.values(picture.drums);
  return correctionFor({
    parts,
    additions: additionsOf(picture, localDate, parts),
    limits: siteLimits(picture, localDate, now),
    test: drum ? drumTest(drum) : null,
  });
}

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
  const correction = correctionOf(draft.picture(), draft.today, parts, draft.now);
  draft.why.push(...whyMix(correction.before));
  return mixLines(correction);
}

const isForMix = (record: BookRecordOf<'weigh-in'>): boolean => !record.place?.startsWith('pile');

const isFeed = (part: MixPart): boolean =>
  !['wood-chips', 'sawdust', 'straw', 'leaves', 'cardboard', 'paper', 'water', 'finished-compost'].includes(
    part.material,
  );

const waterArgs = (mix: Mix): Record<string, Arg> => ({
  pct: { pct: mix.moisturePct?.typical ?? 0 },
  range: { pctRange: [mix.moisturePct?.low ?? 0, mix.moisturePct?.high ?? 0] },
  cn: { number: mix.cn?.typical ?? 0, digits: 0 },
  basis: { say: say(mix.test?.moisturePct ? 'mix-basis-test' : 'mix-basis-typical') },
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
    return [
      say(id, { ...water, ...what, after: { pct: correction.after.moisturePct?.typical ?? 0 } }),
      ...alsoAdd(add),
    ];
  }
  if (code === 'squeeze-first') {
    return correction.ifWet && correction.ifWet.length > 0
      ? [
          say('mix-squeeze-or-add', { ...water, ...addedArgs(correction.ifWet) }),
          ...alsoAdd(correction.ifWet),
        ]
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
      ...alsoAdd(blocked?.best ?? []),
    ];
  }
  return [];
}

/** What comes beside the first material, each on a line of its own. */
export const alsoAdd = (add: readonly Added[]): Line[] =>
  add.slice(1).map((one) => say('mix-also-add', addedArgs([one])));

function addedArgs(add: readonly Added[]): Record<string, Arg> {
  const [first] = add;
  return {
    what: { container: first?.container ?? 'barrow', count: first?.count ?? 0 },
    // One container is named without its number elsewhere; in an advice the number is what matters.
    one: { text: first?.count === 1 ? '1 ' : '' },
    material: { material: first?.material ?? 'wood-chips' },
    kg: { kg: first?.kg ?? 0, digits: 0 },
  };
}
