import { mustLie } from './why.ts';

/** A mass with its moisture (% wet basis), carbon and nitrogen (% of the dry mass). */
export type Matter = { kg: number; moisturePct: number; carbonPct: number; nitrogenPct: number };

/**
 * Kilograms of carbon and nitrogen in it; throws a RangeError for a moisture outside 0 to 100 %.
 * @source dry mass × share, by definition.
 * @example elementsOf({ kg: 10, moisturePct: 60, carbonPct: 50, nitrogenPct: 1 }) // { carbonKg: 2, nitrogenKg: 0.04 }
 */
export function elementsOf(matter: Matter): { carbonKg: number; nitrogenKg: number } {
  mustLie('moisture', matter.moisturePct, '%', 0, 100);
  const dryKg = (matter.kg * (100 - matter.moisturePct)) / 100;
  return { carbonKg: (dryKg * matter.carbonPct) / 100, nitrogenKg: (dryKg * matter.nitrogenPct) / 100 };
}

/**
 * C:N of several masses: all the carbon over all the nitrogen. Ratios are never averaged. Null where there
 * is no nitrogen at all (water alone).
 * @source Richard & Trautmann, Getting the Right Mix, Cornell, 1996.
 * @example carbonToNitrogen([{ kg: 10, moisturePct: 77, carbonPct: 45, nitrogenPct: 2.4 }, { kg: 3.5, moisturePct: 35, carbonPct: 50, nitrogenPct: 0.75 }]) // 30.06 (to 0.005)
 */
export function carbonToNitrogen(parts: Matter[]): number | null {
  let carbon = 0;
  let nitrogen = 0;
  for (const part of parts) {
    const { carbonKg, nitrogenKg } = elementsOf(part);
    carbon += carbonKg;
    nitrogen += nitrogenKg;
  }
  return nitrogen > 0 ? carbon / nitrogen : null;
}

/**
 * Mass of a second material that brings the first to the goal C:N; null where no amount does.
 * @source Richard & Trautmann, Getting the Right Mix, Cornell, 1996 (the two-material form).
 * @example secondMassForCn({ kg: 10, moisturePct: 77, carbonPct: 45, nitrogenPct: 2.4 }, { moisturePct: 35, carbonPct: 50, nitrogenPct: 0.75 }, 30) // 3.4741 (to 0.0001)
 */
export function secondMassForCn(first: Matter, second: Omit<Matter, 'kg'>, goal: number): number | null {
  mustLie('goal C:N', goal, '', Number.MIN_VALUE, Number.MAX_VALUE);
  const a = elementsOf(first);
  const b = elementsOf({ ...second, kg: 1 });
  const lacking = goal * a.nitrogenKg - a.carbonKg;
  const each = b.carbonKg - goal * b.nitrogenKg;
  if (lacking === 0) return 0;
  const kg = lacking / each;
  return Number.isFinite(kg) && kg >= 0 ? kg : null;
}

/**
 * Masses of a second and a third material that meet a moisture and a C:N goal at once: two linear equations.
 * `feasible` is false where one comes out below zero or the two materials cannot be told apart; the masses
 * are given all the same, and must not be used.
 * @source Richard & Trautmann, Getting the Right Mix, Cornell, 1996 (simultaneous form).
 * @example massesForTwoGoals({ kg: 100, moisturePct: 65, carbonPct: 36, nitrogenPct: 2.4 }, { moisturePct: 15, carbonPct: 50.4, nitrogenPct: 0.09 }, { moisturePct: 100, carbonPct: 0, nitrogenPct: 0 }, { moisturePct: 58, cn: 30 }) // { feasible: true, kg: [31.08, 15.15] } (to 0.005)
 */
export function massesForTwoGoals(
  first: Matter,
  second: Omit<Matter, 'kg'>,
  third: Omit<Matter, 'kg'>,
  goal: { moisturePct: number; cn: number },
): { feasible: boolean; kg: [number, number] } {
  const wet = (m: Omit<Matter, 'kg'>) => m.moisturePct - goal.moisturePct;
  const rich = (m: Omit<Matter, 'kg'>) => (100 - m.moisturePct) * (m.carbonPct - goal.cn * m.nitrogenPct);
  const det = wet(second) * rich(third) - wet(third) * rich(second);
  const a = -first.kg * wet(first);
  const b = -first.kg * rich(first);
  const kg: [number, number] = [
    (a * rich(third) - wet(third) * b) / det,
    (wet(second) * b - a * rich(second)) / det,
  ];
  return { feasible: kg.every((mass) => Number.isFinite(mass) && mass >= 0), kg };
}

/**
 * Nitrogen that a carbon source lacks for the goal, and the mass of a nitrogen source that brings it.
 * @source Oregon State extension answer 351921, 2016 (the check value; it takes no moisture off).
 * @example nitrogenLacking({ carbonKg: 240, nitrogenKg: 0.6, goal: 30, sourcePct: 46 }).sourceKg // 16.09 (to 0.005)
 */
export function nitrogenLacking(given: {
  carbonKg: number;
  nitrogenKg: number;
  goal: number;
  sourcePct: number;
}): { neededKg: number; lackingKg: number; sourceKg: number } {
  mustLie('nitrogen of the source', given.sourcePct, '%', Number.MIN_VALUE, 100);
  const neededKg = given.carbonKg / given.goal;
  const lackingKg = Math.max(0, neededKg - given.nitrogenKg);
  return { neededKg, lackingKg, sourceKg: (lackingKg / given.sourcePct) * 100 };
}
