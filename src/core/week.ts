import { addDays } from './calendar.ts';
import { isCovered } from './duties/cover-pile.ts';
import type { Duty } from './duties/duty.ts';
import { dutiesNow } from './duties/now.ts';
import { hottestOf, lowestOf } from './heat/danger-bands.ts';
import { sanitising } from './heat/sanitising.ts';
import { type Mix, mixOf } from './mix/mix.ts';
import { mixPartsOf, ownFiguresAt } from './mix/own-figures.ts';
import { type FeedKg, feedBetween, feedOf, type Stream, streamsOf, totalsBetween } from './period.ts';
import { isBlank } from './picture/places.ts';
import { ruleSetOf, sanitisingOptionsOf, wasHotLately } from './picture/proof.ts';
import type {
  Batch,
  DayTotals,
  EndedProblem,
  HeldLine,
  OpenProblem,
  PendingNet,
  Picture,
} from './picture/types.ts';
import { sumKg } from './weights/sum-kg.ts';
import { type YearSoFar, yearSoFar } from './year.ts';

/** A pile in one line. */
export type PileLine = {
  place: string;
  state: Batch['state'];
  /** Of the last reading; null where there is none. */
  hottestC: number | null;
  lowestC: number | null;
  readOn: string | null;
  readingsInWeek: number;
  turnsInWeek: number;
  turnedOn: string | null;
  covered: boolean;
  held: boolean;
  /** Null without a rule set, and of a pile that is still fed and not hot. */
  proof: { verdict: 'met' | 'not-yet' | 'cannot-show'; counted: number; needed: number; unit: string } | null;
};

export type WeekReport = {
  from: string;
  to: string;
  /** The week is over, so its sums are final but for late lines. */
  complete: boolean;
  totals: DayTotals;
  streams: Stream[];
  feed: FeedKg;
  /** Without the streams that come once; null where there was none. */
  withoutSpecial: FeedKg | null;
  special: { material: string; kg: number; estimatedKg: number }[];
  /** Kilograms of chips for one of feed, in all: all the chips over all the feed, no mean of ratios. */
  chips: { kg: number; estimatedKg: number; perKgFeed: number | null };
  mix: Mix | null;
  contaminated: { source: string; loads: number; of: number }[];
  rejected: { source: string; count: number }[];
  piles: PileLine[];
  problems: { begun: OpenProblem[]; ended: EndedProblem[]; open: OpenProblem[] };
  held: HeldLine[];
  pending: PendingNet[];
  chores: { chore: string; times: number; isCheck: boolean }[];
  missed: Duty[];
  loggedBy: { person: number; lines: number }[];
  before: FeedKg;
  /** Mean of up to eight weeks before that have anything in them; null where there are fewer than two. */
  usual: { weeks: number; measuredKg: number; estimatedKg: number } | null;
  year: YearSoFar;
};

/** How many weeks make what is usual. @source common practice, no source */
const USUAL_WEEKS = 8;

/**
 * The sums of the seven days from a date on.
 * @source see sumDays
 * @example weekTotals(picture, '2026-06-15').turnings // 2
 */
export const weekTotals = (picture: Picture, weekFrom: string): DayTotals =>
  totalsBetween(picture, weekFrom, addDays(weekFrom, 6));

const feedFrom = (picture: Picture, from: string): FeedKg => feedBetween(picture, from, addDays(from, 6));

/**
 * What a week brought: intake by stream and source, measured and estimated apart, the mix, piles, problems, what is
 * held and pending, who logged, against the week before and the usual, with the year so far. kg, litres, °C, hours.
 * `at` and `localDate` are the moment of asking.
 * @source sums; see mixOf, sanitising and yearSoFar for theirs
 * @example weekReport(picture, '2026-06-15', now).feed.measuredKg // 412.5
 */
export function weekReport(
  picture: Picture,
  weekFrom: string,
  now: { at: string; localDate: string },
): WeekReport {
  const to = addDays(weekFrom, 6);
  const totals = weekTotals(picture, weekFrom);
  const streams = streamsOf(totals, picture.base);
  const feed = feedOf(streams);
  const inWeek = ({ localDate }: { localDate: string }) => localDate >= weekFrom && localDate <= to;
  const special = streams.filter((stream) => stream.special);
  return {
    from: weekFrom,
    to,
    complete: now.localDate > to,
    totals,
    streams,
    feed,
    withoutSpecial: special.length > 0 ? feedOf(streams.filter((stream) => !stream.special)) : null,
    special: special.map(({ material, kg, estimatedKg }) => ({ material, kg, estimatedKg })),
    chips: chipsOf(streams, feed),
    mix: mixOfWeek(picture, streams, to),
    contaminated: bySource(totals.contaminated).map(({ source, count }) => ({
      source,
      loads: count,
      of: totals.loadsBySource[source] ?? count,
    })),
    rejected: bySource(totals.rejected),
    piles: pileLines(picture, weekFrom, to, now),
    problems: {
      begun: [...picture.ended, ...picture.problems].filter(inWeek).sort((a, b) => a.entry - b.entry),
      ended: picture.ended.filter(({ ended }) => inWeek(ended)),
      open: picture.problems,
    },
    held: picture.held,
    pending: picture.pending,
    chores: Object.entries(totals.chores)
      .map(([chore, times]) => ({ chore, times, isCheck: chore.startsWith('check-') }))
      .sort((a, b) => (a.chore < b.chore ? -1 : 1)),
    missed: dutiesNow(picture, now).filter(
      ({ by, heldBack }) => heldBack === null && by >= weekFrom && by <= to,
    ),
    loggedBy: Object.entries(totals.loggedBy)
      .map(([person, lines]) => ({ person: Number(person), lines }))
      .sort((a, b) => b.lines - a.lines || a.person - b.person),
    before: feedFrom(picture, addDays(weekFrom, -7)),
    usual: usualWeek(picture, weekFrom),
    year: yearSoFar(picture, [to, now.localDate].sort()[0]!),
  };
}

const bySource = (counts: Record<string, number>): { source: string; count: number }[] =>
  Object.entries(counts)
    .map(([source, count]) => ({ source, count }))
    .sort((a, b) => b.count - a.count || (a.source < b.source ? -1 : 1));

const CHIPS = new Set(['wood-chips', 'leafy-chips']);

function chipsOf(streams: readonly Stream[], feed: FeedKg): WeekReport['chips'] {
  const chips = streams.filter(({ material }) => CHIPS.has(material));
  const kg = sumKg(chips.map((each) => each.kg));
  const estimatedKg = sumKg(chips.map((each) => each.estimatedKg));
  const feedKg = feed.measuredKg + feed.estimatedKg;
  // A net that waits would make the ratio too high; it is left out until it is known.
  const known = feedKg > 0 && feed.pending === 0;
  return { kg, estimatedKg, perKgFeed: known ? (kg + estimatedKg) / feedKg : null };
}

function mixOfWeek(picture: Picture, streams: readonly Stream[], localDate: string): Mix | null {
  const loads = streams.flatMap(({ material, kg, estimatedKg, litres }) => [
    { material, kg, litres: null, estimated: false, at: '' },
    { material, kg: estimatedKg, litres: estimatedKg > 0 ? litres : null, estimated: true, at: '' },
  ]);
  const parts = mixPartsOf(
    loads.filter(({ kg }) => kg > 0),
    (material) => ownFiguresAt(picture.settings, material, localDate),
  ).map(({ at: _, ...part }) => part);
  const mix = parts.length > 0 ? mixOf(parts) : null;
  return mix && mix.kg > 0 ? mix : null;
}

function pileLines(
  picture: Picture,
  from: string,
  to: string,
  now: { at: string; localDate: string },
): PileLine[] {
  const rule = ruleSetOf(picture, now.localDate);
  const options = sanitisingOptionsOf(picture, now.localDate);
  const inWeek = ({ localDate }: { localDate: string }) => localDate >= from && localDate <= to;
  return Object.entries(picture.places).flatMap(([place, id]): PileLine[] => {
    const batch = picture.batches[id];
    if (!batch || isBlank(batch)) return [];
    const last = batch.readings.at(-1);
    const proof =
      rule && (batch.state !== 'open' || wasHotLately(batch, rule, now.localDate))
        ? sanitising(batch, rule, options, now)
        : null;
    return [
      {
        place,
        state: batch.state,
        hottestC: last ? hottestOf(last) : null,
        lowestC: last ? lowestOf(last) : null,
        readOn: last?.localDate ?? null,
        readingsInWeek: batch.readings.filter(inWeek).length,
        turnsInWeek: batch.turns.filter(inWeek).length,
        turnedOn: batch.turns.at(-1)?.localDate ?? null,
        covered: isCovered(batch, now),
        held: batch.hold !== null,
        proof: proof && {
          verdict: proof.verdict,
          counted: proof.counted,
          needed: proof.needed,
          unit: proof.unit,
        },
      },
    ];
  });
}

function usualWeek(picture: Picture, weekFrom: string): WeekReport['usual'] {
  const weeks: FeedKg[] = [];
  for (let back = 1; back <= USUAL_WEEKS; back += 1) {
    const feed = feedFrom(picture, addDays(weekFrom, -7 * back));
    if (feed.loads > 0) weeks.push(feed);
  }
  if (weeks.length < 2) return null;
  return {
    weeks: weeks.length,
    measuredKg: sumKg(weeks.map(({ measuredKg }) => measuredKg)) / weeks.length,
    estimatedKg: sumKg(weeks.map(({ estimatedKg }) => estimatedKg)) / weeks.length,
  };
}

/** How a week's sums have changed, as far as a crew would want to know; null where they have not. */
export type WeekChange = { weekFrom: string; measuredKg: number; estimatedKg: number; loads: number };

/**
 * The difference that a late line or a correction makes to a week that was told already: after less before.
 * @source none needed
 * @example weekChange(before, after, '2026-06-15') // { weekFrom: '2026-06-15', measuredKg: -2, estimatedKg: 0, loads: 0 }
 */
export function weekChange(before: Picture, after: Picture, weekFrom: string): WeekChange | null {
  const [a, b] = [feedFrom(before, weekFrom), feedFrom(after, weekFrom)];
  const change = {
    weekFrom,
    measuredKg: sumKg([b.measuredKg, -a.measuredKg]),
    estimatedKg: sumKg([b.estimatedKg, -a.estimatedKg]),
    loads: sumKg([b.loads, -a.loads]),
  };
  return change.measuredKg === 0 && change.estimatedKg === 0 && change.loads === 0 ? null : change;
}
