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
  names: readonly string[] = [],
): Language {
  if (person?.language) return person.language;
  const written = languageOf(withoutNames(incoming.text, names));
  if (written) return written;
  const before = person ? book.memo<Language>(incoming.site, spokenKey(person.id)) : null;
  return before ?? incoming.sender.language ?? siteLanguages[0] ?? 'en';
}

/** `¿qué le digo a east kitchen?`: what the site calls its kitchens tells nothing of who asks. */
function withoutNames(text: string, names: readonly string[]): string {
  let rest = text.toLowerCase();
  for (const name of names) rest = rest.replaceAll(name.toLowerCase(), ' ');
  return rest;
}

/** Keeps which language somebody wrote in, for their messages that hold only figures. */
export function rememberSpoken(
  book: Book,
  incoming: Incoming,
  person: Person | null,
  names: readonly string[] = [],
): void {
  const written = person ? languageOf(withoutNames(incoming.text, names)) : null;
  if (!person || !written) return;
  const key = spokenKey(person.id);
  if (book.memo(incoming.site, key) !== written) book.setMemo(incoming.site, key, written);
}
