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
