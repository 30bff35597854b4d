import type { Request } from '#records';
import type { Plain } from '../text.ts';
import { sense, type Tok } from '../tokens.ts';
import { sliceOfTokens } from './words.ts';

/** A new duty of the site's own, in its writer's words: `new duty: check the rain barrel every monday`. */
export function dutyIn(message: Plain, tokens: readonly Tok[]): Request | null {
  const first = tokens.findIndex((tok) => tok.k !== 'p' || tok.senses.length > 0);
  const head = tokens[first];
  if (!head?.senses.some((s) => s.cls === 'req' && s.val === 'duty') || !head.s.includes(' ')) return null;
  let rest = tokens.slice(first + 1);
  while (rest[0] && (rest[0].k === 'p' || sense(rest[0], 'prep') === 'to')) rest = rest.slice(1);
  if (rest.length === 0) return null;
  const at = rest.findIndex((tok, k) => k > 0 && sense(tok, 'every') !== undefined);
  const name = sliceOfTokens(message, at > 0 ? rest.slice(0, at) : rest).trim();
  if (!name) return null;
  const every = at > 0 ? sliceOfTokens(message, rest.slice(at)).trim() : undefined;
  return { request: 'duty', name, ...(every && { value: every, every }) };
}
