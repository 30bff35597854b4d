import { readMessage } from '#parsers';
import type { Entry, ParsedMessage } from '#records';
import { decide, offerUndo, rememberLast } from './decide.ts';
import { mustAsk } from './doubting.ts';
import type { Draft } from './draft.ts';
import { entryLine } from './entry-lines.ts';
import { matters } from './matters/index.ts';
import { readingContext } from './reading-context.ts';
import { say } from './say.ts';
import { keepsHold } from './undo.ts';

/**
 * An edited message. Same text: nothing. Changed text: where it makes the same kinds of lines, each new one takes
 * the place of its old one; otherwise what the old text made is taken back and the new text is read in its place.
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
    .filter((entry) => entry.voidedBy === null && entry.record.kind !== 'void')
    .filter((entry) => !keepsHold(draft, entry));
  // What happened, happened when the message was first sent. Without a trace of it an edit is simply a message.
  const first = history[0];
  const original: Draft = first
    ? { ...draft, now: first.sentAt, incoming: { ...incoming, sentAt: first.sentAt } }
    : draft;
  if (first) draft.happenedAt = first.sentAt;
  const context = readingContext(original);
  const parsed = readMessage(incoming.text, context);
  if (old.length > 0 && isLineForLine(draft, old, parsed)) {
    replaceLines(draft, old, parsed);
    return;
  }
  for (const entry of old) {
    draft.add(
      { kind: 'void', voids: entry.number, why: 'edit' },
      { voids: [entry.number], happenedAt: draft.now },
    );
  }
  if (old.length > 0) {
    const entries = { text: old.map((entry) => `#${entry.number}`).join(', ') };
    draft.lines.push(say('edited', { entries, count: { count: old.length } }));
  }
  decide(draft, parsed, context);
}

/** Whether each record of the new text stands where a line of the same kind stood, and nothing else changed. */
function isLineForLine(
  draft: Draft,
  old: readonly Entry[],
  { records, doubts, requests, danger }: ParsedMessage,
): boolean {
  return (
    doubts.length + requests.length + danger.length === 0 &&
    records.length === old.length &&
    records.every(
      (record, i) =>
        record.kind === old[i]!.record.kind && old[i]!.held === null && mustAsk(draft, record) === null,
    )
  );
}

function replaceLines(draft: Draft, old: readonly Entry[], parsed: ParsedMessage): void {
  const written = parsed.records.map((record, i) =>
    draft.add(record, {
      voids: [old[i]!.number],
      assumed: parsed.assumed[i] ?? [],
      typed: parsed.typed[i] ?? null,
    }),
  );
  written.forEach((entry, i) => {
    draft.lines.push([...entryLine(draft, entry), say('part-replaces', { old: { entry: old[i]!.number } })]);
  });
  const numbers = written.map((entry) => entry.number);
  rememberLast(draft, numbers);
  offerUndo(draft, numbers);
  draft.lines.push(...matters(draft, written));
}
