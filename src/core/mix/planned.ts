import { estimateKg, type Tally, usualKg } from '../weights/estimate.ts';
import { correctionFor } from './correction.ts';
import type { Addition, Correction, MixLimits } from './correction-types.ts';
import { ingredientFor, type OwnFigures } from './ingredients.ts';
import type { MixPart } from './mix.ts';
import type { Spread } from './spread.ts';

/** Containers that are expected, with what such a one usually weighs net. */
export type PlannedLoad = {
  material: string;
  container: string;
  count: number;
  /** Net weights of such containers so far. */
  usual: Tally | null;
  containerLitres?: number | null;
  setKg?: number | null;
  own?: OwnFigures | null;
};

/**
 * What to add before anything is tipped. `expectedKg` is what these containers usually weigh (by one or two weights
 * with a wide range, rather than by a table); `from` says
 * whether the weights were learned here or published. `firstOnFloor` names the coarse material of which one
 * container goes on the drum's floor first. `noWeight` lists containers of which nothing is known.
 */
export type Planned = {
  expectedKg: number;
  lowKg: number;
  highKg: number;
  from: 'learned' | 'site-setting' | 'published' | null;
  correction: Correction;
  firstOnFloor: { material: string; container: string } | null;
  noWeight: { container: string; count: number }[];
};

/**
 * The mix of loads that are still to come, and the fewest containers to have ready for them. Weights of
 * several carts vary apart from each other, so their spread grows with the square root of their number.
 * Throws a RangeError for a count below zero.
 * @source see `correctionFor`; coarse material first on the floor: common practice, no source.
 * @example plannedMix({ loads: [{ material: 'food-scraps', container: 'cart', count: 3, usual: { n: 8, meanKg: 50, m2: 700 } }], additions: [{ material: 'wood-chips', container: 'barrow', kg: 24.65, litres: 85, stock: null }], limits: mixLimits({ place: 'drum' }), inDrum: true }).correction.add[0]!.count // 4
 */
export function plannedMix(given: {
  loads: PlannedLoad[];
  additions: Addition[];
  limits: MixLimits;
  /** Chips and the like that are in already. */
  already?: MixPart[];
  inDrum: boolean;
}): Planned {
  const noWeight: Planned['noWeight'] = [];
  let from: Planned['from'] = null;
  const expected = given.loads.flatMap((load): MixPart[] => {
    if (!(load.count >= 0))
      throw new RangeError(`${load.count} ${load.container} planned; it must be 0 or more`);
    const usual = load.usual ? (usualKg(load.usual) ?? ofFew(load.usual)) : null;
    if (usual) {
      from = from === 'published' ? from : 'learned';
      const kg = usual.typical * load.count;
      const half = (usual.high - usual.typical) * Math.sqrt(load.count);
      return [
        {
          material: load.material,
          kg,
          kgLow: Math.max(0, kg - half),
          kgHigh: kg + half,
          own: load.own ?? null,
        },
      ];
    }
    const estimate = estimateKg({
      material: load.material,
      count: load.count,
      containerLitres: load.containerLitres ?? null,
      setKg: load.setKg ?? null,
    });
    if (!estimate) {
      noWeight.push({ container: load.container, count: load.count });
      return [];
    }
    from = estimate.from === 'published' ? 'published' : (from ?? estimate.from);
    const { estimatedKg, low, high } = estimate;
    return [{ material: load.material, kg: estimatedKg, kgLow: low, kgHigh: high, own: load.own ?? null }];
  });
  const correction = correctionFor({
    parts: [...expected, ...(given.already ?? [])],
    additions: given.additions,
    limits: given.limits,
  });
  const total = (pick: (part: MixPart) => number) => expected.reduce((sum, part) => sum + pick(part), 0);
  const coarse = correction.add.find((one) => ingredientFor(one.material)?.role === 'structure');
  return {
    expectedKg: total((part) => part.kg),
    lowKg: total((part) => part.kgLow ?? part.kg),
    highKg: total((part) => part.kgHigh ?? part.kg),
    from,
    correction,
    firstOnFloor: given.inDrum && coarse ? { material: coarse.material, container: coarse.container } : null,
    noWeight,
  };
}

/** One or two weights say little of the next: it may be this much more or less. @source from memory */
const FEW_SHARE = 0.5;

function ofFew({ n, meanKg }: Tally): Spread | null {
  if (n < 1 || !(meanKg > 0)) return null;
  return { typical: meanKg, low: meanKg * (1 - FEW_SHARE), high: meanKg * (1 + FEW_SHARE) };
}

/**
 * A container of bulking material as something to add: its weight from the site's setting, from such ones
 * weighed, or from its litres and the material's density. Null where neither weight nor volume can be known.
 * @source see `estimateKg`.
 * @example additionOf({ material: 'wood-chips', container: 'barrow', containerLitres: 85 })!.kg // 24.65
 */
export function additionOf(given: {
  material: string;
  container: string;
  containerLitres?: number | null;
  setKg?: number | null;
  learned?: Tally | null;
  stock?: number | null;
  own?: OwnFigures | null;
}): Addition | null {
  const ingredient = ingredientFor(given.material, given.own ?? null);
  if (!ingredient) return null;
  const estimate = estimateKg({
    material: given.material,
    count: 1,
    containerLitres: given.containerLitres ?? null,
    setKg: given.setKg ?? null,
    learned: given.learned ?? null,
  });
  const bulk = ingredient.bulkKgPerM3.typical;
  const byVolume = given.containerLitres ? (given.containerLitres * bulk) / 1000 : null;
  const kg = estimate && estimate.from !== 'published' ? estimate.estimatedKg : byVolume;
  if (kg === null || !(kg > 0)) return null;
  return {
    material: given.material,
    container: given.container,
    kg,
    litres: given.containerLitres ?? (kg / bulk) * 1000,
    stock: given.stock ?? null,
    own: given.own ?? null,
  };
}
