import type { Assumption, Doubt, FieldRecord, Request } from '#records';
import type { ReadContext } from './context.ts';
import type { Plain } from './text.ts';
import { sense, type Tok } from './tokens.ts';

/** What has been settled by the pieces already read: later pieces may lean on it. */
export type Carry = {
  place: string | null;
  container: string | null;
  source: string | null;
};

/** One thing a reader found: a record, a doubt or a request; `day` where it has a date other than its run's. */
export type Item =
  | { record: FieldRecord; assumed?: Assumption[]; typed?: string | null; day?: Tok }
  | { doubt: Doubt; day?: Tok }
  | { request: Request };

export type Scope = {
  /** What the tokens point into, for the few that keep the writer's own words. */
  message: Plain;
  context: ReadContext;
  carry: Carry;
  asked: boolean;
  nextTok?: Tok | undefined;
  /** The token behind the next one. */
  afterTok?: Tok | undefined;
  prevTok?: Tok | undefined;
  slipped: boolean;
};

/** A reader: one kind of thing said. It reads a whole run of tokens or nothing at all. */
export type Reader = {
  rule: string;
  /** Classes of words one of which must be there. */
  on: readonly string[];
  read: (tokens: readonly Tok[], scope: Scope) => Item[] | null;
};

/** Classes that no reader minds. */
const ALWAYS = new Set(['fill', 'prep', 'and', 'article', 'greet']);

/** Classes that mean nothing but to the readers that ask for them: to any other such a word is one nobody knows. */
const WEAK = new Set(['food', 'adj', 'contaminant', 'within', 'fullof']);

/** The tokens of a run by class, in order; `all` keeps every token with the class it was taken for. */
export type Slots = {
  get: (cls: string) => readonly Tok[];
  val: (cls: string) => string | undefined;
  nums: readonly Tok[];
  all: readonly { cls: string; tok: Tok }[];
  dates: readonly Tok[];
  unknown: readonly Tok[];
};

const EMPTY: readonly Tok[] = [];
const SOFT = new Set([
  ',',
  '+',
  '&',
  '-',
  ':',
  '/',
  '(',
  ')',
  '>',
  '|',
  '*',
  '"',
  '=',
  '.',
  '!',
  "'",
  '_',
  '@',
  '~',
  ';',
]);
export const isSoft = (token: Tok) => token.k === 'p' && SOFT.has(token.s) && token.senses.length === 0;

/** The order of a reader's classes, and the token it last stumbled over, with where it stood in the run. */
type Ranks = { of: ReadonlyMap<string, number>; stumbled: Tok | null; at: number };

const RANKS = new WeakMap<readonly string[], Ranks>();

/** The order of a reader's classes, for a quick look-up. */
function ranksOf(accepts: readonly string[]): Ranks {
  let ranks = RANKS.get(accepts);
  if (!ranks) {
    const map = new Map<string, number>();
    accepts.forEach((cls, rank) => {
      if (!map.has(cls)) map.set(cls, rank);
    });
    ranks = { of: map, stumbled: null, at: 0 };
    RANKS.set(accepts, ranks);
  }
  return ranks;
}

/** The rank of the meaning by which a reader takes a word, or -1. */
function rankedSense(tok: Tok, ranks: ReadonlyMap<string, number>): string | undefined {
  let cls: string | undefined;
  let best = Number.POSITIVE_INFINITY;
  for (const meaning of tok.senses) {
    const rank = ranks.get(meaning.cls);
    if (rank !== undefined && rank < best) {
      best = rank;
      cls = meaning.cls;
    }
  }
  return cls;
}

/** The class by which a reader takes a token; `?` a word nobody knows, null where it does not take it. */
function classOf(tok: Tok, ranks: ReadonlyMap<string, number>): string | null {
  if (tok.k === 'd') return 'd';
  if (tok.k === 'n') {
    if (tok.n!.named && ranks.has('place')) return 'place';
    if (ranks.has('n')) return 'n';
    return ranks.has('place') && sense(tok, 'place?') !== undefined ? 'place' : null;
  }
  const cls = rankedSense(tok, ranks);
  if (cls) return cls;
  for (const meaning of tok.senses) {
    if (!ALWAYS.has(meaning.cls)) continue;
    return sense(tok, 'prep') ? ' prep' : sense(tok, 'and') !== undefined ? ' and' : ' fill';
  }
  if (isSoft(tok)) return ' sep';
  return tok.k === 'w' && tok.senses.every((meaning) => WEAK.has(meaning.cls)) ? '?' : null;
}

/**
 * Sorts a run's tokens into the classes that a reader accepts, trying them in the reader's order.
 * Null where a token fits none of them (a number where `n` is not accepted, a word nobody knows).
 * `lenient` lets so many unknown words pass.
 */
export function take(tokens: readonly Tok[], accepts: readonly string[], lenient = 0): Slots | null {
  const ranks = ranksOf(accepts);
  // Runs are tried from the longest: what made the last one fail is still in most that follow.
  if (lenient === 0 && ranks.stumbled && tokens[ranks.at] === ranks.stumbled) return null;
  const classes: string[] = [];
  let strangers = 0;
  for (let k = 0; k < tokens.length; k++) {
    const tok = tokens[k]!;
    const cls = classOf(tok, ranks.of);
    if (cls === null || (cls === '?' && ++strangers > lenient)) {
      if (lenient === 0) {
        ranks.stumbled = tok;
        ranks.at = k;
      }
      return null;
    }
    classes.push(cls);
  }
  return slotsOf(tokens, classes);
}

function slotsOf(tokens: readonly Tok[], classes: readonly string[]): Slots {
  const found = new Map<string, Tok[]>();
  const all: { cls: string; tok: Tok }[] = [];
  const dates: Tok[] = [];
  const unknown: Tok[] = [];
  for (let k = 0; k < tokens.length; k++) {
    const tok = tokens[k]!;
    const cls = classes[k]!;
    if (tok.k === 'd') {
      dates.push(tok);
      continue;
    }
    if (cls === '?') {
      unknown.push(tok);
      all.push({ cls, tok });
      continue;
    }
    if (cls.charCodeAt(0) === 32) {
      all.push({ cls: cls.slice(1), tok });
      continue;
    }
    const list = found.get(cls);
    if (list) list.push(tok);
    else found.set(cls, [tok]);
    all.push({ cls, tok });
  }
  return {
    get: (cls) => found.get(cls) ?? EMPTY,
    val: (cls) => {
      const first = found.get(cls)?.[0];
      return first && (sense(first, cls) ?? (cls === 'place' ? sense(first, 'place?') : undefined));
    },
    nums: found.get('n') ?? EMPTY,
    all,
    dates,
    unknown,
  };
}

/** Whether a slot is a link of one of these kinds: `from`, `onto`; a word may be several (`de`, `en`). */
export const isPrep = (one: { cls: string; tok: Tok }, ...kinds: readonly string[]): boolean =>
  one.cls === 'prep' &&
  one.tok.senses.some((meaning) => meaning.cls === 'prep' && kinds.includes(meaning.val));

/** Whether a comma stands before a number whose unit was not said: it then belongs to something else. */
export function looseBehindComma(slots: Slots): boolean {
  let comma = false;
  for (const { cls, tok } of slots.all) {
    if (cls === 'sep' && tok.s === ',') comma = true;
    if (cls === 'n' && comma && tok.n!.unit === null) return true;
  }
  return false;
}

/** The places among a run's slots, in order, each once. */
export function placesOf(slots: Slots): string[] {
  const out: string[] = [];
  for (const tok of slots.get('place')) {
    const place = sense(tok, 'place') ?? sense(tok, 'place?');
    if (place && !out.includes(place)) out.push(place);
  }
  return out;
}

/** Drops fields that were not said, so that records stay as short as what was said. */
export function bare<T extends Record<string, unknown>>(record: T): T {
  for (const key of Object.keys(record))
    if (record[key] === undefined || record[key] === null) delete record[key];
  return record;
}

/** Rids a converted value of floating-point noise. @example tidy(64.41011654000001) // 64.41011654 */
export const tidy = (value: number): number => Number(value.toPrecision(12));

/** Whether the site has this place, or it is one that every site has. */
export function isKnown(place: string, context: ReadContext): boolean {
  if (context.piles.includes(place)) return true;
  if (place === 'ambient' || place === 'floor' || place === 'lift') return true;
  if (place === 'exit') return true;
  return context.drums.some((drum) => drum.name === place) || (place === 'drum' && context.drums.length > 0);
}
