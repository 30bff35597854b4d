import { addDays } from '../calendar.ts';
import { dischargeDue, drumNow } from '../drum/drum.ts';
import { feedPerDayKg, loadLitres } from '../drum/flow.ts';
import { drumRulesOf } from '../drum/rules.ts';
import type { DrumPicture } from '../picture/types.ts';
import type { DutyContext, DutyRule, Found } from './duty.ts';
import { everyDays } from './live.ts';

/** The feed of this many days says what is to come. @source common practice, no source */
const FEED_DAYS = 7;
/** A discharge is spoken of so many days ahead. */
const AHEAD_DAYS = 1;

/** Let some out before the drum is full at the present feed, or when the oldest load has had its stay. */
export const dischargeDrum: DutyRule = {
  name: 'discharge-drum',
  find: (context) =>
    Object.values(context.picture.drums).flatMap((drum): Found[] => {
      if (drum.loads.length === 0 && !drum.level) return [];
      const due = dischargeDue(
        drum,
        context.at,
        { feedLitresPerDay: feedOfDrum(context, drum)?.litres ?? null },
        drumRulesOf(context),
      );
      if (!due || due.inDays > AHEAD_DAYS || letOutToday(drum, context)) return [];
      const now = drumNow(drum, context.at);
      if (now.litres <= 0) return [];
      return [
        {
          key: `discharge:${drum.name}`,
          kind: 'discharge-drum',
          place: drum.name,
          args: { place: { place: drum.name } },
          why:
            due.because === 'fill'
              ? { code: 'filling', args: { pct: { pct: Math.round(now.fillPct?.typical ?? 0) } } }
              : { code: 'stayed', args: { days: { count: Math.floor(now.oldest?.days ?? 0) } } },
          by: addDays(context.localDate, Math.floor(due.inDays)),
          risk: 3,
          log: { code: 'discharged', args: { litres: { litres: 500 } } },
        },
      ];
    }),
};

/** Some was let out today and nobody said how much: it is not asked for again on the same day. */
const letOutToday = (drum: DrumPicture, { localDate }: DutyContext): boolean =>
  drum.discharges.some((each) => each.localDate === localDate && each.kg === null && each.litres === null);

/** Feed of the last week, chips included, in kg a day; null where nothing went in. */
export function feedOfDrum(
  { picture, localDate }: Pick<DutyContext, 'picture' | 'localDate'>,
  drum: DrumPicture,
): { kg: number; litres: number } | null {
  const fed = picture.mixLoads.filter(({ place }) => place === drum.name);
  const kg = feedPerDayKg(fed, localDate, FEED_DAYS);
  const all = fed.reduce((sum, load) => sum + load.kg, 0);
  const litres = fed.reduce((sum, load) => sum + loadLitres(load), 0);
  return all > 0 ? { kg, litres: (kg * litres) / all } : null;
}

/** A drum with something in it is read every day. @source common practice, no source */
export const readDrum: DutyRule = {
  name: 'read-drum',
  find: (context) => {
    const { picture, localDate } = context;
    return Object.values(picture.drums).flatMap((drum): Found[] => {
      const oldest = drum.loads[0];
      if (!oldest) return [];
      const last = [drum.readings.at(-1), picture.exit.at(-1)]
        .filter((reading) => reading !== undefined)
        .reduce<string | null>(
          (latest, reading) => (latest && latest > reading.localDate ? latest : reading.localDate),
          null,
        );
      const since = last ?? oldest.localDate;
      const by = addDays(since, everyDays(context, 'read-drum', 1));
      if (by > localDate) return [];
      return [
        {
          key: `read:${drum.name}`,
          kind: 'read-drum',
          place: drum.name,
          args: { place: { place: drum.name } },
          why: last
            ? { code: 'last-read', args: { date: { date: last } } }
            : { code: 'never-read', args: { date: { date: since } } },
          by,
          risk: 2,
          log: { code: 'reading', args: { place: { place: drum.name }, celsius: { celsius: 52 } } },
          canWait: true,
        },
      ];
    });
  },
};
