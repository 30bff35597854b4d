// A load in containers: which number counts them, which is a label, a size, a tare, and which are weights.
import { type Assumption, isMassUnit, isVolumeUnit, toKg, toLitres } from '#records';
import { drop, say } from '../plausible.ts';
import { bare, type Item, isPrep, type Scope, type Slots, tidy } from '../reading.ts';
import { type Num, sense, type Tok } from '../tokens.ts';
import {
  defaultMaterial,
  isWeight,
  leavesNumber,
  massOf,
  placeOf,
  sourceOf,
  strangers,
  type WeighIn,
} from './loads.ts';
import { ofWhatMaterial, settle } from './settle-weights.ts';

export function inContainer(
  tokens: readonly Tok[],
  slots: Slots,
  materials: string[],
  scope: Scope,
  contaminated: boolean,
): Item[] | null {
  const { context } = scope;
  if (leavesNumber(tokens, slots, scope) || strangers(slots, scope)) return null;
  // `half bucket chips and a full | bucket of sawdust`
  if (sense(tokens.at(-1), 'full') !== undefined && sense(scope.nextTok, 'container') !== undefined)
    return null;
  const at = slots.all.findIndex((one) => one.cls === 'container');
  const tok = slots.all[at]!.tok;
  const container = sense(tok, 'container')!;
  const many = sense(tok, 'plural') !== undefined;
  const tareTok = tareOf(slots);
  if (tareTok === null) return null;
  const numbers = (list: Slots['all']) =>
    list.filter((one) => one.cls === 'n' && one.tok !== tareTok).map((one) => one.tok);
  const before = numbers(slots.all.slice(0, at));
  let after = numbers(slots.all.slice(at + 1));
  let count: number | null = null;
  // `bags of leaves x3`
  const times = after[0] && tokens[tokens.indexOf(after[0]) - 1];
  if (times && times.s === 'x' && after[0]!.n!.unit === null && before.length === 0) {
    count = after[0]!.n!.value;
    after = after.slice(1);
  }
  let fill: number | undefined;
  let size = false;
  const weights: Num[] = [];
  let litres: number | undefined;
  for (const one of before) {
    const n = one.n!;
    // `scale says 64 for the cart`, `61.5 in the cart`
    if (before.length === 1 && after.length === 0 && n.unit === null && !n.fraction && n.value >= 5) {
      const from = slots.all.findIndex((other) => other.tok === one);
      if (slots.all.slice(from, at).some((other) => isPrep(other, 'for', 'in', 'into')) && !many) {
        weights.push(n);
        continue;
      }
    }
    if (isVolumeUnit(n.unit)) {
      // A size stands right before its container: `5gal bucket`; `40 L sawdust with 2 carts` is two loads.
      const place = slots.all.findIndex((other) => other.tok === one);
      if (slots.all.slice(place + 1, at).some((other) => other.cls !== 'sep' && other.cls !== 'fill'))
        return null;
      size = true;
      continue;
    }
    if (n.unit === null && n.to === undefined && n.fraction && n.value < 1) {
      if (count !== null) return null;
      count = n.value;
    } else if (
      n.unit === null &&
      n.to === undefined &&
      count === null &&
      weights.length === 0 &&
      n.value > 0 &&
      (Number.isInteger(n.value) ? n.value <= 60 : n.value % 0.25 === 0 && n.value < 20)
    )
      count = n.value;
    else if (isMassUnit(n.unit) || (n.to !== undefined && n.unit === null)) weights.push(n);
    else if (isWeight(n) && slots.get('gross').length + slots.get('net').length > 0) weights.push(n);
    else return null;
  }
  const plus = slots.get('plus')[0];
  if (plus) count = (count ?? 1) + Number(sense(plus, 'plus'));
  if (
    weights.length > 0 &&
    after.some((one) => isMassUnit(one.n!.unit) || (one.n!.unit === null && count !== null))
  )
    return null;
  let label: string | undefined;
  let rest = after.map((one) => one.n!);
  const first = after[0];
  const singular = !many && (count === null || count === 1);
  if (
    singular &&
    first &&
    slots.get('or').length === 0 &&
    !partedFrom(slots, first, after[1]) &&
    isLabel(first.n!, after.length, weights.length) &&
    labelNextTo(slots, at, first)
  ) {
    const n = first.n!;
    const later = after.slice(1).some((one) => isWeight(one.n!)) || weights.length > 0;
    if (n.hash || later) {
      label = String(n.value);
      rest = rest.slice(1);
    }
  }
  let tare: number | undefined;
  if (tareTok) {
    const unit = massOf(tareTok.n!, scope);
    if (!unit || tareTok.n!.to !== undefined || rest.length + weights.length !== 1) return null;
    tare = tidy(toKg(tareTok.n!.value, unit));
  }
  for (const n of rest) {
    if (isWeight(n) && !n.fraction) weights.push(n);
    else if (n.fraction && n.unit === null && n.value <= 1 && slots.get('full').length > 0) fill = n.value;
    else if (n.unit === '%' && slots.get('full').length > 0) fill = n.value / 100;
    else if (isVolumeUnit(n.unit) && litres === undefined) litres = tidy(toLitres(n.value, n.unit));
    else return null;
  }
  if (slots.get('full').length > 0 && fill === undefined) {
    if (count !== null && count < 1) {
      fill = count;
      count = null;
    } else if (weights.length > 0) fill = 1;
    // `a full barrow of chips`: what it held was not weighed.
    else if (materials.length === 0) return null;
  }
  const material = materials[0] ?? defaultMaterial(container, context);
  const source = sourceOf(slots, scope);
  const place = placeOf(slots);
  const flags = contaminated || slots.get('contaminated').length > 0 ? ['contaminated'] : undefined;
  // A bale is all straw: nothing of it is an empty container.
  const said = slots.get('net').length > 0 || container === 'bale' ? 'net' : 'gross';
  const head = {
    kind: 'weigh-in' as const,
    material: material ?? 'unknown',
    container,
    ...(label && { label }),
    source,
    place,
    flags,
  };
  if (weights.length === 0) {
    // Nothing was weighed: what is contaminated is a problem.
    if (flags && litres === undefined) return null;
    if (litres !== undefined) return [{ record: bare({ ...head, count: count ?? 1, litres }) as WeighIn }];
    // Without a weight the rest must say that something went in: a material, where from, or that it was put in.
    const enough =
      materials.length > 0 ||
      slots.get('source').length > 0 ||
      slots.get('place').length > 0 ||
      (slots.get('add').length > 0 && count !== null);
    if (!enough || size || scope.asked) return null;
    // `spilled half a cart`: nothing went in
    if (sense(scope.prevTok, 'topic') !== undefined) return null;
    if (!material) {
      const told = slots.get('source').length > 0;
      return told ? [ofWhatMaterial(bare({ ...head, count: count ?? 1, fill }) as WeighIn)] : null;
    }
    // `a barrow of chips each`: of how many carts, another line says.
    if (slots.get('each').length > 0) {
      const record = bare({ ...head, count: count ?? 1, fill }) as WeighIn;
      return [{ doubt: { record, why: 'each-or-all', choices: [{ say: say(count ?? 1), record }, drop] } }];
    }
    return [
      {
        record: bare({ ...head, count: count ?? 1, fill }) as WeighIn,
        assumed: materials[0] ? [] : ['material-default'],
      },
    ];
  }
  if (count !== null && count < 1) {
    fill = count;
    count = null;
  }
  if (count !== null && !Number.isInteger(count)) return null;
  const assumed: Assumption[] = [];
  if (!materials[0]) assumed.push('material-default');
  if (said === 'gross' && slots.get('gross').length === 0) assumed.push('gross-by-container');
  const one = (n: Num, more: Partial<WeighIn> = {}): { record: WeighIn; typed: string } | null => {
    const unit = massOf(n, scope);
    if (!unit) return null;
    const record = bare({
      ...head,
      count: 1,
      fill,
      kg: tidy(toKg(Math.abs(n.value), unit)),
      basis: said,
      tareKg: tare,
      approximate: n.approximate ? true : undefined,
      ...more,
    }) as WeighIn;
    return { record, typed: `${say(n.value)} ${unit}` };
  };
  return settle({
    weights,
    count,
    many,
    material,
    slots,
    scope,
    one,
    assumed,
    contaminated: flags !== undefined,
    head: head as Partial<WeighIn>,
  });
}

const isLabel = (n: Num, after: number, before: number) =>
  n.unit === null &&
  n.to === undefined &&
  !n.fraction &&
  Number.isInteger(n.value) &&
  n.value >= 1 &&
  n.value <= 99 &&
  (after > 1 || before > 0 || n.hash === true) &&
  !n.approximate;

/** The number that is a tare: right behind its word, else right before it; undefined without the word, null where unclear. */
function tareOf(slots: Slots): Tok | undefined | null {
  let found: Tok | undefined;
  for (let k = 0; k < slots.all.length; k++) {
    if (slots.all[k]!.cls !== 'tare') continue;
    const dull = (cls: string) =>
      cls === 'fill' || cls === 'be' || cls === 'tare' || cls === 'approx' || cls === 'prep';
    let j = k + 1;
    while (slots.all[j] && dull(slots.all[j]!.cls)) j++;
    let i = k - 1;
    while (slots.all[i] && dull(slots.all[i]!.cls)) i--;
    const next =
      slots.all[j]?.cls === 'n'
        ? slots.all[j]!.tok
        : slots.all[i]?.cls === 'n'
          ? slots.all[i]!.tok
          : undefined;
    if (!next || (found && found !== next)) return null;
    found = next;
  }
  return found;
}

/** Whether a comma, `and` or the like parts two numbers. */
function partedFrom(slots: Slots, first: Tok, second: Tok | undefined): boolean {
  if (!second) return false;
  const from = slots.all.findIndex((one) => one.tok === first);
  const to = slots.all.findIndex((one) => one.tok === second);
  return slots.all
    .slice(from, to)
    .some((one) => one.cls === 'and' || (one.cls === 'sep' && ',+&/;'.includes(one.tok.s)));
}

/** A label stands right behind its container, with nothing but `#` or `no.` between. */
function labelNextTo(slots: Slots, at: number, first: Tok): boolean {
  const next = slots.all[at + 1];
  const step =
    next && (next.cls === 'numero' || next.cls === 'sep') && next.tok.s !== ',' && next.tok.s !== ':'
      ? slots.all[at + 2]
      : next;
  return step?.tok === first;
}
