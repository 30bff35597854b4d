/** Something the person who runs the program can put right: said in one line, without a stack. */
export class Problem extends Error {
  readonly exitCode: number;
  constructor(message: string, exitCode = 2) {
    super(message);
    this.exitCode = exitCode;
  }
}

/** One plain line on standard error. A fault of ours shows where it was, the person's slip does not. */
export function writeError(error: unknown): void {
  if (error instanceof Problem) {
    process.exitCode = error.exitCode;
    process.stderr.write(`heaphand: ${error.message.replaceAll(/\s*\n\s*/g, ' ')}\n`);
    return;
  }
  const { code, message } = (error ?? {}) as { code?: string; message?: string };
  const known = code?.startsWith('ERR_PARSE_ARGS');
  process.stderr.write(`heaphand: ${(message ?? String(error)).split('\n')[0]}\n`);
  if (!known && process.env.HEAPHAND_TRACE) process.stderr.write(`${(error as Error).stack}\n`);
}
