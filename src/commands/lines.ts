import { StringDecoder } from 'node:string_decoder';

/** Lines of a stream, in order; a byte order mark and carriage returns are dropped, a last line without an end counts. */
export async function* linesOf(stream: NodeJS.ReadableStream): AsyncGenerator<string> {
  const decoder = new StringDecoder('utf8');
  let rest = '';
  let first = true;
  for await (const chunk of stream) {
    let text = rest + (typeof chunk === 'string' ? chunk : decoder.write(chunk));
    if (first && text.length > 0) {
      text = text.replace(/^\uFEFF/, '');
      first = false;
    }
    let from = 0;
    for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', from)) {
      yield text.slice(from, at).replace(/\r$/, '');
      from = at + 1;
    }
    rest = text.slice(from);
  }
  rest += decoder.end();
  if (rest !== '') yield rest.replace(/\r$/, '');
}

/** Writes a line and waits while the reader of a pipe is slow; a reader that went away ends it quietly. */
export async function writeLine(stream: NodeJS.WritableStream, line: string): Promise<void> {
  if (!stream.write(`${line}\n`)) await new Promise<void>((resolve) => stream.once('drain', resolve));
}
