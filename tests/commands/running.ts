import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

const ROOT = resolve(import.meta.dirname, '../..');

export type Ran = { code: number | null; out: string; err: string };

/** Runs a command of the program in a process of its own, as a person would, with what is typed into it. */
export function run(args: string[], input = '', environment: Record<string, string> = {}): Promise<Ran> {
  return new Promise((resolve_) => {
    const child = start(args, environment);
    let out = '';
    let err = '';
    child.stdout.on('data', (chunk) => {
      out += chunk;
    });
    child.stderr.on('data', (chunk) => {
      err += chunk;
    });
    child.on('close', (code) => resolve_({ code, out, err }));
    child.stdin.end(input);
  });
}

/** The program started and left running; the caller ends it. */
export function start(args: string[], environment: Record<string, string> = {}) {
  const { BOT_TOKEN: _, CI: __, ...inherited } = process.env;
  return spawn(process.execPath, ['--import', 'tsx', 'src/main.ts', ...args], {
    cwd: ROOT,
    env: { ...inherited, ...environment },
    stdio: ['pipe', 'pipe', 'pipe'],
  });
}

/** A folder that is gone when the work is done. */
export async function inFolder<T>(work: (folder: string) => Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'heaphand-'));
  try {
    return await work(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
