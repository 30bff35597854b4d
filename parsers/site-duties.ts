import type { Request } from '#records';
import type { ReadContext } from './context.ts';
import { type Often, oftenFirst, oftenLast, oftenOf } from './often.ts';
import { type Plain, plain, sliceOf } from './text.ts';

/** What a job begins with. Without one of these, or a colon, `every friday we have cake` is talk. */
const VERB =
  /^(?:check|clean|wash|sweep|oil|grease|inspect|test|call|ring|count|weigh|empty|drain|rinse|sharpen|tidy|lock|unlock|water|replace|change|renew|send|measure|calibrate|flush|order|take|turn|put|bring|fill|pump|scrub|disinfect|look|review|update|print|back up|mow|cut|rake|verifier?|verifiez|controler|controle|nettoyer|nettoie|laver|lave|balayer|balaie|huiler|graisser|inspecter|tester|teste|appeler|compter|peser|vider|vide|rincer|affuter|ranger|fermer|arroser|remplacer|changer|renouveler|envoyer|mesurer|calibrer|commander|purger|desinfecter|revisar|revise|revisa|verificar|verifique|limpiar|limpie|limpia|lavar|lave|barrer|barra|barre|aceitar|engrasar|inspeccionar|probar|llamar|contar|pesar|vaciar|vacie|enjuagar|afilar|ordenar|cerrar|regar|reemplazar|cambiar|renovar|enviar|medir|calibrar|pedir|purgar|desinfectar)\b/;

const NEW = new RegExp(
  `^(?:please |svp |por favor )?(?:${[
    '(?:(?:add|set|make|create|put in) )?(?:a |an )?(?:new |own |site )*(?<wkEn>daily |weekly |monthly |yearly )?(?:duty|duties|job|chore|task|reminder)(?: to| of| for)?',
    'remind (?:us|everyone|me|the crew) to',
    '(?:(?:ajoute[rz]?|cree[rz]?|mets) )?(?:une? |la |le )?(?:nouvelle |nouveau |propre )*(?:tache|corvee|devoir|routine|rappel)(?<wkFr> quotidienne| hebdomadaire| hebdo| mensuelle| annuelle)?(?: de)?',
    "rappelle[zr]?[ -](?:nous|moi)(?: de| d')?",
    '(?:(?:agrega[r]?|anade|crea[r]?|pon) )?(?:una? |la |el )?(?:nueva |nuevo |propia )*(?:tarea|obligacion|recordatorio|pendiente)(?: nueva| nuevo)?(?<wkEs> diaria| semanal| mensual| anual)?(?: de)?',
    'recuerda(?:nos|me)(?: que| de)?',
  ].join('|')})(?<sep> ?[:,-] ?| )`,
);

const REMOVE =
  /^(?:please |svp |por favor )?(?<verb>remove|delete|cancel|stop|end|drop|no more|forget|take out|supprime[rz]?|enleve[rz]?|retire[rz]?|arrete[rz]?|efface[rz]?|annule[rz]?|plus de|quita[r]?|elimina[r]?|borra[r]?|cancela[r]?|ya no|no mas) (?:the |la |le |el |l')?(?<what>(?:own |site )?(?:duty|job|chore|task|reminder|tache|corvee|devoir|routine|rappel|tarea|obligacion|recordatorio|pendiente)(?: of| de)?(?: ?[:,-] ?| ))?(?<name>\S.*)$/;

const LIST = new RegExp(
  `^(?:${[
    '(?:show |list |see )?(?:me )?(?:the |all )?(?:our|own|our own|the site.?s|the site.?s own|site|regular|all our) (?:duties|regular jobs|reminders)',
    'list (?:the |all )?(?:duties|reminders)',
    '(?:what are |which are )(?:our|the) (?:own |regular |site )?duties',
    '(?:quelles sont |montre |liste[rz]? )?(?:nos|les) (?:propres taches|taches propres|taches regulieres|taches du site|rappels|routines)',
    'quelles sont nos taches|nos taches',
    '(?:cuales son |muestra |lista )?(?:nuestras|las) (?:tareas propias|propias tareas|tareas regulares|tareas del sitio|tareas fijas)',
    'cuales son nuestras tareas|nuestras tareas',
    '(?:nuestros|los) recordatorios',
  ].join('|')})$`,
);

const CHANGE =
  /^(?:change|move|set|make|update|changer?|change[rz]?|deplace[rz]?|mets|cambia[r]?|mueve|pasa[r]?|pon) (?:the |la |le |el |l')?(?:duty |tache |tarea )?(?<rest>.+)$/;

/** Without one of these a message says nothing of how often. */
const EVER =
  /\b(?:every|each|chaque|tou(?:s|tes) les|cada|tod[oa]s l[oa]s|once|une fois|una vez|on|le|les|el|los|sur deux|en semaine|[a-z]+ly|hebdo\w*|mensuel\w*|annuel\w*|quotid\w*|semanal\w*|mensual\w*|anual\w*|diari[oa]|quincenal)\b/;

const asRequest = (name: string, often: Often | null, more: Record<string, unknown> = {}): Request => ({
  request: 'duty',
  name,
  ...(often ?? {}),
  ...more,
});

/**
 * The site's own duties: made (`every friday: check extinguishers`), changed, removed, listed. The schedule is in
 * the book's own spelling whatever the language. Null where the message is anything else.
 * @source none needed: words
 * @example siteDuties(plain('chaque vendredi : vérifier les extincteurs'), context)![0] // { request: 'duty', name: 'vérifier les extincteurs', every: 'friday' }
 */
export function siteDuties(message: Plain, context: ReadContext): Request[] | null {
  if (message.text.length > 600) return null;
  const requests: Request[] = [];
  let at = 0;
  for (const line of message.text.split('\n')) {
    const end = at + line.length;
    if (line.trim() !== '') {
      const typed = sliceOf(message, at, end).trim();
      const request = inLine(plain(typed), context);
      if (!request) return null;
      requests.push({ ...request, said: typed });
    }
    at = end + 1;
  }
  return requests.length > 0 ? requests : null;
}

function inLine(line: Plain, context: ReadContext): Request | null {
  const text = line.text.replace(/\s+$/, '');
  if (text.includes('?') || text.length > 160) return null;
  const own = known(context);
  const slice = (from: number, to = text.length): string =>
    sliceOf(line, from, to)
      .trim()
      .replace(/^[\s:,.-]+|[\s:,.!-]+$/g, '');
  const named = (from: number, to = text.length): string =>
    own.get(folded(slice(from, to))) ?? slice(from, to);

  if (LIST.test(text.replace(/[.!\s]+$/, ''))) return { request: 'duty' };

  const gone = REMOVE.exec(text);
  if (gone?.groups) {
    const from = text.length - gone.groups.name!.length;
    const name = own.get(folded(slice(from)));
    if (name !== undefined) return asRequest(name, null, { remove: true });
    if (gone.groups.what) return asRequest(slice(from), null, { remove: true });
  }

  const first = oftenFirst(text);
  if (first) {
    const link = /^ ?(?<sign>:|,| -|)\s*/.exec(text.slice(first.end))!;
    const from = first.end + link[0].length;
    const name = text.slice(from);
    const sure = link.groups!.sign === ':' || link.groups!.sign === ' -';
    // `on 1 march: cart 61.5` is a load of that day, `le lundi : retourné B` a turn of Monday's.
    const dated =
      'on' in first.often || !/^(?:every|each|chaque|tou|cada|todos|todas|once|une|un|una)/.test(text);
    const adverb =
      /^[a-z]+ly|^(?:hebdo|mensuel|annuel|quotid|semanal|mensual|anual|diari|quincenal|trimestr)/.test(text);
    const job = VERB.test(name) && !/\d/.test(name);
    if (name.trim() !== '' && (own.has(folded(slice(from))) || (dated && !adverb ? job : sure || job)))
      return asRequest(named(from), first.often);
  }

  const change = CHANGE.exec(text);
  const rest = change ? text.length - change.groups!.rest!.length : 0;
  const last = own.size > 0 && EVER.test(text) ? oftenLast(text.slice(rest)) : null;
  if (last && last.start > 0) {
    const head = slice(rest, rest + last.start).replace(/\s(?:to|a|au|en|pour|para)$/i, '');
    const name = own.get(folded(head));
    if (name !== undefined) return asRequest(name, last.often);
  }

  const made = NEW.exec(text);
  if (!made?.groups) return null;
  const adverb = made.groups.wkEn ?? made.groups.wkFr ?? made.groups.wkEs;
  const isHead =
    /\b(?:new|add|set|make|create|remind|nouve|ajout|cre|rappel|mets|nuev|agreg|anad|crea|recuerd|pon)/.test(
      made[0],
    );
  if (!isHead && !adverb && !made.groups.sep!.includes(':')) return null;
  const from = made[0].length;
  const tail = oftenLast(text.slice(from));
  const ahead = oftenFirst(text.slice(from));
  if (ahead) {
    const link = /^ ?[:,-]?\s*/.exec(text.slice(from + ahead.end))!;
    const name = named(from + ahead.end + link[0].length);
    if (name) return asRequest(name, ahead.often);
  }
  const often = tail?.often ?? (adverb ? oftenOf(adverb.trim()) : null);
  // With no word of how often, a reminder of one thing is talk; a duty is asked back how often it comes round.
  if (!often && !/\b(?:new|add|create|duty|nouve|ajout|cree|nuev|agreg|anad|crea)/.test(made[0])) return null;
  const name = named(from, tail && tail.start > 0 ? from + tail.start : text.length);
  return name === '' ? null : asRequest(name, often);
}

const folded = (text: string): string =>
  plain(text)
    .text.trim()
    .replace(/^(?:the|to|la|le|les|el|los|las|l') ?/, '')
    .replaceAll(/\s+/g, ' ');

/** The site's own duties by their plain names. */
const known = (context: ReadContext): Map<string, string> =>
  new Map(context.duties.map((name) => [folded(name), name]));
