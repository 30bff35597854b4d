// The dangers that can begin at a piece, and a cry for help.
import {
  around,
  farthest,
  is,
  isNegated,
  isPassable,
  isThing,
  machineAfter,
  nearest,
  objectOf,
  type Setting,
  subjectOf,
} from './around.ts';
import type { Piece, Sentence } from './pieces.ts';
import type { DangerWhat } from './words.ts';

/** A danger, from the piece `from` to the piece `to`. */
export type Finding = { readonly what: DangerWhat; readonly from: number; readonly to: number };

function readBody({ pieces }: Setting, i: number): Finding | null {
  const stuck = around(pieces, i, 5, ['stuck', 'grip']);
  const into = machineAfter(pieces, i, 6, true);
  if (stuck >= 0) {
    const [from, to] = [Math.min(i, stuck), Math.max(i, stuck, into)];
    const isClose = pieces
      .slice(from + 1, Math.max(i, stuck))
      .every((p) => isPassable(p) || is(p, 'person', 'reach'));
    if (isClose && (is(pieces[i], 'body') || is(pieces[stuck], 'stuck') || into >= 0))
      return { what: 'caught', from, to };
  }
  const isWorn = is(pieces[i], 'body') || pieces.slice(i, into).some((p) => is(p, 'copula', 'around'));
  if (into >= 0 && isWorn) return { what: 'reaching-in', from: i, to: into };
  if (!is(pieces[i], 'body')) return null;
  const under = nearest(pieces, i, 1, 4, ['under']);
  const weight = under < 0 ? -1 : nearest(pieces, under, 1, 2, ['heavy', 'vehicle']);
  if (weight >= 0 && pieces.slice(i + 1, under).every(isPassable))
    return { what: 'caught', from: i, to: weight };
  const wound = around(pieces, i, 4, ['wound']);
  if (wound < 0) return null;
  const [from, to] = [Math.min(i, wound), Math.max(i, wound)];
  const isClose = pieces.slice(from + 1, to).every((p) => isPassable(p) || is(p, 'person'));
  return isClose ? { what: 'hurt', from, to } : null;
}

function readStuck({ pieces }: Setting, i: number): Finding | null {
  const subject = subjectOf(pieces, i);
  const after = objectOf(pieces, i);
  const into = machineAfter(pieces, i, 6, true);
  const isPerson = is(subject, 'person') || is(after, 'person');
  if (isPerson && is(subject, 'thing') && !is(after, 'person') && !is(subject, 'person')) return null;
  const to = Math.max(i, into);
  if (isPerson) {
    // `caught sam napping`: found doing it, not held
    if (is(after, 'person') && is(pieces[pieces.indexOf(after!) + 1], 'doing')) return null;
    const next = pieces[i + 1];
    const isWhole =
      next === undefined ||
      next.comma ||
      is(next, 'within', 'under', 'filler', 'aux', 'clear', 'inside', 'person');
    return isWhole ? { what: 'caught', from: Math.max(0, i - 1), to } : null;
  }
  if (isThing(subject) || isThing(after)) return null;
  // `were trapped in the shed`, `esta atrapado`: nobody is named, and nothing either
  const isUnnamed = subject === undefined && is(pieces[i - 1], 'copula');
  if (isUnnamed && (pieces[i + 1] === undefined || is(pieces[i + 1], 'within', 'under'))) {
    return { what: 'caught', from: i - 1, to };
  }
  const isUnder = subject !== undefined && is(pieces[i + 1], 'under');
  // a name nobody knows, said to be buried in something
  const isBuried = is(pieces[i], 'buried') && is(pieces[i - 1], 'copula') && is(pieces[i + 1], 'within');
  if (isBuried && subject?.kinds.size === 0) return { what: 'caught', from: i - 1, to: i + 1 };
  return into >= 0 || isUnder ? { what: 'caught', from: Math.max(0, i - 1), to } : null;
}

/** Nothing goes on about it: the sentence ends, or another begins. */
const isLastOf = (pieces: readonly Piece[], i: number): boolean =>
  i === pieces.length - 1 ||
  pieces[i + 1]!.comma ||
  is(pieces[i + 1], 'running', 'aux', 'copula', 'off', 'filler');

function readPresence({ pieces, hasMachine, isRunning }: Setting, i: number): Finding | null {
  // Somebody, or a name nobody knows, said to be in a machine: `marie is in the drum`, `un gamin dans le tambour`.
  const piece = pieces[i]!;
  const into = machineAfter(pieces, i - 1, 4, false);
  const subject = subjectOf(pieces, i);
  const hasCopula = is(pieces[i - 1], 'copula');
  const isSomebody =
    (is(subject, 'person') && !is(subject, 'thing')) ||
    (subject !== undefined && !isThing(subject) && subject.kinds.size === 0 && hasCopula);
  const weight = is(piece, 'under') ? nearest(pieces, i, 1, 2, ['heavy']) : -1;
  if (weight >= 0 && is(subject, 'person') && isSomebody)
    return { what: 'caught', from: Math.max(0, i - 1), to: weight };
  if (into >= 0 && isSomebody) return { what: 'inside-drum', from: Math.max(0, i - 1), to: into };
  if (is(piece, 'inside') && isSomebody && (hasCopula || isRunning) && isLastOf(pieces, i)) {
    if (hasMachine) return { what: 'inside-drum', from: Math.max(0, i - 1), to: i };
  }
  return null;
}

function readReach({ pieces }: Setting, i: number): Finding | null {
  const subject = subjectOf(pieces, i);
  const object = objectOf(pieces, i);
  if (isThing(object) || is(object, 'clothes')) return null;
  const into = machineAfter(pieces, i, 4, false);
  if (into < 0 || !is(pieces[i + 1], 'within', 'under', 'inside', 'aux')) return null;
  if (
    !is(subject, 'person') &&
    (isThing(subject) || (subject === undefined && !is(pieces[i - 1], 'reflexive')))
  )
    return null;
  return { what: 'reaching-in', from: Math.max(0, i - 1), to: into };
}

function readFall({ pieces }: Setting, i: number): Finding | null {
  const subject = subjectOf(pieces, i);
  const after = is(pieces[i + 1], 'off') ? undefined : objectOf(pieces, i);
  const isPerson = is(subject, 'person') || is(after, 'person');
  if (!isPerson && (isThing(subject) || isThing(after))) return null;
  const off = is(pieces[i + 1], 'off', 'within');
  const isUnknown = subject !== undefined && subject.kinds.size === 0;
  if (isPerson || (off && (isUnknown || subject === undefined)))
    return { what: 'hurt', from: Math.max(0, i - 1), to: i };
  return null;
}

/** Somebody lies there: `ana est par terre`; a name nobody knows opens the sentence, where a thing would have its article. */
function readDown({ pieces }: Setting, i: number): Finding | null {
  const subject = subjectOf(pieces, i);
  if (!is(pieces[i - 1], 'copula')) return null;
  // `esta tirado`: nobody is named, and nothing either
  if (subject === undefined) {
    const isWhole = (i === 1 || pieces[i - 1]!.comma) && !isThing(objectOf(pieces, i));
    return isWhole && pieces[i + 1] !== undefined ? { what: 'hurt', from: i - 1, to: i } : null;
  }
  const isName = subject.kinds.size === 0 && (subject === pieces[0] || subject.comma) && !isThing(subject);
  const isSomebody = is(subject, 'person') && !is(subject, 'thing');
  return isSomebody || isName ? { what: 'hurt', from: Math.max(0, i - 2), to: i } : null;
}

/** Whatever comes down on a foot hurts it: `the cart tipped over onto his foot`, `se volteó el carro sobre su pie`. */
function readOnto({ pieces }: Setting, i: number): Finding | null {
  let isUpon = is(pieces[i], 'strike');
  for (let to = i + 1; to < pieces.length && to <= i + 6; to += 1) {
    const piece = pieces[to]!;
    if (piece.comma) return null;
    if (is(piece, 'body')) return isUpon ? { what: 'hurt', from: i, to } : null;
    if (is(piece, 'upon')) isUpon = true;
    else if (!is(piece, 'off', 'article', 'aux', 'person', 'heavy', 'vehicle')) return null;
  }
  return null;
}

/** What fell on, hit or threw somebody: `the forklift hit him`, `a branch fell on ana`, `knocked ana off the ladder`. */
function readStrike({ pieces }: Setting, i: number): Finding | null {
  const object = objectOf(pieces, i);
  if (object === undefined || !is(object, 'person', 'body')) return null;
  const to = pieces.indexOf(object, i);
  if (is(pieces[i], 'strike')) return { what: 'hurt', from: i, to };
  return is(pieces[to + 1], 'off') && !pieces[to + 1]!.comma ? { what: 'hurt', from: i, to } : null;
}

function readBurn(setting: Setting, i: number): Finding | null {
  const { pieces, hasFood } = setting;
  const smell = around(pieces, i, 4, ['smell']);
  if (smell >= 0) return { what: 'burnt-smell', from: Math.min(i, smell), to: Math.max(i, smell) };
  if (hasFood || is(subjectOf(pieces, i), 'person')) return null;
  const what = around(pieces, i, 3, ['heap', 'machine']);
  const isAll =
    pieces.length <= farthest && pieces.every((p, k) => k === i || is(p, 'filler', 'aux', 'article'));
  if (what >= 0) return { what: 'fire', from: Math.min(i, what), to: Math.max(i, what) };
  return isAll ? { what: 'fire', from: i, to: i } : null;
}

function readSharp({ pieces, hasSomebody }: Setting, i: number): Finding {
  const prick = around(pieces, i, 6, ['prick', 'pricked']);
  if (prick >= 0 && (hasSomebody || is(pieces[prick], 'pricked'))) {
    return { what: 'pricked', from: Math.min(i, prick), to: Math.max(i, prick) };
  }
  return { what: 'needle', from: i, to: i };
}

/** The danger that this piece says, or null. */
export function readPiece(setting: Setting, i: number): Finding | null {
  const { pieces, hasFood } = setting;
  const piece = pieces[i]!;
  const alone = (what: DangerWhat): Finding => ({ what, from: i, to: i });
  if (is(piece, 'needle')) return readSharp(setting, i);
  if (is(piece, 'pricked')) return alone('pricked');
  if (is(piece, 'gasLeak')) return alone('gas');
  if (is(piece, 'burntSmell')) return alone('burnt-smell');
  if (is(piece, 'caught')) return alone('caught');
  if (is(piece, 'hurt')) return alone('hurt');
  if (is(piece, 'smoke') && !hasFood) return alone('smoke');
  if (is(piece, 'fire') && !hasFood) return alone('fire');
  if (is(piece, 'unwell')) return alone('unwell');
  if (is(piece, 'smoking') && !hasFood && !is(subjectOf(pieces, i), 'person')) return alone('smoke');
  if (is(piece, 'gas')) {
    const smell = around(pieces, i, 4, ['smell']);
    const isAll = pieces.length <= farthest && pieces.every((p, k) => k === i || is(p, 'filler'));
    if (smell >= 0 || isAll) return alone('gas');
  }
  const found =
    (is(piece, 'body', 'clothes') ? readBody(setting, i) : null) ??
    (is(piece, 'stuck', 'buried') ? readStuck(setting, i) : null) ??
    (is(piece, 'fall') ? readFall(setting, i) : null) ??
    (is(piece, 'down') ? readDown(setting, i) : null) ??
    (is(piece, 'onto', 'strike') ? readOnto(setting, i) : null) ??
    (is(piece, 'strike', 'knock') ? readStrike(setting, i) : null) ??
    (is(piece, 'reach') ? readReach(setting, i) : null) ??
    (is(piece, 'within', 'inside', 'under') ? readPresence(setting, i) : null) ??
    (is(piece, 'burn') ? readBurn(setting, i) : null);
  return found;
}

/** `help!`, `au secours`: a cry of its own, or null. */
export function readCry({ pieces, mark }: Sentence, isWholeMessage: boolean): Finding | null {
  const i = pieces.findIndex((piece) => is(piece, 'cry'));
  if (i >= 0) return isNegated(pieces, i) ? null : { what: 'help', from: i, to: i };
  const plead = pieces.findIndex((piece) => is(piece, 'plead'));
  if (plead < 0 || !pieces.every((piece) => is(piece, 'plead', 'filler'))) return null;
  const isLoud =
    mark === '!' || pieces[plead]!.shouted || pieces.filter((piece) => is(piece, 'plead')).length > 1;
  const hasUrgency = pieces.length > 1 && !isWholeMessage;
  return isLoud || hasUrgency ? { what: 'help', from: plead, to: plead } : null;
}
