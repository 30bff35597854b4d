import { readCardinal, times, wordAt } from './cardinals.ts';
import { F, HUNDRED, UNIT } from './lexicon.ts';
import { NUMBER } from './scan.ts';
import { LINE, type Token, WORD } from './tokens.ts';

/**
 * Reads the decimals behind the spelled mark at `at` (`point five`, `virgule zéro deux`, `coma veinticinco`,
 * `3 point 5`) onto `whole`; null where the word is no decimal mark. A scale word may follow (`million`).
 */
export function readDecimals(
  tokens: Token[],
  at: number,
  whole: number,
  general: boolean,
): { value: number; end: number } | null {
  const mark = wordAt(tokens, at, true)!;
  const first = tokens[at + 1];
  if (!first || first.gap === LINE) return null;
  let digits = '';
  let end = at + 1;
  if (first.kind === NUMBER) {
    if (!first.number?.plain || mark.flags & F.pointBetweenWords || first.joined) return null;
    digits = first.key;
    end++;
  } else {
    for (;;) {
      const word = wordAt(tokens, end);
      const token = tokens[end];
      if (
        token?.kind === WORD &&
        token.gap !== LINE &&
        (token.key === 'oh' || token.key === 'o') &&
        mark.language === 'en'
      ) {
        digits += '0';
        end++;
        continue;
      }
      if (!word || word.slot === 0 || word.slot >= HUNDRED || word.language !== mark.language) break;
      const read = readCardinal(tokens, end, null, false);
      if (!read) break;
      const single = read.end === end + 1 && word.slot === UNIT;
      digits += String(read.value);
      end = read.end;
      if (!single) break;
    }
  }
  if (digits === '' || !/^\d+$/.test(digits)) return null;
  if (mark.flags & F.pointBetweenWords && !(general && digits.length > 1) && !endsThere(tokens, end))
    return null;
  const value = Number(`${whole}.${digits}`);
  if (!Number.isFinite(value)) return null;
  const scale = wordAt(tokens, end);
  if (scale && scale.slot >= HUNDRED && scale.value >= 1000)
    return { value: times(value, scale.value), end: end + 1 };
  return { value, end };
}

/** Behind `dos con cinco`: a unit, a little word or nothing, so that it is one number and no company. */
function endsThere(tokens: Token[], at: number): boolean {
  const token = tokens[at];
  if (!token || token.gap === LINE || token.kind !== WORD) return true;
  if (token.word && token.word.slot >= HUNDRED) return true;
  return (
    (token.word !== undefined && (token.word.flags & (F.common | F.of | F.and)) !== 0) ||
    token.lexicon.units.next!.has(token.key)
  );
}
