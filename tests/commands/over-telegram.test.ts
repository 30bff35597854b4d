import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { join, resolve } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { openBook } from '#logbook';
import { folder } from '../logbook/samples.ts';
import { type StandIn, startStandIn } from '../stand-in/index.ts';

const ROOT = resolve(import.meta.dirname, '../..');

/** The program as it is started on a site, with what it wrote. */
const started = (server: StandIn, path: string, environment: Record<string, string> = {}) => {
  const child: ChildProcess = spawn(
    process.execPath,
    ['--import', 'tsx', 'src/main.ts', 'start', '--db', path],
    {
      cwd: ROOT,
      stdio: ['ignore', 'pipe', 'pipe'],
      env: {
        ...process.env,
        BOT_TOKEN: server.token,
        BOT_API_ROOT: server.root,
        BOT_LIMITS: 'off',
        CLAIM_WORD: 'heron-lamp',
        ...environment,
      },
    },
  );
  let out = '';
  let errors = '';
  child.stdout!.on('data', (chunk) => {
    out += chunk;
  });
  child.stderr!.on('data', (chunk) => {
    errors += chunk;
  });
  const ended = once(child, 'exit').then(([code]) => code as number | null);
  onTestFinished(() => void child.kill('SIGKILL'));
  return { child, out: () => out, errors: () => errors, ended };
};

const standIn = async (): Promise<StandIn> => {
  const server = await startStandIn();
  onTestFinished(() => server.close());
  return server;
};

const isReady = (out: string): boolean => /^ready/m.test(out);

test('a group is let in, a cart is logged with its number and a button that takes it back, and an end is asked for', async () => {
  const server = await standIn();
  const path = join(folder(), 'site.db');
  const program = started(server, path);
  await server.until('ready', () => isReady(program.out()), 15_000);
  expect(program.out()).toContain('/start heron-lamp');
  const ana = server.someone('Ana', { last_name: 'Ruiz' });
  const group = server.group('Ferry Lane', ana);
  server.say(group, ana, '/start heron-lamp');
  expect((await server.sentTo(group)).text).toContain('My compost site');
  const said = server.say(group, ana, 'cart 61.5 kg');
  const reply = await server.sentTo(group, 1);
  expect(reply.text).toMatch(/^#1 /);
  expect(reply.payload.reply_parameters).toMatchObject({ message_id: said.message_id });
  const labels = (
    reply.message.reply_markup as { inline_keyboard: { text: string }[][] }
  ).inline_keyboard.flat();
  expect(labels.map((button) => button.text)).toContain('Undo');
  server.press(reply.message, 'Undo', ana);
  expect((await server.sentTo(group, 2)).text).toMatch(/#1/);
  server.say(group, ana, 'who is bringing coffee');
  server.photo(group, ana, { caption: 'cart 58 kg' });
  expect((await server.sentTo(group, 3)).text).toMatch(/^#3 /);
  server.say(group, ana, 'show #3');
  const kept = await server.sentTo(group, 5);
  expect(kept.method).toBe('sendPhoto');
  server.location(group, ana, 45.25, -66.06);
  expect((await server.sentTo(group, 6)).text).toContain('45.2500, -66.0600');
  await server.settled();
  program.child.kill('SIGTERM');
  program.child.kill('SIGTERM');
  expect(await program.ended).toBe(0);
  expect(program.errors()).toBe('');
  const book = openBook(path, { readOnly: true, now: () => '' });
  expect(book.picturesOf(1, 3)).toEqual([kept.payload.photo]);
  expect(book.latest(1, 9).map(({ record, voidedBy }) => [record.kind, voidedBy])).toEqual([
    ['setting', null],
    ['weigh-in', null],
    ['void', null],
    ['weigh-in', 2],
  ]);
  expect(book.people(1).map(({ name, coordinator }) => [name, coordinator])).toEqual([['Ana Ruiz', true]]);
  book.close();
  expect(server.textsTo(group)).toHaveLength(7);
}, 40_000);

test('the book goes out as a file in the chat, for a coordinator alone', async () => {
  const server = await standIn();
  const path = join(folder(), 'site.db');
  const program = started(server, path);
  await server.until('ready', () => isReady(program.out()), 15_000);
  const ana = server.someone('Ana');
  const ben = server.someone('Ben');
  const group = server.group('Ferry Lane', ana);
  server.say(group, ana, '/start heron-lamp');
  server.say(group, ana, 'cart 61.5 kg');
  server.say(group, ben, 'export csv');
  await server.until('refused', () => server.textsTo(group).some((text) => text.startsWith('Only a')));
  server.say(group, ana, 'export csv');
  server.say(group, ana, 'report');
  const documents = () => server.world.sent.filter((sent) => sent.method === 'sendDocument');
  await server.until('two files', () => documents().length === 2, 60_000);
  const files = documents().map(({ file }) => [file?.name, file?.bytes.toString('latin1').slice(0, 4)]);
  expect(files).toEqual([
    [expect.stringMatching(/^my-compost-site-.*\.zip$/), 'PK\u0003\u0004'],
    [expect.stringMatching(/^my-compost-site-.*\.pdf$/), '%PDF'],
  ]);
  program.child.kill('SIGTERM');
  expect(await program.ended).toBe(0);
  expect(program.errors()).toBe('');
}, 120_000);

test('a second listener and a wrong token end it with a code and one line, without the token', async () => {
  const server = await standIn();
  const one = started(server, join(folder(), 'one.db'));
  await server.until('listening', server.updates.listening, 15_000);
  server.updates.conflict();
  expect(await one.ended).toBeGreaterThan(0);
  expect(one.errors()).toMatch(/^heaphand: another program .*\n$/);
  const two = started(server, join(folder(), 'two.db'), { BOT_TOKEN: '123:wrong' });
  expect(await two.ended).toBeGreaterThan(0);
  expect(two.errors()).toMatch(/^heaphand: BOT_TOKEN is not accepted.*\n$/);
  expect(two.errors()).not.toContain('123:wrong');
}, 40_000);

test('with sends paced and many of them still waiting, an end that is asked for comes within ten seconds', async () => {
  const server = await standIn();
  const path = join(folder(), 'site.db');
  const program = started(server, path, { BOT_LIMITS: 'on' });
  await server.until('ready', () => isReady(program.out()), 15_000);
  const ana = server.someone('Ana');
  const group = server.group('Ferry Lane', ana);
  server.say(group, ana, 'heron-lamp');
  for (let kg = 40; kg < 70; kg += 1) server.say(group, ana, `cart ${kg} kg`);
  await server.settled();
  await server.sentTo(group, 1);
  const asked = Date.now();
  program.child.kill('SIGTERM');
  expect(await program.ended).toBe(0);
  // The bound is the promise to whoever runs it, not a measure of speed.
  expect(Date.now() - asked).toBeLessThan(10_000);
  const book = openBook(path, { readOnly: true, now: () => '' });
  expect(book.lastNumber(1)).toBe(30);
  expect(book.waiting('telegram', 99).length).toBeGreaterThan(20);
  book.close();
}, 60_000);
