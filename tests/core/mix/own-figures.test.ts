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
