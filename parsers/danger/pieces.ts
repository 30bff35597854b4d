// Cuts a message into sentences of pieces: each piece is a known phrase with its kinds, or one unknown word.
import { dangerLexicon, longestPhrase, noKinds } from './lexicon.ts';
import { cutWords, type DangerKind, type Word } from './words.ts';

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
    const { length, kinds } = longestPhrase(lexicon, words, i);
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
