// What a run of places, points, depths and figures becomes: one place, every pile, or none that was said.
import type { FieldRecord, HeldRecord } from '#records';
import { drop } from '../plausible.ts';
import { type Item, isPrep, type Scope, type Slots } from '../reading.ts';
import type { Num, Tok } from '../tokens.ts';
import { judgeReading } from '../warmth.ts';

/** One thing said in a reading, in the order said. */
export type Piece =
  | { kind: 'place'; place: string }
  | { kind: 'figure'; n: Num }
  | { kind: 'point'; point: string }
  | { kind: 'depth'; cm: number }
  | { kind: 'link' }
  | { kind: 'mismatch' };

/** One place: its figures, each depth a record of its own. */
export function one(
  place: string,
  pieces: readonly Piece[],
  slots: Slots,
  scope: Scope,
  or: boolean,
): Item[] | null {
  const { context } = scope;
  if (place === 'floor' || place === 'lift') return null;
  const groups: { nums: Num[]; points: string[]; depthCm?: number }[] = [];
  let current: { nums: Num[]; points: string[]; depthCm?: number } = { nums: [], points: [] };
  const meaningful = pieces.filter((piece) => piece.kind !== 'place');
  const depthFirst =
    meaningful.findIndex((p) => p.kind === 'depth') < meaningful.findIndex((p) => p.kind === 'figure');
  const hasDepth = meaningful.some((p) => p.kind === 'depth');
  for (const piece of meaningful) {
    if (piece.kind === 'depth') {
      if (depthFirst) {
        if (current.nums.length > 0) {
          groups.push(current);
          current = { nums: [], points: [] };
        }
        current.depthCm = piece.cm;
      } else {
        current.depthCm = piece.cm;
        groups.push(current);
        current = { nums: [], points: [] };
      }
    } else if (piece.kind === 'figure') current.nums.push(piece.n);
    else if (piece.kind === 'point') current.points.push(piece.point);
  }
  if (current.nums.length > 0 || current.points.length > 0) groups.push(current);
  if (hasDepth && groups.length === 2 && groups[1]!.nums.length === 0 && groups[1]!.points.length > 0) {
    groups[0]!.points.push(...groups[1]!.points);
    groups.pop();
  }
  const items: Item[] = [];
  const said = groups.flatMap((group) => group.nums).find((n) => n.unit === 'C' || n.unit === 'F')?.unit;
  for (const group of groups) {
    if (group.nums.length === 0) return null;
    if (group.points.length > 0 && group.points.length !== group.nums.length) {
      if (!(group.points.length === 1 && group.nums.length > 1)) return null;
      return null;
    }
    // `148 … 24`: two figures of one place that are worlds apart are no list of its points.
    if (group.nums.length > 1 && group.points.length === 0 && worldsApart(group.nums)) return null;
    const nums = group.nums.map((n) =>
      said && (n.unit === null || n.unit === 'deg') ? { ...n, unit: said } : n,
    );
    if (slots.get('unsure').length > 0 && !or) {
      const read = judgeReading({ place, nums, points: group.points, depthCm: group.depthCm }, context);
      if ('record' in read)
        items.push({
          doubt: {
            record: read.record,
            why: 'unclear',
            choices: [{ say: read.typed, record: read.record }, drop],
          },
        });
      else items.push(read);
      continue;
    }
    items.push(judgeReading({ place, nums, points: group.points, depthCm: group.depthCm, or }, context));
  }
  return items;
}

/** Whether of several figures for one place the least is not a third of the most. */
const worldsApart = (nums: readonly Num[]) => {
  const values = nums.map((n) => n.value);
  return Math.min(...values) > 0 && Math.min(...values) * 3 < Math.max(...values);
};

/** `all 4 piles 60`, `both piles at 65`: every active pile where the number of them fits. */
export function everyPile(
  slots: Slots,
  figures: readonly Num[],
  pieces: readonly Piece[],
  scope: Scope,
): Item[] | null {
  const { context } = scope;
  const headed =
    slots.get('pilehead').length > 0 || slots.get('many').length > 0 || slots.get('both').length > 0;
  if (!headed || figures.length !== 1) return null;
  const all = slots.get('all').length > 0;
  const fits = (all || context.piles.length === 2) && !pieces.some((piece) => piece.kind === 'mismatch');
  if (fits && !(slots.get('both').length > 0 && context.piles.length !== 2))
    return context.piles.flatMap((place) => one(place, pieces, slots, scope, false) ?? []);
  const records = context.piles
    .map((place) => judgeReading({ place, nums: figures }, context))
    .flatMap((read) => ('record' in read ? [read.record] : []));
  const first: FieldRecord | undefined = records[0];
  return [
    {
      doubt: {
        record: first ? { ...first, place: null } : { kind: 'temperature', place: null },
        why: 'which-places',
        choices: [...(first ? [{ say: String(context.piles.length), record: first, records }] : []), drop],
      },
    },
  ];
}

/** A temperature with no place: the only pile of the site, or a doubt; a bare number is nobody's. */
export function placeless(
  figures: readonly Num[],
  slots: Slots,
  pieces: readonly Piece[],
  scope: Scope,
  tokens: readonly Tok[],
): Item[] | null {
  const { context } = scope;
  const clear =
    slots.get('tempword').length > 0 ||
    // `1 and 2 are steaming` counts piles
    (slots.get('degree').length > 0 && figures.every((n) => n.unit !== null || n.value >= 20)) ||
    figures.some((n) => n.unit !== null) ||
    // `the pile is at 58` names none of them
    (slots.get('pilehead').length > 0 &&
      slots.all.some((one) => one.cls === 'be' || isPrep(one, 'at', 'in')) &&
      figures.every((n) => n.value >= 20));
  if (!clear || scope.asked) return null;
  const sites = context.piles.length + context.drums.length;
  if (sites === 1 && context.piles.length === 1) return one(context.piles[0]!, pieces, slots, scope, false);
  const choices = [...context.piles, ...context.drums.map((drum) => drum.name)]
    .slice(0, 6)
    .flatMap((place) => {
      const read = judgeReading({ place, nums: figures }, context);
      return 'record' in read ? [{ say: place, record: read.record }] : [];
    });
  void tokens;
  const model = choices[0]?.record;
  return [
    {
      doubt: {
        record: { ...(model ?? { kind: 'temperature' }), place: null } as HeldRecord,
        why: 'no-place',
        choices: [...choices, drop],
      },
    },
  ];
}
