import { own } from './change.ts';
import { newBatch } from './empty.ts';
import type { Batch, Moment, Picture } from './types.ts';

/** Places that hold no batch. */
const NOT_PILES = new Set(['exit', 'ambient', 'floor', 'lift']);

export type PlaceKind = 'drum' | 'exit' | 'ambient' | 'pile' | 'none';

/** What a place is: a drum, where the drum's output is read, the air, a pile, or none of these. */
export function placeKind(picture: Pick<Picture, 'drums' | 'places'>, place: string): PlaceKind {
  if (Object.hasOwn(picture.drums, place)) return 'drum';
  if (Object.hasOwn(picture.places, place)) return 'pile';
  if (place === 'exit' || place === 'ambient') return place;
  // A site file may name its only drum by another name.
  if (/^drum\b/.test(place)) return 'drum';
  return NOT_PILES.has(place) ? 'none' : 'pile';
}

/** The drum that a place means: by name, else the site's first; null where it has none. */
export function drumName(picture: Pick<Picture, 'drums'>, place?: string | null): string | null {
  if (place && Object.hasOwn(picture.drums, place)) return place;
  return Object.keys(picture.drums)[0] ?? null;
}

/**
 * The batch that is at a place now; null where none is.
 * @source none needed
 * @example batchAt(picture, 'pile B')!.name // 'pile B'
 */
export function batchAt(picture: Pick<Picture, 'batches' | 'places'>, place: string): Batch | null {
  const id = own(picture.places, place);
  return (id !== undefined && own(picture.batches, id)) || null;
}

/** Whether nothing has ever been said of a batch: a pile of the site file that was never used. */
export const isBlank = (batch: Batch): boolean =>
  batch.startedAt === null &&
  batch.state === 'open' &&
  batch.level === null &&
  batch.hold === null &&
  [
    batch.readings,
    batch.turns,
    batch.covers,
    batch.moisture,
    batch.joinings,
    batch.removals,
    batch.samples,
    batch.labs,
  ].every((list) => list.length === 0);

/** The picture with a new batch at a place; what was there before is gone from it. */
export function started(picture: Picture, place: string, now: Moment): { picture: Picture; batch: Batch } {
  const left = ceased(picture, place, null, now);
  const batch = newBatch(`${place}#${now.entry}`, place, now);
  return {
    batch,
    picture: {
      ...left,
      batches: { ...left.batches, [batch.id]: batch },
      places: { ...left.places, [place]: batch.id },
      ceased: withoutCeased(left.ceased, place),
    },
  };
}

function withoutCeased(record: Picture['ceased'], place: string): Picture['ceased'] {
  if (!Object.hasOwn(record, place)) return record;
  const { [place]: _, ...rest } = record;
  return rest;
}

/** The batch at a place, made where there is none: what was said of it must not be lost. */
export function batchFor(picture: Picture, place: string, now: Moment): { picture: Picture; batch: Batch } {
  const batch = batchAt(picture, place);
  return batch ? { picture, batch } : started(picture, place, now);
}

/** The picture with the batch at a place gone: emptied (no successor), or into another. */
export function ceased(picture: Picture, place: string, successor: string | null, now: Moment): Picture {
  const batch = batchAt(picture, place);
  if (!batch) return picture;
  const { [place]: _, ...places } = picture.places;
  return {
    ...picture,
    places,
    batches: { ...picture.batches, [batch.id]: { ...batch, state: 'gone', goneAt: now } },
    ceased: { ...picture.ceased, [place]: { successor, on: now.localDate } },
  };
}
