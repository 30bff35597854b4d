import type { Doubt, DoubtCode, FieldRecord, ProblemTopic, Site } from '#records';
import type { Tally } from '../weights/estimate.ts';

/** One moment of the book, as core sees it: an instant and the site's local date of it. */
export type Moment = { entry: number; at: string; localDate: string };

export type PileReading = Moment & {
  celsius: number[];
  points: (string | number)[] | null;
  depthCm: number | null;
  upTo: (number | null)[] | null;
  approximate: boolean;
};

/** What restarts or passes on the proof of heat. */
export type Joining = Moment & {
  what: 'fresh' | 'joined' | 'split-from' | 'cover';
  /** Where it came from: a place of the site, or null (straight from carts). */
  from: string | null;
  kg: number | null;
  litres: number | null;
  /** Whether what came in was proven hot for long enough at that moment; null where nobody can know. */
  provenThen: boolean | null;
  /** First and last reading that this proof rests on; absent where it was kept without. */
  provenBy?: { from: string; to: string } | null;
};

/**
 * A batch is not a place: it has a name now, and its history goes with it when it is moved, split or joined.
 * `state`: `open` takes fresh material, `closed` is left to heat and cure, `ready` was said ready by a person.
 */
export type Batch = {
  id: string;
  name: string;
  state: 'open' | 'closed' | 'ready' | 'gone';
  startedAt: Moment | null;
  closedAt: Moment | null;
  /** Intake days and sources that went in, newest last, for tracing: source → first and last local date. */
  sources: Record<string, { from: string; to: string; kg: number }>;
  /** Last word on how much there is. */
  level: (Moment & { fraction: number | null; litres: number | null }) | null;
  readings: PileReading[];
  turns: Moment[];
  covers: (Moment & { layer: string; on: boolean; fromProven: boolean | null })[];
  moisture: (Moment & { feel: string | null; percent: number | null })[];
  joinings: Joining[];
  removals: (Moment & { kg: number | null; litres: number | null; to: string | null; material: string })[];
  samples: Moment[];
  labs: (Moment & { analyte: string; value: number | null; unit: string | null; qualifier: string | null })[];
  /** Nothing leaves a held pile without a coordinator saying so. */
  hold: (Moment & { why: string }) | null;
  /** Other batches it was joined with or split from, by name. */
  kin: string[];
  /** When it was emptied or went into another; dropped 60 days later. */
  goneAt: Moment | null;
};

/** A load on its way through the drum. Kg are net; an estimate keeps its mark. */
export type DrumLoad = Moment & {
  material: string;
  kg: number;
  litres: number | null;
  estimated: boolean;
  source: string | null;
};

export type DrumPicture = {
  name: string;
  litres: number | null;
  /** First in, first out: what is still inside, oldest first. */
  loads: DrumLoad[];
  mode: string | null;
  everyMin: number | null;
  fan: string | null;
  settingSince: Moment | null;
  /** Last `drum 3/4 full`. */
  level: (Moment & { fraction: number }) | null;
  /** The last squeeze or moisture test of what is inside. */
  moisture?: (Moment & { feel: string | null; percent: number | null }) | null;
  /** The last bulk density of what is inside, found with a bucket. */
  density?: (Moment & { kgPerM3: number }) | null;
  discharges: (Moment & { kg: number | null; litres: number | null; to: string | null })[];
  readings: PileReading[];
};

/** Amounts of one matter: measured and estimated are never added up silently. */
export type Amount = { kg: number; estimatedKg: number; litres: number; loads: number; pending: number };

/** Sums of one local day; a week, month or year is a sum of days. Kilograms are net. */
export type DayTotals = {
  /** material → source (`''` where none was said) → amount */
  intake: Record<string, Record<string, Amount>>;
  contaminated: Record<string, number>;
  loadsBySource: Record<string, number>;
  rejected: Record<string, number>;
  rejectedKg: number;
  /** What was found in dirty loads, by source, as far as it was said: how often. */
  dirt: Record<string, Record<string, number>>;
  /** Finished compost that left; other materials (residue, leachate, overs) stand in `removedOther`. */
  removedKg: number;
  removedLitres: number;
  removedOther: Record<string, { kg: number; litres: number }>;
  /** Kilograms of residue picked out, by source (`''` where none was said). */
  residueKg: Record<string, number>;
  dischargedKg: number;
  dischargedLitres: number;
  screenedLitres: number;
  screenedKg: number;
  turnings: number;
  readings: number;
  hours: number;
  /** Chores, checks and the site's own duties, by name: how often. */
  chores: Record<string, number>;
  /** What was said of a part of a load: kilograms of it (they are counted in `intake` already). */
  ofWhich: Record<string, number>;
  loggedBy: Record<string, number>;
};

export type OpenProblem = Moment & {
  topic: ProblemTopic;
  place: string | null;
  note: string | null;
  strength: string | null;
};
/** A problem that ended, with what ended it. */
export type EndedProblem = OpenProblem & {
  ended: Moment & { note: string | null; by: 'resolved' | 'chore' };
};
export type HeldLine = Moment & { kind: string; why: DoubtCode; doubt: Doubt };
/** A gross weight that waits for the empty weight, with what is needed to count it once that is told. */
export type PendingNet = Moment & {
  container: string;
  label: string | null;
  kg: number;
  count: number;
  record: Extract<FieldRecord, { kind: 'weigh-in' | 'discharge' }>;
  /** The batch that it went into, where it went into one. */
  batch: string | null;
};
export type Stock = { litres: number | null; kg: number | null; since: Moment | null; usedKg: number };
/** A setting holds from a local day, or (where no day was said) from the moment `at` it was told. */
export type SettingLine = { from: string; at: string | null; value: unknown; entry: number };
export type ChoreDone = Moment & {
  reads: number | null;
  against: number | null;
  place: string | null;
  /** Of a check: whether it was good; null where nobody can tell. */
  ok: boolean | null;
  /** The last good one, this one included. */
  lastGood: Moment | null;
  /** Readings between a good check and one that failed are in doubt, until a good one ends it. */
  doubt: { since: string; until: string | null } | null;
  /** Doubts before that one, each ended by a good check, oldest first. */
  pastDoubts?: { since: string; until: string | null }[];
};
export type OwnDuty = { entry: number; every: string | null; on: string | null; since: string };
export type DutyNote = {
  act: 'claim' | 'release' | 'postpone' | 'done';
  person: number | null;
  at: string;
  localDate: string;
  until: string | null;
  reason: string | null;
};

/** Weather that is expected or was seen; of a wind, where it blows from and whether it blows onto people. */
export type WeatherLine = Moment & {
  expects: string;
  for: string;
  observed: boolean;
  mm: number | null;
  windFrom?: string | null;
  windTo?: string | null;
};

/** What the site looks like now: a pure fold over entries, rebuilt from a week's snapshot when needed. */
export type Picture = {
  /** The site file as given at the start: holds from always. */
  base: Site;
  /** Later settings by name (`tare:cart`, `target` …), each with the local day from which it holds. */
  settings: Record<string, SettingLine[]>;
  batches: Record<string, Batch>;
  /** Place name → id of the batch that is there now. */
  places: Record<string, string>;
  ceased: Record<string, { successor: string | null; on: string }>;
  drums: Record<string, DrumPicture>;
  /** `standIn`: the mean of the day by a forecast, read by nobody. */
  ambient: (Moment & { celsius: number; standIn?: boolean })[];
  exit: PileReading[];
  problems: OpenProblem[];
  /** Problems that ended in the last 60 days, oldest first. */
  ended: EndedProblem[];
  held: HeldLine[];
  pending: PendingNet[];
  /**
   * Month (`2026-06`) → local date → sums; only the days that the replies need (the last 400). Older ones are asked
   * of the book. By month, so that a line copies a month of days and not a year of them.
   */
  months: Record<string, Record<string, DayTotals>>;
  stock: Record<string, Stock>;
  /** Weights as typed, by container and `container label`, for what is usual. */
  weights: Record<string, Tally>;
  /** Weighed containers whose volume is known, by `container|material`: kg a full one, learned. */
  factors: Record<string, Tally>;
  /** The last time of each chore, by its name, and by `name place` where a place was said. */
  chores: Record<string, ChoreDone>;
  ownDuties: Record<string, OwnDuty>;
  /** By the key of the duty: the last thing that somebody said of it. */
  dutyNotes: Record<string, DutyNote>;
  weather: WeatherLine[];
  /** Days on which nobody works here, both ends included. */
  closures: { entry: number; from: string; to: string }[];
  /** Loads and additions of the last days, for the mix: newest last. */
  mixLoads: (DrumLoad & { container: string | null; count: number; place: string | null })[];
  /** When each usual source last came in. */
  lastFromSource: Record<string, string>;
  /** When each container was last weighed empty (a tare told or said), by container or `container label`. */
  emptyWeighed: Record<string, string>;
  lastEntry: number;
  /** The latest moment in it; empty before the first entry. */
  asOf: string;
  /** Local date of that moment. */
  asOfDate: string;
};
