import { type FieldRecord, isTimeUnit, toMin } from '#records';
import { containerOf, drop, say, slipsOf } from '../plausible.ts';
import { bare, type Item, isKnown, isPrep, placesOf, type Reader, take } from '../reading.ts';
import { sense } from '../tokens.ts';
import { strangePlace } from '../warmth.ts';
import { amountOf, plainAmount } from './amounts.ts';

type Discharge = Extract<FieldRecord, { kind: 'discharge' }>;

const isDrum = (place: string) => /^drum\b/.test(place);

/** What came out of the drum: `emptied the drum onto B`, `drum discharge 520 kg to B`. */
export const discharge: Reader = {
  rule: 'discharge',
  on: ['discharge', 'empty', 'remove', 'move', 'drum'],
  read(tokens, scope) {
    const slots = take(tokens, SLOTS_1);
    if (!slots || scope.asked) return null;
    const verb =
      slots.get('discharge').length > 0 ||
      slots.get('empty').length > 0 ||
      slots.get('remove').length > 0 ||
      slots.get('move').length > 0;
    const carried =
      !verb &&
      slots.nums.length > 0 &&
      slots.get('container').length === 1 &&
      slots.all.some((one) => isPrep(one, 'from', 'out', 'of')) &&
      slots.all.some((one) => isPrep(one, 'to', 'on', 'into'));
    if (!verb && !carried) return null;
    const places = placesOf(slots);
    const drums = places.filter(isDrum);
    const others = places.filter((place) => !isDrum(place) && place !== 'exit');
    const out = slots.get('discharge').length > 0;
    // `drum at 55, emptied to B`: with one drum on the site it is that which was emptied onto a pile.
    const tipped =
      slots.get('empty').length > 0 &&
      others.length === 1 &&
      slots.all.some((one) => isPrep(one, 'to')) &&
      scope.prevTok !== undefined;
    if (drums.length === 0 && !((out || tipped) && scope.context.drums.length > 0)) return null;
    if (
      !out &&
      slots.get('empty').length === 0 &&
      !slots.all.some((one) => isPrep(one, 'from', 'out', 'of', 'off'))
    )
      return null;
    if (drums.length > 1 || others.length > 1) return null;
    // `sorti 5 brouettes du tambour, mis sur A`: behind the putting comes where it went, and nothing else.
    const put = slots.all.findIndex((one) => one.cls === 'add');
    if (put >= 0 && (others.length !== 1 || slots.all.slice(put).some((one) => one.cls === 'n'))) return null;
    const materials = slots.get('material').map((tok) => sense(tok, 'material'));
    if (materials.some((m) => m !== 'finished-compost' && m !== 'mature-compost')) return null;
    if (places.includes('exit') && slots.nums.some((tok) => tok.n!.unit === null)) return null;
    const amount = amountOf(slots, scope, true);
    if (amount === null) return null;
    // `exit 42, emptied the drum`: a bare number before the doing belongs to something else.
    const doing = slots.all.findIndex((one) => ['discharge', 'empty', 'move'].includes(one.cls));
    const bareFirst = slots.all.findIndex((one) => one.cls === 'n' && one.tok.n!.unit === null);
    if (bareFirst >= 0 && bareFirst < doing && !amount?.container) return null;
    // `pile` is where it went; the drum is named only where the site has several.
    const pile = others[0];
    if (slots.get('pilehead').length > 0 && !pile) return null;
    const drum = drums[0];
    const record = bare({
      kind: 'discharge' as const,
      pile,
      place: scope.context.drums.length > 1 ? drum : undefined,
      ...plainAmount(amount),
      basis:
        amount?.kg !== undefined
          ? slots.get('net').length > 0 || !amount.container
            ? ('net' as const)
            : ('gross' as const)
          : undefined,
      approximate: amount?.approximate,
    }) as Discharge;
    if (pile && !isKnown(pile, scope.context))
      return [{ doubt: strangePlace(record, pile, scope.context, 'pile') }];
    const holds =
      (scope.context.drums.find((one) => one.name === drum) ?? scope.context.drums[0])?.litres ?? 20_000;
    const fits = (kg: number) => kg <= holds * 1.05;
    const n = slots.nums.find((tok) => tok.n!.unit !== null || !amount?.container)?.n;
    if (amount?.kg !== undefined && n) {
      const scaleKg = amount.kg / n.value;
      if (n.value < 0 || !fits(amount.kg)) {
        const choices = slipsOf(n.value)
          .filter((v) => fits(v * scaleKg) && v * scaleKg > 5)
          .slice(0, 3)
          .map((v) => ({ say: say(v), record: { ...record, kg: v * scaleKg } }));
        return [{ doubt: { record, why: 'too-heavy', choices: [...choices, drop] } }];
      }
      if (n.perhaps !== undefined && fits(n.perhaps * scaleKg))
        return [
          {
            doubt: {
              record,
              why: 'number-ambiguous',
              choices: [
                { say: say(n.value), record },
                { say: say(n.perhaps), record: { ...record, kg: n.perhaps * scaleKg } },
                drop,
              ],
            },
          },
        ];
    }
    if (amount?.litres !== undefined && amount.litres > holds * 1.2)
      return [{ doubt: { record, why: 'too-heavy', choices: [drop] } }];
    if (amount?.container && amount.count !== undefined) {
      const each = containerOf(scope.context, amount.container)?.litres;
      if (each && each * amount.count > holds * 1.5)
        return [{ doubt: { record, why: 'too-heavy', choices: [drop] } }];
    }
    return [{ record, typed: amount?.typed ?? null }];
  },
};

/** How the drum is set: `drum auto 45 min fan low`, `fan high`, `drum off`. */
export const drumSetting: Reader = {
  rule: 'drum-setting',
  on: ['mode', 'speed', 'every'],
  read(tokens, scope) {
    const slots = take(tokens, SLOTS_2);
    if (!slots || scope.asked) return null;
    const places = placesOf(slots);
    const drum = places.find(isDrum);
    if (places.some((place) => !isDrum(place)) || places.length > 1) return null;
    const fanAt = slots.all.findIndex(
      (one) => one.cls === 'fan' || (one.cls === 'machine' && sense(one.tok, 'fan') !== undefined),
    );
    // `turn every 60 min`: by the minute only a drum is turned, where the site has one.
    const byMinute =
      scope.context.drums.length === 1 &&
      places.length === 0 &&
      slots.get('every').length > 0 &&
      (slots.get('turn').length + slots.get('set').length > 0 || slots.get('every')[0]!.s.includes(' ')) &&
      slots.nums.length === 1 &&
      isTimeUnit(slots.nums[0]!.n!.unit) &&
      toMin(slots.nums[0]!.n!.value, slots.nums[0]!.n!.unit as 'min') <= 12 * 60;
    if (!drum && fanAt < 0 && !byMinute) return null;
    if (slots.get('machine').some((tok) => sense(tok, 'fan') === undefined)) return null;
    let mode: 'automatic' | 'manual' | 'off' | undefined;
    let fan: 'off' | 'low' | 'high' | undefined;
    let everyMin: number | undefined;
    const drumAt = slots.all.findIndex((one) => one.cls === 'place');
    slots.all.forEach((one, k) => {
      const nearFan =
        fanAt >= 0 &&
        (drumAt < 0 || Math.abs(k - fanAt) <= 2) &&
        !(drumAt >= 0 && drumAt < fanAt && k < fanAt);
      if (one.cls === 'mode') {
        const m = sense(one.tok, 'mode')!;
        if (m === 'off' && nearFan) fan = 'off';
        else if (m === 'on') return;
        else if (m !== 'on') mode = m as 'off';
      } else if (one.cls === 'speed' && nearFan) fan = sense(one.tok, 'speed') as 'low';
    });
    if (fan === undefined && fanAt >= 0) {
      const speeds = slots.all.flatMap((one, k) =>
        sense(one.tok, 'speed') !== undefined ? [{ k, v: sense(one.tok, 'speed')! }] : [],
      );
      const near = speeds.sort((a, b) => Math.abs(a.k - fanAt) - Math.abs(b.k - fanAt))[0];
      if (near) fan = near.v as 'low';
    }
    if (fanAt >= 0 && fan === undefined) return null;
    const timed = slots.nums.filter((tok) => isTimeUnit(tok.n!.unit));
    const loose = slots.nums.filter((tok) => tok.n!.unit === null);
    if (slots.nums.some((tok) => tok.n!.fraction && tok.n!.unit === null)) return null;
    if (slots.nums.length > 1 || timed.length + loose.length !== slots.nums.length) return null;
    if (loose.some((tok) => tok.n!.fraction)) return null;
    // `fan high for 2 hours` says how long, not how often.
    const before = timed[0] && slots.all[slots.all.findIndex((one) => one.tok === timed[0]) - 1];
    const lasts = before !== undefined && isPrep(before, 'for') && slots.get('every').length === 0;
    if (timed[0] && !lasts) everyMin = toMin(timed[0].n!.value, timed[0].n!.unit as 'min');
    else if (timed[0]) everyMin = undefined;
    else if (loose[0]) {
      if (!(mode === 'automatic' || slots.get('every').length > 0)) return null;
      everyMin = loose[0].n!.value;
    }
    if (
      mode === undefined &&
      fan === undefined &&
      !(
        everyMin !== undefined &&
        (drum || byMinute) &&
        (slots.get('every').length > 0 || slots.get('each').length > 0 || slots.get('set').length > 0)
      )
    )
      return null;
    if (mode === 'off' && everyMin !== undefined) return null;
    if (drum && scope.context.drums.length > 0 && !isKnown(drum, scope.context)) return null;
    if (scope.context.drums.length === 0 && !(drum && (mode || everyMin))) return null;
    const record = bare({
      kind: 'drum-setting' as const,
      mode,
      everyMin,
      fan,
      place: scope.context.drums.length > 1 ? drum : undefined,
    });
    if (everyMin !== undefined && (everyMin <= 0 || everyMin > 2880))
      return [{ doubt: { record, why: 'impossible-value', choices: [drop] } }];
    return [{ record }] as Item[];
  },
};

// What each reader accepts, kept as constants so that their ranks are worked out once.
const SLOTS_1 = [
  'discharge',
  'empty',
  'place',
  'n',
  'container',
  'remove',
  'move',
  'material',
  'total',
  'net',
  'gross',
  'approx',
  'pilehead',
  'full',
  'be',
  'add',
  'there',
];
const SLOTS_2 = [
  'place',
  'fan',
  'mode',
  'speed',
  'every',
  'n',
  'set',
  'drum',
  'turn',
  'add',
  'each',
  'be',
  'machine',
];
