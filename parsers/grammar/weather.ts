// Weather that is coming or has come.
import type { FieldRecord } from '#records';
import { bare, type Reader, take } from '../reading.ts';
import { sense } from '../tokens.ts';

/** Weather that is coming or has come. Dates that lie ahead are read for this kind alone. */
export const weather: Reader = {
  rule: 'weather',
  on: ['weather', 'observed'],
  read(tokens, scope) {
    const slots = take(tokens, SLOTS_4);
    if (!slots || scope.asked) return null;
    // `snow friday and frost sunday`: each with its day, so each is read by itself.
    if (slots.dates.length > 1 && slots.get('weather').length > 1) return null;
    // `snow tomorrow and frost | friday`: the day behind belongs to the last one named.
    const lastWeather = slots.all.findLastIndex((one) => one.cls === 'weather');
    const day = tokens.findIndex((tok) => tok.k === 'd');
    const dayFirst = day >= 0 && tokens.indexOf(slots.all[lastWeather]?.tok ?? tokens[0]!) > day;
    if (dayFirst && scope.nextTok?.k === 'd') return null;
    const kinds = [...new Set(slots.get('weather').map((tok) => sense(tok, 'weather')!))];
    const depths = slots.nums.filter((tok) => ['mm', 'cm', 'in'].includes(tok.n!.unit ?? ''));
    if (slots.nums.length > depths.length || depths.length > 1) return null;
    const fell = depths[0]?.n;
    const mm = fell ? fell.value * (fell.unit === 'mm' ? 1 : fell.unit === 'cm' ? 10 : 25.4) : undefined;
    // `22 mm fell yesterday`: what a gauge measures in mm is rain.
    if (kinds.length === 0 && fell?.unit === 'mm' && slots.get('observed').length > 0) kinds.push('rain');
    if (kinds.length === 0 || kinds.length > 2) return null;
    const ahead =
      slots.get('forecast').length > 0 ||
      slots.dates.some((tok) => (tok.date!.ahead ?? '').slice(0, 10) > scope.context.nowLocal.slice(0, 10));
    const past =
      slots.get('weather').some((tok) => sense(tok, 'fell') !== undefined) ||
      slots.get('observed').length > 0 ||
      (mm !== undefined && !ahead);
    if (!past && !ahead && slots.dates.length === 0) return null;
    if (
      !past &&
      !ahead &&
      slots.dates.length > 0 &&
      slots.dates.every((tok) => (tok.date!.ahead ?? '').slice(0, 10) < scope.context.nowLocal.slice(0, 10))
    )
      return null;
    if (past && !ahead && mm === undefined && slots.dates.length === 0 && slots.get('observed').length === 0)
      return null;
    // `frost tonight, 12 mm of rain yesterday`
    if (kinds.length > 1 && past && mm !== undefined) return null;
    return kinds.map((expects) => ({
      record: bare({
        kind: 'weather' as const,
        expects: expects as 'rain',
        observed: past && !ahead ? true : undefined,
        mm: past && !ahead ? mm : undefined,
      }) as FieldRecord,
    }));
  },
};

const SLOTS_4 = [
  'weather',
  'forecast',
  'observed',
  'n',
  'strength',
  'dateword',
  'be',
  'add',
  'rather',
  'fill!',
  'intent',
  'approx',
  'point',
  'ambientword',
];
