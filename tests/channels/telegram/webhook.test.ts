import { createServer } from 'node:net';
import { expect, test } from 'vitest';
import { crew, texts } from './kit.ts';

const SECRET = 'a-secret-of-the-webhook';

const freePort = (): Promise<number> =>
  new Promise((done) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const { port } = server.address() as { port: number };
      server.close(() => done(port));
    });
  });

const posted = async (change: Parameters<typeof crew>[0] = {}) => {
  const port = await freePort();
  const url = `http://127.0.0.1:${port}/updates`;
  const one = await crew({
    ...change,
    channel: { ...change.channel, webhook: { url, secret: SECRET, port } },
  });
  const post = async (body: string, headers: Record<string, string>, path = url): Promise<number> =>
    (await fetch(path, { method: 'POST', body, headers })).status;
  return { ...one, url, post };
};

const header = { 'x-telegram-bot-api-secret-token': SECRET };

test('updates that are posted are saved and answered as fetched ones are', async () => {
  const { server, book, site, group, ben } = await posted();
  server.say(group, ben, 'cart 61.5');
  await server.until('answered', () => texts(server, group).length === 1);
  expect(texts(server, group)).toEqual(['#1 61.5 kg']);
  expect(book.lastNumber(site)).toBe(1);
  expect(server.world.webhook?.secret).toBe(SECRET);
  expect(server.world.calls.some((call) => call.method === 'getUpdates')).toBe(false);
});

test('posted again because the answer was slow: one line', async () => {
  const { server, book, site, group, ben, post } = await posted();
  const message = server.say(group, ben, 'cart 61.5');
  const body = JSON.stringify({ update_id: 77, message });
  for (let time = 0; time < 3; time += 1) expect(await post(body, header)).toBe(200);
  expect(book.lastNumber(site)).toBe(1);
});

test('forged, broken and oversized posts, other paths and methods change nothing', async () => {
  const { server, book, site, group, ben, post, url } = await posted();
  const message = { message_id: 901, date: 1, chat: group, from: ben, text: 'cart 61.5' };
  const body = JSON.stringify({ update_id: 77, message });
  expect(await post(body, {})).toBe(401);
  expect(await post(body, { 'x-telegram-bot-api-secret-token': `${SECRET}x` })).toBe(401);
  expect(await post(body, header, `${url}/more`)).toBe(404);
  expect(await post('{"update_id":', header)).toBe(400);
  expect(await post('[]', header)).toBe(400);
  expect((await fetch(url, { headers: header })).status).toBe(404);
  await expect(post('x'.repeat(2_000_000), header)).rejects.toThrow();
  expect(book.lastNumber(site)).toBe(0);
  expect(await post(body, header)).toBe(200);
  expect(book.lastNumber(site)).toBe(1);
  expect(server.world.webhook?.url).toBe(url);
});

test('what could not be saved is not said to be', async () => {
  const { telegram, group, ben, post } = await posted({
    channel: {
      receive: () => {
        throw Object.assign(new Error('disk-full'), { bookProblem: 'disk-full' });
      },
    },
  });
  const message = { message_id: 901, date: 1, chat: group, from: ben, text: 'cart 61.5' };
  expect(await post(JSON.stringify({ update_id: 77, message }), header)).toBe(503);
  expect(await telegram.done).toMatchObject({ why: 'cannot-save' });
  expect(await post(JSON.stringify({ update_id: 77, message }), header)).toBe(503);
});

test('polling takes over from a webhook that was left', async () => {
  const { server, book, site, group, ben, telegram, start, quiet } = await posted();
  await telegram.stop();
  await start({ webhook: undefined }).ready;
  server.say(group, ben, 'cart 61.5');
  await quiet();
  expect(book.lastNumber(site)).toBe(1);
});
