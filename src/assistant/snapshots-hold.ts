import { isDeepStrictEqual } from 'node:util';
import { applyEntry, emptyPicture } from '#core';
import { PICTURE_SHAPE } from './pictures.ts';
import type { Book } from './ports.ts';

/** What came of holding the kept pictures of a site against its lines; `at` is the first that differs. */
export type SnapshotsVerdict =
  | { ok: true; compared: number; older: number }
  | { ok: false; at: string; line: number | null };

/**
 * Rebuilds the picture of a site from its first line and compares it with each one that is kept. Pictures of an older
 * shape are counted and not compared: the program makes them anew when it starts.
 */
export function snapshotsHold(book: Book, siteId: number): SnapshotsVerdict {
  const moments = snapshotMoments(book, siteId);
  if (book.memo<number>(siteId, 'picture-shape') !== PICTURE_SHAPE)
    return { ok: true, compared: 0, older: moments.length };
  let picture = emptyPicture(book.siteById(siteId).site);
  let next = 0;
  let line: number | null = null;
  /** A picture kept at a moment holds all that happened before it. */
  const differs = (): boolean => {
    const kept = book.snapshotBefore(siteId, moments[next]!)!.picture;
    next += 1;
    return !isDeepStrictEqual(JSON.parse(JSON.stringify(picture)), kept);
  };
  for (const entry of book.entriesFrom(siteId, '')) {
    while (next < moments.length && entry.happenedAt >= moments[next]!) {
      if (differs()) return { ok: false, at: moments[next - 1]!, line };
    }
    picture = applyEntry(picture, entry);
    line = entry.number;
  }
  while (next < moments.length) if (differs()) return { ok: false, at: moments[next - 1]!, line };
  return { ok: true, compared: moments.length, older: 0 };
}

/** When a picture was kept, oldest first. */
function snapshotMoments(book: Book, siteId: number): string[] {
  const moments: string[] = [];
  let before = '9999';
  for (;;) {
    const at = book.snapshotBefore(siteId, before)?.at;
    if (at === undefined) return moments.reverse();
    moments.push(at);
    // Shorter by its last letter: sorts before this moment and after every earlier one.
    before = at.slice(0, -1);
  }
}
