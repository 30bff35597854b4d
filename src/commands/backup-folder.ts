import { dirname, join } from 'node:path';

export const DEFAULT_BOOK = 'data/heaphand.db';

/** How many dated backups are kept where nobody says otherwise. */
export const KEPT_BACKUPS = 14;

/** Backups lie in a folder beside the book. */
export const backupsBeside = (bookPath: string): string => join(dirname(bookPath), 'backups');
