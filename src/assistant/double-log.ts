import type { Doubt, FieldRecord } from '#records';
import type { Draft } from './draft.ts';
import { momentOf } from './moment-of.ts';

const NEAR_MIN = 30;
const NEAR_PCT = 1;

/**
 * Two people logging the same cart: same container and label, within half an hour, weights within 1 %, another
 * sender, the same local date. Both are kept, the second held, with one question.
 */
export function sameCart(draft: Draft, record: FieldRecord): Doubt | null {
  if (record.kind !== 'weigh-in' || record.kg == null || !record.container || !draft.person) return null;
  // Of a late cart with no hour nobody can say whether it was the same half hour.
  if (record.when?.length === 10 && record.when !== draft.today) return null;
  const at = Date.parse(momentOf(record, draft.happenedAt, draft.manner));
  const mine = new Set(draft.entries.map((entry) => entry.number));
  const twin = draft.book.latest(draft.siteId, 60).find((entry) => {
    if (mine.has(entry.number) || entry.voidedBy !== null || entry.held !== null) return false;
    if (entry.person === null || entry.person === draft.person!.id) return false;
    const other = entry.record as FieldRecord;
    return (
      other.kind === 'weigh-in' &&
      other.container === record.container &&
      (other.label ?? null) === (record.label ?? null) &&
      other.material === record.material &&
      other.count === record.count &&
      other.kg != null &&
      Math.abs(other.kg - record.kg!) <= (NEAR_PCT / 100) * Math.max(other.kg, record.kg!) &&
      Math.abs(Date.parse(entry.happenedAt) - at) <= NEAR_MIN * 60_000 &&
      entry.localDate === (record.when?.slice(0, 10) ?? draft.today)
    );
  });
  if (!twin) return null;
  return {
    record: { ...record, twinOf: twin.number },
    why: 'same-cart',
    said: `#${twin.number}`,
    choices: [
      { say: 'same', record: null },
      { say: 'another', record },
    ],
  };
}
