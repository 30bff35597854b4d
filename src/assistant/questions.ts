import type { BookContext } from '#parsers';
import type { FieldRecord } from '#records';
import type { Draft } from './draft.ts';

/** A question we asked in a chat that a short answer may settle: `18`, `yes`, `E`. */
export type Asked = (
  | { about: 'tare'; container: string; label: string | null }
  | { about: 'ambient' }
  | { about: 'doubt'; entry: number }
) & { at: string };
/** With it, the message that made us ask. */
type Kept = Asked & { message?: string };

/** After this long a bare number no longer answers a question that was asked before it. */
const ANSWERABLE_MIN = 12 * 60;

const keyOf = (draft: Draft): string => `asked:${draft.incoming.chat}`;

/** Remembers what was asked last in this chat; null forgets it. */
export function remember(draft: Draft, asked: Asked | null): void {
  draft.book.setMemo(draft.siteId, keyOf(draft), asked && { ...asked, message: draft.incoming.message });
}

/** The question that this message may answer: the one it replies to, else the last one asked in this chat. */
export function openQuestion(draft: Draft): BookContext['openQuestion'] {
  const picture = draft.picture();
  const replied = repliedDoubt(draft);
  const asked = replied ?? askedLast(draft);
  if (!asked) return null;
  if (!replied && Date.parse(draft.now) - Date.parse(asked.at) > ANSWERABLE_MIN * 60_000) return null;
  if (asked.about === 'ambient') return { about: 'ambient' };
  if (asked.about === 'tare') {
    return { about: 'tare', container: asked.container, label: asked.label };
  }
  const line = picture.held.find((each) => each.entry === asked.entry);
  if (!line) return null;
  if (line.why === 'unknown-place' && line.doubt.choices.some((choice) => choice.record?.kind === 'pile')) {
    const place = String(line.doubt.record.place ?? line.doubt.record.pile ?? '');
    return { about: 'new-pile', place, record: line.doubt.record as unknown as FieldRecord };
  }
  return { about: 'doubt', entry: line.entry, doubt: line.doubt };
}

/** What was asked last in this chat; not where the message answers another one, whose line it then speaks of. */
function askedLast(draft: Draft): Asked | null {
  const asked = draft.book.memo<Kept>(draft.siteId, keyOf(draft));
  const { replyTo } = draft.incoming;
  if (!asked || !replyTo || repliedEntries(draft).length === 0) return asked;
  const answered =
    'outgoing' in replyTo
      ? draft.book.outgoing(replyTo.outgoing)?.answers
      : 'message' in replyTo
        ? replyTo.message
        : null;
  return answered === asked.message ? asked : null;
}

function repliedDoubt(draft: Draft): Asked | null {
  const { replyTo } = draft.incoming;
  if (!replyTo) return null;
  const held = new Set(draft.picture().held.map((line) => line.entry));
  const asDoubt = (numbers: number[]): Asked | null => {
    const entry = numbers.find((number) => held.has(number));
    return entry === undefined ? null : { about: 'doubt', entry, at: draft.now };
  };
  return asDoubt(repliedEntries(draft));
}

/** The lines that the message answered by this one had made. */
export function repliedEntries(draft: Draft): number[] {
  const { book, siteId, incoming } = draft;
  const { replyTo } = incoming;
  if (!replyTo) return [];
  if ('entry' in replyTo) return [replyTo.entry];
  if ('outgoing' in replyTo) {
    const row = book.outgoing(replyTo.outgoing);
    return row?.message && row.site === siteId ? book.entriesOfMessage(row.message).map((e) => e.number) : [];
  }
  return book
    .messageHistory(siteId, incoming.channel, incoming.chat, replyTo.message)
    .flatMap((message) => book.entriesOfMessage(message.id).map((entry) => entry.number));
}
