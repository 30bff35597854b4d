import { existsSync, mkdirSync, readdirSync, rmSync } from 'node:fs';
import { basename, extname, join } from 'node:path';
import { type OpenedBook, openBook, type Verdict } from '#logbook';

/** A backup as it lies in its folder. */
export type Backup = { path: string; madeAt: string };

const DAY_MS = 86_400_000;

/** `heaphand` of `data/heaphand.db`: the backups of two books in one folder are never taken for each other. */
const stemOf = (bookPath: string): string => basename(bookPath, extname(bookPath));

/** `2026-06-17T0705Z-12`: seconds last, so that a name holds no colon, which some file systems refuse. */
const stamp = (at: string): string => `${at.slice(0, 13)}${at.slice(14, 16)}Z-${at.slice(17, 19)}`;

const STAMP = /^(\d{4}-\d{2}-\d{2}T\d{2})(\d{2})Z-(\d{2})\.db$/;

/** The backups of a book in a folder, oldest first. Files of any other name are not looked at, and never deleted. */
export function backupsIn(folder: string, bookPath: string): Backup[] {
  if (!existsSync(folder)) return [];
  const head = `${stemOf(bookPath)}-`;
  return readdirSync(folder)
    .filter((name) => name.startsWith(head))
    .flatMap((name) => {
      const [, hour, minute, second] = STAMP.exec(name.slice(head.length)) ?? [];
      return hour ? [{ path: join(folder, name), madeAt: `${hour}:${minute}:${second}.000Z` }] : [];
    })
    .sort((a, b) => (a.madeAt < b.madeAt ? -1 : 1));
}

/** Whether the newest backup is a day old, or there is none. */
export function isBackupDue(folder: string, bookPath: string, now: string): boolean {
  const last = backupsIn(folder, bookPath).at(-1);
  return !last || Date.parse(now) - Date.parse(last.madeAt) >= DAY_MS;
}

/**
 * A dated copy of the whole book, walked line by line once it is written; then the oldest beyond `keep` go. A copy
 * that does not hold is taken away again, and no older one goes for it.
 */
export async function backupInto(
  book: OpenedBook,
  folder: string,
  how: { now: string; keep: number },
): Promise<{ path: string; removed: number; verdict: Verdict }> {
  if (!Number.isInteger(how.keep) || how.keep < 1)
    throw new RangeError(`keep: ${how.keep} backups, at least 1`);
  mkdirSync(folder, { recursive: true });
  const path = join(folder, `${stemOf(book.path)}-${stamp(how.now)}.db`);
  await book.backup(path);
  const verdict = holds(path, how.now);
  if (!verdict.ok) {
    rmSync(path, { force: true });
    return { path, removed: 0, verdict };
  }
  const old = backupsIn(folder, book.path)
    .slice(0, -how.keep)
    .filter((each) => each.path !== path);
  for (const each of old) rmSync(each.path, { force: true });
  return { path, removed: old.length, verdict };
}

function holds(path: string, now: string): Verdict {
  const copy = openBook(path, { readOnly: true, now: () => now });
  try {
    return copy.verify();
  } finally {
    copy.close();
  }
}
