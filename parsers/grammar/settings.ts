import { isMassUnit, isVolumeUnit, LANGUAGES, type Request, RULE_SETS, toKg, toLitres } from '#records';
import { bare, type Item, isPrep, type Reader, type Scope, take, tidy } from '../reading.ts';
import { plain } from '../text.ts';
import { sense, type Tok } from '../tokens.ts';
import { sliceOfTokens } from './words.ts';

const set = (name: string, value: unknown): Item[] => [
  { request: { request: 'setting', name, value } as Request },
];

const named = (tok: Tok) => tok.senses.filter((s) => s.cls === 'set').map((s) => s.val);
const has = (tokens: readonly Tok[], name: string) => tokens.some((tok) => named(tok).includes(name));

/** The tare of a container: `empty cart 16.2`, `cart tare 15.5`, `set cart 5 tare 16.4`. */
export const tareSetting: Reader = {
  rule: 'setting tare',
  on: ['emptyadj', 'tare', 'set'],
  read(tokens, scope) {
    if (
      !has(tokens, 'tare') &&
      !tokens.some((tok) => sense(tok, 'emptyadj') !== undefined || sense(tok, 'tare') !== undefined)
    )
      return null;
    const slots = take(tokens, SLOTS_1);
    if (!slots || scope.asked || slots.get('container').length !== 1) return null;
    if (slots.all.some((one) => isPrep(one, 'with'))) return null;
    const tok = slots.get('container')[0]!;
    const container = sense(tok, 'container')!;
    const nums = slots.nums.map((one) => one.n!);
    if (nums.length === 0 || nums.length > 2 || nums.some((n) => n.fraction || n.to !== undefined))
      return null;
    const label = nums.length === 2 ? nums[0]! : undefined;
    if (
      label &&
      (label.unit !== null || !Number.isInteger(label.value) || label.value < 1 || label.value > 99)
    )
      return null;
    if (
      label &&
      slots.get('tare').length > 0 &&
      slots.get('set!').length === 0 &&
      slots.get('emptyadj').length === 0 &&
      slots.all.findIndex((one) => one.cls === 'tare') < slots.all.findIndex((one) => one.tok.n === nums[0])
    )
      return null;
    const n = nums.at(-1)!;
    // `cart 64 tare 16` was weighed; `cart 5 tare 14.2` sets the tare of cart 5.
    if (
      label &&
      slots.get('emptyadj').length === 0 &&
      label.value > 12 &&
      label.value > 2 * n.value &&
      scope.context.containers[`${container} ${label.value}`] === undefined
    )
      return null;
    const unit = n.unit === null ? scope.context.units.mass : n.unit;
    if (!isMassUnit(unit) || n.value <= 0) return null;
    const kg = tidy(toKg(n.value, unit));
    const litres = scope.context.containers[container]?.litres ?? 400;
    // Set by command, it is a request whatever it weighs: whoever keeps the settings answers.
    if (kg > litres * 0.6 && !tokens.some((tok) => sense(tok, 'set!') !== undefined)) return null;
    return set(`tare:${container}${label ? ` ${label.value}` : ''}`, kg);
  },
};

/** Everything else that is set by chat. */
export const setting: Reader = {
  rule: 'setting',
  on: ['set', 'set!'],
  read(tokens, scope) {
    const commanded = tokens.some((tok) => sense(tok, 'set!') === 'set') || false;
    for (const read of [
      unitsOf,
      targetOf,
      zoneOf,
      orderOf,
      summaryOf,
      moistureOf,
      factorOf,
      litresOf,
      recipeOf,
      ruleSetOf,
      safetyOf,
      acceptsOf,
      languagesOf,
      aerationOf,
      cautionsOf,
      keepMessagesOf,
    ]) {
      const items = read(tokens, scope, commanded);
      if (items) return items;
    }
    return null;
  },
};

type Part = (tokens: readonly Tok[], scope: Scope, commanded: boolean) => Item[] | null;

const beside = (tokens: readonly Tok[], name: string) => tokens.filter((tok) => !named(tok).includes(name));

const unitsOf: Part = (tokens, _scope, commanded) => {
  if (!has(tokens, 'units') && !commanded) return null;
  const slots = take(beside(tokens, 'units'), SLOTS_2);
  if (!slots) return null;
  const items: Item[] = [];
  for (const tok of slots.get('unit')) {
    const unit = sense(tok, 'unit')!;
    const kind = isMassUnit(unit)
      ? 'mass'
      : unit === 'C' || unit === 'F'
        ? 'temperature'
        : isVolumeUnit(unit)
          ? 'volume'
          : unit === 'cm' || unit === 'in'
            ? 'length'
            : null;
    if (!kind || (kind === 'mass' && unit !== 'kg' && unit !== 'lb')) return null;
    items.push({ request: { request: 'setting', name: `unit:${kind}`, value: unit } as Request });
  }
  return items.length > 0 && (has(tokens, 'units') || commanded) ? items : null;
};

const targetOf: Part = (tokens) => {
  if (!has(tokens, 'target')) return null;
  const slots = take(beside(tokens, 'target'), SLOTS_3);
  if (slots?.nums.length !== 1) return null;
  const n = slots.nums[0]!.n!;
  const tonnes =
    n.unit === null || n.unit === 't'
      ? n.value
      : isMassUnit(n.unit)
        ? tidy(toKg(n.value, n.unit) / 1000)
        : null;
  return tonnes !== null && tonnes > 0 ? set('target', tonnes) : null;
};

const ZONE = /([A-Za-z]+(?:_[A-Za-z]+)*(?:\/[A-Za-z_+\-0-9]+)+|UTC|GMT)/;
const zoneOf: Part = (tokens, scope) => {
  if (!has(tokens, 'time-zone')) return null;
  const typed = sliceOfTokens(scope.message, tokens);
  const zone = ZONE.exec(typed)?.[1];
  return zone ? set('time-zone', zone) : null;
};

const orderOf: Part = (tokens) => {
  if (!has(tokens, 'day-order')) return null;
  const order = tokens.map((tok) => tok.s).find((s) => s === 'dmy' || s === 'mdy' || s === 'ymd');
  const byWord = tokens.map((tok) => sense(tok, 'order')).find((v) => v !== undefined);
  return order ? set('day-order', order) : byWord ? set('day-order', byWord) : null;
};

const CLOCK = /(\d{1,2})(?:[:h.](\d{2}))?\s*(am|pm)?/i;
const summaryOf: Part = (tokens, scope, commanded) => {
  const which = has(tokens, 'summary') ? 'summary' : has(tokens, 'morning') ? 'morning' : null;
  if (!which || !commanded) return null;
  const typed = sliceOfTokens(scope.message, tokens);
  const weekday = tokens.map((tok) => sense(tok, 'weekday') ?? weekdayIn(tok.s)).find((v) => v !== undefined);
  const from = tokens.findIndex((tok) => named(tok).includes(which));
  const tail = typed.slice(Math.max(0, tokens[from]!.b - tokens[0]!.a));
  const clock = CLOCK.exec(tail);
  if (!clock) return null;
  let hour = Number(clock[1]);
  if (clock[3]?.toLowerCase() === 'pm' && hour < 12) hour += 12;
  if (clock[3]?.toLowerCase() === 'am' && hour === 12) hour = 0;
  if (hour > 23 || Number(clock[2] ?? 0) > 59) return null;
  const at = `${String(hour).padStart(2, '0')}:${clock[2] ?? '00'}`;
  if (which === 'morning') return set('morning', { at });
  return weekday ? set('summary', { day: weekday, at }) : null;
};
const weekdayIn = (_s: string): string | undefined => undefined;

const moistureOf: Part = (tokens) => {
  if (!has(tokens, 'moisture')) return null;
  const slots = take(tokens, SLOTS_4);
  if (slots?.nums.length !== 1 || slots.get('material').length !== 1) return null;
  const n = slots.nums[0]!.n!;
  if (n.unit !== '%' && !(n.unit === null && slots.get('set!').length > 0)) return null;
  return n.value >= 0 && n.value <= 100 ? set(`moisture:${slots.val('material')}`, n.value) : null;
};

const factorOf: Part = (tokens, scope) => {
  if (!has(tokens, 'factor')) return null;
  const slots = take(tokens, SLOTS_5);
  if (slots?.nums.length !== 1 || slots.get('container').length !== 1) return null;
  const n = slots.nums[0]!.n!;
  const unit = n.unit === null ? scope.context.units.mass : n.unit;
  return isMassUnit(unit) && n.value > 0
    ? set(`factor:${slots.val('container')}`, tidy(toKg(n.value, unit)))
    : null;
};

const litresOf: Part = (tokens, scope, commanded) => {
  if (!commanded && !has(tokens, 'litres')) return null;
  const slots = take(tokens, SLOTS_6);
  if (slots?.get('container').length !== 1 || slots.nums.length < 1 || slots.nums.length > 2) return null;
  const n = slots.nums.at(-1)!.n!;
  const label = slots.nums.length === 2 ? slots.nums[0]!.n! : undefined;
  if (!isVolumeUnit(n.unit)) {
    if (!commanded || label || !isMassUnit(n.unit ?? scope.context.units.mass) || !has(tokens, 'tare'))
      return null;
    return null;
  }
  return set(
    `litres:${slots.val('container')}${label ? ` ${label.value}` : ''}`,
    tidy(toLitres(n.value, n.unit)),
  );
};

const recipeOf: Part = (tokens) => {
  if (!has(tokens, 'recipe')) return null;
  const slots = take(beside(tokens, 'recipe'), SLOTS_7);
  if (!slots) return null;
  const nums = slots.nums.map((tok) => tok.n!);
  if (nums.length < 1 || nums.length > 2) return null;
  const order = slots.get('material').map((tok) => sense(tok, 'material')!);
  const food = order.indexOf('food-scraps');
  const first = nums[0]!.to ?? undefined;
  const pair =
    nums.length === 2
      ? [nums[0]!.value, nums[1]!.value]
      : first !== undefined
        ? [nums[0]!.value, first]
        : nums[0]!.fraction
          ? null
          : [nums[0]!.value, 1];
  if (!pair) return null;
  const by = slots.get('byword').some((tok) => sense(tok, 'byword') === 'mass') ? 'mass' : 'volume';
  const [chips, scraps] = food === 0 && order.length > 1 ? [pair[1]!, pair[0]!] : [pair[0]!, pair[1]!];
  return set('recipe', { chips, food: scraps, by });
};

const ruleSetOf: Part = (tokens, scope) => {
  if (!has(tokens, 'rule-set')) return null;
  const typed = sliceOfTokens(scope.message, tokens).toLowerCase();
  // `organic-vessel-3d` holds `vessel-3d`: the longest name that was said.
  const rule = RULE_SETS.filter((name) => typed.includes(name)).sort((a, b) => b.length - a.length)[0];
  return rule ? set('rule-set', rule) : null;
};

const safetyOf: Part = (tokens, scope, commanded) => {
  const at = tokens.findIndex((tok) => named(tok).some((v) => v.startsWith('safety:')));
  if (at < 0) return null;
  const name = named(tokens[at]!).find((v) => v.startsWith('safety:'))!;
  let rest = tokens.slice(at + 1);
  const marked =
    rest[0]?.k === 'p' ||
    sense(rest[0], 'be') !== undefined ||
    sense(rest[0], 'prep') === 'to' ||
    sense(rest[0], 'fill') !== undefined;
  while (
    rest[0] &&
    (rest[0].k === 'p' ||
      sense(rest[0], 'be') !== undefined ||
      sense(rest[0], 'prep') === 'to' ||
      (rest[0].k === 'w' &&
        rest[0].senses.some((s) => s.cls === 'fill') &&
        rest.length > 1 &&
        rest[0].s.length <= 3))
  )
    rest = rest.slice(1);
  const opens = !scope.prevTok || scope.prevTok.k === 'p';
  if (rest.length === 0 || (!commanded && !(marked && at === 0 && opens))) return null;
  return set(name, sliceOfTokens(scope.message, rest));
};

const acceptsOf: Part = (tokens, scope) => {
  const at = tokens.findIndex((tok) => named(tok).includes('accepts'));
  if (at < 0 || scope.asked) return null;
  const strong =
    tokens.slice(0, at + 1).some((tok) => sense(tok, 'set!') === 'set') || tokens[at]!.s.includes(' ');
  if (!strong) return null;
  const words = tokens
    .slice(at + 1)
    .filter(
      (tok) =>
        tok.k === 'w' &&
        !tok.senses.some((s) => s.cls === 'article' || s.cls === 'dateword' || s.cls === 'prep'),
    );
  if (words.length === 0 || words.length > 3 || tokens.some((tok) => tok.k === 'n')) return null;
  const refuse =
    sense(tokens[at], 'refuse') !== undefined ||
    tokens.slice(0, at).some((tok) => sense(tok, 'neg') !== undefined);
  const material = words.length === 1 ? sense(words[0], 'material') : undefined;
  return set('accepts', { [material ?? words.map((tok) => tok.s).join(' ')]: !refuse });
};

const languagesOf: Part = (tokens, _scope, commanded) => {
  if (!has(tokens, 'language') || !commanded) return null;
  const codes: readonly string[] = LANGUAGES;
  const list = [
    ...new Set(
      tokens
        .map((tok) => (codes.includes(tok.s) ? tok.s : sense(tok, 'lang')))
        .filter((v) => v !== undefined),
    ),
  ];
  return list.length > 0 ? set('languages', list) : null;
};

const aerationOf: Part = (tokens, _scope, commanded) => {
  if (!has(tokens, 'aeration') || !commanded) return null;
  const value = tokens.map((tok) => sense(tok, 'aeration')).find((v) => v !== undefined);
  return value ? set('aeration', value) : null;
};

const SWITCH: Readonly<Record<string, string>> = {
  on: 'on',
  off: 'off',
  oui: 'on',
  non: 'off',
  si: 'on',
  no: 'off',
};
const cautionsOf: Part = (tokens, _scope, commanded) => {
  if (!has(tokens, 'cautions') || !commanded) return null;
  const to = SWITCH[tokens.at(-1)!.s];
  return to ? set('cautions', to) : null;
};

const SPAN_DAYS: readonly [RegExp, number][] = [
  [/^(?:days?|jours?|dias?)$/, 1],
  [/^(?:weeks?|semaines?|semanas?)$/, 7],
  [/^(?:months?|mois|mes(?:es)?)$/, 30],
  [/^(?:years?|ans?|annees?|anos?)$/, 365],
];
/** `set keep messages 2 years`: in days. */
const keepMessagesOf: Part = (tokens, scope, commanded) => {
  if (!has(tokens, 'keep-messages') || !commanded) return null;
  const [, count, word = ''] =
    /(\d{1,5})\s*([^\s\d]+)?\s*$/.exec(plain(sliceOfTokens(scope.message, tokens)).text) ?? [];
  const days = SPAN_DAYS.find(([pattern]) => pattern.test(word))?.[1];
  return count && days ? set('keep-messages', Number(count) * days) : null;
};

/** When nobody is here: `closed from 24 dec to 2 jan`. */
export const closed: Reader = {
  rule: 'request closed',
  on: ['req'],
  read(tokens, scope) {
    const own = (tok: Tok) => tok.senses.some((s) => s.cls === 'req' && s.val === 'closed');
    if (!tokens.some(own)) return null;
    const slots = take(
      tokens.filter((tok) => !own(tok)),
      SLOTS_8,
    );
    if (!slots || scope.asked || slots.dates.length === 0 || slots.dates.length > 2) return null;
    const [first, second] = slots.dates.map((tok) => (tok.date!.ahead ?? tok.date!.when)?.slice(0, 10));
    // `closed sept 20 to 24`, `del 20 al 24 de septiembre`: a bare day is in the month of the other.
    const day = slots.nums[0]?.n;
    const leads = slots.nums[0] !== undefined && slots.nums[0].a < slots.dates[0]!.a;
    const whole = day && first && day.unit === null && Number.isInteger(day.value) && day.value >= 1;
    const fits =
      whole &&
      (leads ? day.value < Number(first.slice(8)) : day.value > Number(first.slice(8)) && day.value <= 31);
    if (slots.nums.length > 0 && !(fits && slots.nums.length === 1 && slots.dates.length === 1)) return null;
    const other = fits ? `${first.slice(0, 8)}${String(day.value).padStart(2, '0')}` : second;
    const [from, to] = fits && leads ? [other, first] : [first, other];
    const until =
      slots.get('until').length > 0 || /^(?:until|till|til|through|thru|jusqu|hasta)/.test(slots.dates[0]!.s);
    const untilOnly = slots.dates.length === 1 && !fits && until && slots.get('since').length === 0;
    return [
      {
        request: bare({
          request: 'closed' as const,
          from: untilOnly ? undefined : from,
          to: untilOnly ? from : to,
        }) as Request,
      },
    ];
  },
};

// What each reader accepts, kept as constants so that their ranks are worked out once.
const SLOTS_1 = [
  'emptyadj',
  'tare',
  'set',
  'set!',
  'container',
  'n',
  'numero',
  'be',
  'add',
  'all',
  'each',
  'approx',
  'new',
];
const SLOTS_2 = ['unit', 'set!', 'tempword', 'be'];
const SLOTS_3 = ['n', 'set!', 'be', 'req', 'per', 'yearword', 'add', 'set'];
const SLOTS_4 = ['set', 'set!', 'material', 'n', 'be', 'feel'];
const SLOTS_5 = ['set', 'set!', 'container', 'n', 'be', 'material', 'add', 'full', 'req'];
const SLOTS_6 = ['set!', 'set', 'container', 'n', 'be', 'unit'];
const SLOTS_7 = ['n', 'set!', 'be', 'material', 'container', 'per', 'each', 'byword', 'req'];
const SLOTS_8 = ['n', 'until', 'since', 'be', 'dateword', 'intent'];
