import type { Update } from 'grammy/types';
import { z } from 'zod';

// Only what is read is looked at: a new field of the messenger must never shut anybody out. A field that is there
// with another type is no update of the messenger's, whoever sent it.

const Id = z.int();
/** A moment of the messenger, in seconds, that a date can hold. */
const Seconds = z.int().min(0).max(253_402_300_799);

const User = z.looseObject({
  id: Id,
  is_bot: z.boolean(),
  first_name: z.string(),
  last_name: z.string().optional(),
  language_code: z.string().optional(),
});
const Chat = z.looseObject({
  id: Id,
  type: z.enum(['private', 'group', 'supergroup', 'channel']),
});
const Thing = z.looseObject({}).optional();

const message = {
  message_id: Id,
  date: Seconds,
  chat: Chat,
  from: User.optional(),
  sender_chat: z.looseObject({ id: Id }).optional(),
  edit_date: Seconds.optional(),
  text: z.string().optional(),
  caption: z.string().optional(),
  photo: z.array(z.looseObject({ file_id: z.string() })).optional(),
  location: z
    .looseObject({ latitude: z.number().min(-90).max(90), longitude: z.number().min(-180).max(180) })
    .optional(),
  media_group_id: z.string().optional(),
  message_thread_id: Id.optional(),
  is_topic_message: z.boolean().optional(),
  is_automatic_forward: z.boolean().optional(),
  migrate_to_chat_id: Id.optional(),
  migrate_from_chat_id: Id.optional(),
  new_chat_members: z.array(User).optional(),
  voice: Thing,
  audio: Thing,
  video_note: Thing,
  sticker: Thing,
  contact: Thing,
  video: Thing,
  document: Thing,
};
/** Of a message that is answered only who wrote it, its number and its words are looked at. */
const Answered = z.looseObject({
  message_id: Id,
  from: z.looseObject({ id: Id }).optional(),
  text: z.string().optional(),
  caption: z.string().optional(),
  forum_topic_created: Thing,
});
const Message = z.looseObject({ ...message, reply_to_message: Answered.optional() });

const Pressed = z.looseObject({
  id: z.string().min(1),
  from: User,
  data: z.string().optional(),
  message: z.looseObject({ message_id: Id, chat: z.looseObject({ id: Id }) }).optional(),
});
const MyMember = z.looseObject({
  chat: Chat,
  new_chat_member: z.looseObject({ status: z.string() }),
});

const UpdateShape = z.looseObject({
  update_id: z.int(),
  message: Message.optional(),
  edited_message: Message.optional(),
  callback_query: Pressed.optional(),
  my_chat_member: MyMember.optional(),
});

const Numbered = z.looseObject({ update_id: z.int() });

/** Of what a call for updates gave, those that bear a number: without one, nothing can be confirmed. */
export const numberedOf = (result: unknown): { updates: Update[]; without: boolean } => {
  const all = Array.isArray(result) ? (result as unknown[]) : [];
  const updates = all.filter((one) => Numbered.safeParse(one).success) as Update[];
  return { updates, without: !Array.isArray(result) || updates.length < all.length };
};

/** An update that can be handled, or the names of the fields that are not as they should be: never what they hold. */
export const updateIn = (raw: unknown): { update: Update } | { wrong: string[] } => {
  const read = UpdateShape.safeParse(raw);
  // What is handed on is what came: the shape only looks, and the fields it does not know stay.
  if (read.success) return { update: raw as Update };
  return { wrong: read.error.issues.map(({ path }) => path.join('.')).slice(0, 5) };
};
