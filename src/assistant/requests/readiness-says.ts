import type { CriterionState, Readiness } from '#core';
import { argOf } from '../matters/proof-lines.ts';
import { type Arg, type Say, say } from '../say.ts';

/** Criteria whose own figures say what is missing; of the others it is what would settle them. */
const BY_KEY = new Set(['been-hot', 'age', 'turned', 'sanitised', 'labs']);

/** What a pile still lacks to be ready, each in a few words and once. */
export function missingSays({ criteria }: Readiness): Say[] {
  const said = new Map<string, Say>();
  for (const each of criteria) {
    if (each.state !== 'not-yet' && each.state !== 'unknown') continue;
    const one = missingSay(each);
    if (one && !said.has(one.id)) said.set(one.id, one);
  }
  return [...said.values()];
}

function missingSay({ key, need, why, on }: CriterionState): Say | null {
  const args: Record<string, Arg> = {};
  for (const [name, value] of Object.entries(why.args)) args[name] = argOf(name, value);
  if (on) args.on = { date: on };
  // How far the proof is stands in a line of its own.
  if (key === 'sanitised') return null;
  if (BY_KEY.has(key) && need !== 'start-date') return say(`lacks-${key}`, args);
  if (key === 'curing' && why.args.from !== undefined) return say('lacks-curing', args);
  if (key === 'near-ambient' && need === 'wait') return say('lacks-near-ambient', args);
  if (key === 'no-reheating' && need === 'wait') return say('lacks-no-reheating', args);
  return say(`lacks-${need ?? 'reading'}`, args);
}
