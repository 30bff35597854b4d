import { type FieldRecord, isMassUnit, toKg } from '#records';
import { bare, type Item, type Reader, take, tidy } from '../reading.ts';
import { sense } from '../tokens.ts';
import { isAdj, isFood } from './own-words.ts';
import { sliceOfTokens } from './words.ts';

/** A material the site does not know but that is plainly named beside a weight with its unit: `pumpkins 104 lb`. */
export const strangeMaterial: Reader = {
  rule: 'weigh-in of own word',
  on: ['n'],
  read(tokens, scope): Item[] | null {
    if (scope.asked || tokens.length > 7 || scope.slipped) return null;
    const slots = take(tokens, SLOTS_1, 2);
    if (!slots || slots.nums.length !== 1) return null;
    const named = slots.all.filter((one) => isName(one.cls)).map((one) => one.tok);
    if (named.every(isAdj)) return null;
    const n = slots.nums[0]!.n!;
    if (!isMassUnit(n.unit) || n.value <= 0 || n.to !== undefined || n.unit === 'oz' || n.unit === 'g')
      return null;
    // The words stand together, next to the weight; nothing else is said.
    const words = slots.all.filter(
      (one) => one.cls !== 'source' && one.cls !== 'add' && !one.cls.startsWith('prep') && one.cls !== 'sep',
    );
    if (
      words.some((one) => one.cls === 'fill' || one.cls === 'and') ||
      slots.all.some((one) => one.cls === 'sep') ||
      slots.dates.length > 0
    )
      return null;
    const at = words.findIndex((one) => one.cls === 'n');
    if (
      at > 0 &&
      at < words.length - 1 &&
      words.slice(at + 1).some((one) => isName(one.cls)) &&
      words.slice(0, at).some((one) => isName(one.cls))
    )
      return null;
    if (
      slots.unknown.length > 1 &&
      !named.some(isFood) &&
      (slots.dates.length > 0 || tokens[0]?.k !== 'n') &&
      slots.get('source').length === 0
    )
      return null;
    const material = sliceOfTokens(scope.message, named).toLowerCase();
    if (material.length < 3) return null;
    const source = slots.get('source')[0];
    const record = bare({
      kind: 'weigh-in' as const,
      material,
      count: 1,
      kg: tidy(toKg(n.value, n.unit)),
      basis: 'net' as const,
      source: source && sense(source, 'source'),
      approximate: n.approximate ? true : undefined,
    }) as FieldRecord;
    return [{ record, typed: `${n.value} ${n.unit}` }];
  },
};

// What each reader accepts, kept as constants so that their ranks are worked out once.
const SLOTS_1 = ['n', 'source', 'add', 'total', 'net', 'food', 'adj'];
const isName = (cls: string) => cls === '?' || cls === 'food' || cls === 'adj';
