import type { Picture } from '../picture/types.ts';
import type { DutyRule, Found } from './duty.ts';

/** What was written, not what it is held against; its kind where the words are gone. */
const saidOf = ({ doubt, kind }: Picture['held'][number]) => {
  const words = doubt.record.said ?? doubt.said;
  return typeof words === 'string' ? { text: words } : { term: kind, of: 'kind' };
};

/** What is held until somebody answers. */
export const answerDoubts: DutyRule = {
  name: 'answer-doubt',
  find: ({ picture }) =>
    picture.held.map(
      (line): Found => ({
        key: `doubt:${line.entry}`,
        kind: 'answer-doubt',
        place: null,
        args: { entry: { entry: line.entry }, said: saidOf(line) },
        why: { code: line.why, args: { kind: { term: line.kind, of: 'kind' } } },
        by: line.localDate,
        risk: line.doubt.danger ? 5 : 3,
        log: { code: 'answer', args: { choice: { term: line.doubt.choices[0]?.say ?? '', of: 'choice' } } },
        canWait: !line.doubt.danger,
      }),
    ),
};

/** Containers whose empty weight nobody has told: what was weighed in them waits. */
export const weighEmpty: DutyRule = {
  name: 'weigh-empty',
  find: ({ picture }) => {
    const found = new Map<string, Found>();
    for (const { container, label, localDate } of picture.pending) {
      const name = label ? `${container} ${label}` : container;
      const key = `tare:${name}`;
      const waiting = picture.pending.filter(
        (each) => each.container === container && (each.label ?? null) === (label ?? null),
      );
      if (found.has(key)) continue;
      const what = { container: { container, count: 1, label } };
      found.set(key, {
        key,
        kind: 'weigh-empty',
        place: null,
        args: what,
        why: { code: 'nets-wait', args: { count: { count: waiting.length } } },
        by: localDate,
        risk: 3,
        log: { code: 'empty', args: { ...what, kg: { kg: 16.2 } } },
        canWait: true,
      });
    }
    return [...found.values()];
  },
};
