import { isMassUnit, type Request, toKg } from '#records';
import { COMPASS, compassPoint } from './compass.ts';
import type { ReadContext } from './context.ts';
import { tidy } from './reading.ts';
import { type Plain, plain, sliceOf } from './text.ts';
import { findForecastDates } from './when.ts';

const SET = '(?:set|regler?|mets|mettre|fija|fijar|pon|poner|ajusta|ajustar)';
const THE = "(?:(?:the|our|a|an|le|la|les|l'|notre|el|los|las|nuestro|nuestra|un|une|una) ?)?";
const NONE = '(?:off|none|no|nothing|aucun|aucune|non|sans|ninguno|ninguna|sin|nada)';

const CAP = '(?:caps?|limits?|ceiling|max(?:imum)?|plafond|limite|tope|maximo)';
const WEEK = '(?:weekly|week|hebdomadaire|hebdo|semaine|semanal|semana)';
const MONTH = '(?:monthly|month|mensuel(?:le)?|mois|mensual|mes)';
const PER = `(?:(?:per|a|an|each|for (?:the|a)|par|de la|du|de|por|al|a la) )?(?:${WEEK}|${MONTH})`;
const AMOUNT = String.raw`(?:(?<n>\d+(?:[.,]\d+)*) ?(?<unit>kgs?|kilos?|t|tonnes?|tons?|toneladas?|lbs?|pounds?|livres?|libras?)?|(?<none>${NONE}))`;
const LINK = '(?: ?[:=]| is| of| to| at| de| a| en| est| es)?';

const CAPS = [
  `(?:${SET} )?${THE}${PER} ${CAP}${LINK} ${AMOUNT}`,
  `(?:${SET} )?${THE}${CAP} ${PER}${LINK} ${AMOUNT}`,
  `(?:${SET} )?${THE}${CAP}${LINK} ${AMOUNT} ${PER}`,
].map((pattern) => new RegExp(`^${pattern}$`));

const SAYS_MONTH = new RegExp(`\\b${MONTH}\\b`);
const SAYS_CAP = new RegExp(`\\b${CAP}\\b`);

const UNITS: readonly [RegExp, 'kg' | 't' | 'lb'][] = [
  [/^k/, 'kg'],
  [/^t/, 't'],
  [/^(?:l|p)/, 'lb'],
];

/** What a site may take in a week or a month lies within this; outside it the comma was meant otherwise. */
const CAP_KG = { least: 10, most: 1_000_000 } as const;

/** `set weekly cap 2 t`: kilograms, null where it is lifted; undefined where the words or the figure are none. */
function capOf(bare: string, context: ReadContext): Request | undefined {
  if (!SAYS_CAP.test(bare)) return undefined;
  for (const pattern of CAPS) {
    const groups = pattern.exec(bare)?.groups;
    if (!groups) continue;
    const per = SAYS_MONTH.test(bare) ? 'month' : 'week';
    if (groups.none) return { request: 'setting', name: `cap:${per}`, value: null };
    const unit =
      UNITS.find(([word]) => groups.unit && word.test(groups.unit))?.[1] ??
      (isMassUnit(context.units.mass) ? context.units.mass : 'kg');
    const kg = readings(groups.n!).map((n) => tidy(toKg(n, unit)));
    const value = kg.find((each) => each >= CAP_KG.least && each <= CAP_KG.most);
    return { request: 'setting', name: `cap:${per}`, value: value ?? kg[0] };
  }
  return undefined;
}

/** What a written number can be: `2,500` is two thousand five hundred, or two and a half. */
function readings(n: string): number[] {
  const grouped = /^\d{1,3}(?:[.,]\d{3})+$/.test(n) ? [Number(n.replaceAll(/[.,]/g, ''))] : [];
  return [...grouped, Number(n.replace(',', '.'))].filter((each) => Number.isFinite(each));
}

const PERMIT =
  '(?:permit|licen[cs]e|authori[sz]ation|permis|autorisation|agrement|permiso|licencia|autorizacion)';
const TRAINING =
  '(?:training|certificate|certification|refresher|formation|certificat|recyclage|formacion|capacitacion|curso|certificado)';
const RUNS_OUT =
  "(?:expires?|runs? out|is valid (?:until|till|to)|valid (?:until|till|to)|lapses|ends|is good (?:until|till)|is up|(?:est )?valable jusqu'?(?:au|a)|expire|echoit|finit|prend fin|vence|caduca|es valid[oa] hasta|valid[oa] hasta|termina)";
const TILL = "(?:until|till|til|to|on|by|jusqu'?(?:au|a)|le|hasta(?: el)?|el|al|:)";
const OF =
  "^(?:for|of|on|in|the|our|de|du|des|d'|pour|le|la|les|l'|para|del|el|los|las|:)(?: |$)|^[:,-]|(?: |^)(?:for|of|is|de|du|pour|del|para|:)$";

const PAPER = new RegExp(
  `^(?<set>${SET} )?(?<head>.*?\\b(?<paper>${PERMIT}|${TRAINING})\\b.*?)(?<end>(?: (?:${RUNS_OUT}))?(?: ${TILL})?)$`,
);
const GONE = new RegExp(
  `^(?:(?:remove|delete|drop|forget|supprime[rz]?|enleve[rz]?|quita[r]?|elimina[r]?|borra[r]?) (?<head>.*\\b(?<paper>${PERMIT}|${TRAINING})\\b.*)|${SET} (?<off>.*\\b(?<kind>${PERMIT}|${TRAINING})\\b.*) ${NONE})$`,
);

const SAYS_PAPER = new RegExp(`\\b(?:${PERMIT}|${TRAINING})\\b`);
const SAYS_ENDS = new RegExp(RUNS_OUT);
const IS_PERMIT = new RegExp(`^${PERMIT}$`);
const IDLE = new RegExp(OF);

const typedFrom = (message: Plain, phrase: string): string => {
  const at = message.text.lastIndexOf(phrase);
  return at < 0 ? phrase : sliceOf(message, at, at + phrase.length).trim();
};

/** `site permit expires 30 june`, `set training Amy forklift 3 march`: the name as typed, the day it runs out. */
function paperOf(message: Plain, bare: string, context: ReadContext): Request | undefined {
  if (!SAYS_PAPER.test(bare)) return undefined;
  const gone = GONE.exec(bare)?.groups;
  if (gone) {
    const paper = gone.paper ?? gone.kind!;
    const name = nameOf(message, gone.head ?? gone.off!, paper);
    return { request: 'setting', name: `${kindOf(paper)}:${name}`, value: null };
  }
  const day = findForecastDates(bare, [], context).find(({ end }) => end === bare.length);
  if (!day?.when || day.problem || day.when.length > 10) return undefined;
  const groups = PAPER.exec(bare.slice(0, day.start).trim())?.groups;
  if (!groups || (!groups.set && !SAYS_ENDS.test(groups.end ?? ''))) return undefined;
  const name = nameOf(message, groups.head!, groups.paper!);
  return { request: 'setting', name: `${kindOf(groups.paper!)}:${name}`, value: day.when };
}

const kindOf = (paper: string): 'permit' | 'training' => (IS_PERMIT.test(paper) ? 'permit' : 'training');

/** What the paper is for, in the writer's own words: what stands around the word for it. */
function nameOf(message: Plain, head: string, paper: string): string {
  const [before = '', after = ''] = head.split(new RegExp(`\\b${paper}\\b`));
  const trim = (part: string): string => {
    let text = part.trim();
    for (let shorter = ''; shorter !== text; ) {
      shorter = text;
      text = text.replace(IDLE, '').trim();
    }
    return text.replace(/^(?:a|an|un|une|una|notre|nuestro|nuestra) /, '');
  };
  const parts = [trim(before), trim(after)].filter(
    (part) => part !== '' && !/^(?:the|our|le|la|el)$/.test(part),
  );
  if (parts.length === 0) return kindOf(paper) === 'permit' ? 'site' : 'crew';
  return parts.map((part) => typedFrom(message, part)).join(' ');
}

const CHECKED: readonly [string, string][] = [
  [
    'check-stop-button',
    "stop[ -]button|emergency stop|e-?stop|bouton d'arret|arret d'urgence|boton de paro|paro de emergencia|boton de parada",
  ],
  ['check-thermometer', 'thermometers?|probes?|thermometres?|sondes?|termometros?|sondas?'],
  ['check-scale', 'scales?|balances?|basculas?|balanzas?'],
  ['check-fan', 'fans?|ventilateurs?|ventiladores|ventilador'],
];
const CHECK =
  '(?:check(?:ing|s)?|test|verifier|verification|controler|controle|verifie|revisar|revise|revision|comprobar|verificar|probar)';
const TURNING =
  '(?:turn(?:ing|s)?(?: in curing| curing piles?)?|curing turns?|retournements?|retourner(?: en maturation)?|volteos?|voltear(?: en maduracion)?)';
const every = (n: string, span: string): string =>
  `(?:to |at )?(?:every|each|tous les|toutes les|chaque|cada) (?:(?<${n}>\\d{1,3}) )?(?<${span}>days?|weeks?|months?|years?|jours?|semaines?|mois|ans?|annees?|dias?|semanas?|mes(?:es)?|anos?)`;
const EVERY = new RegExp(
  `^(?:${every('n', 'span')} ?[:,-]? ?(?<after>.+)|(?<before>.+?) ${every('m', 'length')})$`,
);
const SET_FIRST = new RegExp(`^${SET} `);
const IS_TURNING = new RegExp(`^${THE}${TURNING}$`);
const IS_CHECK = CHECKED.map(([name, words]) => ({
  name,
  pattern: new RegExp(
    `^(?:${CHECK} ${THE}(?:${words})|${THE}(?:${words}) ${CHECK}|${THE}${CHECK} (?:of |de |du |del )${THE}(?:${words}))$`,
  ),
}));
const SPAN_DAYS: readonly [RegExp, number][] = [
  [/^(?:day|jour|dia)/, 1],
  [/^(?:week|sem)/, 7],
  [/^(?:month|mois|mes)/, 30],
  [/^(?:year|an)/, 365],
];

/** `check the scale every 60 days`: a check that the site's own interval replaces the usual one of. */
function intervalOf(bare: string): Request | undefined {
  const groups = EVERY.exec(bare)?.groups;
  const what = (groups?.after ?? groups?.before)?.replace(SET_FIRST, '');
  if (!groups || !what) return undefined;
  const name = IS_TURNING.test(what) ? 'turn-pile' : IS_CHECK.find(({ pattern }) => pattern.test(what))?.name;
  const span = groups.span ?? groups.length!;
  const days = SPAN_DAYS.find(([word]) => word.test(span))![1] * Number(groups.n ?? groups.m ?? 1);
  return name ? { request: 'setting', name: `every:${name}`, value: days } : undefined;
}

const PEOPLE =
  '(?:wards?|classrooms?|patients?|beds|windows|neighbou?rs|houses|people(?: nearby)?|chambres|services|salles(?: de classe)?|classes|fenetres|voisins|maisons|salas|habitaciones|aulas|pacientes|ventanas|vecinos|casas)';
const LIE = '(?:are|is|lie|sit|sont|est|se trouvent|estan|esta|quedan)';
const WHERE = `(?: ?[:=])?(?: (?:to|in|on|towards?|at|au|a|vers|al|en|hacia))?(?: ?(?:the|l'|le|la|el))? ?(?<point>${COMPASS})(?: of (?:us|here|the (?:site|pad|piles))| side| d'ici| de aqui)?`;
const WARDS = [`${SET} ${THE}${PEOPLE}(?: ${LIE})?${WHERE}`, `${THE}${PEOPLE} ${LIE}${WHERE}`].map(
  (pattern) => new RegExp(`^${pattern}$`),
);

const SAYS_PEOPLE = new RegExp(`\\b${PEOPLE}\\b`);
const NO_WARDS = new RegExp(`^${SET} ${THE}${PEOPLE} ${NONE}$`);

/** `set wards north-east`: on which side those lie whom a smell must not reach. */
function wardsOf(bare: string): Request | undefined {
  if (!SAYS_PEOPLE.test(bare)) return undefined;
  // `set people nearby none` is who is there at all, not on which side.
  if (NO_WARDS.test(bare) && !/\bpeople near/.test(bare))
    return { request: 'setting', name: 'wards', value: null };
  const groups = WARDS.map((pattern) => pattern.exec(bare)?.groups).find((found) => found);
  const value = groups ? compassPoint(groups.point!) : null;
  return value ? { request: 'setting', name: 'wards', value } : undefined;
}

/**
 * What a site sets for itself to be watched: caps of a week and a month, papers that run out, how often what is
 * checked, and where the wards lie. Null where the message is anything else.
 * @source none needed: words
 * @example siteLimit(plain('set weekly cap 2 t'), context) // { request: 'setting', name: 'cap:week', value: 2000 }
 */
export function siteLimit(message: Plain, context: ReadContext): Request | null {
  if (message.text.length > 120 || message.text.includes('\n') || message.text.includes('?')) return null;
  const bare = plain(message.original.trim().replaceAll(/\s+/g, ' ')).text.replace(/[\s!.]+$/, '');
  const found = capOf(bare, context) ?? wardsOf(bare) ?? intervalOf(bare) ?? paperOf(message, bare, context);
  return found ? { ...found, said: message.original.trim() } : null;
}
