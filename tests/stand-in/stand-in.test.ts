import { expect, onTestFinished, test } from 'vitest';
import { type StandIn, startStandIn } from './index.ts';

const started = async (options: Parameters<typeof startStandIn>[0] = {}) => {
  const server = await startStandIn(options);
  onTestFinished(() => server.close());
  const ana = server.someone('Ana');
  const group = server.group('Ferry Lane', ana);
  return { server, ana, group };
};

const call = async (server: StandIn, method: string, fields: object = {}, token = server.token) => {
  const response = await fetch(`${server.root}/bot${token}/${method}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(fields),
  });
  const text = await response.text();
  return JSON.parse(text) as { ok: boolean; result: never; description?: string; parameters?: object };
};

type Listed = { update_id: number; message?: { text: string } }[];

test('updates stay until a higher offset confirms them', async () => {
  const { server, ana, group } = await started();
  server.say(group, ana, 'one');
  server.say(group, ana, 'two');
  const first = (await call(server, 'getUpdates', { limit: 2 })).result as Listed;
  expect(first.map((update) => update.message?.text)).toEqual([undefined, 'one']);
  expect((await call(server, 'getUpdates')).result).toHaveLength(3);
  const offset = first[1]!.update_id + 1;
  const rest = (await call(server, 'getUpdates', { offset })).result as Listed;
  expect(rest.map((update) => update.message?.text)).toEqual(['two']);
  server.updates.repeat('same-number', first as never);
  expect((await call(server, 'getUpdates')).result).toHaveLength(3);
});

test('a long poll answers when something is said; a second listener ends the first with 409', async () => {
  const { server, ana, group } = await started();
  await call(server, 'getUpdates', { offset: 501 });
  const waiting = call(server, 'getUpdates', { offset: 501, timeout: 20 });
  await server.until('listening', server.updates.listening);
  server.say(group, ana, 'late');
  expect(((await waiting).result as Listed)[0]?.message?.text).toBe('late');
  const first = call(server, 'getUpdates', { offset: 502, timeout: 20 });
  await server.until('listening', server.updates.listening);
  const second = call(server, 'getUpdates', { offset: 502, timeout: 20 });
  expect((await first).description).toMatch(/^Conflict: terminated/);
  server.say(group, ana, 'more');
  expect((await second).ok).toBe(true);
});

test('kinds of updates that were not asked for are not sent', async () => {
  const { server, ana, group } = await started();
  await call(server, 'getUpdates', { allowed_updates: ['message'], offset: 900 });
  server.edit(server.say(group, ana, 'one'), 'uno');
  expect(server.updates.pending()).toHaveLength(1);
});

test('privacy mode lets commands, answers to the bot and service messages through, nothing else', async () => {
  const { server, ana, group } = await started({ canReadAll: false });
  const sent = await call(server, 'sendMessage', { chat_id: group.id, text: 'hello' });
  server.say(group, ana, 'cart 61.5');
  server.say(group, ana, '/today');
  server.say(group, ana, 'was 56.2', { replyTo: sent.result });
  const texts = server.updates.pending().map((update) => update.message?.text);
  expect(texts).toEqual([undefined, '/today', 'was 56.2']);
});

test('what the real server refuses is refused', async () => {
  const { server, ana, group } = await started();
  const forum = server.group('Forum', ana, { forum: true });
  const topic = server.topic(forum, ana, 'Weighing');
  const send = async (chat: { id: number }, fields: object) =>
    (await call(server, 'sendMessage', { chat_id: chat.id, text: 'hello', ...fields })).description;
  const button = (callback_data: string) => ({
    reply_markup: { inline_keyboard: [[{ text: 'a', callback_data }]] },
  });
  expect(await send(group, { text: 'x'.repeat(4096) })).toBe(undefined);
  expect(await send(group, { text: 'x'.repeat(4097) })).toMatch('message is too long');
  expect(await send(group, { text: ' ' })).toMatch('text is empty');
  expect(await send(group, button('x'.repeat(64)))).toBe(undefined);
  expect(await send(group, button('é'.repeat(33)))).toMatch('BUTTON_DATA_INVALID');
  expect(await send(group, { parse_mode: 'HTML', text: 'A <3_*' })).toMatch("can't parse entities");
  expect(await send(group, { message_thread_id: 1 })).toMatch('thread not found');
  expect(await send(forum, { message_thread_id: topic })).toBe(undefined);
  expect(await send(forum, { message_thread_id: 1 })).toMatch('thread not found');
  expect(await send(group, { reply_parameters: { message_id: 99999 } })).toMatch('replied not found');
  expect(await send({ id: -5 }, {})).toMatch('chat not found');
  expect(await send(server.direct(ana), {})).toMatch("can't initiate conversation");
  server.kick(forum, ana);
  expect(await send(forum, {})).toMatch('Forbidden: bot was kicked');
  const { chat } = server.migrate(group, ana);
  const moved = await call(server, 'sendMessage', { chat_id: group.id, text: 'hello' });
  expect(moved.parameters).toEqual({ migrate_to_chat_id: chat.id });
  expect((await call(server, 'getMe', {}, '1:wrong')).description).toBe('Unauthorized');
  expect(
    (await call(server, 'setMyCommands', { commands: [{ command: 'Today', description: 'x' }] })).ok,
  ).toBe(false);
});

test('a pressed button is answered once', async () => {
  const { server, ana, group } = await started();
  const markup = { inline_keyboard: [[{ text: 'Undo', callback_data: '1:0' }]] };
  const { result } = await call(server, 'sendMessage', {
    chat_id: group.id,
    text: '#1',
    reply_markup: markup,
  });
  const id = server.press(result, 'Undo', ana);
  expect(server.updates.pending().at(-1)?.callback_query?.data).toBe('1:0');
  expect((await call(server, 'answerCallbackQuery', { callback_query_id: id })).ok).toBe(true);
  expect((await call(server, 'answerCallbackQuery', { callback_query_id: id })).description).toMatch(
    'too old',
  );
  expect(() => server.press(result, 'Redo', ana)).toThrow('no button');
});

test('it fails in every way it is told to', async () => {
  const { server, group } = await started();
  const send = () => call(server, 'sendMessage', { chat_id: group.id, text: 'hello' });
  server.fail('sendMessage', { kind: 'too-many', retryAfterS: 3 });
  expect((await send()).parameters).toEqual({ retry_after: 3 });
  server.fail('sendMessage', { kind: 'server-error', code: 502 });
  expect((await send()).ok).toBe(false);
  for (const kind of ['drop', 'html'] as const) {
    server.fail('sendMessage', { kind });
    await expect(send()).rejects.toThrow();
  }
  expect(server.world.sent).toHaveLength(0);
  server.fail('sendMessage', { kind: 'truncated' });
  await expect(send()).rejects.toThrow();
  server.fail('sendMessage', { kind: 'drop', after: true });
  await expect(send()).rejects.toThrow();
  expect(server.world.sent).toHaveLength(2);
  await server.gone();
  await expect(send()).rejects.toThrow();
  await server.back();
  expect((await send()).ok).toBe(true);
});

test('a picture is kept as it was sent and can be fetched again', async () => {
  const { server, group } = await started();
  const form = new FormData();
  form.set('chat_id', String(group.id));
  form.set('caption', 'Pile B');
  form.set('photo', 'attach://it');
  form.set('it', new Blob([Uint8Array.of(137, 80, 78, 71, 13, 10)]), 'pile.png');
  const response = await fetch(`${server.root}/bot${server.token}/sendPhoto`, { method: 'POST', body: form });
  const { result } = (await response.json()) as { result: { photo: { file_id: string }[] } };
  expect(server.world.sent[0]).toMatchObject({
    method: 'sendPhoto',
    text: 'Pile B',
    file: { name: 'pile.png' },
  });
  expect([...server.world.sent[0]!.file!.bytes]).toEqual([137, 80, 78, 71, 13, 10]);
  const { result: file } = await call(server, 'getFile', { file_id: result.photo[0]!.file_id });
  const back = await fetch(
    `${server.root}/file/bot${server.token}/${(file as { file_path: string }).file_path}`,
  );
  expect(Buffer.from(await back.arrayBuffer())).toHaveLength(6);
});
