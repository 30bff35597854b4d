import { describe, expect, test } from 'vitest';
import { HOSPITAL, startScenario } from './harness.ts';

const SAFETY = {
  emergencyNumber: '999',
  address: 'Fernhill, back gate',
  isolator: 'grey box by the door',
  firstAider: 'Rosa, 555 0100',
};

describe('in which language somebody is answered', () => {
  test('a group reply goes in the language of the message; figures alone in that of before', () => {
    const crew = startScenario(HOSPITAL);
    expect(crew.ask('bac 61,5 et copeaux 12', { from: 'Luc' })).toContain('Bac 61,5 kg brut');
    expect(crew.ask('carrito 58', { from: 'Luz' })).toContain('Carrito 58 kg bruto');
    expect(crew.ask('cart 62.5', { from: 'Ana' })).toContain('Cart 62.5 kg gross');
    expect(crew.ask('B 41 43', { from: 'Luc' })).toContain('Tas B');
    expect(crew.ask('C 47', { from: 'Luz' })).toContain('Pila C');
    expect(crew.ask('A 51', { from: 'Somebody new' })).toContain('Pile A');
  });

  test('a choice of one’s own wins over the language of the message', () => {
    const crew = startScenario(HOSPITAL);
    expect(crew.ask('french please', { from: 'Luc' })).toBe("D'accord, en français.");
    expect(crew.ask('cart 61.5', { from: 'Luc' })).toContain('brut');
    expect(crew.ask('language es', { from: 'Luc' })).toBe('Listo, en español.');
    expect(crew.ask('turned B', { from: 'Luc' })).toContain('Volteo: pila B');
    expect(crew.ask('en français', { from: 'Luc' })).toBe("D'accord, en français.");
    expect(crew.ask('turned C', { from: 'Ana' })).toContain('Turned pile C');
  });

  test('what goes to the coordinators is said in the language of the site', () => {
    const crew = startScenario(HOSPITAL);
    const turn = crew.say('au secours, le feu dans le tas B', { from: 'Luc' });
    expect(turn.replies[0]!.text).toMatch(/^Tout le monde recule/);
    expect(turn.posts).toHaveLength(1);
    expect(turn.posts[0]!.text).toMatch(/^Emergency reported by Luc: /);
  });

  test('an alarm is said in each language that a coordinator chose, the words of the writer once', () => {
    const crew = startScenario(HOSPITAL);
    crew.say('français svp', { from: 'Rosa', coordinator: true });
    crew.say('hello', { from: 'Bea', coordinator: true });
    const { posts } = crew.say('hay humo en la pila B', { from: 'Luz' });
    expect(posts).toHaveLength(1);
    expect(posts[0]!.text.split('\n').map((line) => line.replaceAll('\u00a0', ' '))).toEqual([
      'Urgence signalée par Luz : fumée.',
      'Emergency reported by Luz: smoke.',
      '"hay humo en la pila B"',
    ]);
  });

  test('an emergency is answered in the language that it was written in, whatever its writer chose', () => {
    const crew = startScenario({ ...HOSPITAL, languages: ['en'] });
    crew.say('french please', { from: 'Luc' });
    expect(crew.ask('cart 61.5', { from: 'Luc' })).toContain('brut');
    expect(crew.ask('smoke from pile B', { from: 'Luc' })).toMatch(/^Everybody back/);
    expect(crew.ask('AUXILIOOOO', { from: 'Ana' })).toMatch(/^¿Alguien herido/);
    expect(crew.ask('cart 62.5', { from: 'Luc' })).toContain('brut');
  });
});

describe('an emergency', () => {
  const site = { ...HOSPITAL, safety: SAFETY };
  const first = (text: string, from = 'Ana') =>
    startScenario(site).say(text, { from }).replies[0]!.text.split('\n');

  test('somebody in the drum: red stop, power, nobody in, never turned, the number, the place', () => {
    const lines = first("Dave's arm is in the drum");
    expect(lines[0]).toBe('PRESS THE RED STOP, POWER OFF. Nobody reaches in or climbs in. Call 999 now.');
    expect(lines.slice(1, 4)).toEqual([
      'Say where: Fernhill, back gate',
      'Power off at: grey box by the door. Do not turn the drum to free anybody. Nobody goes in, not even to rescue.',
      'First-aider: Rosa, 555 0100',
    ]);
  });

  test('smoke: back, neither opened nor turned, the fire service', () => {
    const lines = first('smoke from pile B');
    expect(lines[0]).toBe('Everybody back, upwind. Do not open or turn it.');
    expect(lines[1]).toBe('Call the fire service: 999.');
  });

  test('a needle: no reaching in, no tipping, lid shut, tag, aside; and what to do if pricked', () => {
    const lines = first('needle in west kitchen cart');
    expect(lines[0]).toBe('Do not reach in, do not tip it. Lid shut, tag it, set it aside.');
    expect(lines[1]).toMatch(/Soap and running water, then medical help at once: hours matter/);
  });

  test('somebody pricked: soap and running water first, then medical help', () => {
    const lines = first('Luz pricked her finger on a needle');
    expect(lines[0]).toBe('Soap and running water, now. Then medical help at once: hours matter.');
    expect(lines[1]).toBe('Call 999 or your clinic.');
  });

  test('gas: out, no switches, the call from a distance', () => {
    const lines = first('strong gas smell here');
    expect(lines[0]).toMatch(/^Out and away, upwind\. No switches/);
    expect(lines[1]).toBe('Call 999 from a safe distance.');
  });

  test('a bare cry for help counts as danger; the word alone is the list of what can be said', () => {
    expect(first('help!')[0]).toBe('Hurt or in danger? Stop the machines. Nobody reaches or climbs in.');
    expect(first('¡auxilio!')[0]).toMatch(/^¿Alguien herido o en peligro\?/);
    expect(first('help')[0]).toMatch(/^Log by texting/);
  });

  test('with nothing set, the number is "your emergency number"', () => {
    const lines = startScenario(HOSPITAL).ask('someone is hurt').split('\n');
    expect(lines[1]).toBe('Call your emergency number now.');
    expect(lines.join(' ')).not.toMatch(/undefined|null|Say where|First-aider/);
  });

  test('telling whom to call is a setting; calling out is not', () => {
    const crew = startScenario(HOSPITAL);
    expect(crew.ask('set emergency number 911')).toMatch(/^#1 Set: emergency number 911/);
    expect(crew.ask("règle numéro d'urgence 911")).toMatch(/^#2 Réglé\s: numéro d'urgence 911/);
    expect(crew.ask('règle sectionneur boîte grise')).toMatch(/sectionneur boîte grise/);
    expect(crew.ask('call 911')).toMatch(/^Stop the machines/);
    expect(crew.ask('emergency: call 911')).toMatch(/^Stop the machines/);
    expect(crew.ask("someone's arm is in the drum")).toContain('Call 911 now.');
  });

  test('two dangers in one message: both told, one call', () => {
    const lines = first("smoke from pile B and Dave's arm is in the drum");
    expect(lines[0]).toMatch(/RED STOP/);
    expect(lines.filter((line) => /\bCall /.test(line))).toHaveLength(1);
    expect(lines.join(' ')).toContain('Do not open or turn it.');
  });

  test('in the middle of anything, also as an answer to an older message', () => {
    const crew = startScenario(site);
    crew.say('cart 61.5', { id: 'm1' });
    const turn = crew.say("Dave's arm is stuck in the drum", { replyTo: 'm1' });
    expect(turn.replies[0]!.text).toMatch(/^PRESS THE RED STOP/);
    expect(turn.posts.map((post) => post.about)).toEqual(['alarm']);
  });

  test.each([
    ['while a doubt waits', ['cart 665']],
    ['while the empty weight is asked for', ['cart 61.5']],
    ['right after the questions of a set-up', ['empty cart 16', 'turned B', 'turned C']],
    ['while the air is asked for', ['B 41 43']],
    ['after a list of jobs', ['today']],
    ['after a mix was asked for', ['3 carts coming, how many chips?']],
  ])('%s', (_when, before) => {
    const crew = startScenario(site);
    for (const text of before) crew.say(text, { coordinator: true });
    const held = crew.lines().length;
    const turn = crew.say("Dave's arm is in the drum", { coordinator: true });
    expect(turn.replies[0]!.text).toMatch(/^PRESS THE RED STOP/);
    expect(turn.posts.map((post) => post.about)).toEqual(['alarm']);
    expect(crew.lines()).toHaveLength(held + 1);
    expect(crew.lines().at(-1)!.record).toMatchObject({ kind: 'problem', topic: 'injury' });
  });

  test.each([
    ['a direct chat', { private: true }],
    ['another group of the site', { chat: 'night crew' }],
    ['an edit of an older message', { edits: 'm1' }],
    ['a late delivery', { at: '2026-11-24T07:00' }],
  ])('from %s', (_where, more) => {
    const crew = startScenario(site);
    crew.say('nice morning', { id: 'm1' });
    const turn = crew.say('smoke from pile B', more);
    expect(turn.replies[0]!.text).toMatch(/^Everybody back/);
    expect(turn.posts.map((post) => post.about)).toEqual(['alarm']);
  });

  test('from another channel: the coordinators hear of it where the crew is, once', () => {
    const crew = startScenario(site);
    for (const chat of ['-1', '-2']) crew.book.addChat(crew.site, 'telegram', chat, 'group');
    crew.say('smoke from pile B');
    const told: string[] = [];
    for (let id = 1; crew.book.outgoing(id); id++) {
      const { about, channel, private: alone } = crew.book.outgoing(id)!;
      if (about === 'alarm') told.push(`${channel} ${alone ? 'coordinators' : 'all'}`);
    }
    expect(told).toEqual(['telegram coordinators']);
  });

  test('a cry that says what it is: that is told, and not asked for', () => {
    const turn = startScenario(site).say('AUXILIO el pie de beto esta atrapado bajo el carro');
    expect(turn.replies[0]!.text).toMatch(/^APRIETEN EL PARO ROJO/);
    expect(turn.replies[0]!.text).not.toContain('¿Qué pasó');
    expect(turn.posts[0]!.text).toContain('somebody is caught');
  });

  test('a message that corrects another, and danger in it', () => {
    const crew = startScenario(site);
    crew.say('cart 61.5');
    const turn = crew.say('sorry 16.5 not 61.5 and smoke from pile B');
    expect(turn.replies[0]!.text).toMatch(/^Everybody back/);
  });

  test('it is logged and the coordinators are told directly; medical detail stays out of group, book and exports', () => {
    const crew = startScenario(site);
    const words = "Dave's arm is in the drum, he is diabetic and bleeding badly";
    const turn = crew.say(words, { from: 'Ana' });
    expect(turn.posts).toMatchObject([{ about: 'alarm', private: true }]);
    expect(turn.posts[0]!.text).toContain(words);
    expect(turn.replies[0]!.text).not.toMatch(/Dave|diabetic|bleeding/);
    const lines = crew.lines();
    expect(lines[0]!.record).toEqual({ kind: 'problem', topic: 'injury', place: 'drum' });
    expect(JSON.stringify(lines)).not.toMatch(/Dave|diabetic|bleeding/);
    crew.say('Luz pricked her finger on a needle, she has hepatitis', { from: 'Ana' });
    expect(JSON.stringify(crew.lines())).not.toMatch(/Luz|hepatitis|finger/);
  });
});
