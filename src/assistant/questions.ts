import { type BookContext, type ReadContext, readMessage } from '#parsers';
import type { Doubt, FieldRecord } from '#records';
import type { Draft } from './draft.ts';

/** A question we asked in a chat that a short answer may settle: `18`, `yes`, `E`. */
export type Asked = (
  | { about: 'tare'; container: string; label: string | null }
  | { about: 'ambient' }
  | { about: 'doubt'; entry: number }
) & { at: string };
/** With it, the message that made us ask and whoever wrote it. */
type Kept = Asked & { message?: string; person: number | null };

export type Question = NonNullable<BookContext['openQuestion']>;
type Open = { question: Question; own: boolean; replied: boolean; minutes: number };

/** After this long a bare number no longer answers a question that was asked before it. */
const ANSWERABLE_MIN = 12 * 60;
const REMEMBERED = 12;
/** No answer to a question is longer; what is gets read once, not once a question. */
const LONGEST_ANSWER = 60;
/**
 * Words of any talk, which fit any question. They answer the sender's own for an hour, and what somebody else was
 * asked only right away; a reply to the question always does.
 */
const FITS_ANY = ['yes', 'no', 'drop', 'first', 'second', 'third'];
const OWN_WORD_MIN = 60;
const OTHERS_WORD_MIN = 10;

const keyOf = (draft: Draft): string => `questions:${draft.incoming.chat}`;

/** What is open in this chat, oldest first. Questions are people's: each is kept with whoever it was put to. */
const keptIn = (draft: Draft): Kept[] => draft.book.memo<Kept[]>(draft.siteId, keyOf(draft)) ?? [];

const keep = (draft: Draft, all: readonly Kept[]): void =>
  draft.book.setMemo(draft.siteId, keyOf(draft), all.length > 0 ? all.slice(-REMEMBERED) : null);

const isSame = (one: Asked, other: Asked): boolean =>
  one.about === other.about &&
  (one.about !== 'tare' || other.about !== 'tare' || one.container === other.container) &&
  (one.about !== 'doubt' || other.about !== 'doubt' || one.entry === other.entry);

/** Remembers what was asked of the sender in this chat. */
export function remember(draft: Draft, asked: Asked): void {
  const person = draft.person?.id ?? null;
  const others = keptIn(draft).filter((one) => one.person !== person || !isSame(one, asked));
  keep(draft, [...others, { ...asked, message: draft.incoming.message, person }]);
}

/** A question that has been answered is nobody's any more. */
export function forget(draft: Draft, answered: Question | { about: 'doubt'; entry: number }): void {
  const about = answered.about === 'new-pile' ? 'doubt' : answered.about;
  const gone = { ...answered, about, at: '' } as Asked;
  keep(
    draft,
    keptIn(draft).filter((one) => !isSame(one, gone)),
  );
}

/**
 * The question that this message answers: the one it replies to, else the sender's own last one that it can answer,
 * else the last one of somebody else's. Where it can answer none, the one that it would have been about.
 */
export function openQuestion(draft: Draft, context: ReadContext): Question | null {
  const open = openQuestions(draft);
  if (open.length === 0 || draft.incoming.text.trim().length > LONGEST_ANSWER) return null;
  const hasOwn = open.some(({ own }) => own);
  const fitting = open.find((one, nth) => {
    const to = answerTo(draft, context, one.question);
    if (to === null || !fits(one.question, to)) return false;
    if (one.replied) return true;
    if (FITS_ANY.includes(to))
      return one.own ? one.minutes <= OWN_WORD_MIN : nth === 0 && one.minutes <= OTHERS_WORD_MIN;
    // Of two people's numbers nobody can tell whose empty weight it is.
    return one.own || !hasOwn || one.question.about === 'doubt';
  });
  if (fitting) return fitting.question;
  // What settles nothing is asked again, where it can only have been meant so.
  const [first] = open;
  return first!.replied || (first!.own && first!.minutes <= OTHERS_WORD_MIN) ? first!.question : null;
}

/** Whether the sender, or else anybody, has been asked something that is no doubt about a line since. */
export const asksForMore = (draft: Draft): boolean => {
  const [first] = openQuestions(draft);
  return first !== undefined && first.question.about !== 'doubt' && first.question.about !== 'new-pile';
};

function answerTo(draft: Draft, context: ReadContext, question: Question): string | null {
  const book = context.book && { ...context.book, openQuestion: question };
  const { requests } = readMessage(draft.incoming.text, { ...context, book });
  const found = requests.find(({ request }) => request === 'answer');
  return found ? String(found.to ?? '') : null;
}

const fits = (question: Question, to: string): boolean =>
  question.about !== 'doubt' || choiceFor(question.doubt, to) !== null;

/** Which choice of a doubt a typed answer stands for: `66.5`, `each`, `the first`. */
export function choiceFor(doubt: Doubt, to: string): Doubt['choices'][number] | null {
  const wanted = fold(to);
  const position = ORDINALS.findIndex((names) => names.includes(wanted));
  const isYesToStart = wanted === 'yes' && doubt.choices[0]?.say === 'start';
  return (
    doubt.choices.find((each) => fold(each.say) === wanted) ??
    doubt.choices.find((each) => Number.parseFloat(fold(each.say)) === Number.parseFloat(wanted)) ??
    (position >= 0 ? doubt.choices.filter((each) => each.say !== 'drop')[position] : undefined) ??
    (isYesToStart ? doubt.choices[0]! : null)
  );
}

/** The reader hands on positions as these words whatever the language. */
const ORDINALS: string[][] = [
  ['first', '1st'],
  ['second', '2nd'],
  ['third', '3rd'],
];

const fold = (text: string): string => text.trim().toLowerCase().replace(',', '.').replaceAll(/\s+/g, ' ');

/** Open questions that this message may answer: a replied one alone, else the sender's own, then others', newest first. */
function openQuestions(draft: Draft): Open[] {
  const replied = repliedDoubt(draft);
  if (replied) {
    const question = questionOf(draft, replied);
    return question ? [{ question, own: true, replied: true, minutes: 0 }] : [];
  }
  const person = draft.person?.id ?? null;
  const all = askedHere(draft)
    .filter(({ at }) => minutesSince(draft, at) <= ANSWERABLE_MIN)
    .reverse()
    .flatMap((kept): Open[] => {
      const question = questionOf(draft, kept);
      const own = person !== null && kept.person === person;
      return question ? [{ question, own, replied: false, minutes: minutesSince(draft, kept.at) }] : [];
    });
  return [...all.filter(({ own }) => own), ...all.filter(({ own }) => !own)];
}

const minutesSince = (draft: Draft, at: string): number => (Date.parse(draft.now) - Date.parse(at)) / 60_000;

function questionOf(draft: Draft, asked: Asked): Question | null {
  if (asked.about === 'ambient') return { about: 'ambient' };
  if (asked.about === 'tare') return { about: 'tare', container: asked.container, label: asked.label };
  const line = draft.picture().held.find((each) => each.entry === asked.entry);
  if (!line) return null;
  if (line.why === 'unknown-place' && line.doubt.choices.some((choice) => choice.record?.kind === 'pile')) {
    const place = String(line.doubt.record.place ?? line.doubt.record.pile ?? '');
    return {
      about: 'new-pile',
      entry: line.entry,
      place,
      choices: line.doubt.choices.map((choice) => choice.say),
      record: line.doubt.record as unknown as FieldRecord,
    };
  }
  return { about: 'doubt', entry: line.entry, doubt: line.doubt };
}

/** What was asked in this chat; where the message answers another one, only what that one made us ask. */
function askedHere(draft: Draft): Kept[] {
  const all = keptIn(draft);
  const { replyTo } = draft.incoming;
  if (!replyTo || repliedEntries(draft).length === 0) return all;
  const answered =
    'outgoing' in replyTo
      ? draft.book.outgoing(replyTo.outgoing)?.answers
      : 'message' in replyTo
        ? replyTo.message
        : null;
  return all.filter(({ message }) => answered === message);
}

function repliedDoubt(draft: Draft): Asked | null {
  const { replyTo } = draft.incoming;
  if (!replyTo) return null;
  const held = new Set(draft.picture().held.map((line) => line.entry));
  const entry = repliedEntries(draft).find((number) => held.has(number));
  return entry === undefined ? null : { about: 'doubt', entry, at: draft.now };
}

/** The lines that the message answered by this one had made. */
export function repliedEntries(draft: Draft): number[] {
  const { book, siteId, incoming } = draft;
  const { replyTo } = incoming;
  if (!replyTo) return [];
  if ('entry' in replyTo) return [replyTo.entry];
  if ('outgoing' in replyTo) {
    const row = book.outgoing(replyTo.outgoing);
    return row?.message && row.site === siteId ? book.entriesOfMessage(row.message).map((e) => e.number) : [];
  }
  return book
    .messageHistory(siteId, incoming.channel, incoming.chat, replyTo.message)
    .flatMap((message) => book.entriesOfMessage(message.id).map((entry) => entry.number));
}
