import type { RuleSetName } from '#records';
import type { Batch, Joining, Moment } from '../picture/types.ts';
import { byMoment, compareInstants } from './moments.ts';
import { type DayCount, type DepthRange, RULE_SET_DATA, type RuleSet } from './rule-sets.ts';
import {
  bestMean,
  countsHours,
  type Doubtful,
  doubtOver,
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
  /** Spans between a good check of the probe and one that failed, each ended by the next good check. */
  doubts?: readonly Doubtful[];
};

/** What of a batch the proof of heat rests on. */
export type HeatHistory = Pick<
  Batch,
  'state' | 'startedAt' | 'closedAt' | 'readings' | 'turns' | 'joinings' | 'covers'
>;

export type Now = { at: string; localDate: string };

/** A rule with the site's own ways of applying it. */
export type Setting = { rule: RuleSet; counting: DayCount; depthCm: DepthRange; doubts: readonly Doubtful[] };

/** A stretch of a batch's life in which nothing was added that restarts the count. */
export type Stretch = {
  start: Joining | null;
  why: 'fresh' | 'joined-unproven' | 'proof-in-doubt' | null;
  inherited: Joining | null;
  /** First and last reading that what is inherited rests on. */
  provenBy: Span | null;
};

export type Span = { from: string; to: string };

const widest = (a: Span | null, b: Span | null): Span | null => {
  if (a === null || b === null) return a ?? b;
  return {
    from: compareInstants(a.from, b.from) <= 0 ? a.from : b.from,
    to: compareInstants(a.to, b.to) >= 0 ? a.to : b.to,
  };
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
  const { doubts = [] } = options;
  return { rule, counting: options.counting ?? rule.counting, depthCm, doubts };
}

/**
 * Whether a run is long enough, turned often enough and, where asked, hot enough on average.
 * @source the citations of the rule set
 * @example isMet(runsByDay(judgeReadings(daily([60, 60, 60]), [], RULE_SET_DATA['vessel-3d'], { depthCm: DEFAULT_DEPTH, doubts: [] }), RULE_SET_DATA['vessel-3d'])[0], [], setUp('vessel-3d', {})) // true
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
 * @example runsIn(judgeReadings(daily([60, 60, 60]), [], RULE_SET_DATA['vessel-3d'], { depthCm: DEFAULT_DEPTH, doubts: [] }), setUp('vessel-3d', {})).length // 1
 */
export function runsIn(judged: readonly JudgedReading[], { rule, counting }: Setting): HeatRun[] {
  return countsHours(rule, counting) ? runsByHour(judged, rule) : runsByDay(judged, rule);
}

function metIn(batch: HeatHistory, start: Moment | null, until: Moment, setting: Setting): Span | null {
  const inside = <T extends Moment>(moments: readonly T[]) =>
    moments.filter((moment) => after(moment, start) && byMoment(moment, until) < 0);
  const turns = inside(batch.turns);
  const judged = judgeReadings(inside(batch.readings), turns, setting.rule, setting);
  const run = runsIn(judged, setting).find((each) => isMet(each, turns, setting));
  return run ? { from: run.from.at, to: run.to.at } : null;
}

/**
 * Whether what came in is still to be taken for proven: it was so then, and no probe that failed later read any of
 * it. Where the book does not say which readings proved it, any doubt from before is enough.
 */
const stillProven = (joining: Joining, { doubts }: Setting): boolean =>
  joining.provenThen === true &&
  doubtOver(doubts, joining.provenBy?.from ?? FROM_ALWAYS, joining.provenBy?.to ?? joining.at) === null;

const FROM_ALWAYS = '0001-01-01T00:00:00Z';

const NOTHING_ADDED: Stretch = { start: null, why: null, inherited: null, provenBy: null };
const restartedBy = (start: Joining, why: Stretch['why']): Stretch => ({ ...NOTHING_ADDED, start, why });
const spanIn = ({ provenBy, at }: Joining): Span => provenBy ?? { from: at, to: at };

/**
 * Walks through what was added: fresh restarts, a join stays proven only if both were, a split inherits.
 * @source fresh material restarts: 40 CFR 503 App. B as commonly applied
 * @example lastStretch(batchOf({ joinings: [joiningAt(1, 'fresh')] }), setUp('vessel-3d', {}), nowAt(2)).why // 'fresh'
 */
export function lastStretch(batch: HeatHistory, setting: Setting, now: Now): Stretch {
  let stretch: Stretch = NOTHING_ADDED;
  const joinings = batch.joinings
    .filter((joining) => compareInstants(joining.at, now.at) <= 0)
    .sort(byMoment);
  joinings.forEach((joining, index) => {
    const proven = stillProven(joining, setting);
    const inDoubt = joining.provenThen === true && !proven;
    if (joining.what === 'fresh' && joining.provenThen !== true) stretch = restartedBy(joining, 'fresh');
    else if (joining.what === 'split-from') {
      if (proven) stretch = { ...stretch, inherited: joining, provenBy: spanIn(joining) };
    } else if (joining.what === 'cover') {
      // Laid on as proven; with its proof in doubt it is as good as fresh.
      if (inDoubt) stretch = restartedBy(joining, 'proof-in-doubt');
    } else if (joining.what === 'joined' || joining.what === 'fresh') {
      // Out of a drum that had proven it, what comes is joined like a proven pile.
      const empty = index === 0 && !batch.readings.some((reading) => byMoment(reading, joining) < 0);
      const ours = stretch.inherited ? stretch.provenBy : metIn(batch, stretch.start, joining, setting);
      stretch =
        (empty || ours) && proven
          ? { ...stretch, inherited: joining, provenBy: widest(ours, spanIn(joining)) }
          : restartedBy(joining, inDoubt ? 'proof-in-doubt' : 'joined-unproven');
    }
  });
  return stretch;
}
