import { applyEntry, type Batch, emptyPicture, type Picture } from '#core';
import type { OpenedBook } from '#logbook';
import type { Entry } from '#records';
import type { ProblemSeen } from './sheets/end-sheets.ts';
import { isMedical, nameOf, withoutPrivate } from './sheets/line-seen.ts';

export type Span = { from: string; to: string };

/** What only a walk along the whole book can tell of a span. */
export type SpanFacts = {
  /** After the last line of the book: a tare told later completes what waited for it. */
  now: Picture;
  /** As it stood at the end of the span. */
  atEnd: Picture;
  /** Batches that lived in the span, those gone since among them. */
  batches: Batch[];
  problems: ProblemSeen[];
  /** Numbers of lines that tell of somebody's body. */
  medical: ReadonlySet<number>;
  lines: number;
};

export function spanFacts(
  book: OpenedBook,
  siteId: number,
  span: Span,
  names: ReadonlyMap<number, string>,
  onLine: () => void,
): SpanFacts {
  let picture = emptyPicture(book.siteById(siteId).site);
  let atEnd: Picture | null = null;
  const gone = new Map<string, Batch>();
  const problems = new Map<number, ProblemSeen>();
  const medical = new Set<number>();
  let lines = 0;
  for (const entry of book.entriesFrom(siteId, '')) {
    onLine();
    lines += 1;
    if (atEnd === null && entry.localDate > span.to) atEnd = picture;
    const next = applyEntry(picture, entry);
    if (next.batches !== picture.batches) {
      for (const [id, batch] of Object.entries(picture.batches)) if (!next.batches[id]) gone.set(id, batch);
    }
    if (isMedical(entry)) medical.add(entry.number);
    noteProblem(problems, entry, names);
    if (next.ended !== picture.ended) noteEnds(problems, next, entry, names);
    picture = next;
  }
  atEnd ??= picture;
  const batches = [...gone.values(), ...Object.values(atEnd.batches)].filter(
    ({ startedAt, goneAt, readings }) =>
      (startedAt ?? readings[0])?.localDate !== undefined &&
      (startedAt ?? readings[0])!.localDate <= span.to &&
      (goneAt === null || goneAt.localDate >= span.from),
  );
  return {
    now: picture,
    atEnd,
    batches: [...new Map(batches.map((batch) => [batch.id, batch])).values()],
    problems: [...problems.values()].filter(
      ({ localDate }) => localDate >= span.from && localDate <= span.to,
    ),
    medical,
    lines,
  };
}

const NONE: ReadonlySet<number> = new Set();

function noteProblem(
  problems: Map<number, ProblemSeen>,
  entry: Entry,
  names: ReadonlyMap<number, string>,
): void {
  if (entry.record.kind !== 'problem' || entry.voidedBy !== null || entry.held) return;
  const record = withoutPrivate(entry, NONE).record as {
    topic: ProblemSeen['topic'];
    place?: string | null;
    note?: string | null;
    said?: string | null;
    strength?: string | null;
  };
  problems.set(entry.number, {
    entry: entry.number,
    at: entry.happenedAt,
    localDate: entry.localDate,
    topic: record.topic,
    place: record.place ?? null,
    note: record.note ?? record.said ?? null,
    strength: record.strength ?? null,
    by: nameOf(names, entry.person),
    ended: null,
  });
}

function noteEnds(
  problems: Map<number, ProblemSeen>,
  picture: Picture,
  entry: Entry,
  names: ReadonlyMap<number, string>,
): void {
  // The newest stand last; what ended before this line is noted already.
  for (let i = picture.ended.length - 1; i >= 0; i--) {
    const { entry: number, ended } = picture.ended[i]!;
    if (ended.entry !== entry.number) return;
    const problem = problems.get(number);
    if (!problem) continue;
    const note = ended.note ?? ((entry.record as { said?: string | null }).said || null);
    problem.ended = {
      localDate: ended.localDate,
      entry: ended.entry,
      note: problem.topic === 'injury' ? null : note,
      by: nameOf(names, entry.person),
    };
  }
}
