import { type Api, GrammyError } from 'grammy';
import type { Logger } from 'pino';
import type { ChannelBook } from '#assistant';
import { kindOf } from './sender.ts';

const TRIES = 4;

/** One polite line to a chat that is none of ours, once and never again. There is no site to keep it under. */
export const makeStrangers = (parts: { api: Api; book: ChannelBook; log: Logger; signal: AbortSignal }) => {
  const { api, book, log, signal } = parts;
  const telling = new Set<string>();
  return {
    tell: async (chat: string, text: string, thread: string | null): Promise<void> => {
      const key = `telegram:told:${chat}`;
      if (telling.has(chat) || book.bookFact(key) !== null) return;
      telling.add(chat);
      const other = thread === null ? {} : { message_thread_id: Number(thread) };
      for (let left = TRIES; left > 0 && !signal.aborted; left -= 1) {
        try {
          await api.sendMessage(chat, text, other, signal as never);
          if (!signal.aborted) book.setBookFact(key, true);
          break;
        } catch (error) {
          if (!signal.aborted)
            log.warn({ error: kindOf(error) }, 'a chat that is not known could not be answered');
          if (error instanceof GrammyError && error.error_code < 500 && error.error_code !== 429) break;
          await new Promise((done) => setTimeout(done, 2000).unref());
        }
      }
      telling.delete(chat);
    },
  };
};
