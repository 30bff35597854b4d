import { addDays } from '../calendar.ts';
import { firstDay } from '../period.ts';
import { own } from '../picture/change.ts';
import { coded, type DutyRule, type Found } from './duty.ts';
import { expected } from './weather.ts';

/** A frost is looked for a week ahead; mornings under this are its sign. @source common practice, no source */
const AHEAD_DAYS = 7;
const COLD_CELSIUS = 3;
/** What was done before one winter is asked for again before the next. */
const HOLDS_DAYS = 240;

/** Before frost: dry chips under a roof, the exit of the drum insulated. */
export const season: DutyRule = {
  name: 'season',
  find: (context) => {
    const { picture, localDate } = context;
    const frost = expected(context, ['frost', 'snow'], AHEAD_DAYS);
    const air = picture.ambient.at(-1);
    const cold = air && air.localDate >= addDays(localDate, -2) && air.celsius <= COLD_CELSIUS ? air : null;
    if (!frost && !cold) return [];
    const why = frost
      ? coded('frost-expected', { date: { date: frost.for } })
      : coded('cold-air', { celsius: { celsius: cold!.celsius } });
    const by = frost?.for ?? localDate;
    const job = (kind: 'season-chips' | 'season-exit'): Found => ({
      key: `season:${kind}`,
      kind,
      place: null,
      args: {},
      why,
      by,
      risk: 2,
      log: { code: 'done-item', args: {} },
      canWait: true,
      doneHoldsDays: HOLDS_DAYS,
    });
    return [job('season-chips'), ...(Object.keys(picture.drums).length > 0 ? [job('season-exit')] : [])];
  },
};

/** Empty containers gain weight with the years, and lose it: they are weighed again once a year. @source common practice, no source */
const REWEIGH_DAYS = 365;

/** Containers in use whose empty weight is more than a year old. */
export const reweighEmpty: DutyRule = {
  name: 'reweigh-empty',
  find: ({ picture, localDate }) => {
    const first = firstDay(picture);
    if (first === null) return [];
    return Object.keys(picture.weights).flatMap((name): Found[] => {
      const told = own(picture.emptyWeighed, name);
      const inFile = own(picture.base.containers, name)?.tareKg != null;
      if (told === undefined && !inFile) return [];
      const by = addDays(told ?? first, REWEIGH_DAYS);
      if (by > localDate) return [];
      const what = { container: { container: name, count: 1, label: null } };
      return [
        {
          key: `reweigh:${name}`,
          kind: 'reweigh-empty',
          place: null,
          args: what,
          why: { code: told ? 'weighed-empty' : 'from-site-file', args: { date: { date: told ?? first } } },
          by,
          risk: 1,
          log: { code: 'empty', args: { ...what, kg: { kg: 16.2 } } },
          canWait: true,
          doneHoldsDays: REWEIGH_DAYS - 1,
        },
      ];
    });
  },
};

/** Permits and training run out; they are spoken of a month before. @source common practice, no source */
const PERMIT_DAYS = 30;

/** Dates that the site has entered as `permit:…` and `training:…`. */
export const permits: DutyRule = {
  name: 'permits',
  find: ({ picture, localDate }) =>
    Object.entries(picture.settings).flatMap(([setting, lines]): Found[] => {
      const name = setting.match(/^(permit|training):(.+)$/);
      const ends = lines.findLast(({ from }) => from <= localDate)?.value;
      if (!name || typeof ends !== 'string' || !/^\d{4}-\d{2}-\d{2}$/.test(ends)) return [];
      if (addDays(ends, -PERMIT_DAYS) > localDate) return [];
      return [
        {
          key: setting,
          kind: 'renew-permit',
          place: null,
          args: { name: { text: name[2]! }, what: { term: name[1]!, of: 'permit' } },
          why: { code: ends < localDate ? 'ran-out' : 'runs-out', args: { date: { date: ends } } },
          by: ends,
          risk: ends < localDate ? 3 : 2,
          log: {
            code: 'set-date',
            args: {
              what: { term: name[1]!, of: 'permit' },
              name: { text: name[2]! },
              date: { text: sameDayNextYear(ends) },
            },
          },
          canWait: true,
        },
      ];
    }),
};

/** The day a year later, so that the message that renews it can be sent as it stands. */
const sameDayNextYear = (date: string): string => {
  const next = `${Number(date.slice(0, 4)) + 1}${date.slice(4)}`;
  return next.endsWith('-02-29') ? `${next.slice(0, 8)}28` : next;
};
