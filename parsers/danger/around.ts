// What stands around a piece: who does it, to what, whether it is denied, over or only supposed.
import type { Piece, Sentence } from './pieces.ts';
import type { DangerKind, DangerTopic } from './words.ts';

/** Whether a piece is of one of the kinds; a quiet phrase is of none. */
export const is = (piece: Piece | undefined, ...anyOf: readonly DangerKind[]): boolean =>
  piece !== undefined && !piece.kinds.has('quiet') && anyOf.some((kind) => piece.kinds.has(kind));

/** How many pieces away anything is looked for: a bound that keeps the time in proportion to the length. */
export const farthest = 12;

/** A piece that only joins what stands on its two sides. */
export const isPassable = (piece: Piece): boolean =>
  is(piece, 'aux', 'copula', 'article', 'clear', 'filler', 'within', 'off');

/** The nearest piece of one of the kinds, at most `reach` pieces away on the given side, or -1. */
export function nearest(
  pieces: readonly Piece[],
  at: number,
  step: 1 | -1,
  reach: number,
  kinds: readonly DangerKind[],
): number {
  for (let k = 1; k <= reach; k += 1) {
    const piece = pieces[at + k * step];
    if (piece === undefined) return -1;
    if (is(piece, ...kinds)) return at + k * step;
  }
  return -1;
}

/** The nearest piece of one of the kinds on either side, the right one first, or -1. */
export function around(
  pieces: readonly Piece[],
  at: number,
  reach: number,
  kinds: readonly DangerKind[],
): number {
  const right = nearest(pieces, at, 1, reach, kinds);
  return right >= 0 ? right : nearest(pieces, at, -1, reach, kinds);
}

/** `no smoke`, `nobody was hurt`, `didn't see any smoke`, `ça ne fume plus`: said not to be. */
export function isNegated(pieces: readonly Piece[], at: number): boolean {
  for (let i = at - 1; i >= 0 && i >= at - farthest; i -= 1) {
    const piece = pieces[i]!;
    if (pieces[i + 1]!.comma && !is(pieces[i + 1], 'not')) {
      // `no smoke, fire, flames`: a list goes on over its commas, a remark does not
      if (!is(piece, 'smoke', 'fire', 'hurt', 'needle')) return false;
    }
    if (is(piece, 'not')) return true;
    if (
      !is(
        piece,
        'clear',
        'aux',
        'article',
        'smoke',
        'fire',
        'hurt',
        'needle',
        'burn',
        'smell',
        'gas',
        'body',
        'reach',
        'person',
      )
    ) {
      return false;
    }
  }
  return false;
}

/** `fumée ? non`: said not to be, by the next piece. */
export function isDeniedAfter(pieces: readonly Piece[], at: number): boolean {
  const next = pieces[at + 1];
  return is(next, 'notAfter') && !next!.comma && !is(pieces[at + 2], 'quiet');
}

/** `the fire is out`: said to be over. */
export function isEnded(pieces: readonly Piece[], at: number, topic: DangerTopic): boolean {
  for (let i = at + 1; i < pieces.length && i <= at + 5; i += 1) {
    // `ça arrête pas`: not over at all
    if (is(pieces[i], 'ended')) return !is(pieces[i + 1], 'notAfter');
    // a fire that is out is over, somebody who bleeds out is not
    if (is(pieces[i], 'endedLast') && topic !== 'injury')
      return i === pieces.length - 1 || pieces[i + 1]!.comma;
    if (!is(pieces[i], 'aux', 'article', 'clear', 'within', 'heap', 'machine', 'vehicle')) return false;
  }
  return false;
}

/** What a sentence as a whole tells of every danger in it. */
export type Setting = {
  readonly pieces: readonly Piece[];
  /** from this piece on, what is said is only supposed */
  readonly supposedFrom: number;
  readonly isUnreal: boolean;
  /** what burns or smokes is cooked or smoked: food is spoken of, and nothing of the site */
  readonly hasFood: boolean;
  /** a machine is named, or something is said to turn */
  readonly hasMachine: boolean;
  readonly isRunning: boolean;
  readonly hasSomebody: boolean;
};

/** Looks once over a sentence for what its dangers lean on. */
export function settingOf({ pieces, mark }: Sentence): Setting {
  let supposedFrom = Number.POSITIVE_INFINITY;
  let isUnreal = false;
  let hasFood = false;
  let hasMachine = false;
  let isRunning = false;
  let hasSite = false;
  let hasSomebody = false;
  pieces.forEach((piece, i) => {
    if (is(piece, 'condition') && supposedFrom > i) supposedFrom = i;
    if (is(piece, 'story')) isUnreal = true;
    if (is(piece, 'food')) hasFood = true;
    if (is(piece, 'machine', 'running')) hasMachine = true;
    if (is(piece, 'running')) isRunning = true;
    if (is(piece, 'machine', 'site')) hasSite = true;
    if (is(piece, 'person', 'body', 'clothes')) hasSomebody = true;
  });
  if (mark === '?' && pieces.slice(0, 3).some((piece) => is(piece, 'asks'))) isUnreal = true;
  return { pieces, supposedFrom, isUnreal, hasFood: hasFood && !hasSite, hasMachine, isRunning, hasSomebody };
}

/** Who or what does it: the first piece to the left that is more than a joining word. */
export function subjectOf(pieces: readonly Piece[], at: number): Piece | undefined {
  for (let i = at - 1; i >= 0 && i >= at - farthest; i -= 1) {
    const piece = pieces[i]!;
    if (pieces[i + 1]!.comma) return undefined;
    if (is(piece, 'person', 'body', 'clothes')) return piece;
    if (!is(piece, 'aux', 'copula', 'article', 'filler', 'not')) return piece;
  }
  return undefined;
}

/** A thing, where a person would have to stand. */
export const isThing = (piece: Piece | undefined): boolean =>
  piece !== undefined &&
  (piece.kinds.has('quiet') ||
    is(piece, 'thing', 'heap', 'machine', 'vehicle', 'food', 'smell') ||
    /\d/.test(piece.text));

/** The thing that follows a verb, past its articles. */
export function objectOf(pieces: readonly Piece[], at: number): Piece | undefined {
  let i = at + 1;
  while (is(pieces[i], 'article') && !is(pieces[i], 'person', 'body', 'within')) i += 1;
  if (is(pieces[i], 'within')) return undefined;
  return pieces[i];
}

/** The machine that a piece leads into: `in the drum`, `sous le chariot`, or -1. */
export function machineAfter(pieces: readonly Piece[], at: number, reach: number, loose: boolean): number {
  let sawWithin = false;
  for (let i = at + 1; i < pieces.length && i <= at + reach; i += 1) {
    const piece = pieces[i]!;
    if (
      sawWithin &&
      (is(piece, 'machine') || (loose && (is(piece, 'vehicle') || piece.nearKinds.has('machine'))))
    )
      return i;
    if (is(piece, 'inside') && i === pieces.length - 1) return i;
    if (is(piece, 'within', 'inside', 'under') || (loose && is(piece, 'around'))) sawWithin = true;
    else if (!isPassable(piece) && !is(piece, 'reach', 'stuck', 'grip', 'person', 'body')) return -1;
  }
  return -1;
}
