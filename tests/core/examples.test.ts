import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { transformSync } from 'esbuild';
import { describe, expect, test } from 'vitest';
import * as build from './heat/build.ts';

// Runs the worked example of every docstring: `@example EXPRESSION // ANSWER`, the answer a literal, with
// `(to 0.05)` after it where it is rounded. An answer that is an object may name a part of the fields.
const FOLDERS = ['cautions', 'mix', 'weights', 'drum', 'heat'];
const ROOT = 'src/core';

type Example = { file: string; call: string; answer: string; within: number };

const files = FOLDERS.flatMap((folder) =>
  readdirSync(path.join(ROOT, folder))
    .filter((name) => name.endsWith('.ts'))
    .map((name) => path.join(ROOT, folder, name)),
);

function examplesOf(file: string): Example[] {
  const text = readFileSync(file, 'utf8');
  return [...text.matchAll(/@example (.+?) \/\/ (.+?)(?: \(to ([\d.]+)\))?(?: \*\/)?$/gm)].map((found) => ({
    file,
    call: found[1]!,
    answer: found[2]!,
    within: found[3] ? Number(found[3]) : 1e-9,
  }));
}

/** Exported functions of a file whose docstring (right above) lacks an example. */
function bareExports(file: string): string[] {
  const text = readFileSync(file, 'utf8');
  const exported = /(\/\*\*(?:(?!\*\/)[\s\S])*\*\/\n)?export (?:function (\w+)|const (\w+) = \()/g;
  return [...text.matchAll(exported)].flatMap((found) =>
    found[1]?.includes('@example') ? [] : [`${file}: ${found[2] ?? found[3]}`],
  );
}

function like(got: unknown, wanted: unknown, within: number): void {
  if (typeof wanted === 'number') {
    expect(typeof got).toBe('number');
    expect(Math.abs((got as number) - wanted)).toBeLessThanOrEqual(within);
  } else if (Array.isArray(wanted)) {
    expect(got).toHaveLength(wanted.length);
    wanted.forEach((item, index) => {
      like((got as unknown[])[index], item, within);
    });
  } else if (wanted !== null && typeof wanted === 'object') {
    for (const [key, value] of Object.entries(wanted))
      like((got as Record<string, unknown>)[key], value, within);
  } else expect(got).toEqual(wanted);
}

const scope: Record<string, unknown> = {};
for (const file of files) Object.assign(scope, await import(path.resolve(file)));
// A batch is a long literal: the examples of heat speak of one through the builders of its tests.
Object.assign(scope, build);

const value = (code: string): unknown => {
  const { code: plain } = transformSync(`answer = (${code});`, { loader: 'ts' });
  const names = Object.keys(scope);
  return new Function(...names, `let answer; ${plain} return answer;`)(...names.map((name) => scope[name]));
};

describe('worked examples in the docstrings', () => {
  test('every exported function has one', () => {
    expect(files.flatMap(bareExports)).toEqual([]);
  });
  const examples = files.flatMap(examplesOf);
  test('each one written is read', () => {
    const written = files.reduce(
      (sum, file) => sum + readFileSync(file, 'utf8').split('@example').length - 1,
      0,
    );
    expect(examples.length).toBe(written);
  });
  test.each(examples)('$call', ({ call, answer, within }) => {
    like(value(call), value(answer), within);
  });
});
