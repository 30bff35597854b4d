// Reads numbers and quantities out of free text in English, French and Spanish: digits, words, fractions, units.
// Pure; one pass over the text, the words of each language as data in parsers/languages.
export { readNumbers, readQuantities } from './read.ts';
export type { NumberSpan, NumberWords, Quantity, QuantityOptions, UnitWords } from './types.ts';
