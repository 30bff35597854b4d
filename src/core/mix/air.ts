import { mustLie } from './why.ts';

/** What the sums of air space need: wet bulk density, moisture (% wet basis), volatile part (% of dry). */
export type Packed = { bulkKgPerM3: number; moisturePct: number; volatilePct: number };

/**
 * Free air space (% of volume) from the components: water and solids whose specific gravity follows from
 * 1.0 for volatile and 2.5 for fixed matter.
 * @source Haug, The Practical Handbook of Compost Engineering, 1993, ch. 7; from memory.
 * @example freeAirHaugPct({ bulkKgPerM3: 600, moisturePct: 55, volatilePct: 85 }) // 42.43 (to 0.005)
 */
export function freeAirHaugPct(packed: Packed): number {
  checkPacked(packed);
  const solids = 1 - packed.moisturePct / 100;
  const volatile = packed.volatilePct / 100;
  const perGravity = volatile / 1.0 + (1 - volatile) / 2.5;
  const density = packed.bulkKgPerM3 / 1000;
  return 100 * (1 - density * solids * perGravity - density * (1 - solids));
}

/**
 * Free air space (% of volume) from particle densities of 1,600 (organic) and 2,500 kg/m³ (ash). It lies
 * some 9 points above the form with gravity 1.0: the choice of particle density is the larger part of the error.
 * @source Van Ginkel et al., 1999; Richard, Veeken, de Wilde & Hamelers, Biotechnology Progress 20, 2004; from memory.
 * @example freeAirByParticlesPct({ bulkKgPerM3: 600, moisturePct: 55, volatilePct: 85 }) // 51.04 (to 0.005)
 */
export function freeAirByParticlesPct(packed: Packed): number {
  checkPacked(packed);
  const dry = 1 - packed.moisturePct / 100;
  const organic = packed.volatilePct / 100;
  const filled = (1 - dry) / 1000 + (dry * organic) / 1600 + (dry * (1 - organic)) / 2500;
  return 100 * (1 - packed.bulkKgPerM3 * filled);
}

/** Slope of the linear form, % per kg/m³. @source Alburquerque et al., Compost Science & Utilization 16, 2008; from memory. */
const FREE_AIR_SLOPE = 0.09;

/**
 * Free air space (% of volume) from the wet bulk density alone.
 * @source Alburquerque et al., Compost Science & Utilization 16, 2008; from memory (Agnew et al. 2003: slope 0.0889).
 * @example freeAirLinearPct(600) // 46
 */
export function freeAirLinearPct(bulkKgPerM3: number, slope = FREE_AIR_SLOPE): number {
  mustLie('bulk density', bulkKgPerM3, 'kg/m³', 0, 2000);
  return 100 - slope * bulkKgPerM3;
}

/**
 * The wet bulk density (kg/m³) above which free air falls under a floor, by the linear form.
 * @source the form above turned round.
 * @example bulkForFreeAir(40) // 666.67 (to 0.005)
 */
export function bulkForFreeAir(floorPct: number, slope = FREE_AIR_SLOPE): number {
  mustLie('free air space', floorPct, '%', 0, 100);
  return (100 - floorPct) / slope;
}

/**
 * What compaction does to the air space (share of volume, 0 to 1) and to the diffusion of oxygen, which goes
 * with its square. `lost` is the share of the volume that was pressed out.
 * @source Richard, Inadequate Porosity, Cornell, citing Papendick & Campbell, 1981 (relation).
 * @example compacted(0.5, 0.1) // { air: 0.4444, diffusionRatio: 0.7901 } (to 0.0001)
 */
export function compacted(air: number, lost: number): { air: number; diffusionRatio: number } {
  mustLie('air space', air, '', Number.MIN_VALUE, 1);
  mustLie('volume lost', lost, '', 0, air);
  const left = (air - lost) / (1 - lost);
  return { air: left, diffusionRatio: (left / air) ** 2 };
}

function checkPacked(packed: Packed): void {
  mustLie('bulk density', packed.bulkKgPerM3, 'kg/m³', 0, 2000);
  mustLie('moisture', packed.moisturePct, '%', 0, 100);
  mustLie('volatile part', packed.volatilePct, '%', 0, 100);
}
