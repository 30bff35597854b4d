import type { Batch } from '../picture/types.ts';
import { coded, type DutyContext, type DutyRule, type Found } from './duty.ts';
import { safeBatches } from './keep-away.ts';
import { lastOf } from './live.ts';
import { expected } from './weather.ts';

/** Rain is looked for today and tomorrow. @source common practice, no source */
const RAIN_DAYS = 1;

/** Whether something lies on a batch now: a turn takes off what was there, and so does `cover off`. */
export function isCovered(batch: Batch, { at }: Pick<DutyContext, 'at'>): boolean {
  const turned = batch.turns.findLast((turn) => turn.at <= at);
  const on = new Set<string>();
  for (const cover of batch.covers) {
    if (cover.at > at) continue;
    // One message says `turned and covered`: two lines of one moment, the turn first.
    if (turned && (cover.at < turned.at || (cover.at === turned.at && cover.entry < turned.entry))) continue;
    if (cover.on) on.add(cover.layer);
    else if (cover.layer === 'unspecified') on.clear();
    else on.delete(cover.layer);
  }
  return on.size > 0;
}

/** Covered before rain, and again after a turn where it was covered before. */
export const coverPile: DutyRule = {
  name: 'cover-pile',
  find: (context) =>
    safeBatches(context).flatMap((batch): Found[] => {
      if (isCovered(batch, context)) return [];
      const rain = expected(context, ['rain', 'snow'], RAIN_DAYS);
      if (rain) {
        const why = coded(rain.expects === 'snow' ? 'snow-expected' : 'rain-expected', {
          date: { date: rain.for },
        });
        return [duty(batch, rain.for, 3, why)];
      }
      const turned = lastOf(batch.turns, context);
      const wasCovered = turned && batch.covers.some((cover) => cover.on && cover.at <= turned.at);
      if (!turned || !wasCovered || takenOff(batch, turned.at, context)) return [];
      return [
        duty(batch, turned.localDate, 2, { code: 'turned-open', args: { date: { date: turned.localDate } } }),
      ];
    }),
};

/** A cover that somebody took off on purpose since the turn is not asked for again. */
const takenOff = (batch: Batch, since: string, { at }: DutyContext): boolean =>
  batch.covers.some((cover) => !cover.on && cover.at > since && cover.at <= at);

const duty = (batch: Batch, by: string, risk: 2 | 3, why: Found['why']): Found => ({
  key: `cover:${batch.name}`,
  kind: 'cover-pile',
  place: batch.name,
  args: { place: { place: batch.name } },
  why,
  by,
  risk,
  log: { code: 'covered', args: { place: { place: batch.name } } },
});
