import { randomBytes } from 'node:crypto';
import type { BotCommand, InlineKeyboardButton, MessageEntity } from 'grammy/types';
import type { Body, Upload } from './body.ts';
import { type Chat, keepMessage, type Message, messageKey, nextMessageId, type World } from './world.ts';

/** What the server refuses, as the real one words it. */
export type Refusal = { code: number; description: string; parameters?: Record<string, unknown> };
export const isRefusal = (value: unknown): value is Refusal =>
  typeof value === 'object' && value !== null && 'description' in value && 'code' in value;

const bad = (what: string, parameters?: Record<string, unknown>): Refusal => ({
  code: 400,
  description: `Bad Request: ${what}`,
  parameters,
});
const forbidden = (what: string): Refusal => ({ code: 403, description: `Forbidden: ${what}` });

const chatFor = (world: World, fields: Record<string, unknown>): Chat | Refusal => {
  const id = Number(fields.chat_id);
  const chat = world.chats.get(id);
  if (!chat) return bad('chat not found');
  const moved = world.movedTo.get(id);
  if (moved !== undefined)
    return bad('group chat was upgraded to a supergroup chat', { migrate_to_chat_id: moved });
  if (world.kickedFrom.has(id))
    return forbidden(
      chat.type === 'private' ? 'bot was blocked by the user' : `bot was kicked from the ${chat.type} chat`,
    );
  if (chat.type === 'private' && !world.started.has(id))
    return forbidden("bot can't initiate conversation with a user");
  return chat;
};

const checkMarkup = (markup: unknown): Refusal | null => {
  const rows = (markup as { inline_keyboard?: InlineKeyboardButton[][] } | undefined)?.inline_keyboard ?? [];
  for (const button of rows.flat()) {
    if (!button.text) return bad('can\'t parse inline keyboard button: Field "text" must be non-empty');
    const bytes = 'callback_data' in button ? Buffer.byteLength(button.callback_data ?? '') : 1;
    if (bytes < 1 || bytes > 64) return bad('BUTTON_DATA_INVALID');
  }
  return null;
};

const checkText = (
  text: string,
  fields: Record<string, unknown>,
  limit: number,
  what: string,
): Refusal | null => {
  if (text.length > limit) return bad(`${what} is too long`);
  if (
    fields.parse_mode === 'HTML' &&
    /<(?!\/?(?:b|i|u|s|a|code|pre)\b[^<>]*>)|&(?!(?:lt|gt|amp|quot);)/.test(text)
  )
    return bad("can't parse entities: Unsupported start tag");
  for (const entity of (fields.entities ?? fields.caption_entities ?? []) as MessageEntity[])
    if (entity.offset < 0 || entity.length < 1 || entity.offset + entity.length > text.length)
      return bad('ENTITY_BOUNDS_INVALID');
  return null;
};

const send = (
  world: World,
  method: string,
  { fields }: Body,
  content: { text: string; limit: number; what: string; parts: Partial<Message>; file: Upload | null },
): Message | Refusal => {
  const chat = chatFor(world, fields);
  if (isRefusal(chat)) return chat;
  const wrong =
    checkText(content.text, fields, content.limit, content.what) ?? checkMarkup(fields.reply_markup);
  if (wrong) return wrong;
  const thread = fields.message_thread_id === undefined ? null : Number(fields.message_thread_id);
  if (thread !== null && !world.topics.get(chat.id)?.has(thread)) return bad('message thread not found');
  const reply = fields.reply_parameters as
    | { message_id: number; chat_id?: number; allow_sending_without_reply?: boolean }
    | undefined;
  const answered = reply ? world.messages.get(messageKey(chat.id, Number(reply.message_id))) : undefined;
  if (reply && !answered && !reply.allow_sending_without_reply) return bad('message to be replied not found');
  const message = keepMessage(world, {
    message_id: nextMessageId(world, chat.id),
    from: world.bot,
    chat,
    date: Math.floor(Date.now() / 1000),
    ...content.parts,
    ...(thread !== null ? { message_thread_id: thread, is_topic_message: true } : {}),
    ...(answered ? { reply_to_message: answered } : {}),
    ...(fields.reply_markup ? { reply_markup: fields.reply_markup } : {}),
  } as Message);
  world.sent.push({
    method,
    chat: chat.id,
    text: content.text,
    payload: fields,
    message,
    file: content.file,
  });
  return message;
};

const upload = (world: World, body: Body, field: string): { id: string; file: Upload | null } | Refusal => {
  const given = body.fields[field];
  const attached = typeof given === 'string' && given.startsWith('attach://') ? given.slice(9) : null;
  const file = attached !== null ? body.files[attached] : body.files[field];
  if (file) {
    const id = `file-${randomBytes(6).toString('hex')}`;
    world.files.set(id, file.bytes);
    return { id, file };
  }
  if (typeof given === 'string' && world.files.has(given)) return { id: given, file: null };
  return bad('wrong file identifier/HTTP URL specified');
};

const scopeKey = (fields: Record<string, unknown>): string =>
  JSON.stringify([fields.scope ?? { type: 'default' }, fields.language_code ?? '']);

type Method = (world: World, body: Body) => unknown;

export const methods: Record<string, Method> = {
  getMe: (world) => ({
    ...world.bot,
    can_join_groups: true,
    can_read_all_group_messages: world.canReadAll,
    supports_inline_queries: false,
    can_connect_to_business: false,
    has_main_web_app: false,
  }),

  sendMessage: (world, body) => {
    const text = String(body.fields.text ?? '');
    if (text.trim() === '') return bad('message text is empty');
    const parts = { text, entities: body.fields.entities as MessageEntity[] } as Partial<Message>;
    return send(world, 'sendMessage', body, { text, limit: 4096, what: 'message', parts, file: null });
  },
  sendPhoto: (world, body) => {
    const photo = upload(world, body, 'photo');
    if (isRefusal(photo)) return photo;
    const text = String(body.fields.caption ?? '');
    const parts = {
      caption: text === '' ? undefined : text,
      photo: [{ file_id: photo.id, file_unique_id: photo.id, width: 800, height: 500 }],
    } as Partial<Message>;
    return send(world, 'sendPhoto', body, {
      text,
      limit: 1024,
      what: 'message caption',
      parts,
      file: photo.file,
    });
  },
  sendDocument: (world, body) => {
    const document = upload(world, body, 'document');
    if (isRefusal(document)) return document;
    const text = String(body.fields.caption ?? '');
    const parts = {
      caption: text === '' ? undefined : text,
      document: { file_id: document.id, file_unique_id: document.id, file_name: document.file?.name },
    } as Partial<Message>;
    return send(world, 'sendDocument', body, {
      text,
      limit: 1024,
      what: 'message caption',
      parts,
      file: document.file,
    });
  },

  editMessageText: (world, { fields }) => {
    const old = world.messages.get(messageKey(Number(fields.chat_id), Number(fields.message_id)));
    if (!old || old.from?.id !== world.bot.id) return bad('message to edit not found');
    const text = String(fields.text ?? '');
    const wrong = checkText(text, fields, 4096, 'message') ?? checkMarkup(fields.reply_markup);
    if (wrong) return wrong;
    if (old.text === text && JSON.stringify(old.reply_markup) === JSON.stringify(fields.reply_markup))
      return bad('message is not modified');
    return keepMessage(world, { ...old, text, reply_markup: fields.reply_markup } as Message);
  },
  editMessageReplyMarkup: (world, { fields }) => {
    const old = world.messages.get(messageKey(Number(fields.chat_id), Number(fields.message_id)));
    if (!old || old.from?.id !== world.bot.id) return bad('message to edit not found');
    const wrong = checkMarkup(fields.reply_markup);
    if (wrong) return wrong;
    if (JSON.stringify(old.reply_markup) === JSON.stringify(fields.reply_markup))
      return bad('message is not modified');
    return keepMessage(world, { ...old, reply_markup: fields.reply_markup } as Message);
  },

  answerCallbackQuery: (world, { fields }) => {
    const id = String(fields.callback_query_id);
    if (!world.openQueries.delete(id))
      return bad('query is too old and response timeout expired or query ID is invalid');
    const text = fields.text === undefined ? null : String(fields.text);
    if (text !== null && text.length > 200) return bad('MESSAGE_TOO_LONG');
    world.answered.push({ id, text });
    return true;
  },

  setMyCommands: (world, { fields }) => {
    const commands = (fields.commands ?? []) as BotCommand[];
    if (commands.length > 100) return bad('too many commands');
    for (const { command, description } of commands) {
      if (!/^[a-z0-9_]{1,32}$/.test(command)) return bad('BOT_COMMAND_INVALID');
      if (description.length < 1 || description.length > 256) return bad('BOT_COMMAND_DESCRIPTION_INVALID');
    }
    world.commands.set(scopeKey(fields), commands);
    return true;
  },
  getMyCommands: (world, { fields }) => world.commands.get(scopeKey(fields)) ?? [],
  deleteMyCommands: (world, { fields }) => {
    world.commands.delete(scopeKey(fields));
    return true;
  },

  setWebhook: (world, { fields }) => {
    const url = String(fields.url ?? '');
    world.webhook = url === '' ? null : { url, secret: (fields.secret_token as string | undefined) ?? null };
    return true;
  },
  deleteWebhook: (world) => {
    world.webhook = null;
    return true;
  },

  getChat: (world, { fields }) => chatFor(world, fields),
  getChatMember: (world, { fields }) => {
    const chat = chatFor(world, fields);
    if (isRefusal(chat)) return chat;
    return world.members.get(chat.id)?.get(Number(fields.user_id)) ?? bad('PARTICIPANT_ID_INVALID');
  },
  getChatAdministrators: (world, { fields }) => {
    const chat = chatFor(world, fields);
    if (isRefusal(chat)) return chat;
    const all = [...(world.members.get(chat.id)?.values() ?? [])];
    return all.filter((member) => member.status === 'creator' || member.status === 'administrator');
  },
  leaveChat: (world, { fields }) => {
    world.kickedFrom.add(Number(fields.chat_id));
    return true;
  },
  sendChatAction: (world, { fields }) => {
    const chat = chatFor(world, fields);
    return isRefusal(chat) ? chat : true;
  },
  getFile: (world, { fields }) => {
    const id = String(fields.file_id);
    const bytes = world.files.get(id);
    return bytes
      ? { file_id: id, file_unique_id: id, file_size: bytes.length, file_path: `files/${id}` }
      : bad('invalid file_id');
  },
};
