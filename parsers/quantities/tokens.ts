import type { Literal } from './digits.ts';
import { type Lexicon, NO_LEXICON, type Word } from './lexicon.ts';

/** Kinds of token, and what stands between a token and the one before it. */
export const WORD = 1;
export const DIGITS = 2;
export const SYMBOL = 3;
export const SUPERSCRIPT = 4;

export const GLUED = 0;
export const SPACE = 1;
/** One no-break or thin space: the sign of a group of digits. */
export const NARROW = 2;
/** A hyphen glued on both sides, between letters, or between a letter and a digit. */
export const HYPHEN = 3;
/** More than one space, or a tab: never inside a number. */
const WIDE = 4;
export const LINE = 5;

export interface Token {
  kind: number;
  start: number;
  end: number;
  gap: number;
  /** Words: lower case, accents stripped. Digits: ASCII. Symbols: one canonical character. */
  key: string;
  /** The words of its sentence's language, and the word's own entry there; set by the scan. */
  lexicon: Lexicon;
  word: Word | undefined;
  /** A number in digits, read. */
  number: Literal | null;
  /** The runs of digits that it was read from, where they are several. */
  pieces: Piece[] | null;
  /** Touches a letter, or a hyphen after a letter. */
  joined: boolean;
  /** Its first letter is a capital. */
  capital: boolean;
}

/** One run of digits among several. */
export interface Piece {
  start: number;
  end: number;
  key: string;
}

/** All tokens have one shape, made here, so that reading them stays fast. */
function token(kind: number, start: number, end: number, gap: number, key: string): Token {
  return {
    kind,
    start,
    end,
    gap,
    key,
    lexicon: NO_LEXICON,
    word: undefined,
    number: null,
    pieces: null,
    joined: false,
    capital: false,
  };
}

const LETTER = /[\p{L}\p{M}\u3380-\u33df]/u;
const MARKS = /\p{M}+/gu;
const SUPERSCRIPTS = '⁰¹²³⁴⁵⁶⁷⁸⁹';
/** Letters of a unit of length; with a 2 or 3 behind they are one word (`m3`). */
const LENGTHS = new Set(['m', 'cm', 'mm', 'dm', 'km', 'ft', 'yd', 'in', 'pi', 'vg']);

const CANONICAL: Record<string, string> = {
  '’': "'",
  '‘': "'",
  '′': "'",
  ʼ: "'",
  '´': "'",
  '“': '"',
  '”': '"',
  '″': '"',
  '‐': '-',
  '‑': '-',
  '﹣': '-',
  '－': '-',
  '−': '−',
  '–': '–',
  '—': '—',
  '⁄': '/',
  '∕': '/',
  '／': '/',
  '％': '%',
  '﹪': '%',
  º: '°',
  '˚': '°',
  '，': ',',
  '．': '.',
  '＃': '#',
  '＋': '+',
};

function isAsciiLetter(code: number): boolean {
  return (code >= 97 && code <= 122) || (code >= 65 && code <= 90);
}

function asciiDigit(code: number): number {
  if (code >= 48 && code <= 57) return code - 48;
  if (code >= 0xff10 && code <= 0xff19) return code - 0xff10;
  return -1;
}

function isSpace(code: number): boolean {
  return (
    code === 32 ||
    code === 9 ||
    (code >= 0x2000 && code <= 0x200a) ||
    code === 0xa0 ||
    code === 0x202f ||
    code === 0x3000
  );
}

function isLineBreak(code: number): boolean {
  return code === 10 || code === 13 || code === 0x2028 || code === 0x2029 || code === 11 || code === 12;
}

/** Lower case without accents: `Veintidós` is `veintidos`. */
function fold(word: string): string {
  let ascii = true;
  for (let i = 0; i < word.length && ascii; i++) ascii = word.charCodeAt(i) < 128;
  const lower = word.toLowerCase();
  return ascii ? lower : lower.normalize('NFKD').replace(MARKS, '');
}

/** The text in words, runs of digits and symbols, in one pass. */
export function tokenize(text: string): Token[] {
  const tokens: Token[] = [];
  const length = text.length;
  let at = 0;
  let gap = LINE;
  while (at < length) {
    const code = text.charCodeAt(at);
    if (isSpace(code)) {
      const narrow = code === 0xa0 || code === 0x202f || (code >= 0x2007 && code <= 0x200a);
      gap = gap === GLUED ? (narrow ? NARROW : SPACE) : gap === LINE ? LINE : WIDE;
      at++;
      continue;
    }
    if (isLineBreak(code)) {
      gap = LINE;
      at++;
      continue;
    }
    const start = at;
    if (asciiDigit(code) >= 0) {
      let key = '';
      let digit = asciiDigit(code);
      while (digit >= 0) {
        key += digit;
        at++;
        digit = at < length ? asciiDigit(text.charCodeAt(at)) : -1;
      }
      tokens.push(token(DIGITS, start, at, gap, key));
      gap = GLUED;
      continue;
    }
    if (letterAt(text, at, code)) {
      let here = code;
      while (at < length && letterAt(text, at, here)) {
        at += here >= 0xd800 && here <= 0xdbff ? 2 : 1;
        here = text.charCodeAt(at);
      }
      let key = fold(text.slice(start, at));
      if (key.length <= 2 && LENGTHS.has(key)) {
        const power = here === 0xb2 || here === 50 ? '2' : here === 0xb3 || here === 51 ? '3' : '';
        const after = text.charCodeAt(at + 1);
        if (power !== '' && !(asciiDigit(after) >= 0 || letterAt(text, at + 1, after))) {
          key += power;
          at++;
        }
      }
      const made = token(WORD, start, at, gap, key);
      made.capital = code >= 65 && code <= 90;
      tokens.push(made);
      gap = GLUED;
      continue;
    }
    const point = text.codePointAt(at)!;
    const char = String.fromCodePoint(point);
    at += char.length;
    const superscript = SUPERSCRIPTS.indexOf(char);
    if (superscript >= 0) {
      const last = tokens[tokens.length - 1];
      if (last && last.kind === SUPERSCRIPT && gap === GLUED) {
        last.key += superscript;
        last.end = at;
      } else tokens.push(token(SUPERSCRIPT, start, at, gap, String(superscript)));
      gap = GLUED;
      continue;
    }
    const key = CANONICAL[char] ?? char;
    if (key === '-' && gap === GLUED && joins(tokens, text, at)) {
      gap = HYPHEN;
      continue;
    }
    tokens.push(token(SYMBOL, start, at, gap, key));
    gap = GLUED;
  }
  return tokens;
}

function letterAt(text: string, at: number, code: number): boolean {
  if (code < 128) return isAsciiLetter(code);
  if (!(code >= 128) || code === 0xaa || code === 0xba || code === 0x2bc) return false;
  if (code >= 0xd800 && code <= 0xdbff) return LETTER.test(String.fromCodePoint(text.codePointAt(at)!));
  return LETTER.test(text[at]!);
}

function joins(tokens: Token[], text: string, at: number): boolean {
  const last = tokens[tokens.length - 1];
  if (!last || at >= text.length) return false;
  const code = text.charCodeAt(at);
  if (letterAt(text, at, code)) return last.kind === WORD || last.kind === DIGITS;
  // `B-5` and `covid-19` are names; a range after a unit (`20kg-30kg`) is not.
  if (asciiDigit(code) < 0 || last.kind !== WORD) return false;
  const before = tokens[tokens.length - 2];
  return !(before?.kind === DIGITS && last.gap === GLUED);
}
