import type { Spread } from './mix/spread.ts';
import { streamsOf, totalsBetween } from './period.ts';
import type { Picture } from './picture/types.ts';

export type SourceFeedback = {
  source: string;
  loads: number;
  dirty: number;
  rejected: number;
  residueKg: number;
  kg: number;
  /** What was found most, as it was said. */
  found: { what: string; times: number }[];
  /** Share of dirty loads, 19 times in 20 within it: few loads say little. */
  dirtyPct: Spread | null;
};

/**
 * How clean each source has been between two local dates, the dirtiest first: so that a kitchen can be told.
 * @source Wilson, Journal of the American Statistical Association 22, 1927 (interval of a share; from memory)
 * @example feedback(picture, '2026-06-01', '2026-06-30')[0] // { source: 'east kitchen', loads: 22, dirty: 3, … }
 */
export function feedback(picture: Picture, from: string, to: string): SourceFeedback[] {
  const totals = totalsBetween(picture, from, to);
  const names = new Set(
    [totals.loadsBySource, totals.rejected, totals.residueKg].flatMap((counts) => Object.keys(counts)),
  );
  const count = (counts: Record<string, number>, source: string): number =>
    Object.hasOwn(counts, source) ? counts[source]! : 0;
  const masses = streamsOf(totals, picture.base).flatMap(({ sources }) => sources);
  return [...names]
    .filter((source) => source !== '')
    .map((source): SourceFeedback => {
      const loads = count(totals.loadsBySource, source);
      const rejected = count(totals.rejected, source);
      const dirty = count(totals.contaminated, source);
      const found = Object.hasOwn(totals.dirt, source) ? Object.entries(totals.dirt[source]!) : [];
      return {
        source,
        loads,
        dirty,
        rejected,
        residueKg: count(totals.residueKg, source),
        kg: masses
          .filter((each) => each.source === source)
          .reduce((sum, { kg, estimatedKg }) => sum + kg + estimatedKg, 0),
        found: found
          .map(([what, times]) => ({ what, times }))
          .sort((a, b) => b.times - a.times || (a.what < b.what ? -1 : 1)),
        dirtyPct: loads + rejected > 0 ? shareOf(dirty + rejected, loads + rejected) : null,
      };
    })
    .sort(
      (a, b) =>
        (b.dirtyPct?.typical ?? 0) - (a.dirtyPct?.typical ?? 0) ||
        b.residueKg - a.residueKg ||
        (a.source < b.source ? -1 : 1),
    );
}

/** A share in percent with its Wilson interval at 95 %. */
function shareOf(hits: number, all: number): Spread {
  const z = 1.96;
  const share = hits / all;
  const middle = (share + z ** 2 / (2 * all)) / (1 + z ** 2 / all);
  const half = (z / (1 + z ** 2 / all)) * Math.sqrt((share * (1 - share)) / all + z ** 2 / (4 * all ** 2));
  return {
    typical: share * 100,
    low: Math.max(0, middle - half) * 100,
    high: Math.min(1, middle + half) * 100,
  };
}
