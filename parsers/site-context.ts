import { Site } from '#records';
import type { ReadContext } from './context.ts';

/** Minutes that a zone is ahead of UTC when its wall clock shows this time; the first of the two where it shows it twice. */
function offsetAt(timeZone: string, atLocal: string): number {
  const wall = Date.parse(`${atLocal.slice(0, 16)}Z`);
  const format = new Intl.DateTimeFormat('en-US', {
    timeZone,
    hourCycle: 'h23',
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
  });
  const shown = (instant: number) => {
    const part = Object.fromEntries(format.formatToParts(instant).map((one) => [one.type, one.value]));
    return Date.UTC(
      Number(part.year),
      Number(part.month) - 1,
      Number(part.day),
      Number(part.hour),
      Number(part.minute),
    );
  };
  const before = (shown(wall - 86_400_000) - (wall - 86_400_000)) / 60_000;
  if (shown(wall - before * 60_000) === wall) return before;
  const after = (shown(wall + 86_400_000) - (wall + 86_400_000)) / 60_000;
  return after;
}

/**
 * What the reader may know from the site's file alone, for a message sent at this local time.
 * @example contextForSite(site, '2026-05-12T10:00').piles // ['pile A', 'pile B']
 */
export function contextForSite(file: Site, atLocal: string): ReadContext {
  const site = wholeSite(file);
  return {
    nowLocal: atLocal.slice(0, 16),
    offsetMin: offsetAt(site.timeZone, atLocal),
    languages: site.languages,
    units: site.units,
    dayOrder: site.dayOrder,
    containers: site.containers,
    drums: site.drums,
    piles: site.piles.map((pile) => (/^(pile|bay) /.test(pile) ? pile : `pile ${pile}`)),
    ceased: {},
    sources: site.sources,
    materials: site.materials,
    duties: [],
  };
}

const whole = new WeakMap<object, Site>();

/** The site with its defaults filled in, worked out once for each file. */
function wholeSite(file: Site): Site {
  let site = whole.get(file);
  if (!site) {
    site = Site.parse(file);
    whole.set(file, site);
  }
  return site;
}
