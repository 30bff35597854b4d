import {
  type Batch,
  dangerBand,
  hottestOf,
  lowestOf,
  type Picture,
  type Sanitising,
  sanitising,
  settingAt,
} from '#core';
import type { BookRecordOf, Entry, RuleSetName } from '#records';
import type { Draft } from '../draft.ts';
import { type Line, say } from '../say.ts';

/** Rise over the air at which a pile counts as near ambient. @source AgriFutures, Curing, 2020: within about 5 °C */
const NEAR = 5;

export function batchAt(picture: Picture, place: string): Batch | null {
  const id = picture.places[place];
  return id === undefined ? null : (picture.batches[id] ?? null);
}

/** The air's temperature: the mean of the last days' readings. */
export function ambientNow(picture: Picture, today: string): number | null {
  const recent = picture.ambient.filter(
    ({ localDate }) => Date.parse(today) - Date.parse(localDate) <= 3 * 86_400_000,
  );
  if (recent.length === 0) return null;
  return recent.reduce((sum, { celsius }) => sum + celsius, 0) / recent.length;
}

export function verdictOf(draft: Draft, batch: Batch): Sanitising | null {
  const ruleSet = settingAt(draft.picture(), 'rule-set', draft.today) as RuleSetName | undefined;
  if (!ruleSet) return null;
  const aeration = settingAt(draft.picture(), 'aeration', draft.today) as 'forced' | 'breathing' | undefined;
  return sanitising(
    batch,
    ruleSet,
    { aeration: aeration ?? null },
    { at: draft.now, localDate: draft.today },
  );
}

/** What the readings just logged mean: danger first, then rise and proof. */
export function heatMatters(draft: Draft, written: readonly Entry[]): { urgent: Line[]; lines: Line[] } {
  const urgent: Line[] = [];
  const lines: Line[] = [];
  const picture = draft.picture();
  const readings = written.filter((entry) => entry.record.kind === 'temperature');
  const places = [...new Set(readings.map((entry) => placeOf(entry)))];
  for (const place of places) {
    if (place === 'ambient') continue;
    const ofPlace = readings
      .filter((entry) => placeOf(entry) === place)
      .map((entry) => entry.record as BookRecordOf<'temperature'>);
    const hottest = Math.max(
      ...ofPlace.map((record) => hottestOf({ celsius: record.celsius, upTo: record.upTo ?? null })),
    );
    const band = dangerBand(hottest);
    if (band.band !== 'usual') {
      urgent.push(say(`band-${band.band}`, { place: { place }, celsius: { celsius: hottest } }));
    }
    const batch = batchAt(picture, place);
    if (!batch || places.length > 3) continue;
    lines.push(...pileLines(draft, place, batch, hottest, Math.min(...ofPlace.map(lowestOf))));
  }
  return { urgent, lines };
}

const placeOf = (entry: Entry): string => (entry.record as BookRecordOf<'temperature'>).place;

const TURN_SHADOW_MS = 24 * 3_600_000;

function pileLines(draft: Draft, place: string, batch: Batch, hottest: number, lowest: number): Line[] {
  const lines: Line[] = [];
  const turn = batch.turns.at(-1);
  const justTurned = turn !== undefined && Date.parse(draft.now) - Date.parse(turn.at) < TURN_SHADOW_MS;
  const verdict = verdictOf(draft, batch);
  if (verdict && verdict.verdict !== 'cannot-show' && !justTurned) lines.push(proofLine(place, verdict));
  else if (justTurned && lowest < 55) lines.push(say('heat-just-turned', { place: { place } }));
  const ambient = ambientNow(draft.picture(), draft.today);
  if (ambient !== null) {
    const rise = hottest - ambient;
    const near = rise <= NEAR && !justTurned;
    lines.unshift(
      say(near ? 'heat-near-ambient' : 'heat-rise', {
        place: { place },
        rise: { rise },
        ambient: { celsius: ambient },
      }),
    );
  }
  return lines;
}

export function proofLine(place: string, verdict: Sanitising): Line {
  const args = {
    place: { place },
    counted: { number: verdict.counted, digits: 0 },
    needed: { number: verdict.needed, digits: 0 },
    unit: { term: verdict.unit, of: 'unit' },
  };
  if (verdict.verdict === 'met') return say('proof-met', args);
  if (verdict.verdict === 'cannot-show') return say('proof-cannot-show', args);
  if (verdict.next && verdict.counted > 0) {
    return say('proof-not-yet', { ...args, date: { date: verdict.next.localDate } });
  }
  return say('proof-none', args);
}
