import { daysBetween } from './calendar.ts';
import { lossByAsh } from './mix/ash.ts';
import { INGREDIENTS } from './mix/ingredients.ts';
import { ownFiguresAt } from './mix/own-figures.ts';
import type { Spread } from './mix/spread.ts';
import { streamsOf, totalsBetween } from './period.ts';
import type { Batch, Picture } from './picture/types.ts';

export type AshBalance = {
  place: string;
  /** Ash at the start, % of the dry mass; `from` says where it comes from. */
  firstPct: Spread;
  lastPct: number;
  /** The line of the book that holds the last result. */
  entry: number;
  localDate: string;
  /** `result`: an earlier one of the same pile; `intake`: what the site took in while it was fed. */
  from: 'result' | 'intake';
  dryLossPct: Spread;
  organicLossPct: Spread;
  /** Less ash at the end than at the start: soil in the first sample, or another pile's result. */
  suspect: boolean;
};

/** A result closer than this to the first tells nothing of what was lost between. @source common practice, no source */
const APART_DAYS = 14;

/**
 * How much of a pile was lost, by its ash, where a laboratory gave it (or the organic matter, which is the rest): ash
 * stays. The start is an earlier result of the pile, else the ash of what came in while it was fed. Null without a
 * result, or where nothing is known of the start. % of the dry mass.
 * @source see lossByAsh; ash of materials: the site's own figures, else INGREDIENTS
 * @example ashBalance(picture, batch, '2026-09-01') // { place: 'pile C', lastPct: 30, dryLossPct: { typical: 62, … }, … }
 */
export function ashBalance(picture: Picture, batch: Batch, localDate: string): AshBalance | null {
  const results = batch.labs.flatMap(({ analyte, value, unit, qualifier, ...moment }) => {
    const known = value !== null && !qualifier && (unit === null || unit === '%');
    const pct = known ? ashOf(analyte, value) : null;
    return pct === null || moment.localDate > localDate ? [] : [{ ...moment, pct }];
  });
  const last = results.at(-1);
  if (!last) return null;
  const earlier = results.find((each) => daysBetween(each.localDate, last.localDate) >= APART_DAYS);
  const firstPct = earlier
    ? { typical: earlier.pct, low: earlier.pct, high: earlier.pct }
    : ashOfIntake(picture, batch, last.localDate);
  if (!firstPct || firstPct.low <= 0 || firstPct.high >= 100) return null;
  const [typical, least, most] = [firstPct.typical, firstPct.high, firstPct.low].map((first) =>
    lossByAsh(first, last.pct),
  );
  return {
    place: batch.name,
    firstPct,
    lastPct: last.pct,
    entry: last.entry,
    localDate: last.localDate,
    from: earlier ? 'result' : 'intake',
    dryLossPct: { typical: typical!.dryLossPct, low: least!.dryLossPct, high: most!.dryLossPct },
    organicLossPct: {
      typical: typical!.organicLossPct,
      low: least!.organicLossPct,
      high: most!.organicLossPct,
    },
    suspect: typical!.suspect,
  };
}

/** Ash from a result of ash or of organic matter, which make up the dry mass together. */
function ashOf(analyte: string, value: number): number | null {
  const pct = analyte === 'ash' ? value : analyte === 'organic-matter' ? 100 - value : null;
  return pct !== null && pct > 0 && pct < 100 ? pct : null;
}

/** Ash of the dry mass of all that came in while a pile was fed: by mass, never a mean of shares. */
function ashOfIntake(picture: Picture, batch: Batch, until: string): Spread | null {
  const fed = Object.values(batch.sources);
  const from = [batch.startedAt?.localDate, ...fed.map((each) => each.from)]
    .filter((date) => date !== undefined)
    .sort()[0];
  const to = [batch.closedAt?.localDate, until].filter((date) => date !== undefined).sort()[0]!;
  if (from === undefined || from > to) return null;
  const sums = { dry: 0, typical: 0, low: 0, high: 0 };
  for (const { material, kg, estimatedKg } of streamsOf(totalsBetween(picture, from, to), picture.base)) {
    const known = INGREDIENTS[material];
    const own = ownFiguresAt(picture.settings, material, to);
    const ash = own?.ashPct ?? known?.ashPct;
    const moisture = own?.moisturePct ?? known?.moisturePct;
    if (!ash || !moisture) continue;
    const dry = (kg + estimatedKg) * (1 - moisture.typical / 100);
    sums.dry += dry;
    sums.typical += dry * ash.typical;
    sums.low += dry * ash.low;
    sums.high += dry * ash.high;
  }
  if (sums.dry <= 0) return null;
  return { typical: sums.typical / sums.dry, low: sums.low / sums.dry, high: sums.high / sums.dry };
}
