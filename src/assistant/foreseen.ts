import type { Picture } from '#core';
import type { BookRecordOf, Entry, NewEntry } from '#records';
import type { Book } from './ports.ts';

/** A day of rain, frost, wind or heat that a forecast speaks of. */
export type Foreseen = Pick<BookRecordOf<'weather'>, 'expects'> & { for: string; mm: number | null };

/** The lines that stand for a forecast, by `rain 2026-11-25`. */
type Standing = Record<string, number>;

const MEMO = 'foreseen';

/**
 * Brings the book in line with a forecast: what is new is written, by nobody, and what is no longer expected is taken
 * back. What somebody typed already is not written again, nor what somebody took back.
 */
export function writeForeseen(parts: {
  book: Book;
  siteId: number;
  picture: Picture;
  today: string;
  foreseen: readonly Foreseen[];
  now: string;
}): { entries: Entry[]; voided: number[] } {
  const { book, siteId, picture, today, foreseen, now } = parts;
  const standing: Standing = {};
  for (const [key, number] of Object.entries(book.memo<Standing>(siteId, MEMO) ?? {})) {
    // Days gone by are left as they are.
    if (key.slice(-10) >= today) standing[key] = number;
  }
  const line = (record: NewEntry['record'], voids: number[]): NewEntry => ({
    happenedAt: now,
    localDate: today,
    receivedAt: now,
    person: null,
    record,
    typed: null,
    assumed: ['forecast'],
    held: null,
    voids,
  });
  const typed = new Set(
    picture.weather.filter(({ observed }) => !observed).map((each) => `${each.expects} ${each.for}`),
  );
  const entries: Entry[] = [];
  const voided: number[] = [];
  const wanted = new Set(foreseen.map((each) => `${each.expects} ${each.for}`));
  for (const [key, number] of Object.entries(standing)) {
    if (wanted.has(key) || book.entry(siteId, number)?.voidedBy !== null) continue;
    entries.push(
      ...book.append(siteId, [line({ kind: 'void', voids: number, why: 'dropped' }, [number])], null),
    );
    voided.push(number);
    delete standing[key];
  }
  for (const { expects, for: when, mm } of foreseen) {
    const key = `${expects} ${when}`;
    if (standing[key] !== undefined || typed.has(key)) continue;
    const [entry] = book.append(
      siteId,
      [line({ kind: 'weather', expects, when, ...(mm === null ? {} : { mm }) }, [])],
      null,
    );
    standing[key] = entry!.number;
    entries.push(entry!);
  }
  book.setMemo(siteId, MEMO, standing);
  return { entries, voided };
}
