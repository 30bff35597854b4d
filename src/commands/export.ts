import { parseArgs } from 'node:util';
import { ALWAYS, EXPORT_FORMATS, type ExportFormat, exportBook } from '#papers';
import { writeLine } from './lines.ts';
import { Problem } from './problem.ts';
import { FILE_OPTIONS, fileArgs, intoNew, withSite } from './span-args.ts';

/** `export`: the lines of a span as a workbook, CSV in a zip, or JSON. Works while the program runs. */
export async function run(args: string[]): Promise<number> {
  const { values } = parseArgs({ args, options: { ...FILE_OPTIONS, format: { type: 'string' } } });
  const format = EXPORT_FORMATS.find((each) => each === (values.format ?? formatOf(values.out)));
  if (!format) throw new Problem(`--format is one of ${EXPORT_FORMATS.join(', ')}`);
  return withSite(values, { readOnly: true }, async (book, row) => {
    const now = new Date().toISOString();
    const { from, to, language } = fileArgs(values, row, now);
    const name = row.site.name.toLowerCase().replaceAll(/[^\p{L}\p{N}]+/gu, '-');
    const out = values.out ?? `${name}-${to}.${END[format]}`;
    const onProgress = (done: number, of: number): void => {
      process.stderr.write(`heaphand: export ${Math.round((done / of) * 100)} %\n`);
    };
    const span = { from: from ?? ALWAYS, to };
    const { lines, sheets } = await intoNew(out, () =>
      exportBook(book, row.id, { ...span, format, language, out, now, onProgress }),
    );
    const filled = sheets.filter(({ rows }) => rows > 0).length;
    await writeLine(
      process.stdout,
      `${out}: ${lines} lines${sheets.length > 0 ? `, ${filled} of ${sheets.length} sheets with rows` : ''}`,
    );
    return 0;
  });
}

const END: Record<ExportFormat, string> = { xlsx: 'xlsx', csv: 'zip', json: 'json' };

/** By the end of the file's name, where no format was said. */
const formatOf = (out: string | undefined): ExportFormat | undefined =>
  out === undefined ? 'xlsx' : EXPORT_FORMATS.find((each) => out.endsWith(`.${END[each]}`));
