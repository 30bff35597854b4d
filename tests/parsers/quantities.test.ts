import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readNumbers, readQuantities } from '#parsers/quantities';
import { LANGUAGES, type Language } from '#records';

const general = (text: string, languages: readonly Language[]) =>
  readQuantities(text, languages, { ranges: 'split', general: true });

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
