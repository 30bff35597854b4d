import { describe, expect, test } from 'vitest';
import { contextForSite, readMessage } from '#parsers';
import { Site } from '#records';

const given = {
  name: 'Marl Yard',
  timeZone: 'Europe/London',
  languages: ['en', 'fr', 'es'],
  containers: { barrow: { tareKg: 14, litres: 85 }, bucket: { tareKg: 1, litres: 20 } },
};
const at = (site: unknown) => {
  const context = contextForSite(Site.parse(site), '2026-05-12T10:00');
  return (text: string) => readMessage(text, context);
};
const drum = at({ ...given, drums: [{ name: 'drum', litres: 5000 }], piles: ['A', 'B'] });
const bays = at({ ...given, piles: ['bay 1', 'bay 2'] });
const without = ({ said: _said, ...rest }: Record<string, unknown>) => rest;
const records = (got: ReturnType<typeof drum>) =>
  got.doubts.length + got.unread.length > 0 ? null : got.records.map((one) => without(one));
const requests = (got: ReturnType<typeof drum>) =>
  got.records.length + got.doubts.length + got.unread.length > 0
    ? null
    : got.requests.map((one) => without(one));

describe('a handful of the mix', () => {
  test.each([
    ['pressé le mélange du tambour, une goutte ou deux, bon', 'drum', 'right'],
    ['essoré le mélange du tambour, ça coule', 'drum', 'dripping'],
    ['apreté un puñado del tambor: muy mojado', 'drum', 'wet'],
    ['apreté la mezcla del tambor, una gota o dos, bien', 'drum', 'right'],
    ['squeezed the drum mix, dripping', 'drum', 'dripping'],
  ])('%s', (text, place, feel) => expect(records(drum(text))).toEqual([{ kind: 'moisture', place, feel }]));
  test.each([
    ['squeezed bay 2 mix, just right', 'bay 2', 'right'],
    ['squeezed the mix in bay 1, too wet', 'bay 1', 'wet'],
    ['pressé le mélange de la baie 2, trop mouillé', 'bay 2', 'wet'],
    ['apreté la mezcla de la bahía 1: muy mojada', 'bay 1', 'wet'],
  ])('%s', (text, place, feel) => expect(records(bays(text))).toEqual([{ kind: 'moisture', place, feel }]));
  test('in percent', () =>
    expect(records(drum('humedad del tambor 60%'))).toEqual([
      { kind: 'moisture', place: 'drum', percent: 60 },
    ]));
});

describe('the drum', () => {
  test.each([
    ['drum 60 55 48', [60, 55, 48]],
    ['tambour 60 55 48', [60, 55, 48]],
    ['drum 55 48', [55, 48]],
  ])('%s: no site has so many drums', (text, celsius) =>
    expect(records(drum(text))).toEqual([{ kind: 'temperature', place: 'drum', celsius }]),
  );
  test('a second drum that is not there is asked about, with the drum that is', () => {
    const [doubt] = drum('drum 2 60').doubts;
    expect(doubt).toMatchObject({ why: 'unknown-place', choices: [{ say: 'drum' }, { say: 'drop' }] });
  });
  test.each([
    ['fan high, turn every 60 min', { everyMin: 60, fan: 'high' }],
    ['turning every 45 min', { everyMin: 45 }],
    ['tourne toutes les 45 min', { everyMin: 45 }],
    ['gira cada 45 min', { everyMin: 45 }],
  ])('%s', (text, set) => expect(records(drum(text))).toEqual([{ kind: 'drum-setting', ...set }]));
  test('where there is no drum it is none', () => {
    expect(bays('turn every 60 min').records).toEqual([]);
    expect(drum('turn B every 3 days').records).toEqual([]);
  });
  test('whom to call', () =>
    expect(requests(drum('who do we call when the drum stops?'))).toEqual([
      { request: 'status', place: 'drum', about: 'call' },
    ]));
});

describe('asked in passing', () => {
  test.each([
    ['can I reset it?', { request: 'status', place: 'drum', about: 'restart' }],
    ['on peut redémarrer le tambour ?', { request: 'status', place: 'drum', about: 'restart' }],
    ['¿puedo reiniciar el tambor?', { request: 'status', place: 'drum', about: 'restart' }],
    ['how full are we', { request: 'status', place: 'drum' }],
    ['can i put 4 more carts in', { request: 'room', count: 4 }],
    ['can we fit two more?', { request: 'room', count: 2 }],
    ['how wet is it', { request: 'mix' }],
    ['is it too wet?', { request: 'mix' }],
    ['c’est trop mouillé ?', { request: 'mix' }],
    ['¿está muy mojada?', { request: 'mix' }],
    ['how many days of chips', { request: 'stock', material: 'wood-chips' }],
    ['how long will the chips last?', { request: 'stock', material: 'wood-chips' }],
    ['combien de jours de copeaux ?', { request: 'stock', material: 'wood-chips' }],
    ['combien il reste de copeaux ?', { request: 'stock', material: 'wood-chips' }],
    ['¿para cuántos días alcanzan las astillas?', { request: 'stock', material: 'wood-chips' }],
    ['set litres bag 100', { request: 'setting', name: 'litres:bag', value: 100 }],
    ['bag of leaves holds about 100 L', { request: 'setting', name: 'litres:bag', value: 100 }],
    ['una bolsa tiene 100 L', { request: 'setting', name: 'litres:bag', value: 100 }],
  ])('%s', (text, request) => expect(requests(drum(text))).toEqual([request]));
  test.each([
    'shall we start?',
    'can we start the meeting?',
    'can you turn on the kettle',
    'the tank holds 1000 L',
  ])('%s is no such thing', (text) => expect(drum(text).requests).toEqual([]));
  test.each([
    ['encore 1 brouette de copeaux'],
    ['1 brouette de plus de copeaux'],
    ['otra carretilla de astillas'],
    ['1 more barrow of chips'],
  ])('%s: one more went in, nothing was counted', (text) =>
    expect(records(drum(text))).toMatchObject([
      { kind: 'weigh-in', material: 'wood-chips', container: 'barrow', count: 1 },
    ]),
  );
  test('what is left is a count', () =>
    expect(records(drum('il reste encore 1 brouette de copeaux'))).toMatchObject([
      { kind: 'level', material: 'wood-chips' },
    ]));
  test.each([
    'out of chips',
    "we're out of chips",
    'no chips left',
    'chips all gone',
    'chips down to 0',
    "il n'y a plus de copeaux",
    'no quedan astillas',
    'se acabaron las astillas',
  ])('%s: none is left', (text) =>
    expect(records(drum(text))).toEqual([{ kind: 'level', material: 'wood-chips', litres: 0 }]),
  );
  test.each(['out of milk', 'smell all gone', 'no food left', 'no hay nada'])('%s is no stock', (text) =>
    expect(drum(text).records.filter(({ kind }) => kind === 'level')).toEqual([]),
  );
  test('a handful with no place at a site with a drum: the drum is offered first', () => {
    const [doubt] = drum('squeezed it again, drop or two').doubts;
    expect(doubt!.choices.map(({ say }) => say)).toEqual(['drum', 'pile A', 'pile B', 'drop']);
  });
  test('a full stop between what was squeezed and how it felt', () =>
    expect(records(bays('squeezed bay 2. soggy'))).toEqual([
      { kind: 'moisture', place: 'bay 2', feel: 'wet' },
    ]));
  test('what turns again had stood still, whatever else is open', () => {
    const context = contextForSite(
      Site.parse({ ...given, drums: [{ name: 'drum', litres: 5000 }], piles: ['A'] }),
      '2026-05-12T10:00',
    );
    const openProblems = [
      { entry: 4, topic: 'fault' as const, place: 'drum' },
      { entry: 7, topic: 'odour' as const, place: 'pile A' },
    ];
    const book = {
      weights: {},
      lastReadings: {},
      openProblems,
      lastOfSender: null,
      openQuestion: null,
      listed: [],
    };
    const got = readMessage('its turning again', { ...context, book });
    expect(got.records).toMatchObject([{ kind: 'resolved', topic: 'fault', place: 'drum' }]);
  });
});

describe('what may go in', () => {
  test.each([
    ['les gobelets compostables peuvent aller dedans ?', 'gobelets compostables'],
    ['les gobelets compostables, ça va dedans ?', 'gobelets compostables'],
    ['¿pueden entrar vasos compostables?', 'vasos compostables'],
    ['¿los vasos compostables pueden entrar?', 'vasos compostables'],
    ['¿va la carne adentro?', 'carne'],
    ['may compostable cups go in?', 'compostable cups'],
  ])('%s', (text, what) => expect(requests(drum(text))).toEqual([{ request: 'accepts', what }]));
  test.each([
    ['set accepts bones no', { bones: false }],
    ['set accepts no bones', { bones: false }],
    ['set refuses bones', { bones: false }],
    ['set accepts bread, egg shells, no meat', { bread: true, 'egg shells': true, meat: false }],
    ['set accepts coffee grounds and no meat', { 'coffee-grounds': true, meat: false }],
    ['régler accepte Pâtes, pas de viande', { Pâtes: true, viande: false }],
    ['fija acepta pan y no carne', { pan: true, carne: false }],
    ['régler accepte lait, laitue, pas de viande', { lait: true, laitue: true, viande: false }],
  ])('%s', (text, value) =>
    expect(requests(drum(text))).toEqual([{ request: 'setting', name: 'accepts', value }]),
  );
  test.each(['¿va todo bien?', 'ça va ?', '¿vas a entrar?'])('%s is talk', (text) => {
    expect(drum(text).requests).toEqual([]);
  });
});

describe('the recipe', () => {
  test.each([
    ['recette 1 copeaux : 1 déchets en volume', { chips: 1, food: 1, by: 'volume' }],
    ['set recipe 3 food : 2 chips by weight', { chips: 2, food: 3, by: 'mass' }],
    ['fija receta 2 astillas por 1 comida en peso', { chips: 2, food: 1, by: 'mass' }],
    ['clear recipe', null],
    ['no recipe', null],
    ['enlever la recette', null],
    ['quitar la receta', null],
  ])('%s', (text, value) =>
    expect(requests(drum(text))).toEqual([{ request: 'setting', name: 'recipe', value }]),
  );
  test.each([
    "what's our recipe?",
    'what recipe do we use?',
    'quelle est notre recette ?',
    '¿cuál es la receta?',
  ])('%s', (text) => expect(requests(drum(text))).toEqual([{ request: 'recipe' }]));
  test('two coarse things are no recipe', () =>
    expect(drum('recipe 1 chips : 1 browns by volume').requests).toEqual([]));
});

describe('what a reply tells people to type is read', () => {
  test.each([
    ['régler voie tambour en cuve', 'drum-way', 'in-vessel'],
    ['fijar vía tambor adentro', 'drum-way', 'in-vessel'],
    ['fijar vía tambor pila cerrada', 'drum-way', 'closed-pile'],
    ['régler appel tambour Sam 555 0100', 'drum-call', 'Sam 555 0100'],
    ['fija llamada tambor Sam 555 0100', 'drum-call', 'Sam 555 0100'],
  ])('%s', (text, name, value) =>
    expect(requests(drum(text))).toEqual([{ request: 'setting', name, value }]),
  );
});

describe('the mix of one bay, the stock', () => {
  test.each([
    'mix bay 1',
    'mix in bay 1',
    'how is the mix in bay 1?',
    'mélange de la baie 1',
    'mezcla de la bahía 1',
  ])('%s', (text) => expect(requests(bays(text))).toEqual([{ request: 'mix', place: 'bay 1' }]));
  test('chips that are left are no chips that burn', () => {
    const got = drum('¿cuántas astillas quedan?');
    expect(got.danger).toEqual([]);
    expect(requests(got)).toEqual([{ request: 'stock', material: 'wood-chips' }]);
    expect(drum('se queman las astillas').danger).not.toEqual([]);
  });
});
