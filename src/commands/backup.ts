import { parseArgs } from 'node:util';
import { backupInto } from '#papers';
import { backupsBeside, DEFAULT_BOOK, KEPT_BACKUPS } from './backup-folder.ts';
import { writeLine } from './lines.ts';
import { open, plainly } from './parts.ts';
import { Problem } from './problem.ts';

/** `backup`: a dated, checked copy of the book. Works while the program runs. */
export async function run(args: string[]): Promise<number> {
  const { values } = parseArgs({
    args,
    options: { db: { type: 'string' }, to: { type: 'string' }, keep: { type: 'string' } },
  });
  const keep = values.keep === undefined ? KEPT_BACKUPS : Number(values.keep);
  if (!Number.isInteger(keep) || keep < 1) throw new Problem('--keep is how many backups stay: 1 or more');
  const path = values.db ?? DEFAULT_BOOK;
  const book = open(path, true);
  try {
    const now = new Date().toISOString();
    const made = await plainly(() => backupInto(book, values.to ?? backupsBeside(path), { now, keep }));
    if (!made.verdict.ok) {
      throw new Problem(
        `the copy did not hold and was taken away again; run "npm run -s verify -- --db ${path}"`,
        1,
      );
    }
    const removed = made.removed > 0 ? `, ${made.removed} old removed` : '';
    await writeLine(process.stdout, `${made.path}: ${made.verdict.lines} lines, checked${removed}`);
    return 0;
  } finally {
    book.close();
  }
}
