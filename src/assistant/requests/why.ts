import type { Draft } from '../draft.ts';
import type { Line } from '../say.ts';
import { say } from '../say.ts';

const keyOf = (draft: Draft): string => `why:${draft.incoming.chat}`;

/** Keeps how the last answer in this chat came about. */
export function rememberWhy(draft: Draft): void {
  if (draft.why.length > 0) draft.book.setMemo(draft.siteId, keyOf(draft), draft.why);
}

/** `why`: the figures, the formula in words, the source, what was assumed. */
export function why(draft: Draft): void {
  const lines = draft.book.memo<Line[]>(draft.siteId, keyOf(draft));
  if (lines) draft.lines.push(...lines);
  else draft.lines.push(say('why-nothing'));
}
