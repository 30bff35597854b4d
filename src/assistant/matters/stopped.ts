import type { StoppedAdvice } from '#core';
import { type Line, say } from '../say.ts';

/** A machine that stands still, in at most three lines. Nothing here starts it again. */
export function stoppedSays({ steps }: StoppedAdvice): Line[] {
  const has = (code: string) => steps.find((step) => step.code === code);
  const lines: Line[] = [say('stopped-people')];
  if (has('leave-jam-to-trained-people')) lines.push(say('stopped-jam'));
  else if (has('ask-the-power-company-or-electrician')) lines.push(say('stopped-power'));
  const call = has('call-now') ?? has('call-at');
  const whom = call?.args.whom ?? null;
  const hours = call?.code === 'call-at' ? (call.args.afterHours ?? null) : null;
  lines.push(
    say('stopped-loads', {
      log: { say: say('log-reading', { place: { place: 'drum' }, celsius: { celsius: 55 } }) },
      whom: { text: String(whom ?? '') },
      has: { text: whom ? 'yes' : 'no' },
      hours: { number: Number(hours ?? 0), digits: 1 },
      hasHours: { text: hours === null ? 'no' : 'yes' },
      hasNow: { text: call?.code === 'call-now' ? 'yes' : 'no' },
    }),
  );
  return lines;
}
