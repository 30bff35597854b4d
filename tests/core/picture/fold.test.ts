import { describe, expect, test } from 'vitest';
import { batchAt, dayOf, settingAt } from '#core';
import { Site } from '#records';
import { Book, cart, chips, reading, site } from './book.ts';

describe('what comes in', () => {
  test('net, estimated and pending are kept apart', () => {
    const book = new Book();
    book.log('2026-05-04T08:00', cart(66.5, { source: 'cafe' }));
    book.log('2026-05-04T08:10', {
      kind: 'weigh-in',
      material: 'food-scraps',
      container: 'cart',
      source: 'cafe',
    });
    book.log('2026-05-04T08:20', cart(12, { container: 'bucket', source: 'cafe' }));
    const amount = dayOf(book.picture(), '2026-05-04')!.intake['food-scraps']!.cafe!;
    expect(amount).toMatchObject({ kg: 51, litres: 240, loads: 3, pending: 1 });
    expect(amount.estimatedKg).toBeCloseTo((240 * 3.8 * 0.45359237) / 3.785411784, 6);
    expect(book.picture().pending).toMatchObject([{ entry: 3, container: 'bucket', kg: 12 }]);
  });

  test('an empty weight that is told completes what waited, on the day it was weighed', () => {
    const book = new Book();
    book.log('2026-05-04T08:00', cart(12, { container: 'bucket' }));
    book.log('2026-05-06T08:00', { kind: 'setting', name: 'tare:bucket', value: 0.9 });
    const picture = book.picture();
    expect(picture.pending).toEqual([]);
    expect(dayOf(picture, '2026-05-04')!.intake['food-scraps']!['']).toMatchObject({ kg: 11.1, pending: 0 });
    expect(picture.drums.drum!.loads).toMatchObject([{ entry: 1, kg: 11.1 }]);
    expect(picture.mixLoads).toMatchObject([{ entry: 1, kg: 11.1, localDate: '2026-05-04' }]);
  });

  test('an empty weight above the gross that waited counts nothing', () => {
    const book = new Book();
    book.log('2026-05-04T08:00', cart(12, { container: 'tub' }));
    book.log('2026-05-04T09:00', { kind: 'setting', name: 'tare:tub', value: 14 });
    expect(book.picture().pending).toHaveLength(1);
    expect(dayOf(book.picture(), '2026-05-04')!.intake['food-scraps']!['']!.kg).toBe(0);
  });

  test('a new empty weight changes no old net, and each labelled container has its own', () => {
    const book = new Book();
    book.log('2026-05-04T08:00', cart(60));
    book.log('2026-05-05T08:00', { kind: 'setting', name: 'tare:cart', value: 20 });
    book.log('2026-05-05T08:01', { kind: 'setting', name: 'tare:cart 5', value: 18 });
    book.log('2026-05-05T09:00', cart(60));
    book.log('2026-05-05T09:01', cart(60, { label: '5' }));
    const picture = book.picture();
    expect(dayOf(picture, '2026-05-04')!.intake['food-scraps']!['']!.kg).toBe(44.5);
    expect(dayOf(picture, '2026-05-05')!.intake['food-scraps']!['']!.kg).toBe(40 + 42);
  });

  test('held and voided lines count nothing; held ones are listed', () => {
    const book = new Book();
    const doubt = { record: { kind: 'weigh-in', kg: 665 }, why: 'too-heavy' as const, choices: [] };
    book.log('2026-05-04T08:00', cart(665), { held: { why: 'too-heavy', choices: [], doubt } });
    const second = book.log('2026-05-04T08:05', cart(58.2));
    book.undo(second, '2026-05-04T08:06');
    book.log('2026-05-04T08:07', cart(666), { held: { why: 'too-heavy', choices: [], doubt } });
    const picture = book.picture();
    expect(picture.months).toEqual({});
    expect(picture.held).toMatchObject([{ entry: 1, kind: 'weigh-in', why: 'too-heavy' }, { entry: 4 }]);
  });

  test('what is usual for a container is learned as typed, and a full one by its material', () => {
    const book = new Book();
    for (const kg of [60, 64, 68]) book.log('2026-05-04T08:00', cart(kg, { label: '5' }));
    const { weights, factors } = book.picture();
    expect(weights.cart).toEqual({ n: 3, meanKg: 64, m2: 32 });
    expect(weights['cart 5']).toEqual(weights.cart);
    expect(factors['cart|food-scraps']).toEqual({ n: 3, meanKg: 48.5, m2: 32 });
  });
});

describe('piles', () => {
  test('a batch keeps its history when it is turned into the next bay', () => {
    const book = new Book();
    book.log('2026-05-04T08:00', reading('bay 1', 61));
    book.log('2026-05-05T08:00', { kind: 'turning', pile: 'bay 1', movedTo: 'bay 2' });
    book.log('2026-05-06T08:00', reading('bay 2', 60));
    const picture = book.picture();
    expect(batchAt(picture, 'bay 1')).toBeNull();
    expect(picture.ceased['bay 1']).toEqual({ successor: 'bay 2', on: '2026-05-05' });
    expect(batchAt(picture, 'bay 2')!.readings.map(({ celsius }) => celsius)).toEqual([[61], [60]]);
    expect(batchAt(picture, 'bay 2')!.turns).toHaveLength(1);
  });

  test('a join stays proven only with the proof of both, and carries sources and a hold', () => {
    const book = new Book();
    for (const day of ['04', '05', '06']) book.log(`2026-05-${day}T08:00`, reading('pile A', 58));
    book.log('2026-05-06T09:00', cart(66.5, { place: 'pile B', source: 'cafe' }));
    book.log('2026-05-06T10:00', { kind: 'lab-result', place: 'pile A', analyte: 'salmonella', value: 4 });
    book.log('2026-05-07T08:00', { kind: 'pile', pile: 'pile A', event: 'joined', with: 'pile B' });
    const b = batchAt(book.picture(), 'pile B')!;
    expect(b.joinings).toMatchObject([
      { what: 'fresh', kg: 51, provenThen: false },
      { what: 'joined', from: 'pile A', provenThen: true },
    ]);
    expect(b.sources.cafe).toEqual({ from: '2026-05-06', to: '2026-05-06', kg: 51 });
    expect(b.hold).toMatchObject({ why: 'lab:salmonella' });
    expect(b.kin).toEqual(['pile A']);
  });

  test('a split inherits the readings and the proof', () => {
    const book = new Book();
    for (const day of ['04', '05', '06']) book.log(`2026-05-${day}T08:00`, reading('pile A', 55));
    book.log('2026-05-07T08:00', { kind: 'pile', pile: 'pile E', event: 'split', with: 'pile A' });
    const e = batchAt(book.picture(), 'pile E')!;
    expect(e.readings).toHaveLength(3);
    expect(e.joinings).toMatchObject([{ what: 'split-from', from: 'pile A', provenThen: true }]);
  });

  test('what is put onto a pile is fresh, unless it was proven', () => {
    const book = new Book();
    book.log('2026-05-04T07:00', { kind: 'transfer', from: 'pile A', to: 'pile B', kg: 20 });
    for (const day of ['04', '05', '06']) book.log(`2026-05-${day}T08:00`, reading('pile A', 55));
    book.log('2026-05-07T08:00', { kind: 'transfer', from: 'pile A', to: 'pile B', kg: 30 });
    expect(batchAt(book.picture(), 'pile B')!.joinings).toMatchObject([
      { what: 'fresh', kg: 20, provenThen: false },
      { what: 'cover', kg: 30, provenThen: true },
    ]);
  });

  test('a name is used again after the pile is emptied', () => {
    const book = new Book();
    book.log('2026-05-04T08:00', reading('pile A', 61));
    book.log('2026-05-05T08:00', { kind: 'pile', pile: 'pile A', event: 'emptied' });
    expect(book.picture().places['pile A']).toBeUndefined();
    book.log('2026-05-06T08:00', { kind: 'pile', pile: 'pile A', event: 'started' });
    const picture = book.picture();
    expect(batchAt(picture, 'pile A')).toMatchObject({ readings: [], startedAt: { entry: 3 } });
    expect(picture.ceased['pile A']).toBeUndefined();
    expect(picture.batches['pile A']!.state).toBe('gone');
  });

  test('what leaves the drum is fresh in the pile, and its sources go along', () => {
    const book = new Book();
    book.log('2026-05-04T08:00', cart(65.5, { source: 'cafe' }));
    book.log('2026-05-05T08:00', cart(75.5, { source: 'north kitchen' }));
    book.log('2026-05-08T08:00', { kind: 'discharge', pile: 'pile C', kg: 70 });
    const picture = book.picture();
    expect(batchAt(picture, 'pile C')!.joinings).toMatchObject([{ what: 'fresh', from: 'drum', kg: 70 }]);
    // 50 kg that shrank for four days, and the rest from the younger load.
    const cafe = 50 * 0.967 ** 4;
    const { sources } = batchAt(picture, 'pile C')!;
    expect(sources.cafe!.kg).toBeCloseTo(cafe, 6);
    expect(sources['north kitchen']!.kg).toBeCloseTo(70 - cafe, 6);
    expect(picture.drums.drum!.loads).toMatchObject([{ source: 'north kitchen', localDate: '2026-05-05' }]);
  });
});

describe('the rest of the site', () => {
  test('settings hold from their day; the site file holds before', () => {
    const book = new Book();
    book.log('2026-05-04T08:00', { kind: 'setting', name: 'target', value: 30, from: '2026-06-01' });
    const picture = book.picture();
    expect(settingAt(picture, 'target', '2026-05-31')).toBe(20);
    expect(settingAt(picture, 'target', '2026-06-01')).toBe(30);
    expect(settingAt(picture, 'constructor', '2026-06-01')).toBeUndefined();
  });

  test('a problem ends by word, and a spill by being cleaned', () => {
    const book = new Book();
    book.log('2026-05-04T08:00', { kind: 'problem', topic: 'odour', place: 'pile B' });
    book.log('2026-05-04T08:01', { kind: 'problem', topic: 'odour', place: 'pile C' });
    book.log('2026-05-04T08:02', { kind: 'problem', topic: 'spill', place: 'floor' });
    book.log('2026-05-05T08:00', { kind: 'resolved', topic: 'odour', place: 'pile B', note: 'two barrows' });
    book.log('2026-05-05T08:01', { kind: 'chore', chore: 'clean-spill' });
    const picture = book.picture();
    expect(picture.problems.map(({ entry }) => entry)).toEqual([2]);
    expect(picture.ended).toMatchObject([
      { entry: 1, ended: { entry: 4, note: 'two barrows', by: 'resolved' } },
      { entry: 3, ended: { entry: 5, by: 'chore' } },
    ]);
  });

  test('a thermometer that fails its check puts what was read since the last good one in doubt', () => {
    const book = new Book();
    const check = (at: string, reads: number) =>
      book.log(at, { kind: 'chore', chore: 'check-thermometer', reads, against: 0 });
    check('2026-05-01T08:00', 0.5);
    check('2026-05-20T08:00', -3);
    expect(book.picture().chores['check-thermometer']!.doubt).toEqual({
      since: '2026-05-01T10:30:00.000Z',
      until: null,
    });
    check('2026-05-22T08:00', 0);
    expect(book.picture().chores['check-thermometer']!.doubt!.until).toBe('2026-05-22T10:30:00.000Z');
  });

  test('chips used are taken off what was delivered', () => {
    const book = new Book();
    book.log('2026-05-04T08:00', { kind: 'delivery', material: 'wood-chips', litres: 2000 });
    book.log('2026-05-04T09:00', chips(12));
    expect(book.picture().stock['wood-chips']).toMatchObject({ kg: 568, usedKg: 12 });
  });

  test('it does not grow with the years', () => {
    const size = (years: number): number => {
      const book = new Book(site);
      for (let day = 0; day < years * 365; day += 1) {
        const date = new Date(Date.UTC(2020, 0, 1 + day)).toISOString().slice(0, 10);
        book.log(`${date}T08:00`, cart(60, { place: 'pile A' }));
        book.log(`${date}T09:00`, reading('pile A', 50));
        book.log(`${date}T09:10`, reading('ambient', 9));
        book.log(`${date}T09:20`, { kind: 'weather', expects: 'rain' });
        book.log(`${date}T10:00`, { kind: 'duty-note', duty: `floor:${date}`, act: 'done' });
      }
      return JSON.stringify(book.picture()).length;
    };
    expect(size(2)).toBeLessThan(size(1.4) * 1.02);
  });

  test('a site file in full names its piles as places', () => {
    const other = Site.parse({ name: 'x', timeZone: 'UTC', piles: ['a', '2', 'bay 3', 'windrow 1'] });
    expect(Object.keys(new Book(other).picture().places)).toEqual(['pile A', 'pile 2', 'bay 3', 'windrow 1']);
  });
});
