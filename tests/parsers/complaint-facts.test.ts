import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { COMPLAINT_FACTS, complaintFacts, fromOutside } from '#parsers';

// The fields: 14 CCR 17869 (complaints: nature, date, action; seen); wind, weather, work and strength: common practice
describe('what is said of a complaint', () => {
  test.each([
    ['strong, wind SW, dry, we were turning A', ['strength', 'wind', 'weather', 'being-done']],
    ['faint rotten smell at the east fence', ['where', 'nature', 'strength']],
    ['covered it with chips', ['done-about-it']],
    ['vent du nord, sec, on retournait le tas B', ['wind', 'weather', 'being-done']],
    ['odeur faible de soufre près du portail', ['where', 'nature', 'strength']],
    ['viento del sur, soleado, estábamos volteando', ['wind', 'weather', 'being-done']],
    [
      'huele a podrido, fuerte, junto a la valla; lo tapamos',
      ['where', 'nature', 'strength', 'done-about-it'],
    ],
    ['cart 61.5', []],
    ['turned B', []],
    ['the wind chimes', ['wind']],
  ])('%s', (said, facts) => expect(complaintFacts(said).sort()).toEqual([...facts].sort()));

  test('is one of the fields, whatever is typed', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 300 }), (said) =>
        complaintFacts(said).every((fact) => COMPLAINT_FACTS.includes(fact)),
      ),
    );
  });

  test.each([
    ['a neighbour rang about the smell', true],
    ['la voisine a appelé pour le bruit', true],
    ['un vecino llamó por el olor', true],
    ['B smells strong', false],
    ['neighbour of pile B', false],
  ])('from outside: %s %s', (said, outside) => expect(fromOutside(said)).toBe(outside));
});
