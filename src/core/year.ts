import { addDays, daysBetween, weekOf, yearSpan } from './calendar.ts';
import { tNinety } from './heat/fit.ts';
import type { Spread } from './mix/spread.ts';
import { type FeedKg, feedBetween, firstDay, weekStartsAt } from './period.ts';
import { settingAt } from './picture/setting-at.ts';
import type { Picture } from './picture/types.ts';

export type Pace = 'ahead' | 'on-course' | 'behind' | 'reached' | 'cannot-tell';

export type YearSoFar = {
  from: string;
  to: string;
  localDate: string;
  daysGone: number;
  daysLeft: number;
  feed: FeedKg;
  targetKg: number | null;
  /** Share of the target in hand, measured and estimated together. */
  donePct: number | null;
  /** What is needed in a week that the site works, from now on; null without a target or with no day left. */
  neededPerWeekKg: number | null;
  /** At the end of the year, 4 times in 5 within low to high; null from fewer than four whole weeks. */
  forecastKg: Spread | null;
  weeksUsed: number;
  pace: Pace;
  caps: CapNow[];
};

/** The last so many whole weeks tell the pace; fewer than four tell none. @source common practice, no source */
const PACE_WEEKS = 16;
const LEAST_WEEKS = 4;

/** Days from one date to another, both included, on which the site works. */
function openDays(picture: Picture, from: string, to: string): number {
  if (from > to) return 0;
  const shut = new Set<string>();
  for (const closure of picture.closures) {
    const last = closure.to < to ? closure.to : to;
    for (let date = closure.from > from ? closure.from : from; date <= last; date = addDays(date, 1))
      shut.add(date);
  }
  return daysBetween(from, to) + 1 - shut.size;
}

const both = ({ measuredKg, estimatedKg }: FeedKg): number => measuredKg + estimatedKg;

/**
 * The year up to and including a local date, against the target: what is in, what it is likely to come to, and what
 * a week must bring. The forecast is what is in, plus the mean of the last whole weeks that were worked, for the days
 * that are left and open; its interval has the scatter of weeks and the uncertainty of their mean. kg, local dates.
 * @source prediction interval of a sum of n future values from k past ones, normal, t with k − 1 degrees:
 * NIST/SEMATECH e-Handbook of Statistical Methods (from memory); 80 %, so t leaves a tenth on either side
 * @example yearSoFar(picture, '2026-07-01').feed.measuredKg // 9200.5
 */
export function yearSoFar(picture: Picture, localDate: string): YearSoFar {
  const starts = settingAt(picture, 'year-starts', localDate);
  const { from, to } = yearSpan(localDate, typeof starts === 'number' ? starts : picture.base.yearStarts);
  const feed = feedBetween(picture, from, localDate);
  const target = settingAt(picture, 'target', localDate);
  const targetKg = typeof target === 'number' && target > 0 ? target * 1000 : null;
  const openLeft = openDays(picture, addDays(localDate, 1), to);
  const missing = targetKg === null ? null : targetKg - both(feed);
  const { forecastKg, weeksUsed } = forecast(picture, localDate, both(feed), openLeft);
  return {
    from,
    to,
    localDate,
    daysGone: daysBetween(from, localDate) + 1,
    daysLeft: daysBetween(localDate, to),
    feed,
    targetKg,
    donePct: targetKg === null ? null : (both(feed) / targetKg) * 100,
    neededPerWeekKg: missing === null || openLeft === 0 ? null : Math.max(0, (missing / openLeft) * 7),
    forecastKg,
    weeksUsed,
    pace: paceOf(missing, forecastKg, targetKg),
    caps: capsNow(picture, localDate),
  };
}

function paceOf(missing: number | null, forecastKg: Spread | null, targetKg: number | null): Pace {
  if (missing === null || targetKg === null) return 'cannot-tell';
  if (missing <= 0) return 'reached';
  if (!forecastKg) return 'cannot-tell';
  if (forecastKg.low > targetKg) return 'ahead';
  return forecastKg.high < targetKg ? 'behind' : 'on-course';
}

function forecast(picture: Picture, localDate: string, inHandKg: number, openLeft: number) {
  const perDay = weeklyRates(picture, localDate);
  const weeksUsed = perDay.length;
  if (weeksUsed < LEAST_WEEKS) return { forecastKg: null, weeksUsed };
  const mean = perDay.reduce((sum, each) => sum + each, 0) / weeksUsed;
  const variance = perDay.reduce((sum, each) => sum + (each - mean) ** 2, 0) / (weeksUsed - 1);
  // Rates are of one day, as means of a week; what is left is so many weeks of them.
  const weeksLeft = openLeft / 7;
  const spread = tNinety(weeksUsed - 1) * 7 * Math.sqrt(variance * (weeksLeft + weeksLeft ** 2 / weeksUsed));
  const typical = inHandKg + mean * openLeft;
  return {
    forecastKg: { typical, low: Math.max(inHandKg, typical - spread), high: typical + spread },
    weeksUsed,
  };
}

/** Feed in kg for each open day, of the last whole weeks that were worked for half their days or more. */
function weeklyRates(picture: Picture, localDate: string): number[] {
  const first = firstDay(picture) ?? localDate;
  const weekStarts = weekStartsAt(picture, localDate);
  const rates: number[] = [];
  let week = addDays(weekOf(addDays(localDate, 1), weekStarts), -7);
  // The week in which the book begins is no whole one.
  while (rates.length < PACE_WEEKS && week >= first) {
    const to = addDays(week, 6);
    const open = openDays(picture, week, to);
    if (open >= 4) rates.push(both(feedBetween(picture, week, to)) / open);
    week = addDays(week, -7);
  }
  return rates;
}

/** A cap on what may come in, with what has: `to` is the last day of the week or month. */
export type CapNow = {
  per: 'week' | 'month';
  capKg: number;
  kg: number;
  over: boolean;
  from: string;
  to: string;
};

/**
 * Caps that a permit sets, `cap:week` and `cap:month`, in kg, against what came in so far in each.
 * @source sums
 * @example capsNow(picture, '2026-06-17')[0] // { per: 'week', capKg: 2000, kg: 1850, over: false, … }
 */
export function capsNow(picture: Picture, localDate: string): CapNow[] {
  const starts = {
    week: weekOf(localDate, weekStartsAt(picture, localDate)),
    month: `${localDate.slice(0, 8)}01`,
  } as const;
  return (['week', 'month'] as const).flatMap((per) => {
    const capKg = settingAt(picture, `cap:${per}`, localDate);
    if (typeof capKg !== 'number' || capKg <= 0) return [];
    const from = starts[per];
    const to = per === 'week' ? addDays(from, 6) : lastOfMonth(from);
    const kg = both(feedBetween(picture, from, localDate));
    return [{ per, capKg, kg, over: kg > capKg, from, to }];
  });
}

/** The last day of the month whose first is given. */
const lastOfMonth = (first: string): string => addDays(`${addDays(first, 31).slice(0, 8)}01`, -1);
