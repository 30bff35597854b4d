// What lies on a pile, or was taken off it.
import { isLengthUnit } from '#records';
import { type Item, isPrep, placesOf, type Reader, type Scope, type Slots, take } from '../reading.ts';
import { sense, type Tok } from '../tokens.ts';
import { forEachPlace, placed, WHOLE } from './care.ts';

/** Something laid on a pile or taken off: `tarp on C`, `covered B with chips`, `uncovered D`. */
const isFor = (tok: Tok | undefined) =>
  tok?.senses.some((one) => one.cls === 'prep' && one.val === 'for') ?? false;

export const cover: Reader = {
  rule: 'cover',
  on: ['cover', 'uncover', 'layer', 'material'],
  read(tokens, scope) {
    if (!tokens.some(lays)) return null;
    const twice = twoCovers(tokens, scope);
    if (twice) return twice;
    // `4 inches of chips on top of A`: with its thickness a material is a cover.
    const thick = tokens.filter((tok) => tok.k === 'n' && isLengthUnit(tok.n!.unit) && tok.n!.unit !== 'm');
    const slots = take(
      tokens.filter((tok) => !thick.includes(tok)),
      ACCEPTS,
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
    // `spread chips over pile 1`
    const lies = slots.all.some((one) => sense(one.tok, 'atop') !== undefined) && materials.length === 1;
    const off =
      !lies &&
      (slots.all.some((one) => isPrep(one, 'off', 'out')) ||
        slots.get('uncover').length > 0 ||
        (taken &&
          layerToks.length > 0 &&
          // `le quité la lona a la 1`: Spanish takes things off to somebody.
          (slots.all.some((one) =>
            isPrep(one, 'from', 'off', 'of', ...(slots.get('remove').length > 0 ? ['to'] : [])),
          ) ||
            takenOff(slots))));
    const on = slots.all.some((one) => isPrep(one, 'on', 'to', 'into', 'in')) || slots.get('add').length > 0;
    const bareTarped = layerToks.some((tok) => tok.s === 'tarped');
    const atop = slots.all.some((one) => sense(one.tok, 'atop') !== undefined);
    const laid =
      materials.length === 1 && slots.get('place').length > 0 && ((thick.length === 1 && on) || atop);
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
    // Two layers on two piles, or one off and one on, are two doings: not every layer on every pile.
    if (places.length > 1 && (layers.length > 1 || layerToks.length > 1)) return null;
    if (places.length > 1 && off && slots.get('cover').length + slots.get('add').length > 0) return null;
    // `covering for me monday`
    if (
      places.length === 0 &&
      layers[0] === 'unspecified' &&
      [scope.prevTok, scope.nextTok, ...tokens].some(isFor)
    )
      return null;
    if (places.some((place) => ['exit', 'ambient', 'floor', 'lift'].includes(place))) return null;
    return layers.flatMap((layer) =>
      forEachPlace(slots, scope, (pile) => ({ kind: 'cover', pile, layer, on: !off })),
    );
  },
};

/** `toile enlevée sur C`: the layer named first and then its taking away. */
function takenOff(slots: Slots): boolean {
  const layer = slots.all.findIndex((one) => sense(one.tok, 'layer') !== undefined);
  return layer >= 0 && slots.all.findIndex((one) => one.cls === 'remove') > layer;
}

/** Words without which nothing was covered: the doing, the layer, a link that says it lies on top, a thickness. */
const lays = (tok: Tok) =>
  tok.k === 'n'
    ? isLengthUnit(tok.n!.unit)
    : tok.senses.some(
        (one) => one.cls === 'cover' || one.cls === 'uncover' || one.cls === 'layer' || one.cls === 'atop',
      );

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
  ['remove', undefined],
  ['prep', 'off'],
  ['prep', 'on'],
];
const signed = (tokens: readonly Tok[]) =>
  COVER_SIGNS.find(([cls, val]) =>
    tokens.some((tok) => tok.senses.some((s) => s.cls === cls && (val === undefined || s.val === val))),
  );
const placesIn = (tokens: readonly Tok[]) =>
  tokens.some((tok) => sense(tok, 'place') !== undefined || sense(tok, 'place?') !== undefined);

/** `tarp off B, on D`, `covered B with chips and C with geotextile`: two clauses, each with its own doing or layer. */
function twoCovers(tokens: readonly Tok[], scope: Scope): Item[] | null {
  for (let k = 1; k < tokens.length - 1; k++) {
    if (sense(tokens[k], 'and') === undefined && tokens[k]!.s !== ',') continue;
    const first = tokens.slice(0, k);
    const second = tokens.slice(k + 1).filter((tok) => sense(tok, 'there') === undefined && tok.s !== 'it');
    if (!placesIn(first) || !placesIn(second) || !signed(first)) continue;
    const rest = secondCover(first, second);
    if (!rest) continue;
    const one = cover.read(first, scope);
    const two = one && cover.read(rest, scope);
    if (one && two) return [...one, ...two];
  }
  return null;
}

const does = (tok: Tok) => sense(tok, 'cover') !== undefined || sense(tok, 'uncover') !== undefined;

/** The second clause with what it leans on from the first: the layer, or the doing; null where it is none. */
function secondCover(first: readonly Tok[], second: readonly Tok[]): readonly Tok[] | null {
  const layer = first.find((tok) => sense(tok, 'layer') !== undefined);
  const own = second.some((tok) => sense(tok, 'layer') !== undefined || sense(tok, 'material') !== undefined);
  if (second.some(does)) return second;
  const put = second.some((tok) => sense(tok, 'add') !== undefined);
  if (!own) return layer && (put || signed(second)) ? [layer, ...second] : null;
  // `covered 2 and 3 with chips` is one clause.
  const doing = first.some((tok) => ['layer', 'material'].some((cls) => sense(tok, cls) !== undefined))
    ? first.find(does)
    : undefined;
  // `covered B with chips and C with the tarp`: the doing holds for both.
  if (doing && !second.some((tok) => sense(tok, 'prep') === 'off')) return [doing, ...second];
  const lies = second.some((tok) => ['into', 'in', 'to'].includes(sense(tok, 'prep') ?? ''));
  return signed(second) || lies ? second : null;
}

// What the reader accepts, kept as a constant so that its ranks are worked out once.
const ACCEPTS = [
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
