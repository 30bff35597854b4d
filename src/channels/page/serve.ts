import type { Server } from 'node:http';
import { createAdaptorServer } from '@hono/node-server';
import { makeApp, type PageParts } from './app.ts';

export type Page = {
  /** `http://127.0.0.1:4173/` */
  address: string;
  close(): Promise<void>;
};

/** Nothing could be opened at the port that was asked for. */
export class PortTaken extends Error {}

const DEFAULT_PORT = 4173;
const TRIES = 30;

/** Opens the page: at the port asked for or not at all; with none asked for, at the first free one. */
export async function startPage(
  parts: PageParts & { host?: string | undefined; port?: number | undefined },
): Promise<Page> {
  const host = parts.host ?? '127.0.0.1';
  const app = makeApp(parts);
  const first = parts.port ?? DEFAULT_PORT;
  const tries = parts.port === undefined ? TRIES : 1;
  for (let port = first; port < first + tries; port += 1) {
    const server = createAdaptorServer({ fetch: app.fetch }) as Server;
    // A phone in a shed is slow; somebody who holds connections open is not to hold them for ever.
    server.requestTimeout = 30_000;
    server.headersTimeout = 15_000;
    server.maxConnections = 300;
    if (!(await listens(server, port, host))) continue;
    const bound = server.address() as { port: number };
    return {
      address: `http://${nameOf(host)}:${bound.port}/`,
      close: () =>
        new Promise((done) => {
          server.close(() => done());
          server.closeAllConnections();
        }),
    };
  }
  throw new PortTaken(`${host}:${first}`);
}

const nameOf = (host: string): string => {
  if (host === '0.0.0.0' || host === '::') return 'localhost';
  return host.includes(':') ? `[${host}]` : host;
};

const listens = (server: Server, port: number, host: string): Promise<boolean> =>
  new Promise((resolve) => {
    server.once('error', () => resolve(false));
    server.listen(port, host, () => resolve(true));
  });
