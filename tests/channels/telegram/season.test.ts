import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { DateTime } from 'luxon';
import { pino } from 'pino';
import { expect, onTestFinished, test } from 'vitest';
import { makeAssistant } from '#assistant';
import { startTelegram } from '#channels/telegram';
import { openBook } from '#logbook';
import { LANGUAGES, Site } from '#records';
import { makeWords, type Texts } from '#wording';
import { folder } from '../../logbook/samples.ts';
import { type Message, startStandIn, type User } from '../../stand-in/index.ts';

const ZONE = 'America/Moncton';
const NAMES = ['Ana', 'Ben', 'Chloé', 'Dov', 'Eka', 'Finn', 'Gül', 'Hana', 'Ivo', 'Jun', 'Kofi', 'Lena'];
/** Eight weeks with the autumn clock change in the middle (1 November 2026). */
const FIRST_DAY = '2026-10-05';
const DAYS = 56;

/** Mulberry32: a small public-domain generator, so that a season that fails can be run again. */
const seeded = (seed: number) => {
  let state = seed;
  return (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
};

/** One line as the simulator knows it must stand in the book. */
type Truth = { by: string; what: string; on: string; voided: boolean; held: boolean };

const texts = Object.fromEntries(
  LANGUAGES.map((language) => [
    language,
    readFileSync(join(import.meta.dirname, `../../../src/wording/texts/${language}.ftl`), 'utf8'),
  ]),
) as Texts;

test('a crew of twelve over eight weeks: the book holds what they said, line for line', async () => {
  const random = seeded(20261005);
  const chance = (share: number): boolean => random() < share;
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)]!;

  const server = await startStandIn();
  const path = join(folder(), 'season.db');
  let clock = DateTime.fromISO(`${FIRST_DAY}T07:00`, { zone: ZONE });
  const now = () => clock.toJSDate();
  const complaints: string[] = [];
  const words = makeWords(texts, (what) => complaints.push(what));

  const begin = () => {
    const book = openBook(path, { now: () => now().toISOString() });
    const site =
      book.sites()[0] ??
      book.addSite(
        Site.parse({
          name: 'Ferry Lane',
          timeZone: ZONE,
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
    await server.until('all answered', () => run.book.waiting('telegram', 1).length === 0, 20_000);
  };

  const crew: User[] = NAMES.map((name) => server.someone(name));
  const group = server.group('Ferry Lane', crew[0]!);
  server.say(group, crew[0]!, '/start heron-lamp', { date: now() });
  await quiet();

  const truths: Truth[] = [];
  const truth = (by: User, what: string, on: string, more: Partial<Truth> = {}): Truth => {
    const one = { by: by.first_name, what, on, voided: false, held: false, ...more };
    truths.push(one);
    return one;
  };
  /** Messages of the day whose reply has buttons still to be pressed. */
  let presses: { message: Message; label: string; by: User; follows: () => void }[] = [];

  for (let day = 0; day < DAYS; day += 1) {
    const date = DateTime.fromISO(FIRST_DAY, { zone: ZONE }).plus({ days: day });
    // A day's cart weights are never near each other: two people with the same cart are another test's matter.
    const weights = Array.from({ length: 14 }, (_, step) => 30 + step * 3 + Math.floor(random() * 3) / 2);
    const acts = 4 + Math.floor(random() * 6);
    const network = day % 19 === 7 ? 'gone' : 'there';
    if (network === 'gone') await server.gone();
    for (let act = 0; act < acts; act += 1) {
      // From early to close to midnight, so that many local days are the next day in UTC.
      clock = date.set({ hour: 7 + Math.floor((act * 16) / acts), minute: Math.floor(random() * 60) });
      const by = pick(crew);
      const kg = weights.splice(Math.floor(random() * weights.length), 1)[0]!;
      const today = clock.toISODate()!;
      const say = (text: string, at = clock): Message => server.say(group, by, text, { date: at.toJSDate() });
      const kind = random();
      if (kind < 0.35) {
        const said = say(`cart ${kg} kg`);
        const line = truth(by, `food-scraps ${kg}`, today);
        const fate = random();
        if (fate < 0.12) {
          server.edit(said, `cart ${kg} kg`, clock.plus({ minutes: 1 }).toJSDate());
          server.edit(said, `cart ${kg + 0.5} kg`, clock.plus({ minutes: 2 }).toJSDate());
          line.voided = true;
          truth(by, `food-scraps ${kg + 0.5}`, today);
        } else if (fate < 0.24) {
          say('undo');
          line.voided = true;
        } else if (fate < 0.36) {
          presses.push({
            message: said,
            label: 'Undo',
            by,
            follows: () => {
              line.voided = true;
            },
          });
        }
      } else if (kind < 0.5) {
        say(`chips ${kg} kg`);
        truth(by, `wood-chips ${kg}`, today);
      } else if (kind < 0.65) {
        const pile = pick(['A', 'B', 'C']);
        const celsius = 40 + Math.floor(random() * 25);
        say(`pile ${pile} ${celsius}C`);
        truth(by, `pile ${pile} ${celsius}`, today);
      } else if (kind < 0.72) {
        say(`yesterday cart ${kg} kg`);
        truth(by, `food-scraps ${kg}`, date.minus({ days: 1 }).toISODate()!);
      } else if (kind < 0.78) {
        // A phone that had no signal: sent yesterday, here today.
        const sent = clock.minus({ days: 1 });
        say(`chips ${kg} kg`, sent);
        truth(by, `wood-chips ${kg}`, sent.toISODate()!);
      } else if (kind < 0.84) {
        const heavy = say(`cart ${Math.round(kg * 10)} kg`);
        const line = truth(by, `food-scraps ${Math.round(kg * 10)}`, today, { held: true });
        const right = Math.round(kg * 10) / 10;
        const answerer = pick(crew);
        if (chance(0.6))
          presses.push({
            message: heavy,
            label: String(right),
            by: answerer,
            follows: () => {
              line.voided = true;
              truth(answerer, `food-scraps ${right}`, today);
            },
          });
      } else if (kind < 0.9) {
        const said = say(`cart ${kg} kg, chips 12 kg\npile B 51C`);
        const lines = [
          truth(by, `food-scraps ${kg}`, today),
          truth(by, 'wood-chips 12', today),
          truth(by, 'pile B 51', today),
        ];
        if (chance(0.3))
          presses.push({
            message: said,
            label: 'Undo',
            by: crew[0]!,
            follows: () => {
              for (const line of lines) line.voided = true;
            },
          });
      } else say(pick(['morning all', 'who is bringing coffee', 'see you at 3', 'bus 12 was late again']));
      if (chance(0.05)) server.updates.repeat('new-number', server.updates.pending().slice(-2));
      if (chance(0.01)) server.fail('sendMessage', { kind: 'drop', after: chance(0.5) });
      if (chance(0.005)) server.fail('sendMessage', { kind: 'too-many', retryAfterS: 1 });
    }
    if (network === 'gone') await server.back();
    await quiet();
    if (chance(0.3)) server.updates.repeat('same-number');
    for (const { message, label, by, follows } of presses) {
      const reply = server.world.sent.findLast(
        (sent) =>
          (sent.payload.reply_parameters as { message_id?: number })?.message_id === message.message_id,
      );
      expect(reply, `a reply to "${message.text}"`).toBeDefined();
      const markup = reply!.message.reply_markup as { inline_keyboard: { text: string }[][] } | undefined;
      const button = markup?.inline_keyboard.flat().find(({ text }) => text.startsWith(label));
      expect(button, `a button "${label}" under "${reply!.text}"`).toBeDefined();
      server.press(reply!.message, button!.text, by);
      if (chance(0.3)) server.press(reply!.message, button!.text, by);
      follows();
    }
    presses = [];
    await quiet();
    if (day % 9 === 4) {
      await end();
      run = begin();
      await run.telegram.ready;
    }
  }
  await quiet();

  const { book, site } = run;
  const said = [...book.entriesWalk(site)]
    .filter((entry) => entry.record.kind !== 'void')
    .map((entry): Truth => {
      const record = entry.record as Record<string, unknown>;
      const what =
        record.kind === 'temperature'
          ? `${record.place} ${record.celsius}`
          : `${record.material} ${record.kg}`;
      const by = entry.person === null ? '' : book.personById(entry.person)!.name;
      return { by, what, on: entry.localDate, voided: entry.voidedBy !== null, held: entry.held !== null };
    });
  const lines = (list: Truth[]): string[] => list.map((line) => JSON.stringify(line)).toSorted();
  const without = (list: string[], other: string[]): string[] => {
    const left = [...other];
    return list.filter((line) => {
      const at = left.indexOf(line);
      if (at >= 0) left.splice(at, 1);
      return at < 0;
    });
  };
  expect({
    missing: without(lines(truths), lines(said)),
    unexpected: without(lines(said), lines(truths)),
  }).toEqual({ missing: [], unexpected: [] });
  expect(truths.length).toBeGreaterThan(250);
  expect(book.verify()).toMatchObject({ ok: true });
  expect(complaints).toEqual([]);
}, 180_000);
