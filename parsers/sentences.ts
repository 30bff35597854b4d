import type { ReadContext } from './context.ts';
import { OWN_WORD } from './grammar/stranger.ts';
import type { Vocabulary } from './lexicon.ts';
import type { Carry } from './reading.ts';
import { readRuns } from './runs.ts';
import { better, mend, mendable } from './slips.ts';
import type { Plain } from './text.ts';
import { sense, type Tok } from './tokens.ts';
import { type SentenceResult, weed } from './weed.ts';

const LONGEST = 400;

/** The message that a sentence stands in, what its reader may know, and what earlier sentences settled. */
export type About = { message: Plain; context: ReadContext; vocabulary: Vocabulary; carry: Carry };

/** One sentence: its runs, with those dropped that stand in talk, denial, intention or a question. */
export function readSentence(tokens: readonly Tok[], asked: boolean, about: About): SentenceResult {
  const { context, vocabulary, carry } = about;
  // Nobody writes an entry so long without a full stop or a new line: left unread, at no cost.
  if (tokens.length > LONGEST)
    return { tokens, readings: [], chunks: [{ a: 0, b: tokens.length, left: [0] }] };
  const before = { ...carry };
  const first = readRuns(tokens, asked, about);
  const result = weed(tokens, first);
  const strange = result.readings.filter((reading) => reading.rule === OWN_WORD);
  if (strange.length === 0 && !result.chunks.some((chunk) => chunk.left.some((k) => mendable(tokens[k]!))))
    return result;
  const mended = mend(tokens, vocabulary, result, context);
  if (!mended) return result;
  const kept = { ...carry };
  Object.assign(carry, before);
  const second = readRuns(mended.tokens, asked, about).map((reading) => ({
    ...reading,
    slips: mended.slips.filter(
      (tok) => tok.a < mended.tokens[reading.b - 1]!.b && tok.b > mended.tokens[reading.a]!.a,
    ),
  }));
  const again = weed(mended.tokens, second);
  if (better(again, result)) return again;
  // `buckt form school 20 lb`: a word so near to a container's is no thing of its own.
  const nearly = mended.slips.filter((tok) => sense(tok, 'container') !== undefined);
  if (strange.length > 0 && nearly.length > 0) {
    Object.assign(carry, before);
    return {
      ...result,
      readings: result.readings.filter((reading) => reading.rule !== OWN_WORD),
      chunks: [{ a: 0, b: tokens.length, left: [0] }],
    };
  }
  Object.assign(carry, kept);
  return result;
}
