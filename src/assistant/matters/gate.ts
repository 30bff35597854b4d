import {
  type Batch,
  batchAt,
  curingSince,
  daysBetween,
  labHolds,
  labStandardOf,
  type Picture,
  type ReleaseGap,
  ruleSetOf,
  selfHeatingClass,
  traceOf,
  vesselMature,
} from '#core';
import type { BookRecordOf, Doubt, Entry, FieldRecord } from '#records';
import type { Draft } from '../draft.ts';
import { type Arg, type Line, type Say, say } from '../say.ts';
import { judge } from './judging.ts';
import { traceLines } from './trace-lines.ts';

/** Finished compost taken off a held pile waits for a coordinator; everybody else's word is not enough. */
export function heldPile(draft: Draft, record: FieldRecord): Doubt | null {
  if (!leavesSite(record)) return null;
  const picture = draft.picture();
  if (!record.pile) return fromWhichPile(picture, record);
  const batch = batchAt(picture, record.pile);
  if (!batch?.hold) return null;
  return {
    record,
    why: 'held-pile',
    said: record.said ?? null,
    choices: [
      { say: 'allow', record },
      { say: 'not-taken', record: null },
    ],
  };
}

/** Nobody said off which pile, and one is held: it may have been that one. */
function fromWhichPile(picture: Picture, record: BookRecordOf<'removal'>): Doubt | null {
  const places = Object.keys(picture.places);
  if (!places.some((place) => batchAt(picture, place)?.hold)) return null;
  const free = places.filter((place) => !batchAt(picture, place)?.hold);
  return {
    record,
    why: 'no-place',
    said: record.said ?? null,
    choices: free.map((pile) => ({ say: pile, record: { ...record, pile } })),
  };
}

const leavesSite = (record: FieldRecord): record is BookRecordOf<'removal'> =>
  record.kind === 'removal' && !['residue', 'leachate', 'overs'].includes(record.material);

/** What is said beside a removal, a laboratory result and a pile that was closed. */
export function gateMatters(draft: Draft, written: readonly Entry[]): { urgent: Line[]; lines: Line[] } {
  const urgent: Line[] = [];
  const lines: Line[] = [];
  for (const entry of written) {
    const { record } = entry;
    if (record.kind === 'lab-result') {
      urgent.push(...labLines(draft, entry));
      lines.push(...vesselLines(draft, record as BookRecordOf<'lab-result'>));
    } else if (record.kind === 'removal')
      lines.push(...removalLines(draft, record as BookRecordOf<'removal'>));
    else if (record.kind === 'pile') lines.push(...pileEventLines(draft, record as BookRecordOf<'pile'>));
    else if (record.kind === 'cover' || record.kind === 'transfer') lines.push(...coverLines(draft, record));
  }
  return { urgent, lines };
}

/** A result that puts a pile on hold, or keeps it there: said in the reply, and to the coordinators directly. */
function labLines(draft: Draft, entry: Entry): Line[] {
  const { place } = entry.record as BookRecordOf<'lab-result'>;
  const batch = batchAt(draft.picture(), place);
  const lab = batch?.labs.find((each) => each.entry === entry.number);
  if (!batch?.hold || !lab) return [];
  if (!labHolds(lab, labStandardOf(draft.picture(), draft.today)))
    return [say('hold-still', { place: { place }, why: holdWhy(batch.hold.why) })];
  const line = say('hold-laid', { place: { place }, why: holdWhy(`lab:${lab.analyte}`) });
  const went = batch.removals.filter(({ material }) => material === 'finished-compost').length;
  const traced = traceLines(place, traceOf(batch));
  draft.posts.push({
    about: 'alarm',
    private: true,
    lines: [line, say('hold-trace', { place: { place }, count: { count: went } }), ...traced],
  });
  draft.choices.push({
    say: say('button-trace', { place: { place } }),
    act: { do: 'ask', request: { request: 'trace', place } },
  });
  return [line, ...traced];
}

/** A vessel in a laboratory is no pile: its class is told, and changes nothing of how near the air the pile is. */
function vesselLines(draft: Draft, { analyte, value, unit, place }: BookRecordOf<'lab-result'>): Line[] {
  if (analyte !== 'self-heating' || value == null) return [];
  // A rise, not a temperature: 1 °F of it is 5/9 °C.
  const riseC = unit === 'F' ? (value * 5) / 9 : value;
  if (riseC < 0 || riseC > 70) return [];
  const { class: found, onBoundary } = selfHeatingClass(riseC);
  const batch = batchAt(draft.picture(), place);
  const since = batch ? curingSince(batch, { at: draft.now, localDate: draft.today }) : null;
  const days = since ? daysBetween(since.localDate, draft.today) : 0;
  return [
    say('lab-vessel', {
      rise: { rise: riseC },
      class: { text: found },
      edge: { text: onBoundary ? 'yes' : 'no' },
      mature: { text: vesselMature(riseC, days) ? 'yes' : 'no' },
    }),
  ];
}

/** Why a pile is held: a laboratory's finding, or the words of whoever held it. */
export function holdWhy(why: string): Arg {
  if (why.startsWith('lab:')) return { term: why.slice(4), of: 'analyte' };
  return why === 'said' ? { say: say('hold-said') } : { text: why };
}

/** Stored, and remarked where the book does not show that it was hot for long enough. */
function removalLines(draft: Draft, record: BookRecordOf<'removal'>): Line[] {
  if (!leavesSite(record)) return [];
  const batch = record.pile ? batchAt(draft.before, record.pile) : null;
  if (!batch) return [];
  const { release } = judge(draft, batch, draft.before);
  const gaps = release.missing.filter(({ code }) => SERIOUS.has(code));
  if (gaps.length === 0) return [];
  return [
    [say('removal-unproven', { place: { place: record.pile! } }), ...gaps.slice(0, 2).map(gapSay)],
    say('regulator-decides'),
  ];
}

const SERIOUS = new Set<ReleaseGap['code']>([
  'hold',
  'no-rule-set',
  'not-sanitised',
  'vectors',
  'lab-failed',
  'lab-unclear',
  'lab-missing',
]);

/** What stands between a pile and the gate, in a few words. */
export function gapSay(gap: ReleaseGap): Say {
  switch (gap.code) {
    case 'hold':
      return say('gap-hold', {
        why: holdWhy(gap.why),
        entry: { entry: gap.entry },
        date: { date: gap.localDate },
      });
    case 'not-sanitised':
      return say(`gap-${gap.verdict}`, {
        counted: { number: Math.floor(gap.counted), digits: 0 },
        needed: { number: gap.needed, digits: 0 },
      });
    case 'vectors':
      return say('gap-vectors', {
        counted: { number: Math.floor(gap.counted), digits: 0 },
        needed: { number: gap.needed, digits: 0 },
      });
    case 'lab-failed':
      return say('gap-lab-failed', {
        analyte: { term: gap.analyte, of: 'analyte' },
        value: gap.value === null ? { text: '?' } : { number: gap.value },
        max: { number: gap.max },
        unit: { text: gap.unit },
      });
    case 'lab-unclear':
      return say('gap-lab-unclear', { analyte: { term: gap.analyte, of: 'analyte' } });
    case 'lab-missing':
      return say('gap-lab-missing', { count: { count: gap.analytes.length } });
    case 'lab-without-sample':
      return say('gap-lab-without-sample', { entry: { entry: gap.entry } });
    case 'problem':
      return say('gap-problem', { topic: { term: gap.topic, of: 'topic' }, entry: { entry: gap.entry } });
    case 'not-ready':
      return say('gap-not-ready', { count: { count: gap.criteria.length } });
    case 'no-rule-set':
      return say('gap-no-rule-set');
  }
}

/** A pile that is closed under a rule set is read every day from now on. */
function pileEventLines(draft: Draft, record: BookRecordOf<'pile'>): Line[] {
  const { event, pile } = record;
  if (event === 'full') {
    return ruleSetOf(draft.picture(), draft.today)
      ? [say('full-read-daily', { place: { place: pile } })]
      : [];
  }
  if (event === 'ready') return readyLines(draft, pile);
  if (event === 'joined' || event === 'split') return joinedLines(draft, record);
  return [];
}

/** It is said to be ready: what the book does not show is said beside it. */
function readyLines(draft: Draft, place: string): Line[] {
  const batch = batchAt(draft.before, place);
  if (!batch) return [];
  const { release } = judge(draft, batch, draft.before);
  if (release.may) return [say('regulator-decides')];
  return [[say('ready-but'), ...release.missing.slice(0, 3).map(gapSay)]];
}

/** A join keeps the proof only where both had it; a split hands it on, and a hold goes along. */
function joinedLines(draft: Draft, record: BookRecordOf<'pile'>): Line[] {
  const place = record.event === 'joined' ? (record.with ?? record.to) : record.pile;
  const batch = place ? batchAt(draft.picture(), place) : null;
  if (!place || !batch) return [];
  const held = batch.hold ? [say('joined-held', { place: { place }, why: holdWhy(batch.hold.why) })] : [];
  if (!ruleSetOf(draft.picture(), draft.today)) return held;
  const last = batch.joinings.at(-1);
  const met = judge(draft, batch).proof?.verdict === 'met';
  if (record.event === 'split')
    return [...held, say(met ? 'split-proven' : 'split-unproven', { place: { place } })];
  if (last?.what !== 'joined') return held;
  return [...held, say(met ? 'joined-proven' : 'joined-restarts', { place: { place } })];
}

/** A cover of mature compost from a pile that was not proven is remarked. */
function coverLines(draft: Draft, record: FieldRecord | Entry['record']): Line[] {
  const { pile, to } = record as { pile?: string; to?: string };
  const place = pile ?? to ?? null;
  const batch = place ? batchAt(draft.picture(), place) : null;
  if (!place || !batch || !ruleSetOf(draft.picture(), draft.today)) return [];
  if (record.kind === 'transfer') {
    const last = batch.joinings.at(-1);
    return last?.what === 'fresh' && hadProof(draft.before, place)
      ? [say('transfer-restarts', { place: { place } })]
      : [];
  }
  const cover = batch.covers.at(-1);
  if (record.kind !== 'cover' || !cover?.on || cover.layer !== 'mature-compost' || cover.fromProven === true)
    return [];
  return [say('cover-unproven', { place: { place } })];
}

const hadProof = (picture: Picture, place: string): boolean => {
  const batch: Batch | null = batchAt(picture, place);
  return batch !== null && batch.readings.length > 0;
};
