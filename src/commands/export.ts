import { existsSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { localDateOf } from '#core';
import { EXPORT_FORMATS, type ExportFormat, exportBook } from '#papers';
import { DEFAULT_BOOK } from './backup.ts';
import { writeLine } from './lines.ts';
import { open } from './parts.ts';
import { Problem } from './problem.ts';
import { dateArg, siteIn } from './span-args.ts';

/** `export`: the lines of a span as a workbook, CSV in a zip, or JSON. Works while the program runs. */
export async function run(args: string[]): Promise<number> {
  const { values } = parseArgs({
    args,
    options: {
      db: { type: 'string' },
      site: { type: 'string' },
      from: { type: 'string' },
      to: { type: 'string' },
      format: { type: 'string' },
      out: { type: 'string' },
    },
  });
  const format = EXPORT_FORMATS.find((each) => each === (values.format ?? formatOf(values.out)));
  if (!format) throw new Problem(`--format is one of ${EXPORT_FORMATS.join(', ')}`);
  const book = open(values.db ?? DEFAULT_BOOK, true);
  try {
    const { id, site } = siteIn(book, values.site, values.db ?? DEFAULT_BOOK);
    const now = new Date().toISOString();
    const to = dateArg('to', values.to) ?? localDateOf(now, site.timeZone);
    const from = dateArg('from', values.from) ?? '0001-01-01';
    if (from > to) throw new Problem(`--from ${from} is after --to ${to}`);
    const out =
      values.out ?? `${site.name.toLowerCase().replaceAll(/[^\p{L}\p{N}]+/gu, '-')}-${to}.${END[format]}`;
    if (existsSync(out)) throw new Problem(`${out} exists already and is not overwritten`);
    const onProgress = (done: number, of: number): void => {
      process.stderr.write(`heaphand: export ${Math.round((done / of) * 100)} %\n`);
    };
    const { lines, sheets } = await exportBook(book, id, { from, to, format, out, now, onProgress });
    const filled = sheets.filter(({ rows }) => rows > 0).length;
    await writeLine(
      process.stdout,
      `${out}: ${lines} lines${sheets.length > 0 ? `, ${filled} of ${sheets.length} sheets with rows` : ''}`,
    );
    return 0;
  } catch (error) {
    const { code } = (error ?? {}) as { code?: string };
    if (code === 'ENOENT' || code === 'EACCES' || code === 'ENOSPC')
      throw new Problem(`the file could not be written there (${code})`);
    throw error;
  } finally {
    book.close();
  }
}

const END: Record<ExportFormat, string> = { xlsx: 'xlsx', csv: 'zip', json: 'json' };

/** By the end of the file's name, where no format was said. */
const formatOf = (out: string | undefined): ExportFormat | undefined =>
  out === undefined ? 'xlsx' : EXPORT_FORMATS.find((each) => out.endsWith(`.${END[each]}`));
