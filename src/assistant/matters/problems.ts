import { drumName, placeKind, type Symptom } from '#core';
import { isAtBorder, isJam, smellOf } from '#parsers';
import type { BookRecordOf, Entry, ProblemTopic } from '#records';
import type { Draft } from '../draft.ts';
import { type Line, say } from '../say.ts';
import { complaintLines, isComplaintEntry, notedLines } from './complaints.ts';
import { drumAdviceLines, stoppedOf } from './drum.ts';
import { stoppedSays } from './stopped.ts';
import { diagnosisLines } from './symptoms.ts';

type Problem = BookRecordOf<'problem'>;

/** What to look at, or to do first, about the trouble just logged: at most three short lines for each. */
export function problemMatters(draft: Draft, written: readonly Entry[]): Line[] {
  const problems = written.filter(({ record }) => record.kind === 'problem');
  return [
    ...problems.slice(0, 2).flatMap((entry) => linesFor(draft, entry).slice(0, MOST)),
    ...notedLines(draft, written),
  ];
}

const MOST = 3;

/** What somebody at the pile notices, by what was logged of it. */
const SYMPTOM_OF: Partial<Record<ProblemTopic, Symptom>> = {
  odour: 'odour',
  leachate: 'leachate',
  flies: 'flies',
  pests: 'pests',
  freezing: 'frozen',
};

function linesFor(draft: Draft, entry: Entry): Line[] {
  const record = entry.record as Problem;
  if (record.strength === 'none') return [];
  if (isComplaintEntry(entry)) return complaintLines(draft, entry);
  const place = record.place ?? null;
  const atDrum = isAtDrum(draft, place);
  switch (record.topic) {
    case 'fault':
    case 'power':
      return atDrum || (record.topic === 'power' && drumName(draft.picture()) !== null)
        ? stoppedLines(draft, record)
        : [say('fault-elsewhere')];
    case 'freezing':
    case 'odour':
      if (atDrum) return drumAdviceLines(draft, record.topic);
      break;
    case 'spill':
      return [say('spill-first')];
    case 'contamination':
      return [say('contamination-first')];
    default:
  }
  const symptom = SYMPTOM_OF[record.topic];
  if (!symptom) return [];
  const smell = symptom === 'odour' ? smellOf(`${record.said ?? ''} ${record.note ?? ''}`) : null;
  const atBorder = symptom === 'odour' && place === null && isAtBorder(record.said ?? '');
  return atBorder
    ? diagnosisLines(draft, 'odour-at-fence', place, smell)
    : diagnosisLines(draft, smell ?? symptom, place, null);
}

function isAtDrum(draft: Draft, place: string | null): boolean {
  if (place === null) return false;
  return place === 'exit' || placeKind(draft.picture(), place) === 'drum';
}

/** A drum that stands still. Nothing here starts it again. */
function stoppedLines(draft: Draft, record: Problem): Line[] {
  const why =
    record.topic === 'power'
      ? ('no-power' as const)
      : isJam(record.said ?? '')
        ? ('jammed' as const)
        : ('stopped' as const);
  return stoppedSays(stoppedOf(draft, why, drumName(draft.picture(), record.place) ?? 'drum'));
}
