import { describe, expect, it, test } from 'vitest';
import type { Arg, Manner, Say } from '#assistant';
import { LANGUAGES, type Language } from '#records';
import { makeWords } from '#wording';
import { readTexts } from '../../src/commands/parts.ts';

const texts = readTexts();
const faults: string[] = [];
const words = makeWords(texts, (what) => faults.push(what));

const manner = (language: Language, more: Partial<Manner> = {}): Manner => ({
  language,
  units: { mass: 'kg', temperature: 'C', volume: 'L', length: 'cm' },
  timeZone: 'Europe/London',
  dayOrder: 'dmy',
  today: '2026-11-24',
  ...more,
});

/** A typical value for each name that a text uses; others go by the unit in their name. */
const SAMPLES: Record<string, Arg> = {
  entry: { entry: 412 },
  old: { entry: 398 },
  by: { entry: 415 },
  date: { date: '2026-11-21' },
  from: { date: '2026-11-16' },
  to: { place: 'pile C' },
  until: { date: '2026-11-27' },
  week: { date: '2026-11-16' },
  day: { term: 'tuesday', of: 'weekday' },
  clock: { clock: '07:15' },
  place: { place: 'pile B' },
  pile: { place: 'pile B' },
  with: { place: 'pile A' },
  successor: { place: 'bay 3' },
  count: { count: 3 },
  loads: { count: 12 },
  days: { count: 13 },
  people: { count: 4 },
  turns: { count: 2 },
  turn: { count: 3 },
  weeks: { count: 8 },
  n: { count: 2 },
  number: { count: 7 },
  shown: { number: 3 },
  kg: { kg: 48.5 },
  net: { kg: 48.5 },
  gross: { kg: 66.5, bare: true },
  tare: { kg: 18, bare: true },
  low: { kg: 131.5 },
  high: { kg: 212 },
  chips: { kg: 75 },
  food: { number: 1 },
  usual: { kg: 301 },
  before: { kg: 287.5 },
  without: { kg: 233.5 },
  cap: { kg: 1500 },
  each: { kg: 25 },
  amount: { litres: 240 },
  litres: { litres: 240 },
  what: { container: 'barrow', count: 2 },
  container: { container: 'cart', count: 1 },
  material: { material: 'wood-chips' },
  source: { source: 'east kitchen' },
  said: { text: 'cart 665' },
  text: { text: 'B 41 43' },
  typed: { text: '140 F' },
  name: { text: 'B' },
  site: { text: 'Fernhill Hospital grounds' },
  zone: { text: 'Europe/London' },
  duty: { say: { id: 'duty-turn-pile', args: { place: { place: 'pile B' } } } },
  log: { text: 'B 58' },
  first: { text: 'B 58' },
  second: { text: 'C 41' },
  item: { text: '9' },
  why: { text: '8' },
  who: { text: 'Rosa' },
  list: { text: 'a, b, c' },
  link: { text: 'http://192.168.1.20:8080/p/x7' },
  label: { text: '5' },
  entries: { text: '#412, #413' },
  celsius: { celsius: 58.5 },
  ambient: { celsius: 12 },
  rise: { rise: 46.5 },
  values: { celsiusList: [41, 43, 39], points: ['top', 'middle', 'bottom'] },
  value: { text: '7' },
  pct: { pct: 66 },
  fill: { pct: 75 },
  range: { pctRange: [58, 73] },
  air: { pctRange: [35, 47] },
  density: { kgPerM3Range: [480, 560] },
  factor: { number: 0.62 },
  ratio: { number: 0.18 },
  cn: { number: 31, digits: 0 },
  counted: { number: 2, digits: 0 },
  needed: { number: 3, digits: 0 },
  hours: { number: 2.5 },
  reads: { number: 20.1 },
  against: { number: 20 },
  tonnes: { tonnes: 60 },
  min: { min: 45 },
  every: { text: 'A' },
  mm: { mm: 12 },
  depth: { cm: 60 },
  unit: { term: 'days', of: 'unit' },
  state: { term: 'closed', of: 'state' },
  layer: { term: 'tarp', of: 'layer' },
  feel: { term: 'wet', of: 'feel' },
  mode: { term: 'automatic', of: 'mode' },
  fan: { term: 'low', of: 'fan' },
  topic: { term: 'odour', of: 'topic' },
  strength: { term: 'strong', of: 'strength' },
  chore: { term: 'sweep', of: 'chore' },
  weather: { term: 'rain', of: 'weather' },
  choice: { term: 'each', of: 'choice' },
  basis: { term: 'typical', of: 'mix-basis' },
  limit: { term: 'stock', of: 'limit' },
  per: { term: 'week', of: 'per' },
  pace: { term: 'behind', of: 'pace' },
  analyte: { text: 'pH' },
  formula: { say: { id: 'formula-mix' } },
  solve: { material: 'wood-chips' },
  reason: { text: 'X' },
  one: { text: '' },
  mass: { text: 'kg' },
  temperature: { text: 'C' },
  isolator: { text: '3B' },
  of: { count: 12 },
  found: { text: 'X' },
  dirty: { count: 2 },
  when: { text: '7' },
};
const byUnit = (name: string): Arg => {
  if (name.endsWith('Cm')) return { cm: 60 };
  if (name.endsWith('Kg')) return { kg: 48.5 };
  if (name.endsWith('Pct')) return { pct: 66 };
  if (name.endsWith('Celsius')) return { celsius: 58.5 };
  return { text: '7' };
};
/** Names that a text chooses by: every text is said with each of their values. */
const CHOICES: Record<string, Arg[]> = {
  on: [{ text: 'on' }, { text: 'off' }],
};
const chosen = (name: string): Arg[] | undefined =>
  CHOICES[name] ?? (/^(has[A-Z]?|named|yes)/.test(name) ? [{ text: 'yes' }, { text: 'no' }] : undefined);

/** Text id → the names it uses in any language. */
function ids(): Map<string, Set<string>> {
  const found = new Map<string, Set<string>>();
  for (const language of LANGUAGES) {
    let id = '';
    for (const line of texts[language].split('\n')) {
      const start = /^([a-z][a-z0-9-]*) =/.exec(line);
      if (start) id = start[1]!;
      if (!id || line.startsWith('#')) continue;
      const names = found.get(id) ?? new Set<string>();
      for (const [, name] of line.matchAll(/\$(\w+)/g)) names.add(name!);
      found.set(id, names);
    }
  }
  return found;
}

const IDS = ids();

/** A text with typical values, once for each choice it makes and each number it declines by. */
function variants(id: string): Say[] {
  let all: Record<string, Arg>[] = [{}];
  for (const name of IDS.get(id)!) {
    const sample = SAMPLES[name];
    const options =
      chosen(name) ??
      (sample && 'count' in sample && !('container' in sample)
        ? [{ count: 1 }, { count: 2 }, { count: 13 }]
        : [sample ?? byUnit(name)]);
    all = all.flatMap((args) => options.map((option) => ({ ...args, [name]: option })));
  }
  return all.map((args) => ({ id, args }));
}

const PHONE = 160;
const LABEL = 24;

describe.each(LANGUAGES)('every text in %s', (language) => {
  test('can be said with typical values: no fault, nothing missing, nothing left over', () => {
    faults.length = 0;
    for (const id of IDS.keys()) {
      for (const say of variants(id)) {
        const said = words.text([say], manner(language));
        expect(said, id).not.toMatch(/\b(undefined|null|NaN)\b|[{}]|[\u2066-\u2069]/);
        expect(said, id).not.toMatch(/ {2}|^ | $| [,.]/);
      }
    }
    expect(faults).toEqual([]);
  });

  test(`fits a phone: a line of a reply within ${PHONE} characters, a button within ${LABEL}`, () => {
    const long: string[] = [];
    for (const id of IDS.keys()) {
      // The page lays its own texts out.
      if (id.startsWith('page-')) continue;
      for (const say of variants(id)) {
        for (const line of words.text([say], manner(language)).split('\n')) {
          const most = /^button-(?!gone)/.test(id) ? LABEL : PHONE;
          if (line.length > most) long.push(`${line.length} ${line}`);
        }
      }
    }
    expect(long).toEqual([]);
  });
});

/** Texts without a word, and words that are the same in two languages. */
const SAME: Record<Exclude<Language, 'en'>, RegExp> = {
  fr: /^(chart-axis-date|topic-contamination|choice-net|line-net|page-letters|page-questions|kind-(lab|moisture).*|analyte-(cadmium|zinc|nickel|arsenic|cobalt|potassium|ammonium|nitrate))$/,
  es: /^(danger-gas|page-letters|choice-no|analyte-(zinc|metal))$/,
};

describe.each(['fr', 'es'] as const)('%s is translated', (language) => {
  it('says nothing as English does, but for words that are the same', () => {
    const same = [...IDS.keys()].filter((id) => {
      if (SAME[language].test(id)) return false;
      const bare = variants(id)[0]!;
      const empty = Object.fromEntries(Object.keys(bare.args ?? {}).map((name) => [name, { text: '' }]));
      const said = (as: Language): string => words.text([{ id, args: empty }], manner(as));
      return /\p{L}{3}/u.test(said('en')) && said(language) === said('en');
    });
    expect(same).toEqual([]);
  });

  it('holds no word that only English has', () => {
    const english =
      /(?<!\p{L})(the|and|with|your|from|which|was|were|nobody|yet|turned|pile|cart|chips|drum|today|undo|reading|about)(?!\p{L})/iu;
    const left = texts[language]
      .split('\n')
      // What stands in quotes is typed to the program, which reads English too.
      .map((line) => line.replaceAll(/«[^»]*»|"[^"]*"/g, ''))
      .filter((line) => !line.startsWith('#') && !/^[a-z-]+ = .*please/.test(line))
      .filter((line) =>
        english.test(line.replace(/^[a-z0-9-]+ =/, '').replaceAll(/\{[^}]*\}|\$\w+|\/\w+/g, '')),
      );
    expect(left).toEqual([]);
  });
});

describe('numbers and dates are written as Intl writes them', () => {
  const cases: [Language, Manner['dayOrder'], string][] = [
    ['en', 'dmy', 'en-GB'],
    ['en', 'mdy', 'en-US'],
    ['fr', 'dmy', 'fr-CA'],
    ['es', 'dmy', 'es-ES'],
    ['es', 'mdy', 'es-US'],
  ];
  const plain = (text: string): string => text.replaceAll('.', '').replaceAll(',', '');
  test.each(cases)('%s %s is %s', (language, dayOrder, locale) => {
    const how = manner(language, { dayOrder });
    const said = (id: string, args: Record<string, Arg>): string => words.text([{ id, args }], how);
    const number = (value: number): string =>
      new Intl.NumberFormat(locale, { maximumFractionDigits: 2 }).format(value);
    expect(said('part-kg', { kg: { kg: 48.5 } })).toBe(`${number(48.5)} kg`);
    expect(said('part-kg', { kg: { kg: 12345.25 } })).toBe(`${number(12345.25)} kg`);
    const day = new Intl.DateTimeFormat(locale, {
      weekday: 'short',
      day: 'numeric',
      month: 'short',
      timeZone: 'UTC',
    }).format(new Date('2026-06-03T12:00:00Z'));
    expect(plain(said('part-date', { date: { date: '2026-06-03' } }))).toBe(plain(day));
  });

  test('48,5 kg in French, and in Spanish where the day comes first', () => {
    const kg = { id: 'part-kg', args: { kg: { kg: 48.5 } } };
    expect(words.text([kg], manner('fr'))).toBe('48,5 kg');
    expect(words.text([kg], manner('es'))).toBe('48,5 kg');
    expect(words.text([kg], manner('es', { dayOrder: 'mdy' }))).toBe('48.5 kg');
  });

  test('clock times', () => {
    const clock = { id: 'part-clock', args: { clock: { clock: '19:15' } } };
    const said = (language: Language, dayOrder: 'dmy' | 'mdy') =>
      words.text([clock], manner(language, { dayOrder }));
    expect(said('en', 'dmy')).toBe('19:15');
    expect(said('en', 'mdy')).toBe('7:15 PM');
    expect(said('fr', 'dmy')).toBe('19 h 15');
    expect(said('es', 'dmy')).toBe('19:15');
    expect(
      words.text([{ id: 'part-date', args: { date: { date: '2026-11-23T07:05' } } }], manner('es')),
    ).toBe('ayer, lun 23 nov 7:05');
  });

  test('French cuts its "de" before a vowel', () => {
    const what = (material: string) =>
      words.text(
        [
          {
            id: 'what-container-of',
            args: { container: { container: 'bucket', count: 2 }, material: { material } },
          },
        ],
        manner('fr'),
      );
    expect(what('water')).toBe("2 seaux d'eau");
    expect(what('wood-chips')).toBe('2 seaux de copeaux');
  });
});
