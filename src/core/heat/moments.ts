import type { Moment } from '../picture/types.ts';

const HOUR_MS = 3_600_000;

/**
 * Milliseconds of a UTC instant. Throws a RangeError on what is none.
 * @source ISO 8601
 * @example instantMs('1970-01-01T00:00:01Z') // 1000
 */
export function instantMs(at: string): number {
  const ms = Date.parse(at);
  if (Number.isNaN(ms)) throw new RangeError(`at ${at}: expected an ISO 8601 instant`);
  return ms;
}

/**
 * Hours from one instant to another; negative where `to` is earlier.
 * @source ISO 8601
 * @example hoursBetween('2026-03-02T08:00:00Z', '2026-03-03T09:30:00Z') // 25.5
 */
export const hoursBetween = (from: string, to: string): number => (instantMs(to) - instantMs(from)) / HOUR_MS;

/**
 * The instant `hours` later.
 * @source ISO 8601
 * @example addHours('2026-03-02T08:00:00Z', 1) // '2026-03-02T09:00:00.000Z'
 */
export const addHours = (at: string, hours: number): string =>
  new Date(instantMs(at) + hours * HOUR_MS).toISOString();

/**
 * Order of two moments: by instant, then by entry number, because a message that says `B 60, turned it`
 * makes two entries at one instant and the reading came first.
 * @source none needed: entries are numbered in the order said
 * @example byMoment(momentAt(0, 7), momentAt(0, 8)) // -1
 */
export function byMoment(a: Moment, b: Moment): number {
  return compareInstants(a.at, b.at) || a.entry - b.entry;
}

/** As the book writes instants: of one length and in UTC, so that their letters stand in the order of time. */
const IN_THE_BOOK = 24;
const asInTheBook = (at: string): boolean => at.length === IN_THE_BOOK && at.endsWith('Z');

/**
 * Which of two instants is earlier: under 0 the first, over 0 the second, 0 where they are one.
 * @source ISO 8601
 * @example compareInstants('2026-03-02T08:00:00Z', '2026-03-02T09:00:00.000Z') // -3600000
 */
export function compareInstants(a: string, b: string): number {
  // Thousands of readings are put in order for a reply: no clock arithmetic where the letters tell.
  if (asInTheBook(a) && asInTheBook(b)) return a < b ? -1 : a > b ? 1 : 0;
  return instantMs(a) - instantMs(b);
}
