import { parseArgs } from 'node:util';
import { type Period, periodSpan } from '#core';
import { reportFacts, writeReport } from '#papers';
import type { Site } from '#records';
import { writeLine } from './lines.ts';
import { wordsOf } from './parts.ts';
import { Problem } from './problem.ts';
import { FILE_OPTIONS, fileArgs, intoNew, withSite } from './span-args.ts';

/** `report`: a PDF of a week, month, season or year, or of any span. Works while the program runs. */
export async function run(args: string[]): Promise<number> {
  const { values, positionals } = parseArgs({ args, allowPositionals: true, options: FILE_OPTIONS });
  return withSite(values, { readOnly: true }, async (book, row) => {
    const now = new Date().toISOString();
    const { from, to, language } = fileArgs(values, row, now);
    const span = from ? { from, to } : spanOf(positionals[0] ?? 'month', to, row.site);
    const path = values.out ?? `report-${span.from}-${span.to}.pdf`;
    const { pages } = await intoNew(path, () =>
      writeReport(reportFacts(book, row.id, span), { path, language, words: wordsOf(), now }),
    );
    await writeLine(process.stdout, `${path}: ${pages} pages, ${span.from} to ${span.to}`);
    return 0;
  });
}

const PERIODS: readonly Period[] = ['week', 'month', 'season', 'year'];

function spanOf(what: string, to: string, site: Site): { from: string; to: string } {
  const period = PERIODS.find((each) => each === what);
  if (!period) throw new Problem('report is for a week, month, season or year, or --from and --to');
  return periodSpan(period, to, site);
}
