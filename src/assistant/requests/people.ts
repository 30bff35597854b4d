import { LANGUAGES, type Language, type Request } from '#records';
import type { Draft } from '../draft.ts';
import { spokenKey } from '../language.ts';
import type { Person } from '../ports.ts';
import { repliedEntries } from '../questions.ts';
import { say } from '../say.ts';

/** `french please`: how this person is spoken to from now on. */
export function language(draft: Draft, request: Request): void {
  const to = String(request.to ?? '') as Language;
  if (!LANGUAGES.includes(to) || !draft.person) {
    draft.lines.push(say('language-unknown'));
    return;
  }
  draft.book.changePerson(draft.person.id, { language: to });
  draft.manner.language = to;
  draft.lines.push(say('language-set'));
}

/** Removes the name and the raw messages; the lines stay under a number, and the reply says why. */
export function forgetMe(draft: Draft): void {
  if (!draft.person) return;
  draft.lines.push(say('forgotten', { number: { count: draft.person.id } }));
  draft.forgotten = draft.book.forgetPerson(draft.person.id);
  draft.book.setMemo(draft.siteId, spokenKey(draft.person.id), null);
}

/** A coordinator makes another one: as an answer to a message of theirs (or to ours to it), or by a button with the name. */
export function role(draft: Draft, request: Request): void {
  const isPress = typeof request.person === 'number';
  if (!isPress && !MAKES.test(request.said ?? '')) {
    tellCoordinators(draft);
    return;
  }
  if (!draft.mayDecide) {
    draft.lines.push(say('coordinators-only'));
    return;
  }
  const person = isPress ? personOfSite(draft, request.person as number) : answeredPerson(draft);
  if (!person) {
    draft.lines.push(say('role-whom'));
    draft.choices.push(
      ...mayBecome(draft).map((each) => ({
        say: say('button-name', { who: { text: each.name } }),
        act: { do: 'ask' as const, request: { request: 'role', person: each.id } },
      })),
    );
    return;
  }
  const who = { text: person.name };
  draft.lines.push(say(person.coordinator ? 'role-had' : 'role-given', { who }));
  draft.book.changePerson(person.id, { coordinator: true });
}

const SHOWN_NAMES = 8;

/** To name somebody is asked for in so many words: `who is coordinator?` and `I am the coordinator` change nothing. */
const MAKES = /(?<!\p{L})(?:make|add|set|nomme|fais|haz|nombra)/iu;

function tellCoordinators(draft: Draft): void {
  const names = draft.book
    .people(draft.siteId)
    .filter((each) => each.coordinator && each.name !== '')
    .map((each) => each.name);
  draft.lines.push(names.length > 0 ? say('role-who', { list: { names } }) : say('role-nobody'));
}

const personOfSite = (draft: Draft, id: number): Person | null =>
  draft.book.people(draft.siteId).find((each) => each.id === id && each.name !== '') ?? null;

const mayBecome = (draft: Draft): Person[] =>
  draft.book
    .people(draft.siteId)
    .filter((each) => each.name !== '' && !each.coordinator)
    .slice(-SHOWN_NAMES);

/** Whose message is answered; of an answer of ours, whose lines it told of. */
function answeredPerson(draft: Draft): Person | null {
  const { replyTo, channel, chat } = draft.incoming;
  if (!replyTo) return null;
  const id =
    'message' in replyTo
      ? draft.book.messageHistory(draft.siteId, channel, chat, replyTo.message)[0]?.person
      : draft.book.entry(draft.siteId, repliedEntries(draft)[0] ?? 0)?.person;
  return id == null ? null : personOfSite(draft, id);
}
