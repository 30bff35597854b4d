import { closeSync, createWriteStream, openSync, readSync, writeSync } from 'node:fs';
import { finished } from 'node:stream/promises';
import { crc32, createDeflateRaw } from 'node:zlib';
import { Zip, type ZipInputFile } from 'fflate';

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
  for (const part of parts) {
    const entry = deflated(part.name);
    zip.add(entry.file);
    if ('text' in part) await entry.push(Buffer.from(part.text));
    else {
      await entry.push(Buffer.from(part.head));
      for (const chunk of chunksOf(part.file)) {
        await entry.push(chunk);
        await drained();
      }
      await entry.push(Buffer.from(part.tail));
    }
    await entry.end();
    await drained();
  }
  zip.end();
  out.end();
  await done;
}

/** The method of a part that is deflated. @source APPNOTE.TXT, .ZIP file format specification, 4.4.5 */
const DEFLATED = 8;

/** A part of a zip that the machine's own zlib packs, beside the main thread: it is the slowest step of an export. */
function deflated(name: string) {
  const file: ZipInputFile = { filename: name, size: 0, crc: 0, compression: DEFLATED };
  const deflate = createDeflateRaw({ level: 3 });
  const done = finished(deflate);
  deflate.on('data', (chunk: Buffer) => file.ondata!(null, Uint8Array.from(chunk), false));
  return {
    file,
    async push(chunk: Uint8Array): Promise<void> {
      file.size += chunk.length;
      file.crc = crc32(chunk, file.crc);
      if (!deflate.write(chunk)) await new Promise<void>((resolve) => deflate.once('drain', () => resolve()));
    },
    async end(): Promise<void> {
      deflate.end();
      await done;
      file.ondata!(null, new Uint8Array(0), true);
    },
  };
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
