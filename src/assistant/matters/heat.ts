import {
  ambientMean,
  type Batch,
  batchAt,
  hottestOf,
  lowestOf,
  type Picture,
  type PileReading,
  type Sanitising,
} from '#core';
import type { BookRecordOf, Entry } from '#records';
import type { Draft } from '../draft.ts';
import { type Line, say } from '../say.ts';
import { whyPile } from '../why/pile.ts';
import { bandOf, bandSay, judge } from './judging.ts';
import { proofLine, vectorsSay } from './proof-lines.ts';
import { ruleSetFound } from './rule-set.ts';
import { symptomLines } from './symptoms.ts';

/** The air as a mean of the last days; null where nobody read it. */
export const airNow = (picture: Picture, today: string): number | null =>
  ambientMean(picture.ambient, today)?.celsius ?? null;

/** `yes` where a forecast stands in for the air on one of those days or more. */
export const airStandIn = (picture: Picture, today: string): { text: string } => ({
  text: (ambientMean(picture.ambient, today)?.standInDays ?? 0) > 0 ? 'yes' : 'no',
});

/** What the readings just logged mean. `fire` opens the reply; `wrong` asks, or names the likely cause. */
export function heatMatters(
  draft: Draft,
  written: readonly Entry[],
): { fire: Line[]; urgent: Line[]; wrong: Line[]; lines: Line[]; told: Line[] } {
  const readings = written.filter((entry) => entry.record.kind === 'temperature');
  const places = [...new Set(readings.map(placeOf))].filter((place) => place !== 'ambient');
  const { fire, urgent, burning } = dangerLines(draft, readings);
  const wrong: Line[] = [];
  const lines: Line[] = [];
  if (places.length <= 3) {
    for (const place of places) {
      const batch = batchAt(draft.picture(), place);
      if (!batch || burning.has(place)) continue;
      const numbers = new Set(
        readings.filter((entry) => placeOf(entry) === place).map(({ number }) => number),
      );
      const said = pileLines(draft, place, batch, numbers, places.length === 1);
      wrong.push(...said.wrong);
      lines.push(...said.lines);
    }
  }
  // Nothing stands beside a fire.
  const told = places.some(isHeap) && burning.size === 0 ? ruleSetFound(draft) : [];
  return { fire, urgent, wrong, lines, told };
}

const isHeap = (place: string): boolean => /^(?:pile|bay) /.test(place);
const placeOf = (entry: Entry): string => (entry.record as BookRecordOf<'temperature'>).place;

/** Hottest first. From the fire watch on, the coordinators are told as well. */
function dangerLines(
  draft: Draft,
  readings: readonly Entry[],
): { fire: Line[]; urgent: Line[]; burning: ReadonlySet<string> } {
  const hottest = new Map<string, ReturnType<typeof bandOf>>();
  for (const entry of readings) {
    const { celsius, upTo } = entry.record as BookRecordOf<'temperature'>;
    const place = placeOf(entry);
    if (place === 'ambient') continue;
    const found = bandOf(draft.picture(), draft.today, { celsius, upTo: upTo ?? null });
    const known = hottest.get(place);
    if (!known || found.celsius > known.celsius) hottest.set(place, found);
  }
  const fire: Line[] = [];
  const urgent: Line[] = [];
  // Of what may burn nothing else is said.
  const burning = new Set<string>();
  for (const [place, { band, celsius, doNotOpen, actions }] of [...hottest].sort(
    ([, a], [, b]) => b.celsius - a.celsius,
  )) {
    if (band === 'usual') continue;
    const line = bandSay(draft, place, band, celsius);
    (doNotOpen ? fire : urgent).push(line);
    if (doNotOpen) burning.add(place);
    if (actions.includes('tell-coordinator'))
      draft.posts.push({ about: 'alarm', private: true, lines: [line] });
  }
  return { fire, urgent, burning };
}

/** A low within a day after a turn is no sign of anything. @source common practice */
const TURN_SHADOW_MS = 24 * 3_600_000;

function turnedBefore(batch: Batch, reading: PileReading): boolean {
  return batch.turns.some((turn) => {
    const since = Date.parse(reading.at) - Date.parse(turn.at);
    return since >= 0 && since <= TURN_SHADOW_MS && (since > 0 || turn.entry < reading.entry);
  });
}

function pileLines(
  draft: Draft,
  place: string,
  batch: Batch,
  numbers: ReadonlySet<number>,
  alone: boolean,
): { wrong: Line[]; lines: Line[] } {
  const readings = batch.readings.filter((reading) => numbers.has(reading.entry));
  if (readings.length === 0) return { wrong: [], lines: [] };
  const judged = judge(draft, batch);
  const { proof, vectors } = judged;
  draft.why.push(...whyPile(draft, place, judged));
  const lowest = readings.reduce((a, b) => (lowestOf(b) < lowestOf(a) ? b : a));
  const shadowed = turnedBefore(batch, lowest) && lowestOf(lowest) < levelOf(proof);
  const lines: Line[] = [];
  const rise = riseLine(draft, place, Math.max(...readings.map(hottestOf)), shadowed);
  if (rise) lines.push(rise);
  lines.push(...notJudgedLines(place, proof, numbers));
  if (shadowed)
    lines.push(say('heat-just-turned', { place: { place }, celsius: { celsius: lowestOf(lowest) } }));
  else if (proof) lines.push(proofLine(draft, place, proof));
  if (vectors?.asked && vectors.proof.verdict !== 'met' && proof?.verdict === 'met')
    lines.push(vectorsSay(vectors));
  // One question a reply: of several piles each has its own turn.
  const wrong = shadowed || !alone ? [] : symptomLines(draft, place, judged, readings);
  return { wrong, lines };
}

const levelOf = (proof: Sanitising | null): number => Number(proof?.why.args.levelCelsius ?? 55);

function riseLine(draft: Draft, place: string, hottest: number, shadowed: boolean): Line | null {
  const air = airNow(draft.picture(), draft.today);
  if (air === null) return null;
  const rise = hottest - air;
  const near = rise <= NEAR && !shadowed;
  return say(near ? 'heat-near-ambient' : 'heat-rise', {
    place: { place },
    rise: { rise },
    ambient: { celsius: air },
    standIn: airStandIn(draft.picture(), draft.today),
  });
}

/** Rise over the air at which a pile counts as near ambient. @source AgriFutures, Curing, 2020: within about 5 °C */
const NEAR = 5;

/** Points nearer the surface than the rule asks for are shown, and not judged. */
function notJudgedLines(place: string, proof: Sanitising | null, numbers: ReadonlySet<number>): Line[] {
  const surface = proof?.notJudged.find(({ entry, why }) => numbers.has(entry) && why === 'nearer-surface');
  if (!proof || surface?.depthCm == null) return [];
  return [
    say('heat-not-judged', {
      place: { place },
      depth: { cm: surface.depthCm },
      from: { cm: Number(proof.why.args.fromCm) },
      to: { cm: Number(proof.why.args.toCm) },
    }),
  ];
}
