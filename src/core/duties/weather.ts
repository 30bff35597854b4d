import { addDays } from '../calendar.ts';
import { settingAt } from '../picture/setting-at.ts';
import type { WeatherLine } from '../picture/types.ts';
import type { Coded, DutyContext } from './duty.ts';

type Weather = WeatherLine;

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
  if (frost && !(air && !air.standIn && air.celsius > 2))
    return { code: 'frozen', args: { date: { date: frost.for } } };
  const freezing = picture.problems.find(({ topic }) => topic === 'freezing');
  if (freezing) return { code: 'frozen', args: { entry: { entry: freezing.entry } } };
  return windy(context);
}

/** The eight points in the order of the compass, so that two of them can be told apart by degrees. */
const POINTS = ['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west'];
/** Wind spreads: within this of the straight line it still blows onto somebody. @source common practice, no source */
const SPREAD_DEGREES = 45;

/**
 * A wind that blows towards the wards, or towards whoever is near: with its direction and theirs known it is held
 * against them alone; with either unknown, people who are near are taken to be downwind.
 */
function windy(context: DutyContext): Coded<'windy'> | null {
  const { picture, localDate } = context;
  const wind = latestWind(context);
  if (!wind) return null;
  const wards = settingAt(picture, 'wards', localDate);
  const lie = typeof wards === 'string' ? POINTS.indexOf(wards) : -1;
  const from = POINTS.indexOf(wind.windFrom ?? '');
  const known = wind.windTo === 'wards' || (lie >= 0 && from >= 0);
  if (!known && picture.base.peopleNearby === 'none' && lie < 0) return null;
  if (wind.windTo !== 'wards' && known && degreesApart((from + 4) % 8, lie) > SPREAD_DEGREES) return null;
  return {
    code: 'windy',
    args: {
      date: { date: wind.for },
      blows: { text: known ? 'towards' : 'unknown' },
      from: { term: wind.windFrom ?? 'unknown', of: 'compass' },
      near: { term: picture.base.peopleNearby ?? 'people', of: 'near' },
    },
  };
}

const degreesApart = (a: number, b: number): number => {
  const steps = Math.abs(a - b);
  return Math.min(steps, 8 - steps) * 45;
};

/** Of several winds of the day the one told last: it knows more. */
function latestWind(context: DutyContext): Weather | null {
  const { picture, localDate } = context;
  const winds = picture.weather.filter(
    (line) =>
      line.expects === 'wind' &&
      line.for === localDate &&
      (line.observed || line.localDate >= addDays(localDate, -FORECAST_DAYS)),
  );
  return winds.reduce<Weather | null>((last, line) => (last && last.entry > line.entry ? last : line), null);
}

const seen = ({ picture, localDate }: DutyContext, what: string): Weather | null =>
  picture.weather.findLast((line) => line.observed && line.expects === what && line.for === localDate) ??
  null;
