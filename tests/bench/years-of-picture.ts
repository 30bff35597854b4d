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
    for (let i = 1; i <= 6; i += 1) {
      book.log(`${date}T0${i}:00`, cart(55 + i, { source: i % 2 ? 'cafe' : 'north kitchen' }));
    }
    book.log(`${date}T08:00`, chips(50));
    book.log(`${date}T08:10`, reading('pile A', 55, 57));
    book.log(`${date}T08:11`, reading('pile B', 45));
    book.log(`${date}T08:12`, reading('ambient', 12));
    if (day % 3 === 0) book.log(`${date}T09:00`, { kind: 'discharge', pile: 'pile A', litres: 900 });
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

function microseconds(work: () => unknown): number {
  for (let i = 0; i < 10; i += 1) work();
  const times = Array.from({ length: 40 }, () => {
    const from = performance.now();
    work();
    return (performance.now() - from) * 1000;
  });
  // The middle one: other programs on the machine make single ones slow.
  return times.sort((a, b) => a - b)[20]!;
}

function costs({ picture, snapshot, sinceSnapshot, now }: Site): Record<string, number> {
  const line = { ...sinceSnapshot[0]!, happenedAt: now.at, localDate: now.localDate };
  return {
    'a weigh-in': microseconds(() => applyEntry(picture, line)),
    'a late line': microseconds(() => rebuild(snapshot, sinceSnapshot)),
    today: microseconds(() => dutiesNow(picture, now)),
    'the week': microseconds(() => weekReport(picture, addDays(now.localDate, -6), now)),
  };
}

const years = Number(process.argv[2] ?? 20);
// So many days that both end on the same day of a week and of the pile's life.
const [young, old] = [run(35), run(Math.round((years * 365) / 630) * 630 + 35)];
const [few, many] = [costs(young), costs(old)];
console.info(`lines: ${young.lines} and ${old.lines}`);
for (const what of Object.keys(few)) {
  const [a, b] = [few[what]!, many[what]!];
  console.info(`${what}: ${a.toFixed(0)} µs and ${b.toFixed(0)} µs, ${(b / a).toFixed(2)} times`);
}
const kilobytes = (picture: Picture): string => (JSON.stringify(picture).length / 1000).toFixed(0);
console.info(`snapshot: ${kilobytes(young.picture)} kB and ${kilobytes(old.picture)} kB`);
