import type { DoubtChoice, Entry, FieldRecord } from '#records';
import { offerUndo, rememberLast } from './decide.ts';
import { twinsHeldWith } from './double-log.ts';
import type { Draft } from './draft.ts';
import { entryLine } from './entry-lines.ts';
import { askAgain, hold } from './holding.ts';
import { heldPile, matters } from './matters/index.ts';
import { choiceFor, forget, type Question } from './questions.ts';
import { say } from './say.ts';

/** An answered doubt, by the place of the choice; carts that were asked about together are answered together. */
export function answerDoubt(draft: Draft, heldNumber: number, choice: number): void {
  const held = draft.book.entry(draft.siteId, heldNumber);
  if (!held || held.held === null) return;
  const open = [held, ...twinsHeldWith(draft, heldNumber)]
    .filter((line) => line.voidedBy === null)
    .sort((a, b) => a.number - b.number);
  if (open.length === 0) {
    draft.lines.push(
      say('answered-already', { entry: { entry: heldNumber }, by: { entry: held.voidedBy! } }),
    );
    return;
  }
  const records = recordsOf(held.held.choices[choice]);
  // What leaves a held pile is a coordinator's to allow; anybody may say that nothing was taken.
  if (held.held.why === 'held-pile' && records !== null && !draft.mayDecide) {
    draft.lines.push(say('coordinators-only'));
    return;
  }
  if (records === null) {
    drop(draft, open);
    return;
  }
  // The pile that was chosen may have been put on hold since, or be one.
  const stopped =
    held.held.why === 'held-pile'
      ? null
      : records.map((each) => heldPile(draft, each)).find((each) => each !== null);
  if (stopped) {
    drop(draft, open);
    hold(draft, stopped);
    return;
  }
  settle(draft, open, choice);
}

const recordsOf = (choice: DoubtChoice | undefined): FieldRecord[] | null => {
  if (!choice?.record) return null;
  const records = choice.records ?? [choice.record];
  return records.length > 0 ? records : null;
};

/** The chosen records take the places of the held lines. */
function settle(draft: Draft, lines: readonly Entry[], choice: number): void {
  const written = lines.flatMap((held) => {
    forget(draft, { about: 'doubt', entry: held.number });
    return (recordsOf(held.held!.choices[choice]) ?? []).map((record, i) =>
      draft.add(record, {
        typed: held.typed,
        voids: i === 0 ? [held.number] : [],
        ...(record.when == null && held.record.when == null ? { happenedAt: held.happenedAt } : {}),
      }),
    );
  });
  for (const entry of written) draft.lines.push(entryLine(draft, entry));
  const numbers = written.map((entry) => entry.number);
  offerUndo(draft, numbers);
  rememberLast(draft, numbers);
  draft.lines.push(...matters(draft, written));
}

/** Held lines that count for nothing, and stay in the book as what was said. */
export function drop(draft: Draft, lines: readonly Entry[]): void {
  for (const { number } of lines) {
    draft.add({ kind: 'void', voids: number, why: 'dropped' }, { voids: [number], happenedAt: draft.now });
    forget(draft, { about: 'doubt', entry: number });
  }
  const entries = { text: lines.map(({ number }) => `#${number}`).join(', ') };
  draft.lines.push(say('dropped', { entries, count: { count: lines.length } }));
}

/** A typed answer against the choices of the doubt that was asked about; what fits none of them is asked again. */
export function answerTyped(draft: Draft, question: Question | null, to: string): boolean {
  if (question?.about !== 'doubt' && question?.about !== 'new-pile') return false;
  const line = draft.picture().held.find(({ entry }) => entry === question.entry);
  if (!line) return false;
  const choice = choiceFor(line.doubt, to);
  if (choice) answerDoubt(draft, line.entry, line.doubt.choices.indexOf(choice));
  else if (/\d/.test(to)) return false;
  else askAgain(draft, { number: line.entry }, line.doubt);
  return true;
}
