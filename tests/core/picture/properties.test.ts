import fc from 'fast-check';
import { expect, test } from 'vitest';
import { applyEntry, dayOf, emptyPicture, type Picture, rebuild } from '#core';
import { line } from './arbitrary.ts';
import { Book, site } from './book.ts';

const season = fc.array(line, { minLength: 1, maxLength: 60 });

function bookOf(lines: { record: Parameters<Book['log']>[1]; at: string }[]): Book {
  const book = new Book();
  for (const { record, at } of [...lines].sort((a, b) => a.at.localeCompare(b.at))) book.log(at, record);
  return book;
}

function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const each of Object.values(value)) frozen(each);
  }
  return value;
}

test('built line by line it equals what is rebuilt from any snapshot that was kept as text', () => {
  fc.assert(
    fc.property(season, fc.nat(), (lines, where) => {
      const entries = bookOf(lines).inOrder();
      const cut = where % (entries.length + 1);
      const whole = entries.reduce(applyEntry, emptyPicture(site));
      const snapshot = JSON.parse(
        JSON.stringify(rebuild(emptyPicture(site), entries.slice(0, cut))),
      ) as Picture;
      expect(rebuild(snapshot, entries.slice(cut))).toEqual(whole);
    }),
  );
});

test('what it is given is never changed', () => {
  fc.assert(
    fc.property(season, (lines) => {
      let picture = frozen(emptyPicture(site));
      for (const entry of bookOf(lines).inOrder()) picture = frozen(applyEntry(picture, frozen(entry)));
      expect(picture.lastEntry).toBe(lines.length);
    }),
  );
});

/** With the moment of each line in place of its number, which differs when a line is written again. */
const withoutNumbers = (picture: Picture, { entries }: Book): unknown =>
  JSON.parse(
    JSON.stringify({ ...picture, lastEntry: 0 }, (key, value) =>
      key === 'entry' && value > 0 ? entries[value - 1]!.happenedAt : value,
    ).replace(/#(\d+)/g, (_, number) => `#${entries[number - 1]!.happenedAt}`),
  );

test('a line that is taken back leaves no trace, and written again it gives the same picture', () => {
  fc.assert(
    fc.property(season, fc.nat(), (lines, which) => {
      // One line a moment: lines of one moment count in the order of their numbers.
      const apart = lines.filter((each, i) => lines.findIndex(({ at }) => at === each.at) === i);
      const book = bookOf(apart);
      const before = withoutNumbers(...pictureOfSame(book));
      const { record, happenedAt, localDate } = book.entries[which % book.entries.length]!;
      book.undo((which % book.entries.length) + 1, '2026-09-01T10:00');
      book.log('2026-09-01T10:00', record as never, { happenedAt, localDate });
      expect(withoutNumbers(...pictureOfSame(book))).toEqual(before);
    }),
  );

  /** As it stands on one and the same late day, so that the same things have grown too old. */
  function pictureOfSame(book: Book): [Picture, Book] {
    const late = new Book();
    late.entries.push(...book.entries);
    late.log('2026-09-01T10:00', { kind: 'note', text: 'closing time' }, { person: null });
    return [late.picture(), late];
  }
});

test('sums of the days agree with a plain addition of what was weighed net', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 160, max: 900 }), { minLength: 1, maxLength: 40 }), (tenths) => {
      const book = new Book();
      for (const each of tenths) {
        book.log('2026-05-04T09:00', {
          kind: 'weigh-in',
          material: 'food-scraps',
          container: 'cart',
          kg: each / 10,
        });
      }
      const kg = dayOf(book.picture(), '2026-05-04')!.intake['food-scraps']!['']!.kg;
      expect(kg).toBe(tenths.reduce((sum, each) => sum + each - 155, 0) / 10);
    }),
  );
});
