/**
 * Conversions to and from the units of the log book: kg, °C, L, cm, mm, min.
 * @source BIPM SI Brochure, 9th ed.; NIST Handbook 44 appendix C, 2024 (1 lb = 0.45359237 kg and
 * 1 in = 2.54 cm exactly, 1 US gal = 231 in³, 1 yd = 36 in).
 */
export const MASS_UNITS = { kg: 1, g: 0.001, t: 1000, lb: 0.45359237, oz: 0.028349523125 } as const;
export const VOLUME_UNITS = {
  L: 1,
  mL: 0.001,
  m3: 1000,
  gal: 3.785411784,
  ft3: 28.316846592,
  yd3: 764.554857984,
} as const;
export const LENGTH_UNITS = { cm: 1, mm: 0.1, m: 100, in: 2.54, ft: 30.48 } as const;
export const TIME_UNITS = { min: 1, h: 60, d: 1440 } as const;

export type MassUnit = keyof typeof MASS_UNITS;
export type VolumeUnit = keyof typeof VOLUME_UNITS;
export type LengthUnit = keyof typeof LENGTH_UNITS;
export type TimeUnit = keyof typeof TIME_UNITS;
export type TemperatureUnit = 'C' | 'F';
/** Every unit a quantity can be said in. */
export type Unit = MassUnit | VolumeUnit | LengthUnit | TimeUnit | TemperatureUnit | '%';

/** Kilograms in `value` of `unit`. @example toKg(22, 'lb') // 9.97903214 */
export const toKg = (value: number, unit: MassUnit): number => value * MASS_UNITS[unit];
/** `kg` said in `unit`. @example fromKg(10, 'lb') // 22.046226218487757 */
export const fromKg = (kg: number, unit: MassUnit): number => kg / MASS_UNITS[unit];
/** Litres in `value` of `unit` (US gallon). @example toLitres(5, 'gal') // 18.92705892 */
export const toLitres = (value: number, unit: VolumeUnit): number => value * VOLUME_UNITS[unit];
/** `litres` said in `unit`. @example fromLitres(764.554857984, 'yd3') // 1 */
export const fromLitres = (litres: number, unit: VolumeUnit): number => litres / VOLUME_UNITS[unit];
/** Centimetres in `value` of `unit`. @example toCm(2, 'ft') // 60.96 */
export const toCm = (value: number, unit: LengthUnit): number => value * LENGTH_UNITS[unit];
/** `cm` said in `unit`. @example fromCm(60.96, 'in') // 24 */
export const fromCm = (cm: number, unit: LengthUnit): number => cm / LENGTH_UNITS[unit];
/** Degrees Celsius of `value` °C or °F. @example toCelsius(131, 'F') // 55 */
export const toCelsius = (value: number, unit: TemperatureUnit): number =>
  unit === 'C' ? value : ((value - 32) * 5) / 9;
/** `celsius` said in °C or °F. @example fromCelsius(55, 'F') // 131 */
export const fromCelsius = (celsius: number, unit: TemperatureUnit): number =>
  unit === 'C' ? celsius : (celsius * 9) / 5 + 32;
/** A difference of temperature (no offset) said in °C or °F. @example fromCelsiusRise(8, 'F') // 14.4 */
export const fromCelsiusRise = (rise: number, unit: TemperatureUnit): number =>
  unit === 'C' ? rise : (rise * 9) / 5;
/** Minutes in `value` of `unit`. @example toMin(1.5, 'h') // 90 */
export const toMin = (value: number, unit: TimeUnit): number => value * TIME_UNITS[unit];

export const isMassUnit = (unit: string | null | undefined): unit is MassUnit =>
  unit != null && unit in MASS_UNITS;
export const isVolumeUnit = (unit: string | null | undefined): unit is VolumeUnit =>
  unit != null && unit in VOLUME_UNITS;
export const isLengthUnit = (unit: string | null | undefined): unit is LengthUnit =>
  unit != null && unit in LENGTH_UNITS;
export const isTimeUnit = (unit: string | null | undefined): unit is TimeUnit =>
  unit != null && unit in TIME_UNITS;
export const isTemperatureUnit = (unit: string | null | undefined): unit is TemperatureUnit =>
  unit === 'C' || unit === 'F';
