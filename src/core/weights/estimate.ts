import { INGREDIENTS } from '../mix/ingredients.ts';
import type { Spread } from '../mix/spread.ts';
import { mustLie } from '../mix/why.ts';

/** Count, mean and sum of squared deviations of weights, kept up to date one by one. */
export type Tally = { n: number; meanKg: number; m2: number };

/**
 * A tally with one more weight in it. A weight taken back is removed by `tallyLess`.
 * @source Welford, Technometrics 4, 1962.
 * @example tallyMore({ n: 1, meanKg: 40, m2: 0 }, 50) // { n: 2, meanKg: 45, m2: 50 }
 */
export function tallyMore(tally: Tally, kg: number): Tally {
  const n = tally.n + 1;
  const meanKg = tally.meanKg + (kg - tally.meanKg) / n;
  return { n, meanKg, m2: tally.m2 + (kg - tally.meanKg) * (kg - meanKg) };
}

/**
 * A tally with one weight taken out again.
 * @source the same turned round.
 * @example tallyLess({ n: 2, meanKg: 45, m2: 50 }, 50) // { n: 1, meanKg: 40, m2: 0 }
 */
export function tallyLess(tally: Tally, kg: number): Tally {
  if (tally.n <= 1) return { n: 0, meanKg: 0, m2: 0 };
  const n = tally.n - 1;
  const meanKg = (tally.meanKg * tally.n - kg) / n;
  return { n, meanKg, m2: Math.max(0, tally.m2 - (kg - tally.meanKg) * (kg - meanKg)) };
}

/** Standard deviation of single weights (kg); null under two. @example deviationOf({ n: 2, meanKg: 45, m2: 50 }) // 7.0710678118654755 */
export const deviationOf = (tally: Tally): number | null =>
  tally.n < 2 ? null : Math.sqrt(tally.m2 / (tally.n - 1));

/** Weights below this number teach nothing yet: their spread is not known. */
const ENOUGH_WEIGHTS = 3;

/**
 * What one container usually holds (kg net), with the range that 19 of 20 lie in; null under three weights.
 * @source mean ± 2 standard deviations, normal spread.
 * @example usualKg({ n: 3, meanKg: 50, m2: 50 }) // { typical: 50, low: 40, high: 60 }
 */
export function usualKg(tally: Tally): Spread | null {
  const deviation = deviationOf(tally);
  if (tally.n < ENOUGH_WEIGHTS || deviation === null) return null;
  return {
    typical: tally.meanKg,
    low: Math.max(0, tally.meanKg - 2 * deviation),
    high: tally.meanKg + 2 * deviation,
  };
}

/**
 * Kilograms to a litre of food scraps as published: they differ some fourfold, so that every estimate shows
 * the one it used.
 * @source US EPA volume-to-weight factors, 2016 (396 lb/yd³; 3.8 lb/gal), as listed by ENERGY STAR help
 * article 30185741619867; Goldstein, BioCycle, July 2012 (5 lb/gal); wet produce packed tight 0.9, from memory.
 */
export const FOOD_KG_PER_LITRE = {
  epaByYard: (396 * 0.45359237) / 764.554857984,
  epaByGallon: (3.8 * 0.45359237) / 3.785411784,
  hauler: (5 * 0.45359237) / 3.785411784,
  packed: 0.9,
} as const;

/** Kilograms to a litre, published or from the table of materials; null for a material that no table knows. @example publishedKgPerLitre('water')!.typical // 1 */
export function publishedKgPerLitre(material: string): (Spread & { source: string }) | null {
  if (material === 'food-scraps')
    return {
      typical: FOOD_KG_PER_LITRE.epaByGallon,
      low: FOOD_KG_PER_LITRE.epaByYard,
      high: FOOD_KG_PER_LITRE.packed,
      source: 'US EPA volume-to-weight factors, 2016: 3.8 lb/gal; range 396 lb/yd³ to packed, from memory',
    };
  if (!Object.hasOwn(INGREDIENTS, material)) return null;
  const { bulkKgPerM3, source } = INGREDIENTS[material]!;
  return {
    typical: bulkKgPerM3.typical / 1000,
    low: bulkKgPerM3.low / 1000,
    high: bulkKgPerM3.high / 1000,
    source,
  };
}

/** A mass worked out from a volume or a count: never measured, always with the factor used. */
export type Estimate = {
  estimatedKg: number;
  low: number;
  high: number;
  factor: number;
  factorUnit: 'kg/container' | 'kg/L';
  from: 'site-setting' | 'learned' | 'published';
  source: string | null;
};

/**
 * The likely mass of what was measured by volume alone. In order: the site's own factor for that container,
 * the one learned from such containers both counted and weighed, a published one by the litre. A learned or
 * set one serves for litres too where the container's volume is known. Null where no factor or no volume is.
 * Throws a RangeError for an amount below zero.
 * @source see `usualKg` and `publishedKgPerLitre`.
 * @example estimateKg({ material: 'food-scraps', count: 3, containerLitres: 20, setKg: 9.5 })!.estimatedKg // 28.5
 */
export function estimateKg(given: {
  material: string;
  /** Containers, full or in parts (0.5); null where litres were said. */
  count?: number | null;
  litres?: number | null;
  containerLitres?: number | null;
  /** The site's own factor: kg of this material in a full container. */
  setKg?: number | null;
  /** Full containers of this material that were weighed. */
  learned?: Tally | null;
}): Estimate | null {
  const { material, containerLitres } = given;
  const count = given.count ?? null;
  const litres = given.litres ?? (count !== null && containerLitres ? count * containerLitres : null);
  mustLie('amount', litres ?? count ?? 0, 'L', 0, Number.MAX_VALUE);
  const full = given.litres == null ? count : containerLitres ? given.litres / containerLitres : null;
  const usual = given.learned ? usualKg(given.learned) : null;
  const byContainer = (each: Spread, from: 'site-setting' | 'learned'): Estimate => ({
    estimatedKg: full! * each.typical,
    low: full! * each.low,
    high: full! * each.high,
    factor: each.typical,
    factorUnit: 'kg/container',
    from,
    source: null,
  });
  if (full !== null && given.setKg != null)
    return byContainer({ typical: given.setKg, low: given.setKg, high: given.setKg }, 'site-setting');
  if (full !== null && usual) return byContainer(usual, 'learned');
  const published = publishedKgPerLitre(material);
  if (litres === null || published === null) return null;
  return {
    estimatedKg: litres * published.typical,
    low: litres * published.low,
    high: litres * published.high,
    factor: published.typical,
    factorUnit: 'kg/L',
    from: 'published',
    source: published.source,
  };
}

/**
 * Wet bulk density (kg/m³) by a bucket of known volume. Throws a RangeError where it weighs less full.
 * @source Cooperband, The Art and Science of Composting, 2002, as adapted by Zabaleta.
 * @example bucketDensity({ emptyKg: 1, fullKg: 10, litres: 20 }) // 450
 */
export function bucketDensity(bucket: { emptyKg: number; fullKg: number; litres: number }): number {
  mustLie('full bucket', bucket.fullKg, 'kg', bucket.emptyKg, Number.MAX_VALUE);
  mustLie('bucket', bucket.litres, 'L', Number.MIN_VALUE, Number.MAX_VALUE);
  return ((bucket.fullKg - bucket.emptyKg) / bucket.litres) * 1000;
}
