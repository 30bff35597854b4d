import { describe, expect, it } from 'vitest';
import {
  boilingCelsius,
  classADays,
  compositeSamples,
  dangerBand,
  hottestOf,
  lowestOf,
  organicStartingCn,
  probeHolds,
  RULE_SET_DATA,
  readingRhythm,
  readingsADay,
} from '#core';
import { RULE_SETS, toCelsius, toCm, toLitres } from '#records';
import published from '../../../fixtures/published/heat.json' with { type: 'json' };

describe('rule sets', () => {
  it('has every name a site can choose, each with a citation and one span', () => {
    expect(Object.keys(RULE_SET_DATA)).toEqual([...RULE_SETS]);
    for (const [name, rule] of Object.entries(RULE_SET_DATA)) {
      expect(rule.name).toBe(name);
      expect(rule.citations.length).toBeGreaterThan(0);
      expect([rule.days, rule.hours].filter((span) => span !== null)).toHaveLength(1);
    }
  });

  it(`converts the limits of Fahrenheit texts [${published.fahrenheit.source}]`, () => {
    published.fahrenheit.F.forEach((f, i) => {
      expect(toCelsius(f, 'F')).toBeCloseTo(published.fahrenheit.C[i]!, 2);
    });
    // 131, 140 and 158 °F sit exactly on a limit of a rule: equality must survive the conversion.
    expect([131, 140, 149, 158].map((f) => toCelsius(f, 'F'))).toEqual([55, 60, 65, 70]);
  });

  it(`gives the Class A time [${published.classA.source}]`, () => {
    published.classA.celsius.forEach((celsius, i) => {
      const hours = classADays(celsius) * 24;
      expect(Math.abs(hours / published.classA.hours[i]! - 1)).toBeLessThan(0.001);
    });
    expect(classADays(90) * 1440).toBeCloseTo(20, 9);
    expect(() => classADays(49.9)).toThrow(RangeError);
  });

  it(`counts readings a day [${published.readingsADay.source}]`, () => {
    const { feet, yd3, readings } = published.readingsADay;
    expect(readingsADay({ lengthCm: toCm(feet, 'ft') })).toBe(readings);
    expect(readingsADay({ litres: toLitres(yd3, 'yd3') })).toBe(readings);
    expect(readingsADay({ lengthCm: toCm(300, 'ft') })).toBe(2);
    expect(readingsADay({})).toBe(1);
  });

  it(`counts composite samples [${published.compositeSamples.source}]`, () => {
    const counts = published.compositeSamples.yd3.map((yd3) => compositeSamples(toLitres(yd3, 'yd3')));
    expect(counts).toEqual(published.compositeSamples.samples);
    expect(compositeSamples(toLitres(10_000, 'yd3'))).toBe(2);
  });

  it.each(published.organic.cn)(`starting C:N %s: %s [${published.organic.source}]`, (cn, fits) => {
    expect(organicStartingCn(cn as number)).toBe(fits);
  });

  it('says at set-up that weekly readings can show no rule', () => {
    for (const rule of Object.values(RULE_SET_DATA)) expect(readingRhythm(rule, 168).canShow).toBe(false);
    expect(readingRhythm(RULE_SET_DATA['windrow-15d'], 24).canShow).toBe(true);
    expect(readingRhythm(RULE_SET_DATA['catering-70-1h'], 24)).toEqual({
      canShow: false,
      everyHours: 1,
      got: 24,
      days: null,
      hours: 1,
    });
  });
});

describe('danger bands', () => {
  it.each([
    [65, 'usual'],
    [65.1, 'turn-soon'],
    [69.9, 'turn-soon'],
    [70, 'act-today'],
    [73.8, 'act-today'],
    [74, 'fire-watch'],
    [79.9, 'fire-watch'],
    [80, 'do-not-open'],
    [84.9, 'do-not-open'],
    [85, 'act-at-once'],
    [120, 'act-at-once'],
  ])('%f °C: %s', (celsius, band) => {
    expect(dangerBand(celsius).band).toBe(band);
  });

  it(`watches above 165 °F and acts above 185 °F [${published.jobSheet.source}]`, () => {
    const { watchAboveF, actAtOnceAboveF } = published.jobSheet;
    expect(dangerBand(toCelsius(watchAboveF, 'F')).band).toBe('act-today');
    expect(dangerBand(toCelsius(watchAboveF + 0.1, 'F')).band).toBe('fire-watch');
    expect(dangerBand(toCelsius(actAtOnceAboveF + 0.1, 'F')).band).toBe('act-at-once');
  });

  it('never asks anybody to turn or open from 80 °C, or where it smokes', () => {
    for (const danger of [
      dangerBand(80),
      dangerBand(95),
      dangerBand(40, {}, true),
      dangerBand(72, {}, true),
    ]) {
      expect(danger.doNotOpen).toBe(true);
      expect(danger.actions[0]).toBe('do-not-open-or-turn');
      expect(danger.actions).not.toContain('turn-today');
    }
  });

  it('takes the site limits, but none that would open a pile at 80 °C', () => {
    expect(dangerBand(66, { 'act-today': 66 }).band).toBe('act-today');
    expect(dangerBand(76, { 'do-not-open': 75 }).doNotOpen).toBe(true);
    const raised = dangerBand(81, { 'do-not-open': 90 });
    expect(raised.band).toBe('do-not-open');
    expect(raised.why.assumed).toEqual([
      { code: 'site-band-limited', args: { band: 'do-not-open', celsius: 80 } },
    ]);
    expect(() => dangerBand(70, { 'act-today': 12 })).toThrow(RangeError);
    expect(() => dangerBand(Number.NaN)).toThrow(RangeError);
  });

  it('takes the hottest for danger and the lowest for proof', () => {
    expect(hottestOf({ celsius: [61, 58], upTo: [64, null] })).toBe(64);
    expect(lowestOf({ celsius: [61, 58] })).toBe(58);
  });
});

describe('a probe check', () => {
  it(`knows where water boils [${published.boiling.source}]`, () => {
    published.boiling.altitudeM.forEach((metres, i) => {
      expect(Math.abs(boilingCelsius(metres) - published.boiling.celsius[i]!)).toBeLessThan(
        published.boiling.withinC,
      );
    });
    expect(() => boilingCelsius(9000)).toThrow(RangeError);
  });
  // ±2 °F: extension practice (from memory)
  it('passes within 2 °F', () => {
    expect(probeHolds(toCelsius(34, 'F'), 0)).toBe(true);
    expect(probeHolds(toCelsius(34.1, 'F'), 0)).toBe(false);
    expect(probeHolds(-1.1, 0)).toBe(true);
  });
});
