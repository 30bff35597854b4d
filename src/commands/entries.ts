import { parseArgs } from 'node:util';
import { lineSeen } from '#assistant';
import { writeLine } from './lines.ts';
import { open, wordsOf } from './parts.ts';
import { Problem } from './problem.ts';

/** `entries`: each line of the book in order, as JSON. Works while the program runs. */
export async function run(args: string[]): Promise<number> {
  const { values } = parseArgs({ args, options: { db: { type: 'string' }, site: { type: 'string' } } });
  if (!values.db) throw new Problem('entries needs --db FILE');
  const book = open(values.db, true);
  try {
    const sites = book.sites();
    const row = values.site ? book.siteByName(values.site) : sites.length === 1 ? sites[0]! : null;
    if (!row && values.site) throw new Problem(`there is no site "${values.site}" in ${values.db}`);
    if (!row && sites.length === 0) return 0;
    if (!row) {
      throw new Problem(
        `the book holds ${sites.length} sites: say which with --site NAME (${sites.map(({ site }) => site.name).join(', ')})`,
      );
    }
    const { site } = row;
    const how = { ...site, language: site.languages[0] ?? 'en', today: '' };
    const words = wordsOf();
    const seen = lineSeen(book, row.id, (who) => words.label(who, how));
    for (const entry of book.entriesWalk(row.id))
      await writeLine(process.stdout, JSON.stringify(seen(entry)));
    return 0;
  } finally {
    book.close();
  }
}
