import { describe, expect, test } from 'vitest';
import type { OutgoingRow } from '#assistant';
import { HOSPITAL, startScenario } from './harness.ts';

/** The crew of Fernhill, with a coordinator; what a reply carries as a file. */
function crew(site: unknown = HOSPITAL) {
  const one = startScenario(site);
  one.say('set target 40 t', { from: 'Rosa', coordinator: true });
  const fileOf = (text: string, more: Record<string, unknown> = { from: 'Rosa' }): OutgoingRow['file'] => {
    const id = `asked ${text}`;
    one.say(text, { id, ...more });
    const key = one.book.memo<{ chat: string }>(one.site, `replay-id:${id}`)!;
    const message = one.book.message(one.site, 'replay', key.chat, id, null)!;
    return one.book.outgoingOfMessage(message.id)[0]?.file ?? null;
  };
  return { ask: (text: string, from: string) => one.ask(text, { from }), fileOf };
}

describe('the book as a file, asked for in the chat', () => {
  test('the outbox keeps what to make, and no file', () => {
    const { fileOf } = crew();
    expect(fileOf('export')).toEqual({
      name: 'fernhill-hospital-grounds-2026-11-24.xlsx',
      paper: { paper: 'export', from: '0001-01-01', to: '2026-11-24', format: 'xlsx', language: 'en' },
      failed: 'The file could not be made. On the machine: npm run -s export',
    });
    expect(fileOf('export csv from 1 October to 15 October')).toMatchObject({
      name: 'fernhill-hospital-grounds-2026-10-01-2026-10-15.zip',
      paper: { from: '2026-10-01', to: '2026-10-15', format: 'csv' },
    });
    expect(fileOf('export json')).toMatchObject({ name: expect.stringMatching(/\.json$/) });
  });

  // The day of asking is Tuesday, 24 November 2026.
  test.each([
    ['report', '2026-11-01', '2026-11-24'],
    ['report week', '2026-11-22', '2026-11-24'],
    ['report last week', '2026-11-15', '2026-11-21'],
    ['report last month', '2026-10-01', '2026-10-31'],
    ['report season', '2026-08-25', '2026-11-24'],
    ['annual report', '2026-04-01', '2026-11-24'],
    ['report last year', '2025-04-01', '2026-03-31'],
    ['report october', '2026-10-01', '2026-10-31'],
    ['report 2025', '2025-01-01', '2025-12-31'],
    ['report 2026', '2026-01-01', '2026-11-24'],
  ])('%s is of %s to %s, by the weeks and years of the site', (text, from, to) => {
    const { fileOf } = crew({ ...HOSPITAL, weekStarts: 'sunday', yearStarts: 4 });
    expect(fileOf(text)).toMatchObject({ paper: { paper: 'report', from, to, language: 'en' } });
  });

  test('a report is in the language of who asks, a workbook in the one of the site', () => {
    const { fileOf, ask } = crew({ ...HOSPITAL, languages: ['es', 'fr'] });
    expect(fileOf('rapport du mois')).toMatchObject({ paper: { language: 'fr' } });
    expect(fileOf('exporte tout')).toMatchObject({ paper: { language: 'es' } });
    expect(ask('rapport du mois', 'Rosa')).toContain('Le rapport du');
  });

  test('only a coordinator has it; a word of telling asks for nothing', () => {
    const { fileOf, ask } = crew();
    for (const text of ['export', 'report month']) {
      expect(fileOf(text, { from: 'Ben' })).toBeNull();
      expect(ask(text, 'Ben')).toBe('Only a coordinator can have the book as a file.');
    }
    expect(fileOf('report smell at pile B')).toBeNull();
  });
});
