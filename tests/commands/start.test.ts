import { chmodSync, existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { inFolder, run, start } from './running.ts';

// Several programs are started one after the other in a case: a busy machine takes its time.
describe('start', { timeout: 180_000 }, () => {
  it('opens a chat on an empty folder, answers every line that is piped in, and ends with code 0', () =>
    inFolder(async (folder) => {
      const db = join(folder, 'deep', 'book.db');
      const { code, out, err } = await run(
        ['start', '--db', db],
        'empty cart 16\ncart 61.2 kg\n\nweek\nhelp\n',
      );
      expect(err).toBe('');
      expect(code).toBe(0);
      expect(out).toMatch(/A new book: kg, °C/);
      expect(out).toMatch(/^ready: /m);
      expect(out).toContain('45.2 kg net (61.2 − 16)');
      expect(out).toContain('In: 45.2 kg net');
      expect(out).toContain('Somebody hurt');
    }));

  it('finds it all in the book tomorrow', () =>
    inFolder(async (folder) => {
      const db = join(folder, 'book.db');
      await run(['start', '--db', db], 'empty cart 16\ncart 61.2 kg\n');
      const { out } = await run(['start', '--db', db], 'show #2\n');
      expect(out).not.toMatch(/A new book/);
      expect(out).toContain('#2 Cart 45.2 kg net');
    }));

  it('takes a byte order mark, carriage returns, a last line without an end, and very long lines', () =>
    inFolder(async (folder) => {
      const db = join(folder, 'book.db');
      const { code, out } = await run(
        ['start', '--db', db],
        `\uFEFFempty cart 16\r\n${'x '.repeat(4000)}\r\ncart 61`,
      );
      expect(code).toBe(0);
      expect(out).toContain('45 kg net');
    }));

  it('saves the book as a file and says where, also when the input has ended', () =>
    inFolder(async (folder) => {
      const db = join(folder, 'book.db');
      const { code, out, err } = await run(['start', '--db', db], 'cart 61.2 kg\nexport json\nexport json\n');
      expect({ code, err }).toEqual({ code: 0, err: '' });
      const saved = [...out.matchAll(/^ {2}File: (.+)$/gm)].map(([, path]) => path!);
      expect(new Set(saved).size).toBe(2);
      for (const path of saved) {
        expect(path.startsWith(join(folder, 'papers'))).toBe(true);
        expect(JSON.parse(readFileSync(path, 'utf8')).lines).toHaveLength(1);
      }
    }));

  it('empties the talk of days ago, and the words that the site keeps no longer, by being started', () =>
    inFolder(async (folder) => {
      const path = join(folder, 'book.db');
      await run(
        ['start', '--db', path],
        'set keep messages 30 days\nlovely weather\ncart 61.2 kg\ncart 62 kg\n',
      );
      const db = new Database(path);
      const textsOf = () => db.prepare('SELECT text FROM message ORDER BY id').pluck().all();
      expect(textsOf()).toEqual([
        'set keep messages 30 days',
        'lovely weather',
        'cart 61.2 kg',
        'cart 62 kg',
      ]);
      // As if it had come days ago, and the first load weeks ago.
      const ago = (days: number) => new Date(Date.now() - days * 86_400_000).toISOString();
      db.prepare("UPDATE message SET received_at = ? WHERE text = 'lovely weather'").run(ago(2));
      db.prepare("UPDATE message SET received_at = ? WHERE text = 'cart 61.2 kg'").run(ago(31));
      db.exec("DELETE FROM memo WHERE key LIKE '%-emptied-to'");
      db.close();
      await run(['start', '--db', path], '');
      const after = new Database(path, { readonly: true });
      expect(after.prepare('SELECT text FROM message ORDER BY id').pluck().all()).toEqual([
        'set keep messages 30 days',
        '',
        '',
        'cart 62 kg',
      ]);
      after.close();
    }));

  it('opens a made-up site with months in it', () =>
    inFolder(async (folder) => {
      const { code, out } = await run(['start', '--demo', '--db', join(folder, 'demo.db')], 'year\npiles\n');
      expect(code).toBe(0);
      expect(out).toMatch(/Year so far: [\d,]+/);
      expect(out).toMatch(/Pile A/);
    }));

  it('ends in order when told to, also while the input stays open', () =>
    inFolder(async (folder) => {
      const db = join(folder, 'book.db');
      const child = start(['start', '--db', db]);
      await new Promise<void>((resolve) => {
        child.stdout.on('data', (chunk) => {
          if (String(chunk).includes('ready')) resolve();
        });
      });
      const reading = await run(['entries', '--db', db]);
      expect(reading).toMatchObject({ code: 0, err: '' });
      const second = await run(['start', '--db', db], 'cart 61\n');
      expect(second.code).toBe(2);
      expect(second.err.trim().split('\n')).toHaveLength(1);
      expect(second.err).toMatch(/in use/);
      const ended = new Promise<number | null>((resolve) => child.on('close', (code) => resolve(code)));
      child.kill('SIGTERM');
      child.kill('SIGTERM');
      expect(await ended).toBe(0);
    }));

  const one = async (args: string[]) => {
    const ran = await run(args, 'cart 61\n');
    expect(ran.err.trim().split('\n')).toHaveLength(1);
    expect(ran.err).not.toMatch(/ at .*:\d+/);
    return ran;
  };

  it('says in one line what is wrong with a book, and touches nothing', () =>
    inFolder(async (folder) => {
      const text = join(folder, 'letter.db');
      writeFileSync(text, 'this is no log book, only a letter that is long enough to be looked at');
      expect(await one(['start', '--db', text])).toMatchObject({
        code: 2,
        err: expect.stringMatching(/not a log book/),
      });
      expect(readFileSync(text, 'utf8')).toMatch(/only a letter/);

      const newer = join(folder, 'newer.db');
      await run(['start', '--db', newer], '');
      const db = new Database(newer);
      db.pragma('user_version = 999');
      db.close();
      expect(await one(['start', '--db', newer])).toMatchObject({
        code: 2,
        err: expect.stringMatching(/newer version/),
      });

      const other = join(folder, 'other.db');
      const foreign = new Database(other);
      foreign.exec('CREATE TABLE cats (name TEXT)');
      foreign.close();
      expect(await one(['start', '--db', other])).toMatchObject({
        code: 2,
        err: expect.stringMatching(/not a log book/),
      });

      expect(await one(['entries', '--db', join(folder, 'none.db')])).toMatchObject({ code: 2 });
      expect(existsSync(join(folder, 'none.db'))).toBe(false);
      expect(await one(['start', '--db', folder])).toMatchObject({ code: 2 });
    }));

  it.skipIf(process.getuid?.() === 0)(
    'says that a book cannot be written (root may write anything: not shown there)',
    () =>
      inFolder(async (folder) => {
        const db = join(folder, 'book.db');
        await run(['start', '--db', db], '');
        chmodSync(db, 0o444);
        expect(await one(['start', '--db', db])).toMatchObject({
          code: 2,
          err: expect.stringMatching(/not written/),
        });
      }),
  );

  it('refuses bad flags and bad site files in one line', () =>
    inFolder(async (folder) => {
      expect(await one(['start', '--colour'])).toMatchObject({ code: 2 });
      expect(await one(['frobnicate'])).toMatchObject({ code: 2 });
      const bad = join(folder, 'bad.json');
      writeFileSync(bad, '{"name": "X", "timeZone": "Mars/Olympus"}');
      expect(await one(['start', '--site', bad, '--db', join(folder, 'a.db')])).toMatchObject({
        code: 2,
        err: expect.stringMatching(/timeZone/),
      });
      writeFileSync(bad, '{"name": ');
      expect(await one(['start', '--site', bad, '--db', join(folder, 'b.db')])).toMatchObject({ code: 2 });
      expect(existsSync(join(folder, 'a.db'))).toBe(false);
    }));
});
