import type { BookRecordOf, Entry } from '#records';
import type { Draft } from './draft.ts';
import { weighed } from './nets.ts';
import { remember } from './questions.ts';
import { say } from './say.ts';
import { settingsOf } from './settings-of.ts';

/** How long an ambient reading serves: the rise over it is what says how a pile does. */
const AMBIENT_HOURS = 36;

/** Asks, once, for what is needed and missing: an empty weight, the air's temperature. At most one question a reply. */
export function askOnce(draft: Draft, written: readonly Entry[]): void {
  if (draft.lines.length === 0 || draft.entries.some((entry) => entry.held !== null)) return;
  const waiting = written.find(
    (entry) => entry.record.kind === 'weigh-in' && weighed(draft.picture(), entry).is === 'pending',
  );
  if (waiting) {
    const record = waiting.record as BookRecordOf<'weigh-in'>;
    const container = record.container ?? 'cart';
    askTare(draft, container);
    return;
  }
  if (written.some((entry) => isPileTemperature(entry)) && !knowsAmbient(draft)) {
    askAmbient(draft);
    return;
  }
  if (written.length > 0 && draft.person?.coordinator) askSafety(draft);
}

/** What the emergency lines would need, and who is near and harmed more by dust; asked of a coordinator once in the life of a site. */
function askSafety(draft: Draft): void {
  const key = 'asked-safety';
  if (draft.book.memo(draft.siteId, key)) return;
  const { safety, peopleNearby } = settingsOf(draft.picture(), draft.today);
  const hasDrum = draft.picture().base.drums.length > 0;
  const needed = [safety.emergencyNumber, safety.address, safety.firstAider];
  if (hasDrum) needed.push(safety.isolator);
  draft.book.setMemo(draft.siteId, key, draft.now);
  if (!needed.every(Boolean)) {
    draft.lines.push(say('ask-safety', { hasDrum: { text: hasDrum ? 'yes' : 'no' } }));
  }
  if (peopleNearby == null) draft.lines.push(say('ask-nearby'));
}

function askTare(draft: Draft, container: string): void {
  const key = `asked-tare:${container}`;
  remember(draft, { about: 'tare', container, label: null, at: draft.now });
  if (draft.book.memo(draft.siteId, key)) return;
  draft.book.setMemo(draft.siteId, key, draft.now);
  draft.lines.push(say('ask-tare', { container: { container, count: 1 } }));
}

function askAmbient(draft: Draft): void {
  const key = `asked-ambient:${draft.today}`;
  remember(draft, { about: 'ambient', at: draft.now });
  if (draft.book.memo(draft.siteId, key)) return;
  draft.book.setMemo(draft.siteId, key, draft.now);
  draft.lines.push(say('ask-ambient'));
}

const isPileTemperature = (entry: Entry): boolean =>
  entry.record.kind === 'temperature' && /^(pile|bay) /.test(String(entry.record.place));

function knowsAmbient(draft: Draft): boolean {
  const last = draft.picture().ambient.at(-1);
  return last !== undefined && Date.parse(draft.now) - Date.parse(last.at) < AMBIENT_HOURS * 3_600_000;
}
