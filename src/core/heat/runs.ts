import { addDays, daysBetween } from '../calendar.ts';
import type { Moment, PileReading } from '../picture/types.ts';
import { lowestOf } from './danger-bands.ts';
import { byMoment, hoursBetween, instantMs } from './moments.ts';
import type { DayCount, DepthRange, RuleSet } from './rule-sets.ts';

/** After a turn the probe meets mixed material; a low this soon is shown, and breaks nothing. Common practice. */
export const TURN_SHADOW_HOURS = 24;
const HOUR_MS = 3_600_000;

/** When a probe was out: readings from its last good check to the check that cleared it prove nothing. */
export type Doubtful = { since: string; until: string | null };

export type JudgedReading = Moment & {
  lowestC: number;
  depthCm: number | null;
  approximate: boolean;
  use: 'judged' | 'nearer-surface' | 'deeper' | 'in-doubt';
  /** At or above the rule's level (and under its ceiling). */
  holds: boolean;
  /** A low within a day after a turn that found the pile hot. */
  excused: boolean;
};

/** One local date of the evidence table. */
export type EvidenceRow = {
  localDate: string;
  lowestC: number | null;
  entries: number[];
  counted: boolean;
  why: null | 'no-reading' | 'low' | 'above-ceiling' | 'just-turned' | 'not-at-depth' | 'in-doubt';
};

/** Readings that hold one after the other with no gap between them. */
export type HeatRun = {
  from: JudgedReading;
  to: JudgedReading;
  /** Local dates that count, oldest first, with the lowest judged reading of each. */
  dates: { localDate: string; lowestC: number }[];
  /** Last local date that did not break the run; later than `to` where only a just-turned low followed. */
  lastDate: string;
};

export type JudgeBy = { depthCm: DepthRange; doubts: readonly Doubtful[] };

function useOf(reading: PileReading, by: JudgeBy): JudgedReading['use'] {
  if (doubtOver(by.doubts, reading.at, reading.at)) return 'in-doubt';
  if (reading.depthCm === null) return 'judged';
  if (reading.depthCm < by.depthCm.fromCm) return 'nearer-surface';
  return reading.depthCm > by.depthCm.toCm ? 'deeper' : 'judged';
}

/**
 * The doubt that reaches into a span of time, both ends included; null where the probe was good for all of it.
 * @source a reading since the last good check of a probe that then failed proves nothing: common practice
 * @example doubtOver([{ since: momentAt(1, 0).at, until: null }], momentAt(0, 0).at, momentAt(2, 0).at).until // null
 */
export function doubtOver(doubts: readonly Doubtful[], from: string, to: string): Doubtful | null {
  const [first, last] = [instantMs(from), instantMs(to)];
  return (
    doubts.find(
      ({ since, until }) => instantMs(since) <= last && (until === null || instantMs(until) > first),
    ) ?? null
  );
}

function holdsUnder(rule: RuleSet, celsius: number): boolean {
  const hot = rule.strictlyAbove ? celsius > rule.levelCelsius : celsius >= rule.levelCelsius;
  return hot && (rule.upperCelsius === null || celsius <= rule.upperCelsius);
}

/**
 * Readings in order, each with its lowest point held against a rule. A low is excused within 24 h after a turn,
 * provided that the last judged reading before that turn held (else turning daily would hide a cold pile).
 * @source lowest point decides: 40 CFR 503 App. B as commonly applied; turn shadow: common practice
 * @example judgeReadings(daily([60, 60, 54]), [], RULE_SET_DATA['vessel-3d'], { depthCm: DEFAULT_DEPTH, doubts: [] }).map(({ holds }) => holds) // [true, true, false]
 */
export function judgeReadings(
  readings: readonly PileReading[],
  turns: readonly Moment[],
  rule: RuleSet,
  by: JudgeBy,
): JudgedReading[] {
  const judged = [...readings].sort(byMoment).map((reading): JudgedReading => {
    const lowestC = lowestOf(reading);
    // A ceiling is a matter for the hottest point, the level for the lowest one.
    const under = rule.upperCelsius === null || Math.max(...reading.celsius) <= rule.upperCelsius;
    return {
      entry: reading.entry,
      at: reading.at,
      localDate: reading.localDate,
      lowestC,
      depthCm: reading.depthCm,
      approximate: reading.approximate,
      use: useOf(reading, by),
      holds: holdsUnder(rule, lowestC) && under,
      excused: false,
    };
  });
  const used = judged.filter((reading) => reading.use === 'judged');
  const hotTurns = turns
    .filter((turn) => used.findLast((reading) => byMoment(reading, turn) < 0)?.holds ?? true)
    .map((turn) => ({ turn, turnMs: instantMs(turn.at) }));
  for (const reading of used) {
    if (reading.holds) continue;
    const ms = instantMs(reading.at);
    reading.excused = hotTurns.some(
      ({ turn, turnMs }) => ms - turnMs <= TURN_SHADOW_HOURS * HOUR_MS && byMoment(turn, reading) < 0,
    );
  }
  return judged;
}

/**
 * The evidence table from one local date to another, both included, with a row for each date.
 * @source a date with no reading proves nothing: common practice
 * @example evidenceRows([], RULE_SET_DATA['vessel-3d'], '2026-03-02', '2026-03-03').map(({ why }) => why) // ['no-reading', 'no-reading']
 */
export function evidenceRows(
  judged: readonly JudgedReading[],
  rule: RuleSet,
  from: string,
  to: string,
): EvidenceRow[] {
  const rows: EvidenceRow[] = [];
  // By date first: a pile that lies for a year would be gone through once for each of its days.
  const byDate = new Map<string, JudgedReading[]>();
  for (const reading of judged) {
    const there = byDate.get(reading.localDate);
    if (there) there.push(reading);
    else byDate.set(reading.localDate, [reading]);
  }
  for (let localDate = from; localDate <= to; localDate = addDays(localDate, 1)) {
    const all = byDate.get(localDate) ?? [];
    const used = all.filter((reading) => reading.use === 'judged');
    const broke = used.filter((reading) => !reading.holds && !reading.excused);
    const held = used.some((reading) => reading.holds);
    const steady = used.filter((reading) => !reading.excused);
    rows.push({
      localDate,
      lowestC: used.length === 0 ? null : lowest(steady.length > 0 ? steady : used),
      entries: used.map((reading) => reading.entry),
      counted: held && broke.length === 0,
      why: whyNot(all, used, broke, held, rule),
    });
  }
  return rows;
}

const lowest = (readings: readonly JudgedReading[]): number =>
  Math.min(...readings.map((reading) => reading.lowestC));

function whyNot(
  all: readonly JudgedReading[],
  used: readonly JudgedReading[],
  broke: readonly JudgedReading[],
  held: boolean,
  rule: RuleSet,
): EvidenceRow['why'] {
  if (all.length === 0) return 'no-reading';
  if (used.length === 0)
    return all.some((reading) => reading.use === 'in-doubt') ? 'in-doubt' : 'not-at-depth';
  if (broke.length > 0) {
    return broke.every((reading) => holdsUnder({ ...rule, upperCelsius: null }, reading.lowestC))
      ? 'above-ceiling'
      : 'low';
  }
  return held ? null : 'just-turned';
}

/**
 * Unbroken runs of dates that count. A date with a reading that breaks, and a date with no reading, end a run;
 * a date with only a just-turned low neither counts nor ends it.
 * @source "consecutive days": EPA guidance on 40 CFR 503 App. B
 * @example runsByDay(judgeReadings(daily([60, 60, 54]), [], RULE_SET_DATA['vessel-3d'], { depthCm: DEFAULT_DEPTH, doubts: [] }), RULE_SET_DATA['vessel-3d'])[0].dates.length // 2
 */
export function runsByDay(judged: readonly JudgedReading[], rule: RuleSet): HeatRun[] {
  const used = judged.filter((reading) => reading.use === 'judged');
  const first = used[0];
  const last = used.at(-1);
  if (!first || !last) return [];
  const runs: HeatRun[] = [];
  let run: HeatRun | null = null;
  for (const row of evidenceRows(used, rule, first.localDate, last.localDate)) {
    if (row.counted) {
      const held = used.filter((reading) => reading.localDate === row.localDate && reading.holds);
      if (run === null) {
        run = { from: held[0]!, to: held.at(-1)!, dates: [], lastDate: row.localDate };
        runs.push(run);
      }
      run.to = held.at(-1)!;
      run.dates.push({ localDate: row.localDate, lowestC: row.lowestC! });
      run.lastDate = row.localDate;
    } else if (row.why === 'just-turned' && run !== null) run.lastDate = row.localDate;
    else run = null;
  }
  return runs;
}

/**
 * Unbroken runs of readings, for rules counted in hours: a reading that breaks ends a run, and so does a gap:
 * more than `gapMin` between two readings, or where the rule has none a local date without a reading.
 * @source WSI 2006/1293 Schedule 1 Part II (an hour, 48 hours); the gap: common practice
 * @example runLength(runsByHour(judgeReadings(daily([60, 60, 60]), [], RULE_SET_DATA['vessel-3d'], { depthCm: DEFAULT_DEPTH, doubts: [] }), RULE_SET_DATA['vessel-3d'])[0], true) // 48
 */
export function runsByHour(judged: readonly JudgedReading[], rule: RuleSet): HeatRun[] {
  const runs: HeatRun[] = [];
  let run: HeatRun | null = null;
  let previous: JudgedReading | null = null;
  for (const reading of judged) {
    if (reading.use !== 'judged') continue;
    if (previous && isGap(previous, reading, rule)) run = null;
    previous = reading;
    if (reading.holds) {
      if (run === null) {
        run = { from: reading, to: reading, dates: [], lastDate: reading.localDate };
        runs.push(run);
      }
      run.to = reading;
      run.lastDate = reading.localDate;
      const day = run.dates.at(-1);
      if (day?.localDate === reading.localDate) day.lowestC = Math.min(day.lowestC, reading.lowestC);
      else run.dates.push({ localDate: reading.localDate, lowestC: reading.lowestC });
    } else if (reading.excused && run !== null) run.lastDate = reading.localDate;
    else run = null;
  }
  return runs;
}

function isGap(a: Moment, b: Moment, rule: RuleSet): boolean {
  return rule.gapMin === null
    ? daysBetween(a.localDate, b.localDate) > 1
    : hoursBetween(a.at, b.at) * 60 > rule.gapMin;
}

/**
 * Whether a rule is counted in hours, given how the site counts days.
 * @source none needed: the rule's own unit, or the site's setting
 * @example countsHours(RULE_SET_DATA['catering-70-1h'], 'daily-readings') // true
 */
export const countsHours = (rule: RuleSet, counting: DayCount): boolean =>
  rule.hours !== null || counting === 'hours-72';

/**
 * What a run amounts to, in days that count or in hours.
 * @source none needed
 * @example runLength(runsByDay(judgeReadings(daily([60, 60, 60]), [], RULE_SET_DATA['vessel-3d'], { depthCm: DEFAULT_DEPTH, doubts: [] }), RULE_SET_DATA['vessel-3d'])[0], false) // 3
 */
export const runLength = (run: HeatRun, inHours: boolean): number =>
  inHours ? hoursBetween(run.from.at, run.to.at) : run.dates.length;

/**
 * What a rule needs, in the same unit.
 * @source the citations of the rule set
 * @example neededLength(RULE_SET_DATA['vessel-3d'], true) // 72
 */
export const neededLength = (rule: RuleSet, inHours: boolean): number =>
  inHours ? (rule.hours ?? (rule.days ?? 0) * 24) : (rule.days ?? 0);

/**
 * Turns inside a run, at least so many dates apart: after its first reading that held, and before its last or
 * on the date of it.
 * @example turnsInRun([turnAt(1), turnAt(9)], runsByDay(judgeReadings(daily([60, 60, 60]), [], RULE_SET_DATA['vessel-3d'], { depthCm: DEFAULT_DEPTH, doubts: [] }), RULE_SET_DATA['vessel-3d'])[0], 0).length // 1
 * @source "during the period … a minimum of five turnings", 40 CFR 503 App. B; dates apart: WSI 2006/1293
 */
export function turnsInRun(turns: readonly Moment[], run: HeatRun, apartDays: number): Moment[] {
  const counted: Moment[] = [];
  for (const turn of [...turns].sort(byMoment)) {
    const inside =
      byMoment(turn, run.from) > 0 && (byMoment(turn, run.to) < 0 || turn.localDate === run.to.localDate);
    const last = counted.at(-1);
    if (inside && (!last || daysBetween(last.localDate, turn.localDate) >= apartDays)) counted.push(turn);
  }
  return counted;
}

/**
 * The best mean over a stretch of at least `days` dates of a run; null where the run is shorter.
 * @source 40 CFR 503.33(b)(5), 1993: 14 days or longer (from memory)
 * @example bestMean({ dates: [41, 49, 50].map((lowestC) => ({ localDate: '', lowestC })) }, 2) // 49.5
 */
export function bestMean(run: HeatRun, days: number): number | null {
  const lows = run.dates.map((date) => date.lowestC);
  let best: number | null = null;
  for (let start = 0; start + days <= lows.length; start++) {
    let sum = 0;
    for (let end = start; end < lows.length; end++) {
      sum += lows[end]!;
      const length = end - start + 1;
      if (length >= days && (best === null || sum / length > best)) best = sum / length;
    }
  }
  return best;
}
