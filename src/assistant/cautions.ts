import {
  addDays,
  batchAt,
  type Caution,
  type CautionId,
  cautionsFor,
  hottestOf,
  keptAway,
  noTurning,
  type Occasion,
  settingAt,
} from '#core';
import type { BookRecordOf, Entry } from '#records';
import type { Draft } from './draft.ts';
import { type Line, say } from './say.ts';
import { settingsOf } from './settings-of.ts';

/**
 * The cautions that go with what was just logged: those of lock-out, sharps and fire every time, and of the ordinary
 * ones the most fitting that this person has not seen today. None where the reply opens with an emergency.
 */
export function cautionLines(draft: Draft, written: readonly Entry[]): Line[] {
  if (written.length === 0 || draft.lines.some(isEmergency)) return [];
  const due = cautionsFor(written.map((entry) => occasionOf(draft, entry)));
  const always = due.filter((caution) => caution.every === 'always');
  const isOfToday = written.some((entry) => entry.localDate >= addDays(draft.today, -1));
  const daily = isOfToday ? nextDaily(draft, due) : null;
  return [...always, ...(daily ? [daily] : [])].map((caution) => say(`caution-${caution.id}`));
}

const isEmergency = (line: Line): boolean => !Array.isArray(line) && line.id.startsWith('emergency-');

function occasionOf(draft: Draft, entry: Entry): Occasion {
  const picture = draft.picture();
  const context = { picture, at: draft.now, localDate: draft.today };
  const record = entry.record as Occasion['record'];
  const place = String(record.place ?? record.pile ?? record.from ?? '');
  const batch = batchAt(picture, place);
  const reading =
    record.kind === 'temperature' ? (entry.record as BookRecordOf<'temperature'>) : batch?.readings.at(-1);
  return {
    record,
    hottestCelsius: reading ? hottestOf({ celsius: reading.celsius, upTo: reading.upTo ?? null }) : null,
    keptAway: batch !== null && keptAway(batch, context) !== null,
    windy: noTurning(context)?.code === 'windy',
    hasDrum: picture.base.drums.length > 0,
    // Where the site has not said, people at risk are taken to be near: the caution too many costs a line.
    peopleAtRisk: settingsOf(picture, draft.today).peopleNearby !== 'none',
  };
}

type Seen = { date: string; ids: CautionId[] };

/** The first daily caution that this person has not seen today; it counts as seen from now on. */
function nextDaily(draft: Draft, due: readonly Caution[]): Caution | null {
  if (settingAt(draft.picture(), 'cautions', draft.today) === 'off') return null;
  const key = `cautioned:${draft.person?.id ?? draft.incoming.chat}`;
  const memo = draft.book.memo<Seen>(draft.siteId, key);
  const seen = memo?.date === draft.today ? memo.ids : [];
  const next = due.find((caution) => caution.every === 'daily' && !seen.includes(caution.id));
  if (!next) return null;
  draft.book.setMemo(draft.siteId, key, { date: draft.today, ids: [...seen, next.id] });
  return next;
}
