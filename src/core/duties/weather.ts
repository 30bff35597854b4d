import { addDays } from '../calendar.ts';
import type { Picture } from '../picture/types.ts';
import type { Coded, DutyContext } from './duty.ts';

type Weather = Picture['weather'][number];

/** A forecast older than this says nothing any more. @source common practice, no source */
const FORECAST_DAYS = 7;

/** The forecast of something for the dates from today on, the nearest first; null where nobody expects it. */
export function expected(
  { picture, localDate }: DutyContext,
  what: readonly string[],
  within: number,
): Weather | null {
  const last = addDays(localDate, within);
  return (
    picture.weather
      .filter(
        (line) =>
          !line.observed &&
          what.includes(line.expects) &&
          line.for >= localDate &&
          line.for <= last &&
          line.localDate >= addDays(localDate, -FORECAST_DAYS),
      )
      .sort((a, b) => (a.for < b.for ? -1 : a.for > b.for ? 1 : a.entry - b.entry))[0] ?? null
  );
}

/** Why nobody should turn a pile today: it is frozen, or the wind carries the smell; null where nothing speaks against it. */
export function noTurning(context: DutyContext): Coded<'frozen' | 'windy'> | null {
  const { picture, localDate } = context;
  const air = picture.ambient.findLast((reading) => reading.localDate >= addDays(localDate, -1));
  if (air && air.celsius < 0) return { code: 'frozen', args: { celsius: { celsius: air.celsius } } };
  const frost = expected(context, ['frost'], 0) ?? seen(context, 'frost');
  // A warmer reading of the day is better than a forecast of the night.
  if (frost && !(air && air.celsius > 2)) return { code: 'frozen', args: { date: { date: frost.for } } };
  const freezing = picture.problems.find(({ topic }) => topic === 'freezing');
  if (freezing) return { code: 'frozen', args: { entry: { entry: freezing.entry } } };
  const wind = expected(context, ['wind'], 0) ?? seen(context, 'wind');
  return wind ? { code: 'windy', args: { date: { date: wind.for } } } : null;
}

const seen = ({ picture, localDate }: DutyContext, what: string): Weather | null =>
  picture.weather.findLast((line) => line.observed && line.expects === what && line.for === localDate) ??
  null;
