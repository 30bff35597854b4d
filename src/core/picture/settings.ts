import type { BookRecordOf } from '#records';
import { sumKg } from '../weights/sum-kg.ts';
import { onBatch, onDay, own, type Reducers, without } from './change.ts';
import { settlePending } from './intake.ts';
import { graverHold } from './joining.ts';
import { batchAt } from './places.ts';
import type { Moment, Picture, SettingLine } from './types.ts';

export const settings: Reducers<'setting' | 'void' | 'duty' | 'duty-note' | 'hours' | 'note'> = {
  setting: (picture, record, now) => {
    if (record.name === 'closed') return closed(picture, record, now);
    const told = withSetting(picture, record, now);
    const [what, of] = nameParts(record.name);
    if (what === 'tare' && of) {
      const weighed = { ...told, emptyWeighed: { ...told.emptyWeighed, [of]: now.localDate } };
      return settlePending(weighed);
    }
    if (what === 'hold' && of) return held(told, of, record.value, now);
    return told;
  },

  // The line that it takes back is given as voided: it never reached this picture.
  void: (picture) => picture,

  duty: (picture, record, now) => {
    if (record.removed) return { ...picture, ownDuties: without(picture.ownDuties, record.name) };
    const duty = {
      entry: now.entry,
      every: record.every ?? null,
      on: record.on ?? null,
      since: now.localDate,
    };
    return { ...picture, ownDuties: { ...picture.ownDuties, [record.name]: duty } };
  },

  'duty-note': (picture, record, now, entry) => ({
    ...picture,
    dutyNotes: {
      ...picture.dutyNotes,
      [record.duty]: {
        act: record.act,
        person: entry.person,
        at: now.at,
        localDate: now.localDate,
        until: record.until?.slice(0, 10) ?? null,
        reason: record.reason ?? null,
      },
    },
  }),

  hours: (picture, record, now) =>
    onDay(picture, now.localDate, (day) => ({
      hours: sumKg([day.hours, record.hours * (record.people ?? 1)]),
    })),

  note: (picture) => picture,
};

function nameParts(name: string): [string, string | null] {
  const colon = name.indexOf(':');
  return colon < 0 ? [name, null] : [name.slice(0, colon), name.slice(colon + 1)];
}

function withSetting(picture: Picture, record: BookRecordOf<'setting'>, now: Moment): Picture {
  const line = {
    from: record.from?.slice(0, 10) ?? now.localDate,
    at: record.from ? null : now.at,
    value: record.value ?? null,
    entry: now.entry,
  };
  const before = own(picture.settings, record.name) ?? [];
  const lines = [...before, line].sort(bySetting);
  return { ...picture, settings: { ...picture.settings, [record.name]: lines } };
}

/** By day, then by the moment it was told, then by number: the last that holds is the one in force. */
function bySetting(a: SettingLine, b: SettingLine): number {
  if (a.from !== b.from) return a.from < b.from ? -1 : 1;
  const [at, other] = [a.at ?? '', b.at ?? ''];
  return at === other ? a.entry - b.entry : at < other ? -1 : 1;
}

function closed(picture: Picture, record: BookRecordOf<'setting'>, now: Moment): Picture {
  const value = record.value as { from?: string | null; to?: string | null } | null;
  const from = value?.from?.slice(0, 10) ?? record.from?.slice(0, 10) ?? now.localDate;
  const to = value?.to?.slice(0, 10) ?? null;
  // `open again` ends what is running.
  if (to === null) {
    const open = picture.closures.map((each) =>
      each.to >= now.localDate ? { ...each, to: dayBefore(now) } : each,
    );
    return { ...picture, closures: open.filter((each) => each.from <= each.to) };
  }
  return { ...picture, closures: [...picture.closures, { entry: now.entry, from, to }] };
}

const dayBefore = ({ localDate }: Moment): string =>
  new Date(Date.parse(`${localDate}T00:00:00Z`) - 86_400_000).toISOString().slice(0, 10);

/** A hold laid on a pile, or lifted, by a coordinator. */
function held(picture: Picture, place: string, value: unknown, now: Moment): Picture {
  const batch = batchAt(picture, place);
  if (!batch) return picture;
  const lifted = value === false || value === null || value === 'off';
  const laid = { ...now, why: typeof value === 'string' ? value : 'said' };
  return onBatch(picture, batch.id, () => ({ hold: lifted ? null : graverHold(laid, batch.hold) }));
}
