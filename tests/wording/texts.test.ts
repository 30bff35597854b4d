import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { FluentResource } from '@fluent/bundle';
import { describe, expect, it } from 'vitest';
import { LANGUAGES } from '#records';
import { readTexts } from '../../src/commands/parts.ts';

const ROOT = resolve(import.meta.dirname, '../..');
const texts = readTexts();

/** Message id → names of the values it uses, from the text itself. */
function messages(text: string): Map<string, string[]> {
  const found = new Map<string, string[]>();
  let id = '';
  for (const line of text.split('\n')) {
    const start = /^([a-z][a-z0-9-]*) =/i.exec(line);
    if (start) {
      id = start[1]!;
      found.set(id, []);
    }
    if (id && !line.startsWith('#')) {
      for (const [, name] of line.matchAll(/\$(\w+)/g)) found.get(id)!.push(name!);
    }
  }
  return new Map([...found].map(([key, names]) => [key, [...new Set(names)].sort()]));
}

function sources(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    return statSync(path).isDirectory() ? sources(path) : path.endsWith('.ts') ? [path] : [];
  });
}

describe('the wording files', () => {
  it.each(LANGUAGES)('%s is Fluent that the library reads whole', (language) => {
    const resource = new FluentResource(texts[language]);
    expect(resource.body.length).toBe(messages(texts[language]).size);
  });

  it.each(LANGUAGES.filter((language) => language !== 'en'))(
    '%s has the same texts as English',
    (language) => {
      const english = messages(texts.en);
      const other = messages(texts[language]);
      expect([...other.keys()].sort()).toEqual([...english.keys()].sort());
      // A translation may leave out a value that its sentence does not need, and never names one that is not there.
      for (const [id, names] of other) {
        for (const name of names) expect(english.get(id), `${id} in ${language}`).toContain(name);
      }
    },
  );

  it('holds each text that the assistant says', () => {
    const english = messages(texts.en);
    const said = new Set<string>();
    for (const path of sources(join(ROOT, 'src/assistant'))) {
      const code = readFileSync(path, 'utf8');
      for (const [, id] of code.matchAll(/\bsay\(\s*'([^']+)'/g)) said.add(id!);
    }
    expect(said.size).toBeGreaterThan(100);
    expect([...said].filter((id) => !english.has(id))).toEqual([]);
  });
});
