import { isFeed, type LoadWeight, litresOf, localTimeOf, type Picture, weighed } from '#core';
import type { BookKind, BookRecord, BookRecordOf, Entry } from '#records';

/** A line of the book as the sheets see it: who, when on the site's clock, and what it weighs. */
export type SeenLine<K extends BookKind = BookKind> = {
  entry: Entry;
  record: BookRecordOf<K>;
  date: string;
  /** Empty where only the day was said. */
  clock: string;
  by: string;
  weight: LoadWeight | null;
  /** What its container holds when full; null where nothing was counted or nobody has said. */
  containerLitres: number | null;
};

/** Topics of which no words go out: what happened to somebody's body is theirs. */
const PRIVATE_TOPICS = new Set(['injury', 'sharps']);

/** A record without anybody's words. */
function wordless<R extends Record<string, unknown> & { kind: string }>(record: R): R {
  const { note: _, said: __, ...rest } = record;
  return rest as R;
}

/**
 * A line without the words that may tell of somebody's health; any other as it is. `medical` are the numbers of the
 * lines that do: what ended one tells of it too. The doubt of a held line and its choices hold the words once more.
 */
export function withoutPrivate(entry: Entry, medical: ReadonlySet<number>): Entry {
  const ends = entry.record.kind === 'resolved' ? Number(entry.record.entry) : 0;
  if (!isMedical(entry) && !medical.has(ends)) return entry;
  const { held } = entry;
  return {
    ...entry,
    record: wordless(entry.record),
    typed: null,
    held: held && {
      why: held.why,
      choices: [],
      doubt: { why: held.doubt.why, choices: [], record: wordless(held.doubt.record) },
    },
  };
}

export const isMedical = (entry: Pick<Entry, 'record'>): boolean =>
  PRIVATE_TOPICS.has(String((entry.record as { topic?: unknown }).topic));

/** Makes lines seen from entries. */
export function lineSeer(picture: Picture, names: ReadonlyMap<number, string>, zone: string) {
  return (entry: Entry): SeenLine => {
    // A held record may be anything: its sheet shows it as text, and asks no field of it.
    if (entry.held)
      return { ...common(entry), record: entry.record as BookRecord, weight: null, containerLitres: null };
    // The book has held it against its schema on the way out.
    const record = entry.record as BookRecord;
    const weight =
      record.kind === 'weigh-in'
        ? weighed(picture, record, {
            localDate: entry.localDate,
            entry: entry.number,
            at: entry.happenedAt,
          })
        : null;
    const { container, label } = record as { container?: string | null; label?: string | null };
    const containerLitres = container ? litresOf(picture, container, label, entry.localDate) : null;
    return { ...common(entry), record, weight, containerLitres };
  };

  function common(entry: Entry) {
    const when = (entry.record as { when?: string | null }).when;
    const dayAlone = typeof when === 'string' && when.length === 10;
    return {
      entry,
      date: entry.localDate,
      clock: dayAlone ? '' : localTimeOf(entry.happenedAt, zone).slice(11),
      by: nameOf(names, entry.person),
    };
  }
}

export const nameOf = (names: ReadonlyMap<number, string>, person: number | null): string =>
  person === null ? '' : names.get(person) || `person ${person}`;

export const isIntake = ({ record }: SeenLine): boolean =>
  record.kind === 'weigh-in' && isFeed(record.material);

/** A record in few words, for lists of lines of every kind: its fields but the words said. */
export function inFewWords(record: Record<string, unknown> & { kind: string }): string {
  const { kind, said: _, when: __, ...fields } = record;
  const parts = Object.entries(fields)
    .filter(([, value]) => value !== null && value !== undefined)
    .map(([name, value]) => `${name} ${typeof value === 'object' ? JSON.stringify(value) : String(value)}`);
  return [kind, ...parts].join(', ');
}
