import { z } from 'zod';

/** A local date `2026-06-17`, or with a clock time `2026-06-17T07:15`: the site's own wall time. */
export const LocalWhen = z.string().regex(/^\d{4}-\d{2}-\d{2}(T\d{2}:\d{2})?$/);

const amount = z.number().finite().nonnegative();
const words = z.string().min(1).max(4000);

/** Fields that any record may carry. `said` is the slice of the message it came from. */
const common = { when: LocalWhen.nullish(), said: z.string().nullish() };

/** How much, in one of the three ways people say it: weighed, by volume, or counted in containers. */
const quantity = {
  kg: amount.nullish(),
  litres: amount.nullish(),
  container: words.nullish(),
  count: amount.nullish(),
};

export const OfWhich = z.object({ what: words, kg: amount.nullish(), litres: amount.nullish() });

export const WeighIn = z.object({
  kind: z.literal('weigh-in'),
  material: words,
  container: words.nullish(),
  label: words.nullish(),
  count: amount.default(1),
  fill: z.number().min(0).max(1).nullish(),
  kg: amount.nullish(),
  basis: z.enum(['gross', 'net']).nullish(),
  tareKg: amount.nullish(),
  litres: amount.nullish(),
  source: words.nullish(),
  place: words.nullish(),
  flags: z.array(z.string()).nullish(),
  /** What was found in a dirty load, as far as it was named. */
  found: z.array(words).nullish(),
  ofWhich: z.array(OfWhich).nullish(),
  approximate: z.boolean().nullish(),
  ...common,
});

export const Temperature = z.object({
  kind: z.literal('temperature'),
  place: words,
  celsius: z.array(z.number().finite()).min(1),
  points: z.array(z.union([z.string(), z.number()])).nullish(),
  depthCm: amount.nullish(),
  approximate: z.boolean().nullish(),
  upTo: z.array(z.number().nullable()).nullish(),
  ...common,
});

export const Moisture = z.object({
  kind: z.literal('moisture'),
  place: words,
  feel: z.enum(['dry', 'right', 'wet', 'dripping']).nullish(),
  percent: z.number().min(0).max(100).nullish(),
  approximate: z.boolean().nullish(),
  ...common,
});

export const Turning = z.object({
  kind: z.literal('turning'),
  pile: words,
  movedTo: words.nullish(),
  ...common,
});

export const COVER_LAYERS = ['mature-compost', 'wood-chips', 'geotextile', 'tarp', 'unspecified'] as const;
export const Cover = z.object({
  kind: z.literal('cover'),
  pile: words,
  layer: z.enum(COVER_LAYERS),
  on: z.boolean(),
  ...common,
});

export const Discharge = z.object({
  kind: z.literal('discharge'),
  pile: words.nullish(),
  place: words.nullish(),
  ...quantity,
  basis: z.enum(['gross', 'net']).nullish(),
  approximate: z.boolean().nullish(),
  ...common,
});

export const Transfer = z.object({
  kind: z.literal('transfer'),
  from: words,
  to: words,
  ...quantity,
  ...common,
});

export const DrumSetting = z.object({
  kind: z.literal('drum-setting'),
  mode: z.enum(['automatic', 'manual', 'off']).nullish(),
  everyMin: amount.nullish(),
  fan: z.enum(['off', 'low', 'high']).nullish(),
  place: words.nullish(),
  ...common,
});

export const Level = z.object({
  kind: z.literal('level'),
  place: words.nullish(),
  material: words.nullish(),
  fraction: z.number().min(0).max(1).nullish(),
  litres: amount.nullish(),
  kg: amount.nullish(),
  container: words.nullish(),
  count: amount.nullish(),
  approximate: z.boolean().nullish(),
  ...common,
});

export const PROBLEM_TOPICS = [
  'odour',
  'leachate',
  'flies',
  'pests',
  'freezing',
  'fault',
  'power',
  'spill',
  'contamination',
  'sharps',
  'complaint',
  'smoke',
  'injury',
  'other',
] as const;
export const ProblemTopic = z.enum(PROBLEM_TOPICS);
export type ProblemTopic = z.infer<typeof ProblemTopic>;

export const Problem = z.object({
  kind: z.literal('problem'),
  topic: ProblemTopic,
  place: words.nullish(),
  strength: z.enum(['none', 'faint', 'strong']).nullish(),
  note: z.string().nullish(),
  ...common,
});

export const Resolved = z.object({
  kind: z.literal('resolved'),
  topic: ProblemTopic.nullish(),
  place: words.nullish(),
  entry: z.number().int().positive().nullish(),
  note: z.string().nullish(),
  ...common,
});

export const CHORES = [
  'sweep',
  'wash-lift',
  'wash-containers',
  'clean-tools',
  'clean-spill',
  'check-fan',
  'check-stop-button',
  'check-scale',
  'check-thermometer',
  'check-odour',
  'lock-gate',
  'inspect',
  'watered',
] as const;
/** `chore` is one of CHORES or a duty that the site has named itself. */
export const Chore = z.object({
  kind: z.literal('chore'),
  chore: words,
  place: words.nullish(),
  reads: z.number().nullish(),
  against: z.number().nullish(),
  unit: z.string().nullish(),
  ok: z.boolean().nullish(),
  ...common,
});

export const Weather = z.object({
  kind: z.literal('weather'),
  expects: z.enum(['rain', 'frost', 'snow', 'heat', 'wind']),
  observed: z.boolean().nullish(),
  mm: amount.nullish(),
  /** Where a wind blows from, and onto whom, where it was said. */
  windFrom: z
    .enum(['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west'])
    .nullish(),
  windTo: z.literal('wards').nullish(),
  ...common,
});

export const Removal = z.object({
  kind: z.literal('removal'),
  pile: words.nullish(),
  material: words.default('finished-compost'),
  ...quantity,
  basis: z.enum(['gross', 'net']).nullish(),
  to: words.nullish(),
  source: words.nullish(),
  ...common,
});

const Sieved = z.object({
  kg: amount.nullish(),
  litres: amount.nullish(),
  container: words.nullish(),
  count: amount.nullish(),
});
export const Screening = z.object({
  kind: z.literal('screening'),
  pile: words.nullish(),
  ...quantity,
  overs: Sieved.nullish(),
  ...common,
});

export const Delivery = z.object({ kind: z.literal('delivery'), material: words, ...quantity, ...common });

export const RejectedLoad = z.object({
  kind: z.literal('rejected-load'),
  container: words.nullish(),
  count: amount.nullish(),
  kg: amount.nullish(),
  source: words.nullish(),
  reason: words.nullish(),
  /** What was found in a dirty load, as far as it was named. */
  found: z.array(words).nullish(),
  ...common,
});

export const PILE_EVENTS = [
  'started',
  'full',
  'finished',
  'ready',
  'emptied',
  'joined',
  'split',
  'moved',
] as const;
export const PileEvent = z.object({
  kind: z.literal('pile'),
  pile: words,
  event: z.enum(PILE_EVENTS),
  with: words.nullish(),
  to: words.nullish(),
  ...common,
});

export const Sample = z.object({
  kind: z.literal('sample'),
  pile: words,
  count: amount.nullish(),
  ...common,
});

export const LabResult = z.object({
  kind: z.literal('lab-result'),
  place: words,
  analyte: words,
  value: z.number().nullish(),
  unit: z.string().nullish(),
  qualifier: z.enum(['<', '>', 'not-detected']).nullish(),
  ...common,
});

export const Hours = z.object({
  kind: z.literal('hours'),
  people: amount.nullish(),
  hours: amount,
  ...common,
});

/** The text is empty once its writer was forgotten. */
export const Note = z.object({ kind: z.literal('note'), text: z.string().max(4000), ...common });

/** What a message can put into the log book, told apart by `kind`. */
export const FieldRecord = z.discriminatedUnion('kind', [
  WeighIn,
  Temperature,
  Moisture,
  Turning,
  Cover,
  Discharge,
  Transfer,
  DrumSetting,
  Level,
  Problem,
  Resolved,
  Chore,
  Weather,
  Removal,
  Screening,
  Delivery,
  RejectedLoad,
  PileEvent,
  Sample,
  LabResult,
  Hours,
  Note,
]);
export type FieldRecord = z.infer<typeof FieldRecord>;
export type RecordKind = FieldRecord['kind'];
/** One kind of record. @example RecordOf<'turning'> */
export type RecordOf<K extends RecordKind> = Extract<FieldRecord, { kind: K }>;

/** A figure or choice of the site, with the local day from which it holds. */
export const SettingLine = z.object({
  kind: z.literal('setting'),
  name: z.string().min(1),
  value: z.unknown(),
  from: LocalWhen.nullish(),
  ...common,
});
/** Takes back an older line; the number of the line that replaces it, if any, stands in `by`. */
export const VoidLine = z.object({
  kind: z.literal('void'),
  voids: z.number().int().positive(),
  why: z.enum(['undo', 'amend', 'edit', 'answered', 'dropped', 'forgotten', 'import-undone']),
  ...common,
});
/** A duty of the site's own: `every friday: check extinguishers`. */
export const DutyLine = z.object({
  kind: z.literal('duty'),
  name: words,
  every: z.string().nullish(),
  on: z.string().nullish(),
  removed: z.boolean().nullish(),
  ...common,
});
/** Who took a job of today's list, handed it back or put it off. */
export const DutyNote = z.object({
  kind: z.literal('duty-note'),
  duty: words,
  act: z.enum(['claim', 'release', 'postpone', 'done']),
  until: LocalWhen.nullish(),
  reason: z.string().nullish(),
  ...common,
});

/** Everything a line of the log book can hold. */
export const BookRecord = z.discriminatedUnion('kind', [
  ...FieldRecord.options,
  SettingLine,
  VoidLine,
  DutyLine,
  DutyNote,
]);
export type BookRecord = z.infer<typeof BookRecord>;
export type BookKind = BookRecord['kind'];
export type BookRecordOf<K extends BookKind> = Extract<BookRecord, { kind: K }>;
