import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { LANGUAGES } from '#records';
import { readTexts } from '../../../src/commands/parts.ts';

const here = import.meta.dirname;
const { pitfalls } = JSON.parse(
  readFileSync(join(here, '../../../fixtures/messenger/pitfalls.json'), 'utf8'),
) as { pitfalls: { row: number; what: string }[] };
const table = readFileSync(join(here, 'COVERED.md'), 'utf8')
  .split('\n')
  .flatMap((line) => {
    const [, row, held] = /^\| (\d+)\s+\| (.*?)\s*\|$/.exec(line) ?? [];
    return row === undefined ? [] : [{ row: Number(row), held: held! }];
  });

/** The tests that a row names: the file, and how the title begins. */
const named = (held: string) =>
  [...held.matchAll(/`([\w/-]+)` "([^"]+)"/g)].map(([, file, title]) => ({
    path: join(here, file!.includes('/') ? `../../${file}.test.ts` : `${file}.test.ts`),
    title: title!,
  }));

test('each pitfall has one row', () => {
  expect(pitfalls).toHaveLength(30);
  expect(table.map(({ row }) => row)).toEqual(pitfalls.map(({ row }) => row));
});

test.each(table)('row $row names tests that are there', ({ held }) => {
  const tests = named(held);
  expect(tests.length).toBeGreaterThan(0);
  for (const { path, title } of tests) {
    expect(existsSync(path), path).toBe(true);
    const titles = [
      ...readFileSync(path, 'utf8').matchAll(/(?:test|it)(?:\.each[^']*?)?\(\s*(['`])((?:(?!\1).)+)/gs),
    ].map((found) => found[2]!);
    expect(
      titles.some((each) => each.startsWith(title)),
      `${path}: ${title}`,
    ).toBe(true);
  }
});

/** Taken back by a button or a word; that a deleted message changes nothing is said too. */
const TAUGHT = { en: /undo.*delet/is, fr: /annule.*effacer/is, es: /deshacer.*borrar/is };

test('the text that lets a group in teaches how to take something back', () => {
  const texts = readTexts();
  for (const language of LANGUAGES) {
    const found = /^telegram-let-in =\n((?: {4}.*\n)+)/m.exec(texts[language]);
    expect(found?.[1], language).toMatch(TAUGHT[language]);
  }
});
