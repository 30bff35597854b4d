import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { NewEntry } from '#records';
import { cart, incoming, memoryBook, site, someEntry, undo } from './samples.ts';

const asRead = (
  { voids: _, pictures = [], ...entry }: NewEntry,
  number: number,
  voidedBy: number | null,
) => ({
  ...entry,
  number,
  voidedBy,
  pictures: pictures.length,
});

test('what is appended comes back equal, with who took it back', () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(someEntry, fc.nat()), { minLength: 1, maxLength: 12 }), (steps) => {
      const book = memoryBook();
      const { id } = book.addSite(site('Ferry Lane'), '2026-05-12T13:00:00.000Z');
      const expected: ReturnType<typeof asRead>[] = [];
      for (const [entry, pick] of steps) {
        const open = expected.filter((line) => line.voidedBy === null);
        const target = pick % 3 === 0 ? open[pick % Math.max(1, open.length)] : undefined;
        const number = expected.length + 1;
        const line = { ...entry, voids: target ? [target.number] : [] };
        if (target) target.voidedBy = number;
        const [written] = book.append(id, [line], null);
        expected.push(asRead(line, number, null));
        expect(written).toEqual(expected.at(-1));
      }
      expect([...book.entriesWalk(id)]).toEqual(expected);
      const inOrder = expected.toSorted((a, b) =>
        a.happenedAt < b.happenedAt ? -1 : a.happenedAt > b.happenedAt ? 1 : a.number - b.number,
      );
      expect([...book.entriesFrom(id, '2026-01-01T00:00:00.000Z')]).toEqual(inOrder);
      expect(book.latest(id, 100)).toEqual(expected.toReversed());
      for (const line of expected) expect(book.entry(id, line.number)).toEqual(line);
      expect(book.verify()).toEqual({ ok: true, lines: expected.length });
      book.close();
    }),
    { numRuns: 60 },
  );
});

test('a void line takes back the line it names; a second time is refused and leaves no trace', () => {
  const book = memoryBook();
  const { id } = book.addSite(site('Ferry Lane'), '2026-05-12T13:00:00.000Z');
  book.append(id, [cart(61.5), undo(1)], null);
  expect(book.entry(id, 1)?.voidedBy).toBe(2);
  expect(() => book.append(id, [undo(1)], null)).toThrow('#1 was taken back already by #2');
  expect(() => book.append(id, [undo(9)], null)).toThrow('#9 is not a line before #3');
  expect(() => book.append(id, [cart(58), undo(4)], null)).toThrow(RangeError);
  expect(book.lastNumber(id)).toBe(2);
});

test('several lines in one call are all written or none', () => {
  const book = memoryBook();
  const { id } = book.addSite(site('Ferry Lane'), '2026-05-12T13:00:00.000Z');
  const wrong = cart(1, { record: { kind: 'weigh-in', material: 'food-scraps', kg: '66,5' } as never });
  expect(() => book.append(id, [cart(61.5), wrong], null)).toThrow(/record weigh-in/);
  expect(book.lastNumber(id)).toBe(0);
  expect(() => book.append(id, [cart(61.5, { happenedAt: '2026-05-12' })], null)).toThrow(/CHECK/);
});

test('lines are found by message, by date, by person and by when they happened', () => {
  const book = memoryBook();
  const { id } = book.addSite(site('Ferry Lane'), '2026-05-12T13:00:00.000Z');
  const ana = book.person(id, 'telegram', '7', 'Ana').id;
  const first = book.saveMessage(incoming(id, '11'), ana, 'done').id;
  const second = book.saveMessage(incoming(id, '12'), ana, 'done').id;
  book.append(id, [cart(1, { person: ana }), cart(2)], first);
  const earlier = { happenedAt: '2026-05-11T09:00:00.000Z', localDate: '2026-05-11', person: ana };
  book.append(id, [cart(3, earlier)], second);
  const numbers = (entries: Iterable<{ number: number }>) => [...entries].map((entry) => entry.number);
  expect(numbers(book.entriesOfMessage(first))).toEqual([1, 2]);
  expect(numbers(book.entriesBetween(id, '2026-05-11', '2026-05-12'))).toEqual([3, 1, 2]);
  expect(numbers(book.entriesBetween(id, '2026-05-12', '2026-05-12'))).toEqual([1, 2]);
  expect(numbers(book.entriesOfPerson(id, ana, '2026-05-12'))).toEqual([1]);
  expect(numbers(book.entriesFrom(id, '2026-05-11T09:00:00.000Z'))).toEqual([3, 1, 2]);
  expect(numbers(book.entriesFrom(id, '2026-05-11T09:00:00.001Z'))).toEqual([1, 2]);
  expect(numbers(book.latest(id, 2))).toEqual([3, 2]);
});

test('writing while a walk is under way is fine, and the walk sees lines of later pages', () => {
  const book = memoryBook();
  const { id } = book.addSite(site('Ferry Lane'), '2026-05-12T13:00:00.000Z');
  book.append(
    id,
    Array.from({ length: 1200 }, (_, index) => cart(index)),
    null,
  );
  let walked = 0;
  for (const entry of book.entriesWalk(id)) {
    walked += 1;
    if (entry.number === 3) book.append(id, [cart(9999)], null);
  }
  expect(walked).toBe(1201);
  let happened = 0;
  for (const entry of book.entriesFrom(id, '2026-01-01T00:00:00.000Z')) {
    happened += 1;
    if (entry.number === 5) book.append(id, [cart(1)], null);
  }
  expect(happened).toBe(1202);
});

test('a forgotten person leaves the lines under a number and no words; the chain still holds', () => {
  const book = memoryBook();
  const { id } = book.addSite(site('Ferry Lane'), '2026-05-12T13:00:00.000Z');
  const ana = book.person(id, 'telegram', '7', 'Ana').id;
  const kept = book.saveMessage(incoming(id, '11', { text: 'cart 61.5 for Zoltan' }), ana, 'done');
  const record = { kind: 'turning', pile: 'pile B', said: 'Zoltan turned B' } as const;
  book.append(id, [cart(1, { person: ana, record })], kept.id);
  expect(book.entry(id, 1)?.record).toEqual(record);
  book.forgetPerson(ana);
  expect(book.personById(ana)).toEqual({ id: ana, name: '', coordinator: false, language: null });
  expect(book.entry(id, 1)?.record).toEqual({ kind: 'turning', pile: 'pile B' });
  expect(book.entry(id, 1)?.person).toBe(ana);
  expect(book.message(id, 'telegram', '-100', '11', null)?.text).toBe('');
  expect(book.sitesOfPerson('telegram', '7')).toEqual([]);
  expect(book.verify()).toEqual({ ok: true, lines: 1 });
  expect(book.person(id, 'telegram', '7', 'Ana').id).not.toBe(ana);
});
