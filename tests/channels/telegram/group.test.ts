import { expect, test } from 'vitest';
import { crew, texts, WORD } from './kit.ts';

test('a message is saved, answered as a reply to it, and its number stands in the answer', async () => {
  const { server, book, site, group, ben, quiet, received } = await crew();
  const said = server.say(group, ben, 'cart 61.5', { date: new Date('2026-05-12T13:00:00Z') });
  await quiet();
  expect(texts(server, group)).toEqual(['#1 61.5 kg']);
  expect(server.world.sent.at(-1)?.payload.reply_parameters).toMatchObject({ message_id: said.message_id });
  expect(book.entry(site, 1)?.happenedAt).toBe('2026-05-12T13:00:00.000Z');
  expect(received[0]).toMatchObject({
    chat: String(group.id),
    thread: null,
    edit: null,
    private: false,
    sender: { id: String(ben.id), name: 'Ben', coordinator: false },
  });
});

test('talk gets no answer, and a pasted batch gets one', async () => {
  const { server, group, ben, quiet } = await crew({
    replies: ({ text }) => (text.includes('\n') ? { text: `${text.split('\n').length} lines` } : null),
  });
  server.say(group, ben, 'who is bringing coffee');
  server.say(group, ben, Array.from({ length: 30 }, (_, line) => `cart ${line + 40}`).join('\n'));
  await quiet();
  expect(texts(server, group)).toEqual(['30 lines']);
});

test('two people who have a question open are told apart', async () => {
  const { server, group, ana, ben, quiet, received } = await crew();
  server.say(group, ana, 'say which cart?');
  server.say(group, ben, 'say how heavy?');
  await quiet();
  const [toAna, toBen] = server.world.sent.slice(-2).map((one) => one.message);
  server.say(group, ben, '5', { replyTo: toBen! });
  server.say(group, ana, '7', { replyTo: toAna! });
  await quiet();
  const answers = received.slice(-2).map(({ sender, replyTo }) => [sender.name, replyTo]);
  expect(answers).toEqual([
    ['Ben', { outgoing: 3 }],
    ['Ana Ruiz', { outgoing: 2 }],
  ]);
});

test('a command in any case, with spaces before it or our name behind it, is ours; one for another bot is nobody’s', async () => {
  const { server, group, ben, quiet, received } = await crew();
  for (const text of ['/TODAY', ' /undo 3', '/log cart 61.5', '/Log@HEAP_test_bot cart 58', '/new_here'])
    server.say(group, ben, text);
  server.say(group, ben, '/log@other_bot cart 70');
  server.say(group, ben, ' /LOG@other_bot cart 71');
  await quiet();
  expect(received.map(({ text }) => text)).toEqual(['today', 'undo 3', 'cart 61.5', 'cart 58', 'new here']);
  expect(texts(server, group)).toEqual(['#1 61.5 kg', '#2 58 kg']);
});

test('an edit comes with the number of its message and a mark of its own; two in one second are two', async () => {
  const { server, group, ben, quiet, received } = await crew();
  const said = server.say(group, ben, 'cart 66.5');
  const at = new Date('2026-05-12T13:05:00Z');
  server.edit(said, 'cart 56.5', at);
  server.edit(said, 'cart 46.5', at);
  server.edit(said, 'cart 46.5', at);
  await quiet();
  const edits = received.map(({ message, edit, text }) => [
    message === String(said.message_id),
    edit?.slice(0, 10),
    text,
  ]);
  const second = String(at.getTime() / 1000);
  expect(edits).toEqual([
    [true, undefined, 'cart 66.5'],
    [true, second, 'cart 56.5'],
    [true, second, 'cart 46.5'],
  ]);
});

test('anonymous admins are nobody known, and coordinators only in their own group', async () => {
  const { server, group, ana, quiet, received, book, site } = await crew();
  server.anonymous(group, 'cart 61.5');
  await quiet();
  expect(received.at(-1)?.sender).toEqual({ id: null, name: '', coordinator: true, language: null });
  expect(book.entry(site, 1)?.person).toBe(null);
  // A pressed button shows who it was.
  server.press(server.world.sent.at(-1)!.message, 'Undo', ana);
  await quiet();
  expect(received.at(-1)?.sender).toMatchObject({ id: String(ana.id), name: 'Ana Ruiz' });
});

test('the language of somebody’s app is not taken for the crew’s', async () => {
  const { server, group, quiet, received } = await crew();
  server.say(group, server.someone('Luc', { language_code: 'fr' }), 'cart 61.5');
  server.say(group, server.someone('Odd', { language_code: undefined }), 'cart 58');
  await quiet();
  expect(received.map(({ sender }) => sender.language)).toEqual([null, null]);
});

test('channel posts, a linked channel, somebody in a channel’s name, other bots: nothing is logged, nothing breaks', async () => {
  const { server, group, ben, quiet, received } = await crew();
  const channel = server.channel('Notices');
  server.updates.push({ channel_post: { ...server.channelPost(channel, 'cart 1'), message_id: 1 } } as never);
  server.fromLinkedChannel(group, channel, 'cart 2');
  server.asChannel(group, channel, 'cart 3');
  server.say(group, server.someone('Robot', { is_bot: true }), 'cart 4');
  server.updates.push({ message: { message_id: 900, date: 1, chat: group, text: 'cart 5' } } as never);
  server.say(group, ben, 'cart 6');
  await quiet();
  expect(received.map(({ text }) => text)).toEqual(['cart 6']);
});

test('topics: the answer stays in its topic, the general one has none, and the opening message is no question', async () => {
  const { server, group, ana, ben, quiet, received, book } = await crew({ forum: true });
  const weighing = server.topic(group, ana, 'Weighing');
  server.say(group, ben, 'cart 61.5', { thread: weighing });
  server.say(group, ben, 'cart 58');
  await quiet();
  const [inTopic, inGeneral] = server.world.sent.slice(-2);
  expect(inTopic?.payload.message_thread_id).toBe(weighing);
  expect(inGeneral?.payload).not.toHaveProperty('message_thread_id');
  expect(received.map(({ thread, replyTo }) => [thread, replyTo])).toEqual([
    [String(weighing), null],
    [null, null],
  ]);
  server.say(group, ben, '/here', { thread: weighing });
  server.say(group, ana, '/here', { thread: weighing });
  await quiet();
  expect(texts(server, group).slice(-2)).toEqual(['coordinators-only', 'telegram-topic-chosen']);
  expect(book.chat('telegram', String(group.id))?.topic).toBe(String(weighing));
});

test('a topic that was taken away: the answer goes to the group all the same', async () => {
  const { server, group, ana, ben, quiet, received } = await crew({ forum: true });
  const weighing = server.topic(group, ana, 'Weighing');
  server.fail('sendMessage', {
    kind: 'refuse',
    code: 400,
    description: 'Bad Request: message thread not found',
  });
  server.say(group, ben, 'cart 61.5', { thread: weighing });
  await quiet();
  expect(received).toHaveLength(1);
  expect(texts(server, group)).toEqual(['#1 61.5 kg']);
  expect(server.world.sent.at(-1)?.payload).not.toHaveProperty('message_thread_id');
});

test('an answer in a supergroup without topics is an answer, and its thread number is no topic', async () => {
  const { server, group, ben, quiet, received } = await crew({ type: 'supergroup' });
  server.say(group, ben, 'cart 58.2');
  await quiet();
  const reply = server.world.sent.at(-1)!.message;
  server.say(group, ben, 'was 56.2', { replyTo: reply });
  const other = server.say(group, ben, 'nice');
  server.say(group, ben, 'cart 41', { replyTo: other });
  await quiet();
  expect(received.slice(1).map(({ thread, replyTo }) => [thread, replyTo])).toEqual([
    [null, { outgoing: 2 }],
    [null, null],
    [null, { message: String(other.message_id) }],
  ]);
  expect(server.world.sent.at(-1)?.payload).not.toHaveProperty('message_thread_id');
});

test('a caption is read, an album is one message with all its pictures, and its edit finds it', async () => {
  const { server, book, site, group, ben, quiet, received } = await crew();
  server.photo(group, ben, { caption: 'cart 61.5' });
  server.photo(group, ben, { album: 'x1' });
  const worded = server.photo(group, ben, { album: 'x1', caption: 'cart 58' });
  server.photo(group, ben, { album: 'x1' });
  await server.until('both', () => received.length === 2);
  await quiet();
  expect(received.map(({ text, pictures }) => [text, pictures.length])).toEqual([
    ['cart 61.5', 1],
    ['cart 58', 3],
  ]);
  expect(book.picturesOf(site, 2)).toHaveLength(3);
  // An edit of the words comes under the number of the part that bears them.
  expect(received[1]?.message).toBe(String(worded.message_id));
  expect(texts(server, group)).toEqual(['#1 61.5 kg', '#2 58 kg']);
  server.edit(worded, 'cart 59');
  await quiet();
  expect(received.at(-1)).toMatchObject({ message: String(worded.message_id), text: 'cart 59' });
  server.photo(group, ben, { album: 'x1' });
  server.photo(group, ben, { album: 'x2', caption: 'cart 44' });
  await server.until('the other album', () => received.at(-1)?.text === 'cart 44');
  await quiet();
  // A picture that comes too late for its album is no message of its own.
  expect(received).toHaveLength(4);
});

test('what somebody sends after their album finds it in the book, and so does an answer to any of its pictures', async () => {
  const { server, group, ana, ben, quiet, received } = await crew({ channel: { albumWaitMs: 60_000 } });
  const album = (id: string, caption: string) => {
    const first = server.photo(group, ben, { album: id, caption });
    return [first, server.photo(group, ben, { album: id })] as const;
  };
  const [first, second] = album('x1', 'cart 58');
  server.say(group, ana, 'hello');
  await quiet();
  expect(received.map(({ text }) => text)).toEqual(['hello']);
  server.say(server.direct(ben), ben, 'undo');
  await quiet();
  const [later] = album('x2', 'cart 41');
  server.edit(later, 'cart 42');
  album('x3', 'cart 43');
  const [, other] = album('x4', 'cart 44');
  server.say(group, ana, 'thanks', { replyTo: other });
  server.say(group, ana, 'was 56', { replyTo: second });
  await quiet();
  expect(received.slice(1).map(({ text, pictures }) => [text, pictures.length])).toEqual([
    ['cart 58', 2],
    ['undo', 0],
    ['cart 41', 2],
    ['cart 42', 1],
    ['cart 43', 2],
    ['cart 44', 2],
    ['thanks', 0],
    ['was 56', 0],
  ]);
  expect(received.at(-1)?.replyTo).toEqual({ message: String(first.message_id) });
});

test('an album whose end was not waited for is in the book, and handed on at the next start', async () => {
  const { server, book, group, ben, telegram, start, received } = await crew({
    channel: { albumWaitMs: 60_000 },
  });
  server.photo(group, ben, { album: 'x1', caption: 'cart 58' });
  server.photo(group, ben, { album: 'x1' });
  await server.settled();
  expect(received).toHaveLength(0);
  expect(book.bookFact('telegram:albums')).not.toBe(null);
  // Stopped as a kill would: nothing of this run is asked any more.
  await telegram.stop();
  expect(received.map(({ text, pictures }) => [text, pictures.length])).toEqual([['cart 58', 2]]);
  book.setBookFact('telegram:albums', {
    left: { parts: [{ ...received[0]!, message: '9999', text: 'cart 44' }] },
  });
  await start().ready;
  expect(received.at(-1)?.text).toBe('cart 44');
});

test('voices, stickers, files and contacts get one line a day in a chat', async () => {
  const { server, group, ben, quiet, received } = await crew();
  server.sticker(group, ben);
  server.voice(group, ben);
  server.document(group, ben);
  server.contact(group, ben);
  server.document(group, ben, { caption: 'cart 61.5' });
  await quiet();
  expect(texts(server, group)).toEqual(['telegram-cannot-read', '#1 61.5 kg']);
  expect(received).toHaveLength(1);
});

test('a place sent by a coordinator is handed on, anybody else’s is not', async () => {
  const { server, group, ana, ben, quiet, received } = await crew();
  server.location(group, ben, 1, 2);
  server.location(group, ana, 45.25, -66.06);
  await quiet();
  expect(received.map(({ location }) => location)).toEqual([{ latitude: 45.25, longitude: -66.06 }]);
});

test('the word lets one group in, whoever says it makes themselves coordinator; all others get one line', async () => {
  const { server, book, site, group, ana, ben, telegram, start, quiet, received } = await crew({
    claim: false,
  });
  expect(telegram.claimWord).toBe(WORD);
  const other = server.group('Elsewhere', ben);
  server.say(other, ben, 'cart 1');
  server.say(other, ben, 'cart 2');
  server.say(group, ana, `/start@heap_test_bot ${WORD.toUpperCase()}`);
  await server.until('let in', () => server.textsTo(group).length === 1);
  server.say(other, ben, WORD);
  server.say(other, ben, 'cart 3');
  await quiet();
  await telegram.stop();
  const again = start();
  await again.ready;
  expect(again.claimWord).toBe(null);
  server.say(other, ben, `/start ${WORD}`);
  server.say(group, ana, 'cart 4');
  await quiet();
  expect(server.textsTo(other)).toEqual(['telegram-not-known']);
  expect(received.map(({ text }) => text)).toEqual(['cart 4']);
  expect(book.chats(site).map((chat) => chat.chat)).toEqual([String(group.id)]);
  expect(book.people(site).map(({ name, coordinator }) => [name, coordinator])).toEqual([['Ana Ruiz', true]]);
});

test('with no word given one is made up, kept until used, and long enough not to be guessed', async () => {
  const { telegram, start } = await crew({ claim: false, channel: { claimWord: undefined } });
  expect(telegram.claimWord).toMatch(/^[a-z2-9]{4}-[a-z2-9]{4}-[a-z2-9]{4}$/);
  await telegram.stop();
  expect(start().claimWord).toBe(telegram.claimWord);
});

test('somebody seen in the group may write directly, to the same book under the same name; a stranger gets one line', async () => {
  const { server, book, site, group, ben, quiet, received } = await crew();
  server.say(group, ben, 'cart 61.5');
  const mine = server.direct(ben);
  server.say(mine, ben, 'cart 58');
  const eve = server.someone('Eve');
  const hers = server.direct(eve);
  server.say(hers, eve, 'cart 1');
  server.say(hers, eve, 'cart 2');
  await quiet();
  await server.sentTo(hers);
  expect(texts(server, mine)).toEqual(['#2 58 kg']);
  expect(server.textsTo(hers)).toEqual(['telegram-not-known']);
  expect(received.map((one) => one.private)).toEqual([false, true]);
  expect(book.entry(site, 1)?.person).toBe(book.entry(site, 2)?.person);
});

test('who belongs to two sites is asked which one, once, and nothing said meanwhile is lost', async () => {
  const { server, book, site, group, ben, quiet, received } = await crew();
  const two = book.addSite({ ...book.siteById(site).site, name: 'Millbrook' }, new Date().toISOString()).id;
  server.say(group, ben, 'cart 61.5');
  await quiet();
  book.person(two, 'telegram', String(ben.id), 'Ben');
  const mine = server.direct(ben);
  server.say(mine, ben, 'cart 10');
  server.say(mine, ben, 'cart 11');
  const question = await server.sentTo(mine);
  expect(question.text).toBe('telegram-which-site');
  await server.settled();
  expect(received).toHaveLength(1);
  server.press(question.message, 'Millbrook', ben);
  await server.until('both', () => received.length === 3);
  server.say(mine, ben, 'cart 12');
  await quiet();
  expect(received.slice(1).map((one) => [one.site, one.text])).toEqual([
    [two, 'cart 10'],
    [two, 'cart 11'],
    [two, 'cart 12'],
  ]);
  expect(server.textsTo(mine).filter((text) => text === 'telegram-which-site')).toHaveLength(1);
});
