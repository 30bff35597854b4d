import { hostname } from 'node:os';
import Database from 'better-sqlite3';
import { asBookProblem, bookProblem } from './problems.ts';

/** Held while a program has the book; a kill of any kind lets go of it, for the system holds it for us. */
export type Lock = { release(): void };

/**
 * One program a book, by a file beside it: `FILE.lock`. A lock that only wrote a pid would be taken for alive after
 * a power cut, when the same small pid runs again, and for foreign in a container whose host name is new each time.
 * So the file is a tiny SQLite file on which the owner holds a write transaction: the operating system drops that
 * with the process, however it ended. Who holds it stands inside. The file itself stays: to take it away while
 * another program is just opening it would let two in.
 */
export const takeLock = (bookPath: string, now: string): Lock => {
  const path = `${bookPath}.lock`;
  let db: Database.Database;
  try {
    db = new Database(path, { timeout: 0 });
  } catch (error) {
    throw asBookProblem(error, path);
  }
  try {
    db.pragma('journal_mode = DELETE');
    db.exec(
      'CREATE TABLE IF NOT EXISTS holder (pid INTEGER NOT NULL, host TEXT NOT NULL, since TEXT NOT NULL)',
    );
    db.transaction(() => {
      db.exec('DELETE FROM holder');
      db.prepare('INSERT INTO holder VALUES (?, ?, ?)').run(process.pid, hostname(), now);
    }).exclusive();
    db.exec('BEGIN IMMEDIATE');
  } catch (error) {
    const busy = error instanceof Database.SqliteError && error.code.startsWith('SQLITE_BUSY');
    const who = busy ? holderOf(db) : {};
    db.close();
    throw busy ? bookProblem('book-in-use', bookPath, who) : asBookProblem(error, path);
  }
  return {
    release: () => {
      if (!db.open) return;
      db.exec('ROLLBACK');
      db.close();
    },
  };
};

const holderOf = (db: Database.Database): { pid?: number; host?: string } => {
  try {
    const row = db.prepare('SELECT pid, host FROM holder').get() as { pid: number; host: string } | undefined;
    return row ?? {};
  } catch {
    // Another program is writing its name at this very moment: the answer "in use" holds without it.
    return {};
  }
};
