import { z } from 'zod';

export const LANGUAGES = ['en', 'fr', 'es'] as const;
export const Language = z.enum(LANGUAGES);
export type Language = z.infer<typeof Language>;

export const Weekday = z.enum(['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday']);
export type Weekday = z.infer<typeof Weekday>;

export const RULE_SETS = [
  'vessel-3d',
  'aerated-pile-3d',
  'windrow-15d',
  'catering-60-2d',
  'catering-70-1h',
  'housed-windrow-8d',
  'eu-70-3d',
  'eu-65-5d',
  'eu-60-7d',
  'eu-55-14d',
  'organic-vessel-3d',
  'organic-windrow-15d',
] as const;
export const RuleSetName = z.enum(RULE_SETS);
export type RuleSetName = z.infer<typeof RuleSetName>;

export const Units = z.object({
  mass: z.enum(['kg', 'lb']).default('kg'),
  temperature: z.enum(['C', 'F']).default('C'),
  volume: z.enum(['L', 'gal', 'm3', 'yd3']).default('L'),
  length: z.enum(['cm', 'in']).default('cm'),
});
export type Units = z.infer<typeof Units>;

export const DayOrder = z.enum(['dmy', 'mdy', 'ymd']);
export type DayOrder = z.infer<typeof DayOrder>;

const positive = z.number().finite().positive();
export const Container = z.object({
  tareKg: positive.max(2000).nullish(),
  litres: positive.max(100_000).nullish(),
  holds: z.string().nullish(),
});
export type Container = z.infer<typeof Container>;

export const Drum = z.object({ name: z.string().min(1), litres: positive.nullish() });
export type Drum = z.infer<typeof Drum>;

export const Recipe = z.object({
  chips: positive,
  food: positive,
  by: z.enum(['volume', 'mass']).default('volume'),
});
export type Recipe = z.infer<typeof Recipe>;

const clock = z.string().regex(/^([01]?\d|2[0-3]):[0-5]\d$/);

const timeZone = z.string().refine(
  (zone) => {
    try {
      new Intl.DateTimeFormat('en', { timeZone: zone });
      return true;
    } catch {
      return false;
    }
  },
  { message: 'is not a time zone this machine knows' },
);

/** A site as its file says it. Unknown fields are dropped (the loader warns about them). */
export const Site = z
  .object({
    name: z.string().trim().min(1).max(120),
    timeZone,
    languages: z.array(Language).min(1).default(['en']),
    units: Units.default(Units.parse({})),
    dayOrder: DayOrder.optional(),
    weekStarts: z.enum(['monday', 'sunday', 'saturday']).default('monday'),
    yearStarts: z.number().int().min(1).max(12).default(1),
    targetTonnesPerYear: positive.nullish(),
    containers: z.record(z.string(), Container).default({}),
    drums: z.array(Drum).default([]),
    piles: z.array(z.string().min(1)).default([]),
    sources: z.array(z.string().min(1)).default([]),
    accepts: z.union([z.array(z.string()), z.record(z.string(), z.boolean())]).default([]),
    materials: z.array(z.string()).default([]),
    recipe: Recipe.nullish(),
    summary: z.object({ day: Weekday, at: clock }).nullish(),
    morning: z.object({ at: clock }).nullish(),
    ruleSet: RuleSetName.nullish(),
    safety: z
      .object({
        emergencyNumber: z.string().nullish(),
        address: z.string().nullish(),
        isolator: z.string().nullish(),
        firstAider: z.string().nullish(),
      })
      .nullish(),
    /** Who is near and is harmed more by dust and spores. Not said: somebody is. */
    peopleNearby: z.enum(['wards', 'classrooms', 'none']).nullish(),
    place: z.object({ latitude: z.number(), longitude: z.number() }).nullish(),
  })
  .transform((site) => ({ ...site, dayOrder: site.dayOrder ?? (site.units.mass === 'lb' ? 'mdy' : 'dmy') }));
export type Site = z.infer<typeof Site>;

export const SITE_FIELDS = [
  'name',
  'timeZone',
  'languages',
  'units',
  'dayOrder',
  'weekStarts',
  'yearStarts',
  'targetTonnesPerYear',
  'containers',
  'drums',
  'piles',
  'sources',
  'accepts',
  'materials',
  'recipe',
  'summary',
  'morning',
  'ruleSet',
  'safety',
  'peopleNearby',
  'place',
] as const;
