import { type ChannelBook, type Manner, type OutgoingRow, type Say, say, type Words } from '#assistant';
import type { Language } from '#records';
import { CHANNEL } from './options.ts';

/** What the channel itself has to say; the words stand in the wording under these names. */
export const NOTICES = [
  'telegram-not-known',
  'telegram-let-in',
  'telegram-cannot-hear',
  'telegram-cannot-read',
  'telegram-gap',
  'telegram-which-site',
  'telegram-topic-chosen',
  'telegram-unreached',
  'coordinators-only',
  'kept-unread',
] as const;
export type Notice = (typeof NOTICES)[number];

/** Puts a notice out to a chat of a site, through the outbox like any reply. */
export const makeNotices = (parts: { book: ChannelBook; words: Words; now: () => Date }) => {
  const { book, words } = parts;
  const manner = (site: number, language: Language | null): Manner => {
    const { site: settings } = book.siteById(site);
    const today = new Intl.DateTimeFormat('en-CA', { timeZone: settings.timeZone }).format(parts.now());
    return {
      language: language ?? settings.languages[0] ?? 'en',
      units: settings.units,
      dayOrder: settings.dayOrder,
      timeZone: settings.timeZone,
      today,
    };
  };
  const text = (notice: Notice, site: number, language: Language | null, args?: Say['args']): string =>
    words.text([say(notice, args)], manner(site, language));
  return {
    manner,
    text,
    put: (
      notice: Notice,
      to: {
        site: number;
        chat: string;
        thread?: string | null;
        answers?: string | null;
        language?: Language | null;
        about?: OutgoingRow['about'];
      },
      args?: Say['args'],
    ): void => {
      book.putOut({
        site: to.site,
        channel: CHANNEL,
        chat: to.chat,
        thread: to.thread ?? null,
        answers: to.answers ?? null,
        message: null,
        about: to.about ?? null,
        weekFrom: null,
        private: false,
        createdAt: parts.now().toISOString(),
        text: text(notice, to.site, to.language ?? null, args),
        choices: [],
        picture: null,
        file: null,
      });
    },
  };
};
export type Notices = ReturnType<typeof makeNotices>;
