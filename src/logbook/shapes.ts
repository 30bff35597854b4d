import { z } from 'zod';
import { BookRecord, Doubt, DoubtChoice, type Entry, HeldRecord, Language } from '#records';

/** Why a line is held, as it goes in and comes back. */
const Held = z.object({ why: Doubt.shape.why, choices: z.array(DoubtChoice), doubt: Doubt });

type Where = { site: number; number: number };

/** A record on its way in: whole where it counts; a held one may be incomplete or impossible. */
export const recordInto = (record: Entry['record'], held: boolean): Entry['record'] => {
  const read = (held ? HeldRecord : BookRecord).safeParse(record);
  if (!read.success) throw new RangeError(`record ${record.kind}: ${z.prettifyError(read.error)}`);
  if ('text' in read.data && read.data.text === '') throw new RangeError('record note: it has no text');
  return read.data;
};

export const heldInto = (held: NonNullable<Entry['held']>): NonNullable<Entry['held']> => {
  const read = Held.safeParse(held);
  if (!read.success) throw new RangeError(`held: ${z.prettifyError(read.error)}`);
  return read.data;
};

/** A note whose words were forgotten is still a line of the book: one that says nothing. */
const withText = (record: unknown): unknown => {
  const note = record as { kind?: unknown; text?: unknown };
  return note.kind === 'note' && note.text === undefined ? { ...note, text: '' } : record;
};

/** A record on its way out: what no longer fits its schema was changed behind our back, or by a newer program. */
export const recordOf = (record: unknown, held: boolean, where: Where): Entry['record'] => {
  const read = (held ? HeldRecord : BookRecord).safeParse(withText(record));
  if (!read.success)
    throw new RangeError(`site ${where.site} line #${where.number}: ${z.prettifyError(read.error)}`);
  return read.data;
};

export const heldOf = (held: unknown, where: Where): NonNullable<Entry['held']> => {
  const read = Held.safeParse(held);
  if (!read.success)
    throw new RangeError(`site ${where.site} line #${where.number} held: ${z.prettifyError(read.error)}`);
  return read.data;
};

const Act = z.discriminatedUnion('do', [
  z.object({ do: z.literal('answer'), entry: z.number(), choice: z.number() }),
  z.object({ do: z.literal('drop'), entry: z.number() }),
  z.object({ do: z.literal('undo'), entries: z.array(z.number()) }),
  z.object({ do: z.literal('ask'), request: z.looseObject({ request: z.string() }) }),
  z.object({ do: z.literal('start-pile'), entry: z.number(), place: z.string() }),
  z.object({ do: z.literal('none') }),
]);
export const Choices = z.array(z.object({ label: z.string(), act: Act }));
export const PictureShown = z.object({ draw: z.string(), alt: z.string(), data: z.unknown() });
const span = { from: z.iso.date(), to: z.iso.date(), language: Language };
const Paper = z.discriminatedUnion('paper', [
  z.object({ paper: z.literal('export'), format: z.enum(['xlsx', 'csv', 'json']), ...span }),
  z.object({ paper: z.literal('report'), ...span }),
]);
export const FileSent = z.union([
  z.object({ name: z.string(), text: z.string() }),
  z.object({ name: z.string(), paper: Paper, failed: z.string() }),
]);
export const About = z.enum(['week', 'morning', 'reminder', 'alarm']).nullable();
