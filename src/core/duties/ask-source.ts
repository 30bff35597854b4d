import { addDays, daysBetween } from '../calendar.ts';
import { dayOf, own } from '../picture/change.ts';
import type { DutyContext, DutyRule, Found } from './duty.ts';

/** A source is usual if it came on at least so many of the last so many days. @source common practice, no source */
const USUAL_TIMES = 4;
const LOOK_BACK_DAYS = 42;
/** After so long it is no longer missing but gone. */
const GIVE_UP_DAYS = 28;

/** A source that usually comes and has not: somebody may have forgotten to log it, or to bring it. */
export const askSource: DutyRule = {
  name: 'ask-source',
  find: (context) =>
    Object.entries(context.picture.lastFromSource).flatMap(([source, last]): Found[] => {
      const every = usualGap(source, last, context);
      if (every === null) return [];
      const by = addDays(last, Math.max(every * 2, every + 2) + closedDays(last, context));
      if (by > context.localDate || daysBetween(last, context.localDate) > GIVE_UP_DAYS) return [];
      return [
        {
          key: `source:${source}`,
          kind: 'ask-source',
          place: null,
          args: { source: { source } },
          why: { code: 'not-come', args: { date: { date: last }, days: { count: every } } },
          by,
          risk: 1,
          log: { code: 'load-from', args: { source: { source }, kg: { kg: 61.5 } } },
          canWait: true,
          doneHoldsDays: 3,
        },
      ];
    }),
};

/** The middle one of the gaps between the days on which a source came, up to the last; null where it is not usual. */
function usualGap(source: string, last: string, { picture }: DutyContext): number | null {
  const came: string[] = [];
  for (let date = addDays(last, -LOOK_BACK_DAYS); date <= last; date = addDays(date, 1)) {
    const day = dayOf(picture, date);
    if (day && (own(day.loadsBySource, source) ?? 0) > 0) came.push(date);
  }
  if (came.length < USUAL_TIMES) return null;
  const gaps = came.slice(1).map((date, i) => daysBetween(came[i]!, date));
  return gaps.sort((a, b) => a - b)[Math.floor(gaps.length / 2)]!;
}

/** Days since then on which the site was closed: nobody could have brought anything. */
function closedDays(since: string, { picture, localDate }: DutyContext): number {
  let days = 0;
  for (let date = addDays(since, 1); date <= localDate; date = addDays(date, 1)) {
    if (picture.closures.some(({ from, to }) => from <= date && date <= to)) days += 1;
  }
  return days;
}
