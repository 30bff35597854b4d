import type { Picture } from '#core';
import { type Line, type Say, say } from './say.ts';

/** What a setting that is watched says: caps, papers that run out, intervals of checks, where the wards lie. */
export function watchedSay(full: string, value: unknown): Say | null {
  const [name = '', of = ''] = full.split(/:(.*)/s);
  if (name === 'cap') {
    const per = { term: of, of: 'per' };
    return value === null
      ? say('setting-cap-off', { per })
      : say('setting-cap', { per, kg: { kg: value as number, digits: 0 } });
  }
  if (name === 'permit' || name === 'training') {
    const args = { what: { term: name, of: 'permit' }, name: { text: of } };
    return value === null
      ? say('setting-paper-off', args)
      : say('setting-paper', { ...args, date: { date: value as string } });
  }
  if (name === 'every') {
    const what = of === 'turn-pile' ? { term: of, of: 'setting-name' } : { term: of, of: 'chore' };
    return say('setting-every', { what, days: { count: value as number } });
  }
  if (name !== 'wards') return null;
  return value === null
    ? say('setting-wards-off')
    : say('setting-wards', { point: { term: value as string, of: 'compass' } });
}

/** The watched settings as they stand on a day, a line each. */
export function watchedLines(picture: Picture, today: string): Line[] {
  return Object.entries(picture.settings).flatMap(([name, lines]): Line[] => {
    const value = lines.findLast(({ from }) => from <= today)?.value;
    const line = value == null ? null : watchedSay(name, value);
    return line ? [say('settings-also', { what: { say: line } })] : [];
  });
}
