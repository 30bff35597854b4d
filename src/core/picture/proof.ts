import { RULE_SETS, type RuleSetName } from '#records';
import { addDays } from '../calendar.ts';
import { lowestOf } from '../heat/danger-bands.ts';
import { drumProof } from '../heat/drum-proof.ts';
import { LAB_STANDARDS, type LabStandardName } from '../heat/labs.ts';
import {
  DAY_COUNTS,
  type DayCount,
  type DepthRange,
  looksAtVectors,
  RULE_SET_DATA,
} from '../heat/rule-sets.ts';
import { type Sanitising, sanitising, vectorAttraction } from '../heat/sanitising.ts';
import type { HeatHistory, Now, SanitisingOptions } from '../heat/stretches.ts';
import { own } from './change.ts';
import { settingAt } from './setting-at.ts';
import type { Batch, DrumPicture, Joining, Moment, Picture } from './types.ts';

/** The rule set that the site goes by on a day; null where it has chosen none. */
export function ruleSetOf(
  picture: Pick<Picture, 'base' | 'settings'>,
  localDate: string,
): RuleSetName | null {
  const name = settingAt(picture, 'rule-set', localDate);
  return RULE_SETS.find((each) => each === name) ?? null;
}

/** The site's own ways of applying its rule set, and a probe that is in doubt. */
export function sanitisingOptionsOf(picture: Picture, localDate: string): SanitisingOptions {
  const counting = settingAt(picture, 'day-count', localDate);
  const aeration = settingAt(picture, 'aeration', localDate);
  const { doubt = null, pastDoubts = [] } = own(picture.chores, 'check-thermometer') ?? {};
  return {
    counting: DAY_COUNTS.find((each: DayCount) => each === counting) ?? null,
    depthCm: depthOf(settingAt(picture, 'depth', localDate)),
    aeration: aeration === 'forced' || aeration === 'breathing' ? aeration : null,
    doubts: doubt ? [...pastDoubts, doubt] : pastDoubts,
  };
}

/** Whether the last reading, of today or the day before, keeps a run under a rule set going. */
export function wasHotLately(batch: Batch, rule: RuleSetName, localDate: string): boolean {
  const last = batch.readings.at(-1);
  if (!last || last.localDate < addDays(localDate, -1)) return false;
  return lowestOf(last) >= RULE_SET_DATA[rule].levelCelsius;
}

/** The laboratory standard that the site asks for; null where it asks for none. */
export function labStandardOf(picture: Picture, localDate: string): LabStandardName | null {
  const name = settingAt(picture, 'lab-standard', localDate);
  return LAB_STANDARDS.find((each) => each === name) ?? null;
}

function depthOf(value: unknown): DepthRange | null {
  if (typeof value !== 'object' || value === null) return null;
  const { fromCm, toCm } = value as Partial<DepthRange>;
  return typeof fromCm === 'number' && typeof toCm === 'number' && fromCm >= 0 && toCm >= fromCm
    ? { fromCm, toCm }
    : null;
}

/**
 * Whether a batch was hot for long enough by a moment under the site's rule set, and between which readings; null
 * where the site has none.
 * @source the citations of the rule set
 * @example proofThen(picture, batch, now).provenThen // true after three daily readings of 55 °C under 'vessel-3d'
 */
export function proofThen(
  picture: Picture,
  batch: Batch,
  now: Moment,
): Pick<Joining, 'provenThen' | 'provenBy'> {
  const rule = ruleSetOf(picture, now.localDate);
  if (!rule) return { provenThen: null };
  const { verdict, provenBy } = sanitising(batch, rule, sanitisingOptionsOf(picture, now.localDate), now);
  return verdict === 'met' ? { provenThen: true, provenBy } : { provenThen: false };
}

/**
 * Whether what leaves a drum now was hot for long enough, by the way that the site's regulator accepts; null where the
 * site has no rule set.
 * @source see drumProof
 * @example drumProofOf(emptyPicture(SITE), drum, nowAt(2)) // null
 */
export function drumProofOf(picture: Picture, drum: DrumPicture, now: Now): Sanitising | null {
  const rule = ruleSetOf(picture, now.localDate);
  if (!rule) return null;
  const [way, least, mixed] = ['drum-way', 'drum-least-hours', 'drum-no-short-circuit'].map((name) =>
    settingAt(picture, name, now.localDate),
  );
  return drumProof(
    {
      readings: drum.readings,
      exit: picture.exit,
      way: way === 'in-vessel' || way === 'closed-pile' ? way : null,
      leastResidenceHours: typeof least === 'number' ? least : null,
      noShortCircuit: typeof mixed === 'boolean' ? mixed : null,
    },
    rule,
    sanitisingOptionsOf(picture, now.localDate),
    now,
  );
}

/** How a site looks at vector attraction: as a thing to know, or as one that what leaves must have met. */
export type Vectors = { asked: boolean; proof: Sanitising };

/**
 * Vector attraction of a batch: asked for where the site has set it so, told beside a rule of 40 CFR 503 where it has
 * not, else null.
 * @source 40 CFR 503.33(b)(5), 1993 (from memory)
 * @example vectorsOf(emptyPicture(SITE), batchOf(), nowAt(2)) // null
 */
export function vectorsOf(picture: Picture, batch: HeatHistory, now: Now): Vectors | null {
  const setting = settingAt(picture, 'vector-attraction', now.localDate);
  const rule = ruleSetOf(picture, now.localDate);
  const told = rule !== null && looksAtVectors(rule);
  if (setting === 'off' || (setting !== 'on' && !told)) return null;
  const proof = vectorAttraction(batch, sanitisingOptionsOf(picture, now.localDate), now);
  return { asked: setting === 'on', proof };
}
