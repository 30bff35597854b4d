import type Database from 'better-sqlite3';
import type { Entry, NewEntry } from '#records';
import { canonicalJson, type LineColumns, lineHash, NO_LINE_BEFORE, putSaid, takeSaid } from './canonical.ts';
import { heldInto, heldOf, recordInto, recordOf } from './shapes.ts';

/** A line with what stands beside it: who took it back, and the writer's words. */
export type LineRow = LineColumns & { hash: string; voided_by: number | null; words: string | null };

const COLUMNS = `entry.*, voided.by AS voided_by, said.words AS words
  FROM entry
  LEFT JOIN voided ON voided.site = entry.site AND voided.number = entry.number
  LEFT JOIN said ON said.site = entry.site AND said.number = entry.number`;

/** How many lines a walk reads at a time: no statement stays open between two, so a write can come in between. */
const PAGE = 500;

export const entryOf = (row: LineRow): Entry => {
  const parts = {
    record: JSON.parse(row.record) as unknown,
    held: row.held === null ? null : (JSON.parse(row.held) as unknown),
  };
  if (row.words !== null) putSaid(parts, JSON.parse(row.words));
  return {
    number: row.number,
    happenedAt: row.happened_at,
    localDate: row.local_date,
    receivedAt: row.received_at,
    person: row.person,
    record: recordOf(parts.record, parts.held !== null, row),
    typed: row.typed,
    assumed: JSON.parse(row.assumed),
    held: parts.held === null ? null : heldOf(parts.held, row),
    voidedBy: row.voided_by,
    pictures: row.pictures,
  };
};

export const entryQueries = (db: Database.Database) => {
  const one = db.prepare<[number, number], LineRow>(
    `SELECT ${COLUMNS} WHERE entry.site = ? AND entry.number = ?`,
  );
  const ofMessage = db.prepare<[number], LineRow>(
    `SELECT ${COLUMNS} WHERE entry.message = ? ORDER BY entry.number`,
  );
  const from = db.prepare<[number, string, number, number], LineRow>(
    `SELECT ${COLUMNS} WHERE entry.site = ? AND (entry.happened_at, entry.number) > (?, ?)
     ORDER BY entry.happened_at, entry.number LIMIT ?`,
  );
  const after = db.prepare<[number, number, number], LineRow>(
    `SELECT ${COLUMNS} WHERE entry.site = ? AND entry.number > ? ORDER BY entry.number LIMIT ?`,
  );
  const between = db.prepare<[number, string, string], LineRow>(
    `SELECT ${COLUMNS} WHERE entry.site = ? AND entry.local_date BETWEEN ? AND ?
     ORDER BY entry.happened_at, entry.number`,
  );
  const ofPerson = db.prepare<[number, number, string], LineRow>(
    `SELECT ${COLUMNS} WHERE entry.site = ? AND entry.person = ? AND entry.local_date = ? ORDER BY entry.number`,
  );
  const newest = db.prepare<[number, number], LineRow>(
    `SELECT ${COLUMNS} WHERE entry.site = ? ORDER BY entry.number DESC LIMIT ?`,
  );
  const last = db.prepare<[number], { number: number; hash: string }>(
    'SELECT number, hash FROM entry WHERE site = ? ORDER BY number DESC LIMIT 1',
  );
  const files = db
    .prepare<[number, number]>(
      'SELECT file FROM picture_file WHERE site = ? AND number = ? ORDER BY position',
    )
    .pluck();

  const insert = db.prepare<LineColumns & { hash: string }>(
    `INSERT INTO entry (site, number, happened_at, local_date, received_at, person, message, record, typed, assumed,
       held, voids, pictures, hash)
     VALUES (@site, @number, @happened_at, @local_date, @received_at, @person, @message, @record, @typed, @assumed,
       @held, @voids, @pictures, @hash)`,
  );
  const insertVoided = db.prepare<[number, number, number]>(
    'INSERT INTO voided (site, number, by) VALUES (?, ?, ?)',
  );
  const isVoided = db
    .prepare<[number, number]>('SELECT by FROM voided WHERE site = ? AND number = ?')
    .pluck();
  const insertSaid = db.prepare<[number, number, string]>('INSERT INTO said VALUES (?, ?, ?)');
  const insertFile = db.prepare<[number, number, number, string]>(
    'INSERT INTO picture_file VALUES (?, ?, ?, ?)',
  );

  const appendOne = (site: number, entry: NewEntry, message: number | null): Entry => {
    const before = last.get(site);
    const number = (before?.number ?? 0) + 1;
    const held = entry.held === null ? null : heldInto(entry.held);
    const record = recordInto(entry.record, held !== null);
    const { rest, words } = takeSaid({ record, held });
    const bare = rest as { record: unknown; held: unknown };
    const taken = new Set(entry.voids);
    if (record.kind === 'void' && 'voids' in record) taken.add(record.voids as number);
    const voids = [...taken].sort((a, b) => a - b);
    const pictures = entry.pictures ?? [];
    const line: LineColumns = {
      site,
      number,
      happened_at: entry.happenedAt,
      local_date: entry.localDate,
      received_at: entry.receivedAt,
      person: entry.person,
      message,
      record: canonicalJson(bare.record),
      typed: entry.typed,
      assumed: canonicalJson(entry.assumed),
      held: held === null ? null : canonicalJson(bare.held),
      voids: canonicalJson(voids),
      pictures: pictures.length,
    };
    insert.run({ ...line, hash: lineHash(line, before?.hash ?? NO_LINE_BEFORE) });
    for (const voided of voids) {
      if (!Number.isInteger(voided) || voided < 1 || voided >= number)
        throw new RangeError(`voids: #${voided} is not a line before #${number}`);
      const by = isVoided.get(site, voided);
      if (by !== undefined) throw new RangeError(`voids: #${voided} was taken back already by #${by}`);
      insertVoided.run(site, voided, number);
    }
    if (words.length > 0) insertSaid.run(site, number, JSON.stringify(words));
    for (const [position, file] of pictures.entries()) insertFile.run(site, number, position, file);
    return entryOf(one.get(site, number)!);
  };

  return {
    append: (site: number, entries: NewEntry[], message: number | null): Entry[] =>
      entries.map((entry) => appendOne(site, entry, message)),

    entry: (site: number, number: number): Entry | null => {
      const row = one.get(site, number);
      return row ? entryOf(row) : null;
    },
    entriesOfMessage: (message: number): Entry[] => ofMessage.all(message).map(entryOf),

    *entriesFrom(site: number, happenedAt: string): Generator<Entry> {
      let at = happenedAt;
      let number = 0;
      for (;;) {
        const page = from.all(site, at, number, PAGE);
        for (const row of page) yield entryOf(row);
        const end = page.at(-1);
        if (!end || page.length < PAGE) return;
        at = end.happened_at;
        number = end.number;
      }
    },
    *entriesWalk(site: number, afterNumber = 0): Generator<Entry> {
      for (const row of rowsWalk(site, afterNumber)) yield entryOf(row);
    },
    entriesBetween: (site: number, fromDate: string, toDate: string): Entry[] =>
      between.all(site, fromDate, toDate).map(entryOf),
    entriesOfPerson: (site: number, person: number, localDate: string): Entry[] =>
      ofPerson.all(site, person, localDate).map(entryOf),
    latest: (site: number, howMany: number): Entry[] => newest.all(site, howMany).map(entryOf),
    lastNumber: (site: number): number => last.get(site)?.number ?? 0,
    picturesOf: (site: number, number: number): string[] => files.all(site, number) as string[],
    /** The lines as they stand, for the walk along the chain. */
    rowsWalk,
  };

  function* rowsWalk(site: number, afterNumber = 0): Generator<LineRow> {
    let number = afterNumber;
    for (;;) {
      const page = after.all(site, number, PAGE);
      yield* page;
      const end = page.at(-1);
      if (!end || page.length < PAGE) return;
      number = end.number;
    }
  }
};
