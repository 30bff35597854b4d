import { sumKg } from './sum-kg.ts';

/** A setting with the local day from which it holds (`at`: the instant, where no day was said) and its line's number. */
export type SettingValue = { from: string; at?: string | null; value: unknown; entry: number };
/** Settings by name (`tare:cart`, `tare:cart 5`), oldest first or not. */
export type SettingTimeline = Readonly<Record<string, readonly SettingValue[]>>;
/** Containers as the site's file gives them: those figures hold from always. */
export type BaseContainers = Readonly<Record<string, { tareKg?: number | null; litres?: number | null }>>;

type Dated = { from: string; at: string | null; kg: number; entry: number };

/**
 * The empty weight (kg) in force for a container on a local day: the latest set on or before that day, a
 * labelled one's own before that of its kind; where none was known yet, the first one told afterwards. So an
 * unknown tare, once told, completes the weights that waited for it, and a new one changes no old net.
 * `entry` and `at` are the number and the instant of the weight's own line: a tare told later on the same day
 * leaves it alone, also where the weight has been amended since. Null
 * where no tare is known at all.
 * @source the log book's own rule; no published source.
 * @example tareAt({ 'tare:cart': [{ from: '2026-06-01', value: 16, entry: 9 }] }, { cart: { tareKg: 15.5 } }, 'cart', null, '2026-05-31') // 15.5
 */
export function tareAt(
  timeline: SettingTimeline,
  base: BaseContainers,
  container: string,
  label: string | number | null,
  localDate: string,
  entry: number | null = null,
  at: string | null = null,
): number | null {
  const own = label === null ? [] : datedTares(timeline, base, `${container} ${label}`);
  const kind = datedTares(timeline, base, container);
  const day = localDate.slice(0, 10);
  const inForce = (line: Dated) =>
    line.at !== null && at !== null && line.at !== at
      ? line.at < at
      : line.from < day || (line.from === day && (entry === null || line.entry < entry));
  const latest = (lines: Dated[]) => lines.filter(inForce).at(-1);
  const known = latest(own) ?? latest(kind);
  if (known) return known.kg;
  const after = [...own, ...kind].sort(byDay);
  return after[0]?.kg ?? null;
}

const byDay = (a: Dated, b: Dated): number =>
  ordered(a.from, b.from) || ordered(a.at ?? '', b.at ?? '') || a.entry - b.entry;
const ordered = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

function datedTares(timeline: SettingTimeline, base: BaseContainers, name: string): Dated[] {
  const lines: Dated[] = [];
  const given = Object.hasOwn(base, name) ? base[name]?.tareKg : null;
  if (given != null) lines.push({ from: '', at: null, kg: given, entry: 0 });
  const set = Object.hasOwn(timeline, `tare:${name}`) ? timeline[`tare:${name}`]! : [];
  for (const { from, at, value, entry } of set)
    if (typeof value === 'number') lines.push({ from: from.slice(0, 10), at: at ?? null, kg: value, entry });
  return lines.sort(byDay);
}

/** A weight as it was said: gross unless said net or said with no container. */
export type Weighed = {
  kg: number;
  basis?: 'gross' | 'net' | null;
  container?: string | null;
  /** Containers that this one weight covers. */
  count?: number | null;
  /** Empty weight of one, where it was said with the weight; it wins over the setting. */
  tareKg?: number | null;
};

/**
 * Net mass in kg: gross less the empty weight of each container that the weight covers. Null while that
 * tare is unknown: it is never guessed. Not rounded further than a microgram. Throws a RangeError where
 * gross is below tare; the reader asks before it comes to that.
 * @source net = gross − tare, by definition.
 * @example netKg({ kg: 66.5, container: 'cart' }, 18) // 48.5
 */
export function netKg(weighed: Weighed, tareKg: number | null): number | null {
  const basis = weighed.basis ?? (weighed.container ? 'gross' : 'net');
  if (!(weighed.kg >= 0)) throw new RangeError(`a weight is ${weighed.kg} kg; it must be 0 or more`);
  if (basis === 'net') return weighed.kg;
  const tare = weighed.tareKg ?? tareKg;
  if (tare === null) return null;
  const emptyKg = tare * Math.max(1, Math.ceil(weighed.count ?? 1));
  const net = sumKg([weighed.kg, -emptyKg]);
  if (net < 0) throw new RangeError(`gross ${weighed.kg} kg is below the tare of ${emptyKg} kg`);
  return net;
}
