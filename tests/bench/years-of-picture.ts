// What a line, today's jobs, the week and a late line cost in an old book and in a young one.
// Run with: npm run bench:years [-- years]
import {
  addDays,
  applyEntry,
  dutiesNow,
  emptyPicture,
  instantOf,
  type Picture,
  rebuild,
  weekReport,
} from '#core';
import type { Entry } from '#records';
import { Book, cart, chips, reading, site } from '../core/picture/book.ts';

const FIRST = '2006-01-02';

/** Gross weights of a day's carts, kg. */
const LOADS = [56, 57, 58, 59, 60, 61];

type Site = { picture: Picture; snapshot: Picture; sinceSnapshot: Entry[]; lines: number; now: Now };
type Now = { at: string; localDate: string };

/** A busy site for so many days; the snapshot is the one of the last closed week. */
function run(days: number): Site {
  let picture = emptyPicture(site);
  let snapshot = picture;
  let sinceSnapshot: Entry[] = [];
  let lines = 0;
  for (let day = 0; day < days; day += 1) {
    const date = addDays(FIRST, day);
    // A book of its own for each day: the lines of twenty years would not be kept by the program either.
    const book = new Book(site);
    LOADS.forEach((gross, i) => {
      book.log(`${date}T0${i + 1}:00`, cart(gross, { source: i % 2 ? 'cafe' : 'north kitchen' }));
    });
    book.log(`${date}T08:00`, chips(50));
    book.log(`${date}T08:10`, reading('pile A', 55, 57));
    book.log(`${date}T08:11`, reading('pile B', 45));
    book.log(`${date}T08:12`, reading('ambient', 12));
    // Emptied once a week, so that the drum holds as much after a month as after twenty years.
    if (day % 7 === 0)
      book.log(`${date}T09:00`, { kind: 'discharge', pile: 'pile A', kg: 5000, basis: 'net' });
    if (day % 7 === 0) book.log(`${date}T09:10`, { kind: 'turning', pile: 'pile B' });
    if (day % 90 === 30) book.log(`${date}T10:00`, { kind: 'pile', pile: 'pile A', event: 'full' });
    if (day % 90 === 89) book.log(`${date}T10:00`, { kind: 'pile', pile: 'pile A', event: 'started' });
    if (day % 7 === 0) [snapshot, sinceSnapshot] = [picture, []];
    const numbered = book.entries.map((entry) => ({ ...entry, number: lines + entry.number }));
    lines += numbered.length;
    sinceSnapshot.push(...numbered);
    picture = rebuild(picture, numbered);
  }
  const localDate = addDays(FIRST, days - 1);
  const now = { at: instantOf(`${localDate}T20:00`, site.timeZone), localDate };
  return { picture, snapshot, sinceSnapshot, lines, now };
}

type Work = () => unknown;

/** The jobs that are measured, on one site. */
function works({ picture, snapshot, sinceSnapshot, now }: Site): Record<string, Work> {
  const line = { ...sinceSnapshot[0]!, happenedAt: now.at, localDate: now.localDate };
  return {
    'a weigh-in': () => applyEntry(picture, line),
    'a late line': () => rebuild(snapshot, sinceSnapshot),
    today: () => dutiesNow(picture, now),
    'the week': () => weekReport(picture, addDays(now.localDate, -6), now),
  };
}

const ROUNDS = 60;

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!;

/**
 * Both sides in turns, each round in the other order: what else the machine does at a moment hits both alike. A side
 * works for some milliseconds at a time, because a clock tells little of a few microseconds. In microseconds.
 */
function inTurns(young: Work, old: Work): { young: number; old: number; ratio: number } {
  // Time of the processor, not of the wall: on a busy machine the wall's holds everybody else's work as well.
  const once = (work: Work, times: number): number => {
    const from = process.cpuUsage();
    for (let i = 0; i < times; i += 1) work();
    const { user, system } = process.cpuUsage(from);
    return (user + system) / times;
  };
  // Both are run for a while first, so that neither is measured before it is compiled.
  for (let i = 0; i < 20; i += 1) [once(young, 2), once(old, 2)];
  const times = Math.max(1, Math.ceil(6000 / Math.max(1, once(young, 20))));
  const pairs = Array.from({ length: ROUNDS }, (_, i) => {
    const first = once(i % 2 ? old : young, times);
    const second = once(i % 2 ? young : old, times);
    return i % 2 ? { young: second, old: first } : { young: first, old: second };
  });
  return {
    young: median(pairs.map((pair) => pair.young)),
    old: median(pairs.map((pair) => pair.old)),
    ratio: median(pairs.map((pair) => pair.old / pair.young)),
  };
}

const years = Number(process.argv[2] ?? 20);
// So many days that both end on the same day of a week and of the pile's life.
const [young, old] = [run(35), run(Math.round((years * 365) / 630) * 630 + 35)];
const [few, many] = [works(young), works(old)];
console.info(`lines: ${young.lines} and ${old.lines}`);
for (const what of Object.keys(few)) {
  const cost = inTurns(few[what]!, many[what]!);
  console.info(
    `${what}: ${cost.young.toFixed(0)} µs and ${cost.old.toFixed(0)} µs, ${cost.ratio.toFixed(2)} times`,
  );
}
const kilobytes = (picture: Picture): string => (JSON.stringify(picture).length / 1000).toFixed(0);
console.info(`snapshot: ${kilobytes(young.picture)} kB and ${kilobytes(old.picture)} kB`);
