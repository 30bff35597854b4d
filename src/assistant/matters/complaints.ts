import { type ComplaintField, complaintLacks } from '#core';
import { complaintFacts, fromOutside } from '#parsers';
import type { BookRecordOf, Entry, ParsedMessage } from '#records';
import type { Draft } from '../draft.ts';
import { repliedEntries } from '../questions.ts';
import { type Line, say } from '../say.ts';

type Problem = BookRecordOf<'problem'>;

/** What a neighbour rings about is a complaint, whatever it was logged as. */
export const isComplaintEntry = ({ record }: Entry): boolean =>
  record.kind === 'problem' &&
  ((record as Problem).topic === 'complaint' || fromOutside((record as Problem).said ?? ''));

/** How far back notes of a complaint are looked for, in lines of the book. */
const LINES_BACK = 400;
const NUMBERED = /#(\d+)/;

/** What a regulator will want to know of a complaint and nobody has said yet; its name is none of it. */
export function complaintLines(draft: Draft, entry: Entry): Line[] {
  const lacks = lacking(draft, entry);
  const number = { entry: { entry: entry.number } };
  if (lacks.length === 0) return [say('complaint-complete', number)];
  return [
    [say('complaint-asks'), ...lacks.map((field) => say(`complaint-${field}`))],
    say('complaint-how', number),
  ];
}

function lacking(draft: Draft, entry: Entry): ComplaintField[] {
  const record = entry.record as Problem;
  const said = [record.said ?? '', record.note ?? '', ...notesOn(draft, entry.number)];
  const facts = Object.fromEntries(said.flatMap(complaintFacts).map((fact) => [fact, 'said']));
  return complaintLacks({
    ...facts,
    when: entry.localDate,
    ...(record.place ? { where: record.place } : {}),
    ...(record.strength ? { strength: record.strength } : {}),
    // Who answers for it is whoever took it down, until somebody else is named.
    ...(draft.person ? { 'who-answers': draft.person.name } : {}),
  });
}

const notesOn = (draft: Draft, number: number): string[] =>
  draft.book
    .latest(draft.siteId, LINES_BACK)
    .filter(({ record, voidedBy, held }) => record.kind === 'note' && voidedBy === null && held === null)
    .map(({ record }) => String((record as BookRecordOf<'note'>).text))
    .filter((text) => NUMBERED.exec(text)?.[1] === String(number));

/** A note that names a complaint: what is still to be said of it. */
export function notedLines(draft: Draft, written: readonly Entry[]): Line[] {
  return written.flatMap(({ record }) => {
    if (record.kind !== 'note') return [];
    const number = NUMBERED.exec(String((record as BookRecordOf<'note'>).text))?.[1];
    const complaint = number ? openComplaint(draft, Number(number)) : null;
    return complaint ? complaintLines(draft, complaint).slice(0, 1) : [];
  });
}

function openComplaint(draft: Draft, number: number): Entry | null {
  if (!draft.picture().problems.some((each) => each.entry === number)) return null;
  const entry = draft.book.entry(draft.siteId, number);
  return entry && isComplaintEntry(entry) ? entry : null;
}

/** How long the words after a complaint are taken to speak of it without naming it. */
const SAME_TALK_MS = 3_600_000;
/** Work that may be spoken of in one breath with a complaint. */
const WORK = ['turning', 'screening', 'cover'];
const BESIDE = new Set(['note', 'weather', 'problem', ...WORK]);
const UNDER_WAY = /\b(?:were|was|busy|en train|estab\w+)\b|\bon \p{L}+ait\b/u;

/**
 * `strong, wind SW, dry, we were turning A`, said under a complaint, with its number, or by who took it down within
 * the hour: a note on it. Work that was done is kept beside it; work that only went on at the time is none. Null where
 * the message is anything else.
 */
export function complaintAnswer(draft: Draft, parsed: ParsedMessage): ParsedMessage | null {
  const said = draft.incoming.text.trim();
  const { records } = parsed;
  if (parsed.requests.length + parsed.doubts.length + parsed.danger.length > 0) return null;
  if (complaintFacts(said).length === 0 || records.some(isOther)) return null;
  const number = complaintMeant(draft, parsed, said);
  if (number === null) return null;
  const kept = records.map(({ kind }, i) => ({ i, work: WORK.includes(kind) })).filter(({ work }) => work);
  const done = UNDER_WAY.test(said) ? [] : kept;
  const text = records.find((record) => record.kind === 'note')?.text ?? said;
  const note = { kind: 'note' as const, text: NUMBERED.test(text) ? text : `#${number} ${text}`, said };
  return {
    ...parsed,
    records: [...done.map(({ i }) => records[i]!), note],
    assumed: [...done.map(({ i }) => parsed.assumed[i] ?? []), []],
    typed: [...done.map(({ i }) => parsed.typed[i] ?? null), null],
    unread: [],
  };
}

const isOther = (record: ParsedMessage['records'][number]): boolean =>
  !BESIDE.has(record.kind) || (record.kind === 'problem' && record.topic === 'complaint');

function complaintMeant(draft: Draft, { records }: ParsedMessage, said: string): number | null {
  const named = Number(NUMBERED.exec(said)?.[1] ?? Number.NaN);
  const asked = [named, ...repliedEntries(draft)].map((number) => openComplaint(draft, number));
  const told = asked.find((each) => each !== null);
  if (told) return told.number;
  const own = ownLast(draft);
  const facts = complaintFacts(said);
  if (
    !own ||
    fromOutside(said) ||
    facts.length < 2 ||
    !facts.some((fact) => fact === 'wind' || fact === 'strength')
  )
    return null;
  const onTheSide = records.every(
    ({ kind }) => kind === 'weather' || (WORK.includes(kind) && UNDER_WAY.test(said)),
  );
  return onTheSide ? own.number : null;
}

function ownLast(draft: Draft): Entry | null {
  if (!draft.person) return null;
  const [last] = draft.picture().problems.slice(-1);
  const entry = last ? openComplaint(draft, last.entry) : null;
  if (!entry || entry.person !== draft.person.id) return null;
  return Date.parse(draft.now) - Date.parse(entry.happenedAt) <= SAME_TALK_MS ? entry : null;
}
