import { type Duty, dutiesNow, instantOf } from '#core';
import type { Book } from '../picture/book.ts';

/** The jobs of a site at one of its wall times. */
export function today(book: Book, wall: string): Duty[] {
  return dutiesNow(book.picture(), {
    at: instantOf(wall, book.site.timeZone),
    localDate: wall.slice(0, 10),
  });
}

/** Keys of what can be done now, in the order shown; held-back ones have their reason behind them. */
export const keys = (duties: readonly Duty[]): string[] =>
  duties.map(({ key, heldBack }) => (heldBack ? `${key} (${heldBack.code})` : key));

/** The one job of a key. */
export const job = (book: Book, wall: string, key: string): Duty | null =>
  today(book, wall).find((duty) => duty.key === key) ?? null;
