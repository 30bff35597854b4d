/// <reference lib="dom" />
import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, BrowserContext, Page as Tab } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hasBrowser, launch, takePhone, yard } from './kit.ts';

type Yard = Awaited<ReturnType<typeof yard>>;
const SHOTS = process.env.PAGE_SHOTS;

describe.skipIf(!hasBrowser)('the page in a browser', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => browser.close());

  const write = async (tab: Tab, text: string) => {
    await tab.fill('#field', text);
    await tab.click('#send');
  };
  const slip = (tab: Tab, text: string) => tab.locator('.slip', { hasText: text });
  const replied = (tab: Tab, text: string) => tab.locator('.reply', { hasText: text }).first().waitFor();
  const shot = async (tab: Tab, name: string) => {
    if (SHOTS) await tab.screenshot({ path: `${SHOTS}/${name}.png` });
  };
  /** Opened while there was signal, so that the phone has the page; then none. */
  const openThenLose = async (place: Yard, tab: Tab, context: BrowserContext) => {
    await tab.goto(place.open);
    await tab.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await tab.locator('#site', { hasText: 'Ferry Lane' }).waitFor();
    await place.cut();
    await context.setOffline(true);
  };
  const axe = async (tab: Tab) => {
    const { violations } = await new AxeBuilder({ page: tab })
      .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
      .analyze();
    return violations.map(({ id, nodes }) => [id, ...nodes.map(({ html }) => html)]);
  };

  it('asks once for a name, logs, shows the reply, and takes back', async () => {
    const { open, lines } = await yard();
    const { tab, complaints } = await takePhone(browser);
    await tab.goto(open);
    await tab.getByLabel('Your first name').fill('Ana');
    await shot(tab, 'first');
    await tab.getByRole('button', { name: 'That’s me' }).or(tab.locator('#name-save')).click();
    await write(tab, 'cart 61.5');
    await replied(tab, '45.5 kg net (61.5 − 16)');
    await shot(tab, 'logged');
    await tab.getByRole('button', { name: 'Undo' }).click();
    await replied(tab, 'Undone: #1');
    expect(await tab.getByRole('button', { name: 'Undo' }).count()).toBe(0);
    expect(lines()).toMatchObject([{ who: 'Ana', voidedBy: 2 }, { kind: 'void' }]);
    await tab.reload();
    await replied(tab, 'Undone: #1');
    expect(await tab.locator('#name-form').isVisible()).toBe(false);
    expect(await tab.locator('.slip').count()).toBe(2);
    expect(complaints).toEqual([]);
  });

  it('takes "skip" for a name and does not ask again', async () => {
    const { open } = await yard();
    const { tab } = await takePhone(browser);
    await tab.goto(open);
    await tab.getByRole('button', { name: 'Skip' }).click();
    await tab.reload();
    await tab.getByText('Name: none').waitFor();
    expect(await tab.locator('#name-form').isVisible()).toBe(false);
  });

  it('settles a doubt by its button', async () => {
    const { open, lines } = await yard();
    const { tab } = await takePhone(browser);
    await tab.goto(open);
    await write(tab, 'cart 665');
    await replied(tab, 'too heavy');
    await shot(tab, 'doubt');
    await tab.getByRole('button', { name: '66.5', exact: true }).click();
    await replied(tab, '50.5 kg net');
    expect(lines()).toHaveLength(2);
    expect(await tab.getByRole('button', { name: '66.5', exact: true }).count()).toBe(0);
  });

  it('has Today and Week one tap away', async () => {
    const { open } = await yard();
    const { tab } = await takePhone(browser);
    await tab.goto(open);
    await write(tab, 'cart 61.5');
    await replied(tab, '45.5 kg net');
    await tab.getByRole('button', { name: 'Today', exact: true }).click();
    await replied(tab, 'job');
    await tab.getByRole('button', { name: 'Week', exact: true }).click();
    await replied(tab, 'In: 45.5 kg net');
    await shot(tab, 'week');
  });

  it('keeps what is typed with no signal, opens without one, and sends it once, in order, dated when typed', async () => {
    const place = await yard();
    const { tab, context, complaints } = await takePhone(browser);
    await openThenLose(place, tab, context);
    await write(tab, 'cart 61');
    await write(tab, 'cart 62');
    await slip(tab, 'cart 62').getByText('Waiting to be sent').waitFor();
    await tab.reload();
    await slip(tab, 'cart 61').getByText('Waiting to be sent').waitFor();
    await write(tab, 'cart 63');
    await slip(tab, 'cart 63').getByText('Waiting to be sent').waitFor();
    expect(await tab.locator('.slip.waiting').count()).toBe(3);
    await tab.getByRole('button', { name: 'Emergency' }).click();
    await tab.getByText('the grey box by the door').first().waitFor();
    await shot(tab, 'no-signal-card');
    await tab.getByRole('button', { name: 'Close' }).click();
    await shot(tab, 'no-signal');
    const typedBefore = place.now();
    place.pass(2 * 3_600_000);
    await place.mend();
    await context.setOffline(false);
    await replied(tab, '47 kg net');
    expect(await tab.locator('.slip.waiting').count()).toBe(0);
    const texts = await tab.locator('.typed').allTextContents();
    expect(texts).toEqual(['cart 61', 'cart 62', 'cart 63']);
    expect(place.lines()).toHaveLength(3);
    await tab.reload();
    await replied(tab, '47 kg net');
    expect(place.lines()).toHaveLength(3);
    // The phone's clock did not move, the program's did: how long ago it was typed is what counts.
    for (const { happenedAt } of place.lines()) expect(happenedAt > typedBefore).toBe(true);
    expect(complaints).toEqual([]);
  });

  it('opens the card by itself where danger is typed and no answer can come', async () => {
    const place = await yard();
    const { tab, context, complaints } = await takePhone(browser);
    await openThenLose(place, tab, context);
    await tab.reload();
    await tab.waitForFunction(() => 'dangersIn' in window);
    await write(tab, 'cart 61');
    await slip(tab, 'cart 61').getByText('Waiting to be sent').waitFor();
    expect(await tab.locator('#card').isVisible()).toBe(false);
    for (const [text, head] of [
      ['smoke comming out of pile A', /^Fire/],
      ['Ana tiene el braso dentro del tambor!!', /^Somebody is caught/],
    ] as const) {
      await write(tab, text);
      await tab.locator('#card').waitFor();
      expect(await tab.locator('#card h2').first().textContent()).toMatch(head);
      expect(await tab.evaluate(() => document.activeElement?.id)).toBe('card');
      expect(await tab.evaluate(() => scrollY)).toBe(0);
      await shot(tab, `no-signal-${text.slice(0, 3)}`);
      await tab.locator('#emergency').click();
    }
    await place.mend();
    await context.setOffline(false);
    await replied(tab, '112');
    expect(place.lines().filter(({ kind }) => kind === 'problem')).toHaveLength(2);
    expect(complaints).toEqual([]);
  });

  it('shows a picture where it was asked for, and its words where it cannot be had', async () => {
    const place = await yard();
    const { tab, context, complaints } = await takePhone(browser);
    await tab.goto(place.open);
    await tab.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await write(tab, 'cart 61.5');
    await replied(tab, '45.5 kg net');
    await tab.getByRole('button', { name: 'Week', exact: true }).click();
    const image = tab.getByRole('img', { name: /^46 kg in since/ });
    await image.waitFor();
    await tab.waitForFunction(
      () => document.querySelector<HTMLImageElement>('#log img')?.naturalWidth === 1440,
    );
    const { width, height } = (await image.boundingBox())!;
    expect(width).toBeGreaterThan(340);
    expect(width).toBeLessThan(390);
    const natural = await image.evaluate((each: HTMLImageElement) => each.naturalHeight / each.naturalWidth);
    expect(height / width).toBeCloseTo(natural, 1);
    await shot(tab, 'picture');
    await place.cut();
    await context.setOffline(true);
    await tab.reload();
    await replied(tab, '46 kg in since');
    expect(await tab.locator('#log img').count()).toBe(0);
    expect(complaints).toEqual([]);
  });

  it('sends nothing twice when the answer is lost on the way', async () => {
    const { open, lines } = await yard();
    const { tab } = await takePhone(browser);
    await tab.goto(open);
    let lost = 0;
    await tab.route('**/api/say', async (route) => {
      await route.fetch();
      lost += 1;
      if (lost === 1) await route.abort();
      else await route.continue();
    });
    await write(tab, 'cart 61.5');
    await slip(tab, 'cart 61.5').getByText('Waiting').waitFor();
    await replied(tab, '45.5 kg net');
    expect(lost).toBeGreaterThan(1);
    expect(lines()).toHaveLength(1);
  });

  it('says kindly that a link has ended, and sends what waits with the new one', async () => {
    const { open, book, site, link, address, lines } = await yard();
    const { tab } = await takePhone(browser);
    await tab.goto(open);
    await tab.locator('#site', { hasText: 'Ferry Lane' }).waitFor();
    book.endLinks(site);
    await write(tab, 'cart 61.5');
    await tab.getByText('This link has ended').waitFor();
    await shot(tab, 'ended');
    expect(await tab.locator('#say').isVisible()).toBe(false);
    expect(await axe(tab)).toEqual([]);
    expect(lines()).toEqual([]);
    await tab.getByRole('button', { name: 'Emergency' }).click();
    await tab.getByText('the grey box by the door').first().waitFor();
    await tab.getByRole('button', { name: 'Close' }).click();
    await tab.goto(`${address}#${link()}`);
    await replied(tab, '45.5 kg net');
    expect(await tab.getByText('This link has ended').count()).toBe(0);
  });

  it('says so where there is no link, or one that is none', async () => {
    const { address } = await yard();
    const { tab } = await takePhone(browser);
    await tab.goto(address);
    await tab.getByText('you need the site').waitFor();
    await tab.goto(`${address}#${'z'.repeat(32)}`);
    await tab.getByText('This link is not known').waitFor();
  });

  it('keeps two phones apart', async () => {
    const { open, lines } = await yard();
    const ana = (await takePhone(browser)).tab;
    const ben = (await takePhone(browser)).tab;
    for (const [tab, name] of [
      [ana, 'Ana'],
      [ben, 'Ben'],
    ] as const) {
      await tab.goto(open);
      await tab.getByLabel('Your first name').fill(name);
      await tab.locator('#name-save').click();
    }
    await Promise.all([write(ana, 'cart 61'), write(ben, 'cart 72')]);
    await Promise.all([replied(ana, '45 kg net'), replied(ben, '56 kg net')]);
    expect(await ana.getByText('56 kg net').count()).toBe(0);
    expect(
      lines()
        .map(({ who }) => who)
        .sort(),
    ).toEqual(['Ana', 'Ben']);
    await write(ben, 'undo');
    await replied(ben, 'Undone');
    expect(lines().filter(({ voidedBy }) => voidedBy !== null)).toMatchObject([{ who: 'Ben' }]);
  });

  it('shows what people wrote as text, whatever it is', async () => {
    const { open, lines } = await yard({ name: 'Ferry <b>Lane</b> "x"' });
    const { tab, complaints } = await takePhone(browser);
    await tab.goto(open);
    const nasty = '<img src=x onerror="document.title=1">';
    await tab.getByLabel('Your first name').fill(nasty);
    await tab.locator('#name-save').click();
    await write(tab, `note: ${nasty} \u202ekcab\u202c <script>document.title=1</script>`);
    await tab.locator('.slip').first().waitFor();
    await write(tab, 'cart 61.5');
    await replied(tab, '45.5 kg net');
    expect(await tab.locator('.typed').first().textContent()).toContain(`${nasty} kcab <script>`);
    expect(await tab.locator('#log img, #log script, #log i, header b, #about img').count()).toBe(0);
    expect(await tab.title()).not.toBe('1');
    expect(await tab.locator('#site').textContent()).toBe('Ferry <b>Lane</b> "x"');
    await tab.getByText(`Name: ${nasty.slice(0, 20)}`).waitFor();
    for (const { who } of lines()) expect(who).not.toMatch(/[\u202a-\u202e]/);
    await shot(tab, 'nasty');
    expect(complaints).toEqual([]);
  });

  it.each([
    { name: 'light', colorScheme: 'light' },
    { name: 'dark', colorScheme: 'dark' },
    { name: 'french', locale: 'fr-CA' },
    { name: 'spanish', locale: 'es-MX' },
    { name: 'narrow', viewport: { width: 320, height: 568 } },
    // A phone at 200 % has half the room.
    { name: 'double', viewport: { width: 195, height: 390 }, deviceScaleFactor: 2 },
    { name: 'wide', viewport: { width: 1280, height: 800 } },
  ] as const)('meets WCAG 2.2 AA, lets nothing run over, and has large targets: $name', async (how) => {
    const { open } = await yard();
    const { name, ...options } = how;
    const { tab } = await takePhone(browser, options);
    await tab.goto(open);
    await tab.locator('#site', { hasText: 'Ferry Lane' }).waitFor();
    await shot(tab, `${name}-first`);
    expect(await axe(tab)).toEqual([]);
    await tab.locator('#name-skip').click();
    await write(tab, 'cart 665');
    await tab.locator('.choices button').first().waitFor();
    await tab.locator('#today').click();
    await tab.locator('.slip').nth(1).waitFor();
    await shot(tab, name);
    expect(await axe(tab)).toEqual([]);
    await tab.locator('#emergency').click();
    if (name === 'spanish')
      await tab.getByRole('heading', { name: 'alguien está atrapado' }).first().waitFor();
    await shot(tab, `${name}-card`);
    expect(await axe(tab)).toEqual([]);
    const { over, small } = await tab.evaluate(() => ({
      over: document.documentElement.scrollWidth - document.documentElement.clientWidth,
      small: [...document.querySelectorAll('button, select, input, textarea, a')]
        .map((each) => ({ id: each.id || each.textContent, box: each.getBoundingClientRect() }))
        .filter(({ box }) => box.width > 0 && (box.width < 48 || box.height < 48))
        .map(({ id, box }) => `${id} ${box.width}×${box.height}`),
    }));
    expect(over).toBe(0);
    expect(small).toEqual([]);
  });

  it('can be used by keyboard alone, and a screen reader hears the reply', async () => {
    const { open, lines } = await yard();
    const { tab } = await takePhone(browser);
    await tab.goto(open);
    await tab.locator('#site', { hasText: 'Ferry Lane' }).waitFor();
    const seen: string[] = [];
    const goTo = async (id: string) => {
      for (let i = 0; i < 40; i += 1) {
        await tab.keyboard.press('Tab');
        const at = await tab.evaluate(() => document.activeElement?.id ?? '');
        seen.push(at);
        if (at === id) return;
      }
      throw new Error(`no way by keyboard to ${id}: ${seen.join(' ')}`);
    };
    await goTo('name');
    await tab.keyboard.type('Ana');
    await tab.keyboard.press('Enter');
    expect(await tab.evaluate(() => document.activeElement?.id)).toBe('field');
    await tab.keyboard.type('cart 61.5');
    await tab.keyboard.press('Enter');
    await replied(tab, '45.5 kg net');
    const log = tab.getByRole('log');
    expect(await log.getAttribute('aria-live')).toBe('polite');
    expect(await log.textContent()).toContain('45.5 kg net');
    await goTo('emergency');
    await tab.keyboard.press('Enter');
    expect(await tab.locator('#emergency').getAttribute('aria-expanded')).toBe('true');
    expect(lines()).toHaveLength(1);
  });

  it('offers digits where a number comes next', async () => {
    const { open } = await yard();
    const { tab } = await takePhone(browser);
    await tab.goto(open);
    await tab.getByRole('button', { name: 'cart', exact: true }).click();
    expect(await tab.inputValue('#field')).toBe('cart ');
    expect(await tab.getAttribute('#field', 'inputmode')).toBe('decimal');
    await tab.keyboard.type('61.5');
    await tab.getByRole('button', { name: 'chips', exact: true }).click();
    await tab.keyboard.type('12');
    expect(await tab.inputValue('#field')).toBe('cart 61.5, chips 12');
    await tab.getByRole('button', { name: /abc/ }).click();
    expect(await tab.getAttribute('#field', 'inputmode')).toBe('text');
    await tab.keyboard.press('Enter');
    await replied(tab, 'Chips 12 kg');
  });

  it('brings what is said later without a reload, also after days', async () => {
    const { open, book, site, pass, now } = await yard();
    const { tab } = await takePhone(browser);
    await tab.clock.install();
    await tab.goto(open);
    await write(tab, 'cart 61.5');
    await replied(tab, '45.5 kg net');
    const phone = (await tab.evaluate(
      () =>
        new Promise((resolve) => {
          const request = indexedDB.open('site-log');
          request.onsuccess = () => {
            const got = request.result.transaction('kept').objectStore('kept').get('phone');
            got.onsuccess = () => resolve(got.result);
          };
        }),
    )) as string;
    pass(3 * 86_400_000);
    await tab.clock.fastForward(3 * 86_400_000);
    book.putOut({
      site,
      channel: 'page',
      chat: phone,
      thread: null,
      answers: null,
      message: null,
      about: 'reminder',
      weekFrom: null,
      private: false,
      text: 'The gate stays open on Friday.',
      choices: [],
      picture: null,
      file: null,
      createdAt: now(),
    });
    await tab.clock.runFor(60_000);
    await replied(tab, 'The gate stays open on Friday.');
    expect(await tab.locator('.reply', { hasText: 'The gate' }).count()).toBe(1);
    expect(await tab.getByRole('button', { name: 'Undo' }).count()).toBe(0);
    await write(tab, 'cart 62.5');
    await replied(tab, '46.5 kg net');
    await tab.clock.runFor(60_000);
    expect(book.waiting('page', 9)).toEqual([]);
  });

  it('never tells the link to anybody: not in what is asked for, not in a referrer', async () => {
    const { open, token } = await yard();
    const { tab } = await takePhone(browser);
    const seen: string[] = [];
    tab.on('request', (request) => seen.push(`${request.url()} ${request.headers().referer ?? ''}`));
    await tab.goto(open);
    await write(tab, 'cart 61.5');
    await replied(tab, '45.5 kg net');
    expect(seen.length).toBeGreaterThan(4);
    expect(seen.filter((line) => line.replace(/#.*/, '').includes(token))).toEqual([]);
  });

  it('is seen within a second on a slow phone', async () => {
    const { open } = await yard();
    const { tab, context } = await takePhone(browser);
    await tab.goto(open);
    const session = await context.newCDPSession(tab);
    await session.send('Network.enable');
    await session.send('Network.setCacheDisabled', { cacheDisabled: true });
    await session.send('Network.setBypassServiceWorker', { bypass: true });
    await session.send('Network.emulateNetworkConditions', {
      offline: false,
      latency: 150,
      downloadThroughput: 200_000,
      uploadThroughput: 90_000,
    });
    await session.send('Emulation.setCPUThrottlingRate', { rate: 4 });
    await tab.reload();
    await tab.locator('#site', { hasText: 'Ferry Lane' }).waitFor();
    const paint = await tab.evaluate(
      () => performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? 0,
    );
    console.log(`first paint on a slow phone: ${Math.round(paint)} ms`);
    // Measured and shown, not judged: how loaded the machine is would be judged with it.
    expect(paint).toBeGreaterThan(0);
  });
});
