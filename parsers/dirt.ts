import { plain } from './text.ts';

/** What does not belong into a load, in the book's own spelling, with the words for it in the three languages. */
const DIRT: readonly [string, string][] = [
  ['gloves', 'gloves?|gants?|guantes?'],
  [
    'cutlery',
    'cutlery|forks?|spoons?|kni(?:fe|ves)|couverts?|fourchettes?|cuilleres?|couteaux?|cubiertos?|tenedor(?:es)?|cucharas?|cuchillos?',
  ],
  ['glass', 'glass(?:es)?|verres?|vidrios?|cristal(?:es)?'],
  ['metal', 'metals?|cans?|tins?|foil|metaux|conserves?|canettes?|aluminium|latas?|metales|aluminio'],
  ['plastic', 'plastics?|cling ?film|wrap|plastiques?|plasticos?'],
  ['bags', 'bags?|liners?|sacs?|sachets?|bolsas?'],
  ['foam', 'styrofoam|polystyrene|foam|styromousse|mousse|unicel|poliestireno|espuma'],
  ['cups', 'cups?|lids?|straws?|gobelets?|couvercles?|pailles?|vasos?|tapas?|popotes?|pajitas?'],
  ['cardboard', 'cardboard|cartons?|boxes|boites?|cajas?'],
  ['napkins', 'napkins?|paper towels?|wipes?|serviettes?|lingettes?|servilletas?|toallitas?'],
  ['stones', 'stones?|rocks?|gravel|pierres?|cailloux|gravier|piedras?|grava'],
];
const READ = DIRT.map(([name, words]) => ({ name, pattern: new RegExp(`\\b(?:${words})\\b`) }));

/**
 * What was found in a dirty load, as far as it was named: `bags` of plastic are `plastic`.
 * @source none needed: words
 * @example dirtFound('east kitchen cart 70 contaminated, gloves') // ['gloves']
 */
export function dirtFound(said: string): string[] {
  const { text } = plain(said);
  const found = READ.filter(({ pattern }) => pattern.test(text)).map(({ name }) => name);
  return found.includes('plastic') ? found.filter((name) => name !== 'bags') : found;
}
