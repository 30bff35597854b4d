import { randomInt } from 'node:crypto';
import type { ChannelBook } from '#assistant';

const LETTERS = 'abcdefghjkmnpqrstuvwxyz23456789';

type Claim = { word: string } | { by: string };
const keyOf = (site: number): string => `telegram:claim:${site}`;

/** The one-time word of a site. Once a group has said it, it lets in no other, also after the next start. */
export const makeClaim = (book: ChannelBook, site: number, given: string | undefined) => {
  const kept = book.bookFact<Claim>(keyOf(site));
  if (!kept || 'word' in kept) {
    const word = given ?? (kept && 'word' in kept ? kept.word : randomWord());
    book.setBookFact(keyOf(site), { word });
  }
  const open = (): string | null => {
    const claim = book.bookFact<Claim>(keyOf(site));
    return claim && 'word' in claim ? claim.word : null;
  };
  return {
    word: open,
    matches: (word: string): boolean => {
      const wanted = open();
      return wanted !== null && word.toLowerCase() === wanted.trim().toLowerCase();
    },
    close: (by: string): void => book.setBookFact(keyOf(site), { by }),
  };
};

/** Twelve signs that are hard to mistake, out of 31: about 59 bits. */
const randomWord = (): string =>
  [0, 1, 2].map(() => Array.from({ length: 4 }, () => LETTERS[randomInt(LETTERS.length)]).join('')).join('-');
