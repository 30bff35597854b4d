import fc from 'fast-check';
import { addDays } from '#core';
import type { Written } from './book.ts';

const place = fc.constantFrom('pile A', 'pile B', 'pile C', 'bay 1', 'bay 2', 'pile E');
const source = fc.constantFrom(null, 'north kitchen', 'cafe', 'constructor');
const kg = fc.integer({ min: 200, max: 900 }).map((tenths) => tenths / 10);

/** Any line that a book can hold, in a made-up season at the site of `book.ts`. */
const record: fc.Arbitrary<Written> = fc.oneof(
  fc.record({
    kind: fc.constant('weigh-in'),
    material: fc.constantFrom('food-scraps', 'wood-chips', 'water', 'pumpkins'),
    container: fc.constantFrom(null, 'cart', 'bucket', 'tub'),
    label: fc.constantFrom(null, '5'),
    kg: fc.option(kg),
    litres: fc.option(fc.integer({ min: 1, max: 400 })),
    source,
    place: fc.constantFrom(null, 'drum', 'pile A', 'bay 1'),
  }),
  fc.record({
    kind: fc.constant('temperature'),
    place: fc.oneof(place, fc.constantFrom('drum', 'exit', 'ambient', 'floor')),
    celsius: fc.array(fc.integer({ min: 5, max: 75 }), { minLength: 1, maxLength: 3 }),
    depthCm: fc.constantFrom(null, 45),
  }),
  fc.record({ kind: fc.constant('turning'), pile: place, movedTo: fc.option(place) }),
  fc.record({
    kind: fc.constant('pile'),
    pile: place,
    event: fc.constantFrom('started', 'full', 'finished', 'ready', 'emptied', 'joined', 'split', 'moved'),
    with: fc.option(place),
  }),
  fc.record({ kind: fc.constant('moisture'), place, feel: fc.constantFrom('dry', 'wet') }),
  fc.record({
    kind: fc.constant('cover'),
    pile: place,
    layer: fc.constantFrom('mature-compost', 'tarp'),
    on: fc.boolean(),
  }),
  fc.record({
    kind: fc.constant('discharge'),
    pile: fc.option(place),
    kg: fc.option(kg),
    litres: fc.constantFrom(null, 900),
  }),
  fc.record({ kind: fc.constant('transfer'), from: place, to: place, kg }),
  fc.record({ kind: fc.constant('removal'), pile: place, litres: fc.constant(300) }),
  fc.record({
    kind: fc.constant('setting'),
    name: fc.constantFrom('tare:cart', 'tare:bucket', 'tare:cart 5', 'target'),
    value: fc.integer({ min: 1, max: 19 }),
  }),
  fc.record({
    kind: fc.constant('problem'),
    topic: fc.constantFrom('odour', 'spill', 'flies'),
    place: fc.option(place),
  }),
  fc.record({ kind: fc.constant('resolved'), topic: fc.constantFrom('odour', 'flies') }),
  fc.record({
    kind: fc.constant('chore'),
    chore: fc.constantFrom('sweep', 'clean-spill', 'check-thermometer'),
    reads: fc.option(fc.integer({ min: -4, max: 4 })),
    against: fc.constant(0),
  }),
  fc.record({
    kind: fc.constant('delivery'),
    material: fc.constant('wood-chips'),
    litres: fc.constant(2000),
  }),
  fc.record({
    kind: fc.constant('level'),
    place: fc.constantFrom('drum', 'pile A'),
    fraction: fc.constantFrom(0.5, 0.75),
  }),
  fc.record({ kind: fc.constant('hours'), hours: fc.constant(2), people: fc.constantFrom(null, 3) }),
  fc.record({ kind: fc.constant('weather'), expects: fc.constantFrom('rain', 'frost') }),
  fc.record({
    kind: fc.constant('rejected-load'),
    source,
    count: fc.constantFrom(1, 2),
  }),
);

/** A line with the wall time at which it happened, somewhere in half a year. */
export const line = fc.record({
  record,
  at: fc
    .tuple(fc.integer({ min: 0, max: 180 }), fc.integer({ min: 0, max: 23 }))
    .map(([day, hour]) => `${addDays('2026-02-01', day)}T${String(hour).padStart(2, '0')}:10`),
});
