import { type FieldRecord, isMassUnit, isTimeUnit, isVolumeUnit, toKg, toLitres, toMin } from '#records';
import { drop, say } from '../plausible.ts';
import {
  bare,
  type Item,
  isKnown,
  placesOf,
  type Reader,
  type Scope,
  type Slots,
  take,
  tidy,
} from '../reading.ts';
import { sense, type Tok } from '../tokens.ts';
import { strangePlace } from '../warmth.ts';
import { isName } from '../weed.ts';
import { amountOf, plainAmount } from './amounts.ts';
import { forEachPlace } from './care.ts';

/** How much there is: `drum 3/4 full`, `chips down to 2 m3`, `pile B half full`. */
export const level: Reader = {
  rule: 'level',
  on: ['full', 'down-to', 'emptyadj', 'drum'],
  read(tokens, scope) {
    const slots = take(tokens, SLOTS_1);
    if (!slots || scope.asked) return null;
    const places = placesOf(slots);
    const materials = [...new Set(slots.get('material').map((tok) => sense(tok, 'material')!))];
    if (places.length + materials.length !== 1) return null;
    if (places[0] && ['ambient', 'lift', 'floor'].includes(places[0])) return null;
    const subject = places[0]
      ? { place: places[0] }
      : { material: materials[0] === 'mature-compost' ? 'finished-compost' : materials[0]! };
    const n = slots.nums[0]?.n;
    if (slots.nums.length > 1) return null;
    const approximate = n?.approximate ? { approximate: true } : {};
    const full = slots.get('full').length > 0;
    if (places[0] && n && !full && !isVolumeUnit(n.unit) && !n.fraction && n.unit !== '%') return null;
    let amount: Record<string, unknown> | null = null;
    if (n && ((n.fraction && n.unit === null) || n.unit === '%') && n.value >= 0) {
      if (!full && materials.length === 0 && !(places[0]?.startsWith('drum') && n.value <= 1)) return null;
      const fraction = n.unit === '%' ? n.value / 100 : n.value;
      if (fraction > 1)
        return full
          ? [
              {
                doubt: {
                  record: { kind: 'level', ...subject, fraction },
                  why: 'impossible-value',
                  choices: [drop],
                },
              },
            ]
          : null;
      amount = { fraction: tidy(fraction) };
    } else if (n && materials.length > 0) {
      if (slots.get('down-to').length === 0) return null;
      if (isVolumeUnit(n.unit)) amount = { litres: tidy(toLitres(n.value, n.unit)) };
      else if (isMassUnit(n.unit)) amount = { kg: tidy(toKg(n.value, n.unit)) };
      else {
        const counted = amountOf(slots, scope);
        if (!counted?.container) return null;
        // `encore 1 brouette de copeaux` is one more that went in; only `il reste encore` counts what is left.
        if (slots.get('down-to').every((tok) => tok.s === 'encore')) return null;
        amount = plainAmount(counted);
      }
    } else if (n && isVolumeUnit(n.unit) && places.length > 0 && slots.get('down-to').length > 0)
      amount = { litres: tidy(toLitres(n.value, n.unit)) };
    else if (!n && places[0]?.startsWith('drum') && full && slots.get('emptyadj').length === 0)
      amount = { fraction: 1 };
    else if (!n && places[0]?.startsWith('drum') && slots.get('emptyadj').length > 0)
      amount = { fraction: 0 };
    if (!amount || (n && n.value < 0)) return null;
    if (slots.get('container').length > 0 && !('container' in amount)) return null;
    const record = bare({ kind: 'level' as const, ...subject, ...amount, ...approximate }) as FieldRecord;
    if (places[0] && !isKnown(places[0], scope.context))
      return [{ doubt: strangePlace(record, places[0], scope.context) }];
    return [{ record }];
  },
};

export const sample: Reader = {
  rule: 'sample',
  on: ['sample'],
  read(tokens, scope) {
    const slots = take(tokens, SLOTS_2);
    if (!slots || scope.asked) return null;
    const counts = slots.nums.filter((tok) => tok.n!.unit === null && Number.isInteger(tok.n!.value));
    if (counts.length !== slots.nums.length || counts.length > 2) return null;
    const places = placesOf(slots);
    const spare = counts.filter(
      (tok) =>
        !(
          places.length === 0 &&
          sense(tok, 'place?') !== undefined &&
          tok === counts.at(-1) &&
          counts.length > 0 &&
          slots.all
            .slice(
              0,
              slots.all.findIndex((one) => one.tok === tok),
            )
            .some((one) => one.cls.startsWith('prep'))
        ),
    );
    const named = counts.filter((tok) => !spare.includes(tok));
    const count = spare[0]?.n?.value;
    const scoped =
      named.length > 0
        ? { ...slots, get: (cls: string) => (cls === 'place' ? named : slots.get(cls)) }
        : slots;
    if (
      placesOf(scoped).length === 0 &&
      !scope.carry.place &&
      scope.context.piles.length > 1 &&
      count === undefined &&
      slots.get('lab').length === 0 &&
      slots.get('sample').every((tok) => !tok.s.includes(' '))
    )
      return null;
    return forEachPlace(
      scoped,
      scope,
      (pile) => bare({ kind: 'sample' as const, pile, count }) as FieldRecord,
    );
  },
};

/** What each analyte can be, in the unit it is most often given in. Bounds only catch slips. */
const ANALYTES: Readonly<Record<string, readonly [number, number]>> = {
  'self-heating': [0, 70],
  pH: [0, 14],
  moisture: [0, 100],
  'organic-matter': [0, 100],
  'C:N': [1, 600],
  carbon: [0, 100],
  nitrogen: [0, 30],
};

export const labResult: Reader = {
  rule: 'lab-result',
  on: ['analyte'],
  read(tokens, scope) {
    const several = listed(tokens, scope);
    if (several) return several;
    const slots = take(tokens, SLOTS_3, 0);
    if (!slots || scope.asked) return null;
    const analytes = slots.get('analyte').map((tok) => sense(tok, 'analyte')!);
    if (analytes.length !== 1) return null;
    const analyte = analytes[0]!;
    // What a hand or a probe on site says of it is no laboratory's.
    if (analyte === 'moisture' && slots.get('lab').length === 0) return null;
    const places = placesOf(slots);
    if (places.length > 1 || places.some((place) => ['ambient', 'floor', 'lift'].includes(place)))
      return null;
    const marks = slots.all.filter((one) => one.cls === 'sep').map((one) => one.tok.s);
    let qualifier: '<' | '>' | 'not-detected' | undefined;
    if (slots.get('absent').length > 0) qualifier = 'not-detected';
    else if (slots.get('below').length > 0 || marks.includes('<')) qualifier = '<';
    else if (slots.get('above').length > 0 || marks.includes('>')) qualifier = '>';
    const labUnits = slots.get('labunit').map((tok) => sense(tok, 'labunit')!);
    const [n, per] = slots.nums.map((tok) => tok.n!);
    // `< 3 MPN/4 g`: the number inside the unit belongs to the unit.
    if (slots.nums.length > 2 || (slots.nums.length === 2 && labUnits.length === 0)) return null;
    void per;
    if (!n && qualifier !== 'not-detected') return null;
    if (n?.to !== undefined || n?.fraction) return null;
    const value = qualifier === 'not-detected' && !n ? undefined : n?.value;
    const unit = labUnits[0] ?? (n?.unit && n.unit !== 'deg' ? n.unit : undefined);
    const make = (place: string, v = value): FieldRecord =>
      bare({ kind: 'lab-result' as const, place, analyte, value: v, unit, qualifier }) as FieldRecord;
    const bounds = ANALYTES[analyte];
    const found = forEachPlace(slots, scope, (place) => make(place), 'place');
    if (value === undefined || !bounds || (value >= bounds[0] && value <= bounds[1])) return found;
    return found.map((item) => {
      if (!('record' in item)) return item;
      const choices = [value / 10, value / 100]
        .map(tidy)
        .filter((v) => v >= bounds[0] && v <= bounds[1])
        .slice(0, 1)
        .map((v) => ({ say: say(v), record: { ...item.record, value: v } as FieldRecord }));
      return {
        doubt: { record: item.record, why: 'impossible-value' as const, choices: [...choices, drop] },
      };
    });
  },
};

/** `lab: C pH 6.9, moisture 52%`: the laboratory and the place hold for every figure of the list. */
function listed(tokens: readonly Tok[], scope: Scope): Item[] | null {
  const comma = tokens.findIndex((tok) => tok.k === 'p' && tok.s === ',');
  const head = tokens.slice(0, Math.max(comma, 0));
  const lab = head.filter((tok) => sense(tok, 'lab') !== undefined);
  const place = head.filter((tok) => sense(tok, 'place') !== undefined || sense(tok, 'place?') !== undefined);
  if (lab.length === 0 || place.length !== 1) return null;
  const first = labResult.read(head, scope);
  if (!first) return null;
  const items = [...first];
  const rest = tokens.slice(comma + 1);
  for (let from = 0; from < rest.length; ) {
    const next = rest.findIndex((tok, k) => k > from && tok.k === 'p' && tok.s === ',');
    const piece = rest.slice(from, next < 0 ? rest.length : next);
    const read = labResult.read([...lab, ...place, ...piece], scope);
    if (!read) return null;
    items.push(...read);
    from = next < 0 ? rest.length : next + 1;
  }
  return items;
}

/** People's time: `3 people 2 hours`, `4 volunteers 3h each`, `2.5 h on site`. */
export const hours: Reader = {
  rule: 'hours',
  on: ['n'],
  read(tokens, scope) {
    // `rosie and me 2 hours`: beside oneself one other may be named without a capital.
    const withOneself =
      tokens.some((tok) => sense(tok, 'self') === 'one') &&
      tokens.some((tok) => sense(tok, 'and') !== undefined || tok.s.includes(' '));
    const slots = take(tokens, SLOTS_4, tokens.some(isName) ? 3 : withOneself ? 1 : 0);
    if (!slots || scope.asked) return null;
    if (!slots.unknown.every(isName) && !(withOneself && slots.unknown.length === 1)) return null;
    const clock = clockAsLength(slots);
    const timed = clock ?? slots.nums.filter((tok) => isTimeUnit(tok.n!.unit) && tok.n!.unit !== 'd');
    if (timed.length !== 1) return null;
    const others = slots.nums.filter((tok) => !timed.includes(tok));
    // `me and Joe, 2 hrs each`
    const oneself = slots.all.some((one) => sense(one.tok, 'self') === 'one');
    const named = slots.unknown.length > 0 ? slots.unknown.length + (oneself ? 1 : 0) : undefined;
    if (
      named !== undefined &&
      (others.length > 0 ||
        !(oneself || slots.unknown.length > 1 || ['each', 'work'].some((cls) => slots.get(cls).length > 0)))
    )
      return null;
    const persons = slots.get('person').length > 0 || named !== undefined;
    const worked = slots.get('work').length > 0 || (slots.get('hourword').length > 0 && persons);
    if (!persons && !worked) return null;
    if (clock && !persons) return null;
    if (timed[0]!.n!.unit === 'min' && !worked) return null;
    if (others.length > 1 || others.some((tok) => tok.n!.unit !== null || !Number.isInteger(tok.n!.value)))
      return null;
    if (others.length === 1 && !persons && !slots.all.some((one) => one.tok.s === 'x')) return null;
    const n = timed[0]!.n!;
    if (n.to !== undefined) return null;
    const spent = tidy(toMin(n.value, n.unit as 'h') / 60);
    const people = others[0]?.n?.value ?? named;
    if (people === undefined && persons && !worked) return null;
    const record = bare({ kind: 'hours' as const, people, hours: spent });
    if (spent < 0 || spent > 24 * Math.max(people ?? 10, 1))
      return [{ doubt: { record, why: 'impossible-value', choices: [drop] } }];
    return [{ record }];
  },
};

/** `3 personnes, 2h30 chacune`: beside people, what looks like a time of day is how long. */
function clockAsLength(slots: Slots): Tok[] | null {
  const said = slots.dates.length === 1 ? /^(\d{1,2})h(\d{2})$/.exec(slots.dates[0]!.s) : null;
  if (!said || slots.get('each').length === 0) return null;
  const hours = Number(said[1]) + Number(said[2]) / 60;
  return [{ ...slots.dates[0]!, k: 'n', n: { value: hours, unit: 'h', decimals: 2 } }];
}

// What each reader accepts, kept as constants so that their ranks are worked out once.
const SLOTS_1 = [
  'full',
  'down-to',
  'n',
  'place',
  'material',
  'container',
  'pilehead',
  'emptyadj',
  'be',
  'approx',
  'halfway',
  'drum',
];
const SLOTS_2 = [
  'sample',
  'place',
  'n',
  'add',
  'remove',
  'move',
  'lab',
  'all',
  'both',
  'many',
  'container',
  'be',
  'toword',
];
const SLOTS_3 = [
  'analyte',
  'lab',
  'place',
  'n',
  'labunit',
  'qualifier',
  'sample',
  'below',
  'above',
  'unit',
  'be',
  'absent',
  'remove!',
  'add',
  'per',
  'approx',
  'squeeze!',
];
const SLOTS_4 = [
  'n',
  'person',
  'work',
  'each',
  'total',
  'approx',
  'add',
  'hourword',
  'be',
  'turn!',
  'place!',
  'self',
];
