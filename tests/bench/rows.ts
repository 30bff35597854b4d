/** A line of the table: what was measured, on our side and on the other, and how they stand to each other. */
export type Row = { what: string; ours: string; beside: string; ratio: string; aim: string };

export const middle = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!;

export const rate = (perSecond: number, of = ''): string =>
  `${Math.round(perSecond).toLocaleString('en')}${of}/s`;

export const times = (ratio: number): string => ratio.toFixed(2);

/** How long each of two works takes, by turns so that a noisy machine slows both: the middle of the rounds, in ms. */
export async function byTurns(
  rounds: number,
  one: () => unknown,
  other: () => unknown,
): Promise<[number, number]> {
  const took: [number[], number[]] = [[], []];
  await one();
  await other();
  for (let round = 0; round < rounds; round += 1) {
    for (const side of round % 2 === 0 ? ([0, 1] as const) : ([1, 0] as const)) {
      const from = performance.now();
      await (side === 0 ? one : other)();
      took[side].push(performance.now() - from);
    }
  }
  return [middle(took[0]), middle(took[1])];
}
