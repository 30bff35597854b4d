import { statSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { addDays } from '#core';
import { openBook } from '#logbook';
import type { NewEntry } from '#records';
import { run } from '../commands/running.ts';
import { cart, folder, now, site } from '../logbook/samples.ts';

const LINES = 16_000;
/** The program alone needs some 40 MB; the rows of so many lines would need well over a hundred more. */
const MOST_MB = 64;

function longBook(path: string): void {
  const book = openBook(path, { now });
  const { id } = book.addSite(site('Long Meadow (made up)'), now());
  for (let done = 0; done < LINES; done += 4000) {
    const entries = Array.from({ length: 4000 }, (_, i): NewEntry => {
      const localDate = addDays('2020-01-01', Math.floor((done + i) / 20));
      const line = cart(40 + ((done + i) % 30));
      return { ...line, happenedAt: `${localDate}T12:00:00.000Z`, localDate, typed: `cart ${done + i}` };
    });
    book.append(id, entries, null);
  }
  book.close();
}

test('a long book goes out in little memory, and says how far it has come', {
  timeout: 400_000,
}, async () => {
  const dir = folder();
  const db = join(dir, 'long.db');
  longBook(db);
  for (const format of ['xlsx', 'json']) {
    const out = join(dir, `long.${format}`);
    const args = ['export', '--db', db, '--out', out, '--format', format];
    const ran = await run(args, '', { NODE_OPTIONS: `--max-old-space-size=${MOST_MB}` });
    expect(ran.code, ran.err.slice(0, 400)).toBe(0);
    expect(ran.out).toContain(`${LINES} lines`);
    expect(ran.err.match(/\d+ %/g)).toEqual(['31 %', '63 %', '94 %']);
    expect(statSync(out).size).toBeGreaterThan(LINES);
  }
});
