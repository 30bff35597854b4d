import { autoRetry } from '@grammyjs/auto-retry';
import { apiThrottler } from '@grammyjs/transformer-throttler';
import { Bot, GrammyError } from 'grammy';
import type { Update } from 'grammy/types';
import type { Chat, Incoming, OutgoingRow, Person } from '#assistant';
import { makeAlbums } from './albums.ts';
import { makeClaim } from './claiming.ts';
import { makeDirect } from './direct.ts';
import { makeHandler } from './handling.ts';
import { makeHearing } from './hearing.ts';
import { makeMenus } from './menus.ts';
import { makeMoving } from './moving.ts';
import { makeNotices } from './notices.ts';
import { CHANNEL, type Telegram, type TelegramEnd, type TelegramOptions } from './options.ts';
import { kindOf, makeSender } from './sender.ts';
import { numberedOf, updateIn } from './shape.ts';
import { makeStrangers } from './strangers.ts';
import { listenForUpdates, type WebhookOptions } from './webhook.ts';

/** What the messenger shall tell us of: what is not listed here is not sent, and the list sticks on its side. */
export const ALLOWED_UPDATES = ['message', 'edited_message', 'callback_query', 'my_chat_member'] as const;

/** A wait that the messenger asks for is kept up to here; longer ones leave the chat to rest instead. */
const LONGEST_WAIT_S = 60;
const PUMP_EVERY_MS = 1000;

/**
 * Starts the channel and comes back at once, network or not. Updates are taken one by one by the client's own long
 * polling: the next call confirms only what has been saved.
 */
export const startTelegram = (options: TelegramOptions): Telegram => {
  const { book, log } = options;
  const now = options.now ?? (() => new Date());
  const pollSeconds = options.pollSeconds ?? 25;
  const bot = new Bot(options.token, {
    client: { ...(options.apiRoot ? { apiRoot: options.apiRoot } : {}), timeoutSeconds: pollSeconds + 15 },
  });
  if (options.limits) bot.api.config.use(apiThrottler());
  // Only what the messenger asks us to wait for is retried here. A send that failed otherwise waits with its chat.
  bot.api.config.use(
    autoRetry({
      maxDelaySeconds: LONGEST_WAIT_S,
      maxRetryAttempts: 3,
      rethrowHttpErrors: true,
      rethrowInternalServerErrors: true,
    }),
  );

  const ending = new AbortController();
  const { signal } = ending;
  const parts = { api: bot.api, book, log, now, signal, me: () => bot.botInfo };
  const notices = makeNotices({ book, words: options.words, now });
  const claim = makeClaim(book, options.site, options.claimWord);
  const hearing = makeHearing({ ...parts, notices });
  const menus = makeMenus({ ...parts, words: options.words, notices, site: options.site });
  const sender = makeSender({
    ...parts,
    draw: options.draw,
    make: options.make,
    moved: (from, to) => guard(() => handler.moved(from, to)),
    unreached: (row, coordinators) => guard(() => tellGroups(row, coordinators)),
    broken: (error) => broken(error),
  });

  /** The alarm itself stays out of the group: it may tell what happened to somebody. That there is one must be known. */
  const tellGroups = ({ site, chat, thread }: OutgoingRow, coordinators: Person[]): void => {
    const who = coordinators.map(({ name }) => name).join(', ');
    const args = { who: { text: who }, has: { text: who ? 'yes' : 'no' } };
    const groups = Number(chat) < 0 ? [{ chat, thread }] : groupsOf(site);
    for (const to of groups) notices.put('telegram-unreached', { site, ...to, about: 'alarm' }, args);
  };
  const groupsOf = (site: number) =>
    book
      .chats(site)
      .filter((one) => one.channel === CHANNEL && one.kind === 'group' && one.active && one.movedTo === null)
      .map(({ chat, topic }) => ({ chat, thread: topic }));

  const deliver = (incoming: Incoming): void => {
    options.receive(incoming);
    sender.kick();
  };
  const arrived = (chat: Chat): void => {
    void hearing
      .lookAt(chat)
      .then(() => menus.coordinators())
      .then(sender.kick)
      .catch(broken);
    sender.kick();
  };
  const albums = makeAlbums({
    book,
    waitMs: options.albumWaitMs ?? 700,
    deliver,
    guard: (work) => guard(work),
  });
  const handler = makeHandler({
    ...parts,
    site: options.site,
    notices,
    claim,
    direct: makeDirect(book),
    moving: makeMoving(book, now),
    strangers: makeStrangers(parts),
    albums,
    deliver,
    arrived,
  });

  let end: (how: TelegramEnd) => void = () => {};
  const done = new Promise<TelegramEnd>((resolve) => {
    end = resolve;
  });
  let began: () => void = () => {};
  const ready = new Promise<void>((resolve) => {
    began = resolve;
  });

  /** The book can not be written: nothing more is confirmed, and the messenger keeps what it has. */
  const broken = (error: unknown): void => {
    if (signal.aborted) return;
    log.error({ error: kindOf(error) }, 'the log book can not be written: the channel ends');
    ending.abort();
    clearInterval(pumping);
    end({ why: 'cannot-save', error });
  };
  const guard = (work: () => void): void => {
    try {
      work();
    } catch (error) {
      broken(error);
    }
  };

  bot.use((context) => {
    // After a fault of the book, nothing else of the batch may be taken: it would be confirmed along with the rest.
    if (signal.aborted && !stopping) throw new Error('the log book can not be written');
    sender.flush();
    handle(context.update);
    sender.kick();
  });
  bot.catch((error) => {
    throw error.error;
  });

  const handle = (raw: Update): void => {
    const read = updateIn(raw);
    if ('wrong' in read) {
      // Passed over and confirmed: kept back, it would come again for ever and everybody else's with it.
      log.warn({ wrong: read.wrong }, 'an update is not of the shape that is known and was passed over');
      return;
    }
    try {
      handler.update(read.update);
    } catch (error) {
      if (isOfTheBook(error)) throw error;
      // Our own fault in reading it: the loop goes on, or one odd message would shut everybody out for good.
      log.error({ error: kindOf(error) }, 'an update could not be dealt with');
    }
  };

  const pumping = setInterval(() => guard(sender.kick), PUMP_EVERY_MS);

  const run = async (): Promise<void> => {
    guard(() => albums.finishAll());
    const known = await reached(() => bot.api.getMe(signal as never), signal, log);
    if (!known) return;
    bot.botInfo = known;
    bot.api.config.use(async (previous, method, payload, own) => {
      const answer = await previous(method, payload, own);
      if (method !== 'getUpdates' || !answer.ok) return answer;
      if (!signal.aborted) hearing.heard();
      const { updates, without } = numberedOf(answer.result);
      if (without) {
        log.warn('an answer to the call for updates is not of the shape that is known');
        // Whoever answers so may do it again at once.
        await resting(1000, signal);
      }
      return { ...answer, result: updates as never };
    });
    if (options.webhook) return listen(options.webhook);
    await bot.start({ timeout: pollSeconds, allowed_updates: [...ALLOWED_UPDATES], onStart: opened });
  };

  const opened = (): void => {
    began();
    sender.kick();
    void menus
      .everyone()
      .then(() => menus.coordinators())
      .catch(broken);
    for (const chat of hearing.groups()) arrived(chat);
  };

  let listening: { close(): Promise<void> } | null = null;
  const listen = async (webhook: WebhookOptions): Promise<void> => {
    listening = await listenForUpdates(webhook, (update) => {
      if (signal.aborted) return 'not-saved';
      try {
        sender.flush();
        handle(update);
        sender.kick();
        return 'saved';
      } catch (error) {
        broken(error);
        return 'not-saved';
      }
    });
    const { url, secret } = webhook;
    const where = { secret_token: secret, allowed_updates: [...ALLOWED_UPDATES] };
    if (!(await reached(() => bot.api.setWebhook(url, where, signal as never), signal, log))) return;
    opened();
    // A quiet weekend brings no posts and is no gap: being here to be posted to is what counts.
    guard(hearing.heard);
    const here = setInterval(() => guard(hearing.heard), 60_000);
    await new Promise<void>((done) => signal.addEventListener('abort', () => done()));
    clearInterval(here);
  };

  let stopping: Promise<void> | null = null;
  const running = run().catch((error: unknown) => {
    if (stopping) return;
    clearInterval(pumping);
    ending.abort();
    if (error instanceof GrammyError && error.error_code === 409) return end({ why: 'conflict' });
    if (error instanceof GrammyError && (error.error_code === 401 || error.error_code === 404))
      return end({ why: 'wrong-token' });
    log.error({ error: kindOf(error) }, 'the channel has ended');
    end({ why: isOfTheBook(error) ? 'cannot-save' : 'failed', error });
  });

  const stop = async (): Promise<void> => {
    clearInterval(pumping);
    guard(() => albums.finishAll());
    // Handlers save before they return, so that what is confirmed here has been saved.
    if (bot.isRunning()) await within(2500, bot.stop());
    if (listening) await within(2500, listening.close());
    const sending = sender.stop(2000);
    ending.abort();
    await within(4000, running);
    guard(() => albums.finishAll());
    await sending;
    end({ why: 'stopped' });
  };

  return {
    claimWord: claim.word(),
    ready,
    done,
    stop: () => {
      stopping ??= stop();
      return stopping;
    },
  };
};

/** Makes a first call again until there is a network; null where the end came first. */
const reached = async <T>(
  call: () => Promise<T>,
  signal: AbortSignal,
  log: TelegramOptions['log'],
): Promise<T | null> => {
  for (let waitMs = 500; !signal.aborted; waitMs = Math.min(15_000, waitMs * 2)) {
    try {
      return await call();
    } catch (error) {
      const refused = error instanceof GrammyError && error.error_code < 500 && error.error_code !== 429;
      if (refused) throw error;
      if (!signal.aborted) log.warn({ error: kindOf(error) }, 'the messenger can not be reached');
      await resting(waitMs, signal);
    }
  }
  return null;
};

/** Waits, but not beyond the end. */
const resting = (ms: number, signal: AbortSignal): Promise<void> =>
  new Promise((done) => {
    const timer = setTimeout(done, ms);
    signal.addEventListener('abort', () => {
      clearTimeout(timer);
      done();
    });
  });

/** Faults of the file or the disk, as the log book and SQLite name them. */
const isOfTheBook = (error: unknown): boolean =>
  error instanceof Error &&
  ('bookProblem' in error || ('code' in error && String(error.code).startsWith('SQLITE')));

const within = async (ms: number, work: Promise<unknown>): Promise<void> => {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<void>((done) => {
    timer = setTimeout(done, ms);
  });
  await Promise.race([work.catch(() => {}), late]);
  clearTimeout(timer);
};

/** The chats of a site that what goes out unasked is put into. */
export const telegramHomes = (
  book: TelegramOptions['book'],
  site: number,
): { channel: string; chat: string; thread: string | null }[] =>
  book
    .chats(site)
    .filter((chat) => chat.channel === CHANNEL && chat.kind === 'group' && chat.active)
    .map(({ channel, chat, topic }) => ({ channel, chat, thread: topic }));
