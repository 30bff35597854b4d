import type { Message, User, UserFromGetMe } from 'grammy/types';
import type { ChannelBook, Incoming, Sender } from '#assistant';
import { readCommand } from './commands.ts';
import { CHANNEL } from './options.ts';

/** Who a message is from, as far as the log book cares. */
export type Speaker = { kind: 'person'; user: User } | { kind: 'anonymous-admin' } | { kind: 'nobody' };

/**
 * Every anonymous admin writes under one and the same account, told apart by the chat in whose name it is: never a
 * person, and an admin only in the group itself. Channels, forwards of a linked channel and other bots log nothing.
 */
export const speakerOf = (message: Message): Speaker => {
  const { from, sender_chat: as, chat } = message;
  if (as)
    return as.id === chat.id && chat.type !== 'channel' ? { kind: 'anonymous-admin' } : { kind: 'nobody' };
  if (!from || from.is_bot || message.is_automatic_forward) return { kind: 'nobody' };
  return { kind: 'person', user: from };
};

export const nameOf = (user: User): string =>
  [user.first_name, user.last_name].filter(Boolean).join(' ').trim();

/** Kinds of message that hold no words for us. */
export const isWordless = (message: Message): boolean =>
  Boolean(
    message.voice ??
      message.audio ??
      message.video_note ??
      message.sticker ??
      message.contact ??
      message.video ??
      message.document,
  ) && (message.caption ?? '') === '';

/** Only a real topic is a thread: an answer in a group without topics carries a thread number too. */
export const threadOf = (message: Message): string | null =>
  message.is_topic_message && message.message_thread_id !== undefined
    ? String(message.message_thread_id)
    : null;

const senderOf = (message: Message, site: number, book: ChannelBook): Sender => {
  const speaker = speakerOf(message);
  if (speaker.kind !== 'person')
    return { id: null, name: '', coordinator: speaker.kind === 'anonymous-admin', language: null };
  const id = String(speaker.user.id);
  const person = book.person(site, CHANNEL, id, nameOf(speaker.user));
  // The app's language says nothing of the crew's: only one that somebody has asked for counts.
  return { id, name: nameOf(speaker.user), coordinator: person.coordinator, language: person.language };
};

const replyOf = (message: Message, me: UserFromGetMe, book: ChannelBook): Incoming['replyTo'] => {
  const answered = message.reply_to_message;
  if (!answered) return null;
  // In a topic the app fills in the message that opened it; nobody meant to answer that.
  const opener = answered.forum_topic_created || answered.message_id === message.message_thread_id;
  if (message.is_topic_message && opener) return null;
  const chat = String(message.chat.id);
  const row = book.outgoingSentAs(CHANNEL, chat, String(answered.message_id));
  if (row) return { outgoing: row.id };
  if (answered.from?.id !== me.id) return { message: String(answered.message_id) };
  // A reply of ours from before the group changed its id: it still says its entry's number.
  const entry = /#(\d+)/.exec(answered.text ?? answered.caption ?? '');
  return entry ? { entry: Number(entry[1]) } : null;
};

/** Two edits can bear the same second: a mark of the text keeps them apart, and a repeat of either the same. */
const editMark = (message: Message, text: string): string | null => {
  if (message.edit_date === undefined) return null;
  let hash = 5381;
  for (let at = 0; at < text.length; at += 1) hash = ((hash * 33) ^ text.charCodeAt(at)) >>> 0;
  return `${message.edit_date}-${hash.toString(36)}`;
};

/** A message of a person (or an anonymous admin) of a site, as the assistant takes it. */
export const incomingOf = (
  message: Message,
  site: number,
  parts: { me: UserFromGetMe; book: ChannelBook; receivedAt: string },
): Incoming => {
  const said = message.text ?? message.caption ?? '';
  return {
    site,
    channel: CHANNEL,
    chat: String(message.chat.id),
    thread: threadOf(message),
    message: String(message.message_id),
    edit: editMark(message, said),
    sentAt: new Date(message.date * 1000).toISOString(),
    receivedAt: parts.receivedAt,
    sender: senderOf(message, site, parts.book),
    private: message.chat.type === 'private',
    text: readCommand(said, parts.me.username).text,
    pictures: message.photo?.length ? [message.photo.at(-1)!.file_id] : [],
    replyTo: replyOf(message, parts.me, parts.book),
    choose: null,
    ...(message.location
      ? { location: { latitude: message.location.latitude, longitude: message.location.longitude } }
      : {}),
  };
};
