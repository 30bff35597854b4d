import { ingredientFor } from '../mix/ingredients.ts';
import { mixOf } from '../mix/mix.ts';
import { propagate, type Spread } from '../mix/spread.ts';
import type { MixWhy } from '../mix/why.ts';
import type { DrumLoad, DrumPicture } from '../picture/types.ts';
import { daysFrom, FULL_FRACTION, inOrder, leftAfter, loadLitres, SHRINK_PER_DAY } from './flow.ts';

/** What the site has set for its drum; everything may be left out. */
export type DrumRules = {
  /** Share of the volume that counts as full. */
  fullFraction?: number | null;
  /** Days that the oldest load should stay at least before it is let out. */
  daysInside?: number | null;
  shrinkPerDay?: number | null;
};

/** One load inside, with what is left of it and the warmest that its drum's coldest point has been since. */
export type LoadInside = {
  entry: number;
  material: string;
  source: string | null;
  kgIn: number;
  kgNow: number;
  days: number;
  estimated: boolean;
  /** Highest of the lowest readings since it went in; null with no reading since. */
  warmestCelsius: number | null;
};

/**
 * A drum as it is now. `fillPct` is null where its volume is unknown; `byLevel` says that a level corrected
 * it, and the mass with it. `unbooked`: far more was seen inside than the loads of the book come to, so that
 * the oldest in the book is not the oldest inside.
 */
export type DrumNow = {
  kg: number;
  litres: number;
  unbooked: boolean;
  fillPct: Spread | null;
  byLevel: boolean;
  loads: LoadInside[];
  oldest: LoadInside | null;
  /** The load that has seen the least heat; readings tell of the drum, not of one load. */
  coldest: LoadInside | null;
  estimatedKg: number;
  why: MixWhy;
};

/**
 * What is in a drum: fill from the loads, their shrinkage and the discharges (which `takeOut` has taken off
 * already), corrected by the last level that somebody saw; and how long the oldest and the coldest load have
 * been in. A level by eye is taken as good to a tenth of the drum (from memory).
 * @source first in, first out; SHRINK_PER_DAY; densities and nesting as in `mixOf`.
 * @example drumNow({ name: 'drum', litres: 5000, loads: [{ entry: 1, at: '2026-05-10T12:00:00.000Z', localDate: '2026-05-10', material: 'food-scraps', kg: 1800, litres: null, estimated: false, source: null }], mode: null, everyMin: null, fan: null, settingSince: null, level: null, discharges: [], readings: [] }, '2026-05-15T12:00:00.000Z').oldest!.days // 5
 */
export function drumNow(drum: DrumPicture, at: string, rules: DrumRules = {}): DrumNow {
  const shrink: Spread =
    rules.shrinkPerDay != null
      ? { typical: rules.shrinkPerDay, low: rules.shrinkPerDay, high: rules.shrinkPerDay }
      : SHRINK_PER_DAY;
  const loads = inOrder(drum.loads).filter((load) => load.at <= at);
  const warmest = warmestSince(drum, at);
  const inside = loads.map((load) => insideOf(load, warmest, at, shrink.typical));
  const sized = asSized(loads, at);
  const litresNow = (perDay: number) => blendedLitres(sized, perDay);
  const { litres, byLevel, unbooked } = levelled(drum, loads, at, shrink, litresNow);
  const volume = drum.litres;
  const fillPct =
    volume === null
      ? null
      : {
          typical: (litres.typical / volume) * 100,
          low: (litres.low / volume) * 100,
          high: (litres.high / volume) * 100,
        };
  const cold = inside.filter((load) => load.warmestCelsius !== null);
  return {
    kg: byLevel
      ? (litres.typical * DISCHARGED_KG_PER_M3) / 1000
      : inside.reduce((sum, load) => sum + load.kgNow, 0),
    litres: litres.typical,
    unbooked,
    fillPct,
    byLevel,
    loads: inside,
    oldest: inside[0] ?? null,
    coldest: cold.reduce<LoadInside | null>(
      (least, load) => (least === null || load.warmestCelsius! < least.warmestCelsius! ? load : least),
      null,
    ),
    estimatedKg: inside.reduce((sum, load) => sum + (load.estimated ? load.kgNow : 0), 0),
    why: {
      formula: byLevel ? 'drum-fill-by-level' : 'drum-fill-by-loads',
      figures: [
        { name: 'drum', value: volume, unit: 'L', from: 'site' },
        { name: 'loads inside', value: inside.length, unit: null, from: 'derived' },
        {
          name: 'shrinkage',
          value: shrink.typical * 100,
          unit: '% a day',
          low: shrink.low * 100,
          high: shrink.high * 100,
          from: rules.shrinkPerDay != null ? 'site' : 'published',
        },
      ],
      sources: [
        'Kumar, Ou & Lin, Waste Management 30, 2010 (33 % of volatile solids in 12 days); range from memory',
      ],
      assumed: ['first-in-first-out', ...(byLevel ? ['level-by-eye'] : [])],
    },
  };
}

/** The highest of the lowest readings since an instant, null with none. Readings are walked once, not for each load. */
function warmestSince(drum: DrumPicture, at: string): (from: string) => number | null {
  const readings = drum.readings
    .filter((reading) => reading.at <= at)
    .sort((a, b) => (a.at < b.at ? 1 : a.at > b.at ? -1 : 0));
  const upTo: { at: string; celsius: number }[] = [];
  for (const reading of readings) {
    const celsius = Math.max(Math.min(...reading.celsius), upTo.at(-1)?.celsius ?? Number.NEGATIVE_INFINITY);
    upTo.push({ at: reading.at, celsius });
  }
  return (from) => upTo.findLast((each) => each.at >= from)?.celsius ?? null;
}

function insideOf(
  load: DrumLoad,
  warmest: (from: string) => number | null,
  at: string,
  perDay: number,
): LoadInside {
  const days = daysFrom(load.at, at);
  return {
    entry: load.entry,
    material: load.material,
    source: load.source,
    kgIn: load.kg,
    kgNow: load.kg * leftAfter(days, perDay),
    days,
    estimated: load.estimated,
    warmestCelsius: warmest(load.at),
  };
}

function blendLitres(loads: DrumLoad[], at: string, perDay: number): number {
  return blendedLitres(asSized(loads, at), perDay);
}

/** A load's material as the table of densities knows it, what it weighed and took up, and how long it has been in. */
type Sized = { material: string; kg: number; litres: number; days: number };

const asSized = (loads: readonly DrumLoad[], at: string): Sized[] =>
  loads.map((load) => ({
    // What no table knows takes up the room that it has, or that of scraps.
    material: ingredientFor(load.material) ? load.material : 'food-scraps',
    kg: load.kg,
    litres: loadLitres(load),
    days: daysFrom(load.at, at),
  }));

function blendedLitres(sized: readonly Sized[], perDay: number): number {
  return mixOf(
    together(
      sized.map(({ material, kg, litres, days }) => {
        const left = leftAfter(days, perDay);
        return { material, kg: kg * left, litres: litres * left };
      }),
    ),
  ).litres;
}

/** A month of loads as one part for each material: a mix takes them together all the same. */
function together(
  parts: readonly { material: string; kg: number; litres: number }[],
): { material: string; kg: number; litres: number }[] {
  const sums = new Map<string, { material: string; kg: number; litres: number }>();
  for (const { material, kg, litres } of parts) {
    const sum = sums.get(material);
    if (sum) {
      sum.kg += kg;
      sum.litres += litres;
    } else sums.set(material, { material, kg, litres });
  }
  return [...sums.values()];
}

const LEVEL_ERROR = 0.1;

function levelled(
  drum: DrumPicture,
  loads: DrumLoad[],
  at: string,
  shrink: Spread,
  litresNow: (perDay: number) => number,
): { litres: Spread; byLevel: boolean; unbooked: boolean } {
  const { level, litres: volume } = drum;
  if (level === null || volume === null || level.at > at) {
    // Without the litres that were measured: how far the densities of the tables lie apart.
    const byKind = together(loads.map(({ material, kg }) => ({ material, kg, litres: 0 })));
    const spreadOfLoads = mixOf(byKind.map(({ material, kg }) => ({ material, kg }))).bulkKgPerM3;
    const blend = propagate([shrink], ([perDay]) => litresNow(perDay!));
    if (!spreadOfLoads || spreadOfLoads.typical === 0)
      return { litres: blend, byLevel: false, unbooked: false };
    const looser = spreadOfLoads.typical / spreadOfLoads.low;
    const tighter = spreadOfLoads.typical / spreadOfLoads.high;
    const byDensity: Spread = { typical: 1, low: Math.min(1, tighter), high: Math.max(1, looser) };
    return { litres: propagate([blend, byDensity], ([a, b]) => a! * b!), byLevel: false, unbooked: false };
  }
  // The level says what was there; since then loads came in and discharges went out.
  const later = loads.filter((load) => load.at > level.at);
  const outLitres = drum.discharges
    .filter((one) => one.at > level.at && one.at <= at)
    .reduce(
      (sum, one) => sum + (one.litres ?? (one.kg === null ? 0 : (one.kg / DISCHARGED_KG_PER_M3) * 1000)),
      0,
    );
  const seen: Spread = {
    typical: level.fraction,
    low: Math.max(0, level.fraction - LEVEL_ERROR),
    high: Math.min(1, level.fraction + LEVEL_ERROR),
  };
  const sized = asSized(later, at);
  const litres = propagate([seen, shrink], ([fraction, perDay]) => {
    const old = fraction! * volume * leftAfter(daysFrom(level.at, at), perDay!);
    return Math.max(0, old + blendedLitres(sized, perDay!) - outLitres);
  });
  const unbooked = litresUnbooked(drum, loads, at, shrink.typical) > 0;
  return { litres: { ...litres, low: Math.max(0, litres.low) }, byLevel: true, unbooked };
}

/** Litres that were seen inside and stand in no load of the book, less what has left since; 0 inside the error of an eye. */
function litresUnbooked(drum: DrumPicture, loads: DrumLoad[], at: string, perDay: number): number {
  const { level, litres: volume } = drum;
  if (level === null || volume === null || level.at > at) return 0;
  const earlier = loads.filter((load) => load.at <= level.at);
  // What was first in goes out first, and that is what the book does not know.
  const outLitres = drum.discharges
    .filter((one) => one.at > level.at && one.at <= at)
    .reduce((sum, one) => sum + (one.litres ?? ((one.kg ?? 0) / DISCHARGED_KG_PER_M3) * 1000), 0);
  const more = level.fraction * volume - blendLitres(earlier, level.at, perDay) - outLitres;
  return more > 2 * LEVEL_ERROR * volume ? more : 0;
}

/**
 * Kilograms inside a drum that are older than every load of the book: far more was seen than the loads come to.
 * They leave first. 0 where the level agrees with the loads, or none was seen.
 * @source first in, first out; DISCHARGED_KG_PER_M3.
 * @example unbookedKg({ name: 'drum', litres: 1000, loads: [], mode: null, everyMin: null, fan: null, settingSince: null, level: { entry: 1, at: '2026-05-12T12:00:00.000Z', localDate: '2026-05-12', fraction: 0.5 }, discharges: [], readings: [] }, '2026-05-12T12:00:00.000Z') // 295
 */
export function unbookedKg(drum: DrumPicture, at: string): number {
  const loads = inOrder(drum.loads).filter((load) => load.at <= at);
  const litres = litresUnbooked(drum, loads, at, SHRINK_PER_DAY.typical);
  const days = drum.level ? daysFrom(drum.level.at, at) : 0;
  return ((litres * DISCHARGED_KG_PER_M3) / 1000) * leftAfter(days, SHRINK_PER_DAY.typical);
}

/** Density of what comes out of a drum. @source 800 to 1,200 lb/yd³ recommended for active mixes (LSU 3838-D after NRAES-54), its middle. */
export const DISCHARGED_KG_PER_M3 = 590;

/**
 * Whether what is coming still fits, by typical values; `sure` is false where the likely range of the fill
 * says otherwise, so that somebody should look. `dischargeFirstKg` is 0 where it fits, null where the
 * drum's volume is unknown.
 */
export type DrumRoom = {
  answer: 'yes' | 'no' | 'unknown';
  sure: boolean;
  roomLitres: number | null;
  wantedLitres: number;
  fillAfterPct: Spread | null;
  dischargeFirstKg: number | null;
  /** Days since the oldest load went in; null where none is known or older stuff is not in the book. */
  oldestDays: number | null;
  /** The oldest load has not been in for as long as the site has set. */
  oldestTooYoung: boolean;
  why: MixWhy;
};

/**
 * Room for more: what is coming (kg, with its bulking material) against the volume that counts as full.
 * @source FULL_FRACTION unless the site has set its own.
 * @example drumRoom({ name: 'drum', litres: 5000, loads: [], mode: null, everyMin: null, fan: null, settingSince: null, level: null, discharges: [], readings: [] }, [{ material: 'food-scraps', kg: 106 }], '2026-05-15T12:00:00.000Z') // { answer: 'yes', sure: true, wantedLitres: 200, roomLitres: 3750 }
 */
export function drumRoom(
  drum: DrumPicture,
  coming: readonly { material: string; kg: number }[],
  at: string,
  rules: DrumRules = {},
): DrumRoom {
  const now = drumNow(drum, at, rules);
  const wanted = mixOf(
    coming.map(({ material, kg }) => ({ material, kg, litres: loadLitres({ material, kg, litres: null }) })),
  );
  const oldestDays = now.unbooked ? null : (now.oldest?.days ?? null);
  const oldestTooYoung = rules.daysInside != null && oldestDays !== null && oldestDays < rules.daysInside;
  const base = { wantedLitres: wanted.litres, oldestDays, oldestTooYoung, why: now.why };
  if (drum.litres === null || now.fillPct === null)
    return {
      answer: 'unknown',
      sure: false,
      roomLitres: null,
      fillAfterPct: null,
      dischargeFirstKg: null,
      ...base,
    };
  const fullFraction = rules.fullFraction ?? FULL_FRACTION;
  const full = fullFraction * drum.litres;
  const more = (wanted.litres / drum.litres) * 100;
  const fillAfterPct = {
    typical: now.fillPct.typical + more,
    low: now.fillPct.low + more,
    high: now.fillPct.high + more,
  };
  const over = now.litres + wanted.litres - full;
  const density = now.litres > 0 ? now.kg / now.litres : DISCHARGED_KG_PER_M3 / 1000;
  const dischargeFirstKg = Math.max(0, Math.min(over, now.litres) * density);
  const answer = over > 0 ? 'no' : 'yes';
  const fullPct = fullFraction * 100;
  const sure = answer === 'no' ? fillAfterPct.low > fullPct : fillAfterPct.high <= fullPct;
  return {
    answer,
    sure,
    roomLitres: Math.max(0, full - now.litres),
    fillAfterPct,
    dischargeFirstKg,
    ...base,
  };
}

/** Share of full that is as good as full: what shrinks within the hour after a level was seen. @source from memory */
const NEAR_FULL = 0.98;

/** When the next discharge is due: in so many days, and why; null where neither fill nor stay says so. */
export type DischargeDue = { inDays: number; because: 'fill' | 'stay' } | null;

/**
 * Days until the drum is full at the present feed (to 2 %: no eye tells them apart), or until the oldest load has had the stay that the site
 * has set, whichever comes first; 0 where it is due already.
 * @source mass balance: fill grows by the feed and falls by the shrinkage.
 * @example dischargeDue({ name: 'drum', litres: 5000, loads: [], mode: null, everyMin: null, fan: null, settingSince: null, level: null, discharges: [], readings: [] }, '2026-05-15T12:00:00.000Z', { feedLitresPerDay: 1250 }, { shrinkPerDay: 0 }) // { inDays: 3, because: 'fill' }
 */
export function dischargeDue(
  drum: DrumPicture,
  at: string,
  given: { feedLitresPerDay: number | null },
  rules: DrumRules = {},
): DischargeDue {
  const now = drumNow(drum, at, rules);
  const shrink = rules.shrinkPerDay ?? SHRINK_PER_DAY.typical;
  const byStay =
    rules.daysInside != null && now.oldest ? Math.max(0, rules.daysInside - now.oldest.days) : null;
  let byFill: number | null = null;
  if (drum.litres !== null && given.feedLitresPerDay !== null) {
    const full = (rules.fullFraction ?? FULL_FRACTION) * drum.litres;
    let litres = now.litres;
    for (let day = 0; day <= 60 && byFill === null; day += 1) {
      if (litres >= full * NEAR_FULL) byFill = day;
      litres = litres * (1 - shrink) + given.feedLitresPerDay;
    }
  }
  if (byFill !== null && (byStay === null || byFill <= byStay)) return { inDays: byFill, because: 'fill' };
  return byStay === null ? null : { inDays: byStay, because: 'stay' };
}
