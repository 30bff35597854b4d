import { readFileSync, statSync } from 'node:fs';
import { basename } from 'node:path';
import { parseArgs } from 'node:util';
import type { SiteRow } from '#assistant';
import { localTimeOf } from '#core';
import type { OpenedBook } from '#logbook';
import {
  addKept,
  addLines,
  countNew,
  FILE_FAULTS,
  type KeptLine,
  type LineIn,
  readFile,
  readTable,
  undoImport,
} from '#papers';
import { contextForSite, readMessage } from '#parsers';
import { writeLine } from './lines.ts';
import { Problem } from './problem.ts';
import { SITE_OPTIONS, withSite } from './span-args.ts';

const MOST_BYTES = 50 * 2 ** 20;

/** `import`: an old log or our own export. Shows what it would do; `--write` does it, `--undo N` takes it back whole. */
export async function run(args: string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: {
      ...SITE_OPTIONS,
      write: { type: 'boolean' },
      undo: { type: 'string' },
    },
  });
  const changes = values.write === true || values.undo !== undefined;
  return withSite(values, { readOnly: !changes }, async (book, row) => {
    if (values.undo !== undefined) return undo(book, row, values.undo);
    const file = positionals[0];
    if (!file) throw new Problem('import needs a file, or - for standard input');
    return take(book, row, file, values.write === true);
  });
}

async function undo(book: OpenedBook, { id }: SiteRow, which: string): Promise<number> {
  const lines = undoImport(book, id, Number(which), new Date().toISOString());
  if (lines === null) throw new Problem(`there is no import ${which} that still stands`);
  await writeLine(process.stdout, `import ${which} undone: ${lines} lines taken back`);
  return 0;
}

async function take(book: OpenedBook, row: SiteRow, file: string, writes: boolean): Promise<number> {
  const say = (line: string) => writeLine(process.stdout, line);
  const how = { name: basename(file), now: new Date().toISOString() };
  const read = await readFile(await bytesOf(file));
  if (read.is === 'bad') throw new Problem(`${file}: ${FILE_FAULTS[read.fault]}; nothing was changed`);
  if (read.is === 'kept') return kept(book, row, read.lines, how, writes, say);
  const lines: LineIn[] = [];
  let doubts = 0;
  if (read.is === 'text') {
    const text = textLines(read.text, row, how.now);
    lines.push(...text.lines);
    doubts = text.doubts.length;
    for (const doubt of text.doubts) await say(`? ${doubt}`);
  } else {
    let tables = 0;
    for (const table of read.tables) {
      const found = readTable(table, row.site);
      if (!found) continue;
      tables += 1;
      await say(`sheet "${table.name}"`);
      for (const { head, taken } of found.columns) await say(`  column "${head}": ${taken}`);
      for (const doubt of found.doubts) await say(`  ? row ${doubt.row}: ${doubt.say}`);
      doubts += found.doubts.length;
      lines.push(...found.lines);
    }
    if (tables === 0)
      throw new Problem(`${file}: no row names a date and something measured; nothing was changed`);
  }
  const fresh = countNew(book, row.id, lines);
  await say(`${lines.length} lines read, ${fresh} of them new, ${doubts} doubts`);
  for (const { localDate, record } of lines.slice(0, 5))
    await say(`  ${localDate} ${JSON.stringify(record)}`);
  if (!writes) {
    await say('nothing was changed; say --write to add them');
    return 0;
  }
  const done = addLines(book, row.id, lines, how);
  await say(
    done.id === null
      ? 'nothing new'
      : `import ${done.id}: ${done.added} lines added; --undo ${done.id} takes them back`,
  );
  return 0;
}

async function kept(
  book: OpenedBook,
  { id }: SiteRow,
  lines: readonly KeptLine[],
  how: { name: string; now: string },
  writes: boolean,
  say: (line: string) => Promise<void>,
): Promise<number> {
  const fresh = countNew(book, id, lines);
  await say(`an export of a log book: ${lines.length} lines, ${fresh} of them new`);
  if (!writes) {
    await say('nothing was changed; say --write to add them');
    return 0;
  }
  try {
    const done = addKept(book, id, lines, how);
    const left =
      done.left > 0
        ? `, ${done.left} left out (what took them back, or what they take back, is not in the file)`
        : '';
    await say(
      done.id === null
        ? `nothing new${left}`
        : `import ${done.id}: ${done.added} lines added${left}; --undo ${done.id} takes them back`,
    );
    return 0;
  } catch (error) {
    if (error instanceof RangeError) throw new Problem(`${FILE_FAULTS['no-lines']}; nothing was changed`);
    throw error;
  }
}

/** Typed lines, read as a message is read, each date carrying on until the next. What is no entry is said. */
function textLines(text: string, { site }: SiteRow, now: string): { lines: LineIn[]; doubts: string[] } {
  const nowLocal = localTimeOf(now, site.timeZone);
  const parsed = readMessage(text, contextForSite(site, nowLocal));
  const lines: LineIn[] = [];
  const doubts = [
    ...parsed.doubts.map(({ said, why }) => `"${said ?? ''}": ${why}, left out`),
    ...parsed.unread.map((words) => `"${words}": not understood, left out`),
  ];
  parsed.records.forEach((record, i) => {
    if (!record.when) doubts.push(`"${record.said ?? record.kind}": no date, left out`);
    else
      lines.push({ row: i + 1, localDate: record.when.slice(0, 10), record, typed: parsed.typed[i] ?? null });
  });
  return { lines, doubts };
}

async function bytesOf(file: string): Promise<Uint8Array> {
  if (file !== '-') {
    try {
      if (statSync(file).size > MOST_BYTES)
        throw new Problem(`${file}: ${FILE_FAULTS['too-large']}; nothing was changed`);
      return readFileSync(file);
    } catch (error) {
      if (error instanceof Problem) throw error;
      throw new Problem(`there is no file ${file} that can be read`);
    }
  }
  const chunks: Buffer[] = [];
  for await (const chunk of process.stdin) chunks.push(Buffer.from(chunk));
  return Buffer.concat(chunks);
}
