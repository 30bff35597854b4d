import { exactly, type Spread, spread } from './spread.ts';

/**
 * What a material does in a mix: `feed` is wet and rich, `structure` is coarse and holds the air open,
 * `fine` soaks up water but packs, `other` is neither.
 */
type Role = 'feed' | 'structure' | 'fine' | 'other' | 'water';

/** One material: moisture of the wet mass; carbon, nitrogen and ash of the dry mass; loose bulk density as it is. */
export type Ingredient = {
  material: string;
  role: Role;
  moisturePct: Spread;
  carbonPct: Spread;
  nitrogenPct: Spread;
  ashPct: Spread;
  bulkKgPerM3: Spread;
  source: string;
};

/** Figures of the site's own (a laboratory, a drying test, a bucket) that stand before the table's. */
export type OwnFigures = Partial<
  Pick<Ingredient, 'role' | 'moisturePct' | 'carbonPct' | 'nitrogenPct' | 'ashPct' | 'bulkKgPerM3'>
>;

const TABLE = 'On-Farm Composting Handbook (NRAES-54), Rynk ed., 1992, appendix A; from memory';
const BC =
  'British Columbia Ministry of Agriculture, composting factsheet, table of materials, 1996; seen as a copy';
const MEMORY = 'from memory';

/**
 * Typical values and ranges of the materials that sites name. Carbon is chosen so that carbon, nitrogen and
 * ash agree: dry matter that is not ash holds one part of carbon in 1.7 to 2.25. Printed rows of %N and C:N
 * that fail this (2.4 % × 15 for garbage is 36 % carbon and 35 % ash; 0.24 % × 442 for sawdust is 106 %
 * carbon; 3.4 % × 17 for grass is 58 %) are not taken over as they stand.
 * @source each row names its own; ranges of published rows, mended as said above, "from memory" elsewhere.
 */
export const INGREDIENTS: Readonly<Record<string, Ingredient>> = {
  // Kitchen scraps of today are wetter than the 69 % of the old garbage row; C:N 14 to 16 as that row has it.
  'food-scraps': {
    material: 'food-scraps',
    role: 'feed',
    moisturePct: spread(74, 65, 82),
    carbonPct: spread(48, 45, 51),
    nitrogenPct: spread(3.1, 2.5, 3.8),
    ashPct: spread(10, 5, 18),
    bulkKgPerM3: spread(530, 455, 600),
    source: `${MEMORY}; C:N 15: ${TABLE}; 455 kg/m³: 3.8 lb/gal, EPA 2016 (seen); 593 kg/m³: BioCycle July 2012 (seen)`,
  },
  // Stem wood, 400 to 600:1. Chips with leaf and twig are `leafy-chips`.
  'wood-chips': {
    material: 'wood-chips',
    role: 'structure',
    moisturePct: spread(35, 20, 50),
    carbonPct: spread(50, 48, 52),
    nitrogenPct: spread(0.1, 0.083, 0.125),
    ashPct: spread(1, 0.5, 3),
    bulkKgPerM3: spread(290, 230, 370),
    source: `${BC} (264 to 368 kg/m³, N 0.04 to 0.23); moisture and nitrogen ${MEMORY}`,
  },
  'leafy-chips': {
    material: 'leafy-chips',
    role: 'structure',
    moisturePct: spread(45, 30, 60),
    carbonPct: spread(48, 46, 50),
    nitrogenPct: spread(0.32, 0.2, 0.48),
    ashPct: spread(4, 2, 8),
    bulkKgPerM3: spread(270, 200, 370),
    source: MEMORY,
  },
  sawdust: {
    material: 'sawdust',
    role: 'fine',
    moisturePct: spread(39, 19, 65),
    carbonPct: spread(50, 48, 52),
    nitrogenPct: spread(0.12, 0.07, 0.25),
    ashPct: spread(1, 0.5, 3),
    bulkKgPerM3: spread(243, 207, 267),
    source: `${TABLE} (C:N 200 to 750, moisture, density); nitrogen ${MEMORY}`,
  },
  leaves: {
    material: 'leaves',
    role: 'fine',
    moisturePct: spread(38, 20, 60),
    carbonPct: spread(48, 45, 50),
    nitrogenPct: spread(0.9, 0.6, 1.2),
    ashPct: spread(9, 5, 18),
    bulkKgPerM3: spread(120, 60, 240),
    source: `${TABLE} (38 %, N 0.5 to 1.3, 54:1); ${BC} (60 to 80 kg/m³ loose)`,
  },
  cardboard: {
    material: 'cardboard',
    role: 'fine',
    moisturePct: spread(8, 5, 12),
    carbonPct: spread(45, 42, 48),
    nitrogenPct: spread(0.1, 0.07, 0.14),
    ashPct: spread(5, 1, 12),
    bulkKgPerM3: spread(154, 60, 160),
    source: `${BC} (N 0.1, 8 %, 154 kg/m³; its 563:1 would need 56 % carbon); carbon ${MEMORY}`,
  },
  paper: {
    material: 'paper',
    role: 'fine',
    moisturePct: spread(15, 5, 20),
    carbonPct: spread(40, 36, 45),
    nitrogenPct: spread(0.25, 0.2, 0.32),
    ashPct: spread(12, 5, 25),
    bulkKgPerM3: spread(130, 100, 145),
    source: `${BC} (mixed paper: 127 to 178:1, 130 kg/m³); carbon and ash ${MEMORY}`,
  },
  straw: {
    material: 'straw',
    role: 'fine',
    moisturePct: spread(12, 4, 27),
    carbonPct: spread(46, 42, 48),
    nitrogenPct: spread(0.6, 0.3, 1.1),
    ashPct: spread(7, 4, 12),
    bulkKgPerM3: spread(135, 34, 224),
    source: `${TABLE} (12 % (4 to 27), N 0.3 to 1.1, 135 kg/m³); carbon ${MEMORY}`,
  },
  grass: {
    material: 'grass',
    role: 'feed',
    moisturePct: spread(82, 70, 86),
    carbonPct: spread(45, 42, 48),
    nitrogenPct: spread(3, 2, 4.5),
    ashPct: spread(10, 6, 15),
    bulkKgPerM3: spread(240, 178, 475),
    source: `${TABLE} (82 %, N 2 to 6, loose and compact density); C 45 % as in Richard & Trautmann, Cornell, 1996`,
  },
  'coffee-grounds': {
    material: 'coffee-grounds',
    role: 'feed',
    moisturePct: spread(65, 55, 80),
    carbonPct: spread(50, 47, 53),
    nitrogenPct: spread(2.4, 1.9, 2.8),
    ashPct: spread(2, 1, 3),
    bulkKgPerM3: spread(450, 350, 600),
    source: `C:N about 20, Cornell, 2021 (seen); the rest ${MEMORY}`,
  },
  'garden-waste': {
    material: 'garden-waste',
    role: 'other',
    moisturePct: spread(50, 30, 65),
    carbonPct: spread(46, 42, 49),
    nitrogenPct: spread(1.2, 0.8, 1.8),
    ashPct: spread(12, 5, 20),
    bulkKgPerM3: spread(250, 150, 400),
    source: `${MEMORY}; shrub trimmings (N 1.0, 53:1, 255 kg/m³) in ${TABLE}`,
  },
  // Horse manure with bedding, the kind that comes to small sites.
  manure: {
    material: 'manure',
    role: 'feed',
    moisturePct: spread(72, 59, 79),
    carbonPct: spread(45, 40, 49),
    nitrogenPct: spread(1.6, 1.4, 2.2),
    ashPct: spread(15, 8, 25),
    bulkKgPerM3: spread(818, 721, 961),
    source: `${BC} and ${TABLE} (horse, general)`,
  },
  'finished-compost': {
    material: 'finished-compost',
    role: 'other',
    moisturePct: spread(45, 35, 55),
    carbonPct: spread(20, 15, 28),
    nitrogenPct: spread(1.5, 1, 2),
    ashPct: spread(60, 45, 70),
    bulkKgPerM3: spread(530, 475, 590),
    source: `${MEMORY} (N 1 to 2, 10 to 15:1, 800 to 1,000 lb/yd³)`,
  },
  water: {
    material: 'water',
    role: 'water',
    moisturePct: exactly(100),
    carbonPct: exactly(0),
    nitrogenPct: exactly(0),
    ashPct: exactly(0),
    bulkKgPerM3: exactly(1000),
    source: 'by definition',
  },
};

/**
 * A material's figures with the site's own in front of the table's; null where neither knows it.
 * Throws a RangeError for an own figure that cannot be (a moisture over 100 %).
 * @example ingredientFor('wood-chips', { moisturePct: exactly(25) })!.moisturePct.typical // 25
 */
export function ingredientFor(material: string, own: OwnFigures | null = null): Ingredient | null {
  const base = Object.hasOwn(INGREDIENTS, material) ? INGREDIENTS[material]! : null;
  if (own === null) return base;
  for (const key of ['moisturePct', 'carbonPct', 'nitrogenPct', 'ashPct'] as const) {
    const given = own[key];
    if (
      given &&
      !(given.low >= 0 && given.low <= given.typical && given.typical <= given.high && given.high <= 100)
    )
      throw new RangeError(
        `${key} of ${material} is ${given.low} to ${given.high} %; it must lie from 0 to 100 %`,
      );
  }
  if (own.bulkKgPerM3 && !(own.bulkKgPerM3.low > 0))
    throw new RangeError(`bulk density of ${material} is ${own.bulkKgPerM3.low} kg/m³; it must be above 0`);
  if (base) return { ...base, ...own };
  const { moisturePct, carbonPct, nitrogenPct, bulkKgPerM3 } = own;
  if (!moisturePct || !carbonPct || !nitrogenPct || !bulkKgPerM3) return null;
  const ashPct = own.ashPct ?? exactly(Math.max(0, 100 - 1.8 * carbonPct.typical));
  return {
    material,
    role: own.role ?? 'other',
    moisturePct,
    carbonPct,
    nitrogenPct,
    ashPct,
    bulkKgPerM3,
    source: 'the site',
  };
}
