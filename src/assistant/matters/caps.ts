import { capsNow } from '#core';
import type { Entry } from '#records';
import type { Draft } from '../draft.ts';
import { type Line, say } from '../say.ts';

/** The load that takes a week or a month over its cap says so, once. */
export function capMatters(draft: Draft, written: readonly Entry[]): Line[] {
  if (!written.some(({ record }) => record.kind === 'weigh-in')) return [];
  const before = capsNow(draft.before, draft.today);
  return capsNow(draft.picture(), draft.today)
    .filter(({ per, over }) => over && !before.find((each) => each.per === per)?.over)
    .map(({ per, kg, capKg, to }) =>
      say('cap-over', { per: { term: per, of: 'per' }, kg: { kg }, cap: { kg: capKg }, date: { date: to } }),
    );
}
