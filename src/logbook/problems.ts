import Database from 'better-sqlite3';

/** What can be wrong with a log book or its disk; the words for each are the wording's. */
export const BOOK_PROBLEMS = [
  'book-in-use',
  'read-only',
  'newer-version',
  'older-version',
  'not-a-book',
  'no-such-book',
  'cannot-create',
  'disk-full',
  'damaged',
  'exists',
] as const;
export type BookProblemCode = (typeof BOOK_PROBLEMS)[number];

/** Thrown with data to tell, never with words for people: which file, who holds it, which version. */
export type BookProblem = Error & {
  bookProblem: BookProblemCode;
  path: string;
  data: { pid?: number; host?: string; version?: number; known?: number };
};

export const bookProblem = (
  code: BookProblemCode,
  path: string,
  data: BookProblem['data'] = {},
): BookProblem => {
  const problem = Object.assign(new Error(code), { bookProblem: code, path, data });
  problem.name = 'BookProblem';
  return problem;
};

export const isBookProblem = (error: unknown): error is BookProblem =>
  error instanceof Error && 'bookProblem' in error;

const ofSqlite: [prefix: string, code: BookProblemCode][] = [
  ['SQLITE_FULL', 'disk-full'],
  ['SQLITE_IOERR', 'damaged'],
  ['SQLITE_CORRUPT', 'damaged'],
  ['SQLITE_NOTADB', 'not-a-book'],
  ['SQLITE_READONLY', 'read-only'],
  ['SQLITE_CANTOPEN', 'cannot-create'],
  ['SQLITE_PERM', 'cannot-create'],
];

/** An error of the disk or the file as a BookProblem; any other error (our bug) as it is. */
export const asBookProblem = (error: unknown, path: string): unknown => {
  if (!(error instanceof Database.SqliteError)) return error;
  const found = ofSqlite.find(([prefix]) => error.code.startsWith(prefix));
  return found ? bookProblem(found[1], path) : error;
};
