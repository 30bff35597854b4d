import type { Message as ApiMessage, Update as ApiUpdate, User as ApiUser, BotCommand } from 'grammy/types';

export type User = ApiUser;
export type Update = ApiUpdate;
export type Message = ApiMessage;

export type Chat = {
  id: number;
  type: 'private' | 'group' | 'supergroup' | 'channel';
  title?: string;
  is_forum?: true;
  first_name?: string;
};

/** What a bot did: the call, its fields, and the message it became. */
export type Sent = {
  method: string;
  chat: number;
  text: string;
  payload: Record<string, unknown>;
  message: Message;
  file: { name: string; bytes: Buffer } | null;
};

export type Member = {
  user: User;
  status: 'creator' | 'administrator' | 'member' | 'left' | 'kicked';
  anonymous?: true;
};

export type World = {
  bot: User;
  token: string;
  canReadAll: boolean;
  chats: Map<number, Chat>;
  members: Map<number, Map<number, Member>>;
  topics: Map<number, Map<number, Message>>;
  messages: Map<string, Message>;
  lastMessageId: Map<number, number>;
  movedTo: Map<number, number>;
  kickedFrom: Set<number>;
  /** People who have pressed Start; only they can be written to. */
  started: Set<number>;
  sent: Sent[];
  answered: { id: string; text: string | null }[];
  openQueries: Set<string>;
  commands: Map<string, BotCommand[]>;
  webhook: { url: string; secret: string | null } | null;
  files: Map<string, Buffer>;
  calls: { method: string; payload: Record<string, unknown> }[];
};

export const ANONYMOUS_ADMIN: User = {
  id: 1087968824,
  is_bot: true,
  first_name: 'Group',
  username: 'GroupAnonymousBot',
};
export const CHANNEL_FORWARDER: User = { id: 777000, is_bot: false, first_name: 'Telegram' };

export const emptyWorld = (token: string, canReadAll: boolean): World => ({
  bot: { id: Number(token.split(':')[0]), is_bot: true, first_name: 'Heap', username: 'heap_test_bot' },
  token,
  canReadAll,
  chats: new Map(),
  members: new Map(),
  topics: new Map(),
  messages: new Map(),
  lastMessageId: new Map(),
  movedTo: new Map(),
  kickedFrom: new Set(),
  started: new Set(),
  sent: [],
  answered: [],
  openQueries: new Set(),
  commands: new Map(),
  webhook: null,
  files: new Map(),
  calls: [],
});

export const messageKey = (chat: number, id: number): string => `${chat}/${id}`;

export const nextMessageId = (world: World, chat: number): number => {
  // Each chat counts for itself, and starts elsewhere: an id alone never says which message is meant.
  const next = (world.lastMessageId.get(chat) ?? Math.abs(chat) % 50) + 1;
  world.lastMessageId.set(chat, next);
  return next;
};

export const keepMessage = (world: World, message: Message): Message => {
  world.messages.set(messageKey(message.chat.id, message.message_id), message);
  return message;
};
