import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bucketDensity,
  deviationOf,
  estimateKg,
  FOOD_KG_PER_LITRE,
  netKg,
  publishedKgPerLitre,
  type SettingTimeline,
  sumKg,
  type Tally,
  tallyLess,
  tallyMore,
  tareAt,
  usualKg,
} from '#core';
import { fromKg, toKg, toLitres } from '#records';

// biome-ignore lint/suspicious/noExplicitAny: each published row has its own fields
type Row = { id: string; inputs: any; expected: any; source: string };
const rows = JSON.parse(readFileSync('fixtures/published/mix.json', 'utf8')) as Row[];
const row = (id: string) => rows.find((one) => one.id === id)!;

describe('published weights and volumes', () => {
  // Sources stand in fixtures/published/mix.json: EPA 2016 factors, BioCycle 2012, Cooperband 2002.
  test('WT-01: a 96 gal cart at 5 lb a gallon is 480 lb', () => {
    const { inputs, expected } = row('WT-01');
    expect(FOOD_KG_PER_LITRE.hauler).toBeCloseTo((inputs.lb_per_gal * 0.45359237) / 3.785411784, 12);
    const kg = toLitres(inputs.cart_gal, 'gal') * FOOD_KG_PER_LITRE.hauler;
    expect(fromKg(kg, 'lb')).toBeCloseTo(expected.lb, 9);
  });
  test('WT-02: a 64 gal cart of food scraps by the gallon factor', () => {
    const { inputs, expected } = row('WT-02');
    const got = estimateKg({ material: 'food-scraps', litres: toLitres(inputs.cart_gal, 'gal') })!;
    expect(fromKg(got.estimatedKg, 'lb')).toBeCloseTo(expected.lb, 1);
    expect(got).toMatchObject({ from: 'published', factorUnit: 'kg/L' });
  });
  test('WT-03: a 240 L cart', () => {
    const { inputs, expected } = row('WT-03');
    const got = estimateKg({ material: 'food-scraps', count: 1, containerLitres: inputs.cart_L })!;
    expect(got.estimatedKg).toBeCloseTo(expected.kg, 1);
  });
  test('WT-04: two published factors differ by 1.94, and the range holds both', () => {
    const ratio = FOOD_KG_PER_LITRE.epaByGallon / FOOD_KG_PER_LITRE.epaByYard;
    expect(Math.abs(ratio - row('WT-04').expected.ratio_of_densities)).toBeLessThanOrEqual(0.01);
    const range = publishedKgPerLitre('food-scraps')!;
    expect(range.high / range.low).toBeGreaterThan(3.7);
  });
  test('WT-05: the low end of the same cart, by the yard factor', () => {
    const { inputs, expected } = row('WT-05');
    const got = estimateKg({ material: 'food-scraps', litres: toLitres(inputs.cart_gal, 'gal') })!;
    expect(fromKg(got.low, 'lb')).toBeCloseTo(expected.lb, 1);
  });
  test('BD-01: a bucket of 20 L', () => {
    const { inputs, expected } = row('BD-01');
    const got = bucketDensity({
      emptyKg: inputs.bucket_empty_kg,
      fullKg: inputs.bucket_full_kg,
      litres: inputs.bucket_L,
    });
    expect(got).toBe(expected.kg_per_m3);
    expect(() => bucketDensity({ emptyKg: 10, fullKg: 1, litres: 20 })).toThrow(RangeError);
  });
  test('TARE-01: gross less tare', () => {
    const { inputs, expected } = row('TARE-01');
    expect(netKg({ kg: inputs.gross_kg, container: 'cart' }, inputs.tare_kg)).toBe(expected.net_kg);
    expect(() => netKg({ kg: 12, container: 'cart' }, 15.5)).toThrow(
      /gross 12 kg is below the tare of 15.5 kg/,
    );
  });
});

describe('net', () => {
  // 66.5 − 18: common practice, no source.
  test.each([
    [{ kg: 66.5, container: 'cart' }, 18, 48.5],
    [{ kg: 190, container: 'cart', count: 3 }, 15.5, 143.5],
    [{ kg: 61.5, container: 'cart', tareKg: 15.4 }, 18, 46.1],
    [{ kg: 61.5, container: 'cart', tareKg: 15.4 }, null, 46.1],
    [{ kg: 12 }, null, 12],
    [{ kg: 44, container: 'cart', basis: 'net' as const }, 18, 44],
    [{ kg: 61.2, container: 'cart' }, null, null],
    [{ kg: 12.5, basis: 'gross' as const }, null, null],
  ])('%o with a tare of %s is %s', (weighed, tare, wanted) => {
    expect(netKg(weighed, tare)).toBe(wanted);
  });
});

describe('the tare in force', () => {
  const timeline: SettingTimeline = {
    'tare:cart': [
      { from: '2026-06-10', value: 18, entry: 40 },
      { from: '2026-05-01', value: 16, entry: 9 },
    ],
    'tare:cart 5': [{ from: '2026-06-01', value: 16.4, entry: 30 }],
    'tare:bucket': [{ from: '2026-06-12', value: 1.2, entry: 44 }],
  };
  const base = { cart: { tareKg: 15.5 }, barrow: {}, bucket: { tareKg: null } };
  test.each([
    ['cart', null, '2026-04-30', null, 15.5],
    ['cart', null, '2026-05-01', null, 16],
    ['cart', null, '2026-06-09T10:00', null, 16],
    ['cart', null, '2026-06-11', null, 18],
    // on the day of change, by the number of the line
    ['cart', null, '2026-06-10', 39, 16],
    ['cart', null, '2026-06-10', 41, 18],
    // its own once it has one; the old net stays
    ['cart', 5, '2026-05-20', null, 16],
    ['cart', 5, '2026-06-02', null, 16.4],
    ['cart', '5', '2026-06-20', null, 16.4],
    ['cart', 6, '2026-06-20', null, 18],
    // told afterwards: completes what waited
    ['bucket', null, '2026-03-01', 3, 1.2],
    ['barrow', null, '2026-03-01', null, null],
    ['constructor', null, '2026-03-01', null, null],
  ])('%s %s on %s (line %s) is %s', (container, label, date, entry, wanted) => {
    expect(tareAt(timeline, base, container, label, date, entry)).toBe(wanted);
  });
  test('two told afterwards: the first told completed the weight, the second changes nothing', () => {
    const late: SettingTimeline = {
      'tare:bag': [
        { from: '2026-07-01', value: 0.4, entry: 7 },
        { from: '2026-06-20', value: 0.3, entry: 5 },
      ],
    };
    expect(tareAt(late, {}, 'bag', null, '2026-06-01')).toBe(0.3);
  });
  test('a later tare changes no net that was known before it, whatever was set', () => {
    const day = fc.integer({ min: 1, max: 28 }).map((n) => `2026-05-${String(n).padStart(2, '0')}`);
    fc.assert(
      fc.property(
        fc.array(fc.tuple(day, fc.integer({ min: 1, max: 40 })), { minLength: 1, maxLength: 6 }),
        day,
        (set, on) => {
          const lines = set.map(([from, value], index) => ({ from, value, entry: index + 1 }));
          const before = tareAt({ 'tare:cart': lines }, { cart: { tareKg: 50 } }, 'cart', null, on);
          const after = tareAt(
            { 'tare:cart': [...lines, { from: '2026-05-29', value: 99, entry: 90 }] },
            { cart: { tareKg: 50 } },
            'cart',
            null,
            on,
          );
          expect(after).toBe(before);
          const shuffled = tareAt(
            { 'tare:cart': [...lines].reverse() },
            { cart: { tareKg: 50 } },
            'cart',
            null,
            on,
          );
          expect(shuffled).toBe(before);
        },
      ),
    );
  });
});

describe('sums', () => {
  test('ten times 0.1 is 1, which plain adding misses', () => {
    const tenths = Array.from({ length: 10 }, () => 0.1);
    expect(sumKg(tenths)).toBe(1);
    expect(tenths.reduce((a, b) => a + b, 0)).not.toBe(1);
    expect(() => sumKg([1, Number.NaN])).toThrow(RangeError);
  });
  test('typed pounds add up to the last digit shown, in any order', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 5000 }), { maxLength: 2000 }), (tenths) => {
        const kg = tenths.map((tenth) => toKg(tenth / 10, 'lb'));
        const sum = tenths.reduce((a, b) => a + b, 0);
        expect(Math.round(fromKg(sumKg(kg), 'lb') * 10)).toBe(sum);
        expect(sumKg([...kg].reverse())).toBe(sumKg(kg));
      }),
    );
  });
});

describe('what a container usually holds', () => {
  const tallied = (kg: number[]) => kg.reduce(tallyMore, { n: 0, meanKg: 0, m2: 0 } as Tally);
  test('mean and deviation by hand: 40, 45, 50, 65', () => {
    // mean 50, squares 100 + 25 + 0 + 225 = 350, deviation √(350/3)
    const tally = tallied([40, 45, 50, 65]);
    expect(tally.meanKg).toBeCloseTo(50, 12);
    expect(deviationOf(tally)).toBeCloseTo(Math.sqrt(350 / 3), 12);
    expect(tallyLess(tally, 65).meanKg).toBeCloseTo(45, 12);
    expect(tallyLess(tally, 65).m2).toBeCloseTo(50, 9);
    expect(usualKg(tallied([40, 45]))).toBeNull();
  });
  test('the site sets a factor, else it is learned, else published; each says so', () => {
    const learned = tallied([8, 9, 10]);
    const bucket = { material: 'food-scraps', count: 3, containerLitres: 20, learned };
    expect(estimateKg({ ...bucket, setKg: 9.5 })).toMatchObject({
      estimatedKg: 28.5,
      factor: 9.5,
      from: 'site-setting',
      factorUnit: 'kg/container',
    });
    expect(estimateKg(bucket)).toMatchObject({ estimatedKg: 27, low: 21, high: 33, from: 'learned' });
    expect(estimateKg({ ...bucket, learned: null })).toMatchObject({ from: 'published', factorUnit: 'kg/L' });
    expect(estimateKg({ ...bucket, count: null, litres: 30 })).toMatchObject({
      estimatedKg: 13.5,
      from: 'learned',
    });
    expect(estimateKg({ material: 'food-scraps', count: 0.5, setKg: 10 })).toMatchObject({ estimatedKg: 5 });
    expect(estimateKg({ material: 'food-scraps', count: 2 })).toBeNull();
    expect(estimateKg({ material: 'pumpkins', litres: 100 })).toBeNull();
  });
});

describe('a tare told in the course of a day', () => {
  const settings = {
    'tare:cart': [{ from: '2026-05-12', at: '2026-05-12T10:00:00.000Z', value: 18, entry: 5 }],
  };
  const base = { cart: { tareKg: 15.5 } };

  test('leaves alone what was weighed before it, also when that is amended later', () => {
    expect(tareAt(settings, base, 'cart', null, '2026-05-12', 9, '2026-05-12T09:00:00.000Z')).toBe(15.5);
    expect(tareAt(settings, base, 'cart', null, '2026-05-12', 9, '2026-05-12T11:00:00.000Z')).toBe(18);
  });
});
