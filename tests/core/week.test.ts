import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { instantOf, sumDays, totalsBetween, weekChange, weekReport, weekTotals } from '#core';
import { Book, cart, chips, reading } from './picture/book.ts';

const LB = 0.45359237;
const MONDAY = '2026-06-15';
const now = (wall: string) => ({ at: instantOf(wall, 'America/St_Johns'), localDate: wall.slice(0, 10) });
const report = (book: Book, wall = '2026-06-22T07:00') => weekReport(book.picture(), MONDAY, now(wall));

function aWeek(): Book {
  const book = new Book();
  book.log('2026-06-08T08:00', cart(55.5, { source: 'cafe' }));
  book.log('2026-06-15T08:00', cart(66.5, { source: 'cafe' }), { person: 2 });
  book.log('2026-06-16T08:00', cart(60, { source: 'north kitchen', flags: ['contaminated'] }), { person: 2 });
  book.log('2026-06-17T08:00', { kind: 'weigh-in', material: 'coffee-grounds', litres: 100 });
  book.log('2026-06-17T08:10', chips(19.1));
  book.log('2026-06-18T08:00', { kind: 'weigh-in', material: 'pumpkins', kg: 104 * LB });
  book.log('2026-06-18T09:00', cart(20, { container: 'tub' }));
  book.log('2026-06-19T08:00', { kind: 'rejected-load', source: 'cafe', count: 2, reason: 'gloves' });
  book.log('2026-06-19T09:00', { kind: 'turning', pile: 'pile B' });
  book.log('2026-06-19T10:00', reading('pile B', 58, 61));
  book.log('2026-06-20T10:00', { kind: 'problem', topic: 'odour', place: 'pile B' });
  book.log('2026-06-21T10:00', { kind: 'resolved', topic: 'odour', place: 'pile B', note: 'two barrows' });
  book.log('2026-06-21T11:00', { kind: 'hours', people: 3, hours: 2 });
  book.log('2026-06-21T12:00', { kind: 'chore', chore: 'check-fan' });
  // The Monday after is another week.
  book.log('2026-06-22T06:00', cart(70));
  return book;
}

describe('a week', () => {
  test('measured, estimated and pending stand apart, by stream and source', () => {
    const week = report(aWeek());
    expect(week).toMatchObject({ from: MONDAY, to: '2026-06-21', complete: true });
    expect(week.feed).toMatchObject({ pending: 1, loads: 5 });
    expect(week.feed.measuredKg).toBeCloseTo(51 + 44.5 + 104 * LB, 8);
    // Coffee grounds of the table: 450 kg/m³.
    expect(week.feed.estimatedKg).toBe(45);
    const food = week.streams.find(({ material }) => material === 'food-scraps')!;
    expect(food.sources.map(({ source, kg }) => [source, kg])).toEqual([
      ['cafe', 51],
      ['north kitchen', 44.5],
      ['', 0],
    ]);
  });

  test('a stream that comes once is shown with and without', () => {
    const week = report(aWeek());
    expect(week.special).toEqual([{ material: 'pumpkins', kg: 47.17360648, estimatedKg: 0 }]);
    expect(week.withoutSpecial?.measuredKg).toBe(95.5);
  });

  test('chips over feed, in all; not known while a net is pending', () => {
    const book = aWeek();
    expect(report(book).chips).toEqual({ kg: 19.1, estimatedKg: 0, perKgFeed: null });
    book.log('2026-06-22T06:30', { kind: 'setting', name: 'tare:tub', value: 5 });
    const feedKg = 51 + 44.5 + 104 * LB + 45 + 15;
    expect(report(book).chips.perKgFeed).toBeCloseTo(19.1 / feedKg, 10);
  });

  test('what was dirty, turned away, turned, read and worked', () => {
    const week = report(aWeek());
    expect(week.contaminated).toEqual([{ source: 'north kitchen', loads: 1, of: 1 }]);
    expect(week.rejected).toEqual([{ source: 'cafe', count: 2 }]);
    expect(week.totals).toMatchObject({ turnings: 1, readings: 1, hours: 6 });
    expect(week.chores).toEqual([{ chore: 'check-fan', times: 1, isCheck: true }]);
    expect(week.loggedBy).toEqual([
      { person: 1, lines: 11 },
      { person: 2, lines: 2 },
    ]);
  });

  test('piles in one line each, problems and how they ended', () => {
    const week = report(aWeek());
    expect(week.piles).toMatchObject([
      { place: 'pile B', hottestC: 61, lowestC: 58, readOn: '2026-06-19', turnsInWeek: 1, readingsInWeek: 1 },
    ]);
    expect(week.problems.open).toEqual([]);
    expect(week.problems.ended).toMatchObject([{ topic: 'odour', ended: { note: 'two barrows' } }]);
    expect(week.problems.begun).toHaveLength(1);
  });

  test('against the week before, and the usual', () => {
    const book = aWeek();
    expect(report(book).before.measuredKg).toBe(40);
    expect(report(book).usual).toBeNull();
    const late = book.log('2026-06-02T08:00', cart(35.5));
    expect(report(book).usual).toEqual({ weeks: 2, measuredKg: 30, estimatedKg: 0 });
    book.undo(late, '2026-06-22T08:00');
    expect(report(book).usual).toBeNull();
  });

  test('a week that is still running says so', () => {
    expect(report(aWeek(), '2026-06-21T20:00').complete).toBe(false);
  });

  test('a late line changes a week that was told, once and by so much', () => {
    const book = aWeek();
    const before = book.picture();
    expect(weekChange(before, before, MONDAY)).toBeNull();
    const line = book.log('2026-06-18T12:00', cart(58.2), { happenedAt: '2026-06-18T14:30:00.000Z' });
    expect(weekChange(before, book.picture(), MONDAY)).toEqual({
      weekFrom: MONDAY,
      measuredKg: 42.7,
      estimatedKg: 0,
      loads: 1,
    });
    book.undo(line, '2026-06-23T08:00');
    expect(weekChange(before, book.picture(), MONDAY)).toBeNull();
  });
});

describe('sums', () => {
  test('twelve typed pounds add up to what a calculator says', () => {
    const typed = [22, 31.4, 18.75, 40.1, 27.3, 12.6, 33.35, 29.9, 8.05, 44.2, 19.6, 25.75];
    const book = new Book();
    for (const lb of typed)
      book.log('2026-06-16T08:00', { kind: 'weigh-in', material: 'food-scraps', kg: lb * LB });
    // 313 lb in all, and 313 × 0.45359237 = 141.97441181 exactly; each load is kept to a microgram.
    const { measuredKg } = report(book).feed;
    expect(measuredKg).toBeCloseTo(141.97441181, 8);
    expect((measuredKg / LB).toFixed(6)).toBe('313.000000');
  });

  test('days add up in any order and any grouping', () => {
    const weights = fc.array(fc.tuple(fc.integer({ min: 0, max: 6 }), fc.integer({ min: 160, max: 9000 })), {
      minLength: 1,
      maxLength: 30,
    });
    fc.assert(
      fc.property(weights, (loads) => {
        const book = new Book();
        for (const [day, tenths] of loads) book.log(`2026-06-${15 + day}T08:00`, cart(tenths / 10));
        const picture = book.picture();
        const days = Object.values(picture.months).flatMap((month) => Object.values(month));
        expect(sumDays([...days].reverse())).toEqual(weekTotals(picture, MONDAY));
        const halves = ['2026-06-15', '2026-06-18'].map((from, i) =>
          totalsBetween(picture, from, i === 0 ? '2026-06-17' : '2026-06-21'),
        );
        expect(sumDays(halves)).toEqual(weekTotals(picture, MONDAY));
      }),
    );
  });
});
