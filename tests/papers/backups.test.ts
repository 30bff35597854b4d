import { copyFileSync, existsSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { openBook } from '#logbook';
import { backupInto, backupsIn, isBackupDue, restoreBook } from '#papers';
import { dailyBackup } from '../../src/commands/daily-backup.ts';
import { cart, folder, now, site } from '../logbook/samples.ts';
import { asked, talked } from './kit.ts';

const bookOf = (path: string, weights: number[]) => {
  const book = openBook(path, { now });
  const { id } = book.siteByName('Ferry Lane') ?? book.addSite(site('Ferry Lane'), now());
  for (const kg of weights) book.append(id, [cart(kg)], null);
  return book;
};
const weightsIn = (path: string): unknown[] => {
  const book = openBook(path, { readOnly: true, now });
  try {
    return [...book.entriesWalk(1)].map(({ record }) => (record as { kg?: number }).kg);
  } finally {
    book.close();
  }
};

test('backups are dated, hold what the book holds, and the oldest go beyond the number kept', async () => {
  const dir = folder();
  const book = bookOf(join(dir, 'yard.db'), [61.5, 58]);
  const into = join(dir, 'kept');
  const day = (n: number) => `2026-06-0${n}T07:05:09.000Z`;
  for (const n of [1, 2]) await backupInto(book, into, { now: day(n), keep: 2 });
  writeFileSync(join(into, 'yard-notes.db'), 'mine');
  writeFileSync(join(into, 'other-2026-01-01T0000Z-00.db'), 'another book');
  const made = await backupInto(book, into, { now: day(3), keep: 2 });
  book.close();
  expect(made).toMatchObject({ removed: 1, verdict: { ok: true, lines: 2 } });
  expect(readdirSync(into).sort()).toEqual([
    'other-2026-01-01T0000Z-00.db',
    'yard-2026-06-02T0705Z-09.db',
    'yard-2026-06-03T0705Z-09.db',
    'yard-notes.db',
  ]);
  expect(backupsIn(into, '/elsewhere/yard.db').map(({ madeAt }) => madeAt)).toEqual([day(2), day(3)]);
  expect(weightsIn(made.path)).toEqual([61.5, 58]);
  expect(isBackupDue(into, 'yard.db', '2026-06-04T07:05:08.999Z')).toBe(false);
  expect(isBackupDue(into, 'yard.db', '2026-06-04T07:05:09.000Z')).toBe(true);
});

test('a running program makes one a day, none of an empty book, and says when it cannot', async () => {
  const dir = folder();
  const path = join(dir, 'yard.db');
  const said: string[] = [];
  const book = bookOf(path, []);
  const backups = dailyBackup(book, path, (line) => said.push(line));
  const made = () => backupsIn(join(dir, 'backups'), path).length;
  await backups.look('2026-06-01T07:00:00.000Z');
  expect(made()).toBe(0);
  book.append(1, [cart(58)], null);
  await backups.look('2026-06-01T08:00:00.000Z');
  await backups.look('2026-06-01T09:00:00.000Z');
  expect(made()).toBe(1);
  await backups.look('2026-06-02T08:00:00.000Z');
  expect(made()).toBe(2);
  expect(said).toEqual([]);
  const elsewhere = join(dir, 'file', 'yard.db');
  writeFileSync(join(dir, 'file'), 'no folder');
  await dailyBackup(book, elsewhere, (line) => said.push(line)).look('2026-06-03T08:00:00.000Z');
  expect(said).toHaveLength(1);
  await backups.ended();
  book.close();
});

test('restore puts a copy where there is none, refuses to overwrite, and keeps what was there aside', async () => {
  const dir = folder();
  const path = join(dir, 'yard.db');
  const book = bookOf(path, [61.5]);
  const { path: copy } = await backupInto(book, dir, { now: '2026-06-01T07:00:00.000Z', keep: 3 });
  book.append(1, [cart(70)], null);
  book.close();
  const how = { overwrite: false, now: '2026-06-02T07:00:00.000Z' };
  expect(await restoreBook(copy, join(dir, 'new.db'), how)).toEqual({
    is: 'restored',
    lines: 1,
    aside: null,
  });
  expect(weightsIn(join(dir, 'new.db'))).toEqual([61.5]);
  expect(await restoreBook(copy, path, how)).toEqual({ is: 'exists' });
  expect(weightsIn(path)).toEqual([61.5, 70]);
  const done = await restoreBook(copy, path, { ...how, overwrite: true });
  const aside = `${path}.before-20260602T070000Z`;
  expect(done).toEqual({ is: 'restored', lines: 1, aside });
  expect(weightsIn(path)).toEqual([61.5]);
  expect(weightsIn(aside)).toEqual([61.5, 70]);
  expect(await restoreBook(path, path, { ...how, overwrite: true })).toEqual({ is: 'same-file' });
});

test('a book carried to another machine loses nothing: every row of every table is there', async () => {
  const dir = folder();
  const path = join(dir, 'yard.db');
  talked(path, 'fixtures/sites/hospital.json', [
    ['2026-06-01T09:00', 'cart 61.5 from east kitchen'],
    ['2026-06-01T09:10', 'cart 665'],
    ['2026-06-02T09:00', 'set target 22 t'],
    ['2026-06-08T09:00', 'undo'],
  ]);
  const rowsOf = (file: string) => {
    const db = new Database(file, { readonly: true });
    const names = db
      .prepare("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name")
      .pluck()
      .all() as string[];
    const rows = Object.fromEntries(names.map((name) => [name, db.prepare(`SELECT * FROM "${name}"`).all()]));
    db.close();
    return rows;
  };
  const { out } = await asked('backup', '--db', path, '--to', join(dir, 'kept'));
  const copy = out.slice(0, out.indexOf(': '));
  const elsewhere = join(dir, 'elsewhere', 'yard.db');
  mkdirSync(join(dir, 'elsewhere'));
  expect((await asked('restore', '--from', copy, '--db', elsewhere)).code).toBe(0);
  expect(rowsOf(elsewhere)).toEqual(rowsOf(path));
  expect(Object.values(rowsOf(elsewhere)).flat().length).toBeGreaterThan(8);
  expect((await asked('verify', '--db', elsewhere)).code).toBe(0);
});

test('restore leaves alone a book that a program is writing', async () => {
  const dir = folder();
  const path = join(dir, 'yard.db');
  const book = bookOf(path, [61.5]);
  const { path: copy } = await backupInto(book, dir, { now: '2026-06-01T07:00:00.000Z', keep: 3 });
  const { code, err } = await asked('restore', '--from', copy, '--db', path, '--overwrite');
  expect(code).toBe(2);
  expect(err).toContain('in use');
  book.append(1, [cart(70)], null);
  book.close();
  expect(weightsIn(path)).toEqual([61.5, 70]);
});

const CREW: [string, string][] = [
  ['2026-06-01T09:00', 'cart 61.5'],
  ['2026-06-08T09:00', 'cart 58'],
  ['2026-06-15T09:00', 'cart 70'],
];
const tampered = (path: string, sql: string) => {
  const db = new Database(path);
  db.exec(sql);
  db.close();
};

test('verify walks lines and kept pictures, and names the first that does not hold', {
  timeout: 120_000,
}, async () => {
  const dir = folder();
  const path = join(dir, 'yard.db');
  talked(path, 'fixtures/sites/hospital.json', CREW);
  const good = await asked('verify', '--db', path);
  expect(good).toMatchObject({ code: 0, err: '' });
  expect(good.out).toMatch(/^holds: 3 lines in 1 sites, 2 kept pictures rebuilt and the same\n$/);
  const copy = join(dir, 'copy.db');
  await asked('backup', '--db', path, '--to', join(dir, 'kept')).then(({ out, code }) => {
    expect(code).toBe(0);
    copyFileSync(out.slice(0, out.indexOf(': ')), copy);
  });

  tampered(
    copy,
    `DROP TRIGGER entry_is_never_changed; UPDATE entry SET record = replace(record, '58', '57') WHERE number = 2`,
  );
  const line = await asked('verify', '--db', copy);
  expect(line.code).toBe(1);
  expect(line.out).toContain('line #2: its content is not what was written');
  const refused = await asked('restore', copy, '--db', join(dir, 'never.db'));
  expect(refused.code).toBe(1);
  expect(refused.err).toContain('line #2');
  expect(existsSync(join(dir, 'never.db'))).toBe(false);

  tampered(path, `UPDATE snapshot SET picture = replace(picture, '61.5', '60.5')`);
  const picture = await asked('verify', '--db', path);
  expect(picture.code).toBe(1);
  expect(picture.out).toContain('lines up to line #1 give');

  const text = join(dir, 'text.db');
  writeFileSync(text, 'dear diary');
  for (const args of [['--db', text], ['--db', join(dir, 'none.db')], ['-x']])
    expect(await asked('verify', ...args)).toMatchObject({ code: 2, out: '' });
});
