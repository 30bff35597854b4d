import type { Unit } from '#records';
import { F } from './lexicon.ts';
import { type Core, isCore, readNumber } from './reading.ts';
import { GLYPH, NUMBER } from './scan.ts';
import { GLUED, LINE, type Piece, SYMBOL, type Token, WORD } from './tokens.ts';
import type { NumberSpan } from './types.ts';
/** A number with its place among the tokens: from `from` to before `to`. */
export interface Found extends Omit<NumberSpan, 'text' | 'parts'> {
  from: number;
  to: number;
  /** Perhaps only an article (`un kilo`): a number where a unit follows. */
  weak: boolean;
  /** `a` before a unit: a quantity only as `an hour and a half` or `a gallon of`. */
  article: boolean;
  /** A unit that stands inside it (`kilo y medio`). */
  unit: Unit | null;
  /** `of` may stand between it and its unit (`half of a kilo`, `2 millions de tonnes`). */
  takesOf: boolean;
  pieces: Piece[] | null;
}

/** Every number of the tokens, in order, none overlapping. */
export function findNumbers(tokens: Token[], general: boolean): Found[] {
  const found: Found[] = [];
  for (let at = 0; at < tokens.length; ) {
    const token = tokens[at]!;
    if (token.kind === NUMBER && !token.number) {
      for (const piece of token.pieces!) found.push(bare(at, piece));
      at++;
      continue;
    }
    if (token.kind !== NUMBER && token.kind !== GLYPH && token.kind !== WORD) {
      at++;
      continue;
    }
    const reading = readNumber(tokens, at, general);
    if (!isCore(reading)) {
      at = reading ? Math.max(reading.skipTo, at + 1) : at + 1;
      continue;
    }
    if (Number.isFinite(reading.value)) found.push(finish(tokens, reading, found[found.length - 1]));
    at = reading.to;
  }
  return found;
}

function bare(at: number, piece: Piece): Found {
  return {
    from: at,
    to: at + 1,
    start: piece.start,
    end: piece.end,
    value: Number(piece.key),
    kind: 'digits',
    weak: false,
    article: false,
    unit: null,
    takesOf: false,
    pieces: null,
  };
}

function finish(tokens: Token[], core: Core, previous: Found | undefined): Found {
  const first = tokens[core.from]!;
  const only = core.to === core.from + 1 && first.kind === NUMBER;
  let { from, value } = core;
  const sign = signBefore(tokens, from, previous);
  if (sign < from) {
    from = sign;
    value = value === 0 ? 0 : -value;
  }
  const made: Found = {
    from,
    to: core.to,
    start: tokens[from]!.start,
    end: tokens[core.to - 1]!.end,
    value,
    kind: core.kind,
    weak: core.weak ?? false,
    article: core.article ?? false,
    unit: core.unit ?? null,
    takesOf: core.takesOf ?? false,
    pieces: only && first.number!.list && from === core.from ? first.pieces : null,
  };
  const others = core.others ?? (only ? first.number!.others : []);
  if (others.length) made.ambiguous = [value, ...others.map((other) => (sign < core.from ? -other : other))];
  if (first.number?.decimalComma) made.decimalComma = true;
  if (first.joined) made.joined = true;
  return made;
}

/** The index of the minus before the number at `at`, or `at`. */
function signBefore(tokens: Token[], at: number, previous: Found | undefined): number {
  const sign = tokens[at - 1];
  const first = tokens[at]!;
  if (!sign || first.gap === LINE || (previous && previous.to >= at)) return at;
  const before = tokens[at - 2];
  const afterNumber = previous !== undefined && previous.to === at - 1;
  if (sign.kind === WORD) {
    if (!((sign.word?.flags ?? 0) & F.minus) || afterNumber) return at;
    if (before?.kind === WORD && sign.gap !== LINE && (before.word?.flags ?? 0) & F.notMinusAfter) return at;
    return at - 1;
  }
  if (sign.kind !== SYMBOL || !'-−–'.includes(sign.key)) return at;
  if (first.kind !== NUMBER && first.kind !== GLYPH) return at;
  // A dash set off by spaces is a sign only where nothing else is there to be dashed (`- 5`, not a list of duties).
  if (first.gap !== GLUED) return at - 1 === 0 && isRestOfText(tokens, at) ? at - 1 : at;
  if (!before || sign.gap === LINE) return at - 1;
  if (sign.gap === GLUED)
    return before.kind === SYMBOL && '-−–(/,;:=<>~$£€'.includes(before.key) ? at - 1 : at;
  return sign.key === '–' && afterNumber ? at : at - 1;
}

function isRestOfText(tokens: Token[], at: number): boolean {
  for (let i = at; i < tokens.length; i++) {
    const token = tokens[i]!;
    if (token.kind === WORD && !token.word?.slot && token.key.length > 1 && !token.word?.denominator)
      return false;
  }
  return true;
}
