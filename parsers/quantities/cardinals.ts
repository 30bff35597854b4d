import {
  COLLECTIVE,
  F,
  HUNDRED,
  HUNDREDS,
  numberWordsOf,
  SCALE,
  TEEN,
  TENS,
  UNIT,
  type Word,
} from './lexicon.ts';
import { NUMBER } from './scan.ts';
import { HYPHEN, LINE, SYMBOL, type Token, WORD } from './tokens.ts';

/** A whole number in words, or digits with a scale word (`2 million`). `end` is the token behind it. */
export interface Cardinal {
  value: number;
  end: number;
  /** What stood before the last `and`, and what came behind it: `one hundred` and `two`. */
  whole: number;
  behindAnd: number;
  /** The last word, where it is a noun that a half may be a half of (`million`, `dozen`); else 1. */
  noun: number;
  /** Last part of the number: an ordinal may go on from it (`twenty third`). */
  lastSlot: number;
  /** The only word is one that is often an article. */
  weak: boolean;
}

/** Digits after a decimal, without the noise of binary fractions. */
const tidy = (value: number): number => (Number.isInteger(value) ? value : Number(value.toPrecision(15)));

/** `value` times a power of ten, or times a dozen, without the noise of binary fractions. */
export function times(value: number, factor: number): number {
  return tidy(value * factor);
}

/** The token at `at` if it is a word on the same line as what stands before it. */
export function wordAt(tokens: Token[], at: number, first = false): Word | undefined {
  const token = tokens[at];
  return token && token.kind === WORD && (first || token.gap !== LINE) ? token.word : undefined;
}

interface State {
  /** Finished parts, biggest scale first, with the scale of each. */
  parts: { value: number; scale: number }[];
  group: number;
  hasGroup: boolean;
  hundreds: boolean;
  tens: number;
  teenOfTen: boolean;
  ones: boolean;
}

const total = (state: State): number => state.parts.reduce((sum, part) => sum + part.value, state.group);

function clearGroup(state: State): void {
  state.group = 0;
  state.hasGroup = false;
  state.hundreds = false;
  state.tens = 0;
  state.teenOfTen = false;
  state.ones = false;
}

/** Whether the word may come next below a hundred; adds it if so. */
function addBelowHundred(state: State, word: Word, rules: Rules, afterAnd: boolean): boolean {
  const { slot, value } = word;
  if (state.ones) return false;
  if (slot === TENS) {
    if (state.tens) return false;
    state.tens = value;
  } else if (slot === TEEN) {
    if (state.tens && !rules.tensBeforeTeens.includes(state.tens)) return false;
    if (value === 10) {
      state.tens += 10;
      state.teenOfTen = true;
    } else state.ones = true;
  } else {
    if (value === 0) return false;
    if (state.teenOfTen && !(rules.tenBefore.includes(value) || (afterAnd && rules.andAfterTens === 'any')))
      return false;
    state.ones = true;
  }
  state.group += value;
  state.hasGroup = true;
  return true;
}

type Rules = {
  tensBeforeTeens: readonly number[];
  tenBefore: readonly number[];
  andAfterTens: 'any' | 'one' | 'never';
};

/** A denominator that a ten may be hyphened to: `thirty-seconds` are, halves are not. */
export function isShare(word: Word): boolean {
  return (
    word.slot === 0 && (word.denominator > 2 || (word.denominator === 2 && (word.flags & F.ordinal) !== 0))
  );
}

/** A ten with a denominator hyphened to it (`twenty-fifths`): the ten belongs to the denominator. */
function beginsDenominator(tokens: Token[], at: number): boolean {
  const next = tokens[at + 1];
  return next?.kind === WORD && next.gap === HYPHEN && next.word !== undefined && isShare(next.word);
}

/**
 * Reads the longest whole number in words from token `at`; null where none begins there. With `digits` the
 * number begins with those digits, already read, and a scale word must follow. Without `scales` it stops at
 * thousand.
 */
export function readCardinal(
  tokens: Token[],
  at: number,
  digits: number | null = null,
  scales = true,
): Cardinal | null {
  let language = digits === null ? (wordAt(tokens, at, true)?.language ?? null) : null;
  const state: State = {
    parts: [],
    group: digits ?? 0,
    hasGroup: digits !== null,
    hundreds: false,
    tens: 0,
    teenOfTen: false,
    ones: digits !== null,
  };
  let end = digits === null ? at : at + 1;
  let lastSlot = 0;
  let lastWord: Word | null = null;
  let count = 0;
  let noun = 1;
  let whole = 0;
  let behindAnd = 0;
  let afterAnd = false;
  let andBehindBig = false;
  let andEnd = -1;
  // Where to fall back to when `two hundred and three hundred` turns out to be two numbers.
  let fallback: { value: number; end: number; lastSlot: number } | null = null;

  for (;;) {
    if (lastSlot === TENS && !afterAnd && spacedHyphen(tokens, end)) end++;
    const word = wordAt(tokens, afterAnd ? andEnd : end, count === 0 && digits === null);
    if (!word) break;
    if (language !== null && word.language !== language && word.slot !== 0) break;
    const here = afterAnd ? andEnd : end;
    if (!afterAnd && count > 0 && word.flags & F.and && word.slot === 0) {
      if (!mayFollowAnd(tokens, end + 1, lastWord, state)) break;
      whole = total(state);
      andBehindBig = lastSlot >= HUNDREDS;
      afterAnd = true;
      andEnd = end + 1;
      continue;
    }
    const { slot, value } = word;
    if (slot === 0) break;
    const rules = numberWordsOf(word.language);
    if (slot === UNIT || slot === TEEN || slot === TENS) {
      if (slot === UNIT && value === 0) {
        if (count === 0 && digits === null)
          return { value: 0, end: at + 1, whole: 0, behindAnd: 0, noun: 1, lastSlot: UNIT, weak: false };
        break;
      }
      if (count > 0 && (slot === TENS || (slot === TEEN && value === 10)) && beginsDenominator(tokens, here))
        break;
      const next = wordAt(tokens, here + 1);
      if (word.flags & F.onlyMultiplied && slot === TENS && next?.slot !== UNIT) break;
      const joinsAnd = afterAnd;
      if (
        slot === UNIT &&
        value === 4 &&
        !state.tens &&
        !state.ones &&
        rules.fourTwenties &&
        next?.slot === TENS &&
        next.value === 20
      ) {
        state.tens = 80;
        state.group += 80;
        state.hasGroup = true;
        end = here + 2;
        lastSlot = TENS;
        lastWord = next;
      } else {
        if (!addBelowHundred(state, word, rules, joinsAnd)) break;
        end = here + 1;
        lastSlot = slot;
        lastWord = word;
      }
      if (whole) behindAnd = total(state) - whole;
    } else if (slot === HUNDREDS) {
      if (afterAnd || state.hundreds || state.tens || state.ones) break;
      state.group += value;
      state.hasGroup = true;
      state.hundreds = true;
      end = here + 1;
      lastSlot = slot;
      lastWord = word;
    } else if (slot === HUNDRED) {
      if (digits !== null && count === 0 && word.flags & F.notAfterDigits) break;
      if (!state.hasGroup && word.flags & F.onlyMultiplied) break;
      if (state.hundreds || (digits === null && state.group > 99) || (afterAnd && !state.hasGroup)) {
        if (fallback && (state.tens || state.ones))
          return done(fallback.value, fallback.end, fallback.lastSlot);
        break;
      }
      state.group = times(state.hasGroup ? state.group : 1, 100);
      state.hasGroup = true;
      state.hundreds = true;
      state.tens = 0;
      state.teenOfTen = false;
      state.ones = false;
      end = here + 1;
      lastSlot = slot;
      lastWord = word;
      whole = 0;
      behindAnd = 0;
      fallback = { value: total(state), end, lastSlot };
    } else if (slot === SCALE) {
      if (!scales || afterAnd) break;
      if (digits !== null && count === 0 && word.flags & F.notAfterDigits) break;
      const top = state.parts[state.parts.length - 1];
      if (!state.hasGroup && !top && word.flags & F.onlyMultiplied) break;
      if (top && state.hasGroup && top.scale === value) {
        if (fallback) return done(fallback.value, fallback.end, fallback.lastSlot);
        break;
      }
      // `two thousand and three million` are two numbers; `mil treinta y un millones` is one.
      if (top && top.scale < value && andBehindBig && behindAnd && fallback)
        return done(fallback.value, fallback.end, fallback.lastSlot);
      let below = state.hasGroup ? state.group : 0;
      while (state.parts.length && state.parts[state.parts.length - 1]!.scale <= value)
        below += state.parts.pop()!.value;
      if (!state.hasGroup && below === 0) below = 1;
      clearGroup(state);
      state.parts.push({ value: times(below, value), scale: value });
      end = here + 1;
      lastSlot = slot;
      lastWord = word;
      noun = value >= 1e6 ? value : 1;
      whole = 0;
      behindAnd = 0;
      fallback = { value: total(state), end, lastSlot };
      const more = digitsBelow(tokens, end, value);
      if (more !== null) {
        state.group = more;
        state.hasGroup = true;
        state.ones = true;
        end++;
      }
    } else if (slot === COLLECTIVE) {
      if (!scales || afterAnd) break;
      const sum = total(state);
      if (!sum && word.flags & F.onlyMultiplied) break;
      if (sum && word.value > 12 && lastWord && !(lastWord.slot === UNIT || lastWord.slot === TEEN)) break;
      return { ...done(times(sum || 1, value), here + 1, COLLECTIVE), noun: value };
    }
    if (slot !== SCALE) noun = 1;
    language ??= word.language;
    afterAnd = false;
    count++;
    const comma = commaInside(tokens, end, lastSlot);
    if (comma) end = comma;
  }
  if (count === 0) return null;
  // A comma or hyphen was stepped over, but no number came behind it.
  if (tokens[end - 1]?.kind === SYMBOL) end--;
  return done(total(state), end, lastSlot);

  function done(value: number, to: number, slot: number): Cardinal {
    const back =
      fallback !== null && to === fallback.end && value === fallback.value && slot === fallback.lastSlot;
    return {
      value,
      end: to,
      whole: back ? 0 : whole,
      behindAnd: back ? 0 : behindAnd,
      noun: slot === SCALE ? noun : 1,
      lastSlot: slot,
      weak: count === 1 && digits === null && ((lastWord?.flags ?? 0) & F.weakOne) !== 0,
    };
  }
}

/** Whether the number goes on behind an `and` (`hundred and five`, `vingt et un`, `treinta y dos`). */
function mayFollowAnd(tokens: Token[], at: number, last: Word | null, state: State): boolean {
  const next = wordAt(tokens, at);
  if (!next || !last || next.slot === 0 || next.language !== last.language) return false;
  const { andAfterHundred, andAfterTens } = numberWordsOf(next.language);
  if (last.slot === HUNDRED || last.slot === HUNDREDS || last.slot === SCALE) {
    if (state.tens || state.ones || andAfterHundred === 'never') return false;
    if (andAfterHundred === 'one') return next.slot === UNIT && next.value === 1;
    return (next.slot === UNIT && next.value > 0) || next.slot === TEEN || next.slot === TENS;
  }
  if (last.slot === TENS || (last.slot === TEEN && last.value === 10)) {
    if (andAfterTens === 'any') return next.slot === UNIT && next.value > 0;
    if (andAfterTens === 'one')
      return last.slot === TENS && (next.value === 1 || (state.tens === 60 && next.slot === TEEN));
  }
  return false;
}

/** `2 million 300 thousand`: digits that a smaller scale follows. */
function digitsBelow(tokens: Token[], at: number, scale: number): number | null {
  const token = tokens[at];
  const next = wordAt(tokens, at + 1);
  if (token?.kind !== NUMBER || !token.number?.plain || token.gap === LINE) return null;
  const { value } = token.number;
  if (value >= 1000) return null;
  if (next?.slot === SCALE ? next.value < scale : next?.slot === HUNDRED && value < 10) return value;
  // `3 mil 500`
  return scale === 1000 && token.key.length === 3 ? value : null;
}

/** `fifty - two` */
function spacedHyphen(tokens: Token[], at: number): boolean {
  const hyphen = tokens[at];
  if (hyphen?.kind !== SYMBOL || hyphen.key !== '-' || hyphen.gap === LINE) return false;
  const next = wordAt(tokens, at + 1);
  return next?.slot === UNIT && next.value > 0;
}

/** The token behind a comma inside a number (`two thousand, five hundred`); 0 where there is none. */
function commaInside(tokens: Token[], end: number, lastSlot: number): number {
  const comma = tokens[end];
  if (lastSlot !== SCALE || comma?.kind !== SYMBOL || comma.key !== ',') return 0;
  const next = wordAt(tokens, end + 1);
  if (!next || next.slot === 0 || next.slot > HUNDREDS) return 0;
  const after = wordAt(tokens, end + 2);
  return next.slot === HUNDREDS || (after && after.slot >= HUNDRED) ? end + 1 : 0;
}
