import type { Site } from '#records';
import type { Amount, Batch, DayTotals, DrumPicture, Moment, Picture } from './types.ts';

/** The place that a pile of the site file is: `A` is `pile A`, `bay 3` is itself. */
export const placeOfPile = (pile: string): string => {
  const name = pile.trim();
  if (/\s/.test(name)) return name;
  return `pile ${name.length === 1 ? name.toUpperCase() : name}`;
};

/** A batch with nothing in it yet. */
export const newBatch = (id: string, name: string, startedAt: Moment | null): Batch => ({
  id,
  name,
  state: 'open',
  startedAt,
  closedAt: null,
  sources: {},
  level: null,
  readings: [],
  turns: [],
  covers: [],
  moisture: [],
  joinings: [],
  removals: [],
  samples: [],
  labs: [],
  hold: null,
  kin: [],
  goneAt: null,
});

const newDrum = (name: string, litres: number | null): DrumPicture => ({
  name,
  litres,
  loads: [],
  mode: null,
  everyMin: null,
  fan: null,
  settingSince: null,
  level: null,
  discharges: [],
  readings: [],
});

export const noAmount = (): Amount => ({ kg: 0, estimatedKg: 0, litres: 0, loads: 0, pending: 0 });

/** Sums of a day on which nothing has happened. */
export const emptyDay = (): DayTotals => ({
  intake: {},
  contaminated: {},
  loadsBySource: {},
  rejected: {},
  rejectedKg: 0,
  dirt: {},
  removedKg: 0,
  removedLitres: 0,
  removedOther: {},
  residueKg: {},
  dischargedKg: 0,
  dischargedLitres: 0,
  screenedLitres: 0,
  screenedKg: 0,
  turnings: 0,
  readings: 0,
  hours: 0,
  chores: {},
  ofWhich: {},
  loggedBy: {},
});

/**
 * The picture of a site before its first entry: the piles and drums of its file exist from always.
 * @source none needed
 * @example Object.keys(emptyPicture(site).places) // ['pile A', 'pile B', 'pile C', 'pile D']
 */
export function emptyPicture(site: Site): Picture {
  const names = [...new Set(site.piles.map(placeOfPile))];
  return {
    base: site,
    settings: {},
    batches: Object.fromEntries(names.map((name) => [name, newBatch(name, name, null)])),
    places: Object.fromEntries(names.map((name) => [name, name])),
    ceased: {},
    drums: Object.fromEntries(site.drums.map((drum) => [drum.name, newDrum(drum.name, drum.litres ?? null)])),
    ambient: [],
    exit: [],
    problems: [],
    ended: [],
    held: [],
    pending: [],
    months: {},
    stock: {},
    weights: {},
    factors: {},
    chores: {},
    ownDuties: {},
    dutyNotes: {},
    weather: [],
    closures: [],
    mixLoads: [],
    lastFromSource: {},
    emptyWeighed: {},
    lastEntry: 0,
    asOf: '',
    asOfDate: '',
  };
}
