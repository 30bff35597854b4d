import { parseSchedule, type Schedule } from '#core';
import type { Weekday } from '#records';
import { type Say, say } from './say.ts';

/** How often a duty of the site's own comes round, to be said in the reader's language. */
export function oftenSay(duty: { every?: string | null; on?: string | null }): Say {
  const said = duty.every ?? duty.on ?? '';
  const schedule = parseSchedule(said);
  return schedule ? inWords(schedule) : say('often-as-said', { said: { text: said } });
}

function inWords(schedule: Schedule): Say {
  if ('once' in schedule) return say('often-once', { date: { date: schedule.once } });
  switch (schedule.every) {
    case 'weekday': {
      const name = schedule.on.join();
      if (name === 'monday,tuesday,wednesday,thursday,friday') return say('often-workdays');
      if (name === 'saturday,sunday') return say('often-weekends');
      return say('often-weekday', { days: { say: listed(schedule.on) } });
    }
    case 'weeks':
      return say('often-other-weekday', { day: dayArg(schedule.on) });
    case 'days':
      return schedule.days % 7 === 0
        ? say('often-weeks', { count: { count: schedule.days / 7 } })
        : say('often-days', { count: { count: schedule.days } });
    case 'months':
      return schedule.months % 12 === 0
        ? say('often-years', { count: { count: schedule.months / 12 } })
        : say('often-months', { count: { count: schedule.months } });
    case 'month':
      return 'day' in schedule
        ? say(schedule.day === 31 ? 'often-month-end' : 'often-month-day', { day: { count: schedule.day } })
        : say('often-month-nth', { nth: { term: schedule.nth, of: 'nth' }, day: dayArg(schedule.on) });
    case 'year': {
      const date = `2024-${String(schedule.month).padStart(2, '0')}-${String(schedule.day).padStart(2, '0')}`;
      return say('often-year', { date: { day: date } });
    }
  }
}

const dayArg = (day: Weekday) => ({ term: day, of: 'weekday-full' });

function listed(days: readonly Weekday[]): Say {
  const [first, ...rest] = days;
  const one = say('often-day', { day: dayArg(first!) });
  if (rest.length === 0) return one;
  return say(rest.length === 1 ? 'often-and' : 'often-comma', {
    first: { say: one },
    rest: { say: listed(rest) },
  });
}
