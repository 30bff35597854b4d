import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { killOften } from './kills.ts';

// `npm run endure -- [kills] [seed]`: the whole program, killed again and again; prints what came of it.
const kills = Number(process.argv[2] ?? 200);
const seed = Number(process.argv[3] ?? Date.now() % 1_000_000);
const folder = mkdtempSync(join(tmpdir(), 'endure-'));
const tell = (line: string): void => void process.stdout.write(`${line}\n`);
tell(`${kills} kills, seed ${seed}`);
try {
  const { problems, ...account } = await killOften({ kills, seed, path: join(folder, 'site.db'), tell });
  for (const [what, count] of Object.entries(account)) tell(`${what}: ${count}`);
  tell(problems.length === 0 ? 'nothing lost, nothing doubled, the book holds' : problems.join('\n'));
  process.exitCode = problems.length === 0 ? 0 : 1;
} finally {
  rmSync(folder, { recursive: true, force: true });
}
