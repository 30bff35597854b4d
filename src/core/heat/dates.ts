import type { Moment } from '../picture/types.ts';

const DAY_MS = 86_400_000;
const HOUR_MS = 3_600_000;

/** Days since 1970-01-01 of a local date, so that dates can be counted without a zone. */
export function dayNumber(localDate: string): number {
  const ms = Date.parse(`${localDate}T00:00:00Z`);
  if (Number.isNaN(ms)) throw new RangeError(`localDate ${localDate}: expected YYYY-MM-DD`);
  return ms / DAY_MS;
}

/** The local date that `dayNumber` stands for. */
export const dateOfDay = (day: number): string => new Date(day * DAY_MS).toISOString().slice(0, 10);

/** `localDate` moved by whole days. */
export const addDays = (localDate: string, days: number): string => dateOfDay(dayNumber(localDate) + days);

/** Whole local dates from `from` to `to`; 0 on the same date. */
export const daysBetween = (from: string, to: string): number => dayNumber(to) - dayNumber(from);

/** Milliseconds of a UTC instant. */
export function instantMs(at: string): number {
  const ms = Date.parse(at);
  if (Number.isNaN(ms)) throw new RangeError(`at ${at}: expected an ISO 8601 instant`);
  return ms;
}

/** Hours from one instant to another; negative where `to` is earlier. */
export const hoursBetween = (from: string, to: string): number => (instantMs(to) - instantMs(from)) / HOUR_MS;

/** The instant `hours` later. */
export const addHours = (at: string, hours: number): string =>
  new Date(instantMs(at) + hours * HOUR_MS).toISOString();

/**
 * Order of two moments: by instant, then by entry number, because a message that says `B 60, turned it`
 * makes two entries at one instant and the reading came first.
 */
export function byMoment(a: Moment, b: Moment): number {
  return instantMs(a.at) - instantMs(b.at) || a.entry - b.entry;
}
