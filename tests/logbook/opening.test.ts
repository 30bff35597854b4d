import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { chmodSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { join, resolve } from 'node:path';
import Database from 'better-sqlite3';
import { expect, onTestFinished, test } from 'vitest';
import { type BookProblem, isBookProblem, openBook } from '#logbook';
import { cart, folder, incoming, memoryBook, now, reply, site } from './samples.ts';

const problem = (open: () => unknown): Pick<BookProblem, 'bookProblem' | 'data'> => {
  try {
    open();
  } catch (error) {
    if (isBookProblem(error)) return { bookProblem: error.bookProblem, data: error.data };
    throw error;
  }
  throw new Error('it opened');
};

const started = (script: string, path: string, options: object = {}): ChildProcess => {
  const child = spawn(process.execPath, ['--import', 'tsx', '--input-type=module', '--eval', script, path], {
    cwd: resolve(import.meta.dirname, '../..'),
    stdio: ['ignore', 'pipe', 'inherit'],
    ...options,
  });
  onTestFinished(() => {
    child.kill('SIGKILL');
  });
  return child;
};

const firstLine = async (child: ChildProcess): Promise<string> =>
  String((await once(child.stdout!, 'data'))[0]);

const OPEN = `import { openBook } from '#logbook';
const book = openBook(process.argv[1], { now: () => '2026-05-12T13:00:00.000Z' });`;

test('a book is there again after closing, with all it held', () => {
  const path = join(folder(), 'new', 'site.book');
  const book = openBook(path, { now });
  const { id } = book.addSite(site('Ferry Lane'), now());
  const person = book.person(id, 'page', 'a', 'Ana');
  book.changePerson(person.id, { coordinator: true, language: 'fr' });
  book.append(id, [cart(61.5)], null);
  book.setMemo(id, 'asked', { tare: true });
  book.setBookFact('word', 'heron');
  book.addLink(id, 'secret-token');
  book.putOut(reply(id));
  book.close();
  const again = openBook(path, { now });
  expect(again.sites()).toEqual([{ id, site: site('Ferry Lane') }]);
  expect(again.people(id)).toEqual([{ id: person.id, name: 'Ana', coordinator: true, language: 'fr' }]);
  expect(again.entry(id, 1)?.typed).toBe('61.5 kg');
  expect(again.memo(id, 'asked')).toEqual({ tare: true });
  expect(again.bookFact('word')).toBe('heron');
  expect(again.linkSite('secret-token')).toEqual({ site: id, ended: false });
  expect(again.waiting('telegram', 9)).toEqual([{ ...reply(id), id: 1, sentAt: null, sentAs: null }]);
  again.endLinks(id);
  expect(again.linkSite('secret-token')).toEqual({ site: id, ended: true });
  again.close();
  expect(readFileSync(path).includes('secret-token')).toBe(false);
});

test('what is no log book is told as such and stays as it was', () => {
  const here = folder();
  const text = join(here, 'notes.txt');
  writeFileSync(text, 'cart 61.5\n'.repeat(200));
  expect(problem(() => openBook(text, { now })).bookProblem).toBe('not-a-book');
  expect(problem(() => openBook(text, { readOnly: true, now })).bookProblem).toBe('not-a-book');
  expect(readFileSync(text, 'utf8')).toBe('cart 61.5\n'.repeat(200));
  expect(existsSync(`${text}.lock`)).toBe(false);

  const other = join(here, 'other.db');
  const raw = new Database(other);
  raw.exec('CREATE TABLE t (x TEXT)');
  raw.close();
  const before = readFileSync(other);
  expect(problem(() => openBook(other, { now })).bookProblem).toBe('not-a-book');
  expect(readFileSync(other)).toEqual(before);

  mkdirSync(join(here, 'folder'));
  expect(problem(() => openBook(join(here, 'folder'), { now })).bookProblem).toBe('cannot-create');
  expect(problem(() => openBook(join(text, 'site.book'), { now })).bookProblem).toBe('cannot-create');
  expect(problem(() => openBook(join(here, 'none.book'), { readOnly: true, now })).bookProblem).toBe(
    'no-such-book',
  );
});

test('a book of a newer program is left alone; a reader leaves the making to the program', () => {
  const path = join(folder(), 'site.book');
  openBook(path, { now }).close();
  const raw = new Database(path);
  raw.pragma('user_version = 99');
  raw.pragma('journal_mode = DELETE');
  raw.close();
  const before = readFileSync(path);
  expect(problem(() => openBook(path, { now }))).toEqual({
    bookProblem: 'newer-version',
    data: { version: 99, known: 1 },
  });
  expect(readFileSync(path)).toEqual(before);
  const older = new Database(path);
  older.pragma('user_version = 0');
  older.close();
  expect(problem(() => openBook(path, { readOnly: true, now })).bookProblem).toBe('older-version');
});

test('a reader changes nothing', () => {
  const path = join(folder(), 'site.book');
  const book = openBook(path, { now });
  const { id } = book.addSite(site('Ferry Lane'), now());
  const reader = openBook(path, { readOnly: true, now });
  expect(problem(() => reader.append(id, [cart(1)], null)).bookProblem).toBe('read-only');
  expect(problem(() => reader.write(() => 1)).bookProblem).toBe('read-only');
  reader.close();
  book.close();
});

test('a file that may not be written is told when it is opened', async () => {
  const path = join(folder(), 'site.book');
  openBook(path, { now }).close();
  rmSync(`${path}.lock`);
  chmodSync(path, 0o444);
  chmodSync(join(path, '..'), 0o777);
  // The system's superuser may write anything: the program is started as nobody then.
  const nobody = process.getuid?.() === 0 ? { uid: 65534, gid: 65534 } : {};
  const script = `import { openBook } from '#logbook';
    try { openBook(process.argv[1], { now: () => '' }); console.log('opened'); }
    catch (error) { console.log(error.bookProblem); }`;
  expect(
    await firstLine(
      started(script, path, { ...nobody, env: { ...process.env, TMPDIR: '/tmp', HOME: '/tmp' } }),
    ),
  ).toBe('read-only\n');
});

test('a second program is kept out, told who has the book, and let in once that one is killed', async () => {
  const path = join(folder(), 'site.book');
  const child = started(
    `${OPEN} book.addSite({ name: 'Ferry Lane', timeZone: 'UTC', units: {} }, ''); console.log('open'); setInterval(() => {}, 1000);`,
    path,
  );
  expect(await firstLine(child)).toBe('open\n');
  expect(problem(() => openBook(path, { now }))).toEqual({
    bookProblem: 'book-in-use',
    data: { pid: child.pid, host: hostname() },
  });
  const reader = openBook(path, { readOnly: true, now });
  expect(reader.sites().map((row) => row.site.name)).toEqual(['Ferry Lane']);
  reader.close();
  child.kill('SIGKILL');
  await once(child, 'exit');
  openBook(path, { now }).close();
});

test('the same program cannot open a book twice either, and an end without closing lets go of it', async () => {
  const path = join(folder(), 'site.book');
  const book = openBook(path, { now });
  expect(problem(() => openBook(path, { now })).bookProblem).toBe('book-in-use');
  book.close();
  book.close();
  const child = started(`${OPEN} console.log('open');`, path);
  await once(child, 'exit');
  openBook(path, { now }).close();
  expect(openBook(':memory:', { now }).sites()).toEqual([]);
  expect(openBook(':memory:', { now }).sites()).toEqual([]);
});

test('killed in the middle of writing, the book is whole: each message with all of its lines, or not there', async () => {
  const path = join(folder(), 'site.book');
  const child = started(
    `${OPEN}
    const { id } = book.addSite({ name: 'Ferry Lane', timeZone: 'UTC', units: {} }, '');
    const at = '2026-05-12T13:00:00.000Z';
    const line = { happenedAt: at, localDate: '2026-05-12', receivedAt: at, person: null, typed: null, assumed: [], held: null,
      voids: [], record: { kind: 'turning', pile: 'pile B' } };
    for (let n = 1; ; n += 1) {
      book.write(() => {
        const message = book.saveMessage({ site: id, channel: 'page', chat: 'c', thread: null, message: String(n), edit: null,
          sentAt: at, receivedAt: at, text: 'turned B', pictures: [] }, null, 'done');
        book.append(id, [line, line, line], message.id);
      });
      if (n === 20) console.log('writing');
    }`,
    path,
  );
  await firstLine(child);
  await new Promise((done) => setTimeout(done, 37));
  child.kill('SIGKILL');
  await once(child, 'exit');
  // What the killed program left in the journal is read without anybody else's help.
  const reader = openBook(path, { readOnly: true, now });
  expect(reader.lastNumber(1)).toBeGreaterThanOrEqual(60);
  reader.close();
  const book = openBook(path, { now });
  const verdict = book.verify();
  expect(verdict.ok).toBe(true);
  const lines = book.lastNumber(1);
  expect(lines).toBeGreaterThanOrEqual(60);
  expect(lines % 3).toBe(0);
  for (let n = 1; n <= lines / 3; n += 1) {
    const message = book.message(1, 'page', 'c', String(n), null);
    expect(book.entriesOfMessage(message!.id)).toHaveLength(3);
  }
  expect(book.message(1, 'page', 'c', String(lines / 3 + 1), null)).toBe(null);
  book.close();
});

test('a message is known by its key: once, and again only where it failed by our own fault', () => {
  const book = memoryBook();
  const { id } = book.addSite(site('Ferry Lane'), now());
  const first = book.saveMessage(incoming(id, '11'), null, 'failed');
  expect(book.saveMessage(incoming(id, '11'), null, 'done')).toEqual({ ...first, state: 'done' });
  expect(() => book.saveMessage(incoming(id, '11'), null, 'done')).toThrow('in the book already');
  book.saveMessage(incoming(id, '11', { edit: '1778590900', text: 'cart 56.5' }), null, 'done');
  expect(book.messageHistory(id, 'telegram', '-100', '11').map(({ edit, text }) => [edit, text])).toEqual([
    [null, 'cart 61.5'],
    ['1778590900', 'cart 56.5'],
  ]);
});

test('raw texts of talk are emptied on time, those of lines are kept until told, and keys stay', () => {
  const book = memoryBook();
  const { id } = book.addSite(site('Ferry Lane'), now());
  const old = { receivedAt: '2026-05-10T00:00:00.000Z' };
  book.saveMessage(incoming(id, '1', { ...old, text: 'who brings coffee' }), null, 'done');
  const kept = book.saveMessage(incoming(id, '2', { ...old, text: 'cart 61.5' }), null, 'done');
  book.append(
    id,
    [cart(61.5, { receivedAt: old.receivedAt, record: { kind: 'note', text: 'x', said: 'note: x' } })],
    kept.id,
  );
  book.saveMessage(incoming(id, '3', { text: 'fresh' }), null, 'done');
  const texts = () => ['1', '2', '3'].map((key) => book.message(id, 'telegram', '-100', key, null)?.text);
  book.blankTexts(id, { from: '2026-05-10T00:00:00.001Z', before: '2026-05-11T00:00:00.000Z' }, 'talk');
  expect(texts()).toEqual(['who brings coffee', 'cart 61.5', 'fresh']);
  const span = { from: '2026-05-10T00:00:00.000Z', before: '2026-05-11T00:00:00.000Z' };
  book.blankTexts(id, span, 'talk');
  expect(texts()).toEqual(['', 'cart 61.5', 'fresh']);
  book.blankTexts(id, span, 'all');
  expect(texts()).toEqual(['', '', 'fresh']);
  expect(book.entry(id, 1)?.record).toEqual({ kind: 'note', text: 'x' });
  expect(book.verify().ok).toBe(true);
});

test('a reply leads back from each message it went out as; a group that moves takes its site along', () => {
  const book = memoryBook();
  const { id } = book.addSite(site('Ferry Lane'), now());
  book.addChat(id, 'telegram', '-100', 'group');
  const one = book.putOut(reply(id));
  const two = book.putOut(reply(id));
  book.markSent([{ id: one.id, sentAs: '901', also: ['902'] }], now());
  expect(book.outgoingSentAs('telegram', '-100', '901')?.id).toBe(one.id);
  expect(book.outgoingSentAs('telegram', '-100', '902')?.sentAs).toBe('901');
  expect(book.waiting('telegram', 9).map((row) => row.id)).toEqual([two.id]);
  book.changeChat('telegram', '-100', { topic: '5' });
  for (const _ of [1, 2]) book.moveChat('telegram', '-100', '-100200');
  expect(book.chat('telegram', '-100')).toMatchObject({ active: false, movedTo: '-100200', site: id });
  expect(book.chat('telegram', '-100200')).toMatchObject({
    active: true,
    movedTo: null,
    topic: '5',
    site: id,
  });
  expect(book.waiting('telegram', 9).map((row) => [row.chat, row.answers])).toEqual([['-100200', null]]);
});
