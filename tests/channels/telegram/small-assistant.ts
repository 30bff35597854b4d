import type { Incoming, Line, OutgoingRow, Words } from '#assistant';
import type { OpenedBook } from '#logbook';

/** Says the name of each text instead of the text: what is tested is that it is said, where and once. */
export const plainWords: Words = {
  text: (lines: Line[]) =>
    lines
      .flat()
      .map((one) => one.id)
      .join('\n'),
  label: (say) => say.id,
};

export type Reply = Partial<Pick<OutgoingRow, 'text' | 'choices' | 'picture' | 'file' | 'about' | 'private'>>;

/**
 * A small assistant: each message once; a weight makes a line and is answered with its number and a button, `say …`
 * is answered with what follows, anything else is talk.
 */
export const smallAssistant = (
  book: OpenedBook,
  replies: (incoming: Incoming) => Reply | null = () => null,
) => {
  const received: Incoming[] = [];
  const receive = (incoming: Incoming): void => {
    const { site, channel, chat, thread, message, edit } = incoming;
    if (book.message(site, channel, chat, message, edit)) return;
    received.push(incoming);
    book.write(() => {
      const { id, name, coordinator } = incoming.sender;
      const person = id === null ? null : book.person(site, channel, id, name);
      if (person && coordinator) book.changePerson(person.id, { coordinator });
      const stored = book.saveMessage(incoming, person?.id ?? null, 'done');
      const weight = /cart (\d+(?:\.\d+)?)/.exec(incoming.text);
      const said = /^say (.*)$/s.exec(incoming.text);
      let reply: Reply | null = replies(incoming);
      if (weight) {
        const [entry] = book.append(
          site,
          [
            {
              happenedAt: incoming.sentAt,
              localDate: incoming.sentAt.slice(0, 10),
              receivedAt: incoming.receivedAt,
              person: person?.id ?? null,
              record: { kind: 'weigh-in', material: 'food-scraps', count: 1, kg: Number(weight[1]) },
              typed: weight[1]!,
              assumed: [],
              held: null,
              voids: [],
              pictures: incoming.pictures,
            },
          ],
          stored.id,
        );
        const undo = { label: 'Undo', act: { do: 'undo' as const, entries: [entry!.number] } };
        reply ??= { text: `#${entry!.number} ${weight[1]} kg`, choices: [undo] };
      }
      if (said) reply ??= { text: said[1]! };
      if (incoming.choose) reply ??= { text: `pressed ${incoming.choose.index}` };
      if (!reply) return;
      book.putOut({
        site,
        channel,
        chat,
        thread,
        answers: message,
        message: stored.id,
        about: null,
        weekFrom: null,
        private: false,
        createdAt: incoming.receivedAt,
        text: '',
        choices: [],
        picture: null,
        file: null,
        ...reply,
      });
    });
  };
  return { receive, received };
};
