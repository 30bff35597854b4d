import { type Api, GrammyError } from 'grammy';
import type { Message } from 'grammy/types';
import type { ChannelBook } from '#assistant';
import { CHANNEL } from './options.ts';

type Unplaced = { since: string; messages: Message[] };
const KEY = 'telegram:unplaced';
const KEPT = 50;
const DAY_MS = 86_400_000;

/** Supergroups have ids below this; only a plain group can become one. */
const isPlainGroup = (chat: string): boolean => Number(chat) < 0 && Number(chat) > -1e12;

/**
 * A group that becomes a supergroup gets a new id, and a message from there can come before the notice. Such a
 * message is kept, and the old groups are asked whether they have moved there.
 */
export const makeMoving = (book: ChannelBook, now: () => Date) => {
  const plainGroups = (): string[] =>
    book
      .sites()
      .flatMap(({ id }) => book.chats(id))
      .filter((chat) => chat.channel === CHANNEL && chat.movedTo === null && isPlainGroup(chat.chat))
      .map((chat) => chat.chat);

  const unplaced = (): Record<string, Unplaced> => {
    const all = book.bookFact<Record<string, Unplaced>>(KEY) ?? {};
    const fresh = Object.entries(all).filter(([, one]) => now().getTime() - Date.parse(one.since) < DAY_MS);
    return Object.fromEntries(fresh);
  };
  const put = (all: Record<string, Unplaced>): void =>
    book.setBookFact(KEY, Object.keys(all).length > 0 ? all : null);

  return {
    /** Whether a message from an unknown chat might come from one of ours under a new id. */
    possible: (message: Message): boolean => message.chat.type === 'supergroup' && plainGroups().length > 0,
    keep: (message: Message): void => {
      const all = unplaced();
      const chat = String(message.chat.id);
      const kept = all[chat] ?? { since: now().toISOString(), messages: [] };
      const others = kept.messages.filter((one) => one.message_id !== message.message_id);
      put({ ...all, [chat]: { ...kept, messages: [...others, message].slice(-KEPT) } });
    },
    keptFor: (): string[] => Object.keys(unplaced()),
    take: (chat: string): Message[] => {
      const { [chat]: found, ...rest } = unplaced();
      if (found) put(rest);
      return found?.messages ?? [];
    },
    /** Asks each plain group where it is. `no`: all of them are where they were; `unknown`: not all could tell. */
    ask: async (
      api: Api,
      chat: string,
      signal: AbortSignal,
    ): Promise<{ from: string } | 'no' | 'unknown'> => {
      let sure = true;
      for (const from of plainGroups()) {
        try {
          await api.sendChatAction(from, 'typing', {}, signal as never);
        } catch (error) {
          const to = error instanceof GrammyError ? error.parameters.migrate_to_chat_id : undefined;
          if (to !== undefined && String(to) === chat) return { from };
          if (to === undefined) sure = false;
        }
      }
      return sure ? 'no' : 'unknown';
    },
  };
};
