import { existsSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { addDays, addMonths, localDateOf, weekOf, yearSpan } from '#core';
import { reportFacts, writeReport } from '#papers';
import { Language, type Site } from '#records';
import { makeWords } from '#wording';
import { DEFAULT_BOOK } from './backup.ts';
import { writeLine } from './lines.ts';
import { open, readTexts } from './parts.ts';
import { Problem } from './problem.ts';
import { dateArg, siteIn } from './span-args.ts';

/** `report`: a PDF of a week, month, season or year, or of any span. Works while the program runs. */
export async function run(args: string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: {
      db: { type: 'string' },
      site: { type: 'string' },
      from: { type: 'string' },
      to: { type: 'string' },
      language: { type: 'string' },
      out: { type: 'string' },
    },
  });
  const book = open(values.db ?? DEFAULT_BOOK, true);
  try {
    const { id, site } = siteIn(book, values.site, values.db ?? DEFAULT_BOOK);
    const language = Language.safeParse(values.language ?? site.languages[0]);
    if (!language.success) throw new Problem('--language is one of en, fr, es');
    const now = new Date().toISOString();
    const end = dateArg('to', values.to) ?? localDateOf(now, site.timeZone);
    const from = dateArg('from', values.from);
    const span = from ? { from, to: end } : spanOf(positionals[0] ?? 'month', end, site);
    if (span.from > span.to) throw new Problem(`--from ${span.from} is after --to ${span.to}`);
    const path = values.out ?? `report-${span.from}-${span.to}.pdf`;
    if (existsSync(path)) throw new Problem(`${path} exists already and is not overwritten`);
    const words = makeWords(readTexts(), () => {});
    const { pages } = await writeReport(reportFacts(book, id, span), {
      path,
      language: language.data,
      words,
      now,
    });
    await writeLine(process.stdout, `${path}: ${pages} pages, ${span.from} to ${span.to}`);
    return 0;
  } finally {
    book.close();
  }
}

/** The week, month, three months or year that a date lies in, up to that date. */
function spanOf(what: string, to: string, site: Site): { from: string; to: string } {
  if (what === 'week') return { from: weekOf(to, site.weekStarts), to };
  if (what === 'month') return { from: `${to.slice(0, 7)}-01`, to };
  if (what === 'season') return { from: addDays(addMonths(to, -3), 1), to };
  if (what === 'year') return { from: yearSpan(to, site.yearStarts).from, to };
  throw new Problem('report is for a week, month, season or year, or --from and --to');
}
