import type { Addition, LimitCode, MixLimits, MixPlace, MixRecipe } from './correction-types.ts';
import { type Ingredient, ingredientFor } from './ingredients.ts';
import type { MixPart } from './mix.ts';
import type { LimitLine } from './program.ts';

/**
 * Litres of coarse material to a litre of feed, at least, where the site has no tested recipe.
 * @source common practice, from memory: about 1 for a drum, 2 to 3 for a static pile; a pile that is turned between.
 */
export const STRUCTURE_PER_FEED: Readonly<Record<MixPlace, number>> = {
  drum: 1,
  'turned-pile': 1.5,
  'static-pile': 2,
};

/**
 * The floor is said as "about": where no whole number of containers meets everything, this much of it will do.
 * @source from memory; the floors themselves are given as "about 1:1" and "2 to 3:1".
 */
const ABOUT = 0.9;

/**
 * Most of the volume of everything that each packing material may be.
 * @source from memory: shredded cardboard and fines soak up water but mat and close the pores.
 */
export const FINES_CAPS: Readonly<Record<string, number>> = {
  cardboard: 0.25,
  paper: 0.15,
  sawdust: 0.25,
};

/**
 * The limits of a correction: defaults, with what the site or its rule set has set before them.
 * @source moisture 55 to 60 %, over 65 never: Cornell, Getting the Right Mix (upper 55 to 60 %), LSU 3838-D and
 * NRAES-54 (40 to 65 % reasonable); C:N 25 and up: the same tables (25 to 30 preferred) and CalRecycle (25 to 40).
 * A window that the site has set stands before it, but never reaches over 65 %.
 * @example mixLimits({ place: 'drum' }).structurePerFeed // 1
 */
export function mixLimits(given: {
  place: MixPlace;
  recipe?: MixRecipe | null;
  cnBand?: readonly [number, number] | null;
  moistureBand?: readonly [number, number] | null;
  structurePerFeed?: number | null;
  roomLitres?: number | null;
  caps?: Readonly<Record<string, number>> | null;
}): MixLimits {
  return {
    recipe: given.recipe ?? null,
    structurePerFeed: given.structurePerFeed ?? STRUCTURE_PER_FEED[given.place],
    moisturePct: moistureWindow(given.moistureBand ?? null),
    cnLow: given.cnBand?.[0] ?? 25,
    cnHigh: given.cnBand?.[1] ?? null,
    caps: given.caps ?? FINES_CAPS,
    roomLitres: given.roomLitres ?? null,
  };
}

function moistureWindow(band: readonly [number, number] | null): MixLimits['moisturePct'] {
  const [low, high] = band ?? [55, 60];
  return { low, high: Math.min(high, NEVER_OVER_PCT), never: NEVER_OVER_PCT, wideLow: Math.min(50, low) };
}

/** Water above this is never aimed at. @source LSU 3838-D after NRAES-54: 40 to 65 % reasonable */
const NEVER_OVER_PCT = 65;

type Content = {
  kg: number;
  waterKg: number;
  carbonKg: number;
  nitrogenKg: number;
  litres: number;
  ingredient: Ingredient;
};

function content(ingredient: Ingredient, kg: number, litres: number | null): Content {
  const waterKg = (kg * ingredient.moisturePct.typical) / 100;
  return {
    kg,
    waterKg,
    carbonKg: ((kg - waterKg) * ingredient.carbonPct.typical) / 100,
    nitrogenKg: ((kg - waterKg) * ingredient.nitrogenPct.typical) / 100,
    litres: litres ?? (kg / ingredient.bulkKgPerM3.typical) * 1000,
    ingredient,
  };
}

/**
 * What the limits come to for this load and these containers, by typical values; `wide` opens the moisture
 * window and takes the floor of coarse material as "about". Throws a RangeError for a container of a material that has no figures.
 * @source see `mixLimits`; each ratio multiplied out, so that it is linear in the counts.
 * @example limitLines([{ material: 'food-scraps', kg: 100 }], [], mixLimits({ place: 'drum' }), null, false).map((line) => line.code) // ['structure', 'moisture-high', 'moisture-low', 'cn-low']
 */
export function limitLines(
  parts: MixPart[],
  additions: Addition[],
  limits: MixLimits,
  moistureByTest: number | null,
  wide: boolean,
): LimitLine<LimitCode>[] {
  const inside = parts.flatMap((part) => {
    const ingredient = ingredientFor(part.material, part.own ?? null);
    return ingredient ? [content(ingredient, part.kg, part.litres ?? null)] : [];
  });
  const adds = additions.map((addition) => {
    const ingredient = ingredientFor(addition.material, addition.own ?? null);
    if (ingredient === null) throw new RangeError(`no figures for ${addition.material}`);
    return content(ingredient, addition.kg, addition.litres);
  });
  const line = (
    code: LimitCode,
    amount: (of: Content) => number,
    bounds: { min?: number; max?: number },
    base = inside.reduce((sum, one) => sum + amount(one), 0),
  ): LimitLine<LimitCode> => ({ code, base, each: adds.map(amount), ...bounds });
  const kg = inside.reduce((sum, one) => sum + one.kg, 0);
  const over = (pct: number) => (of: Content) => of.waterKg - (pct / 100) * of.kg;
  const overBase = (pct: number) =>
    moistureByTest === null ? undefined : (kg * (moistureByTest - pct)) / 100;
  const rich = (ratio: number) => (of: Content) => of.carbonKg - ratio * of.nitrogenKg;
  const is = (of: Content, role: string) => of.ingredient.role === role;
  const lines: LimitLine<LimitCode>[] = [];
  if (limits.recipe) {
    const { chips, food, by } = limits.recipe;
    const amount = (of: Content) => (by === 'mass' ? of.kg : of.litres);
    // A site that bulks with shavings or leaves alone means those by its recipe.
    const coarse = [...inside, ...adds].some((of) => is(of, 'structure')) ? ['structure'] : ['fine'];
    const share = (of: Content) =>
      coarse.includes(of.ingredient.role) ? amount(of) : is(of, 'feed') ? -(chips / food) * amount(of) : 0;
    lines.push(line('recipe', share, { min: 0 }));
  } else {
    const { low, high, never, wideLow } = limits.moisturePct;
    const [floor, ceiling] = wide ? [wideLow, never] : [low, high];
    const perFeed = limits.structurePerFeed * (wide ? ABOUT : 1);
    lines.push(
      line(
        'structure',
        (of) => (is(of, 'structure') ? of.litres : is(of, 'feed') ? -perFeed * of.litres : 0),
        { min: 0 },
      ),
      line('moisture-high', over(ceiling), { max: 0 }, overBase(ceiling)),
      line('moisture-low', over(floor), { min: 0 }, overBase(floor)),
      line('cn-low', rich(limits.cnLow), { min: 0 }),
    );
    if (limits.cnHigh !== null) lines.push(line('cn-high', rich(limits.cnHigh), { max: 0 }));
  }
  for (const [material, cap] of Object.entries(limits.caps)) {
    if (!additions.some((addition) => addition.material === material)) continue;
    const over = (of: Content) =>
      of.ingredient.material === material ? (1 - cap) * of.litres : -cap * of.litres;
    lines.push(
      line('cap', over, {
        max: Math.max(
          0,
          inside.reduce((sum, one) => sum + over(one), 0),
        ),
      }),
    );
  }
  if (limits.roomLitres !== null)
    lines.push(line('room', (of) => of.litres, { max: Math.max(0, limits.roomLitres) }, 0));
  return lines;
}
