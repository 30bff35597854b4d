import {
  type Batch,
  batchAt,
  canLeave,
  DANGER_BAND_DATA,
  dangerBand,
  forecastNearAmbient,
  type HeatForecast,
  hottestOf,
  labStandardOf,
  type Picture,
  type PileReading,
  type Readiness,
  type Release,
  RULE_SET_DATA,
  readiness,
  ruleSetOf,
  type Sanitising,
  type SiteBands,
  sanitising,
  sanitisingOptionsOf,
  settingAt,
  type Vectors,
  vectorsOf,
} from '#core';
import type { Draft } from '../draft.ts';
import { type Say, say } from '../say.ts';

/** What the book says of a pile, judged by the site's own rules. */
export type Judged = {
  batch: Batch;
  /** Null where the site has chosen no rule set. */
  proof: Sanitising | null;
  vectors: Vectors | null;
  ready: Readiness;
  release: Release;
  forecast: HeatForecast;
};

type At = { now: string; today: string };

export function proofOf(picture: Picture, batch: Batch, { now, today }: At): Sanitising | null {
  const rule = ruleSetOf(picture, today);
  return rule
    ? sanitising(batch, rule, sanitisingOptionsOf(picture, today), { at: now, localDate: today })
    : null;
}

export function judge(draft: Draft, batch: Batch, picture: Picture = draft.picture()): Judged {
  const now = { at: draft.now, localDate: draft.today };
  const { ambient, problems } = picture;
  const labStandard = labStandardOf(picture, draft.today);
  const proof = proofOf(picture, batch, draft);
  const vectors = vectorsOf(picture, batch, now);
  const litres = batch.level?.litres ?? null;
  const ready = readiness({ batch, ambient, sanitising: proof, labStandard, litres }, now);
  return {
    batch,
    proof,
    vectors,
    ready,
    release: canLeave({
      batch,
      readiness: ready,
      sanitising: proof,
      vectors: vectors?.asked ? vectors.proof : null,
      problems,
      labStandard,
    }),
    forecast: forecastNearAmbient(batch, ambient, now),
  };
}

const BANDS = ['turn-soon', 'act-today', 'fire-watch', 'do-not-open', 'act-at-once'] as const;

/** The site's own limits of heat, where it has set any. */
export function bandsOf(picture: Picture, today: string): SiteBands {
  const bands: SiteBands = {};
  for (const name of BANDS) {
    const celsius = settingAt(picture, `band:${name}`, today);
    if (typeof celsius === 'number' && celsius >= 40 && celsius <= 100) bands[name] = celsius;
  }
  return bands;
}

export const bandOf = (picture: Picture, today: string, reading: Pick<PileReading, 'celsius' | 'upTo'>) => {
  const celsius = hottestOf(reading);
  // What no thermometer can have read is asked about elsewhere; here it is as hot as can be.
  return { celsius, ...dangerBand(Math.min(400, Math.max(-50, celsius)), bandsOf(picture, today)) };
};

/** While a rule that asks for such heat is not met, nobody is told to turn it away: up to the fire watch it is wanted. */
function asksForIt(draft: Draft, place: string, band: string): boolean {
  const rule = ruleSetOf(draft.picture(), draft.today);
  if (!rule || (band !== 'turn-soon' && band !== 'act-today')) return false;
  const bandFrom = DANGER_BAND_DATA.find(({ name }) => name === band)!.fromCelsius;
  const batch = batchAt(draft.picture(), place);
  return (
    batch !== null &&
    RULE_SET_DATA[rule].levelCelsius >= bandFrom &&
    proofOf(draft.picture(), batch, draft)?.verdict !== 'met'
  );
}

/** What a band says of a pile. */
export const bandSay = (draft: Draft, place: string, band: string, celsius: number): Say =>
  say(asksForIt(draft, place, band) ? 'band-asked-for' : `band-${band}`, {
    place: { place },
    celsius: { celsius },
  });
