import { type Batch, batchAt, drumNow, drumRulesOf, hottestOf } from '#core';
import { asksWhatAils } from '#parsers';
import type { Request } from '#records';
import type { Draft } from '../draft.ts';
import { holdWhy } from '../matters/gate.ts';
import { airNow, airStandIn } from '../matters/heat.ts';
import { bandOf, bandSay, type Judged, judge } from '../matters/judging.ts';
import { proofLine, vectorsSay } from '../matters/proof-lines.ts';
import { ailmentLines } from '../matters/symptoms.ts';
import { heatDrawing } from '../pictures-of/heat.ts';
import { type Line, type Say, say } from '../say.ts';
import { whyPile } from '../why/pile.ts';
import { drumHead, drumStatus } from './drum-status.ts';
import { shown } from './lines-back.ts';
import { problemLines } from './problem-lines.ts';
import { missingSays } from './readiness-says.ts';

/** How a pile does, or all of them in one line each. */
export function status(draft: Draft, request: Request): void {
  const picture = draft.picture();
  const place = request.place ?? null;
  if (place === 'drum' || place?.startsWith('drum ')) {
    draft.lines.push(...drumStatus(draft, place, request.about));
    return;
  }
  if (place !== null) {
    const batch = batchAt(picture, place);
    if (batch) {
      draft.lines.push(...pileStatus(draft, place, batch));
      if (asksWhatAils(request.said ?? ''))
        draft.lines.push(...ailmentLines(draft, place, judge(draft, batch)));
      draft.drawing ??= () => heatDrawing({ ...draft, picture: draft.picture() }, place, batch);
    } else draft.lines.push(notThere(draft, place));
    return;
  }
  const places = Object.keys(picture.places);
  if (places.length === 0) draft.lines.push(say('no-piles'));
  for (const each of places) {
    const batch = batchAt(picture, each);
    if (batch) draft.lines.push(pileLine(draft, each, batch));
  }
  const rules = drumRulesOf({ picture, localDate: draft.today });
  for (const drum of Object.values(picture.drums))
    draft.lines.push(drumHead(drum, drumNow(drum, draft.now, rules)));
}

export function notThere(draft: Draft, place: string): Say {
  const ceased = draft.picture().ceased[place];
  if (ceased?.successor)
    return say('pile-became', { place: { place }, successor: { place: ceased.successor } });
  return say('place-unknown', { place: { place } });
}

/** A pile in one line: its last reading, the rise over the air, its turns. */
function pileLine(draft: Draft, place: string, batch: Batch, stage: Say | null = null): Line {
  const parts: Say[] = [say('pile-state', { place: { place }, state: { term: batch.state, of: 'state' } })];
  if (stage) parts.push(stage);
  const last = batch.readings.at(-1);
  if (last) {
    parts.push(
      say('pile-last', {
        values: { celsiusList: last.celsius, upTo: last.upTo, points: last.points },
        date: { date: last.localDate },
      }),
    );
    const air = airNow(draft.picture(), draft.today);
    if (air !== null)
      parts.push(
        say('pile-rise', {
          rise: { rise: hottestOf(last) - air },
          standIn: airStandIn(draft.picture(), draft.today),
        }),
      );
  } else parts.push(say('pile-no-reading'));
  if (batch.turns.length > 0) parts.push(say('pile-turns', { count: { count: batch.turns.length } }));
  if (batch.hold) parts.push(say('pile-held', { why: holdWhy(batch.hold.why) }));
  return parts;
}

/** A pile in at most eight short lines: danger, stage and rise, proof, what is missing, when, what was done, what is open. */
function pileStatus(draft: Draft, place: string, batch: Batch): Line[] {
  const judged = judge(draft, batch);
  draft.why.push(...whyPile(draft, place, judged));
  const lines: Line[] = [...dangerLine(draft, place, batch), pileLine(draft, place, batch, stageSay(judged))];
  if (judged.proof) lines.push(proofLine(draft, place, judged.proof));
  lines.push(...vectorLines(judged));
  if (batch.state !== 'open') lines.push(...readyLines(place, judged), ...forecastLines(judged));
  lines.push(...careLine(batch));
  lines.push(...problemLines(draft, (each) => each === place));
  return lines;
}

/** Once the heat is shown its readings can go on for this, while they do; where it is asked for, from the first one. */
function vectorLines({ batch, proof, vectors }: Judged): Line[] {
  if (!vectors || batch.state === 'ready' || batch.readings.length === 0) return [];
  const { counted, verdict } = vectors.proof;
  const goesOn = proof?.verdict === 'met' && verdict !== 'met' && counted > 0;
  return vectors.asked || goesOn ? [vectorsSay(vectors)] : [];
}

function dangerLine(draft: Draft, place: string, batch: Batch): Line[] {
  const smokes = draft.picture().problems.filter(({ topic }) => topic === 'smoke');
  const smoke = smokes.find((each) => each.place === place) ?? smokes.find((each) => each.place === null);
  if (smoke) {
    const id = smoke.place === null ? 'band-smoke-somewhere' : 'band-smoke';
    return [say(id, { place: { place }, entry: { entry: smoke.entry } })];
  }
  const last = batch.readings.at(-1);
  if (!last) return [];
  const { band, celsius } = bandOf(draft.picture(), draft.today, last);
  return band === 'usual' ? [] : [bandSay(draft, place, band, celsius)];
}

function stageSay({ ready }: Judged): Say | null {
  const { stage, reasons } = ready.stage;
  const [reason] = reasons;
  if (stage !== 'cannot-tell') return say('pile-stage', { stage: { term: stage, of: 'stage' } });
  return reason && reason !== 'no-readings' ? say(`cannot-tell-${reason}`) : null;
}

const LACKS_SHOWN = 4;

function readyLines(place: string, { ready, batch }: Judged): Line[] {
  if (batch.state === 'ready') return [];
  if (ready.verdict === 'ready')
    return [say('ready-nothing-missing', { send: { say: say('log-release', { place: { place } }) } })];
  const missing = missingSays(ready);
  if (missing.length === 0) return [];
  const more = missing.length - LACKS_SHOWN;
  return [
    [
      say(ready.verdict === 'cannot-tell' ? 'ready-cannot-tell' : 'ready-not-yet'),
      ...missing.slice(0, LACKS_SHOWN),
      ...(more > 0 ? [say('lacks-more', { count: { count: more } })] : []),
    ],
  ];
}

/** When it will be near the air, with its interval; none where the readings do not carry one. */
function forecastLines({ forecast, ready }: Judged): Line[] {
  if (forecast.known) {
    return [
      say(forecast.to ? 'forecast' : 'forecast-open', {
        on: { date: forecast.on },
        from: { date: forecast.from },
        to: { date: forecast.to ?? forecast.on },
      }),
    ];
  }
  const { code } = forecast.reason;
  return ready.stage.stage === 'curing' && code !== 'near-already' ? [say(`no-forecast-${code}`)] : [];
}

/** Last turn, cover and moisture side by side. */
function careLine(batch: Batch): Line[] {
  const parts: Say[] = [];
  const turn = batch.turns.at(-1);
  if (turn) parts.push(say('pile-last-turn', { date: { date: turn.localDate } }));
  const cover = batch.covers.at(-1);
  if (cover) {
    parts.push(
      say(cover.on ? 'pile-covered' : 'pile-uncovered', {
        layer: { term: cover.layer, of: 'layer' },
        date: { date: cover.localDate },
      }),
    );
  }
  const wetness = batch.moisture.at(-1);
  if (wetness) {
    parts.push(
      say('pile-feel', {
        feel: wetness.feel ? { term: wetness.feel, of: 'feel' } : { pct: wetness.percent ?? 0 },
        date: { date: wetness.localDate },
      }),
    );
  }
  return parts.length > 0 ? [parts] : [];
}

/** The lines of the book that speak of a place, newest last. */
export function history(draft: Draft, request: Request): void {
  const place = request.place ?? null;
  const fields = ['place', 'pile', 'from', 'to', 'movedTo', 'with'] as const;
  const speaks = (record: Record<string, unknown>): boolean =>
    place === null
      ? /^(pile|bay) /.test(String(record.place ?? record.pile ?? ''))
      : fields.some((field) => record[field] === place);
  const found = draft.book
    .latest(draft.siteId, 400)
    .filter((entry) => entry.voidedBy === null && speaks(entry.record))
    .slice(0, 15)
    .reverse();
  if (found.length === 0) draft.lines.push(say('history-nothing', { place: { place: place ?? '' } }));
  for (const entry of found) draft.lines.push(shown(draft, entry));
  const batch = place === null ? null : batchAt(draft.picture(), place);
  if (place !== null && batch)
    draft.drawing ??= () => heatDrawing({ ...draft, picture: draft.picture() }, place, batch);
}
