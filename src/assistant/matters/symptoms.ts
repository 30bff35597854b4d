import {
  type Batch,
  batchAt,
  type Diagnosis,
  diagnose,
  hottestOf,
  knowledgeOf,
  lowestOf,
  mixOf,
  type PileReading,
  type Symptom,
} from '#core';
import type { Draft } from '../draft.ts';
import { type Line, say } from '../say.ts';
import { sourceLine } from '../why/pile.ts';
import { bandsOf, type Judged } from './judging.ts';
import { loadsOf } from './mix.ts';

/** What the readings alone say is wrong, in a line or two; nothing where nothing does. */
export function symptomLines(
  draft: Draft,
  place: string,
  judged: Judged,
  readings: readonly PileReading[],
): Line[] {
  const symptom = symptomOf(judged, readings);
  return symptom ? diagnosisLines(draft, symptom, place, null) : [];
}

/** What ails a pile that was asked about: what its last readings say, else that it is cold where it is. */
export function ailmentLines(draft: Draft, place: string, judged: Judged): Line[] {
  const { readings } = judged.batch;
  const last = readings.filter(({ localDate }) => localDate === readings.at(-1)?.localDate);
  const shown = last.length > 0 ? symptomOf(judged, last) : null;
  const isCold = last.length > 0 && Math.max(...last.map(hottestOf)) < 45;
  // What has been hot and cools is on its way, and not cold.
  const symptom = shown ?? (isCold ? 'cold' : last.length === 0 ? feltIn(judged.batch) : null);
  return symptom && !isCuring(judged) ? diagnosisLines(draft, symptom, place, null) : [];
}

/** With no reading at all, what the handful says. */
function feltIn({ moisture }: Batch): Symptom | null {
  const feel = moisture.at(-1)?.feel;
  if (feel === 'wet' || feel === 'dripping') return 'wet';
  return feel === 'dry' ? 'dry' : null;
}

const isCuring = ({ ready }: Judged): boolean =>
  ready.stage.stage === 'curing' || ready.stage.stage === 'near-ambient';

/** Readings this far under the last of the days before are a fast drop. @source common practice, no source */
const DROP_C = 15;
const DROP_DAYS_MS = 3.5 * 86_400_000;
/** Points of one pile so far apart, with the coldest under 45 °C. @source common practice, no source */
const UNEVEN_C = 20;

function symptomOf({ batch, ready }: Judged, readings: readonly PileReading[]): Symptom | null {
  const low = Math.min(...readings.map(lowestOf));
  const high = Math.max(...readings.map(hottestOf));
  if (low <= 0) return 'frozen';
  const before = batch.readings.filter((each) => each.at < readings[0]!.at).at(-1);
  if (before && isReheating(batch, before, high)) return 'reheating';
  if (before && high < 45 && hottestOf(before) - high >= DROP_C) {
    const apart = Date.parse(readings[0]!.at) - Date.parse(before.at);
    const turned = batch.turns.some((turn) => turn.at >= before.at && turn.at <= readings[0]!.at);
    if (apart <= DROP_DAYS_MS && !turned) return 'fast-drop';
  }
  if (high >= 45 && high <= 65 && low < 45 && high - low >= UNEVEN_C) return 'cold-edge';
  const started = batch.joinings.findLast(({ what }) => what === 'fresh') ?? batch.startedAt;
  const old = started !== null && Date.parse(readings[0]!.at) - Date.parse(started.at) >= 21 * 86_400_000;
  return high < 45 && old && ready.stage.reasons.includes('never-hot') ? 'cold' : null;
}

const TURN_SHADOW_MS = 24 * 3_600_000;

/** Under 45 °C after a turn, and hot again with no turn in between. */
const isReheating = (batch: Batch, before: PileReading, high: number): boolean =>
  high >= 45 &&
  hottestOf(before) < 45 &&
  batch.readings.some((each) => each.at < before.at && hottestOf(each) >= 45) &&
  batch.turns.some((turn) => turn.at < before.at) &&
  // A low in the shadow of a turn was no sign of cooling, and a turn in between explains the heat.
  !batch.turns.some((turn) => Date.parse(turn.at) >= Date.parse(before.at) - TURN_SHADOW_MS);

/** The question that separates the causes, with its answers as buttons; or the likely cause and what to do first. */
export function diagnosisLines(
  draft: Draft,
  symptom: Symptom,
  place: string | null,
  answer: string | null,
): Line[] {
  const found = diagnosed(draft, symptom, place, answer);
  if (found.question) {
    const { code, answers } = found.question;
    for (const each of answers) {
      draft.choices.push({
        say: say(`answer-${code}-${each}`),
        act: { do: 'ask', request: { request: 'diagnose', what: symptom, place, to: each } },
      });
    }
    return [say(`ask-${code}`)];
  }
  const [cause] = found.causes;
  if (!cause) return [];
  draft.why.push(
    [
      say('why-symptom'),
      ...String(found.why.args.facts)
        .split(' ')
        .filter(Boolean)
        .map((fact) => say(`fact-${fact}`)),
    ],
    sourceLine(cause.source),
  );
  const actions = cause.actions.slice(0, ACTIONS).map((each) => say(`cure-${each}`));
  return [
    [
      say(cause.likely ? 'cause-likely' : 'cause-perhaps', { cause: { term: cause.cause, of: 'cause' } }),
      ...actions,
    ],
  ];
}

const ACTIONS = 3;

function diagnosed(draft: Draft, symptom: Symptom, place: string | null, answer: string | null): Diagnosis {
  const picture = draft.picture();
  const bands = bandsOf(picture, draft.today);
  const now = { at: draft.now, localDate: draft.today };
  const batch = place === null ? null : batchAt(picture, place);
  const [drum] = Object.values(picture.drums);
  const atDrum = place === 'drum' || place === 'exit' || place === drum?.name;
  const loads = loadsOf(picture, draft.today);
  const smoke = picture.problems.some(
    (each) => each.topic === 'smoke' && (!each.place || each.place === place),
  );
  const cn = atDrum && loads.length > 0 ? (mixOf(loads).cn?.typical ?? null) : null;
  const beside = {
    cn,
    fan: atDrum ? (drum?.fan ?? null) : null,
    litres: batch?.level?.litres ?? null,
    smoke,
  };
  const known = batch
    ? knowledgeOf(batch, picture.ambient, now, beside)
    : {
        ...NOTHING_KNOWN,
        ...beside,
        moistureFeel: atDrum ? (drum?.moisture?.feel ?? null) : null,
        moisturePct: atDrum ? (drum?.moisture?.percent ?? null) : null,
      };
  return diagnose(symptom, known, answer, bands);
}

const NOTHING_KNOWN = {
  moistureFeel: null,
  moisturePct: null,
  ageDays: null,
  hoursSinceTurn: null,
  hottestC: null,
  lowestC: null,
  hottestEverC: null,
  ambientC: null,
};
