import { instantOf } from '#core';
import type { OpenedBook } from '#logbook';
import type { Entry, NewEntry } from '#records';
import { contentKey, type KeptLine } from '../kept-line.ts';
import type { LineIn } from './read-table.ts';

const MEMO = 'imports';
/** One import as the book remembers it: its lines stand one after the other. */
type ImportSeen = { id: number; at: string; name: string; from: number; to: number; undone: boolean };

const importsOf = (book: OpenedBook, siteId: number): ImportSeen[] =>
  book.memo<ImportSeen[]>(siteId, MEMO) ?? [];

type Existing = Map<string, number[]>;

/** Lines of the book by what they say; those of an import that was undone are no longer there. */
function existingLines(book: OpenedBook, siteId: number, from: string, to: string): Existing {
  const undone = importsOf(book, siteId).filter((each) => each.undone);
  const found: Existing = new Map();
  for (const entry of book.entriesWalk(siteId)) {
    if (entry.localDate < from || entry.localDate > to) continue;
    if (undone.some((each) => entry.number >= each.from && entry.number <= each.to)) continue;
    if (entry.record.kind === 'void' && entry.record.why === 'import-undone') continue;
    const key = contentKey(entry.localDate, entry.record);
    found.set(key, [...(found.get(key) ?? []), entry.number]);
  }
  return found;
}

/** Which of the lines the book has not yet; a line that stands twice in the file may stand twice in the book. */
function sorted<L extends { localDate: string; record: Record<string, unknown> }>(
  book: OpenedBook,
  siteId: number,
  lines: readonly L[],
): { line: L; known: number | null }[] {
  const dates = lines.map(({ localDate }) => localDate).sort();
  const existing = existingLines(book, siteId, dates[0] ?? '', dates.at(-1) ?? '');
  return lines.map((line) => ({
    line,
    known: existing.get(contentKey(line.localDate, line.record))?.shift() ?? null,
  }));
}

export const countNew = (
  book: OpenedBook,
  siteId: number,
  lines: readonly { localDate: string; record: Record<string, unknown> }[],
): number => sorted(book, siteId, lines).filter(({ known }) => known === null).length;

/** Noon where an old log says the day alone. */
const momentOf = (localDate: string, record: { when?: string | null }): string =>
  record.when && record.when.length > 10 ? record.when.slice(0, 16) : `${localDate}T12:00`;

type How = { name: string; now: string };
export type ImportDone = { id: number | null; added: number; known: number; left: number };

/** Lines of an old log into the book, in one transaction; what it holds already is not added again. */
export const addLines = (book: OpenedBook, siteId: number, lines: readonly LineIn[], how: How): ImportDone =>
  book.write(() => {
    const zone = book.siteById(siteId).site.timeZone;
    const all = sorted(book, siteId, lines);
    const fresh = all.filter(({ known }) => known === null).map(({ line }) => line);
    const entries = fresh.map(
      ({ localDate, record, typed }): NewEntry => ({
        happenedAt: instantOf(momentOf(localDate, record), zone),
        localDate,
        receivedAt: how.now,
        person: null,
        record,
        typed,
        assumed: ['imported'],
        held: null,
        voids: [],
      }),
    );
    const id = write(book, siteId, entries, how);
    return { id, added: entries.length, known: all.length - entries.length, left: 0 };
  });

/** Lines of our own export, entry for entry: who, when, what was held and what took back what. */
export const addKept = (book: OpenedBook, siteId: number, lines: readonly KeptLine[], how: How): ImportDone =>
  book.write(() => {
    const inOrder = [...lines].sort((a, b) => a.line - b.line);
    const numbers = new Map(inOrder.map(({ line }) => [line, 0]));
    const takenBackBy = new Map<number, number[]>();
    // Taken back by a line that is not in the file: it would count again.
    const lost = new Set(inOrder.filter(({ voidedBy }) => voidedBy !== null && !numbers.has(voidedBy)));
    for (const { line, voidedBy } of inOrder)
      if (voidedBy !== null) takenBackBy.set(voidedBy, [...(takenBackBy.get(voidedBy) ?? []), line]);
    let next = book.lastNumber(siteId);
    const entries: NewEntry[] = [];
    const all = sorted(book, siteId, inOrder);
    let left = 0;
    for (const { line, known } of all) {
      if (known !== null) {
        numbers.set(line.line, known);
        continue;
      }
      const voids = (takenBackBy.get(line.line) ?? []).map((old) => numbers.get(old)!).filter((n) => n > 0);
      if (lost.has(line) || (line.record.kind === 'void' && voids.length === 0)) {
        left += 1;
        continue;
      }
      next += 1;
      numbers.set(line.line, next);
      entries.push({
        happenedAt: new Date(line.happenedAt).toISOString(),
        localDate: line.localDate,
        receivedAt: new Date(line.receivedAt).toISOString(),
        person: line.by === null ? null : book.person(siteId, 'import', line.by, line.by).id,
        record: renumbered(line.record, numbers),
        typed: line.typed,
        assumed: line.assumed,
        held: line.held as Entry['held'],
        voids: voids.filter(
          (number) => number > book.lastNumber(siteId) || book.entry(siteId, number)?.voidedBy === null,
        ),
      });
    }
    const id = write(book, siteId, entries, how);
    return { id, added: entries.length, known: all.length - entries.length - left, left };
  });

/** Lines that name another by its number name it by its new one. */
function renumbered(
  record: Record<string, unknown> & { kind: string },
  numbers: ReadonlyMap<number, number>,
) {
  const field = record.kind === 'void' ? 'voids' : record.kind === 'resolved' ? 'entry' : null;
  const number = field ? numbers.get(Number(record[field])) : undefined;
  return field && number ? { ...record, [field]: number } : record;
}

function write(book: OpenedBook, siteId: number, entries: NewEntry[], how: How): number | null {
  if (entries.length === 0) return null;
  const seen = importsOf(book, siteId);
  const id = seen.length + 1;
  const message = book.saveMessage(
    {
      site: siteId,
      channel: 'import',
      chat: 'import',
      thread: null,
      message: String(id),
      edit: null,
      sentAt: how.now,
      receivedAt: how.now,
      sender: { id: null, name: '', coordinator: true, language: null },
      private: true,
      text: '',
      pictures: [],
      replyTo: null,
      choose: null,
    },
    null,
    'done',
  );
  const from = book.lastNumber(siteId) + 1;
  book.append(siteId, entries, message.id);
  // Pictures of the site from there on are made anew when the program starts.
  book.dropSnapshotsFrom(siteId, entries.map(({ happenedAt }) => happenedAt).sort()[0]!);
  book.setMemo(siteId, MEMO, [
    ...seen,
    { id, at: how.now, name: how.name, from, to: from + entries.length - 1, undone: false },
  ]);
  return id;
}

/** Takes back every line of an import that still stands; null where there is no such import. */
export const undoImport = (book: OpenedBook, siteId: number, id: number, now: string): number | null =>
  book.write(() => {
    const seen = importsOf(book, siteId);
    const found = seen.find((each) => each.id === id && !each.undone);
    if (!found) return null;
    const zoneDay = (entry: Entry) => ({ happenedAt: entry.happenedAt, localDate: entry.localDate });
    const voids: NewEntry[] = [];
    let earliest = '9999';
    for (const entry of book.entriesWalk(siteId, found.from - 1)) {
      if (entry.number > found.to) break;
      if (entry.voidedBy !== null || entry.record.kind === 'void') continue;
      if (entry.happenedAt < earliest) earliest = entry.happenedAt;
      voids.push({
        ...zoneDay(entry),
        receivedAt: now,
        person: null,
        record: { kind: 'void', voids: entry.number, why: 'import-undone' },
        typed: null,
        assumed: [],
        held: null,
        voids: [entry.number],
      });
    }
    book.append(siteId, voids, null);
    book.dropSnapshotsFrom(siteId, earliest);
    book.setMemo(
      siteId,
      MEMO,
      seen.map((each) => (each.id === id ? { ...each, undone: true } : each)),
    );
    return voids.length;
  });
