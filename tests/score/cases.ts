import { readdirSync, readFileSync, statSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { ExpectedReading } from './compare.ts';

/** One message, where and when it was sent, and what must come of it. */
export interface MessageCase {
  readonly id: string;
  readonly language: string;
  readonly site: object;
  /** The site's local time, `2026-05-12T10:00`. */
  readonly at: string;
  readonly text: string;
  readonly expect: ExpectedReading;
}

interface WrittenCase {
  readonly id: string;
  readonly site?: string;
  readonly lang?: string;
  readonly at: string;
  readonly text: string;
  readonly expect?: ExpectedReading;
}

const siteFolder = fileURLToPath(new URL('../../fixtures/sites/', import.meta.url));
const readJson = (path: string): unknown => JSON.parse(readFileSync(path, 'utf8'));

const sites = new Map<string, object>();
function siteNamed(name: string): object {
  if (!sites.has(name)) sites.set(name, readJson(join(siteFolder, `${name}.json`)) as object);
  return sites.get(name)!;
}

function siteOf(one: WrittenCase, path: string, siteOfLines: object | undefined): object {
  const site = one.site === undefined ? siteOfLines : siteNamed(one.site);
  if (site === undefined) throw new Error(`${path}, ${one.id}: no site named, and no --site FILE given`);
  return site;
}

/** Every case file under a path: itself, or all `.json` files below a folder, in the order of their paths. */
export function caseFilesUnder(path: string): string[] {
  if (!statSync(path).isDirectory()) return [path];
  return readdirSync(path)
    .sort()
    .flatMap((name) => caseFilesUnder(join(path, name)))
    .filter((name) => name.endsWith('.json'));
}

/** The cases of one file: a JSON list with a site's name in each case, or JSON lines for the site given. */
export function casesIn(path: string, siteOfLines?: object): MessageCase[] {
  const isLines = path.endsWith('.jsonl');
  const written = isLines
    ? readFileSync(path, 'utf8')
        .split(/\r?\n/u)
        .filter((line) => line.trim() !== '')
        .map((line) => JSON.parse(line) as WrittenCase)
    : (readJson(path) as WrittenCase[]);
  return written.map((one) => ({
    id: one.id,
    language: one.lang ?? basename(dirname(path)),
    site: siteOf(one, path, siteOfLines),
    at: one.at,
    text: one.text,
    expect: one.expect ?? {},
  }));
}
