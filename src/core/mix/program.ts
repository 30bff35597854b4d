import { solve as solveLinear } from 'yalps';

/** One limit, as a line of a linear program: `base` and so much for each container must lie from `min` to `max`. */
export type LimitLine<Code extends string = string> = {
  code: Code;
  base: number;
  each: number[];
  min?: number;
  max?: number;
};

/** Most containers of one kind that a correction may ask for: beyond it the answer is of no use to anybody. */
const MOST_CONTAINERS = 200;
const NEAR = 1e-7;

/**
 * Whether counts keep every line, to a ten-millionth of its own scale.
 * @example keepsAll([{ code: 'wet', base: 30, each: [-9], max: 0 }], [3]) // false
 */
export function keepsAll(lines: LimitLine[], counts: number[]): boolean {
  return lines.every((line) => {
    const value = line.each.reduce((sum, share, index) => sum + share * counts[index]!, line.base);
    const slack = NEAR * Math.max(1, Math.abs(line.base), ...line.each.map(Math.abs));
    return (
      (line.min === undefined || value >= line.min - slack) &&
      (line.max === undefined || value <= line.max + slack)
    );
  });
}

/** Weight that decides between equally many containers: the lighter ones. It never outweighs a container. */
const tieBreak = (kg: number[], index: number): number =>
  1 + (0.001 * kg[index]!) / (Math.max(...kg, 1) * MOST_CONTAINERS);

/**
 * Fewest containers that keep every line (the lightest among equals); null where there are none. `whole`
 * false gives the relaxed answer with parts of containers.
 * @source integer linear program, branch and bound; checked against HiGHS in the tests.
 * @example fewest([{ code: 'wet', base: 30, each: [-9], max: 0 }], [25], [10]) // { counts: [4], total: 4 }
 */
export function fewest(
  lines: LimitLine[],
  kg: number[],
  most: number[],
  whole = true,
): { counts: number[]; total: number } | null {
  if (kg.length === 0) return keepsAll(lines, []) ? { counts: [], total: 0 } : null;
  const constraints = new Map<string, { min?: number; max?: number }>();
  lines.forEach((line, at) => {
    const scale = scaleOf(line);
    constraints.set(`line ${at}`, {
      ...(line.min === undefined ? {} : { min: (line.min - line.base) / scale }),
      ...(line.max === undefined ? {} : { max: (line.max - line.base) / scale }),
    });
  });
  kg.forEach((_, index) => {
    constraints.set(`most ${index}`, { max: Math.min(most[index]!, MOST_CONTAINERS) });
  });
  const variables = new Map(
    kg.map((_, index) => [
      `n${index}`,
      new Map<string, number>([
        ['handled', tieBreak(kg, index)],
        [`most ${index}`, 1],
        ...lines.map((line, at): [string, number] => [`line ${at}`, line.each[index]! / scaleOf(line)]),
      ]),
    ]),
  );
  const solution = solveLinear(
    { direction: 'minimize', objective: 'handled', constraints, variables, integers: whole },
    { includeZeroVariables: true, tolerance: 0, timeout: Number.POSITIVE_INFINITY },
  );
  if (solution.status !== 'optimal') return null;
  const found = new Map(solution.variables);
  const counts = kg.map((_, index) => found.get(`n${index}`) ?? 0);
  const given = whole ? counts.map(Math.round) : counts;
  if (whole && !keepsAll(lines, given)) return null;
  return { counts: given, total: given.reduce((sum, count) => sum + count, 0) };
}

/**
 * The counts that come nearest where no counts keep every line: `firm` lines are kept, each unit by which a
 * `soft` line is missed costs its weight, and a container costs next to nothing.
 * @example nearest([], [{ line: { code: 'wet', base: 30, each: [-9], max: 0 }, weight: 1 }], [25], [2]) // [2]
 */
export function nearest(
  firm: LimitLine[],
  soft: { line: LimitLine; weight: number }[],
  kg: number[],
  most: number[],
): number[] {
  if (kg.length === 0) return [];
  const constraints = new Map<string, { min?: number; max?: number }>();
  const variables = new Map<string, Map<string, number>>();
  kg.forEach((_, index) => {
    constraints.set(`most ${index}`, { max: Math.min(most[index]!, MOST_CONTAINERS) });
    variables.set(
      `n${index}`,
      new Map([
        ['cost', 1e-6 * tieBreak(kg, index)],
        [`most ${index}`, 1],
      ]),
    );
  });
  const put = (line: LimitLine, key: string) => {
    const scale = scaleOf(line);
    constraints.set(key, {
      ...(line.min === undefined ? {} : { min: (line.min - line.base) / scale }),
      ...(line.max === undefined ? {} : { max: (line.max - line.base) / scale }),
    });
    line.each.forEach((share, index) => {
      variables.get(`n${index}`)!.set(key, share / scale);
    });
  };
  firm.forEach((line, at) => {
    put(line, `firm ${at}`);
  });
  soft.forEach(({ line, weight }, at) => {
    put(line, `soft ${at}`);
    variables.set(
      `miss ${at}`,
      new Map([
        ['cost', weight],
        [`soft ${at}`, line.max === undefined ? 1 : -1],
      ]),
    );
  });
  const solution = solveLinear(
    {
      direction: 'minimize',
      objective: 'cost',
      constraints,
      variables,
      integers: kg.map((_, index) => `n${index}`),
    },
    { includeZeroVariables: true, tolerance: 0, timeout: Number.POSITIVE_INFINITY },
  );
  const found = new Map(solution.variables);
  return kg.map((_, index) => Math.round(found.get(`n${index}`) ?? 0));
}

const scaleOf = (line: LimitLine): number => Math.max(Math.abs(line.base), ...line.each.map(Math.abs), 1e-9);
