import { type Language, MASS_UNITS, TIME_UNITS } from '#records';
import { wordAt } from './cardinals.ts';
import { type Found, findNumbers } from './finder.ts';
import { phraseAt, properFraction } from './fractions.ts';
import { F } from './lexicon.ts';
import { NUMBER, scan } from './scan.ts';
import { GLUED, LINE, SYMBOL, type Token, WORD } from './tokens.ts';
import type { NumberSpan, Quantity, QuantityOptions } from './types.ts';
import { readUnit } from './units.ts';

/**
 * Every number in a text, in digits and in words, in the order said and not overlapping; an article that could
 * be a one (`un`, `une`, `una`) is none. Ordinals, dates and clock times are no numbers.
 * @example readNumbers('2 1/2 buckets', ['en'])
 * // [{ start: 0, end: 5, text: '2 1/2', value: 2.5, kind: 'mixed' }]
 */
export function readNumbers(text: string, languages: readonly Language[]): NumberSpan[] {
  const spans: NumberSpan[] = [];
  for (const found of findNumbers(scan(text, languages), false)) {
    if (found.weak) continue;
    const span: NumberSpan = {
      start: found.start,
      end: found.end,
      text: text.slice(found.start, found.end),
      value: found.value,
      kind: found.kind,
    };
    if (found.ambiguous) span.ambiguous = found.ambiguous;
    if (found.decimalComma) span.decimalComma = true;
    if (found.joined) span.joined = true;
    if (found.pieces) {
      span.parts = found.pieces.map((piece) => ({
        start: piece.start,
        end: piece.end,
        text: text.slice(piece.start, piece.end),
        value: Number(piece.key),
        kind: 'digits',
      }));
    }
    spans.push(span);
  }
  return spans;
}

/** How many of the second unit make one of the first, where two units make one quantity. */
const PARTS: Record<string, Record<string, number>> = {
  ft: { in: 12 },
  lb: { oz: 16 },
  kg: { g: 1000 },
  t: { kg: 1000 },
  m: { cm: 100, mm: 1000 },
  cm: { mm: 10 },
  L: { mL: 1000 },
  d: { h: 24, min: 1440 },
  h: { min: 60 },
};

interface Draft extends Quantity {
  from: number;
  to: number;
  hasUnit: boolean;
  found: Found;
  smallest?: string;
}

/**
 * Every quantity in a text: a number and, where one is said, its unit. Values are as said, nothing converted;
 * `5 ft 2 in` is one quantity in feet; a unit said once behind a range holds for both ends.
 * @example readQuantities('5 ft 2 in', ['en'])
 * // [{ start: 0, end: 9, text: '5 ft 2 in', value: 5.166666666666667, unit: 'ft' }]
 */
export function readQuantities(
  text: string,
  languages: readonly Language[],
  options: QuantityOptions = {},
): Quantity[] {
  const { ranges = 'joined', general = false } = options;
  const tokens = scan(text, languages);
  const drafts = withUnits(tokens, findNumbers(tokens, general), general);
  const whole = joinParts(tokens, drafts);
  const ranged = joinRanges(tokens, whole, ranges === 'joined');
  const quantities: Quantity[] = [];
  for (const draft of ranged) {
    if (draft.found.joined && general && !draft.hasUnit) continue;
    const { start, end, value, unit, upTo, degrees, ambiguous } = draft;
    const quantity: Quantity = { start, end, text: text.slice(start, end), value, unit };
    if (upTo !== undefined) quantity.upTo = upTo;
    if (degrees) quantity.degrees = true;
    if (ambiguous) quantity.ambiguous = ambiguous;
    quantities.push(quantity);
  }
  return quantities;
}

function withUnits(tokens: Token[], numbers: Found[], general: boolean): Draft[] {
  const drafts: Draft[] = [];
  let quotes = 0;
  let seen = 0;
  let taken = 0;
  for (const found of numbers) {
    // The `cent` of `pour cent` belongs to the unit.
    if (found.from < taken) continue;
    for (; seen < found.to; seen++) if (tokens[seen]!.kind === SYMBOL && tokens[seen]!.key === '"') quotes++;
    const last = found.pieces === null && found.end < tokens[found.to - 1]!.end;
    const unit =
      last || found.unit ? null : readUnit(tokens, found.to, found.takesOf, quotes % 2 === 1, general);
    if (!unit && found.weak) continue;
    const draft: Draft = {
      from: found.from,
      to: found.to,
      start: found.start,
      end: found.end,
      text: '',
      value: found.value,
      unit: found.unit,
      hasUnit: found.unit !== null,
      found,
    };
    if (found.ambiguous) draft.ambiguous = found.ambiguous;
    if (unit) {
      draft.unit = unit.unit;
      draft.to = unit.end;
      draft.hasUnit = true;
      if (unit.degrees) draft.degrees = true;
      if (unit.unit !== null || unit.degrees) draft.end = tokens[unit.end - 1]!.end;
      for (; seen < unit.end; seen++);
      belowZero(tokens, draft);
      const more = andHalf(tokens, draft);
      taken = draft.to;
      const next = wordAt(tokens, draft.to);
      if (
        found.article &&
        !more &&
        (draft.unit === null || draft.unit in TIME_UNITS || !(next && next.flags & F.of))
      )
        continue;
    } else if (found.kind === 'words' || found.kind === 'digits') {
      if (andHalf(tokens, draft)) taken = draft.to;
    }
    drafts.push(draft);
  }
  return drafts;
}

/** `ten degrees below zero` */
function belowZero(tokens: Token[], draft: Draft): void {
  if (!(draft.degrees || draft.unit === 'C' || draft.unit === 'F') || draft.value <= 0) return;
  const first = tokens[draft.to];
  if (first?.kind !== WORD || first.gap === LINE) return;
  const phrase = first.lexicon.belowZero.find((words) => phraseAt(tokens, draft.to, words));
  if (!phrase) return;
  draft.value = -draft.value;
  draft.to += phrase.length;
  draft.end = tokens[draft.to - 1]!.end;
}

/** `cinco kilos y medio`, `an hour and a half`, `deux heures et demie`; `deux ans et demi`, two years and a half. */
function andHalf(tokens: Token[], draft: Draft): boolean {
  let at = draft.to;
  if (!draft.hasUnit) {
    const thing = tokens[at];
    if (thing?.kind !== WORD || thing.gap === LINE || (thing.word && thing.word.flags !== F.common))
      return false;
    at++;
  }
  const word = wordAt(tokens, at);
  if (!word || !(word.flags & F.and) || !Number.isInteger(draft.value)) return false;
  const fraction = properFraction(tokens, at + 1);
  if (!fraction) return false;
  const half = [at + 1, at + 2].some((i) => i < fraction.end && (wordAt(tokens, i)?.flags ?? 0) & F.half);
  const after = tokens[fraction.end];
  if (after?.kind === WORD && after.gap !== LINE) {
    if (readUnit(tokens, fraction.end, true, true, true)) return false;
    // `2 kilos and 3/4 bucket`, `two carts and a half bucket`
    const loose = half && draft.hasUnit && !((wordAt(tokens, at + 1)?.flags ?? 0) & F.article);
    if (!loose && !((after.word?.flags ?? 0) & (F.common | F.of | F.and))) return false;
  }
  if (!half && !draft.hasUnit) return false;
  draft.value += draft.value < 0 ? -fraction.value : fraction.value;
  draft.to = fraction.end;
  draft.end = tokens[fraction.end - 1]!.end;
  return true;
}

/** Two units of one kind side by side are one quantity: `4 lb 6 oz`, `1 h 30 min`, `1h30`, `5'2`. */
function joinParts(tokens: Token[], drafts: Draft[]): Draft[] {
  const joined: Draft[] = [];
  for (const draft of drafts) {
    const before = joined[joined.length - 1];
    const factor = before ? partOf(tokens, before, draft) : 0;
    if (before && factor) {
      before.value += (before.value < 0 ? -1 : 1) * (draft.value / factor);
      before.end = draft.end;
      before.to = draft.to;
      before.smallest = draft.unit ?? 'min';
      continue;
    }
    joined.push(draft);
  }
  return joined;
}

function partOf(tokens: Token[], before: Draft, draft: Draft): number {
  if (!before.unit || draft.value < 0 || draft.from >= tokens.length || draft.found.weak) return 0;
  const parts = PARTS[before.unit];
  if (!parts) return 0;
  const first = tokens[draft.from]!;
  if (first.gap === LINE) return 0;
  if (!draft.hasUnit) {
    // `1h30`, `1m75`, `5'2`: the smaller unit is understood.
    if (draft.from !== before.to) return 0;
    const plain = first.kind === NUMBER ? first.number?.plain : draft.found.kind === 'words';
    if (!plain || !Number.isInteger(draft.value)) return 0;
    // `5 foot 10`, with nothing behind that could be counted
    const after = tokens[draft.to];
    const counts =
      after?.kind === WORD && after.gap !== LINE && !((after.word?.flags ?? 0) & (F.of | F.common | F.and));
    if (before.unit === 'ft') return draft.value < 12 && (first.gap === GLUED || !counts) ? 12 : 0;
    if (first.gap !== GLUED) return 0;
    if (first.key.length !== 2 || tokens[before.to - 1]!.end - tokens[before.to - 1]!.start !== 1) return 0;
    return before.unit === 'h' && draft.value < 60 ? 60 : before.unit === 'm' ? 100 : 0;
  }
  const factor = draft.unit ? parts[draft.unit] : undefined;
  if (!factor || draft.value >= factor) return 0;
  if (before.smallest && !PARTS[before.smallest]?.[draft.unit!]) return 0;
  let at = before.to;
  if ((tokens[at]?.word?.flags ?? 0) & F.and && tokens[at]!.kind === WORD) at++;
  else if (tokens[at]?.kind === SYMBOL && tokens[at]!.gap === GLUED) {
    // `6 feet, 2 inches`; a list of weights may stand between commas, so only lengths and times.
    if (tokens[at]!.key === '.' || (tokens[at]!.key === ',' && !(before.unit in MASS_UNITS))) at++;
  }
  return at === draft.from ? factor : 0;
}

/** A range shares the unit said behind it; `join` makes one quantity of its two ends. */
function joinRanges(tokens: Token[], drafts: Draft[], join: boolean): Draft[] {
  const result: Draft[] = [];
  for (const draft of drafts) {
    const before = result[result.length - 1];
    if (before && !before.hasUnit && draft.unit && choiceBetween(tokens, before.to, draft.from)) {
      before.unit = draft.unit;
      result.push(draft);
      continue;
    }
    const dash =
      before !== undefined &&
      before.upTo === undefined &&
      between(tokens, before.from, before.to, draft.from, join);
    if (!before || !dash || (before.hasUnit && before.unit !== draft.unit) || draft.value < -273) {
      result.push(draft);
      continue;
    }
    const shares = !before.hasUnit && draft.hasUnit && draft.unit !== null;
    if (shares) before.unit = draft.unit;
    if (!before.hasUnit && draft.degrees) before.degrees = true;
    if (!join) {
      result.push(draft);
      continue;
    }
    before.upTo = draft.value;
    before.unit = draft.unit;
    before.end = draft.end;
    before.to = draft.to;
  }
  return result;
}

/** Whether a dash, or a word such as `to`, is all that stands between two numbers; `and` after `between`. */
function between(tokens: Token[], first: number, from: number, to: number, strict: boolean): boolean {
  if (to !== from + 1) return false;
  const mark = tokens[from]!;
  if (mark.gap === LINE || tokens[to]!.gap === LINE) return false;
  if (mark.kind === SYMBOL) return '-–—−'.includes(mark.key);
  if (mark.kind !== WORD || !mark.word) return false;
  // `pila 2 a 60` is pile 2 at 60; `de 20 a 60` is a range.
  if (mark.word.flags & F.to)
    return !strict || mark.key !== 'a' || ((wordAt(tokens, first - 1, true)?.flags ?? 0) & F.of) !== 0;
  return (mark.word.flags & F.and) !== 0 && ((wordAt(tokens, first - 1, true)?.flags ?? 0) & F.between) !== 0;
}

/** `5 or 6 kg`: the unit holds for both. */
function choiceBetween(tokens: Token[], from: number, to: number): boolean {
  const mark = tokens[from];
  return (
    to === from + 1 && mark?.kind === WORD && mark.gap !== LINE && ((mark.word?.flags ?? 0) & F.or) !== 0
  );
}
