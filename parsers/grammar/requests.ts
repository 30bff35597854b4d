import { LANGUAGES, type Request, type RequestName } from '#records';
import { bare, type Item, placesOf, type Reader, type Scope, take } from '../reading.ts';
import { sense, type Tok } from '../tokens.ts';

/** Requests that are no more than their own words. */
const PLAIN: readonly RequestName[] = [
  'today',
  'week',
  'year',
  'mine',
  'mix',
  'help',
  'why',
  'export',
  'report',
  'share',
  'forget-me',
  'role',
  'settings',
  'new-here',
];

const asks = (tok: Tok, name: string) => tok.senses.some((s) => s.cls === 'req' && s.val === name);
const ask = (fields: Request): Item[] => [{ request: bare(fields) as Request }];

/** Tokens that are not the words of request `name`, or null where none of its words is there. */
function beside(tokens: readonly Tok[], name: string): Tok[] | null {
  if (!tokens.some((tok) => asks(tok, name))) return null;
  return tokens.filter((tok) => !asks(tok, name));
}

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
      const slots = take(rest, [
        'ask',
        'dateword',
        'be',
        ...(name === 'mix' ? ['material', 'need', 'coming'] : []),
        ...(name === 'why' ? ['place'] : []),
      ]);
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

/** Status and history of a place, or of all. */
export const placeRequest: Reader = {
  rule: 'request place',
  on: ['req', 'about', 'turn', 'turnname', 'ready', 'water', 'cover', 'need', 'screen', 'place'],
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
  'material',
  'uncover',
  'deep',
  'point',
  'there',
  'ok',
  'gone',
  'topic',
  'turnname',
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

/** `undo`, `undo last 2`. */
export const undo: Reader = {
  rule: 'request undo',
  on: ['req'],
  read(tokens) {
    const rest = beside(tokens, 'undo');
    if (!rest) return null;
    const slots = take(rest, SLOTS_2);
    if (!slots || slots.nums.length > 1) return null;
    const n = slots.nums[0]?.n;
    if (n?.hash) return ask({ request: 'undo', entry: n.value });
    if (n && (!Number.isInteger(n.value) || n.value < 1 || n.value > 50 || n.unit !== null)) return null;
    return ask({ request: 'undo', count: n?.value ?? 1 });
  },
};

/** A slip of an earlier message put right: `sorry 56.2 not 58.2`, `that was C not B`, `*chips 16`. */
export const amend: Reader = {
  rule: 'request amend',
  on: ['correct', 'neg', 'amend', 'star'],
  read(tokens, scope) {
    if (scope.prevTok && scope.prevTok.s !== '\n' && !(scope.prevTok.k === 'p')) return null;
    const slots = take(tokens, SLOTS_3);
    if (!slots) return null;
    const values: { v: string | number; neg: boolean; kind: 'n' | 'place' }[] = [];
    let negated = false;
    let hashed: number | undefined;
    for (const { cls, tok } of slots.all) {
      if (cls === 'neg' || sense(tok, 'negwas') !== undefined) negated = true;
      else if (cls === 'n') {
        if (tok.n!.hash && tok.n!.unit === null && Number.isInteger(tok.n!.value) && slots.nums.length > 1) {
          hashed = tok.n!.value;
          continue;
        }
        values.push({ v: tok.n!.value, neg: negated, kind: 'n' });
        negated = false;
      } else if (cls === 'place') {
        values.push({ v: sense(tok, 'place') ?? sense(tok, 'place?')!, neg: negated, kind: 'place' });
        negated = false;
      }
    }
    // `C pas brassé`: a denial alone puts nothing right.
    const marked =
      slots.get('correct').length > 0 ||
      slots.get('amend').some((tok) => sense(tok, 'amend') !== 'instead') ||
      slots.get('star').length > 0;
    const material = slots.val('material');
    const entry = hashed !== undefined ? { entry: hashed } : {};
    if (values.length === 2 && values[0]!.kind === values[1]!.kind) {
      const [a, b] = values as [(typeof values)[0], (typeof values)[0]];
      if (a.neg === b.neg) {
        // `changed 58 to 56`, `56 au lieu de 58`
        const instead = slots.get('amend').some((tok) => sense(tok, 'amend') === 'instead');
        const change = slots.get('amend').some((tok) => sense(tok, 'amend') === 'change');
        if (instead)
          return ask({ request: 'amend', from: b.v, to: a.v, ...(material && { material }), ...entry });
        if (change)
          return ask({ request: 'amend', from: a.v, to: b.v, ...(material && { material }), ...entry });
        return null;
      }
      const from = a.neg ? a : b;
      const to = a.neg ? b : a;
      if (from.kind === 'place' && scope.context.piles.length === 0) return null;
      return ask({ request: 'amend', from: from.v, to: to.v, ...(material && { material }), ...entry });
    }
    if (values.length === 1 && marked && !values[0]!.neg && slots.get('neg').length === 0) {
      const one = values[0]!;
      if (one.kind === 'place' && material) return null;
      return ask({ request: 'amend', to: one.v, ...(material && { material }), ...entry });
    }
    return null;
  },
};

/** Jobs of the list done, taken, handed back or put off: `done 2`, `I'll take 3`, `postpone sweep`. */
export const jobs: Reader = {
  rule: 'request jobs',
  on: ['req'],
  read(tokens, scope) {
    for (const name of ['claim', 'release', 'postpone', 'done'] as const) {
      const rest = beside(tokens, name);
      if (!rest) continue;
      const slots = take(rest, SLOTS_4);
      if (!slots) continue;
      const items: (string | number)[] = [];
      let broken = false;
      for (const { cls, tok } of slots.all) {
        if (tok.k === 'n') {
          const n = tok.n!;
          if (n.unit !== null || !Number.isInteger(n.value) || n.value < 1 || n.value > 40 || n.fraction)
            broken = true;
          else if (n.to !== undefined && n.to > n.value && n.to - n.value < 20)
            for (let k = n.value; k <= n.to; k++) items.push(k);
          else items.push(n.value);
        } else if (cls === 'chore') items.push(sense(tok, 'chore')!);
        else if (cls === 'chorename') items.push(sense(tok, 'chorename')!);
        else if (cls === 'duty') items.push(sense(tok, 'duty')!);
      }
      // `je prends le 2`: what looks like the second of the month is a number of the list.
      const numbered =
        items.length === 0 && slots.dates.length === 1 ? /(?:^|\s)(\d{1,2})$/.exec(slots.dates[0]!.s) : null;
      if (numbered) items.push(Number(numbered[1]));
      if (broken || items.length === 0) continue;
      if (slots.get('place').some((tok) => tok.k !== 'n') || slots.get('turn').length > 0) continue;
      const book = scope.context.book;
      const numbers = items.filter((item) => typeof item === 'number');
      if (book && numbers.some((n) => (n as number) > Math.max(book.listed.length, 0))) {
        if (numbers.length === items.length && book.listed.length === 0) return null;
      }
      const until = slots.dates[0]?.date?.ahead ?? slots.dates[0]?.date?.when;
      return ask({ request: name, items, ...(until && !numbered && name === 'postpone' && { to: until }) });
    }
    return null;
  },
};

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

/** May it go in? `can we take pizza boxes?` */
export const accepts: Reader = {
  rule: 'request accepts',
  on: ['req'],
  read(tokens, scope) {
    const rest = beside(tokens, 'accepts');
    if (!rest) return null;
    const phrase = tokens.filter((tok) => asks(tok, 'accepts'));
    const asking = scope.asked || phrase.some((tok) => tok.s.split(' ').length >= 3);
    if (!asking) return null;
    const words = rest.filter(
      (tok) =>
        tok.k === 'w' &&
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
        ) &&
        !(tok.senses.length > 0 && tok.senses.every((s) => s.cls === 'fill' || s.cls === 'and')),
    );
    if (rest.some((tok) => tok.k === 'n') || words.length === 0 || words.length > 4) return null;
    const material = words.length === 1 ? sense(words[0], 'material') : undefined;
    return ask({ request: 'accepts', what: material ?? words.map((tok) => tok.s).join(' ') });
  },
};

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
        const from = slots.dates[0]?.date?.when;
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
        if (!n || (n.unit === null && Number.isInteger(n.value)))
          return ask({
            request: 'room',
            ...(n && { count: n.value }),
            ...(slots.get('place').length > 0 &&
              !/^drum/.test(placesOf(slots)[0] ?? '') && { place: placesOf(slots)[0]! }),
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
const SLOTS_2 = ['n', 'last', 'entries', 'numero', 'container'];
const SLOTS_3 = [
  'correct',
  'amend',
  'neg',
  'n',
  'place',
  'material',
  'container',
  'last',
  'star',
  'be',
  'intent!',
  'source',
  'prepfrom',
  'numero',
  'entries',
  'was',
  'pilehead',
];
const SLOTS_4 = [
  'n',
  'chore',
  'chorename',
  'duty',
  'numero',
  'dateword',
  'be',
  'check',
  'place',
  'dutyword',
  'turnname',
  'turn',
  'until',
  'machine',
  'entries',
  'fan',
  'intent',
];
const SLOTS_5 = ['n', 'numero', 'entries'];
const SLOTS_6 = ['lang', 'req', 'ask', 'intent', 'set!', 'be'];
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
