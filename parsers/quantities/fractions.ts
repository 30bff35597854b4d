import { type Cardinal, isShare, readCardinal, wordAt } from './cardinals.ts';
import { F, HUNDRED, numberWordsOf, SCALE, TEEN, TENS, UNIT, type Word } from './lexicon.ts';
import { GLYPH, glyphValue, NUMBER } from './scan.ts';
import { GLUED, HYPHEN, LINE, SYMBOL, type Token, WORD } from './tokens.ts';

/** A fraction; `end` is the token behind it. */
export interface Fraction {
  value: number;
  end: number;
}

/** What stands behind a whole number: it makes a fraction of it, or an ordinal. */
export type Denominated =
  | { is: 'fraction'; value: number; end: number; mixed: boolean; others: number[] }
  | { is: 'ordinal'; end: number }
  | null;

interface Denominator {
  value: number;
  plural: boolean;
  end: number;
  word: Word;
  compound: boolean;
}

const EPSILON = 1e-12;

export function symbolAt(tokens: Token[], at: number, key: string): boolean {
  const token = tokens[at];
  return token?.kind === SYMBOL && token.key === key && token.gap !== LINE;
}

/** Whether these words stand at `at`, on one line. */
export function phraseAt(tokens: Token[], at: number, words: readonly string[]): boolean {
  for (let i = 0; i < words.length; i++) {
    const token = tokens[at + i];
    if (token?.kind !== WORD || token.key !== words[i] || token.gap === LINE) return false;
  }
  return true;
}

/** A plain whole number in digits on the line. */
function plainAt(tokens: Token[], at: number): number | null {
  const token = tokens[at];
  return token?.kind === NUMBER && token.number?.plain ? token.number.value : null;
}

/** `3/4` at `at`, glued or with a space on both sides of the stroke; the denominator is not 0. */
export function slashFraction(tokens: Token[], at: number): (Fraction & { proper: boolean }) | null {
  const over = plainAt(tokens, at);
  if (over === null || !symbolAt(tokens, at + 1, '/')) return null;
  const under = plainAt(tokens, at + 2);
  if (!under || tokens[at + 2]!.gap === LINE) return null;
  if (tokens[at + 1]!.gap === GLUED && tokens[at + 2]!.gap !== GLUED && tokens[at + 3]?.gap === GLUED)
    return null;
  // A third stroke makes it a list or a path.
  if (symbolAt(tokens, at + 3, '/') && tokens[at + 3]!.gap === GLUED && tokens[at + 4]?.kind === NUMBER)
    return null;
  return { value: over / under, end: at + 3, proper: over < under };
}

/** Whether the word at `at` is a unit, or with the next one the beginning of one (`por ciento`). */
export function beginsUnit(tokens: Token[], at: number): boolean {
  const node = tokens[at]!.lexicon.units.next!.get(tokens[at]!.key);
  if (!node) return false;
  const next = tokens[at + 1];
  return node.unit !== undefined || node.degrees || (next !== undefined && node.next?.has(next.key) === true);
}

/** Whether a singular ordinal behind an article is a share (`a third of it`) and no rank (`a third cart`). */
function sharesBefore(tokens: Token[], at: number): boolean {
  const token = tokens[at];
  if (!token || token.gap === LINE || token.kind !== WORD) return true;
  const word = token.word;
  if (word && (word.slot !== 0 || word.flags & (F.of | F.common | F.and | F.to | F.or | F.per | F.part)))
    return true;
  return token.lexicon.units.next!.has(token.key);
}

function denominatorAt(tokens: Token[], at: number, language: Word['language']): Denominator | null {
  const word = wordAt(tokens, at);
  if (!word || word.language !== language) return null;
  if (word.denominator && word.slot === 0 && !(word.flags & F.ordinal))
    return { value: word.denominator, plural: word.plural, end: at + 1, word, compound: false };
  const next = wordAt(tokens, at + 1);
  if (next && next.language === language && tokens[at + 1]!.gap === HYPHEN && isShare(next)) {
    const small = next.denominator < 10 && word.slot === TENS;
    const big =
      next.denominator >= 100 &&
      (word.slot === UNIT || word.slot === TEEN || word.slot === TENS || word.slot === HUNDRED);
    if (small || big) {
      const value = small ? word.value + next.denominator : word.value * next.denominator;
      return { value, plural: next.plural, end: at + 2, word: next, compound: true };
    }
  }
  // `treinta y dosavos`, `treinta avos`: only Spanish makes denominators of any number.
  if (numberWordsOf(language).denominatorMakers.length === 0 || word.slot === 0) return null;
  const last = wordAt(tokens, at + 2);
  if (word.slot === TENS && next && next.flags & F.and && last?.denominator && last.denominator < 10)
    return {
      value: word.value + last.denominator,
      plural: last.plural,
      end: at + 3,
      word: last,
      compound: true,
    };
  const cardinal = readCardinal(tokens, at);
  const maker = cardinal ? wordAt(tokens, cardinal.end) : undefined;
  return cardinal && maker && maker.flags & F.maker
    ? { value: cardinal.value, plural: true, end: cardinal.end + 1, word: maker, compound: true }
    : null;
}

/** A number and the ordinal behind it make an ordinal: `twenty third`, `two hundredth`, `hundred fifth`. */
function composes(cardinal: Cardinal, denominator: Denominator): boolean {
  const { value } = denominator;
  const { lastSlot } = cardinal;
  if (denominator.compound) return lastSlot === HUNDRED || lastSlot === SCALE;
  if (lastSlot === HUNDRED || lastSlot === SCALE) return true;
  if (value >= 100) return cardinal.value !== 1;
  if (lastSlot !== TENS) return false;
  return value < 10 || numberWordsOf(denominator.word.language).tensBeforeTeens.length > 0;
}

/** What the words behind a whole number make of it. `article`: the one is an article. */
export function denominate(
  tokens: Token[],
  cardinal: Cardinal,
  language: Word['language'],
  article: boolean,
): Denominated {
  const { end } = cardinal;
  const next = wordAt(tokens, end);
  if (!next) return null;
  if (next.flags & F.and) {
    const behind = wordAt(tokens, end + 1);
    const ranks = cardinal.lastSlot === TENS || cardinal.lastSlot === HUNDRED || cardinal.lastSlot === SCALE;
    const ordinal =
      behind &&
      behind.language === language &&
      (behind.flags & F.ordinal || (behind.denominator && !behind.plural));
    if (ranks && ordinal && !(behind.flags & (F.half | F.quarter))) return { is: 'ordinal', end: end + 2 };
    return null;
  }
  if (next.flags & F.ordinal && next.language === language && cardinal.lastSlot >= TENS)
    return { is: 'ordinal', end: end + 1 };
  const denominator = denominatorAt(tokens, end, language);
  if (!denominator) return null;
  const { value, behindAnd, whole } = cardinal;
  const { word, plural } = denominator;
  const hyphenated = tokens[end]!.gap === HYPHEN && !denominator.compound;
  if (hyphenated && cardinal.lastSlot === TENS && cardinal.value < 100 && denominator.value < 20)
    return { is: 'ordinal', end: denominator.end };
  let close = denominator.end;
  const part = wordAt(tokens, close);
  if (part && part.flags & F.part) close++;
  const alone = word.flags & (F.half | F.quarter) || close > denominator.end;
  if (!plural) {
    if (value === 1) {
      // `una media de 55` is a mean.
      if (word.flags & F.halfNeedsNoun && (wordAt(tokens, close)?.flags ?? 0) & (F.notHalfBefore | F.of))
        return null;
      if ((article || cardinal.weak) && !alone && !sharesBefore(tokens, close))
        return { is: 'ordinal', end: close };
    } else if (behindAnd !== 1) {
      if (word.flags & F.half) return null;
      if (composes(cardinal, denominator)) return { is: 'ordinal', end: close };
    }
  }
  if (
    behindAnd > 0 &&
    behindAnd < denominator.value &&
    !(behindAnd === 1 && plural && word.denominator !== 3)
  ) {
    const rules = numberWordsOf(language);
    // Where the `and` of a whole number is the same word, `treinta y dos tercios` is 32/3.
    if (rules.andAfterTens === 'never' || behindAnd === 1) {
      if (!(behindAnd === 1 && plural && rules.andAfterTens !== 'one')) {
        const split = whole + behindAnd / denominator.value;
        return {
          is: 'fraction',
          value: split,
          end: close,
          mixed: true,
          others: [value / denominator.value],
        };
      }
    }
  }
  return { is: 'fraction', value: value / denominator.value, end: close, mixed: false, others: [] };
}

/** The fraction that may follow `and`: below one; `½`, `3/4`, `a half`, `three quarters`, `y cuarto`, `et demie`. */
export function properFraction(tokens: Token[], at: number): Fraction | null {
  const token = tokens[at];
  if (!token || token.gap === LINE) return null;
  if (token.kind === GLYPH) return { value: glyphValue(token), end: at + 1 };
  if (token.kind === NUMBER) {
    const fraction = slashFraction(tokens, at);
    return fraction?.proper ? fraction : null;
  }
  const word = wordAt(tokens, at);
  if (!word) return null;
  if (word.flags & F.half && word.denominator) {
    // `two dozen and half a dozen` are two numbers.
    const next = wordAt(tokens, at + 1);
    if (next && next.flags & F.article) return null;
    return { value: 1 / word.denominator, end: at + 1 };
  }
  const article = (word.flags & F.article) !== 0;
  if (article) {
    const denominator = denominatorAt(tokens, at + 1, word.language);
    return denominator && !denominator.plural ? { value: 1 / denominator.value, end: denominator.end } : null;
  }
  if (word.flags & F.quarter && word.slot === 0) return { value: 1 / word.denominator, end: at + 1 };
  if (word.slot === 0) return null;
  const cardinal = readCardinal(tokens, at);
  if (!cardinal) return null;
  const made = denominate(tokens, cardinal, word.language, false);
  if (made?.is !== 'fraction' || made.value > 1 - EPSILON || made.mixed) return null;
  return { value: made.value, end: made.end };
}
