import {
  type Added,
  type Addition,
  BULK_DENSITY,
  type Correction,
  correctionFor,
  drumNow,
  drumRulesOf,
  drumStands,
  freeAirLinearPct,
  loadsAt,
  type Mix,
  type MixLimits,
  type MixPart,
  mixOf,
  mixPartsOf,
  mixPlace,
  mixPlaces,
  type OwnFigures,
  ownFiguresAt,
  PACKED_KG_PER_M3,
  type Picture,
  siteAdditions,
  siteLimits,
  testAt,
} from '#core';
import type { BookRecordOf, Entry } from '#records';
import type { Draft } from '../draft.ts';
import { weighed } from '../nets.ts';
import { type Arg, type Line, say } from '../say.ts';
import { whyCorrection } from '../why/mix.ts';

/** Loads of one day that were put together: what today's mix is made of. */
export function loadsOf(
  picture: Picture,
  localDate: string,
  where: string | null = mixPlace(picture, localDate),
): MixPart[] {
  return mixPartsOf(loadsAt(picture, localDate, where), (material) =>
    ownFigures(picture, material, localDate),
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

export const limitsOf = (
  picture: Picture,
  localDate: string,
  now: string,
  where: string | null = mixPlace(picture, localDate),
): MixLimits => siteLimits(picture, localDate, now, where);

export function correctionOf(
  picture: Picture,
  localDate: string,
  parts: MixPart[],
  now: string,
  where: string | null = mixPlace(picture, localDate),
): Correction {
  const test = testAt(picture, where, parts);
  const limits = limitsOf(picture, localDate, now, where);
  const found = correctionFor({ parts, additions: additionsOf(picture, localDate, parts), limits, test });
  if (found.code !== 'infeasible' || !test?.moisturePct) return found;
  // A hand that found how wet it is says what chips will dry out: then water helps, and only then is it offered.
  const wetted = correctionFor({ parts, additions: siteAdditions(picture, localDate, true), limits, test });
  return wetted.code === 'infeasible' ? found : wetted;
}

/** Which place's mix an entry changed: the one that it names, where food was put together there that day. */
function placeOf(draft: Draft, written: readonly Entry[]): string | null {
  const picture = draft.picture();
  const named = written.flatMap(({ record, localDate }) => {
    const { place } = record as { place?: string | null };
    return localDate === draft.today && place != null ? [place] : [];
  });
  const fed = named.findLast((place) => loadsOf(picture, draft.today, place).some(isFeed));
  // A drum that got no food today, and was named all the same, speaks for itself.
  const drum = named.findLast((place) => Object.hasOwn(picture.drums, place));
  return fed ?? drum ?? mixPlace(picture, draft.today);
}

/** With several places loaded on a day it is said whose mix it is. */
export function ofPlace(draft: Draft, where: string | null, lines: Line[]): Line[] {
  const [first, ...rest] = lines;
  if (where === null || first === undefined || mixPlaces(draft.picture(), draft.today).length < 2)
    return lines;
  return [[say('mix-of', { place: { place: where } }), ...[first].flat()], ...rest];
}

/** The mix of the day, and what to add, or that it is enough. */
export function mixMatters(draft: Draft, written: readonly Entry[]): Line[] {
  const picture = draft.picture();
  const where = placeOf(draft, written);
  // A late entry of another day changes that day's mix, which nobody can mend any more.
  if (!written.some((entry) => entry.localDate === draft.today && isForMix(entry, where))) return [];
  const parts = loadsOf(picture, draft.today, where);
  if (!parts.some(isFeed)) return notFedLines(draft, written, where);
  const correction = correctionOf(picture, draft.today, parts, draft.now, where);
  draft.why.push(...whyCorrection(correction, limitsOf(picture, draft.today, draft.now, where)));
  const lines = ofPlace(draft, where, mixLines(correction));
  return [...standsLine(draft, written, where), ...lines, ...leftOutLine(draft, written)];
}

/** With no food in today a handful speaks for all that is in the drum: what that takes, where the book knows how much. */
export function byHandLines(draft: Draft, where: string | null): Line[] {
  const picture = draft.picture();
  const test = testAt(picture, where, loadsOf(picture, draft.today, where));
  const water = test?.moisturePct;
  if (!water) return [];
  const limits = waterOnly(limitsOf(picture, draft.today, draft.now, where));
  const { low, high } = limits.moisturePct;
  const inside = insideOf(draft, where);
  if (inside.length > 0 && (water.typical > high || water.typical < low)) {
    const additions = siteAdditions(picture, draft.today, water.typical < low);
    const correction = correctionFor({ parts: inside, additions, limits, test });
    draft.why.push(...whyCorrection(correction, limits));
    return mixLines(correction);
  }
  const id = water.typical > high ? 'mix-hand-wet' : water.typical < low ? 'mix-hand-dry' : 'mix-hand-right';
  return [say(id, { pct: { pct: water.typical }, range: { pctRange: [water.low, water.high] } })];
}

/** Of what has been in for days nobody knows the chips or the carbon any more: the water alone is put right. */
const waterOnly = (limits: MixLimits): MixLimits => ({
  ...limits,
  recipe: null,
  structurePerFeed: 0,
  cnLow: 0,
  cnHigh: null,
});

/** What is in a drum now by its book, corrected by the last level; nothing where that is not known. */
function insideOf(draft: Draft, where: string | null): MixPart[] {
  const drum = where === null ? undefined : draft.picture().drums[where];
  if (!drum) return [];
  const now = drumNow(drum, draft.now, drumRulesOf({ picture: draft.picture(), localDate: draft.today }));
  const booked = now.loads.reduce((kg, load) => kg + load.kgNow, 0);
  if (now.kg <= 0) return [];
  if (booked <= 0) return [{ material: 'food-scraps', kg: now.kg }];
  return now.loads.map(({ material, kgNow }) => ({ material, kg: (kgNow * now.kg) / booked }));
}

/** A test of the drum on a day with no food; what a test of a pile means is the pile's own matter. */
function notFedLines(draft: Draft, written: readonly Entry[], where: string | null): Line[] {
  if (where === null || !Object.hasOwn(draft.picture().drums, where)) return [];
  return written.some(({ record }) => record.kind === 'moisture') ? byHandLines(draft, where) : [];
}

/** A load whose weight nobody knows is in the mix and in none of its figures. */
function leftOutLine(draft: Draft, written: readonly Entry[]): Line[] {
  const unknown = written.find((entry) => {
    if (entry.record.kind !== 'weigh-in') return false;
    const weight = weighed(draft.picture(), entry);
    return weight.is === 'pending' || (weight.is === 'volume' && weight.estimate === null);
  });
  return unknown ? [say('mix-left-out-load', { entry: { entry: unknown.number } })] : [];
}

/** A load into the mix, or a test of it. */
function isForMix({ record }: Entry, where: string | null): boolean {
  const here = (place: string | null | undefined) => (place ?? where) === where;
  if (record.kind === 'weigh-in') return here((record as BookRecordOf<'weigh-in'>).place);
  if (record.kind === 'moisture') return here((record as BookRecordOf<'moisture'>).place);
  const lab = record as BookRecordOf<'lab-result'>;
  return record.kind === 'lab-result' && lab.analyte === BULK_DENSITY && here(lab.place);
}

/** A load into a drum that stands still is said so: it is logged, and no more should follow. */
function standsLine(draft: Draft, written: readonly Entry[], where: string | null): Line[] {
  if (where === null || !written.some(({ record }) => record.kind === 'weigh-in')) return [];
  const stands = drumStands(draft.picture(), where);
  return stands ? [say('drum-stands-no-loads', { entry: { entry: stands.entry } })] : [];
}

export const isFeed = (part: MixPart): boolean =>
  !['wood-chips', 'sawdust', 'straw', 'leaves', 'cardboard', 'paper', 'water', 'finished-compost'].includes(
    part.material,
  );

const waterArgs = (mix: Mix): Record<string, Arg> => ({
  pct: { pct: mix.moisturePct?.typical ?? 0 },
  range: { pctRange: [mix.moisturePct?.low ?? 0, mix.moisturePct?.high ?? 0] },
  basis: { say: say(mix.test?.moisturePct ? 'mix-basis-test' : 'mix-basis-typical') },
});

/** A correction in one to three lines. */
export function mixLines(correction: Correction): Line[] {
  const { before } = correction;
  if (!before.moisturePct) return [];
  return [...adviceLines(correction), ...overLine(correction), ...bucketLine(before)];
}

function adviceLines(correction: Correction): Line[] {
  const { before, add, code, limiting, squeeze } = correction;
  const water = waterArgs(before);
  const byRecipe = correction.window === 'recipe';
  const tested = before.test?.moisturePct != null;
  if (code === 'enough') return [say(enoughId(byRecipe, tested), water)];
  if (code === 'add' && add.length > 0) {
    // The floor of coarse stuff guards against the same: of a wet mix it is the water that is named.
    const wet =
      limiting === 'moisture-high' || (limiting === 'structure' && before.moisturePct!.typical > WET_PCT);
    const id = byRecipe ? 'mix-recipe-add' : wet ? 'mix-wet-add' : 'mix-add';
    const given = {
      ...water,
      ...addedArgs(add),
      asks: { term: limiting ?? 'structure', of: 'asks' },
      hasSqueeze: { text: squeeze || (id === 'mix-wet-add' && !tested) ? 'yes' : 'no' },
      after: { pct: correction.after.moisturePct?.typical ?? 0 },
    };
    return [say(id, given), ...alsoAdd(add)];
  }
  if (code === 'squeeze-first') {
    const ifWet = correction.ifWet ?? [];
    return ifWet.length > 0
      ? [say('mix-squeeze-or-add', { ...water, ...addedArgs(ifWet) }), ...alsoAdd(ifWet)]
      : [say('mix-squeeze', water)];
  }
  return code === 'infeasible' ? infeasibleLines(correction, water) : [];
}

/** Above this a mix is called wet. @source see `mixLimits` */
const WET_PCT = 60;

const enoughId = (byRecipe: boolean, tested: boolean): string =>
  byRecipe ? 'mix-recipe-enough' : tested ? 'mix-enough-tested' : 'mix-enough';

/** Which limit stands in the way, the best that can be done, and the one more material that would solve it. */
function infeasibleLines({ blocked }: Correction, water: Record<string, Arg>): Line[] {
  const best = blocked?.best ?? [];
  const lines: Line[] = [
    say('mix-infeasible', {
      ...water,
      ...addedArgs(best),
      hasBest: { text: best.length > 0 ? 'yes' : 'no' },
      after: { pct: blocked?.bestMoisturePct ?? 0 },
      ...limitArgs(blocked),
    }),
    ...alsoAdd(best),
  ];
  return [...lines, ...solveLine(blocked)];
}

/** What stands in the way: one limit, or two that are both too small or ask for opposite things. */
export const limitArgs = (blocked: Correction['blocked']): Record<string, Arg> => ({
  limit: { term: blocked?.limits[0] ?? 'moisture-high', of: 'limit' },
  other: { term: blocked?.limits[1] ?? 'room', of: 'limit' },
  hasOther: { text: blocked?.together === true ? 'yes' : 'no' },
});

/** What one more material would solve it; of a material that ran short, more of the same. */
export function solveLine(blocked: Correction['blocked']): Line[] {
  // No material makes room: some has to go out first.
  if (!blocked?.wouldSolve) return blocked?.limits.includes('room') ? [say('mix-room-solves')] : [];
  const more =
    blocked.limits[0] === 'stock' && blocked.best.some((one) => one.material === blocked.wouldSolve);
  return [say(more ? 'mix-more-solves' : 'mix-solves', { solve: { material: blocked.wouldSolve } })];
}

/** The recipe is met and the mix is too wet all the same: never kept back. */
function overLine({ overNever, window, after }: Correction): Line[] {
  if (!overNever || window !== 'recipe') return [];
  return [say('mix-over-never', { after: { pct: after.moisturePct?.typical ?? 0 } })];
}

/** What a bucket says of the air: a heavy one that there is too little, whatever the water. */
function bucketLine({ test, bulkKgPerM3 }: Mix): Line[] {
  if (!test?.bulkKgPerM3 || !bulkKgPerM3) return [];
  return [
    say(bulkKgPerM3.typical > PACKED_KG_PER_M3 ? 'mix-packed' : 'mix-loose', {
      density: { kgPerM3: bulkKgPerM3.typical },
      air: { pct: freeAirLinearPct(bulkKgPerM3.typical) },
    }),
  ];
}

/** What comes beside the first material, each on a line of its own. */
export const alsoAdd = (add: readonly Added[]): Line[] =>
  add.slice(1).map((one) => say('mix-also-add', addedArgs([one])));

export function addedArgs(add: readonly Added[]): Record<string, Arg> {
  const [first] = add;
  return {
    what: { container: first?.container ?? 'barrow', count: first?.count ?? 0 },
    // One container is named without its number elsewhere; in an advice the number is what matters.
    one: { text: first?.count === 1 ? '1 ' : '' },
    material: { material: first?.material ?? 'wood-chips' },
    kg: { kg: first?.kg ?? 0, digits: 0 },
  };
}
