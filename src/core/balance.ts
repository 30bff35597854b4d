import { streamsOf, totalsBetween } from './period.ts';
import type { Picture } from './picture/types.ts';

export type MassBalance = {
  from: string;
  to: string;
  inKg: { feed: number; bulking: number; water: number; estimated: number };
  outKg: { compost: number; residue: number; other: number };
  /** Litres of compost that left without being weighed; they are in no mass. */
  compostLitres: number;
  /** Lost as gas and steam by the published range, of what went in. */
  expectedLossKg: { low: number; high: number };
  /** What went in less what came out: lost, or still in the piles. */
  notOutKg: number;
  /** What is left when the published loss is taken off: in the piles, or not accounted for; below 0, more came out than can be. */
  unexplainedKg: { low: number; high: number };
  yield: { kgPerKg: number | null; litresPerKg: number | null };
};

/**
 * Share of the mass that goes off as gas and steam.
 * @source mass 40 to 50 %: extension statement (from memory); food scraps and leaves 59 to 62 % in 120 days:
 * Karnchanawong & Suriyanon, Resources, Conservation and Recycling 55, 2011 (seen)
 */
export const MASS_LOSS = { low: 0.4, high: 0.62 } as const;

/**
 * Litres of compost for one kg that came in, as large sites have it.
 * @source Washington State Department of Ecology, facility totals 2015 to 2020: 0.85 to 1.04 yd³ a short ton (seen)
 */
export const YIELD_LITRES_PER_KG = { low: 0.72, high: 0.87 } as const;

/**
 * What went in against what came out between two local dates, both included. kg. Nothing is invented to make it
 * close: what cannot be explained is said.
 * @source conservation of mass; MASS_LOSS
 * @example massBalance(picture, '2026-01-01', '2026-12-31').unexplainedKg // { low: 1200, high: 3400 }
 */
export function massBalance(picture: Picture, from: string, to: string): MassBalance {
  const totals = totalsBetween(picture, from, to);
  const streams = streamsOf(totals, picture.base);
  const mass = (pick: (material: string, feed: boolean) => boolean): number =>
    streams
      .filter(({ material, feed }) => pick(material, feed))
      .reduce((sum, { kg, estimatedKg }) => sum + kg + estimatedKg, 0);
  const feed = mass((_, isFeed) => isFeed);
  const water = mass((material) => material === 'water');
  const bulking = mass((material, isFeed) => !isFeed && material !== 'water');
  const others = Object.entries(totals.removedOther);
  const residue = totals.removedOther.residue?.kg ?? 0;
  const other = others.reduce((sum, [material, { kg }]) => (material === 'residue' ? sum : sum + kg), 0);
  const inKg = feed + bulking + water;
  const notOutKg = inKg - totals.removedKg - residue - other;
  const expectedLossKg = { low: inKg * MASS_LOSS.low, high: inKg * MASS_LOSS.high };
  return {
    from,
    to,
    inKg: { feed, bulking, water, estimated: streams.reduce((sum, { estimatedKg }) => sum + estimatedKg, 0) },
    outKg: { compost: totals.removedKg, residue, other },
    compostLitres: totals.removedLitres,
    expectedLossKg,
    notOutKg,
    unexplainedKg: { low: notOutKg - expectedLossKg.high, high: notOutKg - expectedLossKg.low },
    yield: {
      kgPerKg: feed > 0 && totals.removedKg > 0 ? totals.removedKg / feed : null,
      litresPerKg: feed > 0 && totals.removedLitres > 0 ? totals.removedLitres / feed : null,
    },
  };
}
