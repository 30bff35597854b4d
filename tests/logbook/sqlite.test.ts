import { existsSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { openBook } from '#logbook';
import { asBookProblem } from '../../src/logbook/problems.ts';
import { cart, folder, incoming, memoryBook, now, reply, site } from './samples.ts';

const written = () => {
  const path = join(folder(), 'site.book');
  const book = openBook(path, { now });
  const { id } = book.addSite(site('Ferry Lane'), now());
  book.append(id, [cart(61.5)], null);
  return { path, book, id };
};

/** What the connection inside a book is set to: the library hands its connections out through no door of ours. */
const pragmas: Record<string, unknown>[] = [];
const exec = Database.prototype.pragma;
Database.prototype.pragma = function (
  this: Database.Database,
  source: string,
  options?: Database.PragmaOptions,
) {
  const got = exec.call(this, source, options);
  pragmas.push({ db: this, source, got });
  return got;
};

test('every connection is durable through a power cut and holds foreign keys, also after its first write', () => {
  pragmas.length = 0;
  const { path, book } = written();
  const reader = openBook(path, { readOnly: true, now });
  const connections = new Set(
    pragmas.filter(({ db }) => (db as Database.Database).name === path).map(({ db }) => db),
  );
  expect(connections.size).toBe(2);
  for (const db of connections as Set<Database.Database>) {
    expect(exec.call(db, 'synchronous', { simple: true })).toBe(2);
    expect(exec.call(db, 'foreign_keys', { simple: true })).toBe(1);
    expect(exec.call(db, 'journal_mode', { simple: true })).toBe('wal');
  }
  reader.close();
  book.close();
});

test('a write holds the book from its first line on, so that nothing it has read can change under it', () => {
  const { path, book, id } = written();
  const reader = openBook(path, { readOnly: true, now });
  const other = new Database(path, { timeout: 0 });
  book.write(() => {
    expect(book.lastNumber(id)).toBe(1);
    expect(() => other.exec("INSERT INTO meta VALUES ('x', '1')")).toThrow(/locked/);
    expect(reader.lastNumber(id)).toBe(1);
    book.append(id, [cart(58)], null);
  });
  expect(reader.lastNumber(id)).toBe(2);
  other.close();
  reader.close();
  book.close();
});

test('nothing awaited runs inside a write, and what it had written is taken back', () => {
  const book = memoryBook();
  const { id } = book.addSite(site('Ferry Lane'), now());
  const later = () =>
    book.write(async () => {
      book.append(id, [cart(61.5)], null);
    });
  expect(later).toThrow('cannot return a promise');
  expect(book.lastNumber(id)).toBe(0);
});

test('a fact that is missing is refused, not stored as nothing', () => {
  const book = memoryBook();
  const { id } = book.addSite(site('Ferry Lane'), now());
  expect(() => book.append(id, [cart(1, { localDate: undefined as never })], null)).toThrow(/NOT NULL/);
  expect(() => book.saveMessage(incoming(id, undefined as never), null, 'done')).toThrow(/NOT NULL/);
  expect(() => book.putOut(reply(id, { text: undefined as never }))).toThrow(/NOT NULL/);
});

test('a text in a number column, a yes or no, a Date: each is an error', () => {
  const { path, book, id } = written();
  expect(() => book.append(id, [cart(1, { person: '66,5' as never })], null)).toThrow(
    /TEXT value in INTEGER/,
  );
  expect(() => book.append(id, [cart(1, { typed: true as never })], null)).toThrow(TypeError);
  expect(() => book.append(id, [cart(1, { happenedAt: new Date(0) as never })], null)).toThrow(TypeError);
  book.close();
  const raw = new Database(path);
  const strict = raw.prepare(
    "SELECT name FROM pragma_table_list WHERE schema = 'main' AND strict = 0 AND name NOT LIKE 'sqlite_%'",
  );
  expect(strict.all()).toEqual([]);
  raw.close();
});

test('ids of people and chats are kept as text, to the last digit', () => {
  const book = memoryBook();
  const { id } = book.addSite(site('Ferry Lane'), now());
  const long = '9007199254740993';
  const person = book.person(id, 'telegram', long, 'Ana');
  expect(book.channelIds(person.id, 'telegram')).toEqual([long]);
  book.addChat(id, 'telegram', `-${long}`, 'group');
  expect(book.chats(id)[0]?.chat).toBe(`-${long}`);
});

test('a backup made while lines wait in the journal holds them, opens by itself, and never writes over a file', async () => {
  const { path, book, id } = written();
  const to = join(folder(), 'copy.book');
  await book.backup(to);
  await expect(book.backup(to)).rejects.toMatchObject({ bookProblem: 'exists' });
  await expect(book.backup(join(folder(), 'none', 'copy.book'))).rejects.toMatchObject({
    bookProblem: 'cannot-create',
  });
  book.append(id, [cart(58)], null);
  expect(existsSync(`${path}-wal`)).toBe(true);
  book.close();
  const copy = openBook(to, { now });
  expect(copy.entry(id, 1)?.typed).toBe('61.5 kg');
  expect(copy.lastNumber(id)).toBe(1);
  expect(copy.verify()).toEqual({ ok: true, lines: 1 });
  copy.close();
});

test('closing leaves one file and the lock file: no journal to forget', () => {
  const { path, book } = written();
  book.close();
  expect(existsSync(`${path}-wal`)).toBe(false);
  expect(existsSync(`${path}-shm`)).toBe(false);
});

test('statements are prepared when the book opens, none by a message', () => {
  const book = memoryBook();
  const { id } = book.addSite(site('Ferry Lane'), now());
  const prepare = Database.prototype.prepare;
  let prepared = 0;
  Database.prototype.prepare = function (this: Database.Database, sql: string) {
    prepared += 1;
    return prepare.call(this, sql) as never;
  };
  try {
    const stored = book.saveMessage(incoming(id, '11'), book.person(id, 'telegram', '7', 'Ana').id, 'done');
    book.append(id, [cart(61.5)], stored.id);
    book.putOut(reply(id, { message: stored.id }));
    expect(prepared).toBe(0);
  } finally {
    Database.prototype.prepare = prepare;
  }
});

test('a full disk is told as such', () => {
  const raw = new Database(':memory:');
  raw.exec('CREATE TABLE t (x TEXT); PRAGMA max_page_count = 2');
  let error: unknown;
  try {
    raw.prepare('INSERT INTO t VALUES (?)').run('x'.repeat(100_000));
  } catch (caught) {
    error = asBookProblem(caught, '/site.book');
  }
  expect(error).toMatchObject({ bookProblem: 'disk-full', path: '/site.book' });
  raw.close();
});

test('every query of lines goes by an index, however long the book', () => {
  const { path, book } = written();
  book.close();
  const raw = new Database(path);
  const plans: [sql: string, by: RegExp][] = [
    [
      'SELECT * FROM entry WHERE site = 1 AND (happened_at, number) > (?, 0) ORDER BY happened_at, number',
      /entry_happened/,
    ],
    [
      'SELECT * FROM entry WHERE site = 1 AND local_date BETWEEN ? AND ? ORDER BY happened_at',
      /entry_local_date/,
    ],
    [
      'SELECT * FROM entry WHERE site = 1 AND person = 1 AND local_date = ? ORDER BY number',
      /entry_of_person/,
    ],
    ['SELECT * FROM entry WHERE message = 1 ORDER BY number', /entry_of_message/],
    ['SELECT * FROM entry WHERE site = 1 ORDER BY number DESC LIMIT 5', /sqlite_autoindex_entry/],
    [
      "SELECT * FROM outbox WHERE channel = 'telegram' AND sent_at IS NULL ORDER BY id LIMIT 5",
      /outbox_waiting/,
    ],
    [
      'SELECT * FROM message WHERE site = 1 AND channel = ? AND chat = ? AND message = ?',
      /autoindex_message/,
    ],
  ];
  for (const [sql, by] of plans) {
    const parameters = [...sql.matchAll(/\?/g)].map(() => '');
    const plan = raw.prepare(`EXPLAIN QUERY PLAN ${sql}`).all(...parameters) as { detail: string }[];
    expect(plan[0]?.detail).toMatch(/^SEARCH/);
    expect(plan[0]?.detail).toMatch(by);
  }
  raw.close();
});
