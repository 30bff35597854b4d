// What a simulated crew knows to be true, what the book says, and how the two differ.
import { lineSeen } from '#assistant';
import type { OpenedBook } from '#logbook';

/** One line as the simulator knows it must stand in the book. */
export type Truth = {
  by: string | null;
  what: string;
  /** The site's local date. */
  on: string;
  /** UTC to the minute; null where only a day was said. */
  at: string | null;
  net: number | null;
  /** The messenger's ids of the pictures kept with it. */
  pictures: readonly string[];
  voided: boolean;
  held: boolean;
};

const TARE_KG = 15.5;
/** What a cart of so much holds: the same sum that whoever weighs it does in the head. */
export const netOf = (grossKg: number, tareKg = TARE_KG): number =>
  Math.round((grossKg - tareKg) * 100) / 100;

/** Mulberry32: a small public-domain generator, so that a season that fails can be run again. */
export const seeded = (seed: number) => {
  let state = seed;
  return (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
};

/** The lines of a site as the book shows them, in the simulator's words. */
export const linesOf = (book: OpenedBook, site: number): Truth[] => {
  const seen = lineSeen(book, site);
  return [...book.entriesWalk(site)]
    .filter((entry) => entry.record.kind !== 'void')
    .map((entry): Truth => {
      const line = seen(entry);
      const record = entry.record as Record<string, unknown>;
      const what =
        record.kind === 'temperature'
          ? `${record.place} ${record.celsius}`
          : record.kind === 'setting'
            ? `${record.name} ${record.value}`
            : `${record.material} ${record.kg} ${record.basis}`;
      return {
        by: line.by,
        what,
        on: line.localDate,
        at: String(record.when ?? '').length === 10 ? null : line.when.slice(0, 16),
        net: line.netKg === null ? null : Math.round(line.netKg * 100) / 100,
        pictures: book.picturesOf(site, line.entry),
        voided: line.voidedBy !== null,
        held: line.held !== false,
      };
    });
};

/** What is in one list and not in the other, however often. */
export const differences = (truths: readonly Truth[], said: readonly Truth[]) => {
  const texts = (list: readonly Truth[]): string[] => list.map((line) => JSON.stringify(line));
  const without = (list: string[], other: string[]): string[] => {
    const left = [...other];
    return list.filter((line) => {
      const at = left.indexOf(line);
      if (at >= 0) left.splice(at, 1);
      return at < 0;
    });
  };
  return {
    missing: without(texts(truths), texts(said)),
    unexpected: without(texts(said), texts(truths)),
  };
};

/** The words of three crews' languages for what the season says. */
export type Tongue = {
  cart: string;
  chips: string;
  pile: string;
  yesterday: string;
  net: string;
  wasNet: string;
  wasYesterday: string;
  undo: string;
  same: string;
  another: string;
};
export const TONGUES: readonly Tongue[] = [
  {
    cart: 'cart',
    chips: 'chips',
    pile: 'pile',
    yesterday: 'yesterday',
    net: 'net',
    wasNet: 'was net',
    wasYesterday: 'yesterday',
    undo: 'undo',
    same: 'same',
    another: 'another',
  },
  {
    cart: 'bac',
    chips: 'copeaux',
    pile: 'tas',
    yesterday: 'hier',
    net: 'net',
    wasNet: "c'était net",
    wasYesterday: "c'était hier",
    undo: 'annule',
    same: 'même',
    another: 'autre',
  },
  {
    cart: 'carrito',
    chips: 'astillas',
    pile: 'pila',
    yesterday: 'ayer',
    net: 'neto',
    wasNet: 'era neto',
    wasYesterday: 'fue ayer',
    undo: 'deshacer',
    same: 'el mismo',
    another: 'otro',
  },
];
/** What a button to take back may be called, in whatever language the reply is. */
export const UNDO = /^(?:Undo|Annuler|Deshacer)/;
