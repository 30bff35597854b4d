// Which readings stand: not those in talk, denial, intention or a question.

import { isMassUnit } from '#records';
import { OWN_WORD } from './grammar/stranger.ts';
import { isSoft } from './reading.ts';
import type { Reading } from './runs.ts';
import { sense, type Tok } from './tokens.ts';

/** A stretch between commas, with what no reader took. */
type Chunk = { a: number; b: number; left: number[] };

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

/** What parts the stretches of a sentence. */
export const parts = (tok: Tok) =>
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

/** A sentence read: its tokens, what stands, and what each stretch left unread. */
export type SentenceResult = { tokens: readonly Tok[]; readings: Reading[]; chunks: Chunk[] };

/** A word nobody knows, typed as a name. */
export const isName = (tok: Tok | undefined) =>
  tok?.k === 'w' && tok.senses.length === 0 && tok.upper === true && tok.s.length >= 3 && !tok.slip;

/** Doings that somebody's name may stand before. */
const DONE = new Set(['turning', 'cover', 'chore', 'discharge', 'transfer', 'screening', 'sample']);

/** `turned A with Marie`, `by Joe`, `me and Joe turned C`, `Joe turned C`: who did it is no part of the entry. */
function doer(tokens: readonly Tok[], k: number, readings: readonly Reading[]): boolean {
  const self = sense(tokens[k], 'self') !== undefined;
  if (!isName(tokens[k]) && !self) return false;
  const before = tokens[k - 1];
  const behind = ['with', 'on'].includes(sense(before, 'prep') ?? '') && readings.some((one) => one.b <= k);
  if (behind && !tokens[k + 1]?.senses.length && tokens[k + 1]?.k !== 'n') return true;
  let next = k + 1;
  while (
    isName(tokens[next]) ||
    ['and', 'self', 'fill'].some((cls) => sense(tokens[next], cls) !== undefined)
  )
    next++;
  const reading = readings.find((one) => one.a === next || (one.a <= next && one.a > k));
  return (
    reading !== undefined &&
    (k === 0 ||
      tokens[k - 1]!.k !== 'w' ||
      isName(before) ||
      // `don Beto`
      ['and', 'self', 'fill'].some((cls) => sense(before, cls) !== undefined)) &&
    reading.items.every(
      (item) =>
        'record' in item &&
        DONE.has(item.record.kind) &&
        // A bare `turned 3` behind a name is a birthday.
        (item.record.kind !== 'turning' ||
          !/\d/.test(item.record.pile ?? '1') ||
          tokens
            .slice(reading.a, reading.b)
            .some((tok) => sense(tok, 'place') !== undefined || tok.n?.named)),
    )
  );
}

/** Marks what each stretch between commas left unread, and drops readings that stand in such company. */
export function weed(tokens: readonly Tok[], found: readonly Reading[]): SentenceResult {
  const readings = found.map((reading) => pastHead(reading, tokens));
  const taken = new Uint8Array(tokens.length);
  for (const reading of readings) taken.fill(1, reading.a, reading.b);
  const chunks: Chunk[] = [];
  let a = 0;
  const head = headBefore(tokens, readings);
  for (let k = 0; k <= tokens.length; k++) {
    if (k < tokens.length && !((parts(tokens[k]!) || k === head) && !taken[k])) continue;
    const left: number[] = [];
    for (let j = a; j < k; j++)
      if (!taken[j] && (!trivial(tokens[j]!) || strictGate(tokens[j]!)) && !doer(tokens, j, readings))
        left.push(j);
    if (k > a) chunks.push({ a, b: k, left });
    a = k + 1;
  }
  const conditional = tokens.some((tok, k) => !taken[k] && sense(tok, 'cond') !== undefined);
  const kept = readings.filter((reading) => {
    // `on est allés à la plage, 30 degrés`: a reading that lacks its place is asked about only where all is trade.
    const homeless = reading.items.every((item) => 'doubt' in item && item.doubt.why === 'no-place');
    if (homeless && chunks.some((chunk) => chunk.left.length > 0)) return false;
    if (reading.items.every((item) => 'request' in item)) return stands(reading, chunks, tokens, true);
    if (conditional || weighedBehind(reading, chunks, tokens)) return false;
    return stands(reading, chunks, tokens, false);
  });
  // When and why is understood with what was done.
  for (const reading of kept) {
    const chunk = chunks.find((one) => reading.a >= one.a && reading.a < one.b);
    if (!chunk) continue;
    const behind = chunk.left.find((k) => k >= reading.b);
    if (behind !== undefined && sense(tokens[behind], 'aside') !== undefined)
      chunk.left = chunk.left.filter((k) => k < behind);
  }
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

/** `long day: bucket 20`: fillers before a colon belong to what announces the entry. */
function pastHead(reading: Reading, tokens: readonly Tok[]): Reading {
  const colon = tokens.findIndex(
    (tok, k) => k >= reading.a && k < reading.b && tok.k === 'p' && tok.s === ':',
  );
  const dull = (tok: Tok) =>
    tok.k === 'w' && tok.senses.some((s) => s.cls === 'fill') && sense(tok, 'source') === undefined;
  const heads = colon > reading.a && tokens.slice(reading.a, colon).every(dull);
  return heads ? { ...reading, a: colon + 1 } : reading;
}

/**
 * `went round with the probe: A 51, B 58`: where the colon stands behind words that announce what follows, or -1.
 * They hold no figure, deny and ask nothing, and several entries follow.
 */
function headBefore(tokens: readonly Tok[], readings: readonly Reading[]): number {
  const colon = tokens.findIndex((tok) => tok.k === 'p' && tok.s === ':');
  const head = tokens.slice(0, Math.max(colon, 0));
  const late = head.some((tok) => sense(tok, 'forgotten') !== undefined);
  const stray = (tok: Tok) =>
    tok.k === 'w'
      ? gates(tok) && sense(tok, 'forgotten') === undefined
      : tok.k !== 'd' && !(late && tok.s === ',');
  if (head.length === 0 || head.length > 10 || head.some(stray)) return -1;
  const entries = readings.filter((reading) => reading.items.every((item) => 'record' in item));
  return entries.length >= (late ? 1 : 2) && readings.every((reading) => reading.a > colon) ? colon : -1;
}

const unweighed = (item: Reading['items'][number]) =>
  'record' in item &&
  !DONE.has(item.record.kind) &&
  !['temperature', 'moisture', 'pile'].includes(item.record.kind) &&
  !(item.record.kind === 'weigh-in' && typeof item.record.kg === 'number');

/** `cafe brought a bucket, 20 lbs on the nose`: the weight of a load that was counted alone stands unread behind it. */
function weighedBehind(reading: Reading, chunks: readonly Chunk[], tokens: readonly Tok[]): boolean {
  const counted = reading.items.some(
    (item) =>
      'record' in item &&
      item.record.kind === 'weigh-in' &&
      item.record.container != null &&
      item.record.kg == null,
  );
  const next = counted ? chunks.find((chunk) => chunk.a >= reading.b) : undefined;
  return next?.left.some((k) => tokens[k]!.k === 'n' && isMassUnit(tokens[k]!.n!.unit)) ?? false;
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
    // `turned 2 before the rain`, `covered 3 because of the flies`: when or why it was done.
    if (firstAfter !== undefined && (request || sense(tokens[firstAfter], 'aside') === undefined)) {
      // `cart 61 and cart 48 both from …`: a tail with figures of its own is no mere remark.
      if (after.some((k) => tokens[k]!.k === 'n')) return false;
      // `2 bags of chips and a dip`: unweighed, with more behind it, it may be anything.
      if (reading.items.some(unweighed) || reading.rule === OWN_WORD) return false;
      let end = reading.b - 1;
      while (end > reading.a && ['be', 'fill'].some((cls) => sense(tokens[end], cls) !== undefined)) end--;
      let linked = sense(tokens[end], 'and') !== undefined;
      for (let k = reading.b; k < firstAfter; k++) if (sense(tokens[k], 'and') !== undefined) linked = true;
      if (!linked || request) return false;
    }
  }
  return true;
}
