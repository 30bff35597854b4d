import { afterEach, expect, test, vi } from 'vitest';
import { crew, texts } from './kit.ts';

afterEach(() => {
  vi.useRealTimers();
});

/** The clock of the machine, whatever is made up later: the network is real. */
const truly = setTimeout;

/** Lets a made-up hour go by in steps: after each, what the network has to say gets its turn. */
const pass = async (seconds: number, stepS = 3): Promise<void> => {
  for (let at = 0; at < seconds; at += stepS) {
    await vi.advanceTimersByTimeAsync(stepS * 1000);
    await new Promise((done) => truly(done, 4));
  }
};

test('an hour without a network loses no message and no answer, and each keeps its own moment', async () => {
  const { server, book, site, group, ana, ben, quiet, received } = await crew();
  server.say(group, ben, 'cart 40');
  await quiet();
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'Date'], now: Date.now() });
  const began = Date.now();
  // One answer is on its way when the network goes, and one message comes in each minute meanwhile.
  server.fail('sendMessage', { kind: 'drop' });
  server.say(group, ana, 'cart 41');
  await pass(3);
  await server.gone();
  const moments: string[] = [];
  for (let minute = 0; minute < 60; minute += 1) {
    const date = new Date(began + minute * 60_000);
    moments.push(`${date.toISOString().slice(0, 17)}`);
    server.say(group, minute % 2 ? ana : ben, `cart ${100 + minute}`, { date });
    await pass(60);
  }
  expect(Date.now() - began).toBeGreaterThan(3_590_000);
  expect(received.length).toBeLessThanOrEqual(2);
  await server.back();
  for (let tries = 0; tries < 200 && texts(server, group).length < 62; tries += 1) await pass(15);
  const answers = texts(server, group);
  expect(answers).toHaveLength(62);
  expect(new Set(answers).size).toBe(62);
  const lines = [...book.entriesWalk(site)];
  expect(lines.map((line) => Number(line.typed))).toEqual([
    40,
    41,
    ...Array.from({ length: 60 }, (_, minute) => 100 + minute),
  ]);
  expect(lines.slice(2).map((line) => line.happenedAt.slice(0, 17))).toEqual(moments);
  // Less than a day: the messenger has kept everything, so nobody is told that something may be missing.
  expect(server.textsTo(group)).not.toContain('telegram-gap');
  expect(book.waiting('telegram', 9)).toEqual([]);
  vi.useRealTimers();
}, 120_000);

test('twenty answers a minute go to one group and no more, however many wait', async () => {
  const one = await crew({ channel: { limits: true } });
  const { server, book, site, ana, quiet } = one;
  const group = server.group('Orchard', ana);
  book.addChat(site, 'telegram', String(group.id), 'group');
  await quiet();
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'setInterval', 'clearInterval', 'Date'] });
  for (let nth = 0; nth < 50; nth += 1)
    book.putOut({
      site,
      channel: 'telegram',
      chat: String(group.id),
      thread: null,
      answers: null,
      message: null,
      about: null,
      weekFrom: null,
      private: false,
      createdAt: new Date().toISOString(),
      text: `${nth}`,
      choices: [],
      picture: null,
      file: null,
    });
  const sent = () => server.textsTo(group).length;
  server.say(group, one.ben, 'hello');
  const byMinute: number[] = [];
  // The real network has its own pace beside the made-up clock: what left in one minute may arrive in the next.
  while (byMinute.length < 10 && sent() < 50) {
    await pass(60, 0.5);
    byMinute.push(sent());
  }
  expect(byMinute[0]).toBeGreaterThan(15);
  byMinute.forEach((count, minute) => {
    expect(count).toBeLessThanOrEqual(20 * (minute + 1));
  });
  expect(byMinute.at(-1)).toBe(50);
  vi.useRealTimers();
}, 60_000);

test('the program may be started anew while there is none', async () => {
  const { server, book, site, group, ben, telegram, start, quiet } = await crew();
  await server.gone();
  server.say(group, ben, 'cart 41');
  await telegram.stop();
  const next = start();
  server.say(group, ben, 'cart 42');
  await new Promise((done) => setTimeout(done, 100));
  await server.back();
  await next.ready;
  await quiet();
  expect([...book.entriesWalk(site)].map((line) => line.typed)).toEqual(['41', '42']);
  expect(texts(server, group)).toEqual(['#1 41 kg', '#2 42 kg']);
});
