/** A point of a falling rise: `t` in days, `rise` in °C over ambient, `weight` 1 for a plain reading. */
export type FitPoint = { t: number; rise: number; weight: number };

/** `rise = amplitude × exp(−perDay × t)`, with the weighted sum of squares it leaves. */
export type DecayFit = { amplitude: number; perDay: number; sumOfSquares: number };

/** Student t, 0.90 one-sided (an 80 % interval), for 1 to 30 degrees of freedom. */
const T_90 = [
  3.078, 1.886, 1.638, 1.533, 1.476, 1.44, 1.415, 1.397, 1.383, 1.372, 1.363, 1.356, 1.35, 1.345, 1.341,
  1.337, 1.333, 1.33, 1.328, 1.325, 1.323, 1.321, 1.319, 1.318, 1.316, 1.315, 1.314, 1.313, 1.311, 1.31,
];

/**
 * Student's t that leaves 10 % on either side, for whole degrees of freedom; 1.282 above 30.
 * @source NIST/SEMATECH e-Handbook of Statistical Methods, table 1.3.6.7.2 (from memory)
 * @example tNinety(1) // 3.078
 */
export function tNinety(degrees: number): number {
  if (!(Number.isInteger(degrees) && degrees >= 1))
    throw new RangeError(`degrees ${degrees}: expected 1 or more`);
  return T_90[degrees - 1] ?? 1.282;
}

/** Faster than any pile cools: its rise down to a twentieth in a day. */
const FASTEST_PER_DAY = 3;

/** Least sum of squares over `perDay` from 0 to FASTEST_PER_DAY: a coarse sweep, then a golden section. */
function overRates(sumAt: (perDay: number) => number): { perDay: number; sumOfSquares: number } {
  const steps = 48;
  const rate = (i: number) => (i === 0 ? 0 : 1e-4 * (FASTEST_PER_DAY / 1e-4) ** ((i - 1) / (steps - 1)));
  let best = 0;
  for (let i = 1; i <= steps; i++) if (sumAt(rate(i)) < sumAt(rate(best))) best = i;
  let low = rate(Math.max(0, best - 1));
  let high = rate(Math.min(steps, best + 1));
  const golden = (Math.sqrt(5) - 1) / 2;
  for (let i = 0; i < 40; i++) {
    const left = high - golden * (high - low);
    const right = low + golden * (high - low);
    if (sumAt(left) <= sumAt(right)) high = right;
    else low = left;
  }
  const perDay = (low + high) / 2;
  return { perDay, sumOfSquares: sumAt(perDay) };
}

/** The best amplitude for one rate is linear, and the sum of squares that it leaves. */
function bestAmplitude(points: readonly FitPoint[], perDay: number) {
  let top = 0;
  let bottom = 0;
  for (const { t, rise, weight } of points) {
    const shape = Math.exp(-perDay * t);
    top += weight * rise * shape;
    bottom += weight * shape * shape;
  }
  const amplitude = top / bottom;
  return { amplitude, sumOfSquares: leftOver(points, (t) => amplitude * Math.exp(-perDay * t)) };
}

const leftOver = (points: readonly FitPoint[], model: (t: number) => number): number =>
  points.reduce((sum, { t, rise, weight }) => sum + weight * (rise - model(t)) ** 2, 0);

/**
 * Weighted least squares of an exponential decay in °C (not in logarithms, where the small late rises would weigh
 * too much). `perDay` is 0 where the rise does not fall. Throws on fewer than two points.
 * @source Seber & Wild, Nonlinear Regression, 1989, separable least squares (from memory); on points without
 * noise it agrees with ml-regression's ExponentialRegression
 * @example decayFit([{ t: 0, rise: 20, weight: 1 }, { t: 10, rise: 10, weight: 1 }]).perDay // 0.0693 (to 0.0001)
 */
export function decayFit(points: readonly FitPoint[]): DecayFit {
  if (points.length < 2) throw new RangeError(`points ${points.length}: expected 2 or more`);
  const { perDay, sumOfSquares } = overRates((rate) => bestAmplitude(points, rate).sumOfSquares);
  return { amplitude: bestAmplitude(points, perDay).amplitude, perDay, sumOfSquares };
}

/**
 * Least sum of squares of all decays that pass through `level` at time `t`: how well the readings bear that the
 * rise is down to `level` then.
 * @source Seber & Wild, Nonlinear Regression, 1989, profile of the sum of squares (from memory)
 */
function sumThrough(points: readonly FitPoint[], level: number, t: number): number {
  return overRates((rate) => leftOver(points, (at) => level * Math.exp(rate * (t - at)))).sumOfSquares;
}

export type Crossing = { at: number; from: number; to: number | null };

/**
 * When a decay is down to `level`, with an 80 % interval in days: every time that the readings bear about as well
 * as the best one (profile of the sum of squares, Student's t for n − 2). `to` is null where no end can be given
 * before `horizon`. The variance is never taken below `noiseFloorC`², and is multiplied by `inflation`. Null where it does not fall. Throws on fewer than three points.
 * @source Seber & Wild, Nonlinear Regression, 1989, profile intervals (from memory)
 * @example crossing([30, 15, 7.5].map((rise, i) => ({ t: i * 10, rise, weight: 1 })), 5, 365).at // 25.85 (to 0.01)
 */
export function crossing(
  points: readonly FitPoint[],
  level: number,
  horizon: number,
  { noiseFloorC = 0, inflation = 1 }: { noiseFloorC?: number; inflation?: number } = {},
): Crossing | null {
  if (points.length < 3) throw new RangeError(`points ${points.length}: expected 3 or more`);
  const fit = decayFit(points);
  if (fit.perDay <= 1e-6 || fit.amplitude <= level) return null;
  const at = Math.log(fit.amplitude / level) / fit.perDay;
  const degrees = points.length - 2;
  const variance = Math.max(fit.sumOfSquares / degrees, noiseFloorC ** 2);
  const limit = fit.sumOfSquares + tNinety(degrees) ** 2 * variance * inflation;
  const bears = (t: number) => sumThrough(points, level, t) <= limit;
  const start = points[0]!.t;
  const edge = (inside: number, outside: number) => {
    let [good, bad] = [inside, outside];
    for (let i = 0; i < 40; i++) {
      const middle = (good + bad) / 2;
      if (bears(middle)) good = middle;
      else bad = middle;
    }
    return good;
  };
  const from = bears(start) ? start : edge(at, start);
  let far = Math.max(at, start) + 1;
  while (far < horizon && bears(far)) far = at + (far - at) * 1.6;
  return {
    at,
    from: Math.min(from, at),
    to: far >= horizon && bears(horizon) ? null : edge(at, Math.min(far, horizon)),
  };
}
