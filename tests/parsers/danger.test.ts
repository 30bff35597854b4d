import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readDanger } from '../../parsers/danger/index.ts';
import { casesIn } from '../score/cases.ts';
import { read } from '../score/reader.ts';

type DangerCase = { text: string; dangers: { topic: string; what: string; said: string }[] };

const load = <T>(name: string): T[] =>
  JSON.parse(readFileSync(new URL(`../../fixtures/danger/${name}.json`, import.meta.url), 'utf8')).cases;

const told = (text: string) =>
  readDanger(text).map(({ topic, what, start, end }) => ({ topic, what, said: text.slice(start, end) }));

describe.each(['en', 'fr', 'es'])('danger said in %s', (language) => {
  const cases = load<DangerCase>(language);
  it('has at least 80 phrases', () => expect(cases.length).toBeGreaterThanOrEqual(80));
  it.each(cases.map((c) => [c.text, c.dangers] as const))('reads %j', (text, dangers) => {
    expect(dangers.length).toBeGreaterThan(0);
    expect(told(text)).toEqual(dangers);
  });
});

describe('harmless words that resemble danger', () => {
  const cases = load<string>('near-misses');
  it('has at least 240 phrases', () => expect(cases.length).toBeGreaterThanOrEqual(240));
  it.each(cases)('finds nothing in %j', (text) => expect(told(text)).toEqual([]));
});

describe.each(['en', 'fr', 'es'])('messages of a bad day in %s', (language) => {
  const messages = (name: string) =>
    casesIn(new URL(`../../fixtures/messages/danger/${language}/${name}.json`, import.meta.url).pathname);
  const topicsOf = (records: readonly Record<string, unknown>[]) =>
    records.filter(({ kind }) => kind === 'problem').map(({ topic }) => topic);

  it('are all heard, each as the trouble it is, with its line in the book', () => {
    const cases = messages('problem');
    expect(cases.length).toBeGreaterThanOrEqual(60);
    const missed = cases.filter(({ text, site, at, expect: { records = [] } }) => {
      const [topic] = topicsOf(records).filter((each) => each !== 'odour');
      const heard = read(text, site, at).records;
      return !readDanger(text).some((one) => one.topic === topic) || !topicsOf(heard).includes(topic);
    });
    expect(missed.map(({ id, text }) => `${id}: ${text}`)).toEqual([]);
  });

  it('are not heard in harmless talk', () => {
    const cases = messages('talk');
    expect(cases.length).toBeGreaterThanOrEqual(60);
    const heard = cases.filter(({ text }) => readDanger(text).length > 0);
    expect(heard.map(({ id, text }) => `${id}: ${text}`)).toEqual([]);
  });
});

describe('danger beside something else', () => {
  const site = JSON.parse(
    readFileSync(new URL('../../fixtures/sites/hospital.json', import.meta.url), 'utf8'),
  );
  const kinds = (text: string) =>
    read(text, site, '2026-06-18T09:10').records.map(({ kind, topic }) => topic ?? kind);

  it('is heard in a note, which is kept', () => {
    expect(kinds('note: smoke from pile B')).toEqual(['note', 'smoke']);
    expect(kinds('note: the new tarp is blue')).toEqual(['note']);
  });

  it('is one trouble where a cry for help goes with it', () => {
    expect(kinds('help, he is bleeding!')).toEqual(['injury']);
  });

  it('of the site is heard where food is spoken of', () => {
    expect(kinds('coffee grounds bin is on fire')).toEqual(['smoke']);
    expect(kinds('smoke from pile B, seen at lunch')).toEqual(['smoke']);
    expect(kinds('fumée au tas B juste avant le diner')).toEqual(['smoke']);
    expect(kinds('burnt the coffee again')).toEqual([]);
  });

  it('lets a load before its comma stand', () => {
    expect(kinds('bac 58,5, quelqu’un hurle au lift')).toEqual(['weigh-in', 'injury']);
  });

  it('puts nothing right', () => {
    const cried = read('bac 58,5 attendez quelqu’un hurle au lift', site, '2026-06-18T09:10');
    expect(cried.requests).toEqual([]);
  });
});

describe('danger however it is typed', () => {
  const phrases = (['en', 'fr', 'es'] as const)
    .flatMap((language) => load<DangerCase>(language))
    .map((c) => c.text);

  it.each([
    ['in capitals', (text: string) => text.toUpperCase()],
    ['with no accents', (text: string) => text.normalize('NFD').replace(/\p{M}/gu, '')],
    ['with accents typed apart', (text: string) => text.normalize('NFD')],
    ['with curly apostrophes', (text: string) => text.replaceAll("'", '’')],
    ['after a weigh-in', (text: string) => `cart 61.5 kg, chips 12\n${text}`],
    ['before a reading', (text: string) => `${text}\npile B 41 43 39`],
    [
      'with the last mark left off',
      (text: string) => (/^\P{L}*(help|ayuda)\P{L}*$/iu.test(text) ? 'HELP' : text.replace(/[!.]+$/, '')),
    ],
  ] as const)('is read %s', (_how, change) => {
    expect(phrases.filter((text) => readDanger(change(text)).length === 0)).toEqual([]);
  });

  it('tells the request for help from the cry', () => {
    expect(['help', 'Help', 'aide', 'ayuda'].map((text) => readDanger(text).length)).toEqual([0, 0, 0, 0]);
    expect(['help!', 'HELP', 'aide!!', '¡ayuda!'].map((text) => readDanger(text).length)).toEqual([
      1, 1, 1, 1,
    ]);
  });

  it('gives the slice of the message that says it', () => {
    const text = "marie's arm is stuck in teh drum";
    expect(readDanger(text)).toEqual([{ topic: 'injury', what: 'caught', start: 8, end: 32 }]);
  });

  it('keeps two dangers of one message apart', () => {
    expect(told('smoke from pile 2 and luke is hurt').map((d) => d.topic)).toEqual(['smoke', 'injury']);
  });
});

describe('any text at all', () => {
  it('never throws, and spans lie inside the text', () => {
    const words = [
      'smoke',
      'feu',
      'mano',
      'drum',
      'help!',
      'no',
      ' ',
      '\n',
      '٣',
      '\u200d',
      'ﬀ',
      '🔥',
      'İ',
      "'",
      'stuck in',
    ];
    const text = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.array(fc.constantFrom(...words)).map((parts) => parts.join(' ')),
    );
    fc.assert(
      fc.property(text, (said) => {
        let last = 0;
        for (const { start, end } of readDanger(said)) {
          expect(start).toBeGreaterThanOrEqual(last > start ? 0 : last);
          expect(end).toBeGreaterThan(start);
          expect(end).toBeLessThanOrEqual(said.length);
          last = end;
        }
      }),
    );
  });

  it('does not hang on one word said over and over', () => {
    for (const word of [
      'fire ',
      'no smoke ',
      'stuck in the ',
      'hand ',
      "'",
      'needle ',
      'aaaaaaaab',
      '🔥',
      'inside ',
    ]) {
      const length = readDanger(word.repeat(20_000)).length;
      expect(length).toBeLessThanOrEqual(20_000);
    }
  });
});
