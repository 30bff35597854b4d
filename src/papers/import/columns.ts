import type { Site } from '#records';
import type { CellIn } from './read-file.ts';

/** What a column is taken for. `wide` columns hold a number for the one thing that their head names. */
export type Meaning =
  | { is: 'date' | 'source' | 'material' | 'container' | 'count' | 'place' | 'depth' | 'note' | 'unused' }
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

/** The row that names the columns: the first of the top rows with a date and something measured. */
export function headRow(rows: readonly CellIn[][], site: Site): { row: number; columns: ColumnIn[] } | null {
  for (const [row, cells] of rows.slice(0, 20).entries()) {
    // A merged head repeats itself in each column that it spans: it names them all and so none.
    const columns = cells.map((cell, index): ColumnIn => {
      const head = typeof cell === 'string' ? cell : '';
      const twice = index > 0 && head !== '' && cells[index - 1] === cell;
      return { index, head, meaning: twice ? { is: 'unused' } : meaningOf(head, site) };
    });
    const is = new Set(columns.map(({ meaning }) => meaning.is));
    const measured = ['weight', 'volume', 'temperature', 'wide-weight', 'wide-temperature'] as const;
    if (is.has('date') && measured.some((each) => is.has(each))) return { row, columns };
  }
  return null;
}
