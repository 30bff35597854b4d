import { applyEntry, emptyPicture } from '#core';
import { type BookRecordOf, type Entry, FieldRecord } from '#records';
import { weighed } from './nets.ts';
import type { Book } from './ports.ts';
import { type Say, say } from './say.ts';

/** A line of the book as it is shown outside: with its net weight or estimate worked out, and who logged it. */
export type LineSeen = {
  entry: number;
  when: string;
  localDate: string;
  received: string;
  by: string | null;
  record: Entry['record'];
  netKg: number | null;
  estimatedKg: number | null;
  factor: number | null;
  typed: string | null;
  assumed: string[];
  voidedBy: number | null;
  held: false | { why: string; choices: { say: string; record: unknown }[] };
  pictures: number;
};

/**
 * Folds the book once for the tares in force, then shows one line after another; `numbered` says whose line it is
 * where the name was forgotten.
 */
export function lineSeen(
  book: Book,
  siteId: number,
  numbered: (who: Say) => string = () => '',
): (entry: Entry) => LineSeen {
  let picture = emptyPicture(book.siteById(siteId).site);
  for (const entry of book.entriesFrom(siteId, '')) picture = applyEntry(picture, entry);
  const names = new Map(
    book
      .people(siteId)
      .map(({ id, name }) => [id, name || numbered(say('person-numbered', { number: { count: id } }))]),
  );
  return (entry) => {
    const weight = weightOf(picture, entry);
    return {
      entry: entry.number,
      when: entry.happenedAt,
      localDate: entry.localDate,
      received: entry.receivedAt,
      by: entry.person === null ? null : (names.get(entry.person) ?? null),
      record: entry.record,
      netKg: weight.netKg,
      estimatedKg: weight.estimatedKg,
      factor: weight.factor,
      typed: entry.typed,
      assumed: entry.assumed,
      voidedBy: entry.voidedBy,
      held: entry.held ? { why: entry.held.why, choices: entry.held.choices } : false,
      pictures: entry.pictures,
    };
  };
}

const NOTHING = { netKg: null, estimatedKg: null, factor: null };

/** Weights of the kinds that have one; held lines have none. */
function weightOf(picture: Parameters<typeof weighed>[0], entry: Entry) {
  if (entry.held) return NOTHING;
  if (entry.record.kind === 'weigh-in') {
    const weight = weighed(picture, entry);
    if (weight.is === 'net') return { ...NOTHING, netKg: weight.netKg };
    if (weight.is === 'pending') return NOTHING;
    const { estimate } = weight;
    return { netKg: null, estimatedKg: estimate?.estimatedKg ?? null, factor: estimate?.factor ?? null };
  }
  const record = FieldRecord.safeParse(entry.record);
  const kg = record.success ? (record.data as BookRecordOf<'removal'>).kg : null;
  return kg == null ? NOTHING : { ...NOTHING, netKg: kg };
}
