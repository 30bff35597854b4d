/** Where a figure comes from, from the firmest to the loosest. */
export type MixFigureFrom = 'said' | 'measured' | 'site' | 'learned' | 'published' | 'memory' | 'derived';

/** One figure that went into a sum; `low` and `high` where it is known only as a range. */
export type MixFigure = {
  name: string;
  value: number | string | null;
  unit: string | null;
  low?: number;
  high?: number;
  from: MixFigureFrom;
};

/** Formulas by key; the wording says each in words. */
export const MIX_FORMULAS = [
  'mix',
  'correction-by-recipe',
  'correction-fewest-containers',
  'drum-fill-by-level',
  'drum-fill-by-loads',
] as const;
export type MixFormula = (typeof MIX_FORMULAS)[number];

/** What stands behind an answer, as data: a key for the formula, the figures, the sources, what was assumed. */
export type MixWhy = { formula: MixFormula; figures: MixFigure[]; sources: string[]; assumed: string[] };

/**
 * Throws a RangeError that names the value, its unit and the range it must lie in.
 * @example mustLie('moisture', 40, '%', 0, 100) // undefined
 */
export function mustLie(name: string, value: number, unit: string, low: number, high: number): void {
  if (!(value >= low && value <= high))
    throw new RangeError(`${name} is ${value} ${unit}; it must lie from ${low} to ${high} ${unit}`);
}
