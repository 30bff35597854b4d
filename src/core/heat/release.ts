import type { Batch, OpenProblem } from '../picture/types.ts';
import { type Analyte, type LabStandardName, labsOf } from './labs.ts';
import type { Readiness, ReadinessCriterion } from './readiness.ts';
import type { Sanitising } from './sanitising.ts';
import type { HeatWhy } from './why.ts';

/** What stands between a batch and the gate. */
export type ReleaseGap =
  | { code: 'hold'; entry: number; localDate: string; why: string }
  | { code: 'no-rule-set' }
  | { code: 'not-sanitised'; verdict: Sanitising['verdict']; rule: string; counted: number; needed: number }
  | { code: 'vectors'; counted: number; needed: number }
  | {
      code: 'lab-failed';
      analyte: Analyte;
      value: number | null;
      max: number;
      unit: string;
      standard: string;
    }
  | { code: 'lab-unclear'; analyte: Analyte; reason: string | null; standard: string }
  | { code: 'lab-missing'; analytes: Analyte[]; standard: string }
  | { code: 'lab-without-sample'; entry: number; analyte: string }
  | { code: 'problem'; topic: OpenProblem['topic']; entry: number; localDate: string }
  | { code: 'not-ready'; verdict: Readiness['verdict']; criteria: ReadinessCriterion[] };

export type Release = {
  /** Nothing is missing on this book. The site's own procedures and the regulator decide. */
  may: boolean;
  /** Only a coordinator can let it go. */
  held: boolean;
  missing: ReleaseGap[];
  why: HeatWhy;
};

export type ReleaseInput = {
  batch: Batch;
  readiness: Readiness;
  sanitising: Sanitising | null;
  /** Vector attraction, where the site asks for it. */
  vectors?: Sanitising | null;
  problems?: readonly OpenProblem[];
  labStandard?: LabStandardName | null;
};

function labGaps(batch: Batch, standard: LabStandardName): ReleaseGap[] {
  const found = labsOf(batch, standard);
  return [
    ...found.failed.map(({ analyte, value, limit }): ReleaseGap => {
      const { max, unit } = limit!;
      return { code: 'lab-failed', analyte: analyte!, value, max, unit, standard };
    }),
    ...found.unclear.map(
      ({ analyte, reason }): ReleaseGap => ({ code: 'lab-unclear', analyte: analyte!, reason, standard }),
    ),
    ...(found.missing.length > 0
      ? [{ code: 'lab-missing' as const, analytes: found.missing, standard }]
      : []),
    ...found.withoutSample.map((lab): ReleaseGap => ({ code: 'lab-without-sample', ...lab })),
  ];
}

/**
 * Whether a batch can leave the site, and what is missing: a hold, proof of heat, laboratory results where the
 * site asks for them, open problems at its place, readiness. An empty list is no permission by a regulator.
 * @source the rule set and the standard of the site; hold: common practice
 * @example canLeave({ batch: batchOf({ hold: { ...momentAt(1, 7), why: 'salmonella' } }), readiness: readiness({ batch: batchOf() }, nowAt(2)), sanitising: null }) // { may: false, held: true }
 */
export function canLeave(input: ReleaseInput): Release {
  const { batch, readiness, sanitising, vectors = null, problems = [], labStandard = null } = input;
  const missing: ReleaseGap[] = [];
  if (batch.hold) {
    const { entry, localDate, why } = batch.hold;
    missing.push({ code: 'hold', entry, localDate, why });
  }
  if (sanitising === null) missing.push({ code: 'no-rule-set' });
  else if (sanitising.verdict !== 'met') {
    const { verdict, rule, counted, needed } = sanitising;
    missing.push({ code: 'not-sanitised', verdict, rule, counted, needed });
  }
  if (vectors !== null && vectors.verdict !== 'met') {
    missing.push({ code: 'vectors', counted: vectors.counted, needed: vectors.needed });
  }
  if (labStandard !== null) missing.push(...labGaps(batch, labStandard));
  for (const { place, topic, entry, localDate } of problems) {
    if (place === batch.name) missing.push({ code: 'problem', topic, entry, localDate });
  }
  const own: ReadinessCriterion[] = readiness.criteria
    .filter(
      ({ key, state }) =>
        key !== 'sanitised' && key !== 'labs' && (state === 'not-yet' || state === 'unknown'),
    )
    .map(({ key }) => key);
  if (own.length > 0) missing.push({ code: 'not-ready', verdict: readiness.verdict, criteria: own });
  return {
    may: missing.length === 0,
    held: batch.hold !== null,
    missing,
    why: {
      key: 'release',
      args: {
        missing: missing.length,
        held: batch.hold !== null,
        standard: labStandard,
        rule: sanitising?.rule ?? null,
      },
      source: 'the rule set and laboratory standard chosen by the site; hold: common practice',
      assumed: [],
    },
  };
}

export type Trace = {
  name: string;
  /** Who received from it, in order. */
  received: {
    to: string | null;
    entry: number;
    localDate: string;
    kg: number | null;
    litres: number | null;
  }[];
  /** What went in, by source, with the first and last day. */
  intake: { source: string; from: string; to: string; kg: number }[];
  kin: string[];
};

/**
 * Forward and back from one batch: who received from it, which sources and intake days went in, which piles it
 * was joined with or split from.
 * @source one step forward, one step back: common practice of traceability
 * @example traceOf(batchOf({ kin: ['pile A'] })).kin // ['pile A']
 */
export const traceOf = (batch: Batch): Trace => ({
  name: batch.name,
  received: batch.removals
    .filter((removal) => removal.material !== 'residue' && removal.material !== 'leachate')
    .map(({ to, entry, localDate, kg, litres }) => ({ to, entry, localDate, kg, litres })),
  intake: Object.entries(batch.sources).map(([source, span]) => ({ source, ...span })),
  kin: [...batch.kin],
});
