import { join } from 'node:path';
import { DateTime } from 'luxon';
import { pino } from 'pino';
import { expect, onTestFinished, test } from 'vitest';
import { makeAssistant } from '#assistant';
import { startTelegram } from '#channels/telegram';
import { openBook } from '#logbook';
import { Site } from '#records';
import { makeWords } from '#wording';
import { readTexts } from '../../../src/commands/parts.ts';
import { folder } from '../../logbook/samples.ts';
import { type Message, startStandIn, type User } from '../../stand-in/index.ts';
import {
  differences,
  linesOf,
  netOf,
  seeded,
  TONGUES,
  type Tongue,
  type Truth,
  UNDO,
} from './season-truth.ts';

const ZONE = 'America/Moncton';
const NAMES = ['Ana', 'Ben', 'Chloé', 'Dov', 'Eka', 'Finn', 'Gül', 'Hana', 'Ivo', 'Jun', 'Kofi', 'Lena'];
/** Eight weeks with the autumn clock change in the middle (1 November 2026). */
const FIRST_DAY = '2026-10-05';
const DAYS = 56;

test('a crew of twelve over eight weeks: the book holds what they said, line for line', async () => {
  const random = seeded(20261005);
  const chance = (share: number): boolean => random() < share;
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)]!;

  const server = await startStandIn();
  const path = join(folder(), 'season.db');
  let clock = DateTime.fromISO(`${FIRST_DAY}T07:00`, { zone: ZONE });
  const now = () => clock.toJSDate();
  const complaints: string[] = [];
  const words = makeWords(readTexts(), (what) => complaints.push(what));

  const begin = () => {
    const book = openBook(path, { now: () => now().toISOString() });
    const site =
      book.sites()[0] ??
      book.addSite(
        Site.parse({
          name: 'Ferry Lane',
          timeZone: ZONE,
          languages: ['en', 'fr', 'es'],
          piles: ['A', 'B', 'C'],
          containers: { cart: { tareKg: 15.5, litres: 240, holds: 'food-scraps' } },
        }),
        now().toISOString(),
      );
    const complain = (what: string) => complaints.push(what);
    const assistant = makeAssistant({ book, words, complain, homes: () => [] });
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
      site: site.id,
      claimWord: 'heron-lamp',
      now,
      pollSeconds: 1,
      albumWaitMs: 100,
    });
    return { book, telegram, site: site.id };
  };
  let run = begin();
  const end = async (): Promise<void> => {
    await run.telegram.stop();
    run.book.close();
  };
  onTestFinished(async () => {
    await end();
    await server.close();
  });
  const quiet = async (): Promise<void> => {
    await server.until('all fetched', () => server.updates.pending().length === 0, 20_000);
    await server.until('albums in', () => run.book.bookFact('telegram:albums') === null, 20_000);
    await server.until('all answered', () => run.book.waiting('telegram', 1).length === 0, 20_000);
  };

  const crew: User[] = NAMES.map((name) => server.someone(name));
  const tongueOf = (one: User): Tongue => TONGUES[Math.max(0, crew.indexOf(one) - 7) % 3]!;
  let group = server.group('Ferry Lane', crew[0]!);
  server.say(group, crew[0]!, '/start heron-lamp', { date: now() });
  await quiet();

  const truths: Truth[] = [];
  const minute = (at: DateTime): string => at.toUTC().toISO()!.slice(0, 16);
  const truth = (by: User | null, what: string, at: DateTime, more: Partial<Truth> = {}): Truth => {
    const one: Truth = {
      by: by?.first_name ?? null,
      what,
      on: at.toISODate()!,
      at: minute(at),
      net: null,
      pictures: [],
      voided: false,
      held: false,
      ...more,
    };
    truths.push(one);
    return one;
  };
  const cartOf = (by: User, kg: number, at: DateTime, more: Partial<Truth> = {}): Truth =>
    truth(by, `food-scraps ${kg} gross`, at, { net: netOf(kg), ...more });
  const chipsOf = (by: User | null, kg: number, at: DateTime): Truth =>
    truth(by, `wood-chips ${kg} net`, at, { net: kg });
  /** The line that takes another's place: what was there as evidence stays. */
  const instead = (old: Truth, change: Partial<Truth>): Truth => {
    old.voided = true;
    const next = { ...old, voided: false, held: false, ...change };
    truths.push(next);
    return next;
  };

  /** Our answer to a message, as it stands in its chat: the book knows under which number it went out. */
  const replyTo = (message: Message): Message => {
    const { book, site } = run;
    const chat = String(message.chat.id);
    const stored = book.message(site, 'telegram', chat, String(message.message_id), null);
    const row = stored ? book.outgoingOfMessage(stored.id).at(-1) : undefined;
    const reply = server.world.messages.get(`${chat}/${row?.sentAs}`);
    expect(reply, `a reply to "${message.text ?? message.caption}"`).toBeDefined();
    return reply!;
  };
  const press = (message: Message, label: RegExp, by: User): void => {
    const reply = replyTo(message);
    const markup = reply.reply_markup as { inline_keyboard: { text: string }[][] } | undefined;
    const button = markup?.inline_keyboard.flat().find(({ text }) => label.test(text));
    expect(button, `a button ${label} under "${reply.text}"`).toBeDefined();
    server.press(reply, button!.text, by);
    if (chance(0.3)) server.press(reply, button!.text, by);
  };
  /** What is done in the evening, when everything said by day has its reply. */
  let evening: (() => void)[] = [];
  /** Pictures to be asked for, by the message that they came with. */
  let shows: { message: Message; files: readonly string[] }[] = [];
  let shown = 0;
  const seen = new Set<User>();

  for (let day = 0; day < DAYS; day += 1) {
    const date = DateTime.fromISO(FIRST_DAY, { zone: ZONE }).plus({ days: day });
    // A day's cart weights are never near each other, so that the simulator alone decides which two are the same cart.
    const weights = Array.from({ length: 14 }, (_, step) => 30 + step * 3 + Math.floor(random() * 3) / 2);
    const acts = 5 + Math.floor(random() * 8);
    const network = day % 19 === 7 ? 'gone' : 'there';
    if (network === 'gone') await server.gone();
    for (let act = 0; act < acts; act += 1) {
      // From early to close to midnight, so that many local days are the next day in UTC.
      const hour = 7 + Math.floor((act * 16) / acts);
      clock = date.set({ hour, minute: 5 + Math.floor(random() * 35) });
      const said = clock;
      const by = pick(crew);
      const tongue = tongueOf(by);
      const kg = weights.splice(Math.floor(random() * weights.length), 1)[0]!;
      // Who has been seen in the group may write to the bot directly: the same book, under the same name.
      const where = seen.has(by) && chance(0.15) ? server.direct(by) : group;
      const say = (text: string, at = said): Message => server.say(where, by, text, { date: at.toJSDate() });
      if (where === group) seen.add(by);
      const kind = random();
      if (kind < 0.26) {
        const command = chance(0.1) ? pick(['/log ', '/LOG@heap_test_bot ']) : '';
        const message = say(`${command}${tongue.cart} ${kg} kg`);
        const line = cartOf(by, kg, said);
        const fate = random();
        if (fate < 0.12) {
          server.edit(message, `${tongue.cart} ${kg} kg`, said.plus({ minutes: 1 }).toJSDate());
          server.edit(message, `${tongue.cart} ${kg + 0.5} kg`, said.plus({ minutes: 2 }).toJSDate());
          instead(line, { what: `food-scraps ${kg + 0.5} gross`, net: netOf(kg + 0.5) });
        } else if (fate < 0.22) {
          say(tongue.undo);
          line.voided = true;
        } else if (fate < 0.32) {
          evening.push(() => {
            press(message, UNDO, by);
            line.voided = true;
          });
        } else if (fate < 0.45) {
          // Answering our own message, or theirs.
          evening.push(() => {
            const answered = chance(0.5) ? replyTo(message) : message;
            server.say(where, by, `${kg + 0.5}`, { replyTo: answered, date: now() });
            instead(line, { what: `food-scraps ${kg + 0.5} gross`, net: netOf(kg + 0.5) });
          });
        } else if (fate < 0.55) {
          evening.push(() => {
            server.say(where, by, tongue.wasNet, { replyTo: replyTo(message), date: now() });
            instead(line, { what: `food-scraps ${kg} net`, net: kg });
          });
        } else if (fate < 0.65) {
          evening.push(() => {
            server.say(where, by, tongue.wasYesterday, { replyTo: replyTo(message), date: now() });
            instead(line, { on: date.minus({ days: 1 }).toISODate()!, at: null });
          });
        }
      } else if (kind < 0.34) {
        // The hour said, earlier the same day.
        const at = said.minus({ hours: 1 }).set({ minute: pick([0, 15, 45]) });
        say(`${at.toFormat('H:mm')} ${tongue.cart} ${kg} kg`);
        cartOf(by, kg, at);
      } else if (kind < 0.4) {
        const isNet = chance(0.7);
        say(`${tongue.cart} ${kg} kg ${isNet ? tongue.net : 'gross'}`);
        truth(by, `food-scraps ${kg} ${isNet ? 'net' : 'gross'}`, said, { net: isNet ? kg : netOf(kg) });
      } else if (kind < 0.5) {
        const caption = `${tongue.cart} ${kg} kg`;
        const size = chance(0.5) ? 1 : 3;
        const album = size > 1 ? { album: `${day}-${act}` } : {};
        const worded = Math.floor(random() * size);
        const parts = Array.from({ length: size }, (_, part) =>
          server.photo(where, by, {
            ...album,
            ...(part === worded ? { caption } : {}),
            date: said.toJSDate(),
          }),
        );
        const files = parts.map((part) => part.photo!.at(-1)!.file_id);
        const line = cartOf(by, kg, said, { pictures: files });
        const message = parts[worded]!;
        if (chance(0.3))
          evening.push(() => {
            server.edit(message, `${tongue.cart} ${kg + 0.5} kg`, now());
            instead(line, { what: `food-scraps ${kg + 0.5} gross`, net: netOf(kg + 0.5) });
          });
        else shows.push({ message, files });
      } else if (kind < 0.57) {
        say(`${tongue.chips} ${kg} kg`);
        chipsOf(by, kg, said);
      } else if (kind < 0.64) {
        const pile = pick(['A', 'B', 'C']);
        const celsius = 40 + Math.floor(random() * 25);
        say(`${tongue.pile} ${pile} ${celsius}C`);
        truth(by, `pile ${pile} ${celsius}`, said);
      } else if (kind < 0.69) {
        say(`${tongue.yesterday} ${tongue.cart} ${kg} kg`);
        cartOf(by, kg, said.minus({ days: 1 }), { at: null });
      } else if (kind < 0.74) {
        // A phone that had no signal: sent yesterday, here today.
        const sent = said.minus({ days: 1 });
        say(`${tongue.chips} ${kg} kg`, sent);
        chipsOf(by, kg, sent);
      } else if (kind < 0.82) {
        const slipped = Math.round(kg * 10);
        const message = say(`${tongue.cart} ${slipped} kg`);
        const line = truth(by, `food-scraps ${slipped} gross`, said, { held: true });
        const right = slipped / 10;
        const settled = (answerer: User): void => {
          instead(line, {
            by: answerer.first_name,
            what: `food-scraps ${right} gross`,
            net: netOf(right),
          });
        };
        const fate = random();
        if (fate < 0.4)
          evening.push(() => {
            const answerer = where === group ? pick(crew) : by;
            press(message, new RegExp(`^${String(right).replace('.', '[.,]')}$`), answerer);
            settled(answerer);
          });
        else if (fate < 0.8)
          evening.push(() => {
            server.say(where, by, String(right), { date: now() });
            settled(by);
          });
      } else if (kind < 0.89) {
        // Two people log one cart.
        const other = pick(crew.filter((one) => one !== by));
        say(`${tongue.cart} ${kg} kg`);
        cartOf(by, kg, said);
        clock = said.plus({ minutes: 1 + Math.floor(random() * 15) });
        const again = clock;
        const message = server.say(group, other, `${tongueOf(other).cart} ${kg + 0.2} kg`, {
          date: again.toJSDate(),
        });
        seen.add(other);
        const what = `food-scraps ${kg + 0.2} gross`;
        const line = truth(other, what, again, { held: true });
        const kept = (answerer: User): void => {
          instead(line, { by: answerer.first_name, net: netOf(kg + 0.2) });
        };
        const dropped = (): void => {
          line.voided = true;
        };
        const fate = random();
        if (fate < 0.25)
          evening.push(() => {
            press(message, /^(?:same|même|el mismo)/, by);
            dropped();
          });
        else if (fate < 0.5)
          evening.push(() => {
            press(message, /another|autre|otro/, by);
            kept(by);
          });
        else if (fate < 0.7)
          evening.push(() => {
            server.say(group, other, tongueOf(other).same, { replyTo: replyTo(message), date: now() });
            dropped();
          });
        else if (fate < 0.9)
          evening.push(() => {
            server.say(group, other, tongueOf(other).another, { replyTo: replyTo(message), date: now() });
            kept(other);
          });
      } else if (kind < 0.94) {
        const message = say(`${tongue.cart} ${kg} kg, ${tongue.chips} 12 kg\n${tongue.pile} B 51C`);
        const lines = [cartOf(by, kg, said), chipsOf(by, 12, said), truth(by, 'pile B 51', said)];
        if (chance(0.3) && where === group)
          evening.push(() => {
            press(message, UNDO, crew[0]!);
            for (const line of lines) line.voided = true;
          });
      } else if (kind < 0.95) {
        server.anonymous(group, `chips ${kg} kg`, { date: said.toJSDate() });
        chipsOf(null, kg, said);
      } else
        say(
          pick([
            'morning all',
            'who is bringing coffee',
            'see you at 3',
            'bus 12 was late again',
            '/log@other_bot cart 70',
          ]),
        );
      if (chance(0.05)) server.updates.repeat('new-number', server.updates.pending().slice(-2));
      if (chance(0.01)) server.fail('sendMessage', { kind: 'drop', after: chance(0.5) });
      if (chance(0.005)) server.fail('sendMessage', { kind: 'too-many', retryAfterS: 1 });
    }
    if (network === 'gone') await server.back();
    await quiet();
    if (chance(0.3)) server.updates.repeat('same-number');
    clock = date.set({ hour: 23, minute: 50 });
    for (const act of evening) {
      act();
      await quiet();
    }
    evening = [];
    for (const { message, files } of shows) {
      const number = /#\d+/.exec(replyTo(message).text ?? '')![0];
      const before = server.world.sent.length;
      server.say(message.chat as typeof group, crew[1]!, `show ${number}`, { date: now() });
      await quiet();
      const back = server.world.sent.slice(before).flatMap(({ payload }) => payload.photo ?? []);
      expect(back).toEqual(files);
      shown += 1;
    }
    shows = [];
    if (day % 9 === 4) {
      await end();
      run = begin();
      await run.telegram.ready;
    }
    if (day === 30) group = server.migrate(group, crew[0]!).chat;
  }
  await quiet();

  const { book, site } = run;
  expect(differences(truths, linesOf(book, site))).toEqual({ missing: [], unexpected: [] });
  expect(truths.length).toBeGreaterThan(400);
  expect(shown).toBeGreaterThan(10);
  expect(book.verify()).toMatchObject({ ok: true });
  expect(complaints).toEqual([]);
}, 300_000);
