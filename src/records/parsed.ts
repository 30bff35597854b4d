import { z } from 'zod';
import { FieldRecord } from './record.ts';

/** What the writer wants back, or wants changed. Fields beside `request` depend on its name. */
export const REQUESTS = [
  'today',
  'week',
  'year',
  'mine',
  'mix',
  'help',
  'status',
  'history',
  'undo',
  'amend',
  'done',
  'claim',
  'release',
  'postpone',
  'answer',
  'setting',
  'duty',
  'closed',
  'why',
  'show',
  'export',
  'report',
  'share',
  'accepts',
  'language',
  'forget-me',
  'role',
  'settings',
  'handover',
  'new-here',
  'room',
  'trace',
  'diagnose',
  'stock',
  'recipe',
  'feedback',
  'balance',
] as const;
export type RequestName = (typeof REQUESTS)[number];

export const Request = z.looseObject({
  request: z.enum(REQUESTS),
  place: z.string().nullish(),
  count: z.number().nullish(),
  from: z.union([z.string(), z.number()]).nullish(),
  to: z.union([z.string(), z.number()]).nullish(),
  items: z.array(z.union([z.string(), z.number()])).nullish(),
  name: z.string().nullish(),
  value: z.unknown().optional(),
  material: z.string().nullish(),
  what: z.string().nullish(),
  entry: z.number().nullish(),
  said: z.string().nullish(),
});
export type Request = z.infer<typeof Request>;

/** Why something is held until somebody answers. Words for each live in `wording`. */
export const DOUBT_CODES = [
  'too-heavy',
  'too-light',
  'negative',
  'each-or-all',
  'count-differs',
  'gross-or-net',
  'tare-unlikely',
  'other-unit',
  'which-unit',
  'impossible-temperature',
  'impossible-value',
  'number-ambiguous',
  'either-or',
  'no-place',
  'no-material',
  'unknown-place',
  'ceased-place',
  'which-places',
  'date-impossible',
  'date-contradicts',
  'date-today-or-last',
  'date-in-future',
  'date-too-old',
  'same-cart',
  'full-or-ready',
  'held-pile',
  'unclear',
] as const;
export type DoubtCode = (typeof DOUBT_CODES)[number];

export const DoubtChoice = z.object({
  /** Short answer as it stands on a button, in the writer's figures: `66.5`, `each`, `pile B`. */
  say: z.string().min(1),
  /** What is stored if this is chosen; null drops the doubt. */
  record: FieldRecord.nullable(),
  records: z.array(FieldRecord).nullish(),
});
export type DoubtChoice = z.infer<typeof DoubtChoice>;

/** A held record is allowed to be incomplete or impossible: that is why it is held. */
export const HeldRecord = z.looseObject({ kind: z.string() });
export type HeldRecord = z.infer<typeof HeldRecord>;

export const Doubt = z.object({
  record: HeldRecord,
  records: z.array(HeldRecord).nullish(),
  why: z.enum(DOUBT_CODES),
  choices: z.array(DoubtChoice),
  /** True where it would be a fire if true: the reply opens with what to do. */
  danger: z.boolean().nullish(),
  said: z.string().nullish(),
});
export type Doubt = z.infer<typeof Doubt>;

/** What the reader assumed and the reply must say. */
export const ASSUMPTIONS = [
  'unit-other',
  'unit-default',
  'material-default',
  'gross-by-container',
  'date-carried',
  'place-carried',
  'spelling',
  'pile-successor',
  'same-again',
] as const;
export type Assumption = (typeof ASSUMPTIONS)[number];

/** One piece of the message that a reader took, and why: shown by `read --explain`. */
export type Taken = {
  start: number;
  end: number;
  rule: string;
  said: string;
  assumed?: readonly string[];
};

/** A message, read. Records stand in the order said. */
export type ParsedMessage = {
  records: FieldRecord[];
  requests: Request[];
  doubts: Doubt[];
  unread: string[];
  /** Beside `records`, index by index: codes of what was assumed for it. */
  assumed: Assumption[][];
  /** Beside `records`: the value and unit as typed, for the book's `typed`. */
  typed: (string | null)[];
  /** Danger found before anything else was read (its `problem` is among the records). */
  danger: { what: string; topic: string }[];
  explain: Taken[];
};
