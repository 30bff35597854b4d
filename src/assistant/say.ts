/**
 * A thing to say: the id of a message in the wording files and its values, each with its own unit.
 * Words, number formats, units and names of things are the wording's; nothing here is a sentence.
 */
export type Say = { id: string; args?: Record<string, Arg> };

/** A value with what it is, so that the wording can write it in the site's units and the reader's language. */
export type Arg =
  /** `bare`: without its unit, beside another that has it; `digits`: decimals in the unit shown, 2 where absent. */
  | { kg: number; bare?: boolean; digits?: number }
  | { litres: number }
  | { celsius: number }
  | { celsiusList: number[]; points?: (string | number)[] | null; upTo?: (number | null)[] | null }
  /** A difference of temperature. */
  | { rise: number }
  | { cm: number }
  | { mm: number }
  | { min: number }
  | { pct: number }
  | { pctRange: [number, number] }
  | { kgPerM3: number }
  | { kgPerM3Range: [number, number] }
  | { number: number; digits?: number }
  | { count: number }
  | { tonnes: number }
  /** A local date: `2026-06-17`, with or without a clock time. */
  | { date: string }
  /** A local date in a picture, where room is short: `17 Jun`; its weekday, `Wed`; its month, `Jun`. */
  | { day: string }
  | { weekday: string }
  | { month: string }
  | { clock: string }
  | { place: string }
  | { material: string }
  /** A container with how many: `3 carts`, `cart 5`. */
  | { container: string; count: number; label?: string | null }
  | { source: string }
  | { entry: number }
  /** A word of the contract that the wording knows: a feel, a topic, a chore, a layer, a unit … */
  | { term: string; of: string }
  /** Where something stands written: titles stay as they are, "from memory" and its like are said in the reader's language. */
  | { cite: string }
  /** Names, joined as the language joins them: `Ana and Marc`. */
  | { names: string[] }
  /** Somebody's own words, passed through as they are. */
  | { text: string }
  /** Another thing to say, put inside this one. */
  | { say: Say };

/** @example say('line-net', { entry: { entry: 41 }, kg: { kg: 48.5 } }) */
export const say = (id: string, args?: Record<string, Arg>): Say => (args ? { id, args } : { id });

/** One line of a reply: a thing to say, or several short parts that stand side by side. */
export type Line = Say | Say[];
