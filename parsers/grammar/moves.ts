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
import { amountOf, plainAmount } from './amounts.ts';
import { forEachPlace } from './care.ts';
import { sliceOfTokens } from './words.ts';

const SIZES = ['n', 'container', 'total', 'approx', 'net', 'gross', 'each'];
const at = (slots: Slots, cls: string) => slots.all.findIndex((one) => one.cls === cls);
/** The place behind a preposition: `from C`, `onto B`. */
function behind(slots: Slots, preps: readonly string[]): string | undefined {
  for (let k = 0; k < slots.all.length; k++) {
    if (!isPrep(slots.all[k]!, ...preps)) continue;
    for (let j = k + 1; j < slots.all.length; j++) {
      const { cls, tok } = slots.all[j]!;
      if (cls === 'place') return sense(tok, 'place') ?? sense(tok, 'place?');
      if (cls === 'n') return tok.n!.unit === null ? sense(tok, 'place?') : undefined;
      if (cls !== 'fill' && cls !== 'pilehead') break;
    }
  }
  return undefined;
}

const isHeap = (place: string | undefined) => place !== undefined && /^(pile|bay)\b/.test(place);

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

/** What became of a pile: started, full, finished, ready, emptied, joined, split, moved. */
export const pileEvent: Reader = {
  rule: 'pile',
  on: ['start', 'full', 'finish', 'ready', 'empty', 'join', 'split', 'move', 'relocated'],
  read(tokens, scope) {
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
      const fresh = places.find((place) => !isKnown(place, context)) ?? places.at(-1)!;
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

const LEAVES = ['finished-compost', 'residue', 'leachate', 'overs', 'mature-compost'];

/** Leaving the site: `6 barrows of finished compost to the market stall`, `3 kg plastic out of the west kitchen cart`. */
export const removal: Reader = {
  rule: 'removal',
  on: ['remove', 'material', 'empty'],
  read(tokens, scope) {
    const tail = destination(tokens, scope);
    const slots = take(tail ? tail.rest : tokens, [
      ...SIZES,
      'place',
      'remove',
      'material',
      'source',
      'sink',
      'screen!',
      'move',
      'readyword',
      'contaminated?',
      'full',
      'topic?',
      ...(tokens.some((tok) => sense(tok, 'place') !== undefined) ? [] : ['empty']),
    ]);
    if (!slots || scope.asked) return null;
    const materials = [...new Set(slots.get('material').map((tok) => sense(tok, 'material')!))];
    if (materials.length > 1) return null;
    const material = materials[0] === 'mature-compost' ? 'finished-compost' : materials[0];
    if (material && !LEAVES.includes(material)) return null;
    const verb = slots.get('remove').length > 0 || slots.get('move').length > 0;
    const out =
      slots.all.some((one) => isPrep(one, 'out', 'off')) || slots.all.some((one) => isPrep(one, 'from'));
    const source = slots.get('source')[0];
    const sourceName = source && sense(source, 'source');
    const residue = material === 'residue';
    // The container that only tells where it was picked from is not how much it was.
    const ofContainer =
      residue && slots.nums.length > 0 && slots.get('container').length === 1 && (out || verb);
    const counted = ofContainer
      ? ({ ...slots, get: (cls: string) => (cls === 'container' ? [] : slots.get(cls)) } as Slots)
      : slots;
    const amount = amountOf(counted, scope, true);
    if (!amount) return null;
    const places = placesOf(slots);
    const pile = places.find((place) => isHeap(place));
    if (places.length > 1 || (places.length === 1 && !pile)) return null;
    let to: string | undefined = tail?.to;
    let from: string | undefined;
    if (sourceName) {
      const k = slots.all.findIndex((one) => one.tok === source);
      const prep = slots.all.slice(0, k).findLast((one) => one.cls === 'prep');
      if (residue || (prep && isPrep(prep, 'from', 'out', 'of', 'in'))) from = sourceName;
      else to = sourceName;
    }
    if (!material && !to) return null;
    if (material === 'finished-compost' && !verb && !to) return null;
    if (residue && !verb && !out && !to) return null;
    if (material === 'leachate' && !verb && !to) return null;
    if (material === 'overs' && !verb && !to) return null;
    if (!material && !verb) return null;
    const record = bare({
      kind: 'removal' as const,
      pile:
        pile ??
        (material === undefined || material === 'finished-compost'
          ? scope.carry.place && isHeap(scope.carry.place)
            ? scope.carry.place
            : undefined
          : undefined),
      material: material ?? 'finished-compost',
      ...plainAmount(amount),
      basis: amount.kg !== undefined ? ('net' as const) : undefined,
      to,
      source: from,
    }) as FieldRecord;
    if (pile && !isKnown(pile, scope.context))
      return [{ doubt: strangePlace(record, pile, scope.context, 'pile') }];
    if (amount.value < 0) return [{ doubt: { record, why: 'negative', choices: [drop] } }];
    return [{ record, typed: amount.typed }];
  },
};

/** `to the Miller farm`: where something went, in the writer's own words, at the end of a run. */
function destination(tokens: readonly Tok[], scope: Scope): { to: string; rest: Tok[] } | null {
  for (let k = tokens.length - 2; k > 0; k--) {
    const prep = sense(tokens[k], 'prep');
    const verb = sense(tokens[k], 'remove') !== undefined && sense(tokens[k], 'toword') !== undefined;
    if (prep !== 'to' && prep !== 'for' && prep !== 'on' && !verb) continue;
    const words = tokens.slice(k + 1);
    while (
      words[0] &&
      (sense(words[0], 'article') !== undefined ||
        (words[0].senses.some((s) => s.cls === 'fill') && words.length > 1))
    )
      words.shift();
    if (words.length === 0 || words.length > 4) return null;
    if (
      !words.every(
        (word) =>
          word.k === 'w' &&
          !word.senses.some((s) =>
            ['place', 'container', 'source', 'neg', 'intent', 'numw', 'turn', 'cover', 'feel'].includes(
              s.cls,
            ),
          ),
      )
    )
      return null;
    if (
      !words.some(
        (word) =>
          word.senses.length === 0 ||
          sense(word, 'sink') !== undefined ||
          sense(word, 'person') !== undefined,
      )
    )
      return null;
    void scope;
    return { to: sliceOfTokens(words), rest: [...tokens.slice(0, verb ? k + 1 : k)] };
  }
  return null;
}

export const screening: Reader = {
  rule: 'screening',
  on: ['screen'],
  read(tokens, scope) {
    const slots = take(tokens, SLOTS_3);
    if (!slots || scope.asked || slots.get('screen').length === 0) return null;
    const places = placesOf(slots);
    if (places.length > 1 || places.some((place) => !isHeap(place))) return null;
    const materials = slots.get('material').map((tok) => sense(tok, 'material')!);
    if (materials.some((m) => !LEAVES.includes(m) || m === 'residue' || m === 'leachate')) return null;
    // Amounts go with the nearest of the two words behind or before them.
    const parts: { of: 'fines' | 'overs'; slots: Slots }[] = [];
    const items = slots.all.filter((one) => ['n', 'container', 'fines', 'material'].includes(one.cls));
    let group: { cls: string; tok: Tok }[] = [];
    const groups: { label: 'fines' | 'overs' | null; items: { cls: string; tok: Tok }[] }[] = [];
    for (const one of items) {
      const label =
        one.cls === 'fines'
          ? 'fines'
          : one.cls === 'material'
            ? sense(one.tok, 'material') === 'overs'
              ? 'overs'
              : 'fines'
            : null;
      if (label) {
        if (group.length > 0) {
          groups.push({ label, items: group });
          group = [];
        } else groups.push({ label, items: [] });
      } else {
        if (one.cls === 'n' && group.some((g) => g.cls === 'n')) {
          groups.push({ label: null, items: group });
          group = [];
        }
        group.push(one);
      }
    }
    if (group.length > 0) {
      const empty = groups.findLast((g) => g.items.length === 0);
      if (empty) empty.items = group;
      else groups.push({ label: null, items: group });
    }
    const filled = groups.filter((g) => g.items.length > 0);
    if (filled.length > 2) return null;
    void parts;
    let fines: ReturnType<typeof plainAmount> = {};
    let overs: ReturnType<typeof plainAmount> | undefined;
    for (const g of filled) {
      // `5 barrows of fines, 1 of overs`: the second is counted like the first.
      const only = g.items.length === 1 && g.items[0]!.tok.n?.unit === null ? g.items[0]!.tok.n : undefined;
      if (fines.container && only && g.label === 'overs') {
        overs = { container: fines.container, count: only.value };
        continue;
      }
      const amount = amountOf(
        {
          ...slots,
          nums: g.items.filter((i) => i.cls === 'n').map((i) => i.tok),
          get: (cls: string) =>
            cls === 'container' ? g.items.filter((i) => i.cls === 'container').map((i) => i.tok) : [],
        } as Slots,
        scope,
        true,
      );
      if (!amount) return null;
      if (g.label === 'overs') overs = plainAmount(amount);
      else if (Object.keys(fines).length > 0) return null;
      else fines = plainAmount(amount);
    }
    const pile =
      places[0] ?? (scope.carry.place && isHeap(scope.carry.place) ? scope.carry.place : undefined);
    if (!pile && filled.length === 0) return null;
    const record = bare({ kind: 'screening' as const, pile, ...fines, overs }) as FieldRecord;
    if (pile && !isKnown(pile, scope.context))
      return [{ doubt: strangePlace(record, pile, scope.context, 'pile') }];
    return [{ record }];
  },
};

const BULKING = [
  'wood-chips',
  'sawdust',
  'leaves',
  'cardboard',
  'paper',
  'straw',
  'grass',
  'garden-waste',
  'manure',
];

export const delivery: Reader = {
  rule: 'delivery',
  on: ['deliver'],
  read(tokens, scope) {
    const slots = take(tokens, SLOTS_4);
    if (!slots || scope.asked) return null;
    const materials = [...new Set(slots.get('material').map((tok) => sense(tok, 'material')!))];
    if (
      materials.length !== 1 ||
      !(BULKING.includes(materials[0]!) || scope.context.materials.includes(materials[0]!))
    )
      return null;
    const strong = slots.get('deliver').some((tok) => sense(tok, 'deliver') !== 'weak');
    if (!strong) return null;
    const amount = amountOf(slots, scope, true);
    if (amount === null) return null;
    if (!amount && slots.get('deliver').every((tok) => sense(tok, 'deliver') === 'weak')) return null;
    const record = bare({
      kind: 'delivery' as const,
      material: materials[0]!,
      ...plainAmount(amount),
    }) as FieldRecord;
    const n = slots.nums.find((tok) => tok.n!.perhaps !== undefined)?.n;
    if (n && amount)
      return [
        { doubt: { record, why: 'number-ambiguous', choices: [{ say: String(n.value), record }, drop] } },
      ];
    if (amount && amount.value < 0) return [{ doubt: { record, why: 'negative', choices: [drop] } }];
    return [{ record, typed: amount?.typed ?? null }];
  },
};

export const rejected: Reader = {
  rule: 'rejected-load',
  on: ['reject'],
  read(tokens, scope) {
    const first = tokens.findIndex((tok) => sense(tok, 'reject') !== undefined);
    const cut = reasonAt(tokens, first);
    const slots = take(tokens.slice(0, cut?.from ?? tokens.length), SLOTS_5);
    if (!slots || scope.asked) return null;
    const amount = amountOf(slots, scope, slots.get('source').length > 0);
    if (amount === null) return null;
    const source = slots.get('source')[0];
    if (!amount && !source) return null;
    const contaminated = slots.get('contaminated').length > 0;
    const trail = slots.get('contaminated').map((tok) => tok.s);
    const record = bare({
      kind: 'rejected-load' as const,
      container: amount?.container,
      count: amount?.container ? (amount.count ?? 1) : undefined,
      kg: amount?.kg,
      source: source && sense(source, 'source'),
      reason: cut?.reason ?? (contaminated ? trail[0] : undefined),
    }) as FieldRecord;
    return [{ record }];
  },
};

/** Why a load was sent back: everything behind `full of`, `because`, a comma or a dash after the load. */
function reasonAt(tokens: readonly Tok[], verb: number): { from: number; reason: string } | null {
  for (let k = Math.max(verb, 0) + 1; k < tokens.length; k++) {
    const why = sense(tokens[k], 'because') !== undefined;
    const comma =
      tokens[k]!.k === 'p' &&
      (tokens[k]!.s === ',' || tokens[k]!.s === '-' || tokens[k]!.s === ':' || tokens[k]!.s === '(');
    if (!why && !comma) continue;
    let words = tokens.slice(k + 1);
    while (
      words[0] &&
      (sense(words[0], 'because') !== undefined ||
        words[0].senses.some((s) => s.cls === 'article' || s.cls === 'fill' || s.cls === 'be'))
    )
      words = words.slice(1);
    if (words.length === 0 || words.some((word) => sense(word, 'source') !== undefined)) continue;
    if (words.some((word) => word.k === 'n' && word.n!.unit !== null)) continue;
    return {
      from: k,
      reason: sliceOfTokens(words).trim(),
    };
  }
  return null;
}

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
const SLOTS_3 = [
  'screen',
  'n',
  'container',
  'place',
  'fines',
  'overs',
  'material',
  'add',
  'pilehead',
  'total',
  'and',
  'remove',
  'approx',
  'be',
];
const SLOTS_4 = ['deliver', 'material', ...SIZES, 'place!', 'person', 'add', 'source'];
const SLOTS_5 = ['reject', ...SIZES, 'source', 'material', 'contaminated', 'full', 'from', 'be', 'add'];
