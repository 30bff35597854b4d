import { LANGUAGES, type Language, type Request } from '#records';
import type { Draft } from '../draft.ts';
import { spokenKey } from '../language.ts';
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
  draft.book.forgetPerson(draft.person.id);
  draft.book.setMemo(draft.siteId, spokenKey(draft.person.id), null);
}

/** A coordinator makes another one, as a reply to one of their messages. */
export function role(draft: Draft): void {
  const { replyTo, channel, chat } = draft.incoming;
  if (!draft.mayDecide) {
    draft.lines.push(say('coordinators-only'));
    return;
  }
  const message =
    replyTo && 'message' in replyTo
      ? draft.book.messageHistory(draft.siteId, channel, chat, replyTo.message)[0]
      : undefined;
  const person = message?.person ? draft.book.personById(message.person) : null;
  if (!person) {
    draft.lines.push(say('role-whom'));
    return;
  }
  draft.book.changePerson(person.id, { coordinator: true });
  draft.lines.push(say('role-given', { who: { text: person.name } }));
}
