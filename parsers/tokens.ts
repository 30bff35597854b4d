import type { Unit } from '#records';
import type { Node, Sense, Vocabulary } from './lexicon.ts';
import type { Plain } from './text.ts';

/** A number as written, with what stands right around it. */
export type Num = {
  value: number;
  /** `deg` is a temperature whose scale was not said. */
  unit: Unit | 'deg' | null;
  /** The number behind a dash: `135-140`, `61.5-15.5`. */
  to?: number;
  /** Digits behind the decimal sign. */
  decimals: number;
  /** Said as a fraction: `1/2`, `three quarters`. */
  fraction?: boolean;
  /** `#3` */
  hash?: boolean;
  approximate?: boolean;
  /** The other reading of `1,250`. */
  perhaps?: number;
  perhapsBy?: 'comma' | 'dot';
  inWords?: boolean;
  /** The first of several written alternatives: `53 or 58`. */
  or?: number;
  /** Behind an article that makes it the number of a pile: `la 3`. */
  named?: boolean;
  /** The value had a unit or sign that was put right in the same breath. */
  negative?: boolean;
  /** Where the word `minus` stood. */
  byWord?: number;
};

export type DateTok = { when?: string | undefined; ahead?: string | undefined; span: unknown };

/** One token: a word or phrase (`w`), number (`n`), punctuation (`p`) or date (`d`), with its meanings. */
export type Tok = {
  k: 'w' | 'n' | 'p' | 'd';
  s: string;
  a: number;
  b: number;
  senses: readonly Sense[];
  /** No space before it. */
  glued: boolean;
  upper?: boolean;
  n?: Num;
  date?: DateTok;
  /** Read as a word it is one slip away from; an everyday word in its own right; what it may have been. */
  slip?: boolean;
  ordinary?: boolean;
  joined?: boolean;
  /** A single letter typed with an accent (`à`) is a word, never a pile. */
  accented?: boolean;
  meant?: readonly string[];
};

const NONE: readonly Sense[] = [];
const STAR: readonly Sense[] = [{ cls: 'star', val: '', lang: null }];
const FRACTIONS: Record<string, number> = { '½': 0.5, '¼': 0.25, '¾': 0.75, '⅓': 1 / 3, '⅔': 2 / 3 };
const CLOCK = /\d{1,2}(?::\d{2}(?::\d{2})?|h\d{2}(?!\d))(?![\d:])/y;
const NUMBER = /\d+(?:[.,]\d+)*/y;
const FRACTION = /(\d{1,3})\s?\/\s?(\d{1,3})(?![\d/])/y;
const MIXED = /(\d{1,4})(?: |-| et | and | y )(\d)\s?\/\s?(\d{1,2})(?![\d/])/y;
/** Parts that a thing is measured in: `15/16` is a fraction. */
const SIXTEENTHS = new Set([16, 32, 64, 100]);
const GLYPH = /(\d{0,4})\s?([½¼¾⅓⅔])/y;
const WORD = /\p{L}+(?:'\p{L}+)*/uy;
const FULLWIDTH = /[\uff21-\uff5a]/;
const CODE = /\d+(?:[-./]\d+){2,}/y;

const isDigit = (code: number) => code >= 48 && code <= 57;
const isLower = (code: number) => code >= 97 && code <= 122;

export const num = (value: number, more: Partial<Num> = {}): Num => ({
  value,
  unit: null,
  decimals: 0,
  ...more,
});

function at(regex: RegExp, text: string, index: number): RegExpExecArray | null {
  regex.lastIndex = index;
  return regex.exec(text);
}

/** Numbers of one written group: `66,5` is one, `61,58,70` three, `1,250` one with another reading. */
function numbersOf(raw: string): Num[] {
  const commas = raw.split(',').length - 1;
  const dots = raw.split('.').length - 1;
  if (commas === 0 && dots === 0) return [num(Number(raw))];
  if (commas === 0 && dots === 1) {
    const [whole, part] = raw.split('.') as [string, string];
    const read = num(Number(raw), { decimals: part.length });
    if (part.length === 3 && whole.length <= 3 && whole !== '0')
      return [{ ...read, perhaps: Number(whole + part), perhapsBy: 'dot' }];
    return [read];
  }
  if (commas === 1 && dots === 0) {
    const [whole, part] = raw.split(',') as [string, string];
    if (part.length === 3 && whole.length <= 3 && whole !== '0' && !whole.startsWith('0'))
      return [num(Number(whole + part), { perhaps: Number(`${whole}.${part}`), perhapsBy: 'comma' })];
    return [num(Number(`${whole}.${part}`), { decimals: part.length })];
  }
  if (/^\d{1,3}(,\d{3})+(\.\d+)?$/.test(raw)) return [num(Number(raw.replaceAll(',', '')))];
  if (/^\d{1,3}(\.\d{3})+(,\d+)?$/.test(raw)) return [num(Number(raw.replaceAll('.', '').replace(',', '.')))];
  return raw
    .split(',')
    .flatMap((part) =>
      part.split('.').length > 2
        ? part.split('.').map((p) => num(Number(p)))
        : [num(Number(part), { decimals: part.split('.')[1]?.length ?? 0 })],
    )
    .filter((read) => Number.isFinite(read.value));
}

/** Splits plain text into words, numbers, punctuation and line ends. `dates` are spans already read, in order. */
export function scan(
  message: Plain,
  elisions: ReadonlySet<string>,
  dates: readonly { start: number; end: number; token: DateTok }[],
): Tok[] {
  const { text, cased } = message;
  const out: Tok[] = [];
  let i = 0;
  let nextDate = 0;
  let space = true;
  const push = (k: Tok['k'], a: number, b: number, n?: Num) => {
    out.push({ k, s: text.slice(a, b), a, b, senses: NONE, glued: !space, ...(n && { n }) });
    space = false;
  };
  while (i < text.length) {
    const span = dates[nextDate];
    if (span && i >= span.start) {
      nextDate++;
      if (i < span.end) {
        push('d', span.start, span.end);
        out.at(-1)!.date = span.token;
        i = span.end;
      }
      continue;
    }
    const code = text.charCodeAt(i);
    if (code === 32) {
      space = true;
      i++;
      continue;
    }
    if (code === 10) {
      push('p', i, i + 1);
      space = true;
      i++;
      continue;
    }
    if (isDigit(code) || (code > 127 && text[i]! in FRACTIONS)) {
      i = scanNumber(text, i, push);
      continue;
    }
    const match = isLower(code) || code > 127 ? at(WORD, text, i) : null;
    if (match) {
      let word = match[0];
      let from = i;
      let quote = word.indexOf("'");
      while (quote > 0 && elisions.has(word.slice(0, quote)) && word !== "aujourd'hui") {
        push('w', from, from + quote);
        from += quote + 1;
        word = word.slice(quote + 1);
        quote = word.indexOf("'");
      }
      i = from + word.length;
      if (
        (word === 'm' || word === 'yd' || word === 'ft' || word === 'vg') &&
        /[23]/.test(text[i] ?? '') &&
        !isDigit(text.charCodeAt(i + 1))
      )
        i++;
      push('w', from, i);
      const token = out.at(-1)!;
      if (quote > 0) token.s = word.replaceAll("'", '');
      const typed = cased.charCodeAt(from);
      token.upper = typed >= 65 && typed <= 90;
      if (message.map && i - from === 1 && message.original.charCodeAt(message.map[from]!) > 127)
        token.accented = !FULLWIDTH.test(message.original[message.map[from]!]!);
      continue;
    }
    // `pile 3's at 144`
    if (
      text[i] === "'" &&
      text[i + 1] === 's' &&
      !space &&
      out.at(-1)?.k === 'n' &&
      text.charCodeAt(i + 2) <= 32
    ) {
      i += 2;
      continue;
    }
    push('p', i, i + 1);
    // `*chips 16`: a star glued to the first word of a message puts the last one right.
    if (text[i] === '*' && out.length === 1 && text.charCodeAt(i + 1) > 32 && !text.includes('*', i + 1))
      out[0]!.senses = STAR;
    i++;
  }
  return out;
}

function scanNumber(
  text: string,
  i: number,
  push: (k: Tok['k'], a: number, b: number, n?: Num) => void,
): number {
  const clock = at(CLOCK, text, i);
  if (clock) {
    push('p', i, i + clock[0].length);
    return i + clock[0].length;
  }
  const mixed = at(MIXED, text, i);
  if (mixed && Number(mixed[2]) < Number(mixed[3])) {
    push(
      'n',
      i,
      i + mixed[0].length,
      num(Number(mixed[1]) + Number(mixed[2]) / Number(mixed[3]), { decimals: 1 }),
    );
    return i + mixed[0].length;
  }
  const fraction = at(FRACTION, text, i);
  // `55.5 / 57 / 53` is a list
  const parted =
    fraction && Number(fraction[2]) > 12 && Number(fraction[1]) > 12 && !SIXTEENTHS.has(Number(fraction[2]));
  if (fraction && !parted && Number(fraction[2]) > 0) {
    const value = Number(fraction[1]) / Number(fraction[2]);
    push('n', i, i + fraction[0].length, num(value, { fraction: true, decimals: 1 }));
    return i + fraction[0].length;
  }
  const glyph = at(GLYPH, text, i);
  if (glyph) {
    const part = FRACTIONS[glyph[2]!]!;
    const whole = glyph[1] ? Number(glyph[1]) : 0;
    push('n', i, i + glyph[0].length, num(whole + part, { fraction: whole === 0, decimals: 1 }));
    return i + glyph[0].length;
  }
  const chained = at(CODE, text, i);
  const listed = chained?.[0].split('/') ?? [];
  // `141/138/144`, `18/21/19/24`: no day and no month is so high, no date so long.
  const noDate =
    listed.length > 3 ||
    listed.every((part) => Number(part) > 31) ||
    listed.slice(0, 2).every((part) => Number(part) > 12);
  if (listed.length > 2 && noDate && listed.every((part) => /^\d{2,3}$/.test(part))) {
    push('n', i, i + listed[0]!.length, num(Number(listed[0])));
    return i + listed[0]!.length;
  }
  if (chained && !/^\d{1,3}([.,]\d{3})+$/.test(chained[0]) && !/^[\d.]+-[\d.]+$/.test(chained[0])) {
    push('p', i, i + chained[0].length);
    return i + chained[0].length;
  }
  const raw = at(NUMBER, text, i)![0];
  const parts = numbersOf(raw);
  if (parts.length === 1) push('n', i, i + raw.length, parts[0]);
  else {
    let from = i;
    for (const piece of raw.split(/[.,]/).length === parts.length ? raw.split(/[.,]/) : raw.split(',')) {
      push('n', from, from + piece.length, parts.shift() ?? num(Number(piece)));
      from += piece.length + 1;
    }
  }
  return i + raw.length;
}

/** Joins words into the longest phrases the vocabulary has, and gives every token its meanings. */
export function understand(
  tokens: readonly Tok[],
  vocabulary: Vocabulary,
  isPileLetter: (letter: string) => boolean,
): Tok[] {
  const out: Tok[] = [];
  for (let i = 0; i < tokens.length; ) {
    const token = tokens[i]!;
    const first = token.k === 'd' ? undefined : vocabulary.root.get(token.s);
    if (!first) {
      out.push(token.k === 'd' ? asked(token, vocabulary) : token);
      i++;
      continue;
    }
    if (
      token.upper &&
      token.s.length === 1 &&
      isPileLetter(token.s) &&
      tokens[i + 1] &&
      !tokens[i + 1]!.glued
    ) {
      out.push({ ...token, senses: first.senses ?? [] });
      i++;
      continue;
    }
    let best: Node | null = first.senses ? first : null;
    let bestEnd = i + 1;
    let node: Node | undefined = first;
    for (let j = i + 1; j < tokens.length && j < i + 14; j++) {
      const next: Tok = tokens[j]!;
      if (next.k === 'p' && next.s === '-' && tokens[j + 1]?.k === 'w') continue;
      if (next.k === 'd' || !node?.next) break;
      if (next.upper && next.s.length === 1 && isPileLetter(next.s)) break;
      node = node.next.get(next.s);
      if (!node) break;
      if (node.senses) {
        best = node;
        bestEnd = j + 1;
      }
    }
    if (!best?.senses) {
      out.push(token);
      i++;
      continue;
    }
    if (bestEnd === i + 1 && token.k === 'n') out.push(token);
    else {
      const last = tokens[bestEnd - 1]!;
      out.push({
        k: 'w',
        s:
          bestEnd === i + 1
            ? token.s
            : tokens
                .slice(i, bestEnd)
                .map((part) => part.s)
                .join(' '),
        a: token.a,
        b: last.b,
        senses: best.senses,
        glued: token.glued,
        ...(token.upper && { upper: true }),
        ...(token.accented && bestEnd === i + 1 && { accented: true }),
      });
    }
    i = bestEnd;
  }
  return out;
}

/** `last week` is a time and may be what is asked for. */
function asked(token: Tok, vocabulary: Vocabulary): Tok {
  const [first, ...rest] = token.s.split(' ');
  let node = vocabulary.root.get(first!);
  for (const word of rest) node = node?.next?.get(word);
  const senses = node?.senses?.filter((one) => one.cls === 'req');
  return senses?.length ? { ...token, senses } : token;
}

/** What a token means in one class, or undefined. */
export function sense(token: Tok | undefined, cls: string): string | undefined {
  if (!token) return undefined;
  for (const meaning of token.senses) if (meaning.cls === cls) return meaning.val;
  return undefined;
}
