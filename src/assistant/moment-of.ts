import { instantOf } from '#core';
import type { Manner } from './ports.ts';

/** When a record happened: the moment of sending, or the day (at its noon) or the clock time that was said. */
export function momentOf(
  record: { kind: string; when?: unknown },
  sentAt: string,
  manner: Pick<Manner, 'timeZone' | 'today'>,
): string {
  // A forecast speaks of a day ahead; it was made when it was sent.
  if (typeof record.when !== 'string' || record.kind === 'weather') return sentAt;
  if (record.when.length > 10) return instantOf(record.when, manner.timeZone);
  if (record.when === manner.today) return sentAt;
  return instantOf(`${record.when}T12:00`, manner.timeZone);
}
