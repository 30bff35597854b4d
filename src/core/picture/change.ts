import type { BookKind, BookRecordOf, Entry } from '#records';
import { addDays } from '../calendar.ts';
import { sumKg } from '../weights/sum-kg.ts';
import { emptyDay } from './empty.ts';
import type { Batch, DayTotals, DrumPicture, Moment, Picture } from './types.ts';

/** What one kind of line does to the picture: gives a new one, leaves the old as it was. */
export type Reducer<K extends BookKind> = (
  picture: Picture,
  record: BookRecordOf<K>,
  now: Moment,
  entry: Entry,
) => Picture;
/** The kinds that a file of reducers answers for. */
export type Reducers<K extends BookKind> = { [kind in K]: Reducer<kind> };

/** The value of an own key: names come from people, and `constructor` is on every object. */
export const own = <T>(record: Record<string, T>, key: string): T | undefined =>
  Object.hasOwn(record, key) ? record[key] : undefined;

/** The record without a key. */
export function without<T>(record: Record<string, T>, key: string): Record<string, T> {
  if (!Object.hasOwn(record, key)) return record;
  const { [key]: _, ...rest } = record;
  return rest;
}

/** The record with `by` added to a number in it. */
export const plus = (record: Record<string, number>, key: string, by: number): Record<string, number> => ({
  ...record,
  [key]: sumKg([own(record, key) ?? 0, by]),
});

/** The picture with the sums of one day changed. */
export function onDay(
  picture: Picture,
  localDate: string,
  change: (day: DayTotals) => Partial<DayTotals>,
): Picture {
  const month = localDate.slice(0, 7);
  const days = own(picture.months, month) ?? {};
  const day = own(days, localDate) ?? emptyDay();
  const changed = { ...days, [localDate]: { ...day, ...change(day) } };
  return { ...picture, months: { ...picture.months, [month]: changed } };
}

/**
 * The sums of one local date; null where nothing was logged on it, or it is longer ago than the picture keeps.
 * @source none needed
 * @example dayOf(picture, '2026-06-17')!.turnings // 1
 */
export function dayOf(picture: Pick<Picture, 'months'>, localDate: string): DayTotals | null {
  const days = own(picture.months, localDate.slice(0, 7));
  return (days && own(days, localDate)) || null;
}

/** The picture with one batch changed; unchanged where there is none of that id. */
export function onBatch(picture: Picture, id: string, change: (batch: Batch) => Partial<Batch>): Picture {
  const batch = own(picture.batches, id);
  if (!batch) return picture;
  return { ...picture, batches: { ...picture.batches, [id]: { ...batch, ...change(batch) } } };
}

/** The picture with one drum changed; unchanged where there is none of that name. */
export function onDrum(
  picture: Picture,
  name: string,
  change: (drum: DrumPicture) => Partial<DrumPicture>,
): Picture {
  const drum = own(picture.drums, name);
  if (!drum) return picture;
  return { ...picture, drums: { ...picture.drums, [name]: { ...drum, ...change(drum) } } };
}

/** How many days of readings, turns and the like a batch keeps: a pile that is never emptied would grow for ever. */
export const BATCH_DAYS = 400;

/** The list with one more at its end, and what is older than so many days dropped from its front. */
export function appended<T extends Moment>(list: readonly T[], item: T, days: number): T[] {
  const oldest = addDays(item.localDate, -days);
  const kept = list.findIndex((each) => each.localDate >= oldest);
  return kept < 0 ? [item] : [...(kept > 0 ? list.slice(kept) : list), item];
}

/** A list in order of happening with one put in at its place: a net told late belongs where it was weighed. */
export function inserted<T extends Moment>(list: readonly T[], item: T): T[] {
  const before = list.findLastIndex(
    (each) => each.at < item.at || (each.at === item.at && each.entry < item.entry),
  );
  return [...list.slice(0, before + 1), item, ...list.slice(before + 1)];
}
