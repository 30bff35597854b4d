import { describe, expect, test } from 'vitest';
import { contextForSite, isComplaint, isJam, readMessage, smellOf } from '#parsers';
import { Site } from '#records';

const site = Site.parse({
  name: 'Marl Yard',
  timeZone: 'Europe/London',
  languages: ['en', 'fr', 'es'],
  drums: [{ name: 'drum', litres: 5000 }],
  piles: ['A', 'B', 'C', '3', 'bay 2'],
  containers: { barrow: { tareKg: 14, litres: 85 } },
});
const context = contextForSite(site, '2026-05-12T10:00');
const read = (text: string) => readMessage(text, context);

describe('a short question is a message of its own', () => {
  test.each([
    ['B?', { request: 'status', place: 'pile B' }],
    ['pile 3 ?', { request: 'status', place: 'pile 3' }],
    ['bay 2?', { request: 'status', place: 'bay 2' }],
    ['tas C ?', { request: 'status', place: 'pile C' }],
    ['drum?', { request: 'status', place: 'drum' }],
    ['¿tambor?', { request: 'status', place: 'drum' }],
    ['chips?', { request: 'stock', material: 'wood-chips' }],
    ['how many chips are left?', { request: 'stock', material: 'wood-chips' }],
    ['can we give C away?', { request: 'trace', place: 'pile C' }],
    ['who got compost from B?', { request: 'trace', place: 'pile B' }],
    ['on peut donner le tas C ?', { request: 'trace', place: 'pile C' }],
    ['¿podemos regalar la pila A?', { request: 'trace', place: 'pile A' }],
    ['hold C: smells odd', { request: 'setting', name: 'hold:pile C', value: 'smells odd' }],
    ['lift hold on C', { request: 'setting', name: 'hold:pile C', value: false }],
    ['set drum days 5', { request: 'setting', name: 'drum-days', value: 5 }],
    ['set drum interval 40-60', { request: 'setting', name: 'drum-interval', value: { low: 40, high: 60 } }],
    ['set aeration breathing', { request: 'setting', name: 'aeration', value: 'breathing' }],
    ['set depth 12 to 24 in', { request: 'setting', name: 'depth', value: { fromCm: 30.48, toCm: 60.96 } }],
  ])('%s', (text, request) => {
    const { said: _, ...got } = read(text).requests[0] ?? { said: '' };
    expect(got).toEqual(request);
    expect(read(text)).toMatchObject({ records: [], doubts: [], unread: [] });
  });

  test.each([
    ['lab says salmonella in C', 'pile C'],
    ['le labo dit salmonella dans B', 'pile B'],
    ['el laboratorio dice salmonella en A', 'pile A'],
  ])('%s', (text, place) => {
    expect(read(text).records).toMatchObject([{ kind: 'lab-result', place, analyte: 'Salmonella' }]);
    expect(read(text).records[0]).not.toHaveProperty('value');
  });

  test.each([
    'E?',
    'a?',
    'coffee?',
    'can we give up?',
    'can we go?',
    'hold on',
    'lab says hi',
    'set the table',
    'who got coffee?',
  ])('talk is left alone: %s', (text) =>
    expect(read(text)).toMatchObject({ records: [], requests: [], doubts: [] }),
  );

  test('danger is read before it', () => {
    expect(read('is there smoke on B?').danger.length + read('smoke on B').danger.length).toBeGreaterThan(0);
  });
});

describe('what ended a problem', () => {
  const book = {
    weights: {},
    lastReadings: {},
    openProblems: [{ entry: 4, topic: 'odour' as const, place: 'pile B' }],
    lastOfSender: null,
    openQuestion: null,
    listed: [],
  };
  test('what was done is its note, and no reading of the pile', () => {
    const got = readMessage('smell gone, added 2 barrows', { ...context, book });
    expect(got.records).toEqual([
      {
        kind: 'resolved',
        topic: 'odour',
        place: 'pile B',
        note: 'added 2 barrows',
        said: 'smell gone, added 2 barrows',
      },
    ]);
    expect(got.unread).toEqual([]);
  });
  test('a deed that is an entry by itself is one', () => {
    const got = readMessage('smell gone from B, turned B', { ...context, book });
    expect(got.records).toMatchObject([
      { kind: 'resolved', note: 'turned B' },
      { kind: 'turning', pile: 'pile B' },
    ]);
  });
  test('with nothing open there is nothing to end', () => {
    expect(read('smell gone, added 2 barrows').records).toEqual([]);
  });
});

describe('words of trouble', () => {
  test.each([
    ['B smells of ammonia', 'ammonia'],
    ['ça sent l’ammoniac', 'ammonia'],
    ['huele a huevos podridos', 'rotten'],
    ['B smells', null],
  ])('%s', (said, kind) => expect(smellOf(said)).toBe(kind));
  test('a jam holds with force', () => {
    expect(isJam('drum jammed')).toBe(true);
    expect(isJam('tambor atascado')).toBe(true);
    expect(isJam('drum stopped')).toBe(false);
  });
  test('a complaint, whoever it was', () => {
    expect(isComplaint('Mrs Oakham complained about the smell')).toBe(true);
    expect(isComplaint('Mme Roche s’est plainte de l’odeur')).toBe(true);
    expect(isComplaint('nobody complained about the smell')).toBe(false);
    expect(isComplaint('he complains about his knee')).toBe(false);
  });
});
