import {
  batchAt,
  type DrumAdvice,
  type DrumPicture,
  type DrumRunRules,
  daysBetween,
  drumAdvice,
  drumName,
  drumNow,
  drumRulesOf,
  drumStands,
  type Picture,
  type StoppedAdvice,
  settingAt,
  stoppedAdvice,
} from '#core';
import type { BookRecordOf, Entry } from '#records';
import type { Draft } from '../draft.ts';
import { type Arg, type Line, say } from '../say.ts';
import { USUAL_FULL, whyDrum } from '../why/drum.ts';
import { stoppedSays } from './stopped.ts';

/** What the site has set about running its drum. */
function runRulesOf(picture: Picture, today: string): DrumRunRules {
  const every = settingAt(picture, 'drum-interval', today) as { low?: number; high?: number } | undefined;
  const off = settingAt(picture, 'fan-off-hours', today);
  return {
    everyMin:
      typeof every?.low === 'number' && typeof every.high === 'number'
        ? { low: every.low, high: every.high }
        : null,
    fanOffMaxHours: typeof off === 'number' ? off : null,
  };
}

/** What a setting, a level or a discharge just logged means for the drum. */
export function drumMatters(draft: Draft, written: readonly Entry[]): Line[] {
  return written.flatMap((entry) => {
    const { record } = entry;
    if (record.kind === 'drum-setting') return settingLines(draft, entry);
    if (record.kind === 'level') return levelLines(draft, record as BookRecordOf<'level'>);
    return record.kind === 'discharge' ? dischargeLines(draft, record as BookRecordOf<'discharge'>) : [];
  });
}

const drumOf = (picture: Picture, place?: string | null): DrumPicture | null => {
  const name = drumName(picture, place);
  return name === null ? null : (picture.drums[name] ?? null);
};

function settingLines(draft: Draft, entry: Entry): Line[] {
  const record = entry.record as BookRecordOf<'drum-setting'>;
  const drum = drumOf(draft.picture(), record.place);
  if (!drum) return [];
  if (record.mode === 'off') return stoppedSays(stoppedOf(draft, 'stopped', drum.name)).slice(-1);
  const said = advice(draft, drum, null).filter(({ code }) => {
    if (code.startsWith('interval'))
      return record.everyMin != null && firstTime(draft, drum, record.everyMin);
    return record.fan != null;
  });
  return said.slice(0, 2).map(adviceLine(draft));
}

/**
 * A drum that stands still, with the hours since and whom the site has named. The longest stop counts: what was set
 * off an hour ago may have been jammed since the morning.
 */
export function stoppedOf(draft: Draft, why: 'stopped' | 'jammed' | 'no-power', name: string): StoppedAdvice {
  const picture = draft.picture();
  const after = settingAt(picture, 'drum-call-hours', draft.today);
  const whom = settingAt(picture, 'drum-call', draft.today);
  const stands = drumStands(picture, name);
  const advice = stoppedAdvice({
    why,
    hours: stands ? hoursSince(stands.at, draft.now) : null,
    callAfterHours: typeof after === 'number' ? after : null,
    whom: typeof whom === 'string' ? whom : null,
  });
  draft.why.push(
    say('why-source', { text: { cite: advice.source } }),
    say(typeof whom === 'string' ? 'why-call-set' : 'why-call-unset'),
  );
  return advice;
}

/** Drums that stand still, with the moment at which the site wants somebody called; none where it has set no hours. */
export function stopsToCall(
  picture: Picture,
  today: string,
): { place: string; entry: number; hours: number; whom: string | null; dueAt: string }[] {
  const hours = settingAt(picture, 'drum-call-hours', today);
  const whom = settingAt(picture, 'drum-call', today);
  if (typeof hours !== 'number') return [];
  return Object.keys(picture.drums).flatMap((place) => {
    const stands = drumStands(picture, place);
    if (!stands) return [];
    const dueAt = new Date(Date.parse(stands.at) + hours * 3_600_000).toISOString();
    return [{ place, entry: stands.entry, hours, whom: typeof whom === 'string' ? whom : null, dueAt }];
  });
}

/** An interval outside the site's rule or the check value is remarked once, not at each setting. */
function firstTime(draft: Draft, drum: DrumPicture, everyMin: number): boolean {
  const rule = settingAt(draft.picture(), 'drum-interval', draft.today);
  const key = `remarked:${drum.name}:${everyMin}:${JSON.stringify(rule ?? null)}`;
  if (draft.book.memo(draft.siteId, key)) return false;
  draft.book.setMemo(draft.siteId, key, draft.now);
  return true;
}

/** Advice on fan and interval for a smell at the drum, or a frozen exit. */
export function drumAdviceLines(draft: Draft, about: 'odour' | 'freezing'): Line[] {
  const drum = drumOf(draft.picture());
  if (!drum) return [];
  return advice(draft, drum, about)
    .filter(({ code }) => !code.startsWith('interval'))
    .map(adviceLine(draft));
}

const COLD_DAYS = 2;

function isFreezing(picture: Picture, today: string): boolean {
  const open = picture.problems.some(
    ({ topic, place }) =>
      topic === 'freezing' && (place === null || place === 'exit' || place.startsWith('drum')),
  );
  const air = picture.ambient.at(-1);
  return open || (air !== undefined && air.celsius <= 0 && daysBetween(air.localDate, today) <= COLD_DAYS);
}

function advice(draft: Draft, drum: DrumPicture, about: 'odour' | 'freezing' | null): DrumAdvice[] {
  const picture = draft.picture();
  const { moisture } = drum;
  const feel = moisture?.feel ?? null;
  const pct = moisture?.percent ?? null;
  const since = drum.settingSince;
  return drumAdvice(
    {
      mode: drum.mode,
      everyMin: drum.everyMin,
      fan: drum.fan,
      fanOffHours: drum.fan === 'off' && since ? hoursSince(since.at, draft.now) : null,
      odour: about === 'odour',
      freezing: about === 'freezing' || (about === null && isFreezing(picture, draft.today)),
      tooWet: pct !== null ? pct > 65 : feel === null ? null : feel === 'wet' || feel === 'dripping',
    },
    runRulesOf(picture, draft.today),
  );
}

/** How long a fan may stay off where the site has set nothing. @source from memory; as `drumAdvice` says */
const FAN_OFF_HOURS = 4;

/** Drums whose fan is off, with the moment at which that has lasted long enough. */
export function fansOff(picture: Picture, today: string): { place: string; hours: number; dueAt: string }[] {
  const hours = runRulesOf(picture, today).fanOffMaxHours ?? FAN_OFF_HOURS;
  return Object.values(picture.drums).flatMap(({ name, fan, settingSince }) => {
    if (fan !== 'off' || !settingSince) return [];
    const dueAt = new Date(Date.parse(settingSince.at) + hours * 3_600_000).toISOString();
    return [{ place: name, hours, dueAt }];
  });
}

const hoursSince = (from: string, to: string): number => (Date.parse(to) - Date.parse(from)) / 3_600_000;

const adviceLine =
  (draft: Draft) =>
  ({ code, args, source }: DrumAdvice): Line => {
    whyAdvice(draft, source);
    const given: Record<string, Arg> = {};
    for (const [name, value] of Object.entries(args)) {
      given[name] =
        typeof value !== 'number'
          ? { text: value ?? '' }
          : /Hours$/.test(name)
            ? { number: value, digits: 1 }
            : { min: value };
    }
    return say(`drum-${code}`, given);
  };

/** What stands behind an advice on interval and fan: once a reply, the site's rules in force and where they come from. */
function whyAdvice(draft: Draft, source: string): void {
  if (draft.why.some((line) => 'id' in line && line.id === 'why-drum-rules')) return;
  const { everyMin, fanOffMaxHours } = runRulesOf(draft.picture(), draft.today);
  draft.why.push(
    say('why-drum-rules', {
      low: { min: everyMin?.low ?? 0 },
      high: { min: everyMin?.high ?? 0 },
      hasRule: { text: everyMin ? 'yes' : 'no' },
      hours: { number: fanOffMaxHours ?? FAN_OFF_HOURS, digits: 1 },
      from: { term: fanOffMaxHours == null ? 'memory' : 'site', of: 'figure' },
    }),
    say('why-source', { text: { cite: source } }),
  );
}

/** `drum 3/4 full`: what that leaves, in kilograms and days. */
function levelLines(draft: Draft, record: BookRecordOf<'level'>): Line[] {
  if (record.fraction == null || !record.place) return [];
  const drum = Object.hasOwn(draft.picture().drums, record.place)
    ? draft.picture().drums[record.place]
    : null;
  if (!drum || drum.litres === null) return [];
  const rules = drumRulesOf({ picture: draft.picture(), localDate: draft.today });
  const now = drumNow(drum, draft.now, rules);
  const full = rules.fullFraction ?? USUAL_FULL;
  draft.why.push(...whyDrum(drum, now, rules));
  const room = Math.max(0, full * drum.litres - now.litres);
  return [
    say(room > 0 ? 'drum-level-room' : 'drum-level-full', {
      litres: { litres: Math.round(now.litres / 10) * 10 },
      kg: { kg: Math.round(now.kg / 10) * 10, digits: 0 },
      room: { litres: Math.round(room / 10) * 10 },
    }),
  ];
}

/** What went out, how long the oldest of it had been in, and what that does to the pile. */
function dischargeLines(draft: Draft, record: BookRecordOf<'discharge'>): Line[] {
  const name = drumName(draft.before, record.place);
  const before = name === null ? null : draft.before.drums[name];
  const oldest = before ? drumNow(before, draft.now).oldest : null;
  const lines: Line[] = [];
  if (oldest && oldest.days >= 1)
    lines.push(say('discharge-oldest', { days: { count: Math.floor(oldest.days) } }));
  if (record.pile) {
    const last = batchAt(draft.picture(), record.pile)?.joinings.at(-1);
    const id = last?.provenThen === true ? 'discharge-proven' : 'discharge-fresh';
    lines.push(say(id, { place: { place: record.pile } }));
  }
  return lines.length > 0 ? [lines.flat()] : [];
}
