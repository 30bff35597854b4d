import { expect, test } from 'vitest';
import type { Picture } from '#core';
import type { OpenedBook } from '#logbook';
import { cart, incoming, memoryBook, now, reply, site, undo } from './samples.ts';

const FROM = '2026-01-01T00:00:00.000Z';

/** The same chat names, message numbers and people's ids in two sites; every value says whose it is. */
const twoSites = () => {
  const book = memoryBook();
  const sides = ['Ferry Lane', 'Millbrook'].map((name, index) => {
    const { id } = book.addSite(site(name), now());
    const person = book.person(id, 'telegram', '7', `Ana of ${name}`);
    const message = book.saveMessage(incoming(id, '11', { text: name }), person.id, 'done');
    const kg = 10 * (index + 1);
    book.append(id, [cart(kg, { person: person.id, pictures: [name] }), cart(kg + 1), undo(2)], message.id);
    book.saveSnapshot(id, FROM, { asOf: name } as Picture);
    book.setMemo(id, 'key', name);
    book.addChat(id, 'telegram', `-${id}`, 'group');
    book.addLink(id, `token of ${name}`);
    book.putOut(reply(id, { text: name, chat: `-${id}`, message: message.id }));
    return { id, name, person: person.id, message: message.id, kg };
  });
  return { book, sides };
};

type Side = ReturnType<typeof twoSites>['sides'][number];

/** Every way of asking the book about a site. A new one that is not listed here fails the test after next. */
const queries: Record<string, (book: OpenedBook, side: Side) => unknown> = {
  siteById: (book, { id }) => book.siteById(id).site.name,
  siteByName: (book, { name }) => book.siteByName(name)?.site.name,
  people: (book, { id }) => book.people(id),
  personById: (book, { person }) => book.personById(person),
  message: (book, { id }) => book.message(id, 'telegram', '-100', '11', null),
  messageHistory: (book, { id }) => book.messageHistory(id, 'telegram', '-100', '11'),
  entry: (book, { id }) => book.entry(id, 1),
  entriesOfMessage: (book, { message }) => book.entriesOfMessage(message),
  entriesFrom: (book, { id }) => [...book.entriesFrom(id, FROM)],
  entriesWalk: (book, { id }) => [...book.entriesWalk(id)],
  entriesBetween: (book, { id }) => book.entriesBetween(id, '2026-01-01', '2027-01-01'),
  entriesOfPerson: (book, { id, person }) => book.entriesOfPerson(id, person, '2026-05-12'),
  latest: (book, { id }) => book.latest(id, 50),
  lastNumber: (book, { id }) => book.lastNumber(id),
  picturesOf: (book, { id }) => book.picturesOf(id, 1),
  snapshotBefore: (book, { id }) => book.snapshotBefore(id, now()),
  memo: (book, { id }) => book.memo(id, 'key'),
  chats: (book, { id }) => book.chats(id),
  chat: (book, { id }) => book.chat('telegram', `-${id}`),
  linkSite: (book, { name }) => book.linkSite(`token of ${name}`),
  outgoing: (book, { id }) => book.outgoing(id),
  outgoingOfMessage: (book, { message }) => book.outgoingOfMessage(message),
  outgoingSentAs: (book, { id }) => book.outgoingSentAs('telegram', `-${id}`, '900'),
  channelIds: (book, { person }) => book.channelIds(person, 'telegram'),
};
/** About the book as a whole, not a site. */
const whole = ['sites', 'waiting', 'sitesOfPerson', 'bookFact', 'verify', 'backup', 'close', 'write'];
const changing = [
  'addSite',
  'person',
  'changePerson',
  'forgetPerson',
  'saveMessage',
  'append',
  'saveSnapshot',
  'dropSnapshotsFrom',
  'putOut',
  'markSent',
  'setMemo',
  'setBookFact',
  'addChat',
  'changeChat',
  'moveChat',
  'blankTexts',
  'addLink',
  'endLinks',
];

test('each query gives its own site alone', () => {
  const { book, sides } = twoSites();
  const [one, two] = sides as [Side, Side];
  for (const [name, query] of Object.entries(queries)) {
    const mine = JSON.stringify(query(book, one));
    const theirs = JSON.stringify(query(book, two));
    expect(mine ?? '', name).not.toContain('Millbrook');
    expect(theirs ?? '', name).not.toContain('Ferry Lane');
  }
  const typed = (id: number) => book.latest(id, 50).map((entry) => entry.typed);
  expect(typed(one.id)).toEqual([null, '11 kg', '10 kg']);
  expect(typed(two.id)).toEqual([null, '21 kg', '20 kg']);
});

test('a change in one site leaves the other as it was', () => {
  const { book, sides } = twoSites();
  const [one, two] = sides as [Side, Side];
  const before = Object.entries(queries).map(([name, query]) => [name, query(book, two)]);
  book.append(one.id, [cart(99), undo(1)], null);
  book.forgetPerson(one.person);
  book.dropSnapshotsFrom(one.id, FROM);
  book.blankTexts(one.id, { from: FROM, before: '2027-01-01T00:00:00.000Z' }, 'all');
  book.setMemo(one.id, 'key', null);
  book.endLinks(one.id);
  book.moveChat('telegram', `-${one.id}`, '-900');
  expect(Object.entries(queries).map(([name, query]) => [name, query(book, two)])).toEqual(before);
});

test('no query of the book is left out of these tests', () => {
  const book = memoryBook();
  const acts = Object.entries(book).filter(([, value]) => typeof value === 'function');
  const listed = [...Object.keys(queries), ...whole, ...changing];
  expect(acts.map(([name]) => name).toSorted()).toEqual(listed.toSorted());
});
