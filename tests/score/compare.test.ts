import { describe, expect, it } from 'vitest';
import { compareReading, type GotReading } from './compare.ts';

const cart = (kg: number, more: Record<string, unknown> = {}) => ({
  kind: 'weigh-in',
  material: 'food-scraps',
  container: 'cart',
  count: 1,
  kg,
  basis: 'gross',
  ...more,
});
const reading = (parts: Partial<GotReading>): GotReading => ({
  records: [],
  requests: [],
  doubts: [],
  ...parts,
});

describe('compareReading', () => {
  it('takes a reading that agrees in every stated field as exact', () => {
    const got = reading({ records: [cart(61.5, { said: 'cart 61.5', source: 'cafe' })] });
    expect(compareReading(got, { records: [cart(61.5)] })).toMatchObject({ exact: true, faults: [] });
  });

  it('lets a converted weight differ by its last rounding and no more', () => {
    const got = reading({ records: [cart(9.5254)] });
    expect(compareReading(got, { records: [cart(9.53)] }).exact).toBe(true);
    expect(compareReading(got, { records: [cart(9.54)] }).silentWrong).toBe(true);
  });

  it('calls a wrong value, a wrong place and a wrong date silent wrongs', () => {
    for (const [have, want] of [
      [cart(66.5), cart(65.5)],
      [
        { kind: 'turning', pile: 'pile B' },
        { kind: 'turning', pile: 'pile C' },
      ],
      [cart(40, { when: '2026-05-11' }), cart(40, { when: '2026-05-12' })],
    ]) {
      const verdict = compareReading(reading({ records: [have!] }), { records: [want!] });
      expect(verdict).toMatchObject({ exact: false, silentWrong: true, missed: false });
    }
  });

  it('wants a field stated as null to be absent', () => {
    expect(
      compareReading(reading({ records: [cart(40)] }), { records: [cart(40, { label: null })] }).exact,
    ).toBe(true);
    const labelled = reading({ records: [cart(40, { label: '5' })] });
    expect(compareReading(labelled, { records: [cart(40, { label: null })] }).silentWrong).toBe(true);
  });

  it('compares lists whole, numbers inside them with their own tolerance', () => {
    const temperature = (celsius: number[]) => ({ kind: 'temperature', place: 'pile 2', celsius });
    const got = reading({ records: [temperature([54.44, 61.11])] });
    expect(compareReading(got, { records: [temperature([54.4, 61.1])] }).exact).toBe(true);
    expect(compareReading(got, { records: [temperature([54.4])] }).silentWrong).toBe(true);
    expect(compareReading(got, { records: [temperature([61.1, 54.4])] }).silentWrong).toBe(true);
  });

  it('keeps the order within a kind, not between kinds', () => {
    const turning = { kind: 'turning', pile: 'pile A' };
    const got = reading({ records: [turning, cart(50), cart(60)] });
    expect(compareReading(got, { records: [cart(50), turning, cart(60)] }).exact).toBe(true);
    expect(compareReading(got, { records: [turning, cart(60), cart(50)] }).silentWrong).toBe(true);
  });

  it('calls a doubt in place of a record asked needlessly, and a record in place of a doubt silent wrong', () => {
    const doubtful = reading({ doubts: [{ record: cart(665) }] });
    expect(compareReading(doubtful, { records: [cart(66.5)] })).toMatchObject({
      askedNeedlessly: true,
      silentWrong: false,
      missed: false,
    });
    expect(
      compareReading(reading({ records: [cart(665)] }), { doubts: [{ kind: 'weigh-in' }] }),
    ).toMatchObject({ silentWrong: true, askedNeedlessly: false });
  });

  it('counts doubts by kind and number', () => {
    const got = reading({ doubts: [{ record: cart(665) }] });
    expect(compareReading(got, { doubts: [{ kind: 'weigh-in' }] }).exact).toBe(true);
    expect(compareReading(got, { doubts: [{ kind: 'temperature' }] }).exact).toBe(false);
    expect(compareReading(got, { doubts: [{ kind: 'weigh-in' }, { kind: 'weigh-in' }] }).missed).toBe(true);
  });

  it('calls silence where something was meant missed', () => {
    expect(compareReading(reading({}), { records: [cart(40)] })).toMatchObject({
      missed: true,
      silentWrong: false,
    });
    expect(compareReading(reading({}), { requests: [{ request: 'today' }] }).missed).toBe(true);
  });

  it('tells records out of talk from answers to talk', () => {
    expect(compareReading(reading({ records: [cart(40)] }), {})).toMatchObject({
      recordOutOfTalk: true,
      silentWrong: false,
    });
    expect(compareReading(reading({ requests: [{ request: 'help' }] }), {})).toMatchObject({
      answerToTalk: true,
      recordOutOfTalk: false,
    });
    expect(compareReading(reading({ doubts: [{ record: cart(1) }] }), {}).answerToTalk).toBe(true);
  });

  it('compares requests by name and stated fields, list numbers as text or number alike', () => {
    const got = reading({ requests: [{ request: 'done', items: [2, 5] }] });
    expect(compareReading(got, { requests: [{ request: 'done', items: ['2', '5'] }] }).exact).toBe(true);
    expect(compareReading(got, { requests: [{ request: 'done', items: [2] }] }).exact).toBe(false);
  });
});
