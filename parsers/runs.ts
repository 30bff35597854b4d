// Runs of a sentence that a reader takes whole, from left to right, the longest first.
import { READERS, REQUEST_READERS } from './grammar/index.ts';
import { placeOpensNext } from './next-place.ts';
import { type Carry, type Item, isSoft, type Scope } from './reading.ts';
import { sense, type Tok } from './tokens.ts';
import { parts } from './weed.ts';

/** A run of tokens that a reader took whole. */
export type Reading = { a: number; b: number; items: Item[]; rule: string; slips: readonly Tok[] };

const WINDOW = 36;

const FIRST = new Set(['request amend', 'request undo', 'request mix']);

const REQUEST_FIRST = REQUEST_READERS.filter((reader) => FIRST.has(reader.rule));

const REQUEST_LATER = REQUEST_READERS.filter((reader) => !FIRST.has(reader.rule));

const ALL = [...REQUEST_FIRST, ...READERS, ...REQUEST_LATER];

/** Which readers, by their place in the list, a class of word calls: one bit each, in two halves of 30. */
const CALLS: ReadonlyMap<string, readonly [number, number]> = (() => {
  if (ALL.length > 60) throw new Error('more readers than bits');
  const calls = new Map<string, [number, number]>();
  for (const [k, reader] of ALL.entries())
    for (const cls of reader.on) {
      let bits = calls.get(cls);
      if (!bits) {
        bits = [0, 0];
        calls.set(cls, bits);
      }
      if (k < 30) bits[0] |= 1 << k;
      else bits[1] |= 1 << (k - 30);
    }
  return calls;
})();

const bitsOf = (cls: string) => CALLS.get(cls === 'place?' ? 'place' : cls);

/** For each token the readers that it calls, in two halves; null where the sentence calls none. */
function calledBy(tokens: readonly Tok[]): { low: number[]; high: number[]; last: number } | null {
  const low: number[] = [];
  const high: number[] = [];
  let last = -1;
  for (let k = 0; k < tokens.length; k++) {
    const tok = tokens[k]!;
    const own = tok.k === 'n' ? CALLS.get('n') : undefined;
    let l = own ? own[0] : 0;
    let h = own ? own[1] : 0;
    for (const { cls } of tok.senses) {
      const bits = bitsOf(cls);
      if (!bits) continue;
      l |= bits[0];
      h |= bits[1];
    }
    low.push(l);
    high.push(h);
    if ((l | h) !== 0) last = k;
  }
  return last < 0 ? null : { low, high, last };
}

/** The first of the called readers that reads the run. */
function readRun(run: readonly Tok[], low: number, high: number, scope: Scope): Reading | null {
  for (let half = 0; half < 2; half++) {
    let bits = half === 0 ? low : high;
    while (bits !== 0) {
      const bit = 31 - Math.clz32(bits & -bits);
      bits &= bits - 1;
      const reader = ALL[bit + half * 30]!;
      const items = reader.read(run, scope);
      if (items && items.length > 0) return { a: 0, b: 0, items, rule: reader.rule, slips: [] };
    }
  }
  return null;
}

/** Reads one sentence from left to right, the longest run first. */
export function readRuns(
  tokens: readonly Tok[],
  asked: boolean,
  { message, context, carry }: Pick<Scope, 'message' | 'context' | 'carry'>,
): Reading[] {
  const called = calledBy(tokens);
  const out: Reading[] = [];
  if (!called) return out;
  let lastComma = tokens.length - 1;
  while (lastComma >= 0 && !parts(tokens[lastComma]!)) lastComma--;
  const window = tokens.length > 90 ? 12 : WINDOW;
  // The readers called from the run's first token up to each later one.
  const low: number[] = new Array(window).fill(0);
  const high: number[] = new Array(window).fill(0);
  let i = 0;
  // Readers whose words do not come again have nothing to read.
  while (i <= called.last) {
    // Fillers open nothing.
    if ((isSoft(tokens[i]!) && tokens[i]!.s !== '*') || opensNothing(tokens[i]!)) {
      i++;
      continue;
    }
    let found: Reading | null = null;
    const most = Math.min(tokens.length, i + window);
    for (let k = i; k < most; k++) {
      low[k - i] = called.low[k]! | (k > i ? low[k - i - 1]! : 0);
      high[k - i] = called.high[k]! | (k > i ? high[k - i - 1]! : 0);
    }
    for (let j = most; j > i && !found; j--) {
      const l = low[j - 1 - i]!;
      const h = high[j - 1 - i]!;
      if ((l | h) === 0) break;
      if (!endsWell(tokens, i, j)) continue;
      const last = tokens[j - 1]!;
      if (j < tokens.length && (isSoft(last) || (last.k === 'd' && datesNext(tokens, i, j)))) continue;
      if (placeOpensNext(tokens, i, j)) continue;
      const run = i === 0 && j === tokens.length ? tokens : tokens.slice(i, j);
      // `monday cart 58 tuesday | cart 61`: a second date opens what comes next.
      if (last.k === 'd' && opensMore(tokens[j]) && run.some((tok) => tok.k === 'd' && tok !== last))
        continue;
      found = readRun(run, l, h, {
        message,
        context,
        carry,
        asked: asked && j > lastComma,
        nextTok: tokens[j],
        afterTok: tokens[j + 1],
        prevTok: tokens[i - 1],
        slipped: false,
      });
      if (found) {
        found.a = i;
        found.b = j;
      }
    }
    if (found) {
      out.push(found);
      keep(found, carry);
      i = found.b;
    } else i++;
  }
  shareSource(out, tokens);
  return out;
}

/** `cart 61 and cart 48, both from the day centre`: where all came from, said last. */
function shareSource(readings: readonly Reading[], tokens: readonly Tok[]): void {
  const all = tokens.findLastIndex(
    (tok, k) =>
      (sense(tok, 'both') !== undefined || sense(tok, 'all') !== undefined) &&
      (sense(tokens[k + 1], 'prep') === 'from' || sense(tokens[k + 1], 'source') !== undefined),
  );
  const reading = readings.find((one) => one.a <= all && all < one.b);
  const source = reading?.items.map((item) =>
    'record' in item ? (item.record as Load).source : undefined,
  )[0];
  if (all < 0 || !source) return;
  for (const one of readings)
    for (const item of one.items)
      if ('record' in item && item.record.kind === 'weigh-in' && !item.record.source && one.a < reading!.a)
        item.record = { ...item.record, source };
}

type Load = { source?: string };

/** A run that reaches over a comma ends at a boundary, or in a list of figures. */
function endsWell(tokens: readonly Tok[], i: number, j: number): boolean {
  const next = tokens[j];
  if (!next || next.k === 'p' || sense(next, 'and') !== undefined || sense(next, 'next') !== undefined)
    return true;
  for (let k = j - 1; k > i; k--) {
    if (parts(tokens[k]!) && tokens[k]!.k === 'p') return false;
    if (tokens[k]!.k !== 'n' || sense(tokens[k], 'place?') !== undefined) break;
  }
  for (let k = j - 1; k > i; k--)
    if (
      parts(tokens[k]!) &&
      tokens[k]!.k === 'p' &&
      tokens.slice(k + 1, j).some((tok) => tok.k !== 'n' || sense(tok, 'place?') !== undefined)
    )
      return false;
  return true;
}

/** `cart 56, 10:20 cart 61`: a date behind a comma belongs to what follows it. */
function datesNext(tokens: readonly Tok[], i: number, j: number): boolean {
  const next = tokens[j]!;
  if (next.k === 'p' || next.k === 'd') return false;
  let k = j - 1;
  while (k > i && (tokens[k]!.k === 'd' || trivialWord(tokens[k]!))) k--;
  return k > i && parts(tokens[k]!);
}

const opensMore = (tok: Tok | undefined) => tok !== undefined && tok.k !== 'p' && tok.k !== 'd';

const trivialWord = (tok: Tok) =>
  tok.k === 'w' && tok.senses.some((s) => s.cls === 'fill' || s.cls === 'prep' || s.cls === 'article');

const opensNothing = (tok: Tok) =>
  tok.k === 'w' &&
  tok.senses.length > 0 &&
  tok.senses.every((s) => s.cls === 'fill' || s.cls === 'article' || s.cls === 'ordinary');

/** What later pieces may lean on. */
function keep(reading: Reading, carry: Carry): void {
  for (const item of reading.items) {
    const record = 'record' in item ? (item.record as Record<string, unknown>) : null;
    const place = record && (record.pile ?? record.place);
    if (typeof place === 'string' && /^(pile|bay)/.test(place)) carry.place = place;
  }
}
