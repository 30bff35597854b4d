import { type FieldRecord, PROBLEM_TOPICS, type ProblemTopic } from '#records';
import { drop } from '../plausible.ts';
import {
  bare,
  type Item,
  isPrep,
  isSoft,
  placesOf,
  type Reader,
  type Scope,
  type Slots,
  take,
} from '../reading.ts';
import { sense, type Tok } from '../tokens.ts';
import { amountOf } from './amounts.ts';

const topicOf = (tok: Tok) => sense(tok, 'topic') as ProblemTopic | undefined;

/** Topics that need more than their own word: `ice`, `juice`, `glass` are said of other things too. */
const LOUD = new Set<ProblemTopic>([
  'fault',
  'power',
  'spill',
  'complaint',
  'freezing',
  'pests',
  'flies',
  'odour',
  'leachate',
  'contamination',
]);

/** Something wrong: `rats by pile 3`, `lift is broken again`, `strong smell at D`. */
export const problem: Reader = {
  rule: 'problem',
  on: ['topic', 'material'],
  read(tokens, scope) {
    const slots = take(tokens, SLOTS_1, 2);
    if (!slots || scope.asked || slots.nums.length > 0) return null;
    const topics = [...new Set(slots.get('topic').map((tok) => topicOf(tok)!))];
    const strewn =
      slots.get('material').some((tok) => sense(tok, 'material') === 'residue') &&
      topics.length === 0 &&
      placesOf(slots).length > 0 &&
      slots.all.some(
        (one) => isPrep(one, 'on') || isPrep(one, 'in') || one.cls === 'seen' || one.cls === 'because',
      );
    const topic = strewn ? ('contamination' as const) : chiefOf(topics);
    if (!topic) return null;
    const places = placesOf(slots);
    const anchored =
      places.length > 0 ||
      slots.get('machine').length > 0 ||
      slots.get('source').length > 0 ||
      slots.get('container').length > 0 ||
      slots.get('person').length > 0 ||
      slots.get('material').length > 0 ||
      slots.get('pilehead').length > 0 ||
      slots.get('fan').length > 0;
    const machine =
      places.length + slots.get('machine').length + slots.get('fan').length + slots.get('container').length >
      0;
    if (topic === 'fault' && !machine) return null;
    if (
      topic === 'fault' &&
      places.some((place) => /^(pile|bay)/.test(place)) &&
      slots.get('machine').length + slots.get('fan').length === 0
    )
      return null;
    if (topic === 'freezing' && !anchored) return null;
    if (
      topic === 'contamination' &&
      slots.get('topic').every((tok) => tok.s.indexOf(' ') < 0) &&
      !(
        slots.get('material').length > 0 ||
        slots.get('container').length > 0 ||
        slots.get('source').length > 0 ||
        slots.get('contaminated').length > 0
      )
    )
      return null;
    if (slots.unknown.length > 0 && !(anchored && slots.unknown.length < 2 + slots.all.length / 3)) {
      if (!(topic === 'contamination' && slots.get('topic').some((tok) => tok.s.includes(' ')))) return null;
    }
    if (!LOUD.has(topic)) return null;
    const strength = slots.val('strength') as 'faint' | 'strong' | undefined;
    const make = (place: string | undefined): FieldRecord =>
      bare({ kind: 'problem' as const, topic, place, strength: topic === 'odour' ? strength : undefined });
    if (places.length === 0 && scope.carry.place && tokens.some((tok) => sense(tok, 'there') !== undefined))
      return [{ record: make(scope.carry.place) }];
    if (places.length <= 1) return [{ record: make(places[0]) }];
    return places.map((place) => ({ record: make(place) }));
  },
};

const RANK: readonly ProblemTopic[] = [
  'complaint',
  'spill',
  'power',
  'fault',
  'freezing',
  'pests',
  'flies',
  'leachate',
  'odour',
  'contamination',
];

function chiefOf(topics: readonly ProblemTopic[]): ProblemTopic | null {
  if (topics.length === 0) return null;
  return RANK.find((topic) => topics.includes(topic)) ?? topics[0] ?? null;
}

/** A trouble that ended: only where the book knows of one that it can mean. */
export const resolved: Reader = {
  rule: 'resolved',
  on: ['fix', 'gone', 'neg', 'topic', 'machine'],
  read(tokens, scope) {
    const open = scope.context.book?.openProblems ?? [];
    if (open.length === 0 || scope.asked) return null;
    const slots = take(tokens, SLOTS_2, 1);
    if (!slots) return null;
    const ended = slots.get('fix').length > 0 || slots.get('gone').length > 0;
    const none = slots.get('neg').length > 0 && slots.get('topic').length > 0;
    if (!ended && !none) return null;
    if (ended && slots.get('neg').length > 0 && slots.get('gone').length === 0) return null;
    const topics = slots.get('topic').map((tok) => topicOf(tok)!);
    const topic =
      slots.get('machine').length > 0 || slots.get('fan').length > 0
        ? (topics[0] ?? ('fault' as const))
        : topics[0];
    const places = placesOf(slots);
    const numbered = slots.nums[0]?.n?.value;
    if (slots.nums.length > 1) return null;
    const matching = open.filter((one) => {
      if (numbered !== undefined) return one.entry === numbered;
      if (places.length > 0 && one.place !== null && !places.includes(one.place)) return false;
      if (places.length > 0 && one.place === null && topic === undefined) return false;
      if (topic === undefined) return places.length > 0 || open.length === 1;
      const faulty = ['fault', 'power', 'freezing'];
      return one.topic === topic || (ended && faulty.includes(one.topic) && faulty.includes(topic));
    });
    if (
      topic === undefined &&
      places.length === 0 &&
      numbered === undefined &&
      slots.get('fix').length + slots.get('gone').length === 0
    )
      return null;
    const hit = matching.at(-1);
    if (!hit) return null;
    return [
      {
        record: bare({
          kind: 'resolved' as const,
          topic: hit.topic,
          place: places[0] ?? hit.place ?? undefined,
          ...(numbered !== undefined && { entry: numbered }),
        }) as FieldRecord,
      },
    ];
  },
};

/** A job done: `swept`, `gate locked`, `20 kg weight reads 20.4`. */
export const chore: Reader = {
  rule: 'chore',
  on: ['chore', 'water', 'check', 'duty', 'testweight', 'washed'],
  read(tokens, scope) {
    const slots = take(tokens, SLOTS_3);
    if (!slots || scope.asked) return null;
    const chores = [...new Set(slots.get('chore').map((tok) => sense(tok, 'chore')!))];
    const places = placesOf(slots);
    if (slots.get('duty').length > 0 && chores.length === 0) {
      if (slots.nums.length > 0 || !slots.get('done').length) return null;
      return [{ record: { kind: 'chore', chore: sense(slots.get('duty')[0]!, 'duty')! } }];
    }
    if (
      slots.get('testweight').length > 0 ||
      (chores.length === 1 &&
        (chores[0] === 'check-scale' || chores[0] === 'check-thermometer') &&
        slots.nums.length > 0)
    )
      return readsAgainst(
        slots.nums.map((tok) => tok),
        chores[0] ?? 'check-scale',
        slots.get('testweight').length > 0,
        scope,
      );
    if (slots.get('water').length > 0 && slots.nums.length > 0) {
      // A number that names a pile is one; with an amount, water went in.
      const named = slots.nums.filter((tok) => sense(tok, 'place?') !== undefined && tok.n!.unit === null);
      const rest = { ...slots, nums: slots.nums.filter((tok) => !named.includes(tok)) } as Slots;
      const list = [...places, ...named.map((tok) => sense(tok, 'place?')!)];
      const amount = amountOf(rest, scope);
      if (amount === null || list.length > 1 || chores.length > 0) {
        if (amount === undefined && chores.length === 0)
          return list.map((place) => ({ record: { kind: 'chore' as const, chore: 'watered', place } }));
        return null;
      }
      const place = list[0] ?? scope.carry.place ?? undefined;
      if (amount === undefined)
        return [{ record: bare({ kind: 'chore' as const, chore: 'watered', place }) as FieldRecord }];
      const { kg, litres, container, count } = amount;
      const record = bare({
        kind: 'weigh-in' as const,
        material: 'water',
        container,
        count: container ? count : 1,
        kg,
        litres,
        basis: kg === undefined ? undefined : container ? ('gross' as const) : ('net' as const),
        place,
      });
      return [{ record: record as FieldRecord, typed: amount.typed }];
    }
    const washedContainers = slots.get('washed').length > 0 && slots.get('container').length === 1;
    if (
      washedContainers
        ? slots.nums.some((tok) => tok.n!.unit !== null)
        : slots.nums.length > 0 || slots.get('container').length > 0
    )
      return null;
    if (slots.get('water').length > 0) {
      if (chores.length > 0) return null;
      if (places.some((place) => place === 'ambient' || place === 'floor' || place === 'lift')) return null;
      const all = slots.get('all').length + slots.get('both').length + slots.get('many').length > 0;
      const list =
        places.length > 0
          ? places
          : all && (slots.get('both').length === 0 || scope.context.piles.length === 2)
            ? [...scope.context.piles]
            : [scope.carry.place ?? undefined];
      return list.map((place) => ({
        record: bare({ kind: 'chore' as const, chore: 'watered', place }) as FieldRecord,
      }));
    }
    if (
      slots.get('washed').length === 1 &&
      chores.length === 0 &&
      slots.get('machine').length + slots.get('fan').length === 0
    ) {
      const what = places.includes('lift')
        ? 'wash-lift'
        : slots.get('tools').length > 0
          ? 'clean-tools'
          : washedContainers
            ? 'wash-containers'
            : null;
      return what ? [{ record: { kind: 'chore', chore: what } }] : null;
    }
    if (chores.length === 1) {
      const place = places.find(
        (one) =>
          !(chores[0] === 'wash-lift' && one === 'lift') && !(chores[0] === 'sweep' && one === 'floor'),
      );
      return [
        {
          record: bare({
            kind: 'chore' as const,
            chore: chores[0]!,
            place:
              chores[0] === 'inspect' || chores[0] === 'clean-spill' || chores[0] === 'sweep'
                ? place
                : undefined,
          }) as FieldRecord,
        },
      ];
    }
    return null;
  },
};

function readsAgainst(nums: readonly Tok[], named: string, weight: boolean, scope: Scope): Item[] | null {
  const figures = nums.map((tok) => tok.n!);
  if (figures.length === 0) return null;
  const isThermo = named === 'check-thermometer' || figures.some((n) => n.unit === 'C' || n.unit === 'F');
  const choreName = isThermo ? 'check-thermometer' : 'check-scale';
  const unitOf =
    figures.find((n) => n.unit !== null)?.unit ??
    (isThermo ? scope.context.units.temperature : scope.context.units.mass);
  const unit = unitOf === 'deg' ? scope.context.units.temperature : unitOf;
  if (figures.length === 1) {
    if (isThermo) return [{ record: { kind: 'chore', chore: choreName, reads: figures[0]!.value, unit } }];
    return weight ? null : [{ record: { kind: 'chore', chore: choreName, reads: figures[0]!.value, unit } }];
  }
  if (figures.length !== 2) return null;
  if (!weight && !isThermo && named !== 'check-scale') return null;
  const firstIsAgainst = weight || figures[0]!.value === Math.round(figures[0]!.value);
  const [against, reads] = firstIsAgainst ? [figures[0]!, figures[1]!] : [figures[1]!, figures[0]!];
  return [{ record: { kind: 'chore', chore: choreName, reads: reads.value, against: against.value, unit } }];
}

/** Weather that is coming or has come. Dates that lie ahead are read for this kind alone. */
export const weather: Reader = {
  rule: 'weather',
  on: ['weather'],
  read(tokens, scope) {
    const slots = take(tokens, SLOTS_4);
    if (!slots || scope.asked) return null;
    const kinds = [...new Set(slots.get('weather').map((tok) => sense(tok, 'weather')!))];
    if (kinds.length === 0 || kinds.length > 2) return null;
    const depths = slots.nums.filter((tok) => ['mm', 'cm', 'in'].includes(tok.n!.unit ?? ''));
    if (slots.nums.length > depths.length || depths.length > 1) return null;
    const fell = depths[0]?.n;
    const mm = fell ? fell.value * (fell.unit === 'mm' ? 1 : fell.unit === 'cm' ? 10 : 25.4) : undefined;
    const ahead =
      slots.get('forecast').length > 0 ||
      slots.dates.some((tok) => (tok.date!.ahead ?? '').slice(0, 10) > scope.context.nowLocal.slice(0, 10));
    const past =
      slots.get('weather').some((tok) => sense(tok, 'fell') !== undefined) ||
      slots.get('observed').length > 0 ||
      (mm !== undefined && !ahead);
    if (!past && !ahead && slots.dates.length === 0) return null;
    if (
      !past &&
      !ahead &&
      slots.dates.length > 0 &&
      slots.dates.every((tok) => (tok.date!.ahead ?? '').slice(0, 10) < scope.context.nowLocal.slice(0, 10))
    )
      return null;
    if (past && !ahead && mm === undefined && slots.dates.length === 0 && slots.get('observed').length === 0)
      return null;
    return kinds.map((expects) => ({
      record: bare({
        kind: 'weather' as const,
        expects: expects as 'rain',
        observed: past && !ahead ? true : undefined,
        mm: past && !ahead ? mm : undefined,
      }) as FieldRecord,
    }));
  },
};

// What each reader accepts, kept as constants so that their ranks are worked out once.
const SLOTS_1 = [
  'topic',
  'place',
  'machine',
  'strength',
  'source',
  'person',
  'container',
  'material',
  'contaminated',
  'add',
  'point',
  'cover',
  'be',
  'layer',
  'seen',
  'feel',
  'weather',
  'pilehead',
  'fan',
  'drum',
  'approx',
  'tempword',
  'full',
  'many',
  'all',
  'both',
  'sink',
  'gloss',
  'squeeze',
  'because',
];
const SLOTS_2 = [
  'fix',
  'gone',
  'neg',
  'topic',
  'place',
  'machine',
  'strength',
  'fan',
  'drum',
  'container',
  'be',
  'n',
  'add',
  'entries',
  'more',
  'pilehead',
  'contaminated',
  'chore',
  'ok',
  'numero',
];
const SLOTS_3 = [
  'chore',
  'place',
  'n',
  'water',
  'check',
  'machine',
  'fan',
  'duty',
  'done',
  'be',
  'ok',
  'testweight',
  'washed',
  'tools',
  'all',
  'many',
  'both',
  'container',
  'pilehead',
  'add',
  'unit',
  'prep',
  'more',
  'fix',
  'tempword',
  'squeeze!',
  'gloss',
  'sink',
];
const SLOTS_4 = [
  'weather',
  'forecast',
  'observed',
  'n',
  'strength',
  'dateword',
  'be',
  'add',
  'rather',
  'fill!',
  'intent',
  'approx',
  'point',
  'ambientword',
];
