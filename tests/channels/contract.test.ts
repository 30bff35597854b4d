import { pino } from 'pino';
import { describe, expect, it, onTestFinished } from 'vitest';
import { makeAssistant } from '#assistant';
import { startPage } from '#channels/page';
import { startTelegram } from '#channels/telegram';
import { startTerminal } from '#channels/terminal';
import { openBook } from '#logbook';
import { Site } from '#records';
import { makeWords } from '#wording';
import { homesOf, readTexts } from '../../src/commands/parts.ts';
import { startStandIn } from '../stand-in/index.ts';

/** A channel as somebody uses it: what they say, the button they press, and the replies that they see. */
type Hand = {
  say(text: string): Promise<string[]>;
  press(label: string): Promise<string[]>;
};

const QUIET_MS = 8000;
const now = () => new Date().toISOString();

const house = () => {
  const faults: string[] = [];
  const book = openBook(':memory:', { now });
  const words = makeWords(readTexts(), (what) => faults.push(what));
  const complain = (what: string, error: unknown) => faults.push(`${what} ${(error as Error)?.stack ?? ''}`);
  const assistant = makeAssistant({ book, words, complain, homes: homesOf(book) });
  const site = book.addSite(
    Site.parse({
      name: 'Ferry Lane',
      timeZone: 'UTC',
      containers: { cart: { tareKg: 16, litres: 240, holds: 'food-scraps' } },
      piles: ['A', 'B'],
      safety: { emergencyNumber: '112' },
    }),
    now(),
  ).id;
  onTestFinished(() => {
    book.close();
    expect(faults).toEqual([]);
  });
  return { book, words, assistant, site, complain };
};
type House = ReturnType<typeof house>;

const HANDS: Record<string, (house: House) => Promise<Hand>> = {
  terminal: async ({ book, assistant, site }) => {
    const typed: string[] = [];
    let wake = () => {};
    let done = false;
    let asked = () => {};
    const printed: string[] = [];
    async function* lines() {
      while (!done) {
        const line = typed.shift();
        if (line !== undefined) yield line;
        else await new Promise<void>((resolve) => (wake = resolve));
      }
    }
    const terminal = startTerminal({
      book,
      assistant,
      site,
      lines: lines(),
      print: async (text) => void printed.push(text),
      prompt: () => asked(),
      now,
      name: 'Ana',
    });
    onTestFinished(async () => {
      done = true;
      wake();
      await terminal.ended;
    });
    const say = async (text: string) => {
      const before = printed.length;
      const answered = new Promise<void>((resolve) => (asked = resolve));
      typed.push(text);
      wake();
      await answered;
      return printed.slice(before);
    };
    return { say, press: say };
  },

  page: async ({ book, words, assistant, site, complain }) => {
    const token = 'contract-token-0123456789';
    book.addLink(site, token);
    const page = await startPage({ book, words, assistant, complain, port: 0, now });
    onTestFinished(() => page.close());
    type Replies = { row: number; text: string; choices: { label: string }[] }[];
    let last: Replies = [];
    let count = 0;
    const send = async (text: string, choose?: { row: number; index: number }) => {
      count += 1;
      const response = await fetch(`${page.address}api/say`, {
        method: 'POST',
        headers: { authorization: `Bearer ${token}`, 'x-phone': 'p'.repeat(24) },
        body: JSON.stringify({
          key: `message-${count}`,
          text,
          typedAt: 0,
          now: 0,
          name: 'Ana',
          language: 'en',
          choose,
        }),
      });
      last = ((await response.json()) as { replies: Replies }).replies;
      return last.map((reply) => reply.text);
    };
    return {
      say: (text) => send(text),
      press: (label) => {
        const reply = last.find(({ choices }) => choices.some((choice) => choice.label === label))!;
        return send(label, {
          row: reply.row,
          index: reply.choices.findIndex((each) => each.label === label),
        });
      },
    };
  },

  telegram: async ({ book, words, assistant, site }) => {
    const server = await startStandIn();
    const telegram = startTelegram({
      token: server.token,
      apiRoot: server.root,
      limits: false,
      book,
      receive: assistant.receive,
      words,
      draw: async () => null,
      make: async () => null,
      log: pino({ level: 'silent' }),
      site,
      claimWord: 'heron-lamp',
      pollSeconds: 5,
    });
    onTestFinished(async () => {
      await telegram.stop();
      await server.close();
    });
    await telegram.ready;
    const ana = server.someone('Ana');
    const group = server.group('Ferry Lane', ana);
    server.say(group, ana, '/start heron-lamp');
    await server.until('let in', () => book.chats(site).length > 0, QUIET_MS);
    const seen = async (act: () => unknown) => {
      await server.settled();
      await server.until('all sent', () => book.waiting('telegram', 1).length === 0);
      const before = server.textsTo(group).length;
      act();
      await server.settled();
      await server.until('all sent', () => book.waiting('telegram', 1).length === 0);
      return server.textsTo(group).slice(before);
    };
    return {
      say: (text) => seen(() => server.say(group, ana, text)),
      press: (label) => seen(() => server.press(server.world.sent.at(-1)!.message, label, ana)),
    };
  },
};

/** The same on every channel. A new one is a row of `HANDS`. */
describe.each(Object.keys(HANDS))('over the %s', (name) => {
  const open = async () => {
    const parts = house();
    const lines = () =>
      [...parts.book.entriesWalk(parts.site)].map(({ record, voidedBy }) => [record.kind, voidedBy]);
    return { ...parts, lines, hand: await HANDS[name]!(parts) };
  };

  it('what is logged is answered, in one reply, with its number and its net', async () => {
    const { hand, lines } = await open();
    const replies = await hand.say('cart 61.5 kg, chips 12 kg');
    expect(replies).toHaveLength(1);
    expect(replies[0]).toContain('45.5 kg net (61.5 − 16)');
    expect(replies[0]).toContain('#2 Chips 12 kg');
    expect(lines()).toEqual([
      ['weigh-in', null],
      ['weigh-in', null],
    ]);
  });

  it('talk gets no answer', async () => {
    const { hand, lines } = await open();
    expect(await hand.say('see you all tomorrow, good work')).toEqual([]);
    expect(lines()).toEqual([]);
  });

  it('what is not plausible is asked about, and a button settles it', async () => {
    const { hand, lines } = await open();
    const [asked] = await hand.say('cart 665');
    expect(asked).toMatch(/too heavy/);
    const [settled] = await hand.press('66.5');
    expect(settled).toContain('50.5 kg net');
    expect(lines()[0]).toEqual(['weigh-in', 2]);
  });

  it('undo takes back', async () => {
    const { hand, lines } = await open();
    await hand.say('cart 61.5');
    const [undone] = await hand.say('undo');
    expect(undone).toMatch(/Undone: #1/);
    expect(lines()).toEqual([
      ['weigh-in', 2],
      ['void', null],
    ]);
  });

  it('what people write comes back as they wrote it', async () => {
    const { hand } = await open();
    const [reply] = await hand.say('note: <b>gate</b> *open* _at_ [nine](x) & more');
    expect(reply).toContain('<b>gate</b> *open* _at_ [nine](x) & more');
  });

  it('somebody hurt: what to do now is the first line', async () => {
    const { hand } = await open();
    const [reply] = await hand.say('Ben is hurt, he is bleeding');
    expect(reply!.trim().split('\n')[0]).toMatch(/^Stop the machines/);
  });

  it('asked for, today and the week are answered', async () => {
    const { hand } = await open();
    await hand.say('cart 61.5');
    expect((await hand.say('week'))[0]).toContain('In: 45.5 kg net');
    expect((await hand.say('today'))[0]).toMatch(/job|nothing is due/);
  });
});
