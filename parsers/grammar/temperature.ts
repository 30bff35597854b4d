import { isLengthUnit, toCm } from '#records';
import { type Item, isPrep, type Reader, type Scope, type Slots, take, tidy } from '../reading.ts';
import { type Num, sense, type Tok } from '../tokens.ts';
import { alternatives } from './load-parts.ts';
import { everyPile, one, type Piece, placeless } from './temperature-pieces.ts';

const ACCEPTS = [
  'check',
  'done',
  'n',
  'place',
  'point',
  'deep',
  'tempword',
  'both',
  'all',
  'many',
  'pilehead',
  'or',
  'unsure',
  'degree',
  'be',
  'squeeze!',
  'numero',
  'between',
  'rangeword',
  'squeeze?',
  'mixed',
  'itis',
];

const PRICED = new Set(['por', 'for', 'pour']);
const isDepth = (n: Num) => isLengthUnit(n.unit);
const isDegrees = (n: Num) => n.unit === null || n.unit === 'C' || n.unit === 'F' || n.unit === 'deg';

const outside = (pieces: readonly Piece[]) =>
  pieces.some((piece) => piece.kind === 'place' && piece.place === 'ambient');

/** Whether a date parts two figures. */
function daysBetween(tokens: readonly Tok[]): boolean {
  const figure = tokens.findIndex((tok) => tok.k === 'n' && sense(tok, 'place?') === undefined);
  const day = tokens.findIndex((tok, k) => k > figure && tok.k === 'd');
  return figure >= 0 && day > figure && tokens.slice(day).some((tok) => tok.k === 'n');
}

/** Temperatures: `B 41 43 39`, `pile 3 north 130 mid 142`, `140 @ 2'`, `A 55`, `ambient 12`, `all 4 piles 60`. */
export const temperature: Reader = {
  rule: 'temperature',
  on: ['n'],
  read(tokens, scope) {
    const slots = take(alternatives(tokens), ACCEPTS);
    if (!slots || slots.nums.length === 0) return null;
    // `C 58 yesterday, 61 today` are two days.
    if (daysBetween(tokens)) return null;
    // `1=131 | 2=128`: a pile's number with its figure behind it opens the next reading.
    const tail = slots.all.findLast((one) => one.cls !== 'sep' && one.cls !== 'fill');
    const marked =
      (scope.nextTok?.k === 'n' && scope.nextTok.n!.value >= 20) ||
      (scope.nextTok?.k === 'p' && '=:'.includes(scope.nextTok.s) && scope.afterTok?.k === 'n');
    if (tail?.cls === 'n' && sense(tail.tok, 'place?') !== undefined && marked) return null;
    // `a 2 por 30` is a price
    if (slots.all.some((one, k) => PRICED.has(one.tok.s) && slots.all[k - 1]?.cls === 'n')) return null;
    const pieces = piecesOf(slots, scope);
    if (!pieces) return null;
    // `hace 95 afuera` is the air; said in a sentence of its own it is a reading, beside talk it is talk.
    const itIs = slots.get('itis').some((tok) => sense(tok, 'fill') === undefined);
    if (
      itIs &&
      (pieces.some((piece) => piece.kind === 'place' && piece.place !== 'ambient') || !outside(pieces)) &&
      slots.get('pilehead').length === 0
    )
      return null;
    const figures = pieces.filter((piece) => piece.kind === 'figure');
    if (figures.length === 0) return null;
    if (figures.some((piece) => !isDegrees((piece as { n: Num }).n))) return null;
    if (figures.some((piece) => (piece as { n: Num }).n.fraction || (piece as { n: Num }).n.hash))
      return null;
    return readPieces(pieces, slots, scope, tokens);
  },
};

function piecesOf(slots: Slots, scope: Scope): Piece[] | null {
  const pieces: Piece[] = [];
  const many =
    slots.get('both').length > 0 ||
    slots.get('all').length > 0 ||
    slots.get('many').length > 0 ||
    slots.get('pilehead').length > 0;
  let counted = false;
  let depthUnit: Num['unit'] = null;
  for (let k = 0; k < slots.all.length; k++) {
    const { cls, tok } = slots.all[k]!;
    if (cls === 'place') pieces.push({ kind: 'place', place: sense(tok, 'place') ?? sense(tok, 'place?')! });
    else if (cls === 'point') pieces.push({ kind: 'point', point: sense(tok, 'point')! });
    else if (cls === 'n') {
      const n = tok.n!;
      const next = slots.all[k + 1];
      const previous = slots.all[k - 1];
      if (
        many &&
        !counted &&
        n.unit === null &&
        Number.isInteger(n.value) &&
        (next?.cls === 'many' || next?.cls === 'pilehead') &&
        previous?.cls !== 'n'
      ) {
        counted = true;
        if (n.value !== scope.context.piles.length) pieces.push({ kind: 'mismatch' });
        continue;
      }
      // `1: 44 2: 51`: numbered points.
      if (
        next?.cls === 'sep' &&
        next.tok.s === ':' &&
        n.unit === null &&
        Number.isInteger(n.value) &&
        n.value >= 1 &&
        n.value <= 20 &&
        slots.all[k + 2]?.cls === 'n' &&
        // `1: 118 2: 137` where no pile is named are the piles themselves
        !(sense(tok, 'place?') !== undefined && !pieces.some((p) => p.kind === 'place' || p.kind === 'point'))
      ) {
        pieces.push({ kind: 'point', point: String(n.value) });
        continue;
      }
      // A number that names a pile, where a figure of its own follows: `1 138, 2 141`, `la 1 138`.
      const place = sense(tok, 'place?');
      // `131 at 12 inches, 148 at 24`: the next depth is in the unit of the first.
      const linked = pieces.at(-1)?.kind === 'link' ? 1 : 0;
      if (
        depthUnit &&
        n.unit === null &&
        pieces.at(-1 - linked)?.kind === 'figure' &&
        previous?.tok.senses.some((one) => one.cls === 'prep' && one.val === 'at')
      ) {
        if (linked) pieces.pop();
        pieces.push({ kind: 'depth', cm: tidy(toCm(n.value, depthUnit as 'cm')) });
        continue;
      }
      if (isDepth(n)) depthUnit = n.unit;
      if (place && n.unit === null && asPlace(slots, k)) pieces.push({ kind: 'place', place });
      else if (isDepth(n)) pieces.push({ kind: 'depth', cm: tidy(toCm(n.value, n.unit as 'cm')) });
      // A bare number that names a pile is no reading of another: `piles 1 2 3 at …`.
      else if (place && n.unit === null && n.value < 20) return null;
      else pieces.push({ kind: 'figure', n });
    } else if (cls === 'rangeword') {
      // `130 and 125` are two readings; `between 40 and 43` is a range.
      const ranged = sense(tok, 'and') === undefined || slots.get('between').length > 0;
      if (ranged) pieces.push({ kind: 'link' });
    }
  }
  // `135 to 140`, `entre 40 et 43`: one point with its upper value.
  for (let k = 1; k < pieces.length - 1; k++) {
    const [low, link, high] = [pieces[k - 1]!, pieces[k]!, pieces[k + 1]!];
    if (link.kind !== 'link') continue;
    if (
      low.kind === 'figure' &&
      high.kind === 'figure' &&
      low.n.to === undefined &&
      high.n.to === undefined &&
      high.n.value > low.n.value &&
      high.n.value - low.n.value <= 30 &&
      low.n.value >= 5
    ) {
      pieces.splice(k - 1, 3, {
        kind: 'figure',
        n: { ...low.n, to: high.n.value, unit: high.n.unit ?? low.n.unit },
      });
      k--;
    }
  }
  return pieces.filter((piece) => piece.kind !== 'link');
}

function asPlace(slots: Slots, k: number): boolean {
  const next = slots.all
    .slice(k + 1)
    .find(
      (one) =>
        one.cls !== 'fill' &&
        one.cls !== 'sep' &&
        !one.cls.startsWith('prep') &&
        one.cls !== 'point' &&
        one.cls !== 'be',
    );
  if (next?.cls !== 'n' || next.tok.n!.value < 20 || isDepth(next.tok.n!)) return false;
  const before = slots.all
    .slice(0, k)
    .findLast((one) => one.cls !== 'fill' && !one.cls.startsWith('prep') && one.cls !== 'be');
  if (!before) return true;
  // `temps: 1 130, 2 125`, `all piles: 1=131`
  if (before.cls === 'sep' && before.tok.s === ':') {
    const head = slots.all.slice(0, k).findLast((one) => one.cls !== 'sep' && one.cls !== 'fill');
    return head !== undefined && ['tempword', 'check', 'done', 'all', 'many', 'pilehead'].includes(head.cls);
  }
  if (before.cls === 'sep')
    return before.tok.s === ',' || before.tok.s === '-' || before.tok.s === ';' || before.tok.s === '/';
  return (
    before.cls === 'tempword' ||
    before.cls === 'n' ||
    before.cls === 'and' ||
    before.cls === 'many' ||
    before.cls === 'pilehead'
  );
}

function readPieces(pieces: Piece[], slots: Slots, scope: Scope, tokens: readonly Tok[]): Item[] | null {
  const whole = slots.get('both').length > 0 || slots.get('all').length > 0 || slots.get('many').length > 0;
  const named = pieces
    .filter((piece) => piece.kind === 'place')
    .map((piece) => (piece as { place: string }).place);
  const figures = pieces.filter((piece) => piece.kind === 'figure').map((piece) => (piece as { n: Num }).n);
  if (new Set(named).size !== named.length) return null;
  const or = slots.get('or').length > 0;
  if (whole && named.length === 0) return everyPile(slots, figures, pieces, scope);
  const places = named.length > 0 ? named : scope.carry.place ? [scope.carry.place] : [];
  if (places.length === 0) return placeless(figures, slots, pieces, scope, tokens);
  if (places.length > 1) {
    const firstFigure = pieces.findIndex((piece) => piece.kind === 'figure');
    const lastPlace = pieces.findLastIndex((piece) => piece.kind === 'place');
    if (lastPlace > firstFigure) {
      // `41 B, 43 C` is read piece by piece; `A 55 B 41` likewise.
      return null;
    }
    if (figures.length === 1)
      return places.flatMap(
        (place) =>
          one(
            place,
            pieces.filter((piece) => piece.kind !== 'place'),
            slots,
            scope,
            or,
          ) ?? [],
      );
    if (figures.length === places.length)
      return places.flatMap(
        (place, k) =>
          one(
            place,
            [
              {
                kind: 'figure',
                n: { ...figures[k]!, unit: figures[k]!.unit ?? figures.find((n) => n.unit)?.unit ?? null },
              },
            ],
            slots,
            scope,
            false,
          ) ?? [],
      );
    return null;
  }
  if (named.length === 1) {
    const at = pieces.findIndex((piece) => piece.kind === 'place');
    const before = pieces.slice(0, at).filter((piece) => piece.kind === 'figure');
    // `41 in B` may stand so; figures on both sides of a place belong to two places.
    if (before.length > 0 && pieces.slice(at + 1).some((piece) => piece.kind === 'figure')) return null;
    if (before.length > 0 && scope.nextTok?.k === 'n') return null;
    // `…, 5 on 2` goes on with what was measured before it.
    if (
      named[0] !== 'ambient' &&
      before.some((piece) => piece.kind === 'figure' && piece.n.unit === null && piece.n.value < 20)
    )
      return null;
    // Degrees before the place need their sign, or a word between: `3 B` says nothing.
    if (
      before.length > 0 &&
      // `68 outside, pile 1 126`; alone, degrees outside are talk of the weather
      !(
        named[0] === 'ambient' &&
        (!scope.prevTok || (scope.prevTok.s === ',' && slots.get('itis').length > 0)) &&
        (slots.get('place').some((tok) => tok.s.startsWith('amb')) ||
          sense(scope.afterTok, 'place') !== undefined ||
          sense(scope.afterTok, 'definite') !== undefined ||
          (!scope.nextTok && slots.get('itis').length > 0))
      ) &&
      !slots.all.some(
        (o) =>
          isPrep(o, 'in') || isPrep(o, 'at') || isPrep(o, 'on') || isPrep(o, 'for') || o.cls === 'tempword',
      ) &&
      before.every((p) => (p as { n: Num }).n.unit === null) &&
      // `edge 44 centre 58 pile B`: each figure has its point
      pieces.slice(0, at).filter((piece) => piece.kind === 'point').length !== before.length
    )
      return null;
  }
  return one(
    places[0]!,
    pieces.filter((piece) => piece.kind !== 'place'),
    slots,
    scope,
    or,
  );
}
