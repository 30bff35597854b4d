import type { Language, Unit } from '#records';
import { enNumbers } from '../languages/en/numbers.ts';
import { enUnits } from '../languages/en/units.ts';
import { esNumbers } from '../languages/es/numbers.ts';
import { esUnits } from '../languages/es/units.ts';
import { frNumbers } from '../languages/fr/numbers.ts';
import { frUnits } from '../languages/fr/units.ts';
import { DEGREE_SIGNS, UNIT_SIGNS } from './symbols.ts';
import type { NumberWords, UnitWords } from './types.ts';

const NUMBERS: Record<Language, NumberWords> = { en: enNumbers, fr: frNumbers, es: esNumbers };
const UNITS: Record<Language, UnitWords> = { en: enUnits, fr: frUnits, es: esUnits };

/** What a word may be inside a whole number. */
export const UNIT = 1;
export const TEEN = 2;
export const TENS = 3;
export const HUNDREDS = 4;
export const HUNDRED = 5;
export const SCALE = 6;
export const COLLECTIVE = 7;

/** What a word may do around numbers. */
export const F = {
  article: 1 << 0,
  weakOne: 1 << 1,
  onlyMultiplied: 1 << 2,
  notAfterDigits: 1 << 3,
  and: 1 << 4,
  minus: 1 << 5,
  notMinusAfter: 1 << 6,
  point: 1 << 7,
  pointBetweenWords: 1 << 8,
  of: 1 << 9,
  to: 1 << 10,
  half: 1 << 11,
  halfNeedsNoun: 1 << 12,
  quarter: 1 << 13,
  notHalfAfter: 1 << 14,
  notHalfBefore: 1 << 15,
  maker: 1 << 16,
  part: 1 << 17,
  ordinal: 1 << 18,
  clock: 1 << 19,
  vagueBefore: 1 << 20,
  adjective: 1 << 21,
  adjectiveAfter: 1 << 22,
  determiner: 1 << 23,
  pronounAfter: 1 << 24,
  pronounBefore: 1 << 25,
  common: 1 << 26,
  filler: 1 << 27,
  per: 1 << 28,
  suffix: 1 << 29,
  or: 1 << 30,
  between: 1 << 31,
} as const;

export interface Word {
  language: Language;
  slot: number;
  value: number;
  denominator: number;
  /** The denominator's form is the plural, or has one form for both. */
  plural: boolean;
  flags: number;
}

/** A tree of unit phrases; `unit` is undefined where the phrase is not complete yet. */
export interface UnitNode {
  unit: Unit | null | undefined;
  degrees: boolean;
  shy: boolean;
  next: Map<string, UnitNode> | null;
}

/** All words for an ordered list of languages, of which the first wins. */
export interface Lexicon {
  first: NumberWords;
  languages: Language[];
  words: Map<string, Word>;
  /** Phrases of several words that divide (`out of`). */
  over: string[][];
  /** Phrases that make a temperature negative. */
  belowZero: string[][];
  units: UnitNode;
}

const FLAG_LISTS: [keyof typeof F, keyof NumberWords][] = [
  ['article', 'articles'],
  ['weakOne', 'weakOnes'],
  ['onlyMultiplied', 'onlyMultiplied'],
  ['notAfterDigits', 'notAfterDigits'],
  ['and', 'and'],
  ['minus', 'minus'],
  ['notMinusAfter', 'notMinusAfter'],
  ['point', 'point'],
  ['pointBetweenWords', 'pointBetweenWords'],
  ['of', 'of'],
  ['to', 'to'],
  ['or', 'or'],
  ['between', 'between'],
  ['half', 'halves'],
  ['halfNeedsNoun', 'halvesNeedNoun'],
  ['quarter', 'quarters'],
  ['notHalfAfter', 'notHalfAfter'],
  ['notHalfBefore', 'notHalfBefore'],
  ['maker', 'denominatorMakers'],
  ['part', 'partWords'],
  ['ordinal', 'ordinals'],
  ['clock', 'clockSuffixes'],
  ['vagueBefore', 'vagueBefore'],
  ['adjective', 'adjectives'],
  ['adjectiveAfter', 'adjectiveAfter'],
  ['determiner', 'determiners'],
  ['pronounAfter', 'pronounAfter'],
  ['pronounBefore', 'pronounBefore'],
  ['common', 'common'],
  ['suffix', 'ordinalSuffixes'],
];

/** A number word is itself; only the words about it are hidden by a language that comes first. */
function wordsOf(language: Language): Map<string, Word> {
  const data = NUMBERS[language];
  const words = new Map<string, Word>();
  const get = (key: string): Word => {
    let word = words.get(key);
    if (!word) {
      word = { language, slot: 0, value: 0, denominator: 0, plural: false, flags: 0 };
      words.set(key, word);
    }
    return word;
  };
  const slot = (table: Record<string, number>, kind: number) => {
    for (const [key, value] of Object.entries(table)) Object.assign(get(key), { slot: kind, value });
  };
  slot(Object.fromEntries(data.zeros.map((zero) => [zero, 0])), UNIT);
  slot(data.units, UNIT);
  slot(data.teens, TEEN);
  slot(data.tens, TENS);
  slot(data.hundreds, HUNDREDS);
  slot(Object.fromEntries(data.hundred.map((word) => [word, 100])), HUNDRED);
  slot(data.scales, SCALE);
  slot(data.collectives, COLLECTIVE);
  for (const [key, value] of Object.entries(data.denominators)) get(key).denominator = value;
  for (const [key, value] of Object.entries(data.pluralDenominators))
    Object.assign(get(key), { denominator: value, plural: true });
  for (const [flag, list] of FLAG_LISTS) for (const key of data[list] as string[]) get(key).flags |= F[flag];
  for (const key of UNITS[language].fillers) get(key).flags |= F.filler;
  for (const key of UNITS[language].per) get(key).flags |= F.per;
  return words;
}

const emptyNode = (): UnitNode => ({ unit: undefined, degrees: false, shy: false, next: null });

function growUnits(root: UnitNode, phrase: string): UnitNode {
  let node = root;
  for (const key of phrase.split(' ')) {
    node.next ??= new Map();
    let next = node.next.get(key);
    if (!next) {
      next = emptyNode();
      node.next.set(key, next);
    }
    node = next;
  }
  return node;
}

function unitTree(languages: Language[]): UnitNode {
  const root = emptyNode();
  for (const [phrase, unit] of Object.entries(UNIT_SIGNS)) growUnits(root, phrase).unit = unit;
  for (const sign of DEGREE_SIGNS) growUnits(root, sign).degrees = true;
  for (const [index, language] of languages.entries()) {
    const hidden = index === 0 ? new Set<string>() : new Set(NUMBERS[languages[0]!].ordinary);
    const { units, degrees, shy } = UNITS[language];
    for (const [phrase, unit] of Object.entries(units)) {
      if (hidden.has(phrase)) continue;
      const node = growUnits(root, phrase);
      if (node.unit === undefined) {
        node.unit = unit;
        node.shy = shy.includes(phrase);
      }
    }
    for (const word of degrees) growUnits(root, word).degrees = true;
  }
  return root;
}

const known = new Map<string, Lexicon>();

/** The words of these languages, of which the first wins where one word means two things. */
export function lexiconOf(languages: readonly Language[]): Lexicon {
  const name = languages.length === 1 ? languages[0]! : languages.join();
  let made = known.get(name);
  if (!made) {
    made = makeLexicon([...languages]);
    known.set(name, made);
  }
  return made;
}

function makeLexicon(languages: Language[]): Lexicon {
  const first = NUMBERS[languages[0]!];
  const words = wordsOf(first.language);
  for (const language of languages.slice(1)) {
    for (const [key, word] of wordsOf(language)) {
      if (!words.has(key) && !first.ordinary.includes(key)) words.set(key, word);
    }
  }
  const over = languages.flatMap((language) => NUMBERS[language].over.map((phrase) => phrase.split(' ')));
  const belowZero = languages.flatMap((language) =>
    UNITS[language].belowZero.map((phrase) => phrase.split(' ')),
  );
  return { first, languages, words, over, belowZero, units: unitTree(languages) };
}

const ALL: Language[] = ['en', 'fr', 'es'];
let votes: Map<string, number> | null = null;

/** Bit i is set for the words of language i, by which the language of a sentence is told. */
export function votesOf(key: string): number {
  if (!votes) {
    votes = new Map();
    for (const [index, language] of ALL.entries()) {
      const { units, degrees } = UNITS[language];
      const keys = [...wordsOf(language).entries()]
        .filter(
          ([, word]) => word.slot || word.denominator || word.flags & (F.common | F.and | F.of | F.article),
        )
        .map(([word]) => word);
      for (const word of [...keys, ...Object.keys(units), ...degrees]) {
        votes.set(word, (votes.get(word) ?? 0) | (1 << index));
      }
    }
  }
  return votes.get(key) ?? 0;
}

const BY_BITS: Language[][] = Array.from({ length: 8 }, (_, bits) =>
  ALL.filter((_, index) => bits & (1 << index)),
);

/** The languages of a set of bits. */
export const languageOfVotes = (bits: number): readonly Language[] => BY_BITS[bits]!;

export const numberWordsOf = (language: Language): NumberWords => NUMBERS[language];

/** What a token has before the scan: no words. */
export const NO_LEXICON: Lexicon = {
  first: enNumbers,
  languages: [],
  words: new Map(),
  over: [],
  belowZero: [],
  units: emptyNode(),
};
