import type { Unit } from '#records';
import { readCardinal, times, wordAt } from './cardinals.ts';
import { readDecimals } from './decimals.ts';
import { beginsUnit, denominate, phraseAt, properFraction, slashFraction, symbolAt } from './fractions.ts';
import { COLLECTIVE, F, HUNDRED, SCALE, UNIT, type Word } from './lexicon.ts';
import { GLYPH, glyphValue, NUMBER } from './scan.ts';
import { GLUED, HYPHEN, LINE, SYMBOL, type Token, WORD } from './tokens.ts';
import type { NumberSpan } from './types.ts';

/** A number as read, before its sign: from token `from` to before `to`. */
export type Core = {
  from: number;
  to: number;
  value: number;
  kind: NumberSpan['kind'];
  others?: number[];
  weak?: boolean;
  article?: boolean;
  unit?: Unit;
  takesOf?: boolean;
};
/** A number, tokens to pass over (an ordinal), or nothing. */
export type Reading = Core | { skipTo: number } | null;

export const isCore = (reading: Reading): reading is Core => reading !== null && 'value' in reading;

/** The number that begins at token `at`, with everything that belongs to it. */
export function readNumber(tokens: Token[], at: number, general: boolean): Reading {
  const reading = readWhole(tokens, at, general);
  if (!isCore(reading)) return reading;
  return divided(tokens, withScale(tokens, reading), general);
}

function readWhole(tokens: Token[], at: number, general: boolean): Reading {
  const token = tokens[at]!;
  if (token.kind === GLYPH)
    return { from: at, to: at + 1, value: glyphValue(token), kind: 'fraction', takesOf: true };
  if (token.kind === NUMBER) return readFromDigits(tokens, at, general);
  const word = token.word;
  if (!word) return unitAndHalf(tokens, at);
  if (word.flags & F.half) {
    const half = readHalf(tokens, at, word);
    if (half) return half;
  }
  if (word.flags & F.article) return readFromArticle(tokens, at, word);
  if (word.flags & F.point && word.slot === 0) {
    const behind = wordAt(tokens, at + 1);
    const digit = behind?.slot || tokens[at + 1]?.key === 'oh';
    if (!digit || word.flags & F.pointBetweenWords || !mayOpenWithPoint(tokens, at, word)) return null;
    const decimals = readDecimals(tokens, at, 0, general);
    return decimals ? { from: at, to: decimals.end, value: decimals.value, kind: 'words' } : null;
  }
  if (word.slot !== 0) return readFromWords(tokens, at, at, word, general);
  if (word.denominator) return readLoneShare(tokens, at, word);
  return null;
}

function readFromDigits(tokens: Token[], at: number, general: boolean): Core {
  const token = tokens[at]!;
  const { value, plain } = token.number!;
  const digits: Core = { from: at, to: at + 1, value, kind: 'digits' };
  const next = tokens[at + 1];
  if (!next || next.gap === LINE) return digits;
  if (plain && !token.joined) {
    const fraction = slashFraction(tokens, at);
    if (fraction)
      return { from: at, to: fraction.end, value: fraction.value, kind: 'fraction', takesOf: true };
    if (next.kind === GLYPH)
      return { from: at, to: at + 2, value: value + glyphValue(next), kind: 'mixed', takesOf: true };
    // `2 1/2`, `2-1/2`
    const dash = symbolAt(tokens, at + 1, '-') && next.gap === GLUED && tokens[at + 2]?.gap === GLUED;
    const part = next.kind === NUMBER || dash ? slashFraction(tokens, dash ? at + 2 : at + 1) : null;
    if (part?.proper)
      return { from: at, to: part.end, value: value + part.value, kind: 'mixed', takesOf: true };
  }
  if (general && next.kind === WORD) {
    const factor = letterFactor(tokens, at + 1);
    if (factor) return { from: at, to: at + 2, value: times(value, factor), kind: 'digits' };
  }
  const word = wordAt(tokens, at + 1);
  if (!word) return andFraction(tokens, digits, 1);
  if (word.slot >= HUNDRED) {
    const cardinal = readCardinal(tokens, at, value);
    if (cardinal) {
      const noun = cardinal.lastSlot === SCALE || cardinal.lastSlot === COLLECTIVE;
      const whole: Core = { from: at, to: cardinal.end, value: cardinal.value, kind: 'words', takesOf: noun };
      return andFraction(tokens, whole, cardinal.noun);
    }
  }
  if (plain && word.flags & F.point) {
    const decimals = readDecimals(tokens, at + 1, value, general);
    if (decimals) return { from: at, to: decimals.end, value: decimals.value, kind: 'words' };
  }
  if (
    plain &&
    word.denominator &&
    next.gap !== HYPHEN &&
    (word.plural || (value === 1 && word.flags & (F.half | F.quarter)))
  ) {
    return { from: at, to: at + 2, value: value / word.denominator, kind: 'fraction', takesOf: true };
  }
  return andFraction(tokens, digits, 1);
}

/** `point five` is a number; `at this point five came` and `que coma dos` hold none. */
function mayOpenWithPoint(tokens: Token[], at: number, word: Word): boolean {
  const before = tokens[at - 1];
  if (!before || before.kind !== WORD || tokens[at]!.gap === LINE) return true;
  const flags = before.word?.flags ?? 0;
  if (flags & F.minus) return true;
  return word.language === 'en' && !(flags & (F.pronounAfter | F.article | F.determiner));
}

/** Letters that stand for a power of ten behind digits: `10k`, `2.33 k`, `10M`, `1.2bn`. */
function letterFactor(tokens: Token[], at: number): number {
  const token = tokens[at]!;
  if (token.gap === LINE || token.key.length > 1 || symbolAt(tokens, at + 1, "'")) return 0;
  // `300 K` is a temperature.
  if (token.key === 'k') return token.gap === GLUED || !token.capital ? 1e3 : 0;
  if (token.gap !== GLUED) return 0;
  const coin = tokens[at - 2];
  const after = tokens[at + 1];
  const money =
    (coin?.kind === SYMBOL && '$£€'.includes(coin.key)) ||
    (after?.kind === SYMBOL && after.gap === GLUED && '$£€'.includes(after.key));
  // `10m` is ten metres and `12B` a room; `$10m` and `10M` are millions, `1.2b` is a billion.
  if (token.key === 'm') return money || token.capital ? 1e6 : 0;
  return token.key === 'b' && (money || !tokens[at - 1]!.number!.plain) ? 1e9 : 0;
}

/** `kilo y medio`, `hour and a half`: no one is needed before a unit that a half follows. */
function unitAndHalf(tokens: Token[], at: number): Core | null {
  const and = wordAt(tokens, at + 1);
  if (!and || !(and.flags & F.and)) return null;
  const before = tokens[at]!.gap === LINE ? undefined : tokens[at - 1];
  if (before?.kind === NUMBER || before?.kind === GLYPH || before?.word?.slot || before?.word?.denominator)
    return null;
  const end = (wordAt(tokens, at + 2)?.flags ?? 0) & F.article ? at + 4 : at + 3;
  const half = wordAt(tokens, end - 1);
  if (!half || !(half.flags & F.half) || !half.denominator) return null;
  const unit = tokens[at]!.lexicon.units.next!.get(tokens[at]!.key)?.unit;
  return unit ? { from: at, to: end, value: 1.5, kind: 'mixed', unit } : null;
}

/** A whole number with `and` and a fraction behind it; the fraction is of `noun`. */
function andFraction(tokens: Token[], core: Core, noun: number): Core {
  const word = wordAt(tokens, core.to);
  const sign = symbolAt(tokens, core.to, '&') || symbolAt(tokens, core.to, '+');
  if (!sign && !(word && word.flags & F.and)) return core;
  if (!Number.isInteger(core.value / noun) && noun === 1) return core;
  const fraction = properFraction(tokens, core.to + 1);
  if (!fraction) return core;
  return {
    ...core,
    to: fraction.end,
    value: core.value + times(fraction.value, noun),
    kind: 'mixed',
    takesOf: true,
    weak: false,
  };
}

function readHalf(tokens: Token[], at: number, word: Word): Core | null {
  const before = at > 0 && tokens[at]!.gap !== LINE ? wordAt(tokens, at - 1, true) : undefined;
  const behind = tokens[at + 1];
  const next = wordAt(tokens, at + 1);
  // `la mitad`, `la moitié` are halves whatever stands before them.
  if (word.denominator && before && before.flags & F.notHalfAfter) return null;
  if (next && next.flags & F.notHalfBefore) return null;
  const core: Core = { from: at, to: at + 1, value: 0.5, kind: 'fraction', takesOf: true };
  if (!(word.flags & F.halfNeedsNoun)) return core;
  if (!behind || behind.gap === LINE || behind.kind !== WORD) {
    // Alone between two signs, or on its line.
    return at === 0 || tokens[at]!.gap === LINE || tokens[at - 1]!.kind !== WORD ? core : null;
  }
  return next && next.flags & (F.common | F.and) && !beginsUnit(tokens, at + 1) ? null : core;
}

/** `a hundred`, `a third of`, `a half`, `a twenty-fifth`. */
function readFromArticle(tokens: Token[], at: number, word: Word): Reading {
  const behind = wordAt(tokens, at + 1);
  const thing = tokens[at + 1];
  if (
    thing?.kind === WORD &&
    thing.gap !== LINE &&
    thing.lexicon.units.next!.has(thing.key) &&
    !behind?.denominator
  )
    return { from: at, to: at + 1, value: 1, kind: 'words', weak: true, article: true };
  if (!behind || behind.language !== word.language) return null;
  if (behind.flags & F.half) {
    const half = readHalf(tokens, at + 1, behind);
    return half ? { ...half, from: at } : null;
  }
  if (behind.slot >= HUNDRED && !(behind.flags & F.onlyMultiplied))
    return readFromWords(tokens, at, at + 1, behind, true);
  if (behind.slot === UNIT || (behind.slot && tokens[at + 2]?.gap !== HYPHEN)) return null;
  const one = { value: 1, end: at + 1, whole: 0, behindAnd: 0, noun: 1, lastSlot: UNIT, weak: true };
  const made = denominate(tokens, one, word.language, true);
  if (made?.is === 'ordinal') return { skipTo: made.end };
  return made ? { from: at, to: made.end, value: made.value, kind: 'fraction', takesOf: true } : null;
}

/** `quarter of it`, `quarter inch`, `le tiers du bac`, `tercera parte`. */
function readLoneShare(tokens: Token[], at: number, word: Word): Reading {
  const next = wordAt(tokens, at + 1);
  if (next && next.flags & F.part)
    return { from: at, to: at + 2, value: 1 / word.denominator, kind: 'fraction', takesOf: true };
  if (!(word.flags & F.quarter)) return null;
  const before = at > 0 ? tokens[at - 1] : undefined;
  const isUnit = tokens[at + 1]?.kind === WORD && tokens[at]!.lexicon.units.next!.has(tokens[at + 1]!.key);
  if (
    word.language === 'en'
      ? (next && next.flags & F.of) || isUnit
      : before?.key === 'le' && next && next.flags & F.of
  )
    return { from: at, to: at + 1, value: 1 / word.denominator, kind: 'fraction', takesOf: true };
  return null;
}

function readFromWords(tokens: Token[], from: number, at: number, word: Word, general: boolean): Reading {
  const before = from > 0 && tokens[from]!.gap !== LINE ? wordAt(tokens, from - 1, true) : undefined;
  if (word.slot >= HUNDRED && from === at && before) {
    // `a few hundred`, `a couple of hundred`
    const vague = before.flags & F.of ? wordAt(tokens, from - 2, true) : before;
    if (vague && vague.flags & F.vagueBefore) return null;
  }
  const cardinal = readCardinal(tokens, at);
  if (!cardinal) return null;
  const { end } = cardinal;
  const made = denominate(tokens, cardinal, word.language, false);
  if (made?.is === 'ordinal') return { skipTo: made.end };
  if (made) {
    const kind = made.mixed ? 'mixed' : 'fraction';
    return { from, to: made.end, value: made.value, kind, others: made.others, takesOf: true };
  }
  const point = wordAt(tokens, end);
  if (point && point.flags & F.point && Number.isInteger(cardinal.value)) {
    const decimals = readDecimals(tokens, end, cardinal.value, general);
    if (decimals) return { from, to: decimals.end, value: decimals.value, kind: 'words' };
  }
  const noun = cardinal.lastSlot === SCALE || cardinal.lastSlot === COLLECTIVE;
  const core: Core = { from, to: end, value: cardinal.value, kind: 'words', takesOf: noun };
  core.weak = end === at + 1 && isWeak(tokens, at, word, before);
  if (end === at + 1 && word.flags & F.adjective && isAdjective(tokens, at, before)) return null;
  return andFraction(tokens, core, cardinal.noun);
}

/** An article, or a one that stands for a thing (`this one`). */
function isWeak(tokens: Token[], at: number, word: Word, before: Word | undefined): boolean {
  if (word.slot !== UNIT || word.value !== 1) return false;
  if (tokens.length === 1) return false;
  const next = wordAt(tokens, at + 1);
  if (word.flags & F.weakOne) {
    // `un o dos`: said as a number, for a number follows.
    const choice = next && next.flags & (F.to | F.or) && tokens[at + 2];
    if (before && before.flags & F.between) return false;
    return !(choice && (choice.kind === NUMBER || wordAt(tokens, at + 2)?.slot));
  }
  if (before && before.flags & F.pronounAfter) return true;
  return next !== undefined && (next.flags & F.pronounBefore) !== 0;
}

/** `un seau neuf`, `tout neuf`: new, not nine. */
function isAdjective(tokens: Token[], at: number, before: Word | undefined): boolean {
  if (before && before.flags & F.adjectiveAfter) return true;
  const noun = tokens[at - 1];
  const article = tokens[at - 2];
  if (!noun || !article || noun.kind !== WORD || noun.word?.slot || tokens[at]!.gap === LINE) return false;
  return (article.word?.flags ?? 0) % (F.determiner * 2) >= F.determiner;
}

/** `half a million`, `2.5 million` read from a fraction, `media docena`, `two and a half dozen`. */
function withScale(tokens: Token[], core: Core): Core {
  if (core.kind !== 'fraction' && core.kind !== 'mixed') return core;
  let at = core.to;
  let word = wordAt(tokens, at);
  if (word && word.flags & F.of && core.kind === 'fraction') word = wordAt(tokens, ++at);
  if (word && (word.flags & (F.article | F.weakOne)) !== 0 && core.kind === 'fraction')
    word = wordAt(tokens, ++at);
  if (!word || word.slot < HUNDRED || tokens[at]!.kind !== WORD) return core;
  return { ...core, to: at + 1, value: times(core.value, word.value), kind: 'words', takesOf: true };
}

/** `3 over 4`, `ten out of nine`, `trois sur quatre`; not `20 over 2 days`. */
function divided(tokens: Token[], core: Core, general: boolean): Core {
  const at = core.to;
  const next = tokens[at];
  if (!next || next.kind !== WORD || next.gap === LINE || core.kind === 'mixed') return core;
  const phrase = next.lexicon.over.find((words) => phraseAt(tokens, at, words));
  if (!phrase) return core;
  const from = at + phrase.length;
  const first = tokens[from];
  if (!first || first.gap === LINE || first.joined || (first.kind === NUMBER && !first.number)) return core;
  if (first.kind !== NUMBER && !first.word?.slot) return core;
  const under = first.kind === NUMBER ? readFromDigits(tokens, from, general) : readCardinal(tokens, from);
  if (!under || under.value === 0) return core;
  const to = 'to' in under ? under.to : under.end;
  const behind = tokens[to];
  if (behind && behind.gap !== LINE && (behind.kind === WORD || behind.kind === SYMBOL)) {
    const unit = behind.lexicon.units.next!.get(behind.key);
    if (unit && !(behind.kind === WORD && behind.word?.flags)) return core;
  }
  return { from: core.from, to, value: core.value / under.value, kind: 'fraction', takesOf: true };
}
