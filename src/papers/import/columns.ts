import type { Site } from '#records';
import { MONTHS } from './cells-in.ts';
import type { CellIn } from './read-file.ts';

/** What a column is taken for. `wide` columns hold a number for the one thing that their head names. */
export type Meaning =
  | {
      is:
        | 'date'
        | 'time'
        | 'source'
        | 'material'
        | 'container'
        | 'count'
        | 'place'
        | 'depth'
        | 'note'
        | 'unused';
    }
  | { is: 'weight'; basis: 'gross' | 'net' | 'tare'; unit: 'kg' | 'lb' | null }
  | { is: 'volume'; unit: 'L' | 'gal' | 'm3' | null }
  | { is: 'temperature'; unit: 'C' | 'F' | null }
  | { is: 'wide-weight'; source: string | null; material: string; unit: 'kg' | 'lb' | null }
  | { is: 'wide-temperature'; place: string; unit: 'C' | 'F' | null };

export type ColumnIn = { index: number; head: string; meaning: Meaning };

const plain = (text: string): string =>
  text
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[_\s]+/g, ' ')
    .trim();

const HEADS: [words: RegExp, is: Exclude<Meaning['is'], 'wide-weight' | 'wide-temperature'>][] = [
  [/^(date|day|jour|fecha|dia)\b/, 'date'],
  [/^(time|clock|heure|hora)\b/, 'time'],
  [/\b(depth|profondeur|profundidad)\b/, 'depth'],
  [/\b(temp|temps|temperature|temperatura|grados|degres)\b/, 'temperature'],
  [/\b(gross|brut|bruto|net|neto|tare|tara|weight|poids|peso|kg|lbs?|mass)\b/, 'weight'],
  [/\b(volume|volumen|litres?|liters?|litros?|gal|gallons?|m3)\b/, 'volume'],
  [/\b(source|from|origin|origine|provenance|origen|kitchen|cuisine|cocina)\b/, 'source'],
  [/\b(material|type|matiere|what|feedstock)\b/, 'material'],
  [/\b(container|contenant|recipiente|bac)\b/, 'container'],
  [/\b(count|number|nombre|cantidad|no|qty)\b/, 'count'],
  [/\b(pile|place|bay|tas|lieu|pila|lugar|where)\b/, 'place'],
  [/\b(notes?|comments?|remarques?|notas?|observaciones)\b/, 'note'],
];

const MATERIALS: [RegExp, string][] = [
  [/\b(chips|wood|copeaux|astillas)\b/, 'wood-chips'],
  [/\b(food|scraps|restes|restos)\b/, 'food-scraps'],
  [/\b(leaves|feuilles|hojas)\b/, 'leaves'],
  [/\b(coffee|cafe|marc)\b/, 'coffee-grounds'],
  [/\b(sawdust|sciure|aserrin)\b/, 'sawdust'],
  [/\b(water|eau|agua)\b/, 'water'],
];

export const materialIn = (text: string): string | null =>
  MATERIALS.find(([words]) => words.test(plain(text).replaceAll('-', ' ')))?.[1] ?? null;

const massIn = (head: string) =>
  /\b(lbs?|pounds?|livres)\b|#/.test(head) ? 'lb' : /\bkgs?\b/.test(head) ? 'kg' : null;
const degreesIn = (head: string) =>
  /°\s?f|\bf\b|fahrenheit/.test(head) ? 'F' : /°\s?c|\bc\b|celsius/.test(head) ? 'C' : null;

/** The place that a text names: `pile B`, `B`, `bay 3`. */
export function placeIn(text: string, site: Site): string | null {
  const bare = plain(text)
    .replace(/^(tas|pila|andain)\b/, 'pile')
    .replace(/^(air|outside|ambiante?|ambiente)$/, 'ambient');
  if (/^(ambient|drum|exit)$/.test(bare)) return bare;
  const piles = site.piles.map((pile) => (/^(pile|bay) /.test(pile) ? pile : `pile ${pile}`));
  return piles.find((pile) => [plain(pile), plain(pile).replace(/^pile /, '')].includes(bare)) ?? null;
}

function meaningOf(head: string, site: Site): Meaning {
  const text = plain(head);
  if (text === '') return { is: 'unused' };
  const bare = text.replaceAll(/\(.*?\)|°\s?[cf]|\b(kgs?|lbs?|[cf])\b/g, '').trim();
  const source = site.sources.find((each) => plain(each) === bare);
  if (source) return { is: 'wide-weight', source, material: 'food-scraps', unit: massIn(text) };
  const place = placeIn(bare, site);
  if (place && bare !== 'drum') return { is: 'wide-temperature', place, unit: degreesIn(text) };
  const found = HEADS.find(([words]) => words.test(text))?.[1];
  const material = materialIn(text);
  if (material && (found === undefined || found === 'weight'))
    return { is: 'wide-weight', source: null, material, unit: massIn(text) };
  if (found === undefined) return { is: 'unused' };
  if (found === 'weight') {
    const basis = /\b(tare|tara)\b/.test(text)
      ? 'tare'
      : /\b(gross|brut|bruto)\b/.test(text)
        ? 'gross'
        : 'net';
    return { is: 'weight', basis, unit: massIn(text) };
  }
  if (found === 'volume')
    return { is: 'volume', unit: /gal/.test(text) ? 'gal' : /m3|m³/.test(text) ? 'm3' : 'L' };
  if (found === 'temperature') return { is: 'temperature', unit: degreesIn(text) };
  return { is: found };
}

const CONTAINERS: [RegExp, string][] = [
  [/\b(cart|bin|tote|bac|chariot|carro|contenedor)s?\b/, 'cart'],
  [/\b(bucket|seau|cubo|balde|cubeta)[sx]?\b/, 'bucket'],
  [/\b(bag|sac|bolsa)s?\b/, 'bag'],
  [/\b(barrel|tonneau|fut|barril)(s|x|es)?\b/, 'barrel'],
  [/\b(barrow|wheelbarrow|brouette|carretilla)s?\b/, 'barrow'],
];

/** `Cart`, `bac 5`: the container in the site's spelling, and its own number; a word nobody knows stays as it is. */
export function containerIn(text: string, site: Site): { container: string; label: string | null } {
  const own = Object.keys(site.containers).find((each) => plain(each) === plain(text));
  const label = /\s#?(\d{1,2})$/.exec(text)?.[1] ?? null;
  if (own && !label) return { container: own, label: null };
  const known = CONTAINERS.find(([words]) => words.test(plain(text)))?.[1];
  return known ? { container: known, label } : { container: text, label: null };
}

/** A source as the site spells it; another in the words of the file. */
export const sourceIn = (text: string, site: Site): string =>
  site.sources.find((each) => plain(each) === plain(text)) ?? text;

/** The month that a cell names: `June`, `juin 2025`, `total enero`. */
export function monthIn(text: string): { month: number; year: number | null } | null {
  for (const word of plain(text).split(/[^a-z0-9]+/)) {
    const month = /^[a-z]/.test(word) ? MONTHS[word] : undefined;
    if (month) return { month, year: Number(/\b(?:19|20)\d{2}\b/.exec(text)?.[0]) || null };
  }
  return null;
}

/**
 * Whether the heads leave open what a column is: two of one meaning, or a second row of heads under the first, as
 * merged cells make them.
 */
function unclearHeads(columns: readonly ColumnIn[], under: readonly CellIn[], site: Site): boolean {
  const seen = new Set<string>();
  for (const { head, index, meaning } of columns) {
    const twice = index > 0 && head !== '' && columns[index - 1]?.head === head;
    if (twice && meaningOf(head, site).is !== 'unused') return true;
    if (!['date', 'weight', 'volume', 'source', 'wide-weight', 'count'].includes(meaning.is)) continue;
    const { unit: _, ...what } = meaning as Meaning & { unit?: unknown };
    const key = JSON.stringify(what);
    if (seen.has(key)) return true;
    seen.add(key);
  }
  const filled = under.filter((cell) => cell !== null && cell !== '');
  const words = filled.filter((cell) => typeof cell === 'string' && !/\d/.test(cell)) as string[];
  const named = words.filter((word) => !['unused', 'note'].includes(meaningOf(word, site).is));
  return words.length === filled.length && named.length >= 2;
}

/** The row that names the columns: the first of the top rows with a date and something measured. */
export function headRow(
  rows: readonly CellIn[][],
  site: Site,
): { row: number; columns: ColumnIn[] } | 'unclear' | null {
  for (const [row, cells] of rows.slice(0, 20).entries()) {
    // A merged head repeats itself in each column that it spans: it names them all and so none.
    const columns = cells.map((cell, index): ColumnIn => {
      const head = typeof cell === 'string' ? cell : '';
      const twice = index > 0 && head !== '' && cells[index - 1] === cell;
      return { index, head, meaning: twice ? { is: 'unused' } : meaningOf(head, site) };
    });
    const is = new Set(columns.map(({ meaning }) => meaning.is));
    const measured = ['weight', 'volume', 'temperature', 'wide-weight', 'wide-temperature'] as const;
    if (!is.has('date') || !measured.some((each) => is.has(each))) continue;
    return unclearHeads(columns, rows[row + 1] ?? [], site) ? 'unclear' : { row, columns };
  }
  return null;
}
