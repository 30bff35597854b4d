import type { DayOrder } from '#records';
import type { CellIn } from './read-file.ts';

/** How a column writes its decimals; null where nothing in it tells. */
export type Decimal = ',' | '.' | null;

/** By what the cells of a column show: `66,5` or `1.250,5` is a comma, `66.5` or `1,250.5` a point. */
export function decimalOf(cells: readonly CellIn[]): Decimal {
  let commas = 0;
  let points = 0;
  for (const cell of cells) {
    const digits = typeof cell === 'string' ? /\d[\d.,\s]*/.exec(cell)?.[0].trim() : undefined;
    if (!digits) continue;
    if (/,\d{1,2}$|,\d{4,}$|\.\d{3},\d+$/.test(digits)) commas += 1;
    if (/\.\d{1,2}$|\.\d{4,}$|,\d{3}\.\d+$/.test(digits)) points += 1;
  }
  if (commas > 0 && points === 0) return ',';
  return points > 0 && commas === 0 ? '.' : null;
}

export type NumberIn = { value: number; unit: string | null } | 'none' | 'unclear';

/** A number with the unit beside it, if any: `66,5 kg`. `unclear` where a sign may group or divide. */
export function numberIn(cell: CellIn, decimal: Decimal): NumberIn {
  if (typeof cell === 'number') return { value: cell, unit: null };
  if (typeof cell !== 'string') return 'none';
  const match =
    /^\s*([-−]?\d[\d.,' \u00a0\u202f]*)\s*(kgs?|lbs?|#|t|l|litres?|liters?|gal|m3|m³|°?\s?[cf]|cm|in|")?\.?\s*$/i.exec(
      cell,
    );
  if (!match) return 'none';
  const digits = match[1]!.replaceAll(/['\s]/g, '').replace('−', '-').replace(/[.,]$/, '');
  const unit = match[2]?.toLowerCase().replaceAll(/[°\s]/g, '') ?? null;
  const give = (text: string): NumberIn => ({ value: Number(text), unit });
  const signs = digits.match(/[.,]/g) ?? [];
  if (signs.length === 0) return give(digits);
  const last = signs.at(-1)!;
  if (new Set(signs).size === 2) {
    const other = last === ',' ? '.' : ',';
    return give(digits.replaceAll(other, '').replace(last, '.'));
  }
  if (signs.length > 1) return give(digits.replaceAll(last, ''));
  if (!/[.,]\d{3}$/.test(digits)) return give(digits.replace(last, '.'));
  if (decimal === null) return 'unclear';
  return give(last === decimal ? digits.replace(last, '.') : digits.replace(last, ''));
}

const NUMERIC = /^(\d{1,4})[./\-\s](\d{1,2})[./\-\s](\d{1,4})(?:[ T].*)?$/;
export type DateOrderIn = DayOrder | 'mixed' | null;

/** By the days above 12 in a column; null where none tells. */
export function dateOrderOf(cells: readonly CellIn[]): DateOrderIn {
  const seen = new Set<DayOrder>();
  for (const cell of cells) {
    const [, a, b] = (typeof cell === 'string' && NUMERIC.exec(cell.trim())) || [];
    if (!a || a.length > 2) continue;
    if (Number(a) > 12) seen.add('dmy');
    if (Number(b) > 12) seen.add('mdy');
  }
  return seen.size === 2 ? 'mixed' : ([...seen][0] ?? null);
}

export const MONTHS: Record<string, number> = {};
for (const [i, names] of [
  'jan janv january janvier enero ene',
  'feb fev fevr february fevrier febrero',
  'mar mars march marzo',
  'apr avr april avril abril abr',
  'may mai mayo',
  'jun juin june junio',
  'jul juil july juillet julio',
  'aug aout august agosto ago',
  'sep sept september septembre septiembre',
  'oct october octobre octubre',
  'nov november novembre noviembre',
  'dec december decembre diciembre dic',
].entries())
  for (const name of names.split(' ')) MONTHS[name] = i + 1;

export type DateIn = { date: string } | 'none' | 'unclear' | 'impossible';

/** A date of a cell, in the order its column is in; `unclear` where the order is mixed and the day could be either. */
export function dateIn(cell: CellIn, order: DateOrderIn, siteOrder: DayOrder): DateIn {
  if (cell === null || typeof cell === 'number') return 'none';
  if (typeof cell === 'object') return cell;
  const text = cell.trim();
  const numeric = NUMERIC.exec(text);
  if (numeric) {
    const [a, b, c] = numeric.slice(1).map(Number) as [number, number, number];
    if (numeric[1]!.length === 4) return made(a, b, c);
    const year = numeric[3]!.length <= 2 ? 2000 + c : c;
    if (a > 12) return made(year, b, a);
    if (b > 12) return made(year, a, b);
    if (a === b) return made(year, a, b);
    if (order === 'mixed') return 'unclear';
    return (order ?? siteOrder) === 'mdy' ? made(year, a, b) : made(year, b, a);
  }
  const named = /^(?:\p{L}+[, ]+)?(\d{1,2})\.?[ -](?:de )?(\p{L}+)\.?[ ,-]+(?:de )?(\d{4})$/u.exec(text);
  const american = /^(?:\p{L}+, )?(\p{L}+)\.? (\d{1,2}),? (\d{4})$/u.exec(text);
  const [day, word, year] = named ? named.slice(1) : american ? [american[2], american[1], american[3]] : [];
  if (!word) return 'none';
  const month = MONTHS[word.normalize('NFD').replaceAll(/\p{M}/gu, '').toLowerCase()];
  return month ? made(Number(year), month, Number(day)) : 'none';
}

function made(year: number, month: number, day: number): DateIn {
  const date = `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
  const ms = Date.parse(`${date}T00:00:00Z`);
  return !Number.isNaN(ms) && new Date(ms).toISOString().slice(0, 10) === date ? { date } : 'impossible';
}

/** A clock time: `7:15`, `07h15`, `7:15 pm`; null where there is none. */
export function clockIn(cell: CellIn): string | null {
  if (typeof cell !== 'string') return null;
  const match = /^\s*(\d{1,2})\s*[:h.]\s*(\d{2})(?::\d{2})?\s*([ap])?\.?m?\.?\s*$/i.exec(cell);
  if (!match) return null;
  const half = match[3]?.toLowerCase();
  const hour = half ? (Number(match[1]) % 12) + (half === 'p' ? 12 : 0) : Number(match[1]);
  return hour < 24 && Number(match[2]) < 60 ? `${String(hour).padStart(2, '0')}:${match[2]}` : null;
}
