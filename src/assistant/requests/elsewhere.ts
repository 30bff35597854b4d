import type { Request } from '#records';
import type { Draft } from '../draft.ts';
import { say } from '../say.ts';

/** Asked for in the chat, answered by a command of the program: says which. */
export function elsewhere(draft: Draft, request: Request): void {
  draft.lines.push(say(`elsewhere-${request.request}`));
}
