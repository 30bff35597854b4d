// Sums on local calendar dates, as counts of days; no instants, so that no change of clocks can shift a day.

export type CalendarDay = { readonly year: number; readonly month: number; readonly day: number };

/** A day as its count from 1970-01-01 in the Gregorian calendar. */
export function dayNumber({ year, month, day }: CalendarDay): number {
  // days from civil, counted in eras of 400 years that begin on 1 March
  const y = month <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const yearOfEra = y - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * 146097 + dayOfEra - 719468;
}

export function calendarDay(count: number): CalendarDay {
  const z = count + 719468;
  const era = Math.floor(z / 146097);
  const dayOfEra = z - era * 146097;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36524) - Math.floor(dayOfEra / 146096)) /
      365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const mp = Math.floor((5 * dayOfYear + 2) / 153);
  const day = dayOfYear - Math.floor((153 * mp + 2) / 5) + 1;
  const month = mp < 10 ? mp + 3 : mp - 9;
  return { year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0), month, day };
}

/** 0 = Monday. */
export const weekdayOf = (count: number): number => (((count + 3) % 7) + 7) % 7;

const isLeapYear = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

export function daysInMonth(year: number, month: number): number {
  if (month === 2) return isLeapYear(year) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

const two = (n: number): string => String(n).padStart(2, '0');

export function isoDay(count: number): string {
  const { year, month, day } = calendarDay(count);
  return `${String(year).padStart(4, '0')}-${two(month)}-${two(day)}`;
}

export const isoTime = (minute: number): string => `${two(Math.floor(minute / 60))}:${two(minute % 60)}`;

/** `2026-11-24T15:00` as a day count and the minute of the day. */
export function readLocal(local: string): { day: number; minute: number } {
  const [date = '', time = '00:00'] = local.split('T');
  const [year = 1970, month = 1, day = 1] = date.split('-').map(Number);
  const [hour = 0, minute = 0] = time.split(':').map(Number);
  return { day: dayNumber({ year, month, day }), minute: hour * 60 + minute };
}
