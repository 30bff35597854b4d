/** A figure or a name that an answer rests on. */
export type WhyArg = string | number | boolean | null;

/** Something taken for granted, as a code with its figures; the wording says it. */
export type HeatAssumption = { code: HeatAssumptionCode; args: Record<string, WhyArg> };

export const HEAT_ASSUMPTIONS = [
  'depth-unknown',
  'approximate-reading',
  'piece-size',
  'held-in-vessel',
  'aeration-forced',
  'roofed',
  'gap-between-readings',
  'days-by-readings',
  'turn-spacing-by-dates',
  'inherited-proof',
  'ambient-mean',
  'ambient-stays',
  'volume-unknown',
  'lab-unit',
  'site-band-limited',
  'regulator-accepts',
] as const;
export type HeatAssumptionCode = (typeof HEAT_ASSUMPTIONS)[number];

/** Why an answer says what it says: the rule or formula by key, its figures, its source, what was assumed. */
export type HeatWhy = {
  key: string;
  args: Record<string, WhyArg>;
  source: string;
  assumed: HeatAssumption[];
};
