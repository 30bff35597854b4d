import { expect, test } from 'vitest';
import { startScenario } from './harness.ts';

/** A made-up yard of two drums, the small one first. */
const YARD = {
  name: 'Two Drums Yard',
  timeZone: 'Europe/London',
  languages: ['en', 'fr', 'es'],
  containers: {
    cart: { tareKg: 12, litres: 140, holds: 'food-scraps' },
    barrow: { tareKg: 14, litres: 85 },
    bucket: { tareKg: 1, litres: 20 },
  },
  drums: [
    { name: 'drum 1', litres: 1000 },
    { name: 'drum 2', litres: 5000 },
  ],
  piles: ['A', 'B'],
};
const full = (crew: ReturnType<typeof startScenario>) => {
  for (const kg of [90, 91, 92, 93, 94, 95]) crew.ask(`cart ${kg} into drum 1`);
};

test.each([
  ['room for 2 more?', 'room in drum 2?', 'room for 2 more in drum 1?', 'why', 'Drum', 'No\\.', 'Yes:'],
  [
    'de la place pour 2 de plus ?',
    'de la place dans le tambour 2 ?',
    'de la place pour 2 de plus dans le tambour 1 ?',
    'pourquoi',
    'Tambour',
    'Non\\.',
    'Oui.:',
  ],
  [
    '¿caben 2 más?',
    '¿hay espacio en el tambor 2?',
    '¿hay espacio para 2 más en el tambor 1?',
    'por qué',
    'Tambor',
    'No\\.',
    'Sí:',
  ],
])('%s: each drum is answered for, or the one that is named', (both, second, first, why, drum, no, yes) => {
  const crew = startScenario(YARD);
  full(crew);
  expect(crew.ask(both)).toMatch(new RegExp(`^${drum} 1 · ${no}.*\n${drum} 2 · ${yes}`));
  const told = crew.ask(why);
  expect(told).toMatch(new RegExp(`^${drum} 1$`, 'm'));
  expect(told).toMatch(new RegExp(`^${drum} 2$`, 'm'));
  const named = crew.ask(second);
  expect(named).toMatch(new RegExp(`^${drum} 2 · ${yes}`));
  expect(named).not.toMatch(`${drum} 1`);
  const small = crew.ask(first);
  expect(small).toMatch(new RegExp(`^${drum} 1 · ${no}`));
  expect(small).not.toMatch(`${drum} 2`);
});

test('one of two stands still: that one takes nothing, the other is worked out', () => {
  const crew = startScenario(YARD);
  crew.ask('drum 1 off');
  expect(crew.ask('room for 1 more?')).toMatch(/^Drum 1 · No: the drum stands still.*\nDrum 2 · Yes:/);
});

test.each([
  ['why', 'discharged 100 kg from drum 1 to A', 'room for 1 more?', /^No sum in my last reply/, /^Taken:/],
  ['pourquoi', 'tas A retourné', 'de la place pour 1 de plus ?', /^Aucun calcul dans ma/, /^Admis.:/],
  ['por qué', 'volteé la pila A', '¿cabe 1 más?', /^Ninguna cuenta en mi última/, /^Supuesto:/],
])('%s speaks of the last reply and of no older one', (why, noSum, sum, none, taken) => {
  const crew = startScenario(YARD);
  full(crew);
  expect(crew.ask(why)).not.toMatch(none);
  expect(crew.ask(noSum)).toMatch(/^#\d+/);
  expect(crew.ask(why)).toMatch(none);
  crew.ask(sum);
  expect(crew.ask(why)).toMatch(taken);
  // Asked twice it tells the same, and talk that gets no reply is no reply.
  expect(crew.ask('lol')).toBe('');
  expect(crew.ask(why)).toMatch(taken);
});

test('the second drum by its name: more carts, one more barrow, a handful of it alone', () => {
  const crew = startScenario(YARD);
  crew.ask('cart 92 into drum 2', { at: '2026-11-23T09:00' });
  crew.ask('cart 95 into drum 1');
  expect(crew.ask('can i put 2 more carts in drum 2?')).toMatch(/^Drum 2 · Yes:/);
  expect(crew.ask('squeezed drum 2, dripping')).toMatch(
    /about 70 % .*by your test\)\. Add 2 barrows of chips/,
  );
  for (const said of ['one more barrow into drum 2', 'une brouette de plus dans le tambour 2']) {
    crew.ask(said);
    expect(crew.lines().at(-1)).toMatchObject({ record: { material: 'wood-chips', place: 'drum 2' } });
  }
  expect(crew.ask('una carretilla más en el tambor 2')).toMatch(/en tambor 2|tambor 2/);
});
