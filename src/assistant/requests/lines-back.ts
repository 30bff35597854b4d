import type { Entry, Request } from '#records';
import type { Draft } from '../draft.ts';
import { entryLine } from '../entry-lines.ts';
import { doubtQuestion } from '../holding.ts';
import { type Arg, type Line, say } from '../say.ts';
import { whoIs } from '../who.ts';

/** What I logged today, with a button to take the last back. */
export function mine(draft: Draft): void {
  const entries = draft.person
    ? draft.book.entriesOfPerson(draft.siteId, draft.person.id, draft.today).filter(isSaid)
    : [];
  if (entries.length === 0) {
    draft.lines.push(say('mine-nothing'));
    return;
  }
  draft.lines.push(say('mine-head', { count: { count: entries.length } }));
  for (const entry of entries) draft.lines.push(shown(draft, entry));
  const last = entries.findLast((entry) => entry.voidedBy === null && entry.held === null);
  if (last) {
    draft.choices.push({
      say: say('button-undo-entry', { entry: { entry: last.number } }),
      act: { do: 'undo', entries: [last.number] },
    });
  }
}

const isSaid = (entry: Entry): boolean => entry.record.kind !== 'void' && entry.record.kind !== 'duty-note';

/** `show #123`: one line of the book, and what became of it. */
export function show(draft: Draft, request: Request): void {
  const number = request.entry ?? 0;
  const entry = draft.book.entry(draft.siteId, number);
  if (!entry) {
    draft.lines.push(say('no-such-entry', { entry: { entry: number } }));
    return;
  }
  draft.lines.push(shown(draft, entry));
  const who: Arg = entry.person === null ? { text: '—' } : whoIs(draft.book, entry.person);
  draft.lines.push(say('show-who', { who, date: { date: entry.localDate } }));
  if (entry.pictures === 0) return;
  draft.lines.push(say('show-pictures', { count: { count: entry.pictures } }));
  // People's own pictures are sent back by the ids under which the channel keeps them; nothing is drawn.
  const files = draft.book.picturesOf(draft.siteId, number);
  if (files.length > 0) draft.drawing = { draw: 'kept', alt: `#${number}`, data: { files } };
}

/** A line of the book as it stands: held and voided ones say so. */
export function shown(draft: Draft, entry: Entry): Line {
  if (entry.voidedBy !== null) {
    return say('shown-voided', { entry: { entry: entry.number }, by: { entry: entry.voidedBy } });
  }
  if (entry.held) return doubtQuestion(entry, entry.held.doubt);
  return entryLine(draft, entry);
}
