import { type AcceptsList, acceptance, settingAt } from '#core';
import type { Request } from '#records';
import type { Draft } from '../draft.ts';
import { say } from '../say.ts';

/** `may compostable cups go in?`: from the site's own list alone. */
export function accepts(draft: Draft, request: Request): void {
  const what = request.what ?? '';
  const picture = draft.picture();
  const list = (settingAt(picture, 'accepts', draft.today) ?? picture.base.accepts) as AcceptsList;
  const { answer, near } = acceptance(list, what);
  draft.lines.push(say(`accepts-${answer}`, { what: { text: what } }));
  if (answer === 'not-on-list' && near.length > 0) {
    draft.lines.push(say('accepts-near', { list: { text: near.slice(0, 3).join(', ') } }));
  }
}
