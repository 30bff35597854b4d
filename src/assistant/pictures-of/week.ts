import type { WeekData } from '#charts';
import {
  addDays,
  type FeedKg,
  feedBetween,
  type Picture,
  type Stream,
  streamsOf,
  totalsBetween,
  type WeekReport,
  weekReport,
} from '#core';
import { fromKg } from '#records';
import type { Manner } from '../ports.ts';
import { type Line, type Say, say } from '../say.ts';
import { type Drawing, text, ticksOf, type Unsaid } from './drawing.ts';

/** More sources than this are one "others": each more is a hatch that nobody tells apart. */
const SOURCES_MOST = 4;
const WEEKS_BACK = 6;
const USUAL_WEEKS = 8;
const CHIPS = ['wood-chips', 'leafy-chips'];

type Day = { date: string; streams: Stream[]; feed: FeedKg };

const both = ({ measuredKg, estimatedKg }: FeedKg): number => measuredKg + estimatedKg;

/** A week by day and source with its chips, what is usual on such days, and the weeks before in one line of bars. */
export function weekDrawing(picture: Picture, weekFrom: string, now: string, manner: Manner): Drawing | null {
  const report = weekReport(picture, weekFrom, { at: now, localDate: manner.today });
  const weeks = weeksUpTo(picture, weekFrom);
  if (weeks.every(({ kg }) => kg === 0)) return null;
  const mass = (kg: number): number => fromKg(kg, manner.units.mass);
  const unit = { text: manner.units.mass };
  const days = Array.from({ length: 7 }, (_, i): Day => {
    const date = addDays(weekFrom, i);
    return {
      date,
      streams: streamsOf(totalsBetween(picture, date, date), picture.base),
      feed: feedBetween(picture, date, date),
    };
  });
  const chips = days.map(({ streams }) =>
    sum(
      streams
        .filter(({ material }) => CHIPS.includes(material))
        .map(({ kg, estimatedKg }) => kg + estimatedKg),
    ),
  );
  const estimated = days.map(({ feed }) => feed.estimatedKg);
  const usual = report.usual ? usualDays(picture, weekFrom) : null;
  const tallest = Math.max(...days.map(({ feed }) => both(feed)), ...chips, ...(usual ?? []), 1);
  const title = titleOf(report);
  const sub = subOf(report);
  const foot = footOf(report);
  const data: Unsaid<WeekData> = {
    title: text(title),
    sub: text(sub),
    days: days.map(({ date }) => text(say('chart-weekday', { day: { weekday: date } }))),
    y: {
      ...ticksOf(0, mass(tallest), 4, (value) => say('chart-number', { value: { number: value } })),
      name: text(say('chart-axis-mass-day', { unit })),
    },
    sources: sourcesOf(days).map(({ name, kg }) => ({ name: text(name), values: kg.map(mass) })),
    estimated: estimated.some((kg) => kg > 0)
      ? { name: text(say('chart-estimated')), values: estimated.map(mass) }
      : null,
    chips: chips.some((kg) => kg > 0) ? { name: text(say('chart-chips')), values: chips.map(mass) } : null,
    usual: usual ? { name: text(say('chart-week-usual-day')), values: usual.map(mass) } : null,
    weeks:
      weeks.length > 1
        ? {
            title: text(say('chart-week-weeks', { unit })),
            y: {
              ...ticksOf(0, mass(Math.max(...weeks.map(({ kg }) => kg))), 4, (value) =>
                say('chart-number', { value: { number: value } }),
              ),
              name: text(say('chart-axis-mass-week', { unit })),
            },
            bars: weeks.map(({ from, kg }) => ({
              text: text(say('chart-day', { day: { day: from } })),
              value: mass(kg),
              shown: text(say('chart-mass', { kg: { kg, bare: true, digits: 0 } })),
              this: from === weekFrom,
            })),
          }
        : null,
    foot: text(foot),
  };
  const alt: Line[] = [title, sub, altOf(days, report), foot];
  return { draw: 'week', alt: alt.filter((line) => !Array.isArray(line) || line.length > 0), data };
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

function weeksUpTo(picture: Picture, weekFrom: string): { from: string; kg: number }[] {
  const weeks = Array.from({ length: WEEKS_BACK + 1 }, (_, i) => {
    const from = addDays(weekFrom, 7 * (i - WEEKS_BACK));
    return { from, kg: both(feedBetween(picture, from, addDays(from, 6))) };
  });
  const first = weeks.findIndex(({ kg }, i) => kg > 0 || i === WEEKS_BACK);
  return weeks.slice(first);
}

/** The mean of the same day over the weeks before that have anything in them: the weeks of what is usual. */
function usualDays(picture: Picture, weekFrom: string): number[] {
  const weeks = Array.from({ length: USUAL_WEEKS }, (_, i) => addDays(weekFrom, -7 * (i + 1))).filter(
    (from) => feedBetween(picture, from, addDays(from, 6)).loads > 0,
  );
  return Array.from({ length: 7 }, (_, day) => {
    const each = weeks.map((from) => {
      const date = addDays(from, day);
      return both(feedBetween(picture, date, date));
    });
    return weeks.length === 0 ? 0 : sum(each) / weeks.length;
  });
}

/** Weighed feed by source and day; the largest first, what is left over as one. */
function sourcesOf(days: readonly Day[]): { name: Say; kg: number[] }[] {
  const bySource = new Map<string, number[]>();
  days.forEach(({ streams }, day) => {
    for (const { feed, sources } of streams) {
      if (!feed) continue;
      for (const { source, kg } of sources) {
        if (kg <= 0) continue;
        const all = bySource.get(source) ?? days.map(() => 0);
        all[day] = (all[day] ?? 0) + kg;
        bySource.set(source, all);
      }
    }
  });
  const sorted = [...bySource].sort(([a, x], [b, y]) => sum(y) - sum(x) || (a < b ? -1 : 1));
  const named = sorted.length > SOURCES_MOST + 1 ? sorted.slice(0, SOURCES_MOST) : sorted;
  const rest = sorted.slice(named.length);
  const shown = named.map(([source, kg]) => ({
    name: source ? say('chart-source', { source: { source } }) : say('chart-source-none'),
    kg,
  }));
  if (rest.length === 0) return shown;
  return [
    ...shown,
    {
      name: say('chart-source-others', { count: { count: rest.length } }),
      kg: days.map((_, day) => sum(rest.map(([, kg]) => kg[day] ?? 0))),
    },
  ];
}

function titleOf(report: WeekReport): Say {
  const args = {
    from: { day: report.from },
    to: { day: report.to },
    kg: { kg: both(report.feed), digits: 0 },
    usual: { kg: report.usual ? report.usual.measuredKg + report.usual.estimatedKg : 0, digits: 0 },
    hasUsual: { text: report.usual ? 'yes' : 'no' },
  };
  return say(report.complete ? 'chart-week-title' : 'chart-week-title-so-far', args);
}

function subOf(report: WeekReport): Say[] {
  const { feed, chips } = report;
  const says: Say[] = [];
  const chipsKg = chips.kg + chips.estimatedKg;
  // First: "of it" speaks of the sum in the title.
  if (feed.estimatedKg > 0)
    says.push(say('chart-week-estimated', { kg: { kg: feed.estimatedKg, digits: 0 } }));
  if (feed.pending > 0) says.push(say('week-pending', { count: { count: feed.pending } }));
  if (chipsKg > 0) says.push(say('week-chips', { kg: { kg: chipsKg, digits: 0 } }));
  if (chips.perKgFeed !== null && chipsKg > 0) {
    says.push(say('week-chips-per', { ratio: { number: chips.perKgFeed, digits: 2 } }));
  }
  return says;
}

function footOf({ year }: WeekReport): Say[] {
  const says = [say('year-feed', { kg: { kg: both(year.feed), digits: 0 }, from: { date: year.from } })];
  if (year.targetKg !== null && year.donePct !== null) {
    says.push(say('year-target', { pct: { pct: year.donePct }, tonnes: { tonnes: year.targetKg / 1000 } }));
  }
  return says;
}

function altOf(days: readonly Day[], report: WeekReport): Say[] {
  const says: Say[] = days
    .filter(({ feed }) => both(feed) > 0)
    .map(({ date, feed }) =>
      say('chart-week-alt-day', { day: { weekday: date }, kg: { kg: both(feed), digits: 0 } }),
    );
  if (report.before.loads > 0) {
    says.push(say('chart-week-alt-before', { kg: { kg: both(report.before), digits: 0 } }));
  }
  return says;
}
