import type { Draft } from '../draft.ts';
import { type Line, say } from '../say.ts';

const MOST = 2;

/** What is still open at a place: topic, number and day; never who complained. */
export function problemLines(draft: Draft, isHere: (place: string) => boolean): Line[] {
  return draft
    .picture()
    .problems.filter(({ place }) => place !== null && isHere(place))
    .slice(-MOST)
    .map((problem) =>
      say('pile-problem', {
        entry: { entry: problem.entry },
        topic: { term: problem.topic, of: 'topic' },
        date: { date: problem.localDate },
      }),
    );
}
