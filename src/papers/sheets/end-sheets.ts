import {
  type Batch,
  canLeave,
  type EvidenceRow,
  FOOD_KG_PER_LITRE,
  INGREDIENTS,
  labStandardOf,
  MASS_LOSS,
  type OpenProblem,
  type Picture,
  type ReleaseGap,
  RULE_SET_DATA,
  readiness,
  ruleSetOf,
  type Sanitising,
  sanitising,
  sanitisingOptionsOf,
  traceOf,
  weekdayOf,
} from '#core';
import type { Entry, RuleSetName } from '#records';
import { type Column, column } from '../cells.ts';
import type { Heads } from './heads.ts';
import { inFewWords, nameOf } from './line-seen.ts';

/** A sheet that is made when the walk is over. */
export type EndSheet = { name: string; columns: Column<never>[]; rows: readonly unknown[] };
const endSheet = <Row>(name: string, rows: readonly Row[], columns: Column<Row>[]): EndSheet => ({
  name,
  rows,
  columns: columns as Column<never>[],
});

/** A pile with what its readings prove at the end of the span (or when it was emptied). */
export type JudgedPile = {
  batch: Batch;
  rule: RuleSetName | null;
  proof: Sanitising | null;
  gaps: readonly ReleaseGap[];
};

export function judgedPile(
  picture: Picture,
  batch: Batch,
  end: { at: string; localDate: string },
): JudgedPile {
  const now = batch.goneAt && batch.goneAt.at < end.at ? batch.goneAt : end;
  const rule = ruleSetOf(picture, now.localDate);
  const proof = rule ? sanitising(batch, rule, sanitisingOptionsOf(picture, now.localDate), now) : null;
  const labStandard = labStandardOf(picture, now.localDate);
  const state = readiness({ batch, sanitising: proof, labStandard, ambient: picture.ambient }, now);
  const release = canLeave({
    batch,
    readiness: state,
    sanitising: proof,
    problems: picture.problems,
    labStandard,
  });
  return { batch, rule, proof, gaps: release.missing };
}

const gapInWords = ({ code, ...rest }: { code: string } & Record<string, unknown>): string =>
  [
    code,
    ...Object.values(rest).map((value) => (Array.isArray(value) ? value.join(' ') : String(value))),
  ].join(' ');

export function pileSheets(piles: readonly JudgedPile[]): EndSheet[] {
  const evidence = piles.flatMap(({ batch, rule, proof }) =>
    (proof?.rows ?? []).map((row) => ({ name: batch.name, rule, row })),
  );
  return [
    endSheet('Piles', piles, [
      column('Pile', 'text', ({ batch }) => batch.name),
      column('Batch', 'text', ({ batch }) => batch.id),
      column('State', 'text', ({ batch }) => batch.state),
      column('Started', 'date', ({ batch }) => batch.startedAt?.localDate),
      column('Closed', 'date', ({ batch }) => batch.closedAt?.localDate),
      column('Emptied', 'date', ({ batch }) => batch.goneAt?.localDate),
      column('Readings', 'number', ({ batch }) => batch.readings.length),
      column('Turnings', 'number', ({ batch }) => batch.turns.length),
      column('Rule set', 'text', ({ rule }) => rule),
      column('Level to hold', 'temperature', ({ rule }) => (rule ? RULE_SET_DATA[rule].levelCelsius : null)),
      column('Verdict on these readings', 'word', ({ proof }) => proof?.verdict ?? 'no rule set chosen'),
      column('Counted', 'number', ({ proof }) => proof?.counted),
      column('Needed', 'number', ({ proof }) => proof?.needed),
      column('Counted in', 'text', ({ proof }) => proof?.unit),
      column('Counts from', 'date', ({ proof }) => proof?.since?.localDate),
      column('Met on', 'date', ({ proof }) => proof?.metOn),
      column('Turnings counted', 'number', ({ proof }) => proof?.turns.counted),
      column('Turnings needed', 'number', ({ proof }) => proof?.turns.needed),
      column('Remarks', 'text', ({ proof }) => proof?.reasons.map(({ code }) => code).join(', ')),
      column('On hold', 'text', ({ batch }) => batch.hold?.why),
      column(
        'Missing for release on this book',
        'word',
        ({ gaps }) => gaps.map(gapInWords).join('; ') || 'nothing; your regulator decides',
      ),
      column('Sources that went in', 'text', ({ batch }) =>
        traceOf(batch)
          .intake.map(({ source, from, to }) => `${source || 'not said'} ${from} to ${to}`)
          .join('; '),
      ),
      column('Joined with or split from', 'text', ({ batch }) => batch.kin.join(', ')),
      column('Received by', 'text', ({ batch }) =>
        traceOf(batch)
          .received.map(({ to, localDate }) => `${to ?? 'not said'} ${localDate}`)
          .join('; '),
      ),
    ]),
    endSheet('Sanitising evidence', evidence, [
      column('Pile', 'text', ({ name }) => name),
      column('Rule set', 'text', ({ rule }) => rule),
      column('Date', 'date', ({ row }) => row.localDate),
      column('Lowest reading', 'temperature', ({ row }) => row.lowestC),
      column('Counts', 'word', ({ row }) => (row.counted ? 'yes' : 'no')),
      column('Why not', 'text', ({ row }: { row: EvidenceRow }) => row.why),
      column('Lines', 'text', ({ row }) => row.entries.map((entry) => `#${entry}`).join(', ')),
    ]),
  ];
}

export type ProblemSeen = OpenProblem & {
  by: string;
  ended: { localDate: string; entry: number; note: string | null; by: string } | null;
};

export const problemSheet = (problems: readonly ProblemSeen[]): EndSheet =>
  endSheet('Problems and complaints', problems, [
    column('Date', 'date', ({ localDate }) => localDate),
    column('Topic', 'text', ({ topic }) => topic),
    column('Place', 'text', ({ place }) => place),
    column('Strength', 'text', ({ strength }) => strength),
    column('What was said', 'word', ({ topic, note }) =>
      topic === 'injury' || topic === 'sharps' ? 'kept by the site, not in this file' : note,
    ),
    column('Reported by', 'text', ({ by }) => by),
    column('Line', 'number', ({ entry }) => entry),
    column('Ended', 'date', ({ ended }) => ended?.localDate),
    column('What was done', 'word', ({ topic, ended }) =>
      topic === 'injury' ? null : ended ? (ended.note ?? 'said to be over') : 'still open',
    ),
    column('Ended by', 'text', ({ ended }) => ended?.by),
    column('Ending line', 'number', ({ ended }) => ended?.entry),
  ]);

export type Corrected = { old: Entry; by: Entry | null };

export const correctionSheet = (
  corrected: readonly Corrected[],
  names: ReadonlyMap<number, string>,
): EndSheet =>
  endSheet('Corrections', corrected, [
    column('Line', 'number', ({ old }) => old.number),
    column('Date', 'date', ({ old }) => old.localDate),
    column('What it said', 'text', ({ old }) => inFewWords(old.record)),
    column('Logged by', 'text', ({ old }) => nameOf(names, old.person)),
    column('Taken back by line', 'number', ({ old }) => old.voidedBy),
    column('Corrected on (UTC)', 'text', ({ by }) => by?.receivedAt),
    column('Corrected by', 'text', ({ by }) => nameOf(names, by?.person ?? null)),
    column('Why', 'text', ({ old, by }) =>
      by?.record.kind === 'void' ? String(by.record.why) : old.held ? 'answered' : 'amend',
    ),
    column('What it says now', 'text', ({ by }) =>
      by && by.record.kind !== 'void' ? inFewWords(by.record) : null,
    ),
  ]);

export const heldSheet = (held: readonly Entry[], names: ReadonlyMap<number, string>): EndSheet =>
  endSheet('Held, not counted', held, [
    column('Line', 'number', ({ number }) => number),
    column('Date', 'date', ({ localDate }) => localDate),
    column('What it may say', 'text', ({ record }) => inFewWords(record)),
    column('As typed', 'text', ({ typed }) => typed),
    column('Why it waits', 'text', ({ held: why }) => why?.why),
    column('Choices', 'text', ({ held: why }) => why?.choices.map(({ say }) => say).join(' / ')),
    column('Logged by', 'text', ({ person }) => nameOf(names, person)),
  ]);

/** Sums of one day, as the mix sheet adds them up along the walk. */
export type DayMix = {
  date: string;
  feedKg: number;
  feedEstimatedKg: number;
  chipsKg: number;
  chipsEstimatedKg: number;
  otherKg: number;
  waterKg: number;
};

export const mixSheet = (days: readonly DayMix[]): EndSheet =>
  endSheet('Mix', days, [
    column('Date', 'date', ({ date }) => date),
    column('Weekday', 'word', ({ date }) => weekdayOf(date)),
    column('Feed, weighed', 'mass', ({ feedKg }) => feedKg),
    column('Feed, estimated', 'mass', ({ feedEstimatedKg }) => feedEstimatedKg),
    column('Chips, weighed', 'mass', ({ chipsKg }) => chipsKg),
    column('Chips, estimated', 'mass', ({ chipsEstimatedKg }) => chipsEstimatedKg),
    column('Other dry matter', 'mass', ({ otherKg }) => otherKg),
    column('Water', 'mass', ({ waterKg }) => waterKg),
    column('Chips to one of feed, by mass', 'number', (day) => {
      const feed = day.feedKg + day.feedEstimatedKg;
      return feed > 0 ? Math.round(((day.chipsKg + day.chipsEstimatedKg) / feed) * 1000) / 1000 : null;
    }),
  ]);

type FactorRow = {
  what: string;
  value: number | null;
  low?: number;
  high?: number;
  unit: string;
  source: string;
};

/** What the sums rest on: learned and published densities, the rule set and its text. */
export function factorSheet(picture: Picture, localDate: string, materials: ReadonlySet<string>): EndSheet {
  const rule = ruleSetOf(picture, localDate);
  const rows: FactorRow[] = [
    ...Object.entries(picture.factors).map(([key, { n, meanKg }]) => ({
      what: `one full ${key.replace('|', ' of ')}`,
      value: meanKg,
      unit: 'kg',
      source: `mean of ${n} weighed on this site`,
    })),
    ...[...materials].sort().flatMap((material) => {
      const known = Object.hasOwn(INGREDIENTS, material) ? INGREDIENTS[material]! : null;
      if (!known) return [];
      const { bulkKgPerM3: bulk, moisturePct: wet, source } = known;
      return [
        {
          what: `${material}: bulk density`,
          value: bulk.typical,
          low: bulk.low,
          high: bulk.high,
          unit: 'kg/m³',
          source,
        },
        {
          what: `${material}: moisture`,
          value: wet.typical,
          low: wet.low,
          high: wet.high,
          unit: '% of mass',
          source,
        },
      ];
    }),
    ...Object.entries(FOOD_KG_PER_LITRE).map(([name, value]) => ({
      what: `food scraps by volume: ${name}`,
      value,
      unit: 'kg/L',
      source: 'US EPA volume-to-weight factors, 2016; Goldstein, BioCycle, July 2012',
    })),
    {
      what: 'mass lost as gas and steam',
      value: null,
      ...MASS_LOSS,
      unit: 'share',
      source: 'extension statement (from memory); Karnchanawong & Suriyanon 2011',
    },
    ...(rule
      ? RULE_SET_DATA[rule].citations.map(({ title, part, year }) => ({
          what: `rule set ${rule}: level to hold`,
          value: RULE_SET_DATA[rule].levelCelsius,
          unit: '°C',
          source: [title, part, year].filter((piece) => piece !== null).join(', '),
        }))
      : []),
  ];
  return endSheet('Factors and sources', rows, [
    column('What', 'text', ({ what }) => what),
    column('Value', 'number', ({ value }) => value),
    column('Low', 'number', ({ low }) => low),
    column('High', 'number', ({ high }) => high),
    column('Unit', 'text', ({ unit }) => unit),
    column('Source', 'text', ({ source }) => source),
  ]);
}

export const aboutSheet = (
  heads: Heads,
  facts: readonly [what: string, value: string | number, unit?: string][],
): EndSheet =>
  endSheet('About', facts, [
    column('What', 'text', ([what, , unit]) => `${heads.head(what)}${unit ? ` (${unit})` : ''}`),
    column('Value', 'word', ([, value]) => value),
  ]);
