import type { Site, Weekday } from '#records';

/** Days of the week, Monday first, as settings and schedules name them. */
export const WEEKDAYS = [
  'monday',
  'tuesday',
  'wednesday',
  'thursday',
  'friday',
  'saturday',
  'sunday',
] as const satisfies readonly Weekday[];

const DAY_MS = 86_400_000;
const MIN_MS = 60_000;

/** Dates are asked for again and again, and parsing one costs twenty times a look in a map. */
const known = new Map<string, number>();
const written = new Map<number, string>();
const KEPT_DATES = 5000;

function dateMs(localDate: string): number {
  const cached = known.get(localDate);
  if (cached !== undefined) return cached;
  const ms = Date.parse(`${localDate}T00:00:00Z`);
  // `2026-02-30` parses as 2 March on some engines: a date that does not come back is none.
  if (Number.isNaN(ms) || dateOf(ms) !== localDate) {
    throw new RangeError(`localDate ${localDate}: expected an existing date YYYY-MM-DD`);
  }
  if (known.size >= KEPT_DATES) known.clear();
  known.set(localDate, ms);
  return ms;
}

function dateOf(ms: number): string {
  const day = Math.floor(ms / DAY_MS);
  const cached = written.get(day);
  if (cached !== undefined) return cached;
  const date = new Date(day * DAY_MS).toISOString().slice(0, 10);
  if (written.size >= KEPT_DATES) written.clear();
  written.set(day, date);
  return date;
}

/**
 * A local date moved by whole days. Throws a RangeError on a date that does not exist.
 * @source ISO 8601, Gregorian calendar
 * @example addDays('2024-02-28', 2) // '2024-03-01'
 */
export const addDays = (localDate: string, days: number): string => dateOf(dateMs(localDate) + days * DAY_MS);

/**
 * Whole local dates from `from` to `to`: 0 on the same date, negative where `to` is earlier.
 * @source ISO 8601, Gregorian calendar
 * @example daysBetween('2026-02-27', '2026-03-02') // 3
 */
export const daysBetween = (from: string, to: string): number => (dateMs(to) - dateMs(from)) / DAY_MS;

/**
 * The same day of the month so many months on; the last day of the month where that day does not exist.
 * @source ISO 8601, Gregorian calendar
 * @example addMonths('2026-01-31', 1) // '2026-02-28'
 */
export function addMonths(localDate: string, months: number): string {
  const date = new Date(dateMs(localDate));
  const first = Date.UTC(date.getUTCFullYear(), date.getUTCMonth() + months, 1);
  const next = new Date(first);
  const last = new Date(Date.UTC(next.getUTCFullYear(), next.getUTCMonth() + 1, 0)).getUTCDate();
  return dateOf(first + (Math.min(date.getUTCDate(), last) - 1) * DAY_MS);
}

/** The weekday of a local date. @source ISO 8601 @example weekdayOf('2026-06-17') // 'wednesday' */
export const weekdayOf = (localDate: string): Weekday =>
  WEEKDAYS[(((dateMs(localDate) / DAY_MS + 3) % 7) + 7) % 7]!;

/**
 * First date of the week that a local date lies in.
 * @source ISO 8601 for Monday; Sunday and Saturday as the site says
 * @example weekOf('2026-06-17', 'monday') // '2026-06-15'
 */
export function weekOf(localDate: string, weekStarts: Site['weekStarts']): string {
  const since = (WEEKDAYS.indexOf(weekdayOf(localDate)) - WEEKDAYS.indexOf(weekStarts) + 7) % 7;
  return addDays(localDate, -since);
}

/**
 * First and last date of the site's year that a local date lies in. Throws a RangeError on a month outside 1 to 12.
 * @source a year of twelve months from the first of the month that the site says
 * @example yearSpan('2026-03-05', 7) // { from: '2025-07-01', to: '2026-06-30' }
 */
export function yearSpan(localDate: string, yearStarts: number): { from: string; to: string } {
  if (!Number.isInteger(yearStarts) || yearStarts < 1 || yearStarts > 12) {
    throw new RangeError(`yearStarts ${yearStarts}: expected a month from 1 to 12`);
  }
  dateMs(localDate);
  const month = Number(localDate.slice(5, 7));
  const year = Number(localDate.slice(0, 4)) - (month < yearStarts ? 1 : 0);
  const from = `${String(year).padStart(4, '0')}-${String(yearStarts).padStart(2, '0')}-01`;
  return { from, to: addDays(addMonths(from, 12), -1) };
}

export type Period = 'week' | 'month' | 'season' | 'year';

/**
 * First and last date of the period that ends with a local date; with `last`, of the whole one before the one that
 * runs. A season is three months.
 * @source weeks and years as `weekOf` and `yearSpan`; three months to a season: common practice, no source
 * @example periodSpan('month', '2026-06-17', { weekStarts: 'monday', yearStarts: 1 }) // { from: '2026-06-01', to: '2026-06-17' }
 */
export function periodSpan(
  period: Period,
  localDate: string,
  site: Pick<Site, 'weekStarts' | 'yearStarts'>,
  last = false,
): { from: string; to: string } {
  const from = {
    week: () => weekOf(localDate, site.weekStarts),
    month: () => `${localDate.slice(0, 7)}-01`,
    season: () => addDays(addMonths(localDate, -3), 1),
    year: () => yearSpan(localDate, site.yearStarts).from,
  }[period]();
  if (!last) return { from, to: localDate };
  const back = {
    week: () => addDays(from, -7),
    month: () => addMonths(from, -1),
    season: () => addMonths(from, -3),
    year: () => addMonths(from, -12),
  }[period]();
  return { from: back, to: addDays(from, -1) };
}

/** Building a formatter costs a hundred times what using it does. */
const formatters = new Map<string, Intl.DateTimeFormat>();

function formatterOf(zone: string): Intl.DateTimeFormat {
  let formatter = formatters.get(zone);
  if (!formatter) {
    formatter = new Intl.DateTimeFormat('en-US', {
      timeZone: zone,
      calendar: 'gregory',
      numberingSystem: 'latn',
      hourCycle: 'h23',
      year: 'numeric',
      month: '2-digit',
      day: '2-digit',
      hour: '2-digit',
      minute: '2-digit',
      second: '2-digit',
    });
    formatters.set(zone, formatter);
  }
  return formatter;
}

function instantMs(instant: string): number {
  const ms = Date.parse(instant);
  if (Number.isNaN(ms)) throw new RangeError(`instant ${instant}: expected an ISO 8601 instant`);
  return ms;
}

/** The wall clock of a zone at an instant, as if it were UTC: the one place where a zone is asked. */
function wallMs(ms: number, zone: string): number {
  const [, month, day, year, hour, minute, second] = formatterOf(zone)
    .format(ms)
    .match(/(\d+)\/(\d+)\/(\d+), (\d+):(\d+):(\d+)/)!
    .map(Number) as number[];
  return Date.UTC(year!, month! - 1, day!, hour!, minute!, second!);
}

const offsetMs = (ms: number, zone: string): number => wallMs(ms, zone) - Math.floor(ms / 1000) * 1000;

/**
 * The local date of an instant in a zone.
 * @source IANA time zone database, through Intl
 * @example localDateOf('2026-06-17T02:29:00.000Z', 'America/St_Johns') // '2026-06-16'
 */
export const localDateOf = (instant: string, zone: string): string =>
  dateOf(wallMs(instantMs(instant), zone));

/**
 * The wall time of an instant in a zone, to the minute.
 * @source IANA time zone database, through Intl
 * @example localTimeOf('2026-06-17T02:31:00.000Z', 'America/St_Johns') // '2026-06-17T00:01'
 */
export const localTimeOf = (instant: string, zone: string): string =>
  new Date(wallMs(instantMs(instant), zone)).toISOString().slice(0, 16);

/**
 * Minutes that the wall time of a zone is ahead of UTC at an instant.
 * @source IANA time zone database, through Intl
 * @example offsetMinOf('2026-06-17T12:00:00.000Z', 'Asia/Kathmandu') // 345
 */
export const offsetMinOf = (instant: string, zone: string): number =>
  offsetMs(instantMs(instant), zone) / MIN_MS;

/**
 * The instant of a wall time (`2026-06-17`, its midnight, or `2026-06-17T07:15`) in a zone. A time that occurs
 * twice is the first one unless `prefer` is `later`; a time that the clocks skip moves forward by what they skip.
 * @source IANA time zone database, through Intl; the rule for skipped and repeated times as in RFC 5545, 3.3.5
 * @example instantOf('2026-11-01T01:30', 'America/New_York') // '2026-11-01T05:30:00.000Z'
 */
export function instantOf(localWhen: string, zone: string, prefer: 'earlier' | 'later' = 'earlier'): string {
  dateMs(localWhen.slice(0, 10));
  const wall = instantMs(localWhen.length > 10 ? `${localWhen}Z` : `${localWhen}T00:00Z`);
  const before = offsetMs(wall - DAY_MS, zone);
  const after = offsetMs(wall + DAY_MS, zone);
  const fits = [before, after].filter((offset) => offsetMs(wall - offset, zone) === offset);
  const offset = fits.length === 0 ? before : prefer === 'earlier' ? fits[0]! : fits.at(-1)!;
  return new Date(wall - offset).toISOString();
}
