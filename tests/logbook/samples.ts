import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { onTestFinished } from 'vitest';
import type { Incoming, NewOutgoing } from '#assistant';
import { type OpenedBook, openBook } from '#logbook';
import { BookRecord, type NewEntry, Site } from '#records';

const NOW = '2026-05-12T13:00:00.000Z';
export const now = () => NOW;

/** A folder of its own for one test, gone afterwards. */
export const folder = (): string => {
  const path = mkdtempSync(join(tmpdir(), 'book-'));
  onTestFinished(() => rmSync(path, { recursive: true, force: true }));
  return path;
};

export const memoryBook = (): OpenedBook => {
  const book = openBook(':memory:', { now });
  onTestFinished(() => book.close());
  return book;
};

export const site = (name: string) => Site.parse({ name, timeZone: 'America/Moncton' });

export const cart = (kg: number, change: Partial<NewEntry> = {}): NewEntry => ({
  happenedAt: NOW,
  localDate: '2026-05-12',
  receivedAt: NOW,
  person: null,
  record: BookRecord.parse({
    kind: 'weigh-in',
    material: 'food-scraps',
    container: 'cart',
    kg,
    basis: 'gross',
  }),
  typed: `${kg} kg`,
  assumed: ['material-default'],
  held: null,
  voids: [],
  ...change,
});

export const undo = (number: number): NewEntry =>
  cart(1, { record: { kind: 'void', voids: number, why: 'undo' }, typed: null, voids: [number] });

export const incoming = (siteId: number, message: string, change: Partial<Incoming> = {}): Incoming => ({
  site: siteId,
  channel: 'telegram',
  chat: '-100',
  thread: null,
  message,
  edit: null,
  sentAt: NOW,
  receivedAt: NOW,
  sender: { id: '7', name: 'Ana', coordinator: false, language: null },
  private: false,
  text: 'cart 61.5',
  pictures: [],
  replyTo: null,
  choose: null,
  ...change,
});

export const reply = (siteId: number, change: Partial<NewOutgoing> = {}): NewOutgoing => ({
  site: siteId,
  channel: 'telegram',
  chat: '-100',
  thread: null,
  answers: '5',
  message: null,
  about: null,
  weekFrom: null,
  private: false,
  createdAt: NOW,
  text: '#1 Cart 46 kg net',
  choices: [{ label: 'Undo', act: { do: 'undo', entries: [1] } }],
  picture: null,
  file: null,
  ...change,
});

const amount = fc.double({ min: 0, max: 5000, noNaN: true }).map((value) => (value === 0 ? 0 : value));
const word = fc.string({ minLength: 1, maxLength: 40, unit: 'grapheme' });
const said = fc.option(word, { nil: undefined });

const someRecord = fc.oneof(
  fc.record({
    kind: fc.constant('weigh-in'),
    material: word,
    container: fc.option(word),
    kg: fc.option(amount),
    count: amount,
    ofWhich: fc.option(fc.array(fc.record({ what: word, kg: amount }), { maxLength: 3 })),
    said,
  }),
  fc.record({
    kind: fc.constant('temperature'),
    place: word,
    celsius: fc.array(
      fc.double({ min: -30, max: 120, noNaN: true }).map((value) => value + 0),
      { minLength: 1 },
    ),
    points: fc.option(fc.array(fc.oneof(word, fc.integer({ min: 1, max: 9 })))),
    said,
  }),
  fc.record({ kind: fc.constant('note'), text: word, said }),
  fc.record({ kind: fc.constant('setting'), name: word, value: fc.jsonValue() }),
);

/** Lines of any kind, held ones among them. */
export const someEntry: fc.Arbitrary<NewEntry> = fc
  .record({
    record: someRecord,
    at: fc.integer({ min: Date.UTC(2026, 0, 1), max: Date.UTC(2026, 11, 31) }),
    typed: fc.option(word),
    assumed: fc.array(word, { maxLength: 3 }),
    heldSaid: fc.option(word),
    pictures: fc.array(word, { maxLength: 3 }),
  })
  .map(({ record, at, typed, assumed, heldSaid, pictures }) => {
    // What JSON cannot hold (−0, undefined) is no fact.
    const plain = BookRecord.parse(JSON.parse(JSON.stringify(record)));
    const turning = { kind: 'turning', pile: 'pile B', said: 'turned B' } as const;
    const held =
      heldSaid === null
        ? null
        : {
            why: 'unclear' as const,
            choices: [{ say: 'B', record: turning, records: [turning] }],
            doubt: {
              record: { ...turning, said: heldSaid },
              why: 'unclear' as const,
              choices: [],
              said: heldSaid,
            },
          };
    const happenedAt = new Date(at).toISOString();
    return cart(1, {
      record: plain,
      happenedAt,
      localDate: happenedAt.slice(0, 10),
      typed,
      assumed,
      held,
      pictures,
    });
  });
