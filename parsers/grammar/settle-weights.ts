// How many entries the weights of a load are, and which of them are asked about.
import { type Assumption, toKg } from '#records';
import { containerOf, drop, eachOrAll, say, weighs } from '../plausible.ts';
import { bare, type Item, type Scope, type Slots, tidy } from '../reading.ts';
import type { Num } from '../tokens.ts';
import { judged, massOf, type WeighIn } from './loads.ts';

type Gathered = {
  weights: Num[];
  count: number | null;
  many: boolean;
  material: string | null;
  slots: Slots;
  scope: Scope;
  one: (n: Num, more?: Partial<WeighIn>) => { record: WeighIn; typed: string } | null;
  assumed: Assumption[];
  contaminated: boolean;
  head: Partial<WeighIn>;
};

/** Decides how many entries the weights are, and which of them are asked about. */
export function settle(g: Gathered): Item[] | null {
  const { weights, slots, scope, one } = g;
  const { context } = scope;
  const total = slots.get('total').length > 0;
  const each = slots.get('each').length > 0;
  if (!g.material) return unknownMaterial(g);
  if (slots.get('or').length > 0) {
    if (weights.length !== 2) return null;
    const records = weights.map((n) => one(n));
    if (records.some((r) => !r)) return null;
    return [
      {
        doubt: {
          record: records[0]!.record,
          why: 'either-or',
          choices: [...records.map((r, k) => ({ say: say(weights[k]!.value), record: r!.record })), drop],
        },
      },
    ];
  }
  if (slots.get('unsure').length > 0) {
    const read = weights.length === 1 ? one(weights[0]!) : null;
    if (!read) return null;
    return [
      {
        doubt: {
          record: read.record,
          why: 'unclear',
          choices: [{ say: say(weights[0]!.value), record: read.record }, drop],
        },
      },
    ];
  }
  const count = g.count ?? null;
  const marked =
    g.contaminated && weights.length > 2
      ? weights.slice(0, -1).findIndex((n) => n.value === weights.at(-1)!.value)
      : -1;
  if (marked >= 0 && (count === null || count === weights.length - 1)) {
    // `61 58 79, the 79 one was contaminated`: the flag goes to that one alone.
    return weights.slice(0, -1).flatMap((n, k) => {
      const read = one(n, k === marked ? {} : { flags: undefined as never });
      return read ? [judged(bare(read.record), n, g, read.typed)] : [];
    });
  }
  if (weights.length === 1 && weights[0]!.to !== undefined) return paired(g, weights[0]!);
  if (weights.some((n) => n.to !== undefined)) return null;
  if (count !== null && count > 1 && weights.length === 1) {
    const n = weights[0]!;
    const whole = one(n, { count });
    const single = one(n);
    if (!whole || !single) return null;
    const copies = Array.from({ length: count }, () => single.record);
    if (each) return copies.map((record) => judged(record, n, g, single.typed));
    if (total) return [judged(whole.record, n, g, whole.typed)];
    const fits = eachOrAll(single.record, count, context);
    if (fits.all && !fits.each) return [judged(whole.record, n, g, whole.typed)];
    const both = weighs(whole.record, context) === 'fine' || weighs(single.record, context) === 'fine';
    if (!both) return [judged(whole.record, n, g, whole.typed)];
    return [
      {
        doubt: {
          record: whole.record,
          why: 'each-or-all',
          choices: [
            { say: 'each', record: single.record, records: copies },
            { say: 'all', record: whole.record },
            drop,
          ],
        },
      },
    ];
  }
  if (count !== null && weights.length > 1 && count !== weights.length) {
    const records = weights.map((n) => one(n)?.record);
    if (records.some((r) => !r)) return null;
    const list = records as WeighIn[];
    return [
      {
        doubt: {
          record: list[0]!,
          records: list,
          why: 'count-differs',
          choices: [
            { say: weights.map((n) => say(n.value)).join(' '), record: list[0]!, records: list },
            drop,
          ],
        },
      },
    ];
  }
  if (weights.length > 1 && !g.many && count === null && !listed(g)) return null;
  const items: Item[] = [];
  for (const n of weights) {
    const read = one(n);
    if (!read) return null;
    items.push(judged(read.record, n, g, read.typed));
  }
  return items;
}

/** Several weights after one container, with no count: a list where commas or `and` part them. */
const listed = (g: Gathered) =>
  g.slots.all.some((one) => one.cls === 'and' || (one.cls === 'sep' && ',+&/'.includes(one.tok.s))) ||
  g.weights.length > 2;

/** `61.5-15.5`: gross and tare where the second is near the known tare; else a range, which is asked about. */
function paired(g: Gathered, n: Num): Item[] | null {
  const { scope, one } = g;
  const unit = massOf(n, scope);
  if (!unit || g.count !== null) return null;
  const tareKg = tidy(toKg(n.to!, unit));
  const known = containerOf(scope.context, g.head.container ?? '', g.head.label)?.tareKg;
  const gross = one({ ...n }, { tareKg, basis: 'gross' });
  if (!gross) return null;
  const near = known != null ? Math.abs(tareKg - known) <= Math.max(known * 0.25, 1) : n.to! < n.value * 0.5;
  if (near && n.value > n.to!) return [judged(gross.record, n, g, gross.typed)];
  const range = [n.value, n.to!].map((value) => one({ ...n, value })!.record);
  return [
    {
      doubt: {
        record: gross.record,
        why: 'tare-unlikely',
        choices: [
          ...range.map((record, k) => ({ say: say(k ? n.to! : n.value), record })),
          ...(n.value > n.to! ? [{ say: `${say(n.value)} - ${say(n.to!)}`, record: gross.record }] : []),
          drop,
        ],
      },
    },
  ];
}

function unknownMaterial(g: Gathered): Item[] | null {
  if (g.weights.length !== 1) return null;
  const read = g.one(g.weights[0]!, g.count && g.count > 1 ? { count: g.count } : {});
  return read ? [ofWhatMaterial(read.record)] : null;
}

/** A load of a container that holds now this and now that: what was in it is asked. */
export function ofWhatMaterial(record: WeighIn): Item {
  const choices = ['food-scraps', 'coffee-grounds', 'wood-chips'].map((material) => ({
    say: material,
    record: { ...record, material },
  }));
  return {
    doubt: { record: { ...record, material: null }, why: 'no-material', choices: [...choices, drop] },
  };
}
