import { plain } from './text.ts';

/** What a regulator asks of a complaint that words can say. */
export const COMPLAINT_FACTS = [
  'where',
  'nature',
  'strength',
  'wind',
  'weather',
  'being-done',
  'done-about-it',
  'who-answers',
] as const;
export type ComplaintFact = (typeof COMPLAINT_FACTS)[number];

const words = (list: string): RegExp => new RegExp(`(?<!\\p{L})(?:${list})(?!\\p{L})`, 'u');

const SAID: Readonly<Record<ComplaintFact, RegExp>> = {
  where: words(
    "(?:at|by|near|behind|outside|next to|in front of|along) (?:the |our |her |his |their )?[a-z]{3,}|street|road|avenue|[a-z]+ (?:st|rd|ave)|pres d[eu]|a cote d[eu]|devant|derriere|au (?:portail|bord|parc)|a la (?:cloture|porte|limite)|a l'ecole|chez|rue|chemin|junto al?|cerca del?|al lado del?|frente a|en (?:la|el) (?:valla|cerca|puerta|calle|esquina|parque|escuela)|calle|camino",
  ),
  nature: words(
    'rott?en|rotting|putrid|rancid|sour|sweet|fishy|ammonia|manure|sewage|septic|sulph?ur|eggs?|musty|earthy|dust|noise|flies|rats?|pourrie?s?|ammoniac|aigre|acide|fumier|egout|soufre|oeufs?|poussiere|bruit|mouches|podrido|podrida|amoniaco|agrio|estiercol|azufre|huevos?|polvo|ruido|moscas|ratas?',
  ),
  strength: words(
    'none|no smell|faint|slight|weak|light|mild|moderate|strong|heavy|awful|terrible|overpowering|unbearable|aucune odeur|nulle|faible|legere?|moderee?|forte?s?|insupportable|ninguno|sin olor|debil|leve|ligero|moderado|fuertes?|insoportable',
  ),
  wind: words(
    'wind|winds|windy|breeze|breezy|no wind|still air|calm|vent|venteux|brise|calme|viento|ventoso|brisa|calma|en calma',
  ),
  weather: words(
    'rain|raining|rainy|drizzle|dry|sun|sunny|cloud|cloudy|overcast|fog|foggy|mist|snow|frost|hot day|warm|cold|humid|clear|pluie|pluvieux|sec|soleil|ensoleille|nuageux|couvert|brouillard|neige|chaud|froid|humide|lluvia|lluvioso|llovia|seco|sol|soleado|nublado|niebla|nieve|calor|frio|humedo|despejado',
  ),
  'being-done': words(
    '(?:were|was|was just|were just|are|busy) (?:turning|screening|sieving|unloading|loading|tipping|mixing|emptying|spreading|moving|shredding|discharging)|during (?:the )?(?:turning|screening|unloading|mixing)|nothing (?:was )?(?:going on|being done|running)|on (?:retournait|tamisait|dechargeait|chargeait|melangeait|vidait|epandait)|en train de|rien en cours|(?:estabamos|estaba|estaban) [a-z]+ndo|nada en marcha',
  ),
  'done-about-it': words(
    'covered|covering|stopped|added|washed|hosed|swept|cleaned|closed|moved it|checked|looked|went to see|apologi[sz]ed|called back|nothing done|did nothing|on a (?:couvert|arrete|ajoute|nettoye|lave|ferme|verifie|rappele)|arrete|nettoye|rien fait|cubrimos|tapamos|paramos|anadimos|limpiamos|lavamos|cerramos|revisamos|no hicimos nada',
  ),
  'who-answers': words(
    "(?:will )?(?:answers|answer|handles|calls back|call back|is dealing|deals with it)|repond|s'en occupe|rappellera|responde|se encarga|se ocupa|llamara",
  ),
};

/**
 * What a text says of a complaint, of all that a regulator asks; the complainer's name is none of it.
 * @source the fields: 14 CCR 17869 (seen) and common practice; words: none needed
 * @example complaintFacts('strong, wind SW, dry, we were turning A') // ['strength', 'wind', 'weather', 'being-done']
 */
export function complaintFacts(said: string): ComplaintFact[] {
  const { text } = plain(said);
  return COMPLAINT_FACTS.filter((fact) => SAID[fact].test(text));
}

const OUTSIDER = words(
  'neighbou?rs?|residents?|caller|somebody from the street|the school|voisine?s?|riverains?|vecin[oa]s?',
);
const TOLD = words(
  'rang|called|phoned|texted|emailed|wrote to us|came by|came over|told us|a appele|a telephone|a ecrit|est venue?|nous a dit|llamo|escribio|vino a decir|nos dijo',
);

/**
 * Whether somebody from outside spoke of it: what a neighbour rings about is a complaint, whatever it is called.
 * @source none needed: words
 * @example fromOutside('a neighbour rang about the smell') // true
 */
export function fromOutside(said: string): boolean {
  const { text } = plain(said);
  return OUTSIDER.test(text) && TOLD.test(text);
}
