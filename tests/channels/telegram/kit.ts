import { pino } from 'pino';
import { onTestFinished } from 'vitest';
import type { Incoming } from '#assistant';
import { startTelegram, type Telegram, type TelegramOptions } from '#channels/telegram';
import { type OpenedBook, openBook } from '#logbook';
import { Site } from '#records';
import { type StandIn, startStandIn } from '../../stand-in/index.ts';
import { plainWords, type Reply, smallAssistant } from './small-assistant.ts';

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
      make: async () => null,
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
