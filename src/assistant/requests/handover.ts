import { addDays } from '#core';
import type { Entry, Request } from '#records';
import type { Draft } from '../draft.ts';
import { say } from '../say.ts';
import { shown } from './lines-back.ts';
import { today } from './today.ts';

const LINES = 12;

/** `what happened since friday?`: entries in brief, open things, who has what. */
export function handover(draft: Draft, request: Request): void {
  const from = typeof request.from === 'string' ? request.from.slice(0, 10) : addDays(draft.today, -1);
  const entries = draft.book
    .entriesBetween(draft.siteId, from, draft.today)
    .filter((entry: Entry) => entry.voidedBy === null && !['void', 'duty-note'].includes(entry.record.kind));
  const kinds = new Map<string, number>();
  for (const { record } of entries) kinds.set(record.kind, (kinds.get(record.kind) ?? 0) + 1);
  draft.lines.push(say('handover-head', { date: { date: from }, count: { count: entries.length } }));
  draft.lines.push(...entries.slice(-LINES).map((entry) => shown(draft, entry)));
  if (entries.length > LINES) {
    draft.lines.push(say('handover-earlier', { count: { count: entries.length - LINES } }));
  }
  today(draft);
}
