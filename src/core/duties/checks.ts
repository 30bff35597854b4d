import { addDays } from '../calendar.ts';
import { firstDay } from '../period.ts';
import { own } from '../picture/change.ts';
import { coded, type DutyContext, type DutyRule, type Found } from './duty.ts';
import { everyDays } from './live.ts';

type Check = {
  chore: 'check-scale' | 'check-thermometer' | 'check-fan' | 'check-stop-button';
  everyDays: number;
  risk: 1 | 2 | 3;
  onlyWithDrum?: boolean;
};

/** Usual intervals; the site sets its own as `every:check-scale`. @source common practice, no source */
const CHECKS: readonly Check[] = [
  { chore: 'check-stop-button', everyDays: 30, risk: 3, onlyWithDrum: true },
  { chore: 'check-thermometer', everyDays: 90, risk: 2 },
  { chore: 'check-scale', everyDays: 90, risk: 2 },
  { chore: 'check-fan', everyDays: 30, risk: 2, onlyWithDrum: true },
];

/** Scale, thermometer, fan and stop button are checked by interval; what failed its check is dealt with today. */
export const checks: DutyRule = {
  name: 'checks',
  find: (context) => CHECKS.flatMap((check) => found(check, context)),
};

function found({ chore, everyDays: usual, risk, onlyWithDrum }: Check, context: DutyContext): Found[] {
  const { picture, localDate } = context;
  if (onlyWithDrum && Object.keys(picture.drums).length === 0) return [];
  const last = own(picture.chores, chore);
  const base = {
    key: `check:${chore}`,
    kind: chore,
    place: null,
    args: {},
    log: coded('check', { chore: { term: chore, of: 'chore' } }),
  };
  if (last?.ok === false) {
    const why = coded('check-failed', { date: { date: last.localDate } });
    return [{ ...base, why, by: last.localDate, risk: 4 }];
  }
  const since = last?.localDate ?? firstDay(picture);
  if (since === null) return [];
  const every = everyDays(context, chore, usual);
  const by = addDays(since, every);
  if (by > localDate) return [];
  const why = coded(last ? 'last-checked' : 'never-checked', { date: { date: since } });
  return [{ ...base, why, by, risk, canWait: true, doneHoldsDays: every - 1 }];
}
