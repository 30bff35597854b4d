import { answerDoubt, drop } from './answers.ts';
import type { Draft } from './draft.ts';
import type { ChoiceAct } from './ports.ts';
import { readingContext } from './reading-context.ts';
import { answerRequest } from './requests/index.ts';
import { rememberWhy } from './requests/why.ts';
import { say } from './say.ts';
import { undo } from './undo.ts';

/** A pressed button: the act was kept with the reply, the button only names it. */
export function press(draft: Draft): void {
  const { choose } = draft.incoming;
  const row = choose ? draft.book.outgoing(choose.outgoing) : null;
  const choice = row && row.site === draft.siteId ? row.choices[choose!.index] : undefined;
  if (!choice) {
    draft.lines.push(say('button-gone'));
    return;
  }
  perform(draft, choice.act);
}

/** Does what a button stands for, pressed or typed out. */
export function perform(draft: Draft, act: ChoiceAct): void {
  if (act.do === 'undo') undo(draft, act.entries);
  else if (act.do === 'ask') answerRequest(draft, act.request as never, readingContext(draft));
  else if (act.do === 'answer') answerDoubt(draft, act.entry, act.choice);
  else if (act.do === 'drop') {
    const held = draft.book.entry(draft.siteId, act.entry);
    if (held?.voidedBy) {
      draft.lines.push(
        say('answered-already', { entry: { entry: held.number }, by: { entry: held.voidedBy } }),
      );
    } else if (held) drop(draft, [held]);
  }
  rememberWhy(draft);
}
