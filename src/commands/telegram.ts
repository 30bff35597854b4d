import { pino } from 'pino';
import type { Assistant, Words } from '#assistant';
import { isWebhookSecret, startTelegram, type TelegramEnd, type WebhookOptions } from '#channels/telegram';
import type { OpenedBook } from '#logbook';
import { draws } from './drawing.ts';
import { paperMaker } from './making.ts';
import { Problem } from './problem.ts';

export type OverTelegram = {
  claimWord: string | null;
  ready: Promise<void>;
  /** Rejects where the channel ended by itself: with one plain line for whoever runs the program. */
  ended: Promise<void>;
  stop(): Promise<void>;
};

const TROUBLE: Record<Exclude<TelegramEnd['why'], 'stopped'>, string> = {
  conflict: 'another program is connected with the same BOT_TOKEN; stop that one first',
  'wrong-token': 'BOT_TOKEN is not accepted: copy it again, whole',
  failed: 'the connection to the messenger has ended for a reason not known; start again',
  'cannot-save': 'the log book could not be written; messages wait at the messenger until it can',
};

/** The same conversation over Telegram, as the environment asks for it. */
export function overTelegram(parts: {
  token: string;
  environment: NodeJS.ProcessEnv;
  book: OpenedBook;
  assistant: Assistant;
  words: Words;
  site: number;
}): OverTelegram {
  const { token, environment, book, assistant, words, site } = parts;
  const telegram = startTelegram({
    token,
    ...(environment.BOT_API_ROOT ? { apiRoot: environment.BOT_API_ROOT.replace(/\/+$/, '') } : {}),
    limits: environment.BOT_LIMITS !== 'off',
    book,
    receive: assistant.receive,
    words,
    draw: draws,
    make: paperMaker(book).bytes,
    log: pino({ level: environment.LOG_LEVEL ?? 'warn' }, pino.destination({ dest: 2, sync: true })),
    site,
    ...webhookOf(environment),
    ...(environment.CLAIM_WORD ? { claimWord: environment.CLAIM_WORD } : {}),
  });
  return {
    claimWord: telegram.claimWord,
    ready: telegram.ready,
    ended: telegram.done.then((end) => {
      if (end.why !== 'stopped') throw new Problem(TROUBLE[end.why], 3);
    }),
    stop: telegram.stop,
  };
}

/** BOT_WEBHOOK_URL turns posting on; without a secret anybody could post to it in the messenger's name. */
function webhookOf(environment: NodeJS.ProcessEnv): { webhook?: WebhookOptions } {
  const url = environment.BOT_WEBHOOK_URL;
  if (!url) return {};
  const secret = environment.BOT_WEBHOOK_SECRET ?? '';
  const port = Number(environment.BOT_WEBHOOK_PORT ?? 8443);
  if (!URL.canParse(url)) throw new Problem('BOT_WEBHOOK_URL is not an address');
  if (!isWebhookSecret(secret))
    throw new Problem('BOT_WEBHOOK_SECRET must be 16 to 256 letters, digits, "_" or "-"');
  if (!Number.isInteger(port) || port < 0 || port > 65_535)
    throw new Problem('BOT_WEBHOOK_PORT must be a port number');
  return { webhook: { url, secret, port, host: environment.BOT_WEBHOOK_HOST ?? '127.0.0.1' } };
}
