import { publishedKgPerLitre } from '../weights/estimate.ts';
import type { SettingTimeline } from '../weights/net.ts';
import { INGREDIENTS, type OwnFigures } from './ingredients.ts';
import type { MixPart } from './mix.ts';
import { exactly, propagate, type Spread } from './spread.ts';

/** Settings that carry a figure of a material, by the first part of their name, with the range they may lie in. */
const FIGURES = {
  moisture: { key: 'moisturePct', low: 0, high: 100 },
  carbon: { key: 'carbonPct', low: 0, high: 100 },
  nitrogen: { key: 'nitrogenPct', low: 0, high: 100 },
  ash: { key: 'ashPct', low: 0, high: 100 },
  density: { key: 'bulkKgPerM3', low: 1, high: 2000 },
} as const;

/**
 * The site's own figures of a material in force on a local day (`moisture:wood-chips` and its like: percent
 * of the wet mass for moisture, of the dry mass for carbon, nitrogen and ash, kg/m³ for density): the latest
 * set on or before that day. A share given of the fresh mass (`{ fresh: 0.8 }`) is turned into one of the dry mass by
 * the moisture known; a C:N (`cn:wood-chips`) gives the nitrogen to the carbon. Null where it has none. A figure outside its range is passed over.
 * @source the site's settings and laboratory results.
 * @example ownFiguresAt({ 'moisture:wood-chips': [{ from: '2026-05-01', value: 25, entry: 3 }] }, 'wood-chips', '2026-05-12') // { moisturePct: { typical: 25, low: 25, high: 25 } }
 */
export function ownFiguresAt(
  timeline: SettingTimeline,
  material: string,
  localDate: string,
): OwnFigures | null {
  const own: OwnFigures = {};
  const day = localDate.slice(0, 10);
  for (const [name, { key, low, high }] of Object.entries(FIGURES)) {
    const setting = `${name}:${material}`;
    if (!Object.hasOwn(timeline, setting)) continue;
    const latest = lastAt(timeline, setting, day);
    const value = latest?.value;
    if (typeof value === 'number' && value >= low && value <= high) own[key] = exactly(value);
    else if (isFresh(value) && key !== 'moisturePct' && key !== 'bulkKgPerM3') {
      const dry = dryOf(value.fresh, own.moisturePct ?? INGREDIENTS[material]?.moisturePct ?? null);
      if (dry !== null && dry.typical <= high) own[key] = dry;
    }
  }
  const ratio = lastAt(timeline, `cn:${material}`, day)?.value;
  const carbon = own.carbonPct ?? INGREDIENTS[material]?.carbonPct;
  if (typeof ratio === 'number' && ratio > 0 && carbon && !own.nitrogenPct)
    own.nitrogenPct = exactly(carbon.typical / ratio);
  return Object.keys(own).length > 0 ? own : null;
}

const lastAt = (timeline: SettingTimeline, name: string, day: string) =>
  Object.hasOwn(timeline, name)
    ? timeline[name]!.filter((line) => line.from.slice(0, 10) <= day)
        .sort((a, b) => (a.from === b.from ? a.entry - b.entry : a.from < b.from ? -1 : 1))
        .at(-1)
    : undefined;

/** A share of the fresh mass is never taken as one of the dry mass: it is turned into it by the moisture known. */
const isFresh = (value: unknown): value is { fresh: number } =>
  typeof (value as { fresh?: unknown } | null)?.fresh === 'number';

/** Where the moisture is known as a range only, so is the share of the dry mass. */
function dryOf(freshPct: number, moisturePct: Spread | null): Spread | null {
  if (moisturePct === null || moisturePct.high >= 100) return null;
  const dry = propagate([moisturePct], ([water]) => (freshPct * 100) / (100 - water!));
  return dry.low >= 0 ? dry : null;
}

/**
 * Loads of the book as parts of a mix, with the site's own figures of each material. An estimated mass
 * carries the range of the published factors of its material.
 * @source see `publishedKgPerLitre`.
 * @example mixPartsOf([{ material: 'wood-chips', kg: 24, litres: null, estimated: false, at: '2026-05-12T13:00:00.000Z' }])[0]!.kg // 24
 */
export function mixPartsOf(
  loads: readonly { material: string; kg: number; litres: number | null; estimated: boolean; at: string }[],
  ownOf: (material: string) => OwnFigures | null = () => null,
): MixPart[] {
  return loads.map(({ material, kg, litres, estimated, at }) => {
    const part: MixPart = { material, kg, litres, own: ownOf(material), at };
    const factor = estimated ? publishedKgPerLitre(material) : null;
    if (!factor) return part;
    // Its volume was turned into its mass by a factor, so the two say nothing about its density.
    return {
      ...part,
      litres: null,
      kgLow: (kg * factor.low) / factor.typical,
      kgHigh: (kg * factor.high) / factor.typical,
    };
  });
}
