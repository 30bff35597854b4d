import type { Site } from '#records';
import type { Picture, SettingLine } from './types.ts';

type Settled = Pick<Picture, 'base' | 'settings'>;

/** Where a setting by its name stands in the site file. */
function baseValue(site: Site, name: string): unknown {
  const [what, of] = splitName(name);
  if (of !== null) {
    if (what === 'tare') return site.containers[of]?.tareKg;
    if (what === 'litres') return site.containers[of]?.litres;
    if (what === 'holds') return site.containers[of]?.holds;
    if (what === 'unit') return (site.units as Record<string, unknown>)[of];
    if (what === 'safety') return (site.safety as Record<string, unknown> | null | undefined)?.[of];
    return undefined;
  }
  const field = BASE_FIELDS[name];
  return field ? site[field] : undefined;
}

const BASE_FIELDS: Record<string, keyof Site> = {
  name: 'name',
  'time-zone': 'timeZone',
  languages: 'languages',
  'day-order': 'dayOrder',
  'week-starts': 'weekStarts',
  'year-starts': 'yearStarts',
  target: 'targetTonnesPerYear',
  'rule-set': 'ruleSet',
  recipe: 'recipe',
  summary: 'summary',
  morning: 'morning',
};

function splitName(name: string): [string, string | null] {
  const colon = name.indexOf(':');
  return colon < 0 ? [name, null] : [name.slice(0, colon), name.slice(colon + 1)];
}

/** All values that a setting has had, oldest first; the site file's own holds from always. */
export function settingsNamed(picture: Settled, name: string): SettingLine[] {
  const told = Object.hasOwn(picture.settings, name) ? picture.settings[name]! : [];
  const value = baseValue(picture.base, name);
  return value === undefined || value === null ? told : [{ from: '', at: null, value, entry: 0 }, ...told];
}

/**
 * The value of a setting in force on a local date; undefined where nobody has set it and the site file is silent.
 * A setting told in the course of a day counts for the whole of that day here.
 * @source none needed: the last one that holds
 * @example settingAt(picture, 'target', '2026-06-17') // 60
 */
export const settingAt = (picture: Settled, name: string, localDate: string): unknown =>
  settingsNamed(picture, name).findLast(({ from }) => from <= localDate)?.value;
