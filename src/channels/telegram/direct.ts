import type { Message } from 'grammy/types';
import type { ChannelBook } from '#assistant';
import { CHANNEL } from './options.ts';

type Chosen = { site: number; among: number[] };
type Asked = { among: number[]; messages: Message[] };

const chosenKey = (user: string): string => `telegram:direct:${user}`;
const askedKey = (user: string): string => `telegram:asked:${user}`;
const KEPT = 50;

/** To which site's book a message sent to the bot directly belongs: none, one, or one that has to be asked for. */
export const makeDirect = (book: ChannelBook) => ({
  siteOf: (
    user: string,
  ): { is: 'stranger' } | { is: 'site'; site: number } | { is: 'ask'; among: number[] } => {
    const among = book.sitesOfPerson(CHANNEL, user);
    if (among.length === 0) return { is: 'stranger' };
    if (among.length === 1) return { is: 'site', site: among[0]! };
    const chosen = book.bookFact<Chosen>(chosenKey(user));
    // Somebody who has joined another site since is asked anew.
    if (chosen && chosen.among.join() === among.join()) return { is: 'site', site: chosen.site };
    return { is: 'ask', among };
  },
  /** Keeps a message until its site is known. True for the first: then the question goes out. */
  keep: (user: string, among: number[], message: Message): boolean => {
    const asked = book.bookFact<Asked>(askedKey(user));
    const messages = (asked?.messages ?? []).filter((one) => one.message_id !== message.message_id);
    book.setBookFact(askedKey(user), { among, messages: [...messages, message].slice(-KEPT) });
    return asked === null;
  },
  /** The answer: gives back what waited for it. */
  choose: (user: string, site: number): Message[] | null => {
    const among = book.sitesOfPerson(CHANNEL, user);
    if (!among.includes(site)) return null;
    const asked = book.bookFact<Asked>(askedKey(user));
    book.write(() => {
      book.setBookFact(chosenKey(user), { site, among });
      book.setBookFact(askedKey(user), null);
    });
    return asked?.messages ?? [];
  },
});
