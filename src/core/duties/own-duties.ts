import { own } from '../picture/change.ts';
import type { DutyRule, Found } from './duty.ts';
import { dueDate, parseSchedule } from './schedule.ts';

/** The site's own duties, by the day on which they come round. */
export const ownDuties: DutyRule = {
  name: 'own-duty',
  find: ({ picture, localDate }) =>
    Object.entries(picture.ownDuties).flatMap(([name, duty]): Found[] => {
      const schedule = parseSchedule(duty.every ?? duty.on ?? '');
      if (!schedule) return [];
      const done = own(picture.chores, name)?.localDate ?? null;
      const noted = own(picture.dutyNotes, `own:${name}`);
      const lastDone =
        noted?.act === 'done' && (done === null || noted.localDate > done) ? noted.localDate : done;
      const by = dueDate(schedule, { since: duty.since, lastDone }, localDate);
      if (by === null) return [];
      return [
        {
          key: `own:${name}`,
          kind: 'own-duty',
          place: null,
          args: { name: { text: name } },
          why: lastDone
            ? { code: 'own-last-done', args: { date: { date: lastDone } } }
            : { code: 'own-never-done', args: { date: { date: by } } },
          by,
          risk: 2,
          log: { code: 'own-done', args: { name: { text: name } } },
          canWait: true,
        },
      ];
    }),
};
