import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';
import type { Plugin } from 'esbuild';
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
  const { version, ...scripts } = await bundled((danger) => hash.update(danger).digest('hex').slice(0, 16));
  const assets = new Map<string, Asset>();
  const add = (name: string, type: string, text: string): void => {
    const body = Buffer.from(text, 'utf8');
    assets.set(name, { type, body, gzip: gzipSync(body, { level: 9 }) });
  };
  add('', 'text/html; charset=utf-8', read('page.html'));
  add('page.css', 'text/css; charset=utf-8', scripts.css);
  add('page.js', 'text/javascript; charset=utf-8', scripts.page);
  add('danger.js', 'text/javascript; charset=utf-8', scripts.danger);
  add('worker.js', 'text/javascript; charset=utf-8', scripts.worker);
  add('texts.json', 'application/json; charset=utf-8', texts);
  add('icon.svg', 'image/svg+xml', read('icon.svg'));
  return { version, assets };
}

type Scripts = { version: string; page: string; danger: string; worker: string; css: string };

/**
 * The danger reader for the phone goes without its long list of harmless turns of phrase, half of its size: it only
 * speaks where nothing else can, and there a card too many does no harm.
 */
const withoutHarmless: Plugin = {
  name: 'without-harmless',
  setup: (build) =>
    build.onLoad({ filter: /[\\/]languages[\\/]\w+[\\/]danger\.ts$/ }, async ({ path }) => {
      const words = Object.entries((await import(pathToFileURL(path).href)) as Record<string, object>);
      const kept = words.map(
        ([name, lists]) => `export const ${name} = ${JSON.stringify({ ...lists, quiet: '' })};`,
      );
      return { contents: kept.join('\n'), loader: 'js' };
    }),
};

/** The version hangs on the danger reader too, whose words stand elsewhere: a phone is not to keep an old one. */
async function bundled(versionWith: (danger: string) => string): Promise<Scripts> {
  // Only where somebody opens the page: the bundler is of no use to a terminal.
  const { build, stop } = await import('esbuild');
  const one = async (name: string, version = ''): Promise<string> => {
    const { outputFiles } = await build({
      entryPoints: [fileURLToPath(new URL(name, FOLDER))],
      bundle: true,
      minify: true,
      write: false,
      format: 'iife',
      target: 'es2020',
      legalComments: 'none',
      logLevel: 'silent',
      define: { VERSION: JSON.stringify(version) },
      plugins: [withoutHarmless],
    });
    return outputFiles[0]!.text;
  };
  try {
    const danger = await one('danger.ts');
    const version = versionWith(danger);
    const [page, worker, css] = await Promise.all([
      one('page.ts', version),
      one('worker.ts', version),
      one('page.css'),
    ]);
    return { version, page, danger, worker, css };
  } finally {
    await stop();
  }
}
