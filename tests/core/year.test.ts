import { describe, expect, test } from 'vitest';
import { addDays, feedback, massBalance, yearSoFar } from '#core';
import { Site } from '#records';
import { Book, cart, chips, site } from './picture/book.ts';

/** A book with one load of feed (kg, net) on each Wednesday from a date on. */
function weekly(kgs: readonly number[], from = '2026-01-07', of = site): Book {
  const book = new Book(of);
  kgs.forEach((kg, i) => {
    book.log(`${addDays(from, 7 * i)}T09:00`, {
      kind: 'weigh-in',
      material: 'food-scraps',
      kg,
      basis: 'net',
    });
  });
  return book;
}

describe('the year so far', () => {
  test('what is in, what is missing and what a week must bring', () => {
    const book = weekly(Array.from({ length: 20 }, () => 300));
    book.log('2026-05-20T10:00', { kind: 'weigh-in', material: 'food-scraps', litres: 100 });
    book.log('2026-05-20T10:10', chips(500));
    const year = yearSoFar(book.picture(), '2026-05-24');
    expect(year).toMatchObject({ from: '2026-01-01', to: '2026-12-31', daysGone: 144, daysLeft: 221 });
    expect(year.feed.measuredKg).toBe(6000);
    expect(year.feed.estimatedKg).toBeCloseTo(45.5, 1);
    expect(year.targetKg).toBe(20_000);
    expect(year.neededPerWeekKg).toBeCloseTo(((20_000 - 6000 - year.feed.estimatedKg) / 221) * 7, 6);
  });

  test('it starts where the site says', () => {
    const july = Site.parse({ ...site, yearStarts: 7 });
    const book = weekly([100, 200, 400], '2026-06-24', july);
    expect(yearSoFar(book.picture(), '2026-07-08')).toMatchObject({
      from: '2026-07-01',
      to: '2027-06-30',
      feed: { measuredKg: 600 },
    });
  });

  test('even weeks give a sure forecast, by the days that are open', () => {
    const book = weekly(Array.from({ length: 21 }, () => 350));
    const year = yearSoFar(book.picture(), '2026-05-31');
    // 21 × 350 in hand, 50 a day for 214 days.
    expect(year.forecastKg).toEqual({ typical: 18_050, low: 18_050, high: 18_050 });
    expect(year.pace).toBe('behind');
    book.log('2026-05-31T12:00', {
      kind: 'setting',
      name: 'closed',
      value: { from: '2026-07-01', to: '2026-07-14' },
    });
    expect(yearSoFar(book.picture(), '2026-05-31').forecastKg?.typical).toBe(18_050 - 14 * 50);
  });

  test('a closed fortnight does not lower the pace', () => {
    const kgs = Array.from({ length: 21 }, (_, i) => (i === 10 || i === 11 ? 0 : 350));
    const book = weekly(kgs);
    book.log('2026-03-01T12:00', {
      kind: 'setting',
      name: 'closed',
      value: { from: '2026-03-16', to: '2026-03-29' },
    });
    // Closures are kept as long as the days themselves.
    const year = yearSoFar(book.picture(), '2026-05-31');
    expect(year.forecastKg?.typical).toBeCloseTo(year.feed.measuredKg + 50 * year.daysLeft, 6);
  });

  test('fewer than four whole weeks tell no pace', () => {
    const year = yearSoFar(weekly([300, 300, 300]).picture(), '2026-01-25');
    expect(year).toMatchObject({ forecastKg: null, pace: 'cannot-tell' });
  });

  test('no target, no verdict; a target reached is reached', () => {
    const none = Site.parse({ ...site, targetTonnesPerYear: null });
    const even = Array.from({ length: 10 }, () => 300);
    expect(yearSoFar(weekly(even, '2026-01-07', none).picture(), '2026-03-20')).toMatchObject({
      targetKg: null,
      donePct: null,
      pace: 'cannot-tell',
    });
    const small = Site.parse({ ...site, targetTonnesPerYear: 2.5 });
    expect(yearSoFar(weekly(even, '2026-01-07', small).picture(), '2026-03-20').pace).toBe('reached');
  });

  test('a cap for a month is watched', () => {
    const book = weekly([300, 300, 300]);
    book.log('2026-01-21T12:00', { kind: 'setting', name: 'cap:month', value: 800 });
    expect(yearSoFar(book.picture(), '2026-01-25').caps).toEqual([
      { per: 'month', capKg: 800, kg: 900, over: true, from: '2026-01-01', to: '2026-01-31' },
    ]);
  });

  test('the interval holds the end of made-up years about 4 times in 5', () => {
    let seed = 20_260_615;
    const random = (): number => {
      seed = (Math.imul(seed, 1_664_525) + 1_013_904_223) >>> 0;
      return (seed + 0.5) / 2 ** 32;
    };
    const normal = () => Math.sqrt(-2 * Math.log(random())) * Math.cos(2 * Math.PI * random());
    let held = 0;
    const years = 400;
    for (let i = 0; i < years; i += 1) {
      const kgs = Array.from({ length: 52 }, () => 400 + 80 * normal());
      const year = yearSoFar(weekly(kgs.slice(0, 20)).picture(), '2026-05-24');
      const truth = kgs.slice(0, 51).reduce((sum, kg) => sum + kg, 0);
      const { low, high } = year.forecastKg!;
      // The forecast speaks of all the days left: 31.57 weeks, where the made-up year has 31 more loads.
      const scale = year.daysLeft / 7 / 31;
      const rest = truth - year.feed.measuredKg;
      const end = year.feed.measuredKg + rest * scale;
      if (low <= end && end <= high) held += 1;
    }
    console.info(`year forecast: the 80 % interval held ${held} of ${years} made-up years`);
    expect(held / years).toBeGreaterThan(0.75);
    expect(held / years).toBeLessThan(0.85);
  });
});

describe('mass balance', () => {
  test('what is not out is split into published loss and what is unexplained', () => {
    const book = weekly([1000]);
    book.log('2026-02-01T09:00', chips(500));
    book.log('2026-02-02T09:00', { kind: 'weigh-in', material: 'water', kg: 100 });
    book.log('2026-03-01T09:00', { kind: 'removal', pile: 'pile A', kg: 400 });
    book.log('2026-03-01T10:00', { kind: 'removal', pile: 'pile A', litres: 250 });
    book.log('2026-03-01T11:00', { kind: 'removal', material: 'residue', kg: 20, source: 'cafe' });
    const balance = massBalance(book.picture(), '2026-01-01', '2026-12-31');
    expect(balance.inKg).toEqual({ feed: 1000, bulking: 500, water: 100, estimated: 0 });
    expect(balance.outKg).toEqual({ compost: 400, residue: 20, other: 0 });
    expect(balance.notOutKg).toBe(1180);
    expect(balance.unexplainedKg.low).toBeCloseTo(1180 - 0.62 * 1600, 8);
    expect(balance.unexplainedKg.high).toBeCloseTo(1180 - 0.4 * 1600, 8);
    expect(balance.yield).toEqual({ kgPerKg: 0.4, litresPerKg: 0.25 });
  });
});

describe('what a kitchen is told', () => {
  test('3 of 22 carts dirty this month, mostly gloves', () => {
    const book = new Book();
    for (let i = 0; i < 22; i += 1) {
      const dirty = i % 7 === 0 && i < 20;
      book.log(`2026-06-${String(1 + i).padStart(2, '0')}T08:00`, {
        ...cart(60, { source: 'north kitchen' }),
        ...(dirty
          ? { flags: ['contaminated'], ofWhich: [{ what: i === 7 ? 'glass' : 'gloves', kg: 0.2 }] }
          : {}),
      });
    }
    book.log('2026-06-30T08:00', cart(50, { source: 'cafe' }));
    book.log('2026-07-01T08:00', cart(50, { source: 'north kitchen', flags: ['contaminated'] }));
    const [first, second] = feedback(book.picture(), '2026-06-01', '2026-06-30');
    expect(first).toMatchObject({ source: 'north kitchen', loads: 22, dirty: 3, kg: 22 * 44.5 });
    expect(first!.found).toEqual([
      { what: 'gloves', times: 2 },
      { what: 'glass', times: 1 },
    ]);
    expect(second).toMatchObject({ source: 'cafe', loads: 1, dirty: 0, dirtyPct: { typical: 0 } });
    // Wilson 95 % of 3 in 22, as statistics packages give it: 4.7 to 33.3 % (from memory of the formula).
    expect(first!.dirtyPct!.low).toBeCloseTo(4.75, 1);
    expect(first!.dirtyPct!.high).toBeCloseTo(33.33, 1);
  });
});
