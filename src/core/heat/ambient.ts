import { daysBetween } from '../calendar.ts';
import type { Moment } from '../picture/types.ts';

export type AmbientReading = Moment & { celsius: number };

/** Days over which ambient is averaged: one afternoon's sun says little about a pile. Common practice. */
export const AMBIENT_DAYS = 7;

export type AmbientMean = { celsius: number; days: number; readings: number; lowestC: number };

/**
 * Ambient as a mean of days: the mean of each local date's mean, over the `days` dates up to and including
 * `localDate`. °C, not rounded; null where no reading lies in them. Throws on fewer than one day.
 * @source common practice: a mean of days, not one reading
 * @example ambientMean([{ ...momentAt(0, 1), celsius: 10 }, { ...momentAt(1, 2), celsius: 14 }], '2026-03-03').celsius // 12
 */
export function ambientMean(
  ambient: readonly AmbientReading[],
  localDate: string,
  days = AMBIENT_DAYS,
): AmbientMean | null {
  if (!(days >= 1)) throw new RangeError(`days ${days} d: expected 1 or more`);
  const byDate = new Map<string, number[]>();
  for (const reading of ambient) {
    const age = daysBetween(reading.localDate, localDate);
    if (age < 0 || age >= days) continue;
    byDate.set(reading.localDate, [...(byDate.get(reading.localDate) ?? []), reading.celsius]);
  }
  if (byDate.size === 0) return null;
  const all = [...byDate.values()];
  return {
    celsius: mean(all.map(mean)),
    days: byDate.size,
    readings: all.flat().length,
    lowestC: Math.min(...all.flat()),
  };
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
