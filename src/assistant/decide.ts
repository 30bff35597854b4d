import { sumKg } from '#core';
import { dirtFound, languageOf, type ReadContext } from '#parsers';
import type { BookRecord, BookRecordOf, Doubt, Entry, FieldRecord, ParsedMessage } from '#records';
import { amendByReply } from './amend.ts';
import { askOnce } from './asking.ts';
import { cautionLines } from './cautions.ts';
import { holdTwins } from './double-log.ts';
import { doubtOf } from './doubting.ts';
import type { Draft } from './draft.ts';
import { atMachine, emergencyLines, tellCoordinators, withoutMedicalDetail } from './emergency.ts';
import { entryLine } from './entry-lines.ts';
import { hold } from './holding.ts';
import { complaintAnswer, matters } from './matters/index.ts';
import { weighed } from './nets.ts';
import { answerRequest } from './requests/index.ts';
import { rememberWhy } from './requests/why.ts';
import { say } from './say.ts';

/**
 * From what was read to what is written and said. The order is that of the reply: danger first, then the lines
 * of the book, then what waits for an answer, then what matters now, then what was asked for.
 */
export function decide(draft: Draft, read: ParsedMessage, context: ReadContext): void {
  const parsed = complaintAnswer(draft, read) ?? read;
  if (parsed.danger.length > 0) {
    // Whoever stands beside it reads what was written: not only the one who chose a language.
    draft.manner.language = languageOf(draft.incoming.text) ?? draft.manner.language;
    draft.lines.push(...emergencyLines(draft, atMachine(parsed.danger, parsed.records)));
  } else if (amendByReply(draft, parsed, context)) return;

  const before = draft.entries.length;
  const twins: Doubt[] = [];
  const asked: Doubt[] = [];
  parsed.records.forEach((record, i) => {
    const doubt = doubtOf(draft, record, twins);
    if (doubt) (doubt.why === 'same-cart' ? twins : asked).push(doubt);
    else writeRecord(draft, record, parsed, i);
  });
  const written = draft.entries.slice(before).filter((entry) => entry.held === null);
  // Each line of a long paste too: what it was read as can be checked, and the channel cuts at line ends.
  for (const entry of written) draft.lines.push(entryLine(draft, entry));

  sumLine(draft, written);

  holdTwins(draft, twins);
  for (const doubt of [...asked, ...parsed.doubts]) hold(draft, doubt);
  const held = draft.entries.slice(before).filter((entry) => entry.held !== null).length;
  if (held > 0) draft.lines.push(say('doubts-wait', { count: { count: held } }));

  if (parsed.danger.length > 0) tellCoordinators(draft, parsed.danger);
  draft.lines.push(...matters(draft, written));
  askOnce(draft, written);
  for (const request of parsed.requests) answerRequest(draft, request, context);

  if (written.length > 0) {
    const numbers = written.map((entry) => entry.number);
    rememberLast(draft, numbers);
    offerUndo(draft, numbers);
  }
  rememberSaid(
    draft,
    draft.entries.slice(before).filter((entry) => entry.record.kind !== 'void'),
  );
  askWhatNumber(draft, parsed, context);
  sayLeftOver(draft, parsed, draft.entries.length > before);
  rememberWhy(draft);
}

/** Several weights of one thing are added up: that is the number the scale's pad used to hold. */
function sumLine(draft: Draft, written: readonly Entry[]): void {
  const nets = written
    .filter((entry) => entry.record.kind === 'weigh-in')
    .map((entry) => ({
      record: entry.record as BookRecordOf<'weigh-in'>,
      weight: weighed(draft.picture(), entry),
    }))
    .filter(({ record, weight }) => record.container && weight.is === 'net');
  const materials = new Set(nets.map(({ record }) => record.material));
  if (nets.length < 2 || materials.size !== 1) return;
  const kg = sumKg(nets.map(({ weight }) => (weight.is === 'net' ? weight.netKg : 0)));
  draft.lines.push(say('line-sum', { kg: { kg } }));
}

/** Writes records that did not come from the reader and says their lines. */
export function writeAndSay(draft: Draft, records: readonly BookRecord[]): void {
  const written = records.map((record) => draft.add(record));
  for (const entry of written) draft.lines.push(entryLine(draft, entry));
  draft.lines.push(...cautionLines(draft, written));
  const numbers = written.map((entry) => entry.number);
  rememberLast(draft, numbers);
  offerUndo(draft, numbers);
}

function writeRecord(draft: Draft, record: FieldRecord, parsed: ParsedMessage, i: number): void {
  draft.add(withFound(withoutMedicalDetail(record, parsed.danger)), {
    assumed: parsed.assumed[i] ?? [],
    typed: parsed.typed[i] ?? null,
  });
}

/** What was found in a dirty or refused load is kept with it, so that its kitchen can be told. */
function withFound(record: FieldRecord): FieldRecord {
  const dirty = record.kind === 'weigh-in' && record.flags?.includes('contaminated');
  if (!dirty && record.kind !== 'rejected-load') return record;
  const found = dirtFound(record.said ?? '');
  return found.length > 0 ? { ...record, found } : record;
}

/** The reply to an entry carries a button that takes it back. */
export function offerUndo(draft: Draft, entries: number[]): void {
  draft.choices.push({
    say: say('button-undo', { count: { count: entries.length } }),
    act: { do: 'undo', entries },
  });
}

export function rememberLast(draft: Draft, entries: number[]): void {
  if (!draft.person) return;
  draft.book.setMemo(draft.siteId, `last:${draft.person.id}`, { at: draft.now, entries });
  draft.book.setMemo(draft.siteId, `said:${draft.person.id}`, { at: draft.now, entries });
}

/** All that a message made, held lines too: `undo` takes back the last thing said, whether it counted or not. */
function rememberSaid(draft: Draft, entries: readonly Entry[]): void {
  if (!draft.person || entries.length === 0) return;
  const numbers = entries.map((entry) => entry.number);
  draft.book.setMemo(draft.siteId, `said:${draft.person.id}`, { at: draft.now, entries: numbers });
}

const LIST_FROM_LINES = 3;
const LEFT_SHOWN = 3;
const LEFT_LETTERS = 40;

/**
 * A message that went into the book, and a piece of it that did not: whoever pasted a list has to be told, and a
 * number that is lost. Talk beside an entry is left alone.
 */
function sayLeftOver(draft: Draft, parsed: ParsedMessage, written: boolean): void {
  if (!written || parsed.danger.length > 0) return;
  const isList = draft.incoming.text.trim().split('\n').length >= LIST_FROM_LINES;
  // A piece may be the whole clause, words that became an entry included: those have been answered.
  const answered = [...parsed.records, ...parsed.doubts].map((one) => one.said ?? '').filter((said) => said);
  const left = parsed.unread
    .map((piece) => piece.trim())
    .filter((piece) => isList || /\d/.test(piece))
    .filter((piece) => !answered.some((said) => piece.includes(said) || said.includes(piece)));
  if (left.length === 0) return;
  const shown = left
    .slice(0, LEFT_SHOWN)
    .map((piece) => (piece.length > LEFT_LETTERS ? `${piece.slice(0, LEFT_LETTERS)}…` : piece));
  draft.lines.push(
    say('left-over', {
      pieces: { text: shown.map((piece) => `“${piece}”`).join(', ') },
      more: { count: left.length - shown.length },
    }),
  );
}

/** Rule 16: a bare number that answers nothing is asked about, and stored nowhere. */
function askWhatNumber(draft: Draft, parsed: ParsedMessage, context: ReadContext): void {
  const empty =
    parsed.records.length + parsed.requests.length + parsed.doubts.length + parsed.danger.length === 0;
  if (!empty || parsed.unread.length !== 1) return;
  const [text] = parsed.unread;
  if (/^[\d.,½¼¾\s°º#%-]+(?:kg|lbs?|c|f|l|gal)?$/i.test(text!.trim())) {
    if (context.book?.openQuestion) {
      answerRequest(draft, { request: 'answer', to: text!.trim() }, context);
      return;
    }
    draft.lines.push(say('what-was-number', { text: { text: text!.trim() } }));
  }
}
