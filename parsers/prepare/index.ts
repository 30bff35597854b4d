// Steps that make tokens ready for the readers: numbers in words, units, approximations, corrections, places.
// Their order stands in pipeline.ts, with its reason.
export { approximations } from './approximations.ts';
export { corrections } from './corrections.ts';
export { ownSources } from './own-sources.ts';
export { places } from './places.ts';
export { units } from './units.ts';
export { wordNumbers } from './word-numbers.ts';
