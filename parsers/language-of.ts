import { LANGUAGES, type Language } from '#records';
import { dangerEn } from './languages/en/danger.ts';
import { dangerEs } from './languages/es/danger.ts';
import { dangerFr } from './languages/fr/danger.ts';
import { LEXICONS } from './languages/index.ts';
import { plain } from './text.ts';

const DANGER: Readonly<Record<Language, object>> = { en: dangerEn, fr: dangerFr, es: dangerEs };

let known: Map<string, Language[]> | null = null;

/** Word → the languages that know it; built at first use. */
function wordsKnown(): Map<string, Language[]> {
  if (known) return known;
  known = new Map();
  for (const language of LANGUAGES) {
    const texts = [...LEXICONS[language].words.flatMap(Object.values), ...Object.values(DANGER[language])];
    for (const word of new Set(texts.flatMap((text) => wordsOf(String(text))))) {
      const have = known.get(word);
      if (have) have.push(language);
      else known.set(word, [language]);
    }
  }
  return known;
}

/** Whole words of two letters and more: single letters are piles, units and slips; `auxilioooo` is drawn out. */
const wordsOf = (text: string): string[] =>
  plain(text)
    .text.replaceAll(/(\p{L})\1{2,}/gu, '$1')
    .match(/\p{L}{2,}/gu) ?? [];

/**
 * The language a message is written in: the one that alone knows most of its words, or null where no word tells
 * (`B 41 43 39`) or two languages are level. Figures and names tell nothing. Never throws; linear in the text.
 * @example languageOf('bac 61,5 et copeaux 12') // 'fr'
 * @example languageOf('B 41 43 39') // null
 */
export function languageOf(text: string): Language | null {
  const table = wordsKnown();
  const score: Record<Language, number> = { en: 0, fr: 0, es: 0 };
  for (const word of wordsOf(text.slice(0, 2000))) {
    const languages = table.get(word);
    // A word of two languages still speaks against the third.
    if (languages && languages.length < LANGUAGES.length) {
      for (const language of languages) score[language] += languages.length === 1 ? 2 : 1;
    }
  }
  // Where the words leave it open, a letter or sign that one language alone writes tells.
  if (/[¿¡ñ]/i.test(text)) score.es += 1;
  else if (/[çœàèùêâîôû]/i.test(text)) score.fr += 1;
  const [first, second] = [...LANGUAGES].sort((a, b) => score[b] - score[a]);
  return score[first!] > score[second!] ? first! : null;
}
