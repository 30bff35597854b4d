import { drumName } from '../picture/places.ts';
import type { Picture } from '../picture/types.ts';

/** Why a drum stands still, since when, and the line of the book that says so. */
export type DrumStands = { because: 'off' | 'fault' | 'power'; at: string; entry: number };

/**
 * Whether a drum stands still as far as the book knows: a fault at it or a power cut that nobody has closed, or
 * set off and nobody has said since that it runs. The oldest of these counts; null where it runs.
 * @source the site's own log.
 * @example drumStands({ drums: { drum: { name: 'drum', mode: 'off', settingSince: { entry: 4, at: '2026-05-12T08:00:00.000Z', localDate: '2026-05-12' } } }, problems: [], ended: [] } as never, 'drum') // { because: 'off', at: '2026-05-12T08:00:00.000Z', entry: 4 }
 */
export function drumStands(
  picture: Pick<Picture, 'drums' | 'problems' | 'ended'>,
  name: string,
): DrumStands | null {
  const drum = picture.drums[name];
  if (!drum) return null;
  const only = Object.keys(picture.drums).length === 1;
  const here = (place: string | null) =>
    place === name || (place !== null && /^drum\b/.test(place) && drumName(picture, place) === name);
  const stops = picture.problems
    .filter(
      ({ topic, place }) =>
        (topic === 'fault' && here(place)) ||
        (topic === 'power' && (here(place) || (place === null && only))),
    )
    .map(({ topic, at, entry }): DrumStands => ({ because: topic as 'fault' | 'power', at, entry }));
  const off = drum.mode === 'off' ? drum.settingSince : null;
  if (off) stops.push({ because: 'off', at: off.at, entry: off.entry });
  // A fault that was ended says that it runs: that ends a power cut and an "off" from before as well.
  const runs = picture.ended
    .filter(({ topic, place }) => topic === 'fault' && here(place))
    .map(({ ended }) => ended.at)
    .sort()
    .at(-1);
  const standing = stops.filter(({ because, at }) => because === 'fault' || at > (runs ?? ''));
  return standing.sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : a.entry - b.entry))[0] ?? null;
}
