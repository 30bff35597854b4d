import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  exactly,
  INGREDIENTS,
  ingredientFor,
  type MixPart,
  mixOf,
  propagate,
  spread,
  squeezeTest,
} from '#core';

const scraps = (kg: number): MixPart => ({ material: 'food-scraps', kg });
const chips = (kg: number): MixPart => ({ material: 'wood-chips', kg });

describe('the usual load of scraps and chips', () => {
  // Check values: common practice, no source; worked by hand from the typical values.
  const mix = mixOf([scraps(48.5), chips(12)]);
  test('is about 66 % water, likely 58 to 74', () => {
    expect(Math.round(mix.moisturePct!.typical)).toBe(66);
    expect(Math.abs(mix.moisturePct!.low - 58)).toBeLessThanOrEqual(1);
    expect(Math.abs(mix.moisturePct!.high - 74)).toBeLessThanOrEqual(1);
  });
  test('is about 25:1, 440 to 520 kg/m³, 49 to 55 % air', () => {
    expect(Math.round(mix.cn!.typical)).toBe(25);
    expect(mix.bulkKgPerM3!.typical).toBeGreaterThan(440);
    expect(mix.bulkKgPerM3!.typical).toBeLessThan(520);
    expect(mix.freeAirPct!.low).toBeGreaterThanOrEqual(49);
    expect(mix.freeAirPct!.high).toBeLessThanOrEqual(55);
    expect(mix.freeAirLikelyPct!.low).toBeLessThan(mix.freeAirPct!.low);
    expect(mix.freeAirLikelyPct!.high).toBeGreaterThan(mix.freeAirPct!.high);
  });
  test('comes to about 57 % with one more barrow of chips', () => {
    expect(Math.round(mixOf([scraps(48.5), chips(12), chips(25)]).moisturePct!.typical)).toBe(57);
  });
});

describe('the table of materials', () => {
  // (100 − ash) ÷ C lies between 1.6 and 2.25: extension rule 1.8, soil laboratory 1.72, wood near 2, cellulose 2.25.
  test.each(
    Object.values(INGREDIENTS)
      .filter((one) => one.role !== 'water')
      .map((one) => [one.material, one] as const),
  )('%s has carbon, nitrogen and ash that agree', (_, one) => {
    const perCarbon = (100 - one.ashPct.typical) / one.carbonPct.typical;
    expect(perCarbon).toBeGreaterThan(1.6);
    expect(perCarbon).toBeLessThan(2.25);
    for (const value of [one.moisturePct, one.carbonPct, one.nitrogenPct, one.ashPct, one.bulkKgPerM3]) {
      expect(value.low).toBeLessThanOrEqual(value.typical);
      expect(value.typical).toBeLessThanOrEqual(value.high);
    }
  });
  const ratio = (material: string) => {
    const { carbonPct, nitrogenPct } = INGREDIENTS[material]!;
    return carbonPct.typical / nitrogenPct.typical;
  };
  // C:N rows of NRAES-54 appendix A and the British Columbia table.
  test.each([
    ['food-scraps', 14, 16],
    ['wood-chips', 400, 600],
    ['leafy-chips', 100, 250],
    ['sawdust', 300, 600],
    ['leaves', 40, 80],
    ['paper', 127, 178],
    ['straw', 48, 150],
    ['grass', 9, 25],
    ['coffee-grounds', 18, 22],
    ['manure', 22, 50],
    ['finished-compost', 10, 15],
  ])('%s has a C:N from %d to %d', (material, low, high) => {
    expect(ratio(material)).toBeGreaterThanOrEqual(low);
    expect(ratio(material)).toBeLessThanOrEqual(high);
  });
  test("the site's own figure stands before the table's", () => {
    expect(ingredientFor('wood-chips', { moisturePct: exactly(25) })!.moisturePct.typical).toBe(25);
    expect(ingredientFor('wood-chips', { moisturePct: exactly(25) })!.bulkKgPerM3.typical).toBe(290);
    expect(() => ingredientFor('wood-chips', { moisturePct: exactly(125) })).toThrow(RangeError);
  });
  test('a material that no table knows is named and left out', () => {
    const mix = mixOf([scraps(30), { material: 'pumpkins', kg: 47 }]);
    expect(mix.unknown).toEqual([{ material: 'pumpkins', kg: 47 }]);
    expect(mix.kg).toBe(30);
    expect(mix.why.assumed).toContain('left-out:pumpkins');
  });
});

describe('a test of the mix itself', () => {
  const at = '2026-05-12T14:00:00.000Z';
  test('overrides the typical values', () => {
    const mix = mixOf([{ ...scraps(48.5), at: '2026-05-12T13:00:00.000Z' }], squeezeTest('right', at));
    expect(mix.moisturePct).toEqual({ typical: 57, low: 52, high: 60 });
    expect(mix.test?.how).toBe('squeeze');
  });
  test('no longer speaks once another load is in', () => {
    const mix = mixOf([{ ...scraps(48.5), at: '2026-05-12T15:00:00.000Z' }], squeezeTest('right', at));
    expect(mix.moisturePct!.typical).toBe(74);
    expect(mix.test).toBeNull();
  });
  test('a bucket density stands for the density', () => {
    const mix = mixOf([scraps(45), chips(15)], {
      at: null,
      how: 'bucket-density',
      bulkKgPerM3: exactly(600),
    });
    expect(mix.litres).toBeCloseTo(100, 9);
  });
});

test('spread: shifts of independent inputs are added as squares', () => {
  // 3-4-5 triangle, worked by hand
  expect(propagate([spread(10, 7, 13), spread(20, 16, 24)], ([a, b]) => a! + b!)).toEqual({
    typical: 30,
    low: 25,
    high: 35,
  });
});

test('nothing and water alone', () => {
  expect(mixOf([])).toMatchObject({ moisturePct: null, cn: null, kg: 0 });
  expect(mixOf([{ material: 'water', kg: 12 }])).toMatchObject({
    moisturePct: exactly(100),
    cn: null,
    litres: 12,
  });
  expect(() => mixOf([scraps(-1)])).toThrow(RangeError);
});

const part = fc.record({
  material: fc.constantFrom(...Object.keys(INGREDIENTS)),
  kg: fc.double({ min: 0.1, max: 500, noNaN: true }),
});
const parts = fc.array(part, { minLength: 1, maxLength: 8 });

describe('whatever the loads', () => {
  test('mass is conserved', () => {
    fc.assert(
      fc.property(parts, (loads) => {
        const sum = loads.reduce((total, load) => total + load.kg, 0);
        expect(Math.abs(mixOf(loads).kg - sum)).toBeLessThan(1e-9 * sum);
      }),
    );
  });
  test('a mix lies between its parts', () => {
    fc.assert(
      fc.property(parts, (loads) => {
        const mix = mixOf(loads);
        const used = loads.map((load) => INGREDIENTS[load.material]!);
        const inside = (value: number, all: number[]) => {
          expect(value).toBeGreaterThanOrEqual(Math.min(...all) - 1e-9);
          expect(value).toBeLessThanOrEqual(Math.max(...all) + 1e-9);
        };
        inside(
          mix.moisturePct!.typical,
          used.map((one) => one.moisturePct.typical),
        );
        inside(
          mix.bulkKgPerM3!.typical,
          used.flatMap((one) => [one.bulkKgPerM3.low, one.bulkKgPerM3.high]),
        );
        if (mix.cn) {
          const ratios = used
            .filter((one) => one.role !== 'water')
            .map((one) => one.carbonPct.typical / one.nitrogenPct.typical);
          inside(mix.cn.typical, ratios);
          expect(mix.cn.low).toBeLessThanOrEqual(mix.cn.typical);
          expect(mix.cn.high).toBeGreaterThanOrEqual(mix.cn.typical);
        }
        expect(mix.moisturePct!.low).toBeLessThanOrEqual(mix.moisturePct!.typical);
        expect(mix.freeAirPct!.low).toBeLessThanOrEqual(mix.freeAirPct!.high);
      }),
    );
  });
  test('chips never lower C:N, nor raise moisture above both', () => {
    fc.assert(
      fc.property(parts, fc.double({ min: 0.1, max: 200, noNaN: true }), (loads, kg) => {
        const before = mixOf(loads);
        const after = mixOf([...loads, chips(kg)]);
        if (before.cn) expect(after.cn!.typical).toBeGreaterThanOrEqual(before.cn.typical * (1 - 1e-9));
        expect(after.moisturePct!.typical).toBeLessThanOrEqual(
          Math.max(before.moisturePct!.typical, INGREDIENTS['wood-chips']!.moisturePct.typical) + 1e-9,
        );
      }),
    );
  });
  test('the order of entries does not matter', () => {
    fc.assert(
      fc.property(parts, (loads) => {
        expect(mixOf([...loads].reverse())).toEqual(mixOf(loads));
      }),
    );
  });
});
