import { describe, expect, test } from 'vitest';
import { HOSPITAL, startScenario } from './harness.ts';

const FARM = { ...HOSPITAL, name: 'Long Meadow Farm', peopleNearby: 'none' };
const GLOVES = 'Gloves on.';
const LIFT = 'Lift: chain on';
const DUST = 'Dry or dusty?';
const LOCKED = 'power locked and tagged off';

describe('cautions beside a reply', () => {
  test('an ordinary one once a day to each person, one a reply', () => {
    const crew = startScenario(FARM);
    const first = crew.ask('bucket of coffee grounds 9.5');
    expect(first).toContain(GLOVES);
    expect(crew.ask('bucket of coffee grounds 8')).not.toContain(GLOVES);
    expect(crew.ask('bucket of coffee grounds 7', { from: 'Luc' })).toContain(GLOVES);
    const next = crew.say('bucket of coffee grounds 6', { at: '2026-11-25T08:10' });
    expect(next.replies[0]!.text).toContain(GLOVES);
  });

  test('the most fitting one not yet seen comes first, the next with the next line', () => {
    const crew = startScenario(FARM);
    expect(crew.ask('cart 61.5')).toContain(LIFT);
    const second = crew.ask('cart 58');
    expect(second).toContain(GLOVES);
    expect(second).not.toContain(LIFT);
    const third = crew.ask('cart 59');
    expect(third).not.toMatch(/Gloves|Lift:/);
  });

  test('lock-out every time, whoever it is', () => {
    const crew = startScenario(FARM);
    expect(crew.ask('drum is jammed')).toContain(LOCKED);
    expect(crew.ask('washed the lift')).toContain(LOCKED);
    expect(crew.ask('drum is jammed again')).toContain(LOCKED);
  });

  test('smoke that is open there: fire comes with every deed at the pile, and nothing says to open it', () => {
    const crew = startScenario(FARM);
    crew.say('B 62 64');
    crew.say('smoke from pile B');
    const turned = crew.ask('turned B');
    expect(turned).toContain('do not open or turn it');
    expect(turned).not.toContain('open it slowly');
    expect(crew.ask('turned B')).toContain('do not open or turn it');
    expect(crew.ask('turned C')).not.toContain('do not open or turn it');
  });

  test('people at risk nearby: as the site says, and taken to be there until it says none', () => {
    expect(startScenario({ ...HOSPITAL, name: 'Long Meadow Farm' }).ask('turned B')).toContain(
      'people at risk',
    );
    expect(startScenario({ ...FARM, name: 'Fernhill Hospital' }).ask('turned B')).not.toContain(
      'people at risk',
    );
    expect(startScenario(HOSPITAL).ask('turned B')).toContain('people at risk or air intakes');
    const farm = startScenario(FARM).ask('turned B');
    expect(farm).toContain(DUST);
    expect(farm).not.toContain('people at risk');
  });

  test.each([
    ['set people nearby none', 'règle gens fragiles hôpital'],
    ['règle gens fragiles personne', 'pon gente delicada escuela'],
    ['pon gente delicada nadie', 'set people nearby hospital'],
  ])('who is near can be said in the chat, by whoever decides: %s', (none, some) => {
    const crew = startScenario(HOSPITAL);
    crew.say('cart 60', { from: 'Ana', coordinator: true });
    expect(crew.say(none, { from: 'Luc' }).entries).toEqual([]);
    expect(crew.ask('turned B', { from: 'Luc' })).toContain('people at risk or air intakes');
    expect(crew.say(none, { coordinator: true }).entries).toHaveLength(1);
    expect(crew.ask('turned B', { from: 'Marie' })).not.toContain('people at risk or air intakes');
    crew.say(some, { coordinator: true });
    expect(crew.ask('turned B', { from: 'Omar' })).toContain('people at risk or air intakes');
  });

  test('who is near is asked of a coordinator once, where the site has not said', () => {
    const crew = startScenario(HOSPITAL);
    const ask = 'People nearby whom dust harms more?';
    expect(crew.ask('empty cart 16', { coordinator: true })).not.toContain(ask);
    expect(crew.ask('cart 60', { coordinator: true })).toContain(ask);
    expect(crew.ask('cart 61', { coordinator: true })).not.toContain(ask);
    expect(crew.ask('settings', { coordinator: true })).toContain('not said, taken to be near');
    const said = startScenario(FARM);
    said.say('empty cart 16', { coordinator: true });
    expect(said.ask('cart 60', { coordinator: true })).not.toContain(ask);
  });

  test('a hot pile: steam; dust with the next turning', () => {
    const crew = startScenario(FARM);
    expect(crew.ask('B 62 64')).toContain('steam burns');
    expect(crew.ask('turned B')).toContain(DUST);
  });

  test('none beside an emergency', () => {
    const crew = startScenario(FARM);
    const reply = crew.ask("Dave's arm is in the drum, cart 61.5");
    expect(reply).toMatch(/^PRESS THE RED STOP/);
    expect(reply).not.toMatch(/Gloves|Lift:/);
  });

  test('none for what was done days ago', () => {
    expect(startScenario(FARM).ask('turned B on 12 nov')).not.toContain(DUST);
  });

  test('a coordinator may switch off the ordinary ones, and only those', () => {
    const crew = startScenario(FARM);
    crew.say('hello', { from: 'Rosa', coordinator: true });
    expect(crew.ask('set cautions off')).toContain('Only a coordinator');
    expect(crew.ask('set cautions off', { from: 'Rosa' })).toContain('daily cautions off');
    expect(crew.ask('cart 61.5')).not.toMatch(/Gloves|Lift:/);
    expect(crew.ask('drum is jammed')).toContain(LOCKED);
    expect(crew.ask('set cautions on', { from: 'Rosa' })).toContain('daily cautions on');
    expect(crew.ask('cart 62.5')).toContain(LIFT);
  });

  test('in the language of the one who wrote', () => {
    const crew = startScenario(FARM);
    expect(crew.ask('brassé B', { from: 'Luc' })).toContain('masque ajusté (N95, FFP2 ou mieux)');
    expect(crew.ask('volteamos C', { from: 'Luz' })).toContain('mascarilla ajustada (N95, FFP2 o mejor)');
  });
});

describe('what an emergency needs', () => {
  test('is asked of a coordinator once, after their first entry', () => {
    const crew = startScenario(FARM);
    const ask = 'For an emergency, please set once';
    expect(crew.ask('turned B')).not.toContain(ask);
    expect(crew.ask('turned C', { from: 'Rosa', coordinator: true })).toContain(ask);
    expect(crew.ask('turned A', { from: 'Rosa', coordinator: true })).not.toContain(ask);
  });

  test('is not asked where it is set', () => {
    const safety = { emergencyNumber: '999', address: 'a', isolator: 'b', firstAider: 'c' };
    const crew = startScenario({ ...FARM, safety });
    expect(crew.ask('turned C', { from: 'Rosa', coordinator: true })).not.toContain('please set once');
  });
});
