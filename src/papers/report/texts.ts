import type { Language } from '#records';

/** The headings of the report, a row a text: English, French, Spanish. */
const ROWS = {
  title: ['Compost report', 'Rapport de compostage', 'Informe de compostaje'],
  period: ['Period', 'Période', 'Periodo'],
  made: ['Made on', 'Établi le', 'Hecho el'],
  totals: ['Totals', 'Totaux', 'Totales'],
  what: ['What', 'Quoi', 'Qué'],
  amount: ['Amount', 'Quantité', 'Cantidad'],
  feedWeighed: ['Taken in, weighed', 'Reçu, pesé', 'Recibido, pesado'],
  feedEstimated: [
    'Taken in, estimated from volume',
    'Reçu, estimé par volume',
    'Recibido, estimado por volumen',
  ],
  added: ['Added (chips and the like)', 'Ajouté (copeaux, etc.)', 'Añadido (astillas, etc.)'],
  pending: [
    'Loads that wait for an empty weight, not counted',
    'Charges en attente de tare, non comptées',
    'Cargas en espera de tara, no contadas',
  ],
  compost: ['Compost that left', 'Compost sorti', 'Compost que salió'],
  refused: ['Loads refused', 'Charges refusées', 'Cargas rechazadas'],
  turnings: ['Turnings', 'Retournements', 'Volteos'],
  hours: ['Hours of people', 'Heures de travail', 'Horas de trabajo'],
  target: ['Target for a year', 'Objectif annuel', 'Objetivo anual'],
  ofTarget: ['Of the target', "De l'objectif", 'Del objetivo'],
  bySource: [
    'Intake by material and source',
    'Apports par matière et source',
    'Entradas por material y origen',
  ],
  byMonth: ['Intake by month', 'Apports par mois', 'Entradas por mes'],
  month: ['Month', 'Mois', 'Mes'],
  material: ['Material', 'Matière', 'Material'],
  source: ['Source', 'Source', 'Origen'],
  loads: ['Loads', 'Charges', 'Cargas'],
  weighed: ['Weighed', 'Pesé', 'Pesado'],
  estimated: ['Estimated', 'Estimé', 'Estimado'],
  piles: ['Piles and the evidence of heat', 'Tas et preuve de la chaleur', 'Pilas y prueba del calor'],
  noRule: ['no rule set chosen', 'aucune règle choisie', 'sin regla elegida'],
  met: [
    'time and temperature met on these readings',
    'durée et température atteintes selon ces relevés',
    'tiempo y temperatura cumplidos según estas lecturas',
  ],
  'not-yet': ['not yet met', 'pas encore atteint', 'aún no cumplido'],
  'cannot-show': [
    'cannot be shown by these readings',
    'ne peut être montré par ces relevés',
    'no se puede mostrar con estas lecturas',
  ],
  date: ['Date', 'Date', 'Fecha'],
  lowest: ['Lowest', 'Plus basse', 'Más baja'],
  counts: ['Counts', 'Compte', 'Cuenta'],
  lines: ['Lines', 'Lignes', 'Líneas'],
  removals: ['What left and who received it', 'Sorties et destinataires', 'Salidas y destinatarios'],
  to: ['Received by', 'Reçu par', 'Recibido por'],
  pile: ['Pile', 'Tas', 'Pila'],
  problems: ['Problems and how they ended', 'Problèmes et leur issue', 'Problemas y cómo terminaron'],
  place: ['Place', 'Lieu', 'Lugar'],
  ended: ['Ended', 'Terminé', 'Terminado'],
  done: ['What was done', 'Ce qui a été fait', 'Qué se hizo'],
  open: ['still open', 'encore ouvert', 'aún abierto'],
  method: ['Method and factors', 'Méthode et facteurs', 'Método y factores'],
  net: [
    'Net weights are gross less the empty weight in force on the day. A weight said with no container is net.',
    'Le poids net est le brut moins la tare en vigueur ce jour-là. Un poids dit sans contenant est net.',
    'El peso neto es el bruto menos la tara vigente ese día. Un peso dicho sin recipiente es neto.',
  ],
  estimates: [
    'Estimates are volumes by a factor, and are never added to what was weighed. Factors used:',
    'Les estimations sont des volumes fois un facteur, jamais ajoutées au pesé. Facteurs utilisés :',
    'Las estimaciones son volúmenes por un factor, nunca sumadas a lo pesado. Factores usados:',
  ],
  quality: [
    'Corrections and what is not counted',
    'Corrections et lignes non comptées',
    'Correcciones y lo no contado',
  ],
  corrected: [
    'Lines corrected or taken back',
    'Lignes corrigées ou annulées',
    'Líneas corregidas o anuladas',
  ],
  held: ['Lines held, not counted', 'Lignes en attente, non comptées', 'Líneas en espera, no contadas'],
  counted: ['Lines counted', 'Lignes comptées', 'Líneas contadas'],
  disclaimer: [
    'The lowest reading decides. A day with no reading proves nothing. Whether compost may leave is decided by the site and its regulator.',
    "Le relevé le plus bas décide. Un jour sans relevé ne prouve rien. Le site et l'autorité décident de la sortie du compost.",
    'Decide la lectura más baja. Un día sin lectura no prueba nada. El sitio y la autoridad deciden la salida del compost.',
  ],
  none: ['none', 'aucun', 'ninguno'],
  page: ['Page', 'Page', 'Página'],
  yes: ['yes', 'oui', 'sí'],
  no: ['no', 'non', 'no'],
} as const satisfies Record<string, readonly [en: string, fr: string, es: string]>;

export type ReportText = keyof typeof ROWS;
const PLACES: Record<Language, 0 | 1 | 2> = { en: 0, fr: 1, es: 2 };
export const reportTexts =
  (language: Language) =>
  (id: ReportText): string =>
    ROWS[id][PLACES[language]];
export const REPORT_TEXTS = ROWS;
