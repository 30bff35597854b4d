// Turns the languages' danger words into one table of phrases and one mender; built once, at first use.
import { dangerEn } from '../languages/en/danger.ts';
import { dangerEs } from '../languages/es/danger.ts';
import { dangerFr } from '../languages/fr/danger.ts';
import { type Mender, makeMender } from './mend.ts';
import { firstNames } from './names.ts';
import { type DangerKind, type DangerWords, foldWord, kinds, type Word } from './words.ts';

/** One slot of a pattern: the phrases that may stand there, by their first word. */
type Slot = {
  readonly choices: ReadonlyMap<string, readonly (readonly string[])[]>;
  readonly isOptional: boolean;
};

type Pattern = {
  readonly slots: readonly Slot[];
  readonly kind: DangerKind;
  /** every word that can come second: most patterns are ruled out by it at once */
  readonly seconds: ReadonlySet<string>;
};

export type DangerLexicon = {
  readonly single: ReadonlyMap<string, ReadonlySet<DangerKind>>;
  readonly patterns: ReadonlyMap<string, readonly Pattern[]>;
  readonly mend: Mender;
  /** What a word, as typed, can do in a danger; remembered by the word. */
  readonly canDo: (raw: string) => Means;
};

/** The words a typed word is mended to, what each can do by itself (a sum of `CAN` bits) and with the next. */
export type Means = readonly {
  readonly text: string;
  readonly alone: number;
  readonly phrases: readonly { readonly seconds: ReadonlySet<string>; readonly can: number }[];
}[];

/** A word can begin a danger; it can lead into a machine; it can be that machine. */
export const CAN = { begin: 1, lead: 2, end: 4 } as const;
/** Kinds that lead to a danger only where an end stands in the same message: `in`, `under`, `reached`. */
const leading: ReadonlySet<DangerKind> = new Set(['within', 'under', 'inside', 'reach']);
const ending: ReadonlySet<DangerKind> = new Set(['machine', 'running', 'inside', 'heavy']);
const beginning: ReadonlySet<DangerKind> = new Set([
  'needle',
  'pricked',
  'gasLeak',
  'burntSmell',
  'caught',
  'hurt',
  'smoke',
  'smoking',
  'fire',
  'unwell',
  'gas',
  'body',
  'clothes',
  'stuck',
  'buried',
  'fall',
  'strike',
  'knock',
  'down',
  'burn',
  'cry',
  'plead',
]);

/** Kinds whose words are mended to; a slip in any other word changes nothing. */
const mendedKinds: readonly DangerKind[] = [
  'cry',
  'hurt',
  'unwell',
  'caught',
  'stuck',
  'grip',
  'body',
  'machine',
  'vehicle',
  'smoke',
  'smoking',
  'fire',
  'burn',
  'smell',
  'burntSmell',
  'needle',
  'prick',
  'pricked',
  'gasLeak',
  'reach',
  'inside',
];

const wordsOf = (phrase: string): string[] =>
  phrase
    .split(/\s+/)
    .filter((word) => word !== '')
    .map(foldWord);

function slotsOf(pattern: string): Slot[] {
  const slots: Slot[] = [];
  // `{a|b|} c`: what stands in braces is one slot, and so is each bare word
  for (const [piece] of pattern.matchAll(/\{[^}]*\}|[^\s{}]+/g)) {
    const phrases = (piece.startsWith('{') ? piece.slice(1, -1).split('|') : [piece]).map(wordsOf);
    const choices = new Map<string, string[][]>();
    for (const words of phrases) {
      const first = words[0];
      if (first === undefined) continue;
      const same = choices.get(first);
      if (same === undefined) choices.set(first, [words]);
      else same.push(words);
    }
    slots.push({ choices, isOptional: phrases.some((words) => words.length === 0) });
  }
  return slots;
}

function secondWords(slots: readonly Slot[]): Set<string> {
  const seconds = new Set<string>();
  slots.forEach((slot, i) => {
    for (const same of slot.choices.values())
      for (const words of same) if (words[1] !== undefined) seconds.add(words[1]);
    if (i > 0) for (const word of slot.choices.keys()) seconds.add(word);
  });
  return seconds;
}

function* firstWords(slots: readonly Slot[]): Generator<string> {
  for (const slot of slots) {
    yield* slot.choices.keys();
    if (!slot.isOptional) return;
  }
}

/** The single words that a pattern can stand for when it is no longer than that. */
function* loneWords(slots: readonly Slot[]): Generator<string> {
  for (const [i, slot] of slots.entries()) {
    if (!slots.every((other, k) => k === i || other.isOptional)) continue;
    for (const same of slot.choices.values())
      for (const words of same) if (words.length === 1) yield words[0]!;
  }
}

/** How many of the words from `at` on a pattern covers, at most; 0 where it does not fit. */
function reachOf(slots: readonly Slot[], slot: number, words: readonly Word[], at: number): number {
  const here = slots[slot];
  if (here === undefined) return at;
  let best = here.isOptional ? reachOf(slots, slot + 1, words, at) : 0;
  const word = words[at];
  const same = word === undefined ? undefined : here.choices.get(word.text);
  if (same === undefined) return best;
  for (const choice of same) {
    let fits = true;
    for (let i = 1; i < choice.length && fits; i += 1) {
      const next = words[at + i];
      fits = next !== undefined && next.gap !== 2 && next.text === choice[i];
    }
    const next = words[at + choice.length];
    if (!fits) continue;
    const isCut = next !== undefined && next.gap === 2;
    const end = isCut
      ? endIfComplete(slots, slot + 1, at + choice.length)
      : reachOf(slots, slot + 1, words, at + choice.length);
    if (end > best) best = end;
  }
  return best;
}

const endIfComplete = (slots: readonly Slot[], from: number, end: number): number =>
  slots.slice(from).every((slot) => slot.isOptional) ? end : 0;

/** The longest phrase that begins at a word: how many words it has, and all that it can mean. */
export function longestPhrase(
  lexicon: DangerLexicon,
  words: readonly Word[],
  at: number,
): { length: number; kinds: ReadonlySet<DangerKind> } {
  const text = words[at]!.text;
  let length = 1;
  let kinds: Set<DangerKind> | undefined;
  const second = words[at + 1];
  const patterns = second === undefined || second.gap === 2 ? undefined : lexicon.patterns.get(text);
  if (patterns !== undefined)
    for (const { slots, kind, seconds } of patterns) {
      if (!seconds.has(second!.text)) continue;
      const reached = reachOf(slots, 0, words, at) - at;
      if (reached < 2 || reached < length) continue;
      if (reached > length || kinds === undefined) kinds = new Set();
      length = reached;
      kinds.add(kind);
    }
  return { length, kinds: kinds ?? lexicon.single.get(text) ?? noKinds };
}

export const noKinds: ReadonlySet<DangerKind> = new Set();

function build(languages: readonly DangerWords[]): DangerLexicon {
  const single = new Map<string, Set<DangerKind>>();
  const patterns = new Map<string, Pattern[]>();
  const known = new Set<string>();
  const targets = new Set<string>();
  const slips = new Map<string, string>();
  for (const name of firstNames.split(/\s+/)) {
    if (name === '') continue;
    known.add(name);
    single.set(name, new Set(['person']));
  }
  for (const language of languages) {
    for (const kind of kinds) {
      const isMended = mendedKinds.includes(kind);
      for (const source of (language[kind] ?? '').split(',')) {
        const slots = slotsOf(source);
        for (const word of new Set(loneWords(slots))) {
          single.set(word, (single.get(word) ?? new Set()).add(kind));
          if (isMended) targets.add(word);
        }
        for (const slot of slots) {
          for (const word of [...slot.choices.values()].flat(2)) {
            known.add(word);
            if (isMended && word.length >= 5) targets.add(word);
          }
        }
        const isLone =
          slots.length === 1 && [...slots[0]!.choices.values()].flat().every((words) => words.length === 1);
        if (isLone) continue;
        const pattern: Pattern = { slots, kind, seconds: secondWords(slots) };
        for (const word of new Set(firstWords(slots))) {
          const same = patterns.get(word);
          if (same === undefined) patterns.set(word, [pattern]);
          else same.push(pattern);
        }
      }
    }
    for (const word of language.ordinary.split(/\s+/)) if (word !== '') known.add(foldWord(word));
    for (const slip of language.slips.split(',')) {
      const [typed, meant] = slip.split('=').map((side) => side.trim());
      if (typed !== undefined && meant !== undefined) slips.set(foldWord(typed), meant);
    }
  }
  // `petes in there`, `jens hand`: the apostrophe is the first thing to go
  for (const name of firstNames.split(/\s+/)) {
    if (name !== '' && !known.has(`${name}s`) && !slips.has(`${name}s`)) slips.set(`${name}s`, `${name} s`);
  }
  const mend = makeMender(targets, known, slips);
  return { single, patterns, mend, canDo: makeCanDo(single, patterns, mend) };
}

const mostWords = 4000;

function makeCanDo(
  single: DangerLexicon['single'],
  patterns: DangerLexicon['patterns'],
  mend: Mender,
): DangerLexicon['canDo'] {
  const ofKind = (kind: DangerKind): number =>
    (beginning.has(kind) ? CAN.begin : 0) |
    (leading.has(kind) ? CAN.lead : 0) |
    (ending.has(kind) ? CAN.end : 0);
  const memory = new Map<string, Means>();
  return (raw) => {
    const seen = memory.get(raw);
    if (seen !== undefined) return seen;
    const means = mend(foldWord(raw))
      .words.filter((text) => text !== '')
      .map((text) => {
        let alone = 0;
        for (const kind of single.get(text) ?? noKinds) alone |= ofKind(kind);
        const phrases = (patterns.get(text) ?? [])
          .map(({ seconds, kind }) => ({ seconds, can: ofKind(kind) }))
          .filter(({ can }) => can !== 0);
        return { text, alone, phrases };
      });
    if (memory.size >= mostWords) memory.clear();
    if (raw.length <= 40) memory.set(raw, means);
    return means;
  };
}

let built: DangerLexicon | undefined;

/** The phrases and the mender of all languages together: danger is read in all of them, always. */
export function dangerLexicon(): DangerLexicon {
  built ??= build([dangerEn, dangerFr, dangerEs]);
  return built;
}
