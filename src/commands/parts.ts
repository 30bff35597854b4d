import { readFileSync } from 'node:fs';
import { type Assistant, makeAssistant, type Words } from '#assistant';
import { isBookProblem, type OpenedBook, openBook } from '#logbook';
import { LANGUAGES } from '#records';
import { makeWords, type Texts } from '#wording';
import { Problem } from './problem.ts';

/** The wording files, read once at the start. */
export function readTexts(): Texts {
  const folder = new URL('../wording/texts/', import.meta.url);
  return Object.fromEntries(
    LANGUAGES.map((language) => [language, readFileSync(new URL(`${language}.ftl`, folder), 'utf8')]),
  ) as Texts;
}

/** Words for what is made beside the conversation: a text that is missing there is said in English. */
export const wordsOf = (): Words => makeWords(readTexts(), () => {});

const BOOK_TROUBLE: Record<string, (path: string, data: Record<string, unknown>) => string> = {
  'book-in-use': (path, { pid }) =>
    `the log book ${path} is in use by another program${pid ? ` (process ${pid})` : ''}; stop that one first`,
  'read-only': (path) =>
    `the log book ${path} can be read but not written: mend its permissions or choose another with --db`,
  'newer-version': (path) =>
    `the log book ${path} was written by a newer version of Heaphand; nothing was touched`,
  'older-version': (path) =>
    `the log book ${path} is of an older version; run "npm start" on it once, then read it`,
  'not-a-book': (path) => `${path} is not a log book of Heaphand; nothing was touched`,
  'no-such-book': (path) => `there is no log book ${path}`,
  'cannot-create': (path) => `the log book ${path} cannot be made there`,
  'disk-full': (path) => `the disk is full: the log book ${path} could not be written`,
  damaged: (path) => `the log book ${path} is damaged; restore a backup`,
  exists: (path) => `${path} exists already and is not overwritten`,
};

/** What can go wrong with a log book, in one plain line; any other error as it is. */
function asProblem(error: unknown): unknown {
  if (!isBookProblem(error)) return error;
  const words = BOOK_TROUBLE[error.bookProblem];
  return new Problem(
    words ? words(error.path, error.data) : `the log book ${error.path}: ${error.bookProblem}`,
  );
}

/** Opens the log book; what can go wrong becomes one plain line. */
export function open(path: string, readOnly = false): OpenedBook {
  try {
    return openBook(path, { readOnly, now: () => new Date().toISOString() });
  } catch (error) {
    throw asProblem(error);
  }
}

/** Work on a log book's file; what can go wrong becomes one plain line. */
export async function plainly<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    throw asProblem(error);
  }
}

export type Parts = { book: OpenedBook; words: Words; assistant: Assistant };

/** The parts of a running program: the log book, the words, and the assistant between them. */
export function build(path: string, complain: (what: string, error: unknown) => void): Parts {
  const book = open(path);
  const words = makeWords(readTexts(), (what) => complain(what, null));
  const assistant = makeAssistant({ book, words, complain, homes: homesOf(book) });
  return { book, words, assistant };
}

/** Where what goes out unasked is put: the site's groups, else the terminal or page it was last spoken to from. */
export const homesOf =
  (book: OpenedBook) =>
  (site: number): { channel: string; chat: string; thread: string | null }[] => {
    const groups = book
      .chats(site)
      .filter((chat) => chat.kind === 'group' && chat.active && chat.movedTo === null)
      .map(({ channel, chat, topic }) => ({ channel, chat, thread: topic }));
    if (groups.length > 0) return groups;
    const last = book.memo<{ channel: string; chat: string }>(site, 'home');
    return last ? [{ ...last, thread: null }] : [];
  };

/** A fault of our own, on standard error: what and where, never what anybody wrote. */
export function complainTo(stream: NodeJS.WritableStream): (what: string, error: unknown) => void {
  return (what, error) => {
    const { stack } = (error ?? {}) as { stack?: string };
    const where =
      stack
        ?.split('\n')
        .slice(1, 6)
        .map((line) => line.trim())
        .join(' < ') ?? '';
    const name = error instanceof Error ? error.name : '';
    const detail = process.env.HEAPHAND_TRACE && error instanceof Error ? ` ${error.message}` : '';
    stream.write(`heaphand: ${what} ${name}${detail} ${where}\n`);
  };
}
