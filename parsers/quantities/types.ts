import type { Language, Unit } from '#records';

/** A number seen in a text: `start` and `end` (exclusive) are string indices, `text` is the slice. */
export interface NumberSpan {
  start: number;
  end: number;
  text: string;
  value: number;
  /** `mixed` is a whole number with a fraction (`2 1/2`, `two and a half`); `2 million` is `words`. */
  kind: 'digits' | 'words' | 'fraction' | 'mixed';
  /** Every plausible value, likeliest first, where there is more than one (`1,250` over two languages). */
  ambiguous?: number[];
  /** The decimal mark was a comma (`66,5`). */
  decimalComma?: true;
  /** Touches a letter, or a hyphen after a letter (`B12`, `covid-19`): more likely a name than a number. */
  joined?: true;
  /** The same digits read as a list (`135,140,138`, `150 200`), where that reading exists too. */
  parts?: NumberSpan[];
}

/** A number with its unit as said, nothing converted; `unit` is null for a bare number. */
export interface Quantity {
  start: number;
  end: number;
  text: string;
  value: number;
  unit: Unit | null;
  /** Upper end of a range (`135-140`), in the same unit; it may be the smaller one (`61.5-15.5`). */
  upTo?: number;
  /** Degrees with no scale named (`60 degrees`, `60°`): a temperature whose unit the site must tell. */
  degrees?: true;
  ambiguous?: number[];
}

export interface QuantityOptions {
  /** `joined`: one quantity with `upTo`; `split`: two quantities. */
  ranges?: 'joined' | 'split';
  /**
   * Read as in any text, not as on a compost site: `10k` is 10,000, `10M` ten million, and `dos con cinco` is
   * 2.5 whatever follows.
   */
  general?: boolean;
}

/** The number words of one language, as data; keys are lower case and without accents. */
export interface NumberWords {
  language: Language;
  zeros: string[];
  /** 1 to 9. */
  units: Record<string, number>;
  /** Whole words for two digits that end in no round ten (10 to 19, `veintidos`). */
  teens: Record<string, number>;
  tens: Record<string, number>;
  /** Whole words for round hundreds (`cien`, `doscientos`). */
  hundreds: Record<string, number>;
  /** Words that multiply by a hundred. */
  hundred: string[];
  scales: Record<string, number>;
  /** Nouns for a round count: `dozen`. */
  collectives: Record<string, number>;
  /** Of the above, those that mean nothing without a number before them. */
  onlyMultiplied: string[];
  /** Of the above, those that no digits stand before (`5 cents` is money). */
  notAfterDigits: string[];
  /** `a` hundred. Not those that are also the number one. */
  articles: string[];
  /** Ones that are more often an article. */
  weakOnes: string[];
  /** A one that stands after (or before) one of these words is a pronoun. */
  pronounAfter: string[];
  pronounBefore: string[];
  and: string[];
  /** Where `and` may stand inside a whole number: before which digits after a hundred or a scale, after a ten. */
  andAfterHundred: 'any' | 'one' | 'never';
  andAfterTens: 'any' | 'one' | 'never';
  /** Tens that 10 to 19 may follow (`soixante-dix`). */
  tensBeforeTeens: number[];
  /** Four times twenty is eighty. */
  fourTwenties: boolean;
  /** Ten with one of these after it is a teen (`dix-sept`). */
  tenBefore: number[];
  minus: string[];
  /** Words after which `minus` is something else (`au moins`, `al menos`). */
  notMinusAfter: string[];
  /** Decimal marks said aloud. */
  point: string[];
  /** Of these, those that are decimal marks between words only. */
  pointBetweenWords: string[];
  over: string[];
  of: string[];
  /** Words between the ends of a range, between two choices, and before a range with `and`. */
  to: string[];
  or: string[];
  between: string[];
  /** Denominators, singular and plural. */
  denominators: Record<string, number>;
  pluralDenominators: Record<string, number>;
  halves: string[];
  /** Halves that need a thing halved right behind them. */
  halvesNeedNoun: string[];
  quarters: string[];
  notHalfAfter: string[];
  notHalfBefore: string[];
  /** Makes a denominator of any number before it (`treinta avos`). */
  denominatorMakers: string[];
  /** Words that may close a fraction (`tercera parte`). */
  partWords: string[];
  ordinals: string[];
  /** Glued to digits they make an ordinal (`5th`). */
  ordinalSuffixes: string[];
  clockSuffixes: string[];
  /** A hundred after one of these is vague (`a few hundred`). */
  vagueBefore: string[];
  /** Number words that are adjectives after a noun with a singular determiner (`un seau neuf`). */
  adjectives: string[];
  adjectiveAfter: string[];
  determiners: string[];
  /** How `1.250` and `1,250` are read, likeliest first. */
  pointThousands: ('group' | 'decimal')[];
  commaThousands: ('group' | 'decimal')[];
  spaceGroups: boolean;
  /** Everyday words, by which the language of a sentence is told. */
  common: string[];
  /** Ordinary words here that are number or unit words elsewhere. */
  ordinary: string[];
}

/** Unit words of one language: phrase (lower case, no accents) to unit; null for a unit the log does not know. */
export interface UnitWords {
  language: Language;
  units: Record<string, Unit | null>;
  /** Words for degrees without a scale. */
  degrees: string[];
  /** Abbreviations that are also ordinary words: units only where glued or where no word follows. */
  shy: string[];
  /** Words that may stand between number and unit without changing it (`US gallons`). */
  fillers: string[];
  /** Said behind a temperature: it is negative. */
  belowZero: string[];
  /** `per`, before a unit of time: a speed is no length. */
  per: string[];
}
