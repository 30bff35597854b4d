import {
  type DrumNow,
  type DrumPicture,
  dischargeDue,
  drumNow,
  drumProofOf,
  drumRulesOf,
  drumStands,
  feedOfDrum,
  hottestOf,
  lowestOf,
  ruleSetOf,
  sanitisingOptionsOf,
  settingAt,
} from '#core';
import type { Draft } from '../draft.ts';
import { stoppedOf } from '../matters/drum.ts';
import { proofLine, reasonSay } from '../matters/proof-lines.ts';
import { stoppedSays } from '../matters/stopped.ts';
import { type Line, type Say, say } from '../say.ts';
import { whyDrum } from '../why/drum.ts';
import { assumedLines, sourceLine } from '../why/pile.ts';
import { problemLines } from './problem-lines.ts';

/** `drum?`: how full, who has been in how long, what is fed, when to let some out, how it is set, how warm. */
export function drumStatus(draft: Draft, name: string, about: unknown = null): Line[] {
  const { drums } = draft.picture();
  const drum = drums[name] ?? Object.values(drums)[0];
  if (!drum) return [say('place-unknown', { place: { place: name } })];
  if (about === 'restart') return stoppedSays(stoppedOf(draft, 'stopped', drum.name));
  const context = { picture: draft.picture(), localDate: draft.today };
  const rules = drumRulesOf(context);
  const now = drumNow(drum, draft.now, rules);
  const feed = feedOfDrum(context, drum);
  const due = dischargeDue(drum, draft.now, { feedLitresPerDay: feed?.litres ?? null }, rules);
  const fed: Say[] = feed ? [say('drum-feed', { kg: { kg: feed.kg, digits: 0 } })] : [];
  if (due) {
    fed.push(
      say(due.inDays < 1 ? 'drum-due-now' : 'drum-due', {
        days: { count: Math.ceil(due.inDays) },
        why: { term: due.because, of: 'due' },
      }),
    );
  } else if (now.oldest || now.byLevel) fed.push(say(feed ? 'drum-due-not' : 'drum-due-unknown'));
  draft.why.push(...whyDrum(drum, now, rules));
  const stands = standsLine(draft, drum.name);
  const first = stands.length > 0 || about === 'call';
  return [
    ...stands,
    ...(first ? callLine(draft, true) : []),
    drumHead(drum, now),
    ...(now.oldest ? [stayLine(now), insideLine(now)] : []),
    ...(fed.length > 0 ? [fed] : []),
    ...setLine(drum),
    ...(first ? [] : callLine(draft, false)),
    ...readLine(drum),
    ...proofLines(draft, drum),
    ...problemLines(draft, (place) => place === 'exit' || place === drum.name || place.startsWith('drum')),
  ];
}

function standsLine(draft: Draft, name: string): Line[] {
  const stands = drumStands(draft.picture(), name);
  if (!stands) return [];
  const args = { place: { place: name }, entry: { entry: stands.entry } };
  const hours = Math.floor(hoursSince(stands.at, draft.now));
  return [say('drum-stands', { ...args, hours: { count: hours } })];
}

const hoursSince = (from: string, to: string): number => (Date.parse(to) - Date.parse(from)) / 3_600_000;

const MOST_MATERIALS = 4;

/** What is in it now, by material, as the loads of the book have shrunk. */
function insideLine({ loads }: DrumNow): Line {
  const kgOf = new Map<string, number>();
  for (const { material, kgNow } of loads) kgOf.set(material, (kgOf.get(material) ?? 0) + kgNow);
  const most = [...kgOf].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1)).slice(0, MOST_MATERIALS);
  return most.map(([material, kg], at) =>
    say(at === 0 ? 'drum-inside' : 'drum-inside-also', { material: { material }, kg: { kg, digits: 0 } }),
  );
}

/** How full, in one line; the range where the loads alone say it. */
export function drumHead(drum: DrumPicture, now: DrumNow): Line {
  if (now.loads.length === 0 && !now.byLevel) return say('drum-empty', { place: { place: drum.name } });
  const holds = say('drum-holds', { place: { place: drum.name }, kg: { kg: now.kg, digits: 0 } });
  if (!now.fillPct) return [holds, say('drum-no-volume')];
  const { typical, low, high } = now.fillPct;
  return [
    holds,
    say(now.byLevel ? 'drum-fill-level' : 'drum-fill', {
      pct: { pct: typical },
      range: { pctRange: [low, high] },
      date: drum.level ? { date: drum.level.localDate } : { text: '' },
    }),
  ];
}

function stayLine({ oldest, coldest, unbooked }: DrumNow): Line {
  const parts: Say[] = [
    say('drum-oldest', { days: { count: Math.floor(oldest!.days) }, entry: { entry: oldest!.entry } }),
  ];
  if (unbooked) parts.push(say('drum-unbooked'));
  if (coldest?.warmestCelsius != null) {
    parts.push(
      say('drum-coldest', {
        entry: { entry: coldest.entry },
        celsius: { celsius: coldest.warmestCelsius },
        days: { count: Math.floor(coldest.days) },
      }),
    );
  }
  return parts;
}

/** Whom to call when it stops, where the site has said so. */
function callLine(draft: Draft, asked: boolean): Line[] {
  const whom = settingAt(draft.picture(), 'drum-call', draft.today);
  const hours = settingAt(draft.picture(), 'drum-call-hours', draft.today);
  if (typeof whom !== 'string') return asked ? [say('drum-call-nobody')] : [];
  return [
    say('drum-call-line', {
      whom: { text: whom },
      hours: { number: Number(hours ?? 0), digits: 1 },
      hasHours: { text: typeof hours === 'number' ? 'yes' : 'no' },
    }),
  ];
}

function setLine(drum: DrumPicture): Line[] {
  if (drum.everyMin === null && drum.fan === null && drum.mode === null) return [];
  return [
    [
      say('drum-set', { mode: { term: drum.mode ?? 'automatic', of: 'mode' } }),
      ...(drum.everyMin !== null ? [say('part-every', { min: { min: drum.everyMin } })] : []),
      ...(drum.fan !== null ? [say('part-fan', { fan: { term: drum.fan, of: 'fan' } })] : []),
    ],
  ];
}

function readLine(drum: DrumPicture): Line[] {
  const reading = drum.readings.at(-1);
  if (!reading) return [];
  return [
    say('drum-read', {
      low: { celsius: lowestOf(reading) },
      high: { celsius: hottestOf(reading) },
      date: { date: reading.localDate },
    }),
  ];
}

/** A drum fed daily proves in-vessel, where the regulator accepts that, or not by itself. */
function proofLines(draft: Draft, drum: DrumPicture): Line[] {
  const picture = draft.picture();
  const proof = drumProofOf(picture, drum, { at: draft.now, localDate: draft.today });
  if (!proof) return [];
  const way = settingAt(picture, 'drum-way', draft.today);
  draft.why.push(
    ...proof.reasons.slice(0, 4).map((reason) => say('why-reason', { reason: { say: reasonSay(reason) } })),
    sourceLine(proof.why.source),
    ...assumedLines([proof.why]),
  );
  if (way === 'in-vessel') return [proofLine(draft, drum.name, proof)];
  return [say(way === 'closed-pile' ? 'drum-proof-pile' : 'drum-proof-ways')];
}
