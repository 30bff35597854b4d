import { describe, expect, test } from 'vitest';
import {
  acceptance,
  additionOf,
  mixLimits,
  NO_STOCK,
  plannedMix,
  type Stock,
  stockAfter,
  stockDensity,
  stockNow,
} from '#core';

const barrow = additionOf({ material: 'wood-chips', container: 'barrow', containerLitres: 85, stock: 20 })!;
const cart = { material: 'food-scraps', container: 'cart', count: 3, usual: { n: 8, meanKg: 50, m2: 700 } };

describe('before tipping', () => {
  // Check value: common practice, no source. About 150 kg of food, 4 barrows (about 100 kg).
  test('3 carts coming: 4 barrows, the first on the floor', () => {
    const got = plannedMix({
      loads: [cart],
      additions: [barrow],
      limits: mixLimits({ place: 'drum' }),
      inDrum: true,
    });
    expect(got).toMatchObject({ expectedKg: 150, from: 'learned', noWeight: [] });
    expect(got.correction.add).toEqual([
      { material: 'wood-chips', container: 'barrow', count: 4, kg: 98.6, litres: 340 },
    ]);
    expect(got.firstOnFloor).toEqual({ material: 'wood-chips', container: 'barrow' });
    // deviation √(700/7) = 10, twice that, times √3
    expect(got.highKg - 150).toBeCloseTo(20 * Math.sqrt(3), 9);
  });
  test('one or two weights stand before a table, with a wide range', () => {
    const plan = (usual: { n: number; meanKg: number; m2: number } | null) =>
      plannedMix({
        loads: [{ ...cart, usual, containerLitres: 240 }],
        additions: [barrow],
        limits: mixLimits({ place: 'drum' }),
        inDrum: true,
      });
    const one = plan({ n: 1, meanKg: 50, m2: 0 });
    expect(one).toMatchObject({ expectedKg: 150, from: 'learned' });
    expect(one.highKg - 150).toBeCloseTo(25 * Math.sqrt(3), 9);
    expect(150 - one.lowKg).toBeCloseTo(25 * Math.sqrt(3), 9);
    expect(plan({ n: 2, meanKg: 60, m2: 8 })).toMatchObject({ expectedKg: 180, from: 'learned' });
    expect(plan(null)).toMatchObject({ from: 'published' });
  });
  test('chips that are in already count', () => {
    const got = plannedMix({
      loads: [cart],
      additions: [barrow],
      limits: mixLimits({ place: 'drum' }),
      already: [{ material: 'wood-chips', kg: 49.3 }],
      inDrum: false,
    });
    expect(got.correction.add.map((one) => one.count)).toEqual([2]);
    expect(got.firstOnFloor).toBeNull();
  });
  test('no weights yet: by the litre as published, and a container with neither is named', () => {
    const got = plannedMix({
      loads: [
        { ...cart, usual: null, containerLitres: 240 },
        { ...cart, container: 'sack', count: 2, usual: null },
      ],
      additions: [barrow],
      limits: mixLimits({ place: 'drum' }),
      inDrum: true,
    });
    expect(got.from).toBe('published');
    expect(got.expectedKg).toBeCloseTo(327.8, 0);
    expect(got.noWeight).toEqual([{ container: 'sack', count: 2 }]);
  });
  test('a barrow by what it was found to hold, else by its litres', () => {
    expect(barrow).toMatchObject({ kg: 24.65, litres: 85, stock: 20 });
    expect(
      additionOf({ material: 'wood-chips', container: 'barrow', containerLitres: 85, setKg: 22 }),
    ).toMatchObject({ kg: 22, litres: 85 });
    expect(additionOf({ material: 'wood-chips', container: 'barrow' })).toBeNull();
    expect(additionOf({ material: 'pumpkins', container: 'barrow', containerLitres: 85 })).toBeNull();
  });
});

describe('stock', () => {
  const bulk = stockDensity('wood-chips')!;
  const moment = { entry: 9, at: '2026-05-12T13:00:00.000Z', localDate: '2026-05-12' };
  const use = (kg: number) => ({ kind: 'use', kg, litres: null }) as const;
  test('deliveries less use', () => {
    let stock: Stock = stockAfter(NO_STOCK, { kind: 'delivery', kg: null, litres: 4000 }, bulk);
    stock = stockAfter(stock, use(290), bulk);
    expect(stock).toEqual({ kg: 870, litres: 3000, since: null, usedKg: 290 });
  });
  test('chips down to 2 m3 stands, and the use begins anew', () => {
    const delivered = stockAfter(NO_STOCK, { kind: 'delivery', kg: 900, litres: null }, bulk);
    const before = stockAfter(delivered, use(70), bulk);
    expect(before.usedKg).toBe(70);
    const stock = stockAfter(before, { kind: 'level', kg: null, litres: 2000, moment }, bulk);
    expect(stock).toEqual({ kg: 580, litres: 2000, since: moment, usedKg: 0 });
  });
  test('days left at the present use, with its spread', () => {
    const stock = { kg: 580, litres: 2000, since: moment, usedKg: 0 };
    const got = stockNow(stock, [50, 30, 40, 40])!;
    // mean 40, deviation √(200/3), error 2 × √(200/3) ÷ 2 = 8.165
    expect(got.daysLeft!.typical).toBe(14.5);
    expect(got.daysLeft!.low).toBeCloseTo(580 / 48.165, 3);
    expect(got.daysLeft!.high).toBeCloseTo(580 / 31.835, 3);
    expect(stockNow(stock, [0, 0])).toMatchObject({ usePerDayKg: 0, daysLeft: null });
  });
  test('more used than the book knows of is said, not hidden', () => {
    const stock = stockAfter(
      stockAfter(NO_STOCK, { kind: 'delivery', kg: 50, litres: null }, bulk),
      use(80),
      bulk,
    );
    expect(stockNow(stock, [10])).toMatchObject({ kg: 0, short: true });
    expect(stockNow(stockAfter(NO_STOCK, use(80), bulk), [10])).toBeNull();
  });
  test('a delivery and a use of one instant give the same stock either way', () => {
    const start = stockAfter(NO_STOCK, { kind: 'level', kg: 20, litres: null, moment }, bulk);
    const delivery = { kind: 'delivery', kg: 300, litres: null } as const;
    const one = stockAfter(stockAfter(start, use(60), bulk), delivery, bulk);
    const other = stockAfter(stockAfter(start, delivery, bulk), use(60), bulk);
    expect(one.kg).toBeCloseTo(other.kg!, 9);
    expect(one.usedKg).toBe(other.usedKg);
  });
});

describe('may it go in', () => {
  const list = {
    bread: true,
    'Coffee grounds': true,
    meat: false,
    'compostable cups': false,
    'paper bags': true,
  };
  test.each([
    ['bread', 'yes', 'bread'],
    ['coffee ground', 'yes', 'Coffee grounds'],
    ['compostable cups', 'no', 'compostable cups'],
    ['cooked meat', 'no', 'meat'],
    ['paper', 'not-on-list', null],
    ['plastic-lined paper bags', 'not-on-list', null],
    ['dairy', 'not-on-list', null],
    ['', 'not-on-list', null],
  ])('%s: %s', (what, answer, item) => {
    expect(acceptance(list, what)).toMatchObject({ answer, item });
  });
  test('what is near is named', () => {
    expect(acceptance(list, 'paper towels').near).toEqual(['paper bags']);
  });
  test('plain lists, with a no in front; two lines that contradict take the careful one', () => {
    expect(acceptance(['épluchures', 'no meat'], 'epluchures').answer).toBe('yes');
    expect(acceptance(['épluchures', 'no meat'], 'meat').answer).toBe('no');
    expect(acceptance(['nougat'], 'nougat').answer).toBe('yes');
    expect(acceptance(['bones', 'no bones'], 'bones').answer).toBe('no');
    expect(acceptance([], 'bones').answer).toBe('not-on-list');
  });
});
