import type { Api } from 'grammy';
import type { UserFromGetMe } from 'grammy/types';
import type { Logger } from 'pino';
import type { ChannelBook, Chat } from '#assistant';
import type { Notices } from './notices.ts';
import { CHANNEL } from './options.ts';
import { kindOf } from './sender.ts';

const HEARD = 'telegram:heard';
/** Messages wait on the messenger's side for so long and no longer. */
const KEPT_MS = 24 * 3_600_000;
/** How often the moment is written down: a gap is measured to within this. */
const EVERY_MS = 5 * 60_000;

/** What the bot can hear: privacy in groups, and whether it has been away for longer than messages are kept. */
export const makeHearing = (parts: {
  api: Api;
  book: ChannelBook;
  notices: Notices;
  log: Logger;
  now: () => Date;
  me: () => UserFromGetMe;
  signal: AbortSignal;
}) => {
  const { api, book, notices, log } = parts;
  let written = 0;

  const groups = (): Chat[] =>
    book
      .sites()
      .flatMap(({ id }) => book.chats(id))
      .filter((chat) => chat.channel === CHANNEL && chat.kind === 'group' && chat.active);

  return {
    /** Called for each answered call for updates. */
    heard: (): void => {
      const now = parts.now().getTime();
      const last = book.bookFact<string>(HEARD);
      const gap = last === null ? 0 : now - Date.parse(last);
      if (gap < EVERY_MS && now - written < EVERY_MS && last !== null) return;
      written = now;
      book.write(() => {
        book.setBookFact(HEARD, parts.now().toISOString());
        if (gap > KEPT_MS)
          for (const { site, chat, topic } of groups())
            notices.put('telegram-gap', { site, chat, thread: topic });
      });
    },
    /**
     * With privacy on, a plain message never arrives unless the bot is an admin of the group. Said once to a group,
     * and again only where it was put right and has come back.
     */
    lookAt: async (chat: Chat): Promise<void> => {
      if (chat.kind !== 'group') return;
      const key = `telegram:cannot-hear:${chat.chat}`;
      // A server that does not say so is taken for one that lets plain messages through.
      const hears = parts.me().can_read_all_group_messages !== false || (await isAdmin(chat.chat));
      if (parts.signal.aborted) return;
      const told = book.memo(chat.site, key) !== null;
      if (hears && told) book.setMemo(chat.site, key, null);
      if (hears || told) return;
      book.write(() => {
        book.setMemo(chat.site, key, true);
        notices.put('telegram-cannot-hear', { site: chat.site, chat: chat.chat, thread: chat.topic });
      });
    },
    groups,
  };

  async function isAdmin(chat: string): Promise<boolean> {
    try {
      const member = await api.getChatMember(chat, parts.me().id, parts.signal as never);
      return member.status === 'administrator' || member.status === 'creator';
    } catch (error) {
      log.info({ error: kindOf(error) }, 'whether the bot is an admin of a group could not be asked');
      return false;
    }
  }
};
