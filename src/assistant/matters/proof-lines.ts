import { localTimeOf, type Sanitising, type SanitisingReason, type Vectors } from '#core';
import type { Draft } from '../draft.ts';
import { type Arg, type Line, type Say, say } from '../say.ts';

/** Whole days and hours; of a rule that lasts an hour or two its tenths, always rounded down. */
const inSteps = (counted: number, { unit, needed }: Sanitising): number =>
  unit === 'hours' && needed < 24 ? Math.floor(counted * 10 + 1e-9) / 10 : Math.floor(counted);

/** How far the proof of heat is, with the reading that keeps it going and by when. */
export function proofLine(draft: Draft, place: string, proof: Sanitising): Line {
  const { counted, needed, unit, turns, next } = proof;
  const args = {
    place: { place },
    // A run that goes on after it was met does not count beyond what is asked for.
    counted: { number: Math.min(inSteps(counted, proof), needed), digits: 1 },
    needed: { number: needed, digits: 0 },
    unit: { term: unit, of: 'unit' },
  };
  if (proof.verdict === 'met') return say('proof-met', args);
  const parts: Say[] = [];
  if (proof.verdict === 'cannot-show') parts.push(say('proof-cannot-show', args));
  else if (next && (counted > 0 || proof.since !== null)) {
    const date = next.at ? localTimeOf(next.at, draft.manner.timeZone) : next.localDate;
    parts.push(say('proof-not-yet', { ...args, date: { date } }));
  } else parts.push(say('proof-none', args));
  if (turns.needed > 0) parts.push(turnsSay(turns));
  const hindered = proof.reasons.find(({ code }) => TELLING.includes(code));
  if (hindered && (counted === 0 || proof.verdict === 'cannot-show')) parts.push(reasonSay(hindered));
  return parts;
}

/** How far vector attraction is: warm for long enough that flies and rats leave it alone. */
export function vectorsSay({ proof }: Vectors): Say {
  const { counted, needed, verdict, reasons } = proof;
  const cool = reasons.find((reason) => reason.code === 'mean-too-low');
  const args = {
    counted: { number: Math.min(Math.floor(counted), needed), digits: 0 },
    needed: { number: needed, digits: 0 },
    level: { celsius: 40 },
    above: { celsius: 45 },
  };
  if (verdict === 'met') return say('vectors-met', args);
  return cool
    ? say('vectors-cool', { ...args, mean: { celsius: cool.meanCelsius } })
    : say(counted > 0 ? 'vectors-not-yet' : 'vectors-not-shown', args);
}

const turnsSay = ({ counted, needed }: Sanitising['turns']): Say =>
  say('proof-turns', { counted: { number: counted, digits: 0 }, needed: { number: needed, digits: 0 } });

/** Reasons that say at once why nothing counts, the most telling first in the core's own order. */
const TELLING: SanitisingReason['code'][] = [
  'aeration-breathing',
  'in-doubt',
  'not-at-depth',
  'above-ceiling',
  'low',
  'gap',
  'fresh',
  'joined-unproven',
  'proof-in-doubt',
  'fed-daily',
  'exit-only',
  'one-point',
  'residence-unknown',
  'residence-short',
  'short-circuit-unknown',
  'short-circuit',
];

/** One reason of a verdict as a short clause. */
export function reasonSay(reason: SanitisingReason): Say {
  const { code, ...figures } = reason;
  const args: Record<string, Arg> = {};
  for (const [name, value] of Object.entries(figures)) args[name] = argOf(name, value);
  // A rule of an hour is broken within the day.
  if (reason.code === 'gap' && reason.from === reason.to) return say('reason-gap-within', args);
  return say(`reason-${code}`, args);
}

export function argOf(name: string, value: unknown): Arg {
  if (typeof value === 'number') {
    if (/celsius$|C$/i.test(name) && name !== 'riseC') return { celsius: value };
    if (name === 'riseC') return { rise: value };
    if (name.endsWith('Cm')) return { cm: value };
    if (name === 'entry') return { entry: value };
    return { number: value, digits: 0 };
  }
  if (typeof value === 'boolean') return { text: value ? 'yes' : 'no' };
  if (typeof value !== 'string') return { text: '' };
  if (/^\d{4}-\d{2}-\d{2}/.test(value)) return { date: value.slice(0, 10) };
  return name === 'unit' ? { term: value, of: 'unit' } : { place: value };
}
