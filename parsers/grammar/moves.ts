import type { FieldRecord } from '#records';
import {
  bare,
  type Item,
  isKnown,
  isPrep,
  placesOf,
  type Reader,
  type Scope,
  type Slots,
  take,
} from '../reading.ts';
import { sliceOf } from '../text.ts';
import { sense, type Tok } from '../tokens.ts';
import { strangePlace } from '../warmth.ts';
import { amountOf, plainAmount } from './amounts.ts';
import { behind, isHeap, SIZES } from './between.ts';
import { forEachPlace } from './care.ts';
import { destination } from './leaving.ts';

/** From pile to pile: `3 barrows from C onto B`, `moved 200 kg from A to B`. */
export const transfer: Reader = {
  rule: 'transfer',
  on: ['prep', 'move', 'place'],
  read(tokens, scope) {
    const slots = take(tokens, SLOTS_1);
    if (!slots || scope.asked) return null;
    let from = behind(slots, ['from', 'out', 'of', 'off']);
    const to = behind(slots, ['to', 'on', 'into', 'in']);
    const places = numbered(slots);
    if (!from && to && places.length === 2 && places[0] !== to) from = places[0];
    if (!from || !to || from === to || !isHeap(from) || !isHeap(to)) return null;
    const amount = amountOf(withoutPlaces(slots, [from, to]), scope, true);
    if (!amount) return null;
    const record = bare({ kind: 'transfer' as const, from, to, ...plainAmount(amount) }) as FieldRecord;
    if (!isKnown(from, scope.context)) return [{ doubt: strangePlace(record, from, scope.context, 'from') }];
    if (!isKnown(to, scope.context)) return [{ doubt: strangePlace(record, to, scope.context, 'to') }];
    return [{ record, typed: amount.typed }];
  },
};

/** Places of a run, with numbers that can only be piles (`from 1 to 2`) among them. */
function numbered(slots: Slots): string[] {
  return [...placesOf(slots)];
}

/** The slots without the bare numbers that were the piles behind `from` and `to`. */
function withoutPlaces(slots: Slots, places: readonly string[]): Slots {
  const all = slots.all;
  const nums = slots.nums.filter((tok) => {
    const place = tok.n!.unit === null ? sense(tok, 'place?') : undefined;
    if (!place || !places.includes(place)) return true;
    let k = all.findIndex((one) => one.tok === tok) - 1;
    while (k >= 0 && (all[k]!.cls === 'fill' || all[k]!.cls === 'pilehead')) k--;
    return !all[k]?.cls.startsWith('prep');
  });
  return { ...slots, nums };
}

const EVENTS = [
  ['start', 'started'],
  ['join', 'joined'],
  ['split', 'split'],
  ['full', 'full'],
  ['ready', 'ready'],
  ['finish', 'finished'],
  ['empty', 'emptied'],
  ['move', 'moved'],
  ['relocated', 'moved'],
] as const;

/** `moved pile 4 to the back fence`: to somewhere that is no place of the site, in the writer's own words. */
function movedAway(tokens: readonly Tok[], scope: Scope): Item[] | null {
  if (scope.asked || !tokens.some((tok) => sense(tok, 'shifted') !== undefined)) return null;
  const tail = destination(tokens, scope);
  const slots = tail && take(tail.rest, ['shifted', 'place', 'be', 'all']);
  const pile = slots && placesOf(slots).length === 1 ? placesOf(slots)[0]! : null;
  if (!tail || !pile || !isHeap(pile)) return null;
  const to = sliceOf(scope.message, tail.from, tokens.at(-1)!.b);
  const record: FieldRecord = { kind: 'pile', pile, event: 'moved', to };
  return isKnown(pile, scope.context) ? [{ record }] : [{ doubt: strangePlace(record, pile, scope.context) }];
}

/** What became of a pile: started, full, finished, ready, emptied, joined, split, moved. */
export const pileEvent: Reader = {
  rule: 'pile',
  on: ['start', 'full', 'finish', 'ready', 'empty', 'join', 'split', 'move', 'relocated'],
  read(tokens, scope) {
    const away = movedAway(tokens, scope);
    if (away) return away;
    const slots = take(tokens, SLOTS_2);
    if (!slots || scope.asked) return null;
    const found = EVENTS.filter(([cls]) => slots.get(cls).length > 0);
    if (found.length !== 1) return null;
    const event = found[0]![1];
    const places = placesOf(slots);
    if (places.some((place) => !isHeap(place))) return null;
    if (slots.get('material').some((tok) => !/compost/.test(sense(tok, 'material')!))) return null;
    // `emptied to B` says where it went, not that B is empty.
    if (event === 'emptied' && slots.all.some((one) => isPrep(one, 'to', 'into', 'on'))) return null;
    const { context } = scope;
    if (event === 'joined') {
      const [a, b] = places;
      if (!a || !b || places.length !== 2) return null;
      const record: FieldRecord = { kind: 'pile', pile: a, event, with: b };
      return [a, b].every((p) => isKnown(p, context))
        ? [{ record }]
        : [
            {
              doubt: strangePlace(
                record,
                isKnown(a, context) ? b : a,
                context,
                isKnown(a, context) ? 'with' : 'pile',
              ),
            },
          ];
    }
    if (event === 'split') {
      if (places.length < 2 || places.length > 3) return null;
      // `split C into C and D`: the new one is the one that was not there before.
      // `split B from A`, `B split off A`: what stands behind the link is the old one.
      const from = behind(slots, ['from', 'off']);
      const fresh =
        places.find((place) => place !== from && !isKnown(place, context)) ??
        (from !== undefined ? places.find((place) => place !== from) : undefined) ??
        places.at(-1)!;
      const old = places.find((place) => place !== fresh)!;
      const record: FieldRecord = { kind: 'pile', pile: fresh, event, with: old };
      return isKnown(old, context) ? [{ record }] : [{ doubt: strangePlace(record, old, context, 'with') }];
    }
    if (event === 'moved') {
      const to =
        behind(slots, ['to', 'into', 'on', 'in']) ??
        (slots.get('relocated').length > 0 ? places[1] : undefined);
      const from = places.find((place) => place !== to);
      if (!from || !to || places.length !== 2) return null;
      const record: FieldRecord = { kind: 'pile', pile: from, event, to };
      return isKnown(from, context) ? [{ record }] : [{ doubt: strangePlace(record, from, context) }];
    }
    if (event === 'started') {
      if (places.length === 0) return null;
      return places.map((pile) => ({ record: { kind: 'pile' as const, pile, event } }));
    }
    if (places.length === 0 && !scope.carry.place) return null;
    return forEachPlace(slots, scope, (pile) => ({ kind: 'pile', pile, event }));
  },
};

// What each reader accepts, kept as constants so that their ranks are worked out once.
const SLOTS_1 = [...SIZES.slice(0, 2), 'place', 'move', 'material', 'add', 'remove', 'total', 'approx'];

const SLOTS_2 = [
  'place',
  'join',
  'split',
  'start',
  'finish',
  'ready',
  'empty',
  'emptyadj',
  'full',
  'relocated',
  'move',
  'pilehead',
  'both',
  'all',
  'many',
  'be',
  'material',
  'with',
];
