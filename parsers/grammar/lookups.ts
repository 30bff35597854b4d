// What is looked up: an entry, what may go in, what happened since, room, where a pile came from.
import { placesOf, type Reader, take } from '../reading.ts';
import type { SaidDate } from '../said-dates.ts';
import { type Plain, sliceOf } from '../text.ts';
import { sense, type Tok } from '../tokens.ts';
import { ask, asks, beside } from './asking.ts';

/** `show 12`, `show #12`, `why #12`. */
export const show: Reader = {
  rule: 'request show',
  on: ['req'],
  read(tokens) {
    const rest = beside(tokens, 'show');
    if (!rest) return null;
    const slots = take(rest, SLOTS_5);
    if (slots?.nums.length !== 1) return null;
    const n = slots.nums[0]!.n!;
    if (n.unit !== null || !Number.isInteger(n.value) || n.value < 1) return null;
    return ask({ request: 'show', entry: n.value });
  },
};

const isThing = (tok: Tok | undefined) =>
  tok?.k === 'w' && !tok.senses.some((s) => ['be', 'ask', 'prep', 'req', 'article', 'and'].includes(s.cls));

/** May it go in? `can we take pizza boxes?` */
export const accepts: Reader = {
  rule: 'request accepts',
  on: ['req'],
  read(tokens, scope) {
    const phrases = tokens.filter((tok) => asks(tok, 'accepts'));
    // `may compostable cups go in`: before a thing, or where something else asks, the word tells which cups.
    const kind = (tok: Tok) =>
      /^compostables?$/.test(tok.s) && (phrases.length > 1 || isThing(tokens[tokens.indexOf(tok) + 1]));
    const phrase = phrases.filter((tok) => !kind(tok));
    const rest = phrases.length > 0 ? tokens.filter((tok) => !phrase.includes(tok)) : null;
    if (!rest) return null;
    // Without a question mark it opens with its asking: `raccoon in the compost again` tells.
    const opens = tokens.find((tok) => tok.k === 'w');
    const asking =
      scope.asked ||
      (phrase.some((tok) => tok.s.split(' ').length >= 3) &&
        (!scope.prevTok || scope.prevTok.k === 'p') &&
        (phrase.includes(opens!) || sense(opens, 'ask') !== undefined));
    if (!asking) return null;
    const words = rest.filter(
      (tok) =>
        tok.k === 'w' &&
        !/^(?:ok|okay|fine)$/.test(tok.s) &&
        (kind(tok) ||
          !tok.senses.some((s) =>
            [
              'article',
              'prep',
              'ask',
              'container',
              'place',
              'pilehead',
              'be',
              'dateword',
              'req',
              'adv',
            ].includes(s.cls),
          )) &&
        !(tok.senses.length > 0 && tok.senses.every((s) => ['fill', 'and', 'definite'].includes(s.cls))),
    );
    if (rest.some((tok) => tok.k === 'n') || words.length === 0 || words.length > 4) return null;
    const named = words.length === 1 ? sense(words[0], 'material') : undefined;
    // What is pulled out as dirt is asked about by its own name: `plastic cutlery`, not "residue".
    const material = named === 'residue' ? undefined : named;
    return ask({ request: 'accepts', what: material ?? spoken(scope.message, tokens, words) });
  },
};

/** The thing asked about in the writer's own words, with the small ones inside it: `cáscara de naranja`. */
function spoken(message: Plain, tokens: readonly Tok[], words: readonly Tok[]): string {
  const [from, to] = [tokens.indexOf(words[0]!), tokens.indexOf(words.at(-1)!)];
  const whole = tokens
    .slice(from, to + 1)
    .every((tok) => words.includes(tok) || sense(tok, 'prep') !== undefined);
  return whole
    ? sliceOf(message, words[0]!.a, words.at(-1)!.b).toLowerCase()
    : words.map((tok) => sliceOf(message, tok.a, tok.b).toLowerCase()).join(' ');
}

/** What happened since a day; room for more; where a pile came from; what a source may be told. */
export const lookups: Reader = {
  rule: 'request lookup',
  on: ['req'],
  read(tokens, scope) {
    const handed = beside(tokens, 'handover');
    if (handed) {
      const slots = take(handed, SLOTS_7);
      if (
        slots &&
        (scope.asked ||
          slots.dates.length > 0 ||
          tokens.some((tok) => asks(tok, 'handover') && HANDED.test(tok.s)))
      ) {
        const date = slots.dates[0]?.date;
        // On a Friday, `since friday` is the whole week back, not this morning.
        const from = date?.when ?? [...((date?.span as SaidDate | undefined)?.choices ?? [])].sort()[0];
        return ask({ request: 'handover', ...(from && { from }) });
      }
    }
    const room = beside(tokens, 'room');
    if (room) {
      const slots = take(room, SLOTS_8);
      if (
        slots &&
        slots.nums.length <= 1 &&
        (scope.asked || tokens.some((tok) => asks(tok, 'room') && tok.s.includes(' ')))
      ) {
        const n = slots.nums[0]?.n;
        const [place] = placesOf(slots);
        // Of a site's only drum its name says nothing; of several it says which one.
        const several = scope.context.drums.length > 1;
        const named = place !== undefined && (several ? place !== 'drum' : !/^drum/.test(place));
        if (!n || (n.unit === null && Number.isInteger(n.value)))
          return ask({
            request: 'room',
            ...(n && { count: n.value }),
            ...(named && { place }),
          });
      }
    }
    const trace = beside(tokens, 'trace');
    if (trace) {
      const slots = take(trace, SLOTS_9);
      if (
        slots &&
        placesOf(slots).length === 1 &&
        tokens.some((tok) => asks(tok, 'trace') && (tok.s.includes(' ') || scope.asked))
      )
        return ask({ request: 'trace', place: placesOf(slots)[0]! });
    }
    const feedback = beside(tokens, 'feedback');
    if (feedback) {
      const slots = take(feedback, SLOTS_10);
      if (slots && slots.get('source').length === 1)
        return ask({ request: 'feedback', what: sense(slots.get('source')[0], 'source')! });
    }
    return null;
  },
};

const HANDED = / |^handover$|^releve$|^relevo$|^recap$/;

const SLOTS_5 = ['n', 'numero', 'entries'];

const SLOTS_7 = ['since', 'ask', 'dateword', 'be', 'fill'];

const SLOTS_8 = [
  'n',
  'container',
  'place',
  'ask',
  'more',
  'drum',
  'be',
  'full',
  'material',
  'pilehead',
  'req',
];

const SLOTS_9 = ['place', 'ask', 'pilehead', 'req', 'be', 'material', 'ready', 'person'];

const SLOTS_10 = ['source', 'ask', 'be', 'dateword', 'intent'];
