import { settingAt } from '../picture/setting-at.ts';
import type { Picture } from '../picture/types.ts';
import type { DrumRules } from './drum.ts';

/**
 * What the site has set for its drum on a day: how full is full, and how long the oldest load stays.
 * @source the site's settings.
 * @example drumRulesOf({ picture: { base: {}, settings: { 'drum-days': [{ from: '2026-05-01', at: null, value: 5, entry: 3 }] } } as never, localDate: '2026-05-12' }) // { fullFraction: null, daysInside: 5 }
 */
export function drumRulesOf({
  picture,
  localDate,
}: {
  picture: Pick<Picture, 'base' | 'settings'>;
  localDate: string;
}): DrumRules {
  const full = settingAt(picture, 'drum-full', localDate);
  const stay = settingAt(picture, 'drum-days', localDate);
  return {
    fullFraction: typeof full === 'number' ? full : null,
    daysInside: typeof stay === 'number' ? stay : null,
  };
}
