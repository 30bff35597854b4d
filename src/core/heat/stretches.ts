import type { RuleSetName } from '#records';
import type { Batch, Joining, Moment } from '../picture/types.ts';
import { byMoment, instantMs } from './moments.ts';
import { type DayCount, type DepthRange, RULE_SET_DATA, type RuleSet } from './rule-sets.ts';
import {
  bestMean,
  countsHours,
  type Doubtful,
  type HeatRun,
  type JudgedReading,
  judgeReadings,
  neededLength,
  runLength,
  runsByDay,
  runsByHour,
  turnsInRun,
} from './runs.ts';

export type SanitisingOptions = {
  /** How days are counted; the rule set's own way where absent. */
  counting?: DayCount | null;
  /** Depth that the site's regulator asks for; the rule set's own where absent. */
  depthCm?: DepthRange | null;
  /** `breathing`: pipes without a fan, which are not forced aeration. Null: nobody has said. */
  aeration?: 'forced' | 'breathing' | null;
  /** Last good check of a probe that has since failed one. */
  doubtfulSince?: string | null;
  /** The good check that ended the doubt. */
  doubtfulUntil?: string | null;
};

/** What of a batch the proof of heat rests on. */
export type HeatHistory = Pick<
  Batch,
  'state' | 'startedAt' | 'closedAt' | 'readings' | 'turns' | 'joinings' | 'covers'
>;

export type Now = { at: string; localDate: string };

/** A rule with the site's own ways of applying it. */
export type Setting = { rule: RuleSet; counting: DayCount; depthCm: DepthRange; doubtful: Doubtful | null };

/** A stretch of a batch's life in which nothing was added that restarts the count. */
export type Stretch = {
  start: Joining | null;
  why: 'fresh' | 'joined-unproven' | null;
  inherited: Joining | null;
};

/**
 * Whether a moment belongs to a stretch that began at `start`.
 * @source none needed
 * @example after(momentAt(1, 2), momentAt(1, 1)) // true
 */
export const after = (moment: Moment, start: Moment | null): boolean =>
  start === null || byMoment(moment, start) > 0;

/**
 * The rule set with the site's options filled in; throws on a depth range that is not one.
 * @source the citations of the rule set
 * @example setUp('vessel-3d', { counting: 'hours-72' }).counting // 'hours-72'
 */
export function setUp(ruleSet: RuleSetName | RuleSet, options: SanitisingOptions): Setting {
  const rule = typeof ruleSet === 'string' ? RULE_SET_DATA[ruleSet] : ruleSet;
  const depthCm = options.depthCm ?? rule.depthCm;
  if (!(depthCm.fromCm >= 0 && depthCm.toCm >= depthCm.fromCm)) {
    throw new RangeError(`depthCm ${depthCm.fromCm} to ${depthCm.toCm} cm: expected 0 or more, in order`);
  }
  const doubtful = options.doubtfulSince
    ? { since: options.doubtfulSince, until: options.doubtfulUntil ?? null }
    : null;
  return { rule, counting: options.counting ?? rule.counting, depthCm, doubtful };
}

/**
 * Whether a run is long enough, turned often enough and, where asked, hot enough on average.
 * @source the citations of the rule set
 * @example isMet(runsByDay(judgeReadings(daily([60, 60, 60]), [], RULE_SET_DATA['vessel-3d'], { depthCm: DEFAULT_DEPTH, doubtful: null }), RULE_SET_DATA['vessel-3d'])[0], [], setUp('vessel-3d', {})) // true
 */
export const isMet = (run: HeatRun, turns: readonly Moment[], { rule, counting }: Setting): boolean => {
  const inHours = countsHours(rule, counting);
  if (runLength(run, inHours) < neededLength(rule, inHours)) return false;
  if (turnsInRun(turns, run, rule.turnsApartDays).length < rule.turns) return false;
  return rule.meanAboveCelsius === null || (bestMean(run, rule.days ?? 1) ?? 0) > rule.meanAboveCelsius;
};

/**
 * The runs of judged readings, by dates or by hours as the rule counts.
 * @source the citations of the rule set
 * @example runsIn(judgeReadings(daily([60, 60, 60]), [], RULE_SET_DATA['vessel-3d'], { depthCm: DEFAULT_DEPTH, doubtful: null }), setUp('vessel-3d', {})).length // 1
 */
export function runsIn(judged: readonly JudgedReading[], { rule, counting }: Setting): HeatRun[] {
  return countsHours(rule, counting) ? runsByHour(judged, rule) : runsByDay(judged, rule);
}

function metIn(batch: HeatHistory, start: Moment | null, until: Moment, setting: Setting): boolean {
  const inside = <T extends Moment>(moments: readonly T[]) =>
    moments.filter((moment) => after(moment, start) && byMoment(moment, until) < 0);
  const turns = inside(batch.turns);
  const judged = judgeReadings(inside(batch.readings), turns, setting.rule, setting);
  return runsIn(judged, setting).some((run) => isMet(run, turns, setting));
}

/**
 * Walks through what was added: fresh restarts, a join stays proven only if both were, a split inherits.
 * @source fresh material restarts: 40 CFR 503 App. B as commonly applied
 * @example lastStretch(batchOf({ joinings: [joiningAt(1, 'fresh')] }), setUp('vessel-3d', {}), nowAt(2)).why // 'fresh'
 */
export function lastStretch(batch: HeatHistory, setting: Setting, now: Now): Stretch {
  let stretch: Stretch = { start: null, why: null, inherited: null };
  const joinings = batch.joinings
    .filter((joining) => instantMs(joining.at) <= instantMs(now.at))
    .sort(byMoment);
  joinings.forEach((joining, index) => {
    if (joining.what === 'fresh') stretch = { start: joining, why: 'fresh', inherited: null };
    else if (joining.what === 'split-from') {
      if (joining.provenThen === true) stretch = { ...stretch, inherited: joining };
    } else if (joining.what === 'joined') {
      const empty = index === 0 && !batch.readings.some((reading) => byMoment(reading, joining) < 0);
      const ours = empty || stretch.inherited !== null || metIn(batch, stretch.start, joining, setting);
      stretch =
        ours && joining.provenThen === true
          ? { ...stretch, inherited: joining }
          : { start: joining, why: 'joined-unproven', inherited: null };
    }
  });
  return stretch;
}
