import { describe, expect, it, test } from 'vitest';
import { HOSPITAL, startScenario } from './harness.ts';

const SITE = {
  ...HOSPITAL,
  containers: { ...HOSPITAL.containers, cart: { tareKg: 15.5, litres: 240, holds: 'food-scraps' } },
  peopleNearby: 'wards',
};
/** A Monday. */
const open = (more: object = {}) => startScenario({ ...SITE, ...more }, '2026-05-04T08:00');

describe.each([
  {
    language: 'en',
    cap: 'set weekly cap 100 kg',
    set: /limit for the week 100 kg/,
    over: /Over the limit for the week: 105 kg of 100 kg, till Sun 10 May/,
    year: /Over the limit for a week: 105.1 kg of 100 kg/,
    today: /Mind the limit for the week: 105.1 kg in, over 100 kg/,
    off: 'set weekly cap off',
  },
  {
    language: 'fr',
    cap: 'règle plafond hebdomadaire 100 kg',
    set: /plafond par semaine 100 kg/,
    over: /Plafond par semaine dépassé\s: 105 kg sur 100 kg, jusqu'à dim 10 mai/,
    year: /105,1 kg sur 100 kg/,
    today: /Surveiller le plafond par semaine\s: 105,1 kg/,
    off: 'règle plafond hebdomadaire aucun',
  },
  {
    language: 'es',
    cap: 'fija tope semanal 100 kg',
    set: /tope por semana 100 kg/,
    over: /Se pasó el tope por semana: 105 kg de 100 kg, hasta dom 10 may/,
    year: /105,1 kg de 100 kg/,
    today: /Vigilar el tope por semana: 105,1 kg/,
    off: 'fija tope semanal ninguno',
  },
])('a cap by chat, in $language', ({ language, cap, set, over, year, today, off }) => {
  it('is set, spoken of once by the load that passes it, watched, and lifted', () => {
    const site = open();
    const as = { language, coordinator: true };
    expect(site.ask(cap, as)).toMatch(set);
    const load = { en: 'cart', fr: 'bac', es: 'carrito' }[language];
    expect(site.ask(`${load} 68`, as)).not.toMatch(over);
    expect(site.ask(`${load} 68`, as)).toMatch(over);
    expect(site.ask(`${load} 15.6`, as)).not.toMatch(over);
    const words = { en: ['year', 'today'], fr: ['année', 'quoi faire'], es: ['año', 'qué hay que hacer'] };
    const [ofYear, ofToday] = words[language as 'en'];
    expect(site.ask(ofYear!, as)).toMatch(year);
    expect(site.ask(ofToday!, as)).toMatch(today);
    site.say(off, as);
    expect(site.ask(ofToday!, as)).not.toMatch(today);
  });
});

test('a permit told by chat is spoken of a month before, and a new day puts it away', () => {
  const site = open();
  const as = { coordinator: true };
  expect(site.ask('the site permit expires on 30 may', as)).toMatch(/permit site runs out Sat 30 May/);
  const due = site.ask('today', as);
  expect(due).toMatch(/Renew permit site: runs out Sat 30 May$/m);
  expect(due).toContain('"set permit site 2027-05-30"');
  expect(site.ask('settings', as)).toMatch(/^Permit site runs out Sat 30 May$/m);
  site.say('set permit Site 30 may 2027', as);
  expect(site.ask('today', as)).not.toMatch(/permit/);
  expect(site.ask('settings', as).match(/permit/gi)).toHaveLength(1);
});

test('what today says to send for a permit can be sent', () => {
  const site = open();
  const as = { coordinator: true };
  site.say('training Amy loader expires 20 may', as);
  const sent = /Send "(set training [^"]+)"/.exec(site.ask('today', as))![1]!;
  expect(site.ask(sent, as)).toMatch(/training Amy loader runs out Thu 20 May 2027/);
});

test('a setting is for coordinators', () => {
  const site = open();
  expect(site.ask('set weekly cap 2 t', { from: 'Kim', chat: 'c', coordinator: false })).not.toBe('');
});

describe('new here: eight lines from the site’s own settings', () => {
  test.each(['en', 'fr', 'es'])('in %s', (language) => {
    const site = open({
      recipe: { chips: 2, food: 1 },
      safety: {
        emergencyNumber: '112',
        address: '4 Mill Lane',
        isolator: 'red switch by the gate',
        firstAider: 'Amy',
      },
    });
    site.say('set wards north-east', { coordinator: true });
    const ask = { en: 'new here', fr: 'nouveau ici', es: 'soy nueva aquí' }[language]!;
    const lines = site.ask(ask, { language }).split('\n');
    expect(lines).toHaveLength(8);
    const said = lines.join('\n');
    for (const own of ['Fernhill', '112', '4 Mill Lane', 'Amy', 'red switch by the gate'])
      expect(said).toContain(own);
    expect(said).toMatch(/15[.,]5 kg/);
    expect(said).toMatch(/2 (?:of|de)/);
    expect(said).toMatch(/north-east|nord-est|noreste/);
  });

  test('what is not set is not made up', () => {
    const site = startScenario({ ...HOSPITAL, drums: [] });
    const lines = site.ask('new here').split('\n');
    expect(lines).toHaveLength(8);
    expect(lines.join('\n')).toMatch(/no number is set here yet[\s\S]*tell its empty weight once/);
    expect(lines.join('\n')).not.toMatch(/drum/);
  });
});

describe.each([
  ['en', 'what do I tell east kitchen?', 'east kitchen: 3 of 22 carts dirty in 30 days, mostly gloves.'],
  ['fr', 'je dis quoi à east kitchen ?', /3 bacs sales sur 22 en 30 jours, surtout gants/],
  ['es', '¿qué le digo a east kitchen?', /3 de 22 carritos sucios en 30 días, sobre todo guantes/],
])('a kitchen is told in %s', (language, question, answer) => {
  it('how many of its carts were dirty, and with what', () => {
    const site = open();
    for (let i = 0; i < 22; i += 1) {
      const dirt = i === 3 || i === 9 ? ', contaminated, gloves in it' : i === 15 ? ' dirty, glass' : '';
      site.say(`east kitchen cart ${60 + i / 10}${dirt}`);
    }
    site.say('west kitchen cart 70');
    const said = site.ask(question, { language });
    if (typeof answer === 'string') expect(said).toBe(answer);
    else expect(said).toMatch(answer);
  });
});

test('what do I tell the kitchens: of all of them, the dirtiest first', () => {
  const site = open();
  site.say('west kitchen cart 60');
  site.say('east kitchen cart 60 contaminated, gants');
  expect(site.ask('what do I tell the kitchens?')).toMatch(
    /^east kitchen: 1 of 1 carts dirty.*gloves\.\nwest kitchen: 1 cart in 30 days, all clean/,
  );
});

describe('yield and balance', () => {
  const fed = (more: object = {}) => {
    const site = open(more);
    for (let i = 0; i < 4; i += 1) site.say('food scraps 265.5 kg to B');
    site.say('chips 500 kg');
    return site;
  };
  test('are said where they are asked for, with what is not explained and the published range beside', () => {
    const site = fed();
    site.say('sold 240 L of compost from C', { at: '2026-09-01T10:00' });
    const year = site.ask('year', { at: '2026-09-01T10:05' });
    expect(year).toMatch(/Compost out: [\d.]+ L for each 100 kg of food in \(large sites 72 L to 87 L\)/);
    const why = site.ask('why', { at: '2026-09-01T10:06' });
    expect(why).toMatch(/Off as gas and steam, by the published range/);
    const balance = site.ask('mass balance', { at: '2026-09-01T10:07' });
    expect(balance).toMatch(/In the piles or not explained: \d+ kg to [\d,]+ kg/);
    expect(balance).toMatch(/Not weighed, so not in it: 240 L of compost/);
    expect(site.ask('why', { at: '2026-09-01T10:08' })).toMatch(
      /Source: Washington State Department of Ecology/,
    );
    expect(site.ask('bilan massique', { at: '2026-09-01T10:09', language: 'fr' })).toMatch(/inexpliqué/);
    expect(site.ask('balance de masa', { at: '2026-09-01T10:10', from: 'Luz', language: 'es' })).toMatch(
      /sin explicar/,
    );
  });

  test('more out than can be is said so, not made to fit', () => {
    const site = fed();
    site.say('sold 4000 kg of compost from C', { at: '2026-09-01T10:00' });
    expect(site.ask('mass balance', { at: '2026-09-01T10:07' })).toMatch(/more came out than can be/);
  });

  test('an ash balance where a laboratory gave the ash', () => {
    const site = fed();
    expect(site.ask('ash balance of B')).toMatch(/^No ash balance/);
    site.say('B lab ash 15 %', { at: '2026-05-10T10:00' });
    site.say('B lab ash 30 %', { at: '2026-09-01T10:00' });
    expect(site.ask('ash balance of B', { at: '2026-09-01T10:05' })).toMatch(
      /Pile B by its ash \(15 % → 30 %, #\d+; start from an earlier result\): 50 % of the dry mass lost/,
    );
    expect(
      site.ask('balance de cenizas de B', { at: '2026-09-01T10:06', from: 'Luz', language: 'es' }),
    ).toMatch(/perdió 50 % de la masa seca/);
  });
});

test('what happened since friday, asked on a Friday, is a week and who has what', () => {
  const site = open({ ruleSet: 'vessel-3d' });
  site.say('B full', { at: '2026-05-08T09:00' });
  site.say('B 61', { at: '2026-05-09T09:00', from: 'Kim' });
  site.say('today', { at: '2026-05-15T08:50' });
  site.say("I'll do 1", { at: '2026-05-15T08:55', from: 'Kim' });
  const said = site.ask('what happened since friday?', { at: '2026-05-15T09:00' });
  expect(said).toMatch(/since Fri 8 May/);
  expect(said).toMatch(/#1 Pile B is full and closed[\s\S]*#2 Pile B 61 °C/);
  expect(said).toMatch(/1 .*Kim has it/);
});
