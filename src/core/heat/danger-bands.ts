import type { PileReading } from '../picture/types.ts';
import type { HeatAssumption, HeatWhy } from './why.ts';

export const DANGER_BANDS = [
  'usual',
  'turn-soon',
  'act-today',
  'fire-watch',
  'do-not-open',
  'act-at-once',
] as const;
export type DangerBandName = (typeof DANGER_BANDS)[number];

export const DANGER_ACTIONS = [
  'turn-within-days',
  'more-air',
  'smaller-pile',
  'check-moisture',
  'turn-today',
  'read-several-depths',
  'read-again-today',
  'log-fire-watch',
  'keep-water-ready',
  'people-back',
  'do-not-open-or-turn',
  'do-not-half-wet',
  'fan-off-if-safe',
  'call-fire-service',
  'tell-coordinator',
] as const;
export type DangerAction = (typeof DANGER_ACTIONS)[number];

export type DangerBand = {
  name: DangerBandName;
  /** Lowest temperature of the band; `open` means that the value itself still belongs to the band below. */
  fromCelsius: number;
  open: boolean;
  /** From here on nothing is opened or turned. */
  doNotOpen: boolean;
  actions: DangerAction[];
  source: string;
};

const FIRE: DangerAction[] = [
  'do-not-open-or-turn',
  'people-back',
  'fan-off-if-safe',
  'call-fire-service',
  'do-not-half-wet',
  'tell-coordinator',
];

/**
 * What the hottest point calls for, coolest band first.
 * @source over 65 °C: Rynk (ed.), On-Farm Composting Handbook, trouble-shooting practice (from memory).
 * 70 °C: Manitoba Agriculture, compost elements (over 70 °C too hot; seen) and NC DEQ (turn at 160 °F; seen).
 * 165 °F (73.9 °C) watch and 185 °F (85 °C) act at once: USDA NRCS Job Sheet 317, 2002 (seen).
 * 80 °C: biology ends at 70 to 80 °C and chemical oxidation takes over, Naylor, BioCycle, December 2004 (seen).
 */
export const DANGER_BAND_DATA: readonly DangerBand[] = [
  { name: 'usual', fromCelsius: -50, open: false, doNotOpen: false, actions: [], source: 'common practice' },
  {
    name: 'turn-soon',
    fromCelsius: 65,
    open: true,
    doNotOpen: false,
    actions: ['turn-within-days', 'more-air', 'check-moisture'],
    source: 'On-Farm Composting Handbook, trouble-shooting (from memory)',
  },
  {
    name: 'act-today',
    fromCelsius: 70,
    open: false,
    doNotOpen: false,
    actions: ['turn-today', 'more-air', 'smaller-pile', 'check-moisture', 'read-again-today'],
    source: 'Manitoba Agriculture, compost elements; NC DEQ, compost fires (160 °F)',
  },
  {
    name: 'fire-watch',
    fromCelsius: 73.9,
    open: false,
    doNotOpen: false,
    actions: [
      'log-fire-watch',
      'read-several-depths',
      'turn-today',
      'smaller-pile',
      'keep-water-ready',
      'read-again-today',
      'tell-coordinator',
    ],
    source: 'USDA NRCS Conservation Practice Job Sheet 317, 2002 (watch above 165 °F)',
  },
  {
    name: 'do-not-open',
    fromCelsius: 80,
    open: false,
    doNotOpen: true,
    actions: FIRE,
    source: 'Naylor, BioCycle, December 2004 (chemical oxidation takes over at 70 to 80 °C)',
  },
  {
    name: 'act-at-once',
    fromCelsius: 85,
    open: false,
    doNotOpen: true,
    actions: FIRE,
    source: 'USDA NRCS Conservation Practice Job Sheet 317, 2002 (act at once above 185 °F)',
  },
];

/** A site's own limits in °C, by band. `do-not-open` and `act-at-once` can be made lower, never higher. */
export type SiteBands = Partial<Record<Exclude<DangerBandName, 'usual'>, number>>;

export type Danger = { band: DangerBandName; doNotOpen: boolean; actions: DangerAction[]; why: HeatWhy };

function inForce(site: SiteBands): { bands: DangerBand[]; limited: DangerBandName[] } {
  const limited: DangerBandName[] = [];
  const bands = DANGER_BAND_DATA.map((band) => {
    const own = band.name === 'usual' ? undefined : site[band.name];
    if (own === undefined) return band;
    if (!(own >= 40 && own <= 100)) throw new RangeError(`${band.name} ${own} °C: expected 40 to 100`);
    if (band.doNotOpen && own > band.fromCelsius) {
      limited.push(band.name);
      return band;
    }
    return { ...band, fromCelsius: own };
  });
  return { bands, limited };
}

/**
 * The band that the hottest point lies in, with what to do. `smoke` (or charring, a burnt smell) is never less
 * than `do-not-open`, at whatever temperature. °C; throws on a value outside −50 to 400.
 * @source see DANGER_BAND_DATA
 * @example dangerBand(70).band // 'act-today'
 * @example dangerBand(65).band // 'usual'
 */
export function dangerBand(celsius: number, site: SiteBands = {}, smoke = false): Danger {
  if (!(celsius >= -50 && celsius <= 400)) throw new RangeError(`celsius ${celsius} °C: expected -50 to 400`);
  const { bands, limited } = inForce(site);
  const holds = (band: DangerBand) =>
    band.open
      ? celsius > band.fromCelsius
      : celsius >= band.fromCelsius || (smoke && band.name === 'do-not-open');
  const found = bands.filter(holds).at(-1)!;
  const assumed: HeatAssumption[] = limited.map((name) => ({
    code: 'site-band-limited',
    args: { band: name, celsius: DANGER_BAND_DATA.find((band) => band.name === name)!.fromCelsius },
  }));
  return {
    band: found.name,
    doNotOpen: found.doNotOpen,
    actions: [...found.actions],
    why: {
      key: 'danger-band',
      args: { celsius, fromCelsius: found.fromCelsius, smoke },
      source: found.source,
      assumed,
    },
  };
}

/**
 * The hottest that a reading may have been: the upper end where a range was said.
 * @source none needed: the hottest point decides danger
 * @example hottestOf({ celsius: [61, 58], upTo: [64, null] }) // 64
 */
export function hottestOf(reading: Pick<PileReading, 'celsius' | 'upTo'>): number {
  return Math.max(...reading.celsius, ...(reading.upTo ?? []).filter((value) => value !== null));
}

/**
 * The lowest that a reading may have been: the lower end where a range was said.
 * @source none needed: the lowest point decides whether material was sanitised
 * @example lowestOf({ celsius: [61, 58] }) // 58
 */
export const lowestOf = (reading: Pick<PileReading, 'celsius'>): number => Math.min(...reading.celsius);
