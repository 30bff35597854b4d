// Days said in words: today, weekdays, `3 days ago`, `12 May`, `on the 9th`.
import { calendarDay, dayNumber, daysInMonth, weekdayOf } from './calendar.ts';
import { isJoining, type NamedWeekday, phraseAt } from './lexicon.ts';
import {
  type DayPiece,
  isEnd,
  isHead,
  isInsideNumber,
  isNumber,
  isNumberGoingOn,
  isWord,
  pastJoin,
  type Scan,
} from './scan.ts';

const dayBack = (scan: Scan, weekday: number): number => {
  const gap = (weekdayOf(scan.today) - weekday + 7) % 7;
  return scan.isForecast ? scan.today + ((7 - gap) % 7) : scan.today - gap;
};

function pastPossessive({ tokens }: Scan, at: number): number {
  const letter = tokens[at + 1];
  return isJoining(tokens[at]) && letter?.text === 's' && letter.isGlued ? at + 2 : at;
}

/** `yesterday`, `hier soir`, `anteayer`, `last week`. */
export function readNamedDay(scan: Scan, at: number): DayPiece | null {
  const { tokens, lexicon, today } = scan;
  const period = phraseAt(lexicon.periods, tokens, at);
  const named = phraseAt(lexicon.days, tokens, at);
  if (period !== null && (named === null || period.end > named.end)) {
    return { from: at, to: period.end, problem: 'ambiguous', choices: [] };
  }
  if (named === null) return null;
  const { back, isEvening } = named.value;
  // `por la mañana`, `de la mañana` and `7 mañana` speak of the morning
  const before = tokens[at - 1];
  if (
    back === -1 &&
    isWord(before) &&
    !tokens[at]!.opensLine &&
    phraseAt(lexicon.partsOfDay, tokens, at - 2) !== null
  )
    return null;
  let to = named.end;
  const part = phraseAt(lexicon.partsOfDay, tokens, to);
  let evening = isEvening;
  to = pastPossessive(scan, to);
  if (part !== null && !isNumber(tokens[at - 1]) && !tokens[to]!.opensLine) {
    to = part.end;
    evening ||= part.value;
  }
  return { from: at, to, day: today - back, isEvening: evening };
}

/** `3 days ago`, `il y a 2 jours`, `hace una semana`. */
export function readAgo(scan: Scan, at: number): DayPiece | null {
  const { tokens, lexicon, today, minute } = scan;
  const lead = phraseAt(lexicon.agoBefore, tokens, at);
  const numberAt = lead === null ? at : lead.end;
  const token = tokens[numberAt];
  if (token === undefined || (lead === null && isInsideNumber(tokens, at))) return null;
  const before = tokens[at - 1];
  if (lead === null && isWord(before) && !tokens[at]!.opensLine && lexicon.agoParts.has(before.text))
    return null;
  const length = readLength(scan, numberAt);
  if (length === null) return null;
  const tail = phraseAt(lexicon.agoAfter, tokens, length.end);
  if (lead === null && tail === null) return null;
  const to = tail?.end ?? length.end;
  if (length.isVague) return { from: at, to, problem: 'ambiguous', choices: [] };
  if (length.isDays) return { from: at, to, day: today - Math.floor(length.minutes / 1440) };
  const moment = today * 1440 + minute - length.minutes;
  return { from: at, to, day: Math.floor(moment / 1440), minute: ((moment % 1440) + 1440) % 1440 };
}

const minutesIn = { minute: 1, hour: 60, day: 1440, week: 10_080, month: 0 } as const;

type Length = {
  readonly end: number;
  readonly minutes: number;
  readonly isDays: boolean;
  readonly isVague: boolean;
};

/** `3 days`, `une semaine`, `1 hour 30 minutes`: a length of time, of at most two pieces. */
function readLength(scan: Scan, at: number): Length | null {
  const { tokens, lexicon } = scan;
  let total = null as Length | null;
  let i = at;
  for (let piece = 0; piece < 2; piece += 1) {
    const token = tokens[i];
    if (token === undefined || (piece > 0 && token.opensLine)) break;
    const count = token.kind === 'number' ? Number(token.text) : lexicon.numbers.get(token.text);
    if (count === undefined || count > 400 || isNumberGoingOn(tokens, i)) break;
    let unitAt = i + 1;
    const joiner = tokens[unitAt];
    if (isWord(joiner) && !lexicon.units.has(joiner.text) && lexicon.joiners.has(joiner.text)) unitAt += 1;
    const unit = tokens[unitAt];
    const kind = unit === undefined || unit.opensLine ? undefined : lexicon.units.get(unit.text);
    if (kind === undefined) break;
    total = {
      end: unitAt + 1,
      minutes: (total?.minutes ?? 0) + count * minutesIn[kind],
      isDays: (total?.isDays ?? true) && kind !== 'hour' && kind !== 'minute',
      isVague: (total?.isVague ?? false) || kind === 'month',
    };
    // `1 hour 30 minutes` and `1 hora y 30 minutos`: at most one word between
    i = isNumber(tokens[unitAt + 1]) ? unitAt + 1 : unitAt + 2;
    if (!isNumber(tokens[i]) || !isWord(tokens[i - 1])) break;
  }
  return total;
}

function isWeekdaySafe(scan: Scan, at: number, { isRisky, isOwner, entryWords }: NamedWeekday): boolean {
  const { tokens, lexicon } = scan;
  const next = tokens[pastJoin(tokens, at + 1)];
  if (isOwner) return isWord(next) && entryWords.has(next.text);
  const before = at > 0 && !tokens[at]!.opensLine ? tokens[at - 1] : undefined;
  const isAfterLead =
    isWord(before) &&
    (lexicon.before.has(before.text) ||
      lexicon.lastBefore.has(before.text) ||
      lexicon.nextBefore.has(before.text));
  const hasPart = phraseAt(lexicon.partsOfDay, tokens, at + 1) !== null;
  if (hasPart) return true;
  const closes = isEnd(tokens, at + 1);
  if (isAfterLead && (closes || isNumber(next) || (isWord(next) && (entryWords.has(next.text) || !isRisky))))
    return true;
  if (!isHead(tokens, at)) return !isRisky && closes && !isWord(next);
  if (closes || isNumber(next)) return true;
  return isWord(next) && (!isRisky || entryWords.has(next.text));
}

/** A weekday, full or short, with what `last`, `next` or a day of the month beside it say. */
export function readWeekday(scan: Scan, at: number): DayPiece | null {
  const { tokens, lexicon, today } = scan;
  const token = tokens[at];
  if (!isWord(token)) return null;
  const named = lexicon.weekdays.get(token.text);
  if (named === undefined) return null;
  if (named.isShort && !isWeekdaySafe(scan, at, named)) return null;
  // `mar 12 de mayo`, `mar 12` where it is a month are read as such elsewhere
  let from = at;
  let to = at + 1;
  const lead = leadBefore(scan, at);
  from = lead.from;
  let { isLast, isNext, isThis } = lead;
  if (named.isShort && tokens[to]?.text === '.' && tokens[to]!.isGlued && !isNumber(tokens[to + 1])) to += 1;
  to = pastPossessive(scan, to);
  const week = phraseAt(lexicon.lastWeek, tokens, to);
  if (week !== null) {
    return { from, to: week.end, day: today - weekdayOf(today) - 7 + named.weekday };
  }
  const last = phraseAt(lexicon.lastAfter, tokens, to);
  const next = phraseAt(lexicon.nextAfter, tokens, to);
  if (last !== null) [isLast, to] = [true, last.end];
  else if (next !== null) [isNext, to] = [true, next.end];
  let isEvening = false;
  const part = phraseAt(lexicon.partsOfDay, tokens, to);
  if (part !== null && !tokens[to]!.opensLine) [isEvening, to] = [part.value, part.end];
  // a date beside it: `lundi 12 mai`, `Monday the 12th`, `mon 5/9`
  const comma = tokens[to]?.text === ',' ? to + 1 : to;
  const dated =
    readDayMonth(scan, comma) ?? readNumericBeside(scan, comma) ?? readDayOfMonth(scan, comma, true);
  if (dated !== null && dated.problem === undefined && dated.day !== undefined) {
    if (weekdayOf(dated.day) === named.weekday) return { from, to: dated.to, day: dated.day, isEvening };
    return {
      from,
      to: dated.to,
      day: dated.day,
      problem: 'contradicts-weekday',
      choices: [dated.day, dayBack(scan, named.weekday)],
    };
  }
  if (dated !== null) return { ...dated, from };
  let day = dayBack(scan, named.weekday);
  if (isNext || (isThis && !scan.isForecast && day !== today)) {
    day = today + ((named.weekday - weekdayOf(today) + 7) % 7 || 7);
    return { from, to, day, isEvening };
  }
  if (day !== today || isThis) return { from, to, day, isEvening };
  if (isLast) return { from, to, day: today - 7, isEvening };
  const other = scan.isForecast ? today + 7 : today - 7;
  return { from, to, day, isEvening, problem: 'weekday-is-today', choices: [today, other] };
}

function leadBefore(
  scan: Scan,
  at: number,
): { from: number; isLast: boolean; isNext: boolean; isThis: boolean } {
  const { tokens, lexicon } = scan;
  const lead = { from: at, isLast: false, isNext: false, isThis: false };
  for (let back = 2; back >= 1; back -= 1) {
    const start = at - back;
    if (start < 0 || tokens.slice(start + 1, at + 1).some((token) => token.opensLine)) continue;
    if (phraseAt(lexicon.lastBefore, tokens, start)?.end === at)
      return withBefore(scan, { ...lead, from: start, isLast: true });
    if (phraseAt(lexicon.nextBefore, tokens, start)?.end === at)
      return withBefore(scan, { ...lead, from: start, isNext: true });
  }
  const before = tokens[at - 1];
  if (isWord(before) && !tokens[at]!.opensLine && lexicon.current.has(before.text))
    return { ...lead, from: at - 1, isThis: true };
  return withBefore(scan, lead);
}

function withBefore<T extends { from: number }>(scan: Scan, lead: T): T {
  const before = scan.tokens[lead.from - 1];
  const isBefore =
    isWord(before) && !scan.tokens[lead.from]!.opensLine && scan.lexicon.before.has(before.text);
  return isBefore ? withBefore(scan, { ...lead, from: lead.from - 1 }) : lead;
}

/** The most recent day (or, of a forecast, the next) with this day and month. */
export function resolveDayMonth(
  scan: Scan,
  day: number,
  month: number,
  year: number | undefined,
): Omit<DayPiece, 'from' | 'to'> {
  if (month < 1 || month > 12 || day < 1 || day > 31) return { problem: 'impossible', choices: [] };
  const now = calendarDay(scan.today);
  let inYear = year ?? now.year;
  if (year === undefined) {
    const isAfter = month > now.month || (month === now.month && day > now.day);
    if (isAfter && !scan.isForecast) inYear -= 1;
    if (!isAfter && scan.isForecast && (month !== now.month || day !== now.day)) inYear += 1;
  }
  if (day > daysInMonth(inYear, month)) return { problem: 'impossible', choices: [] };
  const count = dayNumber({ year: inYear, month, day });
  if (count > scan.today && !scan.isForecast) {
    const lastYear =
      day <= daysInMonth(inYear - 1, month) ? dayNumber({ year: now.year, month, day }) : count;
    return { day: count, problem: 'in-future', choices: lastYear <= scan.today ? [lastYear] : [] };
  }
  return { day: count };
}

function readYear(scan: Scan, at: number): { year: number; end: number } | null {
  const { tokens, lexicon } = scan;
  let i = at;
  if (tokens[i]?.text === ',' || (isWord(tokens[i]) && lexicon.joiners.has(tokens[i]!.text))) i += 1;
  const isShort = (tokens[i]?.text === "'" || tokens[i]?.text === '’') && isNumber(tokens[i + 1]);
  const token = tokens[isShort ? i + 1 : i];
  if (!isNumber(token) || token.opensLine) return null;
  if (isShort && token.text.length === 2) return { year: 2000 + Number(token.text), end: i + 2 };
  const year = Number(token.text);
  return token.text.length === 4 && year >= 1990 && year <= 2100 ? { year, end: i + 1 } : null;
}

/** The number or ordinal word of a day: `9`, `9th`, `1er`, `first`. */
function readDayNumber(scan: Scan, at: number): { day: number; end: number; isOrdinal: boolean } | null {
  const { tokens, lexicon } = scan;
  const token = tokens[at];
  if (token === undefined) return null;
  if (token.kind === 'word') {
    const day = lexicon.ordinals.get(token.text);
    // `twenty-first` is no first
    const before = token.opensLine ? undefined : tokens[isJoining(tokens[at - 1]) ? at - 2 : at - 1];
    return day === undefined || (isWord(before) && lexicon.numbers.has(before.text))
      ? null
      : { day, end: at + 1, isOrdinal: true };
  }
  if (token.kind !== 'number' || token.text.length > 2 || isInsideNumber(scan.tokens, at)) return null;
  const next = tokens[at + 1];
  if (next?.isGlued && !next.opensLine && lexicon.ordinalEndings.has(next.text)) {
    return { day: Number(token.text), end: at + 2, isOrdinal: true };
  }
  if (isNumberGoingOn(tokens, at)) return null;
  return { day: Number(token.text), end: at + 1, isOrdinal: false };
}

/** `12 May`, `May 12`, `3 de junio`, `1er juin 2026`; the month makes it a date. */
export function readDayMonth(scan: Scan, at: number): DayPiece | null {
  const { tokens, lexicon } = scan;
  const first = tokens[at];
  if (first === undefined) return null;
  let start = at;
  if (isWord(first) && lexicon.joiners.has(first.text)) start = at + 1;
  const isLed = isHead(tokens, at) || start > at || isAfterLead(scan, at);
  const spelt = phraseAt(lexicon.dayWords, tokens, start);
  const day =
    spelt === null ? readDayNumber(scan, start) : { day: spelt.value, end: spelt.end, isOrdinal: true };
  if (day !== null) {
    let i = day.end;
    if (isWord(tokens[i]) && lexicon.joiners.has(tokens[i]!.text)) i += 1;
    else if (isJoining(tokens[i])) i += 1;
    const month =
      isWord(tokens[i]) && !tokens[i]!.opensLine ? lexicon.months.get(tokens[i]!.text) : undefined;
    if (month !== undefined && day.day <= 39) {
      let end = i + 1;
      if (tokens[end]?.text === '.' && tokens[end]!.isGlued && !tokens[end + 1]?.isGlued) end += 1;
      const year = readYear(scan, end);
      const next = tokens[end];
      const isVerb = isWord(next) && lexicon.afterNoMonth.has(next.text);
      const isSure =
        !month.isRisky ||
        year !== null ||
        (!isVerb && (isLed || day.isOrdinal || i > day.end || isEnd(tokens, end)));
      if (isSure && !(month.isRisky && isVerb)) {
        return { from: at, to: year?.end ?? end, ...resolveDayMonth(scan, day.day, month.month, year?.year) };
      }
    }
  }
  const month = isWord(tokens[start]) ? lexicon.months.get(tokens[start]!.text) : undefined;
  if (month === undefined) return null;
  let i = start + 1;
  if (isJoining(tokens[i])) i += 1;
  if (isWord(tokens[i]) && lexicon.joiners.has(tokens[i]!.text)) i += 1;
  const speltAfter = phraseAt(lexicon.dayWords, tokens, i);
  const after =
    speltAfter === null || lexicon.numbers.has(tokens[i]!.text)
      ? readDayNumber(scan, i)
      : { day: speltAfter.value, end: speltAfter.end, isOrdinal: true };
  if (after === null || after.day > 39 || tokens[i]!.opensLine) return null;
  const year = readYear(scan, after.end);
  const isWeekdayToo = lexicon.weekdays.has(tokens[start]!.text);
  if (!after.isOrdinal && year === null) {
    // `mar 40` and `may 3 carts` leave the number to what follows it
    if (after.day > 31 && month.isRisky) return null;
    if (isWeekdayToo || (month.isRisky && !isLed)) return null;
    if (after.day > 31 && !isLed) return null;
  }
  return {
    from: at,
    to: year?.end ?? after.end,
    ...resolveDayMonth(scan, after.day, month.month, year?.year),
  };
}

function isAfterLead(scan: Scan, at: number): boolean {
  const before = scan.tokens[at - 1];
  return (
    isWord(before) &&
    !scan.tokens[at]!.opensLine &&
    (scan.lexicon.before.has(before.text) || scan.lexicon.weekdays.has(before.text))
  );
}

let readNumericBeside: (scan: Scan, at: number) => DayPiece | null = () => null;

/** Lets the reader of numeric dates be asked for the date beside a weekday. */
export function setNumericReader(reader: (scan: Scan, at: number) => DayPiece | null): void {
  readNumericBeside = reader;
}

/** `on the 9th`, `le 9`, `el día 9`; after a weekday also `the 12th` and `12th`. */
export function readDayOfMonth(scan: Scan, at: number, isAfterWeekday: boolean): DayPiece | null {
  const { tokens, lexicon } = scan;
  const lead = phraseAt(lexicon.beforeDay, tokens, at);
  let i = lead === null ? at : lead.end;
  const the = tokens[at];
  if (lead === null && isWord(the) && lexicon.joiners.has(the.text)) i = at + 1;
  const day = readDayNumber(scan, i);
  if (day === null || tokens[i]!.opensLine) return null;
  const isNumeral = isNumber(tokens[i]);
  if (!isNumeral && !(lead !== null || isAfterWeekday)) return null;
  if (!day.isOrdinal) {
    if (lead === null || day.day > 31) return null;
    const next = tokens[day.end];
    const isOpen = isHead(tokens, at) || isEnd(tokens, day.end) || isNumber(next);
    // `le 10 à 14h`: a time of day may stand behind what else rules a day out.
    const timed =
      isWord(next) &&
      next.text === 'a' &&
      /^\d{1,2}$/.test(tokens[day.end + 1]?.text ?? '') &&
      tokens[day.end + 2]?.isGlued === true;
    if (!isOpen || (isWord(next) && !next.opensLine && lexicon.afterNoDay.has(next.text) && !timed))
      return null;
    if (next?.isGlued && next.kind === 'word') return null;
  } else {
    if (lead === null && i === at && !isAfterWeekday) return null;
    const next = tokens[day.end];
    // `the 2nd cart` counts carts, `on the 9th cart 61` and `sunday 22nd cart 61` do not
    const isDated = isAfterWeekday || (lead !== null && isWord(next) && lexicon.measured.has(next.text));
    const isNoun = isWord(next) && !next.opensLine && (lexicon.afterNoDay.has(next.text) || !isNumeral);
    if (isNoun && !isDated) return null;
  }
  return { from: at, to: day.end, ...resolveDayOfMonth(scan, day.day) };
}

function resolveDayOfMonth(scan: Scan, day: number): Omit<DayPiece, 'from' | 'to'> {
  if (day < 1 || day > 31) return { problem: 'impossible', choices: [] };
  let { year, month } = calendarDay(scan.today);
  const step = scan.isForecast ? 1 : -1;
  // a month without that day is passed over: on 5 March, `the 30th` is 30 January
  for (let tries = 0; tries < 4; tries += 1) {
    if (day <= daysInMonth(year, month)) {
      const count = dayNumber({ year, month, day });
      if (step * (count - scan.today) >= 0) return { day: count };
    }
    month += step;
    if (month < 1) [month, year] = [12, year - 1];
    if (month > 12) [month, year] = [1, year + 1];
  }
  return { problem: 'impossible', choices: [] };
}
