// When a bare letter or number is the name of a pile.
import type { ReadContext } from '../context.ts';
import type { Sense } from '../lexicon.ts';
import { sense, type Tok } from '../tokens.ts';
import { isListLink, isWord } from './near.ts';

/** Words that a pile's number can be followed by; any other word makes it a count of something. */
const AFTER_PLACE = [
  'aside',
  'fill',
  'prep',
  'and',
  'feel',
  'point',
  'tempword',
  'be',
  'topic',
  'turn',
  'cover',
  'uncover',
  'full',
  'finish',
  'ready',
  'squeeze',
  'degree',
  'next',
  'start',
  'empty',
  'deep',
  'strength',
  'seen',
  'into',
  'because',
  'approx',
  'correct',
  'contaminated',
  'gloss',
  'rangeword',
  'join',
  'split',
  'neg',
  'req',
  'about',
  'dateword',
  'add',
  'remove',
  'water',
  'relocated',
  'gone',
  'or',
  'cond',
  'intent',
  'ask',
];

export function mayName(tokens: readonly Tok[], i: number): boolean {
  const next = tokens[i + 1];
  if (!next || next.k !== 'w') return true;
  if (
    [
      'container',
      'material',
      'money',
      'person',
      'layer',
      'unit',
      'hourword',
      'sample',
      'many',
      'pilehead',
    ].some((cls) => sense(next, cls) !== undefined) &&
    !next.senses.some((s) => s.cls === 'fill' || s.cls === 'prep')
  )
    return false;
  return next.senses.some((s) => AFTER_PLACE.includes(s.cls));
}

/** `la 3` names a pile, where no word follows that it would count. */
export function isPileNumber(tok: Tok, before: Tok | undefined, next: Tok | undefined): boolean {
  if (sense(before, 'pilearticle') === undefined || tok.n!.value < 1 || tok.n!.value > 30) return false;
  return !['container', 'material', 'person', 'hourword', 'money'].some(
    (cls) => sense(next, cls) !== undefined,
  );
}

export function letterSenses(
  tok: Tok,
  tokens: readonly Tok[],
  i: number,
  out: readonly Tok[],
  context: ReadContext,
): readonly Sense[] | null {
  if (tok.accented) return null;
  const val = `pile ${tok.s.toUpperCase()}`;
  const known = context.piles.includes(val);
  const next = tokens[i + 1];
  const before = out.at(-1);
  const asPlace: Sense = { cls: 'place', val, lang: null };
  if (!known) {
    if (!tok.upper || tok.s === 'i' || tok.senses.length > 0) return null;
    return [
      { cls: 'place', val, lang: null },
      { cls: 'stranger', val, lang: null },
    ];
  }
  if (tok.upper && !(tok.s === 'a' && before === undefined && next?.k === 'w' && isLowerWord(next)))
    return [asPlace];
  // Lower case: a figure of its own must follow, or a list of places stands around it.
  const figure =
    next?.k === 'n' &&
    (next.n!.unit === null ||
      next.n!.unit === 'C' ||
      next.n!.unit === 'F' ||
      next.n!.unit === 'deg' ||
      next.n!.unit === '%');
  // `pas d'odeur` typed without its apostrophe
  const elided =
    !tok.upper && sense(tok, 'prep') !== undefined && next?.k === 'w' && /^[aeiouhy]/.test(next.s);
  if (elided && sense(next, 'and') === undefined && sense(next, 'be') === undefined) return null;
  // `b there in 10`
  if (sense(next, 'there') !== undefined) return null;
  if (tok.s === 'a') {
    const bound =
      before &&
      (sense(before, 'container') !== undefined ||
        sense(before, 'material') !== undefined ||
        sense(before, 'place') !== undefined ||
        sense(before, 'pilehead') !== undefined ||
        sense(before, 'prep') === 'at');
    const counted =
      sense(tokens[i + 2], 'container') !== undefined || sense(tokens[i + 2], 'material') !== undefined;
    // `turned a and c`, `brassé c et a`
    const done = ['turn', 'cover', 'uncover'].some((cls) => sense(before, cls) !== undefined);
    const linked = before && isListLink(before) && sense(out.at(-2), 'place') !== undefined;
    const ends = next === undefined || (isListLink(next) && (tokens[i + 2]?.s.length ?? 2) === 1);
    if ((done || linked) && ends && !tok.upper) return [asPlace];
    return figure && !bound && !counted ? [asPlace] : null;
  }
  return tok.senses.length === 0 || figure ? [asPlace, ...tok.senses] : [...tok.senses, asPlace];
}

const isLowerWord = (tok: Tok) =>
  isWord(tok) &&
  !tok.upper &&
  !tok.senses.some((s) =>
    [
      'feel',
      'turn',
      'topic',
      'full',
      'finish',
      'ready',
      'prep',
      'cover',
      'fill',
      'point',
      'and',
      'squeeze',
      'tempword',
      'uncover',
      'start',
      'degree',
      'be',
      'gloss',
      'seen',
      'next',
      'empty',
    ].includes(s.cls),
  );
