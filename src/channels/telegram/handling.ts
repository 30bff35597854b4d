import type { Api } from 'grammy';
import type { CallbackQuery, ChatMemberUpdated, Message, Update, UserFromGetMe } from 'grammy/types';
import type { Logger } from 'pino';
import type { ChannelBook, Chat, Incoming } from '#assistant';
import type { makeAlbums } from './albums.ts';
import type { makeClaim } from './claiming.ts';
import { claimedWord, languageOf, readCommand } from './commands.ts';
import type { makeDirect } from './direct.ts';
import type { makeMoving } from './moving.ts';
import type { Notices } from './notices.ts';
import { CHANNEL } from './options.ts';
import { incomingOf, isWordless, nameOf, speakerOf, threadOf } from './reading.ts';
import { kindOf } from './sender.ts';
import type { makeStrangers } from './strangers.ts';

type Parts = {
  api: Api;
  book: ChannelBook;
  me: () => UserFromGetMe;
  log: Logger;
  now: () => Date;
  site: number;
  signal: AbortSignal;
  notices: Notices;
  claim: ReturnType<typeof makeClaim>;
  direct: ReturnType<typeof makeDirect>;
  moving: ReturnType<typeof makeMoving>;
  strangers: ReturnType<typeof makeStrangers>;
  albums: ReturnType<typeof makeAlbums>;
  deliver(incoming: Incoming): void;
  /** A group that is let in now, or in again: privacy is looked at, menus are set. */
  arrived(chat: Chat): void;
};

/**
 * One update of the messenger. Everything that must not be lost is in the book when this returns: the next call for
 * updates confirms it. What has to be asked over the network comes after.
 */
export const makeHandler = (parts: Parts) => {
  const { book, notices, claim, direct, moving, strangers, albums, log } = parts;

  const update = (one: Update): void => {
    if (one.message) message(one.message);
    else if (one.edited_message) message(one.edited_message);
    else if (one.callback_query) pressed(one.callback_query);
    else if (one.my_chat_member) myMember(one.my_chat_member);
  };

  const message = (one: Message): void => {
    if (one.migrate_to_chat_id !== undefined) {
      moved(String(one.chat.id), String(one.migrate_to_chat_id));
      return;
    }
    if (one.migrate_from_chat_id !== undefined) {
      moved(String(one.migrate_from_chat_id), String(one.chat.id));
      return;
    }
    if (one.chat.type === 'channel') return;
    if (one.chat.type === 'private') {
      directMessage(one);
      return;
    }
    const chat = book.chat(CHANNEL, String(one.chat.id));
    if (chat?.movedTo) {
      groupMessage(one, book.chat(CHANNEL, chat.movedTo) ?? chat);
      return;
    }
    if (chat) {
      groupMessage(one, chat);
      return;
    }
    unknownGroup(one);
  };

  const textOf = (one: Message): string => one.text ?? one.caption ?? '';

  const groupMessage = (one: Message, chat: Chat): void => {
    if (!chat.active && !chat.movedTo) book.changeChat(CHANNEL, chat.chat, { active: true });
    for (const joined of one.new_chat_members ?? [])
      if (!joined.is_bot) book.person(chat.site, CHANNEL, String(joined.id), nameOf(joined));
    if (speakerOf(one).kind === 'nobody') return;
    take(one, chat.site);
  };

  /** A message of somebody who may log, to a site that is known. */
  const take = (one: Message, site: number): void => {
    const { command, forAnother } = readCommand(textOf(one), parts.me().username);
    if (forAnother) return;
    const read = incomingOf(one, site, { me: parts.me(), book, receivedAt: parts.now().toISOString() });
    albums.finishBefore(read, read.edit === null ? one.media_group_id : undefined);
    const { replyTo } = read;
    const incoming: Incoming =
      replyTo && 'message' in replyTo
        ? { ...read, replyTo: { message: albums.headOf(read.chat, replyTo.message) } }
        : read;
    if (isWordless(one)) {
      cannotRead(incoming);
      return;
    }
    if (command === 'here') {
      chooseTopic(incoming);
      return;
    }
    if (one.location && !incoming.sender.coordinator) return;
    const empty = incoming.text.trim() === '' && incoming.pictures.length === 0 && !one.location;
    if (empty && incoming.edit === null) return;
    if (one.media_group_id !== undefined && incoming.edit === null) albums.add(one.media_group_id, incoming);
    else parts.deliver(incoming);
  };

  /** One line a day at most in a chat, however many stickers. */
  const cannotRead = (incoming: Incoming): void => {
    if (incoming.edit !== null) return;
    const key = `telegram:cannot-read:${incoming.chat}`;
    const { today } = notices.manner(incoming.site, null);
    if (book.memo(incoming.site, key) === today) return;
    book.write(() => {
      book.setMemo(incoming.site, key, today);
      const { site, chat, thread, message: answers, sender } = incoming;
      notices.put('telegram-cannot-read', { site, chat, thread, answers, language: sender.language });
    });
  };

  /** `/here` in a topic: what goes out unasked is put there from now on; in the general topic, back to there. */
  const chooseTopic = (incoming: Incoming): void => {
    const { site, chat, thread, message: answers, sender } = incoming;
    if (incoming.private) return;
    book.write(() => {
      if (sender.coordinator) book.changeChat(CHANNEL, chat, { topic: thread });
      const notice = sender.coordinator ? 'telegram-topic-chosen' : 'coordinators-only';
      notices.put(notice, { site, chat, thread, answers, language: sender.language });
    });
  };

  const unknownGroup = (one: Message): void => {
    const speaker = speakerOf(one);
    const word = claimedWord(textOf(one), parts.me().username);
    if (word !== null && speaker.kind !== 'nobody' && claim.matches(word)) {
      letIn(one);
      return;
    }
    if (speaker.kind === 'nobody' && !one.new_chat_members) return;
    if (!moving.possible(one)) {
      stranger(one);
      return;
    }
    moving.keep(one);
    void findOld(one);
  };

  const findOld = async (one: Message): Promise<void> => {
    const chat = String(one.chat.id);
    const found = await moving.ask(parts.api, chat, parts.signal);
    if (parts.signal.aborted || book.chat(CHANNEL, chat)) return;
    if (typeof found === 'object') {
      moved(found.from, chat);
      return;
    }
    if (found === 'no') moving.take(chat);
    stranger(one);
  };

  const stranger = (one: Message): void => {
    const speaker = speakerOf(one);
    const language = speaker.kind === 'person' ? languageOf(speaker.user.language_code) : null;
    const text = notices.text('telegram-not-known', parts.site, language);
    void strangers.tell(String(one.chat.id), text, threadOf(one));
  };

  const letIn = (one: Message): void => {
    const chat = String(one.chat.id);
    const speaker = speakerOf(one);
    book.write(() => {
      claim.close(chat);
      const added = book.addChat(parts.site, CHANNEL, chat, 'group');
      if (speaker.kind === 'person') {
        const { user } = speaker;
        const person = book.person(parts.site, CHANNEL, String(user.id), nameOf(user));
        book.changePerson(person.id, { coordinator: true });
      }
      const answers = String(one.message_id);
      const name = { text: book.siteById(parts.site).site.name };
      notices.put(
        'telegram-let-in',
        { site: parts.site, chat, thread: threadOf(one), answers },
        { site: name },
      );
      return added;
    });
    log.info('a group was let in');
    parts.arrived(book.chat(CHANNEL, chat)!);
  };

  const moved = (from: string, to: string): void => {
    const chat = book.moveChat(CHANNEL, from, to);
    if (!chat) return;
    log.info('a group has moved to its new id');
    for (const one of moving.take(to)) message(one);
    parts.arrived(chat);
  };

  const directMessage = (one: Message): void => {
    const speaker = speakerOf(one);
    if (speaker.kind !== 'person') return;
    const user = String(speaker.user.id);
    const { command } = readCommand(textOf(one), parts.me().username);
    const found = direct.siteOf(user);
    if (found.is === 'stranger') {
      stranger(one);
      return;
    }
    if (found.is === 'site' && command !== 'site') {
      const known = book.chat(CHANNEL, user);
      if (!known?.active || known.site !== found.site) {
        book.addChat(found.site, CHANNEL, user, 'direct');
        parts.arrived(book.chat(CHANNEL, user)!);
      }
      take(one, found.site);
      return;
    }
    const among = book.sitesOfPerson(CHANNEL, user);
    if (command === 'site') void askSite(user, among);
    else if (direct.keep(user, among, one)) void askSite(user, among);
  };

  const askSite = async (user: string, among: number[]): Promise<void> => {
    const text = notices.text('telegram-which-site', among[0]!, null);
    const inline_keyboard = among.map((site) => [
      { text: book.siteById(site).site.name.slice(0, 60), callback_data: `site:${site}` },
    ]);
    try {
      await parts.api.sendMessage(user, text, { reply_markup: { inline_keyboard } }, parts.signal as never);
    } catch (error) {
      // The message waits in the book; the next one asks again.
      if (!parts.signal.aborted)
        log.warn({ error: kindOf(error) }, 'the question for the site could not be put');
    }
  };

  const pressed = (query: CallbackQuery): void => {
    // Answered first: the button stops turning, and a query that has grown too old is no fault.
    parts.api
      .answerCallbackQuery(query.id, {}, parts.signal as never)
      .catch((error) => log.info({ error: kindOf(error) }, 'a pressed button could not be answered'));
    const chat = String(query.message?.chat.id ?? '');
    const user = String(query.from.id);
    const site = /^site:(\d+)$/.exec(query.data ?? '');
    if (site && chat === user) {
      for (const one of direct.choose(user, Number(site[1])) ?? []) directMessage(one);
      return;
    }
    const found = /^(\d+):(\d+)$/.exec(query.data ?? '');
    const row = found ? book.outgoing(Number(found[1])) : null;
    if (!found || !row || row.channel !== CHANNEL || !mayPress(row.site, row.chat, chat, row.private)) return;
    const person = book.person(row.site, CHANNEL, user, nameOf(query.from));
    const incoming: Incoming = {
      site: row.site,
      channel: CHANNEL,
      chat,
      thread: row.thread,
      message: `${query.message?.message_id ?? 0}/press/${query.id}`,
      edit: null,
      sentAt: parts.now().toISOString(),
      receivedAt: parts.now().toISOString(),
      sender: {
        id: user,
        name: nameOf(query.from),
        coordinator: person.coordinator,
        language: person.language,
      },
      private: chat === user,
      text: '',
      pictures: [],
      replyTo: { outgoing: row.id },
      choose: { outgoing: row.id, index: Number(found[2]) },
    };
    albums.finishBefore(incoming, undefined);
    parts.deliver(incoming);
  };

  /** A button counts where its reply went: in that chat, in the chat it became, or in a coordinator's own. */
  const mayPress = (site: number, sentTo: string, chat: string, isPrivate: boolean): boolean =>
    chat === sentTo ||
    book.chat(CHANNEL, sentTo)?.movedTo === chat ||
    (isPrivate && book.people(site).some((person) => book.channelIds(person.id, CHANNEL).includes(chat)));

  const myMember = (change: ChatMemberUpdated): void => {
    const chat = String(change.chat.id);
    const { status } = change.new_chat_member;
    const known = book.chat(CHANNEL, chat);
    if (status === 'left' || status === 'kicked') {
      if (known) book.changeChat(CHANNEL, chat, { active: false });
      log.info('the bot was taken out of a chat');
      return;
    }
    if (known && !known.movedTo) {
      book.changeChat(CHANNEL, chat, { active: true });
      parts.arrived({ ...known, active: true });
    }
  };

  return { update, moved };
};
