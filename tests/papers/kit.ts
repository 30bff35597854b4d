import { vi } from 'vitest';
import { Conversation } from '../../src/commands/conversation.ts';
import { build } from '../../src/commands/parts.ts';
import { writeError } from '../../src/commands/problem.ts';
import { readSiteFile } from '../../src/commands/site-file.ts';

/** A book filled by a conversation: `[at, text]`, all said by a coordinator named Ana. */
export function talked(path: string, siteFile: string, lines: [at: string, text: string][]): void {
  const parts = build(path, (what, error) => {
    throw new Error(`${what}: ${error}`);
  });
  const site = readSiteFile(siteFile, () => {});
  const row = parts.book.siteByName(site.name) ?? parts.book.addSite(site, '2026-01-01T00:00:00.000Z');
  const conversation = new Conversation(parts, row.id, row.site.timeZone);
  for (const [at, text] of lines) {
    const answer = conversation.take(JSON.stringify({ at, from: 'Ana', text, coordinator: true }));
    if ('error' in answer) throw new Error(`${text}: ${answer.error}`);
  }
  parts.book.close();
}

/** Runs a command in this process, as `main` does: a process of its own costs seconds on a busy machine. */
export async function asked(name: string, ...args: string[]) {
  const written = { out: '', err: '' };
  const catching = (where: 'out' | 'err') => (chunk: unknown) => {
    written[where] += String(chunk);
    return true;
  };
  const spies = [
    vi.spyOn(process.stdout, 'write').mockImplementation(catching('out')),
    vi.spyOn(process.stderr, 'write').mockImplementation(catching('err')),
  ];
  const before = process.exitCode;
  let code = 2;
  try {
    const command = (await import(`../../src/commands/${name}.ts`)) as {
      run(args: string[]): Promise<number>;
    };
    code = await command.run(args);
  } catch (error) {
    process.exitCode = 2;
    writeError(error);
    code = Number(process.exitCode);
  } finally {
    process.exitCode = before;
    for (const spy of spies) spy.mockRestore();
  }
  return { code, ...written };
}
