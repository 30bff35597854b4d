// Outcomes become words here and nowhere else: one Fluent file per language in texts/, and how numbers,
// units and dates are written. Deterministic: texts, language, units and zone are handed in.
export { makeWords, type Texts } from './words.ts';
