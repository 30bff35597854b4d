/** A figure with the range it likely lies in; `low <= typical <= high`. */
export type Spread = { typical: number; low: number; high: number };

/**
 * A figure known exactly, as a spread of no width.
 * @example exactly(35) // { typical: 35, low: 35, high: 35 }
 */
export const exactly = (value: number): Spread => ({ typical: value, low: value, high: value });

/**
 * A typical value with its range; throws a RangeError where they are out of order.
 * @example spread(74, 65, 82) // { typical: 74, low: 65, high: 82 }
 */
export function spread(typical: number, low: number, high: number): Spread {
  if (!(low <= typical && typical <= high))
    throw new RangeError(`typical ${typical} must lie from ${low} to ${high}`);
  return { typical, low, high };
}

/**
 * Carries the spread of independent inputs through a sum, first order and without chance: each input goes
 * to its low and to its high end while the others stay typical, and the shifts down and up are added as
 * squares. Adding the shifts plainly (interval sums) would suppose that every default is wrong at once and
 * in the same direction, which makes every range too wide to be of use; drawing at random would make two
 * replies to the same entries differ.
 * @source JCGM 100:2008, Guide to the expression of uncertainty in measurement, 5.1.2 (independent inputs
 * add as squares) and 5.1.3 note 2 (finite differences instead of derivatives); from memory.
 * @example propagate([spread(10, 7, 13), spread(20, 16, 24)], ([a, b]) => a! + b!) // { typical: 30, low: 25, high: 35 }
 */
export function propagate(inputs: Spread[], sum: (values: number[]) => number): Spread {
  const typicals = inputs.map((input) => input.typical);
  const typical = sum(typicals);
  let down = 0;
  let up = 0;
  inputs.forEach((input, index) => {
    if (input.low === input.high) return;
    const at = (value: number) => sum(typicals.map((other, place) => (place === index ? value : other)));
    const ends = [at(input.low) - typical, at(input.high) - typical];
    down += Math.min(0, ...ends) ** 2;
    up += Math.max(0, ...ends) ** 2;
  });
  return { typical, low: typical - Math.sqrt(down), high: typical + Math.sqrt(up) };
}

/**
 * The part of a spread that can be: each of its three values drawn inside the bounds.
 * @example clampSpread({ typical: 98, low: 90, high: 104 }, 0, 100) // { typical: 98, low: 90, high: 100 }
 */
export function clampSpread(value: Spread, low: number, high: number): Spread {
  const inside = (x: number) => Math.min(high, Math.max(low, x));
  return { typical: inside(value.typical), low: inside(value.low), high: inside(value.high) };
}
