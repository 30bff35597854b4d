import { describe, expect, test } from 'vitest';
import { ashBalance, batchAt } from '#core';
import { Book, type Written } from './picture/book.ts';

const ash = (value: number, more: Partial<Written> = {}): Written => ({
  kind: 'lab-result',
  place: 'pile B',
  analyte: 'ash',
  value,
  unit: '%',
  ...more,
});
const fed = (): Book => {
  const book = new Book();
  book.log('2026-03-02T08:00', { kind: 'pile', pile: 'pile B', event: 'started' });
  const load = { kind: 'weigh-in', basis: 'net', place: 'pile B' };
  book.log('2026-03-03T08:00', { ...load, material: 'food-scraps', kg: 800 });
  book.log('2026-03-03T09:00', { ...load, material: 'wood-chips', kg: 400 });
  book.log('2026-03-20T08:00', { kind: 'pile', pile: 'pile B', event: 'full' });
  return book;
};
const of = (book: Book, date = '2026-12-01') => {
  const picture = book.picture();
  return ashBalance(picture, batchAt(picture, 'pile B')!, date);
};

describe('the loss by ash', () => {
  test('two results of one pile: ash of 15 % becomes 30 %, so half of the dry mass went', () => {
    const book = fed();
    book.log('2026-03-21T08:00', ash(15));
    book.log('2026-08-01T08:00', ash(30));
    // @source 1 − 15 × 70 ÷ (30 × 85) = 58.8 % of the organic matter, 1 − 15 ÷ 30 = 50 % of the dry mass (by hand)
    const found = of(book)!;
    expect(found).toMatchObject({ from: 'result', lastPct: 30, suspect: false, entry: 6 });
    expect(found.dryLossPct).toEqual({ typical: 50, low: 50, high: 50 });
    expect(found.organicLossPct.typical).toBeCloseTo(58.82, 2);
  });

  test('with one result the start is the ash of what came in, by mass, with its spread', () => {
    const book = fed();
    book.log('2026-03-02T07:00', { kind: 'setting', name: 'moisture:food-scraps', value: 75 });
    book.log('2026-03-02T07:01', { kind: 'setting', name: 'moisture:wood-chips', value: 50 });
    book.log('2026-03-02T07:02', { kind: 'setting', name: 'ash:food-scraps', value: 10 });
    book.log('2026-03-02T07:03', { kind: 'setting', name: 'ash:wood-chips', value: 2 });
    book.log('2026-08-01T08:00', ash(18));
    // 800 kg at 25 % dry hold 20 kg of ash, 400 kg at 50 % dry hold 4: 24 of 400 dry is 6 %.
    const found = of(book)!;
    expect(found.from).toBe('intake');
    expect(found.firstPct.typical).toBeCloseTo(6, 10);
    expect(found.dryLossPct.typical).toBeCloseTo(100 * (1 - 6 / 18), 10);
  });

  test('typical values carry their spread; organic matter tells the same as ash', () => {
    const book = fed();
    book.log('2026-08-01T08:00', ash(65, { analyte: 'organic-matter' }));
    const found = of(book)!;
    expect(found.lastPct).toBe(35);
    expect(found.dryLossPct.low).toBeLessThan(found.dryLossPct.typical);
    expect(found.dryLossPct.high).toBeGreaterThan(found.dryLossPct.typical);
  });

  test('less ash at the end than at the start is suspect, and no loss', () => {
    const book = fed();
    book.log('2026-03-21T08:00', ash(30));
    book.log('2026-08-01T08:00', ash(20));
    expect(of(book)!.suspect).toBe(true);
  });

  test('nothing is said without a result, of a limit, or of a result that is still to come', () => {
    expect(of(fed())).toBeNull();
    const book = fed();
    book.log('2026-08-01T08:00', ash(30, { qualifier: '<' }));
    book.log('2026-08-02T08:00', ash(30));
    expect(of(book, '2026-08-01')).toBeNull();
    expect(of(book, '2026-08-02')).not.toBeNull();
  });
});
