import { describe, expect, it } from 'vitest';
import {
  type AmbientReading,
  type Batch,
  CURING_DEFAULTS,
  canLeave,
  curingSince,
  drumProof,
  pileStage,
  type ReadinessInput,
  readiness,
  sanitising,
  selfHeatingClass,
  traceOf,
  vesselMature,
} from '#core';
import published from '../../../fixtures/published/heat.json' with { type: 'json' };
import { batchOf, joiningAt, momentAt, nowAt, readingAt, turnAt } from './build.ts';

const outside = (celsius: number): AmbientReading[] =>
  Array.from({ length: 120 }, (_, day) => ({ ...momentAt(day - 7, 9000 + day), celsius }));

/** Hot for three days, cooled, turned twice, cured, checked: every criterion met at day 70. */
const cured = (more: Partial<Batch> = {}, last = 27.0): Batch =>
  batchOf({
    joinings: [joiningAt(-1, 'fresh')],
    readings: [
      ...[0, 1, 2].map((day) => readingAt(day, 60)),
      readingAt(20, 50),
      readingAt(31, 43),
      readingAt(45, 33),
      readingAt(59, 28),
      readingAt(63, 27.5),
      readingAt(69, last),
    ],
    turns: [turnAt(10), turnAt(28), turnAt(60)],
    moisture: [{ ...momentAt(65, 650), feel: 'right', percent: null }],
    ...more,
  });

const judge = (
  batch: Batch,
  more: Partial<ReadinessInput> = {},
  day = 70,
  ambientC = published.curing.ambientC,
) =>
  readiness(
    {
      batch,
      ambient: outside(ambientC),
      sanitising: sanitising(batch, 'vessel-3d', {}, nowAt(day)),
      ...more,
    },
    nowAt(day),
  );
const stateOf = (found: ReturnType<typeof readiness>, key: string) =>
  found.criteria.find((c) => c.key === key)?.state;

describe('stages', () => {
  const ambient = outside(15);
  const at = (batch: Batch, day: number, litres: number | null = null) =>
    pileStage(batch, ambient, nowAt(day), CURING_DEFAULTS, litres);

  // AgriFutures, Curing, 2020: curing begins once it stays under 45 °C even after turning
  it.each([
    [44.9, 'curing'],
    [45, 'active'],
  ])('%f °C after a turn: %s', (celsius, stage) => {
    const batch = batchOf({ readings: [readingAt(0, 60), readingAt(12, celsius)], turns: [turnAt(10)] });
    expect(at(batch, 12).stage).toBe(stage);
  });

  it('goes from heating to cooling to curing, and back when it goes hot again', () => {
    const start = { joinings: [joiningAt(-1, 'fresh')] };
    expect(at(batchOf({ ...start, readings: [readingAt(1, 38)] }), 1).stage).toBe('heating');
    expect(at(batchOf({ ...start, readings: [readingAt(0, 60), readingAt(9, 40)] }), 9).stage).toBe(
      'cooling',
    );
    const hot = [readingAt(0, 60), readingAt(12, 40)];
    expect(at(batchOf({ ...start, readings: hot, turns: [turnAt(10)] }), 12).stage).toBe('curing');
    const again = batchOf({ ...start, readings: [...hot, readingAt(14, 47)], turns: [turnAt(10)] });
    expect(at(again, 14)).toMatchObject({ stage: 'active', curingSince: null });
  });

  it('counts curing from the first settled reading under 45 °C after a turn', () => {
    const batch = batchOf({
      readings: [readingAt(20, 58), readingAt(22.5, 30), readingAt(24, 43), readingAt(30, 38)],
      turns: [turnAt(22)],
    });
    expect(curingSince(batch, nowAt(31))?.localDate).toBe('2026-03-26');
    expect(curingSince(batch, nowAt(23))).toBeNull();
    const neverHot = { ...batch, readings: batch.readings.slice(1) };
    expect(curingSince(neverHot, nowAt(31))).toBeNull();
    const fed = { ...batch, joinings: [joiningAt(29, 'fresh')] };
    expect(curingSince(fed, nowAt(31))).toBeNull();
  });

  it.each([
    ['no reading', {}, 1, null, 'no-readings'],
    ['an old reading', { readings: [readingAt(0, 40)] }, 15, null, 'stale'],
    [
      'only a reading just after a turn',
      { readings: [readingAt(3.2, 22)], turns: [turnAt(3)] },
      4,
      null,
      'just-turned',
    ],
    [
      'frost in the pile',
      { readings: [readingAt(0, 60), readingAt(20, [12, 0])], turns: [turnAt(10)] },
      20,
      null,
      'frozen',
    ],
    [
      'a cold core',
      { readings: [readingAt(0, 60), readingAt(20, 10)], turns: [turnAt(10)] },
      20,
      null,
      'cold-core',
    ],
    [
      'a dry pile',
      {
        readings: [readingAt(0, 60), readingAt(20, 18)],
        turns: [turnAt(10)],
        moisture: [{ ...momentAt(15, 5), feel: 'dry', percent: null }],
      },
      20,
      null,
      'dry',
    ],
    [
      'a tiny pile',
      { readings: [readingAt(0, 60), readingAt(20, 18)], turns: [turnAt(10)] },
      20,
      999,
      'tiny',
    ],
    [
      'what was never hot',
      { readings: [readingAt(0, 20), readingAt(20, 18)], turns: [turnAt(10)] },
      20,
      null,
      'never-hot',
    ],
  ] as const)('cannot tell from %s', (_, more, day, litres, reason) => {
    const found = at(batchOf(more as unknown as Partial<Batch>), day, litres);
    expect([found.stage, found.reasons]).toEqual(['cannot-tell', [reason]]);
  });

  it.each([
    [20, 'near-ambient'],
    [20.1, 'curing'],
  ])('%f °C at 15 °C outside, where nothing speaks against it: %s', (celsius, stage) => {
    const batch = batchOf({ readings: [readingAt(0, 60), readingAt(20, celsius)], turns: [turnAt(10)] });
    expect(at(batch, 20, 1000).stage).toBe(stage);
  });
});

describe('readiness', () => {
  it(`is ready with every criterion met [${published.curing.source}]`, () => {
    const found = judge(cured({}, published.curing.pileC));
    expect(found.criteria.filter(({ state }) => state !== 'met').map(({ key }) => key)).toEqual(['labs']);
    expect(found.verdict).toBe('ready');
    expect(found.stage.stage).toBe('near-ambient');
  });

  // "Within about 5 °C" of ambient: the boundary, and one tenth above it
  it('takes a rise of 5.0 and not of 5.1', () => {
    expect(stateOf(judge(cured({}, 27.5)), 'near-ambient')).toBe('met');
    const above = judge(cured({}, 27.6));
    expect([above.verdict, stateOf(above, 'near-ambient')]).toEqual(['not-yet', 'not-yet']);
  });

  it('takes the hottest point, not the lowest', () => {
    const batch = cured();
    batch.readings.push(readingAt(69.1, [22, 36, 24]));
    expect(stateOf(judge(batch), 'near-ambient')).toBe('not-yet');
  });

  it.each([
    ['age', { joinings: [joiningAt(41, 'fresh')] }],
    [
      'curing',
      {
        readings: [
          ...[0, 1, 2].map((d) => readingAt(d, 60)),
          readingAt(58, 46),
          readingAt(63, 27),
          readingAt(69, 27),
        ],
      },
    ],
    ['turned', { turns: [turnAt(60)] }],
    ['moisture', { moisture: [] }],
    ['moisture', { moisture: [{ ...momentAt(65, 1), feel: 'wet', percent: null }] }],
    ['moisture', { moisture: [{ ...momentAt(65, 1), feel: null, percent: 65.1 }] }],
    ['moisture', { moisture: [{ ...momentAt(39, 1), feel: 'right', percent: null }] }],
    ['no-reheating', { turns: [turnAt(10), turnAt(28), turnAt(68)] }],
    ['no-reheating', { readings: [...cured().readings.slice(0, 7), readingAt(63, 34), readingAt(69, 27)] }],
    ['sanitised', { readings: cured().readings.slice(1) }],
  ] as const)('is not ready where %s is missing', (key, more) => {
    const found = judge(cured(more as unknown as Partial<Batch>));
    expect(found.verdict).not.toBe('ready');
    expect(stateOf(found, key)).not.toBe('met');
  });

  it('says by when waiting alone would do', () => {
    const found = judge(cured({ joinings: [joiningAt(-1, 'fresh')] }), {}, 27);
    expect(found.criteria.find(({ key }) => key === 'age')).toMatchObject({
      state: 'not-yet',
      need: 'wait',
      on: '2026-03-31',
    });
  });

  it('takes the day it was closed for its age where nobody said when it was begun', () => {
    const unsaid = cured({ startedAt: null, joinings: [], closedAt: momentAt(0, 2) });
    expect(stateOf(judge(unsaid), 'age')).toBe('met');
    expect(stateOf(judge({ ...unsaid, closedAt: null }), 'age')).toBe('unknown');
    expect(stateOf(judge({ ...unsaid, closedAt: momentAt(45, 2) }), 'age')).toBe('not-yet');
  });

  it('wants mild weather for the turn that shows no reheating', () => {
    const found = judge(cured({}, 12), {}, 70, 9.9);
    expect(found.criteria.find(({ key }) => key === 'no-reheating')).toMatchObject({
      state: 'unknown',
      need: 'milder-weather',
    });
  });

  it('never calls ready what has not been hot, rule set or not', () => {
    const cold = cured({ readings: [readingAt(59, 28), readingAt(63, 27), readingAt(69, 27)] });
    const found = judge(cold, { sanitising: null });
    expect([found.verdict, stateOf(found, 'been-hot')]).toEqual(['not-yet', 'not-yet']);
  });

  it('cannot tell of a dry or frozen or tiny pile', () => {
    const dry = cured({ moisture: [{ ...momentAt(65, 1), feel: 'dry', percent: null }] });
    expect(judge(dry).verdict).toBe('cannot-tell');
    expect(judge(cured({}, -0.5)).verdict).toBe('cannot-tell');
    expect(judge(cured(), { litres: 500 }).verdict).toBe('cannot-tell');
  });
});

describe('laboratory vessels, apart from the field', () => {
  it(`classes the rise [${published.selfHeating.source}]`, () => {
    expect(published.selfHeating.rise.map((rise) => selfHeatingClass(rise).class)).toEqual(
      published.selfHeating.class,
    );
    expect(selfHeatingClass(10)).toEqual({ class: 'IV', onBoundary: true });
    expect(selfHeatingClass(9.9)).toEqual({ class: 'V', onBoundary: false });
    expect(selfHeatingClass(40)).toEqual({ class: 'I', onBoundary: true });
  });
  it(`matures under 8 °C after 21 days [${published.maturityRise.source}]`, () => {
    const { rise, notRise, days } = published.maturityRise;
    expect([vesselMature(rise, days), vesselMature(notRise, days), vesselMature(rise, days - 1)]).toEqual([
      true,
      false,
      false,
    ]);
  });
});

describe('leaving the site', () => {
  const ask = (batch: Batch, more: Partial<Parameters<typeof canLeave>[0]> = {}) => {
    const proof = sanitising(batch, 'vessel-3d', {}, nowAt(70));
    return canLeave({ batch, sanitising: proof, readiness: judge(batch, { sanitising: proof }), ...more });
  };

  it('lets go what lacks nothing, and names what it lacks', () => {
    expect(ask(cured())).toMatchObject({ may: true, held: false, missing: [] });
    const hold = { ...momentAt(66, 660), why: 'salmonella' };
    const problem = {
      ...momentAt(67, 670),
      topic: 'odour' as const,
      place: 'pile B',
      note: null,
      strength: null,
    };
    const elsewhere = { ...problem, entry: 671, place: 'pile C' };
    const found = ask(cured({ hold }), { problems: [problem, elsewhere], labStandard: 'california' });
    expect(found).toMatchObject({ may: false, held: true });
    expect(found.missing).toEqual([
      { code: 'hold', entry: 660, localDate: '2026-05-07', why: 'salmonella' },
      { code: 'lab-missing', analytes: ['faecal-coliform', 'salmonella'], standard: 'california' },
      { code: 'problem', topic: 'odour', entry: 670, localDate: '2026-05-08' },
    ]);
  });

  it('keeps what was not proven, what is not ready, and what no rule was chosen for', () => {
    const unproven = ask(cured({ readings: cured().readings.slice(1) }));
    expect(unproven.missing[0]).toMatchObject({ code: 'not-sanitised', rule: 'vessel-3d', needed: 3 });
    const warm = ask(cured({}, 33));
    expect(warm.missing).toEqual([{ code: 'not-ready', verdict: 'not-yet', criteria: ['near-ambient'] }]);
    expect(ask(cured(), { sanitising: null }).missing).toContainEqual({ code: 'no-rule-set' });
  });

  it('traces who received and what went in', () => {
    const removal = {
      ...momentAt(70, 700),
      kg: 40,
      litres: null,
      to: 'plot 7',
      material: 'finished-compost',
    };
    const residue = { ...removal, entry: 701, material: 'residue', to: 'tip' };
    const sources = { 'east kitchen': { from: '2026-02-20', to: '2026-03-01', kg: 410 } };
    expect(traceOf(cured({ removals: [removal, residue], sources, kin: ['pile A'] }))).toEqual({
      name: 'pile B',
      received: [{ to: 'plot 7', entry: 700, localDate: '2026-05-11', kg: 40, litres: null }],
      intake: [{ source: 'east kitchen', from: '2026-02-20', to: '2026-03-01', kg: 410 }],
      kin: ['pile A'],
    });
  });
});

describe('a drum', () => {
  const points = (lows: number[]) =>
    lows.map((low, day) => readingAt(day, [low + 4, low], { depthCm: null }));
  const ask = (more: Partial<Parameters<typeof drumProof>[0]>, day = 2) =>
    drumProof(
      {
        readings: points([55, 55, 55]),
        exit: [],
        way: 'in-vessel',
        leastResidenceHours: 72,
        noShortCircuit: true,
        ...more,
      },
      'vessel-3d',
      {},
      nowAt(day),
    );
  const codes = (answer: ReturnType<typeof ask>) => answer.reasons.map(({ code }) => code);

  // 40 CFR 503 App. B, in-vessel: 55 °C for three days, at the coldest of several points
  it('is proven by the coldest of several points, with residence and no short-circuit', () => {
    expect(ask({}).verdict).toBe('met');
    expect(ask({ readings: points([55, 54.9, 55]) }).verdict).toBe('not-yet');
    expect(ask({ leastResidenceHours: 71.9 })).toMatchObject({ verdict: 'cannot-show' });
    expect(codes(ask({ leastResidenceHours: null }))).toContain('residence-unknown');
    expect(codes(ask({ noShortCircuit: null }))).toContain('short-circuit-unknown');
    expect(codes(ask({ noShortCircuit: false }))).toContain('short-circuit');
    expect(codes(ask({ readings: [0, 1, 2].map((day) => readingAt(day, 60)) }))).toContain('one-point');
  });

  it('says nothing for what leaves once its last reading is under the level', () => {
    const hot = [0, 1, 2].map((day) => readingAt(day, [58, 56]));
    const of = (last: number) =>
      drumProof(
        {
          readings: [...hot, readingAt(3, [60, last])],
          exit: [],
          way: 'in-vessel',
          leastResidenceHours: 96,
          noShortCircuit: true,
        },
        'vessel-3d',
        {},
        nowAt(3),
      );
    expect(of(55)).toMatchObject({ verdict: 'met' });
    expect(of(54.9)).toMatchObject({
      verdict: 'not-yet',
      counted: 0,
      provenBy: null,
      reasons: [{ code: 'low' }],
    });
  });

  it('speaks for what leaves now, not for last month', () => {
    expect(ask({}, 12).verdict).not.toBe('met');
  });

  it('proves nothing by its exit alone, nor where the way is the closed pile', () => {
    const exit = [0, 1, 2].map((day) => readingAt(day, 65));
    const alone = ask({ readings: [], exit });
    expect([alone.verdict, codes(alone)[0]]).toEqual(['cannot-show', 'exit-only']);
    for (const way of ['closed-pile', null] as const) {
      expect(ask({ way })).toMatchObject({
        verdict: 'cannot-show',
        reasons: [{ code: 'fed-daily' }, { code: 'prove-in-closed-pile' }],
      });
    }
  });
});
