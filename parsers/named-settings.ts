import type { Request } from '#records';

const HEAD = String.raw`^(?:set|regler?|mets|mettre|fija|fijar|pon|poner|ajusta|ajustar) (?:the |le |la |el |l')?`;
const UNTIL = String.raw`(?: ?(?:-|to|a|et|y) ?)`;

type Shape = {
  words: string;
  name: string;
  /** `typed`: a phrase of the message as it was typed, where somebody's own words are kept. */
  value: (groups: Record<string, string | undefined>, typed: (phrase: string) => string) => unknown;
};

const number = (text: string | undefined): number => Number((text ?? '').replace(',', '.'));
const N = String.raw`(?<n>\d+(?:[.,]\d+)?)`;
const PAIR = String.raw`(?<low>\d+(?:[.,]\d+)?)${UNTIL}(?<high>\d+(?:[.,]\d+)?)`;
const HOURS = '(?: ?(?:h|hours?|heures?|horas?))?';

/** Of `set call for the drum Sam 555 0100`: what is set, in the three languages. */
const CALL = `(?:call for the drum|drum call|appel (?:pour le |du |de )?tambour|llamada (?:para el |del |de )?tambor)`;

/** A limit of heat in °C; one over 100 with no unit said can only be °F. */
const celsius = ({ n, unit }: Record<string, string | undefined>): number => {
  const value = number(n);
  return unit === 'f' || (unit === undefined && value > 100) ? Math.round((value - 32) / 1.8) : value;
};

const WEEKDAYS = [
  ['monday', 'lundi', 'lunes'],
  ['tuesday', 'mardi', 'martes'],
  ['wednesday', 'mercredi', 'miercoles'],
  ['thursday', 'jeudi', 'jueves'],
  ['friday', 'vendredi', 'viernes'],
  ['saturday', 'samedi', 'sabado'],
  ['sunday', 'dimanche', 'domingo'],
];
const MONTHS = [
  ['january', 'jan', 'janvier', 'enero'],
  ['february', 'feb', 'fevrier', 'febrero'],
  ['march', 'mar', 'mars', 'marzo'],
  ['april', 'apr', 'avril', 'abril'],
  ['may', 'mai', 'mayo'],
  ['june', 'jun', 'juin', 'junio'],
  ['july', 'jul', 'juillet', 'julio'],
  ['august', 'aug', 'aout', 'agosto'],
  ['september', 'sep', 'sept', 'septembre', 'septiembre'],
  ['october', 'oct', 'octobre', 'octubre'],
  ['november', 'nov', 'novembre', 'noviembre'],
  ['december', 'dec', 'decembre', 'diciembre'],
];
const nth = (names: readonly string[][], word: string) => names.findIndex((list) => list.includes(word));

/** Settings that are a name and a figure, each with the words it is set by. */
const SHAPES: readonly Shape[] = [
  {
    words: `(?:aeration|aireacion)(?: to| a| en)? (?<word>forced|blown|by fan|forcee|soufflee|par ventilateur|forzada|con ventilador|breathing|passive|passif|natural|naturelle|pasiva|respire)`,
    name: 'aeration',
    value: ({ word }) =>
      /^(?:forc|blown|by fan|souff|par vent|forz|con vent)/.test(word!) ? 'forced' : 'breathing',
  },
  {
    words: `(?:drum days|jours (?:de |du )?tambour|dias (?:de |del )?tambor)(?: to| a)? ${N}`,
    name: 'drum-days',
    value: ({ n }) => number(n),
  },
  {
    words: `(?:drum full|tambour plein|tambor lleno)(?: at| to| a| al)? ${N} ?%`,
    name: 'drum-full',
    value: ({ n }) => number(n) / 100,
  },
  {
    words: `(?:drum interval|intervalle (?:de |du )?tambour|intervalo (?:de |del )?tambor)(?: to| a)? ${PAIR}(?: ?min)?`,
    name: 'drum-interval',
    value: ({ low, high }) => ({ low: number(low), high: number(high) }),
  },
  {
    words: `(?:fan off|ventilateur arrete|ventilador apagado)(?: at)?(?: most| max| for| au plus| maximo)? ${N}${HOURS}`,
    name: 'fan-off-hours',
    value: ({ n }) => number(n),
  },
  {
    words: `(?:drum way|voie (?:de |du )?tambour|via (?:de |del )?tambor)(?: to)? (?<word>in[ -]vessel|en cuve|adentro|closed[ -]pile|tas ferme|pila cerrada)`,
    name: 'drum-way',
    value: ({ word }) => (/pil|tas/.test(word!) ? 'closed-pile' : 'in-vessel'),
  },
  {
    words: `(?:drum least(?: hours| time)?|drum least hours)(?: to)? ${N}${HOURS}`,
    name: 'drum-least-hours',
    value: ({ n }) => number(n),
  },
  {
    words: '(?:drum )?no short[ -]circuit(?: to)? (?<word>yes|no|true|false|oui|non|si)',
    name: 'drum-no-short-circuit',
    value: ({ word }) => /^(?:yes|true|oui|si)$/.test(word!),
  },
  {
    words: `${CALL} (?:after|apres|tras|despues de) ${N}${HOURS}`,
    name: 'drum-call-hours',
    value: ({ n }) => number(n),
  },
  {
    words: `(?:${CALL}(?: to| is| a|:)?|(?:when|if) the drum (?:stops|jams|stands still),? call|(?:quand|si) le tambour s'arrete,? (?:appeler|appelez|appelle)|(?:cuando|si) el tambor (?:se para|para),? llamar(?: a)?) (?<word>\\S.*)`,
    name: 'drum-call',
    value: ({ word }, typed) => typed(word!),
  },
  {
    words: `(?:(?:mix|mixture) (?:water|moisture)|(?:water|moisture)(?: of the mix| band| window)|(?:humidite|eau) du melange|(?:humedad|agua) de la mezcla)(?: to| between| entre| a)? ${PAIR} ?%?`,
    name: 'mix-water',
    value: ({ low, high }) => ({ low: number(low), high: number(high) }),
  },
  {
    words: `(?:mix )?c ?[:/] ?n(?: of the mix| band| ratio| du melange| de la mezcla)?(?: to| between| entre| a)? ${PAIR}`,
    name: 'mix-cn',
    value: ({ low, high }) => ({ low: number(low), high: number(high) }),
  },
  {
    words: `(?:heat |temperature )?(?:turn soon|turn at|retourner a|voltear a|volcar a)(?: at)? ${N}(?: ?°? ?(?<unit>[cf]))?`,
    name: 'band:turn-soon',
    value: celsius,
  },
  {
    words: `(?:heat |temperature )?(?:too hot|act today|trop chaud|demasiado caliente)(?: at| a| above| over)? ${N}(?: ?°? ?(?<unit>[cf]))?`,
    name: 'band:act-today',
    value: celsius,
  },
  {
    words: `(?:heat |temperature )?(?:fire watch|danger de feu|risque de feu|riesgo de fuego)(?: at| a| above| over)? ${N}(?: ?°? ?(?<unit>[cf]))?`,
    name: 'band:fire-watch',
    value: celsius,
  },
  {
    words: `(?:heat |temperature )?(?:do not open|don't open|fire danger|ne pas ouvrir|no abrir)(?: at| a| above| over| from| des| desde)? ${N}(?: ?°? ?(?<unit>[cf]))?`,
    name: 'band:do-not-open',
    value: celsius,
  },
  {
    words: `(?:lab(?:oratory)? standard|norme (?:de )?labo(?:ratoire)?|norma (?:de(?:l)? )?laboratorio)(?: to)? (?<word>[a-z0-9]+(?:[- ][a-z0-9]+){0,2})`,
    name: 'lab-standard',
    value: ({ word }) => word!.replaceAll(' ', '-'),
  },
  {
    words:
      '(?:vector attraction|attraction des vecteurs|atraccion de vectores)(?: to)? (?<word>on|off|yes|no|oui|non|si)',
    name: 'vector-attraction',
    value: ({ word }) => (/^(?:on|yes|oui|si)$/.test(word!) ? 'on' : 'off'),
  },
  {
    words:
      '(?:day count|decompte des jours|cuenta de dias)(?: to)? (?<word>72 ?h(?:ours)?|hours|daily(?: readings)?)',
    name: 'day-count',
    value: ({ word }) => (word!.startsWith('daily') ? 'daily-readings' : 'hours-72'),
  },
  {
    words: `(?:(?:probe|reading|regulator) )?(?:depth|profondeur|profundidad)(?: (?:de |du |de la )?(?:sonde|sonda|lecture|lectura))?(?: to)? ${PAIR} ?(?<unit>cm|in|inches)?`,
    name: 'depth',
    value: ({ low, high, unit }) => {
      const each = unit?.startsWith('in') ? 2.54 : 1;
      return { fromCm: number(low) * each, toCm: number(high) * each };
    },
  },
  {
    words: `(?:week starts?|semaine commence|semana empieza)(?: on| to| at| le| el)? (?<word>${WEEKDAYS.flat().join('|')})`,
    name: 'week-starts',
    value: ({ word }) => WEEKDAYS[nth(WEEKDAYS, word!)]![0],
  },
  {
    words: `(?:year starts?|annee commence|ano empieza)(?: on| in| to| at| en)?(?: 1(?:st|er)?(?: de)?)? (?<word>${MONTHS.flat().join('|')}|[1-9]|1[0-2])`,
    name: 'year-starts',
    value: ({ word }) => (/^\d/.test(word!) ? Number(word) : nth(MONTHS, word!) + 1),
  },
  {
    words: `(?:people (?:at risk )?(?:near ?by|around)|near ?by people|gens fragiles(?: a cote| pres| autour)?|gente delicada(?: cerca| alrededor)?)(?: are| is| to|:| :)? (?<word>wards?|hospital|patients|hopital|chambres|pacientes|salas|classrooms?|school|children|ecole|classes|enfants|escuela|aulas|ninos|none|nobody|no ?one|no|personne|aucun|aucune|nadie|ninguno|ninguna)`,
    name: 'people-nearby',
    value: ({ word }) =>
      /^(?:ward|hosp|hopi|pati|chamb|paci|salas)/.test(word!)
        ? 'wards'
        : /^(?:class|scho|child|ecol|enfa|escu|aula|nino)/.test(word!)
          ? 'classrooms'
          : 'none',
  },
  { words: `order (?:at|days) ${N}(?: days)?`, name: 'order-days', value: ({ n }) => number(n) },
];

const READ = SHAPES.map(({ words, ...shape }) => ({ ...shape, pattern: new RegExp(`${HEAD}${words}$`) }));

/**
 * A setting of the site's rules that is a name and its figure; null where the words are none.
 * @source none needed: words
 * @example namedSetting('set drum days 5') // { request: 'setting', name: 'drum-days', value: 5 }
 */
export function namedSetting(
  text: string,
  typed: (phrase: string) => string = (phrase) => phrase,
): Request | null {
  for (const { pattern, name, value } of READ) {
    const groups = pattern.exec(text)?.groups;
    if (groups) return { request: 'setting', name, value: value(groups, typed) };
  }
  return null;
}
