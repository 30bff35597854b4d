import { DISCHARGED_KG_PER_M3, unbookedKg } from '../drum/drum.ts';
import { type TakenOut, takeOut } from '../drum/flow.ts';
import { sumKg } from '../weights/sum-kg.ts';
import { appended, onBatch, onDay, onDrum, type Reducers } from './change.ts';
import { AIR_DAYS } from './heat.ts';
import { addFresh, withSource } from './joining.ts';
import { batchFor, drumName, placeKind } from './places.ts';
import { drumProofOf } from './proof.ts';
import type { Moment, Picture } from './types.ts';
import { weighed } from './weighed.ts';

/** Loads that went in longer ago are no longer taken to be inside: residence is days. @source common practice, no source */
export const DRUM_DAYS = 30;

export const drum: Reducers<'discharge' | 'drum-setting'> = {
  discharge: (picture, record, now) => {
    // What comes out is no material of the table: it has no factor, so only what was weighed or measured counts.
    const weight = weighed(picture, { ...record, material: 'drum-output', label: null }, now);
    const kg = weight.netKg;
    const litres = weight.litres;
    let next = onDay(picture, now.localDate, (day) => ({
      dischargedKg: sumKg([day.dischargedKg, kg ?? 0]),
      dischargedLitres: sumKg([day.dischargedLitres, litres ?? 0]),
    }));
    const name = drumName(picture, record.place);
    let out: Left[] = [];
    if (name !== null) {
      // Where only a volume was said, by what such material usually weighs: it moves loads, it is no measured mass.
      // With no amount the drum was emptied: that is what crews mean by it (common practice, no source).
      const outKg = kg ?? (litres === null ? Number.MAX_VALUE : (litres * DISCHARGED_KG_PER_M3) / 1000);
      // What was in before the book began is the oldest, and goes out before any load of it.
      const older = unbookedKg(next.drums[name]!, now.at);
      const taken = takeOut(next.drums[name]!.loads, Math.max(0, outKg - older), now.at);
      const dates = new Map(next.drums[name]!.loads.map(({ entry, localDate }) => [entry, localDate]));
      out = taken.out.map((load) => ({ ...load, localDate: dates.get(load.entry) ?? now.localDate }));
      next = onDrum(next, name, (each) => ({
        loads: taken.left,
        // Nobody knows how much is in it after so much of it went out.
        ...(kg === null && litres === null ? { level: null } : {}),
        discharges: appended(each.discharges, { ...now, kg, litres, to: record.pile ?? null }, AIR_DAYS),
      }));
    }
    if (record.kg != null && weight.pending) {
      next = {
        ...next,
        pending: [
          ...next.pending,
          {
            ...now,
            container: record.container ?? '',
            label: null,
            kg: record.kg,
            count: record.count ?? 1,
            record,
            batch: null,
          },
        ],
      };
    }
    if (!record.pile || placeKind(next, record.pile) !== 'pile') return next;
    // What the drum held counts as proven where it is shown so by its readings of before, and the site goes by that.
    const proof = name === null ? null : drumProofOf(picture, picture.drums[name]!, now);
    const provenBy = proof?.verdict === 'met' ? proof.provenBy : null;
    return intoPile(next, record.pile, { kg, litres, from: name ?? 'drum', out, provenBy }, now);
  },

  'drum-setting': (picture, record, now) => {
    const name = drumName(picture, record.place);
    if (name === null) return picture;
    return onDrum(picture, name, (each) => ({
      mode: record.mode ?? each.mode,
      everyMin: record.everyMin ?? each.everyMin,
      fan: record.fan ?? each.fan,
      settingSince: now,
    }));
  },
};

type Left = TakenOut['out'][number] & { localDate: string };
type Out = {
  kg: number | null;
  litres: number | null;
  from: string;
  out: Left[];
  provenBy: { from: string; to: string } | null;
};

function intoPile(
  picture: Picture,
  pile: string,
  { kg, litres, from, out, provenBy }: Out,
  now: Moment,
): Picture {
  const found = batchFor(picture, pile, now);
  const next = addFresh(found.picture, found.batch.id, { ...now, kg, litres, source: null, from, provenBy });
  return onBatch(next, found.batch.id, (batch) => ({
    sources: out.reduce(
      (sources, load) => (load.source ? withSource(sources, load.source, load.localDate, load.kg) : sources),
      batch.sources,
    ),
  }));
}
