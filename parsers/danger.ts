// Danger in a message: somebody hurt, caught or reaching in; fire, smoke, a burnt smell; sharps; gas; a cry for help.
// It is read before anything else, in all languages at once, and rather once too often than missed.
import { cutPieces, mayHoldDanger, type Piece, type Sentence } from './danger/pieces.ts';
import type { DangerKind } from './danger/words.ts';

/** What kind of emergency it is; `other` is gas or a bare cry for help. */
type DangerTopic = 'injury' | 'smoke' | 'sharps' | 'other';

/** What was said of the emergency. */
type DangerWhat =
  | 'caught'
  | 'inside-drum'
  | 'hurt'
  | 'reaching-in'
  | 'unwell'
  | 'fire'
  | 'smoke'
  | 'burnt-smell'
  | 'needle'
  | 'pricked'
  | 'gas'
  | 'help';

/** One danger, with the slice of the message (string indices) that says it. */
export type Danger = {
  readonly topic: DangerTopic;
  readonly what: DangerWhat;
  readonly start: number;
  readonly end: number;
};

const topicOf: Readonly<Record<DangerWhat, DangerTopic>> = {
  caught: 'injury',
  'inside-drum': 'injury',
  hurt: 'injury',
  'reaching-in': 'injury',
  unwell: 'injury',
  fire: 'smoke',
  smoke: 'smoke',
  'burnt-smell': 'smoke',
  needle: 'sharps',
  pricked: 'sharps',
  gas: 'other',
  help: 'other',
};

/** Of two dangers of one topic in a sentence the graver one is told; what the drum holds comes before any wound. */
const gravity: readonly DangerWhat[] = [
  'caught',
  'inside-drum',
  'reaching-in',
  'hurt',
  'unwell',
  'fire',
  'smoke',
  'burnt-smell',
  'pricked',
  'needle',
  'gas',
  'help',
];

type Finding = { readonly what: DangerWhat; readonly from: number; readonly to: number };

const is = (piece: Piece | undefined, ...anyOf: readonly DangerKind[]): boolean =>
  piece !== undefined && !piece.kinds.has('quiet') && anyOf.some((kind) => piece.kinds.has(kind));

/** How many pieces away anything is looked for: a bound that keeps the time in proportion to the length. */
const farthest = 12;

const isPassable = (piece: Piece): boolean =>
  is(piece, 'aux', 'copula', 'article', 'clear', 'filler', 'within', 'off');

/** The nearest piece of one of the kinds, at most `reach` pieces away on the given side, or -1. */
function nearest(
  pieces: readonly Piece[],
  at: number,
  step: 1 | -1,
  reach: number,
  kinds: readonly DangerKind[],
): number {
  for (let k = 1; k <= reach; k += 1) {
    const piece = pieces[at + k * step];
    if (piece === undefined) return -1;
    if (is(piece, ...kinds)) return at + k * step;
  }
  return -1;
}

function around(pieces: readonly Piece[], at: number, reach: number, kinds: readonly DangerKind[]): number {
  const right = nearest(pieces, at, 1, reach, kinds);
  return right >= 0 ? right : nearest(pieces, at, -1, reach, kinds);
}

/** `no smoke`, `nobody was hurt`, `didn't see any smoke`, `ça ne fume plus`: said not to be. */
function isNegated(pieces: readonly Piece[], at: number): boolean {
  for (let i = at - 1; i >= 0 && i >= at - farthest; i -= 1) {
    const piece = pieces[i]!;
    if (pieces[i + 1]!.comma && !is(pieces[i + 1], 'not')) {
      // `no smoke, fire, flames`: a list goes on over its commas, a remark does not
      if (!is(piece, 'smoke', 'fire', 'hurt', 'needle')) return false;
    }
    if (is(piece, 'not')) return true;
    if (
      !is(
        piece,
        'clear',
        'aux',
        'article',
        'smoke',
        'fire',
        'hurt',
        'needle',
        'burn',
        'smell',
        'gas',
        'body',
        'reach',
        'person',
      )
    ) {
      return false;
    }
  }
  return false;
}

function isDeniedAfter(pieces: readonly Piece[], at: number): boolean {
  const next = pieces[at + 1];
  return is(next, 'notAfter') && !next!.comma && !is(pieces[at + 2], 'quiet');
}

function isEnded(pieces: readonly Piece[], at: number, topic: DangerTopic): boolean {
  for (let i = at + 1; i < pieces.length && i <= at + 5; i += 1) {
    if (is(pieces[i], 'ended')) return true;
    // a fire that is out is over, somebody who bleeds out is not
    if (is(pieces[i], 'endedLast') && topic !== 'injury')
      return i === pieces.length - 1 || pieces[i + 1]!.comma;
    if (!is(pieces[i], 'aux', 'article', 'clear', 'within', 'heap', 'machine', 'vehicle')) return false;
  }
  return false;
}

type Setting = {
  readonly pieces: readonly Piece[];
  /** from this piece on, what is said is only supposed */
  readonly supposedFrom: number;
  readonly isUnreal: boolean;
  readonly hasFood: boolean;
  readonly hasMachine: boolean;
  readonly hasSomebody: boolean;
};

function settingOf({ pieces, mark }: Sentence): Setting {
  let supposedFrom = Number.POSITIVE_INFINITY;
  let isUnreal = false;
  let hasFood = false;
  let hasMachine = false;
  let hasSomebody = false;
  pieces.forEach((piece, i) => {
    if (is(piece, 'condition') && supposedFrom > i) supposedFrom = i;
    if (is(piece, 'story')) isUnreal = true;
    if (is(piece, 'food')) hasFood = true;
    if (is(piece, 'machine')) hasMachine = true;
    if (is(piece, 'person', 'body', 'clothes')) hasSomebody = true;
  });
  if (mark === '?' && pieces.slice(0, 3).some((piece) => is(piece, 'asks'))) isUnreal = true;
  return { pieces, supposedFrom, isUnreal, hasFood, hasMachine, hasSomebody };
}

/** Who or what does it: the first piece to the left that is more than a joining word. */
function subjectOf(pieces: readonly Piece[], at: number): Piece | undefined {
  for (let i = at - 1; i >= 0 && i >= at - farthest; i -= 1) {
    const piece = pieces[i]!;
    if (pieces[i + 1]!.comma) return undefined;
    if (is(piece, 'person', 'body', 'clothes')) return piece;
    if (!is(piece, 'aux', 'copula', 'article', 'filler', 'not')) return piece;
  }
  return undefined;
}

const isThing = (piece: Piece | undefined): boolean =>
  piece !== undefined &&
  (piece.kinds.has('quiet') ||
    is(piece, 'thing', 'heap', 'machine', 'vehicle', 'food', 'smell') ||
    /\d/.test(piece.text));

/** The thing that follows a verb, past its articles. */
function objectOf(pieces: readonly Piece[], at: number): Piece | undefined {
  let i = at + 1;
  while (is(pieces[i], 'article') && !is(pieces[i], 'person', 'body', 'within')) i += 1;
  if (is(pieces[i], 'within')) return undefined;
  return pieces[i];
}

/** The machine that a piece leads into: `in the drum`, `sous le chariot`, or -1. */
function machineAfter(pieces: readonly Piece[], at: number, reach: number, loose: boolean): number {
  let sawWithin = false;
  for (let i = at + 1; i < pieces.length && i <= at + reach; i += 1) {
    const piece = pieces[i]!;
    if (
      sawWithin &&
      (is(piece, 'machine') || (loose && (is(piece, 'vehicle') || piece.nearKinds.has('machine'))))
    )
      return i;
    if (is(piece, 'inside') && i === pieces.length - 1) return i;
    if (is(piece, 'within', 'inside', 'under') || (loose && is(piece, 'around'))) sawWithin = true;
    else if (!isPassable(piece) && !is(piece, 'reach', 'stuck', 'grip', 'person', 'body')) return -1;
  }
  return -1;
}

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

function readPresence({ pieces, hasMachine }: Setting, i: number): Finding | null {
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
  if (is(piece, 'inside') && isSomebody && hasCopula && (i === pieces.length - 1 || pieces[i + 1]!.comma)) {
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

function readPiece(setting: Setting, i: number): Finding | null {
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
    (is(piece, 'reach') ? readReach(setting, i) : null) ??
    (is(piece, 'within', 'inside', 'under') ? readPresence(setting, i) : null) ??
    (is(piece, 'burn') ? readBurn(setting, i) : null);
  return found;
}

function readCry({ pieces, mark }: Sentence, isWholeMessage: boolean): Finding | null {
  const i = pieces.findIndex((piece) => is(piece, 'cry'));
  if (i >= 0) return isNegated(pieces, i) ? null : { what: 'help', from: i, to: i };
  const plead = pieces.findIndex((piece) => is(piece, 'plead'));
  if (plead < 0 || !pieces.every((piece) => is(piece, 'plead', 'filler'))) return null;
  const isLoud =
    mark === '!' || pieces[plead]!.shouted || pieces.filter((piece) => is(piece, 'plead')).length > 1;
  const hasUrgency = pieces.length > 1 && !isWholeMessage;
  return isLoud || hasUrgency ? { what: 'help', from: plead, to: plead } : null;
}

/**
 * Reads the dangers in a message, at most one of each topic a sentence, in English, French and Spanish at once, however badly it is typed; it never
 * throws, and its time grows with the length of the text alone.
 * Denied, ended, supposed and told things (`no smoke`, `smoke gone`, `what if …`) are none.
 * @example readDanger("marie's arm is stuck in teh drum") // [{ topic: 'injury', what: 'caught', start: 8, end: 32 }]
 * @example readDanger('smoke break at 10') // []
 */
export function readDanger(text: string): Danger[] {
  if (!mayHoldDanger(text)) return [];
  const dangers: Danger[] = [];
  const sentences = cutPieces(text);
  for (const sentence of sentences) {
    const setting = settingOf(sentence);
    const { pieces } = setting;
    const gravest = new Map<DangerTopic, Finding>();
    const add = (finding: Finding): void => {
      const known = gravest.get(topicOf[finding.what]);
      if (known !== undefined && gravity.indexOf(known.what) <= gravity.indexOf(finding.what)) return;
      gravest.set(topicOf[finding.what], finding);
    };
    const cry = readCry(sentence, sentences.length === 1);
    if (cry !== null) add(cry);
    if (!setting.isUnreal) {
      for (let i = 0; i < pieces.length && i < setting.supposedFrom; i += 1) {
        const finding = readPiece(setting, i);
        if (finding === null || isNegated(pieces, finding.from) || isNegated(pieces, i)) continue;
        if (isDeniedAfter(pieces, i) || isEnded(pieces, i, topicOf[finding.what])) continue;
        add(finding);
      }
    }
    const inOrder = [...gravest.values()].sort((a, b) => a.from - b.from);
    for (const { what, from, to } of inOrder) {
      dangers.push({ topic: topicOf[what], what, start: pieces[from]!.start, end: pieces[to]!.end });
    }
  }
  return dangers;
}
