import type { RecordOf } from '#records';
import { NO_STOCK, type StockChange, stockAfter, stockDensity } from '../mix/stock.ts';
import { type Tally, tallyMore } from '../weights/estimate.ts';
import { sumKg } from '../weights/sum-kg.ts';
import { dayOf, inserted, onBatch, onDay, onDrum, own, plus, type Reducers } from './change.ts';
import { noAmount } from './empty.ts';
import { addFresh } from './joining.ts';
import { batchFor, drumName, placeKind } from './places.ts';
import { quantityOf } from './quantity.ts';
import type { Amount, DayTotals, Moment, PendingNet, Picture } from './types.ts';
import { isGross, type LoadWeight, litresOf, weighed } from './weighed.ts';

type WeighIn = RecordOf<'weigh-in'>;

/** How long loads stay on the list that the mix looks at. */
const MIX_DAYS = 21;
const NONE: Tally = { n: 0, meanKg: 0, m2: 0 };

export const intake: Reducers<'weigh-in' | 'rejected-load' | 'delivery' | 'level'> = {
  'weigh-in': (picture, record, now) => {
    const weight = weighed(picture, record, now);
    let next = countLoad(picture, record, now, weight);
    if (record.source) {
      next = { ...next, lastFromSource: { ...next.lastFromSource, [record.source]: now.localDate } };
    }
    const goes = destination(next, record, now);
    next = putIn(goes.picture, record, now, weight, goes);
    if (record.kg != null && weight.pending) {
      next = { ...next, pending: [...next.pending, waiting(record, now, goes.batch)] };
    }
    return learn(next, record, weight);
  },

  'rejected-load': (picture, record, now) =>
    onDay(picture, now.localDate, (day) => ({
      rejected: plus(day.rejected, record.source ?? '', record.count ?? 1),
      rejectedKg: sumKg([day.rejectedKg, record.kg ?? 0]),
      dirt: withDirt(day.dirt, record.source ?? '', record.found ?? (record.reason ? [record.reason] : [])),
    })),

  delivery: (picture, record, now) => {
    const { kg, litres } = quantityOf(picture, record, now.localDate);
    return onStock(picture, record.material, { kind: 'delivery', kg, litres });
  },

  level: (picture, record, now) => {
    const { kg, litres } = quantityOf(picture, record, now.localDate);
    const fraction = record.fraction ?? null;
    if (record.material) {
      // A fraction of a heap of unknown size says only when there is none left.
      const none = fraction === 0 ? 0 : null;
      return onStock(picture, record.material, { kind: 'level', kg, litres: litres ?? none, moment: now });
    }
    if (!record.place) return picture;
    if (placeKind(picture, record.place) === 'drum') {
      const name = drumName(picture, record.place);
      if (name === null) return picture;
      const drumLitres = picture.drums[name]!.litres;
      const part = fraction ?? (litres !== null && drumLitres ? litres / drumLitres : null);
      return part === null ? picture : onDrum(picture, name, () => ({ level: { ...now, fraction: part } }));
    }
    const at = own(picture.places, record.place);
    return at === undefined ? picture : onBatch(picture, at, () => ({ level: { ...now, fraction, litres } }));
  },
};

/** Materials that no table knows are counted as if they were chips: what is used of them is known by kg alone. */
function onStock(picture: Picture, material: string, change: StockChange): Picture {
  const before = own(picture.stock, material) ?? { ...NO_STOCK };
  const density = stockDensity(material) ?? stockDensity('wood-chips')!;
  return { ...picture, stock: { ...picture.stock, [material]: stockAfter(before, change, density) } };
}

const waiting = (record: WeighIn, now: Moment, batch: string | null): PendingNet => ({
  ...now,
  container: record.container ?? '',
  label: record.label ?? null,
  kg: record.kg ?? 0,
  count: record.count,
  record,
  batch,
});

/** The sums of the day: one load more, with what is known of its weight. */
function countLoad(picture: Picture, record: WeighIn, now: Moment, weight: LoadWeight): Picture {
  const source = record.source ?? '';
  return onDay(picture, now.localDate, (day) => ({
    intake: changeIntake(day, record, (amount) => ({
      kg: sumKg([amount.kg, weight.netKg ?? 0]),
      estimatedKg: sumKg([amount.estimatedKg, weight.estimatedKg ?? 0]),
      litres: sumKg([amount.litres, weight.litres ?? 0]),
      loads: amount.loads + record.count,
      pending: amount.pending + (weight.pending ? 1 : 0),
    })),
    loadsBySource: plus(day.loadsBySource, source, record.count),
    ...(record.flags?.includes('contaminated')
      ? {
          contaminated: plus(day.contaminated, source, record.count),
          dirt: withDirt(day.dirt, source, dirtOf(record)),
        }
      : {}),
    ...(record.ofWhich?.length
      ? { ofWhich: record.ofWhich.reduce((all, { what, kg }) => plus(all, what, kg ?? 0), day.ofWhich) }
      : {}),
  }));
}

/** Each thing once, whether it was weighed out of the load or only named. */
const dirtOf = (record: WeighIn): string[] => [
  ...new Set([...(record.ofWhich?.map(({ what }) => what) ?? []), ...(record.found ?? [])]),
];

function withDirt(dirt: DayTotals['dirt'], source: string, found: readonly string[]): DayTotals['dirt'] {
  if (found.length === 0) return dirt;
  const counts = found.reduce((all, what) => plus(all, what, 1), own(dirt, source) ?? {});
  return { ...dirt, [source]: counts };
}

function changeIntake(day: DayTotals, record: WeighIn, change: (amount: Amount) => Amount) {
  const bySource = own(day.intake, record.material) ?? {};
  const source = record.source ?? '';
  return {
    ...day.intake,
    [record.material]: { ...bySource, [source]: change(own(bySource, source) ?? noAmount()) },
  };
}

type Destination = { picture: Picture; drum: string | null; batch: string | null };

/** Where a load goes: the pile or drum that was said, else the site's drum, else nowhere that is known. */
function destination(picture: Picture, record: WeighIn, now: Moment): Destination {
  const kind = record.place ? placeKind(picture, record.place) : 'drum';
  if (record.place && kind === 'pile') {
    const found = batchFor(picture, record.place, now);
    return { picture: found.picture, drum: null, batch: found.batch.id };
  }
  return { picture, drum: kind === 'drum' ? drumName(picture, record.place) : null, batch: null };
}

function putIn(
  picture: Picture,
  record: WeighIn,
  now: Moment,
  weight: LoadWeight,
  goes: { drum: string | null; batch: string | null },
): Picture {
  const kg = weight.netKg ?? weight.estimatedKg;
  let next = picture;
  if (goes.batch && record.material !== 'water') {
    next = addFresh(next, goes.batch, { ...now, kg, litres: weight.litres, source: record.source ?? null });
  }
  if (kg === null) return next;
  const load = {
    ...now,
    material: record.material,
    kg,
    litres: weight.litres,
    estimated: weight.netKg === null,
    source: record.source ?? null,
  };
  if (goes.drum) next = onDrum(next, goes.drum, (drum) => ({ loads: inserted(drum.loads, load) }));
  const forMix = {
    ...load,
    container: record.container ?? null,
    count: record.count,
    place: record.place ?? goes.drum,
  };
  next = { ...next, mixLoads: inserted(next.mixLoads, forMix) };
  if (!Object.hasOwn(next.stock, record.material)) return next;
  return onStock(next, record.material, { kind: 'use', kg, litres: null });
}

/** What is usual for a container, and what a full one of this material weighs. */
function learn(picture: Picture, record: WeighIn, weight: LoadWeight): Picture {
  const { container, label, kg } = record;
  if (!container || kg == null || record.count < 1 || (record.fill != null && record.fill < 1))
    return picture;
  let next = picture;
  if (isGross(record)) {
    const each = kg / record.count;
    const weights = { ...next.weights, [container]: tallyMore(own(next.weights, container) ?? NONE, each) };
    const name = `${container} ${label}`;
    if (label) weights[name] = tallyMore(own(next.weights, name) ?? NONE, each);
    next = { ...next, weights };
  }
  if (weight.netKg === null || litresOf(picture, container, label, picture.asOfDate || '9999') === null) {
    return next;
  }
  const key = `${container}|${record.material}`;
  return {
    ...next,
    factors: {
      ...next.factors,
      [key]: tallyMore(own(next.factors, key) ?? NONE, weight.netKg / record.count),
    },
  };
}

/** Counts what waited for an empty weight, as far as it is known now. */
export function settlePending(picture: Picture): Picture {
  let next = picture;
  const still: PendingNet[] = [];
  for (const line of picture.pending) {
    const { record } = line;
    const now: Moment = { entry: line.entry, at: line.at, localDate: line.localDate };
    const load = {
      ...record,
      material: 'material' in record ? record.material : 'drum-output',
      label: line.label,
    };
    const weight = weighed(picture, load, now);
    if (weight.pending || weight.netKg === null) still.push(line);
    else if (record.kind === 'weigh-in') next = complete(next, record, now, weight, line.batch);
    else {
      const kg = weight.netKg;
      next = onDay(next, now.localDate, (day) => ({ dischargedKg: sumKg([day.dischargedKg, kg]) }));
    }
  }
  return still.length === picture.pending.length ? picture : { ...next, pending: still };
}

function complete(
  picture: Picture,
  record: WeighIn,
  now: Moment,
  weight: LoadWeight,
  batch: string | null,
): Picture {
  const kg = weight.netKg ?? 0;
  let next = picture;
  if (dayOf(picture, now.localDate)) {
    next = onDay(next, now.localDate, (day) => ({
      intake: changeIntake(day, record, (amount) => ({
        ...amount,
        kg: sumKg([amount.kg, kg]),
        pending: amount.pending - 1,
      })),
    }));
  }
  if (batch) {
    next = onBatch(next, batch, (each) => ({
      joinings: each.joinings.map((joining) =>
        joining.what === 'fresh' && joining.from === null && joining.localDate === now.localDate
          ? { ...joining, kg: sumKg([joining.kg ?? 0, kg]) }
          : joining,
      ),
      ...(record.source ? { sources: addedToSource(each.sources, record.source, now.localDate, kg) } : {}),
    }));
  }
  const drum = batch ? null : destination(next, { ...record, place: record.place ?? null }, now).drum;
  return learn(putIn(next, record, now, weight, { drum, batch: null }), record, weight);
}

function addedToSource(
  sources: Record<string, { from: string; to: string; kg: number }>,
  source: string,
  localDate: string,
  kg: number,
) {
  const before = own(sources, source) ?? { from: localDate, to: localDate, kg: 0 };
  return { ...sources, [source]: { ...before, kg: sumKg([before.kg, kg]) } };
}

export { MIX_DAYS };
