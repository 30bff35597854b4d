import type { Draft } from '../draft.ts';
import { say } from '../say.ts';

/** What can be typed, in the words of the crew. */
export function help(draft: Draft): void {
  const { base } = draft.picture();
  draft.lines.push(say('help-log'));
  draft.lines.push(say(base.drums.length > 0 ? 'help-log-drum' : 'help-log-piles'));
  draft.lines.push(say('help-ask'), say('help-mend'), say('help-set'), say('help-danger'));
}

/** Eight lines to start safely, from the site's own settings. */
export function newHere(draft: Draft): void {
  const { base } = draft.picture();
  draft.lines.push(say('new-1', { site: { text: base.name } }), say('new-2'));
  draft.lines.push(say(base.drums.length > 0 ? 'new-3-drum' : 'new-3'), say('new-4'), say('new-5'));
  draft.lines.push(say('new-6'), say('new-7'), say('new-8'));
}
