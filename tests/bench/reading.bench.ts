// How many messages a second the reader takes, beside chrono-node alone on the same messages, and whether time
// stays in proportion to length. Run: npm run -s bench:reading
import { readdirSync, readFileSync } from 'node:fs';
import * as chrono from 'chrono-node';
import { Bench } from 'tinybench';
import { contextForSite, readMessage } from '#parsers';
import { Site } from '#records';

const read = (path: string) =>
  JSON.parse(readFileSync(new URL(`../../fixtures/${path}`, import.meta.url), 'utf8'));
const site = Site.parse(read('sites/hospital.json'));
const context = contextForSite(site, '2026-06-17T10:00');
const texts: string[] = readdirSync(new URL('../../fixtures/messages/en/', import.meta.url))
  .filter((name) => name.endsWith('.json'))
  .flatMap((name) => (read(`messages/en/${name}`) as { text: string }[]).map((one) => one.text));

for (const text of texts) readMessage(text, context);

const bench = new Bench({ time: 1500, warmupTime: 300 });
bench
  .add('readMessage', () => {
    for (const text of texts) readMessage(text, context);
  })
  .add('chrono-node alone', () => {
    for (const text of texts) chrono.casual.parse(text, new Date(0));
  });
await bench.run();
const rows = bench.tasks.map((task) => {
  const result = task.result as { latency?: { mean: number } };
  const perSecond = (texts.length * 1000) / (result.latency?.mean ?? Number.NaN);
  return { what: task.name, 'messages/s': Math.round(perSecond) };
});
console.table(
  rows.map((row) => ({ ...row, ratio: Number((row['messages/s'] / rows[1]!['messages/s']).toFixed(2)) })),
);

const took = (text: string) => {
  let best = Number.POSITIVE_INFINITY;
  for (let k = 0; k < 5; k++) {
    const from = performance.now();
    readMessage(text, context);
    best = Math.min(best, performance.now() - from);
  }
  return best;
};
console.table(
  [' ', '7', ',', '🎉', 'a ', '61 ', 'cart 61 ', 'B 41, '].map((piece) => {
    const [short, long] = [took(piece.repeat(1250)), took(piece.repeat(5000))];
    return {
      piece,
      'ms at 1,250': short.toFixed(2),
      'ms at 5,000': long.toFixed(2),
      'times (4 is in proportion)': (long / short).toFixed(1),
    };
  }),
);
