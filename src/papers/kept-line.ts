import { z } from 'zod';
import { canonicalOf } from './canonical-record.ts';

/** A line of the book as a file carries it whole, so that it can be read back entry for entry. */
export const KeptLine = z.object({
  line: z.number().int().positive(),
  happenedAt: z.iso.datetime(),
  localDate: z.iso.date(),
  receivedAt: z.iso.datetime(),
  by: z.string().nullable(),
  record: z.looseObject({ kind: z.string() }),
  typed: z.string().nullable(),
  assumed: z.array(z.string()),
  held: z.looseObject({ why: z.string() }).nullable(),
  voidedBy: z.number().int().positive().nullable(),
  pictures: z.number().int().nonnegative(),
});
export type KeptLine = z.infer<typeof KeptLine>;

export const KEPT_FORMAT = 'heaphand log book';
export const KEPT_SHEET = 'Book lines';

/** What makes two lines the same one: the day and what they say, whoever wrote them down and whenever. */
export const contentKey = (localDate: string, record: Record<string, unknown>): string =>
  `${localDate} ${canonicalOf(record)}`;
