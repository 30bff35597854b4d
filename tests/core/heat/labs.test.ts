import { describe, expect, it } from 'vitest';
import {
  ANALYTES,
  type Analyte,
  analyteOf,
  type Batch,
  judgeLab,
  LAB_STANDARD_DATA,
  LAB_STANDARDS,
  labHolds,
  labsOf,
} from '#core';
import { RULE_SETS } from '#records';
import published from '../../../fixtures/published/heat.json' with { type: 'json' };
import { batchOf, joiningAt, momentAt } from './build.ts';

type Lab = Batch['labs'][number];
const lab = (analyte: string, value: number | null, more: Partial<Lab> = {}): Lab => ({
  ...momentAt(40, 4000),
  analyte,
  value,
  unit: null,
  qualifier: null,
  ...more,
});

const METALS: [string, Analyte][] = [
  ['As', 'arsenic'],
  ['Cd', 'cadmium'],
  ['Co', 'cobalt'],
  ['Cr', 'chromium'],
  ['Cu', 'copper'],
  ['Hg', 'mercury'],
  ['Mo', 'molybdenum'],
  ['Ni', 'nickel'],
  ['Pb', 'lead'],
  ['Se', 'selenium'],
  ['Zn', 'zinc'],
];

describe.each(['ccme-a', 'ccme-b', 'ontario-aa', 'us-503'] as const)('limits of %s', (standard) => {
  const rows = published.limits[standard] as Record<string, number | string>;
  it.each(METALS)(`%s, at the limit and a tenth above [${rows.source}]`, (symbol, analyte) => {
    const max = rows[symbol] as number | undefined;
    const own = LAB_STANDARD_DATA[standard].limits.find((limit) => limit.analyte === analyte);
    expect(own?.max).toBe(max);
    expect(analyteOf(symbol)).toBe(analyte);
    if (max === undefined) {
      expect(judgeLab(lab(symbol, 1), standard).state).toBe('no-limit');
      return;
    }
    expect(judgeLab(lab(symbol, max, { unit: 'mg/kg' }), standard).state).toBe('pass');
    expect(judgeLab(lab(symbol, max + 0.1, { unit: 'mg/kg' }), standard).state).toBe('fail');
  });
});

describe(`organisms [${published.limits['us-503'].source}]`, () => {
  const { fecalColiformBelowPerG: coliform, salmonellaBelowPer4g: salmonella } = published.limits['us-503'];
  it.each([
    ['fecal coliform', coliform, 'MPN/g', null, 'fail'],
    ['fecal coliform', coliform - 0.1, 'MPN/g', null, 'pass'],
    ['salmonella', salmonella, 'MPN/4g', null, 'fail'],
    ['salmonella', salmonella - 0.1, 'MPN/4g', null, 'pass'],
    ['salmonella', salmonella, 'MPN/4g', '<', 'pass'],
    ['salmonella', 10, 'MPN/4g', '<', 'cannot-tell'],
    ['salmonella', 0.75, 'MPN/g', null, 'fail'],
    ['salmonella', 0.74, 'MPN/g', null, 'pass'],
    ['salmonella', 2, 'MPN/4g', '>', 'cannot-tell'],
    ['salmonella', 3, 'MPN/4g', '>', 'fail'],
    ['salmonella', null, null, 'not-detected', 'pass'],
    ['salmonella', null, null, null, 'cannot-tell'],
    ['salmonella', 2, 'mg/kg', null, 'cannot-tell'],
  ] as const)('%s %s %s %s: %s', (analyte, value, unit, qualifier, state) => {
    expect(judgeLab(lab(analyte, value, { unit, qualifier }), 'us-503').state).toBe(state);
  });

  it('says when it assumed the unit', () => {
    expect(judgeLab(lab('lead', 20), 'ccme-a').why.assumed).toEqual([
      { code: 'lab-unit', args: { unit: 'mg/kg' } },
    ]);
    expect(judgeLab(lab('lead', 0.2, { unit: 'g/kg' }), 'ccme-a')).toMatchObject({
      state: 'fail',
      value: 200,
    });
  });

  it('holds a pile on an organism found, and on nothing that was not', () => {
    expect(labHolds(lab('salmonella', null), null)).toBe(true);
    expect(labHolds(lab('Salmonella', 4, { unit: 'MPN/4g' }), null)).toBe(true);
    expect(labHolds(lab('salmonella', null, { qualifier: 'not-detected' }), null)).toBe(false);
    expect(labHolds(lab('salmonella', 3, { qualifier: '<' }), null)).toBe(false);
    expect(labHolds(lab('fecal coliform', 999), null)).toBe(false);
    expect(labHolds(lab('fecal coliform', 1000), null)).toBe(true);
    expect(labHolds(lab('pH', 7.1), 'ccme-a')).toBe(false);
    expect(labHolds(lab('lead', 151), 'ccme-a')).toBe(true);
    expect(labHolds(lab('lead', 151), null)).toBe(false);
  });
});

describe('foreign matter', () => {
  const { each, sum, plasticLater, laterFrom, source } = published.impurities;
  const state = (analyte: string, value: number, localDate: string, unit = 'g/kg') =>
    judgeLab(lab(analyte, value, { unit, localDate }), 'eu-cmc3').state;
  it(`EU limits, at the limit and a tenth above [${source}]`, () => {
    for (const analyte of ['glass', 'metal']) {
      expect(state(analyte, each, '2026-07-16')).toBe('pass');
      expect(state(analyte, each + 0.1, '2026-07-16')).toBe('fail');
    }
    expect(state('foreign matter', sum, '2026-07-16')).toBe('pass');
    expect(state('foreign matter', sum + 0.1, '2026-07-16')).toBe('fail');
    expect(state('plastic', each, '2026-07-15')).toBe('pass');
    expect(state('plastic', each, laterFrom)).toBe('fail');
    expect(state('plastic', plasticLater, laterFrom)).toBe('pass');
    expect(state('plastic', plasticLater + 0.1, laterFrom)).toBe('fail');
  });
  it(`Texas Grade 1 [${published.texasForeign.source}]`, () => {
    const { pct } = published.texasForeign;
    const of = (value: number) =>
      judgeLab(lab('foreign matter', value, { unit: '%' }), 'texas-grade-1').state;
    expect([of(pct), of(pct + 0.1)]).toEqual(['pass', 'fail']);
  });
});

describe('published rows that are not judged here, with the reason', () => {
  it.each(published.notOffered)('$row: $reason [$source]', ({ key, reason }) => {
    expect(reason.length).toBeGreaterThan(20);
    // Whoever adds one of them moves its row to where it is tested.
    const offered = [...RULE_SETS, ...LAB_STANDARDS, ...Object.keys(ANALYTES)] as string[];
    expect(offered).not.toContain(key);
  });
});

describe('results of a batch', () => {
  const clean = published.limits['us-503'];
  const all = METALS.filter(([symbol]) => symbol in clean).map(([symbol]) =>
    lab(symbol, 0.5, { unit: 'mg/kg' }),
  );
  const organism = lab('salmonella', 3, { qualifier: '<', unit: 'MPN/4g', entry: 4001 });
  const sample = momentAt(35, 3500);

  // 40 CFR 503: either organism passes; California and CCME ask for both
  it('takes one organism where the standard says either', () => {
    const batch = batchOf({ samples: [sample], labs: [...all, organism] });
    expect(labsOf(batch, 'us-503').missing).toEqual([]);
    expect(labsOf(batch, 'california').missing).toEqual(['faecal-coliform']);
    expect(labsOf(batch, 'ccme-a').missing).toEqual(['cobalt', 'chromium', 'molybdenum', 'faecal-coliform']);
  });

  it('counts no result without a sample, nor of a sample before the last fresh material', () => {
    const untied = labsOf(batchOf({ labs: [organism] }), 'us-503');
    expect(untied.withoutSample).toEqual([{ entry: 4001, analyte: 'salmonella' }]);
    expect(untied.missing).toContain('salmonella');
    const fed = batchOf({ samples: [sample], labs: [organism], joinings: [joiningAt(36, 'fresh')] });
    expect(labsOf(fed, 'us-503').passed).toEqual([]);
  });

  it('lets the newest result decide', () => {
    const found = lab('salmonella', 9, { unit: 'MPN/4g', entry: 3900 });
    const batch = batchOf({ samples: [sample], labs: [organism, found] });
    expect(labsOf(batch, 'us-503').failed).toEqual([]);
    const again = batchOf({ samples: [sample], labs: [organism, { ...found, entry: 4002 }] });
    expect(labsOf(again, 'us-503').failed).toHaveLength(1);
  });
});
