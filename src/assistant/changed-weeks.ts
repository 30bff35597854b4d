import { weekChange, weekOf, weekStartsAt } from '#core';
import type { Draft } from './draft.ts';
import { say } from './say.ts';

/** A late line or a correction that changes a week whose summary went out already says so, with the difference. */
export function sayChangedWeeks(draft: Draft): void {
  const { book, siteId } = draft;
  if (draft.entries.length === 0) return;
  const weekStarts = weekStartsAt(draft.before, draft.today);
  const dates = new Set(draft.entries.map((entry) => entry.localDate));
  for (const number of draft.voided) {
    const old = book.entry(siteId, number);
    if (old) dates.add(old.localDate);
  }
  const weeks = new Set([...dates].map((date) => weekOf(date, weekStarts)));
  for (const weekFrom of [...weeks].sort()) {
    if (!book.memo(siteId, `posted-week:${weekFrom}`)) continue;
    const change = weekChange(draft.before, draft.picture(), weekFrom);
    if (!change || (change.measuredKg === 0 && change.estimatedKg === 0)) continue;
    const kg = change.measuredKg + change.estimatedKg;
    draft.lines.push(
      say(kg >= 0 ? 'week-changed-more' : 'week-changed-less', {
        week: { date: weekFrom },
        kg: { kg: Math.abs(kg) },
      }),
    );
  }
}
