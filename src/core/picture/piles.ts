import type { RecordOf } from '#records';
import { labHolds } from '../heat/labs.ts';
import { BULK_DENSITY } from '../mix/tested.ts';
import { sumKg } from '../weights/sum-kg.ts';
import { appended, BATCH_DAYS, onBatch, onDay, onDrum, own, plus, type Reducers } from './change.ts';
import { addFromPile, graverHold, joinInto, moveTo, splitFrom } from './joining.ts';
import { batchAt, batchFor, ceased, drumName, isBlank, placeKind, started } from './places.ts';
import { labStandardOf } from './proof.ts';
import { quantityOf } from './quantity.ts';
import type { Moment, Picture } from './types.ts';

export const piles: Reducers<'pile' | 'transfer' | 'removal' | 'screening' | 'sample' | 'lab-result'> = {
  pile: (picture, record, now) => pileEvent(picture, record, now),

  transfer: (picture, record, now) => {
    if (placeKind(picture, record.to) !== 'pile') return picture;
    const found = batchFor(picture, record.to, now);
    return addFromPile(
      found.picture,
      found.batch.id,
      record.from,
      quantityOf(picture, record, now.localDate),
      now,
    );
  },

  removal: (picture, record, now) => {
    const { kg, litres } = quantityOf(picture, record, now.localDate);
    let next = onDay(picture, now.localDate, (day) => {
      if (record.material === 'finished-compost') {
        return {
          removedKg: sumKg([day.removedKg, kg ?? 0]),
          removedLitres: sumKg([day.removedLitres, litres ?? 0]),
        };
      }
      const before = own(day.removedOther, record.material) ?? { kg: 0, litres: 0 };
      const after = { kg: sumKg([before.kg, kg ?? 0]), litres: sumKg([before.litres, litres ?? 0]) };
      return {
        removedOther: { ...day.removedOther, [record.material]: after },
        ...(record.material === 'residue'
          ? { residueKg: plus(day.residueKg, record.source ?? '', kg ?? 0) }
          : {}),
      };
    });
    const id = record.pile ? own(next.places, record.pile) : undefined;
    if (id === undefined) return next;
    const removal = { ...now, kg, litres, to: record.to ?? null, material: record.material };
    next = onBatch(next, id, (batch) => ({ removals: appended(batch.removals, removal, BATCH_DAYS) }));
    return next;
  },

  screening: (picture, record, now) => {
    const { kg, litres } = quantityOf(picture, record, now.localDate);
    return onDay(picture, now.localDate, (day) => ({
      screenedKg: sumKg([day.screenedKg, kg ?? 0]),
      screenedLitres: sumKg([day.screenedLitres, litres ?? 0]),
    }));
  },

  sample: (picture, record, now) => {
    if (placeKind(picture, record.pile) !== 'pile') return picture;
    const found = batchFor(picture, record.pile, now);
    return onBatch(found.picture, found.batch.id, (batch) => ({
      samples: appended(batch.samples, now, BATCH_DAYS),
    }));
  },

  'lab-result': (picture, record, now) => {
    const kind = placeKind(picture, record.place);
    if (kind === 'drum') return densityOfDrum(picture, record, now);
    if (kind !== 'pile') return picture;
    const found = batchFor(picture, record.place, now);
    const lab = {
      ...now,
      analyte: record.analyte,
      value: record.value ?? null,
      unit: record.unit ?? null,
      qualifier: record.qualifier ?? null,
    };
    return onBatch(found.picture, found.batch.id, (batch) => ({
      labs: appended(batch.labs, lab, BATCH_DAYS),
      hold: labHolds(lab, labStandardOf(picture, now.localDate))
        ? graverHold(batch.hold, { ...now, why: `lab:${record.analyte}` })
        : batch.hold,
    }));
  },
};

/** Of what is in a drum only its bulk density is kept: all else that a laboratory finds is asked of a pile. */
function densityOfDrum(picture: Picture, record: RecordOf<'lab-result'>, now: Moment): Picture {
  const name = drumName(picture, record.place);
  const { analyte, value } = record;
  if (name === null || analyte !== BULK_DENSITY || value == null) return picture;
  const last = picture.drums[name]?.density;
  if (last && last.at > now.at) return picture;
  return onDrum(picture, name, () => ({ density: { ...now, kgPerM3: value } }));
}

function pileEvent(picture: Picture, record: RecordOf<'pile'>, now: Moment): Picture {
  const { pile, event } = record;
  const other = record.with ?? record.to ?? null;
  switch (event) {
    case 'started': {
      const there = batchAt(picture, pile);
      if (there && isBlank(there)) return onBatch(picture, there.id, () => ({ startedAt: now }));
      return started(picture, pile, now).picture;
    }
    case 'emptied':
      return ceased(picture, pile, null, now);
    case 'joined':
      return other ? joinInto(picture, pile, other, now) : picture;
    case 'split':
      return other ? splitFrom(picture, pile, other, now) : picture;
    case 'moved':
      return other ? moveTo(picture, pile, other, now) : picture;
    case 'full': {
      const { picture: next, batch } = batchFor(picture, pile, now);
      return onBatch(next, batch.id, () => ({ state: 'closed', closedAt: batch.closedAt ?? now }));
    }
    case 'ready': {
      const { picture: next, batch } = batchFor(picture, pile, now);
      return onBatch(next, batch.id, () => ({ state: 'ready', closedAt: batch.closedAt ?? now }));
    }
    // Full, or ready? The crew is asked before; the word alone changes nothing.
    case 'finished':
      return picture;
  }
}
