import type { Weekday } from '#records';
import { addDays, addMonths, daysBetween, WEEKDAYS, weekdayOf, yearSpan } from '../calendar.ts';

/** How often a duty of the site's own comes round, as data. */
export type Schedule =
  | { every: 'weekday'; on: Weekday[] }
  /** `every other friday`: counted in weeks from the one on or after the day on which it was made. */
  | { every: 'weeks'; weeks: number; on: Weekday }
  | { every: 'days'; days: number }
  | { every: 'months'; months: number }
  | { every: 'month'; day: number }
  /** The first to fourth of a weekday in a month, or the last. */
  | { every: 'month'; nth: Nth; on: Weekday }
  | { every: 'year'; month: number; day: number }
  | { once: string };

const NTHS = ['first', 'second', 'third', 'fourth', 'last'] as const;
type Nth = (typeof NTHS)[number];

const MONTHS = [
  'january',
  'february',
  'march',
  'april',
  'may',
  'june',
  'july',
  'august',
  'september',
  'october',
  'november',
  'december',
];

const NUMBERS: Record<string, number> = {
  a: 1,
  one: 1,
  other: 2,
  second: 2,
  two: 2,
  third: 3,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  twelve: 12,
};

const WORDS: Record<string, Schedule> = {
  day: { every: 'days', days: 1 },
  daily: { every: 'days', days: 1 },
  week: { every: 'days', days: 7 },
  weekly: { every: 'days', days: 7 },
  fortnight: { every: 'days', days: 14 },
  fortnightly: { every: 'days', days: 14 },
  month: { every: 'months', months: 1 },
  monthly: { every: 'months', months: 1 },
  quarter: { every: 'months', months: 3 },
  quarterly: { every: 'months', months: 3 },
  year: { every: 'months', months: 12 },
  yearly: { every: 'months', months: 12 },
  weekday: { every: 'weekday', on: ['monday', 'tuesday', 'wednesday', 'thursday', 'friday'] },
  weekend: { every: 'weekday', on: ['saturday', 'sunday'] },
};

/**
 * A schedule in the log book's own spelling (English, whatever was typed), as data; null where it is none.
 * @source none needed: the log book's own rule
 * @example parseSchedule('every 2 weeks') // { every: 'days', days: 14 }
 * @example parseSchedule('on 1 march') // { every: 'year', month: 3, day: 1 }
 */
export function parseSchedule(said: string): Schedule | null {
  const text = said
    .trim()
    .toLowerCase()
    .replace(/^(every|each|on)\s+/, '')
    .replace(/^the\s+/, '');
  if (Object.hasOwn(WORDS, text)) return WORDS[text]!;
  return (
    weekdays(text) ?? otherWeek(text) ?? interval(text) ?? nthOfMonth(text) ?? dayOfMonth(text) ?? date(text)
  );
}

const weekdayNamed = (text: string): Weekday | undefined =>
  WEEKDAYS.find((day) => day === text || day === text.replace(/s$/, ''));

function otherWeek(text: string): Schedule | null {
  const found = text.match(/^(?:other|second) ([a-z]+)$/);
  const on = found ? weekdayNamed(found[1]!) : undefined;
  return on ? { every: 'weeks', weeks: 2, on } : null;
}

function nthOfMonth(text: string): Schedule | null {
  const found = text.match(/^(first|second|third|fourth|last) ([a-z]+) of (?:the|each|every) month$/);
  const on = found ? weekdayNamed(found[2]!) : undefined;
  return on ? { every: 'month', nth: found![1] as Nth, on } : null;
}

function weekdays(text: string): Schedule | null {
  const names = text.split(/\s*(?:,|&|\band\b|\s)\s*/).filter(Boolean);
  const on = names.map(weekdayNamed);
  if (names.length === 0 || on.some((day) => day === undefined)) return null;
  return { every: 'weekday', on: [...new Set(on as Weekday[])] };
}

function interval(text: string): Schedule | null {
  const found = text.match(/^(\d{1,3}|[a-z]+)\s+(day|week|fortnight|month|quarter|year)s?$/);
  if (!found) return null;
  const count = /^\d/.test(found[1]!) ? Number(found[1]) : (NUMBERS[found[1]!] ?? 0);
  if (count < 1) return null;
  switch (found[2]) {
    case 'day':
      return { every: 'days', days: count };
    case 'week':
      return { every: 'days', days: count * 7 };
    case 'fortnight':
      return { every: 'days', days: count * 14 };
    case 'month':
      return { every: 'months', months: count };
    case 'quarter':
      return { every: 'months', months: count * 3 };
    default:
      return { every: 'months', months: count * 12 };
  }
}

function dayOfMonth(text: string): Schedule | null {
  const found = text.match(/^(\d{1,2})(?:st|nd|rd|th)?(?: (?:of (?:the|each|every) month|monthly))$/);
  const day = found ? Number(found[1]) : text === 'first of the month' ? 1 : 0;
  return day >= 1 && day <= 31 ? { every: 'month', day } : null;
}

function date(text: string): Schedule | null {
  if (/^\d{4}-\d{2}-\d{2}$/.test(text)) return exists(text) ? { once: text } : null;
  const found =
    text.match(/^(?<day>\d{1,2})(?:st|nd|rd|th)?(?: of)? (?<month>[a-z]{3,9})$/) ??
    text.match(/^(?<month>[a-z]{3,9}) (?<day>\d{1,2})(?:st|nd|rd|th)?$/) ??
    text.match(/^(?<number>\d{2})-(?<day>\d{2})$/);
  if (!found?.groups) return null;
  const { day, month, number } = found.groups;
  const index = number ? Number(number) : MONTHS.findIndex((name) => name.startsWith(month!)) + 1;
  if (index < 1 || index > 12) return null;
  // 29 February comes round as the last day of February.
  if (!exists(`2024-${two(index)}-${two(Number(day))}`)) return null;
  return { every: 'year', month: index, day: Number(day) };
}

const two = (number: number): string => String(number).padStart(2, '0');

function exists(localDate: string): boolean {
  const ms = Date.parse(`${localDate}T00:00:00Z`);
  return !Number.isNaN(ms) && new Date(ms).toISOString().slice(0, 10) === localDate;
}

/**
 * The date by which a duty is due, if that is today or was before; null where nothing is due. Calendar days (a
 * weekday, a date) come round whether or not the last was done, and one that was missed is due until the next;
 * intervals count from the last time it was done, the first one from the day on which the duty was made.
 * @source none needed: the log book's own rule
 * @example dueDate({ every: 'days', days: 14 }, { since: '2026-05-01', lastDone: '2026-05-03' }, '2026-05-17') // '2026-05-17'
 */
export function dueDate(
  schedule: Schedule,
  past: { since: string; lastDone: string | null },
  localDate: string,
): string | null {
  const by = latestBy(schedule, past, localDate);
  if (by === null || by > localDate || by < past.since) return null;
  return past.lastDone !== null && past.lastDone >= by ? null : by;
}

function latestBy(
  schedule: Schedule,
  { since, lastDone }: { since: string; lastDone: string | null },
  localDate: string,
): string | null {
  if ('once' in schedule) return schedule.once;
  switch (schedule.every) {
    case 'days':
      return lastDone ? addDays(lastDone, schedule.days) : since;
    case 'months':
      return lastDone ? addMonths(lastDone, schedule.months) : since;
    case 'weekday': {
      for (let back = 0; back < 7; back += 1) {
        const date = addDays(localDate, -back);
        if (schedule.on.includes(weekdayOf(date))) return date;
      }
      return null;
    }
    case 'weeks': {
      let first = since;
      while (weekdayOf(first) !== schedule.on) first = addDays(first, 1);
      const every = schedule.weeks * 7;
      const gone = Math.floor(daysBetween(first, localDate) / every);
      return gone < 0 ? null : addDays(first, gone * every);
    }
    case 'month': {
      const thisMonth = inMonth(localDate, schedule);
      return thisMonth <= localDate ? thisMonth : inMonth(addMonths(onDay(localDate, 1), -1), schedule);
    }
    case 'year': {
      const start = yearSpan(localDate, schedule.month).from;
      const inYear = onDay(start, schedule.day);
      return inYear <= localDate ? inYear : onDay(addMonths(start, -12), schedule.day);
    }
  }
}

/** The date in the month that a date lies in, by its number or by its weekday. */
function inMonth(localDate: string, schedule: Extract<Schedule, { every: 'month' }>): string {
  if ('day' in schedule) return onDay(localDate, schedule.day);
  const { nth, on } = schedule;
  let date = onDay(localDate, nth === 'last' ? 31 : NTHS.indexOf(nth) * 7 + 1);
  // The nth of a weekday is the first one on or after the day (n − 1) weeks in; the last looks back from the end.
  while (weekdayOf(date) !== on) date = addDays(date, nth === 'last' ? -1 : 1);
  return date;
}

/** A day of the month that a date lies in; its last where it has no such day. */
function onDay(localDate: string, day: number): string {
  const first = `${localDate.slice(0, 8)}01`;
  const last = daysBetween(first, addMonths(first, 1));
  return addDays(first, Math.min(day, last) - 1);
}
