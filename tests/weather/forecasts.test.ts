import type { RequestListener } from 'node:http';
import { expect, test } from 'vitest';
import { forecasts } from '../../src/weather/forecasts.ts';
import { incoming } from '../logbook/samples.ts';
import { startScenario } from '../scenarios/harness.ts';
import { json, service, standIn, VALLEY } from './stand-in.ts';

const VALLEY_SITE = {
  name: 'Lower Terrace',
  timeZone: 'America/Moncton',
  place: { latitude: 46.0911, longitude: -64.7782 },
  containers: { cart: { litres: 240, holds: 'food-scraps', tareKg: 15.5 } },
  piles: ['B'],
};

/** A site with a forecast, and the means to change what the service says. */
async function valley(site: unknown = VALLEY_SITE) {
  let answer: RequestListener = json(VALLEY);
  const there = await standIn((request, response) => answer(request, response));
  const scenario = startScenario(site);
  const warned: string[] = [];
  const faults: unknown[] = [];
  const make = () =>
    forecasts({
      service: service(there.address),
      book: scenario.book,
      assistant: scenario.assistant,
      warn: (line) => warned.push(line),
      complain: (_what, error) => faults.push(error),
    });
  const weather = make();
  return {
    ...scenario,
    asked: there.asked,
    warned,
    faults,
    weather,
    again: make,
    answers(next: RequestListener) {
      answer = next;
    },
    /** The lines that a forecast made, with `taken back` beside those that no longer stand. */
    written: () =>
      [...scenario.book.entriesWalk(scenario.site)]
        .filter(({ assumed, record }) => assumed.includes('forecast') && record.kind === 'weather')
        .map(({ record, person, voidedBy }) => {
          const { expects, when, mm } = record as { expects: string; when: string; mm?: number };
          const said = `${expects} ${when}${mm === undefined ? '' : ` ${mm} mm`}`;
          return `${person === null ? '' : 'by somebody: '}${said}${voidedBy === null ? '' : ' taken back'}`;
        }),
  };
}

test('the mean of the day stands in for the air, marked as such, until somebody reads it', async () => {
  const site = await valley();
  await site.weather.look('2026-11-24T13:00:00.000Z');
  await site.weather.look('2026-11-24T17:00:00.000Z');
  const air = () =>
    [...site.book.entriesWalk(site.site)].filter(
      ({ record }) => record.kind === 'temperature' && record.place === 'ambient',
    );
  expect(air().map(({ record, person, assumed }) => ({ record, person, assumed }))).toEqual([
    {
      record: expect.objectContaining({ celsius: [6], approximate: true }),
      person: null,
      assumed: ['forecast'],
    },
  ]);
  const read = site.ask('B 41', { at: '2026-11-24T14:30' });
  expect(read).toMatch(/35 °C over the air \(6 °C, forecast\)/);
  expect(read).not.toMatch(/how warm is the air/i);
  expect(site.ask('why', { at: '2026-11-24T14:31' })).toMatch(/air 6 °C, forecast/);
  site.say('ambient 9', { at: '2026-11-24T14:35' });
  expect(site.ask('B 41', { at: '2026-11-24T14:40' })).toMatch(/32 °C over the air \(9 °C\)/);
  await site.weather.look('2026-11-25T13:00:00.000Z');
  // A day that was read is not told by its forecast; the next one is.
  expect(air().map(({ record }) => (record as { celsius: number[] }).celsius)).toEqual([[6], [9], [4]]);
  expect(site.ask('today', { at: '2026-11-25T10:00' })).not.toMatch(/read the air/i);
});

test('the mean that somebody took back is not written again that day', async () => {
  const site = await valley();
  await site.weather.look('2026-11-24T13:00:00.000Z');
  const air = [...site.book.entriesWalk(site.site)].find(({ record }) => record.kind === 'temperature')!;
  site.say(`undo #${air.number}`, { at: '2026-11-24T11:00' });
  await site.weather.look('2026-11-24T17:00:00.000Z');
  const still = [...site.book.entriesWalk(site.site)].filter(
    ({ record, voidedBy }) => record.kind === 'temperature' && voidedBy === null,
  );
  expect(still).toEqual([]);
});

test('a forecast wind has its direction, and holds a turning back only towards the wards', async () => {
  const site = await valley({ ...VALLEY_SITE, peopleNearby: 'wards' });
  const gale = (from: number) =>
    json({
      daily: { time: VALLEY.daily.time, wind_kmh: [50, 0, 0, 0], wind_from_degrees: [from, 0, 0, 0] },
    });
  site.say('B full', { at: '2026-11-01T09:00' });
  site.say('set wards north-east', { at: '2026-11-23T09:00' });
  site.answers(gale(230));
  await site.weather.look('2026-11-24T13:00:00.000Z');
  expect(site.ask('today', { at: '2026-11-24T10:00' })).toMatch(
    /Later: Turn pile B \(wind from the south-west towards the wards\)/,
  );
  site.answers(gale(190));
  await site.weather.look('2026-11-24T16:30:00.000Z');
  expect(site.ask('today', { at: '2026-11-24T12:45' })).toMatch(/wind from the south towards the wards/);
  site.answers(gale(10));
  await site.weather.look('2026-11-24T20:00:00.000Z');
  expect(site.ask('today', { at: '2026-11-24T16:30' })).toMatch(/\d Turn pile B/);
});

const dry = { daily: { time: VALLEY.daily.time, precipitation_mm: [0, 0, 0, 0] } };

test('rain in the forecast asks for a cover; each kind and day stands once, by nobody', async () => {
  const site = await valley();
  site.say('B 41');
  expect(site.ask('today')).not.toMatch(/cover pile B/i);
  await site.weather.look('2026-11-24T13:00:00.000Z');
  const lines = ['rain 2026-11-25 12.5 mm', 'frost 2026-11-25', 'wind 2026-11-26'];
  expect(site.written()).toEqual(lines);
  await site.weather.look('2026-11-24T17:00:00.000Z');
  await site.again().look('2026-11-24T17:30:00.000Z');
  expect(site.written()).toEqual(lines);
  expect(site.ask('today', { at: '2026-11-24T14:00' })).toMatch(/cover pile B/i);
  expect(site.faults).toEqual([]);
});

test('asked again after three hours, and not before; a start anew asks no sooner', async () => {
  const site = await valley();
  await site.weather.look('2026-11-24T13:00:00.000Z');
  await site.weather.look('2026-11-24T15:59:59.999Z');
  await site.again().look('2026-11-24T15:59:59.999Z');
  expect(site.asked.length).toBe(1);
  await site.weather.look('2026-11-24T16:00:00.000Z');
  expect(site.asked.length).toBe(2);
});

test('the last good forecast serves on, and brings in the new third day, until it is 36 hours old', async () => {
  const site = await valley();
  await site.weather.look('2026-11-24T13:00:00.000Z');
  site.answers((request) => void request.socket.destroy());
  await site.weather.look('2026-11-26T00:59:59.999Z');
  const lines = ['rain 2026-11-25 12.5 mm', 'frost 2026-11-25', 'wind 2026-11-26'];
  const third = ['rain 2026-11-27 30 mm', 'frost 2026-11-27', 'wind 2026-11-27'];
  expect(site.written()).toEqual([...lines, ...third]);
  await site.weather.look('2026-11-26T01:00:00.000Z');
  expect(site.written()).toEqual([...lines, ...third].map((line) => `${line} taken back`));
  expect([site.warned, site.faults]).toEqual([[], []]);
});

test('what is no longer expected is taken back, and the cover no longer asked for', async () => {
  const site = await valley();
  site.say('B 41');
  await site.weather.look('2026-11-24T13:00:00.000Z');
  expect(site.ask('today', { at: '2026-11-24T10:00' })).toMatch(/cover pile B/i);
  site.answers(json(dry));
  await site.weather.look('2026-11-24T17:00:00.000Z');
  expect(site.written().filter((line) => !line.endsWith('taken back'))).toEqual([]);
  expect(site.ask('today', { at: '2026-11-24T18:00' })).not.toMatch(/cover pile B/i);
});

test('what somebody typed is not written again, nor what somebody took back', async () => {
  const site = await valley();
  site.say('rain tomorrow');
  await site.weather.look('2026-11-24T13:00:00.000Z');
  expect(site.written()).toEqual(['frost 2026-11-25', 'wind 2026-11-26']);
  site.say('undo #2', { at: '2026-11-24T11:00' });
  await site.weather.look('2026-11-24T17:00:00.000Z');
  expect(site.written()).toEqual(['frost 2026-11-25 taken back', 'wind 2026-11-26']);
});

test('no place, nothing asked; a place set in the chat is enough, and another place is asked of anew', async () => {
  const { place: _, ...nowhere } = VALLEY_SITE;
  const site = await valley(nowhere);
  await site.weather.look('2026-11-24T13:00:00.000Z');
  expect(site.asked).toEqual([]);
  const move = (message: string, latitude: number, longitude: number) =>
    site.assistant.receive(
      incoming(site.site, message, {
        text: '',
        location: { latitude, longitude },
        sentAt: '2026-11-24T13:00:00.000Z',
      }),
    );
  move('1', 10.5, 20.25);
  await site.weather.look('2026-11-24T13:00:01.000Z');
  move('2', -33, 151);
  await site.weather.look('2026-11-24T13:00:02.000Z');
  expect(site.asked).toEqual(['/days?at=10.50,20.25', '/days?at=-33.00,151.00']);
});

test('a service that answers with something else is told of once; a fault of ours keeps no later look away', async () => {
  const site = await valley();
  site.answers(json({ hello: 1 }));
  await site.weather.look('2026-11-24T13:00:00.000Z');
  await site.weather.look('2026-11-24T14:00:00.000Z');
  expect(site.warned.length).toBe(1);
  await site.weather.look('no instant');
  expect(site.faults.length).toBe(1);
  site.answers(json(VALLEY));
  await site.weather.look('2026-11-24T15:00:00.000Z');
  expect(site.written().length).toBe(3);
});

test('an end while the service is still thinking waits for nothing and writes nothing', async () => {
  const site = await valley();
  let heard: () => void = () => {};
  const arrived = new Promise<void>((resolve) => {
    heard = resolve;
  });
  site.answers(() => heard());
  const looking = site.weather.look('2026-11-24T13:00:00.000Z');
  await arrived;
  await site.weather.ended();
  await looking;
  expect([site.written(), site.faults]).toEqual([[], []]);
});

test('a rain that comes back is written again; the lines of days gone by are left alone', async () => {
  const site = await valley();
  await site.weather.look('2026-11-24T13:00:00.000Z');
  site.answers(json(dry));
  await site.weather.look('2026-11-24T17:00:00.000Z');
  site.answers(json(VALLEY));
  await site.weather.look('2026-11-24T21:00:00.000Z');
  site.answers(json(dry));
  await site.weather.look('2026-11-26T13:00:00.000Z');
  const lines = ['rain 2026-11-25 12.5 mm', 'frost 2026-11-25', 'wind 2026-11-26'];
  const gone = lines.map((line) => `${line} taken back`);
  expect(site.written()).toEqual([...gone, lines[0], lines[1], gone[2]]);
});
