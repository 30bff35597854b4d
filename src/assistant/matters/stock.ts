import { dailyUseKg, type Picture, type StockNow, settingAt, stockNow } from '#core';
import type { BookRecordOf, Entry } from '#records';
import type { Draft } from '../draft.ts';
import { type Line, say } from '../say.ts';

/** After a count or a delivery: how long it lasts at the present use. */
export function stockMatters(draft: Draft, written: readonly Entry[]): Line[] {
  const materials = written
    .filter(({ record }) => record.kind === 'level' || record.kind === 'delivery')
    .map(({ record }) => (record as BookRecordOf<'level' | 'delivery'>).material)
    .filter((material) => material != null);
  return [...new Set(materials)].flatMap((material) => stockLines(draft, material, false));
}

/** What is left of a material, and for how many days. */
export function stockLines(draft: Draft, material: string, asked: boolean): Line[] {
  const now = stockOf(draft.picture(), material, draft.today);
  if (!now) return asked ? [say('stock-unknown', { material: { material } })] : [];
  const what = {
    material: { material },
    litres: { litres: Math.round(now.litres) },
    kg: { kg: now.kg, digits: 0 },
  };
  if (now.short) return [say('stock-short', what)];
  if (now.litres <= 0) return [say('stock-none', what)];
  const lines: Line[] = asked ? [say('stock-left', what)] : [];
  draft.why.push(say('why-stock-formula'), say('why-stock', { kg: { kg: now.usePerDayKg ?? 0, digits: 1 } }));
  const { daysLeft } = now;
  if (!daysLeft) {
    lines.push(say('stock-no-use', what));
    return lines;
  }
  lines.push(
    say('stock-days', {
      ...what,
      days: { count: Math.floor(daysLeft.typical) },
      low: { number: Math.floor(daysLeft.low), digits: 0 },
      high: { number: Number.isFinite(daysLeft.high) ? Math.ceil(daysLeft.high) : 0, digits: 0 },
      hasHigh: { text: Number.isFinite(daysLeft.high) ? 'yes' : 'no' },
      order: { text: daysLeft.typical < leadDays(draft.picture(), draft.today) ? 'yes' : 'no' },
    }),
  );
  return lines;
}

const stockOf = (picture: Picture, material: string, localDate: string): StockNow | null => {
  const stock = Object.hasOwn(picture.stock, material) ? picture.stock[material] : undefined;
  return stock ? stockNow(stock, dailyUseKg(material, { picture, localDate })) : null;
};

/** Stock for fewer days than this is to be ordered now. @source common practice, no source */
const LOW_DAYS = 5;

const leadDays = (picture: Picture, today: string): number => {
  const days = settingAt(picture, 'order-days', today);
  return typeof days === 'number' ? days : LOW_DAYS;
};
