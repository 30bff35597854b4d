import { expect, test } from 'vitest';
import { lineSeen, makeAssistant } from '#assistant';
import { openBook } from '#logbook';
import { contextForSite, readMessage } from '#parsers';
import { REQUESTS, type RequestName, Site } from '#records';
import { makeWords } from '#wording';
import { Conversation } from '../../src/commands/conversation.ts';
import { homesOf, readTexts } from '../../src/commands/parts.ts';
import { HOSPITAL } from './harness.ts';

type Spoken = { from: string; text?: string; choose?: { id: string; label: string }; coordinator?: true };
const CART = { tareKg: 15.5, litres: 240, holds: 'food-scraps' };
const here = Site.parse({ ...HOSPITAL, containers: { ...HOSPITAL.containers, cart: CART } });
const there = Site.parse({
  ...HOSPITAL,
  name: 'Millbrook',
  timeZone: 'America/Moncton',
  units: { mass: 'lb', temperature: 'F' },
  piles: ['A', 'B', 'C', 'Q'],
  sources: ['zebra hall', 'east kitchen'],
  targetTonnesPerYear: 7,
});

/** One sentence for each thing that can be asked. A request that is missing here does not compile. */
const ASKED: Record<RequestName, string> = {
  today: 'today',
  week: 'week',
  year: 'year',
  mine: 'what did I log',
  mix: '3 carts coming, how many chips?',
  help: 'help',
  status: 'how is pile B',
  history: 'history B',
  amend: 'sorry 60 not 61',
  undo: 'undo',
  done: 'done 1',
  claim: "I'll take 2",
  release: 'release 2',
  postpone: 'postpone 3 until friday',
  answer: '66.5',
  setting: 'set target 60 t',
  settings: 'settings',
  duty: 'new duty: rake the path every monday',
  closed: 'closed from december 24 to january 2',
  why: 'why',
  show: 'show #1',
  export: 'export',
  report: 'report',
  share: 'share',
  accepts: 'can bones go in?',
  language: 'in french please',
  role: 'make coordinator',
  handover: 'handover',
  'new-here': "I'm new here",
  room: 'how much room in the drum',
  trace: 'trace pile B',
  diagnose: 'pile B stinks',
  stock: 'how many chips do we have left?',
  recipe: "what's our recipe?",
  feedback: 'what do I tell east kitchen?',
  balance: 'mass balance',
  'forget-me': 'forget me',
};
/** What is read as such only where something was asked or listed before. */
const BY_CONTEXT: readonly RequestName[] = ['answer', 'diagnose'];

const AFTER: Spoken[] = [
  { from: 'Ana', text: 'undo' },
  { from: 'Ben', text: 'no smell from B any more' },
  { from: 'Rosa', text: "aujourd'hui" },
];
const SAID_HERE: Spoken[] = [
  { from: 'Rosa', text: 'good morning', coordinator: true },
  { from: 'Ana', text: 'cart 61 from east kitchen' },
  { from: 'Ben', text: 'chips 12\nB 51 43 47, ambient 9' },
  { from: 'Ana', text: 'turned B, drum 3/4 full' },
  { from: 'Ben', text: 'cart 665' },
  { from: 'Rosa', text: 'today' },
  ...Object.values(ASKED).map((text): Spoken => ({ from: 'Rosa', text })),
  ...AFTER,
];

/** The same people in the same chat, at the same minutes, about other things. */
const SAID_THERE: Spoken[] = [
  { from: 'Ana', text: 'hello', coordinator: true },
  { from: 'Ben', text: 'cart 135 lb from zebra hall' },
  { from: 'Ana', text: 'cart 134.5 lb' },
  { from: 'Rosa', text: 'Q 140 139, ambient 70' },
  { from: 'Ana', text: 'B 140, leachate at C' },
  { from: 'Rosa', text: 'sawdust 77 lb' },
  { from: 'Ana', text: 'in spanish please' },
  { from: 'Ben', text: 'cart 1150 lb' },
  { from: 'Rosa', text: 'undo' },
  { from: 'Ana', text: 'set target 3 t' },
  { from: 'Ana', text: 'new duty: zebra every day' },
  { from: 'Ben', text: 'today' },
  { from: 'Ben', text: 'done 1' },
  { from: 'Ana', text: 'share' },
  { from: 'Ana', text: 'set emergency number 000' },
  { from: 'Rosa', text: 'forget me' },
];

/** What this site hears and holds, alone in its book or beside another one that is just as busy. */
const heard = (besides: readonly Spoken[]) => {
  const faults: unknown[] = [];
  const book = openBook(':memory:', { now: () => '2026-11-24T00:00:00.000Z' });
  const words = makeWords(readTexts(), (what) => faults.push(what));
  const assistant = makeAssistant({
    book,
    words,
    complain: (what, error) => faults.push(what, error),
    homes: homesOf(book),
  });
  const [one, other] = [here, there].map((site) => {
    const { id } = book.addSite(site, '2026-11-24T00:00:00.000Z');
    return { id, conversation: new Conversation({ book, assistant }, id, 'UTC') };
  }) as [{ id: number; conversation: Conversation }, { id: number; conversation: Conversation }];
  const at = (minute: number): string => new Date(Date.UTC(2026, 10, 24, 8, minute)).toISOString();
  const turns = SAID_HERE.map((line, minute) => {
    const also = besides[minute % Math.max(1, besides.length)];
    const say = (conversation: Conversation, said: Spoken) =>
      conversation.take(JSON.stringify({ at: at(minute), id: `m${minute}`, ...said }));
    if (also) say(other.conversation, also);
    const turn = say(one.conversation, line);
    if (also && minute % 2 === 1) say(other.conversation, { ...also });
    return turn;
  });
  // A week goes by, so that what comes unasked is among it.
  const later = [9, 20].map((days) => {
    const moment = new Date(Date.UTC(2026, 10, 24 + days, 9)).toISOString();
    if (besides.length > 0) other.conversation.take(JSON.stringify({ at: moment }));
    return one.conversation.take(JSON.stringify({ at: moment }));
  });
  expect(faults).toEqual([]);
  const lines = [...book.entriesWalk(one.id)].map(lineSeen(book, one.id));
  const shownThere = JSON.stringify([...book.entriesWalk(other.id)].map(lineSeen(book, other.id)));
  // A link to a page is new each time; people are numbered through the whole book.
  const text = (value: unknown) =>
    JSON.parse(JSON.stringify(value).replaceAll(/[\w-]{22,}|(?<=seul numéro )\d+/g, '…'));
  return {
    turns: text(turns) as { replies: { text: string }[]; error?: string }[],
    later: text(later),
    lines: text(lines),
    there: shownThere,
    board: assistant.board(one.id, null, at(200)),
  };
};

test('whatever is asked, a site answers as if it were the only one in the program', () => {
  const alone = heard([]);
  const beside = heard(SAID_THERE);
  expect(alone.turns.every(({ error }) => error === undefined)).toBe(true);
  expect(beside.turns).toEqual(alone.turns);
  expect(beside.later).toEqual(alone.later);
  expect(beside.lines).toEqual(alone.lines);
  expect(beside.board).toEqual(alone.board);
  expect(JSON.stringify(beside)).toContain('zebra');
  expect(JSON.stringify({ ...beside, there: '' })).not.toMatch(/zebra|Millbrook|pile Q/i);
  expect(beside.there).not.toMatch(/Fernhill|rake the path/);
});

test('and each thing that can be asked is asked here, and answered', () => {
  const context = { ...contextForSite(here, '2026-11-24T10:00'), book: undefined };
  for (const name of REQUESTS)
    if (!BY_CONTEXT.includes(name)) {
      const { requests } = readMessage(ASKED[name], context);
      expect(
        requests.map(({ request }) => request),
        ASKED[name],
      ).toContain(name);
    }
  const { turns } = heard([]);
  const asked = Object.values(ASKED);
  const first = SAID_HERE.length - asked.length - AFTER.length;
  const unanswered = asked.filter((_, i) => turns[first + i]!.replies.length === 0);
  expect(unanswered).toEqual([]);
});
