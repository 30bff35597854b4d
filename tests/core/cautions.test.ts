import { describe, expect, test } from 'vitest';
import { CAUTIONS, type CautionId, cautionsFor, type Occasion } from '#core';

const occasion = (record: Occasion['record'], more: Partial<Occasion> = {}): Occasion => ({
  record,
  hottestCelsius: null,
  keptAway: false,
  windy: false,
  hasDrum: true,
  peopleAtRisk: false,
  ...more,
});
const ids = (record: Occasion['record'], more: Partial<Occasion> = {}): CautionId[] =>
  cautionsFor([occasion(record, more)]).map(({ id }) => id);

describe('which caution goes with what', () => {
  test.each<[CautionId, Occasion['record'], Partial<Occasion>]>([
    ['fire', { kind: 'turning', pile: 'pile B' }, { keptAway: true }],
    ['lock-out', { kind: 'problem', topic: 'fault', place: 'drum' }, {}],
    ['lock-out', { kind: 'problem', topic: 'fault' }, {}],
    ['lock-out', { kind: 'resolved', topic: 'fault', place: 'lift' }, {}],
    ['lock-out', { kind: 'chore', chore: 'wash-lift' }, {}],
    ['lock-out', { kind: 'chore', chore: 'check-stop-button' }, {}],
    ['sharps', { kind: 'problem', topic: 'sharps' }, {}],
    ['wards', { kind: 'turning', pile: 'pile B' }, { peopleAtRisk: true }],
    ['wards', { kind: 'screening', pile: 'pile B' }, { peopleAtRisk: true }],
    ['wind', { kind: 'turning', pile: 'pile B' }, { windy: true }],
    ['wind', { kind: 'weather', expects: 'wind' }, {}],
    ['electrician', { kind: 'problem', topic: 'power' }, {}],
    ['guards', { kind: 'problem', topic: 'fault', place: 'drum' }, {}],
    ['pinch', { kind: 'drum-setting', mode: 'automatic' }, {}],
    ['pinch', { kind: 'discharge', pile: 'pile C' }, {}],
    ['hot-core', { kind: 'temperature', place: 'pile B' }, { hottestCelsius: 55 }],
    ['hot-core', { kind: 'turning', pile: 'pile B' }, { hottestCelsius: 61 }],
    ['dust', { kind: 'turning', pile: 'pile B' }, {}],
    ['dust', { kind: 'screening', pile: 'pile B' }, {}],
    ['dust', { kind: 'delivery', material: 'wood-chips' }, {}],
    ['dust', { kind: 'moisture', place: 'pile B', feel: 'dry' }, {}],
    ['lift', { kind: 'weigh-in', container: 'cart', material: 'food-scraps', kg: 61 }, {}],
    ['lifting', { kind: 'weigh-in', container: 'bucket', material: 'water', count: 2, kg: 46 }, {}],
    ['tetanus', { kind: 'problem', topic: 'contamination' }, {}],
    ['clean-tools', { kind: 'screening', pile: 'pile B' }, {}],
    ['gloves', { kind: 'weigh-in', container: 'bucket', material: 'coffee-grounds', kg: 9 }, {}],
    ['gloves', { kind: 'moisture', place: 'pile B', feel: 'right' }, {}],
  ])('%s: %j %j', (id, record, more) => {
    expect(ids(record, more)).toContain(id);
  });

  test.each<[CautionId, Occasion['record'], Partial<Occasion>]>([
    ['fire', { kind: 'turning', pile: 'pile B' }, {}],
    ['lock-out', { kind: 'problem', topic: 'fault', place: 'pile B' }, {}],
    ['lock-out', { kind: 'problem', topic: 'odour', place: 'drum' }, {}],
    ['hot-core', { kind: 'temperature', place: 'pile B' }, { hottestCelsius: 54.9 }],
    ['hot-core', { kind: 'turning', pile: 'pile B' }, { hottestCelsius: 90, keptAway: true }],
    ['wards', { kind: 'turning', pile: 'pile B' }, {}],
    ['lift', { kind: 'weigh-in', container: 'cart', material: 'food-scraps', kg: 61 }, { hasDrum: false }],
    ['lifting', { kind: 'weigh-in', container: 'bucket', material: 'water', count: 3, kg: 46 }, {}],
  ])('no %s: %j %j', (id, record, more) => {
    expect(ids(record, more)).not.toContain(id);
  });

  test('nothing for a note, a reading of cool piles, hours, a lab result', () => {
    expect(ids({ kind: 'note', text: 'the gate is blue' })).toEqual([]);
    expect(ids({ kind: 'temperature', place: 'pile B' }, { hottestCelsius: 31 })).toEqual([]);
    expect(ids({ kind: 'hours', hours: 3 })).toEqual([]);
    expect(ids({ kind: 'lab-result', analyte: 'pH', value: 7 })).toEqual([]);
  });

  test('lock-out, sharps and fire come every time, and nothing else does; each has a source and a trigger', () => {
    expect(CAUTIONS.filter(({ every }) => every === 'always').map(({ id }) => id)).toEqual([
      'fire',
      'lock-out',
      'sharps',
    ]);
    expect(new Set(CAUTIONS.map(({ id }) => id)).size).toBe(CAUTIONS.length);
    for (const { source, on } of CAUTIONS) {
      expect(source.length).toBeGreaterThan(10);
      expect(on.length).toBeGreaterThan(0);
    }
  });
});
