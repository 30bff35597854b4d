import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { calendarDay, dayNumber, daysInMonth, isoDay, weekdayOf } from '../../parsers/dates/calendar.ts';
import { findDates, findForecastDates, type WhenContext } from '../../parsers/when.ts';

type Told = {
  said: string;
  when?: string;
  future?: boolean;
  problem?: string;
  choices?: string[];
  heading: boolean;
};
type Group = { context: WhenContext; forecast?: boolean; cases: { text: string; spans: Told[] }[] };

const load = (language: string): Group[] =>
  JSON.parse(readFileSync(new URL(`../../fixtures/dates/${language}.json`, import.meta.url), 'utf8')).groups;

const tell = (text: string, context: WhenContext, isForecast = false): Told[] =>
  (isForecast ? findForecastDates : findDates)(text, [], context).map(({ start, end, ...rest }) => ({
    said: text.slice(start, end),
    ...rest,
  })) as Told[];

const site = (over: Partial<WhenContext> = {}): WhenContext => ({
  languages: ['en', 'fr', 'es'],
  dayOrder: 'dmy',
  nowLocal: '2026-11-24T15:00',
  offsetMin: -300,
  ...over,
});

const whens = (text: string, over: Partial<WhenContext> = {}) =>
  tell(text, site(over)).map((span) => span.when);

describe.each(['en', 'fr', 'es'])('dates said in %s', (language) => {
  const groups = load(language);
  it('has at least 70 cases', () => {
    expect(groups.flatMap((group) => group.cases).length).toBeGreaterThanOrEqual(70);
  });
  const rows = groups.flatMap(({ context, forecast, cases }) =>
    cases.map(({ text, spans }) => [text, context.nowLocal, context, forecast === true, spans] as const),
  );
  it.each(rows)('reads %j sent at %s', (text, _now, context, isForecast, spans) => {
    expect(tell(text, context, isForecast)).toEqual(spans);
  });
});

describe('the calendar', () => {
  it('agrees with Temporal on every 97th day of four centuries', () => {
    for (let count = -80_000; count <= 80_000; count += 97) {
      const day = Temporal.PlainDate.from('1970-01-01').add({ days: count });
      expect(isoDay(count)).toBe(day.toString());
      expect(weekdayOf(count)).toBe(day.dayOfWeek - 1);
      expect(dayNumber(calendarDay(count))).toBe(count);
      expect(daysInMonth(day.year, day.month)).toBe(day.daysInMonth);
    }
  });

  it('counts whole days over a change of clocks', () => {
    // clocks in New York went back on 1 November 2026 and forward on 8 March 2026
    expect(whens('yesterday cart 61', { nowLocal: '2026-11-01T23:30', offsetMin: -300 })).toEqual([
      '2026-10-31',
    ]);
    expect(whens('yesterday cart 61', { nowLocal: '2026-03-08T00:30', offsetMin: -300 })).toEqual([
      '2026-03-07',
    ]);
    expect(whens('hier 23h45 tas B 41', { nowLocal: '2026-03-30T00:10', offsetMin: 120 })).toEqual([
      '2026-03-29T23:45',
    ]);
  });

  it('passes over a month without that day', () => {
    expect(whens('on the 30th cart 61', { nowLocal: '2026-03-05T10:00' })).toEqual(['2026-01-30']);
    expect(whens('on the 29th cart 61', { nowLocal: '2028-03-05T10:00' })).toEqual(['2028-02-29']);
    expect(tell('29 feb cart 61', site({ nowLocal: '2026-03-05T10:00' }))[0]?.problem).toBe('impossible');
  });

  it('reads every weekday as the last one before the day of sending', () => {
    const names = ['monday', 'mardi', 'miercoles', 'jeudi', 'viernes', 'saturday', 'dimanche'];
    names.forEach((name, weekday) => {
      const [span] = tell(`${name} cart 61`, site());
      if (weekday === 1) {
        expect(span).toMatchObject({ problem: 'weekday-is-today', choices: ['2026-11-24', '2026-11-17'] });
      } else {
        const back = Temporal.PlainDate.from('2026-11-24').since(span!.when!).days;
        expect(back).toBeGreaterThan(0);
        expect(back).toBeLessThan(7);
        expect(Temporal.PlainDate.from(span!.when!).dayOfWeek - 1).toBe(weekday);
      }
    });
  });
});

describe('what other readers have taken', () => {
  it('is never read as a date', () => {
    const text = 'yesterday cart 61 5/9';
    expect(findDates(text, [{ start: 18, end: 21 }], site()).map((span) => span.start)).toEqual([0]);
    expect(findDates(text, [{ start: 0, end: 9 }], site()).map((span) => span.start)).toEqual([18]);
  });
});

describe('dates that the lists leave over', () => {
  it('are asked for where a word shows one, and not over what is taken', () => {
    const text = 'half an hour ago cart 61';
    const [span] = findDates(text, [], site({ languages: ['en'] }));
    expect(span).toEqual({ start: 0, end: 16, when: '2026-11-24T14:30', heading: true });
    expect(findDates(text, [{ start: 0, end: 24 }], site({ languages: ['en'] }))).toEqual([]);
  });
});

describe('any text at all', () => {
  const parts = [
    '12',
    '/',
    '5',
    'may',
    'mar',
    'hier',
    'ayer',
    'a',
    'las',
    'at',
    '7',
    'h',
    ':',
    '15',
    'le',
    'on',
    'the',
    '9',
    'th',
    '.',
    '-',
    '\n',
    ' ',
    ',',
    'mon',
    'hace',
    'il',
    'y',
    '2026',
    'days',
    'ago',
    'twenty',
    'last',
    'pm',
    "'",
    's',
    '１',
    '٣',
  ];
  const text = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.array(fc.constantFrom(...parts)).map((words) => words.join(' ')),
    fc.array(fc.constantFrom(...parts)).map((words) => words.join('')),
  );

  it('never throws; spans lie inside it, in order, and do not overlap', () => {
    fc.assert(
      fc.property(text, fc.constantFrom('dmy' as const, 'mdy' as const, 'ymd' as const), (said, dayOrder) => {
        for (const find of [findDates, findForecastDates]) {
          let last = 0;
          for (const span of find(said, [], site({ dayOrder }))) {
            expect(span.start).toBeGreaterThanOrEqual(last);
            expect(span.end).toBeGreaterThan(span.start);
            expect(span.end).toBeLessThanOrEqual(said.length);
            expect(span.when === undefined).toBe(span.problem !== undefined);
            last = span.end;
          }
        }
      }),
      { numRuns: 500 },
    );
  });

  it('reads no hour in digits that it does not know, and wide ones as any other', () => {
    for (const said of ['at ٣', 'à ٣h bac 61', 'a las ४', '٥/٩ cart 61', 'le ٩ bac 61']) {
      expect(whens(said), said).toEqual([]);
    }
    expect(whens('at ９')).toEqual(['2026-11-24T09:00']);
    expect(whens('may 1７')).toEqual(['2026-05-17']);
    expect(whens('may7٣')).toEqual([]);
  });

  it('never gives a log message a date ahead without saying so', () => {
    fc.assert(
      fc.property(text, (said) => {
        for (const span of findDates(said, [], site())) {
          if (span.when !== undefined) expect(span.when).toMatch(/^\d{4}-\d\d-\d\d(T\d\d:\d\d)?$/);
          if (span.when !== undefined && span.future !== true) {
            expect(span.when <= (span.when.length > 10 ? '2026-11-24T15:00' : '2026-11-24')).toBe(true);
          }
        }
      }),
      { numRuns: 500 },
    );
  });

  it('does not hang on one word said over and over', () => {
    for (const word of [
      ' ',
      '1',
      '5/9 ',
      'hier ',
      'le 9 ',
      'il y a ',
      '1 hour ',
      'last ',
      "'",
      '7h ',
      'twenty ',
    ]) {
      const length = findDates(word.repeat(20_000), [], site()).length;
      expect(length).toBeLessThanOrEqual(20_000);
    }
  });
});
