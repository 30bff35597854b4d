import { fromCelsius, fromCm, fromKg, fromLitres, type Units } from '#records';
import type { Heads } from './sheets/heads.ts';

/** What a column holds (`word`: one of the set words, said in the reader's language); masses, volumes, temperatures and lengths are handed over in kg, L, °C, cm. */
export type Kind = 'text' | 'word' | 'number' | 'mass' | 'volume' | 'temperature' | 'length' | 'date';
export type Value = string | number | null | undefined;
/** A value as it is written: in the site's units, a number never as text. */
export type Cell = { kind: Kind; value: string | number | null };
export type Column<Row> = { head: string; kind: Kind; of: (row: Row) => Value };

export const column = <Row>(head: string, kind: Kind, of: (row: Row) => Value): Column<Row> => ({
  head,
  kind,
  of,
});

const VOLUME_SIGNS = { L: 'L', gal: 'gal', m3: 'm³', yd3: 'yd³' } as const;

/** `Net (kg)`: the unit stands in the header, so that the cells are plain numbers. */
export function headOf(
  { head: english, kind }: Pick<Column<never>, 'head' | 'kind'>,
  units: Units,
  heads: Heads,
): string {
  const head = heads.head(english);
  const unit = {
    mass: units.mass,
    volume: VOLUME_SIGNS[units.volume],
    temperature: `°${units.temperature}`,
    length: units.length,
    text: null,
    word: null,
    number: null,
    date: null,
  }[kind];
  return unit ? `${head} (${unit})` : head;
}

/** Far below what any scale shows; takes off what the way there and back through kg leaves behind (142.00000000000003). */
const tidy = (value: number): number => Math.round(value * 1e6) / 1e6;

export function cellOf<Row>({ kind, of }: Column<Row>, row: Row, units: Units, heads: Heads): Cell {
  const value = of(row) ?? null;
  if (value === null) return { kind, value };
  if (typeof value === 'string') return { kind, value: kind === 'word' ? heads.word(value) : value };
  if (kind === 'mass') return { kind, value: tidy(fromKg(value, units.mass)) };
  if (kind === 'volume') return { kind, value: tidy(fromLitres(value, units.volume)) };
  if (kind === 'temperature') return { kind, value: tidy(fromCelsius(value, units.temperature)) };
  if (kind === 'length') return { kind, value: tidy(fromCm(value, units.length)) };
  return { kind, value: tidy(value) };
}

/** What spreadsheets take for the beginning of a formula, also behind apostrophes that are the text's own. */
const RUNS = /^'*[=+\-@\t\r\n]/;
export const looksLikeFormula = (text: string): boolean => RUNS.test(text);

/** Text that no spreadsheet runs: an apostrophe before what could begin a formula. `plainText` takes it off again. */
export const safeText = (text: string): string => (looksLikeFormula(text) ? `'${text}` : text);
export const plainText = (text: string): string =>
  text.startsWith("'") && looksLikeFormula(text) ? text.slice(1) : text;
