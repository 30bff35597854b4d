import { isMassUnit, isVolumeUnit, type MassUnit, toKg, toLitres } from '#records';
import { looseBehindComma, type Scope, type Slots, tidy } from '../reading.ts';
import { sense } from '../tokens.ts';

/** How much was said, in one of three ways. */
export type Amount = {
  kg?: number;
  litres?: number;
  container?: string;
  count?: number;
  approximate?: boolean;
  typed: string;
  value: number;
};

/**
 * The one amount among a run's slots: a weight, a volume, or counted containers; undefined where there is none,
 * null where there are several or one that cannot be told.
 */
export function amountOf(slots: Slots, scope: Scope, bareIsMass = false): Amount | undefined | null {
  if (bareIsMass && slots.get('container').length === 0 && looseBehindComma(slots)) return null;
  const containers = slots.get('container');
  const nums = slots.nums.map((tok) => tok.n!);
  if (containers.length > 1) return null;
  const sized = nums.filter((n) => !(containers.length === 1 && isVolumeUnit(n.unit) && nums.length > 1));
  if (sized.length === 0) {
    if (containers.length === 0) return undefined;
    const tok = containers[0]!;
    if (sense(tok, 'plural') !== undefined) return null;
    return { container: sense(tok, 'container')!, count: 1, typed: tok.s, value: 1 };
  }
  const approximate = nums.some((n) => n.approximate);
  const more = approximate ? { approximate: true } : {};
  if (containers.length === 1) {
    const container = sense(containers[0]!, 'container')!;
    const counts = sized.filter((n) => n.unit === null);
    const masses = sized.filter((n) => isMassUnit(n.unit));
    if (counts.length > 1 || masses.length > 1 || counts.length + masses.length !== sized.length) return null;
    const count = counts[0] ? counts[0].value : 1;
    if (counts[0]?.to !== undefined) return null;
    if (masses[0])
      return {
        kg: tidy(toKg(masses[0].value, masses[0].unit as MassUnit)),
        container,
        count,
        ...more,
        typed: `${masses[0].value} ${masses[0].unit}`,
        value: masses[0].value,
      };
    return { container, count, ...more, typed: String(count), value: count };
  }
  if (sized.length > 1) return null;
  const n = sized[0]!;
  if (n.to !== undefined) return null;
  if (isVolumeUnit(n.unit))
    return {
      litres: tidy(toLitres(n.value, n.unit)),
      ...more,
      typed: `${n.value} ${n.unit}`,
      value: n.value,
    };
  if (isMassUnit(n.unit))
    return { kg: tidy(toKg(n.value, n.unit)), ...more, typed: `${n.value} ${n.unit}`, value: n.value };
  if (n.unit === null && bareIsMass && !n.fraction) {
    const unit = scope.context.units.mass;
    return { kg: tidy(toKg(n.value, unit)), ...more, typed: `${n.value} ${unit}`, value: n.value };
  }
  return null;
}

/** The amount without what only the reader needs. */
export const plainAmount = (
  amount: Amount | undefined,
): { kg?: number; litres?: number; container?: string; count?: number } => {
  if (!amount) return {};
  const { typed: _typed, value: _value, approximate: _approximate, ...rest } = amount;
  return rest;
};
