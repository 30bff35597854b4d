import { addDays, daysBetween } from '../calendar.ts';
import type { Batch, Moment, PileReading } from '../picture/types.ts';
import { type AmbientReading, ambientMean } from './ambient.ts';
import { hottestOf } from './danger-bands.ts';
import { NEAR_AMBIENT_RISE } from './forecast.ts';
import { byMoment, compareInstants, hoursBetween } from './moments.ts';
import { TURN_SHADOW_HOURS } from './runs.ts';
import type { Now } from './stretches.ts';
import type { HeatWhy } from './why.ts';

/** What a site may set about curing. °C, days, litres. */
export type CuringSettings = {
  /** Curing has begun once it stays under this after a turn. @source AgriFutures, Curing, 2020 (seen) */
  curingBelowC: number;
  /** @source AgriFutures, Curing, 2020: within about 5 °C of ambient (seen) */
  nearRiseC: number;
  /** Under this a low core may only be cold. Common practice. */
  coreAboveC: number;
  /** @source CCME PN 1340, 2005: at least 21 days (from memory) */
  curingDays: number;
  /** Since the last fresh load. Common practice: one to two months; the shorter is the least. */
  ageDays: number;
  /** Common practice. */
  turns: number;
  /** @source On-Farm Composting Handbook, 1992: 40 to 65 % (from memory) */
  moisturePct: { from: number; to: number };
  /** A moisture check older than this says little. Common practice. */
  moistureWithinDays: number;
  /** Under this mean a pile may fail to reheat for the cold alone. Common practice. */
  mildAboveC: number;
  /** A smaller heap loses its heat as fast as it makes it (about a cubic metre). Common practice. */
  tinyLitres: number;
  /** A reading older than this tells no stage. Common practice: weekly readings in curing. */
  staleDays: number;
  /** Time in which a new pile is expected to heat. @source USDA NRCS Job Sheet 317, 2002: within 7 days; twice that */
  heatWithinDays: number;
};

/** The defaults; each has its source at `CuringSettings`. @example CURING_DEFAULTS.curingBelowC // 45 */
export const CURING_DEFAULTS: CuringSettings = {
  curingBelowC: 45,
  nearRiseC: NEAR_AMBIENT_RISE,
  coreAboveC: 10,
  curingDays: 21,
  ageDays: 30,
  turns: 2,
  moisturePct: { from: 40, to: 65 },
  moistureWithinDays: 30,
  mildAboveC: 10,
  tinyLitres: 1000,
  staleDays: 14,
  heatWithinDays: 14,
};

export type CannotTell =
  | 'no-readings'
  | 'stale'
  | 'just-turned'
  | 'frozen'
  | 'cold-core'
  | 'dry'
  | 'tiny'
  | 'no-ambient'
  | 'never-hot';

export type PileStage = {
  /** `cooling`: was hot, is under 45 °C, and no turn has shown yet that it stays so. */
  stage: 'heating' | 'active' | 'cooling' | 'curing' | 'near-ambient' | 'cannot-tell';
  reasons: CannotTell[];
  hottestC: number | null;
  ambientC: number | null;
  riseC: number | null;
  curingSince: Moment | null;
  why: HeatWhy;
};

const upTo = <T extends Moment>(moments: readonly T[], now: Now): T[] =>
  moments.filter((moment) => compareInstants(moment.at, now.at) <= 0).sort(byMoment);

/**
 * When fresh (or joined and unproven) material last went in: age and curing count from there.
 * @source common practice, no source
 * @example lastFresh(batchOf({ joinings: [joiningAt(3, 'fresh')] }), nowAt(9)).localDate // '2026-03-05'
 */
export function lastFresh(batch: Batch, now: Now): Moment | null {
  const added = upTo(batch.joinings, now).filter(
    (j) => j.what === 'fresh' || (j.what === 'joined' && j.provenThen !== true),
  );
  return added.at(-1) ?? batch.startedAt;
}

/**
 * Readings since fresh material, those in the shadow of a turn left out.
 * @source a low shortly after a turn is no sign: common practice
 * @example settledReadings(batchOf({ readings: daily([60, 30]), turns: [turnAt(0.5)] }), nowAt(2)).length // 1
 */
export function settledReadings(batch: Batch, now: Now): PileReading[] {
  const fresh = lastFresh(batch, now);
  const turns = upTo(batch.turns, now);
  let next = 0;
  return upTo(batch.readings, now).filter((reading) => {
    // Both stand in order: the last turn before a reading throws the longest shadow on it.
    while (next < turns.length && byMoment(turns[next]!, reading) < 0) next += 1;
    if (fresh !== null && byMoment(reading, fresh) < 0) return false;
    const turn = turns[next - 1];
    return !turn || hoursBetween(turn.at, reading.at) > TURN_SHADOW_HOURS;
  });
}

/**
 * When curing began: the first settled reading under 45 °C after a turn, if every later one stays under; null
 * where the batch was never hot, was not turned since, or went hot again.
 * @source AgriFutures, Poultry waste composting guidelines, Curing, 2020: stays under 45 °C even after turning
 * @example curingSince(batchOf({ readings: [readingAt(20, 58), readingAt(24, 43)], turns: [turnAt(22)] }), nowAt(25)).localDate // '2026-03-26'
 */
export function curingSince(
  batch: Batch,
  now: Now,
  settings: CuringSettings = CURING_DEFAULTS,
): Moment | null {
  const settled = settledReadings(batch, now);
  const fresh = lastFresh(batch, now);
  const hot = upTo(batch.readings, now).filter(
    (r) => hottestOf(r) >= settings.curingBelowC && (fresh === null || byMoment(r, fresh) >= 0),
  );
  const lastHot = hot.at(-1);
  if (!lastHot) return null;
  const turn = upTo(batch.turns, now).find((t) => byMoment(t, lastHot) > 0);
  const first = turn && settled.find((reading) => byMoment(reading, turn) > 0);
  return first ? { entry: first.entry, at: first.at, localDate: first.localDate } : null;
}

/**
 * Whether the last moisture check felt or measured dry.
 * @source On-Farm Composting Handbook, 1992: under 40 % (from memory)
 */
function isDry(batch: Batch, now: Now, settings: CuringSettings): boolean {
  const last = upTo(batch.moisture, now).at(-1);
  return (
    last !== undefined &&
    (last.feel === 'dry' || (last.percent !== null && last.percent < settings.moisturePct.from))
  );
}

/**
 * Where a batch stands: heating, active, cooling, curing, near ambient, or `cannot-tell` with the reasons, because
 * a low in a frozen, dry or tiny pile, or just after a turn, is no sign of being finished. The hottest point of the
 * last day with a settled reading decides. Throws on a volume under 0.
 * @source 45 °C and 5 °C: AgriFutures, Curing, 2020; frozen, dry or tiny: common practice
 * @example pileStage(batchOf({ readings: [readingAt(0, 60), readingAt(20, 27)], turns: [turnAt(10)] }), [{ ...momentAt(20, 9), celsius: 22.5 }], nowAt(20)).stage // 'near-ambient'
 */
export function pileStage(
  batch: Batch,
  ambient: readonly AmbientReading[],
  now: Now,
  settings: CuringSettings = CURING_DEFAULTS,
  litres: number | null = null,
): PileStage {
  if (litres !== null && !(litres >= 0)) throw new RangeError(`litres ${litres} L: expected 0 or more`);
  const settled = settledReadings(batch, now);
  const lastDate = settled.at(-1)?.localDate;
  const last = settled.filter((reading) => reading.localDate === lastDate);
  const since = curingSince(batch, now, settings);
  const hottestC = last.length > 0 ? Math.max(...last.map(hottestOf)) : null;
  const ambientC = lastDate ? (ambientMean(ambient, lastDate)?.celsius ?? null) : null;
  const riseC = hottestC === null || ambientC === null ? null : hottestC - ambientC;
  const give = (stage: PileStage['stage'], reasons: CannotTell[] = []): PileStage => ({
    stage,
    reasons,
    hottestC,
    ambientC,
    riseC,
    curingSince: since,
    why: {
      key: 'pile-stage',
      args: {
        hottestC,
        ambientC,
        riseC,
        curingBelowC: settings.curingBelowC,
        nearRiseC: settings.nearRiseC,
        lastDate: lastDate ?? null,
      },
      source: 'AgriFutures, Poultry waste composting guidelines, Curing, 2020',
      assumed: litres === null ? [{ code: 'volume-unknown', args: {} }] : [],
    },
  });
  if (hottestC === null || lastDate === undefined) {
    const fresh = lastFresh(batch, now);
    const any = upTo(batch.readings, now).some((r) => fresh === null || byMoment(r, fresh) >= 0);
    return give('cannot-tell', [any ? 'just-turned' : 'no-readings']);
  }
  if (daysBetween(lastDate, now.localDate) > settings.staleDays) return give('cannot-tell', ['stale']);
  if (last.some((reading) => Math.min(...reading.celsius) <= 0)) return give('cannot-tell', ['frozen']);
  if (hottestC >= settings.curingBelowC) return give('active');
  const beenHot = wasHot(batch, now, settings);
  if (!beenHot) {
    const started = lastFresh(batch, now)?.localDate ?? settled[0]!.localDate;
    const young = daysBetween(started, now.localDate) <= settings.heatWithinDays;
    return young ? give('heating') : give('cannot-tell', ['never-hot']);
  }
  if (since === null) return give('cooling');
  if (ambientC === null) return give('curing', ['no-ambient']);
  if (riseC! > settings.nearRiseC) return give('curing');
  const doubts: CannotTell[] = [];
  if (hottestC <= settings.coreAboveC) doubts.push('cold-core');
  if (isDry(batch, now, settings)) doubts.push('dry');
  if (litres !== null && litres < settings.tinyLitres) doubts.push('tiny');
  return doubts.length > 0 ? give('cannot-tell', doubts) : give('near-ambient');
}

/**
 * Whether any point has been at 45 °C or over since fresh material went in.
 * @source AgriFutures, Curing, 2020: curing is under 45 °C
 * @example wasHot(batchOf({ readings: daily([44.9]) }), nowAt(1)) // false
 */
export function wasHot(batch: Batch, now: Now, settings: CuringSettings = CURING_DEFAULTS): boolean {
  const fresh = lastFresh(batch, now);
  return upTo(batch.readings, now).some(
    (r) => hottestOf(r) >= settings.curingBelowC && (fresh === null || byMoment(r, fresh) >= 0),
  );
}

/**
 * Self-heating class of a laboratory vessel by its rise over the room, V most stable. A rise on a boundary is
 * given the less stable class and marked. Never for a pile in the field.
 * @source Brinton et al., BioCycle, 1995 (class table from memory)
 * @example selfHeatingClass(15).class // 'IV'
 */
export function selfHeatingClass(riseC: number): {
  class: 'I' | 'II' | 'III' | 'IV' | 'V';
  onBoundary: boolean;
} {
  if (!(riseC >= 0 && riseC <= 70)) throw new RangeError(`riseC ${riseC} °C: expected 0 to 70`);
  const classes = ['V', 'IV', 'III', 'II', 'I'] as const;
  const onBoundary = riseC > 0 && riseC <= 40 && riseC % 10 === 0;
  return { class: classes[Math.min(4, Math.floor(riseC / 10))]!, onBoundary };
}

/**
 * The Canadian laboratory test of maturity by vessel: under 8 °C of rise, and cured for at least 21 days.
 * @source CCME PN 1340, 2005 (from memory)
 * @example vesselMature(7.9, 21) // true
 */
export function vesselMature(riseC: number, curedDays: number): boolean {
  if (!(riseC >= -5 && riseC <= 70)) throw new RangeError(`riseC ${riseC} °C: expected -5 to 70`);
  if (!(curedDays >= 0)) throw new RangeError(`curedDays ${curedDays} d: expected 0 or more`);
  return riseC < 8 && curedDays >= 21;
}

/**
 * The local date on which a span of days from a moment is complete.
 * @source none needed: calendar
 * @example dueDate(momentAt(0, 1), 21) // '2026-03-23'
 */
export const dueDate = (from: Moment, days: number): string => addDays(from.localDate, days);
