import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { inFolder, run } from './running.ts';

const SITE = 'fixtures/sites/hospital.json';
const json = (out: string): unknown[] =>
  out
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line));

describe('read', () => {
  it('gives one line of JSON for each line, in order, and a blank result for a blank line', async () => {
    const { code, out } = await run(
      ['read', '--site', SITE],
      '\uFEFFcart 61.5\r\n\r\nturned B\\ncart 58\r\n',
    );
    expect(code).toBe(0);
    const [first, blank, both, ...rest] = json(out) as { records: { kind: string }[] }[];
    expect(rest).toEqual([]);
    expect(Object.keys(first!)).toEqual(['records', 'requests', 'doubts', 'unread']);
    expect(first!.records).toMatchObject([{ kind: 'weigh-in', kg: 61.5, basis: 'gross' }]);
    expect(blank).toEqual({ records: [], requests: [], doubts: [], unread: [] });
    expect(both!.records.map((record) => record.kind)).toEqual(['turning', 'weigh-in']);
  });

  it('counts each message as sent when its line says, and names bad lines', async () => {
    const { code, out } = await run(
      ['read', '--site', SITE, '--json'],
      '{"at":"2026-05-12T10:00","text":"yesterday cart 61.5"}\nnot json\n{"text": 5}\n',
    );
    expect(code).toBe(1);
    const lines = json(out);
    expect(lines[0]).toMatchObject({ records: [{ when: '2026-05-11' }] });
    expect(lines[1]).toHaveProperty('error');
    expect(lines[2]).toHaveProperty('error');
  });

  it('ends with code 2 on a bad flag or site file', async () => {
    expect(await run(['read'])).toMatchObject({ code: 2, out: '' });
    expect(await run(['read', '--site', 'none.json'])).toMatchObject({ code: 2, out: '' });
    expect(await run(['read', '--site', SITE, '--at', 'noon'])).toMatchObject({ code: 2, out: '' });
  });

  it('warns about a field it does not know and goes on', () =>
    inFolder(async (folder) => {
      const file = join(folder, 'site.json');
      writeFileSync(file, '{"name":"Fern","timeZone":"Europe/London","gnomes":3}');
      const { code, out, err } = await run(['read', '--site', file], 'cart 61.5\n');
      expect(code).toBe(0);
      expect(err).toContain('gnomes');
      expect(json(out)).toHaveLength(1);
    }));

  it('reads quantities alone', async () => {
    const { out } = await run(['read', '--quantities', '--language', 'en'], 'it weighs 5.5 kg\n\n');
    expect(json(out)).toEqual([[{ text: '5.5 kg', start: 10, end: 16, value: 5.5, unit: 'kg' }], []]);
  });
});

describe('replay and entries', () => {
  it('continues a book, keeps two sites apart, and knows a message that came before', () =>
    inFolder(async (folder) => {
      const db = join(folder, 'book.db');
      const other = join(folder, 'other.json');
      writeFileSync(other, '{"name":"Other","timeZone":"America/New_York"}');
      const line = (more: object) => `${JSON.stringify({ at: '2026-05-12T10:00', from: 'Ana', ...more })}\n`;
      const first = await run(['replay', '--site', SITE, '--db', db], line({ id: 'a', text: 'cart 61.5' }));
      expect(json(first.out)).toMatchObject([{ id: 'a', entries: [1] }]);
      const again = await run(
        ['replay', '--site', SITE, '--db', db],
        line({ id: 'a', text: 'cart 61.5' }) +
          line({ at: '2026-05-12T10:05', choose: { id: 'a', label: 'Undo' } }),
      );
      expect(json(again.out)).toMatchObject([{ id: 'a', replies: [], entries: [] }, { entries: [2] }]);
      await run(['replay', '--site', other, '--db', db], line({ text: 'cart 58' }));
      expect(await run(['entries', '--db', db])).toMatchObject({ code: 2 });
      const { out } = await run(['entries', '--db', db, '--site', 'Millbrook Hospital grounds']);
      expect(json(out)).toMatchObject([
        { entry: 1, by: 'Ana', netKg: 46, voidedBy: 2, when: '2026-05-12T13:00:00.000Z' },
        { entry: 2, record: { kind: 'void', voids: 1 } },
      ]);
      expect(json((await run(['entries', '--db', db, '--site', 'Other'])).out)).toHaveLength(1);
    }));

  it('names lines that are bad and goes on', () =>
    inFolder(async (folder) => {
      const { code, out } = await run(
        ['replay', '--site', SITE, '--db', join(folder, 'book.db')],
        'nonsense\n{"at":"2026-05-12T10:00","from":"Ana","text":"cart 61.5"}\n{"at":"never"}\n{"at":"2026-05-13T10:00"}\n',
      );
      expect(code).toBe(1);
      expect(json(out)).toMatchObject([
        { error: expect.any(String) },
        { entries: [1] },
        { error: expect.any(String) },
        { id: null, entries: [] },
      ]);
    }));
});
