import type { RecordOf } from '#records';
import { appended, BATCH_DAYS, onBatch, onDay, onDrum, type Reducers } from './change.ts';
import { moveTo } from './joining.ts';
import { batchFor, drumName, placeKind } from './places.ts';
import type { Moment, Picture, PileReading } from './types.ts';

/** Days that readings of the air, and of a drum and its exit, are kept. */
export const AIR_DAYS = 60;

const readingOf = (record: RecordOf<'temperature'>, now: Moment): PileReading => ({
  ...now,
  celsius: record.celsius,
  points: record.points ?? null,
  depthCm: record.depthCm ?? null,
  upTo: record.upTo ?? null,
  approximate: record.approximate ?? false,
});

export const heat: Reducers<'temperature' | 'moisture' | 'turning' | 'cover'> = {
  temperature: (picture, record, now, entry) => {
    // The mean of a day by a forecast is nobody's reading.
    const standIn = entry.assumed.includes('forecast');
    const reading = readingOf(record, now);
    const counted = standIn
      ? picture
      : onDay(picture, now.localDate, (day) => ({ readings: day.readings + 1 }));
    const kind = placeKind(picture, record.place);
    if (kind === 'ambient') {
      const celsius = record.celsius.reduce((sum, each) => sum + each, 0) / record.celsius.length;
      const air = { ...now, celsius, ...(standIn ? { standIn } : {}) };
      return { ...counted, ambient: appended(counted.ambient, air, AIR_DAYS) };
    }
    if (kind === 'exit') return { ...counted, exit: appended(counted.exit, reading, AIR_DAYS) };
    if (kind === 'drum') {
      const name = drumName(picture, record.place);
      if (name === null) return counted;
      return onDrum(counted, name, (drum) => ({ readings: appended(drum.readings, reading, AIR_DAYS) }));
    }
    if (kind === 'none') return counted;
    const found = batchFor(counted, record.place, now);
    return onBatch(found.picture, found.batch.id, (batch) => ({
      readings: appended(batch.readings, reading, BATCH_DAYS),
    }));
  },

  moisture: (picture, record, now) => {
    const kind = placeKind(picture, record.place);
    if (kind === 'drum') {
      const name = drumName(picture, record.place);
      const tested = { ...now, feel: record.feel ?? null, percent: record.percent ?? null };
      const last = name === null ? null : picture.drums[name]?.moisture;
      // A test that is logged late does not speak for today.
      return name === null || (last && last.at > now.at)
        ? picture
        : onDrum(picture, name, () => ({ moisture: tested }));
    }
    if (kind !== 'pile') return picture;
    const found = batchFor(picture, record.place, now);
    const moisture = { ...now, feel: record.feel ?? null, percent: record.percent ?? null };
    return onBatch(found.picture, found.batch.id, (batch) => ({
      moisture: appended(batch.moisture, moisture, BATCH_DAYS),
    }));
  },

  turning: (picture, record, now) => {
    const counted = onDay(picture, now.localDate, (day) => ({ turnings: day.turnings + 1 }));
    if (placeKind(counted, record.pile) !== 'pile') return counted;
    const found = batchFor(counted, record.pile, now);
    const turned = onBatch(found.picture, found.batch.id, (batch) => ({
      turns: appended(batch.turns, now, BATCH_DAYS),
    }));
    return record.movedTo ? moveTo(turned, record.pile, record.movedTo, now) : turned;
  },

  cover: (picture, record, now) => coverOn(picture, record, now),
};

function coverOn(picture: Picture, record: RecordOf<'cover'>, now: Moment): Picture {
  if (placeKind(picture, record.pile) !== 'pile') return picture;
  const found = batchFor(picture, record.pile, now);
  // Nobody says which pile a cover of compost came from: not known, and remarked as such.
  const cover = { ...now, layer: record.layer, on: record.on, fromProven: null };
  return onBatch(found.picture, found.batch.id, (batch) => ({
    covers: appended(batch.covers, cover, BATCH_DAYS),
  }));
}
