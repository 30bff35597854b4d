import { describe, expect, it } from 'vitest';
import { HOSPITAL, startScenario } from './harness.ts';

const SITE = {
  ...HOSPITAL,
  containers: { ...HOSPITAL.containers, cart: { tareKg: 15.5, litres: 240, holds: 'food-scraps' } },
};

describe('putting things right', () => {
  it('changes nothing where a correction without the wrong value has several things it could mean', () => {
    const site = startScenario(SITE);
    site.say('A 61 58 63, ambient 9');
    const turn = site.say('no wait that was 53');
    expect(turn.entries).toEqual([]);
    expect(turn.replies[0]!.text).toMatch(/Which line/);
  });

  it('never lets an amendment in that would have been asked about', () => {
    const site = startScenario(SITE);
    site.say('ambient 9');
    expect(site.say('sorry 93 not 9').entries).toEqual([]);
    site.say('cart 58.2');
    expect(site.say('sorry 5.8 not 58.2').entries).toEqual([]);
    expect(site.lines().every((line) => line.voidedBy === null)).toBe(true);
  });

  it('takes a message back once, and says so the second time', () => {
    const site = startScenario(SITE);
    site.say('cart 61', { id: 'a' });
    const press = { choose: { id: 'a', label: 'Undo' }, text: undefined };
    expect(site.say('', press).replies[0]!.text).toMatch(/Undone: #1/);
    expect(site.say('', press).replies[0]!.text).toMatch(/undone already/);
    expect(site.lines().map((line) => line.voidedBy)).toEqual([2, null]);
  });

  it('lets only the author or a coordinator take a line back, once there is a coordinator', () => {
    const site = startScenario(SITE);
    site.say('cart 61', { id: 'a', from: 'Ana', coordinator: true });
    site.say('cart 52', { id: 'b', from: 'Bram' });
    expect(site.say('', { from: 'Bram', choose: { id: 'a', label: 'Undo' } }).entries).toEqual([]);
    expect(site.say('', { from: 'Ana', choose: { id: 'b', label: 'Undo' } }).entries).toEqual([3]);
  });

  it('reads an edited message in the place of what it said before, at its own time', () => {
    const site = startScenario(SITE);
    site.say('cart 66.5', { id: 'a' });
    expect(site.say('cart 66.5', { id: 'b', edits: 'a' })).toMatchObject({ replies: [], entries: [] });
    const turn = site.say('cart 56.5', { id: 'c', edits: 'a' });
    expect(turn.entries).toEqual([2]);
    const [old, now] = site.lines();
    expect(old).toMatchObject({ voidedBy: 2, netKg: 51 });
    expect(now).toMatchObject({ netKg: 41, when: old!.when });
    expect(site.ask('week')).toContain('In: 41 kg net');
  });

  it('amends what a reply answers, also after it was replaced once', () => {
    const site = startScenario(SITE);
    site.say('cart 66.5', { id: 'a' });
    site.say('58', { replyTo: 'a' });
    site.say('56', { replyTo: 'a' });
    const lines = site.lines();
    expect(lines.map((line) => line.voidedBy)).toEqual([2, 3, null]);
    expect(lines[2]!.netKg).toBe(40.5);
  });

  it('counts a held line only when it is answered, and drops it when told', () => {
    const site = startScenario(SITE);
    site.say('cart 665', { id: 'a' });
    expect(site.ask('week')).toContain('In: nothing weighed yet');
    expect(site.ask('66.5')).toContain('51 kg net');
    expect(site.lines()[0]!.voidedBy).toBe(2);
    site.say('cart 725', { id: 'b' });
    site.say('', { choose: { id: 'b', label: 'drop it' } });
    expect(site.lines().at(-1)!.record).toMatchObject({ kind: 'void', why: 'dropped' });
    expect(site.ask('week')).toContain('In: 51 kg net (1 load)');
  });

  it('completes what waited for an empty weight, and leaves old nets alone when it changes', () => {
    const site = startScenario(HOSPITAL);
    expect(site.ask('cart 61')).toMatch(/What does an empty cart weigh/);
    expect(site.ask('cart 58')).not.toMatch(/What does an empty cart weigh/);
    expect(site.ask('15.5')).toContain('#1 now 45.5 kg net (61 − 15.5)');
    site.say('empty cart 16.5');
    site.say('cart 70');
    expect(site.lines().flatMap((line) => line.netKg ?? [])).toEqual([45.5, 42.5, 53.5]);
    expect(site.ask('sorry 57 not 58')).toContain('41.5 kg net (57 − 15.5)');
  });

  it('holds the second of two people who log one cart', () => {
    const site = startScenario(SITE);
    site.say('cart 58', { from: 'Ana' });
    const turn = site.say('cart 58.2', { from: 'Bram', id: 'b' });
    expect(turn.replies[0]!.choices).toEqual(['same cart', 'another cart']);
    expect(site.say('cart 58.1', { from: 'Ana' }).replies[0]!.text).toContain('net');
    site.say('', { from: 'Bram', choose: { id: 'b', label: 'same cart' } });
    expect(site.ask('week')).toContain('(2 loads)');
  });

  it('knows one cart by the hour that was said, in the zone of the site', () => {
    const site = startScenario({ ...SITE, timeZone: 'America/New_York' }, '2026-11-24T15:00');
    site.say('7:15 cart 58', { from: 'Ana' });
    expect(site.say('7:20 cart 58.2', { from: 'Bram' }).replies[0]!.choices).toEqual([
      'same cart',
      'another cart',
    ]);
    expect(site.say('9:20 cart 58.1', { from: 'Chidi' }).replies[0]!.text).toContain('net');
  });
});
