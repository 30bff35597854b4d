import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { caseFilesUnder, casesIn, type MessageCase } from './cases.ts';
import { compareReading, type ExpectedReading, type GotReading, type Verdict } from './compare.ts';
import { read } from './reader.ts';

type Scored = Verdict & { readonly case: MessageCase; readonly got: GotReading };

const columns = [
  'exact',
  'missed',
  'askedNeedlessly',
  'silentWrong',
  'recordOutOfTalk',
  'answerToTalk',
] as const;
const headings = [
  'cases',
  'exact',
  'missed',
  'asked needlessly',
  'silent wrong',
  'talk: record',
  'talk: answer',
];

/** A case counts for each kind that it states; one that states nothing counts as talk. */
function kindsOf(expected: ExpectedReading): string[] {
  const kinds = [
    ...(expected.records ?? []).map((record) => String(record.kind)),
    ...(expected.requests ?? []).map((request) => `request ${request.request}`),
    ...(expected.doubts ?? []).map((doubt) => `doubt ${doubt.kind}`),
  ];
  return kinds.length === 0 ? ['talk'] : [...new Set(kinds)];
}

function row(name: string, scored: readonly Scored[]): string {
  const counts = columns.map((column) => scored.filter((one) => one[column]).length);
  const cells = [scored.length, ...counts].map((count, index) =>
    String(count).padStart(headings[index]!.length + 2),
  );
  const percent = ((100 * counts[0]!) / Math.max(1, scored.length)).toFixed(1).padStart(7);
  return `${name.padEnd(26)}${cells.join('')}${percent} %`;
}

function table(title: string, groups: ReadonlyMap<string, readonly Scored[]>): string[] {
  const head = title.padEnd(26) + headings.map((heading) => `  ${heading}`).join('');
  return [
    '',
    head,
    ...[...groups].sort(([a], [b]) => a.localeCompare(b)).map(([name, all]) => row(name, all)),
  ];
}

function groupByNames(scored: readonly Scored[], namesOf: (one: Scored) => string[]): Map<string, Scored[]> {
  const groups = new Map<string, Scored[]>();
  for (const one of scored) {
    for (const name of namesOf(one)) groups.set(name, [...(groups.get(name) ?? []), one]);
  }
  return groups;
}

function miss(one: Scored): string[] {
  const short = (value: unknown) => JSON.stringify(value ?? null);
  const faults = one.faults.map((fault) => {
    const what = fault.field === undefined ? fault.kind : `${fault.kind}.${fault.field}`;
    return `    ${fault.code} ${what}: got ${short(fault.got)}, expected ${short(fault.expected)}`;
  });
  return ['', `${one.case.id} [${one.case.language}, ${one.case.at}] ${short(one.case.text)}`, ...faults];
}

async function main(): Promise<void> {
  const { values, positionals } = parseArgs({
    options: { site: { type: 'string' }, quiet: { type: 'boolean' } },
    allowPositionals: true,
  });
  if (positionals.length === 0) throw new Error('usage: score [--site FILE] [--quiet] FILE-OR-FOLDER…');
  const site =
    values.site === undefined ? undefined : (JSON.parse(readFileSync(values.site, 'utf8')) as object);
  const cases = positionals.flatMap(caseFilesUnder).flatMap((path) => casesIn(path, site));
  const scored = cases.map((one): Scored => {
    const got = read(one.text, one.site, one.at);
    return { ...compareReading(got, one.expect), case: one, got };
  });
  const lines = [
    ...table(
      'by kind',
      groupByNames(scored, (one) => kindsOf(one.case.expect)),
    ),
    ...table(
      'by language',
      groupByNames(scored, (one) => [one.case.language]),
    ),
    ...table('in all', new Map([['', scored]])),
    ...(values.quiet ? [] : scored.filter((one) => !one.exact).flatMap(miss)),
  ];
  process.stdout.write(`${lines.join('\n')}\n`);
}

main().catch((error: unknown) => {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 2;
});
