import { closeSync, createWriteStream, openSync, readSync, writeSync } from 'node:fs';
import { finished } from 'node:stream/promises';
import { Zip, ZipDeflate } from 'fflate';

const CHUNK = 1 << 18;

/** Text that grows on disk rather than in memory: one walk along the book fills all sheets at once. */
export type Spool = { path: string; write(text: string): void; end(): void };

export function spoolInto(path: string): Spool {
  const file = openSync(path, 'w');
  let parts: string[] = [];
  let length = 0;
  const flush = (): void => {
    if (length > 0) writeSync(file, parts.join(''));
    parts = [];
    length = 0;
  };
  return {
    path,
    write(text) {
      parts.push(text);
      length += text.length;
      if (length >= CHUNK) flush();
    },
    end() {
      flush();
      closeSync(file);
    },
  };
}

/** A part of a zip: its text, or a file on disk between a head and a tail. */
export type ZipPart =
  | { name: string; text: string }
  | { name: string; head: string; file: string; tail: string };

/** Writes a zip part by part, waiting for the disk: no part is ever whole in memory. */
export async function writeZip(path: string, parts: readonly ZipPart[]): Promise<void> {
  const out = createWriteStream(path, { flags: 'wx' });
  const done = finished(out);
  // A disk that is full is told where it is waited for.
  done.catch(() => {});
  let failed: Error | null = null;
  out.on('error', (error) => {
    failed = error;
  });
  const zip = new Zip((error, chunk) => {
    if (error) failed = error;
    else out.write(chunk);
  });
  const drained = async (): Promise<void> => {
    if (failed) throw failed;
    if (out.writableNeedDrain)
      await Promise.race([new Promise<void>((resolve) => out.once('drain', () => resolve())), done]);
  };
  const encoder = new TextEncoder();
  for (const part of parts) {
    const entry = new ZipDeflate(part.name, { level: 3 });
    zip.add(entry);
    if ('text' in part) entry.push(encoder.encode(part.text), true);
    else {
      entry.push(encoder.encode(part.head));
      for (const chunk of chunksOf(part.file)) {
        entry.push(chunk);
        await drained();
      }
      entry.push(encoder.encode(part.tail), true);
    }
    await drained();
  }
  zip.end();
  out.end();
  await done;
}

function* chunksOf(path: string): Generator<Uint8Array> {
  const file = openSync(path, 'r');
  try {
    for (;;) {
      const buffer = new Uint8Array(CHUNK);
      const length = readSync(file, buffer);
      if (length === 0) return;
      yield buffer.subarray(0, length);
    }
  } finally {
    closeSync(file);
  }
}
