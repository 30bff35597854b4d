import { type Duty, parseSchedule } from '#core';
import { CHORES, type FieldRecord, type Request } from '#records';
import { writeAndSay } from '../decide.ts';
import type { Draft } from '../draft.ts';
import { oftenSay } from '../often.ts';
import { say } from '../say.ts';
import { dutySay, jobsOf } from './today.ts';

/** Finds the jobs that are meant: by their number in the list last shown, or by name. */
function meant(draft: Draft, items: readonly (string | number)[]): { duty: Duty | null; item: string }[] {
  const { open, heldBack } = jobsOf(draft.picture(), draft.now, draft.today);
  const all = [...open, ...heldBack];
  const listed = draft.book.memo<string[]>(draft.siteId, `listed:${draft.incoming.chat}`) ?? [];
  return items.map((item) => {
    const number = Number(item);
    const key = Number.isInteger(number) ? listed[number - 1] : String(item);
    const duty =
      all.find((each) => each.key === key) ??
      all.find((each) => each.key.split(':').slice(1).join(':') === String(item).toLowerCase()) ??
      all.find((each) => each.kind === item);
    return { duty: duty ?? null, item: String(item) };
  });
}

/** `done 2`, `I'll do 2`, `release 2`, `not today 2`. */
export function duties(draft: Draft, request: Request): void {
  if (request.request === 'duty') {
    ownDuty(draft, request);
    return;
  }
  const items = request.items ?? [];
  if (items.length === 0) draft.lines.push(say('duty-which'));
  for (const { duty, item } of meant(draft, items)) {
    if (!duty) draft.lines.push(say('duty-not-there', { item: { text: item } }));
    else act(draft, duty, request);
  }
}

function act(draft: Draft, duty: Duty, request: Request): void {
  const name = { say: dutySay(duty) };
  if (request.request === 'done') {
    done(draft, duty);
    return;
  }
  const act = request.request === 'claim' ? 'claim' : request.request === 'release' ? 'release' : 'postpone';
  const until = act === 'postpone' && typeof request.to === 'string' ? request.to : null;
  const reason = act === 'postpone' && typeof request.reason === 'string' ? request.reason : null;
  const entry = draft.add({ kind: 'duty-note', duty: duty.key, act, until, reason });
  draft.lines.push(
    say(until ? 'duty-noted-until' : `duty-noted-${act}`, {
      entry: { entry: entry.number },
      duty: name,
      until: { date: until ?? draft.today },
    }),
  );
}

/** What `done` writes: the real thing where nothing more need be known of it, else a question for the figure. */
function done(draft: Draft, duty: Duty): void {
  const record = recordOf(duty);
  if (record) {
    writeAndSay(draft, [record]);
    return;
  }
  if (duty.log && NEEDS_FIGURE.has(duty.kind)) {
    draft.lines.push(
      say('duty-send-figure', {
        duty: { say: dutySay(duty) },
        log: { say: say(`log-${duty.log.code}`, duty.log.args) },
      }),
    );
    return;
  }
  if (duty.risk === 5) {
    draft.lines.push(say('duty-not-by-word', { duty: { say: dutySay(duty) } }));
    return;
  }
  const entry = draft.add({ kind: 'duty-note', duty: duty.key, act: 'done' });
  draft.lines.push(
    say('duty-noted-done', {
      entry: { entry: entry.number },
      duty: { say: dutySay(duty) },
      until: { date: draft.today },
    }),
  );
}

const NEEDS_FIGURE = new Set([
  'read-pile',
  'read-drum',
  'read-ambient',
  'weigh-empty',
  'reweigh-empty',
  'answer-doubt',
  'count-stock',
  'order-stock',
  'ask-source',
  'chase-results',
  'renew-permit',
]);

function recordOf(duty: Duty): FieldRecord | null {
  const { kind, place } = duty;
  if (kind === 'own-duty') return { kind: 'chore', chore: duty.key.slice('own:'.length) };
  if ((CHORES as readonly string[]).includes(kind)) return { kind: 'chore', chore: kind };
  if (kind === 'turn-pile' && place) return { kind: 'turning', pile: place };
  if (kind === 'cover-pile' && place) return { kind: 'cover', pile: place, layer: 'unspecified', on: true };
  if (kind === 'discharge-drum') return { kind: 'discharge', place };
  if (kind === 'take-sample' && place) return { kind: 'sample', pile: place };
  return null;
}

/** A duty of the site's own: made, changed, removed, listed. */
function ownDuty(draft: Draft, request: Request): void {
  const own = draft.picture().ownDuties;
  const asked = request.name ?? '';
  const name = Object.keys(own).find((each) => each.toLowerCase() === asked.toLowerCase()) ?? asked;
  if (!name) {
    const names = Object.entries(own);
    if (names.length === 0) draft.lines.push(say('own-none'));
    for (const [each, duty] of names) {
      draft.lines.push(say('own-line', { name: { text: each }, every: { say: oftenSay(duty) } }));
    }
    return;
  }
  const remove = request.remove === true || request.removed === true;
  if (remove && !own[name]) {
    draft.lines.push(say('duty-not-there', { item: { text: name } }));
    return;
  }
  const every = typeof request.every === 'string' ? request.every : null;
  const on = typeof request.on === 'string' ? request.on : null;
  // What never comes round would never be asked for: it is asked about instead of stored.
  if (!remove && parseSchedule(every ?? on ?? '') === null) {
    draft.lines.push(say('duty-how-often', { name: { text: name } }));
    return;
  }
  writeAndSay(draft, [{ kind: 'duty', name, every, on, ...(remove ? { removed: true } : {}) }]);
}
