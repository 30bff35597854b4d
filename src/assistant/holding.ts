import { type Doubt, type Entry, FieldRecord } from '#records';
import { rememberDoubts } from './doubts-here.ts';
import type { Draft } from './draft.ts';
import { remember } from './questions.ts';
import { type Say, say } from './say.ts';

/** Keeps a doubt in the book as a held line, asks about it, and offers its choices. */
export function hold(draft: Draft, asked: Doubt): Entry {
  const doubt = withStart(asked);
  const entry = keepHeld(draft, doubt);
  if (doubt.danger) draft.lines.push(say('danger-if-true'));
  askTogether(draft, [{ entry, doubt }]);
  return entry;
}

/** A held line, of which nothing is said yet. */
export const keepHeld = (draft: Draft, doubt: Doubt): Entry =>
  draft.add(doubt.record, { held: { why: doubt.why, choices: doubt.choices, doubt } });

/** One question, with one set of buttons, for held lines that one answer settles. */
export function askTogether(draft: Draft, held: readonly { entry: Entry; doubt: Doubt }[]): void {
  const { entry, doubt } = held[0]!;
  const numbers = held.map((each) => each.entry.number);
  if (held.length === 1) draft.lines.push(doubtQuestion(entry, doubt));
  else
    draft.lines.push(
      say(`doubts-${doubt.why}`, {
        entries: { text: numbers.map((number) => `#${number}`).join(', ') },
        said: { text: held.map((each) => each.doubt.said).join(', ') },
      }),
    );
  offerChoices(draft, entry.number, doubt);
  remember(draft, { about: 'doubt', entry: entry.number, at: draft.now });
  rememberDoubts(draft, numbers);
}

/** The same question once more, for an answer that fits none of its choices. */
export function askAgain(draft: Draft, entry: Pick<Entry, 'number'>, doubt: Doubt): void {
  draft.lines.push(doubtQuestion(entry, doubt));
  offerChoices(draft, entry.number, doubt);
}

/** A pile that is not known may be a new one: to start it is the first choice. */
function withStart(doubt: Doubt): Doubt {
  const place = String(doubt.record.place ?? doubt.record.pile ?? doubt.record.to ?? '');
  if (doubt.why !== 'unknown-place' || !/^(pile|bay) /.test(place)) return doubt;
  if (doubt.choices.some((choice) => choice.record?.kind === 'pile')) return doubt;
  const records = (doubt.records ?? [doubt.record]).map((record) => FieldRecord.safeParse(record));
  if (!records.every((each) => each.success)) return doubt;
  const started: FieldRecord = { kind: 'pile', pile: place, event: 'started' };
  const all = [started, ...records.map((each) => each.data)];
  return { ...doubt, choices: [{ say: 'start', record: started, records: all }, ...doubt.choices] };
}

export function doubtQuestion(entry: Pick<Entry, 'number'>, doubt: Doubt): Say {
  return say(`doubt-${doubt.why}`, {
    entry: { entry: entry.number },
    said: doubt.said ? { text: doubt.said } : { term: doubt.record.kind, of: 'kind' },
    what: { term: doubt.record.kind, of: 'kind' },
    place: { place: String(doubt.record.place ?? doubt.record.pile ?? doubt.record.to ?? '') },
  });
}

function offerChoices(draft: Draft, number: number, doubt: Doubt): void {
  doubt.choices.forEach((choice, index) => {
    draft.choices.push({
      say: say('button-choice', { choice: { term: choice.say, of: 'choice' } }),
      act: { do: 'answer', entry: number, choice: index },
    });
  });
  if (!doubt.choices.some((choice) => choice.record === null)) {
    draft.choices.push({ say: say('button-drop'), act: { do: 'drop', entry: number } });
  }
}
