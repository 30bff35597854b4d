import type { Api } from 'grammy';
import type { BotCommand, BotCommandScope } from 'grammy/types';
import type { Logger } from 'pino';
import { type ChannelBook, say, type Words } from '#assistant';
import { LANGUAGES, type Language } from '#records';
import { COMMANDS, COORDINATOR_COMMANDS } from './commands.ts';
import type { Notices } from './notices.ts';
import { CHANNEL } from './options.ts';
import { kindOf } from './sender.ts';

/** The menus of commands: by language for everyone, and the coordinators' own for them alone. */
export const makeMenus = (parts: {
  api: Api;
  book: ChannelBook;
  words: Words;
  notices: Notices;
  site: number;
  log: Logger;
  signal: AbortSignal;
}) => {
  const { api, book, words, notices, log } = parts;
  const set = new Set<string>();

  const list = (names: readonly string[], language: Language, site: number): BotCommand[] =>
    names.map((command) => ({
      command,
      description: words.label(say(`menu-${command}`), notices.manner(site, language)).slice(0, 256),
    }));

  const put = async (
    scope: BotCommandScope | null,
    language: Language | null,
    commands: BotCommand[],
  ): Promise<void> => {
    const where = { ...(scope ? { scope } : {}), ...(language ? { language_code: language } : {}) };
    const mark = JSON.stringify([where, commands]);
    if (set.has(mark) || parts.signal.aborted) return;
    set.add(mark);
    try {
      await api.setMyCommands(commands, where, parts.signal as never);
    } catch (error) {
      set.delete(mark);
      if (!parts.signal.aborted) log.warn({ error: kindOf(error) }, 'a menu could not be set');
    }
  };

  return {
    everyone: async (): Promise<void> => {
      const first = book.siteById(parts.site).site.languages[0] ?? 'en';
      await put(null, null, list(COMMANDS, first, parts.site));
      for (const language of LANGUAGES) await put(null, language, list(COMMANDS, language, parts.site));
    },
    /** Told again whenever somebody has become a coordinator. */
    coordinators: async (): Promise<void> => {
      for (const { id: site } of book.sites()) {
        const groups = book
          .chats(site)
          .filter((chat) => chat.channel === CHANNEL && chat.kind === 'group' && chat.active);
        for (const person of book.people(site)) {
          if (!person.coordinator) continue;
          const language = person.language ?? book.siteById(site).site.languages[0] ?? 'en';
          const commands = list([...COMMANDS, ...COORDINATOR_COMMANDS], language, site);
          for (const id of book.channelIds(person.id, CHANNEL)) {
            for (const { chat } of groups)
              await put({ type: 'chat_member', chat_id: Number(chat), user_id: Number(id) }, null, commands);
            if (book.chat(CHANNEL, id)?.active)
              await put({ type: 'chat', chat_id: Number(id) }, null, commands);
          }
        }
      }
    },
  };
};
