import { daysBetween } from '../calendar.ts';
import type { Batch } from '../picture/types.ts';
import { type AmbientReading, ambientMean } from './ambient.ts';
import { lastFresh } from './curing.ts';
import { dangerBand, hottestOf, lowestOf, type SiteBands } from './danger-bands.ts';
import { byMoment, compareInstants, hoursBetween } from './moments.ts';
import { TURN_SHADOW_HOURS } from './runs.ts';
import type { Now } from './stretches.ts';
import {
  type Cause,
  type CauseRow,
  type CureAction,
  type HeatFact,
  NEVER_WHEN,
  SYMPTOM_DATA,
  type Symptom,
} from './symptom-data.ts';
import type { HeatWhy } from './why.ts';

/** What the book knows of a pile when somebody asks what is wrong with it. Null: not known. */
export type PileKnowledge = {
  moistureFeel: string | null;
  moisturePct: number | null;
  /** Carbon to nitrogen of what went in. */
  cn: number | null;
  ageDays: number | null;
  hoursSinceTurn: number | null;
  fan: string | null;
  hottestC: number | null;
  lowestC: number | null;
  hottestEverC: number | null;
  ambientC: number | null;
  litres: number | null;
  smoke: boolean;
};

export type FoundCause = {
  cause: Cause;
  likely: boolean;
  actions: CureAction[];
  /** The facts of the book that point to it. */
  because: HeatFact[];
  source: string;
};

export type Diagnosis = {
  symptom: Symptom;
  /** Asked first where the book does not settle it: its code, and the codes of its answers. */
  question: { code: string; answers: string[] } | null;
  causes: FoundCause[];
  why: HeatWhy;
};

/**
 * The facts that separate causes. Moisture 40 to 65 %, C:N 20 to 40, young under 7 days, old from 21 days, hot
 * over 65 °C, small under 1 m³.
 * @source LSU AgCenter 3838-D after NRAES-54 (ranges, seen); 21 days: "cold after three weeks", common practice;
 * 1 m³: common practice
 * @example factsOf({ ...knowledgeOf(batchOf(), [], nowAt(0)), moisturePct: 65.1 }) // ['wet', 'never-hot']
 */
export function factsOf(known: PileKnowledge, bands: SiteBands = {}): HeatFact[] {
  const { moisturePct: pct, moistureFeel: feel, cn, hottestC, hottestEverC, ambientC } = known;
  const wet = pct !== null ? pct > 65 : feel === 'wet' || feel === 'dripping';
  const dry = pct !== null ? pct < 40 : feel === 'dry';
  const danger = hottestC === null ? null : dangerBand(hottestC, bands);
  const hot = hottestC !== null && hottestC > 65;
  const everHot = (hottestEverC ?? hottestC ?? Number.NEGATIVE_INFINITY) >= 45;
  const holds: Partial<Record<HeatFact, boolean>> = {
    wet,
    dry,
    'moisture-right': !wet && !dry && (pct !== null || feel === 'right'),
    'moisture-unknown': pct === null && feel === null,
    'just-turned': known.hoursSinceTurn !== null && known.hoursSinceTurn <= TURN_SHADOW_HOURS,
    frozen: known.lowestC !== null && known.lowestC <= 0,
    'deep-cold': ambientC !== null && ambientC < 0,
    'been-hot': everHot,
    'never-hot': !everHot,
    young: known.ageDays !== null && known.ageDays < 7,
    old: known.ageDays !== null && known.ageDays >= 21,
    'rich-mix': cn !== null && cn < 20,
    'lean-mix': cn !== null && cn > 40,
    'fan-off': known.fan === 'off',
    small: known.litres !== null && known.litres < 1000,
    hot,
    'fire-hot': danger?.doNotOpen ?? false,
    smoke: known.smoke,
  };
  return (Object.keys(holds) as HeatFact[]).filter((fact) => holds[fact]);
}

const FIRE_ROW: CauseRow = {
  cause: 'fire-risk',
  when: [],
  not: [],
  actions: ['do-not-open-or-turn', 'people-back', 'fan-off-if-safe', 'call-fire-service', 'do-not-half-wet'],
  source: 'USDA NRCS Job Sheet 317, 2002; Naylor, BioCycle, December 2004',
};
const TURNED_ROW: CauseRow = {
  cause: 'just-turned',
  when: ['just-turned'],
  not: [],
  actions: ['wait', 'read-again-tomorrow'],
  source: 'common practice, no source',
};

/** Rows that stand alone: where one of these facts holds, no other cause is looked for. */
function overriding(symptom: Symptom, facts: readonly HeatFact[]): readonly CauseRow[] | null {
  if (facts.includes('fire-hot') || facts.includes('smoke')) return [FIRE_ROW];
  if (symptom === 'cold' || symptom === 'fast-drop' || symptom === 'cold-edge') {
    if (facts.includes('frozen')) return SYMPTOM_DATA.frozen.causes;
    if (facts.includes('just-turned')) return [TURNED_ROW];
  }
  return null;
}

const SQUEEZED: Record<string, string> = { drips: 'wet', crumbles: 'dry', right: 'right' };

/** An answer about squeezing is a moisture check where the book has none; it does not overrule one. */
function toldBy(answer: string | null, known: PileKnowledge): PileKnowledge {
  const feel = answer === null ? undefined : SQUEEZED[answer];
  const unknown = known.moistureFeel === null && known.moisturePct === null;
  return feel !== undefined && unknown ? { ...known, moistureFeel: feel } : known;
}

const allowed = (action: CureAction, facts: readonly HeatFact[]): boolean =>
  !NEVER_WHEN[action]?.some((fact) => facts.includes(fact));

/**
 * Causes of a symptom in order, likely ones first, with what to do, from what the book knows; and the question
 * that separates them while the book does not. Fire is looked at first; what is frozen or just turned is never
 * called too cold; no action stands against a fact (`NEVER_WHEN`). `answer` is the code of an answer to the
 * question; one that the question does not have is as none.
 * @source SYMPTOM_DATA
 * @example diagnose('cold', { ...knowledgeOf(batchOf(), [], nowAt(0)), moistureFeel: 'wet' }).causes[0].cause // 'too-wet'
 */
export function diagnose(
  symptom: Symptom,
  known: PileKnowledge,
  answer: string | null = null,
  bands: SiteBands = {},
): Diagnosis {
  const facts = factsOf(toldBy(answer, known), bands);
  const { question, causes } = SYMPTOM_DATA[symptom];
  const alone = overriding(symptom, facts);
  const pointed = answer === null ? undefined : question?.answers[answer];
  const open = (alone ?? causes).filter(({ not }) => !not.some((fact) => facts.includes(fact)));
  const answered = pointed ? open.filter(({ cause }) => pointed.includes(cause)) : open;
  // An answer that fits none of what the book leaves open must not silence the book.
  const rows = answered.length > 0 ? answered : open;
  const found = rows.map(({ cause, when, actions, source }): FoundCause => {
    const because = when.filter((fact) => facts.includes(fact));
    const likely = alone !== null || (when.length > 0 && because.length === when.length) || rows.length === 1;
    return { cause, likely, actions: actions.filter((action) => allowed(action, facts)), because, source };
  });
  found.sort((a, b) => Number(b.likely) - Number(a.likely));
  const settled = alone !== null || pointed !== undefined || found.some(({ likely }) => likely);
  return {
    symptom,
    question:
      settled || question === null ? null : { code: question.code, answers: Object.keys(question.answers) },
    causes: found,
    why: {
      key: `symptom:${symptom}`,
      args: { facts: facts.join(' '), answer },
      source: [...new Set(found.map(({ source }) => source))].join('; '),
      assumed: [],
    },
  };
}

/** A moisture check older than this is not used. Common practice. */
const MOISTURE_DAYS = 14;

/**
 * What the book knows of a batch, for `diagnose`. Temperatures are those of the last day with a reading; what the
 * batch does not hold (C:N of the mix, fan, litres, smoke) is handed in.
 * @source none needed: last readings of the book
 * @example knowledgeOf(batchOf({ readings: daily([60, 41]) }), [], nowAt(2), { cn: 28 }) // { cn: 28, hottestC: 41, hottestEverC: 60 }
 */
export function knowledgeOf(
  batch: Batch,
  ambient: readonly AmbientReading[],
  now: Now,
  beside: Partial<Pick<PileKnowledge, 'cn' | 'fan' | 'litres' | 'smoke'>> = {},
): PileKnowledge {
  const past = <T extends { at: string; entry: number; localDate: string }>(moments: readonly T[]) =>
    moments.filter((m) => compareInstants(m.at, now.at) <= 0).sort(byMoment);
  const readings = past(batch.readings);
  const lastDay = readings.filter((reading) => reading.localDate === readings.at(-1)?.localDate);
  const wetness = past(batch.moisture).at(-1);
  const fresh = wetness && daysBetween(wetness.localDate, now.localDate) <= MOISTURE_DAYS ? wetness : null;
  const turn = past(batch.turns).at(-1);
  const start = lastFresh(batch, now);
  const hottest = (of: typeof readings) => (of.length > 0 ? Math.max(...of.map(hottestOf)) : null);
  return {
    moistureFeel: fresh?.feel ?? null,
    moisturePct: fresh?.percent ?? null,
    cn: beside.cn ?? null,
    ageDays: start ? daysBetween(start.localDate, now.localDate) : null,
    hoursSinceTurn: turn ? hoursBetween(turn.at, now.at) : null,
    fan: beside.fan ?? null,
    hottestC: hottest(lastDay),
    lowestC: lastDay.length > 0 ? Math.min(...lastDay.map(lowestOf)) : null,
    hottestEverC: hottest(readings),
    ambientC: ambientMean(ambient, now.localDate)?.celsius ?? null,
    litres: beside.litres ?? null,
    smoke: beside.smoke ?? false,
  };
}
