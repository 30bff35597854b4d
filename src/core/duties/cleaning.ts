import { addDays } from '../calendar.ts';
import { dayOf, own } from '../picture/change.ts';
import type { DayTotals } from '../picture/types.ts';
import type { DutyContext, DutyRule, DutyWhy, Found } from './duty.ts';

type Cleaning = {
  chore: 'sweep' | 'wash-lift' | 'wash-containers' | 'clean-tools';
  /** What makes it dirty, on a day's sums. */
  used: (day: DayTotals) => boolean;
  code: DutyWhy;
  onlyWithDrum?: boolean;
};

const loads = (day: DayTotals): boolean => Object.keys(day.loadsBySource).length > 0;

/** After use, whatever was used. @source common practice, no source */
const CLEANING: readonly Cleaning[] = [
  {
    chore: 'sweep',
    used: (day) => loads(day) || day.dischargedKg + day.dischargedLitres > 0,
    code: 'floor-used',
  },
  { chore: 'wash-lift', used: loads, code: 'lift-used', onlyWithDrum: true },
  { chore: 'wash-containers', used: loads, code: 'containers-used' },
  { chore: 'clean-tools', used: (day) => day.turnings > 0, code: 'tools-used' },
];

/** What was not cleaned for longer than this is not asked for again until it is used. */
const LOOK_BACK_DAYS = 6;

/** Floor, lift, containers and tools are cleaned after use. */
export const cleaning: DutyRule = {
  name: 'cleaning',
  find: (context) => CLEANING.flatMap((each) => found(each, context)),
};

function found({ chore, used, code, onlyWithDrum }: Cleaning, { picture, localDate }: DutyContext): Found[] {
  if (onlyWithDrum && Object.keys(picture.drums).length === 0) return [];
  const cleaned = own(picture.chores, chore)?.localDate ?? '';
  const first = addDays(localDate, -LOOK_BACK_DAYS);
  for (let date = localDate; date >= first && date > cleaned; date = addDays(date, -1)) {
    const day = dayOf(picture, date);
    if (!day || !used(day)) continue;
    return [
      {
        key: `clean:${chore}`,
        kind: chore,
        place: null,
        args: {},
        why: { code, args: { date: { date } } },
        by: date,
        risk: 1,
        log: { code: 'chore', args: { chore: { term: chore, of: 'chore' } } },
        canWait: date !== localDate,
        doneHoldsDays: LOOK_BACK_DAYS,
      },
    ];
  }
  return [];
}
