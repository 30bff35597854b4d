import type { Manner } from '#assistant';
import { fromCelsius, fromCelsiusRise, fromCm, fromKg, fromLitres } from '#records';

/** The locale whose numbers and dates a reader of this site is used to. */
function localeOf(how: Pick<Manner, 'language' | 'dayOrder'>): string {
  if (how.language === 'fr') return 'fr-CA';
  if (how.language === 'es') return how.dayOrder === 'mdy' ? 'es-US' : 'es-ES';
  return how.dayOrder === 'mdy' ? 'en-US' : 'en-GB';
}

/** `Ana and Marc`, `Ana, Luc et Marc`. */
export const list = (names: readonly string[], how: Manner): string =>
  new Intl.ListFormat(localeOf(how), { type: 'conjunction' }).format(names);

const numberFormats = new Map<string, Intl.NumberFormat>();
const dateFormats = new Map<string, Intl.DateTimeFormat>();

/** A number as the reader writes it, with at most `digits` decimals and no trailing zeros. */
export function number(value: number, digits: number, how: Manner): string {
  const locale = localeOf(how);
  const key = `${locale}|${digits}`;
  let format = numberFormats.get(key);
  if (!format) {
    format = new Intl.NumberFormat(locale, { maximumFractionDigits: digits, useGrouping: 'min2' });
    numberFormats.set(key, format);
  }
  const rounded = Math.abs(value) < 10 ** -digits / 2 ? 0 : value;
  return format.format(rounded).replace('-', '−');
}

function dateFormat(locale: string, options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  const key = locale + JSON.stringify(options);
  let format = dateFormats.get(key);
  if (!format) {
    format = new Intl.DateTimeFormat(locale, { ...options, timeZone: 'UTC' });
    dateFormats.set(key, format);
  }
  return format;
}

/** `Tue 23 Nov`; the year only where it is not this year's. Local dates are plain calendar days: formatted as UTC. */
export function day(date: string, how: Manner): string {
  const other = date.slice(0, 4) !== how.today.slice(0, 4);
  const text = dateFormat(localeOf(how), {
    weekday: 'short',
    day: 'numeric',
    month: 'short',
    ...(other ? { year: 'numeric' } : {}),
  }).format(new Date(`${date.slice(0, 10)}T00:00:00Z`));
  return text.replaceAll('.', '').replace(/^(\p{L}+),/u, '$1');
}

const bare = (date: string, options: Intl.DateTimeFormatOptions, how: Manner): string =>
  dateFormat(localeOf(how), options)
    .format(new Date(`${date.slice(0, 10)}T00:00:00Z`))
    .replaceAll('.', '');

/** `23 Nov`: for pictures, where the room is short. */
export const shortDay = (date: string, how: Manner): string =>
  bare(date, { day: 'numeric', month: 'short' }, how);

/** `Mon`. */
export const weekday = (date: string, how: Manner): string => bare(date, { weekday: 'short' }, how);

/** `Nov`. */
export const month = (date: string, how: Manner): string => bare(date, { month: 'short' }, how);

/** Whole days from one local date to another. */
export const daysFrom = (from: string, to: string): number =>
  Math.round(
    (Date.parse(`${to.slice(0, 10)}T00:00:00Z`) - Date.parse(`${from.slice(0, 10)}T00:00:00Z`)) / 86_400_000,
  );

const DIGITS = 2;

export function mass(kg: number, how: Manner, withUnit = true, digits = DIGITS): string {
  const unit = how.units.mass;
  const text = number(fromKg(kg, unit), digits, how);
  return withUnit ? `${text} ${unit}` : text;
}

export function volume(litres: number, how: Manner): string {
  const unit = how.units.volume;
  const large = unit === 'L' && litres >= 1000 ? 'm3' : unit;
  const value = fromLitres(litres, large);
  const shown = { L: 'L', gal: 'gal', m3: 'm³', yd3: 'yd³' }[large];
  return `${number(value, large === 'L' || large === 'gal' ? 1 : 2, how)} ${shown}`;
}

export const temperature = (celsius: number, how: Manner, withUnit = true): string =>
  `${number(fromCelsius(celsius, how.units.temperature), 1, how)}${withUnit ? ` °${how.units.temperature}` : ''}`;

export const rise = (celsius: number, how: Manner): string =>
  `${number(fromCelsiusRise(celsius, how.units.temperature), 1, how)} °${how.units.temperature}`;

export const length = (cm: number, how: Manner): string =>
  `${number(fromCm(cm, how.units.length), 0, how)} ${how.units.length}`;

export const density = (kgPerM3: number, how: Manner): string =>
  how.units.mass === 'lb'
    ? `${number((kgPerM3 / 0.45359237) * 0.764554857984, 0, how)} lb/yd³`
    : `${number(kgPerM3, 0, how)} kg/m³`;

/** `7:15 AM`, `07:15`, `07 h 15`: a clock time of the day as the reader writes it. */
export function clock(text: string, how: Manner): string {
  const shown = dateFormat(localeOf(how), { hour: 'numeric', minute: '2-digit' }).format(
    new Date(`1970-01-01T${text.padStart(5, '0')}:00Z`),
  );
  return shown.replaceAll(/[\u00a0\u202f]/g, ' ');
}
