import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
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
  ['2026-06-05T13:00', '20 kg weight reads 20.4'],
  ['2026-06-05T13:05', 'swept the floor'],
  ['2026-06-05T13:10', 'sample from pile A'],
  ['2026-06-09T13:10', 'lab result pile A: lead 45 mg/kg'],
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

/** How many images are painted, and what each figure says it is. */
async function picturesOf(path: string): Promise<{ images: number; alts: string[] }> {
  const document = await getDocument({ data: new Uint8Array(readFileSync(path)), verbosity: 0 }).promise;
  let images = 0;
  const alts: string[] = [];
  const walk = (node: { alt?: string; children?: unknown[] }): void => {
    if (node.alt) alts.push(node.alt);
    for (const child of node.children ?? []) walk(child as typeof node);
  };
  for (let n = 1; n <= document.numPages; n++) {
    const page = await document.getPage(n);
    images += (await page.getOperatorList()).fnArray.filter((op) => op === OPS.paintImageXObject).length;
    const tree = await page.getStructTree();
    if (tree) walk(tree as never);
  }
  return { images, alts };
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
    'Period: 1 Jun 2026 – 30 Jun 2026 (30 days)',
    'Language: English',
    'time zone America/Moncton',
    'Taken in, weighed 46 kg',
    'Taken in, estimated from volume 18 kg',
    'Added (chips and the like) 12 kg',
    // 64 kg of 60 t.
    "of the year's target 0.1 %",
    // 18 of 64 kg; 64 kg of 60 t × 30 / 365.25.
    'Estimated part of what was taken in 28.1 %',
    "of the target's share for these days 1.3 %",
    'pile A 3 55 °C 60 °C',
    'vessel-3d: time and temperature met on these readings (3 / 3 days, 4 Jun 2026)',
    '4 Jun 2026 56 °C yes',
    'Rule for heat vessel-3d: 55 °C, 3 days (40 CFR 503',
    '5 Jun 2026 scale checked 20.4 kg 20 kg',
    'Samples taken: 1',
    '9 Jun 2026 pile A lead 45 mg/kg',
    'rose garden 340 L',
    'still open',
    'coffee grounds 0.45 kg/L',
    'Lines corrected or taken back 1',
    'Lines held, not counted 1',
  ])
    expect(text).toContain(said);
  expect(text).not.toContain('42.5');
  // The year against its target, and how pile A heated; each says in words what it shows.
  const shown = await picturesOf(out);
  expect(shown.images).toBe(2);
  expect(shown.alts).toEqual([expect.stringMatching(/since 1 Jan/), expect.stringMatching(/^Pile A/)]);
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
