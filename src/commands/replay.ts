import { parseArgs } from 'node:util';
import { Conversation } from './conversation.ts';
import { linesOf, writeLine } from './lines.ts';
import { build, complainTo } from './parts.ts';
import { Problem } from './problem.ts';
import { readSiteFile } from './site-file.ts';

/** `replay`: a conversation, at the times it says, through the whole of the assistant into the book. */
export async function run(args: string[]): Promise<number> {
  const { values } = parseArgs({ args, options: { site: { type: 'string' }, db: { type: 'string' } } });
  if (!values.site || !values.db) throw new Problem('replay needs --site FILE and --db FILE');
  const site = readSiteFile(values.site, (line) => process.stderr.write(`heaphand: ${line}\n`));
  const parts = build(values.db, complainTo(process.stderr));
  try {
    const at = new Date().toISOString();
    const row = parts.book.siteByName(site.name) ?? parts.book.addSite(site, at);
    const conversation = new Conversation(parts, row.id, row.site.timeZone);
    let bad = 0;
    for await (const text of linesOf(process.stdin)) {
      if (text.trim() === '') continue;
      const answer = conversation.take(text);
      if ('error' in answer) bad += 1;
      await writeLine(process.stdout, JSON.stringify(answer));
    }
    return bad > 0 ? 1 : 0;
  } finally {
    parts.book.close();
  }
}
