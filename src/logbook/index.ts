// The log book on disk: one SQLite file, append-only lines in a chain, inbox and outbox beside them.
// Opened by one program that writes; readers may open it meanwhile.
export type { OpenedBook } from './book.ts';
export { openBook } from './open.ts';
export type { BookProblem, BookProblemCode } from './problems.ts';
export { BOOK_PROBLEMS, isBookProblem } from './problems.ts';
export type { Verdict } from './verify.ts';
