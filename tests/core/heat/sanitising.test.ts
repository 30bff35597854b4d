import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { RULE_SET_DATA, type SanitisingReason, sanitising, vectorAttraction } from '#core';
import { RULE_SETS, type RuleSetName, toCelsius } from '#records';
import published from '../../../fixtures/published/heat.json' with { type: 'json' };
import { batchOf, daily, joiningAt, momentAt, nowAt, readingAt, turnAt } from './build.ts';

const codes = (reasons: SanitisingReason[]) => reasons.map((reason) => reason.code);

describe('published rows, at the boundary and one tenth below', () => {
  it.each(published.rules)('$rule: $id [$source]', ({ rule, daily: values, turnDays, met }) => {
    const turns = (turnDays ?? []).map((day) => turnAt(day));
    // The reading of a turning day comes first (entry order), so no low is ever excused here.
    const batch = batchOf({ readings: daily(values), turns });
    const answer = sanitising(batch, rule as RuleSetName, { aeration: 'forced' }, nowAt(values.length - 0.9));
    expect(answer.verdict === 'met').toBe(met);
  });

  it.each(published.hour)('catering-70-1h: $id [$source]', ({ readings, met }) => {
    const batch = batchOf({
      readings: readings.map(([min, c]) => readingAt(min! / 1440, c!, { entry: min! + 1 })),
    });
    expect(sanitising(batch, 'catering-70-1h', {}, nowAt(0.5)).verdict === 'met').toBe(met);
  });

  it.each(published.vectorAttraction)('vector attraction: $id [$source]', ({ daily: values, met }) => {
    const answer = vectorAttraction(batchOf({ readings: daily(values) }), {}, nowAt(values.length - 0.9));
    expect(answer.verdict === 'met').toBe(met);
  });

  // 7 CFR 205.203(c)(2): 131 to 170 °F
  it('does not count a day above the ceiling of the US organic rule', () => {
    const of = (fahrenheit: number[]) =>
      sanitising(
        batchOf({ readings: daily(fahrenheit.map((f) => toCelsius(f, 'F'))) }),
        RULE_SET_DATA['organic-vessel-3d'],
        {},
        nowAt(2),
      );
    expect(of(published.organic.fahrenheit).verdict).toBe('met');
    expect(of(published.organic.above).verdict).toBe('not-yet');
    expect(of(published.organic.above).rows.map((row) => row.why)).toEqual([null, 'above-ceiling', null]);
  });
});

describe('what is judged', () => {
  // The lowest point decides: 40 CFR 503 App. B as commonly applied
  it('lets the lowest of several points decide', () => {
    const batch = batchOf({
      readings: [0, 1, 2].map((day) => readingAt(day, day === 1 ? [66, 54.9, 61] : [66, 57, 61])),
    });
    const answer = sanitising(batch, 'vessel-3d', {}, nowAt(2));
    expect(answer.verdict).toBe('not-yet');
    expect(answer.counted).toBe(1);
    expect(answer.rows).toEqual([
      { localDate: '2026-03-02', lowestC: 57, entries: [1], counted: true, why: null },
      { localDate: '2026-03-03', lowestC: 54.9, entries: [1001], counted: false, why: 'low' },
      { localDate: '2026-03-04', lowestC: 57, entries: [2001], counted: true, why: null },
    ]);
  });

  // 14 CCR 17868.3: 12 to 24 inches (30.48 to 60.96 cm) below the surface
  it.each([
    [30.48, 'met'],
    [60.96, 'met'],
    [29.9, 'cannot-show'],
    [61.1, 'cannot-show'],
  ])('a reading at %f cm: %s', (depthCm, verdict) => {
    const batch = batchOf({ readings: [0, 1, 2].map((day) => readingAt(day, 60, { depthCm })) });
    expect(sanitising(batch, 'vessel-3d', {}, nowAt(2)).verdict).toBe(verdict);
  });

  it('shows a cooler point nearer the surface without judging it', () => {
    const cool = readingAt(1, 38, { depthCm: 10, entry: 1002 });
    const answer = sanitising(
      batchOf({ readings: [...daily([58, 58, 58]), cool] }),
      'vessel-3d',
      {},
      nowAt(2),
    );
    expect(answer.verdict).toBe('met');
    expect(answer.notJudged).toEqual([
      { entry: 1002, localDate: '2026-03-03', lowestC: 38, depthCm: 10, why: 'nearer-surface' },
    ]);
  });

  it('is not hopeless on the first day with a reading nearer the surface', () => {
    const answer = sanitising(
      batchOf({ readings: [readingAt(0, 60, { depthCm: 10 })] }),
      'vessel-3d',
      {},
      nowAt(0.1),
    );
    expect(answer.verdict).toBe('not-yet');
    expect(codes(answer.reasons)).toContain('not-at-depth');
  });

  it('judges an unknown depth and says so', () => {
    const readings = [0, 1, 2].map((day) => readingAt(day, 58, { depthCm: null }));
    const answer = sanitising(batchOf({ readings }), 'vessel-3d', {}, nowAt(2));
    expect(answer.verdict).toBe('met');
    expect(answer.why.assumed).toContainEqual({
      code: 'depth-unknown',
      args: { readings: 3, fromCm: 30, toCm: 61 },
    });
  });

  it('takes the lowest of several readings in a day, and the site depth', () => {
    const logger = [0, 0.25, 0.5, 1, 1.25, 2].map((day, i) =>
      readingAt(day, [60, 56, 55, 61, 58, 60][i]!, { depthCm: 90 }),
    );
    const options = { depthCm: { fromCm: 80, toCm: 100 } };
    const answer = sanitising(batchOf({ readings: logger }), 'vessel-3d', options, nowAt(2));
    expect(answer.verdict).toBe('met');
    expect(answer.rows.map((row) => row.lowestC)).toEqual([55, 58, 60]);
  });

  it('does not count a date that held in the morning and fell by the evening', () => {
    const readings = [...daily([60, 60, 60]), readingAt(1.4, 54.9)];
    const answer = sanitising(batchOf({ readings }), 'vessel-3d', {}, nowAt(2));
    expect([answer.verdict, answer.counted]).toEqual(['not-yet', 1]);
    expect(answer.rows.map((row) => row.why)).toEqual([null, 'low', null]);
  });

  it('puts readings since the last good check of the probe in doubt', () => {
    const batch = batchOf({ readings: daily([58, 58, 58]) });
    const since = momentAt(0.5, 0).at;
    const answer = sanitising(batch, 'vessel-3d', { doubts: [{ since, until: null }] }, nowAt(2));
    expect(answer.verdict).toBe('not-yet');
    expect(codes(answer.reasons)).toContain('in-doubt');
    const mended = { doubts: [{ since: momentAt(-3, 0).at, until: momentAt(-0.5, 0).at }] };
    expect(sanitising(batch, 'vessel-3d', mended, nowAt(2)).verdict).toBe('met');
    const all = sanitising(
      batch,
      'vessel-3d',
      { doubts: [{ since: momentAt(-1, 0).at, until: null }] },
      nowAt(2),
    );
    expect(all.verdict).toBe('cannot-show');
  });
});

describe('days and hours', () => {
  it('counts three dates or 72 hours as the site has set', () => {
    const batch = batchOf({ readings: [readingAt(0, 58), readingAt(1, 58), readingAt(1.6, 58)] });
    expect(sanitising(batch, 'vessel-3d', { counting: 'daily-readings' }, nowAt(2)).verdict).toBe('not-yet');
    const third = batchOf({ readings: daily([58, 58, 58]) });
    expect(sanitising(third, 'vessel-3d', { counting: 'daily-readings' }, nowAt(2)).verdict).toBe('met');
    const hours = sanitising(third, 'vessel-3d', { counting: 'hours-72' }, nowAt(2));
    expect([hours.verdict, hours.counted, hours.needed, hours.unit]).toEqual(['not-yet', 48, 72, 'hours']);
    const fourth = batchOf({ readings: daily([58, 58, 58, 55]) });
    expect(sanitising(fourth, 'vessel-3d', { counting: 'hours-72' }, nowAt(3)).verdict).toBe('met');
  });

  it('lets a day without a reading prove nothing, and says which reading keeps the run', () => {
    const gap = batchOf({ readings: [readingAt(0, 60), readingAt(2, 60)] });
    const answer = sanitising(gap, 'vessel-3d', {}, nowAt(2.1));
    expect(answer.verdict).toBe('cannot-show');
    expect(answer.reasons).toContainEqual({ code: 'gap', from: '2026-03-02', to: '2026-03-04', days: 1 });
    expect(answer.next).toEqual({ what: 'reading', localDate: '2026-03-05', at: null });
    expect(answer.couldBeMetOn).toBe('2026-03-06');
  });

  it('never shows fifteen days on weekly readings', () => {
    const readings = [0, 7, 14, 21, 28].map((day) => readingAt(day, 62));
    const turns = [1, 5, 9, 13, 17, 21].map((day) => turnAt(day + 0.5));
    const answer = sanitising(batchOf({ readings, turns }), 'windrow-15d', {}, nowAt(28.1));
    expect(answer.verdict).toBe('cannot-show');
    expect(answer.counted).toBe(1);
  });

  it('says when a run is lost, and starts again on the next date after a low', () => {
    const batch = batchOf({ readings: daily([60, 60]) });
    expect(sanitising(batch, 'vessel-3d', {}, nowAt(2)).next).toEqual({
      what: 'reading',
      localDate: '2026-03-04',
      at: null,
    });
    expect(sanitising(batch, 'vessel-3d', {}, nowAt(3)).next).toEqual({
      what: 'start',
      localDate: '2026-03-05',
      at: null,
    });
    const low = sanitising(batchOf({ readings: daily([60, 54]) }), 'vessel-3d', {}, nowAt(1.1));
    expect(low.next).toEqual({ what: 'start', localDate: '2026-03-04', at: null });
    expect(low.reasons).toContainEqual({
      code: 'low',
      localDate: '2026-03-03',
      celsius: 54,
      levelCelsius: 55,
      entry: 1001,
    });
  });

  it('keeps a proof when the pile cools later', () => {
    const answer = sanitising(batchOf({ readings: daily([58, 58, 58, 40, 30]) }), 'vessel-3d', {}, nowAt(5));
    expect([answer.verdict, answer.metOn, answer.rows.length]).toEqual(['met', '2026-03-04', 3]);
  });
});

describe('turns', () => {
  const windrow = (values: number[]) => daily(values);

  it('lets a low within a day after a turn break nothing, and a high in that time count', () => {
    const readings = [
      readingAt(0, 60),
      readingAt(1, 41),
      readingAt(1.3, 56),
      readingAt(2, 60),
      readingAt(3, 40),
      readingAt(4, 60),
    ];
    const batch = batchOf({ readings, turns: [turnAt(0.9), turnAt(2.9)] });
    const answer = sanitising(batch, 'vessel-3d', {}, nowAt(4));
    expect(answer.rows.slice(0, 3).map((row) => row.counted)).toEqual([true, true, true]);
    expect(answer.verdict).toBe('met');
    const dipped = sanitising(
      batchOf({ readings: [...windrow([60, 60]), readingAt(2, 41)], turns: [turnAt(1.5)] }),
      'vessel-3d',
      {},
      nowAt(2),
    );
    expect(dipped.verdict).toBe('not-yet');
    expect(dipped.counted).toBe(2);
    expect(codes(dipped.reasons)).toContain('just-turned');
    expect(codes(dipped.reasons)).not.toContain('low');
    expect(dipped.next).toEqual({ what: 'reading', localDate: '2026-03-05', at: null });
  });

  it('breaks on a low more than a day after the turn', () => {
    const readings = [readingAt(0, 60), readingAt(1, 60), readingAt(2.1, 54), readingAt(3, 60)];
    const answer = sanitising(batchOf({ readings, turns: [turnAt(1.05)] }), 'vessel-3d', {}, nowAt(3));
    expect(answer.counted).toBe(1);
  });

  it('does not let turning every day hide a cold pile', () => {
    const readings = daily([60, 60, 40, 40, 60]);
    const turns = [1.9, 2.9, 3.9].map((day) => turnAt(day));
    const answer = sanitising(batchOf({ readings, turns }), 'vessel-3d', {}, nowAt(4));
    expect([answer.verdict, answer.counted]).toEqual(['not-yet', 1]);
  });

  // B 41, turned it: the reading came before the turn, in one message
  it('orders a reading and a turn of one message by entry', () => {
    const before = readingAt(2, 41, { entry: 2001 });
    const after = readingAt(2, 41, { entry: 2003 });
    const of = (reading: typeof before) =>
      sanitising(
        batchOf({ readings: [...daily([60, 60]), reading, readingAt(3, 60)], turns: [turnAt(2, 2002)] }),
        'vessel-3d',
        {},
        nowAt(3),
      );
    expect(of(before).verdict).toBe('not-yet');
    expect(of(after).verdict).toBe('met');
  });

  it('counts only turns of the hot period', () => {
    const readings = daily(Array(15).fill(57));
    const of = (days: number[]) =>
      sanitising(
        batchOf({ readings, turns: days.map((day) => turnAt(day)) }),
        'windrow-15d',
        {},
        nowAt(15.1),
      );
    expect(of([-1, 3, 6, 9, 12]).turns.counted).toBe(4);
    expect(of([15, 3, 6, 9, 12]).turns.counted).toBe(4);
    expect(of([14, 3, 6, 9, 12]).turns.counted).toBe(5);
    expect(of([15, 3, 6, 9, 12]).reasons).toContainEqual({
      code: 'turns-short',
      counted: 4,
      needed: 5,
      apartDays: 0,
    });
  });
});

describe('what is added', () => {
  it('restarts on fresh material', () => {
    const batch = batchOf({ readings: daily([58, 58, 58]), joinings: [joiningAt(1.5, 'fresh')] });
    const answer = sanitising(batch, 'vessel-3d', {}, nowAt(2));
    expect([answer.verdict, answer.counted]).toEqual(['not-yet', 1]);
    expect(answer.reasons).toContainEqual({ code: 'fresh', localDate: '2026-03-03', entry: 1500 });
    const late = batchOf({ readings: daily([58, 58, 58]), joinings: [joiningAt(6, 'fresh')] });
    expect(sanitising(late, 'vessel-3d', {}, nowAt(5)).verdict).toBe('met');
    expect(sanitising(late, 'vessel-3d', {}, nowAt(7)).verdict).toBe('not-yet');
  });

  it.each([
    [[58, 58, 58], true, 'met'],
    [[58, 58, 58], false, 'not-yet'],
    [[58, 58, 58], null, 'not-yet'],
    [[58, 50, 58], true, 'not-yet'],
  ])('a join of %j with one proven %s: %s', (values, provenThen, verdict) => {
    const joinings = [joiningAt(-1, 'fresh'), joiningAt(4, 'joined', { provenThen, from: 'pile C' })];
    const answer = sanitising(batchOf({ readings: daily(values), joinings }), 'vessel-3d', {}, nowAt(4.5));
    expect(answer.verdict).toBe(verdict);
  });

  it('inherits through a split, until fresh material comes', () => {
    const split = joiningAt(0, 'split-from', { provenThen: true, from: 'pile A' });
    const answer = sanitising(batchOf({ joinings: [split] }), 'vessel-3d', {}, nowAt(1));
    expect([answer.verdict, answer.metOn]).toEqual(['met', '2026-03-02']);
    expect(answer.why.assumed).toContainEqual({ code: 'inherited-proof', args: { entry: 0 } });
    const fed = batchOf({ joinings: [split, joiningAt(1, 'fresh')] });
    expect(sanitising(fed, 'vessel-3d', {}, nowAt(2)).verdict).toBe('not-yet');
  });

  it('remarks a cover of compost from a pile that was not proven', () => {
    const covers = [{ ...momentAt(1, 900), layer: 'mature-compost', on: true, fromProven: null }];
    const answer = sanitising(batchOf({ readings: daily([58, 58, 58]), covers }), 'vessel-3d', {}, nowAt(2));
    expect(answer.verdict).toBe('met');
    expect(answer.reasons).toEqual([
      { code: 'cover-unproven', localDate: '2026-03-03', entry: 900, known: false },
    ]);
  });
});

// Pipes that only breathe are not forced aeration: 40 CFR 503 App. B speaks of a static aerated pile
it('asks about pipes, and shows nothing for pipes that only breathe', () => {
  const batch = batchOf({ readings: daily([58, 58, 58]) });
  const unknown = sanitising(batch, 'aerated-pile-3d', {}, nowAt(2));
  expect([unknown.verdict, codes(unknown.reasons)]).toEqual(['met', ['aeration-unknown']]);
  expect(unknown.why.assumed).toContainEqual({ code: 'aeration-forced', args: {} });
  const breathing = sanitising(batch, 'aerated-pile-3d', { aeration: 'breathing' }, nowAt(2));
  expect([breathing.verdict, breathing.next]).toEqual(['cannot-show', null]);
});

describe('properties', () => {
  const days = fc.array(
    fc.record({
      skip: fc.boolean(),
      celsius: fc.integer({ min: 480, max: 720 }).map((tenths) => tenths / 10),
      hour: fc.integer({ min: 0, max: 14 }),
      turned: fc.boolean(),
    }),
    { minLength: 1, maxLength: 22 },
  );
  const hot = fc.array(
    fc.record({
      skip: fc.constant(false),
      celsius: fc.integer({ min: 560, max: 720 }).map((tenths) => tenths / 10),
      hour: fc.integer({ min: 0, max: 14 }),
      turned: fc.boolean(),
    }),
    { minLength: 14, maxLength: 22 },
  );
  const season = fc.oneof(days, hot);
  const rule = fc.constantFrom(...RULE_SETS);
  const counting = fc.constantFrom('daily-readings' as const, 'hours-72' as const);
  const build = (plan: { skip: boolean; celsius: number; hour: number; turned: boolean }[]) => ({
    readings: plan.flatMap((day, i) => (day.skip ? [] : [readingAt(i + day.hour / 24, day.celsius)])),
    turns: plan.flatMap((day, i) => (day.turned ? [turnAt(i + 0.6)] : [])),
  });

  it('adding a reading that holds never unproves', () => {
    let proven = 0;
    fc.assert(
      fc.property(
        season,
        rule,
        counting,
        fc.double({ min: 0, max: 23, noNaN: true }),
        (plan, name, count, when) => {
          const { readings, turns } = build(plan);
          const before = sanitising(batchOf({ readings, turns }), name, { counting: count }, nowAt(30));
          fc.pre(before.verdict === 'met');
          proven++;
          const more = [...readings, readingAt(when, 76)];
          const after = sanitising(batchOf({ readings: more, turns }), name, { counting: count }, nowAt(30));
          expect(after.verdict).toBe('met');
        },
      ),
      { numRuns: 300, seed: 7 },
    );
    expect(proven).toBeGreaterThan(200);
  });

  it('a reading made hotter never unproves', () => {
    fc.assert(
      fc.property(
        season,
        rule,
        counting,
        fc.nat(),
        fc.integer({ min: 1, max: 20 }),
        (plan, name, count, pick, by) => {
          const { readings, turns } = build(plan);
          const before = sanitising(batchOf({ readings, turns }), name, { counting: count }, nowAt(30));
          fc.pre(before.verdict === 'met');
          // Over the ceiling that a rule names a reading no longer counts.
          const ceiling = RULE_SET_DATA[name].upperCelsius ?? Number.POSITIVE_INFINITY;
          const hotter = readings.map((r, i) =>
            i === pick % readings.length ? { ...r, celsius: [Math.min(ceiling, r.celsius[0]! + by)] } : r,
          );
          expect(
            sanitising(batchOf({ readings: hotter, turns }), name, { counting: count }, nowAt(30)).verdict,
          ).toBe('met');
        },
      ),
      { numRuns: 300, seed: 8 },
    );
  });

  it('a day taken out never proves', () => {
    fc.assert(
      fc.property(season, rule, counting, fc.nat(), (plan, name, count, pick) => {
        const { readings, turns } = build(plan);
        const before = sanitising(batchOf({ readings, turns }), name, { counting: count }, nowAt(30));
        fc.pre(before.verdict !== 'met' && readings.length > 0);
        const gone = readings[pick % readings.length]!.localDate;
        const fewer = readings.filter((reading) => reading.localDate !== gone);
        expect(
          sanitising(batchOf({ readings: fewer, turns }), name, { counting: count }, nowAt(30)).verdict,
        ).not.toBe('met');
      }),
      { numRuns: 300, seed: 9 },
    );
  });

  it('a proof always rests on at least the dates or hours the rule names', () => {
    fc.assert(
      fc.property(season, rule, counting, (plan, name, count) => {
        const answer = sanitising(batchOf(build(plan)), name, { counting: count }, nowAt(30));
        if (answer.verdict !== 'met') return;
        expect(answer.counted).toBeGreaterThanOrEqual(answer.needed);
        expect(answer.rows.every((row) => row.why !== 'no-reading' && row.why !== 'low')).toBe(true);
      }),
      { numRuns: 200, seed: 10 },
    );
  });
});
