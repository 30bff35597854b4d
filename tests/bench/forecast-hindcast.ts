// Prints how often the stated 80 % interval of the near-ambient forecast holds what came, on simulated piles.
import { hindcast } from './hindcast.ts';

const cases = Number(process.argv[2] ?? 4000);
const result = hindcast(cases, 20_000);
const share = (part: number, of: number) => `${((100 * part) / of).toFixed(1)} %`;
const lines = [
  `asked ${result.asked}, given ${result.given}, refused ${JSON.stringify(result.refused)}`,
  `80 % interval holds the truth: ${share(result.held, result.given)} (aim 75 to 85 %)`,
  `truth earlier than the interval: ${share(result.early, result.given)}, later: ${share(result.late, result.given)}`,
  `no upper end given: ${share(result.openEnded, result.given)}`,
  `median width where both ends are given: ${(result.widths[result.widths.length >> 1] ?? Number.NaN).toFixed(1)} days`,
  ...Object.entries(result.byReadings).map(
    ([readings, row]) => `${readings} readings: ${share(row.held, row.given)} of ${row.given}`,
  ),
];
process.stdout.write(`${lines.join('\n')}\n`);
const held = result.held / result.given;
process.exitCode = held >= 0.75 && held <= 0.85 ? 0 : 1;
