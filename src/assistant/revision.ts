import { readMessage } from '#parsers';
import { decide } from './decide.ts';
import type { Draft } from './draft.ts';
import { readingContext } from './reading-context.ts';
import { say } from './say.ts';

/**
 * An edited message. Same text: nothing. Changed text: what the old text made is taken back and the new text is
 * read in its place, so that the book holds both and the reply says which lines were replaced.
 */
export function readRevision(draft: Draft): void {
  const { book, siteId, incoming } = draft;
  const history = book
    .messageHistory(siteId, incoming.channel, incoming.chat, incoming.message)
    .filter((message) => message.edit !== incoming.edit);
  const last = history.at(-1);
  if (last && last.text === incoming.text) return;
  const old = history
    .flatMap((message) => book.entriesOfMessage(message.id))
    .filter((entry) => entry.voidedBy === null && entry.record.kind !== 'void');
  // Without a trace of the message (it came before the bot did) an edit is simply a message.
  const first = history[0];
  const original: Draft = first ? { ...draft, incoming: { ...incoming, sentAt: first.sentAt } } : draft;
  for (const entry of old) {
    draft.add(
      { kind: 'void', voids: entry.number, why: 'edit' },
      { voids: [entry.number], happenedAt: draft.now },
    );
  }
  const context = readingContext(original);
  const before = draft.lines.length;
  decide(draft, readMessage(incoming.text, context), context);
  if (old.length > 0) {
    const entries = { text: old.map((entry) => `#${entry.number}`).join(', ') };
    draft.lines.splice(before, 0, say('edited', { entries, count: { count: old.length } }));
  }
}
