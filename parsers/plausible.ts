import {
  type Container,
  type Doubt,
  type DoubtChoice,
  type DoubtCode,
  type FieldRecord,
  fromKg,
  toKg,
} from '#records';
import type { ReadContext } from './context.ts';
import { bare, tidy } from './reading.ts';

type WeighIn = Extract<FieldRecord, { kind: 'weigh-in' }>;

/**
 * Bulk densities that a container's content can have, kg per litre: lowest and highest.
 * Wide on purpose: they tell a slip of the thumb from a real load, and nothing finer.
 * @source common practice, no source; food scraps at most 1.0 kg/L by the site's own rule of reading.
 */
const DENSITY: Readonly<Record<string, readonly [number, number]>> = {
  'food-scraps': [0.01, 1],
  'wood-chips': [0.13, 0.5],
  sawdust: [0.1, 0.45],
  leaves: [0.02, 0.4],
  cardboard: [0.015, 0.3],
  paper: [0.015, 0.45],
  straw: [0.015, 0.25],
  grass: [0.06, 0.75],
  'coffee-grounds': [0.12, 0.9],
  'garden-waste': [0.03, 0.65],
  manure: [0.15, 1.1],
  'finished-compost': [0.25, 1.1],
  water: [0.05, 1.01],
};
/** What a full container of food scraps usually holds, kg net per litre: it tells one cart's weight from that of several. */
const USUAL = [0.05, 0.6] as const;
/** The largest each kind of container comes in, litres; only used where the site has set no volume. Common practice, no source. */
const LARGEST: Readonly<Record<string, number>> = {
  cart: 360,
  bucket: 30,
  bag: 150,
  barrel: 250,
  barrow: 250,
  'loader-bucket': 3000,
};
/** More than any small site takes in one go, kg. */
const MOST_KG = 20_000;

/** What the site has set for a container, its own label first. @example containerOf(context, 'cart', '5')?.tareKg */
export function containerOf(
  context: ReadContext,
  container: string,
  label?: string | null,
): Container | undefined {
  const own = label ? context.containers[`${container} ${label}`] : undefined;
  const kind = context.containers[container];
  return own ? { ...kind, ...Object.fromEntries(Object.entries(own).filter(([, v]) => v != null)) } : kind;
}

type Verdict = 'fine' | 'too-heavy' | 'too-light' | 'gross-or-net';

/** Whether a container can hold so much. */
export function weighs(record: WeighIn, context: ReadContext): Verdict {
  const kg = record.kg;
  if (kg == null) return 'fine';
  if (!record.container) return kg > MOST_KG ? 'too-heavy' : 'fine';
  const own = containerOf(context, record.container, record.label);
  const count = Math.max(record.count ?? 1, 1);
  const tare = (record.tareKg ?? own?.tareKg ?? 0) * (record.basis === 'net' ? 0 : count);
  const known = own?.litres;
  const litres = (known ?? LARGEST[record.container] ?? 4000) * count;
  const [least, most] = DENSITY[record.material] ?? [0.01, 1.3];
  const slack = known && own?.tareKg != null ? 0 : 25 * count;
  if (kg > litres * most + tare + slack) return 'too-heavy';
  if (record.basis === 'gross') {
    if (tare > 0 && kg <= tare) {
      return kg / litres >= Math.max(least, 0.1) && record.material !== 'food-scraps' && kg < tare * 0.98
        ? 'gross-or-net'
        : 'too-light';
    }
    if (
      known &&
      tare > 0 &&
      record.material !== 'food-scraps' &&
      (kg - tare) / litres < least &&
      kg / litres >= least
    )
      return 'gross-or-net';
  }
  return 'fine';
}

/** Whether one weight can be that of one container, and that of all of them together. */
export function eachOrAll(
  record: WeighIn,
  count: number,
  context: ReadContext,
): { each: boolean; all: boolean } {
  const own = record.container ? containerOf(context, record.container, null) : undefined;
  const litres = own?.litres ?? LARGEST[record.container ?? ''] ?? 240;
  const tare = record.basis === 'net' ? 0 : (own?.tareKg ?? 0);
  const [least, most] = record.material === 'food-scraps' ? USUAL : (DENSITY[record.material] ?? USUAL);
  const usual = (kg: number) => kg / litres >= least && kg / litres <= most;
  const kg = record.kg ?? 0;
  return { each: usual(kg - tare), all: usual((kg - tare * count) / count) };
}

/** What a thumb may have meant: the decimal sign lost or moved, two digits swapped, one typed twice. */
export function slipsOf(value: number): number[] {
  const out: number[] = [];
  const add = (candidate: number) => {
    if (Number.isFinite(candidate) && candidate > 0 && candidate !== value && !out.includes(candidate))
      out.push(tidy(candidate));
  };
  const digits = String(Math.abs(value));
  add(value / 10);
  if (value < 0) add(-value);
  add(value * 10);
  if (digits.length >= 4) add(value / 100);
  for (let k = 0; k < digits.length - 1; k++)
    if (/\d/.test(digits[k]!) && digits[k] === digits[k + 1])
      add(Number(digits.slice(0, k) + digits.slice(k + 1)));
  if (digits.length === 2) add(Number(digits[1]! + digits[0]!));
  return out;
}

export const drop: DoubtChoice = { say: 'drop', record: null };

/** A number as it stands on a button. @example say(66.5) // '66.5' */
export const say = (value: number): string => String(tidy(Math.round(value * 1000) / 1000));

/** A weigh-in as it stands, or a doubt where it cannot be or may be two things. `typed` is the number before conversion. */
export function judgeWeight(
  record: WeighIn,
  typed: { value: number; unit: 'kg' | 'lb' | 'g' | 't' | 'oz'; said: boolean; perhaps?: number | undefined },
  context: ReadContext,
): Doubt | null {
  const make = (value: number, more: Partial<WeighIn> = {}): WeighIn =>
    bare({ ...record, kg: tidy(toKg(value, typed.unit)), ...more });
  const doubt = (why: DoubtCode, choices: DoubtChoice[]): Doubt =>
    bare({ record: { ...record }, why, choices: [...choices, drop], said: record.said ?? null });
  if (typed.value < 0) {
    const positive = make(-typed.value);
    return {
      ...doubt(
        'negative',
        weighs(positive, context) === 'fine' ? [{ say: say(-typed.value), record: positive }] : [],
      ),
      record: { ...record, kg: tidy(toKg(typed.value, typed.unit)) },
    };
  }
  const verdict = weighs(record, context);
  const likely = () =>
    slipsOf(typed.value)
      .map((value) => ({ say: say(value), record: make(value) }))
      .filter((choice) => weighs(choice.record, context) === 'fine')
      .slice(0, 3);
  if (verdict === 'gross-or-net')
    return doubt('gross-or-net', [
      { say: 'net', record: make(typed.value, { basis: 'net' }) },
      { say: 'gross', record: make(typed.value, { basis: 'gross' }) },
    ]);
  if (verdict !== 'fine') {
    const choices: DoubtChoice[] = likely();
    if (!typed.said) {
      const other = typed.unit === 'kg' ? 'lb' : 'kg';
      const swapped: WeighIn = bare({ ...record, kg: tidy(toKg(typed.value, other)) });
      if (weighs(swapped, context) === 'fine')
        choices.push({ say: `${say(typed.value)} ${other}`, record: swapped });
    }
    if (verdict === 'too-light') {
      const net = make(typed.value, { basis: 'net' });
      if (weighs(net, context) === 'fine') choices.push({ say: 'net', record: net });
    }
    choices.push({ say: `${say(typed.value)} ${typed.unit}`, record });
    return doubt(verdict, choices);
  }
  if (typed.perhaps !== undefined) {
    const other = make(typed.perhaps);
    if (weighs(other, context) === 'fine')
      return doubt('number-ambiguous', [
        { say: say(typed.value), record },
        { say: say(typed.perhaps), record: other },
      ]);
  }
  return byTheBook(record, typed, context, make, doubt);
}

/** Perhaps the other mass unit: only where the book has at least 8 weights of that container. */
function byTheBook(
  record: WeighIn,
  typed: { value: number; unit: 'kg' | 'lb' | 'g' | 't' | 'oz' },
  context: ReadContext,
  make: (value: number) => WeighIn,
  doubt: (why: DoubtCode, choices: DoubtChoice[]) => Doubt,
): Doubt | null {
  const weights = context.book?.weights;
  if (!weights || !record.container || (record.count ?? 1) !== 1 || record.kg == null) return null;
  const usual = (record.label && weights[`${record.container} ${record.label}`]) || weights[record.container];
  if (!usual || usual.n < 8) return null;
  const kg = record.kg;
  if (Math.abs(kg - usual.meanKg) <= 3 * usual.sdKg) return null;
  const near = (target: number) => Math.abs(kg - target) <= 0.1 * target;
  const other = typed.unit === 'lb' ? 'kg' : 'lb';
  if (!near(usual.meanKg * 2.205) && !near(usual.meanKg / 2.205)) return null;
  const swapped = bare({ ...record, kg: tidy(other === 'kg' ? typed.value : toKg(typed.value, 'lb')) });
  return doubt('other-unit', [
    { say: `${say(typed.value)} ${other}`, record: swapped },
    {
      say: `${say(typed.unit === 'lb' || typed.unit === 'kg' ? typed.value : fromKg(kg, 'kg'))} ${typed.unit}`,
      record: make(typed.value),
    },
  ]);
}
