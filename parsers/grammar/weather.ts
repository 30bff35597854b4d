// Weather that is coming or has come.
import type { FieldRecord } from '#records';
import { bare, type Reader, take } from '../reading.ts';
import { sense } from '../tokens.ts';

/** Weather that is coming or has come. Dates that lie ahead are read for this kind alone. */
export const weather: Reader = {
  rule: 'weather',
  on: ['weather'],
  read(tokens, scope) {
    const slots = take(tokens, SLOTS_4);
    if (!slots || scope.asked) return null;
    const kinds = [...new Set(slots.get('weather').map((tok) => sense(tok, 'weather')!))];
    if (kinds.length === 0 || kinds.length > 2) return null;
    const depths = slots.nums.filter((tok) => ['mm', 'cm', 'in'].includes(tok.n!.unit ?? ''));
    if (slots.nums.length > depths.length || depths.length > 1) return null;
    const fell = depths[0]?.n;
    const mm = fell ? fell.value * (fell.unit === 'mm' ? 1 : fell.unit === 'cm' ? 10 : 25.4) : undefined;
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
