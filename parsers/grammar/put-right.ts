// What was said before taken back or put right: `undo`, `sorry 56.2 not 58.2`.
import { type Reader, take } from '../reading.ts';
import { sense } from '../tokens.ts';
import { ask, beside } from './asking.ts';

/** `undo`, `undo last 2`. */
export const undo: Reader = {
  rule: 'request undo',
  on: ['req'],
  read(tokens) {
    const rest = beside(tokens, 'undo');
    if (!rest) return null;
    const slots = take(rest, SLOTS_2);
    if (!slots || slots.nums.length > 1) return null;
    const n = slots.nums[0]?.n;
    if (n?.hash) return ask({ request: 'undo', entry: n.value });
    if (n && (!Number.isInteger(n.value) || n.value < 1 || n.value > 50 || n.unit !== null)) return null;
    return ask({ request: 'undo', count: n?.value ?? 1 });
  },
};

/** A slip of an earlier message put right: `sorry 56.2 not 58.2`, `that was C not B`, `*chips 16`. */
export const amend: Reader = {
  rule: 'request amend',
  on: ['correct', 'neg', 'amend', 'star'],
  read(tokens, scope) {
    if (scope.prevTok && scope.prevTok.s !== '\n' && !(scope.prevTok.k === 'p')) return null;
    const slots = take(tokens, SLOTS_3);
    if (!slots) return null;
    // What opens with an entry is put right in the same breath, and is nothing earlier.
    const turn = tokens.findIndex(
      (tok) => sense(tok, 'correct') !== undefined && sense(tok, 'amend') === undefined,
    );
    const before = tokens.slice(0, Math.max(turn, 0));
    if (before.some((tok) => sense(tok, 'container') !== undefined) && before.some((tok) => tok.k === 'n'))
      return null;
    const values: { v: string | number; neg: boolean; kind: 'n' | 'place' }[] = [];
    let negated = false;
    let hashed: number | undefined;
    for (const { cls, tok } of slots.all) {
      if (cls === 'neg' || sense(tok, 'negwas') !== undefined) negated = true;
      else if (cls === 'n') {
        if (tok.n!.hash && tok.n!.unit === null && Number.isInteger(tok.n!.value) && slots.nums.length > 1) {
          hashed = tok.n!.value;
          continue;
        }
        values.push({ v: tok.n!.value, neg: negated, kind: 'n' });
        negated = false;
      } else if (cls === 'place') {
        values.push({ v: sense(tok, 'place') ?? sense(tok, 'place?')!, neg: negated, kind: 'place' });
        negated = false;
      }
    }
    // `C pas brassé`: a denial alone puts nothing right.
    const marked =
      slots.get('correct').length > 0 ||
      slots.get('amend').some((tok) => sense(tok, 'amend') !== 'instead') ||
      slots.get('star').length > 0;
    const material = slots.val('material');
    const entry = hashed !== undefined ? { entry: hashed } : {};
    // `pile 3 not 2`: beside a pile the number is another pile.
    if (values.length === 2 && values[0]!.kind !== values[1]!.kind)
      for (const one of values) {
        const place = one.kind === 'n' && slots.nums.find((tok) => tok.n!.value === one.v);
        const name = place ? sense(place, 'place?') : undefined;
        if (name) Object.assign(one, { v: name, kind: 'place' });
      }
    if (values.length === 2 && values[0]!.kind === values[1]!.kind) {
      const [a, b] = values as [(typeof values)[0], (typeof values)[0]];
      if (a.neg === b.neg) {
        // `changed 58 to 56`, `56 au lieu de 58`
        const instead = slots.get('amend').some((tok) => sense(tok, 'amend') === 'instead');
        const change = slots.get('amend').some((tok) => sense(tok, 'amend') === 'change');
        if (instead)
          return ask({ request: 'amend', from: b.v, to: a.v, ...(material && { material }), ...entry });
        if (change)
          return ask({ request: 'amend', from: a.v, to: b.v, ...(material && { material }), ...entry });
        return null;
      }
      const from = a.neg ? a : b;
      const to = a.neg ? b : a;
      if (from.kind === 'place' && scope.context.piles.length === 0) return null;
      return ask({ request: 'amend', from: from.v, to: to.v, ...(material && { material }), ...entry });
    }
    if (
      scope.prevTok?.s === ',' &&
      ((sense(tokens[0], 'correct') !== undefined && sense(tokens[0], 'amend') === undefined) ||
        sense(tokens[0], 'itis') !== undefined) &&
      values.length === 1 &&
      ['last', 'material', 'container', 'entries'].every((cls) => slots.get(cls).length === 0)
    )
      return null;
    if (values.length === 1 && marked && !values[0]!.neg && slots.get('neg').length === 0) {
      const one = values[0]!;
      if (one.kind === 'place' && material) return null;
      // `it was 95 out today` tells of the weather: a slip is put right without a date or a word of place.
      const next = scope.nextTok;
      const told = slots.dates.length > 0 || next?.k === 'd' || sense(next, 'prep') === 'out';
      if (told && slots.get('correct').length + slots.get('star').length === 0) return null;
      return ask({ request: 'amend', to: one.v, ...(material && { material }), ...entry });
    }
    return null;
  },
};

const SLOTS_2 = ['n', 'last', 'entries', 'numero', 'container'];

const SLOTS_3 = [
  'correct',
  'amend',
  'neg',
  'n',
  'place',
  'material',
  'container',
  'last',
  'star',
  'be',
  'intent!',
  'source',
  'prepfrom',
  'numero',
  'entries',
  'was',
  'pilehead',
];
