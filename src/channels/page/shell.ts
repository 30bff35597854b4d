import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import type { Words } from '#assistant';
import { pageTexts } from './texts.ts';

type Asset = { type: string; body: Buffer; gzip: Buffer };
export type Shell = { version: string; assets: ReadonlyMap<string, Asset> };

const FOLDER = new URL('./browser/', import.meta.url);
const read = (name: string): string => readFileSync(new URL(name, FOLDER), 'utf8');

/** What the browser loads, made from source in memory. Its version is that of everything in it. */
export async function makeShell(words: Words): Promise<Shell> {
  const texts = JSON.stringify(pageTexts(words));
  const hash = createHash('sha256').update(texts);
  for (const name of readdirSync(FOLDER).sort()) hash.update(read(name));
  const version = hash.digest('hex').slice(0, 16);
  const assets = new Map<string, Asset>();
  const add = (name: string, type: string, text: string): void => {
    const body = Buffer.from(text, 'utf8');
    assets.set(name, { type, body, gzip: gzipSync(body, { level: 9 }) });
  };
  const scripts = await bundled(version);
  add('', 'text/html; charset=utf-8', read('page.html'));
  add('page.css', 'text/css; charset=utf-8', scripts.css);
  add('page.js', 'text/javascript; charset=utf-8', scripts.page);
  add('worker.js', 'text/javascript; charset=utf-8', scripts.worker);
  add('texts.json', 'application/json; charset=utf-8', texts);
  add('icon.svg', 'image/svg+xml', read('icon.svg'));
  return { version, assets };
}

async function bundled(version: string): Promise<{ page: string; worker: string; css: string }> {
  // Only where somebody opens the page: the bundler is of no use to a terminal.
  const { build, stop } = await import('esbuild');
  const one = async (name: string): Promise<string> => {
    const { outputFiles } = await build({
      entryPoints: [new URL(name, FOLDER).pathname],
      bundle: true,
      minify: true,
      write: false,
      format: 'iife',
      target: 'es2020',
      legalComments: 'none',
      logLevel: 'silent',
      define: { VERSION: JSON.stringify(version) },
    });
    return outputFiles[0]!.text;
  };
  try {
    const [page, worker, css] = await Promise.all([one('page.ts'), one('worker.ts'), one('page.css')]);
    return { page, worker, css };
  } finally {
    await stop();
  }
}
