import { addDays } from './calendar.ts';
import { INGREDIENTS } from './mix/ingredients.ts';
import { dayOf, own } from './picture/change.ts';
import { emptyDay, noAmount } from './picture/empty.ts';
import { settingAt } from './picture/setting-at.ts';
import type { Amount, DayTotals, Picture } from './picture/types.ts';
import { sumKg } from './weights/sum-kg.ts';

type Numbers = Record<string, number>;

/** Own keys of both, each value made of what the two have under it. */
function merged<T>(a: Record<string, T>, b: Record<string, T>, none: () => T, add: (a: T, b: T) => T) {
  const all = { ...a };
  for (const [key, value] of Object.entries(b)) all[key] = add(own(a, key) ?? none(), value);
  return all;
}

const addNumbers = (a: Numbers, b: Numbers): Numbers =>
  merged(
    a,
    b,
    () => 0,
    (x, y) => sumKg([x, y]),
  );

const addAmounts = (a: Amount, b: Amount): Amount => ({
  kg: sumKg([a.kg, b.kg]),
  estimatedKg: sumKg([a.estimatedKg, b.estimatedKg]),
  litres: sumKg([a.litres, b.litres]),
  loads: sumKg([a.loads, b.loads]),
  pending: a.pending + b.pending,
});

type Field = keyof DayTotals;
const SIMPLE = [
  'rejectedKg',
  'removedKg',
  'removedLitres',
  'dischargedKg',
  'dischargedLitres',
  'screenedLitres',
  'screenedKg',
  'turnings',
  'readings',
  'hours',
] as const satisfies readonly Field[];
const COUNTED = [
  'contaminated',
  'loadsBySource',
  'rejected',
  'residueKg',
  'chores',
  'ofWhich',
  'loggedBy',
] as const satisfies readonly Field[];

function addTotals(a: DayTotals, b: DayTotals): DayTotals {
  const sum = { ...a };
  for (const field of SIMPLE) sum[field] = sumKg([a[field], b[field]]);
  for (const field of COUNTED) sum[field] = addNumbers(a[field], b[field]);
  sum.intake = merged(
    a.intake,
    b.intake,
    () => ({}),
    (x, y) => merged(x, y, noAmount, addAmounts),
  );
  sum.removedOther = merged(
    a.removedOther,
    b.removedOther,
    () => ({ kg: 0, litres: 0 }),
    (x, y) => ({ kg: sumKg([x.kg, y.kg]), litres: sumKg([x.litres, y.litres]) }),
  );
  sum.dirt = merged(a.dirt, b.dirt, () => ({}), addNumbers);
  return sum;
}

/**
 * The sums of several days, worked anew from the days and in whole micrograms, so that they never drift.
 * @source see sumKg
 * @example sumDays([]).turnings // 0
 */
export const sumDays = (days: Iterable<DayTotals>): DayTotals => {
  let sum = emptyDay();
  for (const day of days) sum = addTotals(sum, day);
  return sum;
};

/**
 * The sums from one local date to another, both included. Days older than those the picture keeps are missing.
 * @source see sumDays
 * @example totalsBetween(picture, '2026-06-15', '2026-06-21').turnings // 2
 */
export function totalsBetween(picture: Picture, from: string, to: string): DayTotals {
  const days: DayTotals[] = [];
  for (let date = from; date <= to; date = addDays(date, 1)) {
    const day = dayOf(picture, date);
    if (day) days.push(day);
  }
  return sumDays(days);
}

/**
 * On which day the site's week starts, as it stands on a local date.
 * @source none needed: the setting, else the site file
 * @example weekStartsAt(picture, '2026-06-17') // 'monday'
 */
export function weekStartsAt(picture: Picture, localDate: string): Picture['base']['weekStarts'] {
  const set = settingAt(picture, 'week-starts', localDate);
  return set === 'sunday' || set === 'saturday' || set === 'monday' ? set : picture.base.weekStarts;
}

/** The first local date that the book knows anything of; null in an empty one. */
export function firstDay(picture: Picture): string | null {
  const month = Object.keys(picture.months).sort()[0];
  return month === undefined ? null : (Object.keys(picture.months[month]!).sort()[0] ?? null);
}

/**
 * Whether a material is brought to be composted (food, grass, what the site alone takes), and not to build with:
 * chips, leaves and the like, water and finished compost do not count towards a target.
 * @source the role of a material in the table of ingredients; common practice, no source
 * @example isFeed('food-scraps') // true
 * @example isFeed('wood-chips') // false
 */
export function isFeed(material: string): boolean {
  if (material === 'finished-compost') return false;
  const role = Object.hasOwn(INGREDIENTS, material) ? INGREDIENTS[material]!.role : 'feed';
  return role === 'feed' || role === 'other';
}

/** A stream that the table does not know: shown with and without, because it comes once. */
const isSpecial = (material: string, site: Picture['base']): boolean =>
  !Object.hasOwn(INGREDIENTS, material) && !site.materials.includes(material);

export type SourceAmount = Amount & { source: string };
export type Stream = Amount & {
  material: string;
  feed: boolean;
  special: boolean;
  /** The largest first; `''` where no source was said. */
  sources: SourceAmount[];
};

/** Kilograms of what was composted: measured and estimated apart. */
export type FeedKg = { measuredKg: number; estimatedKg: number; pending: number; loads: number };

/** What came in, stream by stream, feed first, then by mass. */
export function streamsOf(totals: DayTotals, site: Picture['base']): Stream[] {
  const streams = Object.entries(totals.intake).map(([material, bySource]): Stream => {
    const sources = Object.entries(bySource).map(([source, amount]) => ({ source, ...amount }));
    sources.sort((a, b) => massOf(b) - massOf(a) || (a.source < b.source ? -1 : 1));
    const all = sources.reduce<Amount>(addAmounts, noAmount());
    return { material, feed: isFeed(material), special: isSpecial(material, site), ...all, sources };
  });
  return streams.sort(
    (a, b) => Number(b.feed) - Number(a.feed) || massOf(b) - massOf(a) || (a.material < b.material ? -1 : 1),
  );
}

const massOf = ({ kg, estimatedKg }: Pick<Amount, 'kg' | 'estimatedKg'>): number => kg + estimatedKg;

/**
 * Feed of some days: measured, estimated, loads, and how many nets are pending.
 * @source see sumKg
 * @example feedOf([{ material: 'food-scraps', feed: true, kg: 48.5, … }]).measuredKg // 48.5
 */
export function feedOf(streams: readonly Stream[]): FeedKg {
  const feed = streams.filter((stream) => stream.feed);
  return {
    measuredKg: sumKg(feed.map(({ kg }) => kg)),
    estimatedKg: sumKg(feed.map(({ estimatedKg }) => estimatedKg)),
    pending: feed.reduce((sum, { pending }) => sum + pending, 0),
    loads: sumKg(feed.map(({ loads }) => loads)),
  };
}

/**
 * Feed from one local date to another, both included: as `feedOf`, without summing up all the rest.
 * @source see sumKg
 * @example feedBetween(picture, '2026-06-15', '2026-06-21').measuredKg // 412.5
 */
export function feedBetween(picture: Picture, from: string, to: string): FeedKg {
  const parts: FeedKg[] = [];
  const after = addDays(to, 1);
  for (let date = from; date <= to; ) {
    const month = date.slice(0, 7);
    const days = own(picture.months, month);
    if (!days) {
      date = monthAfter(month);
      continue;
    }
    // A whole month is summed up once for as long as nothing in it changes.
    if (date.endsWith('-01') && monthAfter(month) <= after) {
      parts.push(feedOfMonth(days));
      date = monthAfter(month);
      continue;
    }
    const day = own(days, date);
    if (day) parts.push(feedOfDay(day));
    date = addDays(date, 1);
  }
  return sumFeed(parts);
}

/** The first of the month after `2026-06`. */
function monthAfter(month: string): string {
  const next = Number(month.slice(5)) + 1;
  return next > 12
    ? `${String(Number(month.slice(0, 4)) + 1).padStart(4, '0')}-01-01`
    : `${month.slice(0, 5)}${String(next).padStart(2, '0')}-01`;
}

// Days and months of a picture are never changed, only replaced: what was worked out of one stays true of it.
const daysSummed = new WeakMap<DayTotals, FeedKg>();
const monthsSummed = new WeakMap<Record<string, DayTotals>, FeedKg>();

function feedOfMonth(days: Record<string, DayTotals>): FeedKg {
  const known = monthsSummed.get(days);
  if (known) return known;
  const sum = sumFeed(Object.values(days).map(feedOfDay));
  monthsSummed.set(days, sum);
  return sum;
}

function feedOfDay(day: DayTotals): FeedKg {
  const known = daysSummed.get(day);
  if (known) return known;
  const amounts = Object.entries(day.intake).flatMap(([material, bySource]) =>
    isFeed(material) ? Object.values(bySource) : [],
  );
  const sum = {
    measuredKg: sumKg(amounts.map(({ kg }) => kg)),
    estimatedKg: sumKg(amounts.map(({ estimatedKg }) => estimatedKg)),
    pending: amounts.reduce((sum, { pending }) => sum + pending, 0),
    loads: sumKg(amounts.map(({ loads }) => loads)),
  };
  daysSummed.set(day, sum);
  return sum;
}

const sumFeed = (parts: readonly FeedKg[]): FeedKg => ({
  measuredKg: sumKg(parts.map(({ measuredKg }) => measuredKg)),
  estimatedKg: sumKg(parts.map(({ estimatedKg }) => estimatedKg)),
  pending: parts.reduce((sum, { pending }) => sum + pending, 0),
  loads: sumKg(parts.map(({ loads }) => loads)),
});
