import type { Request } from '#records';

const HEAD = String.raw`^(?:set|regler?|mets|mettre|fija|fijar|pon|poner|ajusta|ajustar) (?:the |le |la |el )?`;
const UNTIL = String.raw`(?: ?(?:-|to|a|et|y) ?)`;

type Shape = { words: string; name: string; value: (groups: Record<string, string | undefined>) => unknown };

const number = (text: string | undefined): number => Number((text ?? '').replace(',', '.'));
const N = String.raw`(?<n>\d+(?:[.,]\d+)?)`;
const PAIR = String.raw`(?<low>\d+(?:[.,]\d+)?)${UNTIL}(?<high>\d+(?:[.,]\d+)?)`;
const HOURS = '(?: ?(?:h|hours?|heures?|horas?))?';

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
    words: `(?:aeration|aireacion)(?: to| a| en)? (?<word>forced|blown|forcee|forzada|breathing|passive|passif|natural|naturelle|pasiva|respire)`,
    name: 'aeration',
    value: ({ word }) => (/^(?:forc|blown|forz)/.test(word!) ? 'forced' : 'breathing'),
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
    words: `(?:drum way|voie (?:de |du )?tambour|via (?:de |del )?tambor)(?: to)? (?<word>in[ -]vessel|closed[ -]pile)`,
    name: 'drum-way',
    value: ({ word }) => word!.replace(' ', '-'),
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
    words: `drum call after ${N}${HOURS}`,
    name: 'drum-call-hours',
    value: ({ n }) => number(n),
  },
  {
    words: `(?:lab standard|norme labo|norma (?:de )?laboratorio)(?: to)? (?<word>[a-z0-9-]+)`,
    name: 'lab-standard',
    value: ({ word }) => word,
  },
  {
    words:
      '(?:day count|decompte des jours|cuenta de dias)(?: to)? (?<word>72 ?h(?:ours)?|hours|daily(?: readings)?)',
    name: 'day-count',
    value: ({ word }) => (word!.startsWith('daily') ? 'daily-readings' : 'hours-72'),
  },
  {
    words: `(?:depth|profondeur|profundidad)(?: to)? ${PAIR} ?(?<unit>cm|in|inches)?`,
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
  { words: `order (?:at|days) ${N}(?: days)?`, name: 'order-days', value: ({ n }) => number(n) },
];

const READ = SHAPES.map(({ words, ...shape }) => ({ ...shape, pattern: new RegExp(`${HEAD}${words}$`) }));

/**
 * A setting of the site's rules that is a name and its figure; null where the words are none.
 * @source none needed: words
 * @example namedSetting('set drum days 5') // { request: 'setting', name: 'drum-days', value: 5 }
 */
export function namedSetting(text: string): Request | null {
  for (const { pattern, name, value } of READ) {
    const groups = pattern.exec(text)?.groups;
    if (groups) return { request: 'setting', name, value: value(groups) };
  }
  return null;
}
