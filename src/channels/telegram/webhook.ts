import { timingSafeEqual } from 'node:crypto';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Update } from 'grammy/types';

/** Where the messenger is to post, and the secret by which its posts are told from forged ones. */
export type WebhookOptions = { url: string; secret: string; port: number; host?: string };

const SECRET_HEADER = 'x-telegram-bot-api-secret-token';
/** An update is a few kilobytes; a larger body is not one. */
const MAX_BYTES = 1_000_000;

/** The messenger takes these signs in a secret, and so many. */
export const isWebhookSecret = (secret: string): boolean => /^[A-Za-z0-9_-]{16,256}$/.test(secret);

/**
 * Listens for posted updates. Each is saved before it is answered, so that the messenger posts again what was not;
 * `take` comes back at once, for nothing is asked over the network meanwhile.
 */
export const listenForUpdates = async (
  options: WebhookOptions,
  take: (update: Update) => 'saved' | 'not-saved',
): Promise<{ port: number; close(): Promise<void> }> => {
  const path = new URL(options.url).pathname;
  const wanted = Buffer.from(options.secret);
  const isOurs = (request: IncomingMessage): boolean => {
    const given = Buffer.from(String(request.headers[SECRET_HEADER] ?? ''));
    return given.length === wanted.length && timingSafeEqual(given, wanted);
  };
  const answer = (response: ServerResponse, code: number): void => {
    response.writeHead(code, { connection: code === 200 ? 'keep-alive' : 'close' });
    response.end();
  };
  const server = createServer((request, response) => {
    if (request.method !== 'POST' || request.url?.split('?')[0] !== path) return answer(response, 404);
    if (!isOurs(request)) return answer(response, 401);
    const chunks: Buffer[] = [];
    let bytes = 0;
    request.on('data', (chunk: Buffer) => {
      bytes += chunk.length;
      if (bytes <= MAX_BYTES) chunks.push(chunk);
      else request.destroy();
    });
    request.on('end', () => {
      const update = updateOf(Buffer.concat(chunks).toString('utf8'));
      if (!update) return answer(response, 400);
      answer(response, take(update) === 'saved' ? 200 : 503);
    });
  });
  server.requestTimeout = 10_000;
  await new Promise<void>((done, fail) => {
    server.once('error', fail);
    server.listen(options.port, options.host ?? '127.0.0.1', done);
  });
  return {
    port: (server.address() as AddressInfo).port,
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeIdleConnections();
        setTimeout(() => server.closeAllConnections(), 1000).unref();
      }),
  };
};

const updateOf = (text: string): Update | null => {
  try {
    const update = JSON.parse(text) as Update;
    return typeof update?.update_id === 'number' ? update : null;
  } catch {
    return null;
  }
};
