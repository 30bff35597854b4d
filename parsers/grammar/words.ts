import type { Plain } from '../text.ts';
import { sliceOf } from '../text.ts';
import type { Tok } from '../tokens.ts';

let message: Plain | null = null;

/** Tells the readers which message their tokens point into, for the few that keep the writer's own words. */
export function pointInto(plain: Plain): void {
  message = plain;
}

/** What was typed from the first to the last of these tokens. */
export function sliceOfTokens(tokens: readonly Tok[]): string {
  const first = tokens[0];
  const last = tokens.at(-1);
  if (!first || !last || !message) return '';
  return sliceOf(message, first.a, last.b);
}
