import { randomBytes } from 'node:crypto';
import { get } from 'node:http';
import { describe, expect, it } from 'vitest';
import { PAGE_TEXTS } from '#channels/page';
import { readTexts } from '../../../src/commands/parts.ts';
import { yard } from './kit.ts';

const HOUR = 3_600_000;

describe('what a phone sends', () => {
  it('is logged, answered, and said in the name of whoever wrote it', async () => {
    const { phone, lines, faults } = await yard();
    const answer = await phone().say('cart 61.5 kg');
    expect(answer.text).toContain('45.5 kg net (61.5 − 16)');
    expect(lines()).toMatchObject([{ number: 1, kind: 'weigh-in', who: 'Ana' }]);
    expect(faults).toEqual([]);
  });

  it('is one entry however often it comes, with the same reply each time', async () => {
    const { phone, lines } = await yard();
    const ana = phone();
    const said = ana.said('cart 61.5');
    const answers = [];
    for (let i = 0; i < 3; i += 1) answers.push(await (await ana.post(said)).json());
    expect(answers[1]).toEqual(answers[0]);
    expect(answers[2]).toEqual(answers[0]);
    expect(lines()).toHaveLength(1);
  });

  it('is dated when it was typed, whatever the clock of the phone says', async () => {
    const { phone, lines, now } = await yard();
    const wrong = Date.parse('2019-01-01T00:00:00Z');
    await phone().say('cart 61.5', { typedAt: wrong, now: wrong + 5 * HOUR });
    const ago = Date.parse(now()) - Date.parse(lines()[0]!.happenedAt);
    expect(Math.abs(ago - 5 * HOUR)).toBeLessThan(60_000);
  });

  it('is never dated ahead, and not taken after two weeks', async () => {
    const { phone, lines, now } = await yard();
    await phone().say('cart 61.5', { typedAt: 9 * HOUR, now: HOUR });
    expect(lines()[0]!.happenedAt <= now()).toBe(true);
    const late = await phone().say('cart 60', { typedAt: 0, now: 15 * 24 * HOUR });
    expect(late).toMatchObject({ status: 422, trouble: 'too-old' });
    expect(lines()).toHaveLength(1);
  });

  it('comes under "volunteer" where the name was skipped, and a name hides nothing', async () => {
    const { phone, lines } = await yard();
    await phone().say('cart 61', { name: '' });
    await phone().say('cart 62', { name: '\u202eanA\u200f\u0007  <b>' });
    await phone().say('seau 12 kg', { name: ' ', language: 'fr' });
    expect(lines().map(({ who }) => who)).toEqual(['volunteer', 'anA <b>', 'bénévole']);
  });

  it('is read in the language of the phone too', async () => {
    const { phone } = await yard();
    expect((await phone().say('pesé un bac de 61,5 kg', { language: 'fr' })).text).toMatch(/#1 .*45,5 kg/);
    for (const [language, words] of [
      ['fr', "Aujourd'hui"],
      ['es', 'Hoy'],
      ['en', 'Today'],
    ] as const)
      expect((await phone().say(words, { ask: 'today', language })).text).not.toBe('');
    expect((await phone().say('Semana', { ask: 'week', language: 'es' })).text).toMatch(/semana/i);
  });
});

describe('who came by a link', () => {
  it('takes back their own within the hour, not later, and not what others wrote', async () => {
    const { phone, pass, lines } = await yard();
    const ana = phone();
    const ben = phone();
    await ana.say('cart 61');
    await ben.say('cart 62', { name: 'Ben' });
    expect((await ana.say('undo #2')).text).toMatch(/somebody else/);
    expect((await ana.say('undo')).text).toMatch(/Undone: #1/);
    pass(61 * 60_000);
    expect((await ben.say('undo #2')).text).toMatch(/more than an hour/);
    expect(lines().map(({ voidedBy }) => voidedBy)).toEqual([3, null, null]);
  });

  it('takes back in time what was typed in time, however late it arrives', async () => {
    const { phone, pass, lines } = await yard();
    const ana = phone();
    await ana.say('cart 61');
    pass(5 * HOUR);
    await ana.say('undo', { typedAt: 0, now: 4.5 * HOUR });
    expect(lines()[0]!.voidedBy).toBe(2);
  });

  it.each([
    'set target 60 t',
    'empty cart 20',
    'set emergency number 555',
    'set units lb F',
    'closed till 2 jan',
    'share',
    'share new',
    'set page address https://heap.example.org',
    'make coordinator',
  ])('sets nothing: %s', async (text) => {
    const { phone, lines } = await yard();
    expect((await phone().say(text)).text).toMatch(/nothing is set|coordinator/i);
    expect(lines()).toEqual([]);
  });

  it('does not set an empty weight by answering the question for it', async () => {
    const { phone, lines } = await yard({ containers: { cart: { litres: 240 } } });
    const ana = phone();
    expect((await ana.say('cart 61')).text).toMatch(/empty cart weigh/);
    await ana.say('16.2');
    expect(lines().map(({ kind }) => kind)).not.toContain('setting');
  });

  it('presses only the buttons of their own replies', async () => {
    const { phone, lines } = await yard();
    const ana = phone();
    const held = await ana.say('cart 665');
    const [reply] = held.replies;
    expect(reply!.choices.map(({ label }) => label)).toContain('66.5');
    const choose = { row: reply!.row, index: reply!.choices.findIndex(({ label }) => label === '66.5') };
    expect(await phone().say('66.5', { choose })).toMatchObject({ status: 422 });
    expect((await ana.say('66.5', { choose })).text).toMatch(/50\.5 kg net/);
    expect(lines()).toHaveLength(2);
  });

  it('does not see the words that go to coordinators alone: those go where the crew is', async () => {
    const { phone, book, site, heard } = await yard();
    book.setMemo(site, 'home', { channel: 'terminal', chat: 'terminal' });
    const ana = phone();
    const answer = await ana.say('arm caught in the drum');
    expect(answer.text).toMatch(/RED STOP/);
    expect(answer.text).not.toMatch(/reported/);
    expect((await ana.news()).body.replies).toEqual([]);
    expect(
      book.waiting('terminal', 9).map(({ text, private: own }) => [/reported/i.test(text), own]),
    ).toEqual([[true, true]]);
    expect(heard()).toBe(1);
  });
});

describe('a picture', () => {
  it('is drawn for the phone that asked for it, and for nobody else', async () => {
    const place = await yard();
    const ana = place.phone();
    await ana.say('cart 61.5');
    const [reply] = (await ana.say('week')).replies;
    expect(reply?.picture?.alt).toMatch(/^46 kg in since /);
    const png = await ana.picture(reply!.row);
    expect(png.status).toBe(200);
    expect(png.body.subarray(1, 4).toString('latin1')).toBe('PNG');
    expect(png.body.readUInt32BE(16)).toBe(1440);
    expect((await place.phone().picture(reply!.row)).status).toBe(422);
    expect(
      (await place.phone({ token: randomBytes(24).toString('base64url') }).picture(reply!.row)).status,
    ).toBe(404);
    expect((await ana.picture(reply!.row - 1)).status).toBe(422);
    expect((await ana.picture(99_999)).status).toBe(422);
  });
});

describe('a link', () => {
  it('opens nothing when unknown, missing, or replaced', async () => {
    const { phone, book, site, link, address } = await yard();
    expect(await phone({ token: 'x'.repeat(32) }).say('cart 61')).toMatchObject({
      status: 404,
      trouble: 'link-unknown',
    });
    expect((await fetch(`${address}api/news`)).status).toBe(401);
    book.endLinks(site);
    expect(await phone().say('cart 61')).toMatchObject({ status: 410, trouble: 'link-ended' });
    expect((await phone().news()).status).toBe(410);
    expect((await phone({ token: link() }).say('cart 61')).status).toBe(200);
  });

  it('of one site opens no other', async () => {
    const { phone, book, site, token } = await yard();
    const other = book.addSite({ ...book.siteById(site).site, name: 'Mill Yard' }, '2026-01-01T00:00:00Z').id;
    book.addLink(other, 'b'.repeat(32));
    const id = 'p'.repeat(32);
    const held = await phone({ id }).say('cart 665');
    const choose = { row: held.replies[0]!.row, index: 0 };
    expect(await phone({ id, token: 'b'.repeat(32) }).say('x', { choose })).toMatchObject({ status: 422 });
    expect((await phone({ id, token }).news()).body.board.name).toBe('Ferry Lane');
    expect((await phone({ id, token: 'b'.repeat(32) }).news()).body.board.name).toBe('Mill Yard');
  });

  it('cannot be guessed at for long', async () => {
    const { phone } = await yard();
    const wrong = [];
    for (let i = 0; i < 24; i += 1)
      wrong.push((await phone({ token: `guess-${i}-aaaaaaaaaaaaaaa` }).say('cart 61')).status);
    expect(wrong.slice(0, 10)).toEqual(Array(10).fill(404));
    expect(wrong).toContain(429);
    expect((await phone().say('cart 61')).status).toBe(200);
  });

  it('takes so many at once, then says how long to wait, and goes on after that', async () => {
    const { phone, pass } = await yard();
    const ana = phone();
    const answers = [];
    // A slow machine gives some back meanwhile: on until it is enough.
    while (answers.length < 230 && answers.at(-1)?.status !== 429)
      answers.push(await ana.post(ana.said('ok')));
    expect(answers.slice(0, 120).every(({ status }) => status === 200)).toBe(true);
    const last = answers.at(-1)!;
    expect(last.status).toBe(429);
    expect(Number(last.headers.get('retry-after'))).toBeGreaterThan(0);
    pass(5000);
    expect((await ana.post(ana.said('ok'))).status).toBe(200);
  });
});

describe('over the wire', () => {
  it('refuses what is too large or not readable, in a few words of its own', async () => {
    const { phone, faults, lines } = await yard();
    const ana = phone();
    expect((await ana.post('x'.repeat(100_000))).status).toBe(413);
    expect((await ana.say('x'.repeat(4001))).status).toBe(422);
    for (const body of [
      '',
      '{',
      '[]',
      '{"key":"a"}',
      'null',
      JSON.stringify(ana.said('cart', { key: '../x' })),
    ])
      expect((await ana.post(body)).status).toBe(422);
    expect((await ana.say('   ')).status).toBe(422);
    expect((await ana.say('x', { typedAt: null })).status).toBe(422);
    expect(faults).toEqual([]);
    expect(lines()).toEqual([]);
  });

  it('runs no script but its own, talks to nobody else, and tells nobody where it was', async () => {
    const { address, phone } = await yard();
    for (const path of ['', 'page.js', 'api/news', 'nothing-here']) {
      const { headers } = await fetch(address + path);
      const policy = headers.get('content-security-policy')!;
      expect(policy).toMatch(/default-src 'none'/);
      expect(policy).toMatch(/script-src 'self'(;|$)/);
      expect(policy).not.toMatch(/unsafe|https?:|\*/);
      expect(headers.get('referrer-policy')).toBe('no-referrer');
      expect(headers.get('x-content-type-options')).toBe('nosniff');
      expect(headers.get('access-control-allow-origin')).toBeNull();
      expect(headers.get('set-cookie')).toBeNull();
    }
    const html = await (await fetch(address)).text();
    expect(html).not.toMatch(/<script(?![^>]*\bsrc=)/);
    expect(html).not.toMatch(/\son\w+=|style=|https?:\/\//);
    expect((await phone().post({})).headers.get('cache-control')).toBe('no-store');
  });

  it('is under 60 kB in all', async () => {
    const { address } = await yard();
    let bytes = 0;
    for (const path of ['', 'page.js', 'page.css', 'texts.json', 'icon.svg', 'worker.js', 'danger.js'])
      bytes += await overTheWire(address + path);
    console.log(`the page over the wire: ${bytes} bytes`);
    expect(bytes).toBeLessThan(60_000);
  });

  it('says when nothing has changed', async () => {
    const { address } = await yard();
    const etag = (await fetch(`${address}page.js`)).headers.get('etag')!;
    expect((await fetch(`${address}page.js`, { headers: { 'if-none-match': etag } })).status).toBe(304);
  });

  it('serves its own few files and nothing beside them', async () => {
    const { address } = await yard();
    for (const path of [
      'page.ts',
      '../package.json',
      '%2e%2e/package.json',
      'data/heaphand.db',
      'api/',
      'api/say',
    ])
      expect((await fetch(address + path)).status, path).toBe(404);
  });
});

describe('the texts of the page', () => {
  it('are those of the wording files, each in each language', async () => {
    const { address, faults } = await yard();
    const texts = (await (await fetch(`${address}texts.json`)).json()) as Record<
      string,
      Record<string, string>
    >;
    const inFile = [...readTexts().en.matchAll(/^page-([a-z-]+) =/gm)].map(([, id]) => id!);
    expect([...PAGE_TEXTS, 'volunteer'].sort()).toEqual(inFile.sort());
    for (const language of ['en', 'fr', 'es'])
      expect(Object.keys(texts[language]!).sort()).toEqual([...PAGE_TEXTS].sort());
    expect(texts.fr!.send).toBe('Envoyer');
    expect(texts.en!['name-change']).toBe('Name: {name}');
    expect(faults).toEqual([]);
  });

  it('carry the card of the site in the language asked for', async () => {
    const { phone } = await yard();
    const { board } = (await phone().news()).body;
    expect(board.call).toContain('112');
    expect(board.call).toContain('Ferry Lane 4, back gate');
    const all = board.dangers.map(({ text }: { text: string }) => text).join('\n');
    expect(all).toContain('the grey box by the door');
    expect(all).toMatch(/Do not open or turn it/);
    expect(all).toMatch(/sharps box/);
  });
});

/** How many bytes a browser gets: `fetch` would unpack them. */
const overTheWire = (address: string): Promise<number> =>
  new Promise((resolve, reject) => {
    get(address, { headers: { 'accept-encoding': 'gzip' } }, (response) => {
      let bytes = 0;
      response.on('data', (piece: Buffer) => {
        bytes += piece.length;
      });
      response.on('end', () =>
        response.statusCode === 200 && response.headers['content-encoding'] === 'gzip'
          ? resolve(bytes)
          : reject(new Error(`${address}: ${response.statusCode}`)),
      );
    }).on('error', reject);
  });
