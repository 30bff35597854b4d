import { describe, expect, test } from 'vitest';
import { startScenario } from './harness.ts';

/** A made-up site of three bays with no drum. */
const BAYS = {
  name: 'Orchard Lane',
  timeZone: 'Europe/London',
  languages: ['en', 'fr', 'es'],
  containers: {
    cart: { tareKg: 12, litres: 140, holds: 'food-scraps' },
    barrow: { tareKg: 14, litres: 85 },
    bucket: { tareKg: 1, litres: 20 },
  },
  piles: ['bay 1', 'bay 2', 'bay 3'],
};
const DRUM = { ...BAYS, name: 'Alder Row', drums: [{ name: 'drum', litres: 5000 }], piles: ['A'] };

describe('each bay has its own mix', () => {
  test('what went elsewhere is no part of it; a load with no place goes with the one before', () => {
    const crew = startScenario(BAYS);
    crew.ask('cart 40 into bay 1');
    crew.ask('2 barrows of chips');
    expect(crew.ask('cart 44 into bay 2')).toMatch(/^.*\nBay 2 · Wet: about 74 % water/);
    expect(crew.ask('mix')).toMatch(/^Bay 2 · Wet/);
    expect(crew.ask('mix in bay 1')).toMatch(/^Bay 1 · About 49 % water|^Bay 1 · /);
    const why = crew.ask('why');
    expect(why).toMatch(/Food scraps 28 kg/);
    expect(why).toMatch(/Chips 49\.3 kg/);
    expect(why).toMatch(/at least 2 L of coarse stuff to 1 L of food/);
    expect(crew.ask('mix in bay 3')).toMatch(/Nothing for the mix went to bay 3 today/);
  });

  test('a squeeze speaks for its bay alone, and until the next load there', () => {
    const crew = startScenario(BAYS);
    crew.ask('cart 40 into bay 1');
    crew.ask('3 barrows of chips into bay 1');
    crew.ask('cart 44 into bay 2');
    expect(crew.ask('squeezed bay 1, just right')).toMatch(/Bay 1 · .*57 % water \(52.60, by your test\)/);
    expect(crew.ask('mix in bay 2')).toMatch(/typical values/);
    expect(crew.ask('squeezed the mix in bay 2, dripping')).toMatch(/Bay 2 · Wet: about 70 % .*by your test/);
    crew.ask('cart 30 into bay 1');
    expect(crew.ask('mix in bay 1')).not.toMatch(/by your test/);
    expect(crew.ask('mix in bay 2')).toMatch(/by your test/);
  });

  test('found bone dry: water by the bucket, and no "impossible"', () => {
    const crew = startScenario(BAYS);
    crew.ask('cart 44 into bay 1');
    crew.ask('2 barrows of chips into bay 1');
    const reply = crew.ask('squeezed bay 1, bone dry');
    expect(reply).toMatch(/by your test\), it is dry\. Add 2 buckets of water/);
    expect(reply).not.toMatch(/cannot be put right/);
  });

  test('a bucket weighed full tells the air; packed stuff is said so', () => {
    const crew = startScenario(BAYS);
    crew.ask('cart 44 into bay 1');
    crew.ask('2 barrows of chips into bay 1');
    // (9.4 − 1) kg in 20 L is 420 kg/m³; 100 − 0.09 × 420 = 62 % air.
    expect(crew.ask('bay 1 bucket test 9.4 kg')).toMatch(
      /By your bucket: 420 kg\/m³, about 62 % air\. Open enough/,
    );
    expect(crew.ask('bay 1 bucket test 16 kg')).toMatch(/Packed: 750 kg\/m³/);
    expect(crew.ask('why')).toMatch(/your own test until the next load/);
  });
});

describe("the site's own recipe", () => {
  test.each([
    ['set recipe 2 chips : 1 food by volume', 'clear recipe', /By your recipe: add 2 barrows of chips/],
    ['recette 2 copeaux : 1 déchets en volume', 'enlever la recette', /Selon votre recette/],
    ['receta 2 astillas : 1 comida por volumen', 'quitar la receta', /Según su receta/],
  ])('%s', (set, clear, advice) => {
    const crew = startScenario(BAYS);
    crew.ask('cart 44 into bay 1');
    crew.ask(set);
    const mix = set.startsWith('set') ? 'mix' : set.startsWith('recette') ? 'mélange' : 'mezcla';
    expect(crew.ask(mix)).toMatch(advice);
    crew.ask(clear);
    expect(crew.ask(mix)).not.toMatch(advice);
  });

  test('by mass, asked for, and said where it leaves the mix too wet', () => {
    const crew = startScenario(DRUM);
    crew.ask('set recipe 1 chips : 8 food by weight');
    expect(crew.ask("what's our recipe?")).toMatch(/your recipe, 1 chips to 8 food by mass/);
    const reply = crew.ask('cart 92\ncart 92');
    expect(reply).toMatch(/By your recipe: add 1 barrow of chips/);
    expect(reply).toMatch(/The recipe alone leaves it too wet \(about 69 %/);
    crew.ask('no recipe');
    expect(crew.ask("what's our recipe?")).toMatch(/^No recipe of your own is set/);
  });
});

describe('what cannot be done', () => {
  test('the stock: the best that can be, and more chips', () => {
    const crew = startScenario(BAYS);
    crew.ask('chips down to 100 L');
    const reply = crew.ask('cart 44 into bay 3');
    expect(reply).toMatch(
      /cannot be put right with what is here \(stock\)\. Best: 1 barrow of chips, to about 57 %\./,
    );
    expect(reply).toMatch(/More chips would solve it/);
  });

  test('stock and room are both too small: both are named, and some goes out first', () => {
    const crew = startScenario(DRUM);
    crew.ask('set recipe 1 chips : 1 food by volume');
    crew.ask('drum 3/4 full');
    crew.ask('chips down to 100 L');
    const reply = crew.ask('cart 132\ncart 132');
    expect(reply).toMatch(/cannot be put right with what is here \(stock, room/);
    expect(reply).toMatch(/Discharge some first/);
  });

  test('before tipping: too little in stock is said with the plan', () => {
    const crew = startScenario(DRUM);
    for (const kg of [66, 68, 70]) crew.ask(`cart ${kg} kg`, { at: '2026-11-23T09:00' });
    crew.ask('chips down to 100 L');
    const reply = crew.ask('3 carts coming, how many chips?');
    expect(reply).toMatch(/1 barrow of chips/);
    expect(reply).toMatch(/the best that can be done here \(stock\)/);
    expect(reply).toMatch(/More chips would solve it/);
  });
});

describe('before tipping', () => {
  test('one cart weighed here says more than a table, with a wide range; why says what was taken', () => {
    const crew = startScenario(DRUM);
    expect(crew.ask('3 carts coming, how many chips?')).toMatch(/by published weights/);
    crew.ask('cart 62');
    // 3 × 50 kg; half more or less each, which for three carts together is 50 % × √3 ÷ 3.
    expect(crew.ask('3 carts coming, how many chips?')).toMatch(
      /^About 150 kg food \(107 kg to 193 kg\): 4 barrows/,
    );
    const why = crew.ask('why');
    expect(why).toMatch(/^Taken: 3 carts, about 150 kg food together \(learned here\)/);
    expect(why).toMatch(/What asks for the most: water/);
    expect(why).toMatch(/Source: Richard & Trautmann/);
  });
});

describe('own figures by chat', () => {
  test('a share of the fresh mass is turned into one of the dry mass before it is used', () => {
    const crew = startScenario(DRUM);
    crew.ask('set chips moisture 50 %');
    // 0.1 % of the fresh mass at 50 % water is 0.2 % of the dry mass.
    expect(crew.ask('lab chips nitrogen 0.1 % of fresh mass')).toMatch(/nitrogen 0\.1 % of the fresh mass/);
    crew.ask('cart 60.5');
    crew.ask('chips 25');
    expect(crew.ask('why')).toMatch(/Chips 25 kg: 50 % water .*N 0\.2 % of the dry mass/);
  });

  test('a laboratory result holds from its day on', () => {
    const crew = startScenario(DRUM);
    crew.ask('cart 60.5');
    expect(crew.ask('why')).toMatch(/Food scraps 48\.5 kg: 74 % water/);
    crew.ask('lab food scraps moisture 80 %');
    crew.ask('cart 60.5');
    expect(crew.ask('why')).toMatch(/Food scraps 97 kg: 80 % water/);
  });
});
