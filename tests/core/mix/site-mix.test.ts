import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  correctionFor,
  loadsAt,
  mixOf,
  mixPartsOf,
  mixPlace,
  mixPlaces,
  moistureTest,
  type Picture,
  siteAdditions,
  siteLimits,
  testAt,
} from '#core';
import { Site } from '#records';
import { Book, cart, chips } from '../picture/book.ts';

const day = '2026-05-12';
const delivery = (material: string, litres: number) => ({ kind: 'delivery', material, litres });
const correction = (picture: Picture, at = '2026-05-12T20:00:00.000Z') => {
  const where = mixPlace(picture, day);
  const parts = mixPartsOf(loadsAt(picture, day, where));
  return correctionFor({
    parts,
    additions: siteAdditions(picture, day),
    limits: siteLimits(picture, day, at, where),
    test: testAt(picture, where, parts),
  });
};

describe('what a site can add', () => {
  test('chips by the barrow, of unknown stock, where nothing else was said', () => {
    const got = siteAdditions(new Book().picture(), day);
    expect(got).toEqual([
      { material: 'wood-chips', container: 'barrow', kg: 24.65, litres: 85, stock: null, own: null },
    ]);
  });
  test('the stock that was counted, in whole barrows; other materials that are stocked', () => {
    const book = new Book();
    book.log('2026-05-11T08:00', { kind: 'level', material: 'wood-chips', litres: 700 });
    book.log('2026-05-11T08:05', delivery('sawdust', 300));
    book.log('2026-05-11T08:06', delivery('finished-compost', 300));
    const got = siteAdditions(book.picture(), day);
    expect(got.map(({ material, stock }) => [material, stock])).toEqual([
      ['wood-chips', 8],
      ['sawdust', 3],
    ]);
  });
  test('barrows that were weighed teach what one holds; the own moisture is taken', () => {
    const book = new Book();
    for (const [at, kg] of [
      ['2026-05-08T08:00', 34],
      ['2026-05-09T08:00', 36],
      ['2026-05-10T08:00', 38],
    ] as const)
      book.log(at, chips(kg, { container: 'barrow', basis: 'gross' }));
    book.log('2026-05-10T09:00', { kind: 'setting', name: 'moisture:wood-chips', value: 25 });
    const [barrow] = siteAdditions(book.picture(), day);
    // 36 − 14 of tare
    expect(barrow!.kg).toBeCloseTo(22, 9);
    expect(barrow!.own!.moisturePct!.typical).toBe(25);
  });
  test('water only where the mix is dry', () => {
    const picture = new Book().picture();
    expect(siteAdditions(picture, day, true).at(-1)).toMatchObject({
      material: 'water',
      container: 'bucket',
      kg: 20,
    });
  });
});

describe('the mix of the day', () => {
  test('too few chips in stock is said', () => {
    const book = new Book();
    book.log('2026-05-11T08:00', { kind: 'level', material: 'wood-chips', litres: 100 });
    book.log('2026-05-12T08:00', cart(66.5));
    book.log('2026-05-12T08:05', cart(70));
    expect(correction(book.picture())).toMatchObject({ code: 'infeasible', limiting: 'stock' });
  });
  test('a squeeze of the drum overrides the sum, until the next load', () => {
    const book = new Book();
    book.log('2026-05-12T08:00', cart(66.5));
    book.log('2026-05-12T08:01', chips(12));
    book.log('2026-05-12T09:00', { kind: 'moisture', place: 'drum', feel: 'right' });
    expect(correction(book.picture())).toMatchObject({
      code: 'enough',
      squeeze: false,
      before: { test: { how: 'squeeze' } },
    });
    // A test logged late does not take the place of a newer one.
    book.log('2026-05-12T07:00', { kind: 'moisture', place: 'drum', feel: 'dripping' });
    expect(correction(book.picture()).before.moisturePct!.typical).toBe(57);
    book.log('2026-05-12T10:00', cart(66.5));
    expect(correction(book.picture())).toMatchObject({ code: 'add', before: { test: null } });
  });
  test('a moisture test in percent is good to 3 points', () => {
    const book = new Book();
    book.log('2026-05-12T09:00', { kind: 'moisture', place: 'drum', percent: 66 });
    expect(moistureTest(book.picture().drums.drum!.moisture)!.moisturePct).toEqual({
      typical: 66,
      low: 63,
      high: 69,
    });
    expect(moistureTest(null)).toBeNull();
  });
  test("the site's recipe is taken, and a full drum has no room", () => {
    const book = new Book();
    book.log('2026-05-11T08:00', {
      kind: 'setting',
      name: 'recipe',
      value: { chips: 2, food: 1, by: 'volume' },
    });
    book.log('2026-05-12T08:00', cart(68.5));
    // 53 kg ÷ 0.53 = 100 L of food, 200 L of chips, 3 barrows of 85 L
    expect(correction(book.picture())).toMatchObject({ window: 'recipe', add: [{ count: 3 }] });
    book.log('2026-05-12T09:00', { kind: 'level', place: 'drum', fraction: 1 });
    expect(correction(book.picture())).toMatchObject({ code: 'infeasible', limiting: 'room' });
  });
});

describe('which loads are one mix', () => {
  type Load = { localDate: string; at: string; place: string | null; material: string };
  let minute = 10;
  const load = (place: string | null, material = 'food-scraps', localDate = day): Load => {
    minute += 1;
    return { localDate, at: `${localDate}T08:${minute}:00.000Z`, place, material };
  };
  const at = (loads: Load[], place: string | null, drums = {}) =>
    loadsAt({ drums, mixLoads: loads } as never, day, place).map(({ material }) => material);
  const loads = [
    load(null, 'straw'),
    load('bay 1', 'food-scraps'),
    load(null, 'wood-chips'),
    load('bay 2', 'bread'),
    load(null, 'leaves'),
    load('bay 1', 'sawdust'),
    load('bay 2', 'coffee-grounds', '2026-05-11'),
  ];
  test('one with no place goes with the one before it, the first with the first that has one', () => {
    expect(at(loads, 'bay 1')).toEqual(['straw', 'food-scraps', 'wood-chips', 'sawdust']);
    expect(at(loads, 'bay 2')).toEqual(['bread', 'leaves']);
    expect(at(loads, null)).toEqual([]);
    expect(at([load(null)], null)).toEqual(['food-scraps']);
  });
  test('at a site with a drum it goes into the drum', () => {
    expect(at(loads, 'drum', { drum: {} })).toEqual(['straw', 'wood-chips', 'leaves']);
  });
  test('a place named at the same instant stands before the one before it', () => {
    const [first, second] = [load('bay 1', 'food-scraps'), load('bay 2', 'wood-chips')];
    const beside = { ...load(null, 'bread'), at: second!.at };
    for (const order of [
      [first!, second!, beside],
      [first!, beside, second!],
      [beside, second!, first!],
    ])
      expect(at(order, 'bay 2').sort()).toEqual(['bread', 'wood-chips']);
  });
  test('the order of loads of one instant changes no mix of any place', () => {
    const loadOf = fc.record({
      material: fc.constantFrom('food-scraps', 'wood-chips', 'leaves', 'coffee-grounds'),
      kg: fc.integer({ min: 5, max: 90 }),
      place: fc.constantFrom('bay 1', 'bay 2', null),
      minute: fc.constantFrom('08:00', '08:05'),
    });
    const bays = Site.parse({ name: 'Reed Corner', timeZone: 'Europe/London', piles: ['bay 1', 'bay 2'] });
    fc.assert(
      fc.property(
        fc
          .array(loadOf, { minLength: 2, maxLength: 8 })
          .chain((loads) =>
            fc.tuple(fc.constant(loads), fc.shuffledSubarray(loads, { minLength: loads.length })),
          ),
        ([loads, shuffled]) => {
          const pictureOf = (order: typeof loads) => {
            const book = new Book(bays);
            for (const { material, kg, place, minute: clock } of order)
              book.log(`${day}T${clock}`, {
                kind: 'weigh-in',
                material,
                kg,
                basis: 'net',
                ...(place ? { place } : {}),
              } as never);
            return book.picture();
          };
          const [one, other] = [pictureOf(loads), pictureOf(shuffled)];
          for (const place of ['bay 1', 'bay 2', null]) {
            const [sum, again] = [one, other].map((picture) => {
              const mix = mixOf(mixPartsOf(loadsAt(picture, day, place)));
              return [mix.kg, mix.moisturePct?.typical ?? 0, mix.cn?.typical ?? 0, mix.litres].map((each) =>
                each.toFixed(6),
              );
            });
            expect(again).toEqual(sum);
          }
        },
      ),
      { numRuns: 60 },
    );
  });
  test('the places of a day, in the order in which they were first loaded', () => {
    expect(mixPlaces({ drums: {}, mixLoads: loads } as never, day)).toEqual(['bay 1', 'bay 2']);
  });
});

describe('limits that the site has set', () => {
  const limitsWith = (...settings: [string, unknown][]) => {
    const book = new Book();
    for (const [name, value] of settings)
      book.log('2026-05-11T08:00', { kind: 'setting', name, value } as never);
    return siteLimits(book.picture(), day, '2026-05-12T20:00:00.000Z');
  };
  test('its window of water and its band of C:N', () => {
    expect(limitsWith(['mix-water', { low: 50, high: 58 }]).moisturePct).toMatchObject({ low: 50, high: 58 });
    expect(limitsWith(['mix-cn', { low: 28, high: 35 }])).toMatchObject({ cnLow: 28, cnHigh: 35 });
    expect(limitsWith()).toMatchObject({ cnLow: 25, cnHigh: null });
  });
  // 7 CFR 205.203(c)(2): 25:1 to 40:1 (seen quoted)
  test('a rule for heat that demands a band of C:N brings it along', () => {
    expect(limitsWith(['rule-set', 'organic-windrow-15d'])).toMatchObject({ cnLow: 25, cnHigh: 40 });
    expect(limitsWith(['rule-set', 'vessel-3d'])).toMatchObject({ cnHigh: null });
  });
  test('how full is full bounds the room', () => {
    const room = (full: number | null) => {
      const book = new Book();
      if (full !== null) book.log('2026-05-11T08:00', { kind: 'setting', name: 'drum-full', value: full });
      book.log('2026-05-12T08:00', { kind: 'level', place: 'drum', fraction: 0.5 });
      return siteLimits(book.picture(), day, '2026-05-12T12:00:00.000Z').roomLitres!;
    };
    expect(room(null) - room(0.6)).toBeCloseTo(0.15 * 5000, 6);
  });
});
