import type { Language } from '#records';
import { readLiteral } from './digits.ts';
import { F, type Lexicon } from './lexicon.ts';
import { setLexicons } from './sentences.ts';
import {
  DIGITS,
  GLUED,
  HYPHEN,
  NARROW,
  type Piece,
  SPACE,
  SUPERSCRIPT,
  SYMBOL,
  type Token,
  tokenize,
  WORD,
} from './tokens.ts';

/** A number in digits, read. */
export const NUMBER = 5;
/** One sign for a fraction (`½`). */
export const GLYPH = 6;
/** Digits that are a date, a clock time, an ordinal, an address: no number. */
const OTHER = 7;

const GLYPHS: Record<string, number> = {
  '½': 1 / 2,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅕': 1 / 5,
  '⅖': 2 / 5,
  '⅗': 3 / 5,
  '⅘': 4 / 5,
  '⅙': 1 / 6,
  '⅚': 5 / 6,
  '⅐': 1 / 7,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
  '⅑': 1 / 9,
  '⅒': 1 / 10,
};

const MARKS_BETWEEN = new Set([',', '.', "'"]);

/** The value of a fraction sign. */
export const glyphValue = (token: Token): number => GLYPHS[token.key] ?? 0;

function isDigits(token: Token | undefined): token is Token {
  return token?.kind === DIGITS;
}

function gluedSymbol(token: Token | undefined, key: string): boolean {
  return token?.kind === SYMBOL && token.gap === GLUED && token.key === key;
}

function gluedDigits(token: Token | undefined): token is Token {
  return token?.kind === DIGITS && token.gap === GLUED;
}

/** The text's tokens with their words looked up and its digits read, sentence by sentence. */
export function scan(text: string, languages: readonly Language[]): Token[] {
  const raw = tokenize(text);
  setLexicons(raw, languages);
  const addresses = addressesIn(text, raw);
  const tokens: Token[] = [];
  for (let i = 0; i < raw.length; ) {
    const token = raw[i]!;
    tokens.push(token);
    if (addresses?.has(i)) {
      token.kind = OTHER;
      i++;
    } else if (token.kind === WORD) {
      token.word = token.lexicon.words.get(token.key);
      i++;
    } else if (token.kind === DIGITS) {
      token.joined = isJoined(raw, i);
      i = readDigits(raw, i, token);
    } else if (token.kind === SYMBOL && (token.key === '.' || token.key === ',') && startsDecimal(raw, i)) {
      const digits = raw[i + 1]!;
      token.kind = NUMBER;
      token.key = `${token.key}${digits.key}`;
      token.end = digits.end;
      token.number = {
        value: Number(`0.${digits.key}`),
        others: [],
        decimalComma: token.key === ',',
        plain: false,
        list: false,
      };
      i = readPower(raw, i + 2, token);
    } else {
      if (token.kind === SYMBOL && GLYPHS[token.key] !== undefined) token.kind = GLYPH;
      i++;
    }
  }
  return tokens;
}

/** Tokens of web and mail addresses: the numbers in them are nobody's. */
function addressesIn(text: string, raw: Token[]): Set<number> | null {
  if (!text.includes('@') && !text.includes('://') && !text.includes('www.')) return null;
  const found = new Set<number>();
  for (let from = 0; from < raw.length; ) {
    let to = from + 1;
    while (to < raw.length && (raw[to]!.gap === GLUED || raw[to]!.gap === HYPHEN)) to++;
    const chunk = text.slice(raw[from]!.start, raw[to - 1]!.end);
    const at = chunk.indexOf('@');
    if (chunk.includes('://') || chunk.startsWith('www.') || (at > 0 && at < chunk.length - 1)) {
      for (let i = from; i < to; i++) found.add(i);
    }
    from = to;
  }
  return found;
}

function isJoined(raw: Token[], at: number): boolean {
  const token = raw[at]!;
  const before = raw[at - 1];
  if (!before) return false;
  if (token.gap === HYPHEN) return true;
  if (token.gap !== GLUED) return false;
  if (before.kind === SYMBOL && before.key === '_') return true;
  if (before.kind !== WORD) return false;
  // `2x4` and `1h30` are numbers with something between them.
  const further = raw[at - 2]?.kind;
  return !((further === DIGITS || further === NUMBER) && before.gap === GLUED);
}

function startsDecimal(raw: Token[], at: number): boolean {
  const digits = raw[at + 1];
  if (!gluedDigits(digits)) return false;
  const token = raw[at]!;
  const before = raw[at - 1];
  if (token.key === ',' && token.lexicon.first.commaThousands[0] !== 'decimal') return false;
  if (isDigits(raw[at + 3]) && gluedSymbol(raw[at + 2], token.key)) return false;
  return !before || token.gap !== GLUED || (before.kind === SYMBOL && '-−–+($£€~<>='.includes(before.key));
}

/** Reads the digits at `at` into `made`; returns the index of the next raw token. */
function readDigits(raw: Token[], at: number, made: Token): number {
  const other = notANumber(raw, at, made);
  if (other > at) {
    made.kind = OTHER;
    made.end = raw[other - 1]!.end;
    return other;
  }
  const pieces: Piece[] = [{ start: made.start, end: made.end, key: made.key }];
  const marks: string[] = [];
  let next = at + 1;
  for (;;) {
    const mark = raw[next];
    const digits = raw[next + 1];
    if (mark?.kind === SYMBOL && mark.gap === GLUED && MARKS_BETWEEN.has(mark.key) && gluedDigits(digits)) {
      // `5'2` is feet and inches.
      if (mark.key === "'" && (digits.key.length !== 3 || marks.some((other) => other !== "'"))) break;
      marks.push(mark.key);
      pieces.push(digits);
      next += 2;
    } else if (isDigits(mark) && groupsBySpace(made.lexicon, pieces, marks, mark)) {
      marks.push(' ');
      pieces.push(mark);
      next++;
    } else break;
  }
  const read = readLiteral(
    pieces.map((piece) => piece.key),
    marks,
    made.lexicon.languages,
  );
  made.end = pieces[pieces.length - 1]!.end;
  if (read === null) {
    made.kind = OTHER;
    return next;
  }
  made.kind = NUMBER;
  made.pieces = pieces.length > 1 ? pieces : null;
  made.key = pieces.length > 1 ? '' : made.key;
  if (read === 'list') return next;
  made.number = read;
  return readPower(raw, next, made);
}

function groupsBySpace(lexicon: Lexicon, pieces: Piece[], marks: string[], digits: Token): boolean {
  const first = pieces[0]!.key;
  if (digits.key.length !== 3 || first.length > 3 || first.startsWith('0')) return false;
  if (marks.some((mark) => mark !== ' ')) return false;
  // `1 000` can be nothing but one number.
  return (
    digits.gap === NARROW ||
    (digits.gap === SPACE && (lexicon.first.spaceGroups || digits.key.startsWith('0')))
  );
}

/** The end of a date, a clock time or an ordinal that begins at `at`; else `at`. */
function notANumber(raw: Token[], at: number, made: Token): number {
  const digits = raw[at]!;
  const short = digits.key.length <= 2;
  const mark = raw[at + 1];
  const second = raw[at + 2];
  if (mark?.kind === WORD) {
    const word = made.lexicon.words.get(mark.key);
    const flags = word?.flags ?? 0;
    if (mark.gap === GLUED && flags & F.suffix && !gluedDigits(second)) return at + 2;
    if (mark.gap <= SPACE && flags & F.clock && short && Number(digits.key) <= 12) return at + 2;
  }
  if (mark?.kind !== SYMBOL || mark.gap !== GLUED) return at;
  if (mark.key === 'ª') return at + 2;
  if (!gluedDigits(second)) return at;
  if (mark.key === ':' && short && second.key.length === 2 && Number(second.key) < 60) {
    let end = at + 3;
    if (gluedSymbol(raw[end], ':') && gluedDigits(raw[end + 1])) end += 2;
    const after = raw[end];
    const clock = after?.kind === WORD && (made.lexicon.words.get(after.key)?.flags ?? 0) & F.clock;
    return clock ? end + 1 : end;
  }
  if (
    (mark.key === '/' || mark.key === '-') &&
    gluedSymbol(raw[at + 3], mark.key) &&
    gluedDigits(raw[at + 4])
  ) {
    const lengths = [digits.key.length, second.key.length, raw[at + 4]!.key.length];
    const yearFirst = lengths[0] === 4 && lengths[1]! <= 2 && lengths[2]! <= 2;
    const yearLast = short && lengths[1]! <= 2 && lengths[2] === 4;
    const slashes = mark.key === '/' && short && lengths[1]! <= 2 && lengths[2]! <= 4;
    if (yearFirst || yearLast || slashes) return at + 5;
  }
  return at;
}

/** `1.2e10`, `10^3`, `10³`, `1.5 x 10^3`, read into `made`; returns the index of the next raw token. */
function readPower(raw: Token[], at: number, made: Token): number {
  const literal = made.number!;
  const token = raw[at];
  if (!token) return at;
  const set = (value: number, end: number): number => {
    if (!Number.isFinite(value)) return at;
    literal.value = value;
    literal.others = [];
    literal.plain = false;
    literal.list = false;
    made.end = raw[end - 1]!.end;
    made.key = '';
    return end;
  };
  if (token.kind === SUPERSCRIPT && token.gap === GLUED)
    return set(literal.value ** Number(token.key), at + 1);
  if (token.kind === WORD && token.key === 'e' && token.gap === GLUED) {
    const exponent = readExponent(raw, at + 1);
    const after = exponent ? raw[exponent.end] : undefined;
    if (exponent && !(after?.kind === WORD && after.gap === GLUED && after.key === 'e'))
      return set(Number(`${literal.value}e${exponent.value}`), exponent.end);
    return at;
  }
  if (gluedSymbol(token, '^')) {
    const exponent = readExponent(raw, at + 1);
    return exponent ? set(literal.value ** exponent.value, exponent.end) : at;
  }
  const times =
    (token.kind === WORD && token.key === 'x') || (token.kind === SYMBOL && '×*·'.includes(token.key));
  if (times && raw[at + 1]?.key === '10') {
    const power = raw[at + 2];
    const raised = power?.kind === SUPERSCRIPT && power.gap === GLUED;
    const exponent = gluedSymbol(power, '^') ? readExponent(raw, at + 3) : null;
    if (raised) return set(Number(`${literal.value}e${power.key}`), at + 3);
    if (exponent) return set(literal.value * 10 ** exponent.value, exponent.end);
  }
  return at;
}

/** A whole or decimal exponent with its signs at `at`. */
function readExponent(raw: Token[], at: number): { value: number; end: number } | null {
  let end = at;
  let sign = 1;
  while (end < at + 2) {
    const token = raw[end];
    if (token?.kind !== SYMBOL || token.gap !== GLUED || !'+-−'.includes(token.key)) break;
    if (token.key !== '+') sign = -sign;
    end++;
  }
  const digits = raw[end];
  if (!isDigits(digits) || digits.gap > GLUED) {
    // `12e-1`: the hyphen was taken as joining.
    if (!(isDigits(digits) && digits.gap === HYPHEN && end === at)) return null;
    sign = -1;
  }
  let text = digits.key;
  end++;
  if (gluedSymbol(raw[end], '.') && gluedDigits(raw[end + 1])) {
    text += `.${raw[end + 1]!.key}`;
    end += 2;
  }
  return { value: sign * Number(text), end };
}
