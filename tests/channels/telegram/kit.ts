import { pino } from 'pino';
import { onTestFinished } from 'vitest';
import type { Incoming, Line, OutgoingRow, Words } from '#assistant';
import { startTelegram, type Telegram, type TelegramOptions } from '#channels/telegram';
import { type OpenedBook, openBook } from '#logbook';
import { Site } from '#records';
import { type StandIn, startStandIn } from '../../stand-in/index.ts';

/** Says the name of each text instead of the text: what is tested is that it is said, where and once. */
export const plainWords: Words = {
  text: (lines: Line[]) =>
    lines
      .flat()
      .map((one) => one.id)
      .join('\n'),
  label: (say) => say.id,
};

type Reply = Partial<Pick<OutgoingRow, 'text' | 'choices' | 'picture' | 'file' | 'about' | 'private'>>;

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

export type Crew = Awaited<ReturnType<typeof crew>>;

type CrewOptions = {
  server?: Parameters<typeof startStandIn>[0];
  channel?: Partial<TelegramOptions>;
  replies?: (incoming: Incoming) => Reply | null;
  book?: OpenedBook;
  claim?: boolean;
  forum?: true;
  type?: 'group' | 'supergroup';
};

export const WORD = 'heron-lamp';

/** A stand-in server, a book with one site, the channel, and (unless told not to) a group that has been let in. */
export const crew = async (options: CrewOptions = {}) => {
  const server = await startStandIn(options.server);
  const book = options.book ?? openBook(':memory:', { now: () => new Date().toISOString() });
  const now = new Date().toISOString();
  const site = (book.sites()[0] ?? book.addSite(Site.parse({ name: 'Ferry Lane', timeZone: 'UTC' }), now)).id;
  const logged: string[] = [];
  const log = pino({ level: 'debug' }, { write: (line: string) => void logged.push(line) });
  const assistant = smallAssistant(book, options.replies);
  const running: Telegram[] = [];
  const start = (change: Partial<TelegramOptions> = {}): Telegram => {
    const telegram = startTelegram({
      token: server.token,
      apiRoot: server.root,
      limits: false,
      book,
      receive: assistant.receive,
      words: plainWords,
      draw: async () => Uint8Array.of(137, 80, 78, 71),
      log,
      site,
      claimWord: WORD,
      albumWaitMs: 150,
      pollSeconds: 5,
      ...options.channel,
      ...change,
    });
    running.push(telegram);
    return telegram;
  };
  onTestFinished(async () => {
    await Promise.all(running.map((telegram) => telegram.stop()));
    await server.close();
    book.close();
  });
  const ana = server.someone('Ana', { last_name: 'Ruiz' });
  const ben = server.someone('Ben');
  const group = server.group('Ferry Lane', ana, {
    ...(options.forum ? { forum: options.forum } : {}),
    ...(options.type ? { type: options.type } : {}),
  });
  const telegram = start();
  await telegram.ready;
  if (options.claim !== false) {
    server.say(group, ana, `/start ${WORD}`);
    await server.until('let in', () => server.textsTo(group).includes('telegram-let-in'));
  }
  /** Waits until all was fetched, and what it made was sent. */
  const quiet = async (): Promise<void> => {
    await server.settled();
    await server.until('outbox empty', () => book.waiting('telegram', 1).length === 0);
  };
  return { server, book, site, ana, ben, group, telegram, start, quiet, logged, ...assistant };
};

export const texts = (server: StandIn, chat: { id: number }): string[] =>
  server.textsTo(chat).filter((text) => !text.startsWith('telegram-let-in'));
