// The dates and clock times of short log messages, in the site's languages and day order; a log book looks back.
// The only file that knows chrono-node: it is asked about what the own lists left over, and nothing else.
// By language: the whole library is six times as many files, which a start has to read.
import { casual as en } from 'chrono-node/en';
import { casual as es } from 'chrono-node/es';
import { casual as fr } from 'chrono-node/fr';
import { isoDay, isoTime, readLocal } from './dates/calendar.ts';
import { readClock, type TimePiece } from './dates/clock.ts';
import {
  readAgo,
  readDayMonth,
  readDayOfMonth,
  readNamedDay,
  readWeekday,
  resolveDayMonth,
  setNumericReader,
} from './dates/days.ts';
import { dateLexicon, phraseAt } from './dates/lexicon.ts';
import { readNumeric } from './dates/numeric.ts';
import type { DateProblem, DayPiece, Scan } from './dates/scan.ts';
import { cutDateTokens, type DateToken } from './dates/words.ts';

setNumericReader(readNumeric);

/** What the reading of dates must know of the site and the moment. */
export type WhenContext = {
  readonly languages: readonly string[];
  readonly dayOrder: 'dmy' | 'mdy' | 'ymd';
  /** the site's wall time of sending: `2026-11-24T15:00` */
  readonly nowLocal: string;
  /** minutes east of UTC at that moment */
  readonly offsetMin: number;
};

/** A date in a message: where it stands (string indices), and what it says. */
export type DateSpan = {
  readonly start: number;
  readonly end: number;
  /** `2026-06-17`, or `2026-06-17T07:15` where a clock time was said */
  readonly when?: string;
  /** it lies ahead: only a forecast may */
  readonly future?: boolean;
  /** why it must be asked about */
  readonly problem?: DateProblem;
  /** what it may have meant, the likeliest first */
  readonly choices?: readonly string[];
  /** it opens the message or a line, and carries on until another */
  readonly heading: boolean;
};

type Piece = DayPiece & { readonly time?: TimePiece };

const isBlocked = (taken: readonly { start: number; end: number }[], start: number, end: number): boolean =>
  taken.some((span) => span.start < end && start < span.end);

function readDay(scan: Scan, at: number): DayPiece | null {
  const token = scan.tokens[at]!;
  if (token.kind === 'number') return readNumeric(scan, at) ?? readDayMonth(scan, at) ?? readAgo(scan, at);
  if (token.kind !== 'word') return null;
  const lead =
    phraseAt(scan.lexicon.beforeDay, scan.tokens, at)?.end ??
    (scan.lexicon.before.has(token.text) ? at + 1 : at);
  const led =
    lead === at || scan.tokens[lead]?.opensLine !== false
      ? null
      : (readNumeric(scan, lead) ?? readDayMonth(scan, lead));
  if (led !== null) return { ...led, from: at };
  return (
    readNamedDay(scan, at) ??
    readAgo(scan, at) ??
    readDayMonth(scan, at) ??
    readWeekday(scan, at) ??
    readDayOfMonth(scan, at, false)
  );
}

/** Whether a day or a time can begin at a token: most tokens are ruled out by one look at them and the next. */
function mayOpen({ tokens, lexicon }: Scan, at: number): boolean {
  const token = tokens[at]!;
  if (token.kind === 'word') return lexicon.opening.has(token.text);
  if (token.kind === 'mark') return token.text === '@';
  // `0715`
  if (token.text.length === 4) return true;
  const next = tokens[at + 1];
  return next !== undefined && lexicon.following.has(next.text);
}

const bridgeMarks = new Set([',', '-', '–', ':', '(']);

function collect(scan: Scan, taken: readonly { start: number; end: number }[]): Piece[] {
  const { tokens } = scan;
  const pieces: Piece[] = [];
  let pendingTime: TimePiece | null = null;
  const flush = (): void => {
    if (pendingTime !== null) pieces.push({ from: pendingTime.from, to: pendingTime.to, time: pendingTime });
    pendingTime = null;
  };
  let i = 0;
  while (i < tokens.length) {
    const token = tokens[i]!;
    if (!mayOpen(scan, i)) {
      i += 1;
      continue;
    }
    const day = readDay(scan, i);
    if (day !== null && !isBlocked(taken, tokens[day.from]!.start, tokens[day.to - 1]!.end)) {
      const before: TimePiece | null = pendingTime;
      let joined: Piece = day;
      if (before !== null && isBeside(tokens, before.to, day.from)) {
        joined = { ...day, from: before.from, time: before };
        pendingTime = null;
      } else flush();
      if (joined.time === undefined && day.minute === undefined) {
        let j = day.to;
        if (tokens[j]?.kind === 'mark' && bridgeMarks.has(tokens[j]!.text) && !tokens[j]!.opensLine) j += 1;
        const time = tokens[j] !== undefined && !tokens[j]!.opensLine ? readClock(scan, j, true) : null;
        if (time !== null && !isBlocked(taken, tokens[j]!.start, tokens[time.to - 1]!.end))
          joined = { ...day, to: time.to, time };
      }
      pieces.push(joined);
      i = joined.to;
      continue;
    }
    const part = phraseAt(scan.lexicon.partsOfDay, tokens, i);
    if (part !== null && part.end > i + 1) {
      // `après-midi` holds no noon, `por la mañana` no tomorrow
      i = part.end;
      continue;
    }
    const time = readClock(scan, i, false);
    if (time !== null && !isBlocked(taken, token.start, tokens[time.to - 1]!.end)) {
      flush();
      pendingTime = time;
      i = time.to;
      continue;
    }
    i += 1;
  }
  flush();
  return pieces.sort((a, b) => a.from - b.from);
}

function isBeside(tokens: readonly DateToken[], end: number, start: number): boolean {
  if (start < end || start - end > 1) return false;
  if (tokens[end]?.opensLine) return false;
  return start === end || bridgeMarks.has(tokens[end]!.text);
}

/** The minute of the day that a time beside a day says: `9` on an evening is 21:00. */
function minuteOf(scan: Scan, piece: Piece): number | undefined {
  const { time } = piece;
  if (time === undefined) return piece.minute;
  if (time.isSure || time.minute >= 720) return time.minute;
  if (piece.isEvening) return time.minute + 720;
  // nobody works a pile before six: `at 3`, once three in the afternoon is past, is that
  const isPast =
    piece.day === undefined || piece.day === scan.today ? time.minute + 720 <= scan.minute : true;
  return time.minute < 360 && isPast ? time.minute + 720 : time.minute;
}

function spanOf(scan: Scan, piece: Piece): DateSpan {
  const { tokens, today } = scan;
  const from = piece.from;
  const start = tokens[from]!.start;
  const end = tokens[piece.to - 1]!.end;
  const heading = tokens[from]!.opensLine;
  const minute = minuteOf(scan, piece);
  const told = (day: number): string => isoDay(day) + (minute === undefined ? '' : `T${isoTime(minute)}`);
  const day = piece.day ?? (piece.time === undefined ? undefined : today);
  if (piece.problem !== undefined) {
    const choices = piece.choices?.map(told) ?? [];
    return { start, end, problem: piece.problem, ...(choices.length === 0 ? {} : { choices }), heading };
  }
  if (day === undefined) return { start, end, problem: 'ambiguous', heading };
  if (day > today) return { start, end, when: told(day), future: true, heading };
  if (day === today && minute !== undefined && minute > scan.minute) {
    if (scan.isForecast) return { start, end, when: told(day), future: true, heading };
    return { start, end, problem: 'in-future', choices: [told(today - 1), told(today)], heading };
  }
  return { start, end, when: told(day), heading };
}

const parsers = { en, fr, es } as const;

function askChrono(
  text: string,
  found: readonly DateSpan[],
  taken: readonly { start: number; end: number }[],
  context: WhenContext,
  scan: Scan,
): DateSpan[] {
  const masked = [...taken, ...found];
  const isTriggered = scan.tokens.some(
    (token) =>
      token.kind === 'word' &&
      scan.lexicon.leftover.has(token.text) &&
      !isBlocked(masked, token.start, token.end),
  );
  if (!isTriggered || text.length > 500) return [];
  // what is taken is blotted out, so that no reading reaches over it
  let open = text;
  for (const { start, end } of masked)
    open = open.slice(0, start) + '|'.repeat(end - start) + open.slice(end);
  const instant = new Date(Date.parse(`${context.nowLocal.slice(0, 16)}Z`) - context.offsetMin * 60_000);
  const out: DateSpan[] = [];
  for (const language of context.languages) {
    const parser = parsers[language as keyof typeof parsers];
    if (parser === undefined) continue;
    for (const result of parser.parse(
      open,
      { instant, timezone: context.offsetMin },
      { forwardDate: false },
    )) {
      const start = result.index;
      const end = start + result.text.length;
      const words = cutDateTokens(result.text);
      const { start: said } = result;
      if (!words.some((token) => scan.lexicon.leftover.has(token.text))) continue;
      if (!said.isCertain('day') && !said.isCertain('weekday')) continue;
      if (isBlocked([...masked, ...out], start, end)) continue;
      const [year, month, date] = [said.get('year') ?? 0, said.get('month') ?? 0, said.get('day') ?? 0];
      // left to itself it looks ahead: with no year said, the most recent such day is meant
      const isWhole = said.isCertain('year') || !said.isCertain('month');
      const { day } = resolveDayMonth(scan, date, month, isWhole ? year : undefined);
      const heading = scan.tokens.find((token) => token.start >= start)?.opensLine ?? false;
      if (day === undefined || day > scan.today) continue;
      const local = result.date().getTime() + context.offsetMin * 60_000;
      const isTimed = said.isCertain('hour') && local <= Date.parse(`${context.nowLocal.slice(0, 16)}Z`);
      const time = isTimed ? `T${isoTime(Math.floor(local / 60_000) % 1440)}` : '';
      out.push({ start, end, when: isoDay(isTimed ? Math.floor(local / 86_400_000) : day) + time, heading });
    }
  }
  return out;
}

// The moment last read, kept because one message asks for it more than once and a replay all the time.
let moment = { local: '', day: 0, minute: 0 };

function momentOf(local: string): { day: number; minute: number } {
  if (moment.local !== local) moment = { local, ...readLocal(local) };
  return moment;
}

function read(
  text: string,
  taken: readonly { start: number; end: number }[],
  context: WhenContext,
  isForecast: boolean,
): DateSpan[] {
  const now = momentOf(context.nowLocal);
  const tokens = cutDateTokens(text);
  const lexicon = dateLexicon(context.languages);
  const scan: Scan = {
    tokens,
    lexicon,
    dayOrder: context.dayOrder,
    today: now.day,
    minute: now.minute,
    isForecast,
  };
  if (!tokens.some((token, at) => mayOpen(scan, at) || lexicon.leftover.has(token.text))) return [];
  const own = collect(scan, taken).map((piece) => spanOf(scan, piece));
  const rest = askChrono(text, own, taken, context, scan);
  return [...own, ...rest].sort((a, b) => a.start - b.start);
}

/**
 * Finds the dates and clock times of a log message, each the most recent it can be, in the order said; spans lie
 * inside the text, do not overlap each other or `taken`, and what is impossible, contradicts itself or lies ahead
 * carries its problem and choices instead of a value.
 * @example findDates('hier 15h45 vidé le tambour', [], { languages: ['fr'], dayOrder: 'dmy', nowLocal: '2026-11-01T08:10', offsetMin: -300 })
 * // [{ start: 0, end: 10, when: '2026-10-31T15:45', heading: true }]
 */
export function findDates(
  text: string,
  taken: readonly { start: number; end: number }[],
  context: WhenContext,
): DateSpan[] {
  return read(text, taken, context, false);
}

/**
 * Finds the dates of a forecast: a weekday, a day of the month or a day and month is the next one, `tonight` the
 * date of sending.
 * @example findForecastDates('high winds friday', [], { languages: ['en'], dayOrder: 'mdy', nowLocal: '2026-11-10T19:00', offsetMin: -300 })
 * // [{ start: 11, end: 17, when: '2026-11-13', future: true, heading: false }]
 */
export function findForecastDates(
  text: string,
  taken: readonly { start: number; end: number }[],
  context: WhenContext,
): DateSpan[] {
  return read(text, taken, context, true);
}
