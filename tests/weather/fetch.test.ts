import type { RequestListener } from 'node:http';
import { describe, expect, it, test } from 'vitest';
import { expectations } from '../../src/weather/expect.ts';
import { fetchForecast } from '../../src/weather/fetch.ts';
import { addressFor, serviceOf } from '../../src/weather/service.ts';
import { json, service, standIn, VALLEY } from './stand-in.ts';

const PLACE = { latitude: 46.0911, longitude: -64.7782 };

async function asked(answer: RequestListener, timeoutMs?: number, names?: string) {
  const there = await standIn(answer);
  const made = service(there.address, names);
  const how = timeoutMs ? { timeoutMs } : {};
  return { got: await fetchForecast(addressFor(made, PLACE), made.fields, how), asked: there.asked };
}

test('a right answer is read; the service hears the place to a kilometre', async () => {
  const { got, asked: urls } = await asked(json(VALLEY));
  expect(got).toEqual({ ok: true, daily: VALLEY.daily });
  expect(urls).toEqual(['/days?at=46.09,-64.78']);
});

test('a service that names its lists otherwise is read through the names given', async () => {
  const { got } = await asked(
    json({ tage: { datum: ['2026-11-25'], regen: [7], tiefst: [-2] } }),
    undefined,
    'daily=tage, time=datum, precipitation_mm=regen, min_celsius=tiefst',
  );
  expect(got).toEqual({
    ok: true,
    daily: { time: ['2026-11-25'], precipitation_mm: [7], min_celsius: [-2] },
  });
});

const changed = (change: Record<string, unknown>) => json({ daily: { ...VALLEY.daily, ...change } });
const NOT_UNDERSTOOD: [string, RequestListener][] = [
  ['HTML', (_q, response) => void response.end('<!doctype html><title>Sign in to the network</title>')],
  ['a list at the top', json([VALLEY])],
  ['no dates', changed({ time: undefined })],
  ['dates only', json({ daily: { time: VALLEY.daily.time } })],
  ['a date with a clock time', changed({ time: VALLEY.daily.time.map((day) => `${day}T00:00`) })],
  ['words for figures', changed({ precipitation_mm: ['0', '12.5', '4.9', '30'] })],
  ['a list too short', changed({ wind_kmh: [12, 39] })],
  ['degrees that are no weather', changed({ max_celsius: [48, 46, 44, 75] })],
  [
    'a body that is huge',
    (_q, response) => void response.end(JSON.stringify({ ...VALLEY, more: 'x'.repeat(300_000) })),
  ],
];
describe('what is no forecast', () => {
  it.each(NOT_UNDERSTOOD)('%s', async (_name, answer) => {
    expect((await asked(answer)).got).toEqual({ ok: false, why: 'not-understood' });
  });
});

const NO_ANSWER: [string, RequestListener, number?][] = [
  ['500, whatever it says', (_q, response) => void response.writeHead(500).end(JSON.stringify(VALLEY))],
  ['cut before a word', (request) => void request.socket.destroy()],
  [
    'cut in the middle',
    (_q, response) => {
      response.writeHead(200, { 'content-length': '9000' });
      response.write('{"daily":', () => response.socket?.destroy());
    },
  ],
  ['nothing for too long', () => {}, 60],
  ['a body that never ends', (_q, response) => void response.writeHead(200).write('{"daily":'), 60],
  [
    'sent on to somewhere else',
    (request, response) =>
      request.url === '/elsewhere'
        ? json(VALLEY)(request, response)
        : void response.writeHead(302, { location: '/elsewhere' }).end(),
  ],
];
describe('no answer', () => {
  it.each(NO_ANSWER)('%s', async (_name, answer, timeoutMs) => {
    expect((await asked(answer, timeoutMs)).got).toEqual({ ok: false, why: 'no-answer' });
  });

  it('nobody is there', async () => {
    const { fields } = service('http://127.0.0.1:1/{latitude},{longitude}');
    expect(await fetchForecast('http://127.0.0.1:1/', fields)).toEqual({ ok: false, why: 'no-answer' });
  });
});

test('three days from today on, each kind from its level on', () => {
  expect(expectations(VALLEY.daily, '2026-11-24')).toEqual([
    { expects: 'rain', for: '2026-11-25', mm: 12.5 },
    { expects: 'frost', for: '2026-11-25', mm: null },
    { expects: 'wind', for: '2026-11-26', mm: null },
  ]);
  const days = ['2026-07-01', '2026-07-02', '2026-07-02', '2026-07-03'];
  expect(
    expectations(
      { time: days, max_celsius: [31.9, 32, 35, null], precipitation_mm: [5, 0, 0, null] },
      days[0]!,
    ),
  ).toEqual([
    { expects: 'rain', for: '2026-07-01', mm: 5 },
    { expects: 'heat', for: '2026-07-02', mm: null },
  ]);
});

test('an address or names that cannot be used are told in a sentence; none at all is off', () => {
  const address = 'http://127.0.0.1/{latitude}/{longitude}';
  expect(serviceOf({})).toBe(null);
  expect(serviceOf({ WEATHER_URL: ' ' })).toBe(null);
  expect(serviceOf({ WEATHER_URL: 'http://127.0.0.1/' })).toMatch(/\{latitude\}/);
  expect(serviceOf({ WEATHER_URL: `ftp${address.slice(4)}` })).toMatch(/http/);
  expect(serviceOf({ WEATHER_URL: address, WEATHER_FIELDS: 'rain=regen' })).toMatch(/ours=theirs/);
  expect(serviceOf({ WEATHER_URL: address, WEATHER_FIELDS: 'time' })).toMatch(/ours=theirs/);
});
