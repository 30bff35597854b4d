import { describe, expect, it } from 'vitest';
import { HOSPITAL, startScenario } from './harness.ts';

const SITE = {
  ...HOSPITAL,
  containers: { cart: { tareKg: 15.5, litres: 240, holds: 'food-scraps' } },
  summary: { day: 'monday', at: '07:00' },
};

describe('the week, posted at its hour', () => {
  it('comes once, for the week that ended, and again for each week that time passes over', () => {
    const site = startScenario(SITE);
    site.take({ at: '2026-10-20T10:00', from: 'Ana', text: 'cart 61.5' });
    expect(site.take({ at: '2026-10-26T06:59' }).posts).toEqual([]);
    const [post, ...more] = site.take({ at: '2026-10-26T07:00' }).posts as {
      weekFrom?: string;
      text: string;
    }[];
    expect(more).toEqual([]);
    expect(post).toMatchObject({ about: 'week', weekFrom: '2026-10-19' });
    expect(post!.text).toContain('In: 46 kg net');
    expect(site.take({ at: '2026-10-26T07:01' }).posts).toEqual([]);
    const late = site.take({ at: '2026-11-11T12:00' }).posts as { weekFrom?: string }[];
    expect(late.map((each) => each.weekFrom)).toEqual(['2026-10-26', '2026-11-02']);
  });

  it('keeps its local hour over both clock changes', () => {
    for (const [before, hour, weekFrom] of [
      ['2026-03-28T12:00', '2026-03-30T07:00', '2026-03-23'],
      ['2026-10-24T12:00', '2026-10-26T07:00', '2026-10-19'],
    ]) {
      const site = startScenario(SITE);
      site.take({ at: before });
      const early = `${hour!.slice(0, 11)}06:59`;
      expect(site.take({ at: early }).posts).toEqual([]);
      expect(site.take({ at: hour }).posts).toMatchObject([{ about: 'week', weekFrom }]);
    }
  });

  it('goes by a new hour the same day, and not twice for one week', () => {
    const site = startScenario(SITE);
    site.take({ at: '2026-11-24T10:20', from: 'Ana', text: 'set summary tuesday 10:31' });
    expect(site.take({ at: '2026-11-24T10:31' }).posts).toMatchObject([
      { about: 'week', weekFrom: '2026-11-16' },
    ]);
    site.take({ at: '2026-11-24T10:40', from: 'Ana', text: 'set summary tuesday 10:45' });
    expect(site.take({ at: '2026-11-24T10:50' }).posts).toEqual([]);
  });

  it('says once when a late line changes a week that was sent, and when it is taken back', () => {
    const site = startScenario(SITE);
    site.take({ at: '2026-11-18T10:00', from: 'Ana', text: 'cart 61.5' });
    site.take({ at: '2026-11-23T07:00' });
    const late = site.take({ at: '2026-11-23T09:00', from: 'Ana', text: '19 nov cart 58.2', id: 'late' });
    expect(late.replies[0]!.text).toMatch(/week of .*16 Nov, already sent, 42.7 kg more/);
    const undone = site.take({ at: '2026-11-23T09:05', from: 'Ana', choose: { id: 'late', label: 'Undo' } });
    expect(undone.replies[0]!.text).toMatch(/42.7 kg less/);
    expect(site.take({ at: '2026-11-23T09:06', from: 'Ana', text: 'cart 60' }).replies[0]!.text).not.toMatch(
      /already sent/,
    );
  });

  it('adds twelve typed pounds up to what a calculator says', () => {
    const pounds = [142.1, 137.3, 150.7, 99.9, 120.2, 111.1, 133.3, 141.7, 128.6, 119.4, 102.8, 147.5];
    const site = startScenario({
      name: 'Lane allotments',
      timeZone: 'America/New_York',
      units: { mass: 'lb', temperature: 'F' },
      containers: { cart: { litres: 242, holds: 'food-scraps' } },
    });
    for (const weight of pounds) site.say(`cart ${weight} lb net`);
    const tenths = pounds.reduce((sum, weight) => sum + Math.round(weight * 10), 0);
    expect(site.ask('week')).toContain(`In: ${tenths / 10} lb net (12 loads)`);
  });
});
