import type { Doubt, Entry } from '#records';
import type { Draft } from './draft.ts';
import { remember } from './questions.ts';
import { type Say, say } from './say.ts';

/** Keeps a doubt in the book as a held line, asks about it, and offers its choices. */
export function hold(draft: Draft, doubt: Doubt): Entry {
  const entry = draft.add(doubt.record, { held: { why: doubt.why, choices: doubt.choices, doubt } });
  if (doubt.danger) draft.lines.push(say('danger-if-true'));
  draft.lines.push(doubtQuestion(entry, doubt));
  offerChoices(draft, entry.number, doubt);
  remember(draft, { about: 'doubt', entry: entry.number, at: draft.now });
  return entry;
}

export function doubtQuestion(entry: Pick<Entry, 'number'>, doubt: Doubt): Say {
  return say(`doubt-${doubt.why}`, {
    entry: { entry: entry.number },
    said: { text: doubt.said ?? doubt.record.kind },
    what: { term: doubt.record.kind, of: 'kind' },
    place: { place: String(doubt.record.place ?? doubt.record.pile ?? doubt.record.to ?? '') },
  });
}

export function offerChoices(draft: Draft, number: number, doubt: Doubt): void {
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
