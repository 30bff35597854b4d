import { describe, expect, test } from 'vitest';
import { exactly, mixOf, mixPartsOf, ownFiguresAt, type SettingTimeline } from '#core';

const timeline: SettingTimeline = {
  'moisture:wood-chips': [
    { from: '2026-06-01', value: 40, entry: 9 },
    { from: '2026-05-01', value: 25, entry: 3 },
    { from: '2026-05-01', value: 26, entry: 4 },
  ],
  'density:wood-chips': [{ from: '2026-05-20', value: 310, entry: 6 }],
  'moisture:leaves': [{ from: '2026-05-01', value: 140, entry: 5 }],
};

describe("the site's own figures", () => {
  test.each([
    ['2026-04-30', null],
    ['2026-05-02', { moisturePct: exactly(26) }],
    ['2026-05-20T10:30', { moisturePct: exactly(26), bulkKgPerM3: exactly(310) }],
    ['2026-06-01', { moisturePct: exactly(40), bulkKgPerM3: exactly(310) }],
  ])('on %s', (day, wanted) => {
    expect(ownFiguresAt(timeline, 'wood-chips', day)).toEqual(wanted);
  });
  test('a figure that cannot be is passed over', () => {
    expect(ownFiguresAt(timeline, 'leaves', '2026-06-01')).toBeNull();
  });
});

describe('a share of the fresh mass', () => {
  test('is turned into one of the dry mass by the moisture that was set', () => {
    const own = ownFiguresAt(
      {
        'moisture:wood-chips': [{ from: '2026-05-01', value: 50, entry: 1 }],
        'carbon:wood-chips': [{ from: '2026-05-02', value: { fresh: 24 }, entry: 2 }],
        'nitrogen:wood-chips': [{ from: '2026-05-02', value: { fresh: 0.1 }, entry: 3 }],
        'ash:wood-chips': [{ from: '2026-05-02', value: { fresh: 1.5 }, entry: 4 }],
      },
      'wood-chips',
      '2026-05-12',
    )!;
    // Half of it is water: each share of the dry mass is twice that of the fresh.
    expect(own.carbonPct!.typical).toBeCloseTo(48, 9);
    expect(own.nitrogenPct!.typical).toBeCloseTo(0.2, 9);
    expect(own.ashPct!.typical).toBeCloseTo(3, 9);
    expect(own.nitrogenPct!.low).toBe(own.nitrogenPct!.high);
  });
  test('carries the range of the moisture where that is the table’s', () => {
    const given = { 'nitrogen:food-scraps': [{ from: '2026-05-01', value: { fresh: 0.78 }, entry: 1 }] };
    const { nitrogenPct } = ownFiguresAt(given, 'food-scraps', '2026-05-12')!;
    // 0.78 % of the fresh mass at 74 % water (65 to 82) is 3 % of the dry mass (2.23 to 4.33).
    expect(nitrogenPct!.typical).toBeCloseTo(3, 9);
    expect(nitrogenPct!.low).toBeCloseTo(0.78 / 0.35, 6);
    expect(nitrogenPct!.high).toBeCloseTo(0.78 / 0.18, 6);
  });
  test('that cannot be is passed over', () => {
    const given = { 'carbon:food-scraps': [{ from: '2026-05-01', value: { fresh: 48 }, entry: 1 }] };
    expect(ownFiguresAt(given, 'food-scraps', '2026-05-12')).toBeNull();
  });
  test('and the same figures of both bases make the same mix', () => {
    const set = (nitrogen: unknown) =>
      ownFiguresAt(
        {
          'moisture:wood-chips': [{ from: '2026-05-01', value: 40, entry: 1 }],
          'nitrogen:wood-chips': [{ from: '2026-05-01', value: nitrogen, entry: 2 }],
        },
        'wood-chips',
        '2026-05-12',
      );
    const mixed = (nitrogen: unknown) =>
      mixOf([
        { material: 'food-scraps', kg: 91 },
        { material: 'wood-chips', kg: 24, own: set(nitrogen) },
      ]).cn!.typical;
    expect(mixed({ fresh: 0.3 })).toBeCloseTo(mixed(0.5), 9);
    expect(Math.abs(mixed({ fresh: 0.3 }) - mixed(0.3))).toBeGreaterThan(0.1);
  });
});

test('loads of the book: the own figure is used, an estimate brings its range', () => {
  const at = '2026-05-12T13:00:00.000Z';
  const parts = mixPartsOf(
    [
      { material: 'food-scraps', kg: 91, litres: 200, estimated: true, at },
      { material: 'wood-chips', kg: 24, litres: 80, estimated: false, at },
    ],
    (material) => ownFiguresAt(timeline, material, '2026-05-12'),
  );
  expect(parts[0]!.litres).toBeNull();
  expect(parts[0]!.kgLow).toBeCloseTo((91 * (396 / 764.554857984)) / (3.8 / 3.785411784), 6);
  expect(parts[1]).toMatchObject({ kg: 24, litres: 80, own: { moisturePct: exactly(26) } });
  const mix = mixOf(parts);
  expect(mix.moisturePct!.typical).toBeCloseTo((91 * 74 + 24 * 26) / 115, 9);
  // The range of the estimated mass makes the whole less certain.
  const weighed = mixOf(parts.map(({ kgLow, kgHigh, ...part }) => part));
  expect(mix.cn!.high - mix.cn!.low).toBeGreaterThan(weighed.cn!.high - weighed.cn!.low);
});
