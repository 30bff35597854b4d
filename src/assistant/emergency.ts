import type { Draft } from './draft.ts';
import { type Line, say } from './say.ts';
import { settingsOf } from './settings-of.ts';

type Found = { what: string; topic: string };

/** Which card answers which danger; the order is that of the reply where there are several. */
const CARDS: [card: string, whats: string[]][] = [
  ['drum', ['caught', 'inside-drum', 'reaching-in']],
  ['hurt', ['hurt', 'unwell']],
  ['fire', ['fire', 'smoke', 'burnt-smell']],
  ['gas', ['gas']],
  ['pricked', ['pricked']],
  ['needle', ['needle']],
  ['help', ['help']],
];

/** What to do now, before anything else is said: few words, in the order in which to do them. */
export function emergencyLines(draft: Draft, danger: readonly Found[]): Line[] {
  const { safety } = settingsOf(draft.picture(), draft.today);
  const lines: Line[] = [];
  for (const [card, whats] of CARDS) {
    if (!danger.some(({ what }) => whats.includes(what))) continue;
    lines.push(
      say(`emergency-${card}`, {
        number: { text: safety.emergencyNumber ?? '' },
        has: { text: safety.emergencyNumber ? 'yes' : 'no' },
      }),
    );
    if (card === 'drum' && safety.isolator) {
      lines.push(say('emergency-isolator', { text: { text: safety.isolator } }));
    }
  }
  if (safety.address) lines.push(say('emergency-address', { text: { text: safety.address } }));
  if (safety.firstAider) lines.push(say('emergency-first-aider', { text: { text: safety.firstAider } }));
  return lines;
}

/** The coordinators hear of it directly, whatever the group sees. */
export function tellCoordinators(draft: Draft, danger: readonly Found[]): void {
  const who = draft.person?.name ?? '';
  const topics = [...new Set(danger.map(({ topic }) => topic))];
  draft.posts.push({
    about: 'alarm',
    private: true,
    lines: [
      say('alarm', {
        who: { text: who },
        has: { text: who ? 'yes' : 'no' },
        topic: { term: topics[0] ?? 'other', of: 'topic' },
      }),
      say('alarm-said', { text: { text: draft.incoming.text.slice(0, 300) } }),
    ],
  });
}
