// What comes to the gate: bulking material, and loads that were sent back.
import type { FieldRecord } from '#records';
import { drop } from '../plausible.ts';
import { bare, type Reader, type Scope, type Slots, take } from '../reading.ts';
import type { Plain } from '../text.ts';
import { sense, type Tok } from '../tokens.ts';
import { amountOf, plainAmount } from './amounts.ts';
import { SIZES } from './between.ts';
import { sliceOfTokens } from './words.ts';

const BULKING = [
  'wood-chips',
  'sawdust',
  'leaves',
  'cardboard',
  'paper',
  'straw',
  'grass',
  'garden-waste',
  'manure',
];

export const delivery: Reader = {
  rule: 'delivery',
  on: ['deliver', 'source'],
  read(tokens, scope) {
    const slots = take(tokens, SLOTS_4);
    if (!slots || scope.asked) return null;
    const materials = [...new Set(slots.get('material').map((tok) => sense(tok, 'material')!))];
    if (
      materials.length !== 1 ||
      !(BULKING.includes(materials[0]!) || scope.context.materials.includes(materials[0]!))
    )
      return null;
    const strong = slots.get('deliver').some((tok) => sense(tok, 'deliver') !== 'weak');
    if (!strong && !isLoadFromOutside(slots, scope)) return null;
    const amount = amountOf(slots, scope, true);
    if (amount === null) return null;
    if (!amount && slots.get('deliver').every((tok) => sense(tok, 'deliver') === 'weak')) return null;
    const record = bare({
      kind: 'delivery' as const,
      material: materials[0]!,
      ...plainAmount(amount),
    }) as FieldRecord;
    const n = slots.nums.find((tok) => tok.n!.perhaps !== undefined)?.n;
    if (n && amount)
      return [
        { doubt: { record, why: 'number-ambiguous', choices: [{ say: String(n.value), record }, drop] } },
      ];
    if (amount && amount.value < 0) return [{ doubt: { record, why: 'negative', choices: [drop] } }];
    return [{ record, typed: amount?.typed ?? null }];
  },
};

/**
 * `got 2 yards of chips from the city`: a load by the cubic yard or metre from somebody who is no source of scraps
 * here goes into stock.
 */
export const isLoadFromOutside = (slots: Slots, scope: Scope): boolean => {
  const from = sense(slots.get('source')[0], 'source');
  return (
    from !== undefined &&
    !scope.context.sources.includes(from) &&
    slots.get('place').length === 0 &&
    slots.nums.length === 1 &&
    (slots.nums[0]!.n!.unit === 'yd3' || slots.nums[0]!.n!.unit === 'm3')
  );
};

export const rejected: Reader = {
  rule: 'rejected-load',
  on: ['reject'],
  read(tokens, scope) {
    const first = tokens.findIndex((tok) => sense(tok, 'reject') !== undefined);
    const cut = reasonAt(scope.message, tokens, first);
    const slots = take(tokens.slice(0, cut?.from ?? tokens.length), SLOTS_5);
    if (!slots || scope.asked) return null;
    const amount = amountOf(slots, scope, slots.get('source').length > 0);
    if (amount === null) return null;
    const source = slots.get('source')[0];
    if (!amount && !source) return null;
    const contaminated = slots.get('contaminated').length > 0;
    const trail = slots.get('contaminated').map((tok) => tok.s);
    const record = bare({
      kind: 'rejected-load' as const,
      container: amount?.container,
      count: amount?.container ? (amount.count ?? 1) : undefined,
      kg: amount?.kg,
      source: source && sense(source, 'source'),
      reason: cut?.reason ?? (contaminated ? trail[0] : undefined),
    }) as FieldRecord;
    return [{ record }];
  },
};

/** Why a load was sent back: everything behind `full of`, `because`, a comma or a dash after the load. */
function reasonAt(
  message: Plain,
  tokens: readonly Tok[],
  verb: number,
): { from: number; reason: string } | null {
  for (let k = Math.max(verb, 0) + 1; k < tokens.length; k++) {
    const why = sense(tokens[k], 'because') !== undefined;
    const comma =
      tokens[k]!.k === 'p' &&
      (tokens[k]!.s === ',' || tokens[k]!.s === '-' || tokens[k]!.s === ':' || tokens[k]!.s === '(');
    if (!why && !comma) continue;
    let words = tokens.slice(k + 1);
    while (
      words[0] &&
      (sense(words[0], 'because') !== undefined || words[0].senses.some((s) => EMPTY_WORDS.has(s.cls)))
    )
      words = words.slice(1);
    // `glass in them`
    while (
      words.length > 1 &&
      (sense(words.at(-1), 'within') !== undefined || sense(words.at(-1), 'there') !== undefined)
    )
      words = words.slice(0, -1);
    if (words.length === 0 || words.some((word) => sense(word, 'source') !== undefined)) continue;
    if (words.some((word) => word.k === 'n' && word.n!.unit !== null)) continue;
    return {
      from: k,
      reason: sliceOfTokens(message, words).trim(),
    };
  }
  return null;
}

/** `it was full of glass` tells no more than `glass`. */
const EMPTY_WORDS = new Set(['article', 'fill', 'be', 'itis', 'was', 'fullof', 'there']);

const SLOTS_4 = ['deliver', 'material', ...SIZES, 'place!', 'person', 'add', 'source'];

const SLOTS_5 = ['reject', ...SIZES, 'source', 'material', 'contaminated', 'full', 'from', 'be', 'add'];
