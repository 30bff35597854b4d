import type { Entry, FieldRecord } from '#records';
import { offerUndo, rememberLast } from './decide.ts';
import type { Draft } from './draft.ts';
import { entryLine } from './entry-lines.ts';
import { hold } from './holding.ts';
import { heldPile, matters } from './matters/index.ts';
import { remember } from './questions.ts';
import { say } from './say.ts';

/** An answered doubt: the chosen record takes the held line's place; a choice without a record drops it. */
export function settle(draft: Draft, heldNumber: number, records: FieldRecord[] | null): void {
  const held = draft.book.entry(draft.siteId, heldNumber);
  if (!held || held.held === null) return;
  if (held.voidedBy !== null) {
    draft.lines.push(say('answered-already', { entry: { entry: heldNumber }, by: { entry: held.voidedBy } }));
    return;
  }
  // What leaves a held pile is a coordinator's to allow; anybody may say that nothing was taken.
  if (held.held.why === 'held-pile' && records !== null && !draft.mayDecide) {
    draft.lines.push(say('coordinators-only'));
    return;
  }
  remember(draft, null);
  if (records === null || records.length === 0) {
    drop(draft, held);
    return;
  }
  // The pile that was chosen may have been put on hold since, or be one.
  const stopped =
    held.held.why === 'held-pile'
      ? null
      : records.map((each) => heldPile(draft, each)).find((each) => each !== null);
  if (stopped) {
    drop(draft, held);
    hold(draft, stopped);
    return;
  }
  const written = records.map((record, i) =>
    draft.add(record, {
      typed: held.typed,
      voids: i === 0 ? [heldNumber] : [],
      ...(record.when == null && held.record.when == null ? { happenedAt: held.happenedAt } : {}),
    }),
  );
  for (const entry of written) draft.lines.push(entryLine(draft, entry));
  offerUndo(
    draft,
    written.map((entry) => entry.number),
  );
  rememberLast(
    draft,
    written.map((entry) => entry.number),
  );
  draft.lines.push(...matters(draft, written));
}

export function drop(draft: Draft, held: Entry): void {
  draft.add(
    { kind: 'void', voids: held.number, why: 'dropped' },
    { voids: [held.number], happenedAt: draft.now },
  );
  draft.lines.push(say('dropped', { entry: { entry: held.number } }));
  remember(draft, null);
}

/** A typed answer against the choices of the open doubt: `66.5`, `each`, `the first`, `yes`, `drop`. */
export function answerTyped(draft: Draft, to: string): boolean {
  const line = openDoubt(draft);
  if (!line) return false;
  const { doubt } = line;
  const wanted = fold(to);
  const position = ORDINALS.findIndex((names) => names.includes(wanted));
  const choice =
    doubt.choices.find((each) => fold(each.say) === wanted) ??
    doubt.choices.find((each) => Number.parseFloat(fold(each.say)) === Number.parseFloat(wanted)) ??
    (position >= 0 ? doubt.choices[position] : undefined);
  if (!choice) return false;
  settle(draft, line.entry, choice.record === null ? null : (choice.records ?? [choice.record]));
  return true;
}

function openDoubt(draft: Draft) {
  const asked = draft.book.memo<{ about: string; entry?: number }>(
    draft.siteId,
    `asked:${draft.incoming.chat}`,
  );
  const { held } = draft.picture();
  return held.find((line) => asked?.about === 'doubt' && line.entry === asked.entry) ?? held.at(-1) ?? null;
}

/** The reader hands on positions as these words whatever the language. */
const ORDINALS: string[][] = [
  ['first', 'yes', '1st'],
  ['second', '2nd'],
  ['third', '3rd'],
];

const fold = (text: string): string => text.trim().toLowerCase().replace(',', '.').replaceAll(/\s+/g, ' ');
