// Cuts a message into sentences of pieces: each piece is a known phrase with its kinds, or one unknown word.
import { CAN, type DangerLexicon, dangerLexicon, longestPhrase, type Means, noKinds } from './lexicon.ts';
import { cutWords, type DangerKind, foldWord, type Word, wordPattern } from './words.ts';

export type Piece = {
  readonly kinds: ReadonlySet<DangerKind>;
  /** the kinds of the word that an ordinary word may have been meant as */
  readonly nearKinds: ReadonlySet<DangerKind>;
  readonly text: string;
  readonly start: number;
  readonly end: number;
  /** a comma or dash stands before it */
  readonly comma: boolean;
  readonly shouted: boolean;
};

export type Sentence = { readonly pieces: readonly Piece[]; readonly mark: string };

function mendAll(words: readonly Word[]): Word[] {
  const { mend } = dangerLexicon();
  const out: Word[] = [];
  for (const word of words) {
    const mended = mend(word.text);
    mended.words.forEach((text, i) => {
      out.push({ ...word, text, gap: i === 0 ? word.gap : 0, near: mended.near });
    });
  }
  return out;
}

function markAfter(text: string, from: number, to: number): string {
  for (let i = from; i < to; i += 1) {
    const c = text[i]!;
    if (c === '?' || c === '？') return '?';
    if (c === '!' || c === '！') return text.slice(i, to).includes('?') ? '?' : '!';
  }
  return '';
}

const kindOfCode = (code: number): 0 | 1 | 2 =>
  (code >= 97 && code <= 122) || (code >= 65 && code <= 90) ? 1 : code >= 48 && code <= 57 ? 2 : 0;

/** The words and numbers of a text as typed. */
function rawWords(text: string): string[] {
  const out: string[] = [];
  let i = 0;
  while (i < text.length) {
    const code = text.charCodeAt(i);
    if (code > 127) return text.match(wordPattern) ?? [];
    const kind = kindOfCode(code);
    const from = i;
    i += 1;
    if (kind === 0) continue;
    while (i < text.length && kindOfCode(text.charCodeAt(i)) === kind) i += 1;
    // a letter beyond ASCII would go on with this word
    if (i < text.length && text.charCodeAt(i) > 127) return text.match(wordPattern) ?? [];
    out.push(text.slice(from, i));
  }
  return out;
}

/** Whether any of the words can begin a danger: most messages hold none, and need not be cut into pieces. */
export function mayHoldDanger(text: string): boolean {
  const { canDo } = dangerLexicon();
  let can = 0;
  let typed = '';
  // the readings of the word before: `isn't` is cut in two here, and is one word to the reader
  let before: Means[number][] = [];
  for (const raw of rawWords(text)) {
    const own = canDo(raw);
    const isTail = (raw === 't' || raw === 'T') && typed !== '';
    const now = isTail ? [...own, ...canDo(`${foldWord(typed)}t`)] : own;
    for (const { text: word, alone } of now) {
      can |= alone;
      for (const { phrases } of before)
        for (const phrase of phrases) if (phrase.seconds.has(word)) can |= phrase.can;
    }
    // words run together lead into each other
    for (let k = 1; k < now.length; k += 1)
      for (const phrase of now[k - 1]!.phrases) if (phrase.seconds.has(now[k]!.text)) can |= phrase.can;
    if ((can & CAN.begin) !== 0 || ((can & CAN.lead) !== 0 && (can & CAN.end) !== 0)) return true;
    // a word of marks alone is none to the reader, and a tail may be none
    before = own.length === 0 || isTail ? [...before, ...now] : now.slice(-1);
    typed = raw;
  }
  return false;
}

/** The phrase that begins at a word, unless a quiet one begins inside it and goes on past it: `le [feu de circulation]`. */
function phraseAt(
  lexicon: DangerLexicon,
  words: readonly Word[],
  at: number,
): ReturnType<typeof longestPhrase> {
  const phrase = longestPhrase(lexicon, words, at);
  if (phrase.kinds.has('quiet')) return phrase;
  for (let i = at + 1; i < at + phrase.length; i += 1) {
    const inner = longestPhrase(lexicon, words, i);
    // the quiet one has to say more than a word and its article
    if (inner.length > 2 && inner.kinds.has('quiet') && i + inner.length > at + phrase.length)
      return { length: 1, kinds: lexicon.single.get(words[at]!.text) ?? noKinds };
  }
  return phrase;
}

/** The sentences of a message, each as phrases known to the danger reader. */
export function cutPieces(text: string): Sentence[] {
  const words = mendAll(cutWords(text));
  const lexicon = dangerLexicon();
  const sentences: Sentence[] = [];
  let pieces: Piece[] = [];
  let i = 0;
  while (i < words.length) {
    const word = words[i]!;
    if (word.gap === 2 && pieces.length > 0) {
      sentences.push({ pieces, mark: markAfter(text, pieces[pieces.length - 1]!.end, word.start) });
      pieces = [];
    }
    const { length, kinds } = phraseAt(lexicon, words, i);
    const last = words[i + length - 1]!;
    pieces.push({
      kinds,
      nearKinds: (length === 1 && word.near !== undefined && lexicon.single.get(word.near)) || noKinds,
      text: word.text,
      start: word.start,
      end: last.end,
      comma: word.gap === 1,
      shouted: words.slice(i, i + length).every((w) => w.shouted),
    });
    i += length;
  }
  if (pieces.length > 0) {
    sentences.push({ pieces, mark: markAfter(text, pieces[pieces.length - 1]!.end, text.length) });
  }
  return sentences;
}
