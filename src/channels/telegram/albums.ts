import type { ChannelBook, Incoming } from '#assistant';

type Album = { parts: Incoming[] };
const KEY = 'telegram:albums';
const DONE = 'telegram:albums-handed-on';
/** An album that was handed on: the part that gave it its key, and the others that people may answer. */
type Done = { key: string; chat: string; head: string; parts: string[] };
const REMEMBERED = 100;

/**
 * An album comes as several messages with no last one. Its parts are kept in the log book as they come, so that a
 * confirmed one is never lost, and handed on as one message once no more have come for a moment.
 */
export const makeAlbums = (parts: {
  book: ChannelBook;
  waitMs: number;
  deliver(incoming: Incoming): void;
  /** Runs what a timer does; a book that can not be written ends the channel rather than the whole program. */
  guard(work: () => void): void;
}) => {
  const { book } = parts;
  const timers = new Map<string, NodeJS.Timeout>();
  const open = (): Record<string, Album> => book.bookFact<Record<string, Album>>(KEY) ?? {};
  const done = (): Done[] => book.bookFact<Done[]>(DONE) ?? [];

  const finish = (key: string): void => {
    clearTimeout(timers.get(key));
    timers.delete(key);
    const all = open();
    const album = all[key];
    if (!album) return;
    const sorted = album.parts.toSorted((a, b) => Number(a.message) - Number(b.message));
    // An edit of the words comes with the number of the part that bears them: that part gives the album its key.
    const head = sorted.find((part) => part.text !== '') ?? sorted[0]!;
    const text = sorted
      .map((part) => part.text)
      .filter((words) => words !== '')
      .join('\n');
    parts.deliver({ ...head, text, pictures: sorted.flatMap((part) => part.pictures) });
    const { [key]: _, ...rest } = all;
    book.write(() => {
      book.setBookFact(KEY, Object.keys(rest).length > 0 ? rest : null);
      const { chat, message } = head;
      const one = { key, chat, head: message, parts: sorted.map((part) => part.message) };
      book.setBookFact(DONE, [...done(), one].slice(-REMEMBERED));
    });
  };

  return {
    add: (group: string, incoming: Incoming): void => {
      const key = `${incoming.chat}/${group}`;
      if (done().some((one) => one.key === key)) {
        // Too late for its album; words are a message all the same, a repeated picture is nothing new.
        if (incoming.text !== '') parts.deliver(incoming);
        return;
      }
      const all = open();
      const album = all[key] ?? { parts: [] };
      if (!album.parts.some((part) => part.message === incoming.message)) album.parts.push(incoming);
      book.setBookFact(KEY, { ...all, [key]: album });
      clearTimeout(timers.get(key));
      timers.set(
        key,
        setTimeout(() => parts.guard(() => finish(key)), parts.waitMs),
      );
    },
    /**
     * What somebody sends next shows that their album is whole, and so does an answer to it. After an outage both
     * come in one breath: `undo` must find the album that it was meant for.
     */
    finishBefore: (next: Incoming, group: string | undefined): void => {
      const answered = next.replyTo && 'message' in next.replyTo ? next.replyTo.message : null;
      for (const [key, { parts: sent }] of Object.entries(open())) {
        const { chat, sender } = sent[0]!;
        const isNext = group !== undefined && key === `${next.chat}/${group}`;
        const isTheirs = sender.id === next.sender.id && (sender.id !== null || chat === next.chat);
        const isAnswered = chat === next.chat && sent.some((part) => part.message === answered);
        if (!isNext && (isTheirs || isAnswered)) finish(key);
      }
    },
    /** The part of an album that bears its key, for an answer to any of its pictures. */
    headOf: (chat: string, message: string): string =>
      done().find((one) => one.chat === chat && one.parts.includes(message))?.head ?? message,
    /** At the end, and at the start for what an earlier run had left. */
    finishAll: (): void => {
      for (const key of Object.keys(open())) finish(key);
    },
  };
};
