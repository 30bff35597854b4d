// Things that the site has no name for but that are plainly named beside their container or weight.
import { isMassUnit } from '#records';
import type { Scope } from '../reading.ts';
import { sense, type Tok } from '../tokens.ts';
import { sliceOfTokens } from './words.ts';

/** Whether a word names food or a garden thing that is none of the site's materials. */
export const isFood = (tok: Tok | undefined): boolean =>
  tok !== undefined && sense(tok, 'food') !== undefined;

/** Whether a word only describes: `old`, `blue`. */
export const isAdj = (tok: Tok | undefined): boolean => tok !== undefined && sense(tok, 'adj') !== undefined;

const isUnknown = (tok: Tok | undefined) => tok?.k === 'w' && tok.senses.length === 0;

/** What a load said to be full of something is marked with. */
const FULL = 'full';

const saysOf = (tok: Tok | undefined) =>
  tok !== undefined && tok.senses.some((one) => one.cls === 'prep' && one.val === 'of');

const isContainer = (tok: Tok | undefined) => sense(tok, 'container') !== undefined;

/** Where a thing named from `at` ends: describing words and food, with strangers only where a unit vouches for them. */
function endOfThing(tokens: readonly Tok[], at: number, vouched: boolean): number {
  let end = at;
  let named = false;
  while (end < tokens.length && end - at < 4) {
    const tok = tokens[end]!;
    // A word that is one of the site's own things ends it.
    if (isContainer(tok) || sense(tok, 'material') !== undefined || sense(tok, 'source') !== undefined) break;
    const thing = isFood(tok) || (vouched && isUnknown(tok));
    if (!thing && !isAdj(tok)) break;
    if (thing) named = true;
    end++;
  }
  return named ? end : at;
}

/**
 * `bucket of apples 25`, `cubeta de mango podrido 21`: the words for what it holds become one material, in the
 * writer's own spelling; `blue bucket 21` loses the colour, `barrow full of leaves` its `of`.
 */
export function ownWordsIn(tokens: readonly Tok[], scope: Scope): readonly Tok[] {
  if (
    !tokens.some((tok) => isAdj(tok) || isFood(tok) || isUnknown(tok) || sense(tok, 'fullof') !== undefined)
  )
    return tokens;
  if (!tokens.some(isContainer)) return tokens;
  // In a question a word that nobody knows is vouched for by nothing.
  const vouched = !scope.asked && tokens.some((tok) => tok.k === 'n' && isMassUnit(tok.n!.unit));
  const out: Tok[] = [];
  for (let k = 0; k < tokens.length; k++) {
    const tok = tokens[k]!;
    const before = out.at(-1);
    // `the old blue bucket`
    if (isAdj(tok) && sense(tok, 'material') === undefined) {
      let next = k + 1;
      while (isAdj(tokens[next]) && !isContainer(tokens[next])) next++;
      if (isContainer(tokens[next]) || (isContainer(before) && !tok.glued && describes(tokens[k + 1]))) {
        k = Math.max(next - 1, k);
        continue;
      }
    }
    const opensThing =
      (isContainer(before) && isFood(tok)) ||
      (saysOf(before) && isContainer(out.at(-2))) ||
      (saysOf(before) && sense(out.at(-2), 'full') !== undefined && isContainer(out.at(-3))) ||
      (before?.s === FULL && isContainer(out.at(-2)));
    const end = opensThing ? endOfThing(tokens, k, vouched && !isContainer(before)) : k;
    if (end > k) {
      const words = tokens.slice(k, end);
      out.push({
        ...tok,
        b: words.at(-1)!.b,
        senses: [{ cls: 'material', val: sliceOfTokens(scope.message, words).toLowerCase(), lang: null }],
      });
      k = end - 1;
      continue;
    }
    // `barrow full of leaves`
    if (sense(tok, 'fullof') !== undefined && isContainer(before)) {
      out.push({ ...tok, s: FULL, senses: [{ cls: 'full', val: '', lang: null }] });
      continue;
    }
    // `apples bucket 22`
    if (isFood(tok) && isContainer(tokens[k + 1]) && !out.some(isContainer)) {
      const val = sliceOfTokens(scope.message, [tok]).toLowerCase();
      out.push({ ...tok, senses: [{ cls: 'material', val, lang: null }] });
      continue;
    }
    out.push(tok);
  }
  return out;
}

/** Behind a container a colour describes it where its weight follows: `cubeta azul 21`. */
const describes = (next: Tok | undefined) =>
  next === undefined || next.k === 'n' || sense(next, 'prep') !== undefined;
