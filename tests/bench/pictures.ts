// How long each picture takes once the libraries are read, and what the first one costs.
// Run with: npm run bench:pictures
import { draw } from '#charts';
import { autumn } from '../charts/autumn.ts';

const TIMES = 9;

async function milliseconds(work: () => Promise<unknown>): Promise<number> {
  const from = performance.now();
  await work();
  return performance.now() - from;
}

const { pictureOf } = autumn();
const specs = ['status B', 'week', 'year', 'mix'].map((text) => pictureOf(text)!);
console.info(
  `first, with reading the libraries: ${(await milliseconds(() => draw(specs[0]!))).toFixed(0)} ms`,
);
for (const spec of specs) {
  const times: number[] = [];
  for (let i = 0; i < TIMES; i += 1) times.push(await milliseconds(() => draw(spec)));
  times.sort((a, b) => a - b);
  const bytes = (await draw(spec)).length;
  console.info(
    `${spec.draw}: middle ${times[(TIMES - 1) / 2]!.toFixed(0)} ms, slowest ${times.at(-1)!.toFixed(0)} ms, ${(bytes / 1000).toFixed(0)} kB`,
  );
}
