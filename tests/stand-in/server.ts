import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { readBody } from './body.ts';
import { type Fault, faultPlan, spoil, takesEffect } from './faults.ts';
import { isRefusal, methods } from './methods.ts';
import { people } from './people.ts';
import { updateQueue } from './updates.ts';
import { emptyWorld, type Sent } from './world.ts';

const TOKEN = '4242:stand-in-token-for-tests-0123456789abc';

/** Starts a Bot API server of one bot on a free port of loopback. */
export const startStandIn = async (options: { canReadAll?: boolean; firstUpdateId?: number } = {}) => {
  const world = emptyWorld(TOKEN, options.canReadAll ?? true);
  const updates = updateQueue(world, options.firstUpdateId ?? 500);
  const faults = faultPlan();
  const watchers = new Set<() => void>();
  const changed = (): void => {
    for (const watcher of [...watchers]) watcher();
  };

  const answerOf = async (
    method: string,
    request: IncomingMessage,
    response: ServerResponse,
  ): Promise<void> => {
    const body = await readBody(request);
    world.calls.push({ method, payload: body.fields });
    const fault = faults.next(method, body.fields);
    if (fault && !takesEffect(fault)) return spoil(fault, response, '');
    const reply = (code: number, value: unknown): void => {
      const text = JSON.stringify(value);
      if (fault) {
        void spoil(fault, response, text).finally(changed);
        return;
      }
      response.writeHead(code, { 'content-type': 'application/json' });
      response.end(text);
    };
    const refuse = (code: number, description: string, parameters?: object): void =>
      reply(code, { ok: false, error_code: code, description, ...(parameters ? { parameters } : {}) });

    if (method === 'getUpdates') {
      if (world.webhook) return refuse(409, "Conflict: can't use getUpdates method while webhook is active");
      const gone = new AbortController();
      response.on('close', () => gone.abort());
      const listening = updates.listen(body.fields, gone.signal);
      changed();
      const result = await listening;
      if (result === 'conflict')
        return refuse(
          409,
          'Conflict: terminated by other getUpdates request; make sure that only one bot instance is running',
        );
      return reply(200, { ok: true, result });
    }
    const act = methods[method];
    if (!act) return refuse(404, 'Not Found: method not found');
    const result = act(world, body);
    if (isRefusal(result)) return refuse(result.code, result.description, result.parameters);
    reply(200, { ok: true, result });
  };

  const server = createServer((request, response) => {
    const path = request.url ?? '';
    const file = /^\/file\/bot([^/]+)\/files\/([^?]+)/.exec(path);
    if (file) {
      const bytes = file[1] === TOKEN ? world.files.get(file[2]!) : undefined;
      response.writeHead(bytes ? 200 : 404);
      response.end(bytes);
      return;
    }
    const called = /^\/bot([^/]+)\/(\w+)/.exec(path);
    if (called?.[1] !== TOKEN) {
      response.writeHead(401, { 'content-type': 'application/json' });
      response.end(JSON.stringify({ ok: false, error_code: 401, description: 'Unauthorized' }));
      return;
    }
    answerOf(called[2]!, request, response).then(changed, (error) => {
      response.writeHead(500, { 'content-type': 'application/json' });
      response.end(JSON.stringify({ ok: false, error_code: 500, description: String(error) }));
    });
  });
  const listen = (port: number): Promise<void> =>
    new Promise((done) => server.listen(port, '127.0.0.1', done));
  await listen(0);
  const { port } = server.address() as AddressInfo;

  /** Waits until something is so; says what was seen instead when it never is. */
  const until = <T>(what: string, found: () => T | undefined | null | false, withinMs = 8000): Promise<T> =>
    new Promise((done, fail) => {
      const look = (): void => {
        const value = found();
        if (value === undefined || value === null || value === false) return;
        stop();
        done(value);
      };
      const often = setInterval(look, 20);
      const late = setTimeout(() => {
        stop();
        fail(
          new Error(
            `never: ${what}; sent so far: ${JSON.stringify(world.sent.map((one) => one.text).slice(-30))}`,
          ),
        );
      }, withinMs);
      const stop = (): void => {
        clearInterval(often);
        clearTimeout(late);
        watchers.delete(look);
      };
      watchers.add(look);
      look();
    });
  const cut = (): void => {
    updates.stop();
    server.closeAllConnections();
  };

  return {
    root: `http://127.0.0.1:${port}`,
    token: TOKEN,
    world,
    updates,
    ...people(world, updates.push),
    fail: (method: string, fault: Fault, more: { times?: number; chat?: number } = {}): void =>
      faults.plan(method, fault, more),
    noMoreFaults: faults.clear,
    until,
    /** The n-th message sent to a chat, once it is there. */
    sentTo: (chat: { id: number }, index = 0): Promise<Sent> =>
      until(`message ${index} to ${chat.id}`, () => world.sent.filter((one) => one.chat === chat.id)[index]),
    textsTo: (chat: { id: number }): string[] =>
      world.sent.filter((one) => one.chat === chat.id).map((one) => one.text),
    /** All that people did has been fetched and confirmed. */
    settled: (): Promise<boolean> => until('all updates confirmed', () => updates.pending().length === 0),
    /** No network: the port is closed until `back`. */
    gone: async (): Promise<void> => {
      const closed = new Promise((done) => server.close(done));
      cut();
      await closed;
    },
    back: (): Promise<void> => listen(port),
    close: async (): Promise<void> => {
      if (!server.listening) return;
      const closed = new Promise((done) => server.close(done));
      cut();
      await closed;
    },
  };
};

export type StandIn = Awaited<ReturnType<typeof startStandIn>>;
