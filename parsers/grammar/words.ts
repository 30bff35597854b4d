import { type Plain, sliceOf } from '../text.ts';
import type { Tok } from '../tokens.ts';

/** What was typed from the first to the last of these tokens of the message. */
export function sliceOfTokens(message: Plain, tokens: readonly Tok[]): string {
  const first = tokens[0];
  const last = tokens.at(-1);
  return first && last ? sliceOf(message, first.a, last.b) : '';
}
