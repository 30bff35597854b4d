import type { RecordKind } from '#records';

/** What is known of the moment in which something was logged. */
export type Occasion = {
  record: { kind: string } & Record<string, unknown>;
  /** The hottest of the reading itself, or of the last reading of the place; null where there is none. */
  hottestCelsius: number | null;
  /** Smoke is open there, or the last reading says that nobody may open it. */
  keptAway: boolean;
  windy: boolean;
  hasDrum: boolean;
  /** A hospital, a school, a home: people nearby whom dust and spores harm more. */
  peopleAtRisk: boolean;
};

/** When a caution is due: a kind of record, and what else must hold. Lists hold any one of their values. */
export type Trigger = {
  kind: RecordKind;
  topic?: readonly string[];
  chore?: readonly string[];
  material?: readonly string[];
  container?: readonly string[];
  feel?: readonly string[];
  expects?: readonly string[];
  /** Drum, exit or lift, or no place said: a machine may be meant. */
  machine?: true;
  /** A thing that one person lifts by hand, this heavy or more. */
  eachFromKg?: number;
  hotFromCelsius?: number;
  keptAway?: true;
  windy?: true;
  drum?: true;
  peopleAtRisk?: true;
};

export type CautionId =
  | 'fire'
  | 'lock-out'
  | 'sharps'
  | 'wards'
  | 'wind'
  | 'electrician'
  | 'lift'
  | 'pinch'
  | 'guards'
  | 'hot-core'
  | 'dust'
  | 'lifting'
  | 'tetanus'
  | 'clean-tools'
  | 'gloves';

/** `always` comes every time and no setting switches it off; `daily` comes once a day to each person. */
export type Caution = {
  id: CautionId;
  every: 'always' | 'daily';
  on: readonly Trigger[];
  source: string;
};

const DUSTY = ['wood-chips', 'sawdust', 'straw', 'leaves', 'finished-compost'];

/**
 * All cautions, the most pressing first: of the daily ones a reply holds the first that the person has not seen
 * that day. What to do in each case is the site's own procedure; the texts say so.
 */
export const CAUTIONS: readonly Caution[] = [
  {
    id: 'fire',
    every: 'always',
    on: [
      { kind: 'turning', keptAway: true },
      { kind: 'cover', keptAway: true },
      { kind: 'transfer', keptAway: true },
      { kind: 'screening', keptAway: true },
      { kind: 'sample', keptAway: true },
      { kind: 'removal', keptAway: true },
    ],
    source:
      'NRCS Conservation Practice Standard 317, Composting Facility: act at once above 185 °F; Naylor, BioCycle, Dec 2004: from 70–80 °C chemical heat takes over',
  },
  {
    id: 'lock-out',
    every: 'always',
    on: [
      { kind: 'problem', topic: ['fault', 'freezing'], machine: true },
      { kind: 'resolved', topic: ['fault', 'freezing'], machine: true },
      { kind: 'chore', chore: ['wash-lift', 'check-fan', 'check-stop-button'] },
    ],
    source: 'OSHA 29 CFR 1910.147, the control of hazardous energy (from memory)',
  },
  {
    id: 'sharps',
    every: 'always',
    on: [{ kind: 'problem', topic: ['sharps'] }],
    source: 'common practice, no source: tongs, no picking by hand, report (from memory)',
  },
  {
    id: 'wards',
    every: 'daily',
    on: [
      { kind: 'turning', peopleAtRisk: true },
      { kind: 'screening', peopleAtRisk: true },
    ],
    source: 'Epstein, BioCycle: exposure depends on the task and how near one is to turning and screening',
  },
  {
    id: 'wind',
    every: 'daily',
    on: [
      { kind: 'weather', expects: ['wind'] },
      { kind: 'turning', windy: true },
      { kind: 'screening', windy: true },
    ],
    source: 'Epstein, BioCycle: exposure depends on the task and how near one is to turning and screening',
  },
  {
    id: 'electrician',
    every: 'daily',
    on: [{ kind: 'problem', topic: ['power'] }],
    source: 'local electrical codes; common practice, no source',
  },
  {
    id: 'guards',
    every: 'daily',
    on: [
      { kind: 'problem', topic: ['fault'], machine: true },
      { kind: 'chore', chore: ['check-fan', 'inspect', 'clean-spill'], drum: true },
    ],
    source: 'guard drive rollers and chain: common practice, no source (from memory)',
  },
  {
    id: 'pinch',
    every: 'daily',
    on: [
      { kind: 'drum-setting' },
      { kind: 'discharge' },
      { kind: 'level', machine: true, drum: true },
      { kind: 'chore', chore: ['sweep'], drum: true },
    ],
    source: 'guard drive rollers and chain: common practice, no source (from memory)',
  },
  {
    id: 'hot-core',
    every: 'daily',
    on: [
      { kind: 'temperature', hotFromCelsius: 55 },
      { kind: 'turning', hotFromCelsius: 55 },
      { kind: 'transfer', hotFromCelsius: 55 },
      { kind: 'sample', hotFromCelsius: 55 },
    ],
    source: 'hot cores and steam burns: common practice, no source (from memory)',
  },
  {
    id: 'dust',
    every: 'daily',
    on: [
      { kind: 'screening' },
      { kind: 'turning' },
      { kind: 'transfer' },
      { kind: 'moisture', feel: ['dry'] },
      { kind: 'delivery', material: DUSTY },
      { kind: 'removal', material: DUSTY },
      { kind: 'chore', chore: ['sweep'] },
    ],
    source:
      'HSE RR786: bioaerosols at composting; Epstein, BioCycle: dust, endotoxin and A. fumigatus fell by 90 % with operating changes; respirator: common practice (from memory)',
  },
  {
    id: 'lift',
    every: 'daily',
    on: [
      { kind: 'chore', chore: ['wash-lift'] },
      { kind: 'weigh-in', container: ['cart'], drum: true },
    ],
    source: 'common practice, no source',
  },
  {
    id: 'lifting',
    every: 'daily',
    on: [{ kind: 'weigh-in', container: ['bucket', 'bag', 'barrel'], eachFromKg: 23 }],
    source:
      'NIOSH lifting equation, load constant 23 kg (from memory); BioCycle 2012: lifters and carts of 64 gal or less for worker safety',
  },
  {
    id: 'tetanus',
    every: 'daily',
    on: [
      { kind: 'problem', topic: ['contamination'] },
      { kind: 'weigh-in', material: ['manure'] },
      { kind: 'chore', chore: ['clean-tools'] },
    ],
    source: 'keep vaccination current: common practice, no source (from memory)',
  },
  {
    id: 'clean-tools',
    every: 'daily',
    on: [
      { kind: 'screening' },
      { kind: 'sample' },
      { kind: 'removal', material: ['finished-compost'] },
      { kind: 'cover' },
    ],
    source: 'keep raw matter off finished compost: common practice, no source',
  },
  {
    id: 'gloves',
    every: 'daily',
    on: [
      {
        kind: 'weigh-in',
        material: ['food-scraps', 'coffee-grounds', 'garden-waste', 'grass', 'manure', 'residue'],
      },
      { kind: 'moisture' },
      { kind: 'discharge' },
      { kind: 'rejected-load' },
      { kind: 'chore', chore: ['wash-containers', 'clean-spill', 'clean-tools'] },
    ],
    source:
      'wash hands, no food; asthmatic or immune-compromised staff avoid dusty work: common practice (from memory)',
  },
];
