// Sums only: weights, mix, heat, curing, drum, duties, week, year, and the picture of a site.
// Pure: no clock, no randomness, no files; every number has its source beside it.
export type * from './picture/types.ts';
