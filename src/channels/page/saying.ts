import { z } from 'zod';
import type { Incoming, Words } from '#assistant';
import { Language } from '#records';
import { volunteer } from './texts.ts';
import { HIDING, type Said } from './wire.ts';

export const CHANNEL = 'page';

const LONGEST_TEXT = 4000;
const LONGEST_NAME = 40;
const OLDEST_MS = 14 * 86_400_000;

const Shape = z.object({
  key: z.string().regex(/^[\w-]{8,64}$/),
  text: z.string().max(LONGEST_TEXT),
  typedAt: z.number().finite(),
  now: z.number().finite(),
  name: z.string().max(200),
  language: Language,
  choose: z.object({ row: z.number().int().positive(), index: z.number().int().min(0).max(100) }).optional(),
  ask: z.enum(['today', 'week']).optional(),
});

export function readSaid(body: string): Said | 'not-readable' | 'too-old' {
  let raw: unknown;
  try {
    raw = JSON.parse(body);
  } catch {
    return 'not-readable';
  }
  const read = Shape.safeParse(raw);
  if (!read.success) return 'not-readable';
  if (read.data.text.trim() === '' && !read.data.choose && !read.data.ask) return 'not-readable';
  return read.data.now - read.data.typedAt > OLDEST_MS ? 'too-old' : read.data;
}

/** What a phone sent as the assistant takes it: dated when typed, by how long ago that was. */
export function toIncoming(
  said: Said,
  from: { site: number; phone: string; now: string; words: Words },
): Incoming {
  // A phone's clock may be wrong by hours; how long it waited is right all the same.
  const ageMs = Math.min(OLDEST_MS, Math.max(0, said.now - said.typedAt));
  return {
    site: from.site,
    channel: CHANNEL,
    chat: from.phone,
    thread: null,
    message: said.key,
    edit: null,
    sentAt: new Date(Date.parse(from.now) - ageMs).toISOString(),
    receivedAt: from.now,
    sender: {
      id: from.phone,
      name: cleanName(said.name) || volunteer(from.words, said.language),
      coordinator: false,
      language: said.language,
    },
    private: false,
    guest: true,
    text: said.text.replaceAll(HIDING, ''),
    pictures: [],
    replyTo: null,
    choose: said.choose ? { outgoing: said.choose.row, index: said.choose.index } : null,
    ...(said.ask ? { ask: said.ask } : {}),
  };
}

const cleanName = (name: string): string =>
  name.replaceAll(HIDING, '').replaceAll(/\s+/g, ' ').trim().slice(0, LONGEST_NAME);
