import { spawn } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { PaperFile } from '#assistant';
import type { OpenedBook } from '#logbook';

const MAIN = fileURLToPath(new URL('../main.ts', import.meta.url));
/** What a messenger takes from a bot. */
const MOST_BYTES = 50 * 2 ** 20;
const LONGEST_MS = 10 * 60_000;

/**
 * Makes files of the book in a program of its own, one after the other: a long book must not hold up what is said
 * meanwhile, an alarm perhaps. It reads the book beside the one that writes.
 */
export function paperMaker(book: OpenedBook) {
  let last: Promise<unknown> = Promise.resolve();

  async function madeInto(folder: string, file: PaperFile, siteId: number): Promise<string | null> {
    const { site } = book.siteById(siteId);
    const path = join(folder, file.name);
    const { paper } = file;
    const args = [
      paper.paper,
      ...['--db', book.path, '--site', site.name, '--from', paper.from, '--to', paper.to],
      ...['--language', paper.language, '--out', path],
      ...(paper.paper === 'export' ? ['--format', paper.format] : []),
    ];
    return (await ran(args)) === 0 ? path : null;
  }

  /** Hands over what was made, and takes the folder away. */
  function made<T>(file: PaperFile, siteId: number, take: (path: string) => T): Promise<T | null> {
    const making = last.then(async () => {
      const folder = mkdtempSync(join(tmpdir(), 'heaphand-'));
      try {
        const path = await madeInto(folder, file, siteId);
        return path === null ? null : take(path);
      } finally {
        rmSync(folder, { recursive: true, force: true });
      }
    });
    last = making.catch(() => {});
    return making;
  }

  return {
    /** As bytes; null where it failed or is more than a messenger takes. */
    bytes: (file: PaperFile, siteId: number): Promise<Uint8Array | null> =>
      made(file, siteId, (path) => (statSync(path).size > MOST_BYTES ? null : readFileSync(path))),
    /** Saved beside the book, under a name that is still free; gives its path. */
    saved: (file: PaperFile, siteId: number): Promise<string | null> =>
      made(file, siteId, (path) => {
        const to = freeName(join(dirname(book.path), 'papers', file.name));
        mkdirSync(dirname(to), { recursive: true });
        copyFileSync(path, to);
        return to;
      }),
  };
}

function ran(args: string[]): Promise<number | null> {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, ['--import', import.meta.resolve('tsx'), MAIN, ...args], {
      stdio: 'ignore',
      timeout: LONGEST_MS,
    });
    // Nothing is left behind when the program ends before the file is done.
    const kill = () => child.kill();
    process.once('exit', kill);
    const end = (code: number | null) => {
      process.off('exit', kill);
      resolve(code);
    };
    child.once('error', () => end(null));
    child.once('exit', (code) => end(code));
  });
}

function freeName(path: string): string {
  const end = extname(path);
  const stem = path.slice(0, -end.length);
  for (let n = 1; ; n++) {
    const name = n === 1 ? path : `${stem}-${n}${end}`;
    if (!existsSync(name)) return name;
  }
}
