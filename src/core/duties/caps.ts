import { capsNow } from '../year.ts';
import type { DutyRule } from './duty.ts';

/** From this share of a cap on it is spoken of. @source common practice, no source */
const NEAR = 0.9;

/** What a permit lets in of a week or a month is nearly in, or more than that is. */
export const caps: DutyRule = {
  name: 'caps',
  find: ({ picture, localDate }) =>
    capsNow(picture, localDate)
      .filter(({ kg, capKg }) => kg >= NEAR * capKg)
      .map(({ per, kg, capKg, over, from, to }) => ({
        key: `cap:${per}:${from}`,
        kind: 'mind-cap' as const,
        place: null,
        args: { per: { term: per, of: 'per' } },
        why: {
          code: over ? ('over-cap' as const) : ('near-cap' as const),
          args: { kg: { kg }, cap: { kg: capKg }, date: { date: to } },
        },
        by: localDate,
        risk: over ? (3 as const) : (2 as const),
        log: null,
        canWait: true,
        doneHoldsDays: 31,
      })),
};
