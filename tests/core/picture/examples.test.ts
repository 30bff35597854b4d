import { expect, test } from 'vitest';
import {
  addDays,
  addMonths,
  applyEntry,
  batchAt,
  dayOf,
  daysBetween,
  dueDate,
  emptyPicture,
  instantOf,
  isFeed,
  localDateOf,
  localTimeOf,
  offsetMinOf,
  parseSchedule,
  settingAt,
  sumDays,
  weekdayOf,
  weekOf,
  weighed,
  yearSpan,
} from '#core';
import { Book, site } from './book.ts';

/** The worked examples of the docstrings, as they stand there. */
test.each([
  [addDays('2024-02-28', 2), '2024-03-01'],
  [daysBetween('2026-02-27', '2026-03-02'), 3],
  [addMonths('2026-01-31', 1), '2026-02-28'],
  [weekdayOf('2026-06-17'), 'wednesday'],
  [weekOf('2026-06-17', 'monday'), '2026-06-15'],
  [yearSpan('2026-03-05', 7), { from: '2025-07-01', to: '2026-06-30' }],
  [localDateOf('2026-06-17T02:29:00.000Z', 'America/St_Johns'), '2026-06-16'],
  [localTimeOf('2026-06-17T02:31:00.000Z', 'America/St_Johns'), '2026-06-17T00:01'],
  [offsetMinOf('2026-06-17T12:00:00.000Z', 'Asia/Kathmandu'), 345],
  [instantOf('2026-11-01T01:30', 'America/New_York'), '2026-11-01T05:30:00.000Z'],
  [parseSchedule('every 2 weeks'), { every: 'days', days: 14 }],
  [parseSchedule('on 1 march'), { every: 'year', month: 3, day: 1 }],
  [
    dueDate({ every: 'days', days: 14 }, { since: '2026-05-01', lastDone: '2026-05-03' }, '2026-05-17'),
    '2026-05-17',
  ],
  [isFeed('food-scraps'), true],
  [isFeed('wood-chips'), false],
  [sumDays([]).turnings, 0],
])('example %#', (given, answer) => {
  expect(given).toEqual(answer);
});

test('examples that speak of a picture', () => {
  const book = new Book();
  book.log('2026-06-17T08:00', { kind: 'turning', pile: 'pile B' });
  const [entry] = book.entries;
  expect(applyEntry(emptyPicture(site), entry!).lastEntry).toBe(1);
  const picture = book.picture();
  expect(batchAt(picture, 'pile B')!.name).toBe('pile B');
  expect(dayOf(picture, '2026-06-17')!.turnings).toBe(1);
  expect(settingAt(picture, 'target', '2026-06-17')).toBe(20);
  expect(Object.keys(emptyPicture(site).places)).toEqual(['pile A', 'pile B', 'pile C', 'bay 1', 'bay 2']);
  book.log('2026-06-17T09:00', { kind: 'setting', name: 'tare:cart', value: 18 });
  const now = { localDate: '2026-06-18' };
  expect(weighed(book.picture(), { material: 'food-scraps', container: 'cart', kg: 66.5 }, now).netKg).toBe(
    48.5,
  );
});
