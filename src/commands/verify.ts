import { parseArgs } from 'node:util';
import { snapshotsHold } from '#assistant';
import type { Verdict } from '#logbook';
import { DEFAULT_BOOK } from './backup-folder.ts';
import { writeLine } from './lines.ts';
import { open } from './parts.ts';

const FAULTS: Record<(Verdict & { ok: false })['what'], string> = {
  file: 'the file itself is damaged',
  'foreign-keys': 'a row points to one that is not there',
  chain: 'its content is not what was written (its hash differs)',
  gap: 'a line before it is missing',
  shape: 'it does not fit its schema',
  voided: 'what took it back, or what it took back, is not as written',
  pictures: 'it has more pictures than when it was written',
};

/** The first thing that does not hold, in one line. */
export const faultOf = ({ what, site, number }: Verdict & { ok: false }, name?: string): string => {
  const where = [
    site === null ? null : `site ${name ?? site}`,
    number === null ? null : `line #${number}`,
  ].filter((part) => part !== null);
  return [...where, FAULTS[what]].join(': ');
};

/** `verify`: walks the whole book and names the first line that does not hold. Code 0 it holds, 1 it does not. */
export async function run(args: string[]): Promise<number> {
  const { values } = parseArgs({ args, options: { db: { type: 'string' } } });
  const book = open(values.db ?? DEFAULT_BOOK, true);
  try {
    const verdict = book.verify();
    if (!verdict.ok) {
      const name = verdict.site === null ? undefined : book.siteById(verdict.site).site.name;
      await writeLine(process.stdout, `does not hold: ${faultOf(verdict, name)}`);
      return 1;
    }
    let compared = 0;
    let older = 0;
    for (const { id, site } of book.sites()) {
      const pictures = snapshotsHold(book, id);
      if (!pictures.ok) {
        const last = pictures.line === null ? 'the first line' : `line #${pictures.line}`;
        await writeLine(
          process.stdout,
          `does not hold: site ${site.name}: the picture kept at ${pictures.at} is not what the lines up to ${last} give`,
        );
        return 1;
      }
      compared += pictures.compared;
      older += pictures.older;
    }
    const left = older > 0 ? ` (${older} of an older version not compared)` : '';
    await writeLine(
      process.stdout,
      `holds: ${verdict.lines} lines in ${book.sites().length} sites, ${compared} kept pictures rebuilt and the same${left}`,
    );
    return 0;
  } finally {
    book.close();
  }
}
