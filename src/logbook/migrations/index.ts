import { firstBook } from './001-first-book.ts';

/** In order; the n-th brings a book from version n − 1 to n. One that has been on a site is never edited. */
export const migrations: readonly string[] = [firstBook];
