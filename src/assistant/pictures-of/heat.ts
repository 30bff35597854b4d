import type { HeatData } from '#charts';
import {
  addDays,
  type Batch,
  daysBetween,
  forecastNearAmbient,
  type HeatForecast,
  hottestOf,
  localDateOf,
  localTimeOf,
  lowestOf,
  NEAR_AMBIENT_RISE,
  type Picture,
  RULE_SET_DATA,
  ruleSetOf,
  type Sanitising,
} from '#core';
import { fromCelsius } from '#records';
import { airNow } from '../matters/heat.ts';
import { proofOf } from '../matters/judging.ts';
import type { Manner } from '../ports.ts';
import { type Line, type Say, say } from '../say.ts';
import { type Drawing, text, ticksOf, type Unsaid } from './drawing.ts';

/** Fewer readings are said in a line; a curve of two points tells nothing. */
const LEAST_READINGS = 3;
/** How far back and ahead a phone can show days that are still told apart. */
const BACK_DAYS = 75;
const AHEAD_DAYS = 28;

type Asked = { picture: Picture; manner: Manner; now: string };
type At = { x: number; hot: number; low: number; localDate: string; at: string };
type Known = Extract<HeatForecast, { known: true }>;

/** How a pile has done: what was read, turns and covers, the days that count, and where it is heading. */
export function heatDrawing(asked: Asked, place: string, batch: Batch): Drawing | null {
  const { picture, manner, now } = asked;
  const degrees = (celsius: number): number => fromCelsius(celsius, manner.units.temperature);
  const readings = readAt(batch, now, manner.timeZone);
  if (readings.length < LEAST_READINGS) return null;
  const last = readings.at(-1)!;
  const first = readings[0]!;
  const recent = readings.filter(({ localDate }) => localDate >= addDays(last.localDate, -BACK_DAYS));
  const shown = recent.length >= LEAST_READINGS ? recent : readings.slice(-LEAST_READINGS);
  const origin = shown[0]!.localDate;
  const dayOf = (instant: string): number => dayNumber(origin, instant, manner.timeZone);
  for (const reading of shown) reading.x = dayOf(reading.at);

  const today = dayOf(now);
  const forecast = forecastNearAmbient(batch, picture.ambient, { at: now, localDate: manner.today });
  const end = forecast.known ? endOf(forecast, today) : Math.ceil(today + 0.5);
  const inView = (x: number): boolean => x >= 0 && x <= end;
  const ambient = ambientDays(picture, origin, manner.today);
  const rule = ruleSetOf(picture, manner.today);
  const verdict = proofOf(picture, batch, { now, today: manner.today });
  const levelC = rule ? RULE_SET_DATA[rule].levelCelsius : null;
  const several = shown.some(({ hot, low }) => hot !== low);
  const all = [
    ...shown.flatMap(({ hot, low }) => [hot, low]),
    ...ambient.map(({ y }) => y),
    ...(levelC === null ? [] : [levelC]),
  ];
  const spare = 0.04 * (Math.max(...all) - Math.min(...all));
  const yTicks = ticksOf(
    degrees(Math.min(...all) - spare),
    degrees(Math.max(...all) + 2 * spare),
    6,
    (value) => say('chart-number', { value: { number: value } }),
  );
  const title = titleOf(asked, place, last, forecast);
  const sub = subOf(last, verdict, forecast);
  const data: Unsaid<HeatData> = {
    title: text(title),
    sub: text(sub),
    x: { min: 0, max: end, name: text(say('chart-axis-date')), ticks: dateTicks(origin, end) },
    y: { ...yTicks, name: text(say('chart-axis-temperature', { unit: { text: manner.units.temperature } })) },
    hottest: {
      name: text(say(several ? 'chart-heat-hottest' : 'chart-heat-read')),
      points: shown.map(({ x, hot }) => [x, degrees(hot)]),
    },
    lowest: several
      ? { name: text(say('chart-heat-lowest')), points: shown.map(({ x, low }) => [x, degrees(low)]) }
      : null,
    ambient:
      ambient.length > 0
        ? { name: text(say('chart-heat-ambient')), points: ambient.map(({ x, y }) => [x, degrees(y)]) }
        : null,
    level:
      levelC === null
        ? null
        : { y: degrees(levelC), text: text(say('chart-heat-level', { level: { celsius: levelC } })) },
    counted: countedOf(verdict, readings, dayOf),
    marks: marksOf(batch, dayOf, inView),
    forecast: forecast.known ? forecastOf(forecast, last.x, today, end, degrees) : null,
  };
  const turns = batch.turns.filter((turn) => inView(dayOf(turn.at)));
  const top = shown.reduce((a, b) => (b.hot > a.hot ? b : a));
  const alt: Line[] = [
    title,
    sub,
    [
      say('chart-heat-alt', {
        from: { date: first === shown[0] ? first.localDate : origin },
        count: { count: shown.length },
        high: { celsius: top.hot },
        on: { date: top.localDate },
      }),
      ...(turns.length > 0 ? [say('pile-turns', { count: { count: turns.length } })] : []),
    ],
  ];
  return { draw: 'heat', alt, data };
}

/** One voice an instant: several points and depths read at once are their hottest and their lowest. */
function readAt(batch: Batch, now: string, zone: string): At[] {
  const instants = new Map<string, At>();
  for (const reading of batch.readings) {
    if (reading.at > now) continue;
    const known = instants.get(reading.at);
    instants.set(reading.at, {
      x: 0,
      at: reading.at,
      localDate: localDateOf(reading.at, zone),
      hot: Math.max(hottestOf(reading), known?.hot ?? Number.NEGATIVE_INFINITY),
      low: Math.min(lowestOf(reading), known?.low ?? Number.POSITIVE_INFINITY),
    });
  }
  return [...instants.values()].sort((a, b) => a.at.localeCompare(b.at));
}

/** Days since the beginning of a local date, by the site's own clock. */
function dayNumber(origin: string, instant: string, zone: string): number {
  const local = localTimeOf(instant, zone);
  const [hours = 0, minutes = 0] = local.slice(11, 16).split(':').map(Number);
  return daysBetween(origin, local.slice(0, 10)) + (hours * 60 + minutes) / 1440;
}

function ambientDays(picture: Picture, from: string, to: string): { x: number; y: number }[] {
  const days = new Map<string, number[]>();
  for (const { localDate, celsius } of picture.ambient) {
    if (localDate >= from && localDate <= to) days.set(localDate, [...(days.get(localDate) ?? []), celsius]);
  }
  return [...days]
    .sort(([a], [b]) => a.localeCompare(b))
    .map(([date, all]) => ({
      x: daysBetween(from, date) + 0.5,
      y: all.reduce((sum, each) => sum + each, 0) / all.length,
    }));
}

/** The last day shown: the end of the interval, or as far ahead as leaves the readings room. */
function endOf({ inDays, toDays }: Known, today: number): number {
  const room = Math.max(today + AHEAD_DAYS, 2.5 * today, today + inDays + 4);
  return Math.ceil(Math.min(today + (toDays ?? inDays + AHEAD_DAYS) + 2, room));
}

function dateTicks(origin: string, end: number): Unsaid<HeatData>['x']['ticks'] {
  const every = [1, 2, 3, 4, 7, 14, 21, 28, 56, 84].find((days) => end / days <= 5.5) ?? Math.ceil(end / 5);
  const ticks = [];
  for (let at = 0; at <= end; at += every) {
    ticks.push({ at, text: text(say('chart-day', { day: { day: addDays(origin, at) } })) });
  }
  return ticks;
}

function marksOf(batch: Batch, dayOf: (at: string) => number, inView: (x: number) => boolean) {
  const at = (moments: readonly { at: string }[]) => moments.map((one) => dayOf(one.at)).filter(inView);
  const marks = [
    { id: 'chart-heat-turned', shape: 'turn' as const, xs: at(batch.turns) },
    { id: 'chart-heat-covered', shape: 'cover' as const, xs: at(batch.covers.filter(({ on }) => on)) },
    { id: 'chart-heat-uncovered', shape: 'uncover' as const, xs: at(batch.covers.filter(({ on }) => !on)) },
  ];
  return marks
    .filter(({ xs }) => xs.length > 0)
    .map(({ id, shape, xs }) => ({ name: text(say(id)), shape, xs }));
}

function countedOf(
  verdict: Sanitising | null,
  readings: readonly At[],
  dayOf: (at: string) => number,
): Unsaid<HeatData>['counted'] {
  if (!verdict?.since || verdict.counted <= 0) return null;
  const { since, metOn } = verdict;
  const counting = readings.filter(
    ({ at, localDate }) => at >= since.at && (metOn === null || localDate <= metOn),
  );
  const to = counting.at(-1);
  if (!to || dayOf(to.at) < 0) return null;
  return {
    from: Math.max(0, dayOf(since.at)),
    to: Math.max(0, dayOf(to.at)),
    text: text(say('chart-heat-counted', proofArgs(verdict))),
  };
}

const proofArgs = (verdict: Sanitising) => ({
  counted: { number: verdict.counted, digits: 0 },
  needed: { number: verdict.needed, digits: 0 },
  unit: { term: verdict.unit, of: 'unit' },
});

/** The way down from the last reading to 5 °C over the air: the likely one, the soonest and the latest. */
function forecastOf(
  forecast: Known,
  lastX: number,
  today: number,
  end: number,
  degrees: (celsius: number) => number,
): Unsaid<HeatData>['forecast'] {
  const riseC = Number(forecast.why.args.lastRiseC);
  const airC = Number(forecast.why.args.ambientC);
  const way = (crossing: number | null): [number, number][] => {
    const to = crossing === null ? null : Math.max(crossing, lastX + 0.25);
    const until = Math.min(to ?? end, end);
    const rate = to === null ? 0 : Math.log(riseC / NEAR_AMBIENT_RISE) / (to - lastX);
    return Array.from({ length: 25 }, (_, i) => {
      const x = lastX + ((until - lastX) * i) / 24;
      return [x, degrees(airC + riseC * Math.exp(-rate * (x - lastX)))];
    });
  };
  const latest = forecast.toDays === null ? null : today + forecast.toDays;
  const within = (x: number): number => Math.min(Math.max(x, lastX), end);
  return {
    name: text(say('chart-heat-forecast')),
    bandName: text(say('chart-heat-band')),
    line: way(today + forecast.inDays),
    soonest: way(today + forecast.fromDays),
    latest: way(latest),
    near: {
      from: within(today + forecast.fromDays),
      on: within(today + forecast.inDays),
      to: within(latest ?? end),
      open: latest === null || latest > end,
      y: degrees(airC + NEAR_AMBIENT_RISE),
      text: text(say('chart-heat-near', { day: { day: forecast.on } })),
    },
  };
}

function titleOf({ picture, manner }: Asked, place: string, last: At, forecast: HeatForecast): Say {
  const air = airNow(picture, manner.today);
  if (air === null) return say('chart-heat-title', { place: { place }, high: { celsius: last.hot } });
  const args = { place: { place }, rise: { rise: last.hot - air } };
  if (forecast.known) return say('chart-heat-title-near-on', { ...args, day: { day: forecast.on } });
  if (forecast.reason.code === 'near-already') return say('chart-heat-title-near', args);
  return say('chart-heat-title-rise', args);
}

function subOf(last: At, verdict: Sanitising | null, forecast: HeatForecast): Say[] {
  const one = last.hot === last.low;
  const says = [
    say(one ? 'chart-heat-last-one' : 'chart-heat-last', {
      date: { day: last.localDate },
      low: { celsius: last.low },
      high: { celsius: last.hot },
    }),
  ];
  if (verdict) says.push(say(`chart-heat-proof-${verdict.verdict}`, proofArgs(verdict)));
  if (forecast.known) {
    says.push(
      forecast.to === null
        ? say('chart-heat-between-open', { from: { day: forecast.from } })
        : say('chart-heat-between', { from: { day: forecast.from }, to: { day: forecast.to } }),
    );
  }
  return says;
}
