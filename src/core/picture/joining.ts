import { sumKg } from '../weights/sum-kg.ts';
import { appended, BATCH_DAYS, onBatch, own } from './change.ts';
import { batchAt, ceased, isBlank, started } from './places.ts';
import { proofThen } from './proof.ts';
import type { Batch, Joining, Moment, Picture } from './types.ts';

type Fresh = Moment & {
  kg: number | null;
  litres: number | null;
  source: string | null;
  /** Null straight from carts; else the drum or pile it came out of. */
  from?: string | null;
  /** Between which readings it was proven before it came here; absent or null where it was not. */
  provenBy?: Joining['provenBy'] | null;
};

/**
 * Fresh material into a batch: the proof of heat starts anew. The loads of one day from one place are one joining,
 * so that a pile fed daily does not keep a line for every bucket.
 */
export function addFresh(picture: Picture, id: string, { source, ...fresh }: Fresh): Picture {
  const from = fresh.from ?? null;
  return onBatch(picture, id, (batch) => ({
    joinings: withJoining(batch.joinings, {
      ...momentOf(fresh),
      what: 'fresh',
      from,
      kg: fresh.kg,
      litres: fresh.litres,
      ...(fresh.provenBy
        ? { provenThen: true, provenBy: fresh.provenBy }
        : { provenThen: from === null ? false : null }),
    }),
    ...(source ? { sources: withSource(batch.sources, source, fresh.localDate, fresh.kg ?? 0) } : {}),
  }));
}

const momentOf = ({ entry, at, localDate }: Moment): Moment => ({ entry, at, localDate });

function withJoining(joinings: Joining[], joining: Joining): Joining[] {
  const last = joinings.at(-1);
  const same =
    last?.what === 'fresh' &&
    joining.what === 'fresh' &&
    last.localDate === joining.localDate &&
    last.from === joining.from &&
    last.provenThen === joining.provenThen;
  if (!same) return appended(joinings, joining, BATCH_DAYS);
  const sum = (a: number | null, b: number | null) => (a === null ? b : b === null ? a : sumKg([a, b]));
  const both = { ...joining, kg: sum(last.kg, joining.kg), litres: sum(last.litres, joining.litres) };
  return [...joinings.slice(0, -1), both];
}

/** Sources of a batch with so many kilograms more from one of them on a day. */
export function withSource(sources: Batch['sources'], source: string, localDate: string, kg: number) {
  const before = own(sources, source) ?? { from: localDate, to: localDate, kg: 0 };
  return {
    ...sources,
    [source]: {
      from: before.from < localDate ? before.from : localDate,
      to: before.to > localDate ? before.to : localDate,
      kg: sumKg([before.kg, kg]),
    },
  };
}

const kinOf = (batch: Batch, name: string): string[] =>
  batch.kin.includes(name) || name === batch.name ? batch.kin : [...batch.kin, name];

type Hold = Batch['hold'];
const isLab = (hold: Hold): boolean => hold !== null && hold.why.startsWith('lab:');

/**
 * Of two holds the one that is shown: what a laboratory found before what somebody said, else the first laid.
 * @source none needed
 * @example graverHold(null, null) // null
 */
export const graverHold = (first: Hold, second: Hold): Hold =>
  isLab(second) && !isLab(first) ? second : (first ?? second);

/** One batch ceases into another: its sources and its hold go along; proven stays only what was proven on both sides. */
export function joinInto(picture: Picture, from: string, into: string, now: Moment): Picture {
  const leaving = batchAt(picture, from);
  if (!leaving || from === into) return picture;
  const target = batchAt(picture, into);
  if (!target || isBlank(target)) return moveTo(picture, from, into, now);
  const gone = ceased(picture, from, into, now);
  return onBatch(gone, target.id, (batch) => ({
    joinings: withJoining(batch.joinings, {
      ...momentOf(now),
      what: 'joined',
      from,
      kg: null,
      litres: leaving.level?.litres ?? null,
      ...proofThen(picture, leaving, now),
    }),
    sources: mergedSources(batch.sources, leaving.sources),
    kin: [from, ...leaving.kin].reduce((kin, name) => kinOf({ ...batch, kin }, name), batch.kin),
    hold: graverHold(batch.hold, leaving.hold),
  }));
}

function mergedSources(ours: Batch['sources'], theirs: Batch['sources']): Batch['sources'] {
  let all = ours;
  for (const [source, { from, to, kg }] of Object.entries(theirs)) {
    all = withSource(withSource(all, source, from, kg), source, to, 0);
  }
  return all;
}

/** A batch goes to another place with its history; into a batch that lies there already it is joined. */
export function moveTo(picture: Picture, from: string, to: string, now: Moment): Picture {
  const batch = batchAt(picture, from);
  if (!batch || from === to) return picture;
  const there = batchAt(picture, to);
  if (there && !isBlank(there)) return joinInto(picture, from, to, now);
  const { [from]: _, ...places } = picture.places;
  const { [to]: __, ...ceasedPlaces } = picture.ceased;
  const { [there?.id ?? '']: ___, ...batches } = picture.batches;
  return {
    ...picture,
    batches: { ...batches, [batch.id]: { ...batch, name: to } },
    places: { ...places, [to]: batch.id },
    ceased: { ...ceasedPlaces, [from]: { successor: to, on: now.localDate } },
  };
}

/** A part of a batch becomes one of its own: it inherits the history up to now, and what was proven. */
export function splitFrom(picture: Picture, name: string, from: string, now: Moment): Picture {
  const source = batchAt(picture, from);
  if (!source || from === name) return picture;
  const proof = proofThen(picture, source, now);
  const { picture: next, batch } = started(picture, name, now);
  const part = onBatch(next, batch.id, () => ({
    state: source.state,
    startedAt: source.startedAt ?? now,
    closedAt: source.closedAt,
    sources: source.sources,
    readings: source.readings,
    turns: source.turns,
    moisture: source.moisture,
    labs: source.labs,
    samples: source.samples,
    hold: source.hold,
    joinings: withJoining(source.joinings, {
      ...momentOf(now),
      what: 'split-from',
      from,
      kg: null,
      litres: null,
      ...proof,
    }),
    kin: kinOf(batch, from),
  }));
  return onBatch(part, source.id, (each) => ({ kin: kinOf(each, name) }));
}

/** Some of one pile put onto another: fresh unless it was proven, which then takes nothing away. */
export function addFromPile(
  picture: Picture,
  id: string,
  from: string,
  amount: { kg: number | null; litres: number | null },
  now: Moment,
): Picture {
  const source = batchAt(picture, from);
  const proof = source ? proofThen(picture, source, now) : { provenThen: null };
  return onBatch(picture, id, (batch) => ({
    joinings: withJoining(batch.joinings, {
      ...momentOf(now),
      ...amount,
      // Proven material laid on an unproven pile is like a cover of it; alone in a new pile it hands its proof on.
      what:
        proof.provenThen === true
          ? batch.joinings.length + batch.readings.length > 0
            ? 'cover'
            : 'split-from'
          : 'fresh',
      from,
      ...proof,
    }),
    sources: source ? mergedSources(batch.sources, source.sources) : batch.sources,
    kin: source ? kinOf(batch, from) : batch.kin,
    hold: graverHold(batch.hold, source?.hold ?? null),
  }));
}
