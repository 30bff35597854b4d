import type { RuleSetName } from '#records';
import { addDays } from '../calendar.ts';
import type { PileReading } from '../picture/types.ts';
import { lowestOf } from './danger-bands.ts';
import { byMoment, instantMs } from './moments.ts';
import { RULE_SET_DATA, type RuleSet } from './rule-sets.ts';
import { type Sanitising, type SanitisingReason, sanitising } from './sanitising.ts';
import type { HeatHistory, Now, SanitisingOptions } from './stretches.ts';

/** How the site's regulator lets a drum prove heat; null where nobody has said. */
export type DrumWay = 'in-vessel' | 'closed-pile' | null;

export type DrumProofInput = {
  readings: readonly PileReading[];
  /** Readings of what comes out: alone they prove nothing. */
  exit: readonly PileReading[];
  way: DrumWay;
  /** Least time that anything spends inside. */
  leastResidenceHours: number | null;
  /** Whether somebody has made sure that nothing runs through sooner. */
  noShortCircuit: boolean | null;
};

/** A drum has no turns or joins of its own to count: only its readings speak. */
const drumHistory: Omit<HeatHistory, 'readings'> = {
  state: 'closed',
  startedAt: null,
  closedAt: null,
  turns: [],
  joinings: [],
  covers: [],
};

/** A pile stays proven when it cools; of a drum that has cooled nobody knows what of it was hot for long enough. */
function unlessCooled(
  answer: Sanitising,
  readings: readonly PileReading[],
  { levelCelsius }: RuleSet,
  { localDate: today }: Now,
): Sanitising {
  const last = [...readings].sort(byMoment).at(-1);
  if (answer.verdict !== 'met' || !last || lowestOf(last) >= levelCelsius) return answer;
  const { localDate, entry } = last;
  return {
    ...answer,
    verdict: 'not-yet',
    since: null,
    metOn: null,
    provenBy: null,
    counted: 0,
    next: { what: 'start', localDate: addDays(today, 1), at: null },
    couldBeMetOn: addDays(today, Math.ceil(answer.unit === 'days' ? answer.needed : answer.needed / 24)),
    reasons: [{ code: 'low', localDate, celsius: lowestOf(last), levelCelsius, entry }, ...answer.reasons],
  };
}

const spanHours = (rule: RuleSet): number => rule.hours ?? (rule.days ?? 0) * 24;

/**
 * Whether what leaves a drum now was hot for long enough. A drum is fed daily, so fresh material would restart it
 * for ever; two ways are left. In-vessel: the coldest of several points holds over the last days, together with
 * the least residence and no short-circuit, if the regulator accepts that. Else the proof is made in the closed
 * pile. Exit temperature alone is no proof. Throws on a residence under 0.
 * @source 40 CFR 503 App. B, in-vessel; continuous drums: common practice, as the site's regulator accepts
 * @example drumProof({ readings: [0, 1, 2].map((day) => readingAt(day, [58, 56])), exit: [], way: 'in-vessel', leastResidenceHours: 96, noShortCircuit: true }, 'vessel-3d', {}, nowAt(2)).verdict // 'met'
 */
export function drumProof(
  drum: DrumProofInput,
  ruleSet: RuleSetName | RuleSet,
  options: SanitisingOptions,
  now: Now,
): Sanitising {
  const { way, leastResidenceHours: hours, noShortCircuit } = drum;
  if (hours !== null && !(hours >= 0))
    throw new RangeError(`leastResidenceHours ${hours} h: expected 0 or more`);
  const rule = typeof ruleSet === 'string' ? RULE_SET_DATA[ruleSet] : ruleSet;
  const neededHours = spanHours(rule);
  const reasons: SanitisingReason[] = [];
  if (way !== 'in-vessel') reasons.push({ code: 'fed-daily' }, { code: 'prove-in-closed-pile' });
  else {
    if (drum.readings.length === 0 && drum.exit.length > 0) reasons.push({ code: 'exit-only' });
    if (drum.readings.length > 0 && drum.readings.every((r) => r.celsius.length < 2))
      reasons.push({ code: 'one-point' });
    if (hours === null) reasons.push({ code: 'residence-unknown', neededHours });
    else if (hours < neededHours) reasons.push({ code: 'residence-short', hours, neededHours });
    if (noShortCircuit === null) reasons.push({ code: 'short-circuit-unknown' });
    if (noShortCircuit === false) reasons.push({ code: 'short-circuit' });
  }
  // What leaves now went in that long ago: only the last dates speak for it. A probe through the shell has its
  // own depth, so any depth is judged.
  const since = addDays(now.localDate, -Math.ceil(neededHours / 24));
  const readings = drum.readings.filter((r) => r.localDate >= since && r.celsius.length >= 2);
  const answer = unlessCooled(
    sanitising(
      { ...drumHistory, readings },
      rule,
      { ...options, depthCm: options.depthCm ?? { fromCm: 0, toCm: 1000 } },
      now,
    ),
    readings.filter(({ at }) => instantMs(at) <= instantMs(now.at)),
    rule,
    now,
  );
  const assumed = [...answer.why.assumed, { code: 'regulator-accepts' as const, args: { way } }];
  if (reasons.length === 0) return { ...answer, why: { ...answer.why, assumed } };
  return {
    ...answer,
    verdict: 'cannot-show',
    metOn: null,
    next: null,
    couldBeMetOn: null,
    reasons: [...reasons, ...answer.reasons],
    why: { ...answer.why, assumed },
  };
}
