import { describe, expect, it, test } from 'vitest';
import { HOSPITAL, startScenario } from './harness.ts';

/** Invented site and weights; 66.5 − 18 is common practice, no source. */
describe('a first day, as a crew types it', () => {
  const site = startScenario(HOSPITAL);
  const told = (text: string) => site.ask(text);

  it('sets the empty weight', () => {
    expect(told('set cart tare to 18')).toContain('empty cart 18 kg');
  });

  it('weighs a cart and its chips, and says how the mix is', () => {
    const reply = told('cart 66.5 kg, chips 12');
    expect(reply).toContain('48.5 kg net (66.5 − 18)');
    expect(reply).toMatch(/#\d+ Chips 12 kg/);
    expect(reply).toMatch(/6[5-7] % water \(\d+–\d+/);
    expect(reply).toMatch(/Add 1 barrow of chips/);
  });

  it('takes a list one by one', () => {
    const reply = told('3 carts 61 58.5 70');
    for (const net of ['43 kg net', '40.5 kg net', '52 kg net', '135.5 kg']) expect(reply).toContain(net);
  });

  it('asks what a bare number was and stores nothing', () => {
    const before = site.lines().length;
    expect(told('66.5')).toMatch(/what was/);
    expect(site.lines()).toHaveLength(before);
  });

  it('holds a cart that cannot be so heavy', () => {
    const turn = site.say('cart 665');
    expect(turn.replies[0]!.choices).toContain('66.5');
    const held = site.lines().at(-1)!;
    expect(held.held).toMatchObject({ why: 'too-heavy' });
    expect(held.netKg).toBeNull();
  });

  it('asks for the air once when a pile is read', () => {
    const reply = told('pile B 41C');
    expect(reply).toContain('Pile B 41 °C');
    expect(reply).toMatch(/ambient/);
    expect(told('pile C 38C')).not.toMatch(/Send "ambient/);
  });

  it('reads several points and the air', () => {
    const reply = told('B 41 43 39, ambient 12');
    expect(reply).toContain('lowest 39 °C, highest 43 °C');
    expect(reply).toContain('Ambient 12 °C');
    expect(reply).toContain('31 °C over the air');
  });

  it('notes a turning and two covers', () => {
    const turn = site.say('turned B, covered with mature compost and fabric');
    expect(turn.entries).toHaveLength(3);
    expect(turn.replies[0]!.text).toContain('Turned pile B');
    expect(turn.replies[0]!.text).toContain('mature compost');
    expect(turn.replies[0]!.text).toContain('fabric');
  });

  it('notes how the drum is set', () => {
    expect(told('drum auto 45 min fan low')).toContain('automatic · every 45 min · fan low');
  });

  it('dates a late cart and says the weekday', () => {
    expect(told('yesterday cart 58.2')).toMatch(/40\.2 kg net .*yesterday, Mon 23 Nov/);
  });

  it('amends it, with the old line kept and not counted', () => {
    const turn = site.say('sorry 56.2 not 58.2');
    expect(turn.replies[0]!.text).toContain('38.2 kg net');
    const [entry] = turn.entries;
    const old = site.lines().find((line) => line.voidedBy === entry);
    expect(old?.record).toMatchObject({ kind: 'weigh-in', kg: 58.2 });
  });

  it('keeps quiet about a plan', () => {
    const turn = site.say('need to turn C tomorrow');
    expect(turn).toMatchObject({ replies: [], entries: [] });
  });

  it('lists what is due, why, and how to log it', () => {
    const reply = told('today');
    expect(reply).toMatch(/^Tue: \d+ jobs?/);
    expect(reply).toMatch(/#\d+ cart 665/);
    expect(reply).toMatch(/Send "/);
  });

  it('sums up the week, with what is held and the year so far', () => {
    const reply = told('week');
    expect(reply).toMatch(/held: 1/i);
    expect(reply).toContain('222.2 kg');
    expect(reply).toMatch(/[Cc]hips 12 kg/);
    expect(reply).toMatch(/year/i);
  });

  it('puts what to do first when somebody is caught', () => {
    const turn = site.say("Dave's arm is in the drum");
    const [first] = turn.replies[0]!.text.split('\n');
    for (const words of ['RED STOP', 'POWER OFF', 'reaches in or climbs in', 'your emergency number']) {
      expect(first).toContain(words);
    }
    expect(turn.posts.some((post) => post.about === 'alarm')).toBe(true);
  });
});

describe('somebody hurt at the drum, in other words', () => {
  it.each(['someone is trapped in the drum', 'he fell in the drum', 'somebody got hurt at the drum'])(
    '%s',
    (text) => {
      const [first] = startScenario(HOSPITAL).ask(text).split('\n');
      expect(first).toContain('RED STOP');
    },
  );
});

test('of a list each line that was not read is named; talk beside an entry is left alone', () => {
  const crew = startScenario(HOSPITAL);
  const reply = (text: string) => crew.say(text).replies[0]?.text ?? '';
  expect(reply('cart 61.5\nB 58\nbought new gloves\nC 44')).toContain('Not read: “bought new gloves”');
  expect(reply('cart 60, blorf 12 zing')).toContain('Not read: “blorf 12 zing”');
  expect(reply('cart 59 and see you later')).not.toContain('Not read');
  expect(reply('bac 61\ntas B 58\nacheté des gants\ntas C 50')).toContain('Pas lu : “acheté des gants”');
});
