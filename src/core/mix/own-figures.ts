import { publishedKgPerLitre } from '../weights/estimate.ts';
import type { SettingTimeline } from '../weights/net.ts';
import type { OwnFigures } from './ingredients.ts';
import type { MixPart } from './mix.ts';
import { exactly } from './spread.ts';

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
 * set on or before that day. Null where it has none. A figure outside its range is passed over.
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
    const latest = timeline[setting]!.filter((line) => line.from.slice(0, 10) <= day)
      .sort((a, b) => (a.from === b.from ? a.entry - b.entry : a.from < b.from ? -1 : 1))
      .at(-1);
    const value = latest?.value;
    if (typeof value === 'number' && value >= low && value <= high) own[key] = exactly(value);
  }
  return Object.keys(own).length > 0 ? own : null;
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
