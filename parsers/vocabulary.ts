import type { Language } from '#records';
import type { ReadContext } from './context.ts';
import { LEXICONS } from './languages/index.ts';
import { addPhrase, addWords, type Lexicon, type Node, slipIndex, type Vocabulary } from './lexicon.ts';
import { plain } from './text.ts';

const SIZE = 16;
const cache = new Map<string, Vocabulary>();

function keyOf(context: ReadContext): string {
  return [
    context.languages.join(),
    context.sources.join('\u0001'),
    Object.keys(context.containers).join('\u0001'),
    context.materials.join('\u0001'),
    context.duties.join('\u0001'),
    context.drums.map((drum) => drum.name).join('\u0001'),
  ].join('\u0002');
}

/** The words of the site's languages with the site's own names, built once and kept. */
export function vocabularyFor(context: ReadContext): Vocabulary {
  const key = keyOf(context);
  const have = cache.get(key);
  if (have) return have;
  const lexicons = context.languages.map((language: Language) => LEXICONS[language]);
  const root = new Map<string, Node>();
  for (const lexicon of lexicons) for (const words of lexicon.words) addWords(root, words, lexicon.language);
  for (const source of context.sources)
    for (const name of sourceNames(source, lexicons)) {
      // `cafe` is the site's café, not the coffee grounds that the word else stands for.
      dropMeaning(root, name, 'material');
      addPhrase(root, name, { cls: 'source', val: source, lang: null });
    }
  // `ek`, `dc`: the initials of a source, where they mean nothing else.
  for (const source of context.sources) {
    const words = plain(source).text.replaceAll('-', ' ').split(' ');
    const initials = words.map((word) => word[0]).join('');
    if (words.length > 1 && !root.has(initials))
      addPhrase(root, initials, { cls: 'source', val: source, lang: null });
  }
  const own = (cls: string, names: readonly string[]) => {
    for (const name of names) {
      const folded = plain(name).text.replaceAll('-', ' ');
      for (const form of [folded, `${folded}s`]) addPhrase(root, form, { cls, val: name, lang: null });
    }
  };
  own(
    'container',
    Object.keys(context.containers).filter((name) => !/ \S+$/.test(name) && !root.has(name)),
  );
  own('material', context.materials);
  own('duty', context.duties);
  shareBehindArticles(root);
  shareLastArticle(root);
  const vocabulary = {
    root,
    elisions: new Set(lexicons.flatMap((lexicon) => lexicon.elisions.split('|')).filter(Boolean)),
    everyday: new Set(lexicons.flatMap((lexicon) => lexicon.everyday?.trim().split(/\s+/) ?? [])),
    slips: slipIndex(root),
  };
  if (cache.size >= SIZE) cache.delete(cache.keys().next().value!);
  cache.set(key, vocabulary);
  return vocabulary;
}

function dropMeaning(root: Map<string, Node>, phrase: string, cls: string): void {
  const [first, ...rest] = phrase.split(' ');
  let node = root.get(first!);
  for (const word of rest) node = node?.next?.get(word);
  if (node?.senses) node.senses = node.senses.filter((sense) => sense.cls !== cls);
  if (node?.senses?.length === 0) node.senses = null;
}

/** A phrase that begins with an article means besides what it means without: `la bascula` is a scale too. */
function shareBehindArticles(root: Map<string, Node>): void {
  for (const node of root.values()) {
    if (!node.next || !node.senses?.some((sense) => sense.cls === 'definite')) continue;
    for (const [next, child] of node.next) {
      const plainWord = root.get(next);
      if (plainWord) share(child, plainWord);
    }
  }
}

/** A phrase that ends in the article of a pile (`de la`) leads up to a pile's number as the article alone does. */
function shareLastArticle(root: Map<string, Node>): void {
  const visit = (nodes: Map<string, Node>, deep: boolean) => {
    for (const [word, node] of nodes) {
      const article = deep && root.get(word)?.senses?.find((sense) => sense.cls === 'pilearticle');
      if (article && node.senses && !node.senses.includes(article)) node.senses.push(article);
      if (node.next) visit(node.next, true);
    }
  };
  visit(root, false);
}

function share(into: Node, from: Node): void {
  if (into.senses && from.senses)
    for (const sense of from.senses)
      if (!into.senses.some((have) => have.cls === sense.cls && have.val === sense.val))
        into.senses.push(sense);
  // What goes on behind the word goes on behind the article too: `la barrière est barrée`.
  for (const [word, other] of from.next ?? []) {
    into.next ??= new Map();
    const child = into.next.get(word);
    if (child) share(child, other);
    else into.next.set(word, other);
  }
}

/** A source may bear any name, also one that every object answers to (`constructor`). */
const sourceWord = (lexicon: Lexicon, word: string): string | undefined =>
  Object.hasOwn(lexicon.sourceWords, word) ? lexicon.sourceWords[word] : undefined;

/** The ways a source's name may be written: its words in each language, in either order, shortened. */
function sourceNames(source: string, lexicons: readonly Lexicon[]): Set<string> {
  const folded = plain(source).text.replaceAll('-', ' ');
  const names = new Set([folded]);
  const mixed = (word: string) => lexicons.flatMap((one) => (sourceWord(one, word) ?? word).split('|'));
  for (const lexicon of lexicons) {
    const whole = sourceWord(lexicon, folded);
    if (whole) for (const name of whole.split('|')) names.add(name);
    const words = folded.split(' ');
    if (words.length < 2 || whole) continue;
    const each = words.map((word) => [...new Set(mixed(word))]);
    let forms = [[] as string[]];
    for (const choices of each)
      forms = forms.flatMap((form) => choices.map((choice) => [...form, choice])).slice(0, 400);
    for (const form of forms) {
      names.add(form.join(' '));
      if (form.length === 2) {
        names.add(`${form[1]} ${form[0]}`);
        for (const link of (lexicon.sourceWords['&link'] ?? '').split('|').filter(Boolean))
          names.add(`${form[1]} ${link} ${form[0]}`);
      }
    }
  }
  // A name of one short letter pair would take words that mean something else.
  return new Set([...names].filter((name) => name.length > 2));
}
