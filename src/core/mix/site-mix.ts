import { type DrumRules, drumNow } from '../drum/drum.ts';
import { FULL_FRACTION } from '../drum/flow.ts';
import { drumRulesOf } from '../drum/rules.ts';
import { RULE_SET_DATA } from '../heat/rule-sets.ts';
import { drumName, placeKind } from '../picture/places.ts';
import { ruleSetOf } from '../picture/proof.ts';
import { settingAt } from '../picture/setting-at.ts';
import type { DrumPicture, Picture } from '../picture/types.ts';
import { litresOf } from '../picture/weighed.ts';
import type { Addition, MixLimits, MixRecipe } from './correction-types.ts';
import { ingredientFor } from './ingredients.ts';
import { mixLimits } from './limits.ts';
import { ownFiguresAt } from './own-figures.ts';
import { additionOf } from './planned.ts';
import { stockNow } from './stock.ts';

/** A barrow as most sites have it, where this one has told no volume. @source common practice, no source. */
const USUAL_BARROW = { container: 'barrow', litres: 85 };
/** A bucket of water as it is carried. @source common practice, no source. */
const USUAL_WATER = { container: 'bucket', litres: 10 };

/**
 * What the site can add: chips always, other bulking materials that it stocks or has used of late, each in
 * the container that it is tipped in, by what such a one was found to weigh, and as many as are in stock
 * where the stock is known. Water is offered where `dry` says that the mix wants it.
 * @source see `additionOf`.
 * @example siteAdditions({ base: { containers: {} }, settings: {}, stock: {}, factors: {}, mixLoads: [] } as never, '2026-05-12').map((one) => [one.material, one.container, one.litres]) // [['wood-chips', 'barrow', 85]]
 */
export function siteAdditions(
  picture: Pick<Picture, 'base' | 'settings' | 'stock' | 'factors' | 'mixLoads'>,
  localDate: string,
  dry = false,
): Addition[] {
  const materials = new Set([
    'wood-chips',
    ...Object.keys(picture.stock),
    ...picture.mixLoads.map((load) => load.material),
  ]);
  const bulking = [...materials].filter((material) => {
    const role = ingredientFor(material, ownFiguresAt(picture.settings, material, localDate))?.role;
    return role === 'structure' || role === 'fine';
  });
  const additions = bulking.flatMap((material) => {
    const { container, litres } = tippedIn(picture, material, localDate);
    const holds = settingAt(picture, `holds:${container}`, localDate);
    const set = holds === material ? settingAt(picture, `factor:${container}`, localDate) : null;
    const key = `${container}|${material}`;
    const addition = additionOf({
      material,
      container,
      containerLitres: litres,
      setKg: typeof set === 'number' ? set : null,
      learned: Object.hasOwn(picture.factors, key) ? picture.factors[key]! : null,
      own: ownFiguresAt(picture.settings, material, localDate),
    });
    return addition ? [{ ...addition, stock: wholeInStock(picture, material, addition.litres) }] : [];
  });
  if (!dry) return additions;
  const bucket = litresOf(picture, USUAL_WATER.container, null, localDate) ?? USUAL_WATER.litres;
  return [
    ...additions,
    { material: 'water', container: USUAL_WATER.container, kg: bucket, litres: bucket, stock: null },
  ];
}

function tippedIn(
  picture: Pick<Picture, 'base' | 'settings' | 'mixLoads'>,
  material: string,
  localDate: string,
): { container: string; litres: number } {
  const used = picture.mixLoads.findLast((load) => load.material === material && load.container)?.container;
  const holding = Object.entries(picture.base.containers).find(([, one]) => one.holds === material)?.[0];
  for (const container of [used, holding, 'barrow', 'bucket', 'loader-bucket']) {
    const litres = container ? litresOf(picture, container, null, localDate) : null;
    if (container && litres !== null) return { container, litres };
  }
  return USUAL_BARROW;
}

/** Whole containers left; null where the stock is not known, or the book shows more used than there was. */
function wholeInStock(picture: Pick<Picture, 'stock'>, material: string, litres: number): number | null {
  const stock = Object.hasOwn(picture.stock, material) ? picture.stock[material]! : null;
  const now = stock ? stockNow(stock, []) : null;
  return now === null || now.short ? null : Math.floor(now.litres / litres + 1e-9);
}

/**
 * The limits in force at a site on a local day: its recipe, the place that the mix goes to (`where`; the drum of a
 * site that has one, where none is given), and the room in
 * its drum by the emptier end of the likely fill (a drum is not called full on a guess). A band of water or C:N
 * that the site has set (`mix-water`, `mix-cn`), or that its rule for heat demands, stands before the defaults.
 * @source see `mixLimits`, `drumNow` and FULL_FRACTION.
 * @example siteLimits({ base: { drums: [], containers: {} }, settings: {}, drums: {} } as never, '2026-05-12', '2026-05-12T12:00:00.000Z').structurePerFeed // 2
 */
export function siteLimits(
  picture: Pick<Picture, 'base' | 'settings' | 'drums'>,
  localDate: string,
  at: string,
  where: string | null = null,
): MixLimits {
  const recipe = settingAt(picture, 'recipe', localDate) as MixRecipe | null | undefined;
  const inDrum = where === null || placeKind({ ...picture, places: {} }, where) === 'drum';
  const name = inDrum ? drumName(picture, where) : null;
  const drum = name === null ? null : (picture.drums[name] ?? null);
  const rule = ruleSetOf(picture, localDate);
  return mixLimits({
    place: inDrum && (drum || picture.base.drums.length > 0) ? 'drum' : 'static-pile',
    recipe: recipe ?? null,
    cnBand: bandAt(picture, 'mix-cn', localDate) ?? (rule ? RULE_SET_DATA[rule].startingCn : null),
    moistureBand: bandAt(picture, 'mix-water', localDate),
    roomLitres: drum ? likelyRoom(drum, at, drumRulesOf({ picture, localDate })) : null,
  });
}

function likelyRoom(drum: DrumPicture, at: string, rules: DrumRules): number | null {
  const { fillPct } = drumNow(drum, at, rules);
  if (fillPct === null || drum.litres === null) return null;
  return Math.max(0, ((rules.fullFraction ?? FULL_FRACTION) - fillPct.low / 100) * drum.litres);
}

function bandAt(
  picture: Pick<Picture, 'base' | 'settings'>,
  name: string,
  localDate: string,
): readonly [number, number] | null {
  const { low, high } = (settingAt(picture, name, localDate) ?? {}) as { low?: unknown; high?: unknown };
  return typeof low === 'number' && typeof high === 'number' ? [low, high] : null;
}

/**
 * Where the mix of a day is: at a site with a drum the drum that was fed last, else the place where the last
 * load went; null where no place was said.
 * @source none needed: the site's own places.
 * @example mixPlace({ drums: {}, mixLoads: [{ localDate: '2026-05-12', place: 'bay 1' }] } as never, '2026-05-12') // 'bay 1'
 */
export function mixPlace(picture: Pick<Picture, 'drums' | 'mixLoads'>, localDate: string): string | null {
  const loads = picture.mixLoads.filter((load) => load.localDate === localDate && load.place !== null);
  if (Object.keys(picture.drums).length === 0) return loads.at(-1)?.place ?? null;
  const fed = loads.findLast(({ place }) => Object.hasOwn(picture.drums, place!));
  return fed?.place ?? drumName(picture, null);
}

/**
 * The loads of a day that were put together at a place: those that went elsewhere are no part of its mix. One of
 * which no place was said belongs to the drum where the site has one; else to the place named at the same instant,
 * the last named before, or the first after. The order of loads of one instant does not matter. `place` null: those
 * of which no place is known.
 * @source none needed.
 * @example loadsAt({ drums: {}, mixLoads: [{ localDate: '2026-05-12', at: '08:00', place: 'bay 1' }, { localDate: '2026-05-12', at: '08:01', place: null }, { localDate: '2026-05-12', at: '08:02', place: 'bay 2' }] } as never, '2026-05-12', 'bay 1').length // 2
 */
export function loadsAt(
  picture: Pick<Picture, 'drums' | 'mixLoads'>,
  localDate: string,
  place: string | null,
): Picture['mixLoads'] {
  const loads = picture.mixLoads.filter((load) => load.localDate === localDate);
  const drum = Object.keys(picture.drums)[0] ?? null;
  const namedAt = (at: string | undefined): string[] =>
    [...new Set(loads.flatMap((load) => (load.at === at && load.place !== null ? [load.place] : [])))].sort();
  const instants = [...new Set(loads.flatMap((load) => (load.place === null ? [] : [load.at])))].sort();
  const placeFor = ({ at }: { at: string }): string | null => {
    const here = namedAt(at);
    if (here.length === 1) return here[0]!;
    const before = namedAt(instants.findLast((each) => each < at)).at(-1);
    return before ?? here[0] ?? namedAt(instants.find((each) => each > at))[0] ?? null;
  };
  return loads.filter((load) => (load.place ?? drum ?? placeFor(load)) === place);
}

/**
 * The places where something was put together on a day, in the order in which they were first loaded.
 * @source none needed.
 * @example mixPlaces({ drums: {}, mixLoads: [{ localDate: '2026-05-12', place: 'bay 2' }, { localDate: '2026-05-12', place: 'bay 1' }] } as never, '2026-05-12') // ['bay 2', 'bay 1']
 */
export const mixPlaces = (picture: Pick<Picture, 'drums' | 'mixLoads'>, localDate: string): string[] => [
  ...new Set(
    picture.mixLoads.flatMap((load) =>
      load.localDate === localDate && load.place !== null ? [load.place] : [],
    ),
  ),
];
