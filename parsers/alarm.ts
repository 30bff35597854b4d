import type { ParsedMessage } from '#records';
import type { ReadContext } from './context.ts';
import type { Plain } from './text.ts';

/** Danger found in the message, and how it enters what was read. */
export function dangersIn(
  _text: string,
  _message: Plain,
  _context: ReadContext,
): { into: (out: ParsedMessage) => void }[] {
  return [];
}
