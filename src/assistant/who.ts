import type { Book } from './ports.ts';
import { type Arg, say } from './say.ts';

/** How somebody is named: by name, or by their number once it was forgotten. */
export function whoIs(book: Book, person: number): Arg {
  const name = book.personById(person)?.name;
  return name ? { text: name } : { say: say('person-numbered', { number: { count: person } }) };
}
