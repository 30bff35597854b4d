// Jobs of the list: done, taken, handed back, put off.
import { type Reader, type Scope, type Slots, take } from '../reading.ts';
import { sense, type Tok } from '../tokens.ts';
import { ask, beside } from './asking.ts';

/** Words that speak of a list of jobs when a number stands behind them. */
const PLAINLY =
  /^(?:done|claim|release|postpone|i'?ll (?:do|take)|fait|je prends|je rends|reporte|hecho|yo (?:tomo|hago)|devuelvo|aplaza)$/;

/** `can't do 3 today, someone else take it` */
const handsOver = (tokens: readonly Tok[]) =>
  tokens.filter((tok) => tok.senses.some((one) => one.cls === 'req' && one.val === 'release')).length > 1;

/** `can't do 3 today`: another day, then. */
const isToday = (slots: Slots, scope: Scope) =>
  slots.dates[0]!.date!.when?.slice(0, 10) === scope.context.nowLocal.slice(0, 10);

/** Jobs of the list done, taken, handed back or put off: `done 2`, `I'll take 3`, `postpone sweep`. */
export const jobs: Reader = {
  rule: 'request jobs',
  on: ['req'],
  read(tokens, scope) {
    for (const name of ['claim', 'release', 'postpone', 'done'] as const) {
      const rest = beside(tokens, name);
      if (!rest) continue;
      const slots = take(rest, SLOTS_4);
      if (!slots) continue;
      const items: (string | number)[] = [];
      let broken = false;
      for (const { cls, tok } of slots.all) {
        if (tok.k === 'n') {
          const n = tok.n!;
          if (n.unit !== null || !Number.isInteger(n.value) || n.value < 1 || n.value > 40 || n.fraction)
            broken = true;
          else if (n.to !== undefined && n.to > n.value && n.to - n.value < 20)
            for (let k = n.value; k <= n.to; k++) items.push(k);
          else items.push(n.value);
        } else if (cls === 'chore') items.push(sense(tok, 'chore')!);
        else if (cls === 'chorename') items.push(sense(tok, 'chorename')!);
        else if (cls === 'duty') items.push(sense(tok, 'duty')!);
      }
      // `je prends le 2`: what looks like the second of the month is a number of the list.
      const looks = slots.dates.map((tok) => /(?:^|\s)(\d{1,2})$/.exec(tok.s));
      // `fait le 2 pis le 4`
      const numbered =
        slots.dates.length > 0 &&
        looks.every((look) => look !== null) &&
        (items.length === 0 || name === 'done');
      if (numbered) for (const look of looks) items.push(Number(look![1]));
      if (
        name === 'release' &&
        slots.dates.length === 1 &&
        !numbered &&
        isToday(slots, scope) &&
        !handsOver(tokens)
      )
        return ask({ request: 'postpone', items });
      if (broken || items.length === 0) continue;
      if (slots.get('place').some((tok) => tok.k !== 'n') || slots.get('turn').length > 0) continue;
      const book = scope.context.book;
      const numbers = items.filter((item) => typeof item === 'number');
      if (book && numbers.some((n) => (n as number) > Math.max(book.listed.length, 0))) {
        // No list was shown yet: only what is plainly about one is answered, `my niece did 2` is talk.
        const plainly = tokens.length <= 4 && PLAINLY.test(tokens[0]!.s);
        if (numbers.length === items.length && book.listed.length === 0 && !plainly) return null;
      }
      const until = slots.dates[0]?.date?.ahead ?? slots.dates[0]?.date?.when;
      return ask({ request: name, items, ...(until && !numbered && name === 'postpone' && { to: until }) });
    }
    return null;
  },
};

const SLOTS_4 = [
  'n',
  'chore',
  'chorename',
  'duty',
  'numero',
  'dateword',
  'be',
  'check',
  'place',
  'dutyword',
  'turnname',
  'turn',
  'until',
  'machine',
  'entries',
  'fan',
  'intent',
];
