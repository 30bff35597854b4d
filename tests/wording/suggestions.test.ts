import { describe, expect, test } from 'vitest';
import type { Arg } from '#assistant';
import { contextForSite, readMessage } from '#parsers';
import { LANGUAGES, type Language, Site } from '#records';
import { makeWords } from '#wording';
import { readTexts } from '../../src/commands/parts.ts';

const words = makeWords(readTexts(), () => {});
const site = Site.parse({
  name: 'Long Meadow',
  timeZone: 'Europe/London',
  languages: ['en', 'fr', 'es'],
  containers: { cart: { litres: 240 }, barrow: { litres: 85 }, bucket: { litres: 20 } },
  drums: [{ name: 'drum', litres: 5000 }],
  piles: ['A', 'B', 'C', 'D'],
  sources: ['east kitchen'],
});
const context = contextForSite(site, '2026-11-24T08:00:00.000Z');
const manner = (language: Language) => ({
  language,
  units: site.units,
  timeZone: site.timeZone,
  dayOrder: site.dayOrder,
  today: '2026-11-24',
});

/** What the help says can be typed: what stands between the colon and each middle dot. */
function examples(language: Language): string[] {
  const ids = ['help-log', 'help-log-drum', 'help-log-piles', 'help-ask', 'help-set', 'settings-how'];
  return ids.flatMap((id) => {
    const line = words.text([{ id }], manner(language)).replace(/^[^:]*:/, '');
    return line.split('·').map((example) => example.replace(/^[^:]*… ?["»]\s?:/, '').trim());
  });
}

const LOGS: Record<string, Record<string, Arg>> = {
  'log-reading': { place: { place: 'pile B' }, celsius: { celsius: 58.5 } },
  'log-turned': { place: { place: 'pile B' } },
  'log-covered': { place: { place: 'pile B' } },
  'log-discharged': {},
  'log-level': { material: { material: 'wood-chips' }, litres: { litres: 800 } },
  'log-delivery': { material: { material: 'wood-chips' }, litres: { litres: 4000 } },
  'log-load-from': { source: { source: 'east kitchen' }, kg: { kg: 61.5 } },
  'log-empty': { container: { container: 'cart', count: 1 }, kg: { kg: 16.5 } },
  'log-sample': { place: { place: 'pile B' } },
  'log-release': { place: { place: 'pile B' } },
};

const reads = (text: string): number => {
  const { records, requests, doubts } = readMessage(text, context);
  return records.length + requests.length + doubts.length;
};

describe.each(LANGUAGES)('what %s tells somebody to type', (language) => {
  test.each(examples(language))('help: %s', (example) => {
    expect(reads(example)).toBeGreaterThan(0);
  });

  test.each(Object.entries(LOGS))('%s', (id, args) => {
    const example = words.text([{ id, args }], manner(language));
    expect(reads(example), example).toBeGreaterThan(0);
  });
});
