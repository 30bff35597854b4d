// Words one slip away from a word of the trade, where the rest makes a complete entry.
import type { ReadContext } from './context.ts';
import { OWN_WORD } from './grammar/stranger.ts';
import { mendings, type Sense, type Vocabulary } from './lexicon.ts';
import { places, units } from './prepare/index.ts';
import type { Reading } from './runs.ts';
import { sense, type Tok } from './tokens.ts';
import type { SentenceResult } from './weed.ts';

const isUnknown = (tok: Tok) => tok.k === 'w' && tok.senses.length === 0;

const isOrdinary = (tok: Tok) =>
  tok.k === 'w' &&
  tok.senses.length > 0 &&
  tok.senses.every((s) => s.cls === 'ordinary') &&
  !tok.s.includes(' ');

/** Whether a word may be a slip: nobody knows it, or it is an everyday word. */
export const mendable = (tok: Tok) =>
  (isUnknown(tok) || isOrdinary(tok)) && tok.s.length >= 3 && tok.s.length <= 24;

const leftOf = (result: SentenceResult) => result.chunks.reduce((sum, chunk) => sum + chunk.left.length, 0);

/** A reading that leans on mended words must be whole: nothing left over beside it, and company for the guess. */
export function better(again: SentenceResult, was: SentenceResult): boolean {
  const slipped = again.readings.filter((reading) => reading.slips.length > 0);
  if (slipped.length === 0) return false;
  const strange = was.readings.some((reading) => reading.rule === OWN_WORD);
  if (
    !(
      leftOf(again) < leftOf(was) ||
      again.readings.length > was.readings.length ||
      (strange && leftOf(again) === leftOf(was))
    )
  )
    return false;
  return slipped.every((reading) => worth(reading, again));
}

function worth(reading: Reading, result: SentenceResult): boolean {
  const { tokens, chunks } = result;
  if (reading.items.some((item) => 'request' in item)) return false;
  const run = tokens.slice(reading.a, reading.b);
  for (const chunk of chunks)
    if (reading.a < chunk.b && reading.b > chunk.a && chunk.left.length > 0) return false;
  const { slips } = reading;
  if (
    slips.some((tok) => tok.ordinary) &&
    reading.items.some((item) => 'doubt' in item && item.doubt.why === 'no-place')
  )
    return false;
  const company = run.filter(
    (tok) => tok.joined || (!tok.slip && (tok.k === 'n' || tok.senses.some((s) => !DULL.has(s.cls)))),
  );
  if (company.length === 0) return false;
  if (slips.some((tok) => tok.ordinary)) {
    // `cat 61.5`, `pine 3 138f`: an everyday word is a slip only where it opens the entry and a figure stands by it.
    return (
      slips.length === 1 &&
      NAMES.some((cls) => sense(slips[0], cls) !== undefined) &&
      reading.a === 0 &&
      tokens[0] === slips[0] &&
      run.some((tok) => tok.k === 'n') &&
      // `seeds 3`: a material wants more than a figure.
      (sense(slips[0], 'material') === undefined ||
        run.some((tok) => tok.k === 'n' && tok.n!.unit !== null)) &&
      run.length <= 5
    );
  }
  // A trouble is not guessed out of a short word.
  if (
    reading.rule === 'problem' &&
    slips.some((tok) => tok.s.length < 5 && sense(tok, 'topic') !== undefined)
  )
    return false;
  return slips.length <= 1 + company.length;
}

/** What an everyday word may be a slip of. */
const NAMES = ['container', 'material', 'pilehead', 'place', 'point', 'tempword'];

const DULL = new Set(['fill', 'prep', 'and', 'article', 'numero', 'be', 'approx', 'next']);

/** Unknown words one slip from a trade word get that word's meanings; phrases are then looked for again. */
export function mend(
  tokens: readonly Tok[],
  vocabulary: Vocabulary,
  result: SentenceResult,
  context: ReadContext,
): { tokens: Tok[]; slips: Tok[] } | null {
  let changed = false;
  // All that no reader took for certain: also the words of a reading that was dropped for its company.
  const left = new Set(tokens.keys());
  for (const reading of result.readings)
    if (reading.rule !== OWN_WORD) for (let k = reading.a; k < reading.b; k++) left.delete(k);
  const out = tokens.map((tok, k) => {
    if (!left.has(k) || !mendable(tok)) return tok;
    const words = mendings(vocabulary, tok.s);
    const meant = words.flatMap((word) => vocabulary.root.get(word)?.senses ?? []);
    const useful = likeliest(
      meant.filter((s) => !NEVER_MENDED.has(s.cls)),
      context,
    );
    const senses = useful.length > 0 || isOrdinary(tok) ? useful : meant.filter((s) => GLUE.has(s.cls));
    const phrase = words.find((word) => vocabulary.root.get(word)?.next);
    if (senses.length === 0 && !phrase) return tok;
    changed = true;
    const ordinary = isOrdinary(tok) || vocabulary.everyday.has(tok.s);
    return { ...tok, senses, slip: true, ordinary, meant: words };
  });
  if (!changed) return null;
  const joined = phrasesAmong(out, vocabulary);
  const slips = joined.filter((tok) => tok.slip);
  // Mended words may be units and heads of places: both are looked for again.
  return { tokens: places(units(joined, context), context), slips };
}

/** Of several containers that a word may be a slip of, those that the site has. */
function likeliest(senses: readonly Sense[], context: ReadContext): readonly Sense[] {
  const known = senses.some((one) => one.cls === 'container' && one.val in context.containers);
  return known ? senses.filter((one) => one.cls !== 'container' || one.val in context.containers) : senses;
}

const NEVER_MENDED = new Set([
  'analyte',
  'fill',
  'prep',
  'and',
  'article',
  'talk',
  'numw',
  'ordinary',
  'req',
  'set',
  'set!',
  'intent',
  'neg',
  'money',
  'hearsay',
  'ask',
  'about',
  'correct',
]);

const GLUE = new Set(['fill', 'prep', 'article', 'and', 'intent', 'neg', 'cond', 'ask']);

/** Joins mended words with their neighbours where the two make a phrase: `weest kitchen`, `wsahed the carts`. */
function phrasesAmong(tokens: readonly Tok[], vocabulary: Vocabulary): Tok[] {
  const out: Tok[] = [];
  const forms = (tok: Tok) => (tok.k !== 'w' ? [] : (tok.meant ?? [tok.s]));
  for (let i = 0; i < tokens.length; i++) {
    let best: { end: number; senses: Tok['senses'] } | null = null;
    let nodes = forms(tokens[i]!).flatMap((word) => vocabulary.root.get(word) ?? []);
    for (let j = i + 1; j < Math.min(tokens.length, i + 6) && nodes.length > 0; j++) {
      const words = forms(tokens[j]!);
      nodes = nodes.flatMap((node) =>
        words.flatMap(
          (word) =>
            word.split(' ').reduce<typeof node | undefined>((at, part) => at?.next?.get(part), node) ?? [],
        ),
      );
      const senses = nodes.flatMap((node) => node.senses ?? []).filter((s) => !NEVER_MENDED.has(s.cls));
      if (senses.length > 0 && tokens.slice(i, j + 1).some((tok) => tok.slip)) best = { end: j, senses };
    }
    if (best) {
      const last = tokens[best.end]!;
      out.push({
        ...tokens[i]!,
        b: last.b,
        s: tokens
          .slice(i, best.end + 1)
          .map((tok) => tok.s)
          .join(' '),
        senses: best.senses,
        slip: true,
        ordinary: false,
        joined: true,
      });
      i = best.end;
    } else out.push(tokens[i]!);
  }
  return out;
}
