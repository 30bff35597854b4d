import { expect, test } from 'vitest';
import type { NewOutgoing } from '#assistant';
import { cutText, piecesOf } from '../../../src/channels/telegram/pieces.ts';
import { ALLOWED_UPDATES } from '../../../src/channels/telegram/start.ts';
import { type Crew, crew, texts, WORD } from './kit.ts';

const row = (one: Pick<Crew, 'site' | 'group'>, change: Partial<NewOutgoing>): NewOutgoing => ({
  site: one.site,
  channel: 'telegram',
  chat: String(one.group.id),
  thread: null,
  answers: null,
  message: null,
  about: null,
  weekFrom: null,
  private: false,
  createdAt: new Date().toISOString(),
  text: '',
  choices: [],
  picture: null,
  file: null,
  ...change,
});

test('a text is cut at a line end, then at a space, and never inside a sign', () => {
  expect(cutText('one\ntwo\nthree', 8)).toEqual(['one\ntwo', 'three']);
  expect(cutText('one two three', 8)).toEqual(['one two', 'three']);
  expect(cutText('x'.repeat(10), 4)).toEqual(['xxxx', 'xxxx', 'xx']);
  expect(cutText('aaa🌱🌱', 4)).toEqual(['aaa', '🌱🌱']);
  const long = Array.from({ length: 400 }, (_, line) => `#${line} cart 61.5 kg net`).join('\n');
  const parts = cutText(long, 4096);
  expect(parts.every((part) => part.length <= 4096)).toBe(true);
  expect(parts.join('\n')).toBe(long);
});

test('a long answer goes out in two messages, a very long one as a file; both lead back to their row', async () => {
  const one = await crew();
  const { server, book, group, quiet } = one;
  const lines = (count: number) =>
    Array.from({ length: count }, (_, line) => `${line} cart 61.5 kg net`).join('\n');
  const choices = [{ label: 'Undo', act: { do: 'undo' as const, entries: [1] } }];
  const two = book.putOut(row(one, { text: lines(300), choices }));
  await quiet();
  const [first, second] = server.world.sent.slice(-2);
  expect(`${first?.text}\n${second?.text}`).toBe(lines(300));
  expect(first?.payload.reply_markup).toBe(undefined);
  expect(second?.payload.reply_markup).toBeDefined();
  for (const part of [first, second])
    expect(book.outgoingSentAs('telegram', String(group.id), String(part?.message.message_id))?.id).toBe(
      two.id,
    );
  book.putOut(row(one, { text: lines(3000), file: { name: 'week.csv', text: 'a,b\n1,2\n' } }));
  await quiet();
  const files = server.world.sent.filter((sent) => sent.method === 'sendDocument').map((sent) => sent.file);
  expect(files.map((file) => [file?.name, file?.bytes.toString('utf8')])).toEqual([
    ['answer.txt', lines(3000)],
    ['week.csv', 'a,b\n1,2\n'],
  ]);
});

test('a file of the book is made when it is sent, and what is said meanwhile does not wait for it', async () => {
  let finish: (bytes: Uint8Array | null) => void = () => {};
  const made = new Promise<Uint8Array | null>((resolve) => {
    finish = resolve;
  });
  const asked: unknown[] = [];
  const one = await crew({
    channel: {
      make: (file, site) => {
        asked.push([file.paper.paper, site]);
        return asked.length === 1 ? made : Promise.resolve(null);
      },
    },
  });
  const { server, book, group, quiet } = one;
  const span = { from: '2026-06-01', to: '2026-06-30', language: 'en' as const };
  const file = { name: 'june.pdf', paper: { paper: 'report' as const, ...span }, failed: 'no file' };
  book.putOut(row(one, { text: 'the report:', file }));
  book.putOut(row(one, { text: 'smoke at B' }));
  await server.until('said', () => server.textsTo(group).includes('smoke at B'));
  expect(server.textsTo(group)).toContain('the report:');
  expect(server.world.sent.some((sent) => sent.method === 'sendDocument')).toBe(false);
  finish(Uint8Array.of(37, 80, 68, 70));
  await quiet();
  const documents = server.world.sent.filter((sent) => sent.method === 'sendDocument');
  expect(documents.map((sent) => [sent.file?.name, sent.file?.bytes.toString('utf8')])).toEqual([
    ['june.pdf', '%PDF'],
  ]);
  book.putOut(row(one, { text: 'again:', file }));
  await quiet();
  expect(server.textsTo(group).slice(-2)).toEqual(['again:', 'no file']);
  expect(asked).toEqual([
    ['report', one.site],
    ['report', one.site],
  ]);
});

test('signs that mean something in markup go out as they are', async () => {
  const one = await crew();
  const { server, book, quiet } = one;
  const text = 'A <3_* logged "temp <50" & `x` [y](z) \\ #12';
  book.putOut(row(one, { text }));
  await quiet();
  expect(server.world.sent.at(-1)?.text).toBe(text);
  expect(server.world.sent.at(-1)?.payload).not.toHaveProperty('parse_mode');
});

test('a picture goes out as a photo with its words below; too many words go before it; one that cannot be drawn is told', async () => {
  const drawings: string[] = [];
  const one = await crew({
    channel: {
      draw: async ({ draw }) => {
        drawings.push(draw);
        if (draw === 'broken') throw new Error('no font');
        return Uint8Array.of(1, 2, 3);
      },
    },
  });
  const { server, book, quiet } = one;
  const picture = (draw: string) => ({ draw, alt: `what ${draw} shows`, data: {} });
  book.putOut(row(one, { text: 'Pile B: 8 over ambient', picture: picture('pile') }));
  book.putOut(row(one, { text: 'w'.repeat(1025), picture: picture('week') }));
  book.putOut(row(one, { text: 'The mix', picture: picture('broken') }));
  await quiet();
  const sent = server.world.sent
    .slice(-4)
    .map((each) => [each.method, each.text.slice(0, 30), each.file?.bytes.length]);
  expect(sent).toEqual([
    ['sendPhoto', 'Pile B: 8 over ambient', 3],
    ['sendMessage', 'w'.repeat(30), undefined],
    ['sendPhoto', 'what week shows', 3],
    ['sendMessage', 'The mix\nwhat broken shows', undefined],
  ]);
  expect(drawings).toEqual(['pile', 'week', 'broken']);
});

test('pictures kept with a line are sent back by their ids', async () => {
  const one = await crew();
  const { server, book, site, group, ben, quiet } = one;
  server.photo(group, ben, { caption: 'cart 61.5' });
  await quiet();
  const files = book.picturesOf(site, 1);
  book.putOut(row(one, { text: '#1', picture: { draw: 'kept', alt: '', data: { files } } }));
  await quiet();
  expect(server.world.sent.at(-1)).toMatchObject({ method: 'sendPhoto', payload: { photo: files[0] } });
});

test('a button holds nothing but numbers, however long its label, and stays within 64 bytes', async () => {
  const one = await crew();
  const label = 'é'.repeat(80);
  const made = one.book.putOut(row(one, { text: 'which?', choices: [{ label, act: { do: 'none' } }] }));
  const big = { ...made, id: Number.MAX_SAFE_INTEGER };
  const [piece] = piecesOf(big);
  const [[button]] = (piece as { keyboard: { callback_data: string }[][] }).keyboard as [
    [{ callback_data: string }],
  ];
  expect(button.callback_data).toBe('9007199254740991:0');
  expect(Buffer.byteLength(button.callback_data)).toBeLessThanOrEqual(64);
  await one.quiet();
  expect(one.server.world.sent.at(-1)?.text).toBe('which?');
});

test('a press is answered at once, comes with what it chose, twice is twice the same, and a query too old is no fault', async () => {
  const { server, group, ana, ben, quiet, received } = await crew();
  server.say(group, ben, 'cart 61.5');
  await quiet();
  const reply = server.world.sent.at(-1)!.message;
  const id = server.press(reply, 'Undo', ana);
  server.press(reply, 'Undo', ana);
  server.world.openQueries.delete(server.press(reply, 'Undo', ben));
  await quiet();
  expect(server.world.answered.map((one) => one.id)).toContain(id);
  const presses = received.filter((one) => one.choose);
  expect(presses.map(({ choose, sender }) => [choose, sender.name])).toEqual([
    [{ outgoing: 2, index: 0 }, 'Ana Ruiz'],
    [{ outgoing: 2, index: 0 }, 'Ana Ruiz'],
    [{ outgoing: 2, index: 0 }, 'Ben'],
  ]);
  expect(server.world.sent.at(-1)?.payload.reply_parameters).toMatchObject({ message_id: reply.message_id });
});

test('a press that is sent again under its own number is one press', async () => {
  const { server, group, ben, quiet, received } = await crew();
  server.say(group, ben, 'cart 61.5');
  await quiet();
  server.press(server.world.sent.at(-1)!.message, 'Undo', ben);
  server.updates.repeat('new-number', server.updates.pending().slice(-1));
  await quiet();
  server.updates.repeat('same-number');
  await quiet();
  expect(received.filter((one) => one.choose)).toHaveLength(1);
});

test('a button counts only where its reply went', async () => {
  const { server, book, group, ana, ben, quiet, received } = await crew();
  server.say(group, ben, 'cart 61.5');
  await quiet();
  const other = server.group('Elsewhere', ana);
  const there = { ...server.world.sent.at(-1)!.message, chat: other, message_id: 7 } as never;
  for (const data of ['2:0', '999:0', 'nonsense', '2:0:0', '']) server.press(there, 'x', ana, data);
  await quiet();
  expect(received.filter((one) => one.choose)).toEqual([]);
  expect(book.outgoing(2)?.chat).toBe(String(group.id));
});

test('what it wants to be told is listed, old messages are never thrown away, and a left-over webhook is taken down', async () => {
  const { server } = await crew({ claim: false });
  await server.until('listening', server.updates.listening);
  expect(server.updates.allowed()).toEqual([...ALLOWED_UPDATES]);
  const setUp = server.world.calls.filter((call) => call.method === 'deleteWebhook');
  expect(setUp).toHaveLength(1);
  expect(setUp[0]?.payload.drop_pending_updates ?? false).toBe(false);
});

test('with privacy on the group is told once what to do; not where the bot is an admin, and commands work meanwhile', async () => {
  const { server, group, ana, ben, telegram, start, quiet, received } = await crew({
    server: { canReadAll: false },
  });
  await server.until('told', () => server.textsTo(group).includes('telegram-cannot-hear'));
  server.say(group, ben, 'cart 61.5');
  server.say(group, ben, '/log cart 58');
  await quiet();
  // A command and an answer to us are heard meanwhile.
  server.say(group, ben, 'was 56', { replyTo: server.world.sent.at(-1)!.message });
  await quiet();
  expect(received.map(({ text }) => text)).toEqual(['cart 58', 'was 56']);
  await telegram.stop();
  await start().ready;
  server.say(group, ana, '/today');
  await quiet();
  expect(server.textsTo(group).filter((text) => text === 'telegram-cannot-hear')).toHaveLength(1);
});

test('an admin hears everything: no word of privacy', async () => {
  const { server, group, ana, ben, quiet, received } = await crew({
    server: { canReadAll: false },
    claim: false,
  });
  server.makeAdmin(group, server.world.bot);
  server.say(group, ana, `/start ${WORD}`);
  server.say(group, ben, 'cart 61.5');
  await quiet();
  await server.until('asked', () => server.world.calls.some((call) => call.method === 'getChatMember'));
  expect(received).toHaveLength(1);
  expect(server.textsTo(group)).not.toContain('telegram-cannot-hear');
});

test('menus stand in each language, the coordinators’ own for them alone', async () => {
  const { server, group, ana } = await crew();
  const key = (scope: object, language = '') => JSON.stringify([scope, language]);
  const names = (scope: object, language?: string) =>
    server.world.commands.get(key(scope, language))?.map((one) => one.command);
  const hers = { type: 'chat_member', chat_id: group.id, user_id: ana.id };
  await server.until('menus', () => names({ type: 'default' }, 'es') && names(hers));
  for (const language of ['', 'en', 'fr', 'es'])
    expect(names({ type: 'default' }, language)).toEqual([
      'today',
      'week',
      'piles',
      'mix',
      'undo',
      'log',
      'help',
    ]);
  expect(names(hers)).toEqual(expect.arrayContaining(['today', 'settings', 'share', 'here']));
  expect([...server.world.commands.keys()].filter((one) => !one.includes('default'))).toEqual([key(hers)]);
});

test('after more than a day away the group is told that messages may be missing; after an hour it is not', async () => {
  const { server, book, group, telegram, start, quiet } = await crew({ channel: { pollSeconds: 1 } });
  await quiet();
  await telegram.stop();
  const ago = (hours: number) => new Date(Date.now() - hours * 3_600_000).toISOString();
  book.setBookFact('telegram:heard', ago(1));
  const second = start();
  await second.ready;
  await server.until('heard', () => book.bookFact<string>('telegram:heard')! > ago(0.5));
  await second.stop();
  expect(server.textsTo(group)).not.toContain('telegram-gap');
  book.setBookFact('telegram:heard', ago(25));
  await start().ready;
  await server.until('told', () => server.textsTo(group).includes('telegram-gap'));
});

test('sends to one group are paced a second apart', async () => {
  const one = await crew({ channel: { limits: true } });
  const { server, book } = one;
  const at: number[] = [];
  const before = server.world.sent.length;
  for (const text of ['one', 'two', 'three']) book.putOut(row(one, { text }));
  await server.until('three', () => {
    while (at.length < server.world.sent.length - before) at.push(Date.now());
    return at.length === 3;
  });
  expect(at[1]! - at[0]!).toBeGreaterThan(800);
  expect(at[2]! - at[1]!).toBeGreaterThan(800);
});

test('logs hold neither the token nor a word of what people wrote, nor a name', async () => {
  const { server, group, ben, quiet, logged, telegram } = await crew();
  server.fail('sendMessage', { kind: 'drop' }, { times: 2 });
  server.fail('sendMessage', { kind: 'refuse', code: 400, description: 'Bad Request: zebra is not allowed' });
  server.say(group, ben, 'say zebra');
  server.say(server.direct(server.someone('Quentin')), server.someone('Quentin'), 'cart zebra');
  server.world.openQueries.delete(server.press(server.world.sent[0]!.message, 'x', ben, 'zebra'));
  await quiet();
  await telegram.stop();
  const all = logged.join('');
  expect(all).toContain('refused');
  for (const secret of [server.token, 'zebra', 'Quentin', 'Ben', 'heron', '127.0.0.1'])
    expect(all).not.toContain(secret);
  expect(texts(server, group)).toEqual([]);
});
