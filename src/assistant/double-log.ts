import { localDateOf } from '#core';
import type { BookRecordOf, Doubt, Entry, FieldRecord } from '#records';
import type { Draft } from './draft.ts';
import { askTogether, keepHeld } from './holding.ts';
import { momentOf } from './moment-of.ts';

const NEAR_MIN = 30;
const NEAR_PCT = 1;

/**
 * Two people logging the same cart: same container and label, within half an hour between the times they happened,
 * weights within 1 %, another sender, the same local date. Both are kept, the second held, with one question for all
 * of a message; `before` are those found in it so far.
 */
export function sameCart(draft: Draft, record: FieldRecord, before: readonly Doubt[]): Doubt | null {
  if (record.kind !== 'weigh-in' || record.kg == null || !record.container || !draft.person) return null;
  // Of a late cart with no hour nobody can say whether it was the same half hour.
  if (record.when?.length === 10 && record.when !== draft.today) return null;
  const at = Date.parse(momentOf(record, draft.happenedAt, draft.manner));
  const localDate = record.when?.slice(0, 10) ?? localDateOf(draft.happenedAt, draft.manner.timeZone);
  // Each cart of a list has a twin of its own: one that was logged once is one of two, and not both.
  const taken = new Set(before.map((doubt) => doubt.record.twinOf));
  const twin = twinAround(
    draft,
    at,
    (other) => other.localDate === localDate && !taken.has(other.number) && isLike(other, record),
  );
  if (!twin) return null;
  return {
    record: { ...record, twinOf: twin.number },
    why: 'same-cart',
    said: `#${twin.number}`,
    choices: [
      { say: 'same', record: null },
      { say: 'another', record },
    ],
  };
}

const isLike = (entry: Entry, record: BookRecordOf<'weigh-in'>): boolean => {
  const other = entry.record as FieldRecord;
  return (
    other.kind === 'weigh-in' &&
    other.container === record.container &&
    (other.label ?? null) === (record.label ?? null) &&
    other.kg != null &&
    Math.abs(other.kg - record.kg!) <= (NEAR_PCT / 100) * Math.max(other.kg, record.kg!)
  );
};

/** The last fitting line of somebody else that happened within half an hour of a moment. */
function twinAround(draft: Draft, at: number, fits: (entry: Entry) => boolean): Entry | null {
  const { book, siteId, person } = draft;
  const mine = new Set(draft.entries.map((entry) => entry.number));
  let twin: Entry | null = null;
  for (const entry of book.entriesFrom(siteId, new Date(at - NEAR_MIN * 60_000).toISOString())) {
    if (Date.parse(entry.happenedAt) > at + NEAR_MIN * 60_000) break;
    if (mine.has(entry.number) || entry.voidedBy !== null || entry.held !== null) continue;
    if (entry.person === null || entry.person === person?.id || !fits(entry)) continue;
    twin = entry;
  }
  return twin;
}

const togetherKey = (entry: number): string => `together:${entry}`;

/** Keeps the carts of a message that somebody else has logged already, and asks about all of them at once. */
export function holdTwins(draft: Draft, doubts: readonly Doubt[]): void {
  if (doubts.length === 0) return;
  const held = doubts.map((doubt) => ({ entry: keepHeld(draft, doubt), doubt }));
  const numbers = held.map(({ entry }) => entry.number);
  if (numbers.length > 1)
    for (const number of numbers) draft.book.setMemo(draft.siteId, togetherKey(number), numbers);
  askTogether(draft, held);
}

/** The other carts that the same question was about. */
export function twinsHeldWith(draft: Draft, entry: number): Entry[] {
  const numbers = draft.book.memo<number[]>(draft.siteId, togetherKey(entry)) ?? [];
  return numbers
    .filter((number) => number !== entry)
    .map((number) => draft.book.entry(draft.siteId, number))
    .filter((line): line is Entry => line !== null);
}
