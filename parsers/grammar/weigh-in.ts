import { type FieldRecord, isVolumeUnit, toKg, toLitres } from '#records';
import { say } from '../plausible.ts';
import { bare, type Item, type Reader, type Scope, type Slots, take, tidy } from '../reading.ts';
import { sense, type Tok } from '../tokens.ts';
import { isLoadFromOutside } from './arriving.ts';
import { inContainer } from './in-container.ts';
import { alternatives, contaminationIn, ofWhichIn } from './load-parts.ts';
import { judged, leavesNumber, massOf, placeOf, sourceOf, strangers, type WeighIn } from './loads.ts';
import { ownWordsIn } from './own-words.ts';

const ACCEPTS = [
  'n',
  'container',
  'contaminated',
  'source',
  'material',
  'total',
  'each',
  'net',
  'gross',
  'tare',
  'add',
  'full',
  'place',
  'or',
  'unsure',
  'point',
  'more',
  'numero',
  'approx',
  'be',
  'ok',
  'minus',
  'plus',
  'both',
  'all',
];

/** `gave pile 2 five gallons of water` */
const WATERED = [...ACCEPTS, 'gave'];

/** Material going in, weighed or by volume: `cart 66.5`, `3 carts 61 58 70`, `chips 12`, `2 barrows of leaves`. */
export const weighIn: Reader = {
  rule: 'weigh-in',
  on: ['container', 'material'],
  read(all, scope) {
    if (ranges(all)) return null;
    const parted = ofWhichIn(all, scope);
    const marked = contaminationIn(alternatives(parted.rest));
    const tokens = ownWordsIn(marked.rest, scope);
    const watered = tokens.some((tok) => sense(tok, 'material') === 'water');
    const slots = take(tokens, watered ? WATERED : ACCEPTS);
    if (!slots) return null;
    if (slots.all.some((one, k) => (one.cls === 'both' || one.cls === 'all') && !saysWhence(slots, k)))
      return null;
    const containers = slots.get('container');
    const materials = materialsOf(slots);
    if (materials === null || containers.length > 1) return null;
    if (containers.length === 0 && materials.length === 0) return null;
    if (slots.get('place').length > 1 || slots.get('source').length > 1 || crosses(slots, scope)) return null;
    const items =
      containers.length === 1
        ? inContainer(tokens, slots, materials, scope, marked.found)
        : loose(tokens, slots, materials, scope, marked.found);
    if (items && marked.only !== undefined) {
      if (items.length !== 2 || items.some((item) => !('record' in item))) return null;
      return items.map((item, k) => {
        if (k === marked.only || !('record' in item)) return item;
        const { flags: _flags, ...record } = item.record as WeighIn;
        return { ...item, record };
      });
    }
    if (!items || !parted.pieces) return items;
    const only = items.length === 1 && 'record' in items[0]! ? items[0] : null;
    if (!only) return null;
    return [{ ...only, record: { ...only.record, ofWhich: parted.pieces } as FieldRecord }];
  },
};

/** `…, both from the day centre` */
const saysWhence = (slots: Slots, k: number) =>
  slots.get('source').length === 1 &&
  slots.nums.length > 0 &&
  ['prep', 'source', 'fill'].includes(slots.all[k + 1]?.cls ?? '') &&
  slots.all.slice(k).every((one) => ['prep', 'fill', 'source', 'both', 'all', 'article'].includes(one.cls));

/** Whether a link stands before a slot: `in the drum`. */
function led(slots: Slots, k: number): boolean {
  let before = k - 1;
  while (['fill', 'article'].includes(slots.all[before]?.cls ?? '')) before--;
  return slots.all[before]?.cls === 'prep';
}

/** A comma or `and` behind a weight begins something else where a container, material or place comes after it. */
function crosses(slots: Slots, scope: Scope): boolean {
  let counted = false;
  let subject = false;
  let crossed = false;
  let sourced = false;
  let placed = false;
  const tail = slots.all.findLast((one) => one.cls !== 'sep' && one.cls !== 'fill');
  for (const { cls, tok } of slots.all) {
    // `bucket is 19 lbs, coffee grounds`: what it held, said last
    if (crossed && cls === 'material' && tok === tail?.tok && !scope.nextTok && said(slots)) continue;
    // `bin 58 b 44`: behind a load, a place with a figure of its own is a reading.
    const k = slots.all.findIndex((one) => one.tok === tok);
    if (cls === 'place' && subject && slots.all[k + 1]?.cls === 'n' && !led(slots, k)) return true;
    // `emptied pile 4, 6 barrows …`: a place and a comma, and then a load, are two things.
    if (cls === 'place' && !subject && !counted) placed = true;
    if (placed && cls === 'sep' && tok.s === ',') return true;
    if (cls === 'n') {
      if (sourced) return true;
      counted = true;
    } else if (cls === 'sep' || cls === 'and') {
      if (counted && subject && tok.s !== ':' && tok.s !== '#' && tok.s !== '(' && tok.s !== ')')
        crossed = true;
    } else if (cls === 'material' || cls === 'container' || cls === 'place') {
      if (crossed) return true;
      if (cls !== 'place') subject = true;
    }
    if (crossed && cls === 'source') sourced = true;
  }
  return false;
}

/** One weight, one container, one material, nothing else: the material can only be what was weighed. */
const said = (slots: Slots) =>
  slots.nums.length === 1 &&
  slots.get('container').length === 1 &&
  slots.get('material').length === 1 &&
  slots.all.every((one) => one.cls !== 'and') &&
  sense(slots.get('container')[0], 'plural') === undefined;

/** The material's names among the slots; null where two different ones are named. */
function materialsOf(slots: Slots): string[] | null {
  const out: string[] = [];
  for (const tok of slots.get('material')) {
    const value = sense(tok, 'material')!;
    const name = value === 'mature-compost' ? 'finished-compost' : value;
    if (!out.includes(name)) out.push(name);
  }
  if (out.length > 1) return null;
  if (out[0] === 'residue' || out[0] === 'leachate' || out[0] === 'overs') return null;
  return out;
}

/** What is added to the food: a heading over the kitchens' carts does not tell where it came from. */
const BULKING = new Set(['wood-chips', 'sawdust', 'leaves', 'straw', 'cardboard', 'paper', 'water']);

/** A material with no container: `chips 12`, `25kg sawdust`, `2 gal coffee grounds`. */
function loose(
  tokens: readonly Tok[],
  slots: Slots,
  materials: string[],
  scope: Scope,
  contaminated: boolean,
): Item[] | null {
  if (leavesNumber(tokens, slots, scope) || strangers(slots, scope)) return null;
  if (['or', 'full', 'each', 'tare', 'unsure'].some((cls) => slots.get(cls).length > 0)) return null;
  if (isLoadFromOutside(slots, scope)) return null;
  const at = slots.all.findIndex((one) => one.cls === 'material');
  const before = slots.all
    .slice(0, at)
    .filter((one) => one.cls === 'n')
    .map((one) => one.tok.n!);
  const after = slots.all
    .slice(at + 1)
    .filter((one) => one.cls === 'n')
    .map((one) => one.tok.n!);
  if (before.length > 0 && after.length > 0) return null;
  const nums = before.length > 0 ? before : after;
  if (nums.length === 0 || before.length > 1) return null;
  const material = materials[0]!;
  // `water 2` is asked of somebody; water is measured out.
  if (material === 'water' && nums.every((n) => n.unit === null)) return null;
  if (before.length === 1 && before[0]!.unit === null) return null;
  if (nums.some((n) => isVolumeUnit(n.unit)) && nums.some((n) => !isVolumeUnit(n.unit))) return null;
  const items: Item[] = [];
  for (const n of nums) {
    if (n.to !== undefined || (n.fraction && n.unit === null)) return null;
    const base = {
      kind: 'weigh-in' as const,
      material,
      count: 1,
      source: sourceOf(
        slots,
        BULKING.has(material) ? { ...scope, carry: { ...scope.carry, source: null } } : scope,
      ),
      place: placeOf(slots),
      flags: contaminated || slots.get('contaminated').length > 0 ? ['contaminated'] : undefined,
      approximate: n.approximate ? true : undefined,
    };
    if (isVolumeUnit(n.unit)) {
      const record = bare({ ...base, litres: tidy(toLitres(n.value, n.unit)) }) as WeighIn;
      items.push({ record, typed: `${say(n.value)} ${n.unit}` });
      continue;
    }
    const unit = massOf(n, scope);
    if (!unit) return null;
    if (nums.length > 1 && n.unit === null && n.hash) return null;
    const record = bare({
      ...base,
      kg: tidy(toKg(Math.abs(n.value), unit)),
      basis: slots.get('gross').length > 0 ? 'gross' : 'net',
    }) as WeighIn;
    items.push(judged(record, n, { scope, assumed: [] }, `${say(n.value)} ${unit}`));
  }
  return items;
}

/** `buckets 21 to 14` is a score or a range, no list. */
const ranges = (tokens: readonly Tok[]) =>
  tokens.some((tok, k) => TO.has(tok.s) && tokens[k - 1]?.k === 'n' && tokens[k + 1]?.k === 'n');
const TO = new Set(['to', 'thru', 'hasta']);
