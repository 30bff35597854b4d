import type { RuleSetName } from '#records';
import { addDays, daysBetween } from '../calendar.ts';
import type { Moment } from '../picture/types.ts';
import { addHours, byMoment, compareInstants, hoursBetween } from './moments.ts';
import { type RuleSet, VECTOR_ATTRACTION } from './rule-sets.ts';
import {
  bestMean,
  countsHours,
  doubtOver,
  type EvidenceRow,
  evidenceRows,
  type HeatRun,
  type JudgedReading,
  judgeReadings,
  neededLength,
  runLength,
  turnsInRun,
} from './runs.ts';
import {
  after,
  type HeatHistory,
  isMet,
  lastStretch,
  type Now,
  runsIn,
  type SanitisingOptions,
  type Setting,
  type Span,
  type Stretch,
  setUp,
} from './stretches.ts';
import type { HeatAssumption, HeatWhy } from './why.ts';

/** Why a verdict is not `met`, or what is remarked beside it. */
export type SanitisingReason =
  | { code: 'no-readings' }
  | { code: 'not-at-depth'; readings: number; fromCm: number; toCm: number }
  | { code: 'in-doubt'; readings: number; since: string }
  | { code: 'too-short'; counted: number; needed: number; unit: 'days' | 'hours' }
  | { code: 'turns-short'; counted: number; needed: number; apartDays: number }
  | { code: 'mean-too-low'; meanCelsius: number; aboveCelsius: number }
  | { code: 'low'; localDate: string; celsius: number; levelCelsius: number; entry: number }
  | { code: 'above-ceiling'; localDate: string; upperCelsius: number; entry: number }
  | { code: 'just-turned'; localDate: string; celsius: number; entry: number }
  | { code: 'gap'; from: string; to: string; days: number }
  | { code: 'fresh'; localDate: string; entry: number }
  | { code: 'joined-unproven'; localDate: string; entry: number; from: string | null }
  | { code: 'proof-in-doubt'; localDate: string; entry: number; from: string | null }
  | { code: 'cover-unproven'; localDate: string; entry: number; known: boolean }
  | { code: 'still-open' }
  | { code: 'aeration-unknown' }
  | { code: 'aeration-breathing' }
  | { code: 'fed-daily' }
  | { code: 'exit-only' }
  | { code: 'one-point' }
  | { code: 'residence-unknown'; neededHours: number }
  | { code: 'residence-short'; hours: number; neededHours: number }
  | { code: 'short-circuit-unknown' }
  | { code: 'short-circuit' }
  | { code: 'prove-in-closed-pile' };

export type Sanitising = {
  verdict: 'met' | 'not-yet' | 'cannot-show';
  rule: string;
  /** First reading of the run that counts; null where none does. */
  since: Moment | null;
  /** Local date of the reading that completed it. */
  metOn: string | null;
  /** First and last reading that the proof rests on, an inherited one's included; null where it is not met. */
  provenBy: Span | null;
  counted: number;
  needed: number;
  unit: 'days' | 'hours';
  turns: { counted: number; needed: number; apartDays: number; entries: number[] };
  /** The reading (or turn) that keeps the run, or starts one: by the end of `localDate`, or by `at`. */
  next: { what: 'reading' | 'turn-and-reading' | 'start'; localDate: string; at: string | null } | null;
  /** Earliest local date on which it could be met if every next reading holds. */
  couldBeMetOn: string | null;
  reasons: SanitisingReason[];
  rows: EvidenceRow[];
  /** Readings that are shown and not judged. */
  notJudged: { entry: number; localDate: string; lowestC: number; depthCm: number | null; why: string }[];
  why: HeatWhy;
};

const moment = ({ entry, at, localDate }: Moment): Moment => ({ entry, at, localDate });

/** The reading with which a run that is met became so: the last of the shortest beginning of it that is met. */
function metBy(run: HeatRun, judged: readonly JudgedReading[], turns: readonly Moment[], setting: Setting) {
  for (const { localDate } of run.dates) {
    const upTo = (m: Moment) => m.localDate <= localDate;
    const dates = run.dates.filter((date) => date.localDate <= localDate);
    const to = judged.findLast((r) => r.use === 'judged' && r.holds && upTo(r) && byMoment(r, run.to) <= 0);
    if (to && isMet({ ...run, dates, to, lastDate: localDate }, turns.filter(upTo), setting)) return to;
  }
  return run.to;
}

/** Whether the days without a reading are all that stands between the readings and the rule. */
function gapsAlone(judged: readonly JudgedReading[], { rule, counting }: Setting) {
  const inHours = countsHours(rule, counting);
  let first: JudgedReading | null = null;
  let previous: JudgedReading | null = null;
  let widest: { from: string; to: string; days: number } | null = null;
  let enough = false;
  for (const reading of judged) {
    if (reading.use !== 'judged') continue;
    if (!reading.holds && !reading.excused) {
      first = null;
      previous = null;
      continue;
    }
    if (previous) {
      const days = daysBetween(previous.localDate, reading.localDate) - 1;
      const isGap =
        rule.gapMin === null ? days > 0 : hoursBetween(previous.at, reading.at) * 60 > rule.gapMin;
      if (isGap && (widest === null || days >= widest.days)) {
        widest = { from: previous.localDate, to: reading.localDate, days };
      }
    }
    previous = reading;
    if (!reading.holds) continue;
    first ??= reading;
    const span = inHours
      ? hoursBetween(first.at, reading.at)
      : daysBetween(first.localDate, reading.localDate) + 1;
    enough ||= span >= neededLength(rule, inHours);
  }
  return { enough: enough && widest !== null, widest };
}

function isAlive(run: HeatRun, rule: RuleSet, now: Now): boolean {
  return rule.gapMin === null
    ? daysBetween(run.lastDate, now.localDate) <= 1
    : hoursBetween(run.to.at, now.at) * 60 <= rule.gapMin;
}

function assumptions(setting: Setting, options: SanitisingOptions, judged: readonly JudgedReading[]) {
  const { rule, depthCm, counting } = setting;
  const used = judged.filter((reading) => reading.use === 'judged');
  const assumed: HeatAssumption[] = [];
  const say = (code: HeatAssumption['code'], args: HeatAssumption['args'] = {}) =>
    assumed.push({ code, args });
  const noDepth = used.filter((reading) => reading.depthCm === null).length;
  if (noDepth > 0) say('depth-unknown', { readings: noDepth, ...depthCm });
  const about = used.filter((reading) => reading.approximate).length;
  if (about > 0) say('approximate-reading', { readings: about });
  if (rule.pieceMm !== null) say('piece-size', { mm: rule.pieceMm });
  if (rule.method === 'vessel' || rule.method === 'closed') say('held-in-vessel');
  if (rule.method === 'housed-windrow') say('roofed');
  if (rule.method === 'forced-aerated-pile' && options.aeration !== 'forced') say('aeration-forced');
  if (rule.gapMin !== null) say('gap-between-readings', { minutes: rule.gapMin });
  else if (!countsHours(rule, counting)) say('days-by-readings', { days: rule.days });
  if (rule.turnsApartDays > 0) say('turn-spacing-by-dates', { days: rule.turnsApartDays });
  return assumed;
}

function couldBeMet(run: HeatRun | null, counted: number, setting: Setting, now: Now): string | null {
  const inHours = countsHours(setting.rule, setting.counting);
  const short = Math.max(0, neededLength(setting.rule, inHours) - counted);
  if (setting.rule.gapMin !== null) return now.localDate;
  if (inHours)
    return addDays(run?.from.localDate ?? now.localDate, Math.ceil(neededLength(setting.rule, true) / 24));
  return run ? addDays(run.lastDate, short) : addDays(now.localDate, short - 1);
}

function nextStep(
  run: HeatRun | null,
  setting: Setting,
  turnsShort: boolean,
  brokenToday: boolean,
  now: Now,
): Sanitising['next'] {
  const inHours = countsHours(setting.rule, setting.counting);
  // Where the lowest of a date decides, a date that is already broken cannot be the first of a run.
  if (run === null) {
    return {
      what: 'start',
      localDate: brokenToday && !inHours ? addDays(now.localDate, 1) : now.localDate,
      at: null,
    };
  }
  const { gapMin } = setting.rule;
  const what = turnsShort ? 'turn-and-reading' : 'reading';
  if (gapMin !== null) return { what, localDate: now.localDate, at: addHours(run.to.at, gapMin / 60) };
  return { what, localDate: addDays(run.lastDate, 1), at: null };
}

/** What happened after the last run, or where there was none, that kept the count at zero. */
function breaks(judged: readonly JudgedReading[], rule: RuleSet, run: HeatRun | null): SanitisingReason[] {
  const last = judged.findLast((reading) => reading.use === 'judged');
  if (!last || last.holds) return [];
  const { localDate, entry, lowestC: celsius } = last;
  if (last.excused) return [{ code: 'just-turned', localDate, celsius, entry }];
  if (run !== null) return [];
  if (rule.upperCelsius !== null && celsius >= rule.levelCelsius) {
    return [{ code: 'above-ceiling', localDate, upperCelsius: rule.upperCelsius, entry }];
  }
  return [{ code: 'low', localDate, celsius, levelCelsius: rule.levelCelsius, entry }];
}

function coverRemarks(batch: HeatHistory, start: Moment | null, now: Now): SanitisingReason[] {
  const seen = new Set<number>();
  const covers = [
    ...batch.covers.map((c) => ({
      ...c,
      proven: c.on && c.layer === 'mature-compost' ? c.fromProven : true,
    })),
    ...batch.joinings.filter((j) => j.what === 'cover').map((j) => ({ ...j, proven: j.provenThen })),
  ];
  return covers
    .filter(({ proven }) => proven !== true)
    .filter(
      (m) => after(m, start) && compareInstants(m.at, now.at) <= 0 && !seen.has(m.entry) && seen.add(m.entry),
    )
    .map(({ localDate, entry, proven }) => ({
      code: 'cover-unproven',
      localDate,
      entry,
      known: proven === false,
    }));
}

/**
 * Whether a batch was hot for long enough under a rule set, on its readings alone: `met`, `not-yet`, or
 * `cannot-show` where what is on the book cannot become proof. The lowest point at the asked depth decides; a
 * date with no reading proves nothing; fresh material restarts. °C, local dates. Never a release: the regulator
 * decides. Throws on a depth range that is not one.
 * @source the citations of the rule set (see RULE_SET_DATA); order of turns and readings: by entry number
 * @example sanitising(batchOf({ readings: daily([55, 55, 55]) }), 'vessel-3d', {}, nowAt(2)) // { verdict: 'met', counted: 3, needed: 3 }
 */
export function sanitising(
  batch: HeatHistory,
  ruleSet: RuleSetName | RuleSet,
  options: SanitisingOptions,
  now: Now,
): Sanitising {
  const setting = setUp(ruleSet, options);
  const { rule } = setting;
  const inHours = countsHours(rule, setting.counting);
  const unit = inHours ? 'hours' : 'days';
  const stretch = lastStretch(batch, setting, now);
  const inside = <T extends Moment>(moments: readonly T[]) =>
    moments.filter((m) => after(m, stretch.start) && compareInstants(m.at, now.at) <= 0);
  const turns = inside(batch.turns);
  const judged = judgeReadings(inside(batch.readings), turns, rule, setting);
  const runs = runsIn(judged, setting);
  const proof = runs.find((run) => isMet(run, turns, setting)) ?? null;
  const latest = runs.at(-1) ?? null;
  const run = proof ?? (latest && isAlive(latest, rule, now) && notBroken(latest, judged) ? latest : null);
  const counted = run ? runLength(run, inHours) : 0;
  const runTurns = run ? turnsInRun(turns, run, rule.turnsApartDays) : [];
  const breathing = rule.method === 'forced-aerated-pile' && options.aeration === 'breathing';
  const met = !breathing && (proof !== null || stretch.inherited !== null);

  const brokenToday = judged.some(
    (r) => r.use === 'judged' && !r.holds && !r.excused && r.localDate === now.localDate,
  );
  const reasons: SanitisingReason[] = [];
  const needed = neededLength(rule, inHours);
  const gaps = gapsAlone(judged, setting);
  const used = judged.filter((reading) => reading.use === 'judged');
  if (breathing) reasons.push({ code: 'aeration-breathing' });
  if (rule.method === 'forced-aerated-pile' && options.aeration == null)
    reasons.push({ code: 'aeration-unknown' });
  if (!met) {
    if (judged.length === 0) reasons.push({ code: 'no-readings' });
    reasons.push(...unusable(judged, setting));
    if (counted < needed) reasons.push({ code: 'too-short', counted, needed, unit });
    if (runTurns.length < rule.turns) {
      const { turns: wanted, turnsApartDays: apartDays } = rule;
      reasons.push({ code: 'turns-short', counted: runTurns.length, needed: wanted, apartDays });
    }
    const mean = run && rule.days ? bestMean(run, rule.days) : null;
    if (mean !== null && rule.meanAboveCelsius !== null && mean <= rule.meanAboveCelsius) {
      reasons.push({ code: 'mean-too-low', meanCelsius: mean, aboveCelsius: rule.meanAboveCelsius });
    }
    reasons.push(...breaks(judged, rule, run));
    if (gaps.widest !== null && (run === null || gaps.enough)) reasons.push({ code: 'gap', ...gaps.widest });
    if (stretch.start !== null) reasons.push(restart(stretch));
    if (batch.state === 'open') reasons.push({ code: 'still-open' });
  }
  reasons.push(...coverRemarks(batch, stretch.start, now));

  const age = stretch.start ?? batch.closedAt ?? batch.startedAt ?? judged[0] ?? null;
  const unread = used.length === 0 && isPast(age, needed, inHours, now);
  const underWay = run !== null && (inHours ? counted > 0 : counted >= 2);
  const hopeless = breathing || unread || (gaps.enough && !underWay);
  const assumed = assumptions(setting, options, judged);
  if (met && proof === null)
    assumed.push({ code: 'inherited-proof', args: { entry: stretch.inherited!.entry } });
  const by = met && proof ? metBy(proof, judged, turns, setting) : null;
  const first = used[0]?.localDate ?? judged[0]?.localDate;
  return {
    verdict: met ? 'met' : hopeless ? 'cannot-show' : 'not-yet',
    rule: rule.name,
    since: run ? moment(run.from) : met ? moment(stretch.inherited!) : null,
    metOn: !met ? null : (by?.localDate ?? stretch.inherited!.localDate),
    provenBy: !met ? null : proof && by ? { from: proof.from.at, to: by.at } : stretch.provenBy,
    counted,
    needed,
    unit,
    turns: {
      counted: runTurns.length,
      needed: rule.turns,
      apartDays: rule.turnsApartDays,
      entries: runTurns.map((turn) => turn.entry),
    },
    next: met || breathing ? null : nextStep(run, setting, runTurns.length < rule.turns, brokenToday, now),
    couldBeMetOn: met || breathing ? null : couldBeMet(run, counted, setting, now),
    reasons,
    rows: proof
      ? evidenceRows(judged, rule, proof.from.localDate, proof.to.localDate)
      : first
        ? evidenceRows(judged, rule, first, now.localDate)
        : [],
    notJudged: judged
      .filter((reading) => reading.use !== 'judged')
      .map(({ entry, localDate, lowestC, depthCm, use }) => ({
        entry,
        localDate,
        lowestC,
        depthCm,
        why: use,
      })),
    why: {
      key: `rule:${rule.name}`,
      args: {
        levelCelsius: rule.levelCelsius,
        counted,
        needed,
        unit,
        turns: runTurns.length,
        ...setting.depthCm,
      },
      source: rule.citations.map(({ title, part }) => `${title}, ${part}`).join('; '),
      assumed,
    },
  };
}

/** A run that was broken earlier today is over, though its last good date is yesterday. */
function notBroken(run: HeatRun, judged: readonly JudgedReading[]): boolean {
  return !judged.some((r) => r.use === 'judged' && !r.holds && !r.excused && byMoment(r, run.to) > 0);
}

function isPast(age: Moment | null, needed: number, inHours: boolean, now: Now): boolean {
  if (age === null) return false;
  return inHours
    ? hoursBetween(age.at, now.at) >= needed
    : daysBetween(age.localDate, now.localDate) + 1 >= needed;
}

function restart({ start, why }: Stretch): SanitisingReason {
  const { localDate, entry, from } = start!;
  return why === 'fresh' || why === null
    ? { code: 'fresh', localDate, entry }
    : { code: why, localDate, entry, from };
}

function unusable(judged: readonly JudgedReading[], { depthCm, doubts }: Setting): SanitisingReason[] {
  const reasons: SanitisingReason[] = [];
  const inDoubt = judged.filter((reading) => reading.use === 'in-doubt');
  const doubted = inDoubt.length;
  const since = inDoubt[0] && doubtOver(doubts, inDoubt[0].at, inDoubt[0].at)?.since;
  const elsewhere = judged.filter((r) => r.use === 'nearer-surface' || r.use === 'deeper').length;
  if (since !== undefined) reasons.push({ code: 'in-doubt', readings: doubted, since });
  if (elsewhere > 0 && elsewhere + doubted === judged.length) {
    reasons.push({ code: 'not-at-depth', readings: elsewhere, ...depthCm });
  }
  return reasons;
}

/**
 * The vector attraction check, beside the rule set: 14 dates above 40 °C with a mean above 45 °C, both strict.
 * @source 40 CFR 503.33(b)(5), 1993 (from memory)
 * @example vectorAttraction(batchOf({ readings: daily(Array(14).fill(46)) }), {}, nowAt(13)) // { verdict: 'met', counted: 14, needed: 14 }
 */
export const vectorAttraction = (batch: HeatHistory, options: SanitisingOptions, now: Now): Sanitising =>
  sanitising(batch, VECTOR_ATTRACTION, { ...options, counting: 'daily-readings' }, now);
