// How long an export takes and how much memory: `npm run bench:export -- 200000 xlsx`.
import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { addDays } from '#core';
import { openBook } from '#logbook';
import { EXPORT_FORMATS, exportBook } from '#papers';
import { BookRecord, type NewEntry, Site } from '#records';

const lines = Number(process.argv[2] ?? 200_000);
const formats = EXPORT_FORMATS.filter((each) => !process.argv[3] || each === process.argv[3]);
const folder = mkdtempSync(join(tmpdir(), 'heaphand-bench-'));
const book = openBook(join(folder, 'bench.db'), { now: () => '2026-01-01T00:00:00.000Z' });
const { id } = book.addSite(
  Site.parse({
    name: 'Bench',
    timeZone: 'Europe/Paris',
    containers: { cart: { tareKg: 15.5, litres: 240 } },
  }),
  '2026-01-01T00:00:00.000Z',
);

const records = [
  (n: number) => ({
    kind: 'weigh-in',
    material: 'food-scraps',
    container: 'cart',
    kg: 40 + (n % 40),
    basis: 'gross',
    source: `kitchen ${n % 7}`,
  }),
  () => ({ kind: 'weigh-in', material: 'wood-chips', kg: 12, basis: 'net' }),
  (n: number) => ({
    kind: 'temperature',
    place: `pile ${'ABCD'[n % 4]}`,
    celsius: [50 + (n % 9), 55, 57],
    depthCm: 60,
  }),
  (n: number) => ({ kind: 'turning', pile: `pile ${'ABCD'[n % 4]}` }),
];
const PER_DAY = 40;
for (let done = 0; done < lines; ) {
  const entries: NewEntry[] = [];
  for (; entries.length < 5000 && done < lines; done++) {
    const localDate = addDays('2010-01-01', Math.floor(done / PER_DAY));
    const happenedAt = `${localDate}T${String(6 + Math.floor(((done % PER_DAY) * 10) / PER_DAY)).padStart(2, '0')}:${String(done % PER_DAY).padStart(2, '0')}:00.000Z`;
    entries.push({
      happenedAt,
      localDate,
      receivedAt: happenedAt,
      person: null,
      record: BookRecord.parse(records[done % records.length]!(done)),
      typed: null,
      assumed: [],
      held: null,
      voids: [],
    });
  }
  book.append(id, entries, null);
}
for (const format of formats) {
  const out = join(folder, `out.${format}`);
  const start = performance.now();
  const cpu = process.cpuUsage();
  let peak = 0;
  const onProgress = () => {
    peak = Math.max(peak, process.memoryUsage().rss);
  };
  const made = await exportBook(book, id, {
    from: '2000-01-01',
    to: '2099-12-31',
    format,
    language: 'en',

    out,
    now: '2026-01-01T00:00:00.000Z',
    onProgress,
  });
  onProgress();
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  const { user, system } = process.cpuUsage(cpu);
  console.log(
    `${format}: ${made.lines} lines in ${seconds} s (${((user + system) / 1e6).toFixed(1)} s of the processor), peak ${Math.round(peak / 2 ** 20)} MiB, file ${(statSync(out).size / 2 ** 20).toFixed(1)} MiB`,
  );
}
book.close();
rmSync(folder, { recursive: true });
