import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { drawSvg, type HeatData } from '#charts';
import { drawAsText, draws } from '../../src/commands/drawing.ts';
import { HOSPITAL, startScenario } from '../scenarios/harness.ts';
import { drawnIn } from './drawn.ts';

let asked = 0;
const picture = (crew: ReturnType<typeof startScenario>, text: string) => {
  asked += 1;
  const id = `asked ${asked}`;
  const { replies } = crew.say(text, { id });
  const message = crew.book.message(crew.site, 'replay', 'group', id, null);
  expect(replies).toHaveLength(1);
  return crew.book.outgoingOfMessage(message!.id)[0]!.picture;
};

test('a picture comes where it was asked for, and where there is something to show', () => {
  const crew = startScenario(HOSPITAL);
  expect(picture(crew, 'status B')).toBeNull();
  expect(picture(crew, 'week')).toBeNull();
  expect(picture(crew, 'year')).toBeNull();
  expect(picture(crew, 'mix')).toBeNull();
  expect(picture(crew, 'B 51 49 C')).toBeNull();
  expect(picture(crew, 'B 52 50 C')).toBeNull();
  expect(picture(crew, 'status B')).toBeNull();
  expect(picture(crew, 'B 53 51 C')).toBeNull();
  const three = picture(crew, 'status B');
  expect(three?.draw).toBe('heat');
  expect(three?.alt).toMatch(/^Pile B: hottest 53 °C/);
  expect(picture(crew, 'status')).toBeNull();
});

test.each(['pile B', 'graph of B', 'picture of B', 'image de B', 'montre le graphique du tas B'])(
  '%s brings the picture of the pile',
  (said) => {
    const crew = startScenario(HOSPITAL);
    for (const reading of ['B 51 C', 'B 52 C', 'B 53 C']) crew.say(reading);
    expect(picture(crew, said)?.draw).toBe('heat');
    expect(picture(crew, said.replace('B', 'C'))).toBeNull();
  },
);

test('a pile named alone still answers the question which one', () => {
  const crew = startScenario(HOSPITAL);
  expect(crew.say('turned').replies[0]?.text).toContain('which pile?');
  expect(crew.say('pile B').replies[0]?.text).toContain('Turned pile B');
});

test('a site in pounds and Fahrenheit sees its own units on every axis', () => {
  const units = { mass: 'lb', temperature: 'F', volume: 'gal', length: 'in' };
  const crew = startScenario({
    ...HOSPITAL,
    units,
    containers: { cart: { litres: 240, tareKg: 16, holds: 'food-scraps' } },
  });
  for (const reading of ['B 131 F', 'B 140 F', 'B 122 F']) crew.say(reading);
  const heat = picture(crew, 'status B')!;
  const drawn = drawnIn(drawSvg(heat));
  const y = drawn.scale((heat.data as HeatData).y.ticks, 'y');
  expect(drawn.marks('circle', '#a3230f').map(([, py]) => Math.round(y(py)))).toEqual([131, 140, 122]);
  expect(drawn.texts).toContain('temperature, °F');
  crew.say('100 lb net food scraps');
  const week = picture(crew, 'week')!;
  expect(drawnIn(drawSvg(week)).texts).toContain('lb in a day');
  expect(week.alt).toMatch(/^100 lb in/);
});

test('the terminal saves a picture beside the book and says where', async () => {
  const crew = startScenario(HOSPITAL);
  for (const reading of ['B 51 C', 'B 52 C', 'B 53 C']) crew.say(reading);
  const spec = picture(crew, 'status B')!;
  const folder = mkdtempSync(join(tmpdir(), 'pictures-'));
  try {
    const said = await drawAsText(join(folder, 'site.db'), (path) => `Picture: ${path}`)(spec, 12);
    const path = join(folder, 'pictures', '12-heat.png');
    expect(said).toBe(`Picture: ${path}`);
    expect(existsSync(path)).toBe(true);
    expect(readFileSync(path).equals(Buffer.from((await draws(spec))!))).toBe(true);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
