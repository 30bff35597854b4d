import { applyEntry, emptyPicture, type Picture, weekOf } from '#core';
import type { Entry, Site } from '#records';
import type { Book } from './ports.ts';

/** To be raised with each change to what a picture or a day's totals hold: kept snapshots are then made anew. */
export const PICTURE_SHAPE = 4;

/** What a site looks like now, kept up to date entry by entry and rebuilt from a week's snapshot when needed. */
export type Pictures = {
  now(siteId: number): Picture;
  /** The picture with `entries` in it, not kept: what a draft looks at while it is being worked out. */
  with(siteId: number, base: Picture, entries: readonly Entry[], voided: readonly number[]): Picture;
  /** Keeps what was just committed. */
  keep(siteId: number, picture: Picture): void;
  /** Forgets what is kept (after a transaction that failed). */
  forget(siteId: number): void;
};

export function makePictures(book: Book): Pictures {
  const kept = new Map<number, Picture>();

  function load(siteId: number): Picture {
    // Snapshots of an older shape are of no use; the lines they were made from are all there.
    if (book.memo<number>(siteId, 'picture-shape') !== PICTURE_SHAPE) {
      book.dropSnapshotsFrom(siteId, '');
      book.setMemo(siteId, 'picture-shape', PICTURE_SHAPE);
    }
    const { site } = book.siteById(siteId);
    return replay(siteId, site, book.snapshotBefore(siteId, '9999'));
  }

  /** Folds all lines from a snapshot on; takes a snapshot at each week that is passed on the way. */
  function replay(siteId: number, site: Site, from: { at: string; picture: Picture } | null): Picture {
    let picture = from?.picture ?? emptyPicture(site);
    let week = from ? weekOf(from.at.slice(0, 10), site.weekStarts) : null;
    for (const entry of book.entriesFrom(siteId, from?.at ?? '')) {
      const itsWeek = weekOf(entry.localDate, site.weekStarts);
      if (week !== null && itsWeek > week) {
        book.saveSnapshot(siteId, entry.happenedAt, picture);
      }
      week = itsWeek;
      picture = applyEntry(picture, entry);
    }
    return picture;
  }

  /** Late lines and corrections change what came after them: go back to before the earliest, and fold again. */
  function rebuilt(siteId: number, since: string): Picture {
    const { site } = book.siteById(siteId);
    book.dropSnapshotsFrom(siteId, since);
    return replay(siteId, site, book.snapshotBefore(siteId, since));
  }

  function earliestTouched(
    siteId: number,
    base: Picture,
    entries: readonly Entry[],
    voided: readonly number[],
  ): string | null {
    let earliest: string | null = null;
    const touch = (at: string): void => {
      if (earliest === null || at < earliest) earliest = at;
    };
    for (const entry of entries) {
      if (entry.happenedAt < base.asOf) touch(entry.happenedAt);
    }
    for (const number of voided) {
      const old = book.entry(siteId, number);
      if (old) touch(old.happenedAt);
    }
    return earliest;
  }

  return {
    now(siteId) {
      const known = kept.get(siteId);
      if (known) return known;
      const picture = load(siteId);
      kept.set(siteId, picture);
      return picture;
    },
    with(siteId, base, entries, voided) {
      const since = earliestTouched(siteId, base, entries, voided);
      if (since !== null) return rebuilt(siteId, since);
      let picture = base;
      for (const entry of entries) {
        const { weekStarts } = picture.base;
        const last = picture.asOf.slice(0, 10);
        if (last && weekOf(entry.localDate, weekStarts) > weekOf(last, weekStarts)) {
          book.saveSnapshot(siteId, entry.happenedAt, picture);
        }
        picture = applyEntry(picture, entry);
      }
      return picture;
    },
    keep: (siteId, picture) => kept.set(siteId, picture),
    forget: (siteId) => kept.delete(siteId),
  };
}
