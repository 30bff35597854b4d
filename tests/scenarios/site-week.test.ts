import { describe, expect, test } from 'vitest';
import { HOSPITAL, startScenario } from './harness.ts';

const SITE = {
  ...HOSPITAL,
  containers: { ...HOSPITAL.containers, cart: { tareKg: 15.5, litres: 240, holds: 'food-scraps' } },
};
/** Starts on a Monday. */
const open = (more: object = {}) => startScenario({ ...SITE, ...more }, '2026-05-04T08:00');
const as = { coordinator: true };

describe('the week', () => {
  test.each([
    ['en', 'week', /Of which pumpkins 47.17 kg; without it 50.5 kg/, /Thanks to Ana and Kim/],
    ['fr', 'semaine', /pumpkins 47,17 kg[\s\S]*50,5 kg/, /Merci à Ana et Kim/],
    ['es', 'semana', /pumpkins 47,17 kg[\s\S]*50,5 kg/, /Gracias a Ana y Kim/],
  ])(
    'in %s a stream that comes once is shown with and without, and who logged is thanked by first name',
    (language, ask, special, thanks) => {
      const site = open();
      site.say('east kitchen cart 66');
      site.say('pumpkins 104 lb', { from: 'Kim Reyes' });
      site.say('3 people 2 hours');
      const said = site.ask(ask, { language });
      expect(said).toMatch(special);
      expect(said).toMatch(thanks);
      expect(said).not.toContain('Reyes');
      expect(said).toMatch(/\b6 h/);
    },
  );

  test('that is over says nothing of "yet"', () => {
    const site = open();
    site.say('cart 66');
    expect(site.ask('week', { at: '2026-05-12T08:00' })).toMatch(/In: nothing weighed yet/);
    expect(site.ask('last week', { at: '2026-05-19T08:00' })).toMatch(/In: nothing weighed$/m);
  });

  test('starts on the day that was set by chat, also where a late line changes one that was sent', () => {
    const site = open();
    site.say('set week starts sunday', as);
    site.say('set summary monday 07:00', as);
    site.say('cart 66', { at: '2026-05-09T10:00' });
    const [post] = site.take({ at: '2026-05-11T07:30' }).posts;
    expect(post).toMatchObject({ about: 'week', weekFrom: '2026-05-03' });
    expect(site.ask('last saturday cart 60', { at: '2026-05-12T08:00' })).toMatch(
      /That makes the week of Sun 3 May, already sent, 44.5 kg more/,
    );
  });
});

test('the morning line comes at its hour, and only when something is due', () => {
  const site = open();
  site.say('set morning 7:00', as);
  expect(site.take({ at: '2026-05-05T07:30' }).posts).toEqual([]);
  site.say('B full', { at: '2026-05-05T09:00' });
  const [post, ...more] = site.take({ at: '2026-05-06T07:30' }).posts;
  expect(more).toEqual([]);
  expect(post).toMatchObject({ about: 'morning' });
  expect(post!.text).toMatch(/Read pile B/);
});

test.each([
  ['en', 'what did I log', 'cart 66', 'Undo #1'],
  ['fr', "qu'est-ce que j'ai noté ?", 'bac 66', 'Annuler #1'],
  ['es', '¿qué registré?', 'carrito 66', 'Deshacer #1'],
])('what I logged today, in %s, with a button that takes it back', (language, ask, load, label) => {
  const site = open();
  const from = { from: 'Kim', language };
  site.say(load, from);
  site.say('cart 70', { from: 'Sam' });
  const mine = site.say(ask, { ...from, id: 'mine' });
  expect(mine.replies[0]!.text).toMatch(/#1\b/);
  expect(mine.replies[0]!.text).not.toMatch(/#2\b/);
  expect(mine.replies[0]!.choices).toContain(label);
  site.take({ at: '2026-05-04T09:00', from: 'Kim', choose: { id: 'mine', label } });
  expect(site.lines()[0]).toMatchObject({ voidedBy: 3 });
});

describe('typed weather does what a forecast does', () => {
  test('rain asks for a cover, frost for the exit and chips, wind holds a turning back', () => {
    const site = open({ peopleNearby: 'wards' });
    site.say('B 41');
    site.say('rain tomorrow');
    expect(site.ask('today')).toMatch(/Cover pile B: rain tomorrow, Tue 5 May/);
    site.say('frost tonight');
    const today = site.ask('today');
    expect(today).toMatch(/Insulate the exit: frost/);
    expect(today).toMatch(/Dry chips under a roof: frost/);
    expect(site.ask('25 mm rain last night')).toMatch(/Rain seen · 25 mm/);
  });

  test.each([
    ['en', 'wind towards the wards today', 'today', /Later: Turn pile B \(wind towards the wards\)/],
    ['fr', "vent vers les chambres aujourd'hui", 'quoi faire', /Retourner tas B \(vent vers les chambres\)/],
    ['es', 'viento hacia las salas hoy', 'qué hay que hacer', /Voltear pila B \(viento hacia las salas\)/],
  ])('in %s the reason is said', (language, wind, ask, reason) => {
    const site = open({ peopleNearby: 'wards' });
    site.say('B full');
    site.say(wind, { at: '2026-05-20T08:00', language });
    expect(site.ask(ask, { at: '2026-05-20T08:05', language })).toMatch(reason);
  });
});
