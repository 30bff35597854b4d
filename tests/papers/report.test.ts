import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { expect, test } from 'vitest';
import { REPORT_TEXTS, reportTexts } from '../../src/papers/report/texts.ts';
import { folder } from '../logbook/samples.ts';
import { asked, talked } from './kit.ts';

const CREW: [string, string][] = [
  ['2026-05-20T09:00', 'cart 58 from west kitchen'],
  ['2026-06-01T09:00', 'cart 61.5 from east kitchen, chips 12'],
  ['2026-06-01T09:30', '2 buckets of coffee grounds'],
  ['2026-06-02T11:30', 'set rule set vessel-3d'],
  ['2026-06-02T12:30', 'A 55 57 58'],
  ['2026-06-03T11:30', 'A 58 59 60'],
  ['2026-06-04T11:30', 'A 56 59 60'],
  ['2026-06-04T11:40', 'cart 665'],
  ['2026-06-04T12:40', 'strong smell at pile B'],
  ['2026-06-05T12:50', 'cart 58 from west kitchen'],
  ['2026-06-05T12:51', 'undo'],
  ['2026-06-05T12:53', 'refused a cart from cafeteria, full of plastic'],
  ['2026-06-05T12:55', '4 barrows of finished compost from A to the rose garden'],
];

async function pagesOf(path: string): Promise<string[]> {
  const document = await getDocument({ data: new Uint8Array(readFileSync(path)), verbosity: 0 }).promise;
  const pages: string[] = [];
  for (let n = 1; n <= document.numPages; n++) {
    const { items } = await (await document.getPage(n)).getTextContent();
    pages.push(
      items
        .map((item) => ('str' in item ? item.str : ''))
        .join(' ')
        .replaceAll(/\s+/g, ' '),
    );
  }
  return pages;
}

test('the report of a month holds its totals, evidence, problems and what is not counted, on numbered pages', async () => {
  const dir = folder();
  const db = join(dir, 'yard.db');
  talked(db, 'fixtures/sites/hospital.json', CREW);
  const out = join(dir, 'june.pdf');
  const args = ['report', 'month', '--db', db, '--to', '2026-06-30', '--out', out] as const;
  expect(await asked(...args)).toMatchObject({ code: 0, err: '' });
  const pages = await pagesOf(out);
  for (const [i, page] of pages.entries()) expect(page).toContain(`Page ${i + 1} / ${pages.length}`);
  const text = pages.join(' ');
  for (const said of [
    'Millbrook Hospital grounds',
    '2026-06-01 – 2026-06-30',
    'Taken in, weighed 46 kg',
    'Taken in, estimated from volume 18 kg',
    'Added (chips and the like) 12 kg',
    // 64 kg of 60 t.
    'Of the target 0.1 %',
    'vessel-3d: 3 / 3 d, 2026-06-04',
    '2026-06-04 56 °C yes',
    'rose garden 340 L',
    'still open',
    'coffee grounds 0.45 kg/L',
    'Lines corrected or taken back 1',
    'Lines held, not counted 1',
  ])
    expect(text).toContain(said);
  expect(text).not.toContain('42.5');
  expect(await asked(...args)).toMatchObject({ code: 2, out: '' });
});

test.each(['fr', 'es'] as const)('the report in %s has no English heading left', async (language) => {
  const dir = folder();
  const db = join(dir, 'yard.db');
  talked(db, 'fixtures/sites/hospital.json', CREW);
  const out = join(dir, 'june.pdf');
  await asked(
    'report',
    '--from',
    '2026-05-01',
    '--to',
    '2026-06-30',
    '--db',
    db,
    '--out',
    out,
    '--language',
    language,
  );
  const text = (await pagesOf(out)).join(' ');
  const t = reportTexts(language);
  for (const id of ['totals', 'byMonth', 'piles', 'problems', 'method', 'quality'] as const) {
    expect(text).toContain(t(id));
    expect(text).not.toContain(REPORT_TEXTS[id][0]);
  }
  expect(text).toMatch(/88,5 kg|88.5 kg/);
});

test('a span that is none and a language nobody knows are one line and code 2', async () => {
  const dir = folder();
  const db = join(dir, 'yard.db');
  talked(db, 'fixtures/sites/hospital.json', CREW.slice(0, 1));
  for (const more of [['fortnight'], ['--language', 'de'], ['--from', '2026-06-02', '--to', '2026-06-01']]) {
    const { code, out, err } = await asked('report', '--db', db, '--out', join(dir, 'x.pdf'), ...more);
    expect({ code, out, lines: err.split('\n').length }).toEqual({ code: 2, out: '', lines: 2 });
  }
  expect(existsSync(join(dir, 'x.pdf'))).toBe(false);
});
