// Free text becomes typed records, requests and doubts. Pure: the moment, the zone and the site come in as arguments.
// Which steps a message goes through, and in what order, stands in pipeline.ts.
export { COMPLAINT_FACTS, type ComplaintFact, complaintFacts, fromOutside } from './complaint-facts.ts';
export type { BookContext, ReadContext } from './context.ts';
export { dirtFound } from './dirt.ts';
export { languageOf } from './language-of.ts';
export { readMessage } from './pipeline.ts';
export { doubtAbout } from './plausible-record.ts';
export { contextForSite } from './site-context.ts';
export { asksWhatAils, isAtBorder, isComplaint, isJam, smellOf } from './trouble-words.ts';
