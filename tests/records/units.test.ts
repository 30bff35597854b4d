import fc from 'fast-check';
import { unit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import {
  fromCelsius,
  fromCelsiusRise,
  fromCm,
  fromKg,
  fromLitres,
  LENGTH_UNITS,
  type LengthUnit,
  MASS_UNITS,
  type MassUnit,
  TIME_UNITS,
  type TimeUnit,
  toCelsius,
  toCm,
  toKg,
  toLitres,
  toMin,
  VOLUME_UNITS,
  type VolumeUnit,
} from '#records';

// Outside check: the units of mathjs, named as it names them.
const MASS = { kg: 'kg', g: 'g', t: 'tonne', lb: 'lbm', oz: 'oz' } as const;
const VOLUME = { L: 'litre', mL: 'ml', m3: 'm^3', gal: 'gal', ft3: 'ft^3', yd3: 'yd^3' } as const;
const LENGTH = { cm: 'cm', mm: 'mm', m: 'm', in: 'inch', ft: 'ft' } as const;
const TIME = { min: 'minute', h: 'hour', d: 'day' } as const;

/** To a part in a hundred million: mathjs keeps the US gallon to that (it stores cubic metres). */
const near = (got: number, wanted: number): void => {
  expect(Math.abs(got - wanted)).toBeLessThanOrEqual(1e-8 * Math.max(1, Math.abs(wanted)));
};
const amount = fc.double({ min: 0, max: 1e6, noNaN: true });

describe('conversions against another library', () => {
  test('every unit is checked', () => {
    expect(Object.keys(MASS)).toEqual(Object.keys(MASS_UNITS));
    expect(Object.keys(VOLUME)).toEqual(Object.keys(VOLUME_UNITS));
    expect(Object.keys(LENGTH)).toEqual(Object.keys(LENGTH_UNITS));
    expect(Object.keys(TIME)).toEqual(Object.keys(TIME_UNITS));
  });
  test.each(Object.entries(MASS) as [MassUnit, string][])('%s', (ours, theirs) => {
    fc.assert(fc.property(amount, (x) => near(toKg(x, ours), unit(x, theirs).toNumber('kg'))));
    fc.assert(fc.property(amount, (x) => near(fromKg(toKg(x, ours), ours), x)));
  });
  test.each(Object.entries(VOLUME) as [VolumeUnit, string][])('%s', (ours, theirs) => {
    fc.assert(fc.property(amount, (x) => near(toLitres(x, ours), unit(x, theirs).toNumber('litre'))));
    fc.assert(fc.property(amount, (x) => near(fromLitres(toLitres(x, ours), ours), x)));
  });
  test.each(Object.entries(LENGTH) as [LengthUnit, string][])('%s', (ours, theirs) => {
    fc.assert(fc.property(amount, (x) => near(toCm(x, ours), unit(x, theirs).toNumber('cm'))));
    fc.assert(fc.property(amount, (x) => near(fromCm(toCm(x, ours), ours), x)));
  });
  test.each(Object.entries(TIME) as [TimeUnit, string][])('%s', (ours, theirs) => {
    fc.assert(fc.property(amount, (x) => near(toMin(x, ours), unit(x, theirs).toNumber('minute'))));
  });
  test('degrees, and a rise without the offset', () => {
    const degrees = fc.double({ min: -60, max: 250, noNaN: true });
    fc.assert(fc.property(degrees, (x) => near(toCelsius(x, 'F'), unit(x, 'degF').toNumber('degC'))));
    fc.assert(fc.property(degrees, (x) => near(fromCelsius(x, 'F'), unit(x, 'degC').toNumber('degF'))));
    fc.assert(fc.property(degrees, (x) => near(fromCelsius(toCelsius(x, 'F'), 'F'), x)));
    fc.assert(
      fc.property(degrees, (x) => near(fromCelsiusRise(x, 'F'), fromCelsius(x, 'F') - fromCelsius(0, 'F'))),
    );
    expect(toCelsius(55, 'C')).toBe(55);
  });
});
