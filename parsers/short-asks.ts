import type { FieldRecord, ParsedMessage, Request } from '#records';
import { balanceAsked, kitchensAsked } from './balance-asks.ts';
import { asksOfDrum, readDensity, readHolds, readMaterialFigure, typedFrom } from './by-the-bucket.ts';
import type { ReadContext } from './context.ts';
import { senseOf, type Vocabulary } from './lexicon.ts';
import { namedSetting } from './named-settings.ts';
import { type Plain, sliceOf } from './text.ts';
import { lastWeekAsked } from './week-asks.ts';
import { readAcceptsList, readMayGoIn, readRecipe, stockGone } from './what-goes-in.ts';

/** A message that is one short thing as a whole: read before its words are looked at one by one. */
export type Short = { requests: Request[]; records: FieldRecord[] };

const PILE = String.raw`(?:(?:the |le |la |el )?(?:pile|bay|heap|tas|andain|pila|monton|bahia|baie) )?(?<place>[a-z]|\d{1,3}|[a-z]\d{1,2})`;
const whole = (pattern: string): RegExp => new RegExp(`^${pattern}$`);

/** A pile's name and nothing else. */
const ALONE = whole(PILE);

const HEADED = /\b(?:pile|bay|heap|tas|andain|pila|monton|bahia|baie) /;

const TRACE = [
  `(?:can|may|could|shall) (?:we|i|they|people) (?:give|let|hand|sell|take|release) ${PILE} (?:away|out|go)`,
  `(?:can|may) (?:we|i|they|people) (?:use|sell|spread|release|give away|give out|hand out) ${PILE}`,
  `(?:can|may) ${PILE} (?:go|go out|leave|be given away|be given out|be sold)`,
  `(?:who (?:got|has|received)(?: compost| any)? from|where did(?: the)?(?: compost)? from|trace) ${PILE}(?: go)?`,
  `(?:est-ce qu'on peut|on peut|peut-on|pouvons-nous) (?:donner|vendre|laisser partir|distribuer|utiliser) ${PILE}`,
  `(?:qui a recu(?: du compost)? (?:de|du)) ${PILE}`,
  `(?:podemos|se puede|puedo) (?:regalar|dar|entregar|vender|repartir|usar) ${PILE}`,
  `(?:quien recibio(?: compost)? de) ${PILE}`,
].map(whole);

/** `B won't heat up`: said of a pile, with no figure. */
const STAYS_COLD = [
  `${PILE} (?:is |is still |stays |remains |went |has gone )?(?:too |stone |very |so |still )?cold`,
  `${PILE} (?:won't|will not|doesn't|does not|isn't|is not|not|never) (?:heat|heating|get hot|getting hot|got hot|warm|warming)(?: up)?`,
  `${PILE} (?:ne (?:se )?(?:chauffe|rechauffe) pas|(?:est|reste) (?:toujours |trop |encore )?froid)`,
  `${PILE} (?:no (?:se )?calienta|(?:esta|sigue) (?:muy |todavia )?fri[ao])`,
].map(whole);

/** `what's wrong with B?` asks how it is, and what ails it. */
const AILS = [
  `(?:what's|what is) (?:wrong|the matter|up) with ${PILE}`,
  `why (?:won't|doesn't|isn't|does not|is not) ${PILE} (?:heat|heating|get hot|getting hot|warm|warming)(?: up)?`,
  `(?:qu'est-ce qui ne va pas|qu'est-ce qui cloche) avec ${PILE}`,
  `pourquoi ${PILE} ne (?:se )?(?:chauffe|rechauffe)(?:-t-il)? pas`,
  `que (?:le pasa|tiene) (?:a )?(?:la |el )?${PILE}`,
  `por que no (?:se )?calienta ${PILE}`,
].map(whole);

const FOUND = [
  `(?:the )?lab(?:oratory)? (?<none>did not|didn't|does not|doesn't) (?:find|see|report)(?: any)? (?<analyte>.+?) (?:in|on) ${PILE}`,
  `(?:le )?labo(?:ratoire)? (?<none>n'a pas trouve|n'a pas detecte|ne trouve pas|dit qu'il n'y a pas) (?:de |d')?(?<analyte>.+?) dans ${PILE}`,
  `(?:le )?labo(?:ratoire)? ?:? ?(?<none>pas de|aucune) (?<analyte>salmonelles?|e\\.? ?coli|listeria) dans ${PILE}`,
  `(?:el )?laboratorio (?<none>no (?:encontro|hallo|detecto|ve)|dice que no hay) (?<analyte>.+?) en ${PILE}`,
  `(?:the )?lab(?:oratory)? (?:says|found|reports)(?: there is)? (?<analyte>.+?) (?:in|on) ${PILE}`,
  `(?:the )?lab (?:results?|report)? ?:? ?(?<analyte>salmonella|e\\.? ?coli|listeria) (?:in|on|found in) ${PILE}`,
  `(?<analyte>salmonella|e\\.? ?coli|listeria) (?:was )?(?:found |detected |positive )?(?:in|on) ${PILE}`,
  `(?:the )?lab(?:oratory)? ?:? ?(?<analyte>salmonella|e\\.? ?coli|listeria) positive (?:in |on |for )?${PILE}`,
  `(?:le )?labo(?:ratoire)? ?:? ?(?<analyte>salmonelles?|e\\.? ?coli|listeria) dans ${PILE}`,
  `(?<analyte>salmonelles?|e\\.? ?coli) (?:trouvees?|detectees?|presentes?) dans ${PILE}`,
  `(?:el )?laboratorio ?:? ?(?<analyte>salmonel+as?|e\\.? ?coli|listeria) en ${PILE}`,
  `(?<analyte>salmonel+as?|e\\.? ?coli) (?:encontradas?|detectadas?|hallada?s?) en ${PILE}`,
  `(?:le )?labo(?:ratoire)? (?:dit|dit qu'il y a|a trouve|trouve) (?:de la |du |des |de l')?(?<analyte>.+?) dans ${PILE}`,
  `(?:el )?laboratorio (?:dice|encontro|halla|hallo)(?: que hay)? (?<analyte>.+?) en ${PILE}`,
].map(whole);

const HEAD = String.raw`(?:(?:the |le |la |el )?(?<head>pile|bay|heap|tas|andain|pila|monton|bahia|baie) )?`;
const NEW = String.raw`(?:a new )?${HEAD}(?<fresh>[a-z]|\d{1,3}|[a-z]\d{1,2})`;

/** A new pile that has no more than a letter yet is one where the other is known: `split A into D`. */
const SPLIT = [
  `(?:we |i )?(?:split|divided) (?:half of |part of |some of )?${PILE} (?:into|to|off to) ${NEW}`,
  `(?:we |i )?(?:split|divided) ${PILE} (?:into|in) (?:\\k<place>|two) ?(?:and|,|:) ${NEW}`,
  `(?:we |i )?(?:split|divided) ${PILE}(?: in (?:two|half))?(?: ?[,:;-] ?| and )(?:the other |one )?(?:half|part|some|a third|a quarter|the rest)(?: of (?:it|that))? (?:is(?: now)?|becomes|became|makes|made|goes to|went to|went into|as) ${NEW}`,
  `(?:we |i )?split ${NEW} (?:off|from|off from|off of|out of) ${PILE}`,
  `(?:on a |j'ai )?(?:separe|divise|partage) ${NEW} (?:de|du) ${PILE}`,
  `(?:on a |j'ai )?(?:separe|divise|partage) ${PILE} en (?:\\k<place>|deux) ?(?:et|,|:) ${NEW}`,
  `(?:on a |j'ai )?(?:separe|divise|partage) ${PILE}(?: en deux)?(?: ?[,:;-] ?| et )(?:l'autre |une |la )?(?:moitie|partie|le reste)(?: (?:est|devient|fait|est devenue|va (?:sur|en|dans)))(?: maintenant)? ${NEW}`,
  `(?:separamos|separe|dividimos|dividi|partimos|parti) ${PILE}(?: en dos)?(?: ?[,:;-] ?| y )(?:la otra |una |la )?(?:mitad|parte|el resto) (?:es|es ahora|ahora es|pasa a ser|queda como|va a|va en) ${NEW}`,
  `(?:separamos|separe|dividimos|dividi|partimos|parti) (?:la )?${NEW} (?:de|del)(?: la)? ${PILE}`,
  `(?:separamos|separe|dividimos|dividi|partimos|parti) ${PILE} en (?:\\k<place>|dos) ?(?:y|,|:) ${NEW}`,
].map(whole);

const HOLD = [
  `(?:hold|put on hold|block) ${PILE}(?: ?[:,-] ?(?<why>.+))?`,
  `put ${PILE} on hold(?: ?[:,-] ?(?<why>.+))?`,
  `(?:bloque|bloquer|retenir|retiens) ${PILE}(?: ?[:,-] ?(?<why>.+))?`,
  `(?:bloquea|bloquear|reten|retener) ${PILE}(?: ?[:,-] ?(?<why>.+))?`,
].map(whole);

/** The site is open again before a closure was to end. */
const OPEN_AGAIN = [
  `(?:we are |we re |we're |site |the site is )?(?:open|opened|back open) again|(?:we |site )?(?:re-?opened|re-?open)|we are back|we're back`,
  `(?:on est |nous sommes |le site est |site )?(?:de nouveau ouverts?|ouverts? de nouveau|ouverts? a nouveau|rouverts?|reouverts?)|on (?:a )?(?:rouvert|rouvre)|reouverture`,
  `(?:estamos |el sitio esta |sitio )?(?:abiertos? (?:otra vez|de nuevo)|de nuevo abiertos?)|(?:ya )?reabri(?:mos|o)|ya abrimos(?: otra vez| de nuevo)?|reapertura`,
].map((pattern) => new RegExp(`^(?:${pattern})(?: today| aujourd'hui| hoy)?$`));

const LIFT = [
  `(?:lift|release|remove|end|take off) (?:the )?hold (?:on|of|from) ${PILE}`,
  `(?:set )?hold ${PILE} off`,
  `${PILE} (?:off hold|may go|can go)`,
  `(?:debloque|debloquer|lever le blocage (?:de|du)) ${PILE}`,
  `(?:desbloquea|desbloquear|libera|liberar) ${PILE}`,
].map(whole);

/** `mix in bay 2`, `how is the mix of bay 2?`: the mix of one place. */
const MIXED = [
  `(?:how(?:'s| is) the |the )?mix(?: (?:in|of|at|for))? ${PILE}(?: (?:ok|right|today|now))?`,
  `(?:how(?:'s| is) )?${PILE} mix`,
  `(?:comment est )?(?:le )?melange(?: (?:de|du|dans|en))? ${PILE}`,
  `(?:como esta )?(?:la )?mezcla(?: (?:de|del|en))? ${PILE}`,
].map(whole);

/** `how wet is it?`: today's mix. */
const HOW_WET = whole(
  "(?:how (?:wet|dry|moist) (?:is|are) (?:it|we|the mix|todays mix)(?: now)?|is (?:it|the mix) (?:too (?:wet|dry)|wet enough|dry enough)(?: now)?|(?:est-ce que )?(?:c'est|le melange est) (?:trop )?(?:mouille|humide|sec)|(?:esta|la mezcla esta) (?:muy |demasiado )?(?:mojada|seca|humeda))",
);

/** `can i put 4 more carts in?`: is there room for them. */
const MORE = whole(
  '(?:can|could|may|do) (?:i|we|you) (?:still )?(?:put|tip|add|load|fit|take|throw)(?: in)? (?<count>\\d{1,2}|one|two|three|four)(?: more)?(?: (?:carts?|bins?|totes?|toters?|more))?(?: (?:in|in the drum|into the drum|on|(?:in|into) (?<drum>drum [a-z0-9]{1,3})))?',
);
const COUNTS: Readonly<Record<string, number>> = { one: 1, two: 2, three: 3, four: 4 };

/** `what may go in?`: the whole of the list. */
const LISTED = whole(
  "(?:what (?:all )?(?:goes|may go|can go|is allowed|do we (?:take|accept)|can we put) ?(?:in|into the (?:drum|pile|bin|compost))?|(?:qu'est-ce qu'on|on) (?:prend|accepte|peut mettre)(?: quoi)?|que (?:aceptamos|se puede (?:echar|meter|poner)|podemos (?:echar|meter|poner)))",
);

/**
 * Reads the short questions and commands that are a message of their own: `B?`, `drum?`, `chips?`, `can we give C
 * away?`, `lab says salmonella in C`, `hold C`. Null where the message is anything else.
 * @source none needed: words
 */
export function readShort(message: Plain, context: ReadContext, vocabulary: Vocabulary): Short | null {
  if (message.text.length > 120) return null;
  const text = message.text.replaceAll(/[¿¡]/g, '').trim().replaceAll(/\s+/g, ' ');
  const asked = text.endsWith('?');
  const bare = text.replace(/[\s?!.]+$/, '');
  const ask = (request: Request): Short => ({
    requests: [{ ...request, said: message.original.trim() }],
    records: [],
  });
  const ofDrum = context.drums.length > 0 ? asksOfDrum(bare) : null;
  if (ofDrum)
    return ask({ request: 'status', place: 'drum', ...(ofDrum === 'status' ? {} : { about: ofDrum }) });
  if (HOW_WET.test(bare) && (asked || bare.startsWith('how '))) return ask({ request: 'mix' });
  const asksMore = context.drums.length > 0 ? MORE.exec(bare)?.groups : undefined;
  const more = asksMore?.count;
  if (more && /more|in|drum/.test(bare.replace(/^\w+ \w+/, '')))
    return ask({
      request: 'room',
      count: COUNTS[more] ?? Number(more),
      ...(asksMore?.drum && { place: asksMore.drum }),
    });
  if (LISTED.test(bare)) return ask({ request: 'accepts', what: '' });
  const material = (phrase: string) => senseOf(phrase, 'material', vocabulary);
  const typed = (phrase: string) => typedFrom(message, phrase, (from, to) => sliceOf(message, from, to));
  const goesIn = asked ? readMayGoIn(bare, material) : readAcceptsList(bare, material, typed);
  if (goesIn) return ask(goesIn);
  const mixed = placeIn(MIXED, bare, context);
  if (mixed && HEADED.test(bare)) return ask({ request: 'mix', place: mixed.place });
  const recipe = readRecipe(bare, asked);
  if (recipe) return ask(recipe);
  const balance = balanceAsked(bare, context) ?? kitchensAsked(bare) ?? lastWeekAsked(bare);
  if (balance) return ask(balance);
  if (asked || bare.startsWith('how many days of ')) {
    const about = askedAbout(bare, message.cased.trim(), context, vocabulary);
    if (about) return ask(about);
  }
  // A pile named and no more: how it is. A letter alone is talk.
  const named = HEADED.test(bare) ? placeIn([ALONE], bare, context) : null;
  if (named) return ask({ request: 'status', place: named.place });
  const ails = placeIn(AILS, bare, context);
  if (ails) return ask({ request: 'status', place: ails.place });
  const cold = asked ? null : placeIn(STAYS_COLD, bare, context);
  // `a cold` is none: a letter of its own is a pile only as the crew writes it.
  if (cold && (HEADED.test(bare) || /^[A-Z]\d{0,2}\b/.test(message.cased.trim()) || /^\d/.test(bare)))
    return ask({ request: 'diagnose', what: 'cold', place: cold.place });
  const traced = placeIn(TRACE, bare, context);
  if (traced) return ask({ request: 'trace', place: traced.place });
  const found = placeIn(FOUND, bare, context);
  const [, none, what = ''] = /^(no |not any |pas de |aucune? |sin |nada de |ninguna? )?(.*)$/.exec(
    found?.groups.analyte ?? '',
  )!;
  const analyte = found ? analyteIn(what, vocabulary) : null;
  if (found && analyte && !asked) {
    const record: FieldRecord = {
      kind: 'lab-result',
      place: found.place,
      analyte,
      ...(none || found.groups.none ? { qualifier: 'not-detected' as const } : {}),
      said: message.original.trim(),
    };
    return { requests: [], records: [record] };
  }
  if (asked) return null;
  if (OPEN_AGAIN.some((pattern) => pattern.test(bare))) return ask({ request: 'closed', open: true });
  const gone = stockGone(bare, material, (one) => STOCKED.has(one));
  if (gone) {
    const level: FieldRecord = { kind: 'level', material: gone, litres: 0, said: message.original.trim() };
    return { requests: [], records: [level] };
  }
  const density = readDensity(bare, context);
  if (density) return { requests: [], records: [{ ...density, said: message.original.trim() }] };
  const holds = readHolds(bare, vocabulary);
  if (holds) return ask(holds);
  const figure = readMaterialFigure(bare, vocabulary);
  if (figure) return ask(figure);
  const split = readSplit(bare, context, message.original.trim());
  if (split) return split;
  const set = namedSetting(bare, typed);
  if (set) return ask(set);
  const lifted = placeIn(LIFT, bare, context);
  if (lifted) return ask({ request: 'setting', name: `hold:${lifted.place}`, value: false });
  const held = placeIn(HOLD, bare, context);
  if (!held) return null;
  const { why } = held.groups;
  const at = why ? message.text.lastIndexOf(why) : -1;
  const value = why && at >= 0 ? sliceOf(message, at, at + why.length).trim() : 'said';
  return ask({ request: 'setting', name: `hold:${held.place}`, value });
}

/** `B?`, `pile 3?`, `drum?`, `chips?`, `how many chips are left?` */
function askedAbout(
  bare: string,
  cased: string,
  context: ReadContext,
  vocabulary: Vocabulary,
): Request | null {
  const pile = placeIn([ALONE], bare, context);
  // A letter of its own is a pile only as the crew writes it: `B?`.
  if (pile && (HEADED.test(bare) || /^[A-Z]/.test(cased))) return { request: 'status', place: pile.place };
  if (
    /^(?:the |le |el )?(?:drum|tambour|tambor)$|^how full is the drum$/.test(bare) &&
    context.drums.length > 0
  ) {
    return { request: 'status', place: 'drum' };
  }
  const left =
    /^(?:how (?:many days of|long (?:do|will|are) (?:the|our)) (?<days>[a-z ]+?)(?: (?:left|last|do we have|are left|is left))?|how (?:many|much) (?<en>[a-z ]+?)(?: is| are| do we have)? left|(?<bare>[a-z ]+?) left|combien (?:il reste|reste-t-il) (?:de |d')(?<frl>[a-z ]+?)|combien de jours (?:de |d')(?<frd>[a-z ]+?)|(?:para )?cuantos dias (?:de |alcanzan? |duran? )(?:las |los |el |la )?(?<esd>[a-z ]+?)|combien (?:de |d')(?<fr>[a-z ]+?)(?: (?:reste-t-il|il reste))|cuant[oa]s? (?<es>[a-z ]+?) quedan?)$/.exec(
      bare,
    );
  const word =
    left?.groups?.en ??
    left?.groups?.days ??
    left?.groups?.frl ??
    left?.groups?.frd ??
    left?.groups?.esd ??
    left?.groups?.fr ??
    left?.groups?.es ??
    left?.groups?.bare ??
    bare;
  const material = senseOf(word, 'material', vocabulary);
  return material && STOCKED.has(material) ? { request: 'stock', material } : null;
}

/** What is bought in and kept: of food scraps nobody asks how many are left. */
const STOCKED = new Set(['wood-chips', 'sawdust', 'straw', 'leaves', 'cardboard', 'paper', 'mature-compost']);

type Matched = { place: string; groups: Record<string, string | undefined> };

/** `split C, half of it is pile 5`: the new pile, and the one it came from. */
function readSplit(bare: string, context: ReadContext, said: string): Short | null {
  const split = placeIn(SPLIT, bare, context);
  if (!split) return null;
  const { head, fresh } = split.groups;
  const kind = /^(?:bay|baie|bahia)$/.test(head ?? '') ? 'bay' : 'pile';
  const pile = `${kind} ${fresh!.toUpperCase()}`;
  if (pile === split.place) return null;
  return { requests: [], records: [{ kind: 'pile', pile, event: 'split', with: split.place, said }] };
}

function placeIn(patterns: readonly RegExp[], text: string, context: ReadContext): Matched | null {
  for (const pattern of patterns) {
    const groups = pattern.exec(text)?.groups;
    if (!groups?.place) continue;
    const name = groups.place.toUpperCase();
    const place = [`pile ${name}`, `bay ${name}`, `pile ${groups.place}`, `bay ${groups.place}`].find(
      (each) => context.piles.includes(each) || Object.hasOwn(context.ceased, each),
    );
    if (place) return { place, groups };
  }
  return null;
}

const analyteIn = (said: string, vocabulary: Vocabulary): string | null =>
  senseOf(said.replace(/^(?:la|le|el|some) /, ''), 'analyte', vocabulary);

const ENDED = /^(?<head>[^,]{3,60}?)(?:,| after (?=(?:we|i) )| - )\s*(?<tail>\S.{3,})$/;

/**
 * `smell gone, added 2 barrows`: what ended a problem, and what was done about it as its note. `read` reads a piece
 * by itself; null where the first piece does not end an open problem.
 */
export function readEnded(message: Plain, read: (text: string) => ParsedMessage): ParsedMessage | null {
  if (message.text.length > 300 || message.text.includes('\n')) return null;
  const groups = ENDED.exec(message.original.trim())?.groups;
  if (!groups) return null;
  const head = read(groups.head!);
  const [record] = head.records;
  if (head.records.length !== 1 || record?.kind !== 'resolved' || head.doubts.length > 0) return null;
  const tail = read(groups.tail!);
  if (
    tail.requests.length > 0 ||
    tail.danger.length > 0 ||
    tail.records.some(({ kind }) => kind === 'resolved')
  )
    return null;
  return {
    ...tail,
    records: [{ ...record, note: groups.tail!, said: message.original.trim() }, ...tail.records],
    assumed: [head.assumed[0] ?? [], ...tail.assumed],
    typed: [head.typed[0] ?? null, ...tail.typed],
    // What was done is kept as the note: nothing of it is unread.
    unread: [],
  };
}

const SQUEEZED = /\b(?:squeez|press|serr|apret|exprim)/;
const MIX_WORD = '(?:mix|mixture|melange|mezcla)';
const ITS_DRUM = '(?: (?:in|of|from|du|dans|del|en|de) (?:the |le |la |el )?(?:drum|tambour|tambor)\\b)?';
const MIX_NAMED = new RegExp(`(?:(?:the|le|la|el|un|una) )?(?:drum )?\\b${MIX_WORD}\\b${ITS_DRUM}`);
const DRUM_WORD: Readonly<Record<string, string>> = {
  mix: 'the drum',
  mixture: 'the drum',
  melange: 'tambour',
  mezcla: 'tambor',
};
/** `bay 2 mix`, `the mix in bay 2`: the bay is named, the word says nothing more. */
const HEAD_WORD = '(?:pile|bay|heap|tas|andain|baie|pila|monton|bahia)';
const MIX_OF_PLACE = [
  new RegExp(
    `(?:(?:the|le|la|el) )?\\b${MIX_WORD} (?:in|of|from|at|du|de la|dans le|dans la|dans|del|en la|de|en) (?=(?:the |le |la |el )?${HEAD_WORD} [a-z0-9]{1,3}\\b)`,
  ),
  new RegExp(`(?<=\\b${HEAD_WORD} [a-z0-9]{1,3}) ${MIX_WORD}\\b`),
];

/**
 * A squeeze or moisture test of the mix: at a site with a drum the mix is what is in it, so that `squeezed the mix,
 * just right` is read as said of the drum; `the mix in bay 2` is bay 2. Null where what is left is anything but such
 * a test.
 * @source none needed: words
 */
export function readMixTest(
  message: Plain,
  context: ReadContext,
  read: (text: string) => ParsedMessage,
): ParsedMessage | null {
  if (message.text.length > 120) return null;
  for (const of of MIX_OF_PLACE) {
    const test = of.test(message.text) ? onlyTest(message, read(message.text.replace(of, ''))) : null;
    if (test) return test;
  }
  // `squeezed bay 2. soggy`: a full stop between what was squeezed and how it felt.
  if (SQUEEZED.test(message.text) && /[.:;] \p{L}/u.test(message.text)) {
    const test = onlyTest(message, read(message.text.replace(/[.:;] (?=\p{L})/u, ', ')));
    if (test) return test;
  }
  if (context.drums.length !== 1) return null;
  const found = MIX_NAMED.exec(message.text);
  const word = found ? /mix(?:ture)?|melange|mezcla/.exec(found[0])![0] : null;
  if (!found || word === null || MIX_NAMED.test(message.text.slice(found.index + found[0].length)))
    return null;
  // `humidité du mélange`: the French article is in the preposition.
  const before = message.text.slice(0, found.index).replace(/\bde $/, 'du ');
  const of = before + DRUM_WORD[word] + message.text.slice(found.index + found[0].length);
  return onlyTest(message, read(of));
}

/** What was read, where it is a test of moisture and nothing else. */
function onlyTest(message: Plain, asked: ParsedMessage): ParsedMessage | null {
  const test =
    asked.records.length > 0 &&
    asked.records.every(({ kind }) => kind === 'moisture') &&
    asked.requests.length + asked.doubts.length + asked.danger.length + asked.unread.length === 0;
  if (!test) return null;
  return { ...asked, records: asked.records.map((record) => ({ ...record, said: message.original.trim() })) };
}
