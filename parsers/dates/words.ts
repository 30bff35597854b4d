// What a language brings to the reading of dates, and how a text is cut for it.

/** The date words of one language; phrases are written folded, without accents, hyphens or apostrophes. */
export type DateWords = {
  /** phrases that name a day, by how many days lie back (negative: ahead) */
  readonly days: Readonly<Record<string, number>>;
  /** the same, said of an evening or night: an hour after it is one of the evening */
  readonly evenings: Readonly<Record<string, number>>;
  /** parts of a day that may follow a day: `am`, `matin`, `en la tarde`; true = after noon */
  readonly partsOfDay: Readonly<Record<string, boolean>>;
  /** the week before this one; after a weekday it says which */
  readonly lastWeek: readonly string[];
  /** periods that name no one day: `last week` */
  readonly periods: readonly string[];
  /** seven lists, from Monday: full names and slips, safe anywhere */
  readonly weekdays: readonly (readonly string[])[];
  /** seven lists, from Monday: abbreviations that are no other word */
  readonly shortWeekdays: readonly (readonly string[])[];
  /** seven lists, from Monday: abbreviations that are other words too */
  readonly riskyWeekdays: readonly (readonly string[])[];
  /** everyday words that another language has as a weekday: `mon`, `sam` */
  /** What a weekday is called where something is its own: `thursdays bucket`. */
  readonly ownerWeekdays?: readonly string[];
  readonly noWeekdays: readonly string[];
  /** words that may follow a risky abbreviation where it opens a line */
  readonly entryWords: readonly string[];
  /** twelve lists */
  readonly months: readonly (readonly string[])[];
  /** months that are other words too, by number */
  readonly riskyMonths: Readonly<Record<string, number>>;
  /** words that after a risky month show that it is none: `12 may have` */
  readonly afterNoMonth: readonly string[];
  readonly numbers: Readonly<Record<string, number>>;
  /** `the first`, `premier`: a day of the month in words */
  readonly ordinals: Readonly<Record<string, number>>;
  /** days of the month in words, said beside a month: `vingt et un mai`, `cinco de mayo` */
  readonly dayWords: Readonly<Record<string, number>>;
  readonly ordinalEndings: readonly string[];
  /** what stands before a date: `on`, `le`, `el` */
  readonly before: readonly string[];
  /** phrases after which a bare number is a day of the month: `on the`, `le`, `el dia` */
  readonly beforeDay: readonly string[];
  /** words after a bare `le 9` that show it to be no date: `est`, units */
  readonly afterNoDay: readonly string[];
  readonly last: { readonly before: readonly string[]; readonly after: readonly string[] };
  readonly next: { readonly before: readonly string[]; readonly after: readonly string[] };
  readonly current: readonly string[];
  /** words that join a day and its month or year: `of`, `de` */
  readonly joiners: readonly string[];
  readonly ago: {
    readonly before: readonly string[];
    readonly after: readonly string[];
    /** words that make less of the length that follows: `half an hour ago` */
    readonly parts: readonly string[];
  };
  readonly units: Readonly<Record<string, 'minute' | 'hour' | 'day' | 'week' | 'month'>>;
  readonly clock: {
    /** before an hour that is certainly one: `a las` */
    readonly sure: readonly string[];
    /** before one o'clock alone, and only where it opens the line; elsewhere a number behind it names something: `a la` */
    readonly sureOfOne: readonly string[];
    /** before an hour that may be something else: `at` */
    readonly unsure: readonly string[];
    readonly am: readonly string[];
    readonly pm: readonly string[];
    /** after four digits or an hour: `hrs`, `o clock` */
    readonly hourWords: readonly string[];
    readonly named: Readonly<Record<string, number>>;
    /** minutes after the hour, said after it: `y media`, `et demie` */
    readonly minutesAfter: Readonly<Record<string, number>>;
    /** minutes after the hour, said before it: `half past` */
    readonly minutesBefore: Readonly<Record<string, number>>;
    /** beside `2h` these show a length of time */
    readonly durations: readonly string[];
  };
  /** places and such, after which `at 12` is a reading */
  readonly places: readonly string[];
  /** containers, materials, units, `full`: before them `1/2` is a fraction, and `12.30` a weight */
  readonly measured: readonly string[];
  /** units of measure: before them `23.11` is a quantity */
  readonly quantityUnits: readonly string[];
  /** words that show there may be a date that the lists do not hold */
  readonly leftover: readonly string[];
};

export type DateToken = {
  readonly kind: 'word' | 'number' | 'mark';
  /** as typed */
  readonly raw: string;
  /** folded word, digits, or the mark */
  readonly text: string;
  readonly start: number;
  readonly end: number;
  readonly isGlued: boolean;
  readonly opensLine: boolean;
};

const pattern = /[\p{L}\p{M}]+|\p{Nd}+|[^\s\p{L}\p{M}\p{Nd}]|\n/gu;
const ascii = /^[a-z]+$/;
const skipped = /[\p{M}\u00ad\u200b-\u200f\u202a-\u202e\u2060\ufeff]/gu;

const fold = (word: string): string => {
  const lower = word.toLowerCase();
  return ascii.test(lower) ? lower : lower.normalize('NFKD').replace(skipped, '');
};

/** Words, whole numbers and single marks, with where each stands; hyphens and apostrophes are marks. */
export function cutDateTokens(text: string): DateToken[] {
  const tokens: DateToken[] = [];
  let opensLine = true;
  let end = -1;
  for (const match of text.matchAll(pattern)) {
    const raw = match[0];
    const start = match.index;
    if (raw === '\n') {
      opensLine = true;
      continue;
    }
    const code = raw.charCodeAt(0);
    const isAscii = code < 128;
    // wide digits are numbers; those of another script are none here, as nowhere in the reader
    // (a plain digit may have a wide one behind it: `7１`)
    const isFigure = isAscii && code >= 48 && code <= 57;
    const digits = isAscii && !(isFigure && /[^\d]/.test(raw)) ? raw : raw.normalize('NFKD');
    const isNumber = isAscii && !isFigure ? false : /^\d+$/.test(digits);
    const isLetter = (code >= 97 && code <= 122) || (code >= 65 && code <= 90);
    const isWord = isAscii ? isLetter : !isNumber && /^[\p{L}\p{M}]/u.test(raw);
    const folded = isWord ? fold(raw) : isNumber ? digits : raw;
    tokens.push({
      kind: isNumber ? 'number' : isWord ? 'word' : 'mark',
      raw,
      text: folded,
      start,
      end: start + raw.length,
      isGlued: start === end,
      opensLine,
    });
    end = start + raw.length;
    // bullets, quotes and pictures before the first word leave the line unopened
    if (isNumber || isWord) opensLine = false;
  }
  return tokens;
}
