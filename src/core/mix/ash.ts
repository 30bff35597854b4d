import { mustLie } from './why.ts';

/**
 * Organic matter and dry mass lost (% of what was there), from the ash (% of dry, above 0 and under 100) at
 * the start and at the end, since ash stays. A final ash below the first gives a negative loss: `suspect`.
 * @source 1 − X1 (100 − X2) ÷ (X2 (100 − X1)), as used by Paredes et al.; Haug 1993; from memory.
 * @example lossByAsh(15, 30) // { organicLossPct: 58.8, dryLossPct: 50, suspect: false } (to 0.05)
 */
export function lossByAsh(
  firstPct: number,
  lastPct: number,
): { organicLossPct: number; dryLossPct: number; suspect: boolean } {
  mustLie('ash at the start', firstPct, '%', Number.MIN_VALUE, 99.9999);
  mustLie('ash at the end', lastPct, '%', Number.MIN_VALUE, 99.9999);
  return {
    organicLossPct: 100 * (1 - (firstPct * (100 - lastPct)) / (lastPct * (100 - firstPct))),
    dryLossPct: 100 * (1 - firstPct / lastPct),
    suspect: lastPct < firstPct,
  };
}

/**
 * Volatile solids lost (%), from the volatile share of the dry mass (0 to 1) before and after.
 * @source Van Kleeck's equation; US EPA, EPA/625/R-92/013, appendix C; from memory.
 * @example volatileReductionPct(0.7463, 0.6383) // 40 (to 0.05)
 */
export function volatileReductionPct(before: number, after: number): number {
  mustLie('volatile share before', before, '', Number.MIN_VALUE, 0.999999);
  mustLie('volatile share after', after, '', 0, 0.999999);
  return (100 * (before - after)) / (before - before * after);
}

/**
 * Carbon (% of dry) estimated from ash (% of dry).
 * @source (100 − ash) ÷ 1.8, a rule of extension services; 1.72 is the soil laboratory's form.
 * @example carbonFromAshPct(10) // 50
 */
export function carbonFromAshPct(ashPct: number, divisor = 1.8): number {
  mustLie('ash', ashPct, '%', 0, 100);
  return (100 - ashPct) / divisor;
}
