import type { Entry } from '#records';
import { cautionLines } from '../cautions.ts';
import type { Draft } from '../draft.ts';
import type { Line } from '../say.ts';
import { capMatters } from './caps.ts';
import { checkMatters } from './checks.ts';
import { drumMatters } from './drum.ts';
import { gateMatters } from './gate.ts';
import { heatMatters } from './heat.ts';
import { mixMatters } from './mix.ts';
import { problemMatters } from './problems.ts';
import { resolvedMatters } from './resolved.ts';
import { stockMatters } from './stock.ts';

export { complaintAnswer } from './complaints.ts';
export { heldPile } from './gate.ts';

/** A reply has at most this many lines beside those of its entries. */
const MOST = 3;

/**
 * What matters now, after what was just logged. Fire opens the whole reply; then what must not wait, then what is
 * wrong and what to do first, then the mix, the drum, the stock, how the pile does, and what to
 * take care of.
 */
export function matters(draft: Draft, written: readonly Entry[]): Line[] {
  const heat = heatMatters(draft, written);
  const gate = gateMatters(draft, written);
  const problems = problemMatters(draft, written);
  if (heat.fire.length > 0) draft.lines.unshift(...heat.fire);
  const rest = [
    ...capMatters(draft, written),
    ...gate.lines,
    ...checkMatters(draft, written),
    ...resolvedMatters(draft, written),
    ...mixMatters(draft, written),
    ...drumMatters(draft, written),
    ...stockMatters(draft, written),
    ...heat.lines,
  ];
  // A question that is asked is never cut off from its buttons.
  const wrong = problems.length > 0 ? problems : heat.wrong;
  return [
    ...heat.urgent,
    ...gate.urgent,
    ...wrong,
    ...rest.slice(0, MOST),
    ...heat.told,
    ...cautionLines(draft, written),
  ];
}
