import { createServer } from 'node:net';
import { expect, test } from 'vitest';
import { crew, texts } from './kit.ts';

const SECRET_WORDS = 'the goat is loose';

/** Updates that no messenger sends, each with words that must not be in a log. */
const nonsense = (chat: object, from: object): Record<string, unknown>[] => {
  const good = { message_id: 900, date: 1_790_000_000, chat, from, text: SECRET_WORDS };
  const without = (field: string) => ({ message: { ...good, [field]: undefined } });
  const withIn = (change: object) => ({ message: { ...good, ...change } });
  return [
    withIn({ text: 61.5, caption: SECRET_WORDS }),
    withIn({ text: [SECRET_WORDS] }),
    withIn({ text: null, caption: SECRET_WORDS }),
    without('chat'),
    withIn({ chat: null }),
    withIn({ chat: { id: '7', type: 'group', title: SECRET_WORDS } }),
    without('message_id'),
    withIn({ message_id: SECRET_WORDS }),
    withIn({ date: 'yesterday' }),
    withIn({ date: 1e300 }),
    withIn({ from: SECRET_WORDS }),
    withIn({ from: { ...from, first_name: { deep: [SECRET_WORDS] } } }),
    withIn({ photo: {} }),
    withIn({ photo: [null] }),
    withIn({ location: { latitude: SECRET_WORDS, longitude: null } }),
    withIn({ new_chat_members: [{ id: {} }] }),
    withIn({ reply_to_message: SECRET_WORDS }),
    withIn({ migrate_to_chat_id: SECRET_WORDS }),
    withIn({ media_group_id: [[[]]] }),
    { message: SECRET_WORDS },
    { message: [] },
    { edited_message: { ...good, edit_date: SECRET_WORDS } },
    { callback_query: { id: 9, from, data: SECRET_WORDS } },
    { callback_query: { id: 'x', from: null, data: SECRET_WORDS } },
    { callback_query: { id: 'x', from, data: { a: SECRET_WORDS } } },
    { my_chat_member: { chat, new_chat_member: null } },
    { my_chat_member: { chat: SECRET_WORDS, new_chat_member: { status: 'left' } } },
  ];
};
const passedOver = (logged: string[]): number => logged.filter((line) => line.includes('passed over')).length;

test('an update that is not of the shape is passed over and confirmed, and the next one is answered', async () => {
  const { server, book, site, group, ana, ben, quiet, logged, start: _, ...rest } = await crew();
  const odd = nonsense(group, ben);
  for (const one of odd) server.updates.push(one as never);
  server.say(group, ben, 'cart 61.5');
  await server.until('answered', () => texts(server, group).length === 1);
  await quiet();
  expect(texts(server, group)).toEqual(['#1 61.5 kg']);
  expect(passedOver(logged)).toBe(odd.length);
  expect(logged.join('')).not.toContain('goat');
  expect(book.lastNumber(site)).toBe(1);
  expect(server.updates.pending()).toEqual([]);
  server.say(group, ana, 'cart 62.5');
  await server.until('answered again', () => texts(server, group).length === 2);
  expect(await Promise.race([rest.telegram.done, 'still running'])).toBe('still running');
});

test('an answer that is no list, and updates without a number, do not end the channel', async () => {
  const { server, group, ben, telegram, logged } = await crew();
  const listen = server.updates.listen;
  const answers: unknown[] = [null, { a: 1 }, [null, 7, 'x', {}, { update_id: 'x' }]];
  server.updates.listen = async (...given) => {
    const result = await listen(...given);
    return result === 'conflict' || answers.length === 0 ? result : (answers.shift() as typeof result);
  };
  // The call that waits already is answered as it should be; what the next ones give is never confirmed.
  server.say(group, ben, 'cart 61.5');
  await server.until('answered', () => texts(server, group).length === 1);
  server.say(group, ben, 'cart 62.5');
  await server.until('answered again', () => texts(server, group).length === 2, 20_000);
  expect(answers).toEqual([]);
  expect(logged.filter((line) => line.includes('call for updates')).length).toBe(3);
  expect(await Promise.race([telegram.done, 'still running'])).toBe('still running');
});

test('posted updates that are not of the shape are answered, so that they do not come again', async () => {
  const port = await new Promise<number>((done) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const { port } = server.address() as { port: number };
      server.close(() => done(port));
    });
  });
  const secret = 'a-secret-of-the-webhook';
  const url = `http://127.0.0.1:${port}/updates`;
  const { server, group, ben, logged } = await crew({ channel: { webhook: { url, secret, port } } });
  const headers = { 'x-telegram-bot-api-secret-token': secret };
  const odd = nonsense(group, ben);
  for (const [at, one] of odd.entries()) {
    const body = JSON.stringify({ update_id: 9000 + at, ...one });
    expect((await fetch(url, { method: 'POST', body, headers })).status).toBe(200);
  }
  expect(passedOver(logged)).toBe(odd.length);
  expect(logged.join('')).not.toContain('goat');
  server.say(group, ben, 'cart 61.5');
  await server.until('answered', () => texts(server, group).length === 1);
});
