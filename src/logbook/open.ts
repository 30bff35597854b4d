import { accessSync, constants, existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { dirname } from 'node:path';
import Database from 'better-sqlite3';
import type { OpenedBook } from './book.ts';
import { entryQueries } from './entries.ts';
import { factQueries } from './facts.ts';
import { type Lock, takeLock } from './lock.ts';
import { messageQueries } from './messages.ts';
import { migrations } from './migrations/index.ts';
import { peopleQueries } from './people.ts';
import { asBookProblem, bookProblem } from './problems.ts';
import { verifyBook } from './verify.ts';

/** Stands in the file's header: this is a log book of ours, whatever its name (`HPHD`). */
const APPLICATION_ID = 0x48504844;
const MEMORY = ':memory:';

type OpenOptions = { readOnly?: boolean; now: () => string };

/**
 * Opens a log book, making it where there is none. The one that writes holds a lock beside the file; readers need
 * none, and read while it is being written. Throws a BookProblem; a file that is not ours is left as it was.
 */
export const openBook = (path: string, options: OpenOptions): OpenedBook => {
  const readOnly = options.readOnly ?? false;
  if (readOnly && !existsSync(path)) throw bookProblem('no-such-book', path);
  if (!readOnly && path !== MEMORY) makeWritable(path);
  const db = connect(path, readOnly);
  let lock: Lock | null = null;
  try {
    // Looked at before the lock is taken: no lock file appears beside a file that is no book.
    checkBook(db, path, readOnly);
    if (!readOnly && path !== MEMORY) lock = takeLock(path, options.now());
    settle(db, readOnly);
    if (!readOnly) migrate(db);
    return assemble(db, lock, path, readOnly, options.now);
  } catch (error) {
    db.close();
    lock?.release();
    throw asBookProblem(error, path);
  }
};

const makeWritable = (path: string): void => {
  try {
    mkdirSync(dirname(path), { recursive: true });
  } catch {
    throw bookProblem('cannot-create', path);
  }
  if (!existsSync(path)) return;
  try {
    // SQLite would open it for reading alone and say so only at the first write.
    accessSync(path, constants.W_OK);
    accessSync(dirname(path), constants.W_OK);
  } catch {
    throw bookProblem('read-only', path);
  }
};

const connect = (path: string, readOnly: boolean): Database.Database => {
  try {
    return new Database(path, { readonly: readOnly, fileMustExist: readOnly });
  } catch (error) {
    // A path that is a folder or lies in none is a TypeError of the library.
    throw error instanceof TypeError ? bookProblem('cannot-create', path) : asBookProblem(error, path);
  }
};

/**
 * Only SQLite itself may look into the file: to open and close it by other means would drop the system's locks that
 * another connection of this process holds on it.
 */
const checkBook = (db: Database.Database, path: string, readOnly: boolean): void => {
  const id = db.pragma('application_id', { simple: true });
  const version = db.pragma('user_version', { simple: true }) as number;
  const tables = db.prepare('SELECT count(*) FROM sqlite_schema').pluck().get() as number;
  if (id !== APPLICATION_ID && (readOnly || tables > 0 || id !== 0 || version !== 0))
    throw bookProblem('not-a-book', path);
  const known = migrations.length;
  if (version > known) throw bookProblem('newer-version', path, { version, known });
  if (readOnly && version < known) throw bookProblem('older-version', path, { version, known });
};

/** WAL drops `synchronous` to NORMAL unless told; a shed with a solar panel loses power. Set and looked at again. */
const settle = (db: Database.Database, readOnly: boolean): void => {
  if (!readOnly) db.pragma('journal_mode = WAL');
  db.pragma('synchronous = FULL');
  db.pragma('foreign_keys = ON');
  db.pragma('busy_timeout = 5000');
  const wanted = { synchronous: 2, foreign_keys: 1 };
  for (const [name, value] of Object.entries(wanted)) {
    const got = db.pragma(name, { simple: true });
    if (got !== value) throw new RangeError(`pragma ${name} is ${got}, not ${value}`);
  }
};

const migrate = (db: Database.Database): void => {
  const version = db.pragma('user_version', { simple: true }) as number;
  for (const [index, sql] of migrations.entries()) {
    if (index < version) continue;
    db.transaction(() => {
      db.exec(sql);
      db.pragma(`user_version = ${index + 1}`);
      db.pragma(`application_id = ${APPLICATION_ID}`);
    }).immediate();
  }
};

const assemble = (
  db: Database.Database,
  lock: Lock | null,
  path: string,
  readOnly: boolean,
  now: () => string,
): OpenedBook => {
  const people = peopleQueries(db, now);
  const entries = entryQueries(db);
  const messages = messageQueries(db);
  const facts = factQueries(db, now);
  const transaction = db.transaction((work: () => unknown) => work());

  const write = <T>(work: () => T): T => {
    if (readOnly) throw bookProblem('read-only', path);
    try {
      return transaction.immediate(work) as T;
    } catch (error) {
      throw asBookProblem(error, path);
    }
  };
  /** A write that stands alone is a transaction of its own; inside `write` it is part of that one. */
  const writing =
    <A extends unknown[], T>(act: (...args: A) => T) =>
    (...args: A): T =>
      write(() => act(...args));

  const close = (): void => {
    process.off('exit', close);
    if (db.open) db.close();
    lock?.release();
  };
  process.on('exit', close);

  const { rowsWalk: _, ...reading } = entries;
  return {
    path,
    readOnly,
    write,
    ...people,
    addSite: writing(people.addSite),
    person: writing(people.person),
    changePerson: writing(people.changePerson),
    forgetPerson: writing(people.forgetPerson),
    addChat: writing(people.addChat),
    changeChat: writing(people.changeChat),
    moveChat: writing(people.moveChat),
    ...reading,
    append: writing(entries.append),
    ...messages,
    saveMessage: writing(messages.saveMessage),
    blankTexts: writing(messages.blankTexts),
    putOut: writing(messages.putOut),
    markSent: writing(messages.markSent),
    ...facts,
    saveSnapshot: writing(facts.saveSnapshot),
    dropSnapshotsFrom: writing(facts.dropSnapshotsFrom),
    setMemo: writing(facts.setMemo),
    setBookFact: writing(facts.setBookFact),
    addLink: writing(facts.addLink),
    endLinks: writing(facts.endLinks),
    verify: () => verifyBook(db, entries),
    backup: (to) => backUp(db, to),
    close,
  };
};

const backUp = async (db: Database.Database, to: string): Promise<void> => {
  if (existsSync(to)) throw bookProblem('exists', to);
  const part = `${to}.part`;
  try {
    await db.backup(part);
    const copy = new Database(part);
    try {
      // One file to carry away: no journal of its own beside it.
      copy.pragma('journal_mode = DELETE');
      if (copy.pragma('integrity_check', { simple: true }) !== 'ok') throw bookProblem('damaged', to);
      if ((copy.pragma('foreign_key_check') as unknown[]).length > 0) throw bookProblem('damaged', to);
    } finally {
      copy.close();
    }
    renameSync(part, to);
  } catch (error) {
    rmSync(part, { force: true });
    throw error instanceof TypeError ? bookProblem('cannot-create', to) : asBookProblem(error, to);
  }
};
