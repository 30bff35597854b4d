import type { BookRecord } from '#records';
import type { Draft } from './draft.ts';
import { type Line, type Say, say } from './say.ts';
import { type Settings, settingsOf } from './settings-of.ts';

type Found = { what: string; topic: string };

type Card = { whats: string[]; lines: string[]; source: string };

/**
 * Which card answers which danger, and its lines in the order in which to do them, each the end of the name of an
 * `emergency-` text; `call` is where to call for help. DEVELOPERS.md shows them all.
 */
export const CARDS: readonly Card[] = [
  {
    whats: ['caught', 'inside-drum', 'reaching-in'],
    lines: ['drum', 'drum-then'],
    source:
      'OSHA 29 CFR 1910.147, hazardous energy, and 1910.146, permit-required confined spaces: no entry to rescue (both from memory)',
  },
  {
    whats: ['hurt', 'unwell'],
    lines: ['hurt', 'call', 'hurt-then'],
    source: 'first aid: make the scene safe, call, stay; common practice, no source',
  },
  {
    whats: ['fire', 'smoke', 'burnt-smell'],
    lines: ['fire', 'call-fire', 'fire-then'],
    source:
      'NRCS Conservation Practice Standard 317, Composting Facility: act at once above 185 °F; not to open or half wet what smoulders: common practice (from memory)',
  },
  {
    whats: ['gas'],
    lines: ['gas', 'call-away'],
    source: 'leave, no switches, call from afar: common practice, no source',
  },
  {
    whats: ['pricked'],
    lines: ['pricked', 'call-clinic', 'pricked-then'],
    source:
      'OSHA 29 CFR 1910.1030, bloodborne pathogens: wash with soap and water, medical evaluation at once (from memory)',
  },
  {
    whats: ['needle'],
    lines: ['needle', 'needle-pricked', 'needle-then'],
    source: 'common practice, no source: tongs, no picking by hand, report (from memory)',
  },
  {
    whats: ['help'],
    lines: ['help', 'call', 'help-then'],
    source: 'common practice, no source: what is not known is taken for the worst',
  },
];

/**
 * Somebody hurt at a machine may be held by it, whatever word was found for it: stop and power come first there too.
 */
export function atMachine(danger: readonly Found[], records: readonly BookRecord[]): Found[] {
  const held = records.some(
    (record) =>
      record.kind === 'problem' &&
      record.topic === 'injury' &&
      /^(drum|lift|exit)\b/.test(record.place ?? ''),
  );
  return held ? [{ what: 'caught', topic: 'injury' }, ...danger] : [...danger];
}

/** What to do now, before anything else is said: few words, in the order in which to do them. */
export function emergencyLines(draft: Draft, danger: readonly Found[]): Line[] {
  return whatToDo(danger, settingsOf(draft.picture(), draft.today).safety);
}

/** The same, for a site's own number, address, isolator and first-aider. */
export function whatToDo(danger: readonly { what: string }[], safety: Settings['safety']): Line[] {
  const args = argsOf(safety);
  const lines: Line[] = [];
  let called = false;
  for (const card of CARDS) {
    // Somebody who cries for help and says what it is need not be asked.
    if (card.whats.includes('help') && lines.length > 0) continue;
    if (!danger.some(({ what }) => card.whats.includes(what))) continue;
    for (const id of card.lines) {
      // At a drum the call stands in the first line: that line alone must do.
      const isCall = id.startsWith('call') || id === 'drum';
      // One call for help, whatever else is told: two numbers to choose from cost a minute.
      if (isCall && called) continue;
      lines.push(say(`emergency-${id}`, args));
      if (!isCall) continue;
      called = true;
      if (safety.address && id !== 'call-clinic')
        lines.push(say('emergency-address', { text: { text: safety.address } }));
    }
  }
  if (called && safety.firstAider) {
    lines.push(say('emergency-first-aider', { text: { text: safety.firstAider } }));
  }
  return lines;
}

const argsOf = (safety: Settings['safety']) => ({
  number: { text: safety.emergencyNumber ?? '' },
  has: yesNo(safety.emergencyNumber),
  isolator: { text: safety.isolator ?? '' },
  hasIsolator: yesNo(safety.isolator),
});

/** The card that hangs by the scale: whom to call and where, then a few lines for each danger, each to be read alone. */
export function safetyCard(
  safety: Settings['safety'],
  hasDrum: boolean,
): { call: Line[]; dangers: { whats: string[]; title: Say; lines: Line[] }[] } {
  const args = argsOf(safety);
  const call: Line[] = [say('emergency-call', args)];
  if (safety.address) call.push(say('emergency-address', { text: { text: safety.address } }));
  if (safety.firstAider) call.push(say('emergency-first-aider', { text: { text: safety.firstAider } }));
  const shown = CARDS.filter(({ whats: [what] }) => what !== 'help' && (hasDrum || what !== 'caught'));
  return {
    call,
    dangers: shown.map(({ whats, lines }) => ({
      whats,
      title: say(`danger-${whats[0]}`),
      lines: lines.map((id) => say(`emergency-${id}`, args)),
    })),
  };
}

const yesNo = (value: unknown) => ({ text: value ? 'yes' : 'no' });

/** The cards stand in the order of what cannot wait. */
const gravest = (danger: readonly Found[]): string =>
  CARDS.flatMap(({ whats }) => whats).find((each) => danger.some(({ what }) => what === each)) ?? 'help';

/** The coordinators hear of it directly, in the writer's words, whatever the group sees. */
export function tellCoordinators(draft: Draft, danger: readonly Found[]): void {
  const who = draft.person?.name ?? '';
  draft.posts.push({
    about: 'alarm',
    private: true,
    lines: [
      say('alarm', {
        who: { text: who },
        has: { text: who ? 'yes' : 'no' },
        what: { term: gravest(danger), of: 'danger' },
      }),
    ],
    words: [say('alarm-said', { text: { text: draft.incoming.text.slice(0, 300) } })],
  });
}

/**
 * What happened to somebody's body stays out of the book and so out of every export: the line says that somebody was
 * hurt, where and when. The words themselves go to the coordinators and stand in the message alone.
 */
export function withoutMedicalDetail<R extends BookRecord | (Record<string, unknown> & { kind: string })>(
  record: R,
  danger: readonly Found[] = [],
): R {
  if (record.kind !== 'problem' || !('topic' in record)) return record;
  const isBodily =
    record.topic === 'injury' || (record.topic === 'sharps' && danger.some(({ what }) => what === 'pricked'));
  if (!isBodily) return record;
  const { said: _said, note: _note, ...rest } = record as R & { said?: unknown; note?: unknown };
  return rest as unknown as R;
}
