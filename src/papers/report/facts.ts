import { settingsOf } from '#assistant';
import { isFeed, type Picture } from '#core';
import type { OpenedBook } from '#logbook';
import { type JudgedPile, judgedPile, type ProblemSeen } from '../sheets/end-sheets.ts';
import { lineSeer } from '../sheets/line-seen.ts';
import { type Span, spanFacts } from '../span-facts.ts';

type Sums = { loads: number; kg: number; estimatedKg: number };
export type ReportFacts = Span & {
  settings: ReturnType<typeof settingsOf>;
  feed: Sums & { pending: number };
  addedKg: number;
  addedEstimatedKg: number;
  bySource: (Sums & { material: string; source: string })[];
  byMonth: (Sums & { month: string })[];
  compostKg: number;
  compostLitres: number;
  refused: number;
  turnings: number;
  hours: number;
  removals: {
    date: string;
    material: string;
    pile: string | null;
    to: string | null;
    kg: number | null;
    litres: number | null;
  }[];
  piles: JudgedPile[];
  problems: ProblemSeen[];
  /** Readings of each place in the span: how many, the lowest and the highest point. */
  heat: { place: string; readings: number; lowestC: number; highestC: number }[];
  chores: { chore: string; times: number; last: string }[];
  /** Checks that gave a number, one by one. */
  checks: { date: string; chore: string; reads: number; against: number | null; unit: string | null }[];
  results: { date: string; place: string | null; analyte: string; value: string; unit: string }[];
  samples: number;
  photos: number;
  /** As it stood at the end of the span: what the charts are drawn from. */
  atEnd: Picture;
  factors: { material: string; factor: number; unit: string }[];
  counted: number;
  corrected: number;
  held: number;
};

const more = (sums: Sums, kg: number, estimatedKg: number): void => {
  sums.loads += 1;
  sums.kg += kg;
  sums.estimatedKg += estimatedKg;
};

/** Everything that the report shows, from two walks along the book. */
export function reportFacts(book: OpenedBook, siteId: number, span: Span): ReportFacts {
  const names = new Map(book.people(siteId).map(({ id, name }) => [id, name]));
  const facts = spanFacts(book, siteId, span, names, () => {});
  const settings = settingsOf(facts.now, span.to);
  const see = lineSeer(facts.now, names, settings.timeZone);
  const report: ReportFacts = {
    ...span,
    settings,
    feed: { loads: 0, kg: 0, estimatedKg: 0, pending: 0 },
    addedKg: 0,
    addedEstimatedKg: 0,
    bySource: [],
    byMonth: [],
    compostKg: 0,
    compostLitres: 0,
    refused: 0,
    turnings: 0,
    hours: 0,
    removals: [],
    piles: facts.batches.map((batch) =>
      judgedPile(facts.atEnd, batch, { at: `${span.to}T23:59:59.999Z`, localDate: span.to }),
    ),
    problems: facts.problems,
    heat: [],
    chores: [],
    checks: [],
    results: [],
    samples: 0,
    photos: 0,
    atEnd: facts.atEnd,
    factors: [],
    counted: 0,
    corrected: 0,
    held: 0,
  };
  const sources = new Map<string, ReportFacts['bySource'][number]>();
  const months = new Map<string, ReportFacts['byMonth'][number]>();
  const factors = new Map<string, ReportFacts['factors'][number]>();
  const heat = new Map<string, ReportFacts['heat'][number]>();
  const chores = new Map<string, ReportFacts['chores'][number]>();
  for (const entry of book.entriesFrom(siteId, '')) {
    if (entry.localDate < span.from || entry.localDate > span.to) continue;
    if (entry.voidedBy !== null) {
      report.corrected += 1;
      continue;
    }
    if (entry.held) {
      report.held += 1;
      continue;
    }
    const line = see(entry);
    report.counted += 1;
    report.photos += entry.pictures;
    const { record, weight } = line;
    if (record.kind === 'weigh-in' && weight) {
      const kg = weight.netKg ?? 0;
      const estimatedKg = weight.netKg === null ? (weight.estimatedKg ?? 0) : 0;
      if (estimatedKg > 0 && weight.estimate) {
        const { factor, factorUnit: unit } = weight.estimate;
        factors.set(`${record.material}|${unit}|${factor}`, { material: record.material, factor, unit });
      }
      if (!isFeed(record.material)) {
        report.addedKg += kg;
        report.addedEstimatedKg += estimatedKg;
      } else {
        more(report.feed, kg, estimatedKg);
        if (weight.pending) report.feed.pending += 1;
        const month = entry.localDate.slice(0, 7);
        if (!months.has(month)) months.set(month, { month, loads: 0, kg: 0, estimatedKg: 0 });
        more(months.get(month)!, kg, estimatedKg);
      }
      const key = `${record.material}|${record.source ?? ''}`;
      if (!sources.has(key))
        sources.set(key, {
          material: record.material,
          source: record.source ?? '',
          loads: 0,
          kg: 0,
          estimatedKg: 0,
        });
      more(sources.get(key)!, kg, estimatedKg);
    } else if (record.kind === 'removal') {
      const counted = record.kg == null && line.containerLitres !== null && record.count != null;
      const litres = record.litres ?? (counted ? record.count! * line.containerLitres! : null);
      if (record.material === 'finished-compost') {
        report.compostKg += record.kg ?? 0;
        report.compostLitres += litres ?? 0;
      }
      report.removals.push({
        date: entry.localDate,
        material: record.material,
        pile: record.pile ?? null,
        to: record.to ?? null,
        kg: record.kg ?? null,
        litres,
      });
    } else if (record.kind === 'rejected-load') report.refused += record.count ?? 1;
    else if (record.kind === 'turning') report.turnings += 1;
    else if (record.kind === 'hours') report.hours += record.hours * (record.people ?? 1);
    else if (record.kind === 'sample') report.samples += record.count ?? 1;
    else if (record.kind === 'temperature') {
      const place = record.place ?? '';
      const seen = heat.get(place) ?? { place, readings: 0, lowestC: Infinity, highestC: -Infinity };
      seen.readings += 1;
      seen.lowestC = Math.min(seen.lowestC, ...record.celsius);
      seen.highestC = Math.max(seen.highestC, ...record.celsius);
      heat.set(place, seen);
    } else if (record.kind === 'chore') {
      const { chore, reads, against, unit } = record;
      chores.set(chore, { chore, times: (chores.get(chore)?.times ?? 0) + 1, last: entry.localDate });
      if (reads != null)
        report.checks.push({
          date: entry.localDate,
          chore,
          reads,
          against: against ?? null,
          unit: unit ?? null,
        });
    } else if (record.kind === 'lab-result') {
      const { place, analyte, value, unit, qualifier } = record;
      report.results.push({
        date: entry.localDate,
        place: place ?? null,
        analyte,
        value: qualifier === 'not-detected' ? qualifier : `${qualifier ?? ''}${value ?? ''}`,
        unit: unit ?? '',
      });
    }
  }
  report.bySource = [...sources.values()].sort((a, b) => b.kg + b.estimatedKg - a.kg - a.estimatedKg);
  report.byMonth = [...months.values()].sort((a, b) => (a.month < b.month ? -1 : 1));
  report.heat = [...heat.values()].sort((a, b) => a.place.localeCompare(b.place));
  report.chores = [...chores.values()].sort((a, b) => b.times - a.times);
  report.factors = [...factors.values()];
  return report;
}
