import { addDays, feedback as feedbackOf, type SourceFeedback } from '#core';
import type { Request } from '#records';
import type { Draft } from '../draft.ts';
import { type Line, say } from '../say.ts';

/** A month back: what a kitchen can still remember. */
const DAYS = 30;

/** `what do I tell east kitchen?`: how clean its carts were, in a line that can be passed on. */
export function feedback(draft: Draft, request: Request): void {
  const from = addDays(draft.today, -DAYS);
  const all = feedbackOf(draft.picture(), from, draft.today);
  const asked = request.what ?? null;
  const told = asked === null ? all.slice(0, 5) : all.filter(({ source }) => source === asked);
  if (told.length === 0) {
    draft.lines.push(
      say('feedback-nothing', { source: { source: asked ?? '' }, has: { text: asked ? 'yes' : 'no' } }),
    );
    return;
  }
  draft.lines.push(...told.map(lineOf));
}

function lineOf({ source, loads, dirty, rejected, found }: SourceFeedback): Line {
  const args = {
    source: { source },
    loads: { count: loads + rejected },
    dirty: { count: dirty + rejected },
    found: { term: found[0]?.what ?? '', of: 'dirt' },
    hasFound: { text: found.length > 0 ? 'yes' : 'no' },
  };
  return dirty + rejected === 0 ? say('feedback-clean', args) : say('feedback-dirty', args);
}
