import { type Picture, settingAt } from '#core';
import type { DayOrder, Language, Recipe, RuleSetName, Site, Units, Weekday } from '#records';

/** The site's settings as they stand on a day: its file, and what has been set since. */
export type Settings = {
  name: string;
  timeZone: string;
  languages: Language[];
  units: Units;
  dayOrder: DayOrder;
  weekStarts: Site['weekStarts'];
  yearStarts: number;
  targetTonnesPerYear: number | null;
  ruleSet: RuleSetName | null;
  recipe: Recipe | null;
  summary: { day: Weekday; at: string } | null;
  morning: { at: string } | null;
  peopleNearby: Site['peopleNearby'] | null;
  safety: {
    emergencyNumber?: string | null;
    address?: string | null;
    isolator?: string | null;
    firstAider?: string | null;
  };
};

export function settingsOf(picture: Picture, at: string): Settings {
  const { base } = picture;
  const now = <T>(name: string, otherwise: T): T =>
    (settingAt(picture, name, at) as T | undefined) ?? otherwise;
  return {
    name: now('name', base.name),
    timeZone: now('time-zone', base.timeZone),
    languages: now('languages', base.languages),
    units: {
      mass: now('unit:mass', base.units.mass),
      temperature: now('unit:temperature', base.units.temperature),
      volume: now('unit:volume', base.units.volume),
      length: now('unit:length', base.units.length),
    },
    dayOrder: now('day-order', base.dayOrder),
    weekStarts: now('week-starts', base.weekStarts),
    yearStarts: now('year-starts', base.yearStarts),
    targetTonnesPerYear: now('target', base.targetTonnesPerYear ?? null),
    ruleSet: now('rule-set', base.ruleSet ?? null),
    // Taken back it is null, which is not the file's own.
    recipe: (settingAt(picture, 'recipe', at) ?? null) as Recipe | null,
    summary: now('summary', base.summary ?? null),
    morning: now('morning', base.morning ?? null),
    peopleNearby: now('people-nearby', base.peopleNearby ?? null),
    safety: {
      emergencyNumber: now('safety:emergencyNumber', base.safety?.emergencyNumber),
      address: now('safety:address', base.safety?.address),
      isolator: now('safety:isolator', base.safety?.isolator),
      firstAider: now('safety:firstAider', base.safety?.firstAider),
    },
  };
}
