/**
 * The sum of masses in kg, worked in whole micrograms so that it does not drift: ten times 0.1 is 1, and
 * typed pounds add up to the last digit shown. Rounded to a microgram; the order does not matter. Throws a
 * RangeError for a value that is no finite number.
 * @source integer sums; 1 lb is 453,592,370 µg exactly (NIST Handbook 44, appendix C).
 * @example sumKg([0.1, 0.2]) // 0.3
 */
export function sumKg(masses: readonly number[]): number {
  let micrograms = 0;
  for (const kg of masses) {
    if (!Number.isFinite(kg)) throw new RangeError(`a mass is ${kg} kg; it must be a finite number`);
    micrograms += Math.round(kg * 1e9);
    // Over nine thousand tonnes a number no longer holds every microgram.
    if (!Number.isSafeInteger(micrograms)) return bigSumKg(masses);
  }
  return micrograms / 1e9;
}

function bigSumKg(masses: readonly number[]): number {
  let micrograms = 0n;
  for (const kg of masses) {
    if (!Number.isFinite(kg)) throw new RangeError(`a mass is ${kg} kg; it must be a finite number`);
    micrograms += BigInt(Math.round(kg * 1e9));
  }
  return Number(micrograms) / 1e9;
}
