import { join } from 'node:path';
import type { Units } from '#records';
import { type Cell, type Column, cellOf, headOf, safeText } from './cells.ts';
import { KEPT_SHEET } from './kept-line.ts';
import { type Heads, headsIn } from './sheets/heads.ts';
import { type Spool, spoolInto, writeZip } from './spool.ts';
import { MOST_ROWS, rowXml, sheetHead, sheetTail, workbookParts } from './xlsx-out.ts';

export const EXPORT_FORMATS = ['xlsx', 'csv', 'json'] as const;
export type ExportFormat = (typeof EXPORT_FORMATS)[number];

/** Where the rows of a sheet go. */
type SheetSink = { name: string; rows: () => number; add(row: unknown): void };
export type Sink = {
  sheet(name: string, columns: Column<never>[]): SheetSink;
  /** Puts what was spooled together into the file; sheets stand in the order given. */
  finish(path: string, order: readonly string[]): Promise<void>;
};

type Part = { name: string; heads: { head: string; kind: Cell['kind'] }[]; spool: Spool; rows: number };

/** How things are written in the files of a site: its units, and what its language calls them. */
export type Writing = { units: Units; heads: Heads };

const cellsOf = (columns: Column<never>[], row: unknown, { units, heads }: Writing): Cell[] =>
  columns.map((each) => cellOf(each as Column<unknown>, row, units, heads));

/** One sheet, or several where there are more rows than a sheet can have. */
export function workbookSink(folder: string, site: Writing, title: string): Sink {
  const sheets = new Map<string, Part[]>();
  let files = 0;
  const begin = (name: string, heads: Part['heads']): Part => {
    files += 1;
    return { name, heads, spool: spoolInto(join(folder, `sheet-${files}`)), rows: 1 };
  };
  return {
    sheet(english, columns) {
      const writing = writingOf(english, site);
      const name = writing.heads.sheet(english);
      const heads = columns.map((each) => ({
        head: headOf(each, writing.units, writing.heads),
        kind: each.kind,
      }));
      const parts = [begin(name, heads)];
      sheets.set(english, parts);
      let total = 0;
      return {
        name,
        rows: () => total,
        add(row) {
          let part = parts.at(-1)!;
          if (part.rows >= MOST_ROWS) {
            part = begin(`${name} (${parts.length + 1})`, heads);
            parts.push(part);
          }
          part.rows += 1;
          total += 1;
          part.spool.write(rowXml(cellsOf(columns, row, writing), part.rows));
        },
      };
    },
    async finish(path, order) {
      const parts = order.flatMap((name) => sheets.get(name) ?? []);
      for (const { spool } of parts) spool.end();
      const texts = workbookParts(
        parts.map(({ name, heads, rows }) => ({ name, columns: heads.length, rows })),
      );
      await writeZip(path, [
        ...texts.map(([name, text]) => ({ name, text })),
        ...parts.map(({ heads, spool, rows }, i) => ({
          name: `xl/worksheets/sheet${i + 1}.xml`,
          head: sheetHead(heads),
          file: spool.path,
          tail: sheetTail(heads.length, rows, title),
        })),
      ]);
    },
  };
}

/** What is read back is called the same in every language. */
const writingOf = (english: string, writing: Writing): Writing =>
  english === KEPT_SHEET ? { ...writing, heads: headsIn('en') } : writing;

/** A field as RFC 4180 has it; text that could run as a formula is made safe, numbers are left as they are. */
function csvField({ value }: Cell): string {
  if (value === null) return '';
  if (typeof value === 'number') return String(value);
  const text = safeText(value);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

const csvRow = (cells: readonly Cell[]): string => `${cells.map(csvField).join(',')}\r\n`;
const csvHead = (columns: Column<never>[], { units, heads }: Writing): string =>
  csvRow(columns.map((each) => ({ kind: 'text', value: headOf(each, units, heads) })));
const csvOf = (columns: Column<never>[], row: unknown, writing: Writing): string =>
  csvRow(cellsOf(columns, row, writing));

/** `discharges-and-transfers.csv` */
export const fileOfSheet = (name: string): string =>
  `${name
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')}.csv`;

export function csvSink(folder: string, site: Writing): Sink {
  const sheets = new Map<string, Spool>();
  return {
    sheet(english, columns) {
      const writing = writingOf(english, site);
      const name = writing.heads.sheet(english);
      const spool = spoolInto(join(folder, fileOfSheet(name)));
      sheets.set(english, spool);
      spool.write(csvHead(columns, writing));
      let total = 0;
      return {
        name,
        rows: () => total,
        add(row) {
          total += 1;
          spool.write(csvOf(columns, row, writing));
        },
      };
    },
    async finish(path, order) {
      for (const spool of sheets.values()) spool.end();
      await writeZip(
        path,
        order.flatMap((name) => {
          const spool = sheets.get(name);
          return spool
            ? [{ name: fileOfSheet(site.heads.sheet(name)), head: '', file: spool.path, tail: '' }]
            : [];
        }),
      );
    },
  };
}
