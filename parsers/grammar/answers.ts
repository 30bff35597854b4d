import { type FieldRecord, isMassUnit, type Request, toCelsius, toKg } from '#records';
import type { ReadContext } from '../context.ts';
import { bare, type Item, isSoft, placesOf, take, tidy } from '../reading.ts';
import type { Plain } from '../text.ts';
import type { Tok } from '../tokens.ts';
import { sliceOfTokens } from './words.ts';

type Question = NonNullable<NonNullable<ReadContext['book']>['openQuestion']>;

const SHORT = [
  'yes',
  'noans',
  'choice',
  'net',
  'gross',
  'each',
  'all',
  'total',
  'unit',
  'place',
  'n',
  'be',
  'approx',
  'numero',
  'material',
];

/** A short message that answers what was asked: a number, `yes`, `the first`, `net`, `F`, a place. */
export function answerIn(message: Plain, tokens: readonly Tok[], context: ReadContext): Item[] | null {
  const question = context.book?.openQuestion;
  const told = tokens.filter((tok) => !isSoft(tok) && tok.s !== '.' && tok.s !== '!');
  if (!question || told.length === 0 || told.length > 6) return null;
  if (told.some((tok) => tok.s === '\n' || tok.s === '?')) return null;
  // What takes something back speaks of the last thing said, whatever was asked: `annule`.
  if (told.some((tok) => tok.senses.some((one) => one.cls === 'req' && one.val === 'undo'))) return null;
  const to = (value: string): Item[] => [{ request: { request: 'answer', to: value } as Request }];
  const typed = sliceOfTokens(message, told).trim();
  if (question.about === 'doubt') {
    const scale = /^(?:°|º)?\s*([cf])$/i.exec(typed);
    if (scale && question.doubt.why === 'which-unit')
      return to(chosenBy(question, (say) => say.endsWith(scale[1]!.toUpperCase())) ?? typed);
  }
  const slots = take(told, SHORT);
  if (!slots || slots.dates.length > 0) return null;
  const n = slots.nums.length === 1 ? slots.nums[0]!.n! : null;
  if (slots.nums.length > 1) return null;
  // `done 3` speaks of the list of jobs, whatever was asked last.
  if (
    n &&
    told.some((tok) => tok.senses.some((s) => s.cls === 'req') && !/^(?:number|numero|no)\b/.test(tok.s))
  )
    return null;
  // `chips 12` is a load, not how warm the air is or what an empty cart weighs.
  if (question.about !== 'doubt' && slots.get('material').length > 0) return null;
  if (question.about === 'tare')
    return n && n.value > 0 && (n.unit === null || isMassUnit(n.unit)) && placesOf(slots).length === 0
      ? to(typed)
      : null;
  if (question.about === 'ambient') {
    const degrees = n && (n.unit === null || n.unit === 'C' || n.unit === 'F' || n.unit === 'deg');
    const unit = n?.unit === 'C' || n?.unit === 'F' ? n.unit : context.units.temperature;
    // What no air can be answers something else.
    const isAir = degrees && Math.abs(toCelsius(n.value, unit)) <= 50;
    return isAir && placesOf(slots).length === 0 ? to(typed) : null;
  }
  if (question.about === 'new-pile') {
    const [place] = placesOf(slots);
    if (place && slots.all.length === 1 && question.choices.includes(place)) return to(place);
    return slots.get('yes').length > 0 ? to('yes') : slots.get('noans').length > 0 ? to('no') : null;
  }
  // A number with its own place, material or scale is an entry of its own: `B 41`, `chips 12`, `41C` after a weight.
  if (n && (placesOf(slots).length > 0 || slots.get('material').length > 0)) return null;
  const isDegrees = n?.unit === 'C' || n?.unit === 'F' || n?.unit === 'deg';
  if (n && isDegrees !== (question.doubt.record.kind === 'temperature') && n.unit !== null) return null;
  return answerDoubt(question, slots.all, n, typed, to);
}

/** What may be meant, in the order asked: `same` of two carts is one of them though it stores nothing. */
const real = (question: Extract<Question, { about: 'doubt' }>) =>
  question.doubt.choices.filter((choice) => choice.say !== 'drop');

function chosenBy(
  question: Extract<Question, { about: 'doubt' }>,
  fits: (say: string) => boolean,
): string | undefined {
  return question.doubt.choices.find((choice) => fits(choice.say))?.say;
}

function answerDoubt(
  question: Extract<Question, { about: 'doubt' }>,
  all: readonly { cls: string; tok: Tok }[],
  n: Tok['n'] | null,
  typed: string,
  to: (value: string) => Item[],
): Item[] | null {
  const nth = (k: number) => real(question)[k]?.say;
  for (const { tok } of all) {
    for (const meaning of tok.senses) {
      if (meaning.cls === 'choice') {
        const say =
          meaning.val === 'first'
            ? nth(0)
            : meaning.val === 'second'
              ? nth(1)
              : chosenBy(question, (one) => one === meaning.val);
        if (say) return to(say);
      }
      if (meaning.cls === 'net' || meaning.cls === 'gross' || meaning.cls === 'each') {
        const say = chosenBy(question, (one) => one === meaning.cls);
        if (say) return to(say);
      }
      if (meaning.cls === 'total' || meaning.cls === 'all') {
        const say = chosenBy(question, (one) => one === 'all');
        if (say) return to(say);
      }
      if (meaning.cls === 'place' || meaning.cls === 'place?' || meaning.cls === 'material') {
        const say = chosenBy(question, (one) => one === meaning.val);
        if (say) return to(say);
      }
      if (meaning.cls === 'unit' && !n) {
        const say = chosenBy(
          question,
          (one) => one.endsWith(` ${meaning.val}`) || one.endsWith(`°${meaning.val}`),
        );
        if (say) return to(say);
      }
    }
  }
  if (n) {
    const unit = n.unit === 'deg' ? null : n.unit;
    const say = chosenBy(
      question,
      (one) =>
        Number.parseFloat(one) === n.value && (unit === null || one.includes(unit) || /^[\d.]+$/.test(one)),
    );
    return to(say ?? typed);
  }
  // `ok` said by the way lets nothing off a held pile: that is allowed by its own word.
  const mayNod = real(question).length === 1 && question.doubt.why !== 'held-pile';
  if (all.some((one) => one.cls === 'yes'))
    return mayNod ? to(nth(0)!) : question.doubt.why === 'held-pile' ? null : to('yes');
  if (all.some((one) => one.cls === 'noans')) return to(chosenBy(question, (one) => one === 'drop') ?? 'no');
  return null;
}

/** `another 58.5`, `same again`: what the sender's last message was about, once more. */
export function onceMore(tokens: readonly Tok[], context: ReadContext): Item[] | null {
  const last = context.book?.lastOfSender;
  if (!last || last.records.length === 0) return null;
  const told = tokens.filter((tok) => !isSoft(tok));
  const slots = take(told, SLOTS_1);
  if (!slots || slots.dates.length > 0) return null;
  const again = (record: FieldRecord): FieldRecord => {
    const { when: _when, said: _said, ...rest } = record;
    return rest as FieldRecord;
  };
  if (slots.get('same').length > 0 && slots.nums.length === 0)
    return last.records.map((record) => ({ record: again(record), assumed: ['same-again'] }));
  if (slots.get('more').length !== 1 || slots.nums.length === 0) return null;
  const model = last.records.findLast((record) => record.kind === 'weigh-in' && record.kg != null);
  if (model?.kind !== 'weigh-in') return null;
  const items: Item[] = [];
  for (const tok of slots.nums) {
    const n = tok.n!;
    const unit = n.unit === null ? context.units.mass : n.unit;
    if (!isMassUnit(unit) || n.value <= 0 || n.to !== undefined) return null;
    const {
      label: _label,
      flags: _flags,
      ofWhich: _ofWhich,
      fill: _fill,
      ...rest
    } = again(model) as typeof model;
    const flags = slots.get('contaminated').length > 0 ? ['contaminated'] : undefined;
    items.push({
      record: bare({ ...rest, count: 1, kg: tidy(toKg(n.value, unit)), flags }) as FieldRecord,
      assumed: ['same-again'],
      typed: `${n.value} ${unit}`,
    });
  }
  return items;
}

// What each reader accepts, kept as constants so that their ranks are worked out once.
const SLOTS_1 = ['same', 'more', 'n', 'contaminated', 'noop'];
