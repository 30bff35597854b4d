import type { DoubtCode } from '#records';
import type { Picture } from '../picture/types.ts';

/** A figure or a name with what it is, so that it can be written in the site's units and the reader's language. */
export type Fact =
  | { celsius: number }
  | { kg: number }
  | { litres: number }
  | { mm: number }
  | { pct: number }
  | { number: number }
  | { count: number }
  | { date: string }
  | { place: string }
  | { material: string }
  | { container: string; count: number; label?: string | null }
  | { source: string }
  | { entry: number }
  | { term: string; of: string }
  | { text: string };
export type Facts = Record<string, Fact>;

/** A code with its facts; the words live elsewhere. */
export type Coded<Code extends string = string> = { code: Code; args: Facts };

/** A code with its facts, typed alike whichever facts it has. */
export const coded = <Code extends string>(code: Code, args: Facts): Coded<Code> => ({ code, args });

export const DUTY_KINDS = [
  'keep-away',
  'read-pile',
  'read-drum',
  'read-ambient',
  'turn-pile',
  'cover-pile',
  'discharge-drum',
  'count-stock',
  'order-stock',
  'make-room',
  'mind-cap',
  'ask-source',
  'answer-doubt',
  'weigh-empty',
  'look-again',
  'sweep',
  'wash-lift',
  'wash-containers',
  'clean-tools',
  'check-scale',
  'check-thermometer',
  'check-fan',
  'check-stop-button',
  'release-pile',
  'take-sample',
  'chase-results',
  'season-chips',
  'season-exit',
  'reweigh-empty',
  'renew-permit',
  'own-duty',
] as const;
export type DutyKind = (typeof DUTY_KINDS)[number];

/** Why something is due; a held line has the code of its doubt instead. */
export const DUTY_WHYS = [
  'smoke',
  'too-hot',
  'proving',
  'closed-unproven',
  'weekly',
  'never-read',
  'last-read',
  'rise-unknown',
  'turns-for-proof',
  'smells',
  'rise-stalled',
  'turns-in-curing',
  'rain-expected',
  'snow-expected',
  'turned-open',
  'filling',
  'stayed',
  'used-more-than-known',
  'days-left',
  'none-open',
  'nearly-full',
  'near-cap',
  'over-cap',
  'not-come',
  'nets-wait',
  'still-open',
  'floor-used',
  'lift-used',
  'containers-used',
  'tools-used',
  'check-failed',
  'last-checked',
  'never-checked',
  'nothing-missing',
  'results-missing',
  'sampled',
  'frost-expected',
  'cold-air',
  'weighed-empty',
  'from-site-file',
  'runs-out',
  'ran-out',
  'own-last-done',
  'own-never-done',
] as const;
export type DutyWhy = (typeof DUTY_WHYS)[number];

/** The messages that log a job, as patterns to be worded. */
export const DUTY_LOGS = [
  'reading',
  'turned',
  'covered',
  'discharged',
  'level',
  'delivery',
  'load-from',
  'answer',
  'empty',
  'resolved',
  'check',
  'chore',
  'done-item',
  'emptied',
  'started',
  'set-date',
  'own-done',
  'sample',
  'release',
  'lab-result',
] as const;
export type DutyLog = (typeof DUTY_LOGS)[number];

export const HOLD_BACKS = ['frozen', 'windy', 'closed', 'postponed'] as const;
export type HoldBack = (typeof HOLD_BACKS)[number];

/** One thing that needs doing. `risk` runs from 1 (tidy) to 5 (somebody could be hurt). */
export type Duty = {
  /** Stays the same from day to day as long as it is the same thing: `read:pile B`. */
  key: string;
  kind: DutyKind;
  place: string | null;
  /** What else names it: a material, a container, a source, the site's own name for it. */
  args: Facts;
  /** The evidence. */
  why: Coded<DutyWhy | DoubtCode>;
  by: string;
  risk: 1 | 2 | 3 | 4 | 5;
  /** A message that would log it; null where nothing is to be logged. */
  log: Coded<DutyLog> | null;
  /** What a closed site can leave for later. */
  canWait: boolean;
  /** Nobody can do it now, or it was put off: with the reason. */
  heldBack: Coded<HoldBack> | null;
  /** Who took it, by number. */
  claimedBy: number | null;
};

/** What a rule finds, before closures and what people said of it are laid over. */
export type Found = Omit<Duty, 'heldBack' | 'claimedBy' | 'canWait'> & {
  heldBack?: Coded<HoldBack> | null;
  canWait?: boolean;
  /** For how many days a `done` without anything logged is believed; 0 is the same day. */
  doneHoldsDays?: number;
};

/** When and of what a rule is asked: nothing here reads a clock. */
export type DutyContext = { picture: Picture; at: string; localDate: string };

/** A rule over the picture: gives what is due by it, none twice. */
export type DutyRule = { name: string; find: (context: DutyContext) => Found[] };
