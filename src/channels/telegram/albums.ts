import type { ChannelBook, Incoming } from '#assistant';

type Album = { parts: Incoming[] };
const KEY = 'telegram:albums';
const DONE = 'telegram:albums-done';
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
  const done = (): string[] => book.bookFact<string[]>(DONE) ?? [];

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
      book.setBookFact(DONE, [...done(), key].slice(-REMEMBERED));
    });
  };

  return {
    add: (group: string, incoming: Incoming): void => {
      const key = `${incoming.chat}/${group}`;
      if (done().includes(key)) {
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
    /** At the end, and at the start for what an earlier run had left. */
    finishAll: (): void => {
      for (const key of Object.keys(open())) finish(key);
    },
  };
};
