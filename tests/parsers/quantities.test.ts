import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Quantity, readNumbers, readQuantities } from '#parsers/quantities';
import { LANGUAGES, type Language } from '#records';
import { readQuantitiesCommand } from '../../src/commands/read-quantities.ts';

type Case = { text: string; expect: Pick<Quantity, 'text' | 'start' | 'end' | 'value' | 'unit'>[] };

const folder = new URL('../../fixtures/quantities/', import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith('.json'));

const general = (text: string, languages: readonly Language[]) =>
  readQuantities(text, languages, { ranges: 'split', general: true });

/** Fractions come out of divisions: compared to twelve digits. */
const whole = (quantities: Quantity[] | Case['expect']) =>
  quantities.map(({ text, start, end, value, unit }) => ({
    text,
    start,
    end,
    value: Number(value.toPrecision(12)),
    unit,
  }));

it('has sentences for each language', () => {
  expect(files.sort()).toEqual(LANGUAGES.map((language) => `${language}.json`).sort());
});

describe.each(files)('the sentences of %s', (file) => {
  const language = file.slice(0, 2) as Language;
  const cases: Case[] = JSON.parse(readFileSync(new URL(file, folder), 'utf8')).cases;
  it('are at least 200', () => expect(cases.length).toBeGreaterThanOrEqual(200));
  it.each(cases.map((one) => [one.text, one.expect] as const))('%s', (text, expected) => {
    expect(whole(general(text, [language]))).toEqual(whole([...expected]));
  });
  it('read alike, all but doubtful digits, when the language is not told', () => {
    const differing = cases.filter(
      ({ text, expect: expected }) =>
        JSON.stringify(whole(general(text, LANGUAGES))) !== JSON.stringify(whole(expected)),
    );
    // One word or none is too little to tell a language by.
    expect(differing.length).toBeLessThan(cases.length * 0.03);
  });
});

/**
 * Number words made from the published rules, to be read back. English: The Chicago Manual of Style 17,
 * 9.2 and 7.89. French: Académie française, rules of 1990 (all hyphens) and before. Spanish: RAE, Diccionario
 * panhispánico de dudas, "cardinales". From memory, written apart from the reader's own tables.
 */
const small = {
  en: 'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  ),
  fr: 'zéro un deux trois quatre cinq six sept huit neuf dix onze douze treize quatorze quinze seize dix-sept dix-huit dix-neuf'.split(
    ' ',
  ),
  es: 'cero uno dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince dieciséis diecisiete dieciocho diecinueve veinte veintiuno veintidós veintitrés veinticuatro veinticinco veintiséis veintisiete veintiocho veintinueve'.split(
    ' ',
  ),
};
const tensEn = ' . twenty thirty forty fifty sixty seventy eighty ninety'.trim().split(' ');
const tensFr = '. . vingt trente quarante cinquante soixante'.split(' ');
const tensEs = '. . . treinta cuarenta cincuenta sesenta setenta ochenta noventa'.split(' ');
const hundredsEs =
  '. ciento doscientos trescientos cuatrocientos quinientos seiscientos setecientos ochocientos novecientos'.split(
    ' ',
  );

function enBelowThousand(n: number, and: boolean): string {
  if (n < 20) return small.en[n]!;
  if (n < 100) return tensEn[Math.floor(n / 10) - 1]! + (n % 10 ? `-${small.en[n % 10]}` : '');
  const rest = n % 100;
  return `${small.en[Math.floor(n / 100)]} hundred${rest ? (and ? ' and ' : ' ') + enBelowThousand(rest, and) : ''}`;
}

function inEnglish(n: number, and: boolean): string {
  const parts: string[] = [];
  for (const [size, word] of [
    [1e12, 'trillion'],
    [1e9, 'billion'],
    [1e6, 'million'],
    [1e3, 'thousand'],
  ] as const) {
    const count = Math.floor(n / size) % 1000;
    if (count) parts.push(`${enBelowThousand(count, and)} ${word}`);
  }
  const rest = n % 1000;
  if (rest || n === 0)
    parts.push((and && parts.length && rest < 100 ? 'and ' : '') + enBelowThousand(rest, and));
  return parts.join(' ');
}

function frBelowHundred(n: number, last: boolean): string {
  if (n < 20) return small.fr[n]!;
  if (n < 70) {
    const unit = n % 10;
    const ten = tensFr[Math.floor(n / 10)]!;
    return unit === 0 ? ten : unit === 1 ? `${ten} et un` : `${ten}-${small.fr[unit]}`;
  }
  if (n < 80) return n === 71 ? 'soixante et onze' : `soixante-${small.fr[n - 60]}`;
  return n === 80 ? (last ? 'quatre-vingts' : 'quatre-vingt') : `quatre-vingt-${small.fr[n - 80]}`;
}

function frBelowThousand(n: number, last: boolean): string {
  const hundreds = Math.floor(n / 100);
  const rest = n % 100;
  if (!hundreds) return frBelowHundred(rest, last);
  const head = hundreds === 1 ? 'cent' : `${small.fr[hundreds]} cent${rest || !last ? '' : 's'}`;
  return rest ? `${head} ${frBelowHundred(rest, last)}` : head;
}

function inFrench(n: number): string {
  if (n === 0) return 'zéro';
  const parts: string[] = [];
  for (const [size, word] of [
    [1e12, 'billion'],
    [1e9, 'milliard'],
    [1e6, 'million'],
  ] as const) {
    const count = Math.floor(n / size) % 1000;
    if (count) parts.push(`${frBelowThousand(count, true)} ${word}${count > 1 ? 's' : ''}`);
  }
  const thousands = Math.floor(n / 1000) % 1000;
  if (thousands) parts.push(thousands === 1 ? 'mille' : `${frBelowThousand(thousands, false)} mille`);
  if (n % 1000) parts.push(frBelowThousand(n % 1000, true));
  return parts.join(' ');
}

function esBelowThousand(n: number, short: boolean): string {
  const hundreds = Math.floor(n / 100);
  const rest = n % 100;
  if (n === 100) return 'cien';
  let tail = rest < 30 ? (rest ? small.es[rest]! : '') : tensEs[Math.floor(rest / 10)]!;
  if (rest >= 30 && rest % 10) tail += ` y ${small.es[rest % 10]}`;
  if (short) tail = tail.replace(/veintiuno$/, 'veintiún').replace(/uno$/, 'un');
  return [hundreds ? hundredsEs[hundreds] : '', tail].filter(Boolean).join(' ');
}

function inSpanish(n: number): string {
  if (n === 0) return 'cero';
  const belowMillion = (m: number, short: boolean): string => {
    const thousands = Math.floor(m / 1000);
    const head = thousands === 0 ? '' : thousands === 1 ? 'mil' : `${esBelowThousand(thousands, true)} mil`;
    return [head, m % 1000 ? esBelowThousand(m % 1000, short) : ''].filter(Boolean).join(' ');
  };
  const parts: string[] = [];
  const billions = Math.floor(n / 1e12);
  const millions = Math.floor(n / 1e6) % 1e6;
  if (billions) parts.push(`${belowMillion(billions, true)} ${billions === 1 ? 'billón' : 'billones'}`);
  if (millions) parts.push(`${belowMillion(millions, true)} ${millions === 1 ? 'millón' : 'millones'}`);
  if (n % 1e6) parts.push(belowMillion(n % 1e6, false));
  return parts.join(' ');
}

const SPELLERS: [string, Language, (n: number) => string][] = [
  ['English with and', 'en', (n) => inEnglish(n, true)],
  ['English without and', 'en', (n) => inEnglish(n, false)],
  ['English with spaces', 'en', (n) => inEnglish(n, true).replaceAll('-', ' ')],
  ['French', 'fr', inFrench],
  ['French of 1990', 'fr', (n) => inFrench(n).replaceAll(' ', '-')],
  ['French without hyphens or accents', 'fr', (n) => inFrench(n).replaceAll('-', ' ').replaceAll('é', 'e')],
  ['Spanish', 'es', inSpanish],
  ['Spanish without accents', 'es', (n) => inSpanish(n).normalize('NFD').replace(/\p{M}/gu, '')],
];

describe.each(SPELLERS)('numbers spelled out: %s', (_, language, spell) => {
  const wrong = (n: number): string[] => {
    // Alone, `un` and `one` are articles and pronouns: a unit shows that a number is meant.
    const read = readQuantities(`${spell(n)} kg`, [language]);
    return read.length === 1 && read[0]!.value === n && read[0]!.unit === 'kg' ? [] : [`${spell(n)}: ${n}`];
  };
  it('reads 0 to 9,999', () => {
    expect(Array.from({ length: 10_000 }, (_, n) => wrong(n)).flat()).toEqual([]);
  });
  it('reads samples up to 999 billion of the short scale', () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 999_999_999_999 }), (n) => wrong(n).length === 0));
  });
});

describe('digits as Intl writes them', () => {
  const locales: [string, Language][] = [
    ['en-US', 'en'],
    ['en-GB', 'en'],
    ['fr-FR', 'fr'],
    ['fr-CA', 'fr'],
    ['es-ES', 'es'],
    ['es-AR', 'es'],
  ];
  it.each(locales)('%s', (locale, language) => {
    const format = new Intl.NumberFormat(locale, { maximumFractionDigits: 2, minimumFractionDigits: 2 });
    fc.assert(
      fc.property(fc.integer({ min: -100_000_000_000, max: 100_000_000_000 }), (cents) => {
        const value = cents / 100;
        expect(general(format.format(value), [language]).map((one) => one.value)).toEqual([
          value === 0 ? 0 : value,
        ]);
      }),
    );
  });
});

const pieces = fc.constantFrom(
  ...[
    'one',
    'two',
    'hundred',
    'and',
    'a',
    'half',
    'third',
    'thirds',
    'twenty',
    'million',
    'point',
    'over',
    'out of',
    'minus',
    'cinq',
    'et',
    'demi',
    'quatre',
    'vingt',
    'sur',
    'virgule',
    'cent',
    'mille',
    'dos',
    'y',
    'medio',
    'con',
    'avos',
    'mil',
    'docena',
    '5',
    '1,250',
    '66.5',
    '3/4',
    '½',
    '-',
    '–',
    ',',
    '.',
    '/',
    "'",
    '"',
    '°',
    '#',
    '%',
    'kg',
    'lb',
    'oz',
    'in',
    'C',
    'h',
    'e',
    '^',
    '\n',
    ' ',
    '\u00a0',
  ],
);
const text = fc.oneof(
  fc.string({ unit: 'binary' }),
  fc.array(pieces, { maxLength: 40 }).map((list) => list.join(' ')),
  fc.array(pieces, { maxLength: 40 }).map((list) => list.join('')),
);

describe('any text at all', () => {
  it('throws nothing; spans lie inside the text, in order, apart, and slice it', () => {
    fc.assert(
      fc.property(
        text,
        fc.subarray([...LANGUAGES], { minLength: 1 }),
        fc.boolean(),
        (said, languages, joined) => {
          const spans = [
            readNumbers(said, languages),
            readQuantities(said, languages, { ranges: joined ? 'joined' : 'split', general: joined }),
          ];
          for (const list of spans) {
            let end = 0;
            for (const span of list) {
              expect(span.start).toBeGreaterThanOrEqual(end);
              expect(span.end).toBeGreaterThan(span.start);
              expect(said.slice(span.start, span.end)).toBe(span.text);
              expect(Number.isFinite(span.value)).toBe(true);
              end = span.end;
            }
            expect(end).toBeLessThanOrEqual(said.length);
          }
        },
      ),
      { numRuns: 2000 },
    );
  });
});

describe('the worked examples beside the exports', () => {
  it('hold', () => {
    expect(readNumbers('2 1/2 buckets', ['en'])).toEqual([
      { start: 0, end: 5, text: '2 1/2', value: 2.5, kind: 'mixed' },
    ]);
    expect(readQuantities('5 ft 2 in', ['en'])).toEqual([
      { start: 0, end: 9, text: '5 ft 2 in', value: 5.166666666666667, unit: 'ft' },
    ]);
  });
});

describe('numbers for the trade', () => {
  const of = (text: string, languages: Language[] = ['en']) => readNumbers(text, languages);

  it('tells the decimal comma, and what a point or comma may be', () => {
    expect(of('66,5 kg')).toMatchObject([{ value: 66.5, decimalComma: true }]);
    expect(of('1,250 kg')).toEqual([
      {
        start: 0,
        end: 5,
        text: '1,250',
        value: 1250,
        kind: 'digits',
        parts: [
          { start: 0, end: 1, text: '1', value: 1, kind: 'digits' },
          { start: 2, end: 5, text: '250', value: 250, kind: 'digits' },
        ],
      },
    ]);
    expect(of('1,250 kg', ['en', 'es'])[0]?.ambiguous).toEqual([1250, 1.25]);
    expect(of('el bote pesa 1,250 kg', ['en', 'es'])[0]?.ambiguous).toEqual([1.25, 1250]);
    expect(of('1.250 kg')[0]).not.toHaveProperty('ambiguous');
  });

  it('keeps both readings of a list without spaces', () => {
    expect(of('B 135,140,138')[0]?.parts?.map((part) => part.value)).toEqual([135, 140, 138]);
    expect(of('andain 150 200', ['fr'])[0]?.parts?.map((part) => part.value)).toEqual([150, 200]);
  });

  it('marks digits that touch a name', () => {
    expect(of('B12 and cart-5 and 40')).toMatchObject([
      { value: 12, joined: true },
      { value: 5, joined: true },
      { value: 40 },
    ]);
    expect(of('40kg')[0]).not.toHaveProperty('joined');
  });

  it('leaves articles, letters for thousands and company alone', () => {
    expect(of('un bac', ['fr'])).toEqual([]);
    expect(of('10k')).toMatchObject([{ value: 10, text: '10' }]);
    expect(of('dos con cinco botes', ['es']).map((span) => span.value)).toEqual([2, 5]);
    expect(of('dos con cinco kilos', ['es']).map((span) => span.value)).toEqual([2.5]);
  });

  it('names the kinds', () => {
    const kinds = (text: string) => of(text).map((span) => [span.text, span.value, span.kind]);
    expect(kinds('2 1/2 and half, sixty, 2 million, 7, two and a half')).toEqual([
      ['2 1/2', 2.5, 'mixed'],
      ['half', 0.5, 'fraction'],
      ['sixty', 60, 'words'],
      ['2 million', 2_000_000, 'words'],
      ['7', 7, 'digits'],
      ['two and a half', 2.5, 'mixed'],
    ]);
  });

  it('joins the ends of a range, the smaller one second if so said', () => {
    const joined = (text: string) =>
      readQuantities(text, ['en']).map(({ text: slice, value, upTo, unit }) => [slice, value, upTo, unit]);
    expect(joined('B 135-140')).toEqual([['135-140', 135, 140, null]]);
    expect(joined('136 to 141 F')).toEqual([['136 to 141 F', 136, 141, 'F']]);
    expect(joined('61.5-15.5')).toEqual([['61.5-15.5', 61.5, 15.5, null]]);
    expect(joined('between 20 and 30 kg')).toEqual([['20 and 30 kg', 20, 30, 'kg']]);
    expect(joined('20 and 31 kg')).toEqual([
      ['20', 20, undefined, null],
      ['31 kg', 31, undefined, 'kg'],
    ]);
  });

  it('takes no pile for the end of a range or for a unit', () => {
    const units = (text: string, language: Language) =>
      readQuantities(text, [language]).map(({ value, upTo, unit }) => [value, upTo, unit]);
    expect(units('pila 2 a 60', 'es')).toEqual([
      [2, undefined, null],
      [60, undefined, null],
    ]);
    expect(units('de 50 a 60 grados', 'es')).toEqual([[50, 60, null]]);
    expect(units('B 47 C 57', 'en')).toEqual([
      [47, undefined, null],
      [57, undefined, null],
    ]);
    expect(units('B 47 C and 57 C', 'en')).toEqual([
      [47, undefined, 'C'],
      [57, undefined, 'C'],
    ]);
    expect(units('A30 C57', 'en')).toEqual([
      [30, undefined, null],
      [57, undefined, null],
    ]);
  });

  it('tells degrees without a scale', () => {
    expect(readQuantities('60 degrees', ['en'])).toMatchObject([{ value: 60, unit: null, degrees: true }]);
  });
});

describe('read --quantities', () => {
  const run = async (lines: string[], language?: Language) => {
    const out: string[] = [];
    async function* typed() {
      yield* lines;
    }
    await readQuantitiesCommand(typed(), (line) => void out.push(line), language);
    return out;
  };

  it('writes one JSON array a line; a BOM, a CR and blank lines are accepted', async () => {
    expect(await run(['\ufeff5 ft 2 in\r', '', 'no number', '66,5 kg\\n7'])).toEqual([
      '[{"text":"5 ft 2 in","start":0,"end":9,"value":5.166666666666667,"unit":"ft"}]',
      '[]',
      '[]',
      '[{"text":"66,5 kg","start":0,"end":7,"value":66.5,"unit":"kg"},{"text":"7","start":9,"end":10,"value":7,"unit":null}]',
    ]);
  });

  it('reads in the language told', async () => {
    expect(await run(['1,250'], 'en')).toEqual([
      '[{"text":"1,250","start":0,"end":5,"value":1250,"unit":null}]',
    ]);
    expect(await run(['1,250'], 'fr')).toEqual([
      '[{"text":"1,250","start":0,"end":5,"value":1.25,"unit":null}]',
    ]);
  });
});

describe('work grows with the length and no faster', () => {
  // Counted, not timed: how often the text is looked at, through its charCodeAt.
  const looks = (unit: string, times: number): number => {
    let count = 0;
    const original = String.prototype.charCodeAt;
    const get = Map.prototype.get;
    String.prototype.charCodeAt = function (this: string, at: number) {
      count++;
      return original.call(this, at);
    };
    Map.prototype.get = function (this: Map<unknown, unknown>, key: unknown) {
      count++;
      return get.call(this, key);
    };
    try {
      readQuantities(unit.repeat(times), LANGUAGES, { ranges: 'split', general: true });
    } finally {
      String.prototype.charCodeAt = original;
      Map.prototype.get = get;
    }
    return count;
  };
  it.each([
    ' ',
    '5',
    ',',
    '5,',
    '5 ',
    '5/',
    '5-',
    '1 234 ',
    'hundred and ',
    'two and ',
    'one over ',
    'half of a ',
    'mil ',
    "5' ",
  ])('%j', (unit) => {
    looks(unit, 10);
    expect(looks(unit, 5000)).toBeLessThan(looks(unit, 2500) * 2.2 + 100);
  });
});
