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
];

/** Material going in, weighed or by volume: `cart 66.5`, `3 carts 61 58 70`, `chips 12`, `2 barrows of leaves`. */
export const weighIn: Reader = {
  rule: 'weigh-in',
  on: ['container', 'material'],
  read(all, scope) {
    const parted = ofWhichIn(all, scope);
    const marked = contaminationIn(alternatives(parted.rest));
    const tokens = marked.rest;
    const slots = take(tokens, ACCEPTS);
    if (!slots) return null;
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

/** `…, 7.2 of it fruit`, `dont 8 de pain`: a part of the load told apart. */
function ofWhichIn(
  tokens: readonly Tok[],
  scope: Scope,
): { rest: readonly Tok[]; pieces: NonNullable<WeighIn['ofWhich']> | null } {
  const at = tokens.findIndex((tok) => sense(tok, 'ofit') !== undefined);
  // `…, 8 of fruit`: a smaller figure behind a comma with `of` and what it was.
  const comma = tokens.findLastIndex((tok) => tok.k === 'p' && tok.s === ',');
  const part = tokens[comma + 1];
  const link = sense(tokens[comma + 2], 'prep');
  if (
    at < 0 &&
    comma > 1 &&
    part?.k === 'n' &&
    (link === 'of' || link === 'from') &&
    tokens.length - comma >= 4 &&
    tokens.length - comma <= 5
  ) {
    const words = tokens
      .slice(comma + 3)
      .filter((tok) => tok.k === 'w' && sense(tok, 'article') === undefined);
    const whole = tokens.slice(0, comma).findLast((tok) => tok.k === 'n');
    const plainWord =
      words.length === 1 &&
      !['container', 'place', 'source', 'pilehead'].some((cls) => sense(words[0], cls) !== undefined);
    const unit = massOf(part.n!, scope);
    if (
      plainWord &&
      unit &&
      whole &&
      part.n!.value < whole.n!.value &&
      tokens.slice(0, comma).some((tok) => sense(tok, 'container') !== undefined)
    )
      return {
        rest: tokens.slice(0, comma),
        pieces: [{ what: sense(words[0], 'material') ?? words[0]!.s, kg: tidy(toKg(part.n!.value, unit)) }],
      };
  }
  if (at < 1) return { rest: tokens, pieces: null };
  const before = tokens[at - 1]!;
  const after = tokens[at + 1];
  const numberFirst = before.k === 'n' && after?.k !== 'n';
  const amount = numberFirst ? before : after?.k === 'n' ? after : null;
  if (!amount) return { rest: tokens, pieces: null };
  const words = tokens
    .slice(at + (numberFirst ? 1 : 2))
    .filter(
      (tok) =>
        tok.k === 'w' &&
        !tok.senses.some(
          (s) => s.cls === 'article' || s.cls === 'prep' || s.cls === 'be' || s.cls === 'fill',
        ),
    );
  if (words.length < 1 || words.length > 3 || tokens.slice(at + 2).some((tok) => tok.k === 'n'))
    return { rest: tokens, pieces: null };
  const n = amount.n!;
  const what =
    words.length === 1 ? (sense(words[0], 'material') ?? words[0]!.s) : words.map((tok) => tok.s).join(' ');
  const unit = massOf(n, scope);
  const piece = isVolumeUnit(n.unit)
    ? { what, litres: tidy(toLitres(n.value, n.unit)) }
    : unit
      ? { what, kg: tidy(toKg(n.value, unit)) }
      : null;
  if (!piece) return { rest: tokens, pieces: null };
  const cut = numberFirst ? at - 1 : at;
  const trailing = tokens[cut - 1];
  return { rest: tokens.slice(0, trailing?.k === 'p' ? cut - 1 : cut), pieces: [piece] };
}

/** `56 or 65, can't read my writing`: what follows two alternatives only tells why. */
export function alternatives(tokens: readonly Tok[]): readonly Tok[] {
  const or = tokens.findIndex(
    (tok, k) => sense(tok, 'or') !== undefined && tokens[k - 1]?.k === 'n' && tokens[k + 1]?.k === 'n',
  );
  if (or < 0) return tokens;
  const tail = tokens.slice(or + 2);
  const speaks = tail.some(
    (tok) =>
      tok.k === 'n' ||
      ['container', 'place', 'turn', 'cover', 'material', 'chore'].some(
        (cls) => sense(tok, cls) !== undefined,
      ),
  );
  return speaks ? tokens : tokens.slice(0, or + 2);
}

/** What follows a weighed load and says that it was contaminated, to the end of the run: only a flag on it. */
function contaminationIn(tokens: readonly Tok[]): { rest: readonly Tok[]; found: boolean; only?: 0 | 1 } {
  const at = tokens.findIndex(
    (tok, k) =>
      k > 0 &&
      (sense(tok, 'contaminated') !== undefined ||
        sense(tok, 'material') === 'residue' ||
        sense(tok, 'topic') === 'contamination'),
  );
  if (
    at < 2 ||
    tokens
      .slice(at)
      .some(
        (tok) =>
          tok.k === 'n' ||
          sense(tok, 'container') !== undefined ||
          sense(tok, 'place') !== undefined ||
          sense(tok, 'reject') !== undefined,
      )
  )
    return { rest: tokens, found: false };
  // `cart 66 (gloves in it, contaminated)`
  const opened = tokens.findLastIndex((tok, k) => k < at && tok.s === '(');
  const head = tokens.slice(0, opened > 0 ? opened : at);
  if (
    !head.some((tok) => tok.k === 'n') ||
    !head.some((tok) => sense(tok, 'container') !== undefined || sense(tok, 'material') !== undefined)
  )
    return { rest: tokens, found: false };
  if (
    tokens.length - at > 9 ||
    (opened < 1 &&
      head.at(-1)?.k === 'n' &&
      isMassUnit(head.at(-1)!.n!.unit) &&
      sense(tokens[at], 'material') === 'residue')
  )
    return { rest: tokens, found: false };
  if (
    tokens.some((tok) =>
      GATED.some(
        (cls) =>
          sense(tok, cls) !== undefined &&
          sense(tok, 'fill') === undefined &&
          sense(tok, 'contaminated') === undefined,
      ),
    )
  )
    return { rest: tokens, found: false };
  while (
    head.length > 0 &&
    (head.at(-1)!.k === 'p' ||
      (head.at(-1)!.k === 'w' &&
        ['fill', 'prep', 'add', 'be', 'seen'].some((cls) => sense(head.at(-1), cls) !== undefined) &&
        sense(head.at(-1), 'container') === undefined &&
        sense(head.at(-1), 'net') === undefined))
  )
    head.pop();
  // `19 22, la segunda contaminada`: that one alone
  const which = sense(head.at(-1), 'choice');
  if ((which === 'first' || which === 'second') && head.length > 2) {
    head.pop();
    while (head.at(-1)?.k === 'p' || sense(head.at(-1), 'article') !== undefined) head.pop();
    return { rest: head, found: true, only: which === 'first' ? 0 : 1 };
  }
  return { rest: head, found: true };
}
const GATED = ['neg', 'intent', 'cond', 'ask', 'hearsay'];

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

function inContainer(
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
  const times = after[0] && after.length === 1 && tokens[tokens.indexOf(after[0]) - 1];
  if (times && times.s === 'x' && after[0]!.n!.unit === null && before.length === 0) {
    count = after[0]!.n!.value;
    after = [];
  }
  let fill: number | undefined;
  let size = false;
  const weights: Num[] = [];
  let litres: number | undefined;
  for (const one of before) {
    const n = one.n!;
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
    } else if (slots.get('full').some((one) => one.s === 'full') && weights.length > 0) fill = 1;
    else return null;
  }
  const material = materials[0] ?? defaultMaterial(container, context);
  const source = sourceOf(slots, scope);
  const place = placeOf(slots);
  const flags = contaminated || slots.get('contaminated').length > 0 ? ['contaminated'] : undefined;
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
    // Nothing was weighed: what is contaminated is a problem.
    if (flags && litres === undefined) return null;
    if (litres !== undefined) return [{ record: bare({ ...head, count: count ?? 1, litres }) as WeighIn }];
    // Without a weight the rest must say that something went in: a material, where from, or that it was put in.
    const enough =
      materials.length > 0 ||
      slots.get('source').length > 0 ||
      slots.get('place').length > 0 ||
      (slots.get('add').length > 0 && count !== null);
    if (!enough || size || !material || scope.asked) return null;
    // `spilled half a cart`: nothing went in
    if (sense(scope.prevTok, 'topic') !== undefined) return null;
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

type Gathered = {
  weights: Num[];
  count: number | null;
  many: boolean;
  material: string | null;
  slots: Slots;
  scope: Scope;
  one: (n: Num, more?: Partial<WeighIn>) => { record: WeighIn; typed: string } | null;
  assumed: Assumption[];
  contaminated: boolean;
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
  const marked =
    g.contaminated && weights.length > 2
      ? weights.slice(0, -1).findIndex((n) => n.value === weights.at(-1)!.value)
      : -1;
  if (marked >= 0 && (count === null || count === weights.length - 1)) {
    // `61 58 79, the 79 one was contaminated`: the flag goes to that one alone.
    return weights.slice(0, -1).flatMap((n, k) => {
      const read = one(n, k === marked ? {} : { flags: undefined as never });
      return read ? [judged(bare(read.record), n, g, read.typed)] : [];
    });
  }
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
const ambiguity = (n: Num, _scope: Scope): number | undefined =>
  n.perhapsBy === 'comma' || n.perhapsBy === 'dot' ? n.perhaps : undefined;

function defaultMaterial(container: string, context: Scope['context']): string | null {
  const holds = context.containers[container]?.holds;
  if (holds) return holds;
  return container === 'cart' ? 'food-scraps' : null;
}

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
  if (before.length === 1 && before[0]!.unit === null) return null;
  if (nums.some((n) => isVolumeUnit(n.unit)) && nums.some((n) => !isVolumeUnit(n.unit))) return null;
  const items: Item[] = [];
  for (const n of nums) {
    if (n.to !== undefined || n.fraction) return null;
    const base = {
      kind: 'weigh-in' as const,
      material,
      count: 1,
      source: sourceOf(slots, scope),
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
