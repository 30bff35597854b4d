import { existsSync } from 'node:fs';
import { userInfo } from 'node:os';
import { parseArgs } from 'node:util';
import { say } from '#assistant';
import { startTerminal, type Terminal } from '#channels/terminal';
import type { OpenedBook } from '#logbook';
import { Site } from '#records';
import { DEFAULT_BOOK } from './backup-folder.ts';
import { dailyBackup } from './daily-backup.ts';
import { DEMO_NAME, fillDemo } from './demo.ts';
import { drawAsText, draws } from './drawing.ts';
import { linesOf, writeLine } from './lines.ts';
import { paperMaker } from './making.ts';
import { type OverPage, overPage } from './page.ts';
import { build, complainTo } from './parts.ts';
import { Problem } from './problem.ts';
import { readSiteFile } from './site-file.ts';
import { SITE_OPTIONS } from './span-args.ts';
import { emptyOldTalk, emptyOldWords } from './tidy.ts';
import { overWeather, weatherAsked } from './weather.ts';

const DEFAULT_NAME = 'My compost site';
/** How often the clock is looked at for what goes out unasked. */
const TICK_MS = 15_000;

/** `start`: the chat in the terminal, on a local page, and over Telegram where there is a token. */
export async function run(args: string[]): Promise<number> {
  const { values } = parseArgs({
    args,
    options: {
      ...SITE_OPTIONS,
      demo: { type: 'boolean' },
      port: { type: 'string' },
      host: { type: 'string' },
      'no-page': { type: 'boolean' },
    },
  });
  const path = values.db ?? (values.demo ? 'data/demo.db' : DEFAULT_BOOK);
  const warn = (line: string) => process.stderr.write(`heaphand: ${line}\n`);
  const file = values.site ? readSiteFile(values.site, warn) : null;
  const service = weatherAsked(process.env);
  const isNew = !existsSync(path);
  const complain = complainTo(process.stderr);
  const { book, assistant, words } = build(path, complain);
  const stop = stopping();
  let page: OverPage | null = null;
  let terminal: Terminal | null = null;
  try {
    const now = () => new Date().toISOString();
    const site = siteOf(book, file, values.demo === true, now());
    if (values.demo && book.lastNumber(site) === 0) fillDemo(book, assistant, site, now());
    const out = (text: string) => writeLine(process.stdout, text);
    for (const line of greeting(book, site, path, isNew && !file && !values.demo)) await out(line);

    if (values['no-page']) book.setMemo(site, 'page-served-at', null);
    else {
      const heard = () => void terminal?.flush();
      page = await overPage({ book, assistant, words, site, complain, draw: draws, heard }, values);
      await out(page.link ? `Page: ${page.link}` : 'Page: no free port here; choose one with --port');
    }
    const papers = paperMaker(book);
    const savedAt = (id: string, saved: string): string => {
      const { site: how } = book.siteById(site);
      const manner = { ...how, language: how.languages[0] ?? 'en', today: now().slice(0, 10) };
      return words.label(say(id, { path: { text: saved } }), manner);
    };
    book.setMemo(site, 'home', { channel: 'terminal', chat: 'terminal' });
    terminal = startTerminal({
      book,
      assistant,
      site,
      lines: stop.whileRunning(linesOf(process.stdin)),
      print: out,
      prompt: () => {
        if (process.stdin.isTTY) process.stdout.write('> ');
      },
      now,
      name: userName(),
      drawn: drawAsText(path, (saved) => `  ${savedAt('chart-saved', saved)}`),
      made: async (file, of) => {
        const saved = await papers.saved(file, of);
        return saved && savedAt('paper-saved', saved);
      },
      complain,
    });
    const backups = dailyBackup(book, path, warn);
    const weather = overWeather({ service, book, assistant, warn, complain });
    const tidy = () => {
      emptyOldTalk(book, now());
      emptyOldWords(book, assistant, now());
      void backups.look(now());
      void weather.look(now());
    };
    tidy();
    const hourly = setInterval(tidy, 3_600_000);
    const clock = setInterval(() => {
      assistant.tick(now());
      void terminal?.flush();
    }, TICK_MS);
    const ready = () => out(`ready: ${book.siteById(site).site.name}`);
    try {
      const token = process.env.BOT_TOKEN;
      if (!token) {
        await ready();
        await Promise.race([terminal.ended, stop.asked]);
        return 0;
      }
      // Loaded only where it is wanted: the client is the heaviest part of the start.
      const { overTelegram } = await import('./telegram.ts');
      const telegram = overTelegram({ token, environment: process.env, book, assistant, words, site });
      if (telegram.claimWord) await out(`To let your group in, write there: /start ${telegram.claimWord}`);
      void telegram.ready.then(ready);
      // The end of what is typed here does not end it: the group goes on.
      await Promise.race([telegram.ended, stop.asked]).finally(telegram.stop);
      return 0;
    } finally {
      clearInterval(clock);
      clearInterval(hourly);
      await Promise.all([backups.ended(), weather.ended()]);
    }
  } finally {
    await page?.close();
    book.close();
    process.stdin.destroy();
  }
}

function siteOf(book: OpenedBook, file: Site | null, demo: boolean, at: string): number {
  const sites = book.sites();
  if (file) return (book.siteByName(file.name) ?? book.addSite(file, at)).id;
  if (sites.length === 1) return sites[0]!.id;
  if (sites.length > 1) {
    throw new Problem(
      `this book holds ${sites.length} sites: say which with --site FILE (${sites.map(({ site }) => site.name).join(', ')})`,
    );
  }
  const timeZone = Intl.DateTimeFormat().resolvedOptions().timeZone;
  const site = demo
    ? readSiteFile(new URL('../../fixtures/sites/demo.json', import.meta.url).pathname, () => {})
    : Site.parse({
        name: DEFAULT_NAME,
        timeZone,
        containers: { cart: { litres: 240, holds: 'food-scraps' } },
      });
  return book.addSite({ ...site, ...(demo ? { name: DEMO_NAME } : {}) }, at).id;
}

function greeting(book: OpenedBook, id: number, path: string, fresh: boolean): string[] {
  const { site } = book.siteById(id);
  const lines = [`Heaphand · ${site.name} · log book ${path}`];
  if (fresh) {
    lines.push(
      `A new book: ${site.units.mass}, °${site.units.temperature}, ${site.timeZone}, no piles yet, empty cart weight not set.`,
      'Change it by typing: set units lb F · set time zone Europe/Paris · empty cart 16.2 · started pile A',
      'or give a site file: npm start -- --site FILE (a made-up one to look at: npm start -- --demo)',
    );
  }
  lines.push('Type what you did: "cart 61.5 kg, chips 12" · "help" · "today" · Ctrl-D ends.');
  return lines;
}

function userName(): string {
  try {
    return userInfo().username || 'you';
  } catch {
    return 'you';
  }
}

/** SIGTERM and SIGINT ask once for an orderly end; a second one changes nothing. */
function stopping() {
  let ask: () => void = () => {};
  const asked = new Promise<void>((resolve) => {
    ask = resolve;
  });
  process.on('SIGTERM', ask);
  process.on('SIGINT', ask);
  return {
    asked,
    async *whileRunning(lines: AsyncGenerator<string>): AsyncGenerator<string> {
      const end = asked.then(() => ({ done: true, value: undefined }) as IteratorResult<string>);
      for (;;) {
        const next = await Promise.race([lines.next(), end]);
        if (next.done) return;
        yield next.value;
      }
    },
  };
}
