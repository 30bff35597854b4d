import { createHash } from 'node:crypto';
import type Database from 'better-sqlite3';
import type { Picture } from '#core';

/** Page tokens are kept hashed: who reads the file cannot write with them. */
const hashed = (token: string): string => createHash('sha256').update(token).digest('hex');

/** Snapshots of the picture, small facts of a conversation, links to the page, facts of the book itself. */
export const factQueries = (db: Database.Database, now: () => string) => {
  const snapshotGet = db.prepare<[number, string], { at: string; picture: string }>(
    'SELECT at, picture FROM snapshot WHERE site = ? AND at <= ? ORDER BY at DESC LIMIT 1',
  );
  const snapshotPut = db.prepare<[number, string, string]>(
    'INSERT OR REPLACE INTO snapshot VALUES (?, ?, ?)',
  );
  // A late line of the last weeks rebuilds little, one of long ago a quarter: the book does not fill with pictures.
  const snapshotThin = db.prepare<{ site: number }>(
    `DELETE FROM snapshot WHERE site = @site
       AND at < (SELECT at FROM snapshot WHERE site = @site ORDER BY at DESC LIMIT 1 OFFSET 12)
       AND at NOT IN (
         SELECT min(at) FROM snapshot WHERE site = @site
         GROUP BY substr(at, 1, 4), (CAST(substr(at, 6, 2) AS INTEGER) - 1) / 3
       )`,
  );
  const snapshotDrop = db.prepare<[number, string]>('DELETE FROM snapshot WHERE site = ? AND at >= ?');
  const memoGet = db.prepare<[number, string]>('SELECT value FROM memo WHERE site = ? AND key = ?').pluck();
  const memoPut = db.prepare<[number, string, string]>('INSERT OR REPLACE INTO memo VALUES (?, ?, ?)');
  const memoDrop = db.prepare<[number, string]>('DELETE FROM memo WHERE site = ? AND key = ?');
  const metaGet = db.prepare<[string]>('SELECT value FROM meta WHERE key = ?').pluck();
  const metaPut = db.prepare<[string, string]>('INSERT OR REPLACE INTO meta VALUES (?, ?)');
  const metaDrop = db.prepare<[string]>('DELETE FROM meta WHERE key = ?');
  const linkNew = db.prepare<[string, number, string]>(
    'INSERT INTO link (hash, site, made_at) VALUES (?, ?, ?)',
  );
  const linkGet = db.prepare<[string], { site: number; ended: number }>(
    'SELECT site, ended_at IS NOT NULL AS ended FROM link WHERE hash = ?',
  );
  const linkEnd = db.prepare<[string, number]>(
    'UPDATE link SET ended_at = ? WHERE site = ? AND ended_at IS NULL',
  );

  return {
    snapshotBefore: (site: number, at: string): { at: string; picture: Picture } | null => {
      const row = snapshotGet.get(site, at);
      return row ? { at: row.at, picture: JSON.parse(row.picture) as Picture } : null;
    },
    saveSnapshot: (site: number, at: string, picture: Picture): void => {
      snapshotPut.run(site, at, JSON.stringify(picture));
      snapshotThin.run({ site });
    },
    dropSnapshotsFrom: (site: number, at: string): void => {
      snapshotDrop.run(site, at);
    },
    memo: <T>(site: number, key: string): T | null => {
      const value = memoGet.get(site, key) as string | undefined;
      return value === undefined ? null : (JSON.parse(value) as T);
    },
    setMemo: (site: number, key: string, value: unknown): void => {
      if (value === undefined || value === null) memoDrop.run(site, key);
      else memoPut.run(site, key, JSON.stringify(value));
    },
    bookFact: <T>(key: string): T | null => {
      const value = metaGet.get(key) as string | undefined;
      return value === undefined ? null : (JSON.parse(value) as T);
    },
    setBookFact: (key: string, value: unknown): void => {
      if (value === undefined || value === null) metaDrop.run(key);
      else metaPut.run(key, JSON.stringify(value));
    },
    addLink: (site: number, token: string): void => {
      linkNew.run(hashed(token), site, now());
    },
    linkSite: (token: string): { site: number; ended: boolean } | null => {
      const row = linkGet.get(hashed(token));
      return row ? { site: row.site, ended: row.ended === 1 } : null;
    },
    endLinks: (site: number): void => {
      linkEnd.run(now(), site);
    },
  };
};
