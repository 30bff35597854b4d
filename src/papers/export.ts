import { mkdtempSync, renameSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { settingsOf } from '#assistant';
import { isFeed, sumKg } from '#core';
import type { OpenedBook } from '#logbook';
import { type Entry, fromKg, type Language } from '#records';
import { column } from './cells.ts';
import { KEPT_FORMAT, KEPT_SHEET, type KeptLine } from './kept-line.ts';
import {
  aboutSheet,
  type Corrected,
  correctionSheet,
  type DayMix,
  type EndSheet,
  factorSheet,
  heldSheet,
  judgedPile,
  mixSheet,
  pileSheets,
  problemSheet,
} from './sheets/end-sheets.ts';
import { headsIn } from './sheets/heads.ts';
import { lineSeer, type SeenLine, withoutPrivate } from './sheets/line-seen.ts';
import { LINE_SHEETS } from './sheets/line-sheets.ts';
import { csvSink, type ExportFormat, type Sink, workbookSink } from './sinks.ts';
import { type Span, type SpanFacts, spanFacts } from './span-facts.ts';
import { spoolInto } from './spool.ts';

export type ExportOptions = Span & {
  format: ExportFormat;
  out: string;
  /** What sheets and columns are called; the lines as they are read back are the same in all. */
  language: Language;
  /** UTC instant of making. */
  now: string;
  onProgress?: (done: number, of: number) => void;
};
export type Exported = { lines: number; sheets: { name: string; rows: number }[] };

/** The first day of a span that has none. */
export const ALWAYS = '0001-01-01';

/** The order in which the sheets stand in the workbook. */
export const SHEET_ORDER: readonly string[] = [
  'About',
  'Intake',
  'Additions',
  'Stock',
  'Mix',
  'Moisture',
  'Temperatures',
  'Turnings and covers',
  'Discharges and transfers',
  'Drum',
  'Piles',
  'Sanitising evidence',
  'Pile events',
  'Removals',
  'Rejects and contamination',
  'Problems and complaints',
  'Chores and checks',
  'Samples and results',
  'Hours',
  'Weather',
  'Notes and duties',
  'Corrections',
  'Held, not counted',
  'Settings',
  'Factors and sources',
  KEPT_SHEET,
];

/** Every line of a span as sheets or as JSON. The book is walked twice, and no sheet is ever whole in memory. */
export async function exportBook(
  book: OpenedBook,
  siteId: number,
  options: ExportOptions,
): Promise<Exported> {
  const folder = mkdtempSync(join(dirname(options.out), '.export-'));
  try {
    const names = new Map(book.people(siteId).map(({ id, name }) => [id, name]));
    const of = book.lastNumber(siteId) * 2;
    let done = 0;
    const onLine = () => {
      done += 1;
      if (done % 10_000 === 0) options.onProgress?.(done, of);
    };
    const facts = spanFacts(book, siteId, options, names, onLine);
    const part = join(folder, 'whole');
    const given = { book, siteId, options, names, facts, onLine, part };
    const exported = options.format === 'json' ? asJson(given) : await asSheets(given, folder);
    renameSync(part, options.out);
    return exported;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

type Given = {
  book: OpenedBook;
  siteId: number;
  options: ExportOptions;
  names: ReadonlyMap<number, string>;
  facts: SpanFacts;
  onLine: () => void;
  part: string;
};

function* linesInSpan({ book, siteId, options, facts, onLine }: Given): Generator<Entry> {
  for (const entry of book.entriesFrom(siteId, '')) {
    onLine();
    if (entry.localDate >= options.from && entry.localDate <= options.to)
      yield withoutPrivate(entry, facts.medical);
  }
}

function keptLine(entry: Entry, { names }: Given): KeptLine {
  return {
    line: entry.number,
    happenedAt: entry.happenedAt,
    localDate: entry.localDate,
    receivedAt: entry.receivedAt,
    by: entry.person === null ? null : names.get(entry.person) || null,
    record: entry.record,
    typed: entry.typed,
    assumed: entry.assumed,
    held: entry.held,
    voidedBy: entry.voidedBy,
    pictures: entry.pictures,
  };
}

const json = (value: unknown) => JSON.stringify(value);
const keptColumns = [
  column<KeptLine>('Line', 'number', ({ line }) => line),
  column<KeptLine>('Happened (UTC)', 'text', ({ happenedAt }) => happenedAt),
  column<KeptLine>('Local date', 'text', ({ localDate }) => localDate),
  column<KeptLine>('Received (UTC)', 'text', ({ receivedAt }) => receivedAt),
  column<KeptLine>('By', 'text', ({ by }) => by),
  column<KeptLine>('Kind', 'text', ({ record }) => record.kind),
  column<KeptLine>('State', 'text', ({ held, voidedBy }) =>
    voidedBy !== null ? 'taken back' : held ? 'held' : 'counted',
  ),
  column<KeptLine>('Record', 'text', ({ record }) => json(record)),
  column<KeptLine>('Typed', 'text', ({ typed }) => typed),
  column<KeptLine>('Assumed', 'text', ({ assumed }) => json(assumed)),
  column<KeptLine>('Held', 'text', ({ held }) => (held ? json(held) : null)),
  column<KeptLine>('Taken back by', 'number', ({ voidedBy }) => voidedBy),
  column<KeptLine>('Pictures', 'number', ({ pictures }) => pictures),
];

function asJson(given: Given): Exported {
  const { book, siteId, options, part } = given;
  const out = spoolInto(part);
  const { site } = book.siteById(siteId);
  const head = {
    format: KEPT_FORMAT,
    version: 1,
    madeAt: options.now,
    from: options.from,
    to: options.to,
    site,
  };
  out.write(`${json(head).slice(0, -1)},"lines":[`);
  let lines = 0;
  for (const entry of linesInSpan(given)) {
    // A line of the book is a line of the file, so that one of any length can be read back piece by piece.
    out.write(`${lines > 0 ? ',' : ''}\n${json(keptLine(entry, given))}`);
    lines += 1;
  }
  out.write('\n]}\n');
  out.end();
  return { lines, sheets: [] };
}

async function asSheets(given: Given, folder: string): Promise<Exported> {
  const { book, siteId, options, names, facts, part } = given;
  const settings = settingsOf(facts.now, options.to);
  const { units } = settings;
  const heads = headsIn(options.language);
  const writing = { units, heads };
  const sink: Sink =
    options.format === 'xlsx' ? workbookSink(folder, writing, settings.name) : csvSink(folder, writing);
  const sheets = LINE_SHEETS.map((sheet) => ({ sheet, to: sink.sheet(sheet.name, sheet.columns) }));
  const kept = sink.sheet(KEPT_SHEET, keptColumns as never[]);
  const see = lineSeer(facts.now, names, settings.timeZone);
  const days = new Map<string, DayMix>();
  const corrected: Corrected[] = [];
  const held: Entry[] = [];
  const materials = new Set<string>();
  let counted = 0;
  let first = '9999';
  for (const entry of linesInSpan(given)) {
    kept.add(keptLine(entry, given));
    if (entry.localDate < first) first = entry.localDate;
    if (entry.voidedBy !== null) {
      const by = book.entry(siteId, entry.voidedBy);
      corrected.push({ old: entry, by: by && withoutPrivate(by, facts.medical) });
      continue;
    }
    if (entry.held) {
      held.push(entry);
      continue;
    }
    const line = see(entry);
    counted += 1;
    addDay(days, line, materials);
    for (const { sheet, to } of sheets) {
      if (sheet.kinds.includes(line.record.kind)) for (const row of sheet.rows(line)) to.add(row);
    }
  }
  const end = { at: `${options.to}T23:59:59.999Z`, localDate: options.to };
  const byDay = [...days.values()].sort((a, b) => (a.date < b.date ? -1 : 1));
  const ends: EndSheet[] = [
    mixSheet(byDay),
    ...pileSheets(facts.batches.map((batch) => judgedPile(facts.atEnd, batch, end))),
    problemSheet(facts.problems),
    correctionSheet(corrected, names),
    heldSheet(held, names),
    factorSheet(facts.now, options.to, materials),
    aboutSheet(heads, [
      ['Site', settings.name],
      // Without a first day: the one that the lines begin with.
      ['From', options.from === ALWAYS && first <= options.to ? first : options.from],
      ['To', options.to],
      ['Time zone', settings.timeZone],
      ['Made at (UTC)', options.now],
      ['Lines that count', counted],
      ['Lines held, not counted', held.length],
      ['Lines corrected or taken back', corrected.length],
      ['Feed, weighed', fromKg(sumKg(byDay.map(({ feedKg }) => feedKg)), units.mass), units.mass],
      [
        'Feed, estimated from volume',
        fromKg(sumKg(byDay.map(({ feedEstimatedKg }) => feedEstimatedKg)), units.mass),
        units.mass,
      ],
      [
        'Log book',
        'time and temperature are as read; whether compost may leave is decided by the site and its regulator',
      ],
    ]),
  ];
  const endSinks = ends.map(({ name, columns, rows }) => {
    const to = sink.sheet(name, columns);
    for (const row of rows) to.add(row);
    return to;
  });
  const all = [...sheets.map(({ to }) => to), ...endSinks, kept];
  await sink.finish(part, SHEET_ORDER);
  return { lines: kept.rows(), sheets: all.map(({ name, rows }) => ({ name, rows: rows() })) };
}

function addDay(days: Map<string, DayMix>, { record, weight, date }: SeenLine, materials: Set<string>): void {
  if (record.kind !== 'weigh-in' || !weight) return;
  materials.add(record.material);
  let day = days.get(date);
  if (!day) {
    day = { date, feedKg: 0, feedEstimatedKg: 0, chipsKg: 0, chipsEstimatedKg: 0, otherKg: 0, waterKg: 0 };
    days.set(date, day);
  }
  const measured = weight.netKg ?? 0;
  const estimated = weight.netKg === null ? (weight.estimatedKg ?? 0) : 0;
  if (isFeed(record.material)) {
    day.feedKg += measured;
    day.feedEstimatedKg += estimated;
  } else if (record.material === 'wood-chips' || record.material === 'leafy-chips') {
    day.chipsKg += measured;
    day.chipsEstimatedKg += estimated;
  } else if (record.material === 'water') day.waterKg += measured + estimated;
  else day.otherKg += measured + estimated;
}
