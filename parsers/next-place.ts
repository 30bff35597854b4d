// Where a list of places ends because its last one opens what comes next.
import { sense, type Tok } from './tokens.ts';

/** What a pile can be said to be: behind `is` it belongs to the pile before it. */
const OF_ITS_OWN = ['feel', 'topic', 'degree', 'full', 'ready', 'finish'];

const links = (tok: Tok) => sense(tok, 'be') !== undefined || sense(tok, 'prep') === 'at';

/** What a figure counts: it is then no temperature of the place before it. */
const counted = (tok: Tok | undefined) =>
  ['container', 'material', 'person'].some((cls) => sense(tok, cls) !== undefined);

/** `turned B and A was 51`: behind `and` a place with a figure or a state of its own opens what comes next. */
export function placeOpensNext(tokens: readonly Tok[], i: number, j: number): boolean {
  let k = j - 1;
  let is = false;
  for (; k > i && links(tokens[k]!); k--) is ||= sense(tokens[k], 'be') !== undefined;
  const tok = tokens[k]!;
  if (k <= i + 1 || (sense(tok, 'place') === undefined && sense(tok, 'place?') === undefined)) return false;
  if (sense(tokens[k - 1], 'and') === undefined) return false;
  let next = j;
  for (; tokens[next] && links(tokens[next]!); next++) is ||= sense(tokens[next], 'be') !== undefined;
  const what = tokens[next];
  if (what?.k === 'n') return sense(what, 'place?') === undefined && !counted(tokens[next + 1]);
  return is && what !== undefined && OF_ITS_OWN.some((cls) => sense(what, cls) !== undefined);
}
