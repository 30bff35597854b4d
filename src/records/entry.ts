import type { Doubt, DoubtChoice, DoubtCode } from './parsed.ts';
import type { BookRecord } from './record.ts';

/** One line of the log book. Nothing in it ever changes; a correction is a later line that voids it. */
export type Entry = {
  /** #123: counts from 1 within its site. */
  number: number;
  /** When it happened, UTC (`2026-05-12T13:00:00.000Z`). */
  happenedAt: string;
  /** The site's local date of that instant, as it was when the line was written. */
  localDate: string;
  /** When it reached us, UTC. */
  receivedAt: string;
  /** Person by number; null where nobody is known (an anonymous admin, the program itself). */
  person: number | null;
  record: BookRecord | (Record<string, unknown> & { kind: string });
  /** The value and unit as typed: `142 lb`. */
  typed: string | null;
  assumed: string[];
  /** Set where the line waits for an answer and is never counted meanwhile. */
  held: { why: DoubtCode; choices: DoubtChoice[]; doubt: Doubt } | null;
  /** The number of a later line that took this one's place or took it back. */
  voidedBy: number | null;
  /** How many pictures are kept as evidence. */
  pictures: number;
};

/** An entry that is about to be written: the book gives it its number. */
export type NewEntry = Omit<Entry, 'number' | 'voidedBy' | 'pictures'> & {
  pictures?: string[];
  /**
   * Older lines that this one takes the place of or takes back: their `voidedBy` becomes its number.
   * An amendment or an answer to a doubt names the line it replaces; a `void` line the one it takes back.
   */
  voids: number[];
};
