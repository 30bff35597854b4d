import type { Moment, Stock } from '../picture/types.ts';
import { ingredientFor, type OwnFigures } from './ingredients.ts';
import type { Spread } from './spread.ts';

/** One thing that happened to a stock; an amount is in kg, in litres, or both. */
export type StockChange =
  | { kind: 'delivery' | 'use'; kg: number | null; litres: number | null }
  | { kind: 'level'; kg: number | null; litres: number | null; moment: Moment };

/** A stock of which nothing is known yet. */
export const NO_STOCK: Readonly<Stock> = { litres: null, kg: null, since: null, usedKg: 0 };

/**
 * A stock after a delivery, a use, or a count of what is there. A count (`chips down to 2 m3`) stands and the
 * use begins anew; what is used before anything was delivered or counted is only added to the use. The
 * amount may fall below zero: that says that the book does not know all (see `stockNow`). Kilograms and
 * litres are turned into each other by the material's density.
 * @source deliveries less use, by definition.
 * @example stockAfter(NO_STOCK, { kind: 'delivery', kg: null, litres: 2000 }, 290).kg // 580
 */
export function stockAfter(stock: Stock, change: StockChange, bulkKgPerM3: number): Stock {
  const kg = change.kg ?? (change.litres === null ? null : (change.litres * bulkKgPerM3) / 1000);
  const litres = change.litres ?? (change.kg === null ? null : (change.kg / bulkKgPerM3) * 1000);
  if (kg === null || litres === null) return stock;
  if (change.kind === 'level') return { kg, litres, since: change.moment, usedKg: 0 };
  const sign = change.kind === 'delivery' ? 1 : -1;
  const usedKg = stock.usedKg + (change.kind === 'use' ? kg : 0);
  if (stock.kg === null && change.kind === 'use') return { ...stock, usedKg };
  return {
    kg: (stock.kg ?? 0) + sign * kg,
    litres: (stock.litres ?? 0) + sign * litres,
    since: stock.since,
    usedKg,
  };
}

/** Density to count a stock with; null for a material that nobody knows. @example stockDensity('wood-chips') // 290 */
export const stockDensity = (material: string, own: OwnFigures | null = null): number | null =>
  ingredientFor(material, own)?.bulkKgPerM3.typical ?? null;

/** What is left, and for how long. `short`: more was used than the book knows of, so it wants counting. */
export type StockNow = {
  kg: number;
  litres: number;
  short: boolean;
  usePerDayKg: number | null;
  daysLeft: Spread | null;
};

/**
 * What a stock holds and how many days it lasts at the use of the last days. `dailyUseKg` is one figure a
 * day, days without use as 0. The range is that of the mean use, ± 2 standard errors. Null where nothing is known.
 * @source days left = stock ÷ mean use a day; standard error of a mean.
 * @example stockNow({ kg: 580, litres: 2000, since: null, usedKg: 0 }, [50, 30, 40, 40])!.daysLeft!.typical // 14.5
 */
export function stockNow(stock: Stock, dailyUseKg: readonly number[]): StockNow | null {
  if (stock.kg === null || stock.litres === null) return null;
  const kg = Math.max(0, stock.kg);
  const litres = Math.max(0, stock.litres);
  const n = dailyUseKg.length;
  const mean = n > 0 ? dailyUseKg.reduce((sum, use) => sum + use, 0) / n : 0;
  const base = { kg, litres, short: stock.kg < 0 };
  if (mean <= 0) return { ...base, usePerDayKg: n > 0 ? 0 : null, daysLeft: null };
  const squares = dailyUseKg.reduce((sum, use) => sum + (use - mean) ** 2, 0);
  const error = n > 1 ? 2 * Math.sqrt(squares / (n - 1) / n) : mean;
  return {
    ...base,
    usePerDayKg: mean,
    daysLeft: {
      typical: kg / mean,
      low: kg / (mean + error),
      high: mean > error ? kg / (mean - error) : Number.POSITIVE_INFINITY,
    },
  };
}
