import type { Unit } from '#records';
import { F, type UnitNode } from './lexicon.ts';
import { NUMBER } from './scan.ts';
import { GLUED, HYPHEN, LINE, SYMBOL, type Token, WORD } from './tokens.ts';

/** A unit behind a number; `end` is the token behind it. */
export interface UnitFound {
  unit: Unit | null;
  end: number;
  degrees: boolean;
}

/** The unit that begins at token `at`, right behind a number that takes `of` (or not); null where there is none. */
export function readUnit(
  tokens: Token[],
  at: number,
  takesOf: boolean,
  openQuote: boolean,
  general: boolean,
): UnitFound | null {
  const first = tokens[at];
  if (!first || first.gap === LINE) return null;
  const direct = longest(tokens, at, takesOf, openQuote, general);
  if (direct) return direct;
  if (first.kind !== WORD) return null;
  let from = at;
  // `5 US gallons`
  if ((first.word?.flags ?? 0) & F.filler) {
    from++;
    if (tokens[from]?.key === 's' && first.key === 'u') from++;
  } else if (takesOf) {
    from = pastOf(tokens, at);
  }
  if (from === at || !tokens[from] || tokens[from]!.gap === LINE) return null;
  return longest(tokens, from, takesOf, openQuote, general);
}

/** Past `of`, `of a`, `a`, `de`, `d'un` between a share and its unit. */
function pastOf(tokens: Token[], at: number): number {
  let from = at;
  if ((tokens[from]?.word?.flags ?? 0) & F.of) {
    from++;
    if (tokens[from]?.kind === SYMBOL && tokens[from]!.key === "'" && tokens[from]!.gap === GLUED) from++;
  }
  const word = tokens[from]?.kind === WORD ? tokens[from]!.word : undefined;
  if (word && word.flags & (F.article | F.weakOne)) from++;
  return from;
}

function longest(
  tokens: Token[],
  at: number,
  share: boolean,
  openQuote: boolean,
  general: boolean,
): UnitFound | null {
  const first = tokens[at]!;
  let node: UnitNode | undefined = first.lexicon.units.next!.get(first.key);
  if (!node || !startsUnit(tokens, at, openQuote)) return null;
  let best: UnitFound | null = null;
  let end = at + 1;
  for (;;) {
    if (node.unit !== undefined || node.degrees) {
      if (!(node.shy && !isUnitDespiteWord(tokens, at, end, share)))
        best = { unit: node.unit ?? null, end, degrees: node.unit === undefined };
    }
    if (!node.next) break;
    let token = tokens[end];
    // `fl. oz`
    if (token?.kind === SYMBOL && token.key === '.' && token.gap === GLUED && tokens[end + 1])
      token = tokens[++end];
    if (!token || token.gap === LINE) break;
    const next: UnitNode | undefined = node.next.get(token.key);
    if (!next) break;
    node = next;
    end++;
  }
  if (!best || (best.end === at + 1 && namesNext(tokens, at, general))) return null;
  const last = tokens[best.end - 1]!;
  if (last.kind === WORD && elides(tokens, best.end)) return null;
  return isRate(tokens, best) ? { ...best, unit: null } : best;
}

/** `5 d'entre eux`, `2 l'heure`: the letter belongs to the next word. */
function elides(tokens: Token[], at: number): boolean {
  const mark = tokens[at];
  const after = tokens[at + 1];
  return (
    mark?.kind === SYMBOL &&
    mark.key === "'" &&
    mark.gap === GLUED &&
    after?.kind === WORD &&
    after.gap === GLUED &&
    tokens[at - 1]!.end - tokens[at - 1]!.start === 1
  );
}

/** Quotes and the number sign are units only where they are glued to the number and close no quotation. */
function startsUnit(tokens: Token[], at: number, openQuote: boolean): boolean {
  const token = tokens[at]!;
  if (token.kind === WORD) {
    // `3D`: a capital stuck to a digit is a name, unless it is one of the usual units.
    return !(token.gap === GLUED && token.capital && token.key === 'd');
  }
  if (token.key === '"') return token.gap === GLUED && !openQuote;
  if (token.key === "'") {
    const after = tokens[at + 1];
    return token.gap === GLUED && !(after?.kind === WORD && after.gap === GLUED);
  }
  if (token.key === '#') {
    const after = tokens[at + 1];
    return (
      !(after?.kind === NUMBER && after.gap === GLUED) && (token.gap === GLUED || after?.kind !== NUMBER)
    );
  }
  return true;
}

/** `5 in`, `5in deep` and `5/16 in holes` are inches, `5 in the pile` are not. */
function isUnitDespiteWord(tokens: Token[], at: number, end: number, share: boolean): boolean {
  if (tokens[at]!.gap === GLUED || tokens[at]!.gap === HYPHEN) return true;
  const after = tokens[end];
  if (!after || after.gap === LINE || after.kind !== WORD)
    return after?.kind !== NUMBER || tokens[at]!.key !== 'in';
  if (share && !((after.word?.flags ?? 0) & (F.common | F.article))) return true;
  return LENGTH_WORDS.has(after.key);
}

const LENGTH_WORDS = new Set([
  'x',
  'by',
  'long',
  'wide',
  'deep',
  'tall',
  'high',
  'thick',
  'down',
  'of',
  'below',
  'above',
  'de',
]);

/** `5 m/s`, `60 kg/m3`, `12 feet per second`: no length and no weight. */
function isRate(tokens: Token[], found: UnitFound): boolean {
  const mark = tokens[found.end];
  const after = tokens[found.end + 1];
  if (!mark || !after || mark.gap === LINE) return false;
  if (
    mark.kind === SYMBOL &&
    mark.key === '/' &&
    mark.gap === GLUED &&
    after.kind === WORD &&
    after.gap === GLUED
  )
    return after.key === 's' || after.lexicon.units.next!.has(after.key);
  const length = found.unit === 'm' || found.unit === 'ft' || found.unit === 'cm';
  if (!length || mark.kind !== WORD || !((mark.word?.flags ?? 0) & F.per)) return false;
  return TIME_WORDS.has(after.key);
}

const TIME_WORDS = new Set([
  'second',
  'minute',
  'hour',
  'sec',
  's',
  'seconde',
  'heure',
  'segundo',
  'minuto',
  'hora',
]);

/** `A 30 C57` and, on a site, `B 47 C 57`: the letter is the pile of the next number. */
function namesNext(tokens: Token[], at: number, general: boolean): boolean {
  const letter = tokens[at]!;
  const next = tokens[at + 1];
  if (letter.kind !== WORD || letter.key.length !== 1 || letter.gap === GLUED || next?.kind !== NUMBER)
    return false;
  if (next.gap === GLUED) return true;
  if (general || next.gap === LINE || !(letter.key === 'c' || letter.key === 'f')) return false;
  const after = tokens[at + 2];
  return !(after && after.gap !== LINE && after.lexicon.units.next!.has(after.key));
}
