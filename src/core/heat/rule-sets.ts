import type { RuleSetName } from '#records';

/**
 * How days are counted. `daily-readings`: so many dates in a row, each with a reading that holds.
 * `hours-72`: whole days of 24 hours from the first reading that holds to the last (72 hours for three days).
 */
export const DAY_COUNTS = ['daily-readings', 'hours-72'] as const;
export type DayCount = (typeof DAY_COUNTS)[number];

export type HeatMethod = 'vessel' | 'forced-aerated-pile' | 'windrow' | 'housed-windrow' | 'closed' | 'any';

export type Citation = { title: string; part: string; year: number | null; seen: boolean };

export type DepthRange = { fromCm: number; toCm: number };

/** A time-and-temperature rule as data. Either `days` or `hours` is set. Equality passes unless `strictlyAbove`. */
export type RuleSet = {
  name: string;
  method: HeatMethod;
  levelCelsius: number;
  strictlyAbove: boolean;
  /** Where the rule names a ceiling, a reading above it does not count. */
  upperCelsius: number | null;
  /** Where the rule asks for a mean over the span as well, strictly above this. */
  meanAboveCelsius: number | null;
  days: number | null;
  hours: number | null;
  /** How `days` are counted unless the site says otherwise. */
  counting: DayCount;
  /** Longest time between two readings of a run that is counted in hours and lasts under a day. */
  gapMin: number | null;
  turns: number;
  turnsApartDays: number;
  /** Largest piece that the rule allows; nobody measures it on the pile, so it is said as an assumption. */
  pieceMm: number | null;
  depthCm: DepthRange;
  /** The band of C:N that the mix must start in, where the rule names one. */
  startingCn: readonly [number, number] | null;
  citations: Citation[];
  /** How an unclear text was read. */
  reading: string | null;
};

/**
 * 30 to 61 cm: 12 to 24 inches below the surface (24 in is 60.96 cm, hence 61).
 * @source California Code of Regulations, title 14, section 17868.3 (seen quoted in facility reports);
 * elsewhere common practice.
 */
export const DEFAULT_DEPTH: DepthRange = { fromCm: 30, toCm: 61 };

const PFRP: Citation = {
  title: '40 CFR 503 Appendix B, processes to further reduce pathogens, composting',
  part: 'App. B, B.1',
  year: 1993,
  seen: true,
};
const TEXAS: Citation = { title: '30 TAC 332.23', part: '(2)', year: null, seen: true };
const CCME: Citation = { title: 'CCME PN 1340', part: 'process criteria', year: 2005, seen: false };
const WALES: Citation = {
  title: 'Animal By-Products (Wales) Regulations, WSI 2006/1293',
  part: 'Schedule 1 Part II',
  year: 2006,
  seen: true,
};
const EU_FERTILISER: Citation = {
  title: 'Regulation (EU) 2019/1009',
  part: 'Annex II, CMC 3',
  year: 2019,
  seen: false,
};

const ONE_RUN =
  'The texts say "maintained at" and "during the period", so the days are read as one unbroken run; EPA guidance reads them so too.';

const base = {
  strictlyAbove: false,
  upperCelsius: null,
  meanAboveCelsius: null,
  days: null,
  hours: null,
  counting: 'daily-readings',
  gapMin: null,
  turns: 0,
  turnsApartDays: 0,
  pieceMm: null,
  startingCn: null,
  depthCm: DEFAULT_DEPTH,
  reading: ONE_RUN,
} satisfies Partial<RuleSet>;

const eu = (name: RuleSetName, levelCelsius: number, days: number): RuleSet => ({
  ...base,
  name,
  method: 'any',
  levelCelsius,
  days,
  citations: [EU_FERTILISER],
  reading: `${ONE_RUN} The regulation also wants the whole batch turned, without a number; turns are shown, not counted.`,
});

/** The US organic rule has a ceiling of 170 °F (76.7 °C) and asks for a starting C:N of 25 to 40. */
const organic = {
  ...base,
  levelCelsius: 55,
  upperCelsius: 76.7,
  startingCn: [25, 40],
  citations: [{ title: '7 CFR 205.203', part: '(c)(2)', year: null, seen: true }],
} satisfies Partial<RuleSet>;

/**
 * The rule sets that a site can choose, with their citations.
 * @source 40 CFR 503 App. B (1993; seen quoted), WSI 2006/1293 Sch. 1 Pt II (seen), Regulation (EU) 2019/1009
 * Annex II CMC 3 (from memory), CCME PN 1340 (2005; from memory), 7 CFR 205.203(c)(2) (seen quoted).
 * @example RULE_SET_DATA['windrow-15d'].turns // 5
 */
export const RULE_SET_DATA: Record<RuleSetName, RuleSet> = {
  'vessel-3d': {
    ...base,
    name: 'vessel-3d',
    method: 'vessel',
    levelCelsius: 55,
    days: 3,
    citations: [PFRP, TEXAS, CCME],
  },
  'aerated-pile-3d': {
    ...base,
    name: 'aerated-pile-3d',
    method: 'forced-aerated-pile',
    levelCelsius: 55,
    days: 3,
    citations: [PFRP, TEXAS, CCME],
  },
  'windrow-15d': {
    ...base,
    name: 'windrow-15d',
    method: 'windrow',
    levelCelsius: 55,
    days: 15,
    turns: 5,
    citations: [PFRP, TEXAS, { title: '14 CCR 17868.3', part: '(b)', year: null, seen: true }, CCME],
  },
  'catering-60-2d': {
    ...base,
    name: 'catering-60-2d',
    method: 'closed',
    levelCelsius: 60,
    days: 2,
    counting: 'hours-72',
    pieceMm: 400,
    citations: [WALES],
    reading: 'Two days are read as 48 hours from the first reading that holds to the last.',
  },
  'catering-70-1h': {
    ...base,
    name: 'catering-70-1h',
    method: 'closed',
    levelCelsius: 70,
    hours: 1,
    counting: 'hours-72',
    gapMin: 60,
    pieceMm: 60,
    citations: [WALES],
    reading:
      'The hour is read from the first reading that holds to the last, with no more than an hour between two.',
  },
  'housed-windrow-8d': {
    ...base,
    name: 'housed-windrow-8d',
    method: 'housed-windrow',
    levelCelsius: 60,
    days: 8,
    turns: 3,
    turnsApartDays: 2,
    pieceMm: 400,
    citations: [WALES],
  },
  'eu-70-3d': eu('eu-70-3d', 70, 3),
  'eu-65-5d': eu('eu-65-5d', 65, 5),
  'eu-60-7d': eu('eu-60-7d', 60, 7),
  'eu-55-14d': eu('eu-55-14d', 55, 14),
  'organic-vessel-3d': { ...organic, name: 'organic-vessel-3d', method: 'vessel', days: 3 },
  'organic-windrow-15d': { ...organic, name: 'organic-windrow-15d', method: 'windrow', days: 15, turns: 5 },
};

/**
 * Vector attraction: a check of its own beside the rule set. Both limits are strict: above 40 °C throughout,
 * mean above 45 °C, for 14 days or longer.
 * @source 40 CFR 503.33(b)(5), 1993 (from memory)
 */
export const VECTOR_ATTRACTION: RuleSet = {
  ...base,
  name: 'vector-attraction-14d',
  method: 'any',
  levelCelsius: 40,
  strictlyAbove: true,
  meanAboveCelsius: 45,
  days: 14,
  citations: [{ title: '40 CFR 503.33', part: '(b)(5)', year: 1993, seen: false }],
  reading: 'The mean is taken over the lowest judged reading of each day, the cautious side.',
};

/**
 * Whether a rule set is one of the US sewage-sludge rule, beside which vector attraction is looked at.
 * @source 40 CFR 503 App. B and 503.33, 1993
 * @example looksAtVectors('eu-70-3d') // false
 */
export const looksAtVectors = (name: RuleSetName): boolean => RULE_SET_DATA[name].citations.includes(PFRP);

/**
 * Whether a starting C:N lies in the band of the US organic rule, both ends included.
 * @source 7 CFR 205.203(c)(2) (seen quoted)
 * @example organicStartingCn(22) // false
 */
export function organicStartingCn(cn: number): boolean {
  if (!(cn > 0)) throw new RangeError(`cn ${cn}: expected a ratio above 0`);
  return cn >= 25 && cn <= 40;
}

/**
 * Days (of 24 h) at `celsius` that the US Class A equation asks for; not a composting rule by itself, but it
 * compares short hot exposures. Never under 20 minutes.
 * @source 15A NCAC 02T .1106(a)(3)(A), mirroring 40 CFR 503.32(a)(3) (seen; exponent printed flat)
 * @example classADays(70) * 24 // 0.501 (to 0.001)
 */
export function classADays(celsius: number): number {
  if (!(celsius >= 50 && celsius <= 100)) throw new RangeError(`celsius ${celsius} °C: expected 50 to 100`);
  return Math.max(131_700_000 / 10 ** (0.14 * celsius), 20 / 1440);
}

/**
 * Readings a day that the length or the volume of a windrow calls for: one for each 45.72 m (150 ft) or part of
 * it, or one for each 152.9 m³ (200 yd³) or part of it. The larger of the two that are known; at least one.
 * @source 14 CCR 17868.3 as applied in facility reports (seen)
 * @example readingsADay({ lengthCm: 310 * 30.48 }) // 3
 */
export function readingsADay(pile: { lengthCm?: number | null; litres?: number | null }): number {
  const lengthCm = pile.lengthCm ?? 0;
  const litres = pile.litres ?? 0;
  if (!(lengthCm >= 0)) throw new RangeError(`lengthCm ${lengthCm} cm: expected 0 or more`);
  if (!(litres >= 0)) throw new RangeError(`litres ${litres} L: expected 0 or more`);
  const parts = (amount: number, each: number) => Math.ceil(amount / each - 1e-9);
  return Math.max(1, parts(lengthCm, 150 * 30.48), parts(litres, 200 * 764.554857984));
}

/**
 * Composite samples a year for the laboratory: none at or under 1,000 yd³ a year for a small operation, else one
 * for each 5,000 yd³ or part of it.
 * @source 14 CCR 17868.1 (seen; "for every 5,000" read as a part counting whole)
 * @example compositeSamples(12_000 * 764.554857984) // 3
 */
export function compositeSamples(litresPerYear: number): number {
  if (!(litresPerYear >= 0)) throw new RangeError(`litresPerYear ${litresPerYear} L: expected 0 or more`);
  const yd3 = litresPerYear / 764.554857984;
  return yd3 <= 1000 ? 0 : Math.ceil(yd3 / 5000 - 1e-9);
}

/** What a site is told at set-up when its readings are too far apart for its rule. */
export type ReadingRhythm =
  | { canShow: true; everyHours: number }
  | { canShow: false; everyHours: number; got: number; days: number | null; hours: number | null };

/**
 * Whether readings every so many hours can ever show a rule: weekly ones cannot, a gap proves nothing.
 * @source the rule set's own text; a day with no reading proves nothing
 * @example readingRhythm(RULE_SET_DATA['windrow-15d'], 168).canShow // false
 */
export function readingRhythm(rule: RuleSet, everyHours: number): ReadingRhythm {
  if (!(everyHours > 0)) throw new RangeError(`everyHours ${everyHours} h: expected above 0`);
  const most = rule.gapMin === null ? 24 : rule.gapMin / 60;
  return everyHours <= most
    ? { canShow: true, everyHours: most }
    : { canShow: false, everyHours: most, got: everyHours, days: rule.days, hours: rule.hours };
}
