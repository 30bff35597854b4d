import type { Request } from '#records';
import type { Draft } from '../draft.ts';
import { limitsOf } from '../matters/mix.ts';
import { say } from '../say.ts';
import { aimSay } from '../why/mix.ts';

/** `what is our recipe?`: the site's own, or that there is none and what is aimed at instead. */
export function recipe(draft: Draft, _request: Request): void {
  const limits = limitsOf(draft.picture(), draft.today, draft.now);
  if (!limits.recipe) draft.lines.push(say('recipe-none'));
  draft.lines.push(aimSay(limits));
  draft.why.push(say('why-recipe'));
}
