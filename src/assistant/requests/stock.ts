import type { Request } from '#records';
import type { Draft } from '../draft.ts';
import { stockLines } from '../matters/stock.ts';

/** `chips?`: what is left, and for how many days. */
export function stock(draft: Draft, request: Request): void {
  const materials = request.material ? [request.material] : Object.keys(draft.picture().stock);
  const wanted = materials.length > 0 ? materials : ['wood-chips'];
  draft.lines.push(...wanted.flatMap((material) => stockLines(draft, material, true)));
}
