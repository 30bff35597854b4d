import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { openBook } from '#logbook';
import { Site } from '#records';
import { folder } from '../../logbook/samples.ts';
import { startStandIn } from '../../stand-in/index.ts';
import { crew, texts } from './kit.ts';
import { plainWords } from './small-assistant.ts';

test('the same update twice, the same message under a new number, numbers that begin anew: one line each', async () => {
  const { server, book, site, group, ben, quiet } = await crew();
  server.say(group, ben, 'cart 61.5');
  const batch = server.updates.pending().slice();
  await quiet();
  server.updates.repeat('same-number', batch);
  server.updates.repeat('new-number', batch);
  await quiet();
  expect(book.lastNumber(site)).toBe(1);
  expect(texts(server, group)).toEqual(['#1 61.5 kg']);
});

test('after a quiet week the numbers of updates begin anew, lower: nothing is taken for known', async () => {
  const { server, book, site, group, ben, quiet, telegram, start } = await crew({
    server: { firstUpdateId: 900_000 },
  });
  server.say(group, ben, 'cart 61.5');
  await quiet();
  await telegram.stop();
  server.updates.restartNumbers(17);
  server.say(group, ben, 'cart 58');
  await start().ready;
  await quiet();
  expect(book.lastNumber(site)).toBe(2);
});

test('a message is in the book before the call that confirms it', async () => {
  const { server, book, site, group, ben, quiet } = await crew();
  const seen: boolean[] = [];
  const confirmed = new Set<number>();
  const said = [61, 62, 63].map((kg) => server.say(group, ben, `cart ${kg}`));
  await server.until('confirmed', () => {
    for (const one of said) {
      const waits = server.updates.pending().some((update) => update.message?.message_id === one.message_id);
      if (waits || confirmed.has(one.message_id)) continue;
      confirmed.add(one.message_id);
      seen.push(book.message(site, 'telegram', String(group.id), String(one.message_id), null) !== null);
    }
    return confirmed.size === 3;
  });
  await quiet();
  expect(seen).toEqual([true, true, true]);
});

test('where the book can not be written the channel ends, confirms nothing more, and the next start takes it up', async () => {
  let full = true;
  const box: { receive?: (incoming: never) => void } = {};
  const one = await crew({
    channel: {
      receive: (incoming) => {
        if (full && incoming.text.startsWith('cart'))
          throw Object.assign(new Error('disk-full'), { bookProblem: 'disk-full' });
        box.receive?.(incoming as never);
      },
    },
  });
  const { server, book, site, group, ben, telegram, start } = one;
  box.receive = one.receive as never;
  server.say(group, ben, 'cart 61.5');
  server.say(group, ben, 'cart 58');
  expect(await telegram.done).toMatchObject({ why: 'cannot-save', error: { bookProblem: 'disk-full' } });
  await telegram.stop();
  expect(server.updates.pending().map((update) => update.message?.text)).toEqual(['cart 61.5', 'cart 58']);
  full = false;
  await start().ready;
  await server.settled();
  await server.until('both', () => book.lastNumber(site) === 2);
  expect(book.entry(site, 1)?.typed).toBe('61.5');
});

test('where an album can not be written, nothing that comes after it is confirmed either', async () => {
  const { server, group, ben, telegram } = await crew({
    channel: {
      receive: () => {
        throw Object.assign(new Error('disk-full'), { bookProblem: 'disk-full' });
      },
    },
  });
  server.photo(group, ben, { album: 'x1', caption: 'cart 58' });
  expect(await telegram.done).toMatchObject({ why: 'cannot-save' });
  server.sticker(group, ben);
  server.say(group, ben, '/here');
  await server.until('fetched', () => !server.updates.listening());
  await new Promise((done) => setTimeout(done, 200));
  expect(server.updates.listening()).toBe(false);
  expect(server.updates.pending()).toHaveLength(2);
});

test('one message that we fail to read shuts nobody out', async () => {
  const box: { receive?: (incoming: never) => void } = {};
  const one = await crew({
    channel: {
      receive: (incoming) => {
        if (incoming.text === 'odd') throw new TypeError('ours');
        box.receive?.(incoming as never);
      },
    },
  });
  const { server, group, ben, quiet } = one;
  box.receive = one.receive as never;
  server.say(group, ben, 'odd');
  server.say(group, ben, 'cart 58');
  await quiet();
  expect(texts(server, group)).toEqual(['#1 58 kg']);
});

test('stopping: what is in hand is saved and confirmed, what came after waits, and stopping twice is stopping once', async () => {
  const { server, book, site, group, ben, telegram, start, quiet } = await crew();
  for (let kg = 40; kg < 60; kg += 1) server.say(group, ben, `cart ${kg}`);
  await server.until('some', () => book.lastNumber(site) > 0);
  const stopped = telegram.stop();
  expect(telegram.stop()).toBe(stopped);
  await stopped;
  expect(await telegram.done).toEqual({ why: 'stopped' });
  const saved = book.lastNumber(site);
  server.say(group, ben, 'cart 99');
  expect(server.updates.pending().length).toBeLessThanOrEqual(20 - saved + 1);
  await start().ready;
  await quiet();
  expect(book.lastNumber(site)).toBe(21);
});

test('stopping with no network comes back all the same', async () => {
  const { server, telegram } = await crew();
  await server.gone();
  await telegram.stop();
  expect(await telegram.done).toEqual({ why: 'stopped' });
  await server.back();
});

test('a second program with the same token, a wrong token: the channel ends and says which', async () => {
  const { server, telegram, start } = await crew();
  await server.until('listening', server.updates.listening);
  server.updates.conflict();
  expect(await telegram.done).toEqual({ why: 'conflict' });
  expect(await start({ token: '1:wrong' }).done).toEqual({ why: 'wrong-token' });
});

test('with no network at the start it waits for one', async () => {
  const { server, book, site, group, ben, telegram, start, quiet } = await crew();
  await telegram.stop();
  await server.gone();
  const late = start();
  await new Promise((done) => setTimeout(done, 50));
  await server.back();
  server.say(group, ben, 'cart 61.5');
  await late.ready;
  await quiet();
  expect(book.lastNumber(site)).toBe(1);
});

test('a network that goes and comes back loses no message and no answer', async () => {
  const { server, book, site, group, ben, quiet } = await crew();
  server.fail('sendMessage', { kind: 'drop' });
  server.say(group, ben, 'cart 61.5');
  await server.settled();
  await server.gone();
  const at = new Date(Date.now() - 3_600_000);
  server.say(group, ben, 'cart 58', { date: at });
  await server.back();
  await server.until('both answered', () => texts(server, group).length === 2, 15_000);
  await quiet();
  expect(texts(server, group)).toEqual(['#1 61.5 kg', '#2 58 kg']);
  expect(book.entry(site, 2)?.happenedAt.slice(0, 16)).toBe(at.toISOString().slice(0, 16));
});

test('an answer that went out although its receipt was lost comes again with the same number, and makes no line', async () => {
  const { server, book, site, group, ben, quiet } = await crew();
  server.fail('sendMessage', { kind: 'drop', after: true });
  server.say(group, ben, 'cart 61.5');
  await server.until('again', () => texts(server, group).length === 2);
  await quiet();
  expect(texts(server, group)).toEqual(['#1 61.5 kg', '#1 61.5 kg']);
  expect(book.lastNumber(site)).toBe(1);
});

test('half an answer, a page instead of one, an error of the server, a slow one: each is borne', async () => {
  const { server, book, site, group, ben, quiet } = await crew();
  server.fail('getUpdates', { kind: 'truncated' });
  server.fail('getUpdates', { kind: 'html' });
  server.fail('sendMessage', { kind: 'html' });
  server.fail('sendMessage', { kind: 'server-error', code: 502 });
  server.fail('sendMessage', { kind: 'slow', ms: 100 });
  server.say(group, ben, 'cart 61.5');
  await server.until('answered', () => texts(server, group).length === 1, 18_000);
  await quiet();
  expect(book.lastNumber(site)).toBe(1);
}, 25_000);

test('a wait that is asked for is kept; a longer one lets the chat rest while others are answered', async () => {
  const { server, group, ben, quiet } = await crew();
  server.fail('sendMessage', { kind: 'too-many', retryAfterS: 1 });
  server.say(group, ben, 'cart 61.5');
  await quiet();
  expect(texts(server, group)).toEqual(['#1 61.5 kg']);
  server.fail('sendMessage', { kind: 'too-many', retryAfterS: 4000 }, { chat: group.id, times: 9 });
  server.say(group, ben, 'cart 58');
  const mine = server.direct(ben);
  server.say(mine, ben, 'cart 41');
  await server.sentTo(mine);
  expect(texts(server, mine)).toEqual(['#3 41 kg']);
  expect(texts(server, group)).toEqual(['#1 61.5 kg']);
});

test('a chat that is closed to us holds up no other, keeps its data, and is quiet until it is open again', async () => {
  const { server, book, site, group, ana, ben, quiet } = await crew();
  server.say(group, ben, 'hello');
  const mine = server.direct(ben);
  server.world.kickedFrom.add(group.id);
  const before = server.world.calls.length;
  for (const text of ['one', 'two'])
    book.putOut({
      ...book.outgoing(1)!,
      chat: String(group.id),
      answers: null,
      text,
      createdAt: new Date().toISOString(),
    });
  server.say(mine, ben, 'cart 41');
  await quiet();
  expect(texts(server, mine)).toEqual(['#1 41 kg']);
  const tried = server.world.calls
    .slice(before)
    .filter(({ payload }) => Number(payload.chat_id) === group.id);
  expect(tried).toHaveLength(1);
  expect(book.chat('telegram', String(group.id))?.active).toBe(false);
  server.letBackIn(group, ana);
  server.say(group, ben, 'cart 58');
  await quiet();
  expect(texts(server, group)).toEqual(['#2 58 kg']);
  expect(book.chats(site).find((chat) => chat.kind === 'group')?.active).toBe(true);
});

test('taken out of a group: the data stay and nothing is said', async () => {
  const { server, book, site, group, ana, ben, quiet } = await crew();
  server.say(group, ben, 'cart 61.5');
  await quiet();
  server.kick(group, ana);
  await server.settled();
  expect(book.chat('telegram', String(group.id))).toMatchObject({ active: false, site });
  expect(book.lastNumber(site)).toBe(1);
});

test('what is for coordinators alone goes to each one’s own chat, and never to the group', async () => {
  const { server, group, ana, ben, quiet } = await crew({
    replies: ({ text }) => (text === 'smoke' ? { text: 'alarm', about: 'alarm', private: true } : null),
  });
  const hers = server.direct(ana);
  server.say(group, ben, 'smoke');
  await quiet();
  // She has never pressed Start: the messenger lets nobody write to her first.
  expect(server.textsTo(hers)).toEqual([]);
  server.say(hers, ana, 'hello');
  server.say(group, ben, 'smoke');
  await quiet();
  expect(server.textsTo(hers)).toEqual(['alarm']);
  // While she could not be reached the group was told that there is something, and not what.
  expect(texts(server, group)).toEqual(['telegram-unreached']);
});

test('where no coordinator can be reached directly the group is told, and those it names hear it ring', async () => {
  const { server, group, ana, ben, quiet } = await crew({
    replies: ({ text }) => (text === 'smoke' ? { text: 'luc is hurt', about: 'alarm', private: true } : null),
    channel: {
      words: {
        ...plainWords,
        text: (lines) =>
          lines
            .flat()
            .map(({ id, args }) => [id, JSON.stringify(args?.who)].filter(Boolean).join(' '))
            .join(),
      },
    },
  });
  server.say(group, ben, 'smoke');
  await quiet();
  const told = server.world.calls.filter(
    ({ payload }) => payload.chat_id === String(group.id) && String(payload.text).includes('unreached'),
  );
  expect(told).toHaveLength(1);
  const text = String(told[0]!.payload.text);
  expect(text).not.toContain('luc');
  const [entity] = told[0]!.payload.entities as {
    type: string;
    offset: number;
    length: number;
    user: object;
  }[];
  expect(entity).toMatchObject({ type: 'text_mention', user: { id: ana.id } });
  expect(text.slice(entity!.offset, entity!.offset + entity!.length)).toBe('Ana Ruiz');
});

test('an alarm from somebody’s own chat goes to the coordinators, not back to them', async () => {
  const { server, group, ana, ben, quiet } = await crew({
    replies: ({ text }) => (text === 'smoke' ? { text: 'alarm', about: 'alarm', private: true } : null),
  });
  const [hers, his] = [server.direct(ana), server.direct(ben)];
  server.say(group, ben, 'hello');
  server.say(hers, ana, 'hello');
  server.say(his, ben, 'smoke');
  await quiet();
  expect(server.textsTo(hers)).toEqual(['alarm']);
  expect(server.textsTo(his)).toEqual([]);
  expect(texts(server, group)).toEqual([]);
});

test('a group that becomes a supergroup keeps its site: by the notice, twice, and messages from before it', async () => {
  const { server, book, site, group, ana, ben, quiet } = await crew();
  server.say(group, ben, 'cart 61.5');
  await quiet();
  const { chat: next, notice } = server.migrate(group, ana, { notice: 'later' });
  server.say(next, ben, 'cart 58');
  await server.until('found', () => book.lastNumber(site) === 2);
  notice();
  notice();
  server.say(next, ben, 'cart 59');
  await quiet();
  expect(book.chat('telegram', String(group.id))).toMatchObject({ movedTo: String(next.id), active: false });
  expect(texts(server, next)).toEqual(['#2 58 kg', '#3 59 kg']);
});

test('a message from the new id that nobody could place gets the one line, and is stored once the notice comes', async () => {
  const { server, book, site, group, ana, ben, quiet } = await crew();
  server.fail('sendChatAction', { kind: 'refuse', code: 404, description: 'Not Found' }, { times: 9 });
  const { chat: next, notice } = server.migrate(group, ana, { notice: 'later' });
  server.say(next, ben, 'cart 58');
  await server.sentTo(next);
  expect(server.textsTo(next)).toEqual(['telegram-not-known']);
  notice();
  await quiet();
  expect(book.lastNumber(site)).toBe(1);
  expect(server.textsTo(next)).toEqual(['telegram-not-known', '#1 58 kg']);
});

test('a strange supergroup is told so once, and what it wrote is not kept', async () => {
  const { server, book, ben } = await crew();
  const strange = server.group('Elsewhere', ben, { type: 'supergroup' });
  server.say(strange, ben, 'cart 58');
  server.say(strange, ben, 'cart 59');
  await server.sentTo(strange);
  await server.until('nothing kept', () => book.bookFact('telegram:unplaced') === null);
  expect(server.textsTo(strange)).toEqual(['telegram-not-known']);
});

test('a group that is said to be deleted before it says where to keeps its answers until then', async () => {
  const { server, book, group, ana, ben, quiet } = await crew();
  server.say(group, ben, 'cart 61.5');
  await quiet();
  const { chat: next, notice } = server.migrate(group, ana, { notice: 'later' });
  const deleted = {
    kind: 'refuse',
    code: 403,
    description: 'Forbidden: the group chat was deleted',
  } as const;
  server.fail('sendMessage', deleted, { chat: group.id, times: 9 });
  book.putOut({ ...book.outgoing(2)!, text: 'week' });
  await server.until('tried', () =>
    server.world.calls.some(({ payload }) => payload.text === 'week' && Number(payload.chat_id) === group.id),
  );
  expect(book.chat('telegram', String(group.id))?.active).toBe(true);
  notice();
  await server.sentTo(next);
  expect(server.textsTo(next)).toEqual(['week']);
});

test('an answer on its way to the old id follows to the new one when the send says so', async () => {
  const { server, book, group, ana, ben, quiet } = await crew();
  server.say(group, ben, 'cart 61.5');
  await quiet();
  const { chat: next } = server.migrate(group, ana, { notice: 'none' });
  const row = book.outgoing(2)!;
  book.putOut({ ...row, text: 'week', answers: row.answers });
  await server.sentTo(next);
  expect(server.textsTo(next)).toEqual(['week']);
  expect(server.world.sent.at(-1)?.payload).not.toHaveProperty('reply_parameters');
});

test('killed again and again in the middle of a busy morning: each message is in the book once, each is answered', async () => {
  const server = await startStandIn();
  const path = join(folder(), 'site.book');
  const book = openBook(path, { now: () => new Date().toISOString() });
  const site = book.addSite(
    Site.parse({ name: 'Ferry Lane', timeZone: 'UTC' }),
    '2026-05-12T13:00:00.000Z',
  ).id;
  const ana = server.someone('Ana');
  const group = server.group('Ferry Lane', ana);
  book.addChat(site, 'telegram', String(group.id), 'group');
  book.close();
  const began = (): ChildProcess =>
    spawn(
      process.execPath,
      ['--import', 'tsx', join(import.meta.dirname, 'program.ts'), path, server.root, server.token],
      {
        stdio: ['ignore', 'pipe', 'inherit'],
      },
    );
  let child = began();
  onTestFinished(async () => {
    child.kill('SIGKILL');
    await server.close();
  });
  const wanted: string[] = [];
  for (let round = 0; round < 3; round += 1) {
    for (let kg = 1; kg <= 40; kg += 1) {
      const typed = String(round * 100 + kg);
      wanted.push(typed);
      server.say(group, ana, `cart ${typed}`);
    }
    const sentBefore = server.world.sent.length;
    await server.until('some answers', () => server.world.sent.length > sentBefore + 2 + round * 5, 15_000);
    child.kill('SIGKILL');
    await once(child, 'exit');
    child = began();
  }
  await server.until(
    'all answered',
    () => server.textsTo(group).some((text) => text.endsWith(' 240 kg')),
    15_000,
  );
  child.kill('SIGTERM');
  const [code] = await once(child, 'exit');
  expect(code).toBe(0);
  const after = openBook(path, { readOnly: true, now: () => '' });
  expect([...after.entriesWalk(site)].map((entry) => entry.typed)).toEqual(wanted);
  expect(after.waiting('telegram', 9)).toEqual([]);
  expect(after.verify().ok).toBe(true);
  after.close();
  const answers = server.textsTo(group).filter((text) => text.startsWith('#'));
  expect(new Set(answers).size).toBe(wanted.length);
}, 60_000);
