import type Database from 'better-sqlite3';
import { lineHash, NO_LINE_BEFORE } from './canonical.ts';
import { entryOf, type entryQueries } from './entries.ts';

/** The whole book holds, or the first line that does not. */
export type Verdict =
  | { ok: true; lines: number }
  | {
      ok: false;
      what: 'file' | 'foreign-keys' | 'chain' | 'gap' | 'shape' | 'voided' | 'pictures';
      site: number | null;
      number: number | null;
    };

/** Walks every line: the file itself, foreign keys, numbers without a gap, the chain, schemas, what takes back what. */
export const verifyBook = (db: Database.Database, entries: ReturnType<typeof entryQueries>): Verdict => {
  if (db.pragma('integrity_check', { simple: true }) !== 'ok')
    return { ok: false, what: 'file', site: null, number: null };
  if ((db.pragma('foreign_key_check') as unknown[]).length > 0)
    return { ok: false, what: 'foreign-keys', site: null, number: null };

  const sites = db.prepare<[]>('SELECT id FROM site ORDER BY id').pluck().all() as number[];
  const voidedBy = db
    .prepare<[number, number]>('SELECT by FROM voided WHERE site = ? AND number = ?')
    .pluck();
  const voidedOf = db.prepare<[number]>('SELECT count(*) FROM voided WHERE site = ?').pluck();
  let lines = 0;
  for (const site of sites) {
    let before = NO_LINE_BEFORE;
    let number = 0;
    let voided = 0;
    for (const row of entries.rowsWalk(site)) {
      number += 1;
      const fault = (what: Exclude<Verdict, { ok: true }>['what']): Verdict => ({
        ok: false,
        what,
        site,
        number,
      });
      if (row.number !== number) return fault('gap');
      if (lineHash(row, before) !== row.hash) return fault('chain');
      try {
        entryOf(row);
      } catch {
        return fault('shape');
      }
      for (const taken of JSON.parse(row.voids) as number[]) {
        voided += 1;
        if (voidedBy.get(site, taken) !== number) return fault('voided');
      }
      if (entries.picturesOf(site, number).length > row.pictures) return fault('pictures');
      before = row.hash;
      lines += 1;
    }
    if (voidedOf.get(site) !== voided) return { ok: false, what: 'voided', site, number: null };
  }
  return { ok: true, lines };
};
