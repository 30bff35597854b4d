// Jobs done, and checks of the scale and the thermometer.
import { type FieldRecord, isTimeUnit } from '#records';
import { bare, type Item, placesOf, type Reader, type Scope, type Slots, take } from '../reading.ts';
import { sense, type Tok } from '../tokens.ts';
import { amountOf } from './amounts.ts';

/** A job done: `swept`, `gate locked`, `20 kg weight reads 20.4`. */
export const chore: Reader = {
  rule: 'chore',
  on: ['chore', 'water', 'check', 'duty', 'testweight', 'washed'],
  read(tokens, scope) {
    const slots = take(tokens, SLOTS_3);
    if (!slots || scope.asked) return null;
    const chores = [...new Set(slots.get('chore').map((tok) => sense(tok, 'chore')!))];
    const places = placesOf(slots);
    if (slots.get('duty').length > 0 && chores.length === 0) {
      if (slots.nums.length > 0 || !slots.get('done').length) return null;
      return [{ record: { kind: 'chore', chore: sense(slots.get('duty')[0]!, 'duty')! } }];
    }
    if (
      slots.get('testweight').length > 0 ||
      (chores.length === 1 &&
        (chores[0] === 'check-scale' || chores[0] === 'check-thermometer') &&
        slots.nums.length > 0)
    )
      return readsAgainst(
        slots.nums.map((tok) => tok),
        chores[0] ?? 'check-scale',
        slots.get('testweight').length > 0,
        scope,
      );
    // `D watered 5 minutes`: how long is no amount.
    const lasted = slots.nums.every((tok) => isTimeUnit(tok.n!.unit));
    if (slots.get('water').length > 0 && slots.nums.length > 0 && !lasted) {
      // A number that names a pile is one; with an amount, water went in.
      const named = slots.nums.filter((tok) => sense(tok, 'place?') !== undefined && tok.n!.unit === null);
      const rest = { ...slots, nums: slots.nums.filter((tok) => !named.includes(tok)) } as Slots;
      const list = [...places, ...named.map((tok) => sense(tok, 'place?')!)];
      const amount = amountOf(rest, scope);
      if (amount === null || list.length > 1 || chores.length > 0) {
        if (amount === undefined && chores.length === 0)
          return list.map((place) => ({ record: { kind: 'chore' as const, chore: 'watered', place } }));
        return null;
      }
      const place = list[0] ?? scope.carry.place ?? undefined;
      if (amount === undefined)
        return [{ record: bare({ kind: 'chore' as const, chore: 'watered', place }) as FieldRecord }];
      const { kg, litres, container, count } = amount;
      const record = bare({
        kind: 'weigh-in' as const,
        material: 'water',
        container,
        count: container ? count : 1,
        kg,
        litres,
        basis: kg === undefined ? undefined : container ? ('gross' as const) : ('net' as const),
        place,
      });
      return [{ record: record as FieldRecord, typed: amount.typed }];
    }
    const washed =
      slots.get('washed').length > 0 || slots.get('chore').some((tok) => WASHES.has(sense(tok, 'chore')!));
    const figures = slots.get('water').length > 0 && lasted ? 0 : slots.nums.length;
    if (washed ? !countsOnly(slots) : figures + slots.get('container').length > 0) return null;
    if (slots.get('water').length > 0) {
      if (chores.length > 0) return null;
      if (places.some((place) => place === 'ambient' || place === 'floor' || place === 'lift')) return null;
      const all = slots.get('all').length + slots.get('both').length + slots.get('many').length > 0;
      const list =
        places.length > 0
          ? places
          : all && (slots.get('both').length === 0 || scope.context.piles.length === 2)
            ? [...scope.context.piles]
            : [scope.carry.place ?? undefined];
      return list.map((place) => ({
        record: bare({ kind: 'chore' as const, chore: 'watered', place }) as FieldRecord,
      }));
    }
    const done = doneIn(slots);
    if (done.length === 0 || (slots.get('washed').length > 0 && !done.some((one) => WASHES.has(one))))
      return null;
    const place = places.find((one) => !(done.includes('wash-lift') && one === 'lift') && one !== 'floor');
    if (done.length > 1) return place ? null : done.map((one) => ({ record: { kind: 'chore', chore: one } }));
    const only = done[0]!;
    return [
      { record: bare({ kind: 'chore' as const, chore: only, place: PLACED.has(only) ? place : undefined }) },
    ];
  },
};

/** Figures that only count the containers behind them. */
const countsOnly = (slots: Slots) => {
  // `scrubbed carts 1 2 and 3`: behind several containers stand their numbers.
  const named = slots.all.findIndex(
    (one) => one.cls === 'container' && sense(one.tok, 'plural') !== undefined,
  );
  const labels = slots.nums.length > 1 && slots.all.findIndex((one) => one.cls === 'n') > named && named >= 0;
  return slots.all.every(
    (one, k) =>
      one.cls !== 'n' ||
      (one.tok.n!.unit === null &&
        Number.isInteger(one.tok.n!.value) &&
        ((labels && one.tok.n!.value < 40) ||
          slots.all.slice(k + 1).find((next) => next.cls !== 'fill')?.cls === 'container')),
  );
};

const WASHES = new Set(['wash-lift', 'wash-containers', 'clean-tools']);
/** Jobs that are done at some place of the site. */
const PLACED = new Set(['inspect', 'clean-spill', 'sweep']);

/** The jobs of a run in the order said, each once: `washed 4 carts and the lift` are two. */
function doneIn(slots: Slots): string[] {
  const out: string[] = [];
  const add = (one: string) => !out.includes(one) && out.push(one);
  const washing =
    slots.get('washed').length > 0 || slots.get('chore').some((tok) => WASHES.has(sense(tok, 'chore')!));
  const dry = slots.get('machine').length + slots.get('fan').length > 0;
  for (const { cls, tok } of slots.all) {
    if (cls === 'chore') add(sense(tok, 'chore')!);
    else if (!washing || dry) continue;
    else if (cls === 'place' && sense(tok, 'place') === 'lift') add('wash-lift');
    else if (cls === 'tools') add('clean-tools');
    else if (cls === 'container') add('wash-containers');
  }
  return out;
}

function readsAgainst(nums: readonly Tok[], named: string, weight: boolean, scope: Scope): Item[] | null {
  const figures = nums.map((tok) => tok.n!);
  if (figures.length === 0) return null;
  const isThermo = named === 'check-thermometer' || figures.some((n) => n.unit === 'C' || n.unit === 'F');
  const choreName = isThermo ? 'check-thermometer' : 'check-scale';
  const unitOf =
    figures.find((n) => n.unit !== null)?.unit ??
    (isThermo ? scope.context.units.temperature : scope.context.units.mass);
  const unit = unitOf === 'deg' ? scope.context.units.temperature : unitOf;
  if (figures.length === 1) {
    if (isThermo) return [{ record: { kind: 'chore', chore: choreName, reads: figures[0]!.value, unit } }];
    return weight ? null : [{ record: { kind: 'chore', chore: choreName, reads: figures[0]!.value, unit } }];
  }
  if (figures.length !== 2) return null;
  if (!weight && !isThermo && named !== 'check-scale') return null;
  const firstIsAgainst = weight || figures[0]!.value === Math.round(figures[0]!.value);
  const [against, reads] = firstIsAgainst ? [figures[0]!, figures[1]!] : [figures[1]!, figures[0]!];
  return [{ record: { kind: 'chore', chore: choreName, reads: reads.value, against: against.value, unit } }];
}

const SLOTS_3 = [
  'chore',
  'place',
  'n',
  'water',
  'check',
  'machine',
  'fan',
  'duty',
  'done',
  'be',
  'ok',
  'testweight',
  'washed',
  'tools',
  'all',
  'many',
  'both',
  'container',
  'pilehead',
  'add',
  'unit',
  'prep',
  'more',
  'fix',
  'tempword',
  'squeeze!',
  'gloss',
  'sink',
];
