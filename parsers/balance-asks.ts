import type { Request } from '#records';
import type { ReadContext } from './context.ts';

const PILE =
  '(?:(?:the |le |la |el )?(?:pile|bay|heap|tas|andain|pila|monton|bahia|baie) )?(?<place>[a-z]|\\d{1,3}|[a-z]\\d{1,2})';
const ASK =
  "(?:(?:what is|what's|whats|show|how is|how's|give me|quel est|c'est quoi|montre|donne(?:-moi)?|cual es|muestra|dame) )?(?:me )?(?:our |the |this year's |notre |le |la |nuestro |nuestra |el )?";
const YEAR =
  "(?: (?:for |of |this |so far |de |cette |este |del )?(?:the |l')?(?:year|annee|ano)(?: so far)?)?";

const MASS = new RegExp(
  `^${ASK}(?:mass balance|balance of mass|material balance|bilan (?:massique|de masse|matiere)|balance de (?:masas?|materia)|yield|compost yield|rendement(?: en compost)?|rendimiento(?: de compost)?)${YEAR}$`,
);
const OUT = new RegExp(
  `^(?:how much compost (?:do|did|have) we (?:get|make|made|got)(?: out of it| out| per (?:kg|lb|tonne|ton)| from it)?|combien de compost (?:on fait|on obtient|obtient-on|avons-nous fait)|cuanto compost (?:sacamos|hacemos|obtenemos|hemos hecho))${YEAR}$`,
);
const ASH = new RegExp(
  `^${ASK}(?:ash balance|loss by ash|ash loss|bilan (?:des? )?cendres|perte par (?:les )?cendres|balance de cenizas|perdida por cenizas)(?: (?:of|for|in|de|du|pour|en) ${PILE})?${YEAR}$`,
);

const KITCHENS =
  /^(?:what (?:do|should|can|shall) (?:i|we) (?:tell|say to)|feedback (?:for|to)|(?:je dis|on dit) quoi|qu'est-ce qu(?:e je dis|'on dit)|que (?:dire|dit-on)|que (?:le|les) (?:digo|decimos)|comentarios? para|retour pour) ?(?:a |aux |a l'|au )?(?:the |all the |las |los |les |a las |a los )?(?:kitchens?|sources?|cooks|caterers|cuisines?|fournisseurs|cocinas?|fuentes|cocineros)$/;

/** `what do I tell the kitchens?`: of all of them, the dirtiest first. */
export const kitchensAsked = (bare: string): Request | null =>
  KITCHENS.test(bare) ? { request: 'feedback' } : null;

/**
 * `mass balance`, `yield?`, `ash balance of C`: null where the message is anything else.
 * @source none needed: words
 * @example balanceAsked('mass balance', context) // { request: 'balance' }
 */
export function balanceAsked(bare: string, context: ReadContext): Request | null {
  if (MASS.test(bare) || OUT.test(bare)) return { request: 'balance' };
  const ash = ASH.exec(bare)?.groups;
  if (!ash) return null;
  if (!ash.place) return { request: 'balance', what: 'ash' };
  const name = ash.place.toUpperCase();
  const place = [`pile ${name}`, `bay ${name}`].find((each) => context.piles.includes(each));
  return { request: 'balance', what: 'ash', place: place ?? `pile ${name}` };
}
