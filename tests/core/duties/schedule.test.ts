import { DateTime } from 'luxon';
import { describe, expect, test } from 'vitest';
import { dueDate, parseSchedule } from '#core';

describe('how often, as data', () => {
  test.each([
    ['every friday', { every: 'weekday', on: ['friday'] }],
    ['friday', { every: 'weekday', on: ['friday'] }],
    ['mondays and thursdays', { every: 'weekday', on: ['monday', 'thursday'] }],
    ['every weekday', { every: 'weekday', on: ['monday', 'tuesday', 'wednesday', 'thursday', 'friday'] }],
    ['every day', { every: 'days', days: 1 }],
    ['every 2 weeks', { every: 'days', days: 14 }],
    ['every other day', { every: 'days', days: 2 }],
    ['every 10 days', { every: 'days', days: 10 }],
    ['monthly', { every: 'months', months: 1 }],
    ['every 3 months', { every: 'months', months: 3 }],
    ['on the 15th of the month', { every: 'month', day: 15 }],
    ['on 1 march', { every: 'year', month: 3, day: 1 }],
    ['march 1', { every: 'year', month: 3, day: 1 }],
    ['03-01', { every: 'year', month: 3, day: 1 }],
    ['2026-06-17', { once: '2026-06-17' }],
    ['every other friday', { every: 'weeks', weeks: 2, on: 'friday' }],
    ['first monday of the month', { every: 'month', nth: 'first', on: 'monday' }],
    ['last friday of the month', { every: 'month', nth: 'last', on: 'friday' }],
    ['monday, thursday', { every: 'weekday', on: ['monday', 'thursday'] }],
    ['1 of the month', { every: 'month', day: 1 }],
    ['week', { every: 'days', days: 7 }],
  ])('%s', (said, schedule) => {
    expect(parseSchedule(said)).toEqual(schedule);
  });

  test.each(['', 'soon', 'every 0 days', 'on 31 february', '2026-02-30', 'every constructor', '13-01'])(
    '"%s" is none',
    (said) => {
      expect(parseSchedule(said)).toBeNull();
    },
  );
});

describe('when it is due', () => {
  const due = (said: string, since: string, lastDone: string | null, today: string) =>
    dueDate(parseSchedule(said)!, { since, lastDone }, today);

  test.each([
    // 8 May 2026 is a Friday.
    ['every friday', '2026-05-04', null, '2026-05-07', null],
    ['every friday', '2026-05-04', null, '2026-05-08', '2026-05-08'],
    ['every friday', '2026-05-04', null, '2026-05-11', '2026-05-08'],
    ['every friday', '2026-05-04', '2026-05-08', '2026-05-14', null],
    ['every friday', '2026-05-04', '2026-05-11', '2026-05-15', '2026-05-15'],
    ['every 2 weeks', '2026-05-01', null, '2026-05-01', '2026-05-01'],
    ['every 2 weeks', '2026-05-01', '2026-05-03', '2026-05-16', null],
    ['every 2 weeks', '2026-05-01', '2026-05-03', '2026-05-17', '2026-05-17'],
    ['every day', '2026-05-01', '2026-05-16', '2026-05-17', '2026-05-17'],
    ['monthly', '2026-01-31', '2026-01-31', '2026-02-28', '2026-02-28'],
    ['on the 31st of the month', '2026-01-01', '2026-01-31', '2026-02-27', null],
    ['on the 31st of the month', '2026-01-01', '2026-01-31', '2026-02-28', '2026-02-28'],
    ['on 1 march', '2025-12-01', null, '2026-02-28', null],
    ['on 1 march', '2025-12-01', null, '2026-03-02', '2026-03-01'],
    ['on 29 february', '2025-12-01', null, '2026-02-28', '2026-02-28'],
    ['2026-06-17', '2026-05-01', null, '2026-06-16', null],
    ['2026-06-17', '2026-05-01', null, '2026-06-20', '2026-06-17'],
    ['2026-06-17', '2026-05-01', '2026-06-18', '2026-06-20', null],
    // Made on a Wednesday: Friday 8, 22 May, and so on.
    ['every other friday', '2026-05-06', null, '2026-05-07', null],
    ['every other friday', '2026-05-06', null, '2026-05-08', '2026-05-08'],
    ['every other friday', '2026-05-06', '2026-05-08', '2026-05-15', null],
    ['every other friday', '2026-05-06', '2026-05-08', '2026-05-23', '2026-05-22'],
    ['first monday of the month', '2026-01-01', '2026-05-04', '2026-05-31', null],
    ['first monday of the month', '2026-01-01', '2026-05-04', '2026-06-01', '2026-06-01'],
    ['last friday of the month', '2026-01-01', '2026-04-24', '2026-05-28', null],
    ['last friday of the month', '2026-01-01', '2026-04-24', '2026-05-29', '2026-05-29'],
  ])('%s, made %s, last done %s, on %s', (said, since, lastDone, today, by) => {
    expect(due(said, since, lastDone, today)).toBe(by);
  });

  test('every Sunday of ten years is a Sunday of the reference calendar', () => {
    for (let date = DateTime.utc(2020, 1, 1); date.year < 2030; date = date.plus({ days: 5 })) {
      const back = date.weekday % 7;
      expect(due('every sunday', '2019-01-01', null, date.toISODate()!)).toBe(
        date.minus({ days: back }).toISODate(),
      );
    }
  });

  test('the nth weekdays of ten years are those of the reference calendar', () => {
    for (const nth of [1, 2, 3, 4]) {
      const word = ['first', 'second', 'third', 'fourth'][nth - 1];
      for (let month = DateTime.utc(2020, 1, 1); month.year < 2030; month = month.plus({ months: 1 })) {
        const first = month.plus({ days: (3 - month.weekday + 7) % 7 });
        const date = first.plus({ days: 7 * (nth - 1) }).toISODate()!;
        expect(due(`${word} wednesday of the month`, '2019-01-01', null, date)).toBe(date);
        const end = month.endOf('month').startOf('day');
        const last = end.minus({ days: (end.weekday - 3 + 7) % 7 }).toISODate()!;
        expect(due('last wednesday of the month', '2019-01-01', null, last)).toBe(last);
      }
    }
  });
});
