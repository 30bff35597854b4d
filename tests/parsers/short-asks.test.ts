import { describe, expect, test } from 'vitest';
import { contextForSite, isComplaint, isJam, readMessage, smellOf } from '#parsers';
import { Site } from '#records';

const site = Site.parse({
  name: 'Marl Yard',
  timeZone: 'Europe/London',
  languages: ['en', 'fr', 'es'],
  drums: [{ name: 'drum', litres: 5000 }],
  piles: ['A', 'B', 'C', '3', 'bay 2'],
  containers: { barrow: { tareKg: 14, litres: 85 }, bucket: { tareKg: 1, litres: 20 } },
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
    ['what is in the drum', { request: 'status', place: 'drum' }],
    ["what's in the drum?", { request: 'status', place: 'drum' }],
    ['when is the next discharge?', { request: 'status', place: 'drum' }],
    ['how long has the oldest been in?', { request: 'status', place: 'drum' }],
    ["qu'est-ce qu'il y a dans le tambour ?", { request: 'status', place: 'drum' }],
    ['quand est la prochaine vidange ?', { request: 'status', place: 'drum' }],
    ['¿qué hay en el tambor?', { request: 'status', place: 'drum' }],
    ['¿cuándo toca la próxima descarga?', { request: 'status', place: 'drum' }],
    ['set call for the drum Sam 555 0100', { request: 'setting', name: 'drum-call', value: 'Sam 555 0100' }],
    ['set drum call the duty Foreman', { request: 'setting', name: 'drum-call', value: 'the duty Foreman' }],
    ['régler appel tambour Léa 06 12', { request: 'setting', name: 'drum-call', value: 'Léa 06 12' }],
    ['fijar llamada del tambor a Núria 555', { request: 'setting', name: 'drum-call', value: 'Núria 555' }],
    ['set drum call after 4 hours', { request: 'setting', name: 'drum-call-hours', value: 4 }],
    ['régler appel tambour après 3 heures', { request: 'setting', name: 'drum-call-hours', value: 3 }],
    ['fijar llamada del tambor tras 2 horas', { request: 'setting', name: 'drum-call-hours', value: 2 }],
    ['set mix moisture 50-58%', { request: 'setting', name: 'mix-water', value: { low: 50, high: 58 } }],
    [
      'régler humidité du mélange 50 à 58 %',
      { request: 'setting', name: 'mix-water', value: { low: 50, high: 58 } },
    ],
    [
      'fijar humedad de la mezcla 50 a 58 %',
      { request: 'setting', name: 'mix-water', value: { low: 50, high: 58 } },
    ],
    ['set C:N 25 to 40', { request: 'setting', name: 'mix-cn', value: { low: 25, high: 40 } }],
    ['set turn at 68 C', { request: 'setting', name: 'band:turn-soon', value: 68 }],
    ['set too hot 160 F', { request: 'setting', name: 'band:act-today', value: 71 }],
    ['set chips carbon 49%', { request: 'setting', name: 'carbon:wood-chips', value: 49 }],
    ['set chips density 250 kg/m3', { request: 'setting', name: 'density:wood-chips', value: 250 }],
    ['lab chips moisture 28 %', { request: 'setting', name: 'moisture:wood-chips', value: 28 }],
    ['lab: food scraps nitrogen 3.4 %', { request: 'setting', name: 'nitrogen:food-scraps', value: 3.4 }],
    [
      'set food scraps nitrogen 0.8 % fresh',
      { request: 'setting', name: 'nitrogen:food-scraps', value: { fresh: 0.8 } },
    ],
    [
      'labo : azote des copeaux 0,2 % du sec',
      { request: 'setting', name: 'nitrogen:wood-chips', value: 0.2 },
    ],
    [
      'laboratorio: humedad de las astillas 31 %',
      { request: 'setting', name: 'moisture:wood-chips', value: 31 },
    ],
    ['set chips C:N 450', { request: 'setting', name: 'cn:wood-chips', value: 450 }],
    ['set rule set organic-vessel-3d', { request: 'setting', name: 'rule-set', value: 'organic-vessel-3d' }],
    ['may compostable cups go in?', { request: 'accepts', what: 'compostable cups' }],
    ['are compostable cups ok?', { request: 'accepts', what: 'compostable cups' }],
    ['may plastic cutlery go in?', { request: 'accepts', what: 'plastic cutlery' }],
    ['what may go in?', { request: 'accepts', what: '' }],
    ['who do we call when the drum stops?', { request: 'status', place: 'drum', about: 'call' }],
    ['set aeration breathing', { request: 'setting', name: 'aeration', value: 'breathing' }],
    ['set depth 12 to 24 in', { request: 'setting', name: 'depth', value: { fromCm: 30.48, toCm: 60.96 } }],
  ])('%s', (text, request) => {
    const { said: _, ...got } = read(text).requests[0] ?? { said: '' };
    expect(got).toEqual(request);
    expect(read(text)).toMatchObject({ records: [], doubts: [], unread: [] });
  });

  // (full − empty) ÷ litres, Cooperband 2002: (10.4 − 1) ÷ 0.02 m³, (22 lb − 1 kg) ÷ 0.02 m³; 900 lb/yd³ by 0.593.
  test.each([
    ['drum density 520 kg/m3', 'drum', 520],
    ['density of the mix 900 lb/yd3', 'drum', 533.9],
    ['bucket of drum mix 10.4 kg', 'drum', 470],
    ['bucket of mix weighs 22 lb', 'drum', 449],
    ['seau de mélange pèse 10,4 kg', 'drum', 470],
    ['essai au seau du mélange 10,4 kg', 'drum', 470],
    ['densité du mélange 0,5 kg/L', 'drum', 500],
    ['cubo de mezcla 10,4 kg', 'drum', 470],
    ['densidad de la mezcla 480 kg/m3', 'drum', 480],
    ['bay 2 density 610 kg/m3', 'bay 2', 610],
  ])('%s', (text, place, value) => {
    expect(read(text).records).toMatchObject([
      { kind: 'lab-result', place, analyte: 'bulk-density', value, unit: 'kg/m3', said: text },
    ]);
    expect(read(text).unread).toEqual([]);
  });

  test.each([
    ['squeezed the drum mix, just right', { feel: 'right' }],
    ['squeezed the mix: too wet', { feel: 'wet' }],
    ['the mix is too wet', { feel: 'wet' }],
    ['mix moisture 62%', { percent: 62 }],
    ['le mélange est trop mouillé', { feel: 'wet' }],
    ['humidité du mélange 62 %', { percent: 62 }],
    ['apreté la mezcla del tambor, justo bien', { feel: 'right' }],
    ['humedad de la mezcla 62 %', { percent: 62 }],
  ])('%s is said of the drum', (text, test) => {
    expect(read(text)).toMatchObject({
      records: [{ kind: 'moisture', place: 'drum', said: text, ...test }],
      requests: [],
      doubts: [],
      unread: [],
    });
  });

  test.each(["how's the mix?", 'mix', 'is the mix too wet?', 'mix tape is wet'])('%s is no test', (text) => {
    expect(read(text).records).toEqual([]);
  });

  test.each([
    ['lab says salmonella in C', 'pile C'],
    ['le labo dit salmonella dans B', 'pile B'],
    ['el laboratorio dice salmonella en A', 'pile A'],
    ['labo : salmonelle dans A', 'pile A'],
    ['salmonelles trouvées dans le tas B', 'pile B'],
    ['laboratorio: salmonela en C', 'pile C'],
    ['lab: salmonella positive A', 'pile A'],
  ])('%s', (text, place) => {
    expect(read(text).records).toMatchObject([{ kind: 'lab-result', place, analyte: 'Salmonella' }]);
    expect(read(text).records[0]).not.toHaveProperty('value');
  });

  test.each([
    'lab says no salmonella in A',
    "lab didn't find any salmonella in A",
    'labo: pas de salmonelle dans A',
    "le labo n'a pas trouvé de salmonelle dans A",
    'el laboratorio no encontró salmonela en A',
  ])('what was not found is said so: %s', (text) =>
    expect(read(text).records).toMatchObject([
      { kind: 'lab-result', place: 'pile A', analyte: 'Salmonella', qualifier: 'not-detected' },
    ]),
  );

  test.each([
    ['set lab standard CCME A', 'lab-standard', 'ccme-a'],
    ['set do not open 75', 'band:do-not-open', 75],
    ['set probe depth 30-60 cm', 'depth', { fromCm: 30, toCm: 60 }],
  ])('%s', (text, name, value) =>
    expect(read(text).requests).toMatchObject([{ request: 'setting', name, value }]),
  );

  test.each([
    ['split B from A', 'pile B', 'pile A'],
    ['split A into D', 'pile D', 'pile A'],
    ['split D off A', 'pile D', 'pile A'],
    ['split half of A to D', 'pile D', 'pile A'],
    ['split A into A and D', 'pile D', 'pile A'],
    ['on a séparé le tas D du tas A', 'pile D', 'pile A'],
    ['separé la D de la A', 'pile D', 'pile A'],
    ['split A, half of it is pile 5', 'pile 5', 'pile A'],
    ['split A in two and half becomes D', 'pile D', 'pile A'],
    ['on a divisé A, la moitié est le tas 5', 'pile 5', 'pile A'],
    ['partimos la pila A en dos, la mitad pasa a ser D', 'pile D', 'pile A'],
  ])('%s: the new one, and the one it came from', (text, pile, old) => {
    const { said: _, ...record } = read(text).records[0] ?? { said: '' };
    expect(record).toEqual({ kind: 'pile', pile, event: 'split', with: old });
    expect(read(text)).toMatchObject({ requests: [], doubts: [], unread: [] });
  });

  test.each([
    'E?',
    'salmonella in C?',
    'split the bill with B',
    'split the bill with A, half is mine',
    '2 barrows from A to the new bay',
    'a?',
    'coffee?',
    'can we give up?',
    'can we go?',
    'hold on',
    'lab says hi',
    'set the table',
    'set a call for 10 with Sam',
    'bucket of paint 10 kg?',
    'what is in the box?',
    'chips nitrogen?',
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
