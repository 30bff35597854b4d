import type { Language } from '#records';
import { numberWordsOf } from './lexicon.ts';

/** How a run of digits with marks between them can be read. */
export interface Literal {
  value: number;
  /** Other readings that a language at hand allows. */
  others: number[];
  decimalComma: boolean;
  /** No mark, no fraction: may be a numerator, or the whole part of `2 1/2`. */
  plain: boolean;
  /** The pieces may also be a list. */
  list: boolean;
}

const GROUP = /^\d{3}$/;

function grouped(pieces: string[], from: number, to: number): boolean {
  const first = pieces[from]!;
  if (first.length > 3 || (first.startsWith('0') && to > from + 1)) return false;
  for (let i = from + 1; i < to; i++) if (!GROUP.test(pieces[i]!)) return false;
  return true;
}

function one(value: number, extra: Partial<Literal> = {}): Literal {
  return { value, others: [], decimalComma: false, plain: false, list: false, ...extra };
}

/** `1,250` or `1.250`: a group or a decimal, as each language at hand writes it. */
function thousandOrDecimal(pieces: string[], mark: string, languages: readonly Language[]): Literal {
  const group = Number(pieces.join(''));
  const decimal = Number(pieces.join('.'));
  const readings: number[] = [];
  for (const language of languages) {
    const words = numberWordsOf(language);
    for (const way of mark === ',' ? words.commaThousands : words.pointThousands) {
      const value = way === 'group' ? group : decimal;
      if (!readings.includes(value)) readings.push(value);
    }
  }
  const value = readings[0]!;
  return one(value, {
    others: readings.slice(1),
    decimalComma: mark === ',' && value === decimal,
    list: mark === ',',
  });
}

/**
 * The number in `pieces` of digits with `marks` between them (`,`, `.`, `'`, a space), as the first of the
 * languages writes it; `list` where they are a list of numbers, null where they are no number (a date, an
 * address, a version).
 * @example readLiteral(['1', '234', '5'], [',', '.'], ['en']) // { value: 1234.5, … }
 */
export function readLiteral(
  pieces: string[],
  marks: string[],
  languages: readonly Language[],
): Literal | 'list' | null {
  if (marks.length === 0) return one(Number(pieces[0]), { plain: true });
  const last = marks.length - 1;
  const mark = marks[last]!;
  const first = marks[0]!;
  const same = marks.every((other) => other === first);
  if (same && (first === ' ' || first === "'")) {
    return grouped(pieces, 0, pieces.length)
      ? one(Number(pieces.join('')), { plain: true, list: first === ' ' })
      : null;
  }
  if (marks.length === 1) {
    const [whole, fraction] = pieces as [string, string];
    if (fraction.length === 3 && whole.length <= 3 && !whole.startsWith('0'))
      return thousandOrDecimal(pieces, mark, languages);
    return one(Number(`${whole}.${fraction}`), { decimalComma: mark === ',', list: mark === ',' });
  }
  if (same) {
    if (grouped(pieces, 0, pieces.length)) return one(Number(pieces.join('')), { list: first === ',' });
    return first === ',' ? 'list' : null;
  }
  // Two kinds of mark: the last one is the decimal, if it stands once and the rest are groups.
  const groupMarks = marks.slice(0, last);
  if (
    (mark === ',' || mark === '.') &&
    groupMarks.every((other) => other === first && other !== mark) &&
    grouped(pieces, 0, pieces.length - 1)
  ) {
    return one(Number(`${pieces.slice(0, -1).join('')}.${pieces[pieces.length - 1]}`), {
      decimalComma: mark === ',',
    });
  }
  return first === ',' || mark === ',' ? 'list' : null;
}
