import type { Entry } from '#records';
import type { Draft } from './draft.ts';
import { repliedEntries } from './questions.ts';
import { lastOfSender } from './reading-context.ts';
import { type Say, say } from './say.ts';

/** How long somebody with a link and no account can take back their own. */
const GUEST_UNDO_MS = 3_600_000;
/** After a day, `undo` alone no longer means what was said then. */
const RECENT_MS = 86_400_000;

/** Takes lines back, each once, by their author or a coordinator. */
export function undo(draft: Draft, numbers: readonly number[]): void {
  const undone: Entry[] = [];
  for (const number of numbers) {
    const old = draft.book.entry(draft.siteId, number);
    if (!old || old.record.kind === 'void')
      draft.lines.push(say('no-such-entry', { entry: { entry: number } }));
    else if (old.voidedBy !== null) draft.lines.push(goneAlready(draft, old, old.voidedBy));
    else if (keepsHold(draft, old)) continue;
    else if (!mayUndo(draft, old)) draft.lines.push(refusal(draft, old));
    else {
      draft.add({ kind: 'void', voids: number, why: 'undo' }, { voids: [number], happenedAt: draft.now });
      undone.push(old);
    }
  }
  if (undone.length > 0) {
    draft.lines.push(
      say('undone', {
        count: { count: undone.length },
        entries: { text: undone.map((entry) => `#${entry.number}`).join(', ') },
      }),
    );
  }
}

/** A line that a newer one took the place of was not undone: the newer one counts, and can be taken back. */
function goneAlready(draft: Draft, old: Entry, by: number): Say {
  const args = { entry: { entry: old.number }, by: { entry: by } };
  const next = draft.book.entry(draft.siteId, by);
  return say(next?.record.kind === 'void' ? 'undone-already' : 'replaced-already', args);
}

/** A pile is on hold because of this line: to take it back or change it would let the pile go, so that is said instead. */
export function keepsHold(draft: Draft, entry: Entry): boolean {
  const lays = Object.values(draft.picture().batches).some(({ hold }) => hold?.entry === entry.number);
  if (!lays || draft.mayDecide) return false;
  draft.lines.push(say('hold-stays', { entry: { entry: entry.number } }));
  return true;
}

/** Lines are taken back or changed by their author, or by a coordinator. */
export const mayUndo = (draft: Draft, entry: Entry): boolean => {
  if (draft.incoming.guest) return entry.person === draft.person?.id && isFresh(draft, entry);
  return entry.person === null || entry.person === draft.person?.id || draft.mayDecide;
};

const refusal = (draft: Draft, entry: Entry): Say =>
  draft.incoming.guest && entry.person === draft.person?.id
    ? say('guest-too-late', { entry: { entry: entry.number } })
    : say('not-yours', { entry: { entry: entry.number } });

/** By the moment of typing, so that what was taken back with no signal is not lost for coming in late. */
const isFresh = (draft: Draft, entry: Entry): boolean =>
  Date.parse(draft.now) - Date.parse(entry.receivedAt) <= GUEST_UNDO_MS;

/** The line that counts now in the place of an older one: itself, or the last that replaced it. */
function standingNumber(draft: Draft, number: number): number {
  for (let at = number; ; ) {
    const entry = draft.book.entry(draft.siteId, at);
    const next = entry?.voidedBy ? draft.book.entry(draft.siteId, entry.voidedBy) : null;
    if (!next || next.record.kind === 'void') return at;
    at = next.number;
  }
}

/** What the sender's last message made and nobody has taken back, held lines too. */
function lastSaid(draft: Draft): number[] | null {
  if (!draft.person) return null;
  const said = draft.book.memo<{ at: string; entries: number[] }>(draft.siteId, `said:${draft.person.id}`);
  if (!said || Date.parse(draft.now) - Date.parse(said.at) > RECENT_MS) return null;
  const standing = said.entries.filter((number) => {
    const entry = draft.book.entry(draft.siteId, number);
    return entry !== null && entry.voidedBy === null;
  });
  return standing.length > 0 ? standing : null;
}

/** `undo` with no number takes back what the answered message made, else the sender's last; `undo 3` the last three lines of theirs. */
export function undoLast(draft: Draft, count: number): void {
  if (count === 1) {
    const answered = repliedEntries(draft);
    if (answered.length > 0) {
      undo(
        draft,
        answered.map((number) => standingNumber(draft, number)),
      );
      return;
    }
    const last = lastSaid(draft) ?? lastOfSender(draft)?.entries;
    if (last) {
      undo(draft, last);
      return;
    }
  }
  const own = draft.book
    .latest(draft.siteId, 200)
    .filter((entry) => entry.voidedBy === null && entry.record.kind !== 'void')
    .filter((entry) => draft.person === null || entry.person === draft.person.id)
    .slice(0, count);
  if (own.length === 0) draft.lines.push(say('nothing-to-undo'));
  else
    undo(
      draft,
      own.map((entry) => entry.number),
    );
}
