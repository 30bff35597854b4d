import type { Request } from '#records';

/** Which material a phrase names, as the site's vocabulary has it. */
type Named = (phrase: string) => string | null;

const whole = (pattern: string): RegExp => new RegExp(`^${pattern}$`);
const ARTICLE = /^(?:(?:the|some|any|les|le|la|des|du|de la|un|une|el|los|las|unos|unas) |[ld]')/;
/** One to four words, none of them a figure. */
const THING = String.raw`(?<what>\p{L}[\p{L}'-]*(?: [\p{L}'-]+){0,4})`;
const INSIDE =
  '(?: (?:dedans|dans (?:le|la) (?:tambour|bac|tas|baie|andain)|au compost|dans le compost|adentro|dentro|ahi|en (?:el|la) (?:tambor|pila|composta|carro|carrito|bahia)|a la composta))';

const MAY_GO = [
  `${THING},? (?:peut|peuvent)(?:-(?:il|ils|elle|elles))? (?:aller|entrer|passer)${INSIDE}?`,
  `${THING},? (?:ca (?:va|entre)|va|vont)${INSIDE}`,
  `(?:est-ce que |est-ce qu')${THING} (?:peut|peuvent|va|vont)(?: aller| entrer)?${INSIDE}?`,
  `(?:puede|pueden) (?:entrar|ir|echarse|meterse) ${THING}${INSIDE}?`,
  `${THING},? (?:puede|pueden) (?:entrar|ir|echarse|meterse)${INSIDE}?`,
  `(?:entra|entran|va|van) ${THING}${INSIDE}`,
  `(?:entra|entran) ${THING}`,
].map((pattern) => new RegExp(`^${pattern}$`, 'u'));

/**
 * A question whether a thing may go in, in the turns of French and Spanish that put the thing first or last:
 * `les gobelets compostables peuvent aller dedans`, `pueden entrar vasos compostables`. `bare` is folded, without
 * its question mark. Null where it asks something else.
 * @source none needed: words
 * @example readMayGoIn('pueden entrar vasos compostables', () => null) // { request: 'accepts', what: 'vasos compostables' }
 */
export function readMayGoIn(bare: string, named: Named): Request | null {
  for (const pattern of MAY_GO) {
    const what = pattern.exec(bare)?.groups?.what?.replace(ARTICLE, '');
    if (!what || /^(?:ca|ce|eso|esto|il|elle|on|que|quoi|tout|todo)$/.test(what)) continue;
    return { request: 'accepts', what: nameOf(what, named) };
  }
  return null;
}

const nameOf = (what: string, named: Named): string => {
  const material = named(what);
  // What is pulled out as dirt is spoken of by its own name: `plastic cutlery`, not "residue".
  return material && material !== 'residue' ? material : what;
};

const LISTED =
  /^(?:set|regler?|mets|mettre|fija|fijar|pon|poner|ajusta|ajustar) (?:the |la |el )?(?<verb>accepts?|accepted|accepte|accepter|acepta|aceptar|aceptamos|refuses?|refused|refuse|refuser|rechaza|rechazar)(?: list| liste| lista)?:? (?<list>[^?]+)$/;
const REFUSED = /^(?:no|not|non|never|pas (?:de |d')|jamais (?:de |d')|sin|nunca) ?(?<item>.+)$/;
const ANSWERED = /^(?<item>.+?) ?[:=]? ?(?<may>yes|no|not|ok|okay|oui|non|si|out|in)$/;

/**
 * What may go in and what stays out, set as a list: `set accepts bread, eggshells, no meat`, `set accepts bones no`,
 * `set refuses bones`. The value is each thing, as it was typed, with yes or no. Null where it is no such list.
 * @source none needed: words
 * @example readAcceptsList('set accepts bread, no meat, bones no', () => null) // { request: 'setting', name: 'accepts', value: { bread: true, meat: false, bones: false } }
 */
export function readAcceptsList(
  bare: string,
  named: Named,
  typed: (phrase: string) => string = (phrase) => phrase,
): Request | null {
  const said = LISTED.exec(bare)?.groups;
  if (!said) return null;
  const refuse = /^r/.test(said.verb!);
  const value: Record<string, boolean> = {};
  for (const item of said.list!.split(/ ?[,;] ?| (?:and|et|y|but|mais|pero) /)) {
    const each = item.trim().replace(/^(?:and|et|y|but|mais|pero) /, '');
    const no = REFUSED.exec(each)?.groups?.item;
    const answered = no ? undefined : ANSWERED.exec(each)?.groups;
    const thing = (no ?? answered?.item ?? each).replace(ARTICLE, '').trim();
    if (thing === '' || /\d/.test(thing) || thing.split(' ').length > 5) return null;
    const may = answered ? /^(?:yes|ok|okay|oui|si|in)$/.test(answered.may!) : !no;
    const name = nameOf(thing, named);
    value[name === thing ? typed(thing) : name] = refuse ? !may : may;
  }
  return Object.keys(value).length > 0 ? { request: 'setting', name: 'accepts', value } : null;
}

const N = String.raw`(\d+(?:[.,]\d+)?)`;
const COARSE =
  'chips|wood chips|browns|bulking|shavings|structure|copeaux|broyat|structurant|bruns|astillas|viruta|virutas|secos|estructurante';
const FEED =
  'food|food scraps|food waste|scraps|greens|waste|feed|dechets|dechets alimentaires|dechets de cuisine|biodechets|restes|nourriture|aliments|verts|comida|restos|restos de comida|desperdicios|residuos|verdes';
const PARTS = "(?:parts? |parties? |partes? )?(?:of |de |d')?";
const RECIPE = whole(
  `(?:set |regler? |mets |fija |pon |ajusta )?(?:the |our |notre |nuestra |la )?(?:mix )?(?:recipe|recette|receta)(?: is| to| est| es| a)?:? ${N} ${PARTS}(?<one>${COARSE}|${FEED}) ?(?::|/|to|for|and|pour|et|por|y|a) ?${N} ${PARTS}(?<other>${COARSE}|${FEED})(?<by>(?: (?:by|en|par|por|au) (?:volume|volumen|mass|weight|masse|poids|masa|peso)))?`,
);
const NO_RECIPE =
  /^(?:(?:clear|remove|drop|delete|forget|cancel|no|without)(?: the| our| mix)? recipe|set (?:the )?recipe (?:to )?(?:none|off|no)|(?:enleve|enlever|efface|effacer|supprime|supprimer|oublie|annule)r? (?:la |notre )?recette|(?:regler? )?recette (?:aucune|non)|(?:pas de|sans) recette|(?:quita|quitar|borra|borrar|elimina|olvida) (?:la |nuestra )?receta|(?:fija )?receta (?:ninguna|no)|sin receta)$/;
const WHICH_RECIPE =
  /^(?:(?:what(?:'s| is|s)?|which)(?: is)?(?: the| our)?(?: mix)? recipe(?: do we (?:use|have)| is it| now)?|recipe|(?:quelle est |c'est quoi |quelle )?(?:notre |la )?recette(?: a-t-on| on utilise| utilise-t-on)?|(?:cual es |que )?(?:nuestra |la )?receta(?: usamos| tenemos)?)$/;

/**
 * The site's own recipe: set by parts (`recette 1 copeaux : 1 déchets en volume`), taken back (`clear recipe`, value
 * null), or asked for. By volume where nothing else is said. Null where it is none of these.
 * @source none needed: words
 * @example readRecipe('clear recipe', false) // { request: 'setting', name: 'recipe', value: null }
 */
export function readRecipe(bare: string, asked: boolean): Request | null {
  if (WHICH_RECIPE.test(bare) && (asked || bare.includes(' '))) return { request: 'recipe' };
  if (asked) return null;
  if (NO_RECIPE.test(bare)) return { request: 'setting', name: 'recipe', value: null };
  const said = RECIPE.exec(bare);
  if (!said) return null;
  const { one, other, by } = said.groups as { one: string; other: string; by?: string };
  const [first, second] = [said[1]!, said[3]!].map((text) => Number(text.replace(',', '.')));
  const coarse = new RegExp(`^(?:${COARSE})$`);
  if (coarse.test(one) === coarse.test(other)) return null;
  const [chips, food] = coarse.test(one) ? [first!, second!] : [second!, first!];
  if (!(chips > 0 && food > 0)) return null;
  const mass = /mass|weight|poids|masa|peso/.test(by ?? '');
  return { request: 'setting', name: 'recipe', value: { chips, food, by: mass ? 'mass' : 'volume' } };
}

const NONE_LEFT = [
  `(?:we(?:'re| are)|all) ?out of (?<what>[a-z ]+?)`,
  `(?:ran |run |completely )?out of (?<what>[a-z ]+?)`,
  `(?:there (?:are|is) |we have )?no (?:more )?(?<what>[a-z ]+?) (?:left|in stock)`,
  `(?<what>[a-z ]+?) (?:are |is )?(?:all )?(?:gone|used up|finished|run out|ran out)`,
  `(?<what>[a-z ]+?)(?: are| is)? (?:down to )?(?:0|zero|none|nothing)(?: left)?`,
  `(?:il )?(?:n'y a|y a|on n'a|on a) plus (?:de |d'|du tout de )(?<what>[a-z ]+?)`,
  `(?:ya )?no (?:hay|quedan?|tenemos)(?: mas)? (?<what>[a-z ]+?)`,
  `se (?:acabaron|acabo|terminaron|termino) (?:las |los |el |la )?(?<what>[a-z ]+?)`,
].map(whole);

/**
 * A stock that has run out, said without a number: `out of chips`, `no chips left`. The material, where it is one that
 * is kept in stock; null otherwise.
 * @source none needed: words
 * @example stockGone('no chips left', () => 'wood-chips', (material) => material === 'wood-chips') // 'wood-chips'
 */
export function stockGone(bare: string, named: Named, stocked: (material: string) => boolean): string | null {
  for (const pattern of NONE_LEFT) {
    const what = pattern.exec(bare)?.groups?.what;
    const material = what ? named(what) : null;
    if (material && stocked(material)) return material;
  }
  return null;
}
