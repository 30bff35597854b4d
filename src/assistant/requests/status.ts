import { type Batch, hottestOf, lowestOf } from '#core';
import type { Request } from '#records';
import type { Draft } from '../draft.ts';
import { ambientNow, batchAt, proofLine, verdictOf } from '../matters/heat.ts';
import { type Line, type Say, say } from '../say.ts';
import { shown } from './lines-back.ts';

/** How a pile does, or all of them in one line each. */
export function status(draft: Draft, request: Request): void {
  const picture = draft.picture();
  const place = request.place ?? null;
  if (place === 'drum' || place?.startsWith('drum ')) {
    draft.lines.push(...drumLines(draft, place));
    return;
  }
  if (place !== null) {
    const batch = batchAt(picture, place);
    if (batch) draft.lines.push(...pileStatus(draft, place, batch));
    else draft.lines.push(notThere(draft, place));
    return;
  }
  const places = Object.keys(picture.places);
  if (places.length === 0) draft.lines.push(say('no-piles'));
  for (const each of places) {
    const batch = batchAt(picture, each);
    if (batch) draft.lines.push(pileLine(draft, each, batch));
  }
  for (const drum of Object.keys(picture.drums)) draft.lines.push(...drumLines(draft, drum).slice(0, 1));
}

function notThere(draft: Draft, place: string): Say {
  const ceased = draft.picture().ceased[place];
  if (ceased?.successor)
    return say('pile-became', { place: { place }, successor: { place: ceased.successor } });
  return say('place-unknown', { place: { place } });
}

/** A pile in one line: its last reading, the rise over the air, its turns. */
export function pileLine(draft: Draft, place: string, batch: Batch): Line {
  const parts: Say[] = [say('pile-state', { place: { place }, state: { term: batch.state, of: 'state' } })];
  const last = batch.readings.at(-1);
  if (last) {
    parts.push(
      say('pile-last', {
        values: { celsiusList: last.celsius, upTo: last.upTo, points: last.points },
        date: { date: last.localDate },
      }),
    );
    const ambient = ambientNow(draft.picture(), draft.today);
    if (ambient !== null) parts.push(say('pile-rise', { rise: { rise: hottestOf(last) - ambient } }));
  } else parts.push(say('pile-no-reading'));
  if (batch.turns.length > 0) parts.push(say('pile-turns', { count: { count: batch.turns.length } }));
  if (batch.hold) parts.push(say('pile-held', { why: { text: batch.hold.why } }));
  return parts;
}

export function pileStatus(draft: Draft, place: string, batch: Batch): Line[] {
  const lines: Line[] = [pileLine(draft, place, batch)];
  const verdict = verdictOf(draft, batch);
  if (verdict) lines.push(proofLine(place, verdict));
  const turn = batch.turns.at(-1);
  if (turn) lines.push(say('pile-last-turn', { date: { date: turn.localDate } }));
  const cover = batch.covers.at(-1);
  if (cover) {
    lines.push(
      say(cover.on ? 'pile-covered' : 'pile-uncovered', {
        layer: { term: cover.layer, of: 'layer' },
        date: { date: cover.localDate },
      }),
    );
  }
  const feel = batch.moisture.at(-1);
  if (feel?.feel) {
    lines.push(say('pile-feel', { feel: { term: feel.feel, of: 'feel' }, date: { date: feel.localDate } }));
  }
  const problems = draft.picture().problems.filter((problem) => problem.place === place);
  for (const problem of problems) {
    lines.push(
      say('pile-problem', {
        entry: { entry: problem.entry },
        topic: { term: problem.topic, of: 'topic' },
        date: { date: problem.localDate },
      }),
    );
  }
  return lines;
}

function drumLines(draft: Draft, name: string): Line[] {
  const drum = draft.picture().drums[name];
  if (!drum) return [say('place-unknown', { place: { place: name } })];
  const kg = drum.loads.reduce((sum, load) => sum + load.kg, 0);
  const oldest = drum.loads[0];
  const parts: Say[] = [say('drum-holds', { place: { place: name }, kg: { kg: kg, digits: 0 } })];
  if (drum.level) {
    parts.push(
      say('drum-level', { pct: { pct: drum.level.fraction * 100 }, date: { date: drum.level.localDate } }),
    );
  }
  if (oldest) parts.push(say('drum-oldest', { date: { date: oldest.localDate } }));
  const lines: Line[] = [parts];
  if (drum.everyMin !== null || drum.fan !== null || drum.mode !== null) {
    lines.push([
      say('drum-set', { mode: { term: drum.mode ?? 'automatic', of: 'mode' } }),
      ...(drum.everyMin !== null ? [say('part-every', { min: { min: drum.everyMin } })] : []),
      ...(drum.fan !== null ? [say('part-fan', { fan: { term: drum.fan, of: 'fan' } })] : []),
    ]);
  }
  const reading = drum.readings.at(-1);
  if (reading) {
    lines.push(
      say('drum-read', {
        low: { celsius: lowestOf(reading) },
        high: { celsius: hottestOf(reading) },
        date: { date: reading.localDate },
      }),
    );
  }
  return lines;
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
}

/** `can we give C away?`: what is missing. */
export function trace(draft: Draft, request: Request): void {
  const place = request.place ?? '';
  const batch = batchAt(draft.picture(), place);
  if (!batch) {
    draft.lines.push(notThere(draft, place));
    return;
  }
  draft.lines.push(...pileStatus(draft, place, batch));
  for (const [source, { from, to }] of Object.entries(batch.sources)) {
    draft.lines.push(
      say('trace-source', {
        source: { source: source || '—' },
        from: { date: from },
        to: { date: to },
      }),
    );
  }
  draft.lines.push(say('regulator-decides'));
}
