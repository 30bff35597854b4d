import type { DrumNow, DrumPicture, DrumRules } from '#core';
import { type Line, say } from '../say.ts';

/** Share of the volume that counts as full where the site has set none: as the room is worked out. */
export const USUAL_FULL = 0.75;

/** How the fill of a drum was worked out: its figures, the formula in words, what was assumed, the source. */
export function whyDrum(drum: DrumPicture, now: DrumNow, rules: DrumRules): Line[] {
  const shrink = now.why.figures.find(({ name }) => name === 'shrinkage');
  const lines: Line[] = [
    say('why-drum', { kg: { kg: now.kg, digits: 0 }, loads: { count: now.loads.length } }),
  ];
  if (drum.litres !== null) {
    lines.push(
      say('why-drum-full', {
        litres: { litres: drum.litres },
        pct: { pct: (rules.fullFraction ?? USUAL_FULL) * 100 },
        from: { term: rules.fullFraction == null ? 'common' : 'site', of: 'figure' },
      }),
    );
  }
  lines.push(
    say('why-drum-shrink', {
      shrink: { number: Number(shrink?.value ?? 0), digits: 1 },
      low: { number: shrink?.low ?? 0, digits: 1 },
      high: { number: shrink?.high ?? 0, digits: 0 },
    }),
    say('why-formula', { formula: { term: now.why.formula, of: 'formula' } }),
    ...now.why.assumed.map((code) => say(`drum-taken-${code}`)),
    ...now.why.sources.map((source) => say('why-source', { text: { cite: source } })),
  );
  return lines;
}
