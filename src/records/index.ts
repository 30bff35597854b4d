// What the log book can hold: records, requests, doubts, sites, entries and units, as zod schemas and types.
// The ground floor: imports nothing of the project; no clock, no files.
export type { Entry, NewEntry } from './entry.ts';
export * from './parsed.ts';
export * from './record.ts';
export * from './site.ts';
export * from './units.ts';
