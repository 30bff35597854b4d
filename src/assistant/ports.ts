import type { Picture } from '#core';
import type { Entry, Language, NewEntry, Site } from '#records';
import type { Line, Say } from './say.ts';

/** What a channel hands in. It holds no sums and no wording of its own. */
export type Incoming = {
  site: number;
  /** `telegram`, `page`, `terminal`, `replay`: part of the message's key. */
  channel: string;
  chat: string;
  thread: string | null;
  /** The message's own id within its chat; with an edit, the id of the message edited. */
  message: string;
  /** Counts the edits of a message: 0 for the message itself, else the edit's own mark (its date). */
  edit: string | null;
  sentAt: string;
  receivedAt: string;
  sender: Sender;
  private: boolean;
  /** Came by a link, with no account: logs, asks and takes back its own within the hour, and sets nothing. */
  guest?: boolean;
  text: string;
  /** Ids by which the channel can send the pictures back. */
  pictures: string[];
  /** Where somebody says they are; a coordinator's sets the place of the site. */
  location?: { latitude: number; longitude: number };
  /** What the message answers: one of our replies, somebody's message, or an entry by number. */
  replyTo: { outgoing: number } | { message: string } | { entry: number } | null;
  /** A pressed button: which of our replies, and which of its choices. */
  choose: { outgoing: number; index: number } | null;
  /** A fixed button that asks one thing, in whatever language. */
  ask?: 'today' | 'week';
};

export type Sender = {
  /** The channel's own id of the person; null for an anonymous admin or nobody known. */
  id: string | null;
  name: string;
  coordinator: boolean;
  language: Language | null;
};

/** What a button does when pressed; kept in the log book, never in the button. */
export type ChoiceAct =
  | { do: 'answer'; entry: number; choice: number }
  | { do: 'drop'; entry: number }
  | { do: 'undo'; entries: number[] }
  | { do: 'ask'; request: Record<string, unknown> & { request: string } }
  | { do: 'start-pile'; entry: number; place: string }
  | { do: 'none' };

export type Choice = { label: string; act: ChoiceAct };

/** A picture is kept as what it shows; it is drawn when sent. */
export type PictureSpec = { draw: string; alt: string; data: unknown };

/** What a file of the book is made of: the outbox keeps this, and never the file. */
export type PaperSpec = { from: string; to: string; language: Language } & (
  | { paper: 'export'; format: 'xlsx' | 'csv' | 'json' }
  | { paper: 'report' }
);

/** A file beside the text: a longer answer, or one that is made when it is sent; `failed` is said where it cannot be. */
export type FileOut = { name: string; text: string } | { name: string; paper: PaperSpec; failed: string };

export type PaperFile = Extract<FileOut, { paper: PaperSpec }>;
/** Makes a file of a site's book as it stands; null where it cannot be made, or is too large to be sent. */
export type MakePaper = (file: PaperFile, site: number) => Promise<Uint8Array | null>;

export type PostAbout = 'week' | 'morning' | 'reminder' | 'alarm';

/** What goes out: words rendered once, inside the transaction that made the entries. */
export type Outgoing = {
  text: string;
  choices: Choice[];
  picture: PictureSpec | null;
  file: FileOut | null;
};

export type OutgoingRow = Outgoing & {
  id: number;
  site: number;
  channel: string;
  chat: string;
  thread: string | null;
  /** The message it answers (channel's own id), or null for what comes unasked. */
  answers: string | null;
  message: number | null;
  about: PostAbout | null;
  weekFrom: string | null;
  private: boolean;
  createdAt: string;
  sentAt: string | null;
  /** The channel's id of the message as sent, once known. */
  sentAs: string | null;
};

export type NewOutgoing = Omit<OutgoingRow, 'id' | 'sentAt' | 'sentAs'>;

export type StoredMessage = {
  id: number;
  site: number;
  channel: string;
  chat: string;
  message: string;
  edit: string | null;
  sentAt: string;
  text: string;
  person: number | null;
  state: 'done' | 'failed';
};

export type Person = {
  id: number;
  name: string;
  coordinator: boolean;
  language: Language | null;
};

export type SiteRow = { id: number; site: Site };

/** The log book, as the assistant needs it. Everything is synchronous: one process, one file, one writer. */
export type Book = {
  /** Runs `work` in one immediate, durable transaction. */
  write<T>(work: () => T): T;

  sites(): SiteRow[];
  siteById(id: number): SiteRow;
  siteByName(name: string): SiteRow | null;
  addSite(site: Site, at: string): SiteRow;

  /** The person behind a channel's own id; made (or renamed) when first seen. Names stay outside the entries. */
  person(site: number, channel: string, id: string, name: string): Person;
  personById(id: number): Person | null;
  people(site: number): Person[];
  changePerson(id: number, change: Partial<Pick<Person, 'name' | 'coordinator' | 'language'>>): void;
  /**
   * Removes the name and the words of a person; entries stay under the number. Gives when their first line happened:
   * kept pictures from then on may hold words of theirs.
   */
  forgetPerson(id: number): string | null;

  message(
    site: number,
    channel: string,
    chat: string,
    message: string,
    edit: string | null,
  ): StoredMessage | null;
  /** All that is known under one message id, edits included, oldest first. */
  messageHistory(site: number, channel: string, chat: string, message: string): StoredMessage[];
  saveMessage(incoming: Incoming, person: number | null, state: 'done' | 'failed'): StoredMessage;

  append(site: number, entries: NewEntry[], message: number | null): Entry[];
  entry(site: number, number: number): Entry | null;
  entriesOfMessage(message: number): Entry[];
  /** Lines that happened at or after an instant, in order of happening, then number; voided ones included. */
  entriesFrom(site: number, happenedAt: string): Iterable<Entry>;
  entriesBetween(site: number, fromDate: string, toDate: string): Entry[];
  entriesOfPerson(site: number, person: number, localDate: string): Entry[];
  /** The newest lines, newest first. */
  latest(site: number, howMany: number): Entry[];
  lastNumber(site: number): number;
  /** The files kept as evidence with a line, as the channel knows them; none once they are forgotten. */
  picturesOf(site: number, number: number): string[];

  /** Pictures of a site as they stood just before an instant, for late entries and corrections. */
  snapshotBefore(site: number, at: string): { at: string; picture: Picture } | null;
  saveSnapshot(site: number, at: string, picture: Picture): void;
  dropSnapshotsFrom(site: number, at: string): void;

  putOut(row: NewOutgoing): OutgoingRow;
  outgoing(id: number): OutgoingRow | null;
  outgoingSentAs(channel: string, chat: string, sentAs: string): OutgoingRow | null;
  outgoingOfMessage(message: number): OutgoingRow[];
  /** Waiting rows of a channel, oldest first. */
  waiting(channel: string, howMany: number): OutgoingRow[];
  /** A reply that went out as several messages names the others in `also`; one given up on has no `sentAs`. */
  markSent(rows: { id: number; sentAs: string | null; also?: string[] }[], at: string): void;

  /** A link to a site's page; only a hash of its token is kept. */
  addLink(site: number, token: string): void;
  /** Whose link it is, and whether another has taken its place. */
  linkSite(token: string): { site: number; ended: boolean } | null;
  endLinks(site: number): void;

  /** Small facts of the conversation: what was asked once, which list was shown last, what was posted. */
  memo<T>(site: number, key: string): T | null;
  setMemo(site: number, key: string, value: unknown): void;
};

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

/** What a channel keeps in the log book beside the conversation itself. */
export type ChannelBook = Book & {
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
  /** Facts of the book as a whole, as JSON: which word lets a group in, when the channel was last heard. */
  bookFact<T>(key: string): T | null;
  /** Null takes the fact out. */
  setBookFact(key: string, value: unknown): void;
};

/** Outcome into words. The only way from `Say` to text. */
export type Words = {
  /** Lines joined with line breaks; the parts of one line stand side by side with a middle dot between. */
  text(lines: Line[], how: Manner): string;
  /** A short label for a button. */
  label(say: Say, how: Manner): string;
};

/** In which language, units and zone a site (and a person) is spoken to. */
export type Manner = {
  language: Language;
  units: Site['units'];
  timeZone: string;
  dayOrder: Site['dayOrder'];
  /** The site's local date now: other dates are said with their weekday. */
  today: string;
};
