import { forecastNearAmbient } from '#core';
import { simulateCooling } from './simulate-cooling.ts';

export type Hindcast = {
  asked: number;
  given: number;
  held: number;
  early: number;
  late: number;
  openEnded: number;
  /** Days from the lower to the upper end where both are given, smallest first. */
  widths: number[];
  refused: Record<string, number>;
  byReadings: Record<string, { given: number; held: number }>;
};

/** Forecasts `cases` simulated piles and counts how often the 80 % interval holds what came. */
export function hindcast(cases: number, firstSeed: number): Hindcast {
  const out: Hindcast = {
    asked: cases,
    given: 0,
    held: 0,
    early: 0,
    late: 0,
    openEnded: 0,
    widths: [],
    refused: {},
    byReadings: {},
  };
  for (let i = 0; i < cases; i++) {
    const { batch, ambient, now, truthDays } = simulateCooling(firstSeed + i);
    const forecast = forecastNearAmbient(batch, ambient, now);
    if (!forecast.known) {
      out.refused[forecast.reason.code] = (out.refused[forecast.reason.code] ?? 0) + 1;
      continue;
    }
    const { fromDays, toDays } = forecast;
    const early = truthDays < fromDays;
    const late = toDays !== null && truthDays > toDays;
    out.given++;
    if (early) out.early++;
    else if (late) out.late++;
    else out.held++;
    if (toDays === null) out.openEnded++;
    else out.widths.push(toDays - fromDays);
    const key = forecast.readings <= 4 ? '3-4' : forecast.readings <= 8 ? '5-8' : '9+';
    const row = out.byReadings[key] ?? { given: 0, held: 0 };
    out.byReadings[key] = row;
    row.given++;
    if (!early && !late) row.held++;
  }
  out.widths.sort((a, b) => a - b);
  return out;
}
