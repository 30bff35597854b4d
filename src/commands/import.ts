import { closeSync, createReadStream, existsSync, openSync, readFileSync, readSync, statSync } from 'node:fs';
import { basename } from 'node:path';
import { createInterface } from 'node:readline';
import { parseArgs } from 'node:util';
import type { SiteRow } from '#assistant';
import { localTimeOf } from '#core';
import type { OpenedBook } from '#logbook';
import {
  addKept,
  addLines,
  beginsAsKept,
  countNew,
  FILE_FAULTS,
  type KeptLine,
  type LineIn,
  readFile,
  readKeptLines,
  readTable,
  type TableFor,
  undoImport,
} from '#papers';
import { contextForSite, doubtAbout } from '#parsers';
import type { FieldRecord } from '#records';
import { writeLine } from './lines.ts';
import { Problem } from './problem.ts';
import { SITE_OPTIONS, withSite } from './span-args.ts';
import { readTyped } from './typed-log.ts';

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
  const read = (await keptFile(file)) ?? (await readFile(await bytesOf(file)));
  if (read.is === 'bad') throw new Problem(`${file}: ${FILE_FAULTS[read.fault]}; nothing was changed`);
  if (read.is === 'kept') return kept(book, row, read.lines, how, writes, say);
  const lines: LineIn[] = [];
  const doubts: { row: number; say: string }[] = [];
  if (read.is === 'text') {
    const log = readTyped(read.text, row, how.now);
    lines.push(...log.lines);
    doubts.push(...log.doubts);
    for (const doubt of log.doubts) await say(`? line ${doubt.row}: ${doubt.say}`);
  } else {
    let tables = 0;
    for (const table of read.tables) {
      const found = readTable(table, tableFor(row, how.now));
      if (found === null) continue;
      if (found === 'unclear-heads')
        throw new Problem(`${file}, sheet "${table.name}": ${UNCLEAR_HEADS}; nothing was changed`);
      tables += 1;
      await say(`sheet "${table.name}"`);
      for (const { head, taken } of found.columns) await say(`  column "${head}": ${taken}`);
      for (const doubt of found.doubts) await say(`  ? row ${doubt.row}: ${doubt.say}`);
      doubts.push(...found.doubts);
      lines.push(...found.lines);
    }
    if (tables === 0)
      throw new Problem(`${file}: no row names a date and something measured; nothing was changed`);
  }
  const fresh = countNew(book, row.id, lines);
  await say(`${lines.length} lines read, ${fresh} of them new, ${doubts.length} doubts`);
  for (const line of inAll(lines)) await say(`  ${line}`);
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

const UNCLEAR_HEADS =
  'a head stands over several columns (merged cells), or two columns are the same: give each column one name of its own, all in one row';

/** Why a row may not be true, in words; the codes are those of what is asked about in the chat. */
const DOUBTS: Partial<Record<string, string>> = {
  'too-heavy': 'too heavy for that',
  'too-light': 'lighter than it is when empty',
  negative: 'less than nothing',
  'gross-or-net': 'with the container, or without it?',
  'impossible-temperature': 'no pile or air is that warm or cold',
};

function tableFor({ site }: SiteRow, now: string): TableFor {
  const nowLocal = localTimeOf(now, site.timeZone);
  const context = contextForSite(site, nowLocal);
  return {
    site,
    today: nowLocal.slice(0, 10),
    doubtAbout: (record) => {
      const why = doubtAbout(record as FieldRecord, context);
      return why && (DOUBTS[why] ?? why);
    },
  };
}

/** What would come in, in few lines: from when to when, and how much of what. */
function inAll(lines: readonly LineIn[]): string[] {
  if (lines.length === 0) return [];
  const dates = lines.map(({ localDate }) => localDate).sort();
  const kinds = new Map<string, number>();
  for (const { record } of lines) kinds.set(record.kind, (kinds.get(record.kind) ?? 0) + 1);
  const counted = [...kinds].map(([kind, count]) => `${kind} ${count}`);
  return [`${dates[0]} to ${dates.at(-1)}: ${counted.join(', ')}`];
}

/** Our own JSON on disk is read piece by piece, however long; null for any other file. */
async function keptFile(file: string): Promise<Awaited<ReturnType<typeof readFile>> | null> {
  if (file === '-' || !existsSync(file) || !statSync(file).isFile()) return null;
  const head = Buffer.alloc(64);
  const opened = openSync(file, 'r');
  try {
    readSync(opened, head);
  } finally {
    closeSync(opened);
  }
  if (!beginsAsKept(head.toString('utf8'))) return null;
  const read = await readKeptLines(createInterface({ input: createReadStream(file), crlfDelay: Infinity }));
  // Another program may have put it all into one line: then it is read whole, as far as that goes.
  return read.is === 'bad' && statSync(file).size <= MOST_BYTES ? null : read;
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
  let length = 0;
  for await (const chunk of process.stdin) {
    length += chunk.length;
    if (length > MOST_BYTES) throw new Problem(`${FILE_FAULTS['too-large']}; nothing was changed`);
    chunks.push(Buffer.from(chunk));
  }
  return Buffer.concat(chunks);
}
