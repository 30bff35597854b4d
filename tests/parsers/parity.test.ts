import { describe, expect, it, test } from 'vitest';
import { contextForSite, readMessage } from '#parsers';
import { LANGUAGES, Site } from '#records';
import { LEXICONS } from '../../parsers/languages/index.ts';

/** Concepts of a language: each key of its lists that has words. */
const conceptsOf = (language: (typeof LANGUAGES)[number]): Map<string, string[]> => {
  const found = new Map<string, string[]>();
  for (const words of LEXICONS[language].words)
    for (const [concept, phrases] of Object.entries(words))
      found.set(concept, [...(found.get(concept) ?? []), ...phrases.split('|').filter(Boolean)]);
  return found;
};

/** Concepts that one language alone needs: how it builds numbers, or an article that points at a pile. */
const OWN =
  /^(numw:|plus:|frac:|ish$|cover:tarp$|pilearticle$|onename$|numstart$|fell$|letter:|minus$|greet$|talk$|set!)/;

describe('the languages', () => {
  for (const language of LANGUAGES) {
    it(`${language} has words for every concept of the others`, () => {
      const own = conceptsOf(language);
      const missing = LANGUAGES.flatMap((other) => [...conceptsOf(other).keys()]).filter(
        (concept) => !OWN.test(concept) && (own.get(concept)?.length ?? 0) === 0,
      );
      expect([...new Set(missing)]).toEqual([]);
    });

    it(`${language} writes its words plain: lower case, no accents, no hyphens`, () => {
      const odd = [...conceptsOf(language).values()].flat().filter((word) => /[A-Z\u00c0-\u024f]/.test(word));
      expect(odd).toEqual([]);
    });
  }
});

test('a source may bear a name that every object answers to', () => {
  for (const source of ['__proto__', 'constructor', 'east constructor']) {
    const context = contextForSite(
      Site.parse({ name: 'x', timeZone: 'UTC', sources: [source] }),
      '2026-06-17T10:00',
    );
    expect(() => readMessage(`cart 61 from ${source}`, context)).not.toThrow();
  }
});
