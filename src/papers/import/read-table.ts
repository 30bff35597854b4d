import { BookRecord, type Site, toCelsius, toCm, toKg, toLitres } from '#records';
import { clockIn, dateIn, dateOrderOf, decimalOf, type NumberIn, numberIn } from './cells-in.ts';
import {
  type ColumnIn,
  containerIn,
  headRow,
  type Meaning,
  materialIn,
  monthIn,
  placeIn,
  sourceIn,
} from './columns.ts';
import type { CellIn, Table } from './read-file.ts';

/** A line that an old log would add. */
export type LineIn = { row: number; localDate: string; record: BookRecord; typed: string | null };
export type TableRead = {
  columns: { head: string; taken: string }[];
  lines: LineIn[];
  doubts: { row: number; say: string }[];
};
/** What a table is read for: its site, the last day it can tell of, and what makes a record doubtful. */
export type TableFor = { site: Site; today: string; doubtAbout: (record: BookRecord) => string | null };

/** Whole cells that name a sum: `Total`, `June total`, `total général`. */
const TOTAL = /\b(sub-?\s?totals?|totals?|totaux|totale?s?|sum|somme|suma)\b/i;
const LONGEST_LABEL = 30;
const FAR = 0.05;

/** Reads a table by the names of its columns; null where no row names a date and something measured. */
export function readTable(
  table: Table,
  { site, today, doubtAbout }: TableFor,
): TableRead | 'unclear-heads' | null {
  const head = headRow(table.rows, site);
  if (head === null) return null;
  if (head === 'unclear') return 'unclear-heads';
  const body = table.rows.slice(head.row + 1);
  const cellsOf = (column: ColumnIn) => body.map((row) => row[column.index] ?? null);
  const facts = new Map(
    head.columns.map((column) => [
      column,
      { decimal: decimalOf(cellsOf(column)), order: dateOrderOf(cellsOf(column)) },
    ]),
  );
  const dateColumn = head.columns.find(({ meaning }) => meaning.is === 'date')!;
  const timeColumn = head.columns.find(({ meaning }) => meaning.is === 'time');
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
  const totals = totalsOf(head.columns);
  for (const [i, cells] of body.entries()) {
    const row = head.row + 2 + i;
    const doubt = (say: string) => read.doubts.push({ row, say });
    const filled = cells.filter((cell) => cell !== null && cell !== '');
    if (filled.length === 0) continue;
    const numberOf = (column: ColumnIn): NumberIn =>
      numberIn(cells[column.index] ?? null, facts.get(column)!.decimal);
    const date = dateIn(cells[dateColumn.index] ?? null, order, site.dayOrder);
    const label = labelOf(head.columns, cells);
    // `June 1400` with no day is what somebody says June came to.
    const month =
      monthIn(label ?? '') ?? (date === 'none' ? monthIn(String(cells[dateColumn.index] ?? '')) : null);
    if (label !== null || (date === 'none' && month)) {
      totals.state(row, month, numberOf);
      continue;
    }
    if (date === 'none') {
      doubt('no date: left out');
      continue;
    }
    if (date === 'unclear' || date === 'impossible') {
      const what = String(cells[dateColumn.index]);
      doubt(date === 'unclear' ? `"${what}" may be two dates: left out` : `"${what}" is no date: left out`);
      continue;
    }
    totals.add(date.date, numberOf);
    if (date.date > today) {
      doubt(`${date.date} is still to come: left out`);
      continue;
    }
    const made = recordsOf(head.columns, cells, numberOf, site, doubt);
    const clock = timeColumn ? clockIn(cells[timeColumn.index] ?? null) : null;
    for (const { record, typed } of made) {
      const when = clock ? `${date.date}T${clock}` : date.date;
      const whole = BookRecord.safeParse({ ...record, when });
      const why = whole.success ? doubtAbout(whole.data) : 'a value that cannot be';
      if (whole.success && why === null)
        read.lines.push({ row, localDate: date.date, record: whole.data, typed });
      else doubt(`${typed ? `"${typed}": ` : ''}${why}, left out`);
    }
    if (made.length === 0 && !read.doubts.some((each) => each.row === row))
      doubt('nothing measured: left out');
  }
  read.doubts.push(...totals.differ());
  read.doubts.sort((a, b) => a.row - b.row);
  return read;
}

/** The cell that makes a row one of totals; what somebody wrote in a note makes none. */
function labelOf(columns: readonly ColumnIn[], cells: readonly CellIn[]): string | null {
  for (const { index, meaning } of columns) {
    const cell = cells[index] ?? null;
    if (meaning.is !== 'note' && typeof cell === 'string' && cell.length <= LONGEST_LABEL && TOTAL.test(cell))
      return cell;
  }
  return null;
}

type Month = { month: number; year: number | null } | null;

/**
 * What a file says its lines come to, beside what they do: rows of totals are never entries. One that names a month is
 * held against that month, any other against what stands since the one before, or against all.
 */
function totalsOf(columns: readonly ColumnIn[]) {
  const summed = columns.filter(({ meaning }) => ['weight', 'wide-weight', 'volume'].includes(meaning.is));
  const since = new Map<ColumnIn, number>();
  const all = new Map<ColumnIn, number>();
  const months = new Map<ColumnIn, Map<string, number>>(summed.map((column) => [column, new Map()]));
  const stated: { row: number; column: ColumnIn; value: number; month: Month; sums: [number, number] }[] = [];
  let lastYear = 0;
  return {
    add(date: string, numberOf: (column: ColumnIn) => NumberIn): void {
      lastYear = Number(date.slice(0, 4));
      for (const column of summed) {
        const number = numberOf(column);
        if (typeof number !== 'object') continue;
        since.set(column, (since.get(column) ?? 0) + number.value);
        all.set(column, (all.get(column) ?? 0) + number.value);
        const of = months.get(column)!;
        of.set(date.slice(0, 7), (of.get(date.slice(0, 7)) ?? 0) + number.value);
      }
    },
    state(row: number, month: Month, numberOf: (column: ColumnIn) => NumberIn): void {
      for (const column of summed) {
        const number = numberOf(column);
        if (typeof number !== 'object') continue;
        const year = month?.year ?? lastYear;
        stated.push({
          row,
          column,
          value: number.value,
          month: month && { ...month, year },
          sums: [since.get(column) ?? 0, all.get(column) ?? 0],
        });
      }
      since.clear();
    },
    /** In the order of their rows, once every line is known: a month may be stated before its lines. */
    differ(): { row: number; say: string }[] {
      return stated.flatMap(({ row, column, value, month, sums: [section, whole] }) => {
        const of = months.get(column)!;
        const key = month ? [...of.keys()].find((each) => isMonth(each, month)) : undefined;
        const sums = key ? [of.get(key)!] : section > 0 ? [section, whole] : [whole];
        if (sums.some((sum) => Math.abs(sum - value) <= FAR)) return [];
        const come = Math.round(sums[0]! * 100) / 100;
        return [
          {
            row,
            say: `total of "${column.head}"${key ? ` for ${key}` : ''}: states ${value}, its lines come to ${come}`,
          },
        ];
      });
    },
  };
}

const isMonth = (key: string, { month, year }: { month: number; year: number | null }): boolean =>
  Number(key.slice(5)) === month && (!year || Number(key.slice(0, 4)) === year);

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
    const [container, source] = [text('container'), text('source')];
    made.push({
      record: {
        kind: 'weigh-in',
        material,
        ...(container ? containerIn(container, site) : { container: null }),
        source: source && sourceIn(source, site),
        place,
        ...amounts,
      },
      typed: typed.join(' / ') || null,
    });
  }
  const note = text('note');
  if (note) made.push({ record: { kind: 'note', text: note }, typed: note });
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
  if (meaning.is === 'note') return 'note: a line of its own';
  return meaning.is === 'unused' ? 'not used' : meaning.is;
}
