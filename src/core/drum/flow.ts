import { ingredientFor } from '../mix/ingredients.ts';
import { mustLie } from '../mix/why.ts';
import type { DrumLoad } from '../picture/types.ts';

/**
 * Share of its mass and volume that material in a drum loses in a day.
 * @source derived from 33 % of volatile solids in 12 days (Kumar, Ou & Lin, Waste Management 30, 2010, food
 * and green waste in a vessel): 1 − 0.67^(1/12) is 3.3 %; water driven off makes it more. Lowest: 23.74 % of
 * volatile solids in 45 days is 0.6 % a day (Mishra & Yadav, preprint, 2021, garden waste in a turning drum); 59 to
 * 62 % of the mass in 120 days is 0.74 to 0.80 % (Karnchanawong & Suriyanon, 2011, food and leaves in bins). Highest
 * from memory.
 */
export const SHRINK_PER_DAY = { typical: 0.033, low: 0.006, high: 0.07 } as const;

/** Share of a drum's volume that may be filled where the site has set nothing else. @source 50 to 75 %, 65 to 70 usual; common practice, from memory. */
export const FULL_FRACTION = 0.75;

const DAY_MS = 86_400_000;

/** Days from one UTC instant to a later one; 0 where it is not later. @example daysFrom('2026-05-10T12:00:00.000Z', '2026-05-12T00:00:00.000Z') // 1.5 */
export const daysFrom = (from: string, to: string): number =>
  Math.max(0, (Date.parse(to) - Date.parse(from)) / DAY_MS);

/** Share that is left after so many days of shrinking. @example leftAfter(12, 0.033) // 0.6685 (to 0.0005) */
export function leftAfter(days: number, shrinkPerDay: number): number {
  mustLie('shrinkage', shrinkPerDay, 'a day', 0, 0.999);
  return (1 - shrinkPerDay) ** days;
}

/**
 * Litres of a load as it went in: measured, else by the material's density (that of scraps where unknown).
 * @source see INGREDIENTS.
 * @example loadLitres({ material: 'wood-chips', kg: 29, litres: null }) // 100
 */
export function loadLitres(load: Pick<DrumLoad, 'kg' | 'litres' | 'material'>): number {
  if (load.litres !== null) return load.litres;
  const known = ingredientFor(load.material) ?? ingredientFor('food-scraps')!;
  return (load.kg / known.bulkKgPerM3.typical) * 1000;
}

/**
 * Loads in the order they went in; those of one instant by the number of their line.
 * @example inOrder([]) // []
 */
export const inOrder = (loads: readonly DrumLoad[]): DrumLoad[] =>
  [...loads].sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : a.entry - b.entry));

/** What came out of a drum: parts of which loads (kg as they are now, shrunk), and what stays inside. */
export type TakenOut = {
  left: DrumLoad[];
  out: { entry: number; material: string; source: string | null; kg: number }[];
  /** More was discharged than the loads account for: the book lacks loads, or shrinkage is less. */
  overKg: number;
};

/**
 * Takes a discharge off the loads, first in, first out. The discharged mass is as it left, so each load is
 * counted at what shrinkage has left of it. What stays keeps its mass as it went in, so that it can shrink
 * on. Throws a RangeError for a mass below zero.
 * @source mass balance, first in first out.
 * @example takeOut([{ entry: 1, at: '2026-05-10T12:00:00.000Z', localDate: '2026-05-10', material: 'food-scraps', kg: 100, litres: null, estimated: false, source: null }], 40, '2026-05-10T12:00:00.000Z').left[0]!.kg // 60
 */
export function takeOut(
  loads: readonly DrumLoad[],
  kg: number,
  at: string,
  shrinkPerDay: number = SHRINK_PER_DAY.typical,
): TakenOut {
  mustLie('discharge', kg, 'kg', 0, Number.MAX_VALUE);
  let wanted = kg;
  const left: DrumLoad[] = [];
  const out: TakenOut['out'] = [];
  for (const load of inOrder(loads)) {
    // A load that went in after the discharge (a late line) is none of it.
    if (wanted <= 0 || load.at > at) {
      left.push(load);
      continue;
    }
    const share = leftAfter(daysFrom(load.at, at), shrinkPerDay);
    const there = load.kg * share;
    const taken = Math.min(there, wanted);
    wanted -= taken;
    out.push({ entry: load.entry, material: load.material, source: load.source, kg: taken });
    const rest = there > 0 ? 1 - taken / there : 0;
    if (rest > 1e-9)
      left.push({ ...load, kg: load.kg * rest, litres: load.litres === null ? null : load.litres * rest });
  }
  return { left, out, overKg: Math.max(0, wanted) };
}

/**
 * Mean feed in kg a day over the last days, days without a load included. `from` and `to` are local dates,
 * both counted. Throws a RangeError where there is no day.
 * @source mean of the loads.
 * @example feedPerDayKg([{ localDate: '2026-05-11', kg: 140 }], '2026-05-06', 7) // 0
 */
export function feedPerDayKg(
  loads: readonly { localDate: string; kg: number }[],
  toLocalDate: string,
  days: number,
): number {
  mustLie('days', days, 'days', 1, 3660);
  const to = Date.parse(`${toLocalDate.slice(0, 10)}T00:00:00.000Z`);
  const from = to - (days - 1) * DAY_MS;
  const within = loads.filter(({ localDate }) => {
    const day = Date.parse(`${localDate.slice(0, 10)}T00:00:00.000Z`);
    return day >= from && day <= to;
  });
  return within.reduce((sum, load) => sum + load.kg, 0) / days;
}

/**
 * Drum volume (m³) for a feed, its density, a retention and a fill.
 * @source V = feed ÷ density × days ÷ fill: mass balance without shrinkage.
 * @example drumVolumeM3({ feedKgPerDay: 200, bulkKgPerM3: 450, days: 7, fillFraction: 0.65 }) // 4.786 (to 0.0005)
 */
export function drumVolumeM3(given: {
  feedKgPerDay: number;
  bulkKgPerM3: number;
  days: number;
  fillFraction: number;
}): number {
  mustLie('fill', given.fillFraction, '', Number.MIN_VALUE, 1);
  mustLie('bulk density', given.bulkKgPerM3, 'kg/m³', Number.MIN_VALUE, 2000);
  return ((given.feedKgPerDay / given.bulkKgPerM3) * given.days) / given.fillFraction;
}
