import { readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

const ROOT = resolve(import.meta.dirname, '..');

/** Which part of the house may lean on which; what is not listed may not be imported. */
const MAY_IMPORT: Record<string, string[]> = {
  records: [],
  core: ['records'],
  parsers: ['records'],
  charts: ['records'],
  assistant: ['records', 'core', 'parsers', 'charts'],
  wording: ['records', 'assistant'],
  logbook: ['records', 'core', 'assistant'],
  channels: ['records', 'assistant', 'charts', 'wording', 'logbook'],
  papers: ['records', 'core', 'assistant', 'charts', 'wording', 'logbook'],
  weather: ['records', 'core', 'assistant'],
  commands: [
    'records',
    'core',
    'parsers',
    'charts',
    'assistant',
    'wording',
    'logbook',
    'channels',
    'papers',
    'weather',
  ],
  main: ['commands'],
};

/** What one file alone may import besides: the phone has no assistant to ask when there is no signal. */
const ALONE: Record<string, string> = { 'src/channels/page/browser/danger.ts': '#parsers/danger' };

/** Parts without clock, randomness, environment, files or network. */
const PURE = ['records', 'core', 'parsers'];
const IMPURE = /\bDate\.now\(|\bnew Date\(\)|\bMath\.random\(|\bprocess\.|\bfetch\(|from 'node:/;

function filesIn(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    if (statSync(path).isDirectory()) return filesIn(path);
    return path.endsWith('.ts') ? [path] : [];
  });
}

const SOURCES = [...filesIn(join(ROOT, 'src')), ...filesIn(join(ROOT, 'parsers'))];

function partOf(path: string): string {
  const [top, second] = relative(ROOT, path).split('/');
  if (top === 'parsers') return 'parsers';
  return second === 'main.ts' ? 'main' : second!;
}

/** The module names of a file's import and export lines. */
function importsOf(path: string): string[] {
  const text = readFileSync(path, 'utf8');
  return [
    ...text.matchAll(/^\s*(?:import|export)\b[^'"\n;]*?(?:\{[^}]*\}[^'"]*?)?from\s+'([^']+)'/gm),
    ...text.matchAll(/\bimport\(\s*'([^']+)'\s*\)/g),
    ...text.matchAll(/^\s*import\s+'([^']+)'/gm),
  ].map((match) => match[1]!);
}

describe('the house', () => {
  it('has files to look at', () => {
    expect(SOURCES.length).toBeGreaterThan(60);
    expect(importsOf(join(ROOT, 'src/main.ts')).length).toBeGreaterThan(2);
  });

  it.each(SOURCES.map((path) => [relative(ROOT, path), path]))(
    '%s imports only what it may',
    (file, path) => {
      const part = partOf(path);
      for (const name of importsOf(path)) {
        if (ALONE[file!] === name) continue;
        if (name.startsWith('#')) {
          const target = name.slice(1).split('/')[0]!;
          expect(MAY_IMPORT[part], `${name} in ${part}`).toContain(target);
        } else if (name.startsWith('.')) {
          const target = partOf(resolve(dirname(path), name));
          if (part === 'main') expect(['main', 'commands']).toContain(target);
          else expect(target, `${name} climbs out of ${part}`).toBe(part);
        }
      }
    },
  );

  it.each(SOURCES.filter((path) => PURE.includes(partOf(path))).map((path) => [relative(ROOT, path), path]))(
    '%s is pure',
    (_name, path) => {
      const code = readFileSync(path, 'utf8').replaceAll(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '');
      expect(IMPURE.exec(code)?.[0] ?? null).toBeNull();
    },
  );

  it('knows chrono-node in one file alone', () => {
    const knowing = SOURCES.filter((path) => importsOf(path).some((name) => name.startsWith('chrono-node')));
    expect(knowing.map((path) => relative(ROOT, path)).filter((path) => path !== 'parsers/when.ts')).toEqual(
      [],
    );
  });

  it('gives each part one public face', () => {
    const parts = [...new Set(SOURCES.map(partOf))].filter(
      (part) => !['main', 'commands', 'channels'].includes(part),
    );
    for (const part of parts) {
      const face = part === 'parsers' ? 'parsers/index.ts' : `src/${part}/index.ts`;
      expect(readFileSync(join(ROOT, face), 'utf8'), face).toMatch(/^\/\/ .+\n\/\/ .+/);
    }
  });
});
