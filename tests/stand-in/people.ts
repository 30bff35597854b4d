import { randomBytes } from 'node:crypto';
import type { InlineKeyboardButton, MessageEntity } from 'grammy/types';
import type { News } from './updates.ts';
import {
  ANONYMOUS_ADMIN,
  CHANNEL_FORWARDER,
  type Chat,
  keepMessage,
  type Member,
  type Message,
  messageKey,
  nextMessageId,
  type Update,
  type User,
  type World,
} from './world.ts';

type SayOptions = { replyTo?: Message; thread?: number; date?: Date };
type PhotoOptions = SayOptions & { caption?: string; album?: string };

/** What people in the chats do. Each act becomes the update that the real server would send for it. */
export const people = (world: World, push: (news: News) => Update | null) => {
  let lastUser = 1000;
  let lastChat = 100;

  const commandEntities = (text: string): MessageEntity[] | undefined => {
    const found = /^\/[a-zA-Z0-9_]{1,32}(?:@\w+)?/.exec(text);
    return found ? [{ type: 'bot_command', offset: 0, length: found[0].length }] : undefined;
  };
  const base = (chat: Chat, from: User | null, options: SayOptions): Partial<Message> => {
    const topic = options.thread === undefined ? undefined : world.topics.get(chat.id)?.get(options.thread);
    const answered = options.replyTo ?? topic;
    return {
      message_id: nextMessageId(world, chat.id),
      ...(from ? { from } : {}),
      chat,
      date: Math.floor((options.date ?? new Date()).getTime() / 1000),
      ...(topic ? { message_thread_id: options.thread, is_topic_message: true } : {}),
      // In a supergroup without topics an answer carries a thread as well, and it is no topic.
      ...(!topic && options.replyTo && chat.type === 'supergroup'
        ? { message_thread_id: options.replyTo.message_id }
        : {}),
      ...(answered ? { reply_to_message: answered } : {}),
    } as Partial<Message>;
  };
  const hears = (message: Message): boolean => {
    if (message.chat.type === 'private' || world.canReadAll) return true;
    const command = message.entities?.some((entity) => entity.type === 'bot_command' && entity.offset === 0);
    const answersBot = message.reply_to_message?.from?.id === world.bot.id;
    const service = message.text === undefined && message.caption === undefined && !message.photo;
    const status = world.members.get(message.chat.id)?.get(world.bot.id)?.status;
    return Boolean(command) || answersBot || service || status === 'administrator';
  };
  const deliver = (message: Message): Message => {
    keepMessage(world, message);
    if (!world.kickedFrom.has(message.chat.id) && hears(message)) push({ message } as News);
    return message;
  };
  const posted = (
    chat: Chat,
    from: User | null,
    parts: Partial<Message>,
    options: SayOptions = {},
  ): Message => {
    // Whoever writes to the bot has opened a chat with it, whatever it was that they sent.
    if (chat.type === 'private') world.started.add(chat.id);
    return deliver({ ...base(chat, from, options), ...parts } as Message);
  };
  const member = (chat: Chat, user: User, status: Member['status'], more: Partial<Member> = {}): void => {
    const all = world.members.get(chat.id) ?? new Map<number, Member>();
    all.set(user.id, { user, status, ...more });
    world.members.set(chat.id, all);
  };
  const myMember = (chat: Chat, by: User, was: Member['status'], is: Member['status']): void => {
    member(chat, world.bot, is);
    push({
      my_chat_member: {
        chat,
        from: by,
        date: Math.floor(Date.now() / 1000),
        old_chat_member: { user: world.bot, status: was },
        new_chat_member: { user: world.bot, status: is, ...(is === 'kicked' ? { until_date: 0 } : {}) },
      },
    } as News);
  };
  const fileId = (): string => {
    const id = `file-${randomBytes(6).toString('hex')}`;
    world.files.set(id, Buffer.from('picture'));
    return id;
  };

  const someone = (first_name: string, more: Partial<User> = {}): User => ({
    id: ++lastUser,
    is_bot: false,
    first_name,
    language_code: 'en',
    ...more,
  });

  return {
    someone,
    /** A group in which the bot is a plain member. */
    group: (title: string, by: User, options: { forum?: true; type?: 'group' | 'supergroup' } = {}): Chat => {
      const type = options.forum ? 'supergroup' : (options.type ?? 'group');
      const id = type === 'group' ? -++lastChat : -1_000_000_000_000 - ++lastChat;
      const chat: Chat = { id, type, title, ...(options.forum ? { is_forum: true } : {}) };
      world.chats.set(id, chat);
      member(chat, by, 'creator');
      myMember(chat, by, 'left', 'member');
      return chat;
    },
    topic: (chat: Chat, by: User, name: string): number => {
      const message = posted(chat, by, {
        forum_topic_created: { name, icon_color: 7322096 },
      } as Partial<Message>);
      const topics = world.topics.get(chat.id) ?? new Map<number, Message>();
      topics.set(message.message_id, message);
      world.topics.set(chat.id, topics);
      return message.message_id;
    },
    /** The person's own chat with the bot; opened by pressing Start. */
    direct: (user: User): Chat => {
      const chat: Chat = { id: user.id, type: 'private', first_name: user.first_name };
      world.chats.set(chat.id, chat);
      return chat;
    },
    makeAdmin: (chat: Chat, user: User): void => member(chat, user, 'administrator'),

    say: (chat: Chat, from: User, text: string, options: SayOptions = {}): Message => {
      if (chat.type !== 'private' && !world.members.get(chat.id)?.has(from.id)) member(chat, from, 'member');
      return posted(chat, from, { text, entities: commandEntities(text) } as Partial<Message>, options);
    },
    edit: (message: Message, text: string, date = new Date()): Message => {
      const changed = { ...message, edit_date: Math.floor(date.getTime() / 1000) } as Message;
      const edited = (message.photo ? { ...changed, caption: text } : { ...changed, text }) as Message;
      keepMessage(world, edited);
      if (hears(edited)) push({ edited_message: edited } as News);
      return edited;
    },
    press: (message: Message, label: string, from: User, data?: string): string => {
      const now = world.messages.get(messageKey(message.chat.id, message.message_id)) ?? message;
      const buttons = (now.reply_markup as { inline_keyboard: InlineKeyboardButton[][] } | undefined)
        ?.inline_keyboard;
      const button = buttons?.flat().find((one) => one.text === label) as
        | { callback_data?: string }
        | undefined;
      if (!button && data === undefined) throw new Error(`there is no button ${label}`);
      const id = randomBytes(8).toString('hex');
      world.openQueries.add(id);
      push({
        callback_query: {
          id,
          from,
          chat_instance: 'x',
          message: now,
          data: data ?? button?.callback_data,
        },
      } as News);
      return id;
    },
    photo: (chat: Chat, from: User, options: PhotoOptions = {}): Message => {
      const id = fileId();
      const small = { file_id: `${id}-s`, file_unique_id: `${id}-s`, width: 90, height: 60 };
      const large = { file_id: id, file_unique_id: id, width: 1280, height: 960 };
      const parts = {
        photo: [small, large],
        ...(options.caption ? { caption: options.caption } : {}),
        ...(options.album ? { media_group_id: options.album } : {}),
      } as Partial<Message>;
      return posted(chat, from, parts, options);
    },
    sticker: (chat: Chat, from: User): Message =>
      posted(chat, from, {
        sticker: {
          file_id: fileId(),
          file_unique_id: 's',
          type: 'regular',
          width: 9,
          height: 9,
          is_animated: false,
          is_video: false,
        },
      } as Partial<Message>),
    voice: (chat: Chat, from: User): Message =>
      posted(chat, from, {
        voice: { file_id: fileId(), file_unique_id: 'v', duration: 3 },
      } as Partial<Message>),
    document: (chat: Chat, from: User, options: { caption?: string } = {}): Message =>
      posted(chat, from, {
        document: { file_id: fileId(), file_unique_id: 'd', file_name: 'log.csv' },
        ...options,
      } as Partial<Message>),
    contact: (chat: Chat, from: User): Message =>
      posted(chat, from, { contact: { phone_number: '+1555', first_name: 'Sam' } } as Partial<Message>),
    location: (chat: Chat, from: User, latitude: number, longitude: number): Message =>
      posted(chat, from, { location: { latitude, longitude } } as Partial<Message>),

    /** An admin who writes as the group itself. */
    anonymous: (chat: Chat, text: string, options: SayOptions = {}): Message =>
      posted(
        chat,
        ANONYMOUS_ADMIN,
        { text, entities: commandEntities(text), sender_chat: chat } as Partial<Message>,
        options,
      ),
    channel: (title: string): Chat => {
      const chat: Chat = { id: -1_000_000_000_000 - ++lastChat, type: 'channel', title };
      world.chats.set(chat.id, chat);
      return chat;
    },
    channelPost: (channel: Chat, text: string): Message => {
      const message = keepMessage(world, {
        ...base(channel, null, {}),
        sender_chat: channel,
        text,
      } as unknown as Message);
      push({ channel_post: message } as unknown as News);
      return message;
    },
    /** What a linked channel posts arrives in the group by itself. */
    fromLinkedChannel: (chat: Chat, channel: Chat, text: string): Message =>
      posted(chat, CHANNEL_FORWARDER, {
        text,
        sender_chat: channel,
        is_automatic_forward: true,
      } as Partial<Message>),
    /** A message that a person or another channel sends in the name of a channel. */
    asChannel: (chat: Chat, channel: Chat, text: string): Message =>
      posted(chat, { id: 136817688, is_bot: true, first_name: 'Channel', username: 'Channel_Bot' }, {
        text,
        sender_chat: channel,
      } as Partial<Message>),

    /** The group becomes a supergroup: a new id, and message numbers that begin anew. */
    migrate: (chat: Chat, by: User, options: { notice?: 'now' | 'later' | 'none' } = {}) => {
      const next: Chat = { id: -1_000_000_000_000 - ++lastChat, type: 'supergroup', title: chat.title };
      world.chats.set(next.id, next);
      world.members.set(next.id, new Map(world.members.get(chat.id)));
      world.movedTo.set(chat.id, next.id);
      const notice = (): void => {
        posted(chat, by, { migrate_to_chat_id: next.id } as Partial<Message>);
        posted(next, by, { migrate_from_chat_id: chat.id } as Partial<Message>);
      };
      if ((options.notice ?? 'now') === 'now') notice();
      return { chat: next, notice };
    },
    kick: (chat: Chat, by: User): void => {
      myMember(chat, by, 'member', chat.type === 'private' ? 'kicked' : 'kicked');
      world.kickedFrom.add(chat.id);
    },
    letBackIn: (chat: Chat, by: User): void => {
      world.kickedFrom.delete(chat.id);
      myMember(chat, by, 'kicked', 'member');
    },
  };
};
