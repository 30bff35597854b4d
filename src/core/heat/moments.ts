import type { Moment } from '../picture/types.ts';

const HOUR_MS = 3_600_000;

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
