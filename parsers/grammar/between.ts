// What readers of moves ask of a run: its sizes, and what stands behind a preposition.
import { isPrep, type Slots } from '../reading.ts';
import { sense } from '../tokens.ts';

/** The classes that say how much. */
export const SIZES = ['n', 'container', 'total', 'approx', 'net', 'gross', 'each'];

/** The place behind a preposition: `from C`, `onto B`. */
export function behind(slots: Slots, preps: readonly string[]): string | undefined {
  for (let k = 0; k < slots.all.length; k++) {
    if (!isPrep(slots.all[k]!, ...preps)) continue;
    for (let j = k + 1; j < slots.all.length; j++) {
      const { cls, tok } = slots.all[j]!;
      if (cls === 'place') return sense(tok, 'place') ?? sense(tok, 'place?');
      if (cls === 'n') return tok.n!.unit === null ? sense(tok, 'place?') : undefined;
      if (cls !== 'fill' && cls !== 'pilehead') break;
    }
  }
  return undefined;
}

/** Whether a place is a pile or a bay. */
export const isHeap = (place: string | undefined) => place !== undefined && /^(pile|bay)\b/.test(place);
