import type { BookRecordOf, Entry } from '#records';
import type { Draft } from '../draft.ts';
import { type Line, say } from '../say.ts';

/** What ended a problem is kept with it, and shown: the next time, that is the first thing to try. */
export function resolvedMatters(draft: Draft, written: readonly Entry[]): Line[] {
  return written.flatMap((entry) => {
    if (entry.record.kind !== 'resolved') return [];
    const record = entry.record as BookRecordOf<'resolved'>;
    const ended = draft.picture().ended.filter((each) => each.ended.entry === entry.number);
    if (ended.length === 0) return [say('resolved-none')];
    const [first] = ended;
    const done = record.note ?? null;
    return [
      say('resolved-after', {
        old: { entry: first!.entry },
        date: { date: first!.localDate },
        done: { text: done ?? '' },
        has: { text: done ? 'yes' : 'no' },
      }),
    ];
  });
}
