// What leaves a pile or the site: compost taken away, what a sieve parted.
import type { FieldRecord } from '#records';
import { drop } from '../plausible.ts';
import { bare, isKnown, isPrep, placesOf, type Reader, type Scope, type Slots, take } from '../reading.ts';
import { sense, type Tok } from '../tokens.ts';
import { strangePlace } from '../warmth.ts';
import { amountOf, plainAmount } from './amounts.ts';
import { behind, isHeap, SIZES } from './between.ts';
import { sliceOfTokens } from './words.ts';

const LEAVES = ['finished-compost', 'residue', 'leachate', 'overs', 'mature-compost'];

/** Leaving the site: `6 barrows of finished compost to the market stall`, `3 kg plastic out of the west kitchen cart`. */
export const removal: Reader = {
  rule: 'removal',
  on: ['remove', 'material', 'empty', 'sink', 'person', 'prep'],
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
    // `bac 62 avec des gants`: the container's weight, and what was in it
    const first = (cls: string) => slots.all.findIndex((one) => one.cls === cls);
    if (ofContainer && !verb && first('container') < first('n') && first('n') < first('material'))
      return null;
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
    // `sold 200 kg of C`: what is sold or given away has left, whoever got it.
    const away = pile !== undefined && tokens.some((tok) => sense(tok, 'givenaway') !== undefined);
    if (!material && !to && !away) return null;
    const gone = slots.all.some((one) => isPrep(one, 'out')) && slots.all.at(-1)?.cls === 'prep';
    if (material === 'finished-compost' && !verb && !to && !gone) return null;
    if (residue && !verb && !out && !to) return null;
    // `des gants dans le bac de la cuisine` tells what lies in it; nothing was taken out.
    if (residue && !verb && slots.nums.length === 0 && slots.all.some((one) => isPrep(one, 'in')))
      return null;
    if (material === 'leachate' && !verb && !to) return null;
    if (material === 'overs' && !verb && !to) return null;
    // `2 barrows from C to the market`: what leaves a pile for people is compost; without the pile it may be anything.
    if (!material && !verb && !(pile && to && (out || behind(slots, ['of']) === pile))) return null;
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
export function destination(
  tokens: readonly Tok[],
  scope: Scope,
): { to: string; rest: Tok[]; from: number } | null {
  for (let k = tokens.length - 2; k > 0; k--) {
    const prep = sense(tokens[k], 'prep');
    const verb = sense(tokens[k], 'remove') !== undefined && sense(tokens[k], 'toword') !== undefined;
    if (prep !== 'to' && prep !== 'for' && prep !== 'on' && !verb) continue;
    // `to the rose garden from A`: the name ends where the pile is told.
    const told = tokens.findIndex(
      (tok, at) =>
        at > k + 1 &&
        tok.senses.some(({ cls, val }) => cls === 'prep' && val === 'from') &&
        sense(tokens[at + 1], 'place') !== undefined,
    );
    const until = told < 0 ? tokens.length : told;
    const words = tokens.slice(k + 1, until);
    const given =
      tokens.slice(0, k).some((tok) => sense(tok, 'remove') !== undefined && !tok.slip) &&
      tokens.slice(0, k).some((tok) => sense(tok, 'container') !== undefined || tok.n?.unit);
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
            [
              'place',
              'pilehead',
              'container',
              'source',
              'neg',
              'intent',
              'numw',
              'turn',
              'cover',
              'feel',
            ].includes(s.cls),
          ),
      )
    )
      return null;
    if (
      !words.some(
        (word) =>
          word.senses.length === 0 ||
          sense(word, 'border') !== undefined ||
          sense(word, 'sink') !== undefined ||
          sense(word, 'person') !== undefined ||
          (given && sense(word, 'ordinary') !== undefined),
      )
    )
      return null;
    return {
      to: sliceOfTokens(scope.message, words),
      rest: [...tokens.slice(0, verb ? k + 1 : k), ...tokens.slice(until)],
      from: tokens[k + 1]!.a,
    };
  }
  return null;
}

/** `screened 2, 7 barrows`: a bare number right behind its word that can name a pile does. */
function bareBehind(slots: Slots, cls: string): Tok | undefined {
  const at = slots.all.findIndex((one) => one.cls === cls);
  const next = slots.all.slice(at + 1).find((one) => one.cls !== 'fill');
  const tok = next?.cls === 'n' ? next.tok : undefined;
  return tok && sense(tok, 'place?') !== undefined && tok.n!.unit === null ? tok : undefined;
}

export const screening: Reader = {
  rule: 'screening',
  on: ['screen'],
  read(tokens, scope) {
    const slots = take(tokens, SLOTS_3);
    if (!slots || scope.asked || slots.get('screen').length === 0) return null;
    const spoken = bareBehind(slots, 'screen');
    const places = spoken ? [...placesOf(slots), sense(spoken, 'place?')!] : placesOf(slots);
    if (places.length > 1 || places.some((place) => !isHeap(place))) return null;
    const materials = slots.get('material').map((tok) => sense(tok, 'material')!);
    if (materials.some((m) => !LEAVES.includes(m) || m === 'residue' || m === 'leachate')) return null;
    // Amounts go with the nearest of the two words behind or before them.
    const parts: { of: 'fines' | 'overs'; slots: Slots }[] = [];
    const items = slots.all.filter(
      (one) => ['n', 'container', 'fines', 'material'].includes(one.cls) && one.tok !== spoken,
    );
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
