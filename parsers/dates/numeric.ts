// Dates in figures: ISO, and day and month in the site's order, kept apart from fractions, decimals and ranges.
import { calendarDay } from './calendar.ts';
import { resolveDayMonth } from './days.ts';
import { type DayPiece, isHead, isInsideNumber, isNumber, isWord, type Scan } from './scan.ts';

const fractionParts = new Set([2, 3, 4, 5, 6, 8, 10, 16]);
/** `2/4`, `4/10`: nobody writes a quantity so. */
const isReducible = (a: number, b: number): boolean => [2, 3, 5].some((by) => a % by === 0 && b % by === 0);

type Figures = {
  readonly parts: readonly number[];
  readonly texts: readonly string[];
  readonly mark: string;
  readonly to: number;
};

function readFigures(scan: Scan, at: number): Figures | null {
  const { tokens } = scan;
  const texts: string[] = [];
  let mark = '';
  let i = at;
  while (texts.length < 3) {
    const token = tokens[i];
    if (!isNumber(token) || (i > at && (!token.isGlued || token.opensLine))) break;
    texts.push(token.text);
    const next = tokens[i + 1];
    const after = tokens[i + 2];
    if (next === undefined || !next.isGlued || next.opensLine || !['/', '-', '.'].includes(next.text)) break;
    if (mark !== '' && next.text !== mark) break;
    if (!isNumber(after) || !after.isGlued) break;
    mark = next.text;
    i += 2;
  }
  const to = at + texts.length * 2 - 1;
  return texts.length < 2 ? null : { parts: texts.map(Number), texts, mark, to };
}

const fullYear = (text: string): number | null => {
  const year = Number(text);
  if (text.length === 4) return year >= 1990 && year <= 2100 ? year : null;
  return text.length === 2 ? 2000 + year : null;
};

function isAfterDateWord(scan: Scan, at: number): boolean {
  const before = scan.tokens[at - 1];
  if (!isWord(before) || scan.tokens[at]!.opensLine) return false;
  return scan.lexicon.before.has(before.text) || scan.lexicon.weekdays.has(before.text);
}

/** Day and month in the site's order; where only the other order gives a date, that one is offered. */
function resolve(scan: Scan, a: number, b: number, year: number | undefined): Omit<DayPiece, 'from' | 'to'> {
  const [day, month] = scan.dayOrder === 'dmy' ? [a, b] : [b, a];
  const own = resolveDayMonth(scan, day, month, year);
  if (own.problem !== 'impossible') return own;
  const other = resolveDayMonth(scan, month, day, year);
  return other.day !== undefined && month > 12 ? { problem: 'impossible', choices: [other.day] } : own;
}

/** `7/15 cart 140, 7/16 cart 133`: behind a message that opens with such a date, another of its month opens the next entry. */
function isInSeries(scan: Scan, at: number, a: number, b: number): boolean {
  const { tokens } = scan;
  const before = tokens[at - 1];
  const opens = tokens[at]!.opensLine || before?.text === ',' || before?.text === ';';
  const first = at > 0 && opens ? readFigures(scan, 0) : null;
  if (first?.mark !== '/' || first.parts.length !== 2) return false;
  return scan.dayOrder === 'dmy' ? first.parts[1] === b : first.parts[0] === a;
}

/** A date in figures at a token, or null where the figures may be a quantity. */
export function readNumeric(scan: Scan, at: number): DayPiece | null {
  const { tokens, lexicon } = scan;
  if (!isNumber(tokens[at]) || isInsideNumber(tokens, at)) return null;
  const figures = readFigures(scan, at);
  if (figures === null) return null;
  const { parts, texts, mark } = figures;
  let { to } = figures;
  const [a = 0, b = 0, c = 0] = parts;
  const [first = '', second = '', third] = texts;
  if (third !== undefined) {
    const iso = first.length === 4 ? fullYear(first) : null;
    if (iso !== null)
      return second.length <= 2 && third.length <= 2
        ? { from: at, to, ...resolveDayMonth(scan, c, b, iso) }
        : null;
    const year = fullYear(third);
    if (year === null || first.length > 2 || second.length > 2) return null;
    if (third.length === 2 && Math.abs(year - calendarDay(scan.today).year) > 5) return null;
    return { from: at, to, ...resolve(scan, a, b, year) };
  }
  if (first.length > 2 || second.length > 2 || a > 31 + 8 || b > 31 + 8 || a === 0 || b === 0) return null;
  if (a > 12 && b > 12) return null;
  const before = tokens[at - 1];
  const isLed = isHead(tokens, at) || isAfterDateWord(scan, at);
  const next = tokens[to];
  const isBeforeMeasure =
    next !== undefined &&
    !next.opensLine &&
    (lexicon.measured.has(next.text) || next.text === '%' || next.text === '°' || next.text === '"');
  if (mark === '/') {
    const isFraction = a < b && fractionParts.has(b) && !isReducible(a, b);
    // `le 1/2 seau` is half of one, `on 1/2 carts 61 58` a day
    const isArticle =
      isWord(before) && lexicon.beforeDay.get(before.text)?.some(({ words }) => words.length === 1) === true;
    const isSeries = isInSeries(scan, at, a, b);
    if (isFraction && isBeforeMeasure && !isSeries && (isArticle || !isAfterDateWord(scan, at))) return null;
    if (!isLed && !isSeries && (isFraction || isBeforeMeasure || a > 31 || b > 31)) return null;
  } else if (mark === '-') {
    const isPadded =
      first.length === 2 && second.length === 2 && (first.startsWith('0') || second.startsWith('0'));
    if (!isLed || (!isPadded && !isAfterDateWord(scan, at)) || (isBeforeMeasure && !isPadded)) return null;
  } else {
    const isQuantity =
      next !== undefined &&
      (lexicon.quantityUnits.has(next.text) || ['%', '°', 'º', '#'].includes(next.text));
    if (second.length !== 2 || !isLed || (isQuantity && !next.opensLine)) return null;
    if (b > 12 && scan.dayOrder === 'dmy') return null;
    if (tokens[to]?.text === '.' && tokens[to]!.isGlued) to += 1;
    else if (next?.isGlued && !next.opensLine && next.kind === 'word') return null;
  }
  const resolved = resolve(scan, a, b, undefined);
  // figures that are no date in either order are one only where nothing else could stand
  if (
    resolved.problem === 'impossible' &&
    (mark !== '/' || !isLed || (a > 31 && b > 12) || (b > 31 && a > 12))
  ) {
    if (resolved.choices?.length === 0 || mark === '-') return null;
  }
  return { from: at, to, ...resolved };
}
