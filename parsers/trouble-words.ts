import { fromOutside } from './complaint-facts.ts';
import { plain } from './text.ts';

const AMMONIA = /\b(?:ammoni\w*|amoni\w*|cat pee|urine|urina|orina|orines)\b/;
const ROTTEN =
  /\b(?:rott?en|rotting|putrid\w*|rancid|sour|sulph?ur\w*|soufre|azufre|pourri\w*|eggs?|oeufs?|huevos?|podrid\w*|vomit\w*)\b/;
const JAM = /\b(?:jam\w*|stuck|wedged|coince\w*|bloque\w*|enraye\w*|atasca\w*|atora\w*|traba\w*)\b/;

/**
 * The kind of a smell, where the words say it: what separates too rich from too wet.
 * @source ammonia: too much nitrogen; rotten: no air (general extension practice, from memory)
 * @example smellOf('B smells of rotten eggs') // 'rotten'
 */
export function smellOf(said: string): 'ammonia' | 'rotten' | null {
  const { text } = plain(said);
  if (AMMONIA.test(text)) return 'ammonia';
  return ROTTEN.test(text) ? 'rotten' : null;
}

/**
 * Whether a fault was said to be a jam: something holds the machine, and comes loose with its force.
 * @source none needed: words
 * @example isJam('drum jammed') // true
 */
export const isJam = (said: string): boolean => JAM.test(plain(said).text);

const BORDER =
  /\b(?:fences?|fence ?line|boundary|property line|perimeter|cloture|limite du terrain|bord du terrain|perimetre|valla|cerca|barda|lindero|perimetro)\b/;

/**
 * Whether it was noticed where the site ends, and so by others as well.
 * @source none needed: words
 * @example isAtBorder('smell at the east fence') // true
 */
export const isAtBorder = (said: string): boolean => BORDER.test(plain(said).text);

const COMPLAINED =
  /\b(?:complain(?:ed|s|t|ing)?|se plaindre|se plaignent|quejarse|s'est plainte?|se plaint|plainte|se quej[oa]\w*|quejaron|queja)\b/;
const OF_US =
  /\b(?:smell\w*|odou?rs?|stink\w*|stench|flies|dust|noise|odeurs?|mouches|puanteur|bruit|olor\w*|peste|moscas|ruido|polvo)\b/;
const DENIED =
  /\b(?:no|not|don't|dont|can't|cant|didn't|didnt|if|never|nobody|any|aucune?|pas|personne|ning[uú]n\w*|nadie|sin)\b/;

/**
 * Whether somebody complained about what a compost site does, whoever it was: their name is of no matter here.
 * @source none needed: words
 * @example isComplaint('Mrs Oakham complained about the smell') // true
 */
export function isComplaint(said: string): boolean {
  const { text } = plain(said);
  return (
    text.length <= 300 &&
    !text.includes('?') &&
    (COMPLAINED.test(text) || fromOutside(said)) &&
    OF_US.test(text) &&
    !DENIED.test(text)
  );
}

const AILS =
  /\b(?:wrong|the matter|cold|(?:won't|doesn't|isn't|not) (?:heat|get|warm)\w*|ne va pas|cloche|froid\w*|ne (?:se )?chauffe|fri[ao]s?|le pasa|no (?:se )?calienta)\b/;

/**
 * Whether a question about a pile asks what ails it, and not only how it is.
 * @source none needed: words
 * @example asksWhatAils("what's wrong with B?") // true
 */
export const asksWhatAils = (said: string): boolean => AILS.test(plain(said).text);
