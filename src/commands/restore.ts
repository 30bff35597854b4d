import { parseArgs } from 'node:util';
import { restoreBook } from '#papers';
import { DEFAULT_BOOK } from './backup-folder.ts';
import { writeLine } from './lines.ts';
import { plainly } from './parts.ts';
import { Problem } from './problem.ts';
import { faultOf } from './verify.ts';

/** `restore`: a backup back in the place of the book; refuses to overwrite without being told. */
export async function run(args: string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: { db: { type: 'string' }, from: { type: 'string' }, overwrite: { type: 'boolean' } },
  });
  const from = values.from ?? positionals[0];
  if (!from) throw new Problem('restore needs the backup: --from FILE');
  const to = values.db ?? DEFAULT_BOOK;
  const now = new Date().toISOString();
  const done = await plainly(() => restoreBook(from, to, { overwrite: values.overwrite === true, now }));
  if (done.is === 'exists')
    throw new Problem(`${to} exists already; say --overwrite to put it aside and restore`);
  if (done.is === 'same-file') throw new Problem(`${from} is the book itself, not a backup of it`);
  if (done.is === 'does-not-hold')
    throw new Problem(`the backup ${from} does not hold, nothing was changed: ${faultOf(done.verdict)}`, 1);
  const aside = done.aside ? `; what was there is now ${done.aside}` : '';
  await writeLine(process.stdout, `${to}: ${done.lines} lines restored from ${from}${aside}`);
  return 0;
}
