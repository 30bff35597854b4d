import type { ProblemTopic } from '#records';
import { addDays } from '../calendar.ts';
import type { DutyRule, Facts, Found } from './duty.ts';

/** How bad it is, and after how many days it is looked at again. @source common practice, no source */
const TOPICS: Record<ProblemTopic, { risk: Found['risk']; days: number }> = {
  smoke: { risk: 5, days: 0 },
  injury: { risk: 5, days: 0 },
  sharps: { risk: 5, days: 0 },
  power: { risk: 4, days: 0 },
  fault: { risk: 4, days: 0 },
  spill: { risk: 4, days: 0 },
  complaint: { risk: 4, days: 0 },
  leachate: { risk: 4, days: 1 },
  odour: { risk: 3, days: 1 },
  pests: { risk: 3, days: 1 },
  flies: { risk: 3, days: 2 },
  freezing: { risk: 2, days: 2 },
  contamination: { risk: 2, days: 1 },
  other: { risk: 2, days: 2 },
};

/** Problems and complaints come back until they are resolved. */
export const lookAgain: DutyRule = {
  name: 'look-again',
  find: ({ picture, localDate }) =>
    picture.problems.flatMap((problem): Found[] => {
      const { risk, days } = TOPICS[problem.topic];
      const by = addDays(problem.localDate, days);
      if (by > localDate) return [];
      const topic = { term: problem.topic, of: 'topic' };
      const place: Facts = problem.place ? { place: { place: problem.place } } : {};
      return [
        {
          key: `problem:${problem.entry}`,
          kind: 'look-again',
          place: problem.place,
          args: { topic, entry: { entry: problem.entry }, ...place },
          why: { code: 'still-open', args: { date: { date: problem.localDate } } },
          by,
          risk,
          // What could hurt somebody is not waved through with an example to copy.
          log: risk === 5 ? null : { code: 'resolved', args: { topic, ...place } },
          canWait: risk < 4,
        },
      ];
    }),
};
