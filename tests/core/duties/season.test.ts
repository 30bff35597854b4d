import { describe, expect, test } from 'vitest';
import {
  addDays,
  applyEntry,
  type Duty,
  daysBetween,
  dutiesNow,
  emptyPicture,
  instantOf,
  type Picture,
} from '#core';
import { Site } from '#records';
import { Book, cart, chips, reading, site, type Written } from '../picture/book.ts';
import { keys } from './today.ts';

/** A book that keeps its picture up to date line by line, as the program does. */
class Running {
  readonly book: Book;
  picture: Picture;

  constructor(of: Site) {
    this.book = new Book(of);
    this.picture = emptyPicture(of);
  }

  log(at: string, record: Written): void {
    this.book.log(at, record);
    this.picture = applyEntry(this.picture, this.book.entries.at(-1)!);
  }

  today(wall: string): Duty[] {
    return dutiesNow(this.picture, {
      at: instantOf(wall, this.book.site.timeZone),
      localDate: wall.slice(0, 10),
    });
  }
}

/** How hot a pile is so many days after it was closed: hot for three weeks, then down to the air. */
const celsiusAt = (days: number): number => Math.round(days < 21 ? 62 - days / 3 : Math.max(16, 62 - days));

/** What somebody who does a job logs. */
function doing(duty: Duty, closedOn: Record<string, string>, date: string): Written[] {
  const place = duty.place ?? '';
  switch (duty.kind) {
    case 'read-pile':
      return [reading(place, celsiusAt(closedOn[place] ? daysBetween(closedOn[place], date) : 5))];
    case 'read-drum':
      return [reading(place, 52)];
    case 'read-ambient':
      return [reading('ambient', 14)];
    case 'turn-pile':
      return [{ kind: 'turning', pile: place }];
    case 'cover-pile':
      return [{ kind: 'cover', pile: place, layer: 'tarp', on: true }];
    case 'discharge-drum':
      return [{ kind: 'discharge', pile: 'pile C', litres: 3000 }];
    case 'order-stock':
    case 'count-stock':
      return [{ kind: 'delivery', material: 'wood-chips', litres: 6000 }];
    case 'weigh-empty':
    case 'reweigh-empty': {
      const { container, label } = (duty.args.container ?? {}) as {
        container: string;
        label?: string | null;
      };
      return [{ kind: 'setting', name: `tare:${label ? `${container} ${label}` : container}`, value: 12 }];
    }
    case 'look-again':
      return [{ kind: 'resolved', entry: Number(duty.key.split(':')[1]) }];
    case 'sweep':
    case 'wash-lift':
    case 'wash-containers':
    case 'clean-tools':
    case 'check-scale':
    case 'check-thermometer':
    case 'check-fan':
    case 'check-stop-button':
      return [{ kind: 'chore', chore: duty.kind, ok: true }];
    case 'release-pile':
      return [{ kind: 'pile', pile: place, event: 'ready' }];
    case 'own-duty':
      return [{ kind: 'chore', chore: duty.key.slice('own:'.length) }];
    case 'ask-source':
      return [cart(40, { source: duty.key.slice('source:'.length) })];
    default:
      return [{ kind: 'duty-note', duty: duty.key, act: 'done' }];
  }
}

const FIRST = '2026-03-02';

/** What happens on the site whether or not anybody looks at the list. */
function life(day: number): Written[] {
  const lines: Written[] = [];
  if (day % 7 < 5 && (day < 60 || day > 69)) {
    lines.push(cart(55 + (day % 9), { source: 'cafe' }), chips(12));
    if (day % 2 === 0) lines.push(cart(60, { source: 'north kitchen', label: '7' }));
  }
  if (day === 0) {
    lines.push({ kind: 'delivery', material: 'wood-chips', litres: 3000 });
    lines.push({ kind: 'duty', name: 'check extinguishers', every: 'friday' });
    lines.push({ kind: 'duty', name: 'oil the hinges', every: '3 weeks' });
  }
  if (day === 20) lines.push(cart(30, { container: 'tub' }));
  if (day === 30) lines.push({ kind: 'pile', pile: 'pile C', event: 'full' });
  if (day === 31) lines.push({ kind: 'pile', pile: 'pile C', event: 'moved', to: 'pile D' });
  if (day === 40) lines.push({ kind: 'weather', expects: 'rain', when: addDays(FIRST, 41) });
  if (day === 50) lines.push({ kind: 'problem', topic: 'odour', place: 'pile C' });
  if (day === 58) {
    lines.push({
      kind: 'setting',
      name: 'closed',
      value: { from: addDays(FIRST, 60), to: addDays(FIRST, 69) },
    });
  }
  if (day === 90) lines.push({ kind: 'moisture', place: 'pile D', feel: 'right' });
  return lines;
}

describe.each([
  ['a drum that feeds piles', site],
  ['windrows without a drum', Site.parse({ ...site, name: 'Teal Bank', drums: [], ruleSet: 'windrow-15d' })],
])('a season at %s', (_, of) => {
  const DAYS = 150;

  test('a crew that does what the list says has nothing left in the evening, and nothing is there twice', () => {
    const site = new Running(of);
    const closedOn: Record<string, string> = { 'pile D': addDays(FIRST, 30) };
    const seen = new Map<string, number>();
    for (let day = 0; day < DAYS; day += 1) {
      const date = addDays(FIRST, day);
      for (const record of life(day)) site.log(`${date}T08:00`, record);
      for (let round = 0; round < 4; round += 1) {
        const duties = site.today(`${date}T1${round}:00`);
        expect(new Set(duties.map(({ key }) => key)).size).toBe(duties.length);
        for (const duty of duties) {
          if (round === 0) seen.set(duty.kind, (seen.get(duty.kind) ?? 0) + 1);
          if (duty.heldBack) continue;
          for (const record of doing(duty, closedOn, date)) site.log(`${date}T1${round}:30`, record);
        }
      }
      expect({ date, left: keys(site.today(`${date}T20:00`).filter((duty) => !duty.heldBack)) }).toEqual({
        date,
        left: [],
      });
    }
    for (const kind of [
      'read-pile',
      'turn-pile',
      'cover-pile',
      'sweep',
      'weigh-empty',
      'own-duty',
      'look-again',
    ]) {
      expect(seen.has(kind), `${kind} was due at some time`).toBe(true);
    }
    // A Friday a week, whatever else happens.
    expect(seen.get('own-duty')).toBeGreaterThanOrEqual(Math.floor(DAYS / 7));
  });

  test('a crew that does nothing is not buried: the list stays short and names each thing once', () => {
    const site = new Running(of);
    for (let day = 0; day < DAYS; day += 1) {
      const date = addDays(FIRST, day);
      for (const record of life(day)) site.log(`${date}T08:00`, record);
      const duties = site.today(`${date}T12:00`);
      expect(new Set(duties.map(({ key }) => key)).size).toBe(duties.length);
      expect(duties.length).toBeLessThan(25);
      for (const { by, kind } of duties) {
        // Only what is foretold or runs out lies ahead.
        if (!['cover-pile', 'discharge-drum', 'order-stock', 'season-chips', 'season-exit'].includes(kind)) {
          expect(by <= date).toBe(true);
        }
      }
    }
  });
});
