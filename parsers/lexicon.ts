import type { Language } from '#records';

/** One meaning of a word: its class (`container`, `material`, `turn` …), which one, and whose word it is. */
export type Sense = { readonly cls: string; readonly val: string; readonly lang: Language | null };

/** The words of one language: concept → its words and phrases, parted by `|`; folded (no accents, lower case). */
export type Words = Readonly<Record<string, string>>;

/** A language of the crew: everything the reader knows of it, as data. */
export type Lexicon = {
  language: Language;
  words: readonly Words[];
  /** Words cut off by an apostrophe at the start of another: l'eau. */
  elisions: string;
  /** `1,250` groups thousands in this language. */
  commaGroups: boolean;
  /** Everyday words that a slip of spelling is never read into inside a sentence, parted by spaces. */
  everyday?: string;
  /** The words of a source's name, to find it under its name in this language: kitchen → cuisine. */
  sourceWords: Words;
};

export type Node = { senses: Sense[] | null; next: Map<string, Node> | null };

/** Every word and phrase a site's crew may use, as a trie by words, with an index for slips of spelling. */
export type Vocabulary = {
  root: Map<string, Node>;
  elisions: ReadonlySet<string>;
  /** Words in their own right, that are no slips of the words of the trade. */
  everyday: ReadonlySet<string>;
  /** A word with one letter left out → words that it may have been. */
  slips: Map<string, string[]>;
};

const newNode = (): Node => ({ senses: null, next: null });

/** Adds a phrase (folded, words parted by spaces) with one meaning. */
export function addPhrase(root: Map<string, Node>, phrase: string, sense: Sense): void {
  const words = phrase.split(' ').filter(Boolean);
  const first = words[0];
  if (first === undefined) return;
  let node = root.get(first);
  if (!node) {
    node = newNode();
    root.set(first, node);
  }
  for (let k = 1; k < words.length; k++) {
    node.next ??= new Map();
    let next = node.next.get(words[k]!);
    if (!next) {
      next = newNode();
      node.next.set(words[k]!, next);
    }
    node = next;
  }
  node.senses ??= [];
  if (!node.senses.some((have) => have.cls === sense.cls && have.val === sense.val)) node.senses.push(sense);
}

export function addWords(root: Map<string, Node>, words: Words, language: Language | null): void {
  for (const [concept, phrases] of Object.entries(words)) {
    const colon = concept.indexOf(':');
    const cls = colon < 0 ? concept : concept.slice(0, colon);
    const val = colon < 0 ? '' : concept.slice(colon + 1);
    for (const phrase of phrases.split('|')) addPhrase(root, phrase.trim(), { cls, val, lang: language });
  }
}

/** Classes whose words are never offered as the mending of a slip: too short or too common to be meant. */
const NO_SLIPS = new Set([
  'fill',
  'prep',
  'greet',
  'ask',
  'cond',
  'hearsay',
  'and',
  'numw',
  'talk',
  'article',
  'ordinary',
  'money',
  'about',
  'req',
  'set',
  'set!',
  'yes',
  'noans',
  'choice',
  'neg',
  'intent',
  'because',
  'gloss',
  'sink',
  'border',
]);

export function slipIndex(root: Map<string, Node>): Map<string, string[]> {
  const index = new Map<string, string[]>();
  const add = (key: string, word: string) => {
    const list = index.get(key);
    if (list) list.push(word);
    else index.set(key, [word]);
  };
  const seen = new Set<string>();
  const visit = (word: string, node: Node, later: boolean) => {
    const useful = later || (node.senses?.some((sense) => !NO_SLIPS.has(sense.cls)) ?? false) || node.next;
    const short =
      word.length === 3 &&
      (node.senses?.some((sense) => sense.cls === 'container' || sense.cls === 'pilehead') ?? false);
    if (useful && (word.length >= 4 || short) && !seen.has(word)) {
      seen.add(word);
      add(word, word);
      for (let k = 0; k < word.length; k++) add(word.slice(0, k) + word.slice(k + 1), word);
    }
    if (node.next) for (const [next, child] of node.next) visit(next, child, true);
  };
  for (const [word, node] of root) visit(word, node, false);
  return index;
}

/** Words one slip away (a letter wrong, missing, doubled, or two swapped), nearest first. */
export function mendings(vocabulary: Vocabulary, word: string): string[] {
  const found = new Set<string>();
  const look = (key: string) => {
    for (const candidate of vocabulary.slips.get(key) ?? [])
      if (candidate !== word && oneSlip(word, candidate)) found.add(candidate);
  };
  look(word);
  for (let k = 0; k < word.length; k++) look(word.slice(0, k) + word.slice(k + 1));
  return [...found];
}

function oneSlip(a: string, b: string): boolean {
  const gap = a.length - b.length;
  if (gap > 1 || gap < -1) return false;
  let k = 0;
  while (k < a.length && k < b.length && a[k] === b[k]) k++;
  if (gap === 1) return a.slice(k + 1) === b.slice(k);
  if (gap === -1) return a.slice(k) === b.slice(k + 1);
  if (a.slice(k + 1) === b.slice(k + 1)) return true;
  return a[k] === b[k + 1] && a[k + 1] === b[k] && a.slice(k + 2) === b.slice(k + 2);
}

/** What a whole phrase of a vocabulary is in a class, as `material`; null where it is nothing there. */
export function senseOf(phrase: string, cls: string, vocabulary: Vocabulary): string | null {
  const [first, ...rest] = phrase.trim().split(' ');
  let node = vocabulary.root.get(first ?? '');
  for (const word of rest) node = node?.next?.get(word);
  return node?.senses?.find((sense) => sense.cls === cls)?.val ?? null;
}
