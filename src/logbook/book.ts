import type { ChannelBook } from '#assistant';
import type { Entry } from '#records';
import type { Verdict } from './verify.ts';

/** The log book as channels, papers and commands use it: the assistant's port and what stands around it. */
export type OpenedBook = ChannelBook & {
  path: string;
  readOnly: boolean;

  /** Every line of a site in order of number. Read in pages: writing in between is fine. */
  entriesWalk(site: number, afterNumber?: number): Iterable<Entry>;
  /**
   * Empties raw texts received in a span: of talk that made no line, or of all. Keys stay. Gives since when kept
   * pictures of the site may hold such words; null where none does.
   */
  blankTexts(site: number, received: { from: string; before: string }, which: 'talk' | 'all'): string | null;

  verify(): Verdict;
  /** A whole copy in one new file, checked; the program may go on writing meanwhile. */
  backup(to: string): Promise<void>;
  close(): void;
};
