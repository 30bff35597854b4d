import type { Doubt, DoubtChoice, FieldRecord, ParsedMessage } from '#records';
import type { ReadContext } from './context.ts';
import { emptyMessage } from './found.ts';
import { senseOf, type Vocabulary } from './lexicon.ts';
import { containerOf, drop } from './plausible.ts';
import type { Plain } from './text.ts';

const COUNTS: Readonly<Record<string, number>> = {
  a: 1,
  one: 1,
  un: 1,
  une: 1,
  una: 1,
  two: 2,
  deux: 2,
  dos: 2,
  three: 3,
  trois: 3,
  tres: 3,
  four: 4,
  quatre: 4,
  cuatro: 4,
};
const N = `(?<n>\\d{1,2}|${Object.keys(COUNTS).join('|')})`;
const C = '(?<c>[a-z]+)';
/** What was done with it, in front: it says no more than that it went in. */
const DID = `(?<did>(?:(?:i|we|just|then|and|he|she|they) )*(?:threw|put|tipped|added|chucked|dumped|tossed|mixed|gave it|spread)(?: (?:in|on))? |(?:(?:j'ai|on a|nous avons|il a|elle a|ai) )?(?:r?ajoute|mis|remis|jete|verse|etendu) |(?:ya |le )?(?:eche|echamos|echaron|puse|pusimos|agregue|agregamos|anadi|anadimos|tire|tiramos|meti|metimos|sume|sumamos) )`;
/** Where on the heap it went, behind: on top of what is there. */
const ON_TOP =
  '(?<top> (?:(?:right )?on top(?: of (?:it|that|them|the (?:pile|heap|food|scraps|lot)))?|on it|in|(?:par |la |au |sur le )?dessus|dedans|(?:por |ahi )?encima|arriba|adentro))';
const EN_OF = '(?: of (?<m>[a-z][a-z ]*?))?';
const FR_OF = "(?: (?:de |d'|des )(?<m>[a-z][a-z ]*?))?";
const ES_OF = '(?: de (?<m>[a-z][a-z ]*?))?';

/** Where it went, behind: a place that the site has. */
const INTO =
  /^(?<load>.+) (?:into|in|onto|on|to|dans|sur|au|en|al|a) (?:the |le |la |el )?(?<head>drum|tambour|tambor|pile|tas|pila|bay|case|cajon)(?: (?<name>[a-z0-9]{1,3}))?$/;
const HEADS: Readonly<Record<string, string>> = {
  tambour: 'drum',
  tambor: 'drum',
  tas: 'pile',
  pila: 'pile',
  case: 'bay',
  cajon: 'bay',
};

function placeIn(bare: string, context: ReadContext): { load: string; place?: string } | null {
  const found = INTO.exec(bare)?.groups;
  if (!found) return { load: bare };
  const wanted = `${HEADS[found.head!] ?? found.head} ${found.name ?? ''}`.trim();
  const known = [...context.drums.map(({ name }) => name), ...context.piles];
  const place = known.find((each) => each.toLowerCase() === wanted);
  return place === undefined ? null : { load: found.load!, place };
}

const MORE = [
  `${N} (?:more|extra|additional) ${C}${EN_OF}`,
  `(?:yet )?another(?: ${N})? ${C}${EN_OF}`,
  `${N} ${C}${EN_OF} more`,
  `(?:encore ${N}|une autre|un autre) ${C}${FR_OF}`,
  `${N} ${C}${FR_OF} (?:de plus|en plus|encore|supplementaires?)`,
  `${N} ${C} (?:de plus|en plus|supplementaires?) (?:de |d')(?<m>[a-z][a-z ]*?)`,
  `otr[oa]s?(?: ${N})? ${C}${ES_OF}`,
  `${N} ${C}${ES_OF} mas`,
  `${N} ${C} mas de (?<m>[a-z][a-z ]*?)`,
].map((pattern) => new RegExp(`^${DID}?${pattern}${ON_TOP}?$`));

/**
 * One more container of what went in before: `one more barrow`, `une brouette de plus`, `1 carretilla más de
 * astillas`. Of what, where it is not said: what such a container last held here, or was asked for with. Where the
 * book knows of none it is asked; null without a book, and for what has its own use (`another cart`).
 * @source none needed: words
 * @example readOneMore(plain('one more barrow'), { ...context, book: { ...book, lastLoads: { barrow: ['wood-chips'] } } }, vocabulary)!.records[0] // { kind: 'weigh-in', material: 'wood-chips', container: 'barrow', count: 1, said: 'one more barrow' }
 */
export function readOneMore(
  message: Plain,
  context: ReadContext,
  vocabulary: Vocabulary,
): ParsedMessage | null {
  if (message.text.length > 80) return null;
  const bare = message.text
    .trim()
    .replaceAll(/\s+/g, ' ')
    .replace(/[.!]+$/, '');
  const told = placeIn(bare, context);
  if (!told) return null;
  const groups = MORE.map((pattern) => pattern.exec(told.load)?.groups).find((found) => found !== undefined);
  if (!groups) return null;
  const container = senseOf(groups.c ?? '', 'container', vocabulary);
  if (!container) return null;
  const word = groups.m;
  const material = word === undefined ? undefined : senseOf(word, 'material', vocabulary);
  if (word !== undefined && !material) return null;
  const count = groups.n === undefined ? 1 : (COUNTS[groups.n] ?? Number(groups.n));
  if (count < 1) return null;
  const said = message.original.trim();
  const of = (what: string): FieldRecord => ({
    kind: 'weigh-in',
    material: what,
    container,
    count,
    ...(told.place !== undefined && { place: told.place }),
    said,
  });
  if (material) return logged([of(material)], []);
  const last = context.book?.lastLoads;
  if (!last) return null;
  const known = Object.hasOwn(last, container) ? last[container]! : [];
  if (known.length === 1) return logged([of(known[0]!)], ['same-again']);
  // A cart holds what carts hold, and is weighed: `another cart` alone is no load yet.
  if (known.length === 0 && (containerOf(context, container)?.holds || container === 'cart')) return null;
  const choices: DoubtChoice[] = (known.length > 1 ? known : USUAL).map((what) => ({
    say: what,
    record: of(what),
  }));
  const doubt: Doubt = { record: of('unknown'), why: 'no-material', said, choices: [...choices, drop] };
  return { ...emptyMessage(), doubts: [doubt] };
}

/** What goes into a mix by the barrow, where nothing has been said of any. */
const USUAL = ['wood-chips', 'leaves', 'food-scraps'];

const HEAPED = new RegExp(`^${DID}?(?<rest>.+?)${ON_TOP}?$`);

/**
 * Containers of something that were thrown on: `threw 3 barrows of chips on top`, `eché 2 carretillas de astillas
 * encima`. Null where what is left without those words is no counted load.
 * @source none needed: words
 */
export function readHeaped(message: Plain, read: (text: string) => ParsedMessage): ParsedMessage | null {
  if (message.text.length > 80 || /[?\n]/.test(message.text)) return null;
  const bare = message.text.trim().replace(/[.!]+$/, '');
  const groups = HEAPED.exec(bare)?.groups;
  if (!groups?.rest || (!groups.did && !groups.top) || !/^(?:\d|[a-z]+ [a-z])/.test(groups.rest)) return null;
  const found = read(groups.rest);
  const isLoads =
    found.records.length > 0 &&
    found.requests.length + found.doubts.length + found.unread.length + found.danger.length === 0 &&
    found.records.every((one) => one.kind === 'weigh-in' && one.container != null && one.kg == null);
  if (!isLoads) return null;
  const said = message.original.trim();
  return { ...found, records: found.records.map((record) => ({ ...record, said }) as FieldRecord) };
}

const logged = (records: FieldRecord[], assumed: ParsedMessage['assumed'][number]): ParsedMessage => ({
  ...emptyMessage(),
  records,
  assumed: [assumed],
  typed: [null],
});
