// The kinds of words that danger is read from, and how a message is cut into words.
// Words are folded: lower case, no accents, slips mended, run-together words taken apart.
export const kinds = [
  'quiet',
  'cry',
  'plead',
  'filler',
  'hurt',
  'unwell',
  'caught',
  'stuck',
  'grip',
  'body',
  'clothes',
  'person',
  'machine',
  'vehicle',
  'heap',
  'within',
  'under',
  'around',
  'heavy',
  'strike',
  'knock',
  'down',
  'onto',
  'upon',
  'running',
  'doing',
  'buried',
  'inside',
  'smoke',
  'smoking',
  'fire',
  'burn',
  'smell',
  'burntSmell',
  'needle',
  'prick',
  'pricked',
  'gas',
  'gasLeak',
  'reach',
  'wound',
  'fall',
  'off',
  'not',
  'notAfter',
  'clear',
  'aux',
  'copula',
  'reflexive',
  'article',
  'ended',
  'endedLast',
  'condition',
  'asks',
  'story',
  'food',
  'site',
  'thing',
] as const;

/** What a word or phrase can mean to the danger reader. */
export type DangerKind = (typeof kinds)[number];

/**
 * The danger words of one language: for each kind, phrases parted by commas; `{a|b|}` stands for each of its
 * alternatives. Written without accents and apostrophes (`isnt`, `s est`). `ordinary` lists everyday words that
 * lie one slip away from a danger word and must not be mended into it; `slips` maps known bad spellings.
 */
export type DangerWords = { readonly [K in DangerKind]?: string } & {
  readonly ordinary: string;
  readonly slips: string;
};

/** A word of the message: folded, with its place in the text and what parts it from the word before. */
export type Word = {
  text: string;
  readonly start: number;
  readonly end: number;
  /** 0 a space, 1 a comma or dash, 2 the end of a sentence or line */
  readonly gap: 0 | 1 | 2;
  /** in capitals, or drawn out: `heeelp` */
  readonly shouted: boolean;
  /** the ordinary word may have been meant as this one */
  near: string | undefined;
};

// Digits are words of their own: `pile2` is two.
export const wordPattern = /[\p{L}\p{M}\u00ad\u200b-\u200d\u2060\ufeff]+|\p{N}+/gu;
const unseen = /[\p{M}\u00ad\u200b-\u200d\u2060\ufeff]+/gu;
const drawnOut = /(\p{L})\1\1/u;
const plainWord = /^[a-z0-9]+$/;

/** Lower case without accents, joined marks or invisible characters. */
export function foldWord(word: string): string {
  const lower = word.toLowerCase();
  if (plainWord.test(lower)) return lower;
  return lower.normalize('NFKD').replace(unseen, '').replaceAll('œ', 'oe').replaceAll('ß', 'ss');
}

function gapOf(between: string): 0 | 1 | 2 {
  let gap: 0 | 1 | 2 = 0;
  for (let i = 0; i < between.length; i += 1) {
    const c = between[i]!;
    if (c === '\n' || c === '!' || c === '?' || c === ';' || c === '…') return 2;
    if (c === '.') {
      const next = between[i + 1];
      if (next !== undefined || between.length > 1) return 2;
      gap = 1;
    } else if (c === ',' || c === ':' || c === '(' || c === ')' || c === '—' || c === '–') gap = 1;
    else if (c === '-' && between.length > 1) gap = 1;
  }
  return gap;
}

/** Cuts a text into folded words; `isn't` is one word, `Dave's` and `s'est` are two. */
export function cutWords(text: string): Word[] {
  const words: Word[] = [];
  let last = 0;
  for (const match of text.matchAll(wordPattern)) {
    const raw = match[0];
    const start = match.index;
    const folded = foldWord(raw);
    const between = text.slice(last, start);
    const before = words[words.length - 1];
    const apostrophe = between.length === 1 && "'’ʼ`´".includes(between);
    last = start + raw.length;
    if (apostrophe && before !== undefined && folded === 't' && before.text.endsWith('n')) {
      words[words.length - 1] = { ...before, text: `${before.text}t`, end: last };
      continue;
    }
    if (folded === '') continue;
    words.push({
      text: folded,
      start,
      end: last,
      gap: words.length === 0 ? 2 : apostrophe ? 0 : gapOf(between),
      shouted:
        (raw.length > 1 && raw === raw.toUpperCase() && raw !== raw.toLowerCase()) || drawnOut.test(folded),
      near: undefined,
    });
  }
  return words;
}

/** What kind of emergency it is; `other` is gas or a bare cry for help. */
export type DangerTopic = 'injury' | 'smoke' | 'sharps' | 'other';

/** What was said of the emergency. */
export type DangerWhat =
  | 'caught'
  | 'inside-drum'
  | 'hurt'
  | 'reaching-in'
  | 'unwell'
  | 'fire'
  | 'smoke'
  | 'burnt-smell'
  | 'needle'
  | 'pricked'
  | 'gas'
  | 'help';
