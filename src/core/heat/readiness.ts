import { addDays, daysBetween } from '../calendar.ts';
import type { Batch } from '../picture/types.ts';
import { type AmbientReading, ambientMean } from './ambient.ts';
import {
  CURING_DEFAULTS,
  type CuringSettings,
  dueDate,
  lastFresh,
  type PileStage,
  pileStage,
  settledReadings,
  wasHot,
} from './curing.ts';
import { hottestOf } from './danger-bands.ts';
import { type LabStandardName, labsOf } from './labs.ts';
import { byMoment, compareInstants, hoursBetween } from './moments.ts';
import type { Sanitising } from './sanitising.ts';
import type { Now } from './stretches.ts';
import type { HeatWhy, WhyArg } from './why.ts';

export const READINESS_CRITERIA = [
  'been-hot',
  'age',
  'curing',
  'turned',
  'near-ambient',
  'moisture',
  'no-reheating',
  'sanitised',
  'labs',
] as const;
export type ReadinessCriterion = (typeof READINESS_CRITERIA)[number];

/** What would settle a criterion that is not met. */
export type ReadinessNeed =
  | 'hot-readings'
  | 'wait'
  | 'turn'
  | 'reading'
  | 'reading-after-turn'
  | 'ambient-reading'
  | 'moisture-check'
  | 'moisture-mended'
  | 'milder-weather'
  | 'thaw'
  | 'sanitising'
  | 'rule-set'
  | 'lab-results'
  | 'start-date';

export type CriterionState = {
  key: ReadinessCriterion;
  state: 'met' | 'not-yet' | 'unknown' | 'not-asked';
  need: ReadinessNeed | null;
  /** Earliest local date on which waiting alone would meet it. */
  on: string | null;
  why: HeatWhy;
};

export type Readiness = {
  verdict: 'ready' | 'not-yet' | 'cannot-tell';
  stage: PileStage;
  criteria: CriterionState[];
};

export type ReadinessInput = {
  batch: Batch;
  ambient: readonly AmbientReading[];
  /** Null where the site has no rule set: then only that it was hot is asked for. */
  sanitising: Sanitising | null;
  labStandard: LabStandardName | null;
  litres: number | null;
  settings: CuringSettings;
};

type Args = Record<string, WhyArg>;
type Give = (
  key: ReadinessCriterion,
  state: CriterionState['state'],
  need: ReadinessNeed | null,
  args: Args,
  source: string,
  on?: string | null,
) => CriterionState;

const give: Give = (key, state, need, args, source, on = null) => ({
  key,
  state,
  need: state === 'met' || state === 'not-asked' ? null : need,
  on: state === 'met' ? null : on,
  why: { key: `readiness:${key}`, args, source, assumed: [] },
});

const COMMON = 'common practice, no source';
const AGRIFUTURES = 'AgriFutures, Poultry waste composting guidelines, Curing, 2020';

function age({ batch, settings }: ReadinessInput, now: Now): CriterionState {
  // Nothing was put in after it was closed, whenever it was begun.
  const fresh = lastFresh(batch, now) ?? batch.closedAt;
  if (fresh === null)
    return give('age', 'unknown', 'start-date', { days: null, needed: settings.ageDays }, COMMON);
  const days = daysBetween(fresh.localDate, now.localDate);
  const args = { days, needed: settings.ageDays, from: fresh.localDate };
  const state = days >= settings.ageDays ? 'met' : 'not-yet';
  return give('age', state, 'wait', args, COMMON, dueDate(fresh, settings.ageDays));
}

function curing({ settings }: ReadinessInput, stage: PileStage, now: Now): CriterionState {
  const since = stage.curingSince;
  const source = `${AGRIFUTURES} (under 45 °C after a turn); CCME PN 1340, 2005 (21 days, from memory)`;
  const needed = settings.curingDays;
  if (since === null) return give('curing', 'not-yet', 'reading-after-turn', { days: 0, needed }, source);
  const days = daysBetween(since.localDate, now.localDate);
  const state = days >= needed ? 'met' : 'not-yet';
  return give(
    'curing',
    state,
    'wait',
    { days, needed, from: since.localDate },
    source,
    dueDate(since, needed),
  );
}

function turned({ batch, settings }: ReadinessInput, now: Now): CriterionState {
  const fresh = lastFresh(batch, now);
  const turns = batch.turns.filter(
    (turn) => compareInstants(turn.at, now.at) <= 0 && (fresh === null || byMoment(turn, fresh) > 0),
  );
  const state = turns.length >= settings.turns ? 'met' : 'not-yet';
  return give('turned', state, 'turn', { turns: turns.length, needed: settings.turns }, COMMON);
}

function near({ settings }: ReadinessInput, stage: PileStage): CriterionState {
  const { riseC, hottestC, ambientC, reasons } = stage;
  const args = { riseC, hottestC, ambientC, withinC: settings.nearRiseC, coreAboveC: settings.coreAboveC };
  const to = (state: CriterionState['state'], need: ReadinessNeed | null) =>
    give('near-ambient', state, need, args, `${AGRIFUTURES} (within about 5 °C)`);
  if (hottestC === null || reasons.includes('stale')) return to('unknown', 'reading');
  if (reasons.includes('frozen') || hottestC <= settings.coreAboveC) return to('unknown', 'thaw');
  if (riseC === null) return to('unknown', 'ambient-reading');
  if (riseC > settings.nearRiseC) return to('not-yet', 'wait');
  return reasons.includes('tiny') || reasons.includes('dry')
    ? to('unknown', 'moisture-check')
    : to('met', null);
}

function moisture({ batch, settings }: ReadinessInput, now: Now): CriterionState {
  const source = 'On-Farm Composting Handbook, 1992 (40 to 65 %, from memory); squeeze: common practice';
  const last = batch.moisture
    .filter((m) => compareInstants(m.at, now.at) <= 0)
    .sort(byMoment)
    .at(-1);
  if (!last || daysBetween(last.localDate, now.localDate) > settings.moistureWithinDays) {
    return give('moisture', 'unknown', 'moisture-check', { on: last?.localDate ?? null }, source);
  }
  const { percent, feel, localDate } = last;
  const { from, to } = settings.moisturePct;
  const right = percent === null ? feel === 'right' : percent >= from && percent <= to;
  return give(
    'moisture',
    right ? 'met' : 'not-yet',
    'moisture-mended',
    { percent, feel, on: localDate },
    source,
  );
}

/** A pile that is done stays down after a turn: read two to fourteen days after it, in mild weather. */
const REHEAT_FROM_HOURS = 48;
const REHEAT_TO_HOURS = 14 * 24;

function noReheating({ batch, ambient, settings }: ReadinessInput, now: Now): CriterionState {
  const source = 'On-Farm Composting Handbook, 2nd ed., 2022, §3.5: no reheat after turning (seen)';
  const turn = batch.turns
    .filter((t) => compareInstants(t.at, now.at) <= 0)
    .sort(byMoment)
    .at(-1);
  if (!turn) return give('no-reheating', 'unknown', 'turn', {}, source);
  const settled = settledReadings(batch, now);
  const after = settled.filter((reading) => {
    const hours = hoursBetween(turn.at, reading.at);
    return hours >= REHEAT_FROM_HOURS && hours <= REHEAT_TO_HOURS;
  });
  const last = settled.findLast((reading) => byMoment(reading, turn) < 0);
  const before = settled.filter((r) => r.localDate === last?.localDate && byMoment(r, turn) < 0);
  if (after.length === 0) {
    return give(
      'no-reheating',
      'unknown',
      'reading-after-turn',
      { turnedOn: turn.localDate },
      source,
      addDays(turn.localDate, 2),
    );
  }
  const hottestC = Math.max(...after.map(hottestOf));
  const mean = ambientMean(ambient, after.at(-1)!.localDate);
  const beforeC = before.length > 0 ? Math.max(...before.map(hottestOf)) : null;
  const args = { turnedOn: turn.localDate, hottestC, beforeC, ambientC: mean?.celsius ?? null };
  const rose = beforeC !== null && hottestC - beforeC > settings.nearRiseC;
  if (rose || hottestC >= settings.curingBelowC) return give('no-reheating', 'not-yet', 'wait', args, source);
  if (mean === null) return give('no-reheating', 'unknown', 'ambient-reading', args, source);
  if (mean.celsius < settings.mildAboveC)
    return give('no-reheating', 'unknown', 'milder-weather', args, source);
  return give('no-reheating', 'met', null, args, source);
}

function sanitised({ sanitising }: ReadinessInput): CriterionState {
  if (sanitising === null) return give('sanitised', 'not-asked', null, { rule: null }, 'no rule set chosen');
  const { rule, verdict, counted, needed, metOn } = sanitising;
  const state = verdict === 'met' ? 'met' : verdict === 'not-yet' ? 'not-yet' : 'unknown';
  return give('sanitised', state, 'sanitising', { rule, counted, needed, metOn }, sanitising.why.source);
}

function labs({ batch, labStandard }: ReadinessInput): CriterionState {
  if (labStandard === null)
    return give('labs', 'not-asked', null, { standard: null }, 'none asked for by the site');
  const found = labsOf(batch, labStandard);
  const counts = { passed: found.passed.length, failed: found.failed.length, missing: found.missing.length };
  const state =
    found.failed.length > 0 ? 'not-yet' : found.missing.length + found.unclear.length > 0 ? 'unknown' : 'met';
  return give('labs', state, 'lab-results', { standard: labStandard, ...counts }, labStandard);
}

/**
 * Whether a batch is ready, criterion by criterion with the evidence of each. `cannot-tell` where it is frozen,
 * dry or tiny, because then a low proves nothing. Never ready unless it has been hot. It is advice: a person
 * says that a pile is ready.
 * @source each criterion names its own
 * @example readiness({ batch: batchOf({ readings: daily([60, 60, 60]) }) }, nowAt(2)).verdict // 'not-yet'
 */
export function readiness(input: Partial<ReadinessInput> & { batch: Batch }, now: Now): Readiness {
  const full: ReadinessInput = {
    ambient: [],
    sanitising: null,
    labStandard: null,
    litres: null,
    settings: CURING_DEFAULTS,
    ...input,
  };
  const stage = pileStage(full.batch, full.ambient, now, full.settings, full.litres);
  const hot = wasHot(full.batch, now, full.settings) || full.sanitising?.verdict === 'met';
  const criteria: CriterionState[] = [
    give('been-hot', hot ? 'met' : 'not-yet', 'hot-readings', { aboveC: full.settings.curingBelowC }, COMMON),
    age(full, now),
    curing(full, stage, now),
    turned(full, now),
    near(full, stage),
    moisture(full, now),
    noReheating(full, now),
    sanitised(full),
    labs(full),
  ];
  const ready = criteria.every(({ state }) => state === 'met' || state === 'not-asked');
  const lowProvesNothing = stage.reasons.some((r) => ['frozen', 'cold-core', 'dry', 'tiny'].includes(r));
  return { verdict: ready ? 'ready' : lowProvesNothing ? 'cannot-tell' : 'not-yet', stage, criteria };
}
