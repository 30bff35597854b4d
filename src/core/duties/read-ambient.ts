import { addDays } from '../calendar.ts';
import { coded, type DutyRule } from './duty.ts';
import { lastOf, liveBatches } from './live.ts';

/** The air is read at least so often while a pile cures: its rise is measured from it. @source common practice, no source */
const AMBIENT_DAYS = 3;
/** Hotter piles tell the same without it. */
const WARM_CELSIUS = 45;

/** A closed pile that has cooled is judged against the air, so the air must be known. */
export const readAmbient: DutyRule = {
  name: 'read-ambient',
  find: (context) => {
    const cooled = liveBatches(context).find((batch) => {
      const reading = lastOf(batch.readings, context);
      return batch.state === 'closed' && reading !== null && Math.max(...reading.celsius) < WARM_CELSIUS;
    });
    if (!cooled) return [];
    const last = lastOf(context.picture.ambient, context);
    const by = last ? addDays(last.localDate, AMBIENT_DAYS) : context.localDate;
    if (by > context.localDate) return [];
    return [
      {
        key: 'read:ambient',
        kind: 'read-ambient' as const,
        place: 'ambient',
        args: { place: { place: cooled.name } },
        why: last
          ? coded('last-read', { date: { date: last.localDate } })
          : coded('rise-unknown', { place: { place: cooled.name } }),
        by,
        risk: 1 as const,
        log: { code: 'reading', args: { place: { place: 'ambient' }, celsius: { celsius: 12 } } },
        canWait: true,
      },
    ];
  },
};
