// What is told beside a load: a part of it apart, a second figure the writer cannot tell from the first, contamination.
import { isMassUnit, isVolumeUnit, toKg, toLitres } from '#records';
import { type Scope, tidy } from '../reading.ts';
import { sense, type Tok } from '../tokens.ts';
import { massOf, type WeighIn } from './loads.ts';
import { isFood } from './own-words.ts';

/** `…, 7.2 of it fruit`, `dont 8 de pain`: a part of the load told apart. */
export function ofWhichIn(
  tokens: readonly Tok[],
  scope: Scope,
): { rest: readonly Tok[]; pieces: NonNullable<WeighIn['ofWhich']> | null } {
  const at = tokens.findIndex((tok) => sense(tok, 'ofit') !== undefined);
  // `…, 8 of fruit`: a smaller figure behind a comma with `of` and what it was.
  const comma = tokens.findLastIndex((tok) => tok.k === 'p' && tok.s === ',');
  const part = tokens[comma + 1];
  // `…, 4 son de pan`, `…, 4 lb was bread`
  const said = sense(tokens[comma + 2], 'be') !== undefined ? 1 : 0;
  const link = sense(tokens[comma + 2 + said], 'prep');
  const linked = link === 'of' || link === 'from';
  if (
    at < 0 &&
    comma > 1 &&
    part?.k === 'n' &&
    (linked || said === 1 || part.n!.unit !== null) &&
    tokens.length - comma >= 3 &&
    tokens.length - comma <= 5 + said
  ) {
    const words = tokens
      .slice(comma + 2 + said + (linked ? 1 : 0))
      .filter((tok) => tok.k === 'w' && sense(tok, 'article') === undefined);
    const whole = tokens.slice(0, comma).findLast((tok) => tok.k === 'n');
    const plainWord =
      words.length === 1 &&
      // Without its `of` only food makes it a part: `…, 4 lb leaves` is a load of its own.
      (linked && said === 0
        ? !['container', 'place', 'source', 'pilehead'].some((cls) => sense(words[0], cls) !== undefined)
        : isFood(words[0]) || (said === 1 && sense(words[0], 'material') !== undefined));
    const unit = massOf(part.n!, scope);
    if (
      plainWord &&
      unit &&
      whole &&
      part.n!.value < whole.n!.value &&
      tokens.slice(0, comma).some((tok) => sense(tok, 'container') !== undefined)
    )
      return {
        rest: tokens.slice(0, comma),
        pieces: [{ what: sense(words[0], 'material') ?? words[0]!.s, kg: tidy(toKg(part.n!.value, unit)) }],
      };
  }
  if (at < 1) return { rest: tokens, pieces: null };
  const before = tokens[at - 1]!;
  const after = tokens[at + 1];
  const numberFirst = before.k === 'n' && after?.k !== 'n';
  const amount = numberFirst ? before : after?.k === 'n' ? after : null;
  if (!amount) return { rest: tokens, pieces: null };
  const behind = tokens.slice(at + (numberFirst ? 1 : 2));
  const stop = behind.findIndex((tok, k) => k > 0 && tok.k === 'p' && tok.s === ',');
  // `…, 6 of it bread, west kitchen`: where the whole came from.
  const whence = stop > 0 ? behind.slice(stop + 1) : [];
  if (whence.length > 0 && !whence.some((tok) => sense(tok, 'source') !== undefined))
    return { rest: tokens, pieces: null };
  const words = (stop > 0 ? behind.slice(0, stop) : behind).filter(
    (tok) =>
      tok.k === 'w' &&
      !tok.senses.some((s) => s.cls === 'article' || s.cls === 'prep' || s.cls === 'be' || s.cls === 'fill'),
  );
  if (words.length < 1 || words.length > 3 || tokens.slice(at + 2).some((tok) => tok.k === 'n'))
    return { rest: tokens, pieces: null };
  const n = amount.n!;
  const what =
    words.length === 1 ? (sense(words[0], 'material') ?? words[0]!.s) : words.map((tok) => tok.s).join(' ');
  const unit = massOf(n, scope);
  const piece = isVolumeUnit(n.unit)
    ? { what, litres: tidy(toLitres(n.value, n.unit)) }
    : unit
      ? { what, kg: tidy(toKg(n.value, unit)) }
      : null;
  if (!piece) return { rest: tokens, pieces: null };
  const cut = numberFirst ? at - 1 : at;
  const trailing = tokens[cut - 1];
  return { rest: [...tokens.slice(0, trailing?.k === 'p' ? cut - 1 : cut), ...whence], pieces: [piece] };
}

/** `56 or 65, can't read my writing`: what follows two alternatives only tells why. */
export function alternatives(tokens: readonly Tok[]): readonly Tok[] {
  const or = tokens.findIndex(
    (tok, k) => sense(tok, 'or') !== undefined && tokens[k - 1]?.k === 'n' && tokens[k + 1]?.k === 'n',
  );
  if (or < 0) return tokens;
  const tail = tokens.slice(or + 2);
  const speaks = tail.some(
    (tok) =>
      tok.k === 'n' ||
      ['container', 'place', 'turn', 'cover', 'material', 'chore'].some(
        (cls) => sense(tok, cls) !== undefined,
      ),
  );
  return speaks ? tokens : tokens.slice(0, or + 2);
}

/** What follows a weighed load and says that it was contaminated, to the end of the run: only a flag on it. */
export function contaminationIn(tokens: readonly Tok[]): {
  rest: readonly Tok[];
  found: boolean;
  only?: 0 | 1;
} {
  const dirt = dirtIn(tokens);
  const at = tokens.findIndex(
    (tok, k) =>
      k > 0 &&
      (k === dirt ||
        sense(tok, 'contaminated') !== undefined ||
        sense(tok, 'material') === 'residue' ||
        sense(tok, 'topic') === 'contamination'),
  );
  // `bucket contaminated with stickers, 20 lb`: the weight said last.
  const weight = tokens.at(-1);
  if (
    at >= 1 &&
    weight?.k === 'n' &&
    tokens.slice(0, -1).every((tok) => tok.k !== 'n' && sense(tok, 'place') === undefined) &&
    tokens.at(-2)?.s === ',' &&
    tokens.slice(0, at).some((tok) => sense(tok, 'container') !== undefined)
  )
    return { rest: [...tokens.slice(0, at), weight], found: true };
  if (
    at < 2 ||
    tokens
      .slice(at)
      .some(
        (tok) =>
          tok.k === 'n' ||
          sense(tok, 'container') !== undefined ||
          sense(tok, 'place') !== undefined ||
          sense(tok, 'reject') !== undefined,
      )
  )
    return { rest: tokens, found: false };
  // `cart 66 (gloves in it, contaminated)`
  const bracket = tokens.findLastIndex((tok, k) => k < at && (tok.s === '(' || tok.s === ')'));
  const opened = tokens[bracket]?.s === '(' ? bracket : -1;
  const head = tokens.slice(0, opened > 0 ? opened : at);
  if (
    !head.some((tok) => tok.k === 'n') ||
    !head.some((tok) => sense(tok, 'container') !== undefined || sense(tok, 'material') !== undefined)
  )
    return { rest: tokens, found: false };
  if (
    tokens.length - at > 9 ||
    (opened < 1 &&
      head.at(-1)?.k === 'n' &&
      isMassUnit(head.at(-1)!.n!.unit) &&
      sense(tokens[at], 'material') === 'residue')
  )
    return { rest: tokens, found: false };
  if (
    tokens.some((tok) =>
      GATED.some(
        (cls) =>
          sense(tok, cls) !== undefined &&
          sense(tok, 'fill') === undefined &&
          sense(tok, 'contaminated') === undefined,
      ),
    )
  )
    return { rest: tokens, found: false };
  while (
    head.length > 0 &&
    (head.at(-1)!.k === 'p' ||
      (head.at(-1)!.k === 'w' &&
        ['fill', 'prep', 'add', 'be', 'seen', 'all', 'both'].some(
          (cls) => sense(head.at(-1), cls) !== undefined,
        ) &&
        sense(head.at(-1), 'container') === undefined &&
        sense(head.at(-1), 'net') === undefined))
  )
    head.pop();
  // `bin 54 with forks in it, west kitchen`
  const whence = tokens.slice(at).find((tok) => sense(tok, 'source') !== undefined);
  if (whence && !head.some((tok) => sense(tok, 'source') !== undefined)) head.push(whence);
  // `19 22, la segunda contaminada`: that one alone
  const which = sense(head.at(-1), 'choice');
  if ((which === 'first' || which === 'second') && head.length > 2) {
    head.pop();
    while (head.at(-1)?.k === 'p' || sense(head.at(-1), 'article') !== undefined) head.pop();
    return { rest: head, found: true, only: which === 'first' ? 0 : 1 };
  }
  return { rest: head, found: true };
}

/** Where what does not belong in a load begins: `…, forks and wrappers in it`, `… with straws`; -1 where nothing does. */
function dirtIn(tokens: readonly Tok[]): number {
  const isDirt = (tok: Tok | undefined) => tok !== undefined && sense(tok, 'contaminant') !== undefined;
  const dull = (tok: Tok | undefined) =>
    tok !== undefined && (isDirt(tok) || DULL.some((cls) => sense(tok, cls) !== undefined));
  let first = tokens.findIndex(isDirt);
  if (first < 1) return -1;
  const brought = tokens[first - 1]!.senses.some(
    (one) =>
      (one.cls === 'prep' && one.val === 'with') ||
      one.cls === 'fullof' ||
      one.cls === 'because' ||
      one.cls === 'strength',
  );
  let last = first;
  while (dull(tokens[last + 1]) && sense(tokens[last + 1], 'within') === undefined) last++;
  if (!brought && sense(tokens[last + 1], 'within') === undefined) return -1;
  while (first > 1 && dull(tokens[first - 1]) && tokens[first - 1]!.k === 'w') first--;
  return first;
}

const DULL = ['and', 'fill', 'article', 'strength', 'adj', 'fullof', 'prep'];

const GATED = ['neg', 'intent', 'cond', 'ask', 'hearsay'];
