import type { OpenedBook } from '#logbook';
import { backupsBeside, KEPT_BACKUPS } from './backup-folder.ts';

/**
 * A backup each day while the program runs, beside the book; whether one is due is seen by the files themselves, so
 * a program that is started anew each morning makes no more of them. A disk that is full is said and stops nothing.
 */
export function dailyBackup(book: OpenedBook, path: string, warn: (line: string) => void) {
  const folder = backupsBeside(path);
  let running: Promise<void> = Promise.resolve();
  const make = async (now: string): Promise<void> => {
    try {
      // An empty book is no loss.
      if (book.sites().every(({ id }) => book.lastNumber(id) === 0)) return;
      // Loaded when first needed: what makes files is heavy, and the prompt should not wait for it.
      const { backupInto, isBackupDue } = await import('#papers');
      if (!isBackupDue(folder, path, now)) return;
      const { verdict } = await backupInto(book, folder, { now, keep: KEPT_BACKUPS });
      if (!verdict.ok) warn('the daily backup does not hold; run "npm run -s verify"');
    } catch {
      warn(`the daily backup could not be written into ${folder}`);
    }
  };
  return {
    look(now: string): Promise<void> {
      running = running.then(() => make(now));
      return running;
    },
    /** A copy under way is waited for before the book is closed. */
    ended: (): Promise<void> => running,
  };
}
