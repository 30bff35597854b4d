import { openBook } from '#logbook';
import type { StandIn } from '../stand-in/index.ts';

/** What somebody wrote, under the messenger's number. */
export type Said = {
  id: string;
  edit: boolean;
  text: string;
  means: 'talk' | 'cart' | 'reading' | 'doubt' | 'edit';
};

export type Account = {
  kills: number;
  messages: number;
  lines: number;
  replies: number;
  /** Replies that came a second time, after a kill between the sending and its mark. */
  repeats: number;
  /** Each is something lost, doubled or different; an empty list is what is wanted. */
  problems: string[];
};

const numberIn = (text: string): string | null => /#\d+/.exec(text)?.[0] ?? null;

/** Holds what was written against the book, and the book against what the people saw. */
export const accountOf = (
  server: StandIn,
  group: { id: number },
  said: readonly Said[],
  path: string,
  found: readonly string[],
): Omit<Account, 'kills'> => {
  const problems = [...found];
  const book = openBook(path, { readOnly: true, now: () => '' });
  try {
    const site = book.sites()[0]!.id;
    const chat = String(group.id);
    const sent = server.world.sent.filter((one) => one.chat === group.id);
    const seenFor = new Map<string, string[]>();
    for (const one of sent) {
      const to = String((one.payload.reply_parameters as { message_id?: number } | undefined)?.message_id);
      seenFor.set(to, [...(seenFor.get(to) ?? []), one.text]);
    }
    let lines = 0;
    let replies = 0;
    let repeats = 0;
    for (const id of new Set(said.map((one) => one.id))) {
      const versions = said.filter((one) => one.id === id);
      const kept = book.messageHistory(site, 'telegram', chat, id);
      if (kept.map(({ text }) => text).join('|') !== versions.map(({ text }) => text).join('|'))
        problems.push(`message ${id}: ${versions.length} written, ${kept.length} in the book`);
      const wanted: string[] = [];
      for (const [at, stored] of kept.entries()) {
        const all = book.entriesOfMessage(stored.id);
        lines += all.length;
        // An edit may take the old line back first: what it says itself is one line all the same.
        const entries = all.filter((entry) => entry.record.kind !== 'void');
        const talk = versions[at]?.means === 'talk';
        if (entries.length !== (talk ? 0 : 1))
          problems.push(`message ${id} (${versions[at]?.means}): ${entries.length} lines`);
        const rows = book.outgoingOfMessage(stored.id);
        if (rows.length !== (talk ? 0 : 1))
          problems.push(`message ${id}: ${rows.length} replies in the book`);
        for (const row of rows) {
          wanted.push(row.text);
          if (row.sentAt === null) problems.push(`message ${id}: its reply was never marked sent`);
          if (entries[0] && !row.text.includes(`#${entries[0].number}`))
            problems.push(`message ${id}: its reply speaks of another line than #${entries[0].number}`);
        }
      }
      const seen = seenFor.get(id) ?? [];
      replies += wanted.length;
      repeats += Math.max(0, seen.length - wanted.length);
      for (const text of wanted) if (!seen.includes(text)) problems.push(`message ${id}: a reply was lost`);
      const numbers = new Set(wanted.map(numberIn));
      for (const text of seen)
        if (!numbers.has(numberIn(text))) problems.push(`message ${id}: a repeat bears another number`);
    }
    const all = book.lastNumber(site);
    const others = [...book.entriesWalk(site)].filter((entry) => entry.record.kind === 'setting').length;
    if (all !== lines + others)
      problems.push(`${all} lines in the book, ${lines} of them from what was written`);
    const verdict = book.verify();
    if (!verdict.ok) problems.push(`the book does not hold: ${JSON.stringify(verdict)}`);
    return { messages: said.length, lines, replies, repeats, problems };
  } finally {
    book.close();
  }
};
