import type { YearData } from '#charts';
import { addDays, addMonths, daysBetween, feedBetween, type Picture, type YearSoFar, yearSoFar } from '#core';
import { fromKg } from '#records';
import type { Manner } from '../ports.ts';
import { type Say, say } from '../say.ts';
import { type Drawing, text, ticksOf, type Unsaid } from './drawing.ts';

/** A year of days is more than a phone can show: one point a week, and the last day. */
const EVERY_DAYS = 7;

/** What came in since the year began against the straight way to the target, and what it is likely to come to. */
export function yearDrawing(picture: Picture, manner: Manner): Drawing | null {
  const report = yearSoFar(picture, manner.today);
  const { from, feed, targetKg, forecastKg } = report;
  const totalKg = feed.measuredKg + feed.estimatedKg;
  if (totalKg <= 0) return null;
  const inUnit = (kg: number): number => (manner.units.mass === 'lb' ? fromKg(kg, 'lb') : kg / 1000);
  const tonnes = (kg: number) => ({ tonnes: kg / 1000 });
  const length = daysBetween(from, report.to) + 1;
  const days = cumulative(picture, report);
  const title = titleOf(report);
  const sub = subOf(report);
  const highest = Math.max(totalKg, targetKg ?? 0, forecastKg?.high ?? 0);
  const data: Unsaid<YearData> = {
    title: text(title),
    sub: text(sub),
    x: { min: 0, max: length, name: text(say('chart-axis-month')), ticks: monthTicks(from, report.to) },
    y: {
      ...ticksOf(0, inUnit(highest * 1.04), 5, (value) => say('chart-number', { value: { number: value } })),
      name: text(say('chart-axis-year', { unit: { text: manner.units.mass === 'lb' ? 'lb' : 't' } })),
    },
    total: {
      name: text(say('chart-year-total', { day: { day: manner.today } })),
      points: days.map(({ x, measuredKg, estimatedKg }) => [x, inUnit(measuredKg + estimatedKg)]),
    },
    weighed:
      feed.estimatedKg > 0
        ? {
            name: text(say('chart-year-weighed')),
            points: days.map(({ x, measuredKg }) => [x, inUnit(measuredKg)]),
          }
        : null,
    target:
      targetKg === null
        ? null
        : {
            name: text(say('chart-year-target', { tonnes: tonnes(targetKg) })),
            text: text(say('chart-year-target', { tonnes: tonnes(targetKg) })),
            points: [
              [0, 0],
              [length, inUnit(targetKg)],
            ],
          },
    forecast: forecastKg
      ? {
          name: text(say('chart-year-forecast')),
          from: [days.at(-1)!.x, inUnit(totalKg)],
          at: length,
          low: inUnit(forecastKg.low),
          typical: inUnit(forecastKg.typical),
          high: inUnit(forecastKg.high),
          lowText: text(say('chart-tonnes', { tonnes: tonnes(forecastKg.low) })),
          highText: text(say('chart-tonnes', { tonnes: tonnes(forecastKg.high) })),
        }
      : null,
  };
  return { draw: 'year', alt: sub.length > 0 ? [title, sub] : [title], data };
}

/** The running sum at the end of each seventh day, and of today. */
function cumulative(picture: Picture, { from, localDate }: YearSoFar) {
  const points = [{ x: 0, measuredKg: 0, estimatedKg: 0 }];
  const last = daysBetween(from, localDate) + 1;
  for (let x = EVERY_DAYS; x < last + EVERY_DAYS; x += EVERY_DAYS) {
    const at = Math.min(x, last);
    const before = points.at(-1)!;
    const { measuredKg, estimatedKg } = feedBetween(picture, addDays(from, before.x), addDays(from, at - 1));
    points.push({
      x: at,
      measuredKg: before.measuredKg + measuredKg,
      estimatedKg: before.estimatedKg + estimatedKg,
    });
  }
  // Before the book begins nothing is known, which is not the same as nothing came in.
  const begins = points.findIndex((point) => point.measuredKg + point.estimatedKg > 0);
  return points.slice(Math.max(0, begins - 1));
}

function monthTicks(from: string, to: string): Unsaid<YearData>['x']['ticks'] {
  const ticks = [];
  for (let date = from; date <= to; date = addMonths(date, 2)) {
    ticks.push({ at: daysBetween(from, date), text: text(say('chart-month', { day: { month: date } })) });
  }
  return ticks;
}

function titleOf({ feed, from, to, forecastKg }: YearSoFar): Say {
  const args = { tonnes: { tonnes: (feed.measuredKg + feed.estimatedKg) / 1000 }, from: { day: from } };
  if (!forecastKg) return say('chart-year-title', args);
  return say('chart-year-title-forecast', {
    ...args,
    to: { day: to },
    low: { tonnes: forecastKg.low / 1000 },
    high: { tonnes: forecastKg.high / 1000 },
  });
}

function subOf(report: YearSoFar): Say[] {
  const { targetKg, donePct, forecastKg, neededPerWeekKg, pace } = report;
  if (targetKg === null || donePct === null) return [say('year-no-target')];
  const says = [say('year-target', { pct: { pct: donePct }, tonnes: { tonnes: targetKg / 1000 } })];
  if (forecastKg || pace === 'reached')
    says.push(say('chart-year-pace', { pace: { term: pace, of: 'pace' } }));
  if (neededPerWeekKg !== null && pace !== 'reached') {
    says.push(say('chart-year-needed', { kg: { kg: neededPerWeekKg, digits: 0 } }));
  }
  return says;
}
