// What the steps ask of the token beside the one they look at.
import { sense, type Tok } from '../tokens.ts';

/** A word or phrase. */
export const isWord = (tok: Tok | undefined) => tok?.k === 'w';

/** This sign. */
export const punct = (tok: Tok | undefined, s: string) => tok?.k === 'p' && tok.s === s;

/** One token from the beginning of `a` to the end of `b`. */
export const join = (a: Tok, b: Tok, more: Partial<Tok>): Tok => ({ ...a, b: b.b, ...more });

/** A word of one letter. */
export const isLetter = (tok: Tok) => tok.s.length === 1 && tok.s >= 'a' && tok.s <= 'z';

/** What parts the names of a list. */
export const isListLink = (tok: Tok) =>
  sense(tok, 'and') !== undefined ||
  (tok.k === 'p' && (tok.s === ',' || tok.s === '+' || tok.s === '&' || tok.s === '/'));
