import { describe, expect, test } from 'vitest';
import { startScenario } from './harness.ts';

/** A made-up site with a drum and its barrow. */
const SITE = {
  name: 'Alder Row',
  timeZone: 'America/Moncton',
  containers: {
    cart: { tareKg: 18, litres: 240, holds: 'food-scraps' },
    barrow: { tareKg: 14, litres: 85 },
    bucket: { tareKg: 1, litres: 20 },
  },
  drums: [{ name: 'drum', litres: 5000 }],
  piles: ['A', 'B'],
  accepts: { bread: true, 'compostable cups': false },
};

describe('the mix of a day', () => {
  test('one cart and its chips: about 66 % water, one barrow more, and a squeeze that settles it', () => {
    const crew = startScenario(SITE);
    // 66.5 − 18 and what follows from it: common practice, no source.
    expect(crew.ask('cart 66.5 kg')).toMatch(/48\.5 kg net/);
    const mixed = crew.ask('chips 12 kg');
    expect(mixed).toMatch(/about 66 % water \(58.73, typical values\)/);
    expect(mixed).toMatch(/Add 1 barrow of chips \(about 25 kg\)/);
    expect(mixed).toMatch(/squeeze/);
    expect(crew.ask('drum squeeze test just right')).toMatch(/right/);
    expect(crew.ask('mix')).toMatch(/about 57 % water \(52.60, by your test\)\. Nothing to add/);
    const why = crew.ask('why');
    expect(why).toMatch(
      /Food scraps 48\.5 kg: 74 % water \(65–82\), C 48 %, N 3\.1 % of the dry mass \(from memory\)/,
    );
    expect(why).toMatch(/all the carbon over all the nitrogen, never a mean of ratios/);
    expect(why).toMatch(/Taken: your own test until the next load/);
    expect(why).toMatch(/Source: /);
    // The next load ends what the squeeze said.
    expect(crew.ask('cart 66.5 kg')).toMatch(/typical values/);
  });

  test('before tipping: by what the carts usually weigh, with the first barrow on the floor', () => {
    const crew = startScenario(SITE);
    for (const kg of [66, 68, 70, 68])
      crew.ask(`cart ${kg} kg`, { at: `2026-11-2${kg === 66 ? 1 : 2}T09:00` });
    const planned = crew.ask('3 carts coming, how many chips?');
    expect(planned).toMatch(/About 150 kg food/);
    expect(planned).toMatch(/4 barrows of chips \(about 99 kg\)/);
    expect(planned).toMatch(/First barrow on the drum's floor/);
  });

  test('the stock of chips bounds the advice', () => {
    const crew = startScenario(SITE);
    crew.ask('chips down to 100 L');
    const reply = crew.ask('cart 90 kg');
    expect(reply).toMatch(/cannot be put right/);
    expect(reply).toMatch(/stock/);
    expect(reply).toMatch(/Best: 1 barrow of chips/);
  });

  test('from volume only: estimated, with the factor shown, and never a net', () => {
    const crew = startScenario(SITE);
    expect(crew.ask('2 buckets of coffee grounds')).toMatch(/about 18 kg \(estimated, 0\.45 kg\/L; 14.24\)/);
    expect(crew.lines().at(-1)).toMatchObject({ netKg: null, factor: 0.45 });
    expect(crew.lines().at(-1)!.estimatedKg).toBeCloseTo(18, 9);
  });
});

describe('the drum', () => {
  test('room for two more: no, with how much goes out first', () => {
    const crew = startScenario(SITE);
    crew.ask('drum 3/4 full');
    const reply = crew.ask('room for 2 more?');
    expect(reply).toMatch(/^No\. Discharge about \d+ kg first/);
    expect(startScenario(SITE).ask('room for 2 more?')).toMatch(/^Yes/);
  });
});
