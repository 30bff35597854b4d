import { parseArgs } from 'node:util';
import { z } from 'zod';
import { contextForSite, type ReadContext, readMessage } from '#parsers';
import type { ParsedMessage, Site } from '#records';
import { explained } from './explain.ts';
import { linesOf, writeLine } from './lines.ts';
import { Problem } from './problem.ts';
import { readQuantitiesCommand } from './read-quantities.ts';
import { readSiteFile } from './site-file.ts';

const AT = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2})?$/;
const Line = z.object({ at: z.string().regex(AT).optional(), text: z.string() });

/** `read`: what a message would become. Stores nothing and knows nothing but the site file. */
export async function run(args: string[]): Promise<number> {
  const { values } = parseArgs({
    args,
    options: {
      site: { type: 'string' },
      at: { type: 'string' },
      json: { type: 'boolean' },
      quantities: { type: 'boolean' },
      language: { type: 'string' },
      explain: { type: 'boolean' },
    },
  });
  const { stdin, stdout } = process;
  const write = (line: string) => writeLine(stdout, line);
  if (values.quantities) {
    if (values.language && !['en', 'fr', 'es'].includes(values.language)) {
      throw new Problem('--language is one of en, fr, es');
    }
    await readQuantitiesCommand(linesOf(stdin), write, values.language as 'en' | 'fr' | 'es' | undefined);
    return 0;
  }
  if (!values.site) throw new Problem('read needs --site FILE');
  if (values.at !== undefined && (!AT.test(values.at) || Number.isNaN(Date.parse(`${values.at}Z`)))) {
    throw new Problem('--at is a local time such as 2026-05-12T10:00');
  }
  const site = readSiteFile(values.site, (line) => process.stderr.write(`heaphand: ${line}\n`));
  const contexts = contextsOf(site);
  let bad = 0;
  for await (const line of linesOf(stdin)) {
    const at = values.at ?? localNow(site.timeZone);
    if (!values.json) {
      await answer(line.replaceAll('\\n', '\n'), at);
      continue;
    }
    const parsed = jsonLine(line);
    if ('error' in parsed) {
      bad += 1;
      await write(JSON.stringify({ error: parsed.error }));
    } else await answer(parsed.text, parsed.at ?? at);
  }
  return bad > 0 ? 1 : 0;

  async function answer(text: string, at: string): Promise<void> {
    const reading = readMessage(text, contexts(at.slice(0, 16)));
    await write(values.explain ? explained(text, reading) : JSON.stringify(asSeen(reading)));
  }
}

/** The contract's four parts, without what is only for the book. */
function asSeen({ records, requests, doubts, unread }: ParsedMessage) {
  return { records, requests, doubts, unread };
}

function jsonLine(line: string): z.infer<typeof Line> | { error: string } {
  if (line.trim() === '') return { text: '' };
  try {
    const parsed = Line.safeParse(JSON.parse(line));
    if (parsed.success) return parsed.data;
    return { error: `bad field: ${parsed.error.issues[0]?.path.join('.') || 'the whole line'}` };
  } catch {
    return { error: 'not JSON' };
  }
}

/** Contexts by moment: lines sent in the same minute share one. */
function contextsOf(site: Site): (at: string) => ReadContext {
  const made = new Map<string, ReadContext>();
  return (at) => {
    const known = made.get(at);
    if (known) return known;
    if (made.size > 500) made.clear();
    const context = contextForSite(site, at);
    made.set(at, context);
    return context;
  };
}

function localNow(timeZone: string): string {
  return new Date().toLocaleString('sv-SE', { timeZone }).replace(' ', 'T').slice(0, 16);
}
