import { freeAirHaugPct, freeAirLinearPct, type Packed } from './air.ts';
import { type Ingredient, ingredientFor, type OwnFigures } from './ingredients.ts';
import { clampSpread, propagate, type Spread } from './spread.ts';
import { type MixFigure, type MixWhy, mustLie } from './why.ts';

/** One load or addition. `kg` is net; an estimate brings its own range. `litres` only where a volume was measured. */
export type MixPart = {
  material: string;
  kg: number;
  kgLow?: number;
  kgHigh?: number;
  litres?: number | null;
  own?: OwnFigures | null;
  /** UTC instant; with it a test that is older than the load no longer speaks for the mix. */
  at?: string;
};

/** What the crew found by hand in the mix itself. It stands until the next load. */
export type MixTest = {
  at: string | null;
  how: 'squeeze' | 'moisture-test' | 'bucket-density';
  moisturePct?: Spread;
  bulkKgPerM3?: Spread;
};

/**
 * A mix of several loads. Null where it cannot be known: no mass, or no nitrogen. `freeAirPct` is the range
 * between two published forms at the typical density and moisture; `freeAirLikelyPct` takes in the spread of
 * both as well. `unknown` lists materials that no table knows; they are left out of every figure.
 */
export type Mix = {
  moisturePct: Spread | null;
  cn: Spread | null;
  bulkKgPerM3: Spread | null;
  freeAirPct: { low: number; high: number } | null;
  freeAirLikelyPct: { low: number; high: number } | null;
  kg: number;
  litres: number;
  materials: { material: string; kg: number }[];
  unknown: { material: string; kg: number }[];
  test: MixTest | null;
  why: MixWhy;
};

/**
 * Share of the volume of coarse material that finer stuff can fill.
 * @source from memory: coarse chips are some 40 to 50 % air, of which scraps fill a part; a blend takes up
 * less room than its parts (published-type check: a 1 : 2 blend is under 3 volumes).
 */
const NESTING: Spread = { typical: 0.3, low: 0, high: 0.5 };

type Group = { ingredient: Ingredient; kg: Spread; knownKg: number; knownLitres: number };

/** What a squeeze in the hand says, as moisture. @source classes are rough only (published trouble-shooting tables); from memory. */
export const SQUEEZE: Readonly<Record<'dry' | 'right' | 'wet' | 'dripping', Spread>> = {
  dry: { typical: 40, low: 30, high: 47 },
  right: { typical: 57, low: 52, high: 60 },
  wet: { typical: 65, low: 62, high: 69 },
  dripping: { typical: 70, low: 66, high: 78 },
};

/**
 * Moisture, C:N, bulk density and free air space of what was put together, each with the range it likely
 * lies in. Moisture is weighted by mass, C:N is all carbon over all nitrogen. Loads of one material are
 * taken together first, because a default that is wrong is wrong for all of them alike; different materials
 * are independent (see `propagate`). A test of the mix itself overrides, until the next load. The order of
 * the parts does not matter. Throws a RangeError for a mass below zero.
 * @source Richard & Trautmann, Getting the Right Mix, Cornell, 1996; air space: Haug 1993 and Alburquerque
 * et al. 2008, from memory; defaults: see INGREDIENTS.
 * @example mixOf([{ material: 'food-scraps', kg: 48.5 }, { material: 'wood-chips', kg: 12 }]).moisturePct // { typical: 66.3, low: 58.5, high: 73.3 } (to 0.05)
 */
export function mixOf(parts: MixPart[], test: MixTest | null = null): Mix {
  const { groups, unknown } = grouped(parts);
  const kg = groups.reduce((sum, group) => sum + group.kg.typical, 0);
  const holds = test !== null && testHolds(test, parts) ? test : null;
  const why = whyOf(groups, unknown, holds);
  const materials = groups.map((group) => ({ material: group.ingredient.material, kg: group.kg.typical }));
  if (kg <= 0)
    return {
      moisturePct: null,
      cn: null,
      bulkKgPerM3: null,
      freeAirPct: null,
      freeAirLikelyPct: null,
      kg,
      litres: 0,
      materials,
      unknown,
      test: holds,
      why,
    };
  const inputs = groups.flatMap((group) => [
    group.kg,
    group.ingredient.moisturePct,
    group.ingredient.carbonPct,
    group.ingredient.nitrogenPct,
    group.ingredient.ashPct,
    group.ingredient.bulkKgPerM3,
  ]);
  const within = (pick: (ingredient: Ingredient) => Spread | null) =>
    hull(groups.map((g) => pick(g.ingredient)));
  const moistureHull = within((ingredient) => ingredient.moisturePct);
  const moisturePct =
    holds?.moisturePct ?? clampSpread(propagate(inputs, moistureOf), moistureHull.low, moistureHull.high);
  const cnHull = within(ratioOf);
  const hasNitrogen = groups.some((group) => group.ingredient.nitrogenPct.low > 0);
  const cn = hasNitrogen ? clampSpread(propagate(inputs, cnOf), cnHull.low, cnHull.high) : null;
  const bulkHull = hull(groups.map(bulkOf));
  const litresWith = (values: number[]) => volumeOf(groups, values.slice(0, -1), values.at(-1)!);
  const bulkKgPerM3 =
    holds?.bulkKgPerM3 ??
    clampSpread(
      propagate([...inputs, NESTING], (values) => (massOf(values) / litresWith(values)) * 1000),
      bulkHull.low,
      bulkHull.high,
    );
  const volatilePct = 100 - ashOf(inputs.map((input) => input.typical));
  const packed: Packed = {
    bulkKgPerM3: bulkKgPerM3.typical,
    moisturePct: moisturePct.typical,
    volatilePct,
  };
  return {
    moisturePct,
    cn,
    bulkKgPerM3,
    freeAirPct: freeAir(packed, packed),
    freeAirLikelyPct: freeAir(
      { bulkKgPerM3: bulkKgPerM3.high, moisturePct: moisturePct.high, volatilePct },
      { bulkKgPerM3: bulkKgPerM3.low, moisturePct: moisturePct.low, volatilePct },
    ),
    kg,
    litres: (kg / bulkKgPerM3.typical) * 1000,
    materials,
    unknown,
    test: holds,
    why,
  };
}

/**
 * Whether a test still speaks for the mix: no load came after it. A test without an instant always does.
 * @example testHolds({ at: '2026-05-12T13:00:00.000Z', how: 'squeeze' }, [{ material: 'food-scraps', kg: 40, at: '2026-05-12T14:00:00.000Z' }]) // false
 */
export function testHolds(test: MixTest, parts: MixPart[]): boolean {
  const at = test.at;
  return at === null || parts.every((part) => part.at === undefined || part.at <= at);
}

/**
 * Dry, right, wet or dripping in the hand, as a test of the mix.
 * @source see SQUEEZE.
 * @example squeezeTest('right', null).moisturePct!.typical // 57
 */
export function squeezeTest(feel: keyof typeof SQUEEZE, at: string | null): MixTest {
  return { at, how: 'squeeze', moisturePct: SQUEEZE[feel] };
}

const STRIDE = 6;
const each = (values: number[], sum: (at: number) => number): number => {
  let total = 0;
  for (let at = 0; at + STRIDE <= values.length; at += STRIDE) total += sum(at);
  return total;
};
const massOf = (values: number[]) => each(values, (at) => values[at]!);
const dryAt = (values: number[], at: number) => values[at]! * (1 - values[at + 1]! / 100);
const moistureOf = (values: number[]) => each(values, (at) => values[at]! * values[at + 1]!) / massOf(values);
const cnOf = (values: number[]) =>
  each(values, (at) => dryAt(values, at) * values[at + 2]!) /
  each(values, (at) => dryAt(values, at) * values[at + 3]!);
const ashOf = (values: number[]) => {
  const dry = each(values, (at) => dryAt(values, at));
  return dry > 0 ? each(values, (at) => dryAt(values, at) * values[at + 4]!) / dry : 0;
};

function volumeOf(groups: Group[], values: number[], nesting: number): number {
  let coarse = 0;
  let filling = 0;
  let water = 0;
  groups.forEach((group, index) => {
    const kg = values[index * STRIDE]!;
    const bulk = values[index * STRIDE + 5]!;
    const litres = group.knownLitres + (Math.max(0, kg - group.knownKg) / bulk) * 1000;
    if (group.ingredient.role === 'water') water += litres;
    else if (group.ingredient.role === 'structure') coarse += litres;
    else filling += litres;
  });
  // Water soaks in: it adds weight and no room, unless there is nothing to soak into.
  if (coarse + filling === 0) return water;
  return coarse + filling - Math.min(nesting * coarse, filling);
}

function freeAir(tight: Packed, loose: Packed): { low: number; high: number } {
  const inside = (pct: number) => Math.min(100, Math.max(0, pct));
  const both = (packed: Packed) => [freeAirHaugPct(packed), freeAirLinearPct(packed.bulkKgPerM3)];
  return { low: inside(Math.min(...both(tight))), high: inside(Math.max(...both(loose))) };
}

function ratioOf(ingredient: Ingredient): Spread | null {
  const { carbonPct: c, nitrogenPct: n } = ingredient;
  if (n.low <= 0) return null;
  return { typical: c.typical / n.typical, low: c.low / n.high, high: c.high / n.low };
}

function bulkOf(group: Group): Spread {
  const bulk = group.ingredient.bulkKgPerM3;
  if (group.knownLitres <= 0) return bulk;
  const known = (group.knownKg / group.knownLitres) * 1000;
  return { typical: known, low: Math.min(known, bulk.low), high: Math.max(known, bulk.high) };
}

function hull(spreads: (Spread | null)[]): { low: number; high: number } {
  const known = spreads.filter((value) => value !== null);
  return {
    low: Math.min(...known.map((value) => value.low)),
    high: Math.max(...known.map((value) => value.high)),
  };
}

function grouped(parts: MixPart[]): { groups: Group[]; unknown: { material: string; kg: number }[] } {
  const groups = new Map<string, Group>();
  const unknown = new Map<string, number>();
  // Sorted, so that the same loads in another order give the same figures to the last bit.
  const sorted = [...parts].sort(
    (a, b) => a.material.localeCompare(b.material, 'en') || a.kg - b.kg || (a.litres ?? 0) - (b.litres ?? 0),
  );
  for (const part of sorted) {
    mustLie(`mass of ${part.material}`, part.kg, 'kg', 0, Number.MAX_VALUE);
    if (part.kg === 0) continue;
    const ingredient = ingredientFor(part.material, part.own ?? null);
    if (ingredient === null) {
      unknown.set(part.material, (unknown.get(part.material) ?? 0) + part.kg);
      continue;
    }
    const key = `${part.material} ${part.own ? JSON.stringify(part.own) : ''}`;
    const group = groups.get(key) ?? {
      ingredient,
      kg: { typical: 0, low: 0, high: 0 },
      knownKg: 0,
      knownLitres: 0,
    };
    group.kg = {
      typical: group.kg.typical + part.kg,
      low: group.kg.low + (part.kgLow ?? part.kg),
      high: group.kg.high + (part.kgHigh ?? part.kg),
    };
    if (part.litres != null && part.litres > 0) {
      group.knownKg += part.kg;
      group.knownLitres += part.litres;
    }
    groups.set(key, group);
  }
  return {
    groups: [...groups.entries()].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, group]) => group),
    unknown: [...unknown].map(([material, kg]) => ({ material, kg })),
  };
}

function whyOf(groups: Group[], unknown: { material: string }[], test: MixTest | null): MixWhy {
  const figures: MixFigure[] = groups.flatMap(({ ingredient, kg }): MixFigure[] => {
    const own = ingredient.source === 'the site';
    const known = (value: Spread): MixFigure['from'] => (own || value.low === value.high ? 'site' : 'memory');
    const figure = (name: string, value: Spread, unit: string): MixFigure => ({
      name: `${ingredient.material} ${name}`,
      value: value.typical,
      unit,
      low: value.low,
      high: value.high,
      from: known(value),
    });
    return [
      { name: ingredient.material, value: kg.typical, unit: 'kg', from: 'measured' },
      figure('moisture', ingredient.moisturePct, '%'),
      figure('carbon', ingredient.carbonPct, '% of dry'),
      figure('nitrogen', ingredient.nitrogenPct, '% of dry'),
      figure('density', ingredient.bulkKgPerM3, 'kg/m³'),
    ];
  });
  const assumed = ['typical-values', ...unknown.map((left) => `left-out:${left.material}`)];
  if (test) assumed.push(`test:${test.how}`);
  return {
    formula: 'mix',
    figures,
    sources: [
      'Richard & Trautmann, Getting the Right Mix, Cornell, 1996',
      ...new Set(groups.map((group) => group.ingredient.source)),
    ],
    assumed,
  };
}
