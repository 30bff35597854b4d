// What the readers of days and of clock times share: the tokens, the words, the moment, and what stands where.
import { type DateLexicon, isJoining } from './lexicon.ts';
import type { DateToken } from './words.ts';

export type DateProblem =
  | 'impossible'
  | 'contradicts-weekday'
  | 'weekday-is-today'
  | 'in-future'
  | 'ambiguous';

export type Scan = {
  readonly tokens: readonly DateToken[];
  readonly lexicon: DateLexicon;
  readonly dayOrder: 'dmy' | 'mdy' | 'ymd';
  /** today, as a day count, and the minute of the day */
  readonly today: number;
  readonly minute: number;
  /** forecasts look ahead, all else looks back */
  readonly isForecast: boolean;
};

/** A day read from tokens `from` to `to` (exclusive). */
export type DayPiece = {
  readonly from: number;
  readonly to: number;
  readonly day?: number;
  readonly isEvening?: boolean;
  /** minute of the day, where the words give one (`2 hours ago`) */
  readonly minute?: number;
  readonly problem?: DateProblem;
  readonly choices?: readonly number[];
};

const ends = new Set([',', ';', ':', '!', '?', '(', ')', '/', '–', '—', '-', '.']);

export const isWord = (token: DateToken | undefined): token is DateToken =>
  token !== undefined && token.kind === 'word';

export const isNumber = (token: DateToken | undefined): token is DateToken & { kind: 'number' } =>
  token !== undefined && token.kind === 'number';

/** Nothing more of the clause stands at this token. */
export function isEnd(tokens: readonly DateToken[], at: number): boolean {
  const token = tokens[at];
  return (
    token === undefined ||
    token.opensLine ||
    (token.kind === 'mark' && ends.has(token.text) && !isJoinedOn(tokens, at))
  );
}

/** A mark with something glued to both its sides is part of a word or number. */
function isJoinedOn(tokens: readonly DateToken[], at: number): boolean {
  const next = tokens[at + 1];
  return tokens[at]!.isGlued && next?.isGlued === true && !next.opensLine && tokens[at]!.text !== ':';
}

/** The token opens the message, a line or a clause. */
export function isHead(tokens: readonly DateToken[], at: number): boolean {
  const token = tokens[at];
  if (token === undefined || token.opensLine) return true;
  const before = tokens[at - 1];
  return (
    before !== undefined && before.kind === 'mark' && [',', ';', '!', '?', '(', ':'].includes(before.text)
  );
}

/** The number at a token is part of a longer one: `61.5`, `2 1/2`, `#3`. */
export function isInsideNumber(tokens: readonly DateToken[], at: number): boolean {
  const before = tokens[at - 1];
  if (before === undefined || tokens[at]!.opensLine || !tokens[at]!.isGlued) return false;
  return (
    before.kind === 'number' || ['.', ',', '/', '#', '$', '€', '£', '+', '-', '@', ':'].includes(before.text)
  );
}

/** The number at a token goes on: `9.5`, `9,5`, `9/10`, `9%`. */
export function isNumberGoingOn(tokens: readonly DateToken[], at: number): boolean {
  const mark = tokens[at + 1];
  const next = tokens[at + 2];
  if (mark === undefined || !mark.isGlued || mark.opensLine) return false;
  if (mark.text === '%' || mark.text === '°' || mark.text === 'º' || mark.text === '#') return true;
  return ['.', ',', '/', '-', ':', '–'].includes(mark.text) && isNumber(next) && next.isGlued;
}

/** The next token that is no glued hyphen, apostrophe or point. */
export const pastJoin = (tokens: readonly DateToken[], at: number): number =>
  isJoining(tokens[at]) ? at + 1 : at;
