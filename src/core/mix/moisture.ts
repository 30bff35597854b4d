import { mustLie } from './why.ts';

/**
 * Moisture (% of the wet mass) from oven drying; all masses in one unit. Throws a RangeError where the dry
 * sample is heavier than the wet one or a mass is below zero.
 * @source Richard & Trautmann, Getting the Right Mix, Cornell, 1996.
 * @example moistureByDrying({ wet: 10, container: 4, dryWithContainer: 6.3 }) // 77 (to 0.05)
 */
export function moistureByDrying(sample: {
  wet: number;
  container: number;
  dryWithContainer: number;
}): number {
  const dry = sample.dryWithContainer - sample.container;
  mustLie('wet sample', sample.wet, 'g', Number.MIN_VALUE, Number.MAX_VALUE);
  mustLie('dry sample', dry, 'g', 0, sample.wet);
  return ((sample.wet - dry) / sample.wet) * 100;
}

/**
 * Wet-basis moisture (0 to 100 %) of a dry-basis one (0 % up).
 * @source wet = dry ÷ (1 + dry); METER Group, note on compost water content (50 % dry is 33 % wet).
 * @example wetBasisPct(50) // 33.333333333333336
 */
export function wetBasisPct(dryBasis: number): number {
  mustLie('moisture, dry basis', dryBasis, '%', 0, Number.MAX_VALUE);
  return (dryBasis / (100 + dryBasis)) * 100;
}

/**
 * Dry-basis moisture of a wet-basis one (0 to under 100 %).
 * @source dry = wet ÷ (1 − wet), the same identity turned round.
 * @example dryBasisPct(60) // 150
 */
export function dryBasisPct(wetBasis: number): number {
  mustLie('moisture, wet basis', wetBasis, '%', 0, 99.9999);
  return (wetBasis / (100 - wetBasis)) * 100;
}

/**
 * A percentage of the dry mass from one of the fresh mass, at that moisture (% wet basis, under 100).
 * Throws a RangeError where the answer would exceed 100 %: then it was a dry-basis figure already.
 * @source dry share = fresh share ÷ (1 − moisture), an identity.
 * @example dryFromFreshPct(12, 76) // 50
 */
export function dryFromFreshPct(freshPct: number, moisturePct: number): number {
  mustLie('moisture, wet basis', moisturePct, '%', 0, 99.9999);
  const dry = (freshPct * 100) / (100 - moisturePct);
  mustLie('share of the dry mass', dry, '%', 0, 100);
  return dry;
}

/**
 * Mass of a second material that brings `kg` at `moisturePct` to the goal; null where the goal does not lie
 * between the two moistures, so that no amount would do.
 * @source Richard & Trautmann, Getting the Right Mix, Cornell, 1996: Q2 = Q1 (G − M1) ÷ (M2 − G).
 * @example secondMassForMoisture({ kg: 10, moisturePct: 77 }, 35, 60) // 6.8
 */
export function secondMassForMoisture(
  first: { kg: number; moisturePct: number },
  secondMoisturePct: number,
  goalPct: number,
): number | null {
  for (const pct of [first.moisturePct, secondMoisturePct, goalPct]) mustLie('moisture', pct, '%', 0, 100);
  if (first.moisturePct === goalPct) return 0;
  const kg = (first.kg * (goalPct - first.moisturePct)) / (secondMoisturePct - goalPct);
  return Number.isFinite(kg) && kg >= 0 ? kg : null;
}

/**
 * Water (kg, which is litres) that brings a mass to the goal; null where it is wetter already.
 * @source Q (G − M) ÷ (100 − G): the form above with water as the second material.
 * @example waterToAddKg(100, 45, 55) // 22.22222222222222
 */
export function waterToAddKg(kg: number, moisturePct: number, goalPct: number): number | null {
  mustLie('goal', goalPct, '%', 0, 99.9999);
  return secondMassForMoisture({ kg, moisturePct }, 100, goalPct);
}
