import { batchAt } from '#core';
import type { Request } from '#records';
import type { Draft } from '../draft.ts';
import { judge } from '../matters/judging.ts';
import type { Line } from '../say.ts';
import { say } from '../say.ts';
import { whyPile } from '../why/pile.ts';

const keyOf = (draft: Draft): string => `why:${draft.incoming.chat}`;

/** Keeps how the last reply in this chat came about: one with no sum in it takes the place of one that had. */
export function rememberWhy(draft: Draft): void {
  const replied = draft.lines.length > 0 || draft.drawing !== null || draft.file !== null;
  if (!replied) return;
  const known = draft.book.memo<Line[]>(draft.siteId, keyOf(draft));
  if (draft.why.length > 0 || known?.length) draft.book.setMemo(draft.siteId, keyOf(draft), draft.why);
}

/** `why`: the figures, the formula in words, the source, what was assumed. */
export function why(draft: Draft, request: Request): void {
  const batch = request.place ? batchAt(draft.picture(), request.place) : null;
  if (request.place && batch) {
    draft.why.push(...whyPile(draft, request.place, judge(draft, batch)));
    draft.lines.push(...draft.why);
    return;
  }
  const lines = draft.book.memo<Line[]>(draft.siteId, keyOf(draft)) ?? [];
  if (lines.length === 0) {
    draft.lines.push(say('why-nothing'));
    return;
  }
  draft.lines.push(...lines);
  // Asked again, it tells the same.
  draft.why.push(...lines);
}
