/** The site's own list of what may go in: plain names, or names with yes or no. */
export type AcceptsList = readonly string[] | Readonly<Record<string, boolean>>;

/** `item` is the line of the list that decided; `near` are lines that share a word with what was asked. */
export type Acceptance = { answer: 'yes' | 'no' | 'not-on-list'; item: string | null; near: string[] };

const SMALL = new Set([
  'the',
  'a',
  'an',
  'of',
  'de',
  'des',
  'du',
  'la',
  'le',
  'les',
  'el',
  'los',
  'las',
  'and',
  'et',
  'y',
]);

function wordsOf(text: string): string[] {
  const plain = text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  return (plain.match(/[\p{L}\p{N}]+/gu) ?? [])
    .filter((word) => !SMALL.has(word))
    .map((word) =>
      word.length > 3 && word.endsWith('s') && !word.endsWith('ss') ? word.slice(0, -1) : word,
    );
}

/**
 * The lines of a site's list, each with its name and whether it may go in.
 * @source the site's list; no published source.
 * @example acceptedLines(['bread', 'no meat']) // [{ item: 'bread', name: 'bread', yes: true }, { item: 'no meat', name: 'meat', yes: false }]
 */
export function acceptedLines(list: AcceptsList): { item: string; name: string; yes: boolean }[] {
  return Array.isArray(list)
    ? (list as readonly string[]).map((line) => {
        const no = /^\s*(no|not|non|pas de)\b[\s:]+/iu.exec(line);
        return { item: line, name: no ? line.slice(no[0].length) : line, yes: !no };
      })
    : Object.entries(list).map(([item, yes]) => ({ item, name: item, yes }));
}

/**
 * Whether something may go in, by the site's own list and nothing else. A line counts as yes only where it
 * names the very thing; a `no` reaches what is more closely described too (`meat` covers `cooked meat`),
 * for that errs on the safe side. In a list of plain names, one that begins with `no` is a no.
 * @source the site's list; no published source.
 * @example acceptance({ bread: true, 'compostable cups': false }, 'compostable cup') // { answer: 'no', item: 'compostable cups', near: [] }
 */
export function acceptance(list: AcceptsList, what: string): Acceptance {
  const lines = acceptedLines(list);
  const asked = wordsOf(what);
  const named = lines.map((line) => ({ ...line, words: wordsOf(line.name) }));
  const within = (few: string[], many: string[]) =>
    few.length > 0 && few.every((word) => many.includes(word));
  const same = named.filter((line) => within(line.words, asked) && within(asked, line.words));
  // Two lines that contradict each other: the careful one.
  const exact = same.find((line) => !line.yes) ?? same[0];
  if (exact) return { answer: exact.yes ? 'yes' : 'no', item: exact.item, near: [] };
  const refused = named.find((line) => !line.yes && within(line.words, asked));
  if (refused) return { answer: 'no', item: refused.item, near: [] };
  const near = named
    .filter((line) => line.words.some((word) => asked.includes(word)))
    .map((line) => line.item);
  return { answer: 'not-on-list', item: null, near };
}
