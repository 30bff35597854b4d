import { BookRecord, type Site, toCelsius, toCm, toKg, toLitres } from '#records';
import { dateIn, dateOrderOf, decimalOf, type NumberIn, numberIn } from './cells-in.ts';
import { type ColumnIn, headRow, type Meaning, materialIn, placeIn } from './columns.ts';
import type { CellIn, Table } from './read-file.ts';

/** A line that an old log would add. */
export type LineIn = { row: number; localDate: string; record: BookRecord; typed: string | null };
export type TableRead = {
  columns: { head: string; taken: string }[];
  lines: LineIn[];
  doubts: { row: number; say: string }[];
};

const TOTAL = /^\s*(sub-?\s?total|grand total|total(es|s| g[ée]n[ée]ral)?|sum|somme|suma)\b/i;
const FAR = 0.05;

/** Reads a table by the names of its columns; null where no row names a date and something measured. */
export function readTable(table: Table, site: Site): TableRead | null {
  const head = headRow(table.rows, site);
  if (!head) return null;
  const body = table.rows.slice(head.row + 1);
  const cellsOf = (column: ColumnIn) => body.map((row) => row[column.index] ?? null);
  const facts = new Map(
    head.columns.map((column) => [
      column,
      { decimal: decimalOf(cellsOf(column)), order: dateOrderOf(cellsOf(column)) },
    ]),
  );
  const dateColumn = head.columns.find(({ meaning }) => meaning.is === 'date')!;
  const { order } = facts.get(dateColumn)!;
  const read: TableRead = {
    columns: head.columns
      .filter(({ head: name }) => name !== '')
      .map((column) => ({
        head: column.head,
        taken: takenFor(column, order, facts.get(column)!.decimal, site),
      })),
    lines: [],
    doubts: [],
  };
  const sums = new Map<ColumnIn, number>();
  for (const [i, cells] of body.entries()) {
    const row = head.row + 2 + i;
    const doubt = (say: string) => read.doubts.push({ row, say });
    const filled = cells.filter((cell) => cell !== null && cell !== '');
    if (filled.length === 0) continue;
    const numberOf = (column: ColumnIn): NumberIn =>
      numberIn(cells[column.index] ?? null, facts.get(column)!.decimal);
    if (filled.some((cell) => typeof cell === 'string' && TOTAL.test(cell))) {
      compareTotals(head.columns, numberOf, sums, doubt);
      continue;
    }
    const date = dateIn(cells[dateColumn.index] ?? null, order, site.dayOrder);
    if (date === 'none') {
      doubt('no date: left out');
      continue;
    }
    if (date === 'unclear' || date === 'impossible') {
      const what = String(cells[dateColumn.index]);
      doubt(date === 'unclear' ? `"${what}" may be two dates: left out` : `"${what}" is no date: left out`);
      continue;
    }
    const made = recordsOf(head.columns, cells, numberOf, site, doubt);
    for (const column of head.columns) {
      const number = numberOf(column);
      if (typeof number === 'object') sums.set(column, (sums.get(column) ?? 0) + number.value);
    }
    for (const { record, typed } of made) {
      const whole = BookRecord.safeParse({ ...record, when: date.date });
      if (whole.success) read.lines.push({ row, localDate: date.date, record: whole.data, typed });
      else doubt('a value that cannot be: left out');
    }
    if (made.length === 0 && !read.doubts.some((each) => each.row === row))
      doubt('nothing measured: left out');
  }
  return read;
}

/** What stands in a row of totals is said where its lines come to something else, and never added. */
function compareTotals(
  columns: readonly ColumnIn[],
  numberOf: (column: ColumnIn) => NumberIn,
  sums: Map<ColumnIn, number>,
  doubt: (say: string) => void,
): void {
  for (const column of columns) {
    const stated = numberOf(column);
    const { is } = column.meaning;
    if (typeof stated !== 'object' || (is !== 'weight' && is !== 'wide-weight' && is !== 'volume')) continue;
    const sum = sums.get(column) ?? 0;
    if (Math.abs(sum - stated.value) > FAR)
      doubt(
        `total of "${column.head}": states ${stated.value}, its lines come to ${Math.round(sum * 100) / 100}`,
      );
  }
  sums.clear();
}

type Made = { record: Record<string, unknown>; typed: string | null };

function recordsOf(
  columns: readonly ColumnIn[],
  cells: readonly CellIn[],
  numberOf: (column: ColumnIn) => NumberIn,
  site: Site,
  doubt: (say: string) => void,
): Made[] {
  const text = (is: Meaning['is']): string | null => {
    const column = columns.find(({ meaning }) => meaning.is === is);
    const cell = column ? (cells[column.index] ?? null) : null;
    return cell === null || typeof cell === 'object' ? null : String(cell).trim() || null;
  };
  const made: Made[] = [];
  const load: Record<string, unknown> = {};
  const celsius: number[] = [];
  const typed: string[] = [];
  for (const column of columns) {
    const { meaning } = column;
    if (
      !['weight', 'volume', 'temperature', 'count', 'depth', 'wide-weight', 'wide-temperature'].includes(
        meaning.is,
      )
    )
      continue;
    const number = numberOf(column);
    const cell = cells[column.index] ?? null;
    if (number === 'none') {
      if (cell !== null && cell !== '' && cell !== '-')
        doubt(
          `"${column.head}": "${String(typeof cell === 'object' ? cell.date : cell)}" is no number: left out`,
        );
      continue;
    }
    if (number === 'unclear') {
      doubt(`"${column.head}": "${String(cell)}" may be two numbers: left out`);
      continue;
    }
    const { value, unit } = number;
    const massUnit =
      unit === 'lb' || unit === 'lbs' || unit === '#' ? 'lb' : unit?.startsWith('kg') ? 'kg' : null;
    const said = `${String(typeof cell === 'object' ? '' : cell)}`;
    if (meaning.is === 'weight') {
      const kg = toKg(value, massUnit ?? meaning.unit ?? site.units.mass);
      if (meaning.basis === 'tare') load.tareKg = kg;
      else if (load.kg === undefined || meaning.basis === 'gross')
        Object.assign(load, { kg, basis: meaning.basis });
      typed.push(said);
    } else if (meaning.is === 'volume')
      load.litres = toLitres(
        value,
        unit === 'gal' ? 'gal' : unit === 'm3' || unit === 'm³' ? 'm3' : (meaning.unit ?? 'L'),
      );
    else if (meaning.is === 'count') load.count = value;
    else if (meaning.is === 'depth')
      load.depthCm = toCm(
        value,
        unit === 'in' || unit === '"' || /\bin(ch|ches)?\b/i.test(column.head) ? 'in' : site.units.length,
      );
    else if (meaning.is === 'temperature') celsius.push(degrees(value, unit, meaning.unit, site));
    else if (meaning.is === 'wide-temperature') {
      made.push({
        record: {
          kind: 'temperature',
          place: meaning.place,
          celsius: [degrees(value, unit, meaning.unit, site)],
        },
        typed: said,
      });
    } else if (meaning.is === 'wide-weight' && value !== 0) {
      const kg = toKg(value, massUnit ?? meaning.unit ?? site.units.mass);
      made.push({
        record: { kind: 'weigh-in', material: meaning.material, source: meaning.source, kg, basis: 'net' },
        typed: said,
      });
    }
  }
  const placeSaid = text('place');
  const place = placeSaid ? placeIn(placeSaid, site) : null;
  if (celsius.length > 0) {
    if (place)
      made.push({
        record: { kind: 'temperature', place, celsius, depthCm: load.depthCm ?? null },
        typed: null,
      });
    else
      doubt(
        placeSaid
          ? `"${placeSaid}" is no place of the site: left out`
          : 'a temperature with no place: left out',
      );
  }
  if (load.kg !== undefined || load.litres !== undefined) {
    const { depthCm: _, ...amounts } = load;
    const what = text('material');
    const material = what ? (materialIn(what) ?? what) : 'food-scraps';
    made.push({
      record: {
        kind: 'weigh-in',
        material,
        container: text('container'),
        source: text('source'),
        place,
        ...amounts,
      },
      typed: typed.join(' / ') || null,
    });
  }
  return made;
}

const degrees = (value: number, unit: string | null, head: 'C' | 'F' | null, site: Site): number =>
  toCelsius(value, unit === 'f' ? 'F' : unit === 'c' ? 'C' : (head ?? site.units.temperature));

function takenFor({ meaning }: ColumnIn, order: unknown, decimal: unknown, site: Site): string {
  const comma = decimal === ',' ? ', decimal comma' : '';
  if (meaning.is === 'date') {
    return order === 'mixed'
      ? 'date, in mixed orders: only those that can be one date are taken'
      : `date, ${order ?? `${site.dayOrder} as the site writes them`}`;
  }
  if (meaning.is === 'weight') return `${meaning.basis} weight, ${meaning.unit ?? site.units.mass}${comma}`;
  if (meaning.is === 'wide-weight')
    return `net weight of ${meaning.material}${meaning.source ? ` from ${meaning.source}` : ''}, ${meaning.unit ?? site.units.mass}${comma}`;
  if (meaning.is === 'wide-temperature')
    return `temperature of ${meaning.place}, °${meaning.unit ?? site.units.temperature}${comma}`;
  if (meaning.is === 'temperature') return `temperature, °${meaning.unit ?? site.units.temperature}${comma}`;
  if (meaning.is === 'volume') return `volume, ${meaning.unit ?? 'L'}${comma}`;
  return meaning.is === 'unused' ? 'not used' : meaning.is;
}
