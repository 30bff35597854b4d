import { type AcceptsList, acceptance, acceptedLines, settingAt, settingsNamed } from '#core';
import type { Request } from '#records';
import type { Draft } from '../draft.ts';
import { type Line, say } from '../say.ts';

/** `may compostable cups go in?`: from the site's own list alone. */
export function accepts(draft: Draft, request: Request): void {
  const what = request.what ?? '';
  const set = settingsNamed(draft.picture(), 'accepts').findLast(({ from }) => from <= draft.today);
  draft.why.push(
    say('why-accepts', { entry: { entry: set?.entry ?? 0 }, has: { text: set ? 'yes' : 'no' } }),
    say('why-accepts-how'),
  );
  const picture = draft.picture();
  const list = (settingAt(picture, 'accepts', draft.today) ?? picture.base.accepts) as AcceptsList;
  if (what === '') {
    draft.lines.push(...wholeList(list));
    return;
  }
  const { answer, near } = acceptance(list, what);
  draft.lines.push(say(`accepts-${answer}`, { what: { text: what } }));
  // What is near by name may well be what stays out: it is said which.
  if (answer === 'not-on-list' && near.length > 0) draft.lines.push(...listedLines(list, near.slice(0, 3)));
}

const MOST_NAMED = 12;

/** `what may go in?`: the whole of the site's list, what goes in and what stays out. */
function wholeList(list: AcceptsList): Line[] {
  const all = listedLines(list);
  return all.length > 0 ? all : [say('accepts-no-list')];
}

/** Lines of the list, or those of them that are named: what goes in, what stays out. */
function listedLines(list: AcceptsList, only: readonly string[] | null = null): Line[] {
  const lines = acceptedLines(list).filter(({ item }) => only === null || only.includes(item));
  const named = (yes: boolean) => lines.filter((line) => line.yes === yes).map(({ name }) => name);
  const line = (id: string, names: string[]): Line[] =>
    names.length > 0 ? [say(id, { list: { text: names.slice(0, MOST_NAMED).join(', ') } })] : [];
  return [...line('accepts-in', named(true)), ...line('accepts-out', named(false))];
}
