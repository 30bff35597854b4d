import { type Estimate, type Picture, weighed as weighedOf } from '#core';
import type { BookRecordOf, Entry } from '#records';

/** What a weigh-in comes to: a net weight, one that waits for its tare, or an estimate from its volume. */
export type Weighed =
  | { is: 'net'; netKg: number; grossKg: number; tareKg: number | null }
  | { is: 'pending'; grossKg: number }
  | { is: 'volume'; estimate: Estimate | null };

/** Worked out anew each time, with the tare in force when the cart was weighed. */
export function weighed(
  picture: Picture,
  entry: Pick<Entry, 'record' | 'localDate' | 'number' | 'happenedAt'>,
): Weighed {
  const record = entry.record as BookRecordOf<'weigh-in'>;
  const weight = weighedOf(picture, record, {
    localDate: entry.localDate,
    entry: entry.number,
    at: entry.happenedAt,
  });
  if (weight.pending) return { is: 'pending', grossKg: weight.grossKg! };
  if (weight.netKg !== null) {
    const whole = (weight.tareKg ?? 0) * (record.count ?? 1);
    return {
      is: 'net',
      netKg: weight.netKg,
      grossKg: weight.grossKg ?? weight.netKg,
      tareKg: weight.tareKg === null ? null : whole,
    };
  }
  return { is: 'volume', estimate: weight.estimate };
}
