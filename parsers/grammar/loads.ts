// What every reader of loads asks of a run: in which unit, where to, where from, what one container holds by default.
import { type Assumption, type FieldRecord, isMassUnit, type MassUnit } from '#records';
import { judgeWeight } from '../plausible.ts';
import type { Item, Scope, Slots } from '../reading.ts';
import { type Num, sense, type Tok } from '../tokens.ts';

/** The record that a load becomes. */
export type WeighIn = Extract<FieldRecord, { kind: 'weigh-in' }>;

/** The unit of a number that can be a weight: the site's own where none was said; null for any other unit. */
export const massOf = (n: Num, scope: Scope): MassUnit | null =>
  n.unit === null ? scope.context.units.mass : isMassUnit(n.unit) ? n.unit : null;

/** Whether a number can be a weight: its unit is one of mass, or none was said. */
export const isWeight = (n: Num) => n.unit === null || isMassUnit(n.unit);

/** `into pile B`, `on B`; a place otherwise only right behind the load. */
export function placeOf(slots: Slots): string | undefined {
  const tok = slots.get('place')[0];
  if (!tok) return undefined;
  return sense(tok, 'place') ?? sense(tok, 'place?');
}

export function sourceOf(slots: Slots, scope: Scope): string | undefined {
  const source = slots.get('source')[0];
  if (source) return sense(source, 'source');
  const point = slots.get('point')[0];
  if (point) {
    const name = sense(point, 'point')!;
    const matching = scope.context.sources.filter((one) => one.toLowerCase().split(' ').includes(name));
    return matching.length === 1 ? matching[0] : undefined;
  }
  return scope.carry.source ?? undefined;
}

/** Whether a point of the compass is named that belongs to no one source of the site. */
export const strangers = (slots: Slots, scope: Scope) =>
  slots.get('point').length > 0 &&
  sourceOf({ ...slots, get: (c) => (c === 'source' ? [] : slots.get(c)) } as Slots, {
    ...scope,
    carry: { ...scope.carry, source: null },
  }) === undefined;

/** A number that follows the last thing this run names belongs to what comes next: `cart 61 chips | 12`. */
export function leavesNumber(tokens: readonly Tok[], slots: Slots, scope: Scope): boolean {
  const last = slots.all.findLast(
    (one) => one.cls !== 'sep' && one.cls !== 'fill' && one.cls !== 'and' && one.cls !== 'prep',
  );
  if (!last) return false;
  const next = scope.nextTok;
  const tail = tokens.at(-1)!;
  // `sawdust 40 L with | 2 carts`: a count before the next containers.
  if (last.cls === 'n' && sense(next, 'container') !== undefined) {
    const n = last.tok.n!;
    const counts = n.unit === null && Number.isInteger(n.value) && n.value <= 30;
    if (counts && (sense(next, 'plural') !== undefined || slots.nums.length > 1)) return true;
  }
  // `cart 62 and | 15 kg chips`: a weight with its unit, right before what was weighed.
  if (
    last.cls === 'n' &&
    isMassUnit(last.tok.n!.unit) &&
    slots.nums.length > 1 &&
    (sense(next, 'material') !== undefined ||
      (sense(next, 'prep') === 'of' && sense(scope.afterTok, 'material') !== undefined))
  )
    return true;
  // `25kg chips | 16 kg sawdust`: a load whose weight came first asks for no other.
  const first = slots.all.find((one) => one.cls === 'n' || one.cls === 'material' || one.cls === 'container');
  if (last.cls === 'material' && slots.get('container').length === 0 && first?.cls === 'n') return false;
  if (tail.k === 'p')
    return (last.cls === 'material' || last.cls === 'place' || last.cls === 'source') && next?.k === 'n';
  if (
    last.cls === 'n' &&
    next &&
    next.k === 'w' &&
    (sense(next, 'prep') === 'of' || sense(next, 'prep') === 'from') &&
    sense(next, 'source') === undefined &&
    sense(scope.afterTok, 'source') === undefined
  )
    return true;
  if (next?.k !== 'n') return false;
  return ['material', 'place', 'container', 'source', 'point'].includes(last.cls);
}

/** One weight as a record, or as a doubt where it is not plausible or has a second reading. */
export function judged(
  record: WeighIn,
  n: Num,
  g: { scope: Scope; assumed: Assumption[] },
  typed: string,
): Item {
  const unit = massOf(n, g.scope)!;
  const doubt = judgeWeight(
    record,
    { value: n.value, unit, said: n.unit !== null, perhaps: ambiguity(n, g.scope) },
    g.scope.context,
  );
  return doubt ? { doubt } : { record, assumed: g.assumed, typed };
}

/** `1,250` has a second reading only where a language of the crew writes decimals with that sign. */
const ambiguity = (n: Num, _scope: Scope): number | undefined =>
  n.perhapsBy === 'comma' || n.perhapsBy === 'dot' ? n.perhaps : undefined;

/** What the site has a container hold; a cart holds food scraps. */
export function defaultMaterial(container: string, context: Scope['context']): string | null {
  const holds = context.containers[container]?.holds;
  if (holds) return holds;
  return container === 'cart' ? 'food-scraps' : null;
}
