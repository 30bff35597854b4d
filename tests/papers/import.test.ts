import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import * as xlsx from '@e965/xlsx';
import { zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { openBook } from '#logbook';
import { run } from '../commands/running.ts';
import { folder, now } from '../logbook/samples.ts';
import { asked, talked } from './kit.ts';

const HOSPITAL = 'fixtures/sites/hospital.json';

function yard(lines: [string, string][] = [['2026-06-01T09:00', 'cart 61.5']]) {
  const dir = folder();
  const db = join(dir, 'yard.db');
  talked(db, HOSPITAL, lines);
  return {
    dir,
    db,
    file: (name: string, content: string | Uint8Array) => {
      writeFileSync(join(dir, name), content);
      return join(dir, name);
    },
  };
}
const linesOf = (db: string) => {
  const book = openBook(db, { readOnly: true, now });
  try {
    return [...book.entriesWalk(1)];
  } finally {
    book.close();
  }
};
const added = (db: string, after: number) =>
  linesOf(db)
    .slice(after)
    .map(({ localDate, record }) => {
      const { when: _, said: __, ...rest } = record as Record<string, unknown>;
      return { localDate, ...Object.fromEntries(Object.entries(rest).filter(([, value]) => value !== null)) };
    });

describe('an old log', () => {
  const LOG = [
    'Date;Source;Gross (lb);Tare (lb);Notes',
    '13.01.2025;east kitchen;142,5;34;ok',
    '14.01.2025;west kitchen;1.250;34;',
    '15.01.2025;cafeteria;about 60;34;',
    'Total January;;1400;;',
    '30.02.2025;cafeteria;120;34;',
  ].join('\n');

  test('is shown first, and nothing is changed', async () => {
    const { db, file } = yard();
    const { code, out } = await asked('import', file('log.csv', LOG), '--db', db);
    expect(code).toBe(0);
    expect(out).toContain('column "Date": date, dmy');
    expect(out).toContain('column "Gross (lb)": gross weight, lb, decimal comma');
    expect(out).toContain('column "Notes": note: a line of its own');
    expect(out).toContain('2025-01-13 to 2025-01-14: weigh-in 2, note 1');
    expect(out).toContain('? row 4: "Gross (lb)": "about 60" is no number');
    expect(out).toContain(
      '? row 5: total of "Gross (lb)" for 2025-01: states 1400, its lines come to 1392.5',
    );
    expect(out).toContain('? row 6: "30.02.2025" is no date');
    expect(out).toContain('nothing was changed');
    expect(linesOf(db)).toHaveLength(1);
  });

  test('comes in once, marked, and goes as a whole; after that it can come again', async () => {
    const { db, file } = yard();
    const log = file('log.csv', LOG);
    const first = await asked('import', log, '--db', db, '--write');
    expect(first.out).toContain('import 1: 3 lines added');
    expect(added(db, 1)).toMatchObject([
      {
        localDate: '2025-01-13',
        kind: 'weigh-in',
        source: 'east kitchen',
        kg: 142.5 * 0.45359237,
        tareKg: 34 * 0.45359237,
        basis: 'gross',
      },
      { localDate: '2025-01-13', kind: 'note', text: 'ok' },
      { localDate: '2025-01-14', source: 'west kitchen', kg: 1250 * 0.45359237 },
    ]);
    expect(linesOf(db)[1]).toMatchObject({ assumed: ['imported'], person: null });
    expect((await asked('import', log, '--db', db, '--write')).out).toContain('nothing new');
    expect((await asked('import', '--undo', '1', '--db', db)).out).toContain('3 lines taken back');
    expect(
      linesOf(db)
        .filter(({ voidedBy }) => voidedBy !== null)
        .map(({ number }) => number),
    ).toEqual([2, 3, 4]);
    expect(await asked('import', '--undo', '1', '--db', db)).toMatchObject({ code: 2 });
    expect((await asked('import', log, '--db', db, '--write')).out).toContain('import 2: 3 lines added');
    expect((await asked('verify', '--db', db)).code).toBe(0);
  });

  test('wide tables give a line for each filled cell; a date that may be two is a doubt where orders are mixed', async () => {
    const { db, file } = yard();
    const wide = [
      'Date,East kitchen (kg),Cafeteria (kg),Chips kg,Pile A °C',
      '13/01/2025,46.5,,12,55',
      '01/14/2025,,41,0,',
      '02/03/2025,40,,,',
    ].join('\r\n');
    const { out } = await asked('import', file('wide.csv', wide), '--db', db, '--write');
    expect(out).toContain('in mixed orders');
    expect(out).toContain('? row 4: "02/03/2025" may be two dates');
    expect(added(db, 1)).toEqual([
      {
        localDate: '2025-01-13',
        kind: 'weigh-in',
        material: 'food-scraps',
        source: 'east kitchen',
        kg: 46.5,
        basis: 'net',
        count: 1,
      },
      { localDate: '2025-01-13', kind: 'weigh-in', material: 'wood-chips', kg: 12, basis: 'net', count: 1 },
      { localDate: '2025-01-13', kind: 'temperature', place: 'pile A', celsius: [55] },
      {
        localDate: '2025-01-14',
        kind: 'weigh-in',
        material: 'food-scraps',
        source: 'cafeteria',
        kg: 41,
        basis: 'net',
        count: 1,
      },
    ]);
  });

  test('as a spreadsheet counts its dates from 1900 or 1904, under a merged head', async () => {
    const { db, file } = yard();
    for (const date1904 of [false, true]) {
      const sheet = xlsx.utils.aoa_to_sheet([
        ['Log of the year', '', ''],
        ['Date', 'Source', 'Net kg'],
      ]);
      sheet['!merges'] = [{ s: { r: 0, c: 0 }, e: { r: 0, c: 2 } }];
      // 13 January 2025 is day 45670 from 1900, and 1462 days fewer from 1904.
      xlsx.utils.sheet_add_aoa(
        sheet,
        [[{ t: 'n', v: date1904 ? 44208 : 45670, z: 'yyyy-mm-dd' }, 'cafeteria', date1904 ? 44 : 40]],
        { origin: 'A3' },
      );
      const book = { SheetNames: ['Log'], Sheets: { Log: sheet }, Workbook: { WBProps: { date1904 } } };
      const bytes = xlsx.write(book, { type: 'buffer', bookType: 'xlsx' }) as Uint8Array;
      await asked('import', file(`${date1904}.xlsx`, bytes), '--db', db, '--write');
    }
    expect(added(db, 1)).toMatchObject([
      { localDate: '2025-01-13', kg: 40 },
      { localDate: '2025-01-13', kg: 44 },
    ]);
  });

  test('typed as it was on paper: each date holds until the next, what is not understood is said', async () => {
    const { db, file } = yard();
    const text =
      '12 May 2026\ncart 61.5 from east kitchen\nturned B\n13 May 2026\ncart 665\nB 41 43 39\nblorp zzyx\n';
    const { out } = await asked('import', file('typed.txt', text), '--db', db, '--write');
    expect(out).toContain('? line 5: "cart 665": too-heavy');
    expect(out).toContain('? line 7: "blorp zzyx": not understood');
    expect(added(db, 1)).toMatchObject([
      { localDate: '2026-05-12', kind: 'weigh-in', kg: 61.5 },
      { localDate: '2026-05-12', kind: 'turning', pile: 'pile B' },
      { localDate: '2026-05-13', kind: 'temperature', celsius: [41, 43, 39] },
    ]);
  });

  test('pasted on standard input; none of a text of years is lost', { timeout: 240_000 }, async () => {
    const { db } = yard();
    const days = Array.from({ length: 365 }, (_, i) =>
      new Date(Date.UTC(2025, 0, 1 + i)).toISOString().slice(0, 10),
    );
    const text = days
      .map(
        (day, i) =>
          `${day}\ncart ${40 + (i % 20)}.5 from east kitchen\nchips 12, 2 buckets of coffee grounds`,
      )
      .join('\n');
    expect(text.length).toBeGreaterThan(20_000);
    const { code, out, err } = await run(['import', '-', '--db', db], text);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toContain('1095 lines read, 1095 of them new, 0 doubts');
    expect(out).toContain('2025-01-01 to 2025-12-31: weigh-in 1095');
  });

  test('a row of totals is no entry; a sum or month that states something else is said', async () => {
    const { db, file } = yard();
    const log = [
      'Date,Source,Net kg,Comment',
      'January 2025,,90,',
      '2025-01-13,east kitchen,40,total weight of two',
      '2025-01-14,east kitchen,50,',
      'Total,,90,',
      '2025-02-13,east kitchen,30,',
      ',February total,35,',
      '2025-03-01,east kitchen,20,',
      'Subtotal,,20,',
      'Grand total,,140,',
      'TOTAL,,150,',
    ].join('\n');
    const { out } = await asked('import', file('log.csv', log), '--db', db, '--write');
    expect(out.match(/\? row .*/g)).toEqual([
      '? row 7: total of "Net kg" for 2025-02: states 35, its lines come to 30',
      '? row 11: total of "Net kg": states 150, its lines come to 140',
    ]);
    expect(added(db, 1).map((line) => ('kg' in line ? line.kg : Object(line).text))).toEqual([
      40,
      'total weight of two',
      50,
      30,
      20,
    ]);
  });

  test('a row that cannot be true is a doubt, as it would be in the chat', async () => {
    const { db, file } = yard();
    const log = [
      'Date,Time,Source,Container,Gross kg,Pile,Temp C',
      '2025-01-13,7:15,East Kitchen,Cart 5,61.5,,',
      '2025-01-13,,East Kitchen,carts,665,,',
      '2025-01-13,,East Kitchen,bin,-3,,',
      '2025-01-13,,,,,B,96',
      '2025-01-13,,,,,B,56',
      '2099-01-13,,Greenhouse,cart,60,,',
    ].join('\n');
    const { out } = await asked('import', file('log.csv', log), '--db', db, '--write');
    expect(out.match(/\? row .*/g)).toEqual([
      '? row 3: "665": too heavy for that, left out',
      '? row 4: "-3": a value that cannot be, left out',
      '? row 5: no pile or air is that warm or cold, left out',
      '? row 7: 2099-01-13 is still to come: left out',
    ]);
    expect(added(db, 1)).toMatchObject([
      { container: 'cart', label: '5', source: 'east kitchen', kg: 61.5 },
      { kind: 'temperature', place: 'pile B', celsius: [56] },
    ]);
    // 07:15 in Moncton, four hours behind in winter; noon where no hour is said.
    expect(
      linesOf(db)
        .slice(1)
        .map(({ happenedAt }) => happenedAt),
    ).toEqual(['2025-01-13T11:15:00.000Z', '2025-01-13T16:00:00.000Z']);
  });
});

/** Bytes that do not shrink a thousandfold. */
const noise = (length: number): Uint8Array => {
  const bytes = new Uint8Array(length);
  let state = 7;
  for (let i = 0; i < length; i += 16) {
    state = (state * 1_664_525 + 1_013_904_223) >>> 0;
    bytes[i] = state >>> 24;
  }
  return bytes;
};

/** A zip whose directory and heads say that what is in it is small. */
function lying(zip: Uint8Array): Uint8Array {
  const bytes = zip.slice();
  const view = new DataView(bytes.buffer);
  for (let at = 0; at + 4 < bytes.length; at++) {
    const sign = view.getUint32(at, true);
    if (sign === 0x04034b50) view.setUint32(at + 22, 100, true);
    if (sign === 0x02014b50) view.setUint32(at + 24, 100, true);
  }
  return bytes;
}

test.each(['xlsx', 'csv', 'json'])(
  'an export as %s comes back entry for entry, and twice is the same as once',
  async (format) => {
    const { db, dir } = yard([
      ['2026-06-01T09:00', 'cart 61.5 from east kitchen, chips 12'],
      ['2026-06-01T09:10', 'cart 61.5 from east kitchen'],
      ['2026-06-01T10:00', 'cart 665'],
      ['2026-06-02T10:00', 'B 41 43 39'],
      ['2026-06-02T10:01', 'undo'],
      ['2026-06-02T10:05', 'strong smell at pile B'],
      ['2026-06-03T10:05', 'smell gone'],
      ['2026-06-03T11:00', 'note: =1+1, "so"'],
      ['2026-06-03T11:30', "note: '=2+2"],
      ['2026-06-03T11:40', "'=3+3"],
      ['2026-06-03T12:00', 'empty cart 16'],
    ]);
    const out = join(dir, format === 'csv' ? 'out.zip' : `out.${format}`);
    // In any language: what is read back is called the same in all.
    await asked('export', '--db', db, '--out', out, '--to', '2026-12-31', '--language', 'fr');
    const other = join(dir, 'other.db');
    talked(other, HOSPITAL, []);
    const done = await asked('import', out, '--db', other, '--write');
    expect(done.err).toBe('');
    const bare = (path: string) =>
      linesOf(path).map(({ person, ...rest }) => ({ ...rest, known: person !== null }));
    expect(bare(other)).toEqual(bare(db));
    expect((await asked('import', out, '--db', other, '--write')).out).toContain('nothing new');
    expect((await asked('import', out, '--db', db, '--write')).out).toContain('nothing new');
  },
);

test('each kind of bad file is one sentence, code 2, and changes nothing', { timeout: 180_000 }, async () => {
  const { db, file } = yard();
  const bomb = zipSync({ 'xl/workbook.xml': new Uint8Array(30 * 2 ** 20) }, { level: 9 });
  const bad: [string, Uint8Array | string, RegExp][] = [
    ['empty.csv', '', /is empty/],
    ['blank.csv', ' \n \n', /is empty/],
    ['picture.png', new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0, 1, 2, 0xff]), /no spreadsheet/],
    ['large.csv', new Uint8Array(51 * 2 ** 20), /larger than 50 MB/],
    ['bomb.xlsx', bomb, /unpacks to far more/],
    [
      'lying.xlsx',
      lying(zipSync({ 'xl/workbook.xml': new Uint8Array(30 * 2 ** 20) }, { level: 9 })),
      /unpacks to far more/,
    ],
    [
      'wide.xlsx',
      zipSync({ 'xl/workbook.xml': noise(130 * 2 ** 20) }, { level: 1 }),
      /too large to be read whole/,
    ],
    [
      'two-rows.csv',
      'Date,East kitchen,,Cafeteria,\n,Gross kg,Tare kg,Gross kg,Tare kg\n2025-01-13,61,15,60,15\n',
      /a head stands over several/,
    ],
    ['twice.csv', 'Date,Gross kg,Gross kg\n2025-01-13,61,15\n', /two columns are the same/],
    ['sealed.zip', new Uint8Array([0x50, 0x4b, 3, 4, 20, 0, 1, 0, 8, 0]), /password/],
    ['locked.xlsx', new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]), /password/],
    [
      'latin.csv',
      new Uint8Array([...'Date,caf'].map((c) => c.charCodeAt(0)).concat([0xe9, 10])),
      /not UTF-8/,
    ],
    ['broken.xlsx', zipSync({ 'xl/workbook.xml': new TextEncoder().encode('<no') }), /damaged|no row names/],
    ['other.zip', zipSync({ 'a.txt': new TextEncoder().encode('hello') }), /no spreadsheet/],
    ['open-quote.zip', zipSync({ 'book-lines.csv': new TextEncoder().encode('Line,"a\n1,2\n') }), /damaged/],
    ['headless.csv', 'a,b\nc,d\ne,f\n', /no row names/],
    ['cut.json', '{"format":"heaphand log book","version":1,"lines":[\n', /does not fit/],
    ['changed.json', '{"format":"heaphand log book","lines":[{"line":1}]}', /does not fit/],
  ];
  const before = readFileSync(db);
  for (const [name, content, sentence] of bad) {
    const { code, err, out } = await asked('import', file(name, content), '--db', db, '--write');
    expect({ name, code, out }).toEqual({ name, code: 2, out: '' });
    expect(err, name).toMatch(sentence);
    expect(err.trimEnd().split('\n'), name).toHaveLength(1);
  }
  expect(linesOf(db)).toHaveLength(1);
  expect(before.length).toBeGreaterThan(0);
});
