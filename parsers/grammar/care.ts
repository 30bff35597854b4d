import { type FieldRecord, isLengthUnit } from '#records';
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
        : scope.context.piles.slice(0, 6).map((place) => ({ say: place, record: make(place) }));
    return [
      { doubt: { record: { ...make('?'), [field]: null }, why: found.ask, choices: [...choices, drop] } },
    ];
  }
  return found.places.map((place) => placed(place, scope, make(place), field));
}

/** The record, or the doubt that its place raises. */
function placed(place: string, scope: Scope, record: FieldRecord, field = 'pile'): Item {
  if (!isKnown(place, scope.context)) return { doubt: strangePlace(record, place, scope.context, field) };
  return { record };
}

const WHOLE = ['both', 'all', 'many', 'pilehead'];

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
    const into = slots.all.findIndex(
      (one, k) => isPrep(one, 'into', 'to', 'in') && slots.all[k - 1]?.cls !== 'and',
    );
    const named = slots.all.map((one, k) => ({ ...one, k })).filter((one) => one.cls === 'place');
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

export const cover: Reader = {
  rule: 'cover',
  on: ['cover', 'uncover', 'layer', 'material'],
  read(tokens, scope) {
    const twice = twoCovers(tokens, scope);
    if (twice) return twice;
    // `4 inches of chips on top of A`: with its thickness a material is a cover.
    const thick = tokens.filter((tok) => tok.k === 'n' && isLengthUnit(tok.n!.unit) && tok.n!.unit !== 'm');
    const slots = take(
      tokens.filter((tok) => !thick.includes(tok)),
      SLOTS_1,
    );
    if (!slots || scope.asked) return null;
    const shifted = movedCover(slots, scope);
    if (shifted) return shifted;
    if (slots.get('cover').length + slots.get('uncover').length > 2) return null;
    const materials = slots.get('material').map((tok) => sense(tok, 'material')!);
    if (
      materials.some(
        (m) =>
          ![
            'mature-compost',
            'finished-compost',
            'wood-chips',
            'straw',
            'leaves',
            'cardboard',
            'sawdust',
          ].includes(m),
      )
    )
      return null;
    const verb = slots.get('cover').length > 0 || slots.get('uncover').length > 0;
    const layerToks = slots.all.filter((one) => sense(one.tok, 'layer') !== undefined).map((one) => one.tok);
    const taken = slots.get('remove').length > 0 || slots.get('move').length > 0;
    const off =
      slots.all.some((one) => isPrep(one, 'off')) ||
      slots.get('uncover').length > 0 ||
      (taken &&
        layerToks.length > 0 &&
        // `le quité la lona a la 1`: Spanish takes things off to somebody.
        slots.all.some((one) =>
          isPrep(one, 'from', 'off', 'of', ...(slots.get('remove').length > 0 ? ['to'] : [])),
        ));
    const on = slots.all.some((one) => isPrep(one, 'on', 'to', 'into', 'in')) || slots.get('add').length > 0;
    const bareTarped = layerToks.some((tok) => tok.s === 'tarped');
    const laid = thick.length === 1 && materials.length === 1 && on && slots.get('place').length > 0;
    if (thick.length > 0 && !laid && !verb && layerToks.length === 0) return null;
    if (!verb && !laid && !(layerToks.length > 0 && (off || on || bareTarped || taken))) return null;
    if (!verb && taken && !off) return null;
    // A material with no covering word is a load, not a cover.
    const layers: ('mature-compost' | 'wood-chips' | 'geotextile' | 'tarp' | 'unspecified')[] = [];
    const add = (layer: (typeof layers)[number]) => !layers.includes(layer) && layers.push(layer);
    for (const one of slots.all) {
      // `bâche` is the sheet and the doing.
      const layer = sense(one.tok, 'layer') as (typeof layers)[number] | undefined;
      if (layer && layer !== 'unspecified') add(layer);
      if (one.cls === 'material') {
        const m = sense(one.tok, 'material')!;
        add(
          m === 'mature-compost' || m === 'finished-compost'
            ? 'mature-compost'
            : m === 'wood-chips'
              ? 'wood-chips'
              : 'unspecified',
        );
      }
    }
    if (materials.length > 0 && !verb && !laid && layers.length === materials.length) return null;
    if (layers.length === 0) {
      const sheet = slots
        .get('cover')
        .map((tok) => sense(tok, 'cover'))
        .find((v) => v === 'tarp' || v === 'geotextile');
      layers.push((sheet as 'tarp') ?? 'unspecified');
    }
    const places = placesOf(slots);
    if (places.some((place) => ['exit', 'ambient', 'floor', 'lift'].includes(place))) return null;
    return layers.flatMap((layer) =>
      forEachPlace(slots, scope, (pile) => ({ kind: 'cover', pile, layer, on: !off })),
    );
  },
};

/** `moved the tarp from A to D`: off the one, on the other. */
function movedCover(slots: Slots, scope: Scope): Item[] | null {
  const layer = slots.val('layer') as 'tarp' | undefined;
  if (slots.get('move').length === 0 || !layer || slots.get('place').length !== 2) return null;
  const at = (...kinds: readonly string[]) => slots.all.findIndex((one) => isPrep(one, ...kinds));
  const placeAt = slots.all.flatMap((one, k) => (one.cls === 'place' ? [k] : []));
  const [from, to] = [
    at('from', 'off'),
    slots.all.findLastIndex((one) => isPrep(one, 'to', 'on', 'onto', 'into')),
  ];
  if (from < 0 || from > placeAt[0]! || to < placeAt[0]! || to > placeAt[1]!) return null;
  const [was, now] = placesOf(slots);
  if (!was || !now) return null;
  return [was, now].map((pile) => placed(pile, scope, { kind: 'cover', pile, layer, on: pile === now }));
}

const COVER_SIGNS: readonly (readonly [string, string | undefined])[] = [
  ['uncover', undefined],
  ['cover', undefined],
  ['prep', 'off'],
  ['prep', 'on'],
];
const signed = (tokens: readonly Tok[]) =>
  COVER_SIGNS.find(([cls, val]) =>
    tokens.some((tok) => tok.senses.some((s) => s.cls === cls && (val === undefined || s.val === val))),
  );
const placesIn = (tokens: readonly Tok[]) =>
  tokens.some((tok) => sense(tok, 'place') !== undefined || sense(tok, 'place?') !== undefined);

/** `tarp off B, on D`, `tapé la 1 y destapé la 2`: two clauses, each on or off by itself, of one layer. */
function twoCovers(tokens: readonly Tok[], scope: Scope): Item[] | null {
  for (let k = 1; k < tokens.length - 1; k++) {
    if (sense(tokens[k], 'and') === undefined && tokens[k]!.s !== ',') continue;
    const first = tokens.slice(0, k);
    const second = tokens.slice(k + 1).filter((tok) => sense(tok, 'there') === undefined && tok.s !== 'it');
    if (!placesIn(first) || !placesIn(second) || !signed(first) || !signed(second)) continue;
    const layer = first.find((tok) => sense(tok, 'layer') !== undefined);
    const own = second.some((tok) =>
      ['cover', 'uncover', 'layer', 'material'].some((cls) => sense(tok, cls) !== undefined),
    );
    if (!own && !layer) continue;
    const one = cover.read(first, scope);
    const two = one && cover.read(own ? second : [layer!, ...second], scope);
    if (one && two) return [...one, ...two];
  }
  return null;
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
const SLOTS_1 = [
  'uncover',
  'cover',
  'layer',
  'place',
  'material',
  'remove',
  'add',
  'fixback',
  ...WHOLE,
  'move',
  'deep',
  'be',
];
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
