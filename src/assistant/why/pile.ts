import type { HeatAssumption, HeatWhy, Sanitising } from '#core';
import type { Draft } from '../draft.ts';
import { airStandIn } from '../matters/heat.ts';
import type { Judged } from '../matters/judging.ts';
import { argOf, reasonSay, vectorsSay } from '../matters/proof-lines.ts';
import { type Arg, type Line, say } from '../say.ts';

/** How the answer about a pile came about: figures, rule with its citation, what was assumed. */
export function whyPile(draft: Draft, place: string, { proof, vectors, ready, forecast }: Judged): Line[] {
  const lines: Line[] = [];
  if (proof) lines.push(...whyProof(place, proof));
  if (vectors) lines.push(vectorsSay(vectors), sourceLine(vectors.proof.why.source));
  const { stage } = ready;
  if (stage.hottestC !== null) {
    lines.push(
      say('why-stage', {
        place: { place },
        stage: { term: stage.stage, of: 'stage' },
        hottest: { celsius: stage.hottestC },
        air: stage.ambientC === null ? { text: '—' } : { celsius: stage.ambientC },
        standIn: airStandIn(draft.picture(), draft.today),
      }),
      sourceLine(stage.why.source),
    );
  }
  if (forecast.known) {
    lines.push(say('why-forecast', { readings: { count: forecast.readings } }));
  } else if (forecast.reason.code !== 'near-already') {
    lines.push(say(`no-forecast-${forecast.reason.code}`));
  }
  lines.push(...assumedLines([proof?.why, forecast.known ? forecast.why : null, stage.why]));
  return lines;
}

function whyProof(place: string, proof: Sanitising): Line[] {
  const { args, source } = proof.why;
  const lines: Line[] = [
    say('why-rule', {
      place: { place },
      rule: { text: proof.rule },
      level: { celsius: Number(args.levelCelsius) },
      needed: { number: proof.needed, digits: 0 },
      unit: { term: proof.unit, of: 'unit' },
      from: { cm: Number(args.fromCm) },
      to: { cm: Number(args.toCm) },
    }),
    say('why-counted', {
      counted: { number: Math.floor(proof.counted), digits: 0 },
      needed: { number: proof.needed, digits: 0 },
      unit: { term: proof.unit, of: 'unit' },
      since: proof.since ? { date: proof.since.localDate } : { text: '' },
      has: { text: proof.since ? 'yes' : 'no' },
    }),
  ];
  for (const row of proof.rows.slice(-DAYS_SHOWN))
    lines.push(
      say('why-day', {
        date: { date: row.localDate },
        how: { text: row.counted ? 'counts' : HOW[row.why ?? 'no-reading'] },
        celsius: row.lowestC === null ? { text: '' } : { celsius: row.lowestC },
      }),
    );
  for (const reason of proof.reasons.slice(0, 4))
    lines.push(say('why-reason', { reason: { say: reasonSay(reason) } }));
  lines.push(sourceLine(source));
  return lines;
}

const HOW = {
  low: 'low',
  'above-ceiling': 'above-ceiling',
  'just-turned': 'shadow',
  'not-at-depth': 'not-at-depth',
  'in-doubt': 'in-doubt',
  'no-reading': 'none',
} as const;

/** The longest rule asks for fifteen days. */
const DAYS_SHOWN = 16;

export const sourceLine = (source: string): Line => say('why-source', { text: { cite: source } });

/** What was taken for granted, each once. */
export function assumedLines(whys: readonly (HeatWhy | null | undefined)[]): Line[] {
  const all = new Map<string, HeatAssumption>();
  for (const why of whys) for (const assumed of why?.assumed ?? []) all.set(assumed.code, assumed);
  return [...all.values()].slice(0, 5).map(({ code, args }) => {
    const given: Record<string, Arg> = {};
    for (const [name, value] of Object.entries(args)) given[name] = argOf(name, value);
    return say(`taken-${code}`, given);
  });
}
