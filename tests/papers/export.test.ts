import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as xlsx from '@e965/xlsx';
import { parse } from 'csv-parse/sync';
import { unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { openBook } from '#logbook';
import { SHEET_ORDER } from '#papers';
import { COLUMN_HEADS, SHEET_NAMES } from '../../src/papers/sheets/heads.ts';
import { cart, folder, now } from '../logbook/samples.ts';
import { asked, talked } from './kit.ts';

const KEPT = 'Book lines';
const HOSPITAL = 'fixtures/sites/hospital.json';
const CREW: [string, string][] = [
  ['2026-06-01T09:00', 'cart 61.5 from east kitchen, chips 12'],
  ['2026-06-01T09:30', '2 buckets of coffee grounds'],
  ['2026-06-02T09:30', 'A 55 57 58 @ 60 cm, ambient 12\nturned A\ncovered A with tarp'],
  ['2026-06-02T10:30', 'cart 665'],
  ['2026-06-02T11:30', 'set rule set vessel-3d'],
  ['2026-06-03T11:30', 'A 58 59 60'],
  ['2026-06-04T11:30', 'A 56 59 60'],
  ['2026-06-04T12:30', 'Chidi cut his hand on glass'],
  ['2026-06-04T12:40', 'strong smell at pile B'],
  ['2026-06-05T12:40', 'smell gone, swept'],
  ['2026-06-05T12:50', 'cart 58 from west kitchen'],
  ['2026-06-05T12:51', 'undo'],
  ['2026-06-05T12:53', 'refused a cart from cafeteria, full of plastic'],
  ['2026-06-05T12:54', 'note: =HYPERLINK("x")'],
  ['2026-06-05T12:55', '4 barrows of finished compost from A to the rose garden'],
  ['2026-07-01T09:00', 'cart 70'],
];

type Rows = Record<string, unknown>[];

/** As an older program may have kept it: words about somebody's body, in the line, its end and a held one. */
function tellOfAnInjury(db: string): void {
  const book = openBook(db, { now });
  const words = 'Chidi lost a finger';
  const line = { ...cart(1), happenedAt: '2026-06-06T12:00:00.000Z', localDate: '2026-06-06', typed: words };
  const problem = { kind: 'problem' as const, topic: 'injury' as const, note: words, said: words };
  const [first] = book.append(1, [{ ...line, record: problem }], null);
  book.append(
    1,
    [{ ...line, record: { kind: 'resolved', entry: first!.number, note: words, said: words } }],
    null,
  );
  const held = {
    why: 'unclear' as const,
    choices: [{ say: words, record: problem }],
    doubt: { why: 'unclear' as const, choices: [], record: problem },
  };
  book.append(1, [{ ...line, record: problem, held }], null);
  book.close();
}

async function exported(format: string, more: string[] = [], site = HOSPITAL) {
  const dir = folder();
  const db = join(dir, 'yard.db');
  talked(db, site, CREW);
  tellOfAnInjury(db);
  const out = join(dir, `out.${format === 'csv' ? 'zip' : format}`);
  const ran = await asked('export', '--db', db, '--to', '2026-06-30', '--out', out, ...more);
  expect(ran).toMatchObject({ code: 0, err: '' });
  expect(readdirSync(dir).filter((name) => name.startsWith('.export'))).toEqual([]);
  return { db, out, dir, ran };
}

async function workbook(more: string[] = [], site = HOSPITAL) {
  const { out } = await exported('xlsx', more, site);
  const read = xlsx.read(readFileSync(out), {
    cellFormula: true,
    cellStyles: true,
    cellDates: true,
    UTC: true,
  } as never);
  const rows = (name: string): Rows => xlsx.utils.sheet_to_json(read.Sheets[name]!, { UTC: true } as never);
  return { read, rows, out };
}

describe('the workbook', () => {
  test('has a sheet a matter, with plain numbers and dates; only what counts is in a sum', async () => {
    const { read, rows } = await workbook();
    expect(read.SheetNames).toEqual(SHEET_ORDER);
    expect(rows('Intake')).toEqual([
      {
        Date: new Date('2026-06-01T00:00:00Z'),
        Time: '09:00',
        Material: 'food-scraps',
        Source: 'east kitchen',
        Container: 'cart',
        Count: 1,
        'Gross (kg)': 61.5,
        'Empty weight of one (kg)': 15.5,
        'Net, weighed (kg)': 46,
        'Logged by': 'Ana',
        'As typed': '61.5 kg',
        Assumed: 'material-default, gross-by-container',
        Line: 1,
      },
      {
        Date: new Date('2026-06-01T00:00:00Z'),
        Time: '09:30',
        Material: 'coffee-grounds',
        Container: 'bucket',
        Count: 2,
        'Net, estimated from volume (kg)': 18,
        'Factor of the estimate': 0.45,
        'Unit of the factor': 'kg/L',
        'Logged by': 'Ana',
        Line: 3,
      },
    ]);
    expect(rows('Temperatures').slice(0, 4)).toMatchObject([
      { Place: 'pile A', Point: '1', 'Temperature (°C)': 55, 'Depth (cm)': 60 },
      { 'Temperature (°C)': 57 },
      { 'Temperature (°C)': 58 },
      { Place: 'ambient', 'Temperature (°C)': 12 },
    ]);
    expect(rows('Mix')).toMatchObject([
      {
        'Feed, weighed (kg)': 46,
        'Feed, estimated (kg)': 18,
        'Chips, weighed (kg)': 12,
        'Chips to one of feed, by mass': 0.188,
      },
    ]);
    expect(rows('Removals')).toMatchObject([
      { 'From pile': 'pile A', 'Received by': 'rose garden', Count: 4, 'Volume, by containers (L)': 340 },
    ]);
    expect(rows('Piles')).toMatchObject([
      { Pile: 'pile A', 'Rule set': 'vessel-3d', 'Verdict on these readings': 'met', Counted: 3, Needed: 3 },
    ]);
    expect(rows('Sanitising evidence').map((row) => row['Lowest reading (°C)'])).toEqual([55, 58, 56]);
  });

  test('shows corrections with who and why, and what is held apart; neither is in the sheet of its matter', async () => {
    const { rows } = await workbook();
    expect(rows('Corrections')).toMatchObject([
      {
        'Corrected by': 'Ana',
        Why: 'undo',
        'What it said': expect.stringContaining('kg 58'),
      },
    ]);
    expect(rows('Held, not counted').slice(0, 1)).toMatchObject([
      { 'Why it waits': 'too-heavy', Choices: expect.stringContaining('66.5') },
    ]);
    expect(rows('Problems and complaints').slice(0, 2)).toMatchObject([
      { Topic: 'injury', 'What was said': 'kept by the site, not in this file' },
      { Topic: 'odour', Place: 'pile B', 'What was done': expect.stringContaining('swept') },
    ]);
    expect(rows('Rejects and contamination')).toMatchObject([{ What: 'refused', Source: 'cafeteria' }]);
  });

  test('is in the units of the site, the unit in the header', async () => {
    const { rows } = await workbook([], 'fixtures/sites/allotment.json').catch((error) => {
      throw error;
    });
    const [first] = rows('Intake');
    const heads = Object.keys(first ?? {});
    expect(heads.some((head) => head.endsWith('(lb)'))).toBe(true);
    expect(heads.some((head) => head.endsWith('(kg)'))).toBe(false);
  });

  test('freezes and filters its header, prints landscape, and no cell is a formula', async () => {
    const { read, out, rows } = await workbook();
    const parts = unzipSync(readFileSync(out));
    const text = (name: string) => new TextDecoder().decode(parts[name]);
    SHEET_ORDER.forEach((name, i) => {
      const xml = text(`xl/worksheets/sheet${i + 1}.xml`);
      expect(xml, name).toContain('state="frozen"');
      expect(xml, name).toMatch(/<autoFilter ref="A1:[A-Z]+\d+"\/>/);
      expect(xml, name).toContain('orientation="landscape" fitToWidth="1" fitToHeight="0"');
      expect(xml, name).not.toContain('<f>');
    });
    expect(text('xl/workbook.xml')).toContain('_xlnm.Print_Titles');
    for (const sheet of Object.values(read.Sheets))
      for (const [at, cell] of Object.entries(sheet)) if (!at.startsWith('!')) expect(cell.f).toBeUndefined();
    expect(rows('Notes and duties')).toMatchObject([{ Text: '=HYPERLINK("x")' }]);
  });
});

describe('in another language', () => {
  const heads = (sheet: xlsx.WorkSheet) =>
    (xlsx.utils.sheet_to_json<string[]>(sheet, { header: 1 })[0] ?? []).map((head) =>
      head.replace(/ \((kg|lb|L|gal|m³|yd³|°C|°F|cm|in)\)$/, ''),
    );

  test('every sheet and column of the English workbook has its name in French and Spanish', async () => {
    const { read } = await workbook();
    for (const name of read.SheetNames.filter((each) => each !== KEPT)) {
      expect(SHEET_NAMES, name).toHaveProperty([name]);
      for (const head of heads(read.Sheets[name]!))
        expect(COLUMN_HEADS, `${name}: ${head}`).toHaveProperty([head]);
    }
    for (const names of Object.values(SHEET_NAMES).flat()) {
      expect(names.length).toBeLessThanOrEqual(31);
      expect(names).not.toMatch(/[[\]:*?/\\]/);
    }
  });

  test.each([
    ['fr', 'Apports', 'Net, pesé (kg)', 'Retournements et couvertures', 'retourné'],
    ['es', 'Entradas', 'Neto, pesado (kg)', 'Volteos y coberturas', 'volteada'],
  ])('%s', async (language, intake, net, turnings, turned) => {
    const { read, rows } = await workbook(['--language', language]);
    expect(read.SheetNames).toHaveLength(SHEET_ORDER.length);
    expect(rows(intake)[0]).toMatchObject({ [net]: 46 });
    expect(Object.values(rows(turnings)[0]!)).toContain(turned);
    // What the program reads back is the same in all languages.
    expect(heads(read.Sheets[KEPT]!)).toContain('Happened (UTC)');
  });
});

test('the CSV is one file a sheet, RFC 4180, and nothing in it runs as a formula', async () => {
  const { out } = await exported('csv');
  const files = unzipSync(readFileSync(out));
  expect(Object.keys(files)).toHaveLength(SHEET_ORDER.length);
  const text = (name: string) =>
    new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(files[name]);
  const notes: Record<string, string>[] = parse(text('notes-and-duties.csv'), {
    columns: true,
    record_delimiter: '\r\n',
  });
  expect(notes).toMatchObject([{ Date: '2026-06-05', Text: `'=HYPERLINK("x")` }]);
  for (const name of Object.keys(files)) {
    const rows: string[][] = parse(text(name), { record_delimiter: '\r\n' });
    for (const cell of rows.flat()) expect(cell, name).not.toMatch(/^[=+\-@\t\r]/);
  }
});

test('the JSON reads back whole; words that tell of a body stay out of every format', async () => {
  const { out, db } = await exported('json');
  const whole = JSON.parse(readFileSync(out, 'utf8'));
  const book = openBook(db, { readOnly: true, now });
  const inBook = [...book.entriesWalk(1)].filter(({ localDate }) => localDate <= '2026-06-30');
  book.close();
  const byNumber = [...whole.lines].sort((a: { line: number }, b: { line: number }) => a.line - b.line);
  expect(byNumber.map(({ line }: { line: number }) => line)).toEqual(inBook.map(({ number }) => number));
  inBook.forEach((entry, i) => {
    if (entry.localDate === '2026-06-06') return;
    expect(byNumber[i]).toMatchObject({
      record: entry.record,
      held: entry.held,
      voidedBy: entry.voidedBy,
      happenedAt: entry.happenedAt,
    });
  });
  for (const format of ['xlsx', 'csv', 'json']) {
    const file = readFileSync((await exported(format)).out);
    const texts = format === 'json' ? [file] : Object.values(unzipSync(file));
    for (const text of texts) expect(new TextDecoder().decode(text)).not.toMatch(/finger|hand on glass/);
  }
});

test('a file that is there, a date that is none and a format nobody knows are one line and code 2', async () => {
  const { db, out } = await exported('json');
  for (const args of [
    ['--out', out],
    ['--to', '2026-02-30'],
    ['--format', 'doc'],
    ['--from', '2027-01-01', '--to', '2026-01-01'],
    ['--site', 'Nowhere'],
  ]) {
    const { code, err, out: said } = await asked('export', '--db', db, ...args);
    expect({ code, said, lines: err.split('\n').length }).toEqual({ code: 2, said: '', lines: 2 });
  }
});

type Item = { rule: string; source: string; item: string; sheet?: string; columns?: string[]; not?: string };
const { items } = JSON.parse(readFileSync('fixtures/published/record-keeping.json', 'utf8')) as {
  items: Item[];
};

test('each thing that published rules want recorded has its sheet and columns, or the reason why not', async () => {
  const { read } = await workbook();
  for (const { rule, item, sheet, columns, not } of items) {
    if (not) continue;
    const [heads] = xlsx.utils.sheet_to_json<string[]>(read.Sheets[sheet!]!, { header: 1 });
    expect(heads, `${rule}: ${item}`).toEqual(expect.arrayContaining(columns!));
  }
});

test('the table of them for contributors is the same', () => {
  const cell = (text: string) => text.replaceAll('|', '\\|');
  const rows = items.map(({ rule, item, sheet, columns, not }) =>
    [rule, item, not ? `not kept: ${not}` : sheet!, not ? '' : columns!.join(', ')].map(cell),
  );
  const lines = readFileSync('DEVELOPERS.md', 'utf8').split('\n');
  const shown = lines
    .slice(lines.findIndex((line) => line.startsWith('| Rule')) + 2)
    .filter((line) => line.startsWith('|'))
    .slice(0, rows.length)
    .map((line) =>
      line
        .split(/(?<!\\)\|/)
        .slice(1, -1)
        .map((each) => each.trim()),
    );
  expect(shown).toEqual(rows);
});
