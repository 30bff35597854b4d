import { parse } from 'csv-parse/sync';
import exceljs from 'exceljs';
import { Unzip, UnzipInflate, unzipSync } from 'fflate';
import { plainText } from '../cells.ts';
import { KEPT_FORMAT, KEPT_SHEET, KeptLine } from '../kept-line.ts';
import { fileOfSheet } from '../sinks.ts';

/** A cell as it lies in a file; a date of a spreadsheet is a local date already. */
export type CellIn = string | number | { date: string } | null;
export type Table = { name: string; rows: CellIn[][] };

/** What is wrong with a file as a whole; nothing of it is taken. */
export const FILE_FAULTS = {
  empty: 'the file is empty',
  'too-large': 'the file is larger than 50 MB: split it by year',
  'workbook-too-large':
    'the workbook is too large to be read whole: split it by year, or save its sheets as CSV (an export of ours: as JSON)',
  'unpacks-too-large': 'the file unpacks to far more than it should: nothing of it was opened',
  protected: 'the file is protected by a password or is an old .xls: save it without one as .xlsx or CSV',
  encoding: 'the text is not UTF-8: save it as CSV UTF-8',
  'not-a-table': 'the file is no spreadsheet, CSV, text or export of a log book',
  damaged: 'the spreadsheet is damaged and cannot be opened',
  'no-lines': 'the export holds a line that does not fit: it was changed since it was written',
} as const;
type FileFault = keyof typeof FILE_FAULTS;

export type FileRead =
  | { is: 'tables'; tables: Table[] }
  | { is: 'kept'; lines: KeptLine[] }
  | { is: 'text'; text: string }
  | { is: 'bad'; fault: FileFault };

const MOST_BYTES = 50 * 2 ** 20;
const MOST_UNPACKED = 400 * 2 ** 20;
/** A workbook is whole in memory while it is read, at many times the size of its text. */
const MOST_WORKBOOK = 120 * 2 ** 20;
const MOST_RATIO = 200;

const bad = (fault: FileFault): FileRead => ({ is: 'bad', fault });
const startsWith = (bytes: Uint8Array, head: number[]): boolean => head.every((byte, i) => bytes[i] === byte);

/** Reads a file by what it holds, not by its name. */
export async function readFile(bytes: Uint8Array): Promise<FileRead> {
  if (bytes.length === 0) return bad('empty');
  if (bytes.length > MOST_BYTES) return bad('too-large');
  // The first flag of a file in a zip says that it is encrypted.
  if (startsWith(bytes, [0x50, 0x4b, 0x03, 0x04]))
    return (bytes[6]! & 1) === 1 ? bad('protected') : readZip(bytes);
  if (startsWith(bytes, [0xd0, 0xcf, 0x11, 0xe0])) return bad('protected');
  const text = textOf(bytes);
  if (text === null) return bad(bytes.includes(0) ? 'not-a-table' : 'encoding');
  if (text.trim() === '') return bad('empty');
  if (text.includes('\0') || text.startsWith('%PDF')) return bad('not-a-table');
  if (text.trimStart().startsWith('{')) return readKeptJson(text);
  return readText(text);
}

function textOf(bytes: Uint8Array): string | null {
  const label = startsWith(bytes, [0xff, 0xfe]) ? 'utf-16le' : 'utf-8';
  try {
    return new TextDecoder(label, { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

/** The sizes are looked at before anything is unpacked. */
async function readZip(bytes: Uint8Array): Promise<FileRead> {
  const names: string[] = [];
  let unpacked = 0;
  try {
    unzipSync(bytes, {
      filter: ({ name, originalSize }) => {
        names.push(name);
        unpacked += originalSize;
        return false;
      },
    });
  } catch {
    return bad('damaged');
  }
  if (unpacked > MOST_UNPACKED || (unpacked > 2 ** 20 && unpacked > bytes.length * MOST_RATIO))
    return bad('unpacks-too-large');
  const really = unpackedWithin(bytes, unpacked);
  if (really === 'damaged') return bad('damaged');
  if (really === 'more') return bad('unpacks-too-large');
  const kept = fileOfSheet(KEPT_SHEET);
  if (names.includes(kept)) {
    const text = textOf(unzipSync(bytes, { filter: ({ name }) => name === kept })[kept]!);
    if (text === null) return bad('encoding');
    let rows: string[][];
    try {
      rows = parse(text, { relax_column_count: true });
    } catch {
      return bad('damaged');
    }
    return keptFrom(rows.map((row) => row.map(plainText)));
  }
  if (!names.includes('xl/workbook.xml')) return bad('not-a-table');
  if (really > MOST_WORKBOOK) return bad('workbook-too-large');
  const book = new exceljs.Workbook();
  try {
    await book.xlsx.load(bytes.slice().buffer as never);
  } catch {
    return bad('damaged');
  }
  const shiftMs = uncountedFrom1904(bytes, book);
  // More lines than a sheet has rows stand in several: `Book lines`, `Book lines (2)`.
  const own = book.worksheets.filter(({ name }) => name === KEPT_SHEET || name.startsWith(`${KEPT_SHEET} (`));
  if (own.length > 0) {
    const rows = own.flatMap((sheet, i) => rowsOf(sheet, 0).slice(i === 0 ? 0 : 1));
    return keptFrom(rows.map((row) => row.map((cell) => (cell === null ? '' : String(cell)))));
  }
  const tables = book.worksheets.map((sheet) => ({ name: sheet.name, rows: rowsOf(sheet, shiftMs) }));
  return tables.some(({ rows }) => rows.length > 0) ? { is: 'tables', tables } : bad('empty');
}

const PIECE = 1 << 16;

/** How much a zip really unpacks to, piece by piece; one that its directory belies is left as soon as that shows. */
function unpackedWithin(bytes: Uint8Array, most: number): number | 'more' | 'damaged' {
  let total = 0;
  let failed = false;
  const unzip = new Unzip((file) => {
    file.ondata = (error, piece) => {
      if (error) failed = true;
      else total += piece.length;
    };
    file.start();
  });
  unzip.register(UnzipInflate);
  try {
    for (let at = 0; at < bytes.length && !failed && total <= most; at += PIECE)
      unzip.push(bytes.subarray(at, at + PIECE), at + PIECE >= bytes.length);
  } catch {
    return 'damaged';
  }
  return failed ? 'damaged' : total > most ? 'more' : total;
}

/**
 * What is to be added to the dates of a workbook that counts its days from 1904. The library knows of it only where
 * the flag is written as `1`; the standard also allows `true`.
 * @source ECMA-376 part 1, 18.17.4.1 (date systems) and 18.2.28 (workbookPr)
 */
function uncountedFrom1904(bytes: Uint8Array, book: exceljs.Workbook): number {
  const name = 'xl/workbook.xml';
  const part = unzipSync(bytes, { filter: (file) => file.name === name })[name]!;
  const says = /date1904="(1|true)"/.test(new TextDecoder().decode(part));
  return says && !book.properties.date1904 ? 1462 * 86_400_000 : 0;
}

function rowsOf(sheet: exceljs.Worksheet, shiftMs: number): CellIn[][] {
  const rows: CellIn[][] = [];
  sheet.eachRow({ includeEmpty: true }, (row) => {
    const cells: CellIn[] = [];
    for (let i = 1; i <= row.cellCount; i++) cells.push(cellIn(row.getCell(i).value, shiftMs));
    rows.push(cells);
  });
  return rows;
}

function cellIn(value: exceljs.CellValue, shiftMs: number): CellIn {
  if (value === null || value === undefined) return null;
  if (typeof value === 'number' || typeof value === 'string') return value;
  if (value instanceof Date) {
    const ms = value.getTime() + shiftMs;
    return Number.isNaN(ms) ? null : { date: new Date(ms).toISOString().slice(0, 10) };
  }
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if ('richText' in value) return value.richText.map(({ text }) => text).join('');
  if ('result' in value) return cellIn(value.result as exceljs.CellValue, shiftMs);
  if ('text' in value) return String(value.text);
  return null;
}

const KEPT_HEADS = [
  'Line',
  'Happened (UTC)',
  'Local date',
  'Received (UTC)',
  'By',
  'Record',
  'Typed',
  'Assumed',
  'Held',
  'Taken back by',
  'Pictures',
];

function keptFrom(rows: string[][]): FileRead {
  const [heads = [], ...body] = rows;
  const at = KEPT_HEADS.map((head) => heads.indexOf(head));
  if (at.includes(-1)) return bad('no-lines');
  try {
    const lines = body.map((row) => {
      const [line, happenedAt, localDate, receivedAt, by, record, typed, assumed, held, voidedBy, pictures] =
        at.map((i) => row[i] ?? '');
      return KeptLine.parse({
        line: Number(line),
        happenedAt,
        localDate,
        receivedAt,
        by: by || null,
        record: JSON.parse(record!),
        typed: typed || null,
        assumed: JSON.parse(assumed!),
        held: held ? JSON.parse(held) : null,
        voidedBy: voidedBy ? Number(voidedBy) : null,
        pictures: Number(pictures),
      });
    });
    return { is: 'kept', lines };
  } catch {
    return bad('no-lines');
  }
}

/** Whether a file on disk begins as our own JSON does: such a one may have any length. */
export const beginsAsKept = (head: string): boolean =>
  head.trimStart().startsWith(`{"format":${JSON.stringify(KEPT_FORMAT)}`);

/** Our own JSON line by line, as it was written: a line of the book is a line of the file. */
export async function readKeptLines(lines: AsyncIterable<string>): Promise<FileRead> {
  const kept: KeptLine[] = [];
  let ended = false;
  let first = true;
  try {
    for await (const line of lines) {
      if (first) {
        first = false;
        if (!line.endsWith('"lines":[')) return bad('no-lines');
      } else if (line === ']}') ended = true;
      else if (line.trim() !== '') kept.push(KeptLine.parse(JSON.parse(line.replace(/,$/, ''))));
    }
  } catch {
    return bad('no-lines');
  }
  return ended ? { is: 'kept', lines: kept } : bad('no-lines');
}

function readKeptJson(text: string): FileRead {
  try {
    const whole = JSON.parse(text) as { format?: unknown; lines?: unknown };
    if (whole.format !== KEPT_FORMAT) return bad('not-a-table');
    return { is: 'kept', lines: KeptLine.array().parse(whole.lines) };
  } catch {
    return bad('no-lines');
  }
}

/** A table where most lines have the same separator, with a head; otherwise typed text. */
function readText(text: string): FileRead {
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== '');
  for (const delimiter of ['\t', ';', ',']) {
    const head = lines.findIndex((line) => line.split(delimiter).length >= 2);
    const width = head < 0 ? 0 : lines[head]!.split(delimiter).length;
    const alike = lines.filter((line) => line.split(delimiter).length >= Math.min(width, 2)).length;
    // Typed text has its commas inside sentences: a head has no digits in it.
    if (width < 2 || alike < lines.length * 0.7 || /\d/.test(lines[head]!.split(delimiter)[0]!)) continue;
    try {
      const rows = parse(text, {
        delimiter,
        relax_column_count: true,
        relax_quotes: true,
        skip_empty_lines: false,
      }) as string[][];
      return {
        is: 'tables',
        tables: [
          { name: 'table', rows: rows.map((row) => row.map((cell) => plainText(cell.trim()) || null)) },
        ],
      };
    } catch {}
  }
  return { is: 'text', text };
}
