import { describe, expect, test } from 'vitest';
import type { PictureSpec } from '#assistant';
import { draw, drawSvg, type HeatData, type MixData, type WeekData, type YearData } from '#charts';
import { daysBetween, mixOf } from '#core';
import { autumn, FIRST, loadsOn, READINGS, TODAY } from './autumn.ts';
import { drawnIn } from './drawn.ts';

const HOT = '#a3230f';
const COOL = '#144f8c';
const INK = '#17201f';

const { crew, pictureOf } = autumn();
const heat = pictureOf('status B')!;
const week = pictureOf('week')!;
const year = pictureOf('year')!;
const mix = pictureOf('mix')!;
const ALL = { heat, week, year, mix };
const near = (digits: number) => (value: number) => Number(value.toFixed(digits));

/** A title may be broken over lines where a narrow space stands: put together again. */
const shownText = (spec: PictureSpec): string =>
  drawnIn(drawSvg(spec)).texts.join(' ').replaceAll('\u00a0', ' ');

describe('a pile', () => {
  const data = heat.data as HeatData;
  const drawn = drawnIn(drawSvg(heat));
  const x = drawn.scale(data.x.ticks, 'x');
  const y = drawn.scale(data.y.ticks, 'y');

  test('each reading stands at its day and its temperature, hottest and lowest by different marks', () => {
    const first = READINGS[0]!.date;
    const at = ([px, py]: [number, number]) => [near(1)(x(px)), near(1)(y(py))];
    const expected = (value: (reading: (typeof READINGS)[number]) => number, minutes: number) =>
      READINGS.map((reading) => [near(1)(daysBetween(first, reading.date) + minutes / 1440), value(reading)]);
    expect(drawn.marks('circle', HOT).map(at)).toEqual(expected(({ hot }) => hot, 12 * 60 + 1));
    expect(drawn.marks('square', COOL).map(at)).toEqual(expected(({ low }) => low, 12 * 60 + 1));
    const air = drawn.marks('triangle', '#4d5a58').map(at);
    expect(air.length).toBeGreaterThan(3);
    expect(air.map(([, celsius]) => celsius)).toEqual(READINGS.slice(-air.length).map((each) => each.air));
  });

  test('the turn, the cover, the level and the days that count are marked', () => {
    expect(drawn.marks('diamond', INK).map(([px]) => Math.floor(x(px)))).toEqual([
      daysBetween('2026-09-20', '2026-10-04'),
    ]);
    const cover = drawn.marks('square', INK).map(([px]) => near(2)(x(px)));
    expect(cover).toContain(near(2)(daysBetween('2026-09-20', '2026-10-05') + 11 / 24));
    expect(drawn.dashed('12,6').map(([, from, , to]) => [near(0)(y(from!)), near(0)(y(to!))])).toEqual([
      [55, 55],
    ]);
    // 57, 58 and 56 °C at the lowest point, on 22, 23 and 24 September: three days at 55 °C.
    const counted = drawn.marks('square', '#1d6b3a').map(([px, py]) => [Math.floor(x(px)), near(1)(y(py))]);
    expect(counted).toEqual([
      [2, 55],
      [4, 55],
    ]);
    expect(drawn.texts).toContain('counted: 3 of 3 days');
    expect(drawn.texts).toContain('sanitising 55 °C');
  });

  test('the forecast ends 5 °C over the air, inside its band, on the day that the title says', () => {
    const [pin] = drawn.marks('pin', INK);
    const on = new Date(Date.parse('2026-09-20T00:00:00Z') + x(pin![0]) * 86_400_000).toISOString();
    expect(near(1)(y(pin![1]))).toBe(14);
    const day = on.slice(0, 10);
    expect(`${day.slice(8)} ${day.slice(5, 7) === '01' ? 'Jan' : day}`).toMatch(/^1[789] Jan$/);
    const said = /near it about (\d+) Jan/.exec(shownText(heat))?.[1];
    expect(Math.abs(Number(said) - Number(day.slice(8)))).toBeLessThanOrEqual(1);
    const [band] = drawn.areas;
    const ends = band!.map(([px]) => x(px!));
    expect(Math.min(...ends)).toBeCloseTo(daysBetween('2026-09-20', TODAY) + 0.5, 1);
    expect(Math.max(...ends)).toBeGreaterThan(x(pin![0]));
    expect(band!.map(([, py]) => near(0)(y(py!))).at(0)).toBe(25);
  });

  test('the title says the finding, with its units; so does the text in its place', () => {
    expect(shownText(heat)).toMatch(/^Pile B: 16 °C over ambient, near it about \d+ Jan /);
    expect(heat.alt).toMatch(/^Pile B: 16 °C over ambient, near it about \d+ Jan\n/);
    expect(heat.alt).toMatch(/12 readings since .*, the hottest 62 °C/);
    expect(drawn.texts).toContain('temperature, °C');
  });
});

describe('a week', () => {
  const data = week.data as WeekData;
  const drawn = drawnIn(drawSvg(week));
  const y = drawn.scale(data.y.ticks, 'y');
  const today = daysBetween(FIRST, TODAY);
  const bars = (colour: string) => drawn.bars(colour).map(({ foot, top }) => near(0)(y(top) - y(foot)));

  test('bars are as high as what was weighed, less the cart, by day and source, with the chips beside', () => {
    const days = [today - 1, today].map(loadsOn);
    expect(data.sources.map(({ name }) => name)).toEqual(['east kitchen', 'west kitchen', 'cafe']);
    const blue = drawn
      .bars(COOL)
      .slice(0, 2)
      .map(({ foot, top }) => y(top) - y(foot));
    // A border of two pixels takes a little off each bar.
    days.forEach(({ east }, i) => {
      expect(Math.abs(blue[i]! - (east - 15.5))).toBeLessThan(1.2);
    });
    bars('#1d6b3a').forEach((kg, i) => {
      expect(Math.abs(kg - days[i]!.chips)).toBeLessThan(1.6);
    });
    expect(bars('#1d6b3a')).toHaveLength(2);
    expect(bars('#7fb3d9')).toHaveLength(days.filter(({ cafe }) => cafe !== null).length);
  });

  test('what is usual for a day is the mean of that day over eight weeks', () => {
    const thursdays = Array.from({ length: 8 }, (_, i) => loadsOn(today + 2 - 7 * (i + 1)));
    const mean =
      thursdays.reduce(
        (sum, { east, west, cafe }) => sum + east + west - 31 + (cafe === null ? 0 : cafe - 15.5),
        0,
      ) / 8;
    const dashes = drawn.marks('square', INK).map(([, py]) => y(py));
    expect(dashes).toHaveLength(5);
    expect(dashes[3]).toBeCloseTo(mean, 0);
  });

  test('seven weeks stand under it, each with its sum', () => {
    for (const { shown, text } of data.weeks!.bars) {
      expect(drawn.texts).toContain(shown);
      expect(drawn.texts).toContain(text);
    }
    const heights = drawn.bars('#dfe3dc').map(({ foot, top }) => foot - top);
    const values = data.weeks!.bars.slice(0, -1).map(({ value }) => value);
    expect(heights).toHaveLength(6);
    expect(heights[2]! / heights[3]!).toBeCloseTo(values[2]! / values[3]!, 1);
  });
});

describe('the year', () => {
  const data = year.data as YearData;
  const drawn = drawnIn(drawSvg(year));
  const x = drawn.scale(data.x.ticks, 'x');
  const y = drawn.scale(data.y.ticks, 'y');

  test('what is in stands at today, the target at the end, the likely span between its ends', () => {
    const [now] = drawn.marks('circle', COOL);
    const inHand = Number(/^([\d.]+) t in since/.exec(year.alt)?.[1]);
    expect(near(2)(y(now![1]))).toBeCloseTo(inHand, 1);
    expect(x(now![0])).toBeCloseTo(daysBetween('2026-01-01', TODAY) + 1, 0);
    const [target] = drawn.marks('diamond', INK);
    expect([near(0)(x(target![0])), near(1)(y(target![1]))]).toEqual([365, 14]);
    const [, low, high] = /likely ([\d.]+) t to ([\d.]+) t/.exec(year.alt)!.map(Number);
    const ends = drawn.marks('square', INK).map(([, py]) => y(py));
    expect(ends[0]).toBeCloseTo(low!, 1);
    expect(ends[1]).toBeCloseTo(high!, 1);
    expect(drawn.areas).toHaveLength(1);
  });

  test('the line rises by what each week brought', () => {
    const { points } = data.total;
    const [before, last] = points.slice(-2);
    const days = Array.from(
      { length: last![0] - before![0] },
      (_, i) => daysBetween(FIRST, '2026-01-01') + before![0] + i,
    );
    const kg = days
      .filter((day) => day % 7 < 5)
      .map((day) => ({ day, ...loadsOn(day) }))
      .reduce((sum, { east, west, cafe }) => sum + east + west - 31 + (cafe === null ? 0 : cafe - 15.5), 0);
    const weighed = data.weighed!.points.slice(-2);
    expect((weighed[1]![1] - weighed[0]![1]) * 1000).toBeCloseTo(kg, 6);
  });
});

describe('a mix', () => {
  const data = mix.data as MixData;
  const drawn = drawnIn(drawSvg(mix));
  const x = drawn.scale(data.x.ticks, 'x');
  const y = drawn.scale(data.y.ticks, 'y');
  const { east, west, chips } = loadsOn(daysBetween(FIRST, TODAY));
  const before = mixOf([
    { material: 'food-scraps', kg: east + west - 31 },
    { material: 'wood-chips', kg: chips },
  ]);

  test('the mark stands where the mix is, its bars reach over its spread', () => {
    const [dot] = drawn.marks('circle', HOT);
    expect(x(dot![0])).toBeCloseTo(before.moisturePct!.typical, 1);
    expect(y(dot![1])).toBeCloseTo(before.cn!.typical, 1);
    const ends = drawn.marks('square', HOT).map(([px, py]) => [x(px), y(py)]);
    expect(ends[0]![0]).toBeCloseTo(before.moisturePct!.low, 1);
    expect(ends.at(-1)![0]).toBeCloseTo(before.moisturePct!.high, 1);
    const upright = ends
      .slice(1, 3)
      .map(([, cn]) => cn!)
      .sort((a, b) => a - b);
    expect(upright[0]).toBeCloseTo(before.cn!.low, 1);
    expect(upright[1]).toBeCloseTo(before.cn!.high, 1);
  });

  test('the advice lands on another mark, in the window of 55 to 60 % water', () => {
    const [after] = drawn.marks('diamond', COOL);
    expect(x(after![0])).toBeGreaterThan(55);
    expect(x(after![0])).toBeLessThan(60);
    const window = drawn.paths.find(({ fill }) => fill === '#cfe6d4')!;
    const [left, top, width, , , height] = [...window.d.matchAll(/-?[\d.]+/g)].map(([each]) => Number(each));
    expect([x(left!), x(left! + width!), y(top! + height!)].map(near(0))).toEqual([55, 60, 25]);
    expect(shownText(mix)).toMatch(/^Mix today: 65 % water, add 1 barrow of chips/);
  });
});

describe('every picture', () => {
  test.each(Object.entries(ALL))(
    '%s is kept as texts and numbers alone, and drawn from what was kept',
    (_name, spec) => {
      const kept = JSON.parse(JSON.stringify(spec)) as PictureSpec;
      expect(kept).toEqual(spec);
      expect(JSON.stringify(kept)).not.toContain('"line":{');
      expect(drawnIn(drawSvg(kept)).texts).toEqual(drawnIn(drawSvg(spec)).texts);
    },
  );

  test.each(Object.entries(ALL))('%s is the same picture on a machine in any zone', async (_name, spec) => {
    const zone = process.env.TZ;
    const one = await draw(spec);
    process.env.TZ = 'Pacific/Auckland';
    const other = await draw(spec);
    if (zone === undefined) delete process.env.TZ;
    else process.env.TZ = zone;
    expect(one.equals(other)).toBe(true);
    expect(one.subarray(1, 4).toString('latin1')).toBe('PNG');
    expect(one.readUInt32BE(16)).toBe(1440);
  });

  test.each(['fr', 'es'] as const)('speaks %s', (language) => {
    const asked = {
      fr: ['état B', 'semaine', 'année', 'mélange'],
      es: ['estado B', 'semana', 'año', 'mezcla'],
    }[language];
    const starts = {
      fr: [
        /^Tas B : 16 °C au-dessus de l'air/,
        /^192 kg reçus depuis le 23 nov/,
        /^7,02 t reçues/,
        /^Mélange du jour : 65 % d'eau/,
      ],
      es: [
        /^Pila B: 16 °C sobre el ambiente/,
        /^Entraron 192 kg desde el 23 nov/,
        /^Entraron 7,02 t/,
        /^Mezcla de hoy: 65 % de agua/,
      ],
    }[language];
    asked.forEach((text, i) => {
      const spec = pictureOf(text, language)!;
      expect(shownText(spec)).toMatch(starts[i]!);
      expect(spec.alt).toMatch(starts[i]!);
    });
  });

  test('no text is wider than the picture', () => {
    for (const spec of Object.values(ALL)) {
      for (const text of drawnIn(drawSvg(spec)).texts) expect(text.length).toBeLessThan(62);
    }
  });

  test('a name made to break it is shown as it is, and a sign that no file may hold is left out', async () => {
    const data = structuredClone(week.data) as WeekData;
    data.sources[0]!.name = '<img src=x onerror="a()">&\u0007\u202eb\ud800';
    const spec = { draw: 'week', data };
    expect(drawnIn(drawSvg(spec)).texts).toContain('<img src=x onerror="a()">&b');
    expect(drawSvg(spec)).not.toContain('<img');
    expect((await draw(spec)).length).toBeGreaterThan(20_000);
  });

  test('what nothing draws, and data of another shape, is refused', async () => {
    expect(() => drawSvg({ draw: 'toString', data: {} })).toThrow(RangeError);
    expect(() => drawSvg({ draw: 'heat', data: { title: 'Pile B' } })).toThrow();
    await expect(draw({ draw: 'year', data: null })).rejects.toThrow();
  });
});

test('the weekly post carries one picture of the week that it tells of', () => {
  const rows = Array.from({ length: 3000 }, (_, i) => crew.book.outgoing(i + 1)).filter(
    (row) => row?.about === 'week',
  );
  expect(rows.length).toBeGreaterThan(10);
  const last = rows.at(-1)!;
  expect(last.weekFrom).toBe('2026-11-16');
  expect(last.picture?.draw).toBe('week');
  expect(shownText(last.picture!)).toMatch(/^16 Nov to 22 Nov: 558 kg in, usually \d+ kg /);
});
