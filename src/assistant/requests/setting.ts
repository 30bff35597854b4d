import { DAY_COUNTS, LAB_STANDARDS, settingAt } from '#core';
import type { Entry, Request, RuleSetName } from '#records';
import { RULE_SETS, Site } from '#records';
import type { Draft } from '../draft.ts';
import { entryLine } from '../entry-lines.ts';
import { heatSettingLines } from '../heat-settings-says.ts';
import { ruleSetChosen } from '../matters/rule-set.ts';
import { weighed } from '../nets.ts';
import { pageAddress } from '../page-address.ts';
import { type Arg, say } from '../say.ts';
import { settingsOf } from '../settings-of.ts';
import { watchedLines } from '../watched-says.ts';

type Check = (value: unknown, draft: Draft) => boolean;

const inRange =
  (low: number, high: number): Check =>
  (value) =>
    typeof value === 'number' && Number.isFinite(value) && value >= low && value <= high;
const shaped =
  (field: keyof typeof Site.in.shape): Check =>
  (value) =>
    Site.in.shape[field].safeParse(value).success;
const range =
  (low: string, high: string, least: number, most: number): Check =>
  (value) => {
    const { [low]: from, [high]: to } = (value ?? {}) as Record<string, unknown>;
    return typeof from === 'number' && typeof to === 'number' && from >= least && to >= from && to <= most;
  };
/** A share of the dry mass, or of the fresh mass where it was said so: `{ fresh: 0.8 }`. */
const percentOfDry =
  (most: number): Check =>
  (value) => {
    const figure = (value as { fresh?: unknown } | null)?.fresh ?? value;
    return typeof figure === 'number' && figure >= 0 && figure <= most;
  };
const oneOf =
  (...values: unknown[]): Check =>
  (value) =>
    values.includes(value);
const text: Check = (value) => typeof value === 'string' && value.trim().length > 0 && value.length <= 300;

const orNone =
  (check: Check): Check =>
  (value, draft) =>
    value === null || check(value, draft);
const isDate: Check = (value) =>
  typeof value === 'string' && /^\d{4}-\d{2}-\d{2}$/.test(value) && !Number.isNaN(Date.parse(value));
const COMPASS = ['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west'];

/** What may be set, and within which bounds; the part before a colon for settings of a thing. */
const CHECKS: Record<string, Check> = {
  tare: inRange(0.05, 2000),
  litres: inRange(0.5, 100_000),
  factor: inRange(0.01, 50_000),
  holds: text,
  moisture: inRange(0, 99),
  density: inRange(20, 2000),
  carbon: percentOfDry(60),
  nitrogen: percentOfDry(20),
  ash: percentOfDry(99),
  /** Carbon to nitrogen, as a laboratory gives it. */
  cn: inRange(1, 1000),
  /** The window of water aimed at, never over 65 %; the band of C:N, where the site has one. */
  'mix-water': range('low', 'high', 30, 65),
  'mix-cn': range('low', 'high', 10, 100),
  target: inRange(0.01, 1_000_000),
  'unit:mass': oneOf('kg', 'lb'),
  'unit:temperature': oneOf('C', 'F'),
  'unit:volume': oneOf('L', 'gal', 'm3', 'yd3'),
  'unit:length': oneOf('cm', 'in'),
  'time-zone': shaped('timeZone'),
  'day-order': oneOf('dmy', 'mdy', 'ymd'),
  languages: shaped('languages'),
  'week-starts': oneOf('monday', 'sunday', 'saturday'),
  'year-starts': inRange(1, 12),
  summary: shaped('summary'),
  morning: shaped('morning'),
  'rule-set': oneOf(...RULE_SETS),
  recipe: shaped('recipe'),
  accepts: () => true,
  safety: text,
  'safety:emergencyNumber': text,
  'safety:address': text,
  'safety:isolator': text,
  'safety:firstAider': text,
  place: shaped('place'),
  aeration: oneOf('forced', 'breathing', 'none'),
  /** The daily cautions; those of lock-out, sharps and fire are no setting. */
  cautions: oneOf('on', 'off'),
  /** Who is near and is harmed more by dust and spores. */
  'people-nearby': oneOf('wards', 'classrooms', 'none'),
  /** Days that the words of messages are kept as evidence. */
  'keep-messages': inRange(1, 36_500),
  hold: (value) => value === false || text(value, undefined as never),
  'lab-standard': oneOf(...LAB_STANDARDS),
  'vector-attraction': oneOf('on', 'off'),
  'day-count': oneOf(...DAY_COUNTS),
  depth: range('fromCm', 'toCm', 0, 300),
  band: inRange(40, 100),
  /** From here on nothing is opened: a site may be more careful, never less. */
  'band:do-not-open': inRange(40, 80),
  'band:act-at-once': inRange(40, 85),
  'drum-way': oneOf('in-vessel', 'closed-pile'),
  'drum-days': inRange(0.5, 60),
  'drum-full': inRange(0.1, 1),
  'drum-interval': range('low', 'high', 1, 1440),
  'drum-least-hours': inRange(1, 1440),
  'drum-no-short-circuit': oneOf(true, false),
  'fan-off-hours': inRange(0.25, 48),
  'drum-call': text,
  'drum-call-hours': inRange(0.25, 240),
  'order-days': inRange(1, 90),
  /** What a permit lets in of a week or a month, in kg; the day a paper runs out; null takes it away. */
  'cap:week': orNone(inRange(10, 1_000_000)),
  'cap:month': orNone(inRange(10, 4_000_000)),
  permit: orNone(isDate),
  training: orNone(isDate),
  'every:check-scale': inRange(1, 1100),
  'every:check-thermometer': inRange(1, 1100),
  'every:check-fan': inRange(1, 1100),
  'every:check-stop-button': inRange(1, 1100),
  'every:turn-pile': inRange(1, 365),
  wards: orNone(oneOf(...COMPASS)),
  name: text,
  'page-address': (value) => typeof value === 'string' && pageAddress(value) !== null,
};

/** `set cart tare 15.5`, `set target 60 t`, `set summary monday 7:00`: checked, then a line of the book. */
export function setting(draft: Draft, request: Request): void {
  const name = asWritten(draft, request.name ?? '');
  if (!draft.mayDecide) {
    draft.lines.push(say('coordinators-only'));
    return;
  }
  const check = CHECKS[name] ?? CHECKS[name.split(':')[0]!];
  if (!check) {
    draft.lines.push(say('setting-unknown', { name: { text: name } }));
    return;
  }
  if (!check(request.value, draft)) {
    if (name === 'lab-standard') {
      draft.lines.push(say('setting-one-of', { values: { text: LAB_STANDARDS.join(', ') } }));
      return;
    }
    const [what, which = ''] = name.split(/:(.*)/s);
    const named: Arg = what === 'band' ? { term: which, of: 'heat-band' } : { text: name };
    draft.lines.push(say('setting-out-of-range', { name: named }));
    return;
  }
  const [what, of] = name.split(/:(.*)/s);
  if (what === 'tare') {
    const [container, label] = splitLabel(of ?? 'cart');
    setTare(draft, container, label, request.value as number, fromDay(request));
    return;
  }
  const value = name === 'accepts' ? withAccepted(draft, request.value) : request.value;
  draft.lines.push(entryLine(draft, write(draft, name, value, fromDay(request))));
  if (name === 'rule-set') ruleSetChosen(draft, request.value as RuleSetName);
}

/** A paper that the book knows already is the same one however its name is capitalised. */
function asWritten(draft: Draft, name: string): string {
  if (!/^(?:permit|training):/.test(name)) return name;
  const known = Object.keys(draft.picture().settings);
  return known.find((each) => each.toLowerCase() === name.toLowerCase()) ?? name;
}

/** What may go in is a list that grows: a new line joins those that are there, `no …` as what stays out. */
function withAccepted(draft: Draft, value: unknown): Record<string, boolean> {
  const picture = draft.picture();
  const before = settingAt(picture, 'accepts', draft.today) ?? picture.base.accepts;
  const list: Record<string, boolean> = Array.isArray(before)
    ? Object.fromEntries(before.map((item) => refusedOrNot(String(item), true)))
    : { ...(before as Record<string, boolean>) };
  for (const [item, may] of Object.entries((value ?? {}) as Record<string, boolean>)) {
    const [name, yes] = refusedOrNot(item, may);
    // Said anew it is the newest of the list, which is what the reply names.
    delete list[name];
    list[name] = yes;
  }
  return list;
}

/** `no meat` is meat that stays out. */
function refusedOrNot(item: string, may: boolean): [string, boolean] {
  const refused = /^(?:no|not|non|pas (?:de |d'))\s*(?=\S)(?<=[\s'])/i.exec(item);
  return refused ? [item.slice(refused[0].length), false] : [item, may];
}

const fromDay = (request: Request): string | null =>
  typeof request.from === 'string' && /^\d{4}-\d{2}-\d{2}/.test(request.from) ? request.from : null;

function write(draft: Draft, name: string, value: unknown, from: string | null): Entry {
  return draft.add({ kind: 'setting', name, value, ...(from ? { from, when: from } : {}) });
}

const splitLabel = (of: string): [string, string | null] => {
  const [container = 'cart', ...label] = of.split(' ');
  return [container, label.length > 0 ? label.join(' ') : null];
};

/** A tare: what waited for it is completed and named; what had one keeps it. */
/** Whether an empty one can weigh that: less than each full one that waits for it. */
export function couldBeTare(draft: Draft, container: string, kg: number): boolean {
  const waiting = draft.picture().pending.filter((line) => line.container === container);
  const gross = waiting.map(({ entry }) => {
    const { kg: all, count } = (draft.book.entry(draft.siteId, entry)?.record ?? {}) as {
      kg?: number;
      count?: number;
    };
    return (all ?? Number.POSITIVE_INFINITY) / (count ?? 1);
  });
  return kg > 0 && gross.every((each) => kg < each);
}

export function setTare(
  draft: Draft,
  container: string,
  label: string | null,
  kg: number,
  from: string | null = null,
): void {
  const waiting = draft.picture().pending.filter((line) => line.container === container);
  const entry = write(draft, `tare:${label ? `${container} ${label}` : container}`, kg, from);
  draft.lines.push(entryLine(draft, entry));
  const completed = waiting
    .map((line) => draft.book.entry(draft.siteId, line.entry))
    .filter((line): line is Entry => line !== null && line.voidedBy === null)
    .map((line) => ({ number: line.number, weight: weighed(draft.picture(), line) }));
  for (const { number, weight } of completed.slice(0, 6)) {
    if (weight.is === 'net' && weight.tareKg !== null) {
      draft.lines.push(
        say('completed', {
          entry: { entry: number },
          net: { kg: weight.netKg },
          gross: { kg: weight.grossKg, bare: true },
          tare: { kg: weight.tareKg, bare: true },
        }),
      );
    }
  }
  if (completed.length > 6) draft.lines.push(say('more-entries', { count: { count: completed.length - 6 } }));
}

/** What is set, and how to change it. */
export function settings(draft: Draft): void {
  const picture = draft.picture();
  const now = settingsOf(picture, draft.today);
  draft.lines.push(
    say('settings-head', { site: { text: now.name }, zone: { text: now.timeZone } }),
    say('settings-units', { mass: { text: now.units.mass }, temperature: { text: now.units.temperature } }),
    now.targetTonnesPerYear === null
      ? say('settings-no-target')
      : say('settings-target', { tonnes: { tonnes: now.targetTonnesPerYear } }),
  );
  const containers = { ...picture.base.containers } as Record<string, { tareKg?: number | null }>;
  for (const name of Object.keys(picture.settings)) {
    if (name.startsWith('tare:')) {
      containers[name.slice(5)] = { tareKg: picture.settings[name]!.at(-1)!.value as number };
    }
  }
  for (const [name, { tareKg }] of Object.entries(containers)) {
    const [container, label] = splitLabel(name);
    const arg = { container, count: 1, label };
    draft.lines.push(
      tareKg == null
        ? say('settings-no-tare', { container: arg })
        : say('settings-tare', { container: arg, kg: { kg: tareKg } }),
    );
  }
  draft.lines.push(say('settings-nearby', { nearby: { text: now.peopleNearby ?? 'unsaid' } }));
  draft.lines.push(
    now.ruleSet === null
      ? say('settings-no-rule-set')
      : say('settings-rule-set', { name: { text: now.ruleSet } }),
    ...heatSettingLines(picture, draft.today),
    ...watchedLines(picture, draft.today),
    say('settings-how'),
  );
}
