import type { Entry } from '#records';
import { cautionLines } from '../cautions.ts';
import type { Draft } from '../draft.ts';
import type { Line } from '../say.ts';
import { heatMatters } from './heat.ts';
import { mixMatters } from './mix.ts';

/** A reply has at most this many lines beside those of its entries. */
const MOST = 2;

/** What matters now, after what was just logged: fire first, then the mix, how the pile does, and what to take care of. */
export function matters(draft: Draft, written: readonly Entry[]): Line[] {
  const heat = heatMatters(draft, written);
  const lines = [...mixMatters(draft, written), ...heat.lines].slice(0, MOST);
  return [...heat.urgent, ...lines, ...cautionLines(draft, written)];
}
