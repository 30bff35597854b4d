import { bulkForFreeAir } from './air.ts';
import type { Added, Addition, Correction, CorrectionInput, LimitCode } from './correction-types.ts';
import { INGREDIENTS, ingredientFor } from './ingredients.ts';
import { limitLines } from './limits.ts';
import { type Mix, type MixPart, mixOf } from './mix.ts';
import { fewest, keepsAll, type LimitLine, nearest } from './program.ts';
import { propagate, type Spread } from './spread.ts';
import type { MixWhy } from './why.ts';

/** Materials that may be named as the one that would solve it, the coarse and common first. */
const WOULD_SOLVE = [
  'wood-chips',
  'leaves',
  'straw',
  'sawdust',
  'cardboard',
  'water',
  'coffee-grounds',
  'grass',
];
/** How much missing a limit costs where not all can be kept: structure and wetness first. */
const WEIGHT: Readonly<Record<LimitCode, number>> = {
  recipe: 4,
  structure: 4,
  'moisture-high': 4,
  'cn-low': 1,
  'cn-high': 1,
  'moisture-low': 1,
  cap: 1,
  stock: 1,
  room: 1,
};
const HARD: readonly LimitCode[] = ['cap', 'room', 'stock'];

/**
 * The fewest whole containers that bring a mix where it should be. In order of authority: the site's own
 * recipe; else a floor of coarse material by volume, moisture of 55 to 60 % (at most 65), C:N of 25 or more;
 * always the caps on fines, the stock, the room. Among equally few containers the lighter are chosen. A
 * least-mass answer is not sought: it picks the driest and finest stuff, which packs.
 * Moisture and C:N are corrected only where the likely range lies outside the window, or a test of the mix
 * says so: no advice inside the error. A test that finds the moisture right also outweighs the floor.
 * Throws a RangeError for a container with no mass or no volume.
 * @source see `mixLimits`; integer linear program.
 * @example correctionFor({ parts: [{ material: 'food-scraps', kg: 150 }], additions: [{ material: 'wood-chips', container: 'barrow', kg: 24.65, litres: 85, stock: null }], limits: mixLimits({ place: 'drum' }) }).add // [{ material: 'wood-chips', container: 'barrow', count: 4, kg: 98.6, litres: 340 }]
 */
export function correctionFor(input: CorrectionInput): Correction {
  const { parts, additions, limits } = input;
  for (const one of additions)
    if (!(one.kg > 0 && one.litres > 0))
      throw new RangeError(
        `a ${one.container} of ${one.material} has ${one.kg} kg and ${one.litres} L; both must be above 0`,
      );
  const before = mixOf(parts, input.test ?? null);
  const moistureByTest = before.test?.moisturePct?.typical ?? null;
  const linesFor = (extra: Addition[], wide: boolean) =>
    limitLines(parts, extra, limits, moistureByTest, wide);
  const result = (rest: Partial<Correction> & Pick<Correction, 'code'>): Correction => {
    const add = rest.add ?? [];
    const after = add.length > 0 ? withAdded(parts, additions, add, before, moistureByTest) : before;
    const overNever = (after.moisturePct?.typical ?? 0) > limits.moisturePct.never;
    return {
      add,
      ifWet: null,
      squeeze: false,
      limiting: null,
      window: null,
      before,
      after,
      overNever,
      blocked: null,
      why: whyOf(input, before, rest.limiting ?? null),
      ...rest,
    };
  };
  if (before.moisturePct === null) return result({ code: 'nothing-known' });

  const unsure = limits.recipe ? new Set<LimitCode>() : insideError(before, input);
  const firmAnswer = solveTiers(
    linesFor,
    additions,
    (line) => !unsure.has(line.code),
    limits.recipe !== null,
  );
  const fullAnswer =
    unsure.size > 0 ? solveTiers(linesFor, additions, () => true, limits.recipe !== null) : firmAnswer;
  const squeeze =
    !before.test?.moisturePct &&
    (unsure.has('moisture-high') || unsure.has('moisture-low') || reachesPast(before, input));
  const dryAnswer =
    firmAnswer === null ? drierThanSure(input, linesFor, (line) => !unsure.has(line.code), before) : null;
  if (dryAnswer) {
    const add = toAdded(additions, dryAnswer);
    const limiting = limitingOf(linesFor(additions, false), additions);
    return result({ code: 'add', add, squeeze: true, limiting, window: 'wide' });
  }
  if (firmAnswer === null) {
    const keep: Keep = (line) => !unsure.has(line.code);
    const blocked = blockedBy(linesFor, additions, keep, (more) =>
      drierThanSure({ ...input, additions: more }, linesFor, keep, before),
    );
    return result({
      code: 'infeasible',
      add: [],
      squeeze,
      limiting: blocked.limits[0] ?? null,
      blocked: {
        ...blocked,
        bestMoisturePct:
          withAdded(parts, additions, blocked.best, before, moistureByTest).moisturePct?.typical ?? null,
      },
    });
  }
  const add = toAdded(additions, firmAnswer.counts);
  const full = fullAnswer ? toAdded(additions, fullAnswer.counts) : null;
  const ifWet = full !== null && JSON.stringify(full) !== JSON.stringify(add) ? full : null;
  const limiting = add.length > 0 || ifWet ? limitingOf(linesFor(additions, false), additions) : null;
  if (add.length > 0)
    return result({ code: 'add', add, ifWet, squeeze, limiting, window: firmAnswer.window });
  const moistureUnsure = unsure.has('moisture-high') || unsure.has('moisture-low');
  return result({
    code: moistureUnsure ? 'squeeze-first' : 'enough',
    ifWet,
    squeeze,
    limiting,
    window: firmAnswer.window,
  });
}

type LinesFor = (additions: Addition[], wide: boolean) => LimitLine<LimitCode>[];
type Keep = (line: LimitLine<LimitCode>) => boolean;

const kgs = (additions: Addition[]) => additions.map((one) => one.kg);
const stocks = (additions: Addition[]) => additions.map((one) => one.stock ?? Number.POSITIVE_INFINITY);

/** The target window first; the outer limits only where no whole number of containers meets it. */
function solveTiers(linesFor: LinesFor, additions: Addition[], keep: Keep, byRecipe: boolean) {
  for (const wide of byRecipe ? [false] : [false, true]) {
    const found = fewest(linesFor(additions, wide).filter(keep), kgs(additions), stocks(additions));
    if (found) {
      const window: Correction['window'] = byRecipe ? 'recipe' : wide ? 'wide' : 'target';
      return { ...found, window };
    }
  }
  return null;
}

/**
 * What is needed for air or C:N can bring a small load under the window by typical values. Where the likely range
 * of what comes of it still touches the window that is no reason to call it impossible: it is added, and squeezed.
 */
function drierThanSure(input: CorrectionInput, linesFor: LinesFor, keep: Keep, before: Mix): number[] | null {
  const { parts, additions, limits } = input;
  if (limits.recipe || before.test?.moisturePct) return null;
  const lines = linesFor(additions, true).filter((line) => keep(line) && line.code !== 'moisture-low');
  const found = fewest(lines, kgs(additions), stocks(additions));
  if (!found || found.total === 0) return null;
  const after = withAdded(parts, additions, toAdded(additions, found.counts), before, null);
  return (after.moisturePct?.high ?? 0) >= limits.moisturePct.low ? found.counts : null;
}

/** Limits that typical values break while the likely range still touches what is allowed. */
function insideError(before: Mix, { limits, parts }: CorrectionInput): Set<LimitCode> {
  const codes = new Set<LimitCode>();
  const { moisturePct, cn } = before;
  const { low, high } = limits.moisturePct;
  if (moisturePct && !before.test?.moisturePct) {
    if (moisturePct.typical > high && moisturePct.low <= high) codes.add('moisture-high');
    if (moisturePct.typical < low && moisturePct.high >= low) codes.add('moisture-low');
  }
  // A band that a rule demands has to be shown on paper; there typical values are what there is.
  if (cn && limits.cnHigh === null && cn.typical < limits.cnLow && cn.high >= limits.cnLow)
    codes.add('cn-low');
  const ratio = structureRatio(parts);
  const floor = limits.structurePerFeed;
  if (ratio && ratio.typical < floor && ratio.high >= floor) codes.add('structure');
  // The floor guards against a wet, closed mix; a hand that finds it right outweighs a rule of thumb.
  const tested = before.test?.moisturePct?.typical ?? null;
  if (tested !== null && tested >= low && tested <= high) codes.add('structure');
  // A bucket tells of the air itself: what is open enough needs no floor, what is packed does.
  const density = before.test?.bulkKgPerM3?.typical ?? null;
  if (density !== null && density <= PACKED_KG_PER_M3) codes.add('structure');
  else if (density !== null) codes.delete('structure');
  return codes;
}

/** Wet bulk density above which under 40 % air is left. @source LSU 3838-D: porosity over 40 %; see `bulkForFreeAir` */
export const PACKED_KG_PER_M3 = bulkForFreeAir(40);

/** Litres of coarse material to a litre of feed, with the spread of both densities; null with no feed. */
function structureRatio(parts: MixPart[]): Spread | null {
  const volumes = { structure: { typical: 0, low: 0, high: 0 }, feed: { typical: 0, low: 0, high: 0 } };
  for (const part of parts) {
    const ingredient = ingredientFor(part.material, part.own ?? null);
    if (ingredient?.role !== 'structure' && ingredient?.role !== 'feed') continue;
    const volume = volumes[ingredient.role];
    const litres = (bulk: number) => part.litres ?? (part.kg / bulk) * 1000;
    volume.typical += litres(ingredient.bulkKgPerM3.typical);
    volume.low += litres(ingredient.bulkKgPerM3.high);
    volume.high += litres(ingredient.bulkKgPerM3.low);
  }
  if (volumes.feed.typical === 0) return null;
  return propagate([volumes.structure, volumes.feed], ([coarse, feed]) => coarse! / feed!);
}

const reachesPast = (before: Mix, { limits }: CorrectionInput): boolean =>
  before.moisturePct !== null &&
  before.moisturePct.low <= limits.moisturePct.high &&
  before.moisturePct.high > limits.moisturePct.never;

/** The limit that alone asks for the most containers (in parts, so that two near ones are told apart). */
function limitingOf(lines: LimitLine<LimitCode>[], additions: Addition[]): LimitCode | null {
  let most = 0;
  let limiting: LimitCode | null = null;
  for (const line of lines) {
    if (
      keepsAll(
        [line],
        additions.map(() => 0),
      )
    )
      continue;
    const alone = fewest([line], kgs(additions), stocks(additions), false);
    const total = alone ? alone.total : Number.POSITIVE_INFINITY;
    if (total > most) {
      most = total;
      limiting = line.code;
    }
  }
  return limiting;
}

function blockedBy(
  linesFor: LinesFor,
  additions: Addition[],
  keep: Keep,
  drier: (additions: Addition[]) => number[] | null,
) {
  const lines = linesFor(additions, true).filter(keep);
  const without = (...gone: LimitCode[]): boolean =>
    fewest(
      lines.filter((line) => !gone.includes(line.code)),
      kgs(additions),
      gone.includes('stock') ? additions.map(() => Number.POSITIVE_INFINITY) : stocks(additions),
    ) !== null;
  const codes = new Set<LimitCode>(lines.map((line) => line.code));
  if (additions.some((one) => one.stock !== null)) codes.add('stock');
  const order: LimitCode[] = [
    'stock',
    'room',
    'cap',
    'structure',
    'recipe',
    'moisture-high',
    'moisture-low',
    'cn-low',
    'cn-high',
  ];
  const best = nearest(
    lines.filter((line) => HARD.includes(line.code)),
    lines.filter((line) => !HARD.includes(line.code)).map((line) => ({ line, weight: WEIGHT[line.code] })),
    kgs(additions),
    stocks(additions),
  );
  const endless = additions.map((one) => ({ ...one, stock: null }));
  const there = order.filter((code) => codes.has(code));
  const alone = there.filter((code) => without(code) || (code === 'stock' && drier(endless) !== null));
  // What is too little here stands in the way, before what is asked for. Stock and room can both be too small.
  const scarce = there.filter((code) => HARD.includes(code));
  const two = scarce.some((code) => alone.includes(code))
    ? undefined
    : scarce
        .flatMap((one, at) => scarce.slice(at + 1).map((other) => [one, other]))
        .find((pair) => without(...pair));
  const unkept = order.filter((code) => lines.some((line) => line.code === code && !keepsAll([line], best)));
  const limits = two ?? (alone.length > 0 ? alone : unkept);
  const wouldSolve = WOULD_SOLVE.find((material) => {
    const here = additions.filter((one) => one.material === material);
    // Of what is here without end, more of the same cannot be what is missing.
    if (here.some((one) => one.stock === null)) return false;
    const one = here[0] ? { ...here[0], stock: null } : oneBarrow(material);
    const more: Addition[] = [...additions.filter((each) => each !== here[0]), one];
    return (
      fewest(linesFor(more, true).filter(keep), kgs(more), stocks(more)) !== null || drier(more) !== null
    );
  });
  return {
    limits,
    together: two !== undefined || (limits.length > 1 && !HARD.includes(limits[0]!)),
    best: toAdded(additions, best),
    wouldSolve: wouldSolve ?? null,
  };
}

/** A barrow's worth, to try whether a material would help; water by the 10 L. */
function oneBarrow(material: string): Addition {
  const litres = material === 'water' ? 10 : 85;
  const kg = (litres * INGREDIENTS[material]!.bulkKgPerM3.typical) / 1000;
  return { material, container: 'barrow', kg, litres, stock: null };
}

function toAdded(additions: Addition[], counts: number[]): Added[] {
  return additions.flatMap(({ material, container, kg, litres }, index) => {
    const count = counts[index] ?? 0;
    return count > 0 ? [{ material, container, count, kg: kg * count, litres: litres * count }] : [];
  });
}

/** The mix once these are in. A moisture test of what was there before is carried through as its moisture. */
function withAdded(
  parts: MixPart[],
  additions: Addition[],
  add: Added[],
  before: Mix,
  moistureByTest: number | null,
): Mix {
  const added: MixPart[] = add.map((one) => {
    const from = additions.find((a) => a.material === one.material && a.container === one.container);
    return { material: one.material, kg: one.kg, litres: one.litres, own: from?.own ?? null };
  });
  const after = mixOf([...parts, ...added]);
  if (moistureByTest === null || before.test?.moisturePct === undefined || after.moisturePct === null)
    return after;
  const blank = mixOf(added);
  const addedKg = blank.kg;
  const carry = (old: number, fresh: number) => (old * before.kg + fresh * addedKg) / (before.kg + addedKg);
  const old = before.test.moisturePct;
  const fresh = blank.moisturePct ?? { typical: 0, low: 0, high: 0 };
  return {
    ...after,
    moisturePct: {
      typical: carry(old.typical, fresh.typical),
      low: carry(old.low, fresh.low),
      high: carry(old.high, fresh.high),
    },
  };
}

function whyOf(input: CorrectionInput, before: Mix, limiting: LimitCode | null): MixWhy {
  const { limits, additions } = input;
  return {
    formula: limits.recipe ? 'correction-by-recipe' : 'correction-fewest-containers',
    figures: [
      ...before.why.figures,
      { name: 'moisture low', value: limits.moisturePct.low, unit: '%', from: 'published' },
      { name: 'moisture high', value: limits.moisturePct.high, unit: '%', from: 'published' },
      { name: 'C:N low', value: limits.cnLow, unit: null, from: 'published' },
      { name: 'coarse to feed', value: limits.structurePerFeed, unit: 'L/L', from: 'memory' },
      ...additions.map((one) => ({
        name: `${one.container} of ${one.material}`,
        value: one.kg,
        unit: 'kg',
        from: 'derived' as const,
      })),
    ],
    sources: [...before.why.sources, 'common practice, from memory: coarse material by volume'],
    assumed: [...before.why.assumed, ...(limiting ? [`limiting:${limiting}`] : [])],
  };
}
