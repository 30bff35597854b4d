import type { ReadContext } from './context.ts';
import { READERS, REQUEST_READERS } from './grammar/index.ts';
import { mendings, type Vocabulary } from './lexicon.ts';
import { places, units } from './prepare.ts';
import { type Carry, type Item, isSoft, type Scope } from './reading.ts';
import { sense, type Tok } from './tokens.ts';

/** A run of tokens that a reader took whole. */
export type Reading = { a: number; b: number; items: Item[]; rule: string; slips: readonly Tok[] };
/** A stretch between commas, with what no reader took. */
type Chunk = { a: number; b: number; left: number[] };

const WINDOW = 36;
const LONGEST = 400;
const OWN_WORD = 'weigh-in of own word';
/** Words that turn what stands behind them into no entry: denied, meant, conditional, asked, heard, paid. */
const GATES = ['neg', 'intent', 'cond', 'ask', 'hearsay', 'money'] as const;

const gates = (tok: Tok) => tok.k === 'w' && GATES.some((cls) => sense(tok, cls) !== undefined);
const trivial = (tok: Tok) =>
  tok.k === 'd' ||
  isSoft(tok) ||
  (tok.k === 'w' &&
    tok.senses.some(
      (s) =>
        s.cls === 'fill' ||
        s.cls === 'prep' ||
        s.cls === 'and' ||
        s.cls === 'article' ||
        s.cls === 'greet' ||
        s.cls === 'next',
    ));

/** Denial and condition count even where the word is also a filler in another language. */
const strictGate = (tok: Tok) =>
  gates(tok) &&
  !tok.senses.some((s) => s.cls === 'prep' || s.cls === 'and' || s.cls === 'article' || s.cls === 'fill');
const parts = (tok: Tok) =>
  (tok.k === 'p' &&
    (tok.s === ',' ||
      tok.s === ';' ||
      tok.s === '+' ||
      tok.s === '.' ||
      tok.s === '!' ||
      tok.s === '(' ||
      tok.s === ')')) ||
  sense(tok, 'next') !== undefined ||
  (tok.k === 'p' && tok.s === '-' && !tok.glued);

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
function readRuns(tokens: readonly Tok[], asked: boolean, context: ReadContext, carry: Carry): Reading[] {
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
      const run = i === 0 && j === tokens.length ? tokens : tokens.slice(i, j);
      // `monday cart 58 tuesday | cart 61`: a second date opens what comes next.
      if (last.k === 'd' && opensMore(tokens[j]) && run.some((tok) => tok.k === 'd' && tok !== last))
        continue;
      found = readRun(run, l, h, {
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
  return out;
}

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

export type SentenceResult = { tokens: readonly Tok[]; readings: Reading[]; chunks: Chunk[] };

/** One sentence: its runs, with those dropped that stand in talk, denial, intention or a question. */
export function readSentence(
  tokens: readonly Tok[],
  asked: boolean,
  context: ReadContext,
  vocabulary: Vocabulary,
  carry: Carry,
): SentenceResult {
  // Nobody writes an entry so long without a full stop or a new line: left unread, at no cost.
  if (tokens.length > LONGEST)
    return { tokens, readings: [], chunks: [{ a: 0, b: tokens.length, left: [0] }] };
  const before = { ...carry };
  const first = readRuns(tokens, asked, context, carry);
  const result = weed(tokens, first);
  const strange = result.readings.filter((reading) => reading.rule === OWN_WORD);
  if (strange.length === 0 && !result.chunks.some((chunk) => chunk.left.some((k) => mendable(tokens[k]!))))
    return result;
  const mended = mend(tokens, vocabulary, result, context);
  if (!mended) return result;
  const kept = { ...carry };
  Object.assign(carry, before);
  const second = readRuns(mended.tokens, asked, context, carry).map((reading) => ({
    ...reading,
    slips: mended.slips.filter(
      (tok) => tok.a < mended.tokens[reading.b - 1]!.b && tok.b > mended.tokens[reading.a]!.a,
    ),
  }));
  const again = weed(mended.tokens, second);
  if (better(again, result)) return again;
  Object.assign(carry, kept);
  return result;
}

const isUnknown = (tok: Tok) => tok.k === 'w' && tok.senses.length === 0;
const isOrdinary = (tok: Tok) =>
  tok.k === 'w' &&
  tok.senses.length > 0 &&
  tok.senses.every((s) => s.cls === 'ordinary') &&
  !tok.s.includes(' ');
const mendable = (tok: Tok) => (isUnknown(tok) || isOrdinary(tok)) && tok.s.length >= 3 && tok.s.length <= 24;
const leftOf = (result: SentenceResult) => result.chunks.reduce((sum, chunk) => sum + chunk.left.length, 0);

/** A reading that leans on mended words must be whole: nothing left over beside it, and company for the guess. */
function better(again: SentenceResult, was: SentenceResult): boolean {
  const slipped = again.readings.filter((reading) => reading.slips.length > 0);
  if (slipped.length === 0) return false;
  const strange = was.readings.some((reading) => reading.rule === OWN_WORD);
  if (
    !(
      leftOf(again) < leftOf(was) ||
      again.readings.length > was.readings.length ||
      (strange && leftOf(again) === leftOf(was))
    )
  )
    return false;
  return slipped.every((reading) => worth(reading, again));
}

function worth(reading: Reading, result: SentenceResult): boolean {
  const { tokens, chunks } = result;
  if (reading.items.some((item) => 'request' in item)) return false;
  const run = tokens.slice(reading.a, reading.b);
  for (const chunk of chunks)
    if (reading.a < chunk.b && reading.b > chunk.a && chunk.left.length > 0) return false;
  const { slips } = reading;
  if (
    slips.some((tok) => tok.ordinary) &&
    reading.items.some((item) => 'doubt' in item && item.doubt.why === 'no-place')
  )
    return false;
  const company = run.filter(
    (tok) => tok.joined || (!tok.slip && (tok.k === 'n' || tok.senses.some((s) => !DULL.has(s.cls)))),
  );
  if (company.length === 0) return false;
  if (slips.some((tok) => tok.ordinary)) {
    // `cat 61.5`, `pine 3 138f`: an everyday word is a slip only where it opens the entry and a figure stands by it.
    return (
      slips.length === 1 &&
      NAMES.some((cls) => sense(slips[0], cls) !== undefined) &&
      reading.a === 0 &&
      tokens[0] === slips[0] &&
      run.some((tok) => tok.k === 'n') &&
      run.length <= 5
    );
  }
  // A trouble is not guessed out of a short word.
  if (
    reading.rule === 'problem' &&
    slips.some((tok) => tok.s.length < 5 && sense(tok, 'topic') !== undefined)
  )
    return false;
  return slips.length <= 1 + company.length;
}
/** What an everyday word may be a slip of. */
const NAMES = ['container', 'material', 'pilehead', 'place', 'point', 'tempword'];
const DULL = new Set(['fill', 'prep', 'and', 'article', 'numero', 'be', 'approx', 'next']);

/** Unknown words one slip from a trade word get that word's meanings; phrases are then looked for again. */
function mend(
  tokens: readonly Tok[],
  vocabulary: Vocabulary,
  result: SentenceResult,
  context: ReadContext,
): { tokens: Tok[]; slips: Tok[] } | null {
  let changed = false;
  // All that no reader took for certain: also the words of a reading that was dropped for its company.
  const left = new Set(tokens.keys());
  for (const reading of result.readings)
    if (reading.rule !== OWN_WORD) for (let k = reading.a; k < reading.b; k++) left.delete(k);
  const out = tokens.map((tok, k) => {
    if (!left.has(k) || !mendable(tok)) return tok;
    const words = mendings(vocabulary, tok.s);
    const meant = words.flatMap((word) => vocabulary.root.get(word)?.senses ?? []);
    const useful = meant.filter((s) => !NEVER_MENDED.has(s.cls));
    const senses = useful.length > 0 || isOrdinary(tok) ? useful : meant.filter((s) => GLUE.has(s.cls));
    const phrase = words.find((word) => vocabulary.root.get(word)?.next);
    if (senses.length === 0 && !phrase) return tok;
    changed = true;
    return { ...tok, senses, slip: true, ordinary: isOrdinary(tok), meant: words };
  });
  if (!changed) return null;
  const joined = phrasesAmong(out, vocabulary);
  const slips = joined.filter((tok) => tok.slip);
  // Mended words may be units and heads of places: both are looked for again.
  return { tokens: places(units(joined, context), context), slips };
}
const NEVER_MENDED = new Set([
  'analyte',
  'fill',
  'prep',
  'and',
  'article',
  'talk',
  'numw',
  'ordinary',
  'req',
  'set',
  'set!',
  'intent',
  'neg',
  'money',
  'hearsay',
  'ask',
  'about',
  'correct',
]);

const GLUE = new Set(['fill', 'prep', 'article', 'and', 'intent', 'neg', 'cond', 'ask']);

/** Joins mended words with their neighbours where the two make a phrase: `weest kitchen`, `wsahed the carts`. */
function phrasesAmong(tokens: readonly Tok[], vocabulary: Vocabulary): Tok[] {
  const out: Tok[] = [];
  const forms = (tok: Tok) => (tok.k !== 'w' ? [] : (tok.meant ?? [tok.s]));
  for (let i = 0; i < tokens.length; i++) {
    let best: { end: number; senses: Tok['senses'] } | null = null;
    let nodes = forms(tokens[i]!).flatMap((word) => vocabulary.root.get(word) ?? []);
    for (let j = i + 1; j < Math.min(tokens.length, i + 6) && nodes.length > 0; j++) {
      const words = forms(tokens[j]!);
      nodes = nodes.flatMap((node) =>
        words.flatMap(
          (word) =>
            word.split(' ').reduce<typeof node | undefined>((at, part) => at?.next?.get(part), node) ?? [],
        ),
      );
      const senses = nodes.flatMap((node) => node.senses ?? []).filter((s) => !NEVER_MENDED.has(s.cls));
      if (senses.length > 0 && tokens.slice(i, j + 1).some((tok) => tok.slip)) best = { end: j, senses };
    }
    if (best) {
      const last = tokens[best.end]!;
      out.push({
        ...tokens[i]!,
        b: last.b,
        s: tokens
          .slice(i, best.end + 1)
          .map((tok) => tok.s)
          .join(' '),
        senses: best.senses,
        slip: true,
        ordinary: false,
        joined: true,
      });
      i = best.end;
    } else out.push(tokens[i]!);
  }
  return out;
}

/** Marks what each stretch between commas left unread, and drops readings that stand in such company. */
function weed(tokens: readonly Tok[], readings: readonly Reading[]): SentenceResult {
  const taken = new Uint8Array(tokens.length);
  for (const reading of readings) taken.fill(1, reading.a, reading.b);
  const chunks: Chunk[] = [];
  let a = 0;
  const head = headBefore(tokens, readings);
  for (let k = 0; k <= tokens.length; k++) {
    if (k < tokens.length && !((parts(tokens[k]!) || k === head) && !taken[k])) continue;
    const left: number[] = [];
    for (let j = a; j < k; j++)
      if (!taken[j] && (!trivial(tokens[j]!) || strictGate(tokens[j]!))) left.push(j);
    if (k > a) chunks.push({ a, b: k, left });
    a = k + 1;
  }
  const conditional = tokens.some((tok, k) => !taken[k] && sense(tok, 'cond') !== undefined);
  const kept = readings.filter((reading) => {
    // `on est allés à la plage, 30 degrés`: a reading that lacks its place is asked about only where all is trade.
    const homeless = reading.items.every((item) => 'doubt' in item && item.doubt.why === 'no-place');
    if (homeless && chunks.some((chunk) => chunk.left.length > 0)) return false;
    if (reading.items.every((item) => 'request' in item)) return stands(reading, chunks, tokens, true);
    if (conditional) return false;
    return stands(reading, chunks, tokens, false);
  });
  if (kept.length < readings.length) {
    // What was dropped is unread.
    const dropped = readings.filter((reading) => !kept.includes(reading));
    for (const reading of dropped) {
      const chunk = chunks.find((one) => reading.a >= one.a && reading.a < one.b);
      if (chunk && chunk.left.length === 0) chunk.left.push(reading.a);
    }
  }
  return { tokens, readings: kept, chunks };
}

/**
 * `went round with the probe: A 51, B 58`: where the colon stands behind words that announce what follows, or -1.
 * They hold no figure, deny and ask nothing, and several entries follow.
 */
function headBefore(tokens: readonly Tok[], readings: readonly Reading[]): number {
  const colon = tokens.findIndex((tok) => tok.k === 'p' && tok.s === ':');
  const head = tokens.slice(0, Math.max(colon, 0));
  if (head.length === 0 || head.length > 10 || head.some((tok) => tok.k !== 'w' || gates(tok))) return -1;
  const entries = readings.filter((reading) => reading.items.every((item) => 'record' in item));
  return entries.length >= 2 && readings.every((reading) => reading.a > colon) ? colon : -1;
}

/** Whether a reading stands although its stretch holds words nobody took. */
function stands(
  reading: Reading,
  chunks: readonly Chunk[],
  tokens: readonly Tok[],
  request: boolean,
): boolean {
  for (const chunk of chunks) {
    if (reading.b <= chunk.a || reading.a >= chunk.b || chunk.left.length === 0) continue;
    const gateBefore = chunk.left.some((k) => k < reading.a && gates(tokens[k]!));
    if (gateBefore) return false;
    // `swept and didn't lock the gate`: what stands before the `and` is done.
    const after = chunk.left.filter((k) => k >= reading.b);
    const beforeIt = chunk.left.filter((k) => k < reading.a);
    if (beforeIt.length > 0) return false;
    const firstAfter = after[0];
    if (firstAfter !== undefined) {
      let linked = false;
      for (let k = reading.b; k < firstAfter; k++) if (sense(tokens[k], 'and') !== undefined) linked = true;
      if (!linked || request) return false;
    }
  }
  return true;
}
