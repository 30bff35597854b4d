import type { Batch, Joining, Moment, PileReading } from '#core';

const DAY_MS = 86_400_000;
const START_MS = Date.parse('2026-03-02T08:00:00Z');

/** A moment `days` after 2026-03-02 08:00 in a site whose clock is UTC; the entry number orders equal instants. */
export function momentAt(days: number, entry: number): Moment {
  const at = new Date(START_MS + Math.round(days * DAY_MS)).toISOString();
  return { entry, at, localDate: at.slice(0, 10) };
}

export const nowAt = (days: number) => momentAt(days, Number.MAX_SAFE_INTEGER);

export function readingAt(
  days: number,
  celsius: number | number[],
  more: Partial<PileReading> = {},
): PileReading {
  const entry = more.entry ?? Math.round(days * 1000) + 1;
  return {
    ...momentAt(days, entry),
    celsius: typeof celsius === 'number' ? [celsius] : celsius,
    points: null,
    depthCm: 45,
    upTo: null,
    approximate: false,
    ...more,
  };
}

export const turnAt = (days: number, entry = Math.round(days * 1000) + 2): Moment => momentAt(days, entry);

export function joiningAt(days: number, what: Joining['what'], more: Partial<Joining> = {}): Joining {
  const base = { from: null, kg: null, litres: null, provenThen: null };
  return { ...momentAt(days, more.entry ?? Math.round(days * 1000)), ...base, what, ...more };
}

export function batchOf(more: Partial<Batch> = {}): Batch {
  return {
    id: 'b1',
    name: 'pile B',
    state: 'closed',
    startedAt: null,
    closedAt: null,
    sources: {},
    readings: [],
    turns: [],
    covers: [],
    moisture: [],
    joinings: [],
    removals: [],
    samples: [],
    labs: [],
    hold: null,
    kin: [],
    level: null,
    goneAt: null,
    ...more,
  };
}

/** Days in a row, one reading each at 45 cm. */
export const daily = (celsius: readonly number[], from = 0): PileReading[] =>
  celsius.map((value, day) => readingAt(from + day, value));
