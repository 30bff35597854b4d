import { type DoubtCode, type FieldRecord, fromKg } from '#records';
import type { ReadContext } from './context.ts';
import { judgeWeight } from './plausible.ts';
import { possible } from './warmth.ts';

/**
 * Why a record that nobody typed into the chat (a row of an old log) may not be true; null where it may stand. It is
 * held to the same bounds as what is typed: what a container can hold, and how warm a place can be.
 * @example doubtAbout({ kind: 'temperature', place: 'pile A', celsius: [96] }, context) // 'impossible-temperature'
 */
export function doubtAbout(record: FieldRecord, context: ReadContext): DoubtCode | null {
  if (record.kind === 'weigh-in' && record.kg != null) {
    const unit = context.units.mass;
    return judgeWeight(record, { value: fromKg(record.kg, unit), unit, said: true }, context)?.why ?? null;
  }
  if (record.kind === 'temperature')
    return record.celsius.every((celsius) => possible(record.place ?? '', celsius))
      ? null
      : 'impossible-temperature';
  return null;
}
