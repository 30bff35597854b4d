import {
  addDays,
  type FeedKg,
  type Picture,
  type Stream,
  type WeekReport,
  weekOf,
  weekReport,
  weekStartsAt,
  type YearSoFar,
  yearSoFar,
} from '#core';
import type { Request } from '#records';
import type { Draft } from '../draft.ts';
import { weekDrawing } from '../pictures-of/week.ts';
import { yearDrawing } from '../pictures-of/year.ts';
import type { Book } from '../ports.ts';
import { type Line, type Say, say } from '../say.ts';
import { ashLines, massLines, yieldLines } from './balance.ts';

type When = { at: string; localDate: string };

/** `week`: the one that runs, or the last one where that was asked. */
export function week(draft: Draft, request: Request): void {
  const picture = draft.picture();
  const running = weekOf(draft.today, weekStartsAt(picture, draft.today));
  const last = request.which === 'last' || request.last === true;
  const asked = typeof request.from === 'string' ? request.from.slice(0, 10) : null;
  const from = asked ? weekOf(asked, weekStartsAt(picture, asked)) : last ? addDays(running, -7) : running;
  const when = { at: draft.now, localDate: draft.today };
  draft.lines.push(...weekLines(picture, from, when, draft.book).lines);
  draft.drawing ??= () => weekDrawing(draft.picture(), from, draft.now, draft.manner);
}

/** The summary of a week, in lines; with its total, so that a later change can say what it changed. */
export function weekLines(
  picture: Picture,
  weekFrom: string,
  when: When,
  book: Book,
): { lines: Line[]; totalKg: number } {
  const report = weekReport(picture, weekFrom, when);
  const lines: Line[] = [headLine(report)];
  lines.push(...feedLines(report));
  lines.push(...chipsLines(report));
  lines.push(...troubleLines(report));
  lines.push(...pileLines(report));
  lines.push(...doneLines(report));
  lines.push(...yearLines({ ...report.year, neededPerWeekKg: null }));
  const thanks = report.loggedBy
    .map(({ person }) => book.personById(person)?.name.split(' ')[0])
    // Whoever was forgotten is not thanked by number.
    .filter((name): name is string => name !== undefined && name !== '');
  if (thanks.length > 0) lines.push(say('week-thanks', { who: { names: thanks } }));
  return { lines, totalKg: report.feed.measuredKg };
}

const headLine = (report: WeekReport): Line =>
  say(report.complete ? 'week-head' : 'week-head-so-far', {
    from: { day: report.from },
    to: { day: report.to },
  });

function feedLines(report: WeekReport): Line[] {
  const { feed } = report;
  const lines: Line[] = [];
  const first: Say[] = [say('week-feed', { kg: { kg: feed.measuredKg }, loads: { count: feed.loads } })];
  if (feed.estimatedKg > 0) first.push(say('week-estimated', { kg: { kg: feed.estimatedKg } }));
  if (feed.pending > 0) first.push(say('week-pending', { count: { count: feed.pending } }));
  lines.push(
    feed.loads === 0 ? say('week-no-feed', { over: { text: report.complete ? 'yes' : 'no' } }) : first,
  );
  if (report.withoutSpecial) {
    for (const { material, kg, estimatedKg } of report.special) {
      lines.push(
        say('week-special', {
          material: { material },
          kg: { kg: kg + estimatedKg },
          without: { kg: report.withoutSpecial.measuredKg + report.withoutSpecial.estimatedKg },
        }),
      );
    }
  }
  const compared = compareSay(feed, report);
  if (compared) lines.push(compared);
  const sources = report.streams.filter((stream) => stream.feed).flatMap((stream) => sourceSays(stream));
  if (sources.length > 0) lines.push(sources.slice(0, 8));
  return lines;
}

function compareSay(feed: FeedKg, report: WeekReport): Say | null {
  const now = feed.measuredKg + feed.estimatedKg;
  const before = report.before.measuredKg + report.before.estimatedKg;
  if (report.before.loads === 0 && !report.usual) return null;
  return say('week-compared', {
    now: { kg: now },
    before: { kg: before },
    // A mean of weeks: tenths of it mean nothing.
    usual: { kg: report.usual ? report.usual.measuredKg + report.usual.estimatedKg : 0, digits: 0 },
    hasUsual: { text: report.usual ? 'yes' : 'no' },
  });
}

/** `east kitchen 210 kg`: each source of a stream; food scraps are not named, other streams are. */
function sourceSays(stream: Stream): Say[] {
  return stream.sources
    .filter(({ kg, estimatedKg }) => kg + estimatedKg > 0)
    .map(({ source, kg, estimatedKg }) =>
      say(stream.material === 'food-scraps' ? 'week-source' : 'week-source-of', {
        source: { text: source },
        hasSource: { text: source ? 'yes' : 'no' },
        material: { material: stream.material },
        kg: { kg: kg + estimatedKg },
      }),
    );
}

function chipsLines(report: WeekReport): Line[] {
  const { chips, mix } = report;
  const parts: Say[] = [];
  if (chips.kg + chips.estimatedKg > 0) {
    parts.push(say('week-chips', { kg: { kg: chips.kg + chips.estimatedKg } }));
    if (chips.perKgFeed !== null) {
      parts.push(say('week-chips-per', { ratio: { number: chips.perKgFeed, digits: 2 } }));
    }
  }
  if (mix?.moisturePct) {
    parts.push(
      say('week-mix', {
        pct: { pct: mix.moisturePct.typical },
        range: { pctRange: [mix.moisturePct.low, mix.moisturePct.high] },
        cn: { number: mix.cn?.typical ?? 0, digits: 0 },
        hasCn: { text: mix.cn ? 'yes' : 'no' },
      }),
    );
  }
  return parts.length > 0 ? [parts] : [];
}

function troubleLines(report: WeekReport): Line[] {
  const lines: Line[] = [];
  for (const { source, loads, of } of report.contaminated.slice(0, 3)) {
    lines.push(
      say('week-contaminated', {
        source: { text: source },
        hasSource: { text: source ? 'yes' : 'no' },
        loads: { count: loads },
        of: { count: of },
      }),
    );
  }
  for (const { source, count } of report.rejected.slice(0, 3)) {
    lines.push(
      say('week-rejected', {
        source: { text: source },
        hasSource: { text: source ? 'yes' : 'no' },
        count: { count },
      }),
    );
  }
  for (const problem of report.problems.ended.slice(0, 4)) {
    lines.push(
      say('week-problem-ended', {
        topic: { term: problem.topic, of: 'topic' },
        entry: { entry: problem.entry },
        date: { date: problem.ended.localDate },
      }),
    );
  }
  for (const problem of report.problems.open.slice(0, 4)) {
    lines.push(
      say('week-problem-open', {
        topic: { term: problem.topic, of: 'topic' },
        entry: { entry: problem.entry },
        date: { date: problem.localDate },
      }),
    );
  }
  if (report.held.length > 0) lines.push(say('week-held', { count: { count: report.held.length } }));
  return lines;
}

function pileLines(report: WeekReport): Line[] {
  return report.piles.map((pile) => {
    const parts: Say[] = [
      say('pile-state', { place: { place: pile.place }, state: { term: pile.state, of: 'state' } }),
    ];
    if (pile.hottestC !== null && pile.lowestC !== null && pile.readOn !== null) {
      parts.push(
        say(pile.hottestC === pile.lowestC ? 'week-pile-one' : 'week-pile', {
          low: { celsius: pile.lowestC },
          high: { celsius: pile.hottestC },
          date: { date: pile.readOn },
        }),
      );
    }
    if (pile.turnsInWeek > 0) parts.push(say('pile-turns', { count: { count: pile.turnsInWeek } }));
    if (pile.proof) {
      parts.push(
        say(`week-proof-${pile.proof.verdict}`, {
          counted: { number: pile.proof.counted, digits: 0 },
          needed: { number: pile.proof.needed, digits: 0 },
          unit: { term: pile.proof.unit, of: 'unit' },
        }),
      );
    }
    return parts;
  });
}

function doneLines(report: WeekReport): Line[] {
  const lines: Line[] = [];
  const { chores, missed, totals } = report;
  const checks = chores.filter((each) => each.isCheck).reduce((sum, { times }) => sum + times, 0);
  const others = chores.reduce((sum, { times }) => sum + times, 0) - checks;
  const parts: Say[] = [];
  if (totals.turnings > 0) parts.push(say('week-turnings', { count: { count: totals.turnings } }));
  if (others > 0) parts.push(say('week-chores', { count: { count: others } }));
  if (checks > 0) parts.push(say('week-checks', { count: { count: checks } }));
  if (totals.hours > 0) parts.push(say('week-hours', { hours: { number: totals.hours, digits: 1 } }));
  if (totals.removedKg > 0 || totals.removedLitres > 0) {
    parts.push(
      totals.removedKg > 0
        ? say('week-removed', { kg: { kg: totals.removedKg } })
        : say('week-removed-litres', { litres: { litres: totals.removedLitres } }),
    );
  }
  if (parts.length > 0) lines.push(parts);
  if (missed.length > 0) lines.push(say('week-missed', { count: { count: missed.length } }));
  return lines;
}

/** `year`: what is in, against the target, and what it is likely to come to. */
export function year(draft: Draft): void {
  const report = yearSoFar(draft.picture(), draft.today);
  draft.lines.push(...yearLines(report), ...yieldLines(draft));
  draft.drawing ??= () => yearDrawing(draft.picture(), draft.manner);
  if (report.forecastKg) {
    draft.why.push(say('why-year', { weeks: { count: report.weeksUsed } }));
  }
  draft.why.push(...massLines(draft), ...ashLines(draft));
}

function yearLines(report: YearSoFar): Line[] {
  const { feed, targetKg } = report;
  const total = feed.measuredKg + feed.estimatedKg;
  const lines: Line[] = [];
  const first: Say[] = [say('year-feed', { kg: { kg: total }, from: { date: report.from } })];
  if (feed.estimatedKg > 0) first.push(say('week-estimated', { kg: { kg: feed.estimatedKg } }));
  if (targetKg !== null && report.donePct !== null) {
    first.push(say('year-target', { pct: { pct: report.donePct }, tonnes: { tonnes: targetKg / 1000 } }));
  } else first.push(say('year-no-target'));
  lines.push(first);
  if (report.forecastKg) {
    lines.push(
      say('year-forecast', {
        low: { tonnes: report.forecastKg.low / 1000 },
        high: { tonnes: report.forecastKg.high / 1000 },
        pace: { term: report.pace, of: 'pace' },
      }),
    );
  }
  if (report.neededPerWeekKg !== null && report.pace !== 'reached') {
    lines.push(say('year-needed', { kg: { kg: report.neededPerWeekKg, digits: 0 } }));
  }
  for (const cap of report.caps) {
    lines.push(
      say(cap.over ? 'year-cap' : 'year-cap-within', {
        per: { term: cap.per, of: 'per' },
        kg: { kg: cap.kg },
        cap: { kg: cap.capKg },
      }),
    );
  }
  return lines;
}
