import { type FieldRecord, isMassUnit, isVolumeUnit, type Request, toKg, toLitres } from '#records';
import type { ReadContext } from './context.ts';
import { senseOf, type Vocabulary } from './lexicon.ts';
import { containerOf } from './plausible.ts';
import type { Plain } from './text.ts';

const whole = (pattern: string): RegExp => new RegExp(`^${pattern}$`);
const N = String.raw`(?<n>\d+(?:[.,]\d+)?)`;
const number = (text: string): number => Number(text.replace(',', '.'));

const DRUM = '(?:drum|tambour|tambor)';
const MIX = '(?:mix|mixture|melange|mezcla)';
const OF = '(?: (?:of|in|from|du|de|del|de la|dans le|en el|en la))?(?: (?:the|le|la|el))?';
/** `drum`, `mix`, `drum mix`, `mix in the drum`, or a bay by its name: what the figure is of. */
const WHERE = `(?<where>${DRUM}(?: ${MIX})?|${MIX}(?:${OF} ${DRUM})?|(?:bay|pile|heap|baie|tas|bahia|pila) [a-z0-9]{1,3})`;
const DENSITY = '(?:bulk density|density|masse volumique|densite|densidad(?: aparente)?)';
const PER = String.raw`(?<mass>kg|lb|lbs) ?(?:/|per |par |por ) ?(?<volume>m3|l|yd3|cubic yard|cu yd)`;
const WEIGHS = '(?: (?:weighs|weighed|pese|pesa|is|=|:))*';
const BUCKET = '(?<container>bucket|pail|seau|chaudiere|cubo|balde|cubeta)';
const TEST = '(?: (?:test|density test|full))?';

const DENSITIES = [
  `(?:the )?${WHERE} ${DENSITY}${WEIGHS} ${N} ?${PER}`,
  `(?:the |la )?${DENSITY}${OF} ${WHERE}${WEIGHS} ${N} ?${PER}`,
].map(whole);
const BUCKETS = [
  `(?:a |one |1 |un |une |una )?${BUCKET}${TEST}${OF} ${WHERE}${WEIGHS} ${N} ?(?<mass>kg|lb|lbs|#)?`,
  `(?:the )?${WHERE} ${BUCKET} test${WEIGHS} ${N} ?(?<mass>kg|lb|lbs|#)?`,
  `(?:essai|test|prueba) (?:au|du|del|con) ${BUCKET}${OF} ${WHERE}${WEIGHS} ${N} ?(?<mass>kg|lb|lbs|#)?`,
].map(whole);

/**
 * A bulk density of the mix, said as such or weighed with a bucket of known volume: `drum density 520 kg/m3`,
 * `bucket of drum mix 10.4 kg`. kg/m³. Null where it is of nothing that the site has, the bucket's volume or empty
 * weight is not known, or the figure cannot be (under 100 or over 1,200 kg/m³).
 * @source (full − empty) ÷ litres: Cooperband, The Art and Science of Composting, 2002
 * @example readDensity('drum density 520 kg/m3', context) // { kind: 'lab-result', place: 'drum', analyte: 'bulk-density', value: 520, unit: 'kg/m3' }
 */
export function readDensity(bare: string, context: ReadContext): FieldRecord | null {
  const said = firstOf(DENSITIES, bare) ?? firstOf(BUCKETS, bare);
  const place = said ? placeOf(said.where ?? '', context) : null;
  if (!said || place === null) return null;
  const value = said.volume ? perCubicMetre(said) : byBucket(said, context);
  if (value === null || value < 100 || value > 1200) return null;
  const rounded = Math.round(value * 10) / 10;
  return { kind: 'lab-result', place, analyte: 'bulk-density', value: rounded, unit: 'kg/m3' };
}

type Said = Record<string, string | undefined>;

function firstOf(patterns: readonly RegExp[], bare: string): Said | null {
  for (const pattern of patterns) {
    const groups = pattern.exec(bare)?.groups;
    if (groups) return groups;
  }
  return null;
}

const massUnit = (said: Said, context: ReadContext): string => {
  const unit = said.mass === undefined ? context.units.mass : said.mass;
  return unit === 'lbs' || unit === '#' ? 'lb' : unit;
};

function perCubicMetre(said: Said): number | null {
  const mass = said.mass === 'lbs' ? 'lb' : said.mass!;
  const volume = said.volume === 'l' ? 'L' : said.volume === 'm3' ? 'm3' : 'yd3';
  if (!isMassUnit(mass) || !isVolumeUnit(volume)) return null;
  return (toKg(number(said.n!), mass) / toLitres(1, volume)) * 1000;
}

function byBucket(said: Said, context: ReadContext): number | null {
  const bucket = containerOf(context, 'bucket');
  const mass = massUnit(said, context);
  if (!bucket?.litres || bucket.tareKg == null || !isMassUnit(mass)) return null;
  return ((toKg(number(said.n!), mass) - bucket.tareKg) / bucket.litres) * 1000;
}

/** The mix is in the drum where the site has one; else its bay has to be named. */
function placeOf(where: string, context: ReadContext): string | null {
  const named = /^(?:bay|baie|bahia|pile|heap|tas|pila) (?<name>.+)$/.exec(where)?.groups?.name;
  if (named === undefined) return context.drums[0]?.name ?? null;
  const name = named.toUpperCase();
  return [`pile ${name}`, `bay ${named}`, `bay ${name}`].find((each) => context.piles.includes(each)) ?? null;
}

const HOLDS = [
  `(?:set |regler? |fija |fijar )?(?:litres|liters|volume|litros|volumen)(?: of| for| du| de| del)?(?: the| a| le| la| el| un| une| una)? (?<what>[a-z][a-z -]*?)(?: to| is| a)? ${N} ?(?<unit>l|litres?|liters?|litros?|gal|gallons?)?`,
  `(?:a |one |un |une |una )?(?<what>[a-z][a-z -]*?)(?: of [a-z ]+)? (?:holds|contient|contiene|tiene|le caben) (?:about |environ |unos |unas )?${N} ?(?<unit>l|litres?|liters?|litros?|gal|gallons?)`,
  `(?:set |regler? |fija |fijar )?(?<what>[a-z][a-z -]*?) (?:litres|liters|volume|litros|volumen)(?: to| is| a)? ${N}`,
].map(whole);

/**
 * What a container holds: `set litres bag 100`, `a bag of leaves holds about 100 L`. Null where no container is named.
 * @source none needed: words
 * @example readHolds('set litres bag 100', vocabulary) // { request: 'setting', name: 'litres:bag', value: 100 }
 */
export function readHolds(bare: string, vocabulary: Vocabulary): Request | null {
  const said = firstOf(HOLDS, bare);
  const container = said ? senseOf(said.what ?? '', 'container', vocabulary) : null;
  if (!said || !container) return null;
  const litres = toLitres(number(said.n!), said.unit?.startsWith('g') ? 'gal' : 'L');
  return { request: 'setting', name: `litres:${container}`, value: Math.round(litres * 100) / 100 };
}

const FIGURES: Readonly<Record<string, string>> = {
  moisture: 'moisture',
  water: 'moisture',
  humidite: 'moisture',
  eau: 'moisture',
  humedad: 'moisture',
  agua: 'moisture',
  carbon: 'carbon',
  carbone: 'carbon',
  carbono: 'carbon',
  nitrogen: 'nitrogen',
  azote: 'nitrogen',
  nitrogeno: 'nitrogen',
  ash: 'ash',
  cendres: 'ash',
  cenizas: 'ash',
  ceniza: 'ash',
  density: 'density',
  'bulk density': 'density',
  densite: 'density',
  'masse volumique': 'density',
  densidad: 'density',
  'c:n': 'cn',
  'c/n': 'cn',
};
const FIGURE = `(?<figure>${Object.keys(FIGURES).join('|')})`;
const HEAD =
  "(?<head>set|regler?|mets|mettre|fija|fijar|pon|poner|lab(?: result)?:?|labo(?:ratoire)? ?:?|laboratorio ?:?) (?:the |le |la |el |l')?";
const UNIT = String.raw`(?: ?(?<unit>%|kg/m3|kg/l|lb/yd3))?`;
const BASIS =
  '(?: (?:of |du |de la |de lo |en |on )?(?<basis>fresh|wet|as is|frais|brut|fresco|humedo|dry|sec|seco)(?: (?:mass|weight|basis|masse|poids|peso|base))?)?';
const MATERIAL = String.raw`(?<material>[a-z][a-z' ]*?)`;

const MATERIAL_FIGURES = [
  `${HEAD}${MATERIAL} ${FIGURE}(?: to| at| of| a)? ${N}${UNIT}${BASIS}`,
  `${HEAD}${FIGURE} (?:of |des |de la |de las |de los |del |du |de |d')(?:the )?${MATERIAL}(?: to| at| a)? ${N}${UNIT}${BASIS}`,
].map(whole);

/**
 * A figure of a material that stands before the table's, set or from a laboratory: `set chips nitrogen 0.2 %`,
 * `lab food scraps moisture 78 %`. Percent of the wet mass for moisture; of the dry mass for carbon, nitrogen and
 * ash unless said of the fresh (then `{ fresh }`); kg/m³ for density. Null where the material has no name here.
 * @source none needed: words
 * @example readMaterialFigure('set chips nitrogen 0.2%', vocabulary) // { request: 'setting', name: 'nitrogen:wood-chips', value: 0.2 }
 */
export function readMaterialFigure(bare: string, vocabulary: Vocabulary): Request | null {
  const said = firstOf(MATERIAL_FIGURES, bare);
  const material = said ? senseOf(said.material ?? '', 'material', vocabulary) : null;
  const figure = said ? FIGURES[said.figure ?? ''] : undefined;
  if (!said || !material || !figure) return null;
  const perVolume = said.unit !== undefined && said.unit !== '%';
  if ((figure === 'density') !== perVolume && !(figure === 'density' && said.unit === undefined)) return null;
  if (figure === 'cn' && said.unit !== undefined) return null;
  const value = figure === 'density' ? densityOf(said) : number(said.n!);
  const isFresh = /^(?:fresh|wet|as is|frais|brut|fresco|humedo)$/.test(said.basis ?? '');
  if (isFresh && (figure === 'density' || figure === 'cn')) return null;
  const fresh = isFresh && figure !== 'moisture';
  return { request: 'setting', name: `${figure}:${material}`, value: fresh ? { fresh: value } : value };
}

function densityOf(said: Said): number {
  if (said.unit === 'kg/l') return number(said.n!) * 1000;
  return said.unit === 'lb/yd3' ? (toKg(number(said.n!), 'lb') / toLitres(1, 'yd3')) * 1000 : number(said.n!);
}

const DRUM_ASKS = [
  `(?:what(?:'s| is|s)|whats) (?:in|inside)(?: of)? the ${DRUM}(?: now| right now)?`,
  `(?:when (?:is|do|should|must) (?:the |we )?(?:next )?(?:drum )?discharge(?: the drum)?(?: due)?)`,
  `when (?:is|does) the drum (?:full|due|need (?:to be )?(?:discharging|discharged|emptying|emptied))`,
  `how (?:long|old) (?:has|is) the oldest(?: load)?(?: been)?(?: in(?:side)?(?: the drum)?)?`,
  `how (?:full|warm|hot) is the ${DRUM}`,
  `how full (?:are we|is it)`,
  `(?:qu'est-ce qu'il y a|qu'y a-t-il|il y a quoi|qu'est-ce que j'ai|c'est quoi) dans le ${DRUM}`,
  `(?:quand|c'est quand)(?: est)?(?: la)?(?: prochaine)? (?:vidange|vider)(?: du tambour| le tambour)?`,
  `quand (?:est-ce qu'on|faut-il|doit-on|on) (?:vide|vider)(?: le tambour)?`,
  `depuis (?:quand|combien de temps) (?:est|y est) (?:la plus vieille|la plus ancienne|le plus vieux|le plus ancien)(?: charge| apport)?(?: dans le tambour)?`,
  `(?:le )?tambour est plein a combien`,
  `que hay (?:en|dentro de?)(?: el|l) ${DRUM}`,
  `cuando (?:es|toca|hay que|se) ?(?:la )?(?:proxima |siguiente )?(?:descarga|descargar|vaciar)(?: el tambor| del tambor)?`,
  `cuanto (?:tiempo )?lleva (?:lo mas viejo|la carga mas vieja)(?: en el tambor)?`,
  `(?:que tan|como de) lleno esta el ${DRUM}`,
].map(whole);

/** Whether it may be started again: nothing here ever says yes. */
const STOPPED_THING = `(?: (?:it|the ${DRUM}|the (?:emergency )?stop|the e-?stop|the stop button|the breaker))`;
const RESTARTS = [
  `(?:can|may|should|shall|could|do) (?:i|we|someone) (?:just )?(?:reset|restart|re-start|release|unlock)${STOPPED_THING}?(?: again| now)?`,
  `(?:can|may|should|shall|could) (?:i|we) (?:just )?(?:start|switch on|turn on|power up)${STOPPED_THING} (?:again|back on)`,
  `how (?:do|can) (?:i|we) (?:reset|restart|release)${STOPPED_THING}`,
  `(?:est-ce que je peux|est-ce qu'on peut|je peux|on peut|puis-je|peut-on) (?:le )?(?:redemarrer|rearmer|relancer|reinitialiser|remettre en marche)(?: le ${DRUM}| l'arret)?`,
  `(?:puedo|podemos|se puede) (?:reiniciar(?:lo)?|rearmar(?:lo)?|resetear(?:lo)?)(?: el ${DRUM}| el paro)?`,
  `(?:puedo|podemos|se puede) (?:arrancar|prender)(?:lo| el ${DRUM}) (?:otra vez|de nuevo)`,
].map(whole);

const DRUM_CALLS = [
  `(?:who|whom) (?:do (?:we|i)|to|should (?:we|i)) call (?:when|if|for) the drum(?: (?:stops|jams|has stopped|is stuck|stands still))?`,
  `qui (?:appeler|on appelle|appelle-t-on|faut-il appeler) (?:quand|si) le tambour (?:s'arrete|bloque|est arrete)`,
  `a quien (?:se llama|llamamos|llamar|hay que llamar) (?:cuando|si) (?:se para el tambor|el tambor se para)`,
].map(whole);

/**
 * A question about what the drum holds, how long, and when to let some out; `call`: whom to call when it stops; `restart`: whether
 * it may be started again.
 * Null where it is none. @source none needed: words
 */
export function asksOfDrum(bare: string): 'call' | 'restart' | 'status' | null {
  if (RESTARTS.some((pattern) => pattern.test(bare))) return 'restart';
  if (DRUM_CALLS.some((pattern) => pattern.test(bare))) return 'call';
  return DRUM_ASKS.some((pattern) => pattern.test(bare)) ? 'status' : null;
}

/** The message from where a phrase of it begins, as typed. @source none needed */
export const typedFrom = (
  message: Plain,
  phrase: string,
  slice: (from: number, to: number) => string,
): string => {
  const at = message.text.lastIndexOf(phrase);
  return at < 0 ? phrase : slice(at, at + phrase.length).trim();
};
