import { toCelsius } from '#records';

/** How far a probe may be off against a known temperature. @source ±1 °C (±2 °F), extension practice (from memory) */
export const PROBE_TOLERANCE_C = 10 / 9;

/**
 * Temperature at which water boils at a height above the sea, for the second point of a probe check (the first is
 * ice slush, 0 °C at any height). °C, about 0.3 °C; throws outside −430 to 5000 m.
 * @source ICAO standard atmosphere; Antoine constants of water 8.07131, 1730.63, 233.426 (mmHg, °C)
 * @example boilingCelsius(1500) // 95 (to 0.3)
 */
export function boilingCelsius(altitudeM: number): number {
  if (!(altitudeM >= -430 && altitudeM <= 5000)) {
    throw new RangeError(`altitudeM ${altitudeM} m: expected -430 to 5000`);
  }
  const mmHg = 760 * (1 - 2.25577e-5 * altitudeM) ** 5.25588;
  return 1730.63 / (8.07131 - Math.log10(mmHg)) - 233.426;
}

/**
 * Whether a probe passes: within 2 °F (1.1 °C) of what it was held against.
 * @source ±1 °C (±2 °F), extension practice (from memory)
 * @example probeHolds(1.2, 0) // false
 */
export const probeHolds = (readsC: number, againstC: number): boolean =>
  Math.abs(readsC - againstC) <= PROBE_TOLERANCE_C + 1e-9;

/** How far from a fixed point a reading can be and still have been meant for it. @source common practice, no source */
const NEAR_POINT_C = 10;

export type ProbeCheck = {
  /** Null where nobody can tell. */
  ok: boolean | null;
  readsC: number;
  /** What it was held against; `taken` where that was not said and ice slush (0 °C) was taken. */
  againstC: number | null;
  taken: boolean;
};

/**
 * A check of a probe in °C. With nothing said to hold it against, a reading near 0 °C was one in ice slush, which is
 * 0 °C at any height; one near boiling cannot be judged, since water boils lower the higher the site lies.
 * @source ice and boiling points as two points of a check: extension practice (from memory); see probeHolds
 * @example probeCheck(34.2, 32, 'F').ok // false
 */
export function probeCheck(reads: number, against: number | null, unit: string | null): ProbeCheck {
  const celsius = (value: number) => (unit === 'F' ? toCelsius(value, 'F') : value);
  const readsC = celsius(reads);
  if (against !== null) {
    const againstC = celsius(against);
    return { ok: probeHolds(readsC, againstC), readsC, againstC, taken: false };
  }
  return Math.abs(readsC) <= NEAR_POINT_C
    ? { ok: probeHolds(readsC, 0), readsC, againstC: 0, taken: true }
    : { ok: null, readsC, againstC: null, taken: true };
}
