import type { Language } from '#records';

/** What a word says of a paper that is asked for: its format, its period, or which one of them. */
export type PaperWord =
  | { format: 'xlsx' | 'csv' | 'json' }
  | { span: 'week' | 'month' | 'season' | 'year' }
  | { month: number }
  | { last: true }
  | { whole: true }
  | { filler: true };

const MONTHS: Record<Language, string> = {
  en: 'january february march april may june july august september october november december',
  fr: 'janvier fevrier mars avril mai juin juillet aout septembre octobre novembre decembre',
  es: 'enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre diciembre',
};

const WORDS: Record<Language, [words: string, says: PaperWord][]> = {
  en: [
    ['week weekly', { span: 'week' }],
    ['month monthly', { span: 'month' }],
    ['season seasonal quarter quarterly', { span: 'season' }],
    ['year yearly annual', { span: 'year' }],
    ['last past previous', { last: true }],
    ['all everything whole', { whole: true }],
    ['spreadsheet workbook sheet xlsx', { format: 'xlsx' }],
    ['this the of for in as a an from to until till since by through please pls', { filler: true }],
  ],
  fr: [
    ['semaine hebdomadaire', { span: 'week' }],
    ['mois mensuel', { span: 'month' }],
    ['saison trimestre trimestriel', { span: 'season' }],
    ['annee an annuel', { span: 'year' }],
    ['dernier derniere passe passee precedent precedente', { last: true }],
    ['tout', { whole: true }],
    ['classeur tableur', { format: 'xlsx' }],
    ['ce cette le la les l du de des en pour au depuis jusqu jusque svp', { filler: true }],
  ],
  es: [
    ['semana semanal', { span: 'week' }],
    ['mes mensual', { span: 'month' }],
    ['temporada trimestre trimestral', { span: 'season' }],
    ['ano anual', { span: 'year' }],
    ['pasado pasada ultimo ultima anterior', { last: true }],
    ['todo', { whole: true }],
    ['planilla', { format: 'xlsx' }],
    ['este esta el la los del de en para al desde hasta como porfa favor', { filler: true }],
  ],
};

const TABLE = new Map<string, PaperWord>([
  ['csv', { format: 'csv' }],
  ['json', { format: 'json' }],
  ['pdf', { filler: true }],
]);
for (const rows of Object.values(WORDS))
  for (const [words, says] of rows) for (const word of words.split(' ')) TABLE.set(word, says);
for (const names of Object.values(MONTHS))
  for (const [i, name] of names.split(' ').entries()) TABLE.set(name, { month: i + 1 });

/**
 * What a plain word (lower case, no accents) says of a paper; undefined where it says nothing of one.
 * @source none needed: words
 * @example paperWord('mensuel') // { span: 'month' }
 */
export const paperWord = (word: string): PaperWord | undefined => TABLE.get(word);
