import { addDays, daysBetween } from '../calendar.ts';
import { stockNow } from '../mix/stock.ts';
import { firstDay } from '../period.ts';
import { dayOf } from '../picture/change.ts';
import type { DutyContext, DutyRule, Found } from './duty.ts';

/** Use is looked at over so many days; stock for fewer than so many is low. @source common practice, no source */
const USE_DAYS = 14;
const LOW_DAYS = 5;

/** Bulking material that will not last, or of which more was used than the book knows of. */
export const stock: DutyRule = {
  name: 'stock',
  find: (context) =>
    Object.entries(context.picture.stock).flatMap(([material, each]): Found[] => {
      const now = stockNow(each, dailyUseKg(material, context));
      if (!now) return [];
      const args = { material: { material } };
      if (now.short) {
        return [
          {
            key: `stock:${material}`,
            kind: 'count-stock',
            place: null,
            args,
            why: { code: 'used-more-than-known', args: { kg: { kg: each.usedKg } } },
            by: context.localDate,
            risk: 1,
            log: { code: 'level', args: { material: { material }, litres: { litres: 2000 } } },
            canWait: true,
          },
        ];
      }
      const days = now.kg === 0 ? 0 : (now.daysLeft?.typical ?? null);
      if (days === null || days >= LOW_DAYS) return [];
      return [
        {
          key: `stock:${material}`,
          kind: 'order-stock',
          place: null,
          args,
          why: {
            code: 'days-left',
            args: { days: { count: Math.floor(days) }, litres: { litres: now.litres } },
          },
          by: addDays(context.localDate, Math.floor(days)),
          risk: 2,
          log: { code: 'delivery', args: { material: { material }, litres: { litres: 2000 } } },
          canWait: true,
        },
      ];
    }),
};

/** Kilograms used on each of the last days that the book knows, days without use as 0, measured and estimated. */
export function dailyUseKg(
  material: string,
  { picture, localDate }: Pick<DutyContext, 'picture' | 'localDate'>,
): number[] {
  const first = firstDay(picture) ?? localDate;
  const days = Math.min(USE_DAYS, Math.max(1, daysBetween(first, localDate) + 1));
  return Array.from({ length: days }, (_, i) => {
    const day = dayOf(picture, addDays(localDate, -i));
    const sources = day && Object.hasOwn(day.intake, material) ? Object.values(day.intake[material]!) : [];
    return sources.reduce((sum, { kg, estimatedKg }) => sum + kg + estimatedKg, 0);
  });
}
