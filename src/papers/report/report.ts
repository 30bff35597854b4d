import { createWriteStream } from 'node:fs';
import { finished } from 'node:stream/promises';
import PdfDocument from 'pdfkit';
import { gapSay, type Manner, say, type Words } from '#assistant';
import { daysBetween, RULE_SET_DATA } from '#core';
import { fromCelsius, fromKg, fromLitres, type Language } from '#records';
import type { ReportFacts } from './facts.ts';
import {
  type Doc,
  heading,
  keepTogether,
  MARGIN,
  pageFeet,
  paragraph,
  pictures,
  table,
  useFonts,
} from './layout.ts';
import { heatPictures, intakePictures } from './pictures.ts';
import { type ReportText, reportTexts } from './texts.ts';

/** Rows of evidence of one pile; the rest stands in the workbook. */
const MOST_EVIDENCE = 40;
/** Days of a year, on average. */
const YEAR_DAYS = 365.25;
const NONE = '–';

type How = { path: string; language: Language; words: Words; now: string };
/** A report in the making: what it is of, and how things are written in it. */
type Report = {
  doc: Doc;
  facts: ReportFacts;
  words: Words;
  manner: Manner;
  t: (id: ReportText) => string;
  show: ReturnType<typeof writing>;
};

/** The report as a PDF, page numbers, its site and period on each page. Words for things of the trade are handed in. */
export async function writeReport(facts: ReportFacts, how: How): Promise<{ pages: number }> {
  const { units, name, dayOrder, timeZone } = facts.settings;
  const t = reportTexts(how.language);
  const manner = { language: how.language, units, timeZone, dayOrder, today: facts.to };
  const show = writing(how.words, manner);
  const span = `${show.date(facts.from)} – ${show.date(facts.to)}`;
  const doc = new PdfDocument({
    size: dayOrder === 'mdy' && units.mass === 'lb' ? 'LETTER' : 'A4',
    margin: MARGIN,
    bufferPages: true,
    tagged: true,
    pdfVersion: '1.5',
    lang: how.language,
    displayTitle: true,
    info: { Title: `${t('title')}: ${name}, ${facts.from} – ${facts.to}` },
  });
  useFonts(doc);
  const out = createWriteStream(how.path, { flags: 'wx' });
  const written = finished(out);
  doc.pipe(out);
  const report: Report = { doc, facts, words: how.words, manner, t, show };

  doc.font('bold').fontSize(18).text(t('title'));
  doc.font('bold').fontSize(13).text(name).moveDown(0.3);
  const head = [
    [t('period'), `${span} (${show.number(daysBetween(facts.from, facts.to) + 1)} ${t('days')})`],
    [t('made'), show.date(how.now.slice(0, 10))],
    [t('languageOf'), t('language')],
    [
      t('unitsOf'),
      `${units.mass}, °${units.temperature}, ${units.volume}, ${units.length} · ${t('clock')} ${timeZone}`,
    ],
  ];
  for (const [what, value] of head) doc.font('plain').fontSize(9).text(show.told(what!, value!));

  totals(report);
  pictures(doc, await intakePictures(report));
  intake(report);
  heat(report);
  pictures(doc, await heatPictures(report));
  piles(report);
  leaving(report);
  troubles(report);
  checks(report);
  laboratory(report);
  method(report);
  quality(report);

  const pages = pageFeet(doc, `${name} · ${span}`, (page, of) => `${t('page')} ${page} / ${of}`);
  doc.end();
  await written;
  return { pages };
}

/** How numbers, dates and things are written in this report. */
function writing(words: Words, manner: Manner) {
  const { language, units } = manner;
  // English as it is written outside America: a day before its month is read by both.
  const locale = language === 'en' ? 'en-GB' : language;
  const one = new Intl.NumberFormat(locale, { maximumFractionDigits: 1 });
  const three = new Intl.NumberFormat(locale, { maximumFractionDigits: 3 });
  const day = new Intl.DateTimeFormat(locale, {
    day: 'numeric',
    month: 'short',
    year: 'numeric',
    timeZone: 'UTC',
  });
  const month = new Intl.DateTimeFormat(locale, { month: 'long', year: 'numeric', timeZone: 'UTC' });
  const label = (material: Parameters<typeof say>[1] & object) =>
    words.label(say('what-material', material), manner);
  return {
    /** `Period: …`; French has a space before its colon. */
    told: (what: string, value: string) => `${what}${language === 'fr' ? '\u00a0' : ''}: ${value}`,
    number: (value: number) => one.format(value),
    exact: (value: number) => three.format(value),
    mass: (kg: number) => `${one.format(fromKg(kg, units.mass))} ${units.mass}`,
    volume: (litres: number) => `${one.format(fromLitres(litres, units.volume))} ${units.volume}`,
    degrees: (celsius: number) =>
      `${one.format(fromCelsius(celsius, units.temperature))} °${units.temperature}`,
    date: (date: string) => day.format(new Date(`${date}T00:00:00Z`)),
    month: (value: string) => month.format(new Date(`${value}-01T00:00:00Z`)),
    term: (of: string, word: string) => label({ material: { term: word, of } }),
    material: (word: string) => label({ material: { material: word } }),
    place: (where: string | null) => (where ? label({ material: { place: where } }) : NONE),
  };
}

function totals({ doc, facts, t, show }: Report): void {
  heading(doc, t('totals'));
  const { feed } = facts;
  const both = feed.kg + feed.estimatedKg;
  const target = facts.settings.targetTonnesPerYear;
  const share = (daysBetween(facts.from, facts.to) + 1) / YEAR_DAYS;
  const percent = (value: number) => `${show.number(value * 100)} %`;
  table(
    doc,
    [
      [t('what'), 0.68],
      [t('amount'), 0.32, 'right'],
    ],
    [
      [t('feedWeighed'), show.mass(feed.kg)],
      [t('feedEstimated'), show.mass(feed.estimatedKg)],
      [t('estimatedShare'), both > 0 ? percent(feed.estimatedKg / both) : NONE],
      [
        t('added'),
        `${show.mass(facts.addedKg)}${facts.addedEstimatedKg > 0 ? ` + ${show.mass(facts.addedEstimatedKg)} (${t('estimated')})` : ''}`,
      ],
      [t('pending'), String(feed.pending)],
      [
        t('compost'),
        [
          facts.compostKg > 0 ? show.mass(facts.compostKg) : '',
          facts.compostLitres > 0 ? show.volume(facts.compostLitres) : '',
        ]
          .filter(Boolean)
          .join(' + ') || '0',
      ],
      [t('refused'), show.number(facts.refused)],
      [t('turnings'), show.number(facts.turnings)],
      [t('hours'), show.number(facts.hours)],
      ...(target
        ? [
            [t('target'), `${show.number(target)} t`],
            [t('ofTarget'), percent(both / 1000 / target)],
            [t('ofShare'), percent(both / 1000 / (target * share))],
          ]
        : []),
    ],
  );
}

function intake({ doc, facts, t, show }: Report): void {
  const amounts = (row: { loads: number; kg: number; estimatedKg: number }) => [
    String(row.loads),
    show.mass(row.kg),
    row.estimatedKg > 0 ? show.mass(row.estimatedKg) : NONE,
  ];
  heading(doc, t('bySource'));
  table(
    doc,
    [
      [t('material'), 0.26],
      [t('source'), 0.26],
      [t('loads'), 0.12, 'right'],
      [t('weighed'), 0.18, 'right'],
      [t('estimated'), 0.18, 'right'],
    ],
    facts.bySource.map((row) => [show.material(row.material), row.source || NONE, ...amounts(row)]),
    t('none'),
  );
  if (facts.byMonth.length < 2) return;
  heading(doc, t('byMonth'));
  table(
    doc,
    [
      [t('month'), 0.4],
      [t('loads'), 0.16, 'right'],
      [t('weighed'), 0.22, 'right'],
      [t('estimated'), 0.22, 'right'],
    ],
    facts.byMonth.map((row) => [show.month(row.month), ...amounts(row)]),
  );
}

function heat({ doc, facts, t, show }: Report): void {
  heading(doc, t('heat'));
  table(
    doc,
    [
      [t('place'), 0.4],
      [t('readings'), 0.2, 'right'],
      [t('lowestPoint'), 0.2, 'right'],
      [t('highestPoint'), 0.2, 'right'],
    ],
    facts.heat.map((row) => [
      show.place(row.place),
      show.number(row.readings),
      show.degrees(row.lowestC),
      show.degrees(row.highestC),
    ]),
    t('none'),
  );
}

function piles({ doc, facts, words, manner, t, show }: Report): void {
  heading(doc, t('piles'));
  if (facts.piles.length === 0) paragraph(doc, t('none'));
  for (const { batch, rule, proof, gaps } of facts.piles) {
    const life = [batch.startedAt?.localDate ?? batch.readings[0]?.localDate, batch.goneAt?.localDate]
      .map((date) => (date ? show.date(date) : ''))
      .join(' – ');
    const verdict = proof
      ? `${t(proof.verdict)} (${show.number(proof.counted)} / ${show.number(proof.needed)} ${show.term('unit', proof.unit)}${proof.metOn ? `, ${show.date(proof.metOn)}` : ''})`
      : t('noRule');
    // Its name, its verdict and the first rows stand together.
    keepTogether(doc, 90);
    paragraph(doc, `${show.place(batch.name)}, ${life}`, true);
    paragraph(doc, rule ? show.told(rule, verdict) : verdict);
    const missing = gaps.map((gap) => words.label(gapSay(gap), { ...manner, today: '0001-01-01' }));
    paragraph(doc, `${t('missing')} ${missing.join('; ') || t('none')}`);
    table(
      doc,
      [
        [t('date'), 0.22],
        [t('lowest'), 0.16, 'right'],
        [t('counts'), 0.14, 'right'],
        [t('why'), 0.26],
        [t('lines'), 0.22],
      ],
      (proof?.rows ?? [])
        .slice(-MOST_EVIDENCE)
        .map((row) => [
          show.date(row.localDate),
          row.lowestC === null ? NONE : show.degrees(row.lowestC),
          row.counted ? t('yes') : t('no'),
          row.counted || !row.why ? '' : t(`why-${row.why}`),
          row.entries.map((entry) => `#${entry}`).join(', '),
        ]),
    );
  }
  paragraph(doc, t('disclaimer'));
}

function leaving({ doc, facts, t, show }: Report): void {
  heading(doc, t('removals'));
  table(
    doc,
    [
      [t('date'), 0.17],
      [t('material'), 0.23],
      [t('pile'), 0.14],
      [t('to'), 0.28],
      [t('amount'), 0.18, 'right'],
    ],
    facts.removals.map((row) => [
      show.date(row.date),
      show.material(row.material),
      show.place(row.pile),
      row.to ?? NONE,
      row.kg !== null ? show.mass(row.kg) : row.litres !== null ? show.volume(row.litres) : NONE,
    ]),
    t('none'),
  );
}

function troubles({ doc, facts, t, show }: Report): void {
  heading(doc, t('problems'));
  table(
    doc,
    [
      [t('date'), 0.17],
      [t('what'), 0.2],
      [t('place'), 0.14],
      [t('ended'), 0.19],
      [t('done'), 0.3],
    ],
    facts.problems.map(({ localDate, topic, place, ended }) => [
      show.date(localDate),
      show.term('topic', topic),
      show.place(place),
      ended ? show.date(ended.localDate) : t('open'),
      topic === 'injury' ? NONE : (ended?.note ?? NONE),
    ]),
    t('none'),
  );
}

function checks({ doc, facts, t, show }: Report): void {
  heading(doc, t('checks'));
  table(
    doc,
    [
      [t('what'), 0.55],
      [t('times'), 0.15, 'right'],
      [t('last'), 0.3, 'right'],
    ],
    facts.chores.map(({ chore, times, last }) => [
      show.term('chore', chore),
      show.number(times),
      show.date(last),
    ]),
    t('none'),
  );
  table(
    doc,
    [
      [t('date'), 0.25],
      [t('check'), 0.35],
      [t('reads'), 0.2, 'right'],
      [t('against'), 0.2, 'right'],
    ],
    facts.checks.map(({ date, chore, reads, against, unit }) => [
      show.date(date),
      show.term('chore', chore),
      `${show.exact(reads)} ${unit ?? ''}`.trim(),
      against === null ? NONE : `${show.exact(against)} ${unit ?? ''}`.trim(),
    ]),
  );
}

function laboratory({ doc, facts, t, show }: Report): void {
  heading(doc, t('results'));
  paragraph(doc, show.told(t('samples'), show.number(facts.samples)));
  table(
    doc,
    [
      [t('date'), 0.22],
      [t('place'), 0.2],
      [t('analyte'), 0.28],
      [t('value'), 0.15, 'right'],
      [t('unit'), 0.15],
    ],
    facts.results.map(({ date, place, analyte, value, unit }) => [
      show.date(date),
      show.place(place),
      show.term('analyte', analyte),
      value === 'not-detected' ? t('notDetected') : value,
      unit,
    ]),
    t('none'),
  );
}

function method({ doc, facts, t, show }: Report): void {
  heading(doc, t('method'));
  paragraph(doc, t('net'));
  const factors = facts.factors.map(
    ({ material, factor, unit }) => `${show.material(material)} ${show.exact(factor)} ${unit}`,
  );
  paragraph(doc, `${t('estimates')} ${factors.join('; ') || t('none')}.`);
  paragraph(doc, t('targetMethod'));
  const rule = facts.settings.ruleSet;
  if (!rule) {
    paragraph(doc, t('noRule'));
    return;
  }
  const { levelCelsius, days, hours, turns, citations } = RULE_SET_DATA[rule];
  const long = days
    ? `${show.number(days)} ${show.term('unit', 'days')}`
    : `${show.number(hours ?? 0)} ${show.term('unit', 'hours')}`;
  const turned = turns > 0 ? `, ${show.told(t('turnings').toLowerCase(), String(turns))}` : '';
  paragraph(
    doc,
    show.told(
      `${t('rule')} ${rule}`,
      `${show.degrees(levelCelsius)}, ${long}${turned} (${citations.map(({ title, part }) => `${title}, ${part}`).join('; ')}).`,
    ),
  );
}

function quality({ doc, facts, t, show }: Report): void {
  heading(doc, t('quality'));
  table(
    doc,
    [
      [t('what'), 0.7],
      [t('amount'), 0.3, 'right'],
    ],
    [
      [t('counted'), show.number(facts.counted)],
      [t('corrected'), show.number(facts.corrected)],
      [t('held'), show.number(facts.held)],
      [t('photos'), show.number(facts.photos)],
    ],
  );
}
