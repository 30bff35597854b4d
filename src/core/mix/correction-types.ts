import type { OwnFigures } from './ingredients.ts';
import type { Mix, MixPart, MixTest } from './mix.ts';
import type { MixWhy } from './why.ts';

/** A container that can be added: what is in it and how many there are. `kg` and `litres` are of one full one. */
export type Addition = {
  material: string;
  container: string;
  kg: number;
  litres: number;
  /** Whole containers in stock; null where nobody counts them. */
  stock: number | null;
  own?: OwnFigures | null;
};

/** Where the mix is going: how much coarse material it needs by volume depends on it. */
export type MixPlace = 'drum' | 'turned-pile' | 'static-pile';

/** The site's own tested recipe: parts of chips to parts of food, by volume or by mass. */
export type MixRecipe = { chips: number; food: number; by: 'volume' | 'mass' };

/** The limits that a correction keeps. Everything has a default in `mixLimits`. */
export type MixLimits = {
  recipe: MixRecipe | null;
  /** Litres of coarse material to a litre of feed, at least. */
  structurePerFeed: number;
  moisturePct: { low: number; high: number; never: number; wideLow: number };
  cnLow: number;
  /** Only where the rule set demands a band. */
  cnHigh: number | null;
  /** Share of the volume of everything that may be this material, at most. */
  caps: Readonly<Record<string, number>>;
  /** Litres that still go in; null where nobody knows. */
  roomLitres: number | null;
};

export const LIMIT_CODES = [
  'recipe',
  'structure',
  'moisture-high',
  'moisture-low',
  'cn-low',
  'cn-high',
  'cap',
  'stock',
  'room',
] as const;
export type LimitCode = (typeof LIMIT_CODES)[number];

export type Added = { material: string; container: string; count: number; kg: number; litres: number };

/**
 * What to add. `squeeze-first`: the likely range of the mix touches the window, so nothing is advised on
 * typical values alone; `ifWet` then holds what they would call for. `add` may come with `squeeze: true`:
 * add that, then squeeze. `too-wet-for-recipe` is never silent: the recipe is met and the mix is over the
 * highest moisture all the same.
 */
export type Correction = {
  code: 'enough' | 'add' | 'squeeze-first' | 'infeasible' | 'nothing-known';
  add: Added[];
  ifWet: Added[] | null;
  squeeze: boolean;
  /** The limit that asked for the most. */
  limiting: LimitCode | null;
  /** `wide`: no whole number of containers meets the target window, one meets the outer limits. */
  window: 'target' | 'wide' | 'recipe' | null;
  before: Mix;
  after: Mix;
  /** Over the highest moisture though the recipe is met, by typical values. */
  overNever: boolean;
  blocked: {
    limits: LimitCode[];
    /** No limit alone explains it: the first two named are both too small, or ask for opposite things. */
    together: boolean;
    best: Added[];
    bestMoisturePct: number | null;
    wouldSolve: string | null;
  } | null;
  why: MixWhy;
};

export type CorrectionInput = {
  parts: MixPart[];
  additions: Addition[];
  limits: MixLimits;
  test?: MixTest | null;
};
