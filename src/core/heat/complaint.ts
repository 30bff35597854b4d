/** What a regulator wants to know of a complaint, in the order in which it is asked. */
export const COMPLAINT_FIELDS = [
  'when',
  'where',
  'nature',
  'strength',
  'wind',
  'weather',
  'being-done',
  'done-about-it',
  'who-answers',
] as const;
export type ComplaintField = (typeof COMPLAINT_FIELDS)[number];

/** Strengths that a complaint is recorded with, weakest first. */
export const COMPLAINT_STRENGTHS = ['none', 'faint', 'strong'] as const;

/**
 * The fields of a complaint still to be asked, in order. The complainer's name is none of them: it stays out of
 * the group. A field of blanks counts as not said.
 * @source 14 CCR 17869 (complaints: nature, date, action; seen); wind, weather, work and strength: common practice
 * @example complaintLacks({ when: '2026-06-17', where: 'east fence', nature: 'rotten' })[0] // 'strength'
 */
export const complaintLacks = (said: Partial<Record<ComplaintField, string | null>>): ComplaintField[] =>
  COMPLAINT_FIELDS.filter((field) => !said[field]?.trim());
