import fc from 'fast-check';
import { DateTime } from 'luxon';
import { describe, expect, test } from 'vitest';
import {
  addDays,
  addMonths,
  daysBetween,
  instantOf,
  localDateOf,
  localTimeOf,
  offsetMinOf,
  weekdayOf,
  weekOf,
  yearSpan,
} from '#core';

const ZONES = [
  'America/St_Johns',
  'Australia/Lord_Howe',
  'Pacific/Apia',
  'Asia/Kathmandu',
  'America/New_York',
  'Pacific/Auckland',
  'UTC',
];

const instants = fc
  .integer({ min: Date.UTC(2008, 0, 1), max: Date.UTC(2040, 0, 1) })
  .map((ms) => new Date(ms).toISOString());
const dates = fc
  .integer({ min: Date.UTC(2008, 0, 1) / 864e5, max: Date.UTC(2040, 0, 1) / 864e5 })
  .map((day) => new Date(day * 864e5).toISOString().slice(0, 10));

describe('against luxon', () => {
  test.each(ZONES)('an instant has the same local date, time and offset in %s', (zone) => {
    fc.assert(
      fc.property(instants, (at) => {
        const there = DateTime.fromISO(at, { zone });
        expect(localDateOf(at, zone)).toBe(there.toISODate());
        expect(localTimeOf(at, zone)).toBe(there.toFormat("yyyy-MM-dd'T'HH:mm"));
        expect(offsetMinOf(at, zone)).toBe(there.offset);
      }),
      { numRuns: 300 },
    );
  });

  test.each(ZONES)('a wall time becomes an instant and comes back in %s', (zone) => {
    fc.assert(
      fc.property(instants, (at) => {
        const wall = localTimeOf(at, zone);
        const back = instantOf(wall, zone);
        expect(localTimeOf(back, zone)).toBe(wall);
        // Of two that read the same, the first.
        expect(Date.parse(back)).toBeLessThanOrEqual(Date.parse(at));
      }),
      { numRuns: 300 },
    );
  });

  test('dates move and are counted alike', () => {
    fc.assert(
      fc.property(dates, fc.integer({ min: -4000, max: 4000 }), (date, days) => {
        const moved = DateTime.fromISO(date, { zone: 'utc' }).plus({ days }).toISODate();
        expect(addDays(date, days)).toBe(moved);
        expect(daysBetween(date, addDays(date, days))).toBe(days);
      }),
    );
  });

  test('months, weeks and weekdays are alike', () => {
    fc.assert(
      fc.property(dates, fc.integer({ min: -40, max: 40 }), (date, months) => {
        const there = DateTime.fromISO(date, { zone: 'utc', locale: 'en' });
        expect(addMonths(date, months)).toBe(there.plus({ months }).toISODate());
        expect(weekOf(date, 'monday')).toBe(there.startOf('week').toISODate());
        expect(weekOf(date, 'sunday')).toBe(
          there.plus({ days: 1 }).startOf('week').minus({ days: 1 }).toISODate(),
        );
        expect(weekOf(date, 'saturday')).toBe(
          there.plus({ days: 2 }).startOf('week').minus({ days: 2 }).toISODate(),
        );
        expect(weekdayOf(date)).toBe(there.weekdayLong!.toLowerCase());
      }),
    );
  });
});

describe('both clock changes', () => {
  test.each([
    // Spring forward: the hour that does not exist moves on by what is skipped.
    ['2026-03-08T02:30', 'America/New_York', '2026-03-08T07:30:00.000Z'],
    ['2026-03-08T02:30', 'America/St_Johns', '2026-03-08T06:00:00.000Z'],
    ['2026-10-04T02:15', 'Australia/Lord_Howe', '2026-10-03T15:45:00.000Z'],
    // Autumn: the hour that occurs twice is the first one.
    ['2026-11-01T01:30', 'America/New_York', '2026-11-01T05:30:00.000Z'],
    ['2026-11-01T01:30', 'America/St_Johns', '2026-11-01T04:00:00.000Z'],
    ['2026-04-05T01:45', 'Australia/Lord_Howe', '2026-04-04T14:45:00.000Z'],
    // A date that Apia skipped altogether.
    ['2011-12-30T12:00', 'Pacific/Apia', '2011-12-30T22:00:00.000Z'],
    // No clock time: midnight.
    ['2026-06-17', 'Asia/Kathmandu', '2026-06-16T18:15:00.000Z'],
  ])('%s in %s', (wall, zone, instant) => {
    expect(instantOf(wall, zone)).toBe(instant);
  });

  test('the second of two on request', () => {
    expect(instantOf('2026-11-01T01:30', 'America/New_York', 'later')).toBe('2026-11-01T06:30:00.000Z');
  });
});

describe('years start where the site says', () => {
  test.each([
    ['2026-03-05', 1, '2026-01-01', '2026-12-31'],
    ['2026-03-05', 7, '2025-07-01', '2026-06-30'],
    ['2026-07-01', 7, '2026-07-01', '2027-06-30'],
    ['2026-09-30', 10, '2025-10-01', '2026-09-30'],
    ['2024-02-29', 3, '2023-03-01', '2024-02-29'],
  ])('%s with month %i', (date, month, from, to) => {
    expect(yearSpan(date, month)).toEqual({ from, to });
  });
});

test.each(['2026-02-30', '2026-13-01', 'soon', ''])('%s is no date', (date) => {
  expect(() => addDays(date, 1)).toThrow(RangeError);
});
