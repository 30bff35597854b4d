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

  /** For each trigger of the table a moment that meets all of it, and one for each thing it asks for that does not. */
  const moments = CAUTIONS.flatMap(({ id, on }) =>
    on.flatMap((trigger) => {
      const { kind, machine, eachFromKg, hotFromCelsius, keptAway, windy, drum, peopleAtRisk, ...lists } =
        trigger;
      const first = Object.entries(lists).map(([field, values]) => [field, values[0]]);
      const record = { kind, ...Object.fromEntries(first), ...(eachFromKg ? { kg: eachFromKg } : {}) };
      const met: Partial<Occasion> = {
        hasDrum: drum === true,
        ...(hotFromCelsius ? { hottestCelsius: hotFromCelsius } : {}),
        ...(keptAway ? { keptAway } : {}),
        ...(windy ? { windy } : {}),
        ...(peopleAtRisk ? { peopleAtRisk } : {}),
      };
      const lacking: [string, Occasion['record'], Partial<Occasion>][] = [
        ...Object.keys(lists).map((field) => [field, { ...record, [field]: 'else' }, met] as never),
        ...(machine ? [['machine', { ...record, place: 'pile B' }, met] as never] : []),
        ...(eachFromKg ? [['eachFromKg', { ...record, kg: eachFromKg - 0.1 }, met] as never] : []),
        ...(hotFromCelsius
          ? [['hot', record, { ...met, hottestCelsius: hotFromCelsius - 0.1 }] as never]
          : []),
        ...(keptAway ? [['keptAway', record, { ...met, keptAway: false }] as never] : []),
        ...(windy ? [['windy', record, { ...met, windy: false }] as never] : []),
        ...(drum ? [['drum', record, { ...met, hasDrum: false }] as never] : []),
        ...(peopleAtRisk ? [['peopleAtRisk', record, { ...met, peopleAtRisk: false }] as never] : []),
      ];
      return [{ id, on, trigger, record, met, lacking }];
    }),
  );
  test.each(moments)(
    '$id is called by $trigger, and by nothing less',
    ({ id, on, trigger, record, met, lacking }) => {
      expect(ids(record, met)).toContain(id);
      // Only where this caution has one trigger of the kind: another of its triggers may well hold.
      if (on.filter(({ kind }) => kind === trigger.kind).length > 1) return;
      for (const [what, less, more] of lacking) expect(ids(less, more), what).not.toContain(id);
    },
  );

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
