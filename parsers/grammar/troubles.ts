import type { FieldRecord, ProblemTopic } from '#records';
import { bare, isPrep, placesOf, type Reader, type Slots, take } from '../reading.ts';
import { sense, type Tok } from '../tokens.ts';

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
  on: ['topic', 'material', 'contaminated'],
  read(tokens, scope) {
    // Elsewhere a bare number is a pile's.
    const figured = tokens.some((tok) => sense(tok, 'topic') === 'power' || sense(tok, 'topic') === 'spill');
    const slots = take(tokens, figured ? WITH_FIGURES : SLOTS_1, 2);
    if (!slots || scope.asked) return null;
    const topics = [...new Set(slots.get('topic').map((tok) => topicOf(tok)!))];
    if (slots.nums.length > 0 && !figuresFit(slots, topics)) return null;
    if (twoClauses(slots)) return null;
    const strewn =
      (slots.get('contaminated').length > 0 ||
        slots.get('material').some((tok) => sense(tok, 'material') === 'residue')) &&
      topics.length === 0 &&
      placesOf(slots).length + slots.get('container').length > 0 &&
      slots.all.some(
        (one) =>
          isPrep(one, 'on') ||
          isPrep(one, 'in') ||
          one.cls === 'seen' ||
          one.cls === 'because' ||
          one.cls === 'contaminated',
      );
    // `bucket contaminated with labels, | 20 lb` was weighed.
    if (strewn && scope.nextTok?.s === ',' && scope.afterTok?.k === 'n') return null;
    const leaks =
      topics.length === 1 &&
      topics[0] === 'leachate' &&
      slots.get('machine').length > 0 &&
      !placesOf(slots).some((place) => /^(pile|bay|drum)/.test(place));
    // `the hose is leaking`: no juice of the heaps
    const topic = strewn ? ('contamination' as const) : leaks ? ('fault' as const) : chiefOf(topics);
    if (!topic) return null;
    const places = placesOf(slots);
    const spot = slots.get('spot').length > 0;
    const anchored =
      places.length > 0 ||
      slots.get('machine').length > 0 ||
      slots.get('source').length > 0 ||
      slots.get('container').length > 0 ||
      slots.get('person').length > 0 ||
      slots.get('material').length > 0 ||
      slots.get('pilehead').length > 0 ||
      slots.get('fan').length > 0 ||
      slots.get('border').length > 0;
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
    // `rats!` alone is an oath as well as an animal.
    if (topic === 'pests' && slots.all.length === 1) return null;
    // `se me volteó el café`: a cup, where the word is also a kitchen's name
    if (topic === 'spill' && slots.get('source').length > 0 && onlySources(slots)) return null;
    if (!LOUD.has(topic)) return null;
    // `the office stinks` is no trouble of the heaps; `no power in the office` is one.
    if (spot && !anchored && !OF_THE_SITE.has(topic)) return null;
    const strength = slots.val('strength') as 'faint' | 'strong' | undefined;
    const make = (place: string | undefined): FieldRecord =>
      bare({ kind: 'problem' as const, topic, place, strength: topic === 'odour' ? strength : undefined });
    if (places.length === 0 && scope.carry.place && tokens.some((tok) => sense(tok, 'there') !== undefined))
      return [{ record: make(scope.carry.place) }];
    const apart = listedTopics(slots);
    const records = (place: string | undefined) =>
      apart.length > 1
        ? apart.map((each) => ({ record: { ...make(place), topic: each } as FieldRecord }))
        : [{ record: make(place) }];
    return places.length <= 1 ? records(places[0]) : places.flatMap(records);
  },
};

const onlySources = (slots: Slots) =>
  ['place', 'container', 'material', 'machine', 'spot', 'pilehead'].every(
    (cls) => slots.get(cls).length === 0,
  );

const OF_THE_SITE = new Set<ProblemTopic>(['power', 'spill', 'fault', 'complaint']);

/** Troubles that come side by side: `flies and a bad smell at B` is two. */
const SIDE_BY_SIDE = new Set<ProblemTopic>(['flies', 'odour', 'leachate', 'pests']);

/** The troubles of a list, in the order said, where a comma or `and` parts them; else none. */
function listedTopics(slots: Slots): ProblemTopic[] {
  const out: ProblemTopic[] = [];
  let parted = true;
  for (const { cls, tok } of slots.all) {
    const topic = cls === 'topic' ? topicOf(tok) : undefined;
    if (topic === undefined) {
      parted ||= cls === 'and' || (cls === 'sep' && ',+&'.includes(tok.s)) || sense(tok, 'and') !== undefined;
      continue;
    }
    if (!SIDE_BY_SIDE.has(topic)) return [];
    if (out.includes(topic)) continue;
    if (!parted) return [];
    out.push(topic);
    parted = false;
  }
  return out;
}

/** `flies in the drum room, A smells`: each with its place, so each is read by itself. */
function twoClauses(slots: Slots): boolean {
  const comma = slots.all.findIndex((one) => one.cls === 'sep' && one.tok.s === ',');
  if (comma < 0) return false;
  return [slots.all.slice(0, comma), slots.all.slice(comma)].every(
    (half) =>
      half.some((one) => one.cls === 'topic') &&
      half.some((one) => one.cls === 'place' || one.cls === 'spot'),
  );
}

/** Figures that a trouble may have: since when the power is out, how much was spilled. */
function figuresFit(slots: Slots, topics: readonly ProblemTopic[]): boolean {
  if (slots.nums.length > 1) return false;
  const at = slots.all.findIndex((one) => one.cls === 'n');
  const n = slots.nums[0]!.n!;
  if (n.to !== undefined) return false;
  if (topics.includes('power'))
    return (
      (n.unit === null || n.unit === 'h') &&
      n.value <= 24 &&
      sense(slots.all[at - 1]?.tok, 'since') !== undefined
    );
  return topics.includes('spill') && n.value <= 60 && (n.unit !== null || slots.get('container').length > 0);
}

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

const MOVES = /\b(?:turn(?:s|ing)|run(?:s|ning)|tourne|gira|jala)\b/;

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
        : // `it's turning again`: what turns had stood still, whatever else is open.
          (topics[0] ?? (slots.get('fix').some((tok) => MOVES.test(tok.s)) ? ('fault' as const) : undefined));
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
  'spot',
  'food',
  'border',
];
const WITH_FIGURES = [...SLOTS_1, 'n', 'since'];

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
