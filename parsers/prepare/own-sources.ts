// A source that the site does not have, in the writer's own words: `cart 66 from the ward kitchen`.
import { mendings, type Vocabulary } from '../lexicon.ts';
import { sense, type Tok } from '../tokens.ts';
import { join, punct } from './near.ts';

const MOST_WORDS = 3;

/** What a word may mean besides and still be part of a name: `Maple House`, `the staff room`, `the garden café`. */
const NAMES = new Set(['ordinary', 'person', 'sink', 'point']);
/** Words of one meaning that stand before a name and belong to none. */
const UNSAYING = new Set([
  'article',
  'fill',
  'pilearticle',
  'definite',
  'seen',
  'there',
  'dateword',
  'ordinary',
]);
/** Words for oneself and words that open something else. */
const NEVER = [
  ...['self', 'last', 'container', 'material', 'source', 'place', 'pilehead', 'neg', 'dateword', 'numw'],
];

/**
 * Behind `from` and a load that was counted or weighed, words that nobody knows are where it came from. `spell` gives
 * them as they were typed.
 */
export function ownSources(
  tokens: readonly Tok[],
  spell: (a: number, b: number) => string,
  vocabulary: Vocabulary,
): Tok[] {
  const out: Tok[] = [];
  let begins = 0;
  for (let i = 0; i < tokens.length; i++) {
    const tok = tokens[i]!;
    out.push(tok);
    if (endsClause(tok)) begins = i + 1;
    const link = tok.senses.some(({ cls, val }) => cls === 'prep' && val === 'from');
    if (!link || !namesLoad(tokens, begins, i)) continue;
    let from = i + 1;
    while (tokens[from] && opensName(tokens[from]!)) from += 1;
    let to = from;
    while (to < tokens.length && to - from < MOST_WORDS && mayBeName(tokens[to]!)) to += 1;
    // `cart 58 from ward 3`: the weight was said, the number is the ward's.
    const weighed = tokens.slice(begins, i).some((one) => one.k === 'n');
    const numbered = to > from && weighed && isCount(tokens[to]) && endsAt(tokens[to + 1]);
    if (numbered) to += 1;
    const next = tokens[to];
    if (to === from || (next !== undefined && next.k !== 'n' && !endsClause(next))) continue;
    // `de` says what it holds as well as where it is from: only `de la`, `du`, behind a weight, is taken for a source.
    const holds = tok.senses.some(({ cls, val }) => cls === 'prep' && val === 'of');
    const definite = from > i + 1 || !/^de?$/.test(tok.s);
    if (holds ? !weighed || !definite : !weighed && next?.k !== 'n') continue;
    // One slip away from a source of the site's own it is that one.
    const name = tokens.slice(from, to);
    if (name.some((one) => mendings(vocabulary, one.s).some((word) => isSource(word, vocabulary)))) continue;
    const [first, last] = [name[0]!, name.at(-1)!];
    const val = spell(first.a, last.b).trim();
    if (val.length < 2) continue;
    for (let k = i + 1; k < from; k++) out.push(tokens[k]!);
    out.push(join(first, last, { k: 'w', senses: [{ cls: 'source', val, lang: null }] }));
    i = to - 1;
  }
  return out;
}

const isSource = (word: string, vocabulary: Vocabulary): boolean =>
  vocabulary.root.get(word)?.senses?.some(({ cls }) => cls === 'source') ?? false;

const isCount = (tok: Tok | undefined): boolean =>
  tok?.k === 'n' && tok.n!.unit === null && Number.isInteger(tok.n!.value) && tok.n!.value < 100;

const endsAt = (tok: Tok | undefined): boolean => tok === undefined || endsClause(tok);

const endsClause = (tok: Tok): boolean =>
  tok.k === 'd' ||
  sense(tok, 'and') !== undefined ||
  [',', ';', '.', '!', '\n', '(', ')', '-', ':'].some((sign) => punct(tok, sign));

/** A container or a material before the link: `cart 66 from …`, `3 buckets from …`. */
const namesLoad = (tokens: readonly Tok[], from: number, to: number): boolean =>
  tokens
    .slice(from, to)
    .some((tok) => sense(tok, 'container') !== undefined || sense(tok, 'material') !== undefined);

const opensName = (tok: Tok): boolean =>
  tok.k === 'w' &&
  tok.senses.some(({ cls }) => cls === 'article' || cls === 'fill') &&
  tok.senses.every(({ cls }) => UNSAYING.has(cls));

const mayBeName = (tok: Tok): boolean =>
  tok.k === 'w' &&
  (tok.senses.length === 0 || tok.senses.some(({ cls }) => NAMES.has(cls))) &&
  !tok.senses.some(({ cls }) => NEVER.includes(cls));
