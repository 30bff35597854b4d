import type { ReadContext } from './context.ts';
import { READERS, REQUEST_READERS } from './grammar/index.ts';
import { mendings, type Vocabulary } from './lexicon.ts';
import { type Carry, type Item, isSoft, type Reader, type Scope } from './reading.ts';
import { sense, type Tok } from './tokens.ts';

/** A run of tokens that a reader took whole. */
export type Reading = { a: number; b: number; items: Item[]; rule: string; slips: boolean; strong: boolean };
/** A stretch between commas, with what no reader took. */
export type Chunk = { a: number; b: number; left: number[] };

const WINDOW = 36;
/** Words that turn what stands behind them into no entry: denied, meant, conditional, asked, heard, paid. */
const GATES = ['neg', 'intent', 'cond', 'ask', 'hearsay', 'money'] as const;

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

/** Readers whose words stand in this sentence, in the order of the lists. */
function candidates(tokens: readonly Tok[]): Reader[] {
  const classes = new Set<string>();
  for (const tok of tokens) {
    if (tok.k === 'n') classes.add('n');
    for (const s of tok.senses) classes.add(s.cls === 'place?' ? 'place' : s.cls);
  }
  return [...REQUEST_FIRST, ...READERS, ...REQUEST_LATER].filter((reader) =>
    reader.on.some((cls) => classes.has(cls)),
  );
}
const FIRST = new Set(['request amend', 'request undo', 'request mix']);
const REQUEST_FIRST = REQUEST_READERS.filter((reader) => FIRST.has(reader.rule));
const REQUEST_LATER = REQUEST_READERS.filter((reader) => !FIRST.has(reader.rule));

/** Reads one sentence from left to right, the longest run first. */
export function readRuns(
  tokens: readonly Tok[],
  asked: boolean,
  context: ReadContext,
  carry: Carry,
): Reading[] {
  const readers = candidates(tokens);
  const out: Reading[] = [];
  if (readers.length === 0) return out;
  let lastComma = -1;
  tokens.forEach((tok, k) => {
    if (parts(tok)) lastComma = k;
  });
  let i = 0;
  while (i < tokens.length) {
    if (isSoft(tokens[i]!) && tokens[i]!.s !== '*') {
      i++;
      continue;
    }
    let found: Reading | null = null;
    const most = Math.min(tokens.length, i + WINDOW);
    for (let j = most; j > i && !found; j--) {
      const run = tokens.slice(i, j);
      const last = run.at(-1)!;
      if (j < tokens.length && isSoft(last)) continue;
      const scope: Scope = {
        context,
        carry,
        asked: asked && j > lastComma,
        nextTok: tokens[j],
        prevTok: tokens[i - 1],
        slipped: false,
      };
      for (const reader of readers) {
        const items = reader.read(run, scope);
        if (items && items.length > 0) {
          found = { a: i, b: j, items, rule: reader.rule, slips: run.some((tok) => tok.slip), strong: false };
          break;
        }
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
  const before = { ...carry };
  const first = readRuns(tokens, asked, context, carry);
  const result = weed(tokens, first);
  const unknown = result.chunks.some((chunk) => chunk.left.some((k) => isUnknown(tokens[k]!)));
  if (!unknown) return result;
  const mended = mend(tokens, vocabulary, result);
  if (!mended) return result;
  Object.assign(carry, before);
  const second = readRuns(mended, asked, context, carry);
  const again = weed(mended, second);
  return better(again, result) ? again : result;
}

const isUnknown = (tok: Tok) => tok.k === 'w' && tok.senses.length === 0;
const leftOf = (result: SentenceResult) => result.chunks.reduce((sum, chunk) => sum + chunk.left.length, 0);
const better = (a: SentenceResult, b: SentenceResult) =>
  a.readings.length > 0 &&
  (leftOf(a) < leftOf(b) || a.readings.length > b.readings.length) &&
  a.readings.filter((r) => r.slips).every((r) => worth(r, a.tokens));

/** A word mended by guess needs company: a number, or another word of the trade. */
function worth(reading: Reading, tokens: readonly Tok[]): boolean {
  const run = tokens.slice(reading.a, reading.b);
  return run.some(
    (tok) =>
      !tok.slip &&
      (tok.k === 'n' || tok.senses.some((s) => !['fill', 'prep', 'and', 'article'].includes(s.cls))),
  );
}

/** Unknown words one slip from a trade word get that word's meanings. */
function mend(tokens: readonly Tok[], vocabulary: Vocabulary, result: SentenceResult): Tok[] | null {
  let changed = false;
  const left = new Set(result.chunks.flatMap((chunk) => chunk.left));
  const out = tokens.map((tok, k) => {
    if (!left.has(k) || !isUnknown(tok) || tok.s.length < 3 || tok.s.length > 24) return tok;
    const words = mendings(vocabulary, tok.s);
    const senses = words.flatMap((word) => vocabulary.root.get(word)?.senses ?? []);
    if (senses.length === 0) return tok;
    changed = true;
    return { ...tok, senses, slip: true };
  });
  return changed ? out : null;
}

/** Marks what each stretch between commas left unread, and drops readings that stand in such company. */
function weed(tokens: readonly Tok[], readings: readonly Reading[]): SentenceResult {
  const taken = new Uint8Array(tokens.length);
  for (const reading of readings) taken.fill(1, reading.a, reading.b);
  const chunks: Chunk[] = [];
  let a = 0;
  for (let k = 0; k <= tokens.length; k++) {
    if (k < tokens.length && !(parts(tokens[k]!) && !taken[k])) continue;
    const left: number[] = [];
    for (let j = a; j < k; j++) if (!taken[j] && !trivial(tokens[j]!)) left.push(j);
    if (k > a) chunks.push({ a, b: k, left });
    a = k + 1;
  }
  const conditional = tokens.some((tok, k) => !taken[k] && sense(tok, 'cond') !== undefined);
  const kept = readings.filter((reading) => {
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

/** Whether a reading stands although its stretch holds words nobody took. */
function stands(
  reading: Reading,
  chunks: readonly Chunk[],
  tokens: readonly Tok[],
  request: boolean,
): boolean {
  for (const chunk of chunks) {
    if (reading.b <= chunk.a || reading.a >= chunk.b || chunk.left.length === 0) continue;
    const gateBefore = chunk.left.some(
      (k) => k < reading.a && GATES.some((cls) => sense(tokens[k], cls) !== undefined),
    );
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
