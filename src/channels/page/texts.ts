import { say, type Words } from '#assistant';
import { LANGUAGES, type Language } from '#records';

/** The texts that the page itself shows; the wording files hold each as `page-…`. */
export const PAGE_TEXTS = [
  'title',
  'loading',
  'emergency',
  'emergency-close',
  'emergency-call',
  'emergency-rules',
  'emergency-none',
  'log',
  'empty',
  'field',
  'send',
  'today',
  'week',
  'words',
  'letters',
  'digits',
  'keys-letters',
  'keys-digits',
  'waiting',
  'sending',
  'no-answer',
  'chosen',
  'offline',
  'online',
  'busy',
  'too-old',
  'refused',
  'kept-answer',
  'no-kept-answer',
  'not-kept',
  'name-ask',
  'name-save',
  'name-skip',
  'name-change',
  'name-none',
  'language',
  'ended-head',
  'ended',
  'unknown-head',
  'unknown',
  'no-link',
  'file',
  'script',
] as const;

const HOLES = ['number', 'label', 'when', 'name'] as const;

/** All of them in each language, as JSON; what the phone fills in stands as `{name}`. */
export function pageTexts(words: Words): Record<Language, Record<string, string>> {
  const args = Object.fromEntries(HOLES.map((hole) => [hole, { text: `{${hole}}` }]));
  return Object.fromEntries(
    LANGUAGES.map((language) => [
      language,
      Object.fromEntries(
        PAGE_TEXTS.map((id) => [id, words.label(say(`page-${id}`, args), plainManner(language))]),
      ),
    ]),
  ) as Record<Language, Record<string, string>>;
}

/** How one who gave no name is called. */
export const volunteer = (words: Words, language: Language): string =>
  words.label(say('page-volunteer'), plainManner(language));

const plainManner = (language: Language) => ({
  language,
  units: { mass: 'kg', temperature: 'C', volume: 'L', length: 'cm' } as const,
  dayOrder: 'dmy' as const,
  timeZone: 'UTC',
  today: '2000-01-01',
});
