import type { traceOf } from '#core';
import { type Line, type Say, say } from '../say.ts';

const SHOWN = 5;

/** Who received from a pile, which intake days and sources went in, and which piles it was joined with or split from. */
export function traceLines(place: string, { received, intake, kin }: ReturnType<typeof traceOf>): Line[] {
  const lines: Line[] = [];
  const went = received.slice(-SHOWN).map(
    ({ to, localDate, kg, litres, entry }): Say =>
      say('trace-to', {
        to: { text: to ?? '—' },
        entry: { entry },
        date: { date: localDate },
        amount: kg !== null ? { kg, digits: 1 } : litres !== null ? { litres } : { text: '' },
      }),
  );
  lines.push(went.length > 0 ? [say('trace-went'), ...went] : say('trace-nobody'));
  const from = intake.slice(0, SHOWN).map(
    ({ source, from, to, kg }): Say =>
      say('trace-source', {
        source: { source },
        kg: { kg, digits: 1 },
        from: { date: from },
        to: { date: to },
        one: { text: from === to ? 'yes' : 'no' },
      }),
  );
  lines.push(from.length > 0 ? [say('trace-in'), ...from] : say('trace-no-source', { place: { place } }));
  if (kin.length > 0)
    lines.push([say('trace-kin'), ...kin.map((each) => say('part-at', { place: { place: each } }))]);
  return lines;
}
