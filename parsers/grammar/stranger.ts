import { type FieldRecord, isMassUnit, toKg } from '#records';
import { bare, type Item, isPrep, type Reader, take, tidy } from '../reading.ts';
import { sense } from '../tokens.ts';
import { isAdj, isFood } from './own-words.ts';
import { sliceOfTokens } from './words.ts';

/** The rule that takes a word nobody knows as a material. */
export const OWN_WORD = 'weigh-in of own word';

/** A material the site does not know but that is plainly named beside a weight with its unit: `pumpkins 104 lb`. */
export const strangeMaterial: Reader = {
  rule: OWN_WORD,
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
    // Where it came from may stand last, with its article.
    const whence = slots.all.findIndex((one) => isPrep(one, 'from'));
    const told = whence > 0 && slots.get('source').length === 1 ? slots.all.slice(0, whence) : slots.all;
    if (!named.every((tok) => told.some((one) => one.tok === tok))) return null;
    // The words stand together, next to the weight; nothing else is said.
    const words = told.filter(
      (one) => one.cls !== 'source' && one.cls !== 'add' && one.cls !== 'total' && one.cls !== 'sep',
    );
    const at = words.findIndex((one) => one.cls === 'n');
    const first = words.findIndex((one) => one.tok === named[0]);
    const last = words.findIndex((one) => one.tok === named.at(-1));
    if (
      told.some((one) => one.cls === 'sep' || one.cls === 'and') ||
      slots.dates.length > 0 ||
      (first < at && at < last) ||
      // `the sign says 400 lb`: only `of` stands between the weight and what was weighed.
      words.some((one) => one.cls === 'fill' || (one.cls === 'prep' && !isPrep(one, 'of', 'from'))) ||
      // `my backpack weighs 12 kg` is talk
      (!named.some(isFood) &&
        told.findIndex((one) => one.cls === 'add') > told.findIndex((one) => one.tok === named[0])) ||
      // `suitcase 23 kg` in talk: of two words that nobody knows, one must be a thing that grows.
      (named.length > 1 && !named.some(isFood) && tokens[0]?.k !== 'n' && slots.get('source').length === 0)
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
