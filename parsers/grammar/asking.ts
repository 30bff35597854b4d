// Words that ask: which of them a token is, and what stands beside them.
import type { Request } from '#records';
import { bare, type Item } from '../reading.ts';
import type { Tok } from '../tokens.ts';

/** Whether a token is a word of request `name`. */
export const asks = (tok: Tok, name: string) => tok.senses.some((s) => s.cls === 'req' && s.val === name);

/** A request as the one thing found, without the fields that were not said. */
export const ask = (fields: Request): Item[] => [{ request: bare(fields) as Request }];

/** Tokens that are not the words of request `name`, or null where none of its words is there. */
export function beside(tokens: readonly Tok[], name: string): Tok[] | null {
  if (!tokens.some((tok) => asks(tok, name))) return null;
  return tokens.filter((tok) => !asks(tok, name));
}
