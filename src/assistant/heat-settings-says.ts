import { type Picture, settingAt } from '#core';
import { type Line, type Say, say } from './say.ts';

/** What a setting about heat, curing and the laboratory says; null for any other. */
export function heatSettingSay(full: string, value: unknown): Say | null {
  const [name = '', of = ''] = full.split(/:(.*)/s);
  if (name === 'band')
    return say('setting-band', { band: { term: of, of: 'heat-band' }, celsius: { celsius: Number(value) } });
  if (name === 'depth') {
    const { fromCm, toCm } = value as { fromCm: number; toCm: number };
    return say('setting-depth', { from: { cm: fromCm }, to: { cm: toCm } });
  }
  if (name === 'lab-standard') return say('setting-lab-standard', { name: { text: String(value) } });
  if (name === 'day-count') return say('setting-day-count', { way: { text: String(value) } });
  if (name === 'aeration') return say('setting-aeration', { way: { text: String(value) } });
  if (name === 'vector-attraction') return say('setting-vectors', { on: { text: String(value) } });
  return null;
}

const NAMES = ['day-count', 'depth', 'aeration', 'vector-attraction', 'lab-standard'];

/** The settings about heat as they stand on a day, in one line; none where the rule's own hold. */
export function heatSettingLines(picture: Picture, today: string): Line[] {
  const bands = Object.keys(picture.settings).filter((name) => name.startsWith('band:'));
  const says = [...NAMES, ...bands].flatMap((name) => {
    const value = settingAt(picture, name, today);
    const one = value == null ? null : heatSettingSay(name, value);
    return one ? [one] : [];
  });
  return says.length > 0 ? [[say('settings-heat'), ...says]] : [];
}
