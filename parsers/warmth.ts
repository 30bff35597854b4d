import { type Assumption, type Doubt, type DoubtChoice, type FieldRecord, toCelsius } from '#records';
import type { ReadContext } from './context.ts';
import { drop, say } from './plausible.ts';
import { bare, isKnown, tidy } from './reading.ts';
import type { Num } from './tokens.ts';

type Temperature = Extract<FieldRecord, { kind: 'temperature' }>;

/**
 * What a probe can show, °C: a pile, bay, drum or exit −30 to 85, the air −50 to 50.
 * @source the contract of reading, rule 4
 */
const POSSIBLE = { pile: [-30, 85], ambient: [-50, 50] } as const;

const rangeOf = (place: string) => (place === 'ambient' ? POSSIBLE.ambient : POSSIBLE.pile);
export const possible = (place: string, celsius: number) =>
  celsius >= rangeOf(place)[0] && celsius <= rangeOf(place)[1];
const isHeap = (place: string) => /^(pile|bay|drum)\b/.test(place);

/** Celsius of a value as it would be stored: two decimals are more than any probe gives. */
const celsiusOf = (value: number, unit: 'C' | 'F') => tidy(Math.round(toCelsius(value, unit) * 100) / 100);

type Scale = { unit: 'C' | 'F'; assumed: Assumption[] } | { doubt: 'which-unit' | 'impossible-temperature' };

/** In which unit figures without one are meant, or why that must be asked. */
function scaleOf(
  place: string,
  values: readonly number[],
  said: 'C' | 'F' | null,
  context: ReadContext,
): Scale {
  const all = (unit: 'C' | 'F') => values.every((value) => possible(place, toCelsius(value, unit)));
  if (said) return all(said) ? { unit: said, assumed: [] } : { doubt: 'impossible-temperature' };
  const own = context.units.temperature;
  if (own === 'C') {
    if (values.some((value) => value >= 86 && value <= 110))
      return fromTheBook(place, values, context) ?? { doubt: 'which-unit' };
    if (all('C')) return { unit: 'C', assumed: [] };
    return all('F') && values.every((value) => !possible(place, value))
      ? { unit: 'F', assumed: ['unit-other'] }
      : { doubt: all('F') ? 'which-unit' : 'impossible-temperature' };
  }
  if (isHeap(place) && values.some((value) => value >= 40 && value <= 85)) {
    return fromTheBook(place, values, context) ?? { doubt: 'which-unit' };
  }
  if (all('F')) return { unit: 'F', assumed: [] };
  return all('C') ? { unit: 'C', assumed: ['unit-other'] } : { doubt: 'impossible-temperature' };
}

/** The last readings of the place may leave only one unit: a pile does not move by more than 25 °C in two days. */
function fromTheBook(place: string, values: readonly number[], context: ReadContext): Scale | null {
  const last = context.book?.lastReadings[place]?.[0];
  if (!last || last.celsius.length === 0) return null;
  const days =
    (Date.parse(context.nowLocal.slice(0, 10)) - Date.parse(last.localDate.slice(0, 10))) / 86_400_000;
  if (days > 4) return null;
  const low = Math.min(...last.celsius) - 20;
  const high = Math.max(...last.celsius) + 20;
  const fits = (unit: 'C' | 'F') =>
    values.every(
      (value) =>
        possible(place, toCelsius(value, unit)) &&
        toCelsius(value, unit) >= low &&
        toCelsius(value, unit) <= high,
    );
  const asC = fits('C');
  const asF = fits('F');
  if (asC === asF) return null;
  const unit = asC ? 'C' : 'F';
  return { unit, assumed: unit === context.units.temperature ? [] : ['unit-other'] };
}

export type Figures = {
  place: string;
  nums: readonly Num[];
  points?: (string | number)[] | undefined;
  depthCm?: number | undefined;
  approximate?: boolean | undefined;
  or?: boolean;
};

/** A reading of one place at one depth, or the doubt it raises. */
export function judgeReading(
  figures: Figures,
  context: ReadContext,
): { record: Temperature; assumed: Assumption[]; typed: string } | { doubt: Doubt } {
  const { place, nums } = figures;
  const said = nums.map((n) => n.unit).find((unit) => unit === 'C' || unit === 'F') as 'C' | 'F' | undefined;
  const values = nums.flatMap((n) => (n.to === undefined ? [n.value] : [n.value, n.to]));
  const build = (unit: 'C' | 'F', pick: (n: Num) => number = (n) => n.value): Temperature => {
    const upTo = nums.some((n) => n.to !== undefined)
      ? nums.map((n) => (n.to === undefined ? null : celsiusOf(Math.max(n.value, n.to), unit)))
      : undefined;
    return bare({
      kind: 'temperature' as const,
      place,
      celsius: nums.map((n) => celsiusOf(n.to === undefined ? pick(n) : Math.min(n.value, n.to), unit)),
      points: figures.points?.length ? figures.points : undefined,
      depthCm: figures.depthCm,
      approximate: figures.approximate || nums.some((n) => n.approximate) ? true : undefined,
      upTo,
    }) as Temperature;
  };
  const own = context.units.temperature;
  if (figures.or) {
    const each = nums.map((n) => ({ ...figures, nums: [{ ...n, unit: n.unit ?? said ?? null }], or: false }));
    const choices: DoubtChoice[] = [];
    for (const one of each) {
      const read = judgeReading(one, context);
      if ('record' in read) choices.push({ say: say(one.nums[0]!.value), record: read.record });
    }
    return {
      doubt: {
        record: { ...build(said ?? own), celsius: [] },
        why: 'either-or',
        choices: [...choices, drop],
      },
    };
  }
  if (!isKnown(place, context)) return { doubt: strangePlace(build(said ?? own), place, context) };
  if (place in context.ceased && !context.piles.includes(place))
    return { doubt: ceasedPlace(build(said ?? own), place, context) };
  const scale = scaleOf(place, values, said ?? null, context);
  const typed = `${nums.map((n) => say(n.value)).join(' ')} ${said ?? ('unit' in scale ? scale.unit : own)}`;
  if ('unit' in scale) {
    if (nums.some((n) => n.perhaps !== undefined))
      return { doubt: { record: build(scale.unit), why: 'number-ambiguous', choices: [drop] } };
    return { record: build(scale.unit), assumed: scale.assumed, typed };
  }
  const choices: DoubtChoice[] = [];
  const fine = (record: Temperature) =>
    record.celsius.every((c) => possible(place, c)) &&
    (record.upTo ?? []).every((c) => c === null || possible(place, c));
  for (const unit of said ? [said === 'C' ? ('F' as const) : ('C' as const)] : (['C', 'F'] as const)) {
    const record = build(unit);
    if (fine(record)) choices.push({ say: `${nums.map((n) => say(n.value)).join(' ')} °${unit}`, record });
  }
  if (scale.doubt === 'impossible-temperature') {
    const unit = said ?? own;
    for (const shift of [(v: number) => v / 10, (v: number) => swapped(v), (v: number) => -v]) {
      const record = build(unit, (n) =>
        possible(place, celsiusOf(n.value, unit)) ? n.value : shift(n.value),
      );
      const usual = record.celsius.every((c) => c >= (place === 'ambient' ? -40 : 0));
      if (fine(record) && usual)
        choices.push({
          say: say(shift(nums.find((n) => !possible(place, celsiusOf(n.value, unit)))?.value ?? 0)),
          record,
        });
    }
  }
  const hottest = Math.max(...values.map((value) => celsiusOf(value, said ?? own)));
  return {
    doubt: bare({
      record: build(said ?? own),
      why: scale.doubt,
      choices: [...choices.slice(0, 3), drop],
      danger: hottest > 85 && hottest <= 400 && isHeap(place) ? true : undefined,
    }),
  };
}

function swapped(value: number): number {
  const digits = String(Math.abs(value));
  return digits.length === 2 ? Number(digits[1]! + digits[0]!) : value / 10;
}

/** A place that the site does not have: its own places are offered. */
export function strangePlace(
  record: Record<string, unknown> & { kind: string },
  place: string,
  context: ReadContext,
  field = 'place',
): Doubt {
  const known =
    place in context.ceased
      ? [context.ceased[place]].filter((one): one is string => !!one)
      : /^drum\b/.test(place) && context.drums.length > 0
        ? context.drums.map(({ name }) => name)
        : context.piles.slice(0, 6);
  return {
    record,
    why: place in context.ceased ? 'ceased-place' : 'unknown-place',
    choices: [
      ...known.map((one) => ({ say: one, record: { ...record, [field]: one } as FieldRecord })),
      drop,
    ],
  };
}

const ceasedPlace = (record: Temperature, place: string, context: ReadContext): Doubt =>
  strangePlace(record, place, context);
