import type { RecordOf } from '#records';
import { probeCheck } from '../heat/probe.ts';
import { onDay, own, plus, type Reducers } from './change.ts';
import type { ChoreDone, EndedProblem, Moment, OpenProblem, Picture } from './types.ts';

export const problems: Reducers<'problem' | 'resolved' | 'chore' | 'weather'> = {
  problem: (picture, record, now) => {
    if (record.strength === 'none') return picture;
    const problem: OpenProblem = {
      ...now,
      topic: record.topic,
      place: record.place ?? null,
      note: record.note ?? null,
      strength: record.strength ?? null,
    };
    return { ...picture, problems: [...picture.problems, problem] };
  },

  resolved: (picture, record, now) =>
    end(picture, meant(picture.problems, record), {
      ...now,
      note: record.note ?? record.said ?? null,
      by: 'resolved',
    }),

  chore: (picture, record, now) => {
    const counted = onDay(picture, now.localDate, (day) => ({ chores: plus(day.chores, record.chore, 1) }));
    const done = choreDone(own(picture.chores, record.chore), record, now);
    const chores = { ...counted.chores, [record.chore]: done };
    if (record.place) {
      const name = `${record.chore} ${record.place}`;
      chores[name] = choreDone(own(picture.chores, name), record, now);
    }
    const next = { ...counted, chores };
    if (record.chore !== 'clean-spill') return next;
    const spills = next.problems.filter(
      ({ topic, place }) => topic === 'spill' && (!record.place || !place || place === record.place),
    );
    return end(next, spills, { ...now, note: null, by: 'chore' });
  },

  weather: (picture, record, now) => {
    const line = {
      ...now,
      expects: record.expects,
      for: record.when?.slice(0, 10) ?? now.localDate,
      observed: record.observed ?? false,
      mm: record.mm ?? null,
      ...(record.windFrom ? { windFrom: record.windFrom } : {}),
      ...(record.windTo ? { windTo: record.windTo } : {}),
    };
    return { ...picture, weather: [...picture.weather, line] };
  },
};

function end(picture: Picture, which: readonly OpenProblem[], ended: EndedProblem['ended']): Picture {
  if (which.length === 0) return picture;
  return {
    ...picture,
    problems: picture.problems.filter((problem) => !which.includes(problem)),
    ended: [...picture.ended, ...which.map((problem) => ({ ...problem, ended }))],
  };
}

/** The open problems that `resolved` speaks of: by number; by topic and place as far as they were said. */
function meant(open: readonly OpenProblem[], record: RecordOf<'resolved'>): OpenProblem[] {
  if (record.entry != null) return open.filter(({ entry }) => entry === record.entry);
  if (!record.topic && !record.place) return open.length === 1 ? [...open] : [];
  return open.filter(
    ({ topic, place }) =>
      (!record.topic || topic === record.topic) && (!record.place || !place || place === record.place),
  );
}

/**
 * Whether a check was good: a thermometer as `probeCheck` says, a scale within 1 % or 0.2 kg.
 * @source see probeCheck; scale: common practice, no source
 */
function isGood(record: RecordOf<'chore'>): boolean | null {
  if (record.ok != null) return record.ok;
  if (record.reads == null) return null;
  if (record.chore === 'check-thermometer') {
    return probeCheck(record.reads, record.against ?? null, record.unit ?? null).ok;
  }
  if (record.against == null) return null;
  return Math.abs(record.reads - record.against) <= Math.max(0.2, record.against * 0.01);
}

function choreDone(before: ChoreDone | undefined, record: RecordOf<'chore'>, now: Moment): ChoreDone {
  const ok = isGood(record);
  const lastGood = ok === false ? (before?.lastGood ?? null) : now;
  let doubt = before?.doubt ?? null;
  let pastDoubts = before?.pastDoubts ?? [];
  if (ok === false && (doubt === null || doubt.until !== null)) {
    // A second bad check does not clear what the first one had put in doubt.
    if (doubt !== null) pastDoubts = [...pastDoubts, doubt].slice(-DOUBTS_KEPT);
    doubt = { since: before?.lastGood?.at ?? FROM_ALWAYS, until: null };
  } else if (ok === true && doubt !== null && doubt.until === null) {
    doubt = { ...doubt, until: now.at };
  }
  return {
    ...now,
    reads: record.reads ?? null,
    against: record.against ?? null,
    place: record.place ?? null,
    ok,
    lastGood,
    doubt,
    ...(pastDoubts.length > 0 ? { pastDoubts } : {}),
  };
}

/** Longer ago than so many bad checks no pile is left that was read then. @source common practice, no source */
const DOUBTS_KEPT = 20;

const FROM_ALWAYS = '0001-01-01T00:00:00.000Z';
