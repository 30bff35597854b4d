import type { Doubt, FieldRecord } from '#records';
import { sameCart } from './double-log.ts';
import type { Draft } from './draft.ts';
import { heldPile } from './matters/index.ts';

/** What the reader could read and the book makes doubtful: asked about before it is stored. */
export const doubtOf = (draft: Draft, record: FieldRecord, twins: readonly Doubt[]): Doubt | null =>
  sameCart(draft, record, twins) ?? mustAsk(draft, record);

/** What is asked about whatever way it comes in, an edited message included. */
export const mustAsk = (draft: Draft, record: FieldRecord): Doubt | null =>
  fullOrReady(record) ?? heldPile(draft, record);

/** `pile 1 is finished`: full, or ready to use? The two are months apart. */
function fullOrReady(record: FieldRecord): Doubt | null {
  if (record.kind !== 'pile' || record.event !== 'finished') return null;
  return {
    record,
    why: 'full-or-ready',
    said: record.said ?? null,
    choices: [
      { say: 'full', record: { ...record, event: 'full' } },
      { say: 'ready', record: { ...record, event: 'ready' } },
    ],
  };
}
