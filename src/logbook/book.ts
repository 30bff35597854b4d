import type { Book } from '#assistant';
import type { Entry } from '#records';
import type { Verdict } from './verify.ts';

/** A chat through which a site is spoken to. A group that became another chat keeps its site: `movedTo` says where. */
export type Chat = {
  channel: string;
  chat: string;
  site: number;
  kind: 'group' | 'direct';
  /** The thread that a coordinator chose for what goes out unasked. */
  topic: string | null;
  active: boolean;
  movedTo: string | null;
};

/** The log book as channels, papers and commands use it: the assistant's port and what stands around it. */
export type OpenedBook = Book & {
  path: string;
  readOnly: boolean;

  chat(channel: string, chat: string): Chat | null;
  chats(site: number): Chat[];
  /** Known already: it is active again, and of this site. */
  addChat(site: number, channel: string, chat: string, kind: Chat['kind']): Chat;
  changeChat(channel: string, chat: string, change: Partial<Pick<Chat, 'active' | 'topic'>>): void;
  /** A group that has a new id: the same site, its waiting replies too. Twice is the same as once. */
  moveChat(channel: string, from: string, to: string): Chat | null;
  /** Sites in which a person of a channel has been seen. */
  sitesOfPerson(channel: string, id: string): number[];
  /** A person's own ids on a channel. */
  channelIds(person: number, channel: string): string[];

  /** Every line of a site in order of number. Read in pages: writing in between is fine. */
  entriesWalk(site: number, afterNumber?: number): Iterable<Entry>;
  /** The files kept as evidence with a line, as the channel knows them. */
  picturesOf(site: number, number: number): string[];
  /** Empties raw texts received before an instant: of talk that made no line, or of all. Keys stay. */
  blankTexts(site: number, receivedBefore: string, which: 'talk' | 'all'): void;

  /** Facts of the book as a whole, as JSON: which word lets a group in, when the channel was last heard. */
  bookFact<T>(key: string): T | null;
  setBookFact(key: string, value: unknown): void;

  addLink(site: number, token: string): void;
  linkSite(token: string): { site: number; ended: boolean } | null;
  endLinks(site: number): void;

  verify(): Verdict;
  /** A whole copy in one new file, checked; the program may go on writing meanwhile. */
  backup(to: string): Promise<void>;
  close(): void;
};
