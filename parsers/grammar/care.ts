import type { FieldRecord } from '#records';
import { drop } from '../plausible.ts';
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
import { sense, type Tok } from '../tokens.ts';
import { strangePlace } from '../warmth.ts';

/**
 * The places a pile-bound record is about: those named, else the one just spoken of, else the only pile.
 * `ask` where the site has several and none was named.
 */
function pilesOf(slots: Slots, scope: Scope): { places: string[] } | { ask: 'no-place' | 'which-places' } {
  const named = placesOf(slots);
  if (named.length > 0) return { places: named };
  const { piles } = scope.context;
  const every = slots.get('all').length > 0;
  const both = slots.get('both').length > 0;
  const many = slots.get('many').length > 0;
  if (every || both || many) {
    const stated = slots.nums.find((tok) => tok.n!.unit === null)?.n?.value;
    const expected = both || (many && !every) ? 2 : piles.length;
    if (stated !== undefined ? stated === piles.length : expected === piles.length)
      return { places: [...piles] };
    return { ask: 'which-places' };
  }
  if (scope.carry.place && scope.carry.place !== 'ambient') return { places: [scope.carry.place] };
  if (piles.length === 1) return { places: [piles[0]!] };
  return { ask: 'no-place' };
}

/** One record for each place; a doubt for a place that is unknown, gone, or not said. */
export function forEachPlace(
  slots: Slots,
  scope: Scope,
  make: (place: string) => FieldRecord,
  field: 'pile' | 'place' = 'pile',
): Item[] {
  const found = pilesOf(slots, scope);
  if ('ask' in found) {
    const choices =
      found.ask === 'which-places'
        ? [
            {
              say: scope.context.piles.map((pile) => pile.replace(/^pile /, '')).join(' '),
              record: make(scope.context.piles[0] ?? 'pile'),
              records: scope.context.piles.map(make),
            },
          ]
        : [...(field === 'place' ? scope.context.drums.map(({ name }) => name) : []), ...scope.context.piles]
            .slice(0, 6)
            .map((place) => ({ say: place, record: make(place) }));
    return [
      { doubt: { record: { ...make('?'), [field]: null }, why: found.ask, choices: [...choices, drop] } },
    ];
  }
  return found.places.map((place) => placed(place, scope, make(place), field));
}

/** The record, or the doubt that its place raises. */
export function placed(place: string, scope: Scope, record: FieldRecord, field = 'pile'): Item {
  if (!isKnown(place, scope.context)) return { doubt: strangePlace(record, place, scope.context, field) };
  return { record };
}

/** Words that speak of several piles, or of piles as such. */
export const WHOLE = ['both', 'all', 'many', 'pilehead'];

/** `gave D a turn`: the giving says no more than the turn does. */
const gaveTurn = (tokens: readonly Tok[]) =>
  tokens.some((tok) => tok.s === 'a turn')
    ? tokens.filter((tok) => !/^(?:gave|given|got)$/.test(tok.s))
    : tokens;

export const turning: Reader = {
  rule: 'turning',
  on: ['turn'],
  read(tokens, scope) {
    const days = turnedByDay(tokens, scope);
    if (days) return days;
    const whole = tokens.some((tok) => ['all', 'both', 'many'].some((cls) => sense(tok, cls) !== undefined));
    const slots = take(gaveTurn(tokens), [
      'turn',
      ...(whole ? ['n'] : []),
      'place',
      ...WHOLE,
      'with',
      'machine',
    ]);
    if (!slots || slots.get('turn').length !== 1 || scope.asked) return null;
    if (slots.get('machine').length > 0 && !slots.all.some((one) => isPrep(one, 'with', 'to'))) return null;
    // `a la 2 y a la 3`: behind `and` comes another pile, not where the first went.
    const named = slots.all.map((one, k) => ({ ...one, k })).filter((one) => one.cls === 'place');
    const into = slots.all.findIndex(
      (one, k) =>
        isPrep(one, 'into', 'to', 'in') && slots.all[k - 1]?.cls !== 'and' && k > (named[0]?.k ?? -1),
    );
    if (
      named.some((one) =>
        ['drum', 'exit', 'ambient', 'floor', 'lift'].includes(sense(one.tok, 'place') ?? ''),
      )
    ) {
      if (scope.context.piles.length > 0) return null;
    }
    if (into >= 0 && named.length === 2 && named[0]!.k < into && named[1]!.k > into) {
      const [from, to] = placesOf(slots);
      if (!from || !to) return null;
      if (!isKnown(from, scope.context))
        return [placed(from, scope, { kind: 'turning', pile: from, movedTo: to })];
      const record: FieldRecord = { kind: 'turning', pile: from, movedTo: to };
      return isKnown(to, scope.context) || /^bay /.test(to)
        ? [{ record }]
        : [{ doubt: strangePlace(record, to, scope.context, 'movedTo') }];
    }
    if (
      named.length === 0 &&
      slots.get('pilehead').length > 0 &&
      slots.get('many').length === 0 &&
      slots.get('both').length === 0 &&
      slots.get('all').length === 0 &&
      !scope.carry.place
    ) {
      // `turned pile` names none.
    }
    return forEachPlace(slots, scope, (pile) => ({ kind: 'turning', pile }));
  },
};

const namesPlace = (tok: Tok) => sense(tok, 'place') !== undefined || sense(tok, 'place?') !== undefined;

/** `turned A monday, B tuesday`: one doing, each pile with its own day. */
function turnedByDay(tokens: readonly Tok[], scope: Scope): Item[] | null {
  const days = tokens.flatMap((tok, k) => (tok.k === 'd' ? [k] : []));
  if (days.length < 2) return null;
  const doing = tokens.find((tok) => sense(tok, 'turn') !== undefined);
  const firstPlace = tokens.findIndex(namesPlace);
  if (!doing || firstPlace < 0) return null;
  const dayLast = firstPlace < days[0]!;
  const items: Item[] = [];
  for (const [n, at] of days.entries()) {
    const from = dayLast ? (days[n - 1] ?? -1) + 1 : at + 1;
    const to = dayLast ? at : (days[n + 1] ?? tokens.length);
    const piece = tokens.slice(from, to);
    if (!piece.some(namesPlace)) return null;
    const read = turning.read(piece.includes(doing) ? piece : [doing, ...piece], { ...scope });
    if (!read) return null;
    items.push(...read.map((item) => ({ ...item, day: tokens[at]! })));
  }
  return items;
}

const GOOD = new Set('good|ok|okay|fine|all good|bon|bonne|correct|correcte|bien|buena|bueno'.split('|'));

export const moisture: Reader = {
  rule: 'moisture',
  on: ['feel', 'squeeze', 'n'],
  read(tokens, scope) {
    const slots = take(
      tokens,
      SLOTS_2,
      tokens.some((tok) => sense(tok, 'squeeze') !== undefined) &&
        tokens.some((tok) => sense(tok, 'feel') !== undefined)
        ? 3
        : 0,
    );
    if (!slots || scope.asked) return null;
    const percents = slots.nums.filter((tok) => tok.n!.unit === '%');
    const feels = [...new Set(slots.get('feel').map((tok) => sense(tok, 'feel')!))];
    const others = slots.nums.filter((tok) => tok.n!.unit !== '%');
    const whole = slots.get('all').length + slots.get('both').length + slots.get('many').length > 0;
    const placeNums = others.filter((tok) => sense(tok, 'place?') !== undefined);
    const places = placesOf(slots);
    let scoped = slots;
    if (others.length > 0 && !whole) {
      if (placeNums.length !== others.length || places.length > 0) return null;
      scoped = { ...slots, get: (cls: string) => (cls === 'place' ? placeNums : slots.get(cls)) } as Slots;
    }
    const named = placesOf(scoped);
    if (named.some((place) => ['ambient', 'floor', 'lift', 'exit'].includes(place))) return null;
    const squeezed = slots.get('squeeze').length > 0;
    if (percents.length > 0) {
      if (feels.length > 0) return null;
      if (percents.length === named.length && percents.length > 1)
        return named.map((place, k) => percentRecord(place, percents[k]!.n!.value, scope));
      if (percents.length !== 1 || percents[0]!.n!.to !== undefined) return null;
      if (!squeezed && named.length === 0) return null;
      const n = percents[0]!.n!;
      return forEachPlace(
        scoped,
        scope,
        (place) =>
          bare({
            kind: 'moisture' as const,
            place,
            percent: Math.min(n.value, 100),
            approximate: n.approximate ? true : undefined,
          }),
        'place',
      ).map((item) =>
        'record' in item && n.value > 100
          ? {
              doubt: {
                record: { ...item.record, percent: n.value },
                why: 'impossible-value' as const,
                choices:
                  n.value / 10 <= 100
                    ? [
                        {
                          say: String(n.value / 10),
                          record: { ...item.record, percent: n.value / 10 } as FieldRecord,
                        },
                        drop,
                      ]
                    : [drop],
              },
            }
          : item,
      );
    }
    // `A squeeze test good`
    const fine = slots.get('ok').some((tok) => GOOD.has(tok.s)) && squeezed && named.length > 0;
    if (feels.length === 0 && fine && others.length === placeNums.length) feels.push('right');
    if (feels.length === 0) return null;
    // `ça coule` is a wet handful only where one was squeezed; else it runs out of the heap.
    if (!squeezed && !fine && slots.get('feel').every((tok) => sense(tok, 'topic') !== undefined))
      return null;
    const order = ['dripping', 'wet', 'dry', 'right'];
    if (
      feels.length > 1 &&
      !(feels.length === 2 && feels.includes('right') && squeezed && !feels.includes('dry')) &&
      !(feels.includes('wet') && feels.includes('dripping'))
    )
      return null;
    const feel = (
      feels.length > 1 && feels.includes('right')
        ? feels.includes('dripping')
          ? 'right'
          : feels.find((f) => f !== 'right')!
        : feels.sort((a, b) => order.indexOf(a) - order.indexOf(b))[0]
    ) as 'dry';
    // `too wet`, said alone, is about some pile; a bare adjective is not.
    const alone = !scope.prevTok && !scope.nextTok && slots.get('feel').some((tok) => tok.s.includes(' '));
    if (
      named.length === 0 &&
      !squeezed &&
      !scope.carry.place &&
      !whole &&
      !alone &&
      slots.get('pilehead').length === 0
    )
      return null;
    return forEachPlace(scoped, scope, (place) => ({ kind: 'moisture', place, feel }), 'place');
  },
};

function percentRecord(place: string, percent: number, scope: Scope): Item {
  return placed(place, scope, { kind: 'moisture', place, percent: Math.min(100, percent) }, 'place');
}

// What each reader accepts, kept as constants so that their ranks are worked out once.
const SLOTS_2 = [
  'feel',
  'squeeze',
  'place',
  'n',
  'point',
  ...WHOLE,
  'be',
  'deep?',
  'moistverb',
  'tempword',
  'ok',
  'strength',
  'gloss',
  'water?',
];
