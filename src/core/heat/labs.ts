import type { Batch, Moment } from '../picture/types.ts';
import { byMoment } from './moments.ts';
import type { HeatAssumption, HeatWhy } from './why.ts';

/** What a laboratory may report, by the key that limits are kept under, with the words people write. */
export const ANALYTES = {
  arsenic: ['as', 'arsenic', 'arsénico'],
  cadmium: ['cd', 'cadmium', 'cadmio'],
  cobalt: ['co', 'cobalt', 'cobalto'],
  chromium: ['cr', 'chromium', 'chrome', 'cromo'],
  copper: ['cu', 'copper', 'cuivre', 'cobre'],
  mercury: ['hg', 'mercury', 'mercure', 'mercurio'],
  molybdenum: ['mo', 'molybdenum', 'molybdène', 'molibdeno'],
  nickel: ['ni', 'nickel', 'níquel'],
  lead: ['pb', 'lead', 'plomb', 'plomo'],
  selenium: ['se', 'selenium', 'sélénium', 'selenio'],
  zinc: ['zn', 'zinc', 'cinc'],
  'faecal-coliform': ['faecal coliform', 'fecal coliform', 'faecal coliforms', 'fecal coliforms', 'coliform'],
  salmonella: ['salmonella', 'salmonelle', 'salmonelles'],
  'e-coli': ['e coli', 'e. coli', 'escherichia coli'],
  'foreign-matter': ['foreign matter', 'impurities', 'impuretés', 'impurezas'],
  plastic: ['plastic', 'plastique', 'plástico'],
  glass: ['glass', 'verre', 'vidrio'],
  metal: ['metal', 'métal'],
  pah: ['pah', 'pah16', 'hap'],
} as const satisfies Record<string, readonly string[]>;
export type Analyte = keyof typeof ANALYTES;

/** Organisms whose presence alone is a reason to hold a pile until somebody has decided. */
const ORGANISMS: readonly Analyte[] = ['salmonella', 'e-coli', 'faecal-coliform'];

type LabUnit = 'mg/kg' | 'g/kg' | '%' | 'MPN/g' | 'MPN/4g';
/** `strict`: the value must be below `max`, not equal to it. `later`: a limit that takes the place of it from a day on. */
export type LabLimit = {
  analyte: Analyte;
  max: number;
  unit: LabUnit;
  strict: boolean;
  later?: { from: string; max: number };
};

export type LabStandard = {
  title: string;
  seen: boolean;
  limits: LabLimit[];
  /** Groups of which one passing result is enough. */
  either: Analyte[][];
};

const metals = (values: Partial<Record<Analyte, number>>): LabLimit[] =>
  Object.entries(values).map(([analyte, max]) => ({
    analyte: analyte as Analyte,
    max: max as number,
    unit: 'mg/kg',
    strict: false,
  }));

const organisms: LabLimit[] = [
  { analyte: 'faecal-coliform', max: 1000, unit: 'MPN/g', strict: true },
  { analyte: 'salmonella', max: 3, unit: 'MPN/4g', strict: true },
];

export const LAB_STANDARDS = [
  'ccme-a',
  'ccme-b',
  'ontario-aa',
  'us-503',
  'california',
  'texas-grade-1',
  'eu-cmc3',
] as const;
export type LabStandardName = (typeof LAB_STANDARDS)[number];

/**
 * Limits for finished compost, all on dry matter, with the standard named. A site chooses which it asks for.
 * @source CCME PN 1340, 2005 (A: seen through harmonised lists; B and organisms: from memory); 40 CFR 503.13
 * Table 3 and Class A organisms (seen, compostingcouncil.org); Ontario AA, 2004 (seen, envirolaw.com); 30 TAC 332.72 (seen); Regulation (EU) 2019/1009
 * Annex II CMC 3 (from memory)
 * @example LAB_STANDARD_DATA['us-503'].limits.find((limit) => limit.analyte === 'lead')?.max // 300
 */
export const LAB_STANDARD_DATA: Record<LabStandardName, LabStandard> = {
  'ccme-a': {
    title: 'CCME PN 1340 (2005), category A',
    seen: true,
    limits: [
      ...metals({
        arsenic: 13,
        cadmium: 3,
        cobalt: 34,
        chromium: 210,
        copper: 400,
        mercury: 0.8,
        molybdenum: 5,
        nickel: 62,
        lead: 150,
        selenium: 2,
        zinc: 700,
      }),
      ...organisms,
    ],
    either: [],
  },
  'ccme-b': {
    title: 'CCME PN 1340 (2005), category B',
    seen: false,
    limits: [
      ...metals({
        arsenic: 75,
        cadmium: 20,
        cobalt: 150,
        chromium: 1060,
        copper: 757,
        mercury: 5,
        molybdenum: 20,
        nickel: 180,
        lead: 500,
        selenium: 14,
        zinc: 1850,
      }),
      ...organisms,
    ],
    either: [],
  },
  'ontario-aa': {
    title: 'Ontario, compost category AA (2004)',
    seen: true,
    limits: metals({
      arsenic: 13,
      cadmium: 3,
      cobalt: 34,
      chromium: 210,
      copper: 100,
      mercury: 0.8,
      molybdenum: 5,
      nickel: 62,
      lead: 150,
      selenium: 2,
      zinc: 500,
    }),
    either: [],
  },
  'us-503': {
    title: '40 CFR 503.13 Table 3 and 503.32 Class A',
    seen: true,
    limits: [
      ...metals({
        arsenic: 41,
        cadmium: 39,
        copper: 1500,
        lead: 300,
        mercury: 17,
        nickel: 420,
        selenium: 100,
        zinc: 2800,
      }),
      ...organisms,
    ],
    either: [['faecal-coliform', 'salmonella']],
  },
  california: {
    title: '14 CCR 17868.3 (both organisms)',
    seen: false,
    limits: organisms,
    either: [],
  },
  'texas-grade-1': {
    title: '30 TAC 332.72, Grade 1 (4 mm screen)',
    seen: true,
    limits: [{ analyte: 'foreign-matter', max: 1.5, unit: '%', strict: false }],
    either: [],
  },
  'eu-cmc3': {
    title: 'Regulation (EU) 2019/1009, Annex II CMC 3',
    seen: false,
    limits: [
      { analyte: 'glass', max: 3, unit: 'g/kg', strict: false },
      { analyte: 'metal', max: 3, unit: 'g/kg', strict: false },
      {
        analyte: 'plastic',
        max: 3,
        unit: 'g/kg',
        strict: false,
        later: { from: '2026-07-16', max: 2.5 },
      },
      { analyte: 'foreign-matter', max: 5, unit: 'g/kg', strict: false },
      { analyte: 'pah', max: 6, unit: 'mg/kg', strict: false },
    ],
    either: [],
  },
};

/**
 * The key of an analyte as somebody wrote it; null for one without limits here (pH, C:N …).
 * @source IUPAC element symbols
 * @example analyteOf('Pb') // 'lead'
 */
export function analyteOf(said: string): Analyte | null {
  const word = said.trim().toLowerCase().replaceAll('-', ' ').replace(/\s+/g, ' ');
  const found = Object.entries(ANALYTES).find(
    ([key, words]) => key === word || (words as readonly string[]).includes(word),
  );
  return (found?.[0] as Analyte | undefined) ?? null;
}

export type LabResultOf = Batch['labs'][number];

export type LabVerdict = {
  state: 'pass' | 'fail' | 'cannot-tell' | 'no-limit';
  analyte: Analyte | null;
  /** Why it cannot be told. */
  reason: 'no-value' | 'unit' | 'limit-of-detection' | null;
  /** The value in the unit of the limit. */
  value: number | null;
  limit: LabLimit | null;
  why: HeatWhy;
};

/** Factor from a unit as written to the unit of the limit; null where they measure different things. */
function unitFactor(said: string, wanted: LabUnit): number | null {
  const unit = said.toLowerCase().replace(/\s|dry|dm|ts/g, '');
  const perGram: Record<string, number> = { 'mpn/g': 1, 'cfu/g': 1, 'mpn/4g': 0.25, 'cfu/4g': 0.25 };
  const mass: Record<string, number> = {
    'mg/kg': 1,
    ppm: 1,
    'µg/g': 1,
    'ug/g': 1,
    'g/kg': 1000,
    '%': 10_000,
  };
  const table = wanted.startsWith('MPN') ? perGram : mass;
  const from = table[unit];
  const to = table[wanted.toLowerCase()];
  return from === undefined || to === undefined ? null : from / to;
}

/** A limit as it holds on the day of the result. */
const inForce = (limit: LabLimit | null, localDate: string): LabLimit | null =>
  limit?.later && localDate >= limit.later.from ? { ...limit, max: limit.later.max } : limit;

/**
 * Holds one result against a standard. `<` passes where what it bounds is within the limit, `>` fails where it is
 * beyond; otherwise nobody can tell. A result without a unit is taken in the unit of the limit, and that is said.
 * @source the standard's own title
 * @example judgeLab({ ...momentAt(40, 1), analyte: 'lead', value: 150, unit: 'mg/kg', qualifier: null }, 'ccme-a').state // 'pass'
 */
export function judgeLab(lab: LabResultOf, standard: LabStandardName): LabVerdict {
  const { title, limits } = LAB_STANDARD_DATA[standard];
  const analyte = analyteOf(lab.analyte);
  const limit = inForce(limits.find((line) => line.analyte === analyte) ?? null, lab.localDate);
  const assumed: HeatAssumption[] = [];
  const give = (
    state: LabVerdict['state'],
    reason: LabVerdict['reason'],
    value: number | null,
  ): LabVerdict => ({
    state,
    analyte,
    reason,
    value,
    limit,
    why: {
      key: `lab:${standard}`,
      args: { value, max: limit?.max ?? null, unit: limit?.unit ?? null },
      source: title,
      assumed,
    },
  });
  if (limit === null) return give('no-limit', null, lab.value);
  if (lab.qualifier === 'not-detected') return give('pass', null, lab.value);
  if (lab.value === null) return give('cannot-tell', 'no-value', null);
  if (lab.unit === null) assumed.push({ code: 'lab-unit', args: { unit: limit.unit } });
  const factor = lab.unit === null ? 1 : unitFactor(lab.unit, limit.unit);
  if (factor === null) return give('cannot-tell', 'unit', lab.value);
  // Ten digits, so that 0.25 of a published limit is not lost to binary fractions.
  const value = Number((lab.value * factor).toPrecision(10));
  const within = limit.strict ? value < limit.max : value <= limit.max;
  if (lab.qualifier === '<')
    return value <= limit.max ? give('pass', null, value) : give('cannot-tell', 'limit-of-detection', value);
  if (lab.qualifier === '>')
    return value >= limit.max ? give('fail', null, value) : give('cannot-tell', 'limit-of-detection', value);
  return give(within ? 'pass' : 'fail', null, value);
}

/**
 * Whether a result is a reason to hold the pile at once: an organism reported as found (`lab says salmonella in
 * C`, with or without a number), or a value beyond the limit of any standard that the site asks for.
 * @source Salmonella and faecal coliform limits: 40 CFR 503.32 Class A, CCME PN 1340
 * @example labHolds({ ...momentAt(40, 1), analyte: 'salmonella', value: null, unit: null, qualifier: null }, null) // true
 */
export function labHolds(lab: LabResultOf, standard: LabStandardName | null): boolean {
  if (standard !== null && judgeLab(lab, standard).state === 'fail') return true;
  const analyte = analyteOf(lab.analyte);
  if (analyte === null || !ORGANISMS.includes(analyte)) return false;
  if (lab.qualifier === 'not-detected' || lab.qualifier === '<') return false;
  if (lab.value === null) return true;
  return analyte === 'salmonella'
    ? lab.value > 0 && judgeLab(lab, 'us-503').state !== 'pass'
    : judgeLab(lab, 'us-503').state === 'fail';
}

export type LabsOfBatch = {
  standard: LabStandardName;
  passed: LabVerdict[];
  failed: LabVerdict[];
  unclear: LabVerdict[];
  /** Analytes of the standard without a result that counts. */
  missing: Analyte[];
  /** Results that belong to no sample of this batch since anything was last added. */
  withoutSample: { entry: number; analyte: string }[];
};

/**
 * The results of a batch against a standard. Only a result of a sample taken after the last fresh material or
 * join counts; of several the newest decides.
 * @source the standard's own title; tied to a sample: 14 CCR 17868.1 (results before release)
 * @example labsOf(batchOf(), 'california').missing // ['faecal-coliform', 'salmonella']
 */
export function labsOf(batch: Batch, standard: LabStandardName): LabsOfBatch {
  const { limits, either } = LAB_STANDARD_DATA[standard];
  const added =
    batch.joinings
      .filter((j) => j.what === 'fresh' || j.what === 'joined')
      .sort(byMoment)
      .at(-1) ?? null;
  const samples = batch.samples.filter((sample) => added === null || byMoment(sample, added) > 0);
  const hasSample = (lab: Moment) =>
    samples.some((sample) => byMoment(sample, lab) <= 0 || sample.at === lab.at);
  const newest = new Map<Analyte, LabVerdict>();
  const withoutSample: LabsOfBatch['withoutSample'] = [];
  for (const lab of [...batch.labs].sort(byMoment)) {
    const verdict = judgeLab(lab, standard);
    if (verdict.analyte === null || verdict.state === 'no-limit') continue;
    if (hasSample(lab)) newest.set(verdict.analyte, verdict);
    else withoutSample.push({ entry: lab.entry, analyte: lab.analyte });
  }
  const verdicts = [...newest.values()];
  const spared = new Set(
    either
      .filter((group) => group.some((a) => newest.get(a)?.state === 'pass'))
      .flat()
      .filter((a) => !newest.has(a)),
  );
  return {
    standard,
    passed: verdicts.filter((verdict) => verdict.state === 'pass'),
    failed: verdicts.filter((verdict) => verdict.state === 'fail'),
    unclear: verdicts.filter((verdict) => verdict.state === 'cannot-tell'),
    missing: limits
      .map((limit) => limit.analyte)
      .filter((analyte) => !newest.has(analyte) && !spared.has(analyte)),
    withoutSample,
  };
}
