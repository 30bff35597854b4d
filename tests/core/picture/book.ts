import { applyEntry, emptyPicture, instantOf, localDateOf, type Picture } from '#core';
import { BookRecord, type Entry, Site } from '#records';

/** A made-up site with a drum, four piles and two bays. */
export const site = Site.parse({
  name: 'Larch Hollow',
  timeZone: 'America/St_Johns',
  containers: {
    cart: { tareKg: 15.5, litres: 240, holds: 'food-scraps' },
    bucket: { litres: 20 },
    barrow: { tareKg: 14, litres: 85 },
  },
  drums: [{ name: 'drum', litres: 5000 }],
  piles: ['A', 'B', 'C', 'bay 1', 'bay 2'],
  sources: ['north kitchen', 'cafe'],
  targetTonnesPerYear: 20,
  ruleSet: 'vessel-3d',
});

export type Written = Record<string, unknown> & { kind: string };
type More = Partial<Omit<Entry, 'record'>>;

/** Lines of a book written one after another: `at` is the site's wall time, the record whatever its schema lets in. */
export class Book {
  readonly entries: Entry[] = [];
  readonly site: Site;

  constructor(of: Site = site) {
    this.site = of;
  }

  /** Writes one line and gives its number. */
  log(at: string, record: Written, more: More = {}): number {
    const happenedAt = instantOf(at, this.site.timeZone);
    const number = this.entries.length + 1;
    this.entries.push({
      number,
      happenedAt,
      localDate: localDateOf(happenedAt, this.site.timeZone),
      receivedAt: happenedAt,
      person: 1,
      record: BookRecord.parse(record),
      typed: null,
      assumed: [],
      held: null,
      voids: [],
      voidedBy: null,
      pictures: 0,
      ...more,
    } as Entry);
    return number;
  }

  /** Takes a line back, as `undo` does. */
  undo(number: number, at: string): void {
    const by = this.log(at, { kind: 'void', voids: number, why: 'undo' });
    this.entries[number - 1] = { ...this.entries[number - 1]!, voidedBy: by };
  }

  /** Lines in the order in which the picture takes them: by moment, then number. */
  inOrder(): Entry[] {
    return [...this.entries].sort((a, b) =>
      a.happenedAt < b.happenedAt ? -1 : a.happenedAt > b.happenedAt ? 1 : a.number - b.number,
    );
  }

  picture(): Picture {
    return this.inOrder().reduce(applyEntry, emptyPicture(this.site));
  }
}

export const cart = (kg: number, more: Record<string, unknown> = {}): Written => ({
  kind: 'weigh-in',
  material: 'food-scraps',
  container: 'cart',
  kg,
  basis: 'gross',
  ...more,
});
export const chips = (kg: number, more: Record<string, unknown> = {}): Written => ({
  kind: 'weigh-in',
  material: 'wood-chips',
  kg,
  basis: 'net',
  ...more,
});
export const reading = (place: string, ...celsius: number[]): Written => ({
  kind: 'temperature',
  place,
  celsius,
  depthCm: 45,
});
