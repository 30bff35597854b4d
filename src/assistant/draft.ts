import type { Picture } from '#core';
import type { Assumption, BookRecord, Doubt, Entry } from '#records';
import type { Drawing } from './pictures-of/drawing.ts';
import type { Book, ChoiceAct, FileOut, Incoming, Manner, Person, PictureSpec, PostAbout } from './ports.ts';
import type { Line, Say } from './say.ts';

/** Something that goes out unasked beside the reply: an alarm to the coordinators, a week that has changed. */
type Post = {
  about: PostAbout;
  lines: Line[];
  /** Somebody's own words: told once, however many languages the lines are said in. */
  words?: Line[];
  private: boolean;
};

/**
 * What a message leads to, as it is being worked out inside the transaction: lines for the book and things to say.
 * Entries get their numbers at once, so that the reply can name them.
 */
export type Draft = {
  readonly book: Book;
  readonly siteId: number;
  readonly incoming: Incoming;
  readonly person: Person | null;
  /** Whether the sender may change settings and others' entries. */
  readonly mayDecide: boolean;
  readonly manner: Manner;
  readonly now: string;
  /** When what is said without a date happened: the sending, or the first sending of an edited message. */
  happenedAt: string;
  readonly today: string;
  /** As the book stood before this message. */
  readonly before: Picture;
  /** As it stands with the lines added so far. */
  picture(): Picture;
  entries: Entry[];
  /** Numbers of the older lines that these took the place of or took back. */
  voided: number[];
  lines: Line[];
  choices: { say: Say; act: ChoiceAct }[];
  /** The picture that goes with the reply, where one was asked for; worked out when all lines are in. */
  drawing: PictureSpec | (() => Drawing | null) | null;
  file: FileOut | null;
  posts: Post[];
  /** Somebody was forgotten whose first line happened then: what the site looks like is worked out anew. */
  forgotten: string | null;
  /** How the answer came about, for `why`. */
  why: Line[];
  /** Words that go out beside the lines. */
  word(say: Say): string;
  add(record: BookRecord | (Record<string, unknown> & { kind: string }), more?: AddMore): Entry;
};

export type AddMore = {
  assumed?: Assumption[];
  typed?: string | null;
  held?: { why: Doubt['why']; choices: Doubt['choices']; doubt: Doubt } | null;
  voids?: number[];
  /** Overrides the moment worked out from the record's `when`. */
  happenedAt?: string;
};
