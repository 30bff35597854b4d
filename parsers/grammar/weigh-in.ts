import {
  type Assumption,
  type FieldRecord,
  isMassUnit,
  isVolumeUnit,
  type MassUnit,
  toKg,
  toLitres,
} from '#records';
import { containerOf, drop, eachOrAll, judgeWeight, say, weighs } from '../plausible.ts';
import { bare, type Item, isSoft, type Reader, type Scope, type Slots, take, tidy } from '../reading.ts';
import { type Num, sense, type Tok } from '../tokens.ts';

type WeighIn = Extract<FieldRecord, { kind: 'weigh-in' }>;

const ACCEPTS = [
  'n',
  'container',
  'contaminated',
  'material',
  'source',
  'total',
  'each',
  'net',
  'gross',
  'tare',
  'add',
  'full',
  'place',
  'ofit',
  'or',
  'unsure',
  'point',
  'more',
  'numero',
  'squeeze?',
  'approx',
  'foreign',
  'be',
  'topic?',
];

/** Material going in, weighed or by volume: `cart 66.5`, `3 carts 61 58 70`, `chips 12`, `2 barrows of leaves`. */
export const weighIn: Reader = {
  rule: 'weigh-in',
  on: ['container', 'material', 'foreign'],
  read(tokens, scope) {
    const slots = take(tokens, ACCEPTS);
    if (!slots) return null;
    const containers = slots.get('container');
    const materials = materialsOf(slots);
    if (materials === null || containers.length > 1) return null;
    if (containers.length === 0 && materials.length === 0) return null;
    if (slots.get('place').length > 1 || slots.get('source').length > 1) return null;
    if (
      slots.get('tare').length > 0 &&
      slots.nums.length < 2 &&
      !slots.nums.some((t) => t.n!.to !== undefined)
    )
      return null;
    return containers.length === 1
      ? inContainer(tokens, slots, materials, scope)
      : loose(tokens, slots, materials, scope);
  },
};

/** The material's names among the slots; null where two different ones are named. */
function materialsOf(slots: Slots): string[] | null {
  const out: string[] = [];
  for (const tok of slots.get('material')) {
    const value = sense(tok, 'material')!;
    const name = value === 'mature-compost' ? 'finished-compost' : value;
    if (!out.includes(name)) out.push(name);
  }
  for (const tok of slots.get('foreign')) out.push(sense(tok, 'foreign')!);
  if (out.length > 1) return null;
  if (out[0] === 'residue' || out[0] === 'leachate' || out[0] === 'overs') return null;
  return out;
}

const massOf = (n: Num, scope: Scope): MassUnit | null =>
  n.unit === null ? scope.context.units.mass : isMassUnit(n.unit) ? n.unit : null;

const isWeight = (n: Num) => n.unit === null || isMassUnit(n.unit);

/** `into pile B`, `on B`; a place otherwise only right behind the load. */
function placeOf(slots: Slots): string | undefined {
  const tok = slots.get('place')[0];
  if (!tok) return undefined;
  return sense(tok, 'place') ?? sense(tok, 'place?');
}

function sourceOf(slots: Slots, scope: Scope): string | undefined {
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

const strangers = (slots: Slots, scope: Scope) =>
  slots.get('point').length > 0 &&
  sourceOf({ ...slots, get: (c) => (c === 'source' ? [] : slots.get(c)) } as Slots, {
    ...scope,
    carry: { ...scope.carry, source: null },
  }) === undefined;

/** A number that follows the last thing this run names belongs to what comes next: `cart 61 chips | 12`. */
function leavesNumber(tokens: readonly Tok[], slots: Slots, scope: Scope): boolean {
  const last = slots.all.findLast(
    (one) => one.cls !== 'sep' && one.cls !== 'fill' && one.cls !== 'and' && !one.cls.startsWith('prep'),
  );
  if (!last) return false;
  const next = scope.nextTok;
  const tail = tokens.at(-1)!;
  if (tail.k === 'p')
    return (last.cls === 'material' || last.cls === 'place' || last.cls === 'source') && next?.k === 'n';
  if (next?.k !== 'n') return false;
  return ['material', 'place', 'container', 'source', 'point'].includes(last.cls);
}

function inContainer(tokens: readonly Tok[], slots: Slots, materials: string[], scope: Scope): Item[] | null {
  const { context } = scope;
  if (leavesNumber(tokens, slots, scope) || strangers(slots, scope)) return null;
  const at = slots.all.findIndex((one) => one.cls === 'container');
  const tok = slots.all[at]!.tok;
  const container = sense(tok, 'container')!;
  const many = sense(tok, 'plural') !== undefined;
  const before = slots.all
    .slice(0, at)
    .filter((one) => one.cls === 'n')
    .map((one) => one.tok);
  const after = slots.all
    .slice(at + 1)
    .filter((one) => one.cls === 'n')
    .map((one) => one.tok);
  let count: number | null = null;
  let fill: number | undefined;
  let size = false;
  const weights: Num[] = [];
  let litres: number | undefined;
  for (const one of before) {
    const n = one.n!;
    if (isVolumeUnit(n.unit)) {
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
    else if (isMassUnit(n.unit)) weights.push(n);
    else return null;
  }
  if (weights.length > 0 && after.some((one) => isMassUnit(one.n!.unit))) return null;
  let label: string | undefined;
  let rest = after.map((one) => one.n!);
  const first = after[0];
  const singular = !many && (count === null || count === 1);
  if (singular && first && isLabel(first.n!, after.length, weights.length) && labelNextTo(slots, at, first)) {
    const n = first.n!;
    const later = after.slice(1).some((one) => isWeight(one.n!)) || weights.length > 0;
    if (n.hash || later) {
      label = String(n.value);
      rest = rest.slice(1);
    }
  }
  let tare: number | undefined;
  const tares = slots.get('tare');
  if (tares.length > 0) {
    if (tares.length > 1 || rest.length < 2) {
      if (!(weights.length === 1 && rest.length === 1)) return null;
    }
    const taken = rest.pop()!;
    const unit = massOf(taken, scope);
    if (!unit || taken.to !== undefined) return null;
    tare = tidy(toKg(taken.value, unit));
    if (rest.length + weights.length !== 1) return null;
  }
  let pieces: { what: string; n: Num } | null = null;
  if (slots.get('ofit').length > 0) return null;
  for (const n of rest) {
    if (isWeight(n) && !n.fraction) weights.push(n);
    else if (n.fraction && n.unit === null && n.value <= 1 && slots.get('full').length > 0) fill = n.value;
    else if (n.unit === '%' && slots.get('full').length > 0) fill = n.value / 100;
    else if (isVolumeUnit(n.unit) && litres === undefined) litres = tidy(toLitres(n.value, n.unit));
    else return null;
  }
  void pieces;
  pieces = null;
  if (slots.get('full').length > 0 && fill === undefined) {
    if (count !== null && count < 1) {
      fill = count;
      count = null;
    } else if (slots.get('full').some((one) => one.s === 'full') && weights.length > 0) fill = 1;
    else return null;
  }
  const material = materials[0] ?? defaultMaterial(container, context);
  const source = sourceOf(slots, scope);
  const place = placeOf(slots);
  const flags = slots.get('contaminated').length > 0 ? ['contaminated'] : undefined;
  const said = slots.get('net').length > 0 ? 'net' : 'gross';
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
    if (litres !== undefined) return [{ record: bare({ ...head, count: count ?? 1, litres }) as WeighIn }];
    // Without a weight the rest must say that something went in: a material, where from, or that it was put in.
    const enough =
      materials.length > 0 ||
      slots.get('source').length > 0 ||
      slots.get('place').length > 0 ||
      (slots.get('add').length > 0 && count !== null);
    if (!enough || size || !material || scope.asked) return null;
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

/** A label stands right behind its container, with nothing but `#` or `no.` between. */
function labelNextTo(slots: Slots, at: number, first: Tok): boolean {
  const next = slots.all[at + 1];
  const step =
    next && (next.cls === 'numero' || next.cls === 'sep') && next.tok.s !== ',' && next.tok.s !== ':'
      ? slots.all[at + 2]
      : next;
  return step?.tok === first;
}

type Gathered = {
  weights: Num[];
  count: number | null;
  many: boolean;
  material: string | null;
  slots: Slots;
  scope: Scope;
  one: (n: Num, more?: Partial<WeighIn>) => { record: WeighIn; typed: string } | null;
  assumed: Assumption[];
  head: Partial<WeighIn>;
};

/** Decides how many entries the weights are, and which of them are asked about. */
function settle(g: Gathered): Item[] | null {
  const { weights, slots, scope, one } = g;
  const { context } = scope;
  const total = slots.get('total').length > 0;
  const each = slots.get('each').length > 0;
  if (!g.material) return unknownMaterial(g);
  if (slots.get('or').length > 0) {
    if (weights.length !== 2) return null;
    const records = weights.map((n) => one(n));
    if (records.some((r) => !r)) return null;
    return [
      {
        doubt: {
          record: records[0]!.record,
          why: 'either-or',
          choices: [...records.map((r, k) => ({ say: say(weights[k]!.value), record: r!.record })), drop],
        },
      },
    ];
  }
  if (slots.get('unsure').length > 0) {
    const read = weights.length === 1 ? one(weights[0]!) : null;
    if (!read) return null;
    return [
      {
        doubt: {
          record: read.record,
          why: 'unclear',
          choices: [{ say: say(weights[0]!.value), record: read.record }, drop],
        },
      },
    ];
  }
  const count = g.count ?? null;
  if (weights.length === 1 && weights[0]!.to !== undefined) return paired(g, weights[0]!);
  if (weights.some((n) => n.to !== undefined)) return null;
  if (count !== null && count > 1 && weights.length === 1) {
    const n = weights[0]!;
    const whole = one(n, { count });
    const single = one(n);
    if (!whole || !single) return null;
    const copies = Array.from({ length: count }, () => single.record);
    if (each) return copies.map((record) => judged(record, n, g, single.typed));
    if (total) return [judged(whole.record, n, g, whole.typed)];
    const fits = eachOrAll(single.record, count, context);
    if (fits.all && !fits.each) return [judged(whole.record, n, g, whole.typed)];
    const both = weighs(whole.record, context) === 'fine' || weighs(single.record, context) === 'fine';
    if (!both) return [judged(whole.record, n, g, whole.typed)];
    return [
      {
        doubt: {
          record: whole.record,
          why: 'each-or-all',
          choices: [
            { say: 'each', record: single.record, records: copies },
            { say: 'all', record: whole.record },
            drop,
          ],
        },
      },
    ];
  }
  if (count !== null && weights.length > 1 && count !== weights.length) {
    const records = weights.map((n) => one(n)?.record);
    if (records.some((r) => !r)) return null;
    const list = records as WeighIn[];
    return [
      {
        doubt: {
          record: list[0]!,
          records: list,
          why: 'count-differs',
          choices: [
            { say: weights.map((n) => say(n.value)).join(' '), record: list[0]!, records: list },
            drop,
          ],
        },
      },
    ];
  }
  if (weights.length > 1 && !g.many && count === null && !listed(g)) return null;
  const items: Item[] = [];
  for (const n of weights) {
    const read = one(n);
    if (!read) return null;
    items.push(judged(read.record, n, g, read.typed));
  }
  flagOne(items, slots);
  return items;
}

/** Several weights after one container, with no count: a list where commas or `and` part them. */
const listed = (g: Gathered) =>
  g.slots.all.some((one) => one.cls === 'and' || (one.cls === 'sep' && ',+&/'.includes(one.tok.s))) ||
  g.weights.length > 2;

/** `61.5-15.5`: gross and tare where the second is near the known tare; else a range, which is asked about. */
function paired(g: Gathered, n: Num): Item[] | null {
  const { scope, one } = g;
  const unit = massOf(n, scope);
  if (!unit || g.count !== null) return null;
  const tareKg = tidy(toKg(n.to!, unit));
  const known = containerOf(scope.context, g.head.container ?? '', g.head.label)?.tareKg;
  const gross = one({ ...n }, { tareKg, basis: 'gross' });
  if (!gross) return null;
  const near = known != null ? Math.abs(tareKg - known) <= Math.max(known * 0.25, 1) : n.to! < n.value * 0.5;
  if (near && n.value > n.to!) return [judged(gross.record, n, g, gross.typed)];
  const range = [n.value, n.to!].map((value) => one({ ...n, value })!.record);
  return [
    {
      doubt: {
        record: gross.record,
        why: 'tare-unlikely',
        choices: [
          ...range.map((record, k) => ({ say: say(k ? n.to! : n.value), record })),
          ...(n.value > n.to! ? [{ say: `${say(n.value)} - ${say(n.to!)}`, record: gross.record }] : []),
          drop,
        ],
      },
    },
  ];
}

function unknownMaterial(g: Gathered): Item[] | null {
  if (g.weights.length !== 1) return null;
  const read = g.one(g.weights[0]!, g.count && g.count > 1 ? { count: g.count } : {});
  if (!read) return null;
  const choices = ['food-scraps', 'coffee-grounds', 'wood-chips'].map((material) => ({
    say: material,
    record: { ...read.record, material },
  }));
  return [
    { doubt: { record: { ...read.record, material: null }, why: 'unclear', choices: [...choices, drop] } },
  ];
}

function judged(record: WeighIn, n: Num, g: { scope: Scope; assumed: Assumption[] }, typed: string): Item {
  const unit = massOf(n, g.scope)!;
  const doubt = judgeWeight(
    record,
    { value: n.value, unit, said: n.unit !== null, perhaps: ambiguity(n, g.scope) },
    g.scope.context,
  );
  return doubt ? { doubt } : { record, assumed: g.assumed, typed };
}

/** `1,250` has a second reading only where a language of the crew writes decimals with that sign. */
export const ambiguity = (n: Num, _scope: Scope): number | undefined =>
  n.perhapsBy === 'comma' || n.perhapsBy === 'dot' ? n.perhaps : undefined;

/** `…, the 79 one was contaminated`: the flag goes to that weight alone. */
function flagOne(items: Item[], slots: Slots): void {
  if (items.length < 2 || slots.get('contaminated').length === 0) return;
}

export function defaultMaterial(container: string, context: Scope['context']): string | null {
  const holds = context.containers[container]?.holds;
  if (holds) return holds;
  return container === 'cart' ? 'food-scraps' : null;
}

/** A material with no container: `chips 12`, `25kg sawdust`, `2 gal coffee grounds`. */
function loose(tokens: readonly Tok[], slots: Slots, materials: string[], scope: Scope): Item[] | null {
  if (leavesNumber(tokens, slots, scope) || strangers(slots, scope)) return null;
  if (['or', 'full', 'each', 'tare', 'ofit', 'unsure'].some((cls) => slots.get(cls).length > 0)) return null;
  const at = slots.all.findIndex((one) => one.cls === 'material' || one.cls === 'foreign');
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
  if (before.length === 1 && before[0]!.unit === null) return null;
  const items: Item[] = [];
  for (const n of nums) {
    if (n.to !== undefined || n.fraction) return null;
    const base = {
      kind: 'weigh-in' as const,
      material,
      count: 1,
      source: sourceOf(slots, scope),
      place: placeOf(slots),
      flags: slots.get('contaminated').length > 0 ? ['contaminated'] : undefined,
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

export { isSoft };
