import { hottestOf } from '../heat/danger-bands.ts';
import { isBlank } from '../picture/places.ts';
import { settingAt } from '../picture/setting-at.ts';
import type { Batch, Moment } from '../picture/types.ts';
import type { DutyContext } from './duty.ts';

/** Batches that are on the site and have something in them, in the order of their places. */
export const liveBatches = ({ picture }: DutyContext): Batch[] =>
  Object.values(picture.places)
    .map((id) => picture.batches[id])
    .filter((batch): batch is Batch => batch !== undefined && batch.state !== 'gone' && !isBlank(batch));

/** The newest of a list that had happened by now. */
export const lastOf = <T extends Moment>(moments: readonly T[], { at }: DutyContext): T | null =>
  moments.findLast((moment) => moment.at <= at) ?? null;

/** When a batch last got material that starts it anew, or was closed, or began: its youth counts from there. */
export function youngSince(batch: Batch): Moment | null {
  const added = batch.joinings.findLast(({ what }) => what === 'fresh' || what === 'joined') ?? null;
  return [added, batch.closedAt, batch.startedAt]
    .filter((moment) => moment !== null)
    .reduce<Moment | null>((latest, moment) => (latest && latest.at >= moment.at ? latest : moment), null);
}

/** The hottest point of the last reading; null without one. */
export function lastHottest(batch: Batch, context: DutyContext): number | null {
  const reading = lastOf(batch.readings, context);
  return reading && hottestOf(reading);
}

/** A number of days that the site has set for something, else the usual one. */
export function everyDays({ picture, localDate }: DutyContext, name: string, usual: number): number {
  const set = settingAt(picture, `every:${name}`, localDate);
  return typeof set === 'number' && set > 0 ? set : usual;
}

/** What the bands of heat are asked of: an imported book may hold anything, and a list of jobs must not fail on it. */
export const isReadable = (celsius: number): boolean => celsius >= -50 && celsius <= 400;
