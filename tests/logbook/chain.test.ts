import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { openBook } from '#logbook';
import { canonicalJson, lineHash, NO_LINE_BEFORE } from '../../src/logbook/canonical.ts';
import { cart, folder, now, site, undo } from './samples.ts';

const book12 = () => {
  const path = join(folder(), 'site.book');
  const book = openBook(path, { now });
  const { id } = book.addSite(site('Ferry Lane'), now());
  const ana = book.person(id, 'page', 'a', 'Ana').id;
  for (let kg = 50; kg < 60; kg += 1) book.append(id, [cart(kg, { person: ana, pictures: ['f1'] })], null);
  book.append(id, [undo(3), undo(4)], null);
  book.close();
  return path;
};

/** Somebody with another program, who has taken the guards off first. */
const tamper = (path: string, sql: string, ...values: unknown[]) => {
  const raw = new Database(path);
  const guards = raw
    .prepare("SELECT name FROM sqlite_schema WHERE type = 'trigger'")
    .pluck()
    .all() as string[];
  for (const guard of guards) raw.exec(`DROP TRIGGER ${guard}`);
  raw.pragma('foreign_keys = OFF');
  raw.prepare(sql).run(...values);
  raw.close();
};

const verdict = (path: string) => {
  const book = openBook(path, { readOnly: true, now });
  try {
    return book.verify();
  } finally {
    book.close();
  }
};

test('lines cannot be changed or taken out, not even by another program', () => {
  const path = book12();
  const raw = new Database(path);
  expect(() => raw.exec("UPDATE entry SET typed = '99 kg' WHERE number = 3")).toThrow('never changed');
  expect(() => raw.exec('DELETE FROM entry WHERE number = 12')).toThrow('never taken out');
  expect(() => raw.exec('DELETE FROM voided')).toThrow('stays so');
  expect(() => raw.exec('UPDATE voided SET by = 12')).toThrow('stays so');
  raw.close();
});

test('one changed character anywhere in a line is found, at that line', () => {
  const path = book12();
  const columns = ['happened_at', 'local_date', 'received_at', 'record', 'typed', 'assumed', 'voids', 'hash'];
  const raw = new Database(path, { readonly: true });
  const rows = raw.prepare('SELECT * FROM entry ORDER BY number').all() as Record<string, string>[];
  raw.close();
  fc.assert(
    fc.property(fc.nat(11), fc.constantFrom(...columns), fc.nat(), (index, column, spot) => {
      const old = rows[index]?.[column];
      if (!old) return;
      const at = spot % old.length;
      const digit = /[0-9]/.test(old[at]!);
      const changed =
        old.slice(0, at) +
        (digit ? (Number(old[at]) + 1) % 10 : old[at] === 'q' ? 'r' : 'q') +
        old.slice(at + 1);
      const copy = join(folder(), 'copy.book');
      copyFileSync(path, copy);
      tamper(copy, 'PRAGMA ignore_check_constraints = ON');
      const edit = new Database(copy);
      edit.pragma('ignore_check_constraints = ON');
      edit.prepare(`UPDATE entry SET ${column} = ? WHERE number = ?`).run(changed, index + 1);
      edit.close();
      const found = verdict(copy);
      expect(found.ok).toBe(false);
      // A broken CHECK is a fault of the file; any other change is found at its line.
      if (!found.ok && found.what !== 'file')
        expect(found).toMatchObject({ what: 'chain', number: index + 1 });
    }),
    { numRuns: 60 },
  );
});

test('a line cut out, a number put right, a void line lost: each is found', () => {
  const cases: [sql: string, expected: object][] = [
    ['DELETE FROM entry WHERE number = 6', { what: 'foreign-keys' }],
    ['UPDATE entry SET pictures = 4 WHERE number = 2', { what: 'chain', number: 2 }],
    ['UPDATE entry SET person = NULL WHERE number = 2', { what: 'chain', number: 2 }],
    ['DELETE FROM voided WHERE number = 3', { what: 'voided', number: 11 }],
    ['INSERT INTO voided VALUES (1, 7, 9)', { what: 'voided', number: null }],
    ["INSERT INTO picture_file VALUES (1, 2, 8, 'f9')", { what: 'pictures', number: 2 }],
  ];
  for (const [sql, expected] of cases) {
    const path = book12();
    tamper(path, sql);
    expect(verdict(path)).toMatchObject({ ok: false, ...expected });
  }
  expect(verdict(book12())).toEqual({ ok: true, lines: 12 });
});

test('a line rewritten with a fresh hash breaks the one after it', () => {
  const path = book12();
  const raw = new Database(path, { readonly: true });
  const row = raw.prepare('SELECT * FROM entry WHERE number = 5').get() as never;
  const before = raw.prepare('SELECT hash FROM entry WHERE number = 4').pluck().get() as string;
  raw.close();
  const forged = { ...(row as object), typed: '99 kg' } as never;
  tamper(path, 'UPDATE entry SET typed = ?, hash = ? WHERE number = 5', '99 kg', lineHash(forged, before));
  expect(verdict(path)).toMatchObject({ what: 'chain', number: 6 });
});

test('canonical JSON: keys in order, no blanks, the same for the same facts', () => {
  expect(canonicalJson({ b: [1, { d: null, c: 'é' }], a: undefined, A: 0.1 })).toBe(
    '{"A":0.1,"b":[1,{"c":"é","d":null}]}',
  );
  fc.assert(
    fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (facts) => {
      const turned = Object.fromEntries(Object.entries(facts).toReversed());
      expect(canonicalJson(turned)).toBe(canonicalJson(facts));
      expect(JSON.stringify(JSON.parse(canonicalJson([facts])))).toBe(
        JSON.stringify(JSON.parse(canonicalJson([turned]))),
      );
      expect(JSON.parse(canonicalJson(facts))).toEqual(JSON.parse(JSON.stringify(facts)));
    }),
  );
});

test('the hash of a known line, worked out with another tool', () => {
  // printf '%s' '<the canonical line>' | sha256sum, coreutils 9.1
  const line = {
    site: 1,
    number: 1,
    happened_at: '2026-05-12T13:00:00.000Z',
    local_date: '2026-05-12',
    received_at: '2026-05-12T13:00:00.000Z',
    person: null,
    message: null,
    record: '{"kind":"turning","pile":"pile B"}',
    typed: null,
    assumed: '[]',
    held: null,
    voids: '[]',
    pictures: 0,
  };
  expect(lineHash(line, NO_LINE_BEFORE)).toBe(
    '22d1426cc3b1c821bc4d6464462af4fbf75f3b78e04d9687a24014262f262b5f',
  );
});
