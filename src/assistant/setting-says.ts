import { settingAt } from '#core';
import type { BookRecordOf } from '#records';
import type { Draft } from './draft.ts';
import { heatSettingSay } from './heat-settings-says.ts';
import { type Arg, type Say, say } from './say.ts';
import { watchedSay } from './watched-says.ts';

const term = (of: string, name: string): Arg => ({ term: name, of });

/** What a setting says, by name: `cart tare 15.5 kg`, `target 60 t a year`. */
export function settingSay(record: BookRecordOf<'setting'>, draft: Draft): Say {
  const [name = '', of = ''] = record.name.split(/:(.*)/s);
  const { value } = record;
  const container: Arg = { container: of, count: 1 };
  if (name === 'tare') return say('setting-tare', { container, kg: { kg: value as number } });
  if (name === 'litres') return say('setting-litres', { container, litres: { litres: value as number } });
  if (name === 'factor') return say('setting-factor', { container, kg: { kg: value as number } });
  if (name === 'moisture')
    return say('setting-moisture', { material: { material: of }, pct: { pct: value as number } });
  if (name === 'hold') {
    const lifted = value === false || value === null || value === 'off';
    return say(lifted ? 'setting-hold-off' : 'setting-hold', {
      place: { place: of },
      why: { text: plain(value) },
    });
  }
  if (name === 'target') return say('setting-target', { tonnes: { tonnes: value as number } });
  if (name === 'place') {
    const { latitude, longitude } = value as { latitude: number; longitude: number };
    const where = `${latitude.toFixed(4)}, ${longitude.toFixed(4)}`;
    return say('setting-other', { name: term('setting-name', 'place'), value: { text: where } });
  }
  if (name === 'summary') {
    const { day, at } = value as { day: string; at: string };
    return say('setting-week', { day: term('weekday-full', day), clock: { clock: at } });
  }
  if (name === 'morning') {
    return say('setting-morning', { clock: { clock: (value as { at: string }).at } });
  }
  if (name === 'recipe') {
    if (value === null) return say('setting-no-recipe');
    const { chips, food } = value as { chips: number; food: number };
    return say('setting-ratio', { chips: { number: chips }, food: { number: food } });
  }
  const heat = heatSettingSay(record.name, value);
  if (heat) return heat;
  const watched = watchedSay(record.name, value);
  if (watched) return watched;
  const drum = drumSettingSay(record.name, of, value);
  if (drum) return drum;
  if (name === 'accepts' && value !== null && typeof value === 'object' && !Array.isArray(value)) {
    const { goesIn, staysOut } = newlyAccepted(value as Record<string, boolean>, draft);
    return say('setting-accepts', {
      in: listed(goesIn),
      out: listed(staysOut),
      has: { text: goesIn.length === 0 ? 'out' : staysOut.length === 0 ? 'in' : 'both' },
    });
  }
  if (name === 'people-nearby') return say('setting-nearby', { nearby: { text: String(value) } });
  if (name === 'cautions') return say('setting-cautions', { on: { text: String(value) } });
  if (name === 'keep-messages') return say('setting-keep', { days: { count: value as number } });
  return say('setting-other', { name: term('setting-name', record.name), value: { text: plain(value) } });
}

/** One material by its name; several as they stand in the list. */
const listed = (items: readonly string[]): Arg =>
  items.length === 1 ? { material: items[0]! } : { text: items.join(', ').replaceAll('-', ' ') };

/** Of a list that grew, the lines that are new or were changed; all of it where nothing was. */
function newlyAccepted(
  list: Record<string, boolean>,
  draft: Draft,
): { goesIn: string[]; staysOut: string[] } {
  const before = settingAt(draft.before, 'accepts', draft.today) ?? draft.before.base.accepts;
  const had = (item: string): boolean | undefined =>
    Array.isArray(before)
      ? before.includes(item) || (before.includes(`no ${item}`) ? false : undefined)
      : (before as Record<string, boolean> | null | undefined)?.[item];
  const lines = Object.entries(list);
  const changed = lines.filter(([item, may]) => had(item) !== may);
  const shown = changed.length > 0 ? changed : lines.slice(-1);
  const named = (may: boolean) => shown.filter((line) => line[1] === may).map(([item]) => item);
  return { goesIn: named(true), staysOut: named(false) };
}

const MATERIAL_FIGURES = ['carbon', 'nitrogen', 'ash', 'density', 'cn'];

/** Settings of the drum, of the mix, and figures of a material. */
function drumSettingSay(full: string, of: string, value: unknown): Say | null {
  const [name = ''] = full.split(':');
  const { low, high } = (value ?? {}) as { low?: number; high?: number };
  const range = { low: { number: low ?? 0 }, high: { number: high ?? 0 } };
  if (name === 'mix-water') return say('setting-mix-water', range);
  if (name === 'mix-cn') return say('setting-mix-cn', range);
  if (name === 'drum-interval') return say('setting-drum-interval', range);
  if (name === 'drum-way') return say('setting-drum-way', { way: { term: plain(value), of: 'drum-way' } });
  if (name === 'drum-call') return say('setting-drum-call', { whom: { text: plain(value) } });
  if (MATERIAL_FIGURES.includes(name) && of) {
    const fresh = (value as { fresh?: number } | null)?.fresh;
    return say(`setting-${name}`, {
      material: { material: of },
      number: { number: fresh ?? Number(value) },
      hasFresh: { text: fresh === undefined ? 'no' : 'yes' },
    });
  }
  const number = { number: { number: name === 'drum-full' ? Number(value) * 100 : Number(value) } };
  return PLAIN_DRUM.includes(name) ? say(`setting-${name}`, number) : null;
}

const PLAIN_DRUM = ['drum-days', 'drum-full', 'drum-call-hours', 'fan-off-hours', 'drum-least-hours'];

function plain(value: unknown): string {
  if (value === null || value === undefined) return '';
  if (Array.isArray(value)) return value.map(plain).join(', ');
  if (typeof value === 'object' && ('low' in value || 'fromCm' in value)) {
    const { low, high, fromCm, toCm } = value as Record<string, number>;
    return `${low ?? fromCm}–${high ?? toCm}`;
  }
  if (typeof value === 'object') return Object.values(value).map(plain).join(' ');
  return String(value);
}
