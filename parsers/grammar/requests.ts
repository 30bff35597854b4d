import { LANGUAGES, type RequestName } from '#records';
import { placesOf, type Reader, type Scope, take } from '../reading.ts';
import { sense, type Tok } from '../tokens.ts';
import { ask, asks, beside } from './asking.ts';

/** Requests that are no more than their own words. */
const PLAIN: readonly RequestName[] = [
  'today',
  'week',
  'year',
  'mine',
  'mix',
  'help',
  'why',
  'share',
  'forget-me',
  'role',
  'settings',
  'new-here',
];

/** Requests whose words say it all: `today`, `week`, `what did I log`, `how many chips?`. */
export const plainRequest: Reader = {
  rule: 'request',
  on: ['req', 'slash'],
  read(tokens, scope) {
    for (const name of PLAIN) {
      const rest = beside(tokens, name);
      if (!rest) continue;
      if (name === 'mix') {
        const planned = plannedLoad(rest, scope);
        if (planned) return ask({ request: 'mix', ...planned });
      }
      const slots = take(
        rest,
        [
          'ask',
          'dateword',
          'be',
          ...(name === 'mix' ? ['material', 'need', 'coming'] : []),
          ...(name === 'why' ? ['place', 'about', 'turn', 'turnname', 'feel', 'degree'] : []),
        ],
        name === 'why' && rest.some((tok) => sense(tok, 'place') !== undefined) ? 2 : 0,
      );
      if (!slots) continue;
      if (name === 'why' && tokens.filter((tok) => asks(tok, 'why')).every((tok) => tok.s.length < 3))
        continue;
      return ask({ request: name });
    }
    return null;
  },
};

/** `3 carts coming, how many chips?` */
function plannedLoad(rest: readonly Tok[], scope: Scope): Record<string, unknown> | null {
  const slots = take(rest, SLOTS_1);
  if (!slots || slots.nums.length !== 1) return null;
  const n = slots.nums[0]!.n!;
  const container = slots.val('container');
  const order = slots.all.map((one) => one.cls);
  if (order.indexOf('container') < order.indexOf('n') || n.value > 40 || !Number.isInteger(n.value))
    return null;
  void scope;
  const counts =
    slots.all.findIndex((one) => one.cls === 'n') < slots.all.findIndex((one) => one.cls === 'container');
  // `cart 62, how many chips?` was weighed; `3 carts, how many chips?` is to come.
  if (container && n.unit === null && counts) return { load: { container, count: n.value } };
  return null;
}

/** `mix for 3 carts`, `3 carts coming, how many chips?` over a comma. */
export const plannedMix: Reader = {
  rule: 'request mix',
  on: ['req'],
  read(tokens, scope) {
    const rest = beside(tokens, 'mix');
    if (!rest) return null;
    const planned = plannedLoad(rest, scope);
    return planned ? ask({ request: 'mix', ...planned }) : null;
  },
};

/** `evidence for A`: the days that count and those that do not; with no place, how the last answer came about. */
export const evidence: Reader = {
  rule: 'request evidence',
  on: ['req'],
  read(tokens) {
    const rest = beside(tokens, 'evidence');
    const slots = rest && take(rest, ['place', 'ask', 'be', 'pilehead']);
    if (!slots || slots.nums.length > 0) return null;
    const places = placesOf(slots);
    if (places.length > 1) return null;
    return ask({ request: 'why', ...(places[0] && { place: places[0] }) });
  },
};

/** Status and history of a place, or of all. */
export const placeRequest: Reader = {
  rule: 'request place',
  on: ['req', 'about', 'turn', 'turnname', 'ready', 'water', 'cover', 'layer', 'need', 'screen', 'place'],
  read(tokens, scope) {
    for (const name of ['history', 'status'] as const) {
      const own = tokens.filter((tok) => asks(tok, name));
      const rest = tokens.filter((tok) => !asks(tok, name));
      if (own.length === 0 && (name === 'history' || !scope.asked)) continue;
      // `pile 3?` asks how it is; a letter alone does not.
      if (own.length === 0 && tokens.length < 2 && (tokens[0]!.k !== 'w' || tokens[0]!.s.length < 2))
        continue;
      const slots = take(rest, ABOUT);
      if (!slots) continue;
      const places = placesOf(slots);
      if (places.some((place) => place === 'lift' || place === 'floor')) continue;
      if (places.length > 0) return places.map((place) => ({ request: { request: name, place } }));
      if (own.length === 0 && slots.get('turn').length + slots.get('about').length === 0) {
        // `D 66, on brasse-tu ?`
        if (slots.get('turnname').length > 0 && scope.carry.place)
          return ask({ request: name, place: scope.carry.place });
        continue;
      }
      const headed = slots.get('pilehead').length + slots.get('many').length + slots.get('all').length > 0;
      if (own.some((tok) => WHOLE.has(tok.s)) || (headed && own.length > 0)) return ask({ request: name });
      if (scope.carry.place && scope.asked && !headed && own.some((tok) => tok.s.includes(' ')))
        return ask({ request: name, place: scope.carry.place });
    }
    return null;
  },
};

const ABOUT = [
  'place',
  'ask',
  'about',
  'pilehead',
  'all',
  'many',
  'both',
  'turnname',
  'intent',
  'dateword',
  'be',
  'req',
  'turn',
  'tempword',
  'ready',
  'finish',
  'degree',
  'feel',
  'full',
  'squeeze',
  'screen',
  'emptyadj',
  'cond',
  'need',
  'water',
  'cover',
  'layer',
  'material',
  'uncover',
  'layer',
  'add',
  'remove',
  'deep',
  'point',
  'there',
  'ok',
  'gone',
  'topic',
];

const WHOLE = new Set<string>([
  'status',
  'piles',
  'history',
  'pile status',
  'piles status',
  'historique',
  'historial',
  'estado',
  'statut',
  'etat',
  'etats',
  'pilas',
  'estatus',
  'les tas',
  'estado general',
  'status report',
  'status update',
]);

const IN_LANGUAGE: Readonly<Record<string, string>> = {
  'in english please': 'en',
  'en francais': 'fr',
  'en francais svp': 'fr',
  'francais svp': 'fr',
  'en espanol': 'es',
  'en espanol por favor': 'es',
};

/** `speak French`, `language: es`. */
export const language: Reader = {
  rule: 'request language',
  on: ['lang', 'req'],
  read(tokens) {
    const said = tokens.filter((tok) => tok.k === 'w');
    const code = LANGUAGES.find((one) => one === said[1]?.s);
    if (said.length === 2 && asks(said[0]!, 'language') && code) {
      return ask({ request: 'language', to: code });
    }
    // `en français`, `en español`: the language stands inside the phrase.
    const phrase = said.length === 1 ? IN_LANGUAGE[said[0]!.s] : undefined;
    if (phrase) return ask({ request: 'language', to: phrase });
    const slots = take(tokens, SLOTS_6);
    if (slots?.get('lang').length !== 1) return null;
    const lang = slots.get('lang')[0]!;
    const words = tokens.filter((tok) => asks(tok, 'language'));
    if (words.length === 0 && lang.s.length < 6) return null;
    if (words.length === 0 && tokens.filter((tok) => tok.k === 'w').length > 3) return null;
    return ask({ request: 'language', to: sense(lang, 'lang')! });
  },
};

// What each reader accepts, kept as constants so that their ranks are worked out once.
const SLOTS_1 = [
  'coming',
  'n',
  'container',
  'material',
  'ask',
  'source',
  'need',
  'intent',
  'be',
  'dateword',
  'place',
  'deliver',
  'add',
];

const SLOTS_6 = ['lang', 'req', 'ask', 'intent', 'set!', 'be'];
