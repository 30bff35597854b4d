import type { Request } from '#records';
import type { Draft } from '../draft.ts';
import { say } from '../say.ts';

/** `closed till 2 jan`: stands down what can wait, and keeps what cannot. */
export function closed(draft: Draft, request: Request): void {
  if (request.open === true) {
    openAgain(draft);
    return;
  }
  const from = typeof request.from === 'string' ? request.from : draft.today;
  const to = typeof request.to === 'string' ? request.to : from;
  if (to < from) {
    draft.lines.push(say('closed-when'));
    return;
  }
  const entry = draft.add({ kind: 'setting', name: 'closed', value: { from, to } });
  draft.lines.push(
    say('closed-noted', { entry: { entry: entry.number }, from: { date: from }, to: { date: to } }),
  );
}

/** `open again`: what stood down comes back. */
function openAgain(draft: Draft): void {
  const running = draft.picture().closures.some(({ to }) => to >= draft.today);
  if (!running) {
    draft.lines.push(say('closed-not'));
    return;
  }
  const entry = draft.add({ kind: 'setting', name: 'closed', value: { from: draft.today, to: null } });
  draft.lines.push(say('closed-open', { entry: { entry: entry.number } }));
}
