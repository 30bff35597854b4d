import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { CAUTIONS } from '#core';
import { LANGUAGES } from '#records';
import { makeWords } from '#wording';
import { DANGERS } from '../../parsers/danger/index.ts';
import { CARDS } from '../../src/assistant/emergency.ts';
import { readTexts } from '../../src/commands/parts.ts';
import { cautionsTable } from './cautions-table.ts';
import { emergenciesTable } from './emergencies-table.ts';

const faults: string[] = [];
const words = makeWords(readTexts(), (what) => faults.push(what));

test('the table in DEVELOPERS.md is the one that the program works by', () => {
  const developers = readFileSync(join(resolve(import.meta.dirname, '../..'), 'DEVELOPERS.md'), 'utf8');
  // The formatter lines the columns up.
  const narrow = (text: string): string => text.replaceAll(/ {2,}/g, ' ').replaceAll(/-{3,}/g, '---');
  expect(narrow(developers)).toContain(cautionsTable(words));
});

test('the table of emergencies in DEVELOPERS.md is the one that the program works by', () => {
  const developers = readFileSync(join(resolve(import.meta.dirname, '../..'), 'DEVELOPERS.md'), 'utf8');
  const narrow = (text: string): string => text.replaceAll(/ {2,}/g, ' ').replaceAll(/-{3,}/g, '---');
  expect(narrow(developers)).toContain(emergenciesTable(words));
});

test('each danger that the reader knows has its card, and each card tells a danger that the reader knows', () => {
  const cards = CARDS.flatMap(({ whats }) => whats);
  expect(cards.toSorted()).toEqual([...DANGERS].toSorted());
  for (const { lines } of CARDS)
    for (const line of lines)
      for (const language of LANGUAGES) expect(words.has(language, `emergency-${line}`), line).toBe(true);
  for (const what of DANGERS)
    for (const language of LANGUAGES) expect(words.has(language, `danger-${what}`), what).toBe(true);
});

test('each caution has its text in each language, and defers to the site, local codes or a clinic', () => {
  for (const { id } of CAUTIONS) {
    for (const language of LANGUAGES)
      expect(words.has(language, `caution-${id}`), `${id} ${language}`).toBe(true);
  }
  expect(faults).toEqual([]);
});
