import type { Picture } from '#core';
import type { BookRecordOf, Entry, NewEntry } from '#records';
import type { Book } from './ports.ts';

/** A day of rain, frost, wind or heat that a forecast speaks of. */
type Foreseen = Pick<BookRecordOf<'weather'>, 'expects' | 'windFrom'> & {
  for: string;
  mm: number | null;
};

/** What a forecast says: what to expect, and the mean temperature of the day that runs, where it has one. */
export type Outlook = { expected: readonly Foreseen[]; meanCelsius: number | null };

/** The lines that stand for a forecast, by `rain 2026-11-25`. */
type Standing = Record<string, number>;

const MEMO = 'foreseen';
/** A wind that turns is another one. */
const keyOf = (each: Foreseen): string =>
  `${each.expects}${each.windFrom ? ` ${each.windFrom}` : ''} ${each.for}`;

/** The day for which the mean of the air was written: taken back, it is not written again. */
const AIR_MEMO = 'air-foreseen';

/**
 * Brings the book in line with a forecast: what is new is written, by nobody, and what is no longer expected is taken
 * back. What somebody typed already is not written again, nor what somebody took back.
 */
export function writeForeseen(parts: {
  book: Book;
  siteId: number;
  picture: Picture;
  today: string;
  outlook: Outlook;
  now: string;
}): { entries: Entry[]; voided: number[] } {
  const { book, siteId, picture, today, outlook, now } = parts;
  const foreseen = outlook.expected;
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
  const ours = new Set(Object.values(standing));
  const typed = new Set(
    picture.weather
      .filter(({ observed, entry }) => !observed && !ours.has(entry))
      .map((each) => `${each.expects} ${each.for}`),
  );
  const entries: Entry[] = [];
  const voided: number[] = [];
  const wanted = new Set(foreseen.map(keyOf));
  for (const [key, number] of Object.entries(standing)) {
    if (wanted.has(key) || book.entry(siteId, number)?.voidedBy !== null) continue;
    entries.push(
      ...book.append(siteId, [line({ kind: 'void', voids: number, why: 'dropped' }, [number])], null),
    );
    voided.push(number);
    delete standing[key];
  }
  for (const { expects, for: when, mm, windFrom } of foreseen) {
    const key = keyOf({ expects, for: when, mm, windFrom });
    if (standing[key] !== undefined || typed.has(`${expects} ${when}`)) continue;
    const [entry] = book.append(
      siteId,
      [
        line(
          {
            kind: 'weather',
            expects,
            when,
            ...(mm === null ? {} : { mm }),
            ...(windFrom ? { windFrom } : {}),
          },
          [],
        ),
      ],
      null,
    );
    standing[key] = entry!.number;
    entries.push(entry!);
  }
  const known = picture.ambient.some(({ localDate }) => localDate === today);
  if (outlook.meanCelsius !== null && !known && book.memo<string>(siteId, AIR_MEMO) !== today) {
    // Once a day, and never beside a reading: what somebody reads later counts instead of it.
    book.setMemo(siteId, AIR_MEMO, today);
    const celsius = [Math.round(outlook.meanCelsius * 10) / 10];
    entries.push(
      ...book.append(
        siteId,
        [line({ kind: 'temperature', place: 'ambient', celsius, approximate: true }, [])],
        null,
      ),
    );
  }
  book.setMemo(siteId, MEMO, standing);
  return { entries, voided };
}
