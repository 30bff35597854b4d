import { describe, expect, test } from 'vitest';
import { startScenario } from './harness.ts';

/** A made-up yard with no drum. */
const YARD = {
  name: 'Quince Yard',
  timeZone: 'Europe/London',
  languages: ['en', 'fr', 'es'],
  containers: {
    cart: { tareKg: 12, litres: 140, holds: 'food-scraps' },
    barrow: { tareKg: 14, litres: 85 },
    bucket: { tareKg: 1, litres: 20 },
  },
  piles: ['A', 'B', 'bay 1'],
};

describe('containers that went on top, and one more of them', () => {
  test.each([
    ['threw 3 barrows of chips on top', /^#2 3 barrows of chips · about 74 kg/],
    ['tipped 2 barrows of chips over it', /^#2 2 barrows of chips/],
    ['2 barrows of leaves on top of that', /^#2 2 barrows of leaves/],
    ['1 carretilla más de astillas', /^#2 Carretilla de astillas/],
    ['eché 3 carretillas de astillas encima', /^#2 3 carretillas de astillas/],
    ['une brouette de copeaux de plus', /^#2 Brouette de copeaux/],
    ["j'ai jeté 3 brouettes de copeaux par-dessus", /^#2 3 brouettes de copeaux/],
  ])('%s', (said, line) => {
    const crew = startScenario(YARD);
    crew.ask('cart 92 into bay 1');
    expect(crew.ask(said)).toMatch(line);
  });

  test.each([
    ['one more barrow', /^#2 Barrow of chips .* same as before/],
    ['put 2 more barrows in', /^#2 2 barrows of chips/],
    ['une brouette de plus', /^#2 Brouette de copeaux .* comme avant/],
    ['encore une brouette', /^#2 Brouette de copeaux .* comme avant/],
    ['una carretilla más', /^#2 Carretilla de astillas .* igual que antes/],
    ['otra carretilla', /^#2 Carretilla de astillas .* igual que antes/],
  ])('%s: of what the advice asked for', (said, line) => {
    const crew = startScenario(YARD);
    expect(crew.ask('cart 92 into bay 1')).toMatch(/barrows? of chips/);
    expect(crew.ask(said)).toMatch(line);
    expect(crew.lines().at(-1)).toMatchObject({ record: { container: 'barrow', material: 'wood-chips' } });
  });

  test('of what was put in last, and of two it is asked which', () => {
    const crew = startScenario(YARD);
    crew.ask('2 barrows of leaves');
    expect(crew.ask('one more barrow')).toMatch(/^#2 Barrow of leaves/);
    // Leaves went in, and chips were asked for.
    crew.ask('cart 92');
    expect(crew.ask('1 barrow of leaves')).toMatch(/barrows of chips/);
    const asked = crew.say('one more barrow').replies[0]!;
    expect(asked.text).toMatch(/what was in it\?/);
    expect(asked.choices).toEqual(['leaves', 'chips', 'drop it']);
  });

  test.each([
    [
      'one more barrow',
      /what was in it\?\nNot counted yet/,
      ['chips', 'leaves', 'food scraps', 'drop it'],
      'leaves',
    ],
    [
      'une brouette de plus',
      /qu'y avait-il dedans|dedans/,
      ['copeaux', 'feuilles', 'restes', 'laisser tomber'],
      'feuilles',
    ],
    ['una carretilla más', /\?/, ['astillas', 'hojas', 'restos de comida', 'dejarlo'], 'hojas'],
  ])('%s, where nothing was said before: it is asked', (said, question, choices, answer) => {
    const crew = startScenario(YARD);
    const reply = crew.say(said, { id: 'q' }).replies[0]!;
    expect(reply.text).toMatch(question);
    expect(reply.choices).toEqual(choices);
    crew.ask(answer);
    expect(crew.lines().at(-1)).toMatchObject({
      record: { container: 'barrow', material: 'leaves', count: 1 },
    });
  });

  test('yesterday is not before; a question, a fault and a cart that is to be weighed are no load', () => {
    const crew = startScenario(YARD);
    crew.ask('2 barrows of chips', { at: '2026-11-23T10:00' });
    expect(crew.ask('one more barrow')).toMatch(/what was in it/);
    crew.ask('chips');
    for (const said of ['one more barrow?', 'another cart']) expect(crew.ask(said)).toBe('');
    expect(crew.ask('another barrow is broken')).toMatch(/Problem noted: fault/);
  });
});

describe('buttons name places and materials in the language of their reply', () => {
  test.each([
    ['le tas est retourné', ['tas A', 'tas B'], 'tas B', 'pile B'],
    ['volteé la pila', ['pila A', 'pila B'], 'pila B', 'pile B'],
  ])('%s', (said, names, local, english) => {
    const asked = (settle: (crew: ReturnType<typeof startScenario>) => unknown) => {
      const crew = startScenario(YARD);
      const { choices } = crew.say(said, { id: 'q' }).replies[0]!;
      expect(choices.filter((each) => names.includes(each))).toEqual(names);
      expect(choices.join()).not.toMatch(/pile|bay/);
      settle(crew);
      expect(crew.lines().at(-1)).toMatchObject({ record: { kind: 'turning', pile: 'pile B' } });
    };
    asked((crew) => crew.take({ at: '2026-11-24T08:05', from: 'Ana', choose: { id: 'q', label: local } }));
    asked((crew) => crew.ask(local));
    asked((crew) => crew.ask(english));
  });
});
