import type { Request } from '#records';

const LAST = [
  "(?:how (?:was|did|were we|did we do)|what about|show(?: me)?|give me|what did we (?:take|get) in|how much (?:did we (?:take|get) in|came in)|summary (?:of|for)|totals? (?:of|for)|numbers (?:of|for)|the)? ?(?:the )?(?:last|previous|past) week(?:'?s)?(?: go| summary| numbers| totals?| look)?",
  "(?:comment (?:etait|s'est passee|a ete)|on a fait combien|combien|montre|bilan de|resume de|chiffres de|total de)? ?(?:la )?semaine (?:derniere|passee|precedente)",
  '(?:como (?:fue|estuvo|nos fue)|cuanto (?:entro|hicimos|recibimos)|muestra|resumen de|total de|numeros de)? ?(?:la )?(?:semana (?:pasada|anterior)|ultima semana)',
].map((pattern) => new RegExp(`^(?:${pattern})$`));

/**
 * `last week`, `how did last week go?`: the summary of the week that is over. Null where the message is anything else.
 * @source none needed: words
 * @example lastWeekAsked('how was last week') // { request: 'week', which: 'last' }
 */
export const lastWeekAsked = (bare: string): Request | null =>
  LAST.some((pattern) => pattern.test(bare)) ? { request: 'week', which: 'last' } : null;
