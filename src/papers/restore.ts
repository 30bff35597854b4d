import { existsSync, realpathSync, renameSync, rmSync } from 'node:fs';
import { isBookProblem, openBook, type Verdict } from '#logbook';

export type Restored =
  | { is: 'restored'; lines: number; aside: string | null }
  | { is: 'does-not-hold'; verdict: Verdict & { ok: false } }
  | { is: 'exists' }
  | { is: 'same-file' };

/**
 * Puts a backup in the place of a book. The backup is walked first; what stands there already is refused unless
 * `overwrite` says otherwise, and is then kept aside under another name rather than deleted. Throws a BookProblem
 * where the backup cannot be read, or another program has the book open.
 */
export async function restoreBook(
  from: string,
  to: string,
  how: { overwrite: boolean; now: string },
): Promise<Restored> {
  const now = () => how.now;
  const backup = openBook(from, { readOnly: true, now });
  try {
    const verdict = backup.verify();
    if (!verdict.ok) return { is: 'does-not-hold', verdict };
    const { lines } = verdict;
    if (!existsSync(to)) {
      await backup.backup(to);
      return { is: 'restored', lines, aside: null };
    }
    if (realpathSync(from) === realpathSync(to)) return { is: 'same-file' };
    if (!how.overwrite) return { is: 'exists' };
    refuseWhileInUse(to, now);
    const fresh = `${to}.restoring`;
    rmSync(fresh, { force: true });
    await backup.backup(fresh);
    const aside = `${to}.before-${how.now.replaceAll(/[-:]|\.\d+/g, '')}`;
    // The journal goes with its book: left behind it would be taken for the new one's.
    for (const end of ['', '-wal', '-shm']) {
      if (existsSync(to + end)) renameSync(to + end, aside + end);
    }
    renameSync(fresh, to);
    return { is: 'restored', lines, aside };
  } finally {
    backup.close();
  }
}

/** A book that is damaged may well be replaced; one that a program is writing may not. */
function refuseWhileInUse(path: string, now: () => string): void {
  try {
    openBook(path, { now }).close();
  } catch (error) {
    if (isBookProblem(error) && error.bookProblem !== 'book-in-use') return;
    throw error;
  }
}
