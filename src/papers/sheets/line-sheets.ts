import type { BookKind } from '#records';
import { type Column, column, type Value } from '../cells.ts';
import { isIntake, type SeenLine } from './line-seen.ts';

/** A sheet whose rows come from lines of the book, one or more rows a line. */
export type LineSheet = {
  name: string;
  kinds: readonly BookKind[];
  columns: Column<never>[];
  rows(line: SeenLine): unknown[];
};

/** A sheet of one row a line; the date stands first, who and which line last. */
function sheet<K extends BookKind>(
  name: string,
  kinds: readonly K[],
  columns: Column<SeenLine<K>>[],
  where: (line: SeenLine) => boolean = () => true,
): LineSheet {
  const whole = [...before<SeenLine<K>>((line) => line), ...columns, ...after<SeenLine<K>>((line) => line)];
  return {
    name,
    kinds,
    columns: whole as Column<never>[],
    rows: (line) => (where(line) ? [line] : []),
  };
}

type Told = Pick<SeenLine, 'date' | 'clock' | 'by' | 'entry'>;
const before = <Row>(line: (row: Row) => Told): Column<Row>[] => [
  column('Date', 'date', (row) => line(row).date),
  column('Time', 'text', (row) => line(row).clock),
];
const after = <Row>(line: (row: Row) => Told): Column<Row>[] => [
  column('Logged by', 'text', (row) => line(row).by),
  column('As typed', 'text', (row) => line(row).entry.typed),
  column('Assumed', 'text', (row) => line(row).entry.assumed.join(', ')),
  column('Pictures', 'number', (row) => line(row).entry.pictures || null),
  column('Line', 'number', (row) => line(row).entry.number),
];

type Amounts = {
  containerLitres: number | null;
  record: { kg?: number | null; litres?: number | null; container?: string | null; count?: number | null };
};
const amount = <Row extends Amounts>(): Column<Row>[] => [
  column('Weight', 'mass', ({ record }) => record.kg),
  column('Volume, said', 'volume', ({ record }) => record.litres),
  column('Volume, by containers', 'volume', ({ record, containerLitres }) =>
    record.litres == null && record.kg == null && containerLitres !== null && record.count != null
      ? record.count * containerLitres
      : null,
  ),
  column('Container', 'text', ({ record }) => record.container),
  column('Count', 'number', ({ record }) => record.count),
];
const yes = (value: unknown): Value => (value === true ? 'yes' : null);

const loads: Column<SeenLine<'weigh-in'>>[] = [
  column('Material', 'text', ({ record }) => record.material),
  column('Source', 'text', ({ record }) => record.source),
  column('Container', 'text', ({ record }) => [record.container, record.label].filter(Boolean).join(' ')),
  column('Count', 'number', ({ record }) => (record.container ? record.count : null)),
  column('Fill (%)', 'number', ({ record }) => (record.fill == null ? null : record.fill * 100)),
  column('Gross', 'mass', ({ weight }) => weight?.grossKg),
  column('Empty weight of one', 'mass', ({ weight }) => weight?.tareKg),
  column('Net, weighed', 'mass', ({ weight }) => weight?.netKg),
  column('Net, estimated from volume', 'mass', ({ weight }) => weight?.estimatedKg),
  column('Factor of the estimate', 'number', ({ weight }) => weight?.estimate?.factor),
  column('Unit of the factor', 'text', ({ weight }) => weight?.estimate?.factorUnit),
  column('Waits for empty weight', 'word', ({ weight }) => yes(weight?.pending)),
  column('Volume', 'volume', ({ record }) => record.litres),
  column('Put into', 'text', ({ record }) => record.place),
  column('Flags', 'text', ({ record }) => record.flags?.join(', ')),
  column('Of which', 'text', ({ record }) =>
    record.ofWhich
      ?.map(
        ({ what, kg, litres }) =>
          `${what}${kg != null ? ` ${kg} kg` : ''}${litres != null ? ` ${litres} L` : ''}`,
      )
      .join(', '),
  ),
];

type Point = { line: SeenLine<'temperature'>; index: number };
const points: Column<Point>[] = [
  ...before<Point>(({ line }) => line),
  column('Place', 'text', ({ line }) => line.record.place),
  column('Point', 'text', ({ line, index }) => {
    const point = line.record.points?.[index];
    return point == null ? String(index + 1) : String(point);
  }),
  column('Temperature', 'temperature', ({ line, index }) => line.record.celsius[index]),
  column('Up to', 'temperature', ({ line, index }) => line.record.upTo?.[index]),
  column('Depth', 'length', ({ line }) => line.record.depthCm),
  column('About', 'word', ({ line }) => yes(line.record.approximate)),
  ...after<Point>(({ line }) => line),
];

/** Which way the material went. */
const moves: Column<SeenLine<'discharge' | 'transfer' | 'screening'>>[] = [
  column('What', 'text', ({ record }) => record.kind),
  column('From', 'text', ({ record }) =>
    record.kind === 'transfer'
      ? record.from
      : record.kind === 'screening'
        ? record.pile
        : (record.place ?? 'drum'),
  ),
  column('To', 'text', ({ record }) =>
    record.kind === 'transfer' ? record.to : record.kind === 'discharge' ? record.pile : null,
  ),
  ...amount<SeenLine<'discharge' | 'transfer' | 'screening'>>(),
  column('Basis', 'text', ({ record }) => (record.kind === 'discharge' ? record.basis : null)),
  column('Overs', 'mass', ({ record }) => (record.kind === 'screening' ? record.overs?.kg : null)),
  column('Overs', 'volume', ({ record }) => (record.kind === 'screening' ? record.overs?.litres : null)),
];

const isDirty = ({ record }: SeenLine): boolean =>
  record.kind === 'rejected-load' ||
  (record.kind === 'weigh-in' && (record.flags?.length ?? 0) > 0) ||
  (record.kind === 'removal' && record.material === 'residue') ||
  (record.kind === 'problem' && (record.topic === 'contamination' || record.topic === 'sharps'));

type Dirt = SeenLine<'rejected-load' | 'weigh-in' | 'removal' | 'problem'>;

export const LINE_SHEETS: readonly LineSheet[] = [
  sheet('Intake', ['weigh-in'], loads, isIntake),
  sheet('Additions', ['weigh-in'], loads, (line) => !isIntake(line)),
  sheet(
    'Stock',
    ['delivery', 'level'],
    [
      column('What', 'text', ({ record }) => record.kind),
      column('Material', 'text', ({ record }) => record.material),
      column('Place', 'text', ({ record }) => (record.kind === 'level' ? record.place : null)),
      ...amount<SeenLine<'delivery' | 'level'>>(),
      column('Fill (%)', 'number', ({ record }) =>
        record.kind === 'level' && record.fraction != null ? record.fraction * 100 : null,
      ),
    ],
  ),
  sheet(
    'Moisture',
    ['moisture'],
    [
      column('Place', 'text', ({ record }) => record.place),
      column('Feel', 'text', ({ record }) => record.feel),
      column('Moisture (%)', 'number', ({ record }) => record.percent),
    ],
  ),
  {
    name: 'Temperatures',
    kinds: ['temperature'],
    columns: points as Column<never>[],
    rows: (line) =>
      line.record.kind === 'temperature' ? line.record.celsius.map((_, index) => ({ line, index })) : [],
  },
  sheet(
    'Turnings and covers',
    ['turning', 'cover'],
    [
      column('What', 'word', ({ record }) =>
        record.kind === 'turning' ? 'turned' : record.on ? 'covered' : 'uncovered',
      ),
      column('Pile', 'text', ({ record }) => record.pile),
      column('Moved to', 'text', ({ record }) => (record.kind === 'turning' ? record.movedTo : null)),
      column('Cover', 'text', ({ record }) => (record.kind === 'cover' ? record.layer : null)),
    ],
  ),
  sheet('Discharges and transfers', ['discharge', 'transfer', 'screening'], moves),
  sheet(
    'Drum',
    ['drum-setting'],
    [
      column('Place', 'text', ({ record }) => record.place ?? 'drum'),
      column('Mode', 'text', ({ record }) => record.mode),
      column('Turns every (min)', 'number', ({ record }) => record.everyMin),
      column('Fan', 'text', ({ record }) => record.fan),
    ],
  ),
  sheet(
    'Pile events',
    ['pile'],
    [
      column('Pile', 'text', ({ record }) => record.pile),
      column('Event', 'text', ({ record }) => record.event),
      column('With', 'text', ({ record }) => record.with),
      column('To', 'text', ({ record }) => record.to),
    ],
  ),
  sheet(
    'Removals',
    ['removal'],
    [
      column('Material', 'text', ({ record }) => record.material),
      column('From pile', 'text', ({ record }) => record.pile),
      column('Received by', 'text', ({ record }) => record.to),
      ...amount<SeenLine<'removal'>>(),
      column('Basis', 'text', ({ record }) => record.basis),
      column('Out of a load from', 'text', ({ record }) => record.source),
    ],
  ),
  sheet(
    'Rejects and contamination',
    ['rejected-load', 'weigh-in', 'removal', 'problem'],
    [
      column('What', 'word', ({ record }) =>
        record.kind === 'weigh-in'
          ? `taken in, ${record.flags?.join(', ')}`
          : record.kind === 'removal'
            ? 'residue picked out'
            : record.kind === 'problem'
              ? record.topic
              : 'refused',
      ),
      column<Dirt>('Source', 'text', ({ record }) => ('source' in record ? record.source : null)),
      column<Dirt>('Reason', 'text', ({ record }) =>
        record.kind === 'rejected-load' ? record.reason : record.kind === 'problem' ? record.note : null,
      ),
      column<Dirt>('Weight', 'mass', ({ record, weight }) =>
        record.kind === 'weigh-in' ? weight?.netKg : record.kind === 'problem' ? null : record.kg,
      ),
      column<Dirt>('Container', 'text', ({ record }) => ('container' in record ? record.container : null)),
      column<Dirt>('Count', 'number', ({ record }) => ('count' in record ? record.count : null)),
      column<Dirt>('Place or destination', 'word', ({ record }) =>
        record.kind === 'removal'
          ? (record.to ?? record.pile)
          : 'place' in record
            ? record.place
            : record.kind === 'rejected-load'
              ? 'not taken in'
              : null,
      ),
    ],
    isDirty,
  ),
  sheet(
    'Chores and checks',
    ['chore'],
    [
      column('Chore or check', 'text', ({ record }) => record.chore),
      column('Place', 'text', ({ record }) => record.place),
      column('Reads', 'number', ({ record }) => record.reads),
      column('Should read', 'number', ({ record }) => record.against),
      column('Unit', 'text', ({ record }) => record.unit),
      column('Good', 'word', ({ record }) => (record.ok == null ? null : record.ok ? 'yes' : 'no')),
    ],
  ),
  sheet(
    'Samples and results',
    ['sample', 'lab-result'],
    [
      column('What', 'text', ({ record }) => record.kind),
      column('Pile', 'text', ({ record }) => (record.kind === 'sample' ? record.pile : record.place)),
      column('Samples', 'number', ({ record }) => (record.kind === 'sample' ? (record.count ?? 1) : null)),
      column('Analyte', 'text', ({ record }) => (record.kind === 'lab-result' ? record.analyte : null)),
      column('Qualifier', 'text', ({ record }) => (record.kind === 'lab-result' ? record.qualifier : null)),
      column('Value', 'number', ({ record }) => (record.kind === 'lab-result' ? record.value : null)),
      column('Unit of the value', 'text', ({ record }) =>
        record.kind === 'lab-result' ? record.unit : null,
      ),
    ],
  ),
  sheet(
    'Hours',
    ['hours'],
    [
      column('People', 'number', ({ record }) => record.people),
      column('Hours', 'number', ({ record }) => record.hours),
    ],
  ),
  sheet(
    'Weather',
    ['weather'],
    [
      column('Weather', 'text', ({ record }) => record.expects),
      column('Seen', 'word', ({ record }) => yes(record.observed)),
      column('Rain (mm)', 'number', ({ record }) => record.mm),
      column('For', 'date', ({ record }) => record.when?.slice(0, 10)),
    ],
  ),
  sheet(
    'Notes and duties',
    ['note', 'duty', 'duty-note'],
    [
      column('What', 'text', ({ record }) => record.kind),
      column('Text', 'text', ({ record }) =>
        record.kind === 'note' ? record.text : record.kind === 'duty' ? record.name : record.duty,
      ),
      column('Rhythm or act', 'text', ({ record }) =>
        record.kind === 'duty'
          ? (record.every ?? record.on)
          : record.kind === 'duty-note'
            ? record.act
            : null,
      ),
      column('Reason', 'text', ({ record }) => (record.kind === 'duty-note' ? record.reason : null)),
    ],
  ),
  sheet(
    'Settings',
    ['setting'],
    [
      column('Setting', 'text', ({ record }) => record.name),
      column('Value', 'text', ({ record }) =>
        typeof record.value === 'string' ? record.value : JSON.stringify(record.value ?? null),
      ),
      column('Holds from', 'date', (line) => line.record.from?.slice(0, 10) ?? line.date),
    ],
  ),
];
