// Mends slips of spelling, towards the words of danger only: one edit, drawn-out letters, words run together.
// Everyday words are left as they are.

/** What a typed word most likely is: `word` mended, or untouched with `near` the danger word it resembles. */
type Mended = { readonly words: readonly string[]; readonly near: string | undefined };

export type Mender = (word: string) => Mended;

const keyRows = ['qwertyuiop', 'asdfghjkl', 'zxcvbnm'];
const keyAt = new Map<string, readonly [number, number]>();
keyRows.forEach((row, y) => {
  for (let x = 0; x < row.length; x += 1) keyAt.set(row[x]!, [x + y * 0.5, y]);
});

function keysTouch(a: string, b: string): boolean {
  const [p, q] = [keyAt.get(a), keyAt.get(b)];
  return p !== undefined && q !== undefined && Math.abs(p[0] - q[0]) <= 1 && Math.abs(p[1] - q[1]) <= 1;
}

/** The kind of single slip that turns `typed` into `meant`, or null where it takes more than one. */
function slipBetween(
  typed: string,
  meant: string,
): 'swap' | 'other-key' | 'letter' | 'doubled' | 'lost' | 'extra' | null {
  const shorter = Math.min(typed.length, meant.length);
  let head = 0;
  while (head < shorter && typed[head] === meant[head]) head += 1;
  let tail = 0;
  while (tail < shorter - head && typed[typed.length - 1 - tail] === meant[meant.length - 1 - tail])
    tail += 1;
  const a = typed.slice(head, typed.length - tail);
  const b = meant.slice(head, meant.length - tail);
  if (a.length === 1 && b.length === 1) return keysTouch(a, b) ? 'other-key' : 'letter';
  if (a.length === 2 && b.length === 2 && a[0] === b[1] && a[1] === b[0]) return 'swap';
  if (a.length === 0 && b.length === 1) return 'lost';
  if (a.length === 1 && b.length === 0) {
    return typed[head - 1] === a || typed[head + 1] === a ? 'doubled' : 'extra';
  }
  return null;
}

function deletions(word: string): string[] {
  const out: string[] = [];
  for (let i = 0; i < word.length; i += 1) {
    if (i > 0 && word[i] === word[i - 1]) continue;
    out.push(word.slice(0, i) + word.slice(i + 1));
  }
  return out;
}

/** A short word is mended only where fingers swapped, doubled or missed to the next key. */
const isSafeFor = (slip: ReturnType<typeof slipBetween>, length: number): boolean =>
  slip !== null && (length >= 5 || slip === 'swap' || slip === 'doubled' || slip === 'other-key');

const longestWord = 40;
const remembered = 4000;

/** Builds a mender towards `targets`; `known` are all words that stay as they are. */
export function makeMender(
  targets: Iterable<string>,
  known: ReadonlySet<string>,
  slips: ReadonlyMap<string, string>,
): Mender {
  const shadows = new Map<string, string[]>();
  const squeezed = new Map<string, string>();
  const add = (shadow: string, word: string): void => {
    const list = shadows.get(shadow);
    if (list === undefined) shadows.set(shadow, [word]);
    else if (!list.includes(word)) list.push(word);
  };
  for (const word of targets) {
    squeezed.set(word.replace(/(.)\1+/g, '$1'), word);
    if (word.length < 4) continue;
    add(word, word);
    for (const shadow of deletions(word)) add(shadow, word);
  }

  const oneSlipFrom = (word: string): string | undefined => {
    let best: string | undefined;
    let bestLength = 0;
    for (const shadow of [word, ...deletions(word)]) {
      for (const meant of shadows.get(shadow) ?? []) {
        if (meant === word || meant.length <= bestLength) continue;
        const length = Math.min(meant.length, word.length + 1);
        if (!isSafeFor(slipBetween(word, meant), length)) continue;
        best = meant;
        bestLength = meant.length;
      }
    }
    return best;
  };

  const split = (word: string): string[] | undefined => {
    // fewest pieces from the left; each piece is a known word, the short ones only beside longer ones
    const cuts: (number | undefined)[] = [0];
    const pieces: number[] = [0];
    for (let end = 1; end <= word.length; end += 1) {
      for (let start = Math.max(0, end - 14); start <= end - 2; start += 1) {
        if (cuts[start] === undefined || !known.has(word.slice(start, end))) continue;
        const cost = pieces[start]! + (end - start < 3 ? 3 : 1);
        if (cuts[end] === undefined || cost < pieces[end]!) {
          cuts[end] = start;
          pieces[end] = cost;
        }
      }
    }
    if (cuts[word.length] === undefined || pieces[word.length]! > word.length / 2) return undefined;
    const out: string[] = [];
    for (let end = word.length; end > 0; end = cuts[end]!) out.unshift(word.slice(cuts[end]!, end));
    return out;
  };

  const mend = (word: string): Mended => {
    const slip = slips.get(word);
    if (slip !== undefined) return { words: slip.split(' '), near: undefined };
    if (known.has(word)) return { words: [word], near: word.length >= 3 ? oneSlipFrom(word) : undefined };
    if (/(.)\1\1/.test(word)) {
      const two = word.replace(/(.)\1{2,}/g, '$1$1');
      const one = word.replace(/(.)\1{2,}/g, '$1');
      for (const candidate of [one, two])
        if (known.has(candidate)) return { words: [candidate], near: undefined };
      const all = squeezed.get(word.replace(/(.)\1+/g, '$1'));
      if (all !== undefined) return { words: [all], near: undefined };
      const mended = oneSlipFrom(one) ?? oneSlipFrom(two);
      if (mended !== undefined) return { words: [mended], near: undefined };
    }
    const mended = oneSlipFrom(word);
    if (mended !== undefined) return { words: [mended], near: undefined };
    return { words: (word.length >= 6 ? split(word) : undefined) ?? [word], near: undefined };
  };

  // Remembering is for speed alone: the answer to a word is always the same.
  const memory = new Map<string, Mended>();
  return (word) => {
    const seen = memory.get(word);
    if (seen !== undefined) return seen;
    const fresh =
      word.length > longestWord || word.length < 3 || /\d/.test(word)
        ? { words: [slips.get(word) ?? word], near: undefined }
        : mend(word);
    if (memory.size >= remembered) memory.clear();
    memory.set(word, fresh);
    return fresh;
  };
}
