import { addDays } from '#core';
import type { Daily } from './fetch.ts';

/** What the duties take heed of. */
type Expectation = {
  expects: 'rain' | 'frost' | 'wind' | 'heat';
  for: string;
  mm: number | null;
  windFrom?: Compass;
};

const COMPASS = [
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
] as const;
type Compass = (typeof COMPASS)[number];

const compassOf = (degrees: number): Compass => COMPASS[Math.round(degrees / 45) % 8]!;

/** From when on a day is one of rain, frost, wind or heat for somebody at a pile. @source common practice, no source */
const RAIN_MM = 5;
const FROST_CELSIUS = 0;
const WIND_KMH = 40;
const HEAT_CELSIUS = 32;

/** Today and the two days after it; a forecast further ahead changes too often to plan a turn by. @source common practice, no source */
const DAYS = 3;

/** What a forecast says of the days from `today` on that somebody at a pile should know, the nearest first. */
export function expectations(daily: Daily, today: string): Expectation[] {
  const last = addDays(today, DAYS - 1);
  const seen = new Set<string>();
  return daily.time
    .flatMap((day, i): Expectation[] => {
      // A date that comes twice speaks once.
      if (day < today || day > last || seen.has(day)) return [];
      seen.add(day);
      const rain = daily.precipitation_mm?.[i] ?? null;
      const low = daily.min_celsius?.[i] ?? null;
      const high = daily.max_celsius?.[i] ?? null;
      const wind = daily.wind_kmh?.[i] ?? null;
      const found: Expectation[] = [];
      if (rain !== null && rain >= RAIN_MM) found.push({ expects: 'rain', for: day, mm: rain });
      if (low !== null && low <= FROST_CELSIUS) found.push({ expects: 'frost', for: day, mm: null });
      const from = daily.wind_from_degrees?.[i] ?? null;
      if (wind !== null && wind >= WIND_KMH) {
        const windFrom = from === null ? {} : { windFrom: compassOf(from) };
        found.push({ expects: 'wind', for: day, mm: null, ...windFrom });
      }
      if (high !== null && high >= HEAT_CELSIUS) found.push({ expects: 'heat', for: day, mm: null });
      return found;
    })
    .sort((a, b) => (a.for < b.for ? -1 : a.for > b.for ? 1 : 0));
}

/**
 * The mean temperature of a day: as the service gives it, else the middle of its least and its most; null where it
 * gives neither. @source the middle of the extremes as a daily mean: common practice
 */
export function meanCelsius(daily: Daily, day: string): number | null {
  const i = daily.time.indexOf(day);
  if (i < 0) return null;
  const mean = daily.mean_celsius?.[i] ?? null;
  const low = daily.min_celsius?.[i] ?? null;
  const high = daily.max_celsius?.[i] ?? null;
  if (mean !== null) return mean;
  return low === null || high === null ? null : (low + high) / 2;
}
