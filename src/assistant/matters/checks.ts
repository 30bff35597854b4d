import { localDateOf, PROBE_TOLERANCE_C, probeCheck } from '#core';
import type { BookRecordOf, Entry } from '#records';
import type { Draft } from '../draft.ts';
import { type Arg, type Line, say } from '../say.ts';

/** What the check of a thermometer says of what was read with it. */
export function checkMatters(draft: Draft, written: readonly Entry[]): Line[] {
  return written.flatMap((entry): Line[] => {
    const record = entry.record as BookRecordOf<'chore'>;
    if (record.kind !== 'chore' || record.chore !== 'check-thermometer' || record.reads == null) return [];
    const done = draft.picture().chores['check-thermometer'];
    if (done?.entry !== entry.number) return [];
    const { ok, readsC, againstC } = probeCheck(record.reads, record.against ?? null, record.unit ?? null);
    const within: Arg = { rise: PROBE_TOLERANCE_C };
    if (ok === null || againstC === null) return [say('probe-unclear', { against: { celsius: 0 }, within })];
    if (!ok) {
      const off: Arg = { rise: Math.abs(readsC - againstC) };
      return [say('probe-failed', { off, ...sinceArgs(draft, done.doubt?.since ?? null) })];
    }
    const ended = draft.before.chores['check-thermometer']?.doubt;
    return ended && ended.until === null
      ? [say('probe-good-again', sinceArgs(draft, ended.since))]
      : [say('probe-good', { within, against: { celsius: againstC } })];
  });
}

/** From which day on; a site that never had a good check has none. */
function sinceArgs(draft: Draft, since: string | null): Record<string, Arg> {
  const known = since !== null && !since.startsWith('0001');
  return {
    has: { text: known ? 'yes' : 'no' },
    since: known ? { date: localDateOf(since, draft.manner.timeZone) } : { text: '' },
  };
}
