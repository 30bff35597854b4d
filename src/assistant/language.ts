import { languageOf } from '#parsers';
import type { Language } from '#records';
import type { Book, Incoming, Person } from './ports.ts';

/** Under what a person's language of late is remembered: `B 41` tells none. */
export const spokenKey = (person: number): string => `spoken:${person}`;

/**
 * In which language somebody is answered: the one they chose; else that of the message; else that of what they
 * wrote before; else the one their device speaks; else the site's first.
 */
export function languageFor(
  book: Book,
  incoming: Incoming,
  person: Person | null,
  siteLanguages: readonly Language[],
): Language {
  if (person?.language) return person.language;
  const written = languageOf(incoming.text);
  if (written) return written;
  const before = person ? book.memo<Language>(incoming.site, spokenKey(person.id)) : null;
  return before ?? incoming.sender.language ?? siteLanguages[0] ?? 'en';
}

/** Keeps which language somebody wrote in, for their messages that hold only figures. */
export function rememberSpoken(book: Book, incoming: Incoming, person: Person | null): void {
  const written = person ? languageOf(incoming.text) : null;
  if (!person || !written) return;
  const key = spokenKey(person.id);
  if (book.memo(incoming.site, key) !== written) book.setMemo(incoming.site, key, written);
}
