import { dangerBand, hottestOf } from '../heat/danger-bands.ts';
import type { Batch } from '../picture/types.ts';
import { type Coded, coded, type DutyContext, type DutyRule } from './duty.ts';
import { isReadable, lastOf, liveBatches } from './live.ts';

/**
 * Why nobody may go near a pile, open it or turn it; null where nothing speaks against it. Smoke that nobody gave
 * a place keeps people from every pile.
 */
export function keptAway(batch: Batch, context: DutyContext): Coded<'smoke' | 'too-hot'> | null {
  const smoke = context.picture.problems.find(
    ({ topic, place }) => topic === 'smoke' && (place === null || place === batch.name),
  );
  if (smoke) return coded('smoke', { entry: { entry: smoke.entry } });
  const reading = lastOf(batch.readings, context);
  if (!reading) return null;
  const celsius = hottestOf(reading);
  return isReadable(celsius) && dangerBand(celsius).doNotOpen
    ? coded('too-hot', { celsius: { celsius } })
    : null;
}

/** So hot, or smoking: nobody opens or turns it. Nothing here asks anybody to go near. */
export const keepAway: DutyRule = {
  name: 'keep-away',
  find: (context) =>
    liveBatches(context).flatMap((batch) => {
      const why = keptAway(batch, context);
      if (!why) return [];
      return [
        {
          key: `keep-away:${batch.name}`,
          kind: 'keep-away' as const,
          place: batch.name,
          args: { place: { place: batch.name } },
          why,
          by: context.localDate,
          risk: 5 as const,
          log: null,
        },
      ];
    }),
};

/** Piles that somebody can be asked to do something at. */
export const safeBatches = (context: DutyContext): Batch[] =>
  liveBatches(context).filter((batch) => keptAway(batch, context) === null);
