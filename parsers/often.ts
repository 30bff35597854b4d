/** How often something comes round, in the book's own spelling: `{ every: '2 weeks' }`, `{ on: '03-01' }`. */
export type Often = { every: string } | { on: string };

const WEEKDAYS: readonly (readonly string[])[] = [
  ['monday', 'mon', 'lundi', 'lunes'],
  ['tuesday', 'tue', 'tues', 'mardi', 'martes'],
  ['wednesday', 'wed', 'weds', 'mercredi', 'miercoles'],
  ['thursday', 'thu', 'thur', 'thurs', 'jeudi', 'jueves'],
  ['friday', 'fri', 'vendredi', 'viernes'],
  ['saturday', 'sat', 'samedi', 'sabado'],
  ['sunday', 'sun', 'dimanche', 'domingo'],
];
const MONTHS: readonly (readonly string[])[] = [
  ['january', 'jan', 'janvier', 'janv', 'enero', 'ene'],
  ['february', 'feb', 'fevrier', 'fevr', 'febrero'],
  ['march', 'mar', 'mars', 'marzo'],
  ['april', 'apr', 'avril', 'avr', 'abril', 'abr'],
  ['may', 'mai', 'mayo'],
  ['june', 'jun', 'juin', 'junio'],
  ['july', 'jul', 'juillet', 'juil', 'julio'],
  ['august', 'aug', 'aout', 'agosto', 'ago'],
  ['september', 'sep', 'sept', 'septembre', 'septiembre'],
  ['october', 'oct', 'octobre', 'octubre'],
  ['november', 'nov', 'novembre', 'noviembre'],
  ['december', 'dec', 'decembre', 'diciembre', 'dic'],
];
const NUMBERS: readonly (readonly string[])[] = [
  ['one', 'a', 'une', 'un', 'una', 'uno'],
  ['two', 'other', 'second', 'deux', 'dos'],
  ['three', 'third', 'trois', 'tres'],
  ['four', 'fourth', 'quatre', 'cuatro'],
  ['five', 'cinq', 'cinco'],
  ['six', 'seis'],
  ['seven', 'sept', 'siete'],
  ['eight', 'huit', 'ocho'],
  ['nine', 'neuf', 'nueve'],
  ['ten', 'dix', 'diez'],
];
const UNITS: readonly (readonly [name: string, words: readonly string[]])[] = [
  ['day', ['day', 'jour', 'dia']],
  ['week', ['week', 'wk', 'semaine', 'semana']],
  ['fortnight', ['fortnight', 'quinzaine', 'quincena']],
  ['month', ['month', 'mois', 'mes']],
  ['quarter', ['quarter', 'trimestre']],
  ['year', ['year', 'an', 'annee', 'ano']],
];
const ADVERBS: readonly (readonly [every: string, words: readonly string[]])[] = [
  ['day', ['daily', 'quotidien', 'quotidienne', 'quotidiennement', 'diario', 'diaria', 'a diario']],
  ['week', ['weekly', 'hebdomadaire', 'hebdo', 'semanal', 'semanalmente']],
  ['2 weeks', ['fortnightly', 'biweekly', 'bimensuel', 'bimensuelle', 'quincenal']],
  ['month', ['monthly', 'mensuel', 'mensuelle', 'mensual', 'mensualmente']],
  ['3 months', ['quarterly', 'trimestriel', 'trimestrielle', 'trimestral']],
  ['year', ['yearly', 'annually', 'annuel', 'annuelle', 'anual', 'anualmente']],
];
const NTH: readonly (readonly [name: string, words: readonly string[]])[] = [
  ['first', ['first', '1st', 'premier', '1er', 'primer', 'primero']],
  ['second', ['second', '2nd', 'deuxieme', '2e', '2eme', 'segundo']],
  ['third', ['third', '3rd', 'troisieme', '3e', '3eme', 'tercer', 'tercero']],
  ['fourth', ['fourth', '4th', 'quatrieme', '4e', '4eme', 'cuarto']],
  ['last', ['last', 'dernier', 'ultimo']],
];

const any = (words: readonly string[]): string => [...words].sort((a, b) => b.length - a.length).join('|');
const named = (lists: readonly (readonly [string, readonly string[]])[]): string =>
  any(lists.flatMap(([, words]) => words));
const nameOf = (lists: readonly (readonly [string, readonly string[]])[], word: string): string =>
  lists.find(([, words]) => words.includes(word))![0];
const singular = (word: string): string => word.replace(/s$/, '');

const WEEKDAY = `(?:${any(WEEKDAYS.flat())})s?`;
const MONTH = `(?:${any(MONTHS.flat())})\\.?`;
const EVERY = '(?:every|each|chaque|tous les|toutes les|cada|todos los|todas las)';
const DAYS = `${WEEKDAY}(?:(?:, ?| ?& ?| and | et | y |, and |, et |, y )(?:every |le |les |el |los )?${WEEKDAY})*`;
const OF_MONTH =
  '(?: (?:of|in|du|de|del) (?:the |each |every |le |chaque |cada |el )?(?:month|mois|mes)| (?:every month|each month|chaque mois|cada mes|del mes|du mois))';
const THE = '(?:on |every |each |chaque |cada |le |el |the |on the |every |tous les |todos los )?(?:the )?';

type Form = { words: string; often: (g: Record<string, string | undefined>) => Often | null };

/** Ordered: what names a day of the month comes before the bare weekday, which would take a part of it. */
const FORMS: readonly Form[] = [
  {
    words: `${THE}(?<nth>${named(NTH)}) (?<day>${WEEKDAY})${OF_MONTH}`,
    often: ({ nth, day }) => ({ every: `${nameOf(NTH, nth!)} ${weekdayOf(day!)} of the month` }),
  },
  {
    words: `${THE}(?<nth>${named(NTH)})(?: day| jour| dia)?${OF_MONTH}`,
    often: ({ nth }) => {
      const day = { first: 1, last: 31, second: 2, third: 3, fourth: 4 }[nameOf(NTH, nth!)];
      return { every: `${day} of the month` };
    },
  },
  {
    words: `${THE}(?:day |jour |dia )?(?<n>\\d{1,2})(?:st|nd|rd|th|er|e)?${OF_MONTH}`,
    often: ({ n }) => (Number(n) >= 1 && Number(n) <= 31 ? { every: `${Number(n)} of the month` } : null),
  },
  {
    words: `(?:${EVERY} (?:(?<n>2|two|other|second|2nd|deux|dos) )(?<day>${WEEKDAY})|un (?<alt>${WEEKDAY}) sur deux|(?<alt2>${WEEKDAY}) de por medio|(?:un )?(?<alt3>${WEEKDAY}) si y (?:otro|uno) no)`,
    often: ({ day, alt, alt2, alt3 }) => ({ every: `other ${weekdayOf((day ?? alt ?? alt2 ?? alt3)!)}` }),
  },
  {
    words: `(?:${EVERY} (?:weekday|working day|workday|jour ouvrable|jours ouvrables|jour de semaine|jours de semaine|dia habil|dias habiles|dia laborable|dias laborables)|on weekdays|en semaine|entre semana)`,
    often: () => ({ every: 'weekday' }),
  },
  {
    words: `(?:${EVERY} (?:weekend|week-end|fin de semaine|fines? de semana)|(?:on |at )?weekends|les fins de semaine|los fines de semana)`,
    often: () => ({ every: 'weekend' }),
  },
  {
    // `on friday` and `el viernes` are one day; `on fridays`, `le vendredi`, `los viernes` come round.
    words: `(?:${EVERY}|le|les|los) (?<days>${DAYS})|on (?<many>(?:${any(WEEKDAYS.flat())})s(?:(?:, ?| and )${WEEKDAY})*)`,
    often: ({ days, many }) => ({ every: weekdaysOf((days ?? many)!).join(', ') }),
  },
  {
    words: `(?:${EVERY}|once (?:a|every|per)|une fois (?:par|tous les|toutes les)|una vez (?:al?|cada|por))(?: (?<n>\\d{1,3}|${any(NUMBERS.flat())}))? (?<unit>(?:${named(UNITS)})s?|meses)`,
    often: ({ n, unit }) => interval(n, unit!),
  },
  { words: `(?<word>${named(ADVERBS)})`, often: ({ word }) => ({ every: nameOf(ADVERBS, word!) }) },
  {
    words: `(?:on |le |el |every |each |chaque |cada )(?:the )?(?:dia )?(?<d>\\d{1,2})(?:st|nd|rd|th|er|°)?(?: of| de)? (?<m>${MONTH})(?:,? (?:de )?(?<y>20\\d\\d))?`,
    often: ({ d, m, y }) => dateOf(d!, m!, y),
  },
  {
    words: `(?:on |every |each )(?<m>${MONTH}) (?<d>\\d{1,2})(?:st|nd|rd|th)?(?:,? (?<y>20\\d\\d))?`,
    often: ({ d, m, y }) => dateOf(d!, m!, y),
  },
];

const READ = FORMS.map(({ words, often }) => ({
  whole: new RegExp(`^(?:${words})$`),
  first: new RegExp(`^(?:${words})(?![a-z0-9])`),
  often,
}));

function weekdayOf(word: string): string {
  const found = WEEKDAYS.find((words) => words.includes(word) || words.includes(singular(word)));
  return found![0]!;
}

function weekdaysOf(text: string): string[] {
  const words = text.match(new RegExp(`\\b${WEEKDAY}\\b`, 'g')) ?? [];
  return [...new Set(words.map(weekdayOf))];
}

function interval(n: string | undefined, unit: string): Often | null {
  const name =
    unit === 'meses'
      ? 'month'
      : UNITS.find(([, words]) => words.some((w) => w === unit || `${w}s` === unit))![0];
  const count = n === undefined ? 1 : /^\d/.test(n) ? Number(n) : NUMBERS.findIndex((l) => l.includes(n)) + 1;
  if (count < 1) return null;
  return { every: count === 1 ? name : `${count} ${name}s` };
}

const two = (value: number): string => String(value).padStart(2, '0');

function dateOf(day: string, month: string, year: string | undefined): Often | null {
  const index = MONTHS.findIndex((list) => list.includes(month.replace('.', ''))) + 1;
  const date = `${year ?? '2024'}-${two(index)}-${two(Number(day))}`;
  const ms = Date.parse(`${date}T00:00:00Z`);
  if (Number.isNaN(ms) || new Date(ms).toISOString().slice(0, 10) !== date) return null;
  return { on: year ? date : date.slice(5) };
}

/**
 * How often, where plain text (lower case, no accents) is nothing but that; null else.
 * @source none needed: words
 * @example oftenOf('toutes les 2 semaines') // { every: '2 weeks' }
 * @example oftenOf('el 1 de marzo') // { on: '03-01' }
 */
export function oftenOf(text: string): Often | null {
  for (const { whole, often } of READ) {
    const found = whole.exec(text);
    if (found) return often(found.groups ?? {});
  }
  return null;
}

/**
 * How often, where plain text begins with it, and where what follows begins; null else.
 * @source none needed: words
 * @example oftenFirst('every friday: check extinguishers') // { often: { every: 'friday' }, end: 12 }
 */
export function oftenFirst(text: string): { often: Often; end: number } | null {
  for (const { first, often } of READ) {
    const found = first.exec(text);
    if (!found) continue;
    const read = often(found.groups ?? {});
    if (read) return { often: read, end: found[0].length };
  }
  return null;
}

/**
 * How often, where plain text ends with it, and where it begins; null else. The longest is taken.
 * @source none needed: words
 * @example oftenLast('oil the hinges every 2 weeks') // { often: { every: '2 weeks' }, start: 15 }
 */
export function oftenLast(text: string): { often: Often; start: number } | null {
  const starts = [...text.matchAll(/(?<=^|[\s,:(-])[a-z0-9]/g)].slice(-16);
  for (const { index } of starts) {
    const often = oftenOf(text.slice(index).replace(/[\s.!)]+$/, ''));
    if (often) return { often, start: index };
  }
  return null;
}
