import { describe, expect, test } from 'vitest';
import { HOSPITAL, startScenario } from './harness.ts';

const SITE = {
  ...HOSPITAL,
  containers: { ...HOSPITAL.containers, cart: { tareKg: 15.5, litres: 240, holds: 'food-scraps' } },
};
const crewOf = () => {
  const crew = startScenario(SITE);
  crew.say('good morning', { from: 'Rosa', coordinator: true });
  return crew;
};
const voidedBy = (crew: ReturnType<typeof crewOf>) => crew.lines().map((line) => line.voidedBy);

describe('"undo" takes back the last thing that its sender said', () => {
  test.each(['undo', 'annule', 'deshacer'])(
    '%s: a line that waits for an answer before one that counts',
    (word) => {
      const crew = crewOf();
      crew.say('cart 40');
      crew.say('cart 665');
      crew.say(word);
      expect(voidedBy(crew)).toEqual([null, 3, null]);
      crew.say(word);
      expect(voidedBy(crew)).toEqual([4, 3, null, null]);
    },
  );

  test.each(['undo', 'annule', 'deshacer'])('%s: and never answers what somebody else was asked', (word) => {
    const crew = crewOf();
    crew.say('cart 61', { from: 'Ivo' });
    crew.say('cart 61', { from: 'Ben' });
    crew.say('cart 46', { from: 'Ivo' });
    crew.say(word, { from: 'Ivo' });
    expect(voidedBy(crew)).toEqual([null, null, 4, null]);
  });
});

describe('words of any talk', () => {
  const held = () => {
    const crew = crewOf();
    crew.say('cart 665', { from: 'Ana', id: 'a' });
    return crew;
  };
  test('answer somebody else’s question right away, and not later', () => {
    expect(held().say('nope', { from: 'Ben' }).entries).toEqual([2]);
    expect(held().say('nope', { from: 'Ben', at: '2026-11-24T08:30' })).toMatchObject({
      replies: [],
      entries: [],
    });
  });

  test('answer one’s own for an hour, and as a reply at any time', () => {
    expect(held().say('nope', { from: 'Ana', at: '2026-11-24T08:50' }).entries).toEqual([2]);
    expect(held().say('nope', { from: 'Ana', at: '2026-11-24T11:00' }).entries).toEqual([]);
    expect(held().say('nope', { from: 'Ben', at: '2026-11-25T11:00', replyTo: 'a' }).entries).toEqual([2]);
  });

  test('a number as it stands on a button settles it at any time', () => {
    expect(held().say('66.5', { from: 'Ben', at: '2026-11-25T11:00' }).entries).toEqual([2]);
  });
});

describe('a doubt of one’s own that a number fits', () => {
  test('comes before the air that was asked for since', () => {
    const crew = crewOf();
    crew.say('cart 440');
    expect(crew.ask('B 51')).toContain('How warm is the air?');
    crew.say('44');
    expect(crew.lines().at(-1)).toMatchObject({ netKg: 28.5 });
  });

  test('of two with the same buttons the one that is replied to', () => {
    const crew = crewOf();
    crew.say('cart 665', { from: 'Ana', id: 'a' });
    crew.say('cart 665', { from: 'Ben', at: '2026-11-24T11:00' });
    crew.say('66.5', { from: 'Luz', at: '2026-11-24T11:01', replyTo: 'a' });
    expect(voidedBy(crew)).toEqual([3, null, null]);
  });
});

test('a long paste is one reply that names each line, and so does the list of what somebody logged', () => {
  const crew = crewOf();
  const text = Array.from({ length: 70 }, (_, n) => `cart ${40 + n / 10}`).join('\n');
  const turn = crew.say(text);
  expect(turn.replies).toHaveLength(1);
  for (let entry = 1; entry <= 70; entry += 1) expect(turn.replies[0]!.text).toContain(`#${entry} Cart`);
  expect(crew.ask('what did I log').match(/^#\d+ Cart/gm)).toHaveLength(70);
});

describe('what the buttons say, and what is said instead of pressing them', () => {
  test.each([
    ['cart 40', 'cart 40.2', 'the first', [null, 3, null]],
    ['bac 40', 'bac 40,2', 'premier', [null, 3, null]],
    ['bac 40', 'bac 40,2', 'le premier', [null, 3, null]],
    ['cart 40', 'cart 40.2', 'the second', [null, 3, null]],
    ['cart 40', 'cart 40.2', 'yes', [null, null]],
    ['bac 40', 'bac 40,2', 'oui', [null, null]],
  ])('%s, %s, %s: the same cart comes first, and "yes" is neither', (first, second, word, expected) => {
    const crew = crewOf();
    crew.say(first, { from: 'Ana' });
    crew.say(second, { from: 'Ben' });
    const turn = crew.say(word, { from: 'Ben' });
    expect(voidedBy(crew)).toEqual(expected);
    const kind = crew.lines()[2]?.record.kind;
    expect(kind).toBe(/first|premier/.test(word) ? 'void' : /second/.test(word) ? 'weigh-in' : undefined);
    if (kind === undefined) expect(turn.replies[0]!.choices).toHaveLength(2);
  });

  test.each([
    ['pile D 55', 'pile C', 'C'],
    ['tas D 55', 'tas C', 'C'],
    ['pila D 55', 'pila C', 'C'],
  ])(
    '%s: a pile that is there is named in the reader’s language, on the button and typed',
    (said, label, bare) => {
      for (const word of [label, bare]) {
        const crew = crewOf();
        expect(crew.say(said).replies[0]!.choices).toContain(label);
        crew.say(word);
        expect(crew.lines().at(-1)!.record).toMatchObject({ place: 'pile C', celsius: [55] });
      }
    },
  );

  test.each([
    ["Tuesday's cart 61", 'Tue 17 Nov'],
    ['bac de mardi 61', 'mar. 17 nov.'],
  ])('%s: a day is a day on the button', (said, label) => {
    const crew = crewOf();
    const { choices } = crew.say(said, { id: 'a' }).replies[0]!;
    expect(choices.join(' ')).not.toMatch(/\d{4}-/);
    const found = choices.find((choice) => choice.includes(label.slice(0, 3)) && choice.includes('17'));
    crew.say('', { choose: { id: 'a', label: found! }, text: undefined });
    expect(crew.lines().at(-1)).toMatchObject({ localDate: '2026-11-17', netKg: 45.5 });
  });
});

test('a line put right, or settled, keeps the pictures of the one before', () => {
  const crew = crewOf();
  const photo = (text: string, message: string, more = {}) =>
    crew.assistant.receive({
      site: crew.site,
      channel: 'replay',
      chat: 'group',
      thread: null,
      message,
      edit: null,
      sentAt: '2026-11-24T09:00:00.000Z',
      receivedAt: '2026-11-24T09:00:00.000Z',
      sender: { id: 'Ana', name: 'Ana', coordinator: false, language: null },
      private: false,
      text,
      pictures: [],
      replyTo: null,
      choose: null,
      ...more,
    });
  photo('cart 61', 'p1', { pictures: ['one', 'two'] });
  photo('58', 'p2', { replyTo: { message: 'p1' } });
  photo('cart 665', 'p3', { pictures: ['three'] });
  photo('66.5', 'p4');
  photo('undo', 'p5');
  const kept = [1, 2, 3, 4, 5].map((number) => crew.book.picturesOf(crew.site, number));
  expect(kept).toEqual([['one', 'two'], ['one', 'two'], ['three'], ['three'], []]);
});
