import { createWriteStream } from 'node:fs';
import { createRequire } from 'node:module';
import { finished } from 'node:stream/promises';
import PdfDocument from 'pdfkit';
import { say, type Words } from '#assistant';
import { RULE_SET_DATA } from '#core';
import { fromCelsius, fromKg, fromLitres, type Language } from '#records';
import type { ReportFacts } from './facts.ts';
import { reportTexts } from './texts.ts';

const fontAt = (name: string): string =>
  createRequire(import.meta.url).resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`);
const MARGIN = 50;
const TEXT_PT = 9;
/** Rows of evidence of one pile; the rest stands in the workbook. */
const MOST_EVIDENCE = 40;

type Doc = InstanceType<typeof PdfDocument>;

/** The report as a PDF: A4, page numbers, its site and period on each page. Words for things of the trade are handed in. */
export async function writeReport(
  facts: ReportFacts,
  how: { path: string; language: Language; words: Words; now: string },
): Promise<{ pages: number }> {
  const t = reportTexts(how.language);
  const { units, name, targetTonnesPerYear, dayOrder, timeZone } = facts.settings;
  const manner = { language: how.language, units, timeZone, dayOrder, today: '0001-01-01' };
  const term = (of: string, word: string) =>
    how.words.label(say('what-material', { material: { term: word, of } }), manner);
  const material = (word: string) =>
    how.words.label(say('what-material', { material: { material: word } }), manner);
  const place = (where: string | null) =>
    where === null ? '–' : how.words.label(say('what-material', { material: { place: where } }), manner);
  const number = new Intl.NumberFormat(how.language, { maximumFractionDigits: 1 });
  const number3 = new Intl.NumberFormat(how.language, { maximumFractionDigits: 3 });
  const mass = (kg: number) => `${number.format(fromKg(kg, units.mass))} ${units.mass}`;
  const volume = (litres: number) => `${number.format(fromLitres(litres, units.volume))} ${units.volume}`;
  const degrees = (celsius: number) =>
    `${number.format(fromCelsius(celsius, units.temperature))} °${units.temperature}`;

  const doc = new PdfDocument({
    size: 'A4',
    margin: MARGIN,
    bufferPages: true,
    lang: how.language,
    info: { Title: `${t('title')}: ${name}, ${facts.from} – ${facts.to}` },
  });
  doc.registerFont('plain', fontAt('DejaVuSans'));
  doc.registerFont('bold', fontAt('DejaVuSans-Bold'));
  const out = createWriteStream(how.path, { flags: 'wx' });
  const written = finished(out);
  doc.pipe(out);

  doc
    .font('bold')
    .fontSize(18)
    .text(`${t('title')}: ${name}`);
  doc
    .font('plain')
    .fontSize(10)
    .text(`${t('period')}: ${facts.from} – ${facts.to} · ${t('made')} ${how.now.slice(0, 10)}`);

  heading(doc, t('totals'));
  const measured = facts.feed.kg + facts.feed.estimatedKg;
  table(
    doc,
    [t('what'), t('amount')],
    [0.7, 0.3],
    [
      [t('feedWeighed'), mass(facts.feed.kg)],
      [t('feedEstimated'), mass(facts.feed.estimatedKg)],
      [
        t('added'),
        `${mass(facts.addedKg)}${facts.addedEstimatedKg > 0 ? ` + ${mass(facts.addedEstimatedKg)} (${t('estimated')})` : ''}`,
      ],
      [t('pending'), String(facts.feed.pending)],
      [
        t('compost'),
        [
          facts.compostKg > 0 ? mass(facts.compostKg) : '',
          facts.compostLitres > 0 ? volume(facts.compostLitres) : '',
        ]
          .filter(Boolean)
          .join(' + ') || '0',
      ],
      [t('refused'), number.format(facts.refused)],
      [t('turnings'), number.format(facts.turnings)],
      [t('hours'), number.format(facts.hours)],
      ...(targetTonnesPerYear
        ? [
            [t('target'), `${number.format(targetTonnesPerYear)} t`],
            [t('ofTarget'), `${number.format(measured / 10 / targetTonnesPerYear)} %`],
          ]
        : []),
    ],
  );

  heading(doc, t('bySource'));
  table(
    doc,
    [t('material'), t('source'), t('loads'), t('weighed'), t('estimated')],
    [0.26, 0.28, 0.12, 0.17, 0.17],
    facts.bySource.map((row) => [
      material(row.material),
      row.source || '–',
      String(row.loads),
      mass(row.kg),
      row.estimatedKg > 0 ? mass(row.estimatedKg) : '–',
    ]),
  );
  if (facts.byMonth.length > 1) {
    heading(doc, t('byMonth'));
    table(
      doc,
      [t('month'), t('loads'), t('weighed'), t('estimated')],
      [0.3, 0.2, 0.25, 0.25],
      facts.byMonth.map((row) => [
        row.month,
        String(row.loads),
        mass(row.kg),
        row.estimatedKg > 0 ? mass(row.estimatedKg) : '–',
      ]),
    );
  }

  heading(doc, t('piles'));
  if (facts.piles.length === 0) paragraph(doc, t('none'));
  for (const { batch, rule, proof } of facts.piles) {
    const verdict = proof
      ? `${t(proof.verdict)} (${rule}: ${number.format(proof.counted)} / ${number.format(proof.needed)} ${proof.unit === 'days' ? 'd' : 'h'}${proof.metOn ? `, ${proof.metOn}` : ''})`
      : t('noRule');
    paragraph(doc, `${place(batch.name)}: ${verdict}`, true);
    const rows = (proof?.rows ?? []).slice(-MOST_EVIDENCE);
    if (rows.length > 0)
      table(
        doc,
        [t('date'), t('lowest'), t('counts'), t('lines')],
        [0.2, 0.2, 0.15, 0.45],
        rows.map((row) => [
          row.localDate,
          row.lowestC === null ? '–' : degrees(row.lowestC),
          row.counted ? t('yes') : t('no'),
          row.entries.map((entry) => `#${entry}`).join(', '),
        ]),
      );
  }
  paragraph(doc, t('disclaimer'));

  heading(doc, t('removals'));
  table(
    doc,
    [t('date'), t('material'), t('pile'), t('to'), t('amount')],
    [0.14, 0.24, 0.14, 0.28, 0.2],
    facts.removals.map((row) => [
      row.date,
      material(row.material),
      place(row.pile),
      row.to ?? '–',
      row.kg !== null ? mass(row.kg) : row.litres !== null ? volume(row.litres) : '–',
    ]),
    t('none'),
  );

  heading(doc, t('problems'));
  table(
    doc,
    [t('date'), t('what'), t('place'), t('ended'), t('done')],
    [0.14, 0.2, 0.16, 0.16, 0.34],
    facts.problems.map(({ localDate, topic, place: where, ended }) => [
      localDate,
      term('topic', topic),
      place(where),
      ended?.localDate ?? t('open'),
      topic === 'injury' ? '–' : (ended?.note ?? '–'),
    ]),
    t('none'),
  );

  heading(doc, t('method'));
  paragraph(doc, t('net'));
  paragraph(
    doc,
    `${t('estimates')} ${facts.factors.map((each) => `${material(each.material)} ${number3.format(each.factor)} ${each.unit}`).join('; ') || t('none')}.`,
  );
  const rule = facts.settings.ruleSet;
  if (rule)
    paragraph(
      doc,
      `${rule}: ${degrees(RULE_SET_DATA[rule].levelCelsius)}; ${RULE_SET_DATA[rule].citations.map(({ title, part }) => `${title}, ${part}`).join('; ')}`,
    );

  heading(doc, t('quality'));
  table(
    doc,
    [t('what'), t('amount')],
    [0.7, 0.3],
    [
      [t('counted'), number.format(facts.counted)],
      [t('corrected'), number.format(facts.corrected)],
      [t('held'), number.format(facts.held)],
    ],
  );

  const { count } = doc.bufferedPageRange();
  for (let page = 0; page < count; page++) {
    doc.switchToPage(page);
    // In the lower margin: the document would begin a new page for it otherwise.
    doc.page.margins.bottom = 0;
    doc.font('plain').fontSize(8).fillColor('#555555');
    doc.text(`${name} · ${facts.from} – ${facts.to}`, MARGIN, doc.page.height - 35, { lineBreak: false });
    doc.text(`${t('page')} ${page + 1} / ${count}`, MARGIN, doc.page.height - 35, {
      width: doc.page.width - 2 * MARGIN,
      align: 'right',
      lineBreak: false,
    });
  }
  doc.end();
  await written;
  return { pages: count };
}

const roomLeft = (doc: Doc): number => doc.page.height - MARGIN - doc.y;

function heading(doc: Doc, text: string): void {
  if (roomLeft(doc) < 80) doc.addPage();
  doc.moveDown(1).font('bold').fontSize(12).fillColor('#000000').text(text, MARGIN).moveDown(0.3);
}

function paragraph(doc: Doc, text: string, strong = false): void {
  doc
    .font(strong ? 'bold' : 'plain')
    .fontSize(TEXT_PT)
    .fillColor('#000000')
    .text(text, MARGIN)
    .moveDown(0.4);
}

/** Rows stay whole, and the head is repeated on each page. */
function table(doc: Doc, heads: string[], shares: number[], rows: string[][], none = ''): void {
  if (rows.length === 0) {
    if (none) paragraph(doc, none);
    return;
  }
  const width = doc.page.width - 2 * MARGIN;
  const draw = (cells: string[], strong: boolean): void => {
    doc
      .font(strong ? 'bold' : 'plain')
      .fontSize(TEXT_PT)
      .fillColor('#000000');
    const widths = shares.map((share) => share * width - 6);
    const height = Math.max(...cells.map((cell, i) => doc.heightOfString(cell, { width: widths[i]! }))) + 4;
    if (roomLeft(doc) < height) {
      doc.addPage();
      if (!strong) draw(heads, true);
      doc.font(strong ? 'bold' : 'plain').fontSize(TEXT_PT);
    }
    const top = doc.y;
    let left = MARGIN;
    for (const [i, cell] of cells.entries()) {
      doc.text(cell, left, top, { width: widths[i]! });
      left += shares[i]! * width;
    }
    doc.y = top + height;
    doc
      .moveTo(MARGIN, doc.y - 3)
      .lineTo(MARGIN + width, doc.y - 3)
      .lineWidth(strong ? 0.8 : 0.25)
      .strokeColor('#999999')
      .stroke();
  };
  draw(heads, true);
  for (const row of rows) draw(row, false);
  doc.x = MARGIN;
  doc.moveDown(0.5);
}
