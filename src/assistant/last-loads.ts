import type { BookRecordOf } from '#records';
import type { Draft } from './draft.ts';
import type { Say } from './say.ts';

type Loads = { date: string; of: Record<string, string[]> };

const keyOf = (draft: Draft): string => `last-loads:${draft.incoming.chat}`;

/** What each container held last today, or what an advice asked for with it: what `one more barrow` is one more of. */
export function lastLoads(draft: Draft): Loads['of'] {
  const kept = draft.book.memo<Loads>(draft.siteId, keyOf(draft));
  return kept?.date === draft.today ? kept.of : {};
}

/** Keeps what this message and its reply say of containers; where the two differ, both. */
export function rememberLoads(draft: Draft): void {
  const found: Record<string, string[]> = {};
  const put = (container: string, material: string) => {
    const known = found[container] ?? [];
    found[container] = known.includes(material) ? known : [...known, material];
  };
  for (const { record, held, localDate } of draft.entries) {
    if (record.kind !== 'weigh-in' || held !== null || localDate !== draft.today) continue;
    const { container, material } = record as BookRecordOf<'weigh-in'>;
    // What a cart always holds is weighed, and said with its weight.
    const usual = container ? draft.picture().base.containers[container]?.holds : null;
    if (container && material !== usual && material !== 'unknown') put(container, material);
  }
  for (const said of draft.lines.flat()) advised(said, put);
  if (Object.keys(found).length === 0) return;
  const of = { ...lastLoads(draft), ...found };
  draft.book.setMemo(draft.siteId, keyOf(draft), { date: draft.today, of } satisfies Loads);
}

function advised({ args }: Say, put: (container: string, material: string) => void): void {
  const { what, material } = args ?? {};
  if (!what || !material || !('container' in what) || !('material' in material)) return;
  if (what.count > 0) put(what.container, material.material);
}
