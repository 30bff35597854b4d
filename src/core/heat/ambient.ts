import { daysBetween } from '../calendar.ts';
import type { Moment } from '../picture/types.ts';

/** What somebody read of the air; or, as `standIn`, the mean of a day that a forecast gave. */
export type AmbientReading = Moment & { celsius: number; standIn?: boolean };

/** Days over which ambient is averaged: one afternoon's sun says little about a pile. Common practice. */
export const AMBIENT_DAYS = 7;

/** `standInDays`: of so many of the days nothing but a forecast is known. */
export type AmbientMean = {
  celsius: number;
  days: number;
  readings: number;
  lowestC: number;
  standInDays: number;
};

/**
 * Ambient as a mean of days: the mean of each local date's mean, over the `days` dates up to and including
 * `localDate`; a day that somebody read is not told by its forecast. °C, not rounded; null where no reading lies in them. Throws on fewer than one day.
 * @source common practice: a mean of days, not one reading
 * @example ambientMean([{ ...momentAt(0, 1), celsius: 10 }, { ...momentAt(1, 2), celsius: 14 }], '2026-03-03').celsius // 12
 */
export function ambientMean(
  ambient: readonly AmbientReading[],
  localDate: string,
  days = AMBIENT_DAYS,
): AmbientMean | null {
  if (!(days >= 1)) throw new RangeError(`days ${days} d: expected 1 or more`);
  const read = new Map<string, number[]>();
  const stoodIn = new Map<string, number[]>();
  for (const reading of ambient) {
    const age = daysBetween(reading.localDate, localDate);
    if (age < 0 || age >= days) continue;
    const byDate = reading.standIn ? stoodIn : read;
    byDate.set(reading.localDate, [...(byDate.get(reading.localDate) ?? []), reading.celsius]);
  }
  const forecastOnly = [...stoodIn].filter(([date]) => !read.has(date));
  const all = [...read.values(), ...forecastOnly.map(([, values]) => values)];
  if (all.length === 0) return null;
  return {
    celsius: mean(all.map(mean)),
    days: all.length,
    readings: all.flat().length,
    lowestC: Math.min(...all.flat()),
    standInDays: forecastOnly.length,
  };
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
