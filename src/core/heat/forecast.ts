import { addDays, daysBetween } from '../calendar.ts';
import type { Batch, Moment, PileReading } from '../picture/types.ts';
import { AMBIENT_DAYS, type AmbientReading, ambientMean } from './ambient.ts';
import { hottestOf } from './danger-bands.ts';
import { crossing, type FitPoint } from './fit.ts';
import { byMoment, compareInstants, hoursBetween } from './moments.ts';
import type { Now } from './stretches.ts';
import type { HeatAssumption, HeatWhy } from './why.ts';

/**
 * Rise over ambient at which a pile counts as near it.
 * @source AgriFutures, Poultry waste composting guidelines, Curing, 2020: within about 5 °C (seen)
 */
export const NEAR_AMBIENT_RISE = 5;

/** A pile still warms for days after a turn: readings before its peak are no decay. Common practice. */
const PEAK_SLACK_C = 3;
/** Probes and people round: no fit is believed to better than this. @source low-cost sensors ±1 °C (SciELO 2017) */
const NOISE_FLOOR_C = 0.5;
const HORIZON_DAYS = 365;
/** A pile goes on warming for a day or two after a turn: no decay to be read before. Common practice. */
const WARMING_HOURS = 48;
/**
 * Readings close together share the same spell of weather, so ten daily ones are worth fewer than ten weekly
 * ones: the variance grows by this share from weekly to daily readings. Set on simulated piles (see the bench),
 * no source.
 */
const SHARED_WEATHER = 0.35;

export type NoForecast =
  | { code: 'too-few-readings'; readings: number; needed: number }
  | { code: 'not-falling'; readings: number }
  | { code: 'frost'; localDate: string; celsius: number }
  | { code: 'no-ambient'; readings: number }
  | { code: 'near-already'; riseC: number; localDate: string };

export type HeatForecast =
  | { known: false; reason: NoForecast; why: HeatWhy }
  | {
      known: true;
      /** Best estimate and the 80 % interval, in days from `now`; `toDays` null where no end can be given. */
      inDays: number;
      fromDays: number;
      toDays: number | null;
      /** The same as local dates, outward to whole days. */
      on: string;
      from: string;
      to: string | null;
      readings: number;
      since: Moment | null;
      why: HeatWhy;
    };

export type RisePoint = Moment & { riseC: number; ambientC: number; approximate: boolean };

/**
 * Rise over ambient, as a mean of days, for each local date that has readings and a known ambient. What was read
 * at one instant (several depths, several points) counts by its hottest; a logger's day counts as their mean, once,
 * because a hundred readings of one afternoon are no hundred witnesses. °C.
 * @source none needed: the hottest point decides readiness; a date has one voice: common practice
 * @example risesOf(daily([60, 50]), [{ ...momentAt(0, 9), celsius: 12 }]).map(({ riseC }) => riseC) // [48, 38]
 */
export function risesOf(readings: readonly PileReading[], ambient: readonly AmbientReading[]): RisePoint[] {
  const dates = new Map<string, PileReading[]>();
  for (const reading of [...readings].sort(byMoment)) {
    dates.set(reading.localDate, [...(dates.get(reading.localDate) ?? []), reading]);
  }
  return [...dates].flatMap(([localDate, ofDate]) => {
    const around = ambientMean(ambient, localDate) ?? ambientMean(ambient, localDate, 2 * AMBIENT_DAYS);
    if (around === null) return [];
    const hottest = new Map<string, number>();
    for (const reading of ofDate) {
      hottest.set(
        reading.at,
        Math.max(hottest.get(reading.at) ?? Number.NEGATIVE_INFINITY, hottestOf(reading)),
      );
    }
    const mean = [...hottest.values()].reduce((sum, celsius) => sum + celsius, 0) / hottest.size;
    const { entry, at } = ofDate.at(-1)!;
    const approximate = ofDate.every((reading) => reading.approximate);
    return [{ entry, at, localDate, approximate, riseC: mean - around.celsius, ambientC: around.celsius }];
  });
}

/**
 * The last thing that set a pile going again: a turn, fresh material or a join.
 * @source common practice, no source
 */
function lastStirred(batch: Batch, now: Now): Moment | null {
  const stirs = [...batch.turns, ...batch.joinings.filter((j) => j.what === 'fresh' || j.what === 'joined')];
  return (
    stirs
      .filter((m) => compareInstants(m.at, now.at) <= 0)
      .sort(byMoment)
      .at(-1) ?? null
  );
}

function fromPeak(rises: RisePoint[]): RisePoint[] {
  const top = Math.max(...rises.map((point) => point.riseC));
  return rises.slice(rises.findIndex((point) => point.riseC >= top - PEAK_SLACK_C));
}

/**
 * When a batch will be near ambient (rise of its hottest point down to 5 °C), from its rise since it was last
 * turned or fed: an exponential approach by weighted least squares, with an 80 % interval. None from fewer than
 * three readings, from a rise that does not fall, or across frost. Days and local dates.
 * @source approach to ambient: Newton's law of cooling as an empirical fit; 5 °C: AgriFutures, Curing, 2020
 * @example forecastNearAmbient(batchOf({ readings: [readingAt(3, 42), readingAt(13, 27), readingAt(23, 19.5)] }), [3, 13, 23].map((day) => ({ ...momentAt(day, 9), celsius: 12 })), nowAt(23)).inDays // 5.8 (to 0.1)
 */
export function forecastNearAmbient(
  batch: Batch,
  ambient: readonly AmbientReading[],
  now: Now,
  nearRiseC: number = NEAR_AMBIENT_RISE,
): HeatForecast {
  if (!(nearRiseC > 0 && nearRiseC <= 20))
    throw new RangeError(`nearRiseC ${nearRiseC} °C: expected 0 to 20`);
  const stir = lastStirred(batch, now);
  const settled = batch.readings.filter(
    (r) =>
      compareInstants(r.at, now.at) <= 0 &&
      (stir === null || (byMoment(r, stir) > 0 && hoursBetween(stir.at, r.at) > WARMING_HOURS)),
  );
  const rises = risesOf(settled, ambient);
  const assumed: HeatAssumption[] = [
    { code: 'ambient-mean', args: { days: AMBIENT_DAYS } },
    { code: 'ambient-stays', args: { celsius: rises.at(-1)?.ambientC ?? null } },
  ];
  const why = (args: HeatWhy['args']): HeatWhy => ({
    key: 'near-ambient-forecast',
    args: { nearRiseC, readings: rises.length, ...args },
    source: 'exponential approach to ambient, weighted least squares; 5 °C: AgriFutures, Curing, 2020',
    assumed,
  });
  const none = (reason: NoForecast): HeatForecast => ({ known: false, reason, why: why({}) });

  if (new Set(settled.map((r) => r.localDate)).size >= 3 && rises.length < 3)
    return none({ code: 'no-ambient', readings: rises.length });
  if (rises.length < 3) return none({ code: 'too-few-readings', readings: rises.length, needed: 3 });
  const frost = frostIn(batch, ambient, rises[0]!.localDate, now);
  if (frost) return none(frost);
  const last = rises.at(-1)!;
  if (last.riseC <= nearRiseC)
    return none({ code: 'near-already', riseC: last.riseC, localDate: last.localDate });
  const used = fromPeak(rises);
  if (used.length < 3) {
    const falling = used.length > 1 && last.riseC < used[0]!.riseC;
    return none(
      falling
        ? { code: 'too-few-readings', readings: used.length, needed: 3 }
        : { code: 'not-falling', readings: rises.length },
    );
  }
  const origin = used[0]!.at;
  const points: FitPoint[] = used.map((point) => ({
    t: hoursBetween(origin, point.at) / 24,
    rise: point.riseC,
    // "about 50" is believed half as closely as "50": a quarter of the weight.
    weight: point.approximate ? 0.25 : 1,
  }));
  const span = points.at(-1)!.t;
  const aWeek = Math.min(7, Math.max(1, (7 * (points.length - 1)) / span));
  const inflation = 1 + (SHARED_WEATHER * (aWeek - 1)) / 6;
  const found = crossing(points, nearRiseC, span + HORIZON_DAYS, { noiseFloorC: NOISE_FLOOR_C, inflation });
  if (found === null) return none({ code: 'not-falling', readings: used.length });
  const sinceOrigin = hoursBetween(origin, now.at) / 24;
  const dated = (days: number) => addDays(now.localDate, days);
  const [inDays, fromDays] = [found.at - sinceOrigin, found.from - sinceOrigin];
  const toDays = found.to === null ? null : found.to - sinceOrigin;
  return {
    known: true,
    inDays,
    fromDays,
    toDays,
    on: dated(Math.round(inDays)),
    from: dated(Math.floor(fromDays)),
    to: toDays === null ? null : dated(Math.ceil(toDays)),
    readings: used.length,
    since: stir,
    why: why({ used: used.length, lastRiseC: last.riseC, ambientC: last.ambientC }),
  };
}

/** Frost of the air or in the pile between the first reading used and now: a frozen pile is not a finished one. */
function frostIn(
  batch: Batch,
  ambient: readonly AmbientReading[],
  from: string,
  now: Now,
): NoForecast | null {
  const cold = [
    ...ambient.map(({ localDate, celsius }) => ({ localDate, celsius })),
    ...batch.readings.map((r) => ({ localDate: r.localDate, celsius: Math.min(...r.celsius) })),
  ].find(
    (r) => r.celsius <= 0 && r.localDate >= addDays(from, -1) && daysBetween(r.localDate, now.localDate) >= 0,
  );
  return cold ? { code: 'frost', ...cold } : null;
}
