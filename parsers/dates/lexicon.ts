// The date words of a site's languages in one table, made once for each set of languages.
import { datesEn } from '../languages/en/dates.ts';
import { datesEs } from '../languages/es/dates.ts';
import { datesFr } from '../languages/fr/dates.ts';
import type { DateToken, DateWords } from './words.ts';

/** Phrases by their first word, the longest first. */
export type Phrases<T> = ReadonlyMap<
  string,
  readonly { readonly words: readonly string[]; readonly value: T }[]
>;

type NamedDay = { readonly back: number; readonly isEvening: boolean };
export type NamedWeekday = {
  readonly weekday: number;
  /** `thursdays bucket`: only before what it belongs to. */
  readonly isOwner?: boolean;
  readonly isShort: boolean;
  readonly isRisky: boolean;
  readonly entryWords: ReadonlySet<string>;
};
type NamedMonth = { readonly month: number; readonly isRisky: boolean };

export type DateLexicon = {
  readonly days: Phrases<NamedDay>;
  readonly partsOfDay: Phrases<boolean>;
  readonly lastWeek: Phrases<true>;
  readonly periods: Phrases<true>;
  readonly agoParts: ReadonlySet<string>;
  readonly weekdays: ReadonlyMap<string, NamedWeekday>;
  readonly months: ReadonlyMap<string, NamedMonth>;
  readonly afterNoMonth: ReadonlySet<string>;
  readonly numbers: ReadonlyMap<string, number>;
  readonly ordinals: ReadonlyMap<string, number>;
  readonly dayWords: Phrases<number>;
  readonly ordinalEndings: ReadonlySet<string>;
  readonly before: ReadonlySet<string>;
  readonly beforeDay: Phrases<true>;
  readonly afterNoDay: ReadonlySet<string>;
  readonly lastBefore: Phrases<true>;
  readonly lastAfter: Phrases<true>;
  readonly nextBefore: Phrases<true>;
  readonly nextAfter: Phrases<true>;
  readonly current: ReadonlySet<string>;
  readonly joiners: ReadonlySet<string>;
  readonly agoBefore: Phrases<true>;
  readonly agoAfter: Phrases<true>;
  readonly units: ReadonlyMap<string, 'minute' | 'hour' | 'day' | 'week' | 'month'>;
  readonly clockSure: Phrases<true>;
  readonly clockSureOfOne: Phrases<true>;
  readonly clockUnsure: ReadonlySet<string>;
  readonly halves: Phrases<'am' | 'pm'>;
  readonly hourWords: Phrases<true>;
  readonly namedTimes: Phrases<number>;
  readonly minutesAfter: Phrases<number>;
  readonly minutesBefore: Phrases<number>;
  readonly durations: ReadonlySet<string>;
  readonly places: ReadonlySet<string>;
  readonly measured: ReadonlySet<string>;
  readonly quantityUnits: ReadonlySet<string>;
  readonly leftover: ReadonlySet<string>;
  /** Every word that a day or a time can begin with, and every word or mark that can follow its first figure. */
  readonly opening: ReadonlySet<string>;
  readonly following: ReadonlySet<string>;
};

const joining = new Set(['-', "'", '’', '.', '‑', 'ʼ', '`']);

const byLanguage: Readonly<Record<string, DateWords>> = { en: datesEn, fr: datesFr, es: datesEs };

function phrases<T>(entries: Iterable<readonly [string, T]>): Phrases<T> {
  const table = new Map<string, { words: string[]; value: T }[]>();
  for (const [phrase, value] of entries) {
    const words = phrase.split(' ');
    const same = table.get(words[0]!);
    if (same === undefined) table.set(words[0]!, [{ words, value }]);
    else same.push({ words, value });
  }
  for (const same of table.values()) same.sort((a, b) => b.words.length - a.words.length);
  return table;
}

const marked = (list: readonly string[]): [string, true][] => list.map((phrase) => [phrase, true]);

function build(languages: readonly string[]): DateLexicon {
  const all = languages.flatMap((language) => byLanguage[language] ?? []);
  const weekdays = new Map<string, NamedWeekday>();
  const months = new Map<string, NamedMonth>();
  const everyEntryWord = new Set(all.flatMap((words) => words.entryWords));
  for (const words of all) {
    const own = new Set(words.entryWords);
    const isElsewhere = (word: string): boolean =>
      all.some((other) => other !== words && other.noWeekdays.includes(word));
    const add = (lists: readonly (readonly string[])[], isShort: boolean, isRisky: boolean): void => {
      lists.forEach((list, weekday) => {
        for (const word of list) {
          const entryWords = isElsewhere(word) ? own : everyEntryWord;
          weekdays.set(word, { weekday, isShort, isRisky, entryWords });
        }
      });
    };
    add(words.weekdays, false, false);
    add(words.shortWeekdays, true, false);
    add(words.riskyWeekdays, true, true);
    words.ownerWeekdays?.forEach((word, weekday) => {
      weekdays.set(word, { weekday, isShort: true, isRisky: true, isOwner: true, entryWords: own });
    });
    words.months.forEach((list, i) => {
      for (const word of list)
        months.set(word, { month: i + 1, isRisky: months.get(word)?.isRisky ?? false });
    });
    for (const [word, month] of Object.entries(words.riskyMonths)) months.set(word, { month, isRisky: true });
  }
  const entries = <T>(pick: (words: DateWords) => Readonly<Record<string, T>>): [string, T][] =>
    all.flatMap((words) => Object.entries(pick(words)));
  const list = (pick: (words: DateWords) => readonly string[]): string[] => all.flatMap(pick);
  const lexicon = {
    days: phrases([
      ...entries((w) => w.days).map(([p, back]): [string, NamedDay] => [p, { back, isEvening: false }]),
      ...entries((w) => w.evenings).map(([p, back]): [string, NamedDay] => [p, { back, isEvening: true }]),
    ]),
    partsOfDay: phrases(entries((w) => w.partsOfDay)),
    lastWeek: phrases(marked(list((w) => w.lastWeek))),
    agoParts: new Set(list((w) => w.ago.parts)),
    periods: phrases(marked(list((w) => w.periods))),
    weekdays,
    months,
    afterNoMonth: new Set(list((w) => w.afterNoMonth)),
    numbers: new Map(entries((w) => w.numbers)),
    ordinals: new Map(entries((w) => w.ordinals)),
    dayWords: phrases(entries((w) => w.dayWords)),
    ordinalEndings: new Set(list((w) => w.ordinalEndings)),
    before: new Set(list((w) => w.before)),
    beforeDay: phrases(marked(list((w) => w.beforeDay))),
    afterNoDay: new Set(list((w) => w.afterNoDay)),
    lastBefore: phrases(marked(list((w) => w.last.before))),
    lastAfter: phrases(marked(list((w) => w.last.after))),
    nextBefore: phrases(marked(list((w) => w.next.before))),
    nextAfter: phrases(marked(list((w) => w.next.after))),
    current: new Set(list((w) => w.current)),
    joiners: new Set(list((w) => w.joiners)),
    agoBefore: phrases(marked(list((w) => w.ago.before))),
    agoAfter: phrases(marked(list((w) => w.ago.after))),
    units: new Map(entries((w) => w.units)),
    clockSure: phrases(marked(list((w) => w.clock.sure))),
    clockSureOfOne: phrases(marked(list((w) => w.clock.sureOfOne))),
    clockUnsure: new Set(list((w) => w.clock.unsure)),
    halves: phrases([
      ...list((w) => w.clock.am).map((p): [string, 'am' | 'pm'] => [p, 'am']),
      ...list((w) => w.clock.pm).map((p): [string, 'am' | 'pm'] => [p, 'pm']),
    ]),
    hourWords: phrases(marked(list((w) => w.clock.hourWords))),
    namedTimes: phrases(entries((w) => w.clock.named)),
    minutesAfter: phrases(entries((w) => w.clock.minutesAfter)),
    minutesBefore: phrases(entries((w) => w.clock.minutesBefore)),
    durations: new Set(list((w) => w.clock.durations)),
    places: new Set(list((w) => w.places)),
    measured: new Set(list((w) => w.measured)),
    quantityUnits: new Set(list((w) => w.quantityUnits)),
    leftover: new Set(list((w) => w.leftover)),
  };
  const first = (...tables: readonly { keys(): Iterable<string> }[]): Set<string> =>
    new Set(tables.flatMap((table) => [...table.keys()]));
  return {
    ...lexicon,
    opening: first(
      lexicon.before,
      lexicon.beforeDay,
      lexicon.days,
      lexicon.periods,
      lexicon.partsOfDay,
      lexicon.agoBefore,
      lexicon.numbers,
      lexicon.joiners,
      lexicon.dayWords,
      lexicon.ordinals,
      lexicon.months,
      lexicon.weekdays,
      lexicon.clockSure,
      lexicon.clockSureOfOne,
      lexicon.clockUnsure,
      lexicon.namedTimes,
      lexicon.minutesBefore,
    ),
    following: new Set([
      ...first(
        lexicon.months,
        lexicon.joiners,
        lexicon.units,
        lexicon.ordinalEndings,
        lexicon.halves,
        lexicon.hourWords,
        lexicon.minutesAfter,
      ),
      ...joining,
      '/',
      ':',
    ]),
  };
}

const built = new Map<string, DateLexicon>();

/** The table for a site's languages; what it does not know is left out, and English stands in for none at all. */
export function dateLexicon(languages: readonly string[]): DateLexicon {
  const known = languages.filter((language) => byLanguage[language] !== undefined);
  const used = known.length === 0 ? ['en'] : known;
  const key = used.join(' ');
  let lexicon = built.get(key);
  if (lexicon === undefined) {
    lexicon = build(used);
    built.set(key, lexicon);
  }
  return lexicon;
}

/** A glued hyphen, apostrophe or abbreviation point between two words of a phrase. */
export const isJoining = (token: DateToken | undefined): boolean =>
  token !== undefined && token.kind === 'mark' && token.isGlued && joining.has(token.text);

/** Where a phrase that begins at a token ends (exclusive), with its value; null where none fits. */
export function phraseAt<T>(
  table: Phrases<T>,
  tokens: readonly DateToken[],
  at: number,
): { readonly end: number; readonly value: T } | null {
  const first = tokens[at];
  if (first === undefined || first.kind !== 'word') return null;
  for (const { words, value } of table.get(first.text) ?? []) {
    let i = at;
    let fits = true;
    for (let k = 1; k < words.length && fits; k += 1) {
      i += 1;
      if (isJoining(tokens[i])) i += 1;
      fits = tokens[i] !== undefined && tokens[i]!.text === words[k] && !tokens[i]!.opensLine;
    }
    if (fits) return { end: i + 1, value };
  }
  return null;
}
