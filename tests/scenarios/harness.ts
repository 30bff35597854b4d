import { lineSeen, makeAssistant } from '#assistant';
import { openBook } from '#logbook';
import { Site } from '#records';
import { makeWords } from '#wording';
import { Conversation } from '../../src/commands/conversation.ts';
import { homesOf, readTexts } from '../../src/commands/parts.ts';

export type Turn = {
  replies: { text: string; choices: string[] }[];
  posts: { text: string; about: string }[];
  entries: number[];
};

/** A conversation with a site in a book of its own, in memory unless a path is given: what a scenario is written on. */
export function startScenario(
  site: unknown,
  start = '2026-11-24T08:00',
  complain?: (what: string, error: unknown) => void,
  path = ':memory:',
) {
  const faults: string[] = [];
  const book = openBook(path, { now: () => '2026-11-24T00:00:00.000Z' });
  const words = makeWords(readTexts(), (what) => faults.push(what));
  const assistant = makeAssistant({
    book,
    words,
    complain:
      complain ?? ((what, error) => faults.push(`${what}: ${error instanceof Error ? error.stack : ''}`)),
    homes: homesOf(book),
  });
  const parsed = Site.parse(site);
  const row = book.addSite(parsed, '2026-11-24T00:00:00.000Z');
  const conversation = new Conversation({ book, assistant }, row.id, parsed.timeZone);
  let minutes = 0;

  function take(line: Record<string, unknown>): Turn {
    const turn = conversation.take(JSON.stringify(line)) as Turn & { error?: string };
    if (turn.error) throw new Error(turn.error);
    if (faults.length > 0) throw new Error(faults.join('\n'));
    return turn;
  }

  return {
    take,
    /** Somebody says something, a minute after what was said before. */
    say(text: string, more: Record<string, unknown> = {}): Turn {
      minutes += 1;
      const base = Date.parse(`${start}:00Z`) + minutes * 60_000;
      return take({ at: new Date(base).toISOString().slice(0, 16), from: 'Ana', text, ...more });
    },
    /** The text of the one reply, or an empty string where there was none. */
    ask(text: string, more: Record<string, unknown> = {}): string {
      const turn = this.say(text, more);
      if (turn.replies.length > 1) throw new Error('more than one reply');
      return turn.replies[0]?.text ?? '';
    },
    lines() {
      const seen = lineSeen(book, row.id, (who) =>
        words.label(who, { ...row.site, language: 'en', today: '' }),
      );
      return [...book.entriesWalk(row.id)].map(seen);
    },
    book,
    assistant,
    site: row.id,
  };
}

export const HOSPITAL = {
  name: 'Fernhill Hospital grounds',
  timeZone: 'Europe/London',
  languages: ['en', 'fr', 'es'],
  containers: {
    cart: { litres: 240, holds: 'food-scraps' },
    bucket: { tareKg: 1, litres: 20 },
    barrow: { tareKg: 14, litres: 85 },
  },
  drums: [{ name: 'drum', litres: 5000 }],
  piles: ['A', 'B', 'C'],
  sources: ['east kitchen', 'west kitchen'],
  targetTonnesPerYear: 40,
};
