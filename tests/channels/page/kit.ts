import { randomBytes } from 'node:crypto';
import { existsSync } from 'node:fs';
import { type Browser, type BrowserContext, chromium, type Page as Tab } from 'playwright-core';
import { onTestFinished } from 'vitest';
import { makeAssistant } from '#assistant';
import { type Page, startPage } from '#channels/page';
import { openBook } from '#logbook';
import { Site } from '#records';
import { makeWords } from '#wording';
import type { News } from '../../../src/channels/page/wire.ts';
import { draws } from '../../../src/commands/drawing.ts';
import { homesOf, readTexts } from '../../../src/commands/parts.ts';

const SITE = {
  name: 'Ferry Lane',
  timeZone: 'UTC',
  languages: ['en'],
  containers: { cart: { tareKg: 16, litres: 240, holds: 'food-scraps' } },
  drums: [{ name: 'drum', litres: 5000 }],
  piles: ['A', 'B'],
  safety: {
    emergencyNumber: '112',
    address: 'Ferry Lane 4, back gate',
    isolator: 'the grey box by the door',
  },
};

/** A site with its book in memory and its page on loopback, at a clock that stands where it is put. */
export const yard = async (change: Record<string, unknown> = {}) => {
  const faults: string[] = [];
  let ahead = 0;
  const now = () => new Date(Date.now() + ahead).toISOString();
  const book = openBook(':memory:', { now });
  const words = makeWords(readTexts(), (what) => faults.push(what));
  const complain = (what: string, error: unknown) => faults.push(`${what}: ${(error as Error)?.stack ?? ''}`);
  const assistant = makeAssistant({ book, words, complain, homes: homesOf(book) });
  const { id: site } = book.addSite(Site.parse({ ...SITE, ...change }), now());
  const link = (): string => {
    const token = randomBytes(24).toString('base64url');
    book.addLink(site, token);
    return token;
  };
  const token = link();
  let heard = 0;
  const open = (port = 0): Promise<Page> =>
    startPage({ book, assistant, words, complain, port, now, draw: draws, heard: () => (heard += 1) });
  let page = await open();
  onTestFinished(async () => {
    await page.close();
    book.close();
  });
  const port = Number(new URL(page.address).port);

  return {
    book,
    assistant,
    site,
    token,
    link,
    faults,
    address: page.address,
    heard: () => heard,
    open: `${page.address}#${token}`,
    pass: (ms: number) => {
      ahead += ms;
    },
    now,
    /** No signal: nothing answers at the address any more. */
    cut: () => page.close(),
    mend: async () => {
      page = await open(port);
    },
    phone: (who: { token?: string; id?: string } = {}) => phone(page.address, who.token ?? token, who.id),
    lines: () =>
      [...book.entriesWalk(site)].map(({ number, record, voidedBy, happenedAt, person }) => ({
        number,
        kind: record.kind,
        voidedBy,
        happenedAt,
        who: person === null ? null : book.personById(person)?.name,
      })),
  };
};

/** What a phone sends, without a browser. */
const phone = (address: string, token: string, id = randomBytes(24).toString('base64url')) => {
  const headers = { authorization: `Bearer ${token}`, 'x-phone': id };
  const post = (body: unknown, more: Record<string, string> = {}) =>
    fetch(`${address}api/say`, {
      method: 'POST',
      headers: { ...headers, ...more },
      body: typeof body === 'string' ? body : JSON.stringify(body),
    });
  const said = (text: string, more: Record<string, unknown> = {}) => ({
    key: randomBytes(12).toString('base64url'),
    text,
    typedAt: 1000,
    now: 1000,
    name: 'Ana',
    language: 'en',
    ...more,
  });
  return {
    id,
    post,
    said,
    say: async (text: string, more: Record<string, unknown> = {}) => {
      const response = await post(said(text, more));
      const body = (await response.json()) as {
        trouble?: string;
        replies: {
          row: number;
          text: string;
          choices: { label: string; undo: boolean }[];
          picture: { alt: string } | null;
        }[];
      };
      return {
        status: response.status,
        ...body,
        text: (body.replies ?? []).map((reply) => reply.text).join('\n'),
      };
    },
    picture: async (row: number) => {
      const response = await fetch(`${address}api/picture/${row}`, { headers });
      return { status: response.status, body: Buffer.from(await response.arrayBuffer()) };
    },
    news: async () => {
      const response = await fetch(`${address}api/news?after=0`, { headers });
      return { status: response.status, body: (await response.json()) as News };
    },
  };
};

const CHROMIUM = '/usr/bin/chromium';
export const hasBrowser = existsSync(CHROMIUM);
if (!hasBrowser && process.env.CI) throw new Error(`no ${CHROMIUM}: the page cannot be tried in a browser`);
if (!hasBrowser) console.log(`skipped: the page in a browser, since there is no ${CHROMIUM} here`);

export const launch = (): Promise<Browser> =>
  chromium.launch({
    executablePath: CHROMIUM,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });

/** A phone of its own: another context has another memory. A page that puts anything on the console is at fault. */
export const takePhone = async (
  browser: Browser,
  options: Parameters<Browser['newContext']>[0] = {},
): Promise<{ context: BrowserContext; tab: Tab; complaints: string[] }> => {
  const context = await browser.newContext({
    viewport: { width: 390, height: 780 },
    locale: 'en-GB',
    ...options,
  });
  onTestFinished(() => context.close());
  const tab = await context.newPage();
  const complaints: string[] = [];
  tab.on('pageerror', (error) => complaints.push(String(error)));
  tab.on('console', (message) => {
    if (message.type() === 'error' && !/Failed to load resource/.test(message.text()))
      complaints.push(message.text());
  });
  return { context, tab, complaints };
};
