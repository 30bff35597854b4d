import { describe, expect, test } from 'vitest';
import { addDays, DUTY_KINDS, type Duty } from '#core';
import { Site } from '#records';
import { Book, cart, chips, reading, site, type Written } from '../picture/book.ts';
import { job, keys, today } from './today.ts';

type Line = [at: string, record: Written];
type Case = {
  rule: string;
  key: string;
  /** What leads to it. */
  before: Line[];
  /** Not due yet at this moment, where there is one. */
  notYet?: string;
  due: string;
  why: string;
  by: string;
  /** What closes it. */
  done: Line;
  /** It stays away at this moment after that. */
  after?: string;
  site?: Site;
};

const windrows = Site.parse({ ...site, name: 'Teal Bank', drums: [], ruleSet: 'windrow-15d' });
const pile = (event: string, of = 'pile B'): Written => ({ kind: 'pile', pile: of, event });
const chore = (name: string, more = {}): Written => ({ kind: 'chore', chore: name, ...more });
const hotDays = (days: number, of = 'pile B'): Line[] =>
  Array.from({ length: days }, (_, i) => [
    `2026-05-${String(4 + i).padStart(2, '0')}T08:00`,
    reading(of, 60),
  ]);

const CASES: Case[] = [
  {
    rule: 'a pile that was closed is read every day until it is proven',
    key: 'read:pile B',
    before: [['2026-05-04T16:00', pile('full')]],
    due: '2026-05-05T09:00',
    why: 'closed-unproven',
    by: '2026-05-05',
    done: ['2026-05-05T10:00', reading('pile B', 61)],
  },
  {
    rule: 'a run under way asks for the day that it would lose',
    key: 'read:pile B',
    before: [['2026-05-03T16:00', pile('full')], ...hotDays(2)],
    notYet: '2026-05-05T12:00',
    due: '2026-05-06T07:00',
    why: 'proving',
    by: '2026-05-06',
    done: ['2026-05-06T10:00', reading('pile B', 58)],
    after: '2026-05-07T10:00',
  },
  {
    rule: 'a pile that nobody has closed is read every day while it is hot',
    key: 'read:pile B',
    before: hotDays(2),
    notYet: '2026-05-05T12:00',
    due: '2026-05-06T07:00',
    why: 'proving',
    by: '2026-05-06',
    done: ['2026-05-06T10:00', reading('pile B', 58)],
    after: '2026-05-07T10:00',
  },
  {
    rule: 'a closed pile is read every day also where no rule set was chosen',
    key: 'read:pile B',
    before: [['2026-05-04T16:00', pile('full')]],
    due: '2026-05-05T09:00',
    why: 'closed-unproven',
    by: '2026-05-05',
    done: ['2026-05-05T10:00', reading('pile B', 61)],
    site: Site.parse({ ...site, name: 'Alder Yard', ruleSet: null }),
  },
  {
    rule: 'a rule that counts an hour asks again within it',
    key: 'read:pile B',
    before: [
      ['2026-05-04T08:00', pile('full')],
      ['2026-05-04T09:00', reading('pile B', 71)],
    ],
    due: '2026-05-04T09:20',
    why: 'closed-unproven',
    by: '2026-05-04',
    done: ['2026-05-04T10:00', reading('pile B', 72)],
    site: Site.parse({ ...site, name: 'Alder Yard', ruleSet: 'catering-70-1h' }),
  },
  {
    rule: 'any other pile is read once a week',
    key: 'read:pile C',
    before: [['2026-05-04T08:00', reading('pile C', 40)]],
    notYet: '2026-05-10T23:00',
    due: '2026-05-11T07:00',
    why: 'weekly',
    by: '2026-05-11',
    done: ['2026-05-11T08:00', reading('pile C', 38)],
    after: '2026-05-17T12:00',
  },
  {
    rule: 'a pile over 65 °C is turned within two days',
    key: 'turn:pile A',
    before: [['2026-05-04T08:00', reading('pile A', 66)]],
    notYet: '2026-05-05T08:00',
    due: '2026-05-06T08:00',
    why: 'too-hot',
    by: '2026-05-06',
    done: ['2026-05-06T09:00', { kind: 'turning', pile: 'pile A' }],
  },
  {
    rule: 'turns are spread over the days that a windrow needs',
    key: 'turn:pile B',
    before: [['2026-05-03T16:00', pile('full')], ...hotDays(3)],
    notYet: '2026-05-06T12:00',
    due: '2026-05-07T07:00',
    why: 'turns-for-proof',
    by: '2026-05-07',
    done: ['2026-05-07T08:00', { kind: 'turning', pile: 'pile B' }],
    after: '2026-05-08T08:00',
    site: windrows,
  },
  {
    rule: 'a pile is turned now and then in curing',
    key: 'turn:pile B',
    before: [['2026-05-04T08:00', pile('full')]],
    notYet: '2026-05-17T12:00',
    due: '2026-05-18T12:00',
    why: 'turns-in-curing',
    by: '2026-05-18',
    done: ['2026-05-18T13:00', { kind: 'turning', pile: 'pile B' }],
  },
  {
    rule: 'a pile that smells is turned',
    key: 'turn:pile B',
    before: [
      ['2026-05-04T08:00', reading('pile B', 50)],
      ['2026-05-04T09:00', { kind: 'problem', topic: 'odour', place: 'pile B' }],
    ],
    due: '2026-05-04T10:00',
    why: 'smells',
    by: '2026-05-04',
    done: ['2026-05-04T11:00', { kind: 'turning', pile: 'pile B' }],
  },
  {
    rule: 'a rise that falls off while there is food left wants air',
    key: 'turn:pile B',
    before: [
      ['2026-05-04T08:00', pile('full')],
      ['2026-05-06T08:00', reading('pile B', 56)],
      ['2026-05-08T08:00', reading('pile B', 50)],
      ['2026-05-10T08:00', reading('pile B', 44)],
    ],
    due: '2026-05-10T09:00',
    why: 'rise-stalled',
    by: '2026-05-09',
    done: ['2026-05-10T10:00', { kind: 'turning', pile: 'pile B' }],
  },
  {
    rule: 'piles are covered before rain',
    key: 'cover:pile B',
    before: [
      ['2026-05-04T08:00', reading('pile B', 50)],
      ['2026-05-04T09:00', { kind: 'weather', expects: 'rain', when: '2026-05-05' }],
    ],
    due: '2026-05-04T10:00',
    why: 'rain-expected',
    by: '2026-05-05',
    done: ['2026-05-04T11:00', { kind: 'cover', pile: 'pile B', layer: 'tarp', on: true }],
  },
  {
    rule: 'a pile that was covered is covered again after a turn',
    key: 'cover:pile B',
    before: [
      ['2026-05-04T08:00', { kind: 'cover', pile: 'pile B', layer: 'mature-compost', on: true }],
      ['2026-05-06T08:00', { kind: 'turning', pile: 'pile B' }],
    ],
    due: '2026-05-06T09:00',
    why: 'turned-open',
    by: '2026-05-06',
    done: ['2026-05-06T10:00', { kind: 'cover', pile: 'pile B', layer: 'mature-compost', on: true }],
  },
  {
    rule: 'some is let out before the drum is full',
    key: 'discharge:drum',
    before: [
      ['2026-05-04T08:00', cart(60)],
      ['2026-05-04T09:00', { kind: 'level', place: 'drum', fraction: 0.9 }],
    ],
    due: '2026-05-04T10:00',
    why: 'filling',
    by: '2026-05-04',
    done: ['2026-05-04T12:00', { kind: 'discharge', pile: 'pile C', litres: 2500 }],
  },
  {
    rule: 'a drum with something in it is read every day',
    key: 'read:drum',
    before: [['2026-05-04T08:00', cart(60)]],
    notYet: '2026-05-04T12:00',
    due: '2026-05-05T08:00',
    why: 'never-read',
    by: '2026-05-05',
    done: ['2026-05-05T09:00', reading('exit', 51)],
  },
  {
    rule: 'the air is read while a cooled pile is judged by it',
    key: 'read:ambient',
    before: [
      ['2026-05-04T08:00', pile('full')],
      ['2026-05-05T08:00', reading('pile B', 30)],
    ],
    due: '2026-05-05T09:00',
    why: 'rise-unknown',
    by: '2026-05-05',
    done: ['2026-05-05T10:00', reading('ambient', 12)],
    after: '2026-05-07T10:00',
  },
  {
    rule: 'chips that will not last are ordered',
    key: 'stock:wood-chips',
    before: [
      ['2026-05-04T08:00', { kind: 'delivery', material: 'wood-chips', litres: 400 }],
      ['2026-05-04T09:00', chips(40)],
      ['2026-05-05T09:00', chips(40)],
    ],
    due: '2026-05-05T10:00',
    why: 'days-left',
    by: '2026-05-05',
    done: ['2026-05-05T11:00', { kind: 'delivery', material: 'wood-chips', litres: 4000 }],
  },
  {
    rule: 'a usual source that has not come in is asked about',
    key: 'source:cafe',
    before: ['04', '05', '06', '07', '08'].map((day) => [
      `2026-05-${day}T08:00`,
      cart(60, { source: 'cafe' }),
    ]),
    notYet: '2026-05-10T12:00',
    due: '2026-05-11T12:00',
    why: 'not-come',
    by: '2026-05-11',
    done: ['2026-05-11T13:00', cart(58, { source: 'cafe' })],
  },
  {
    rule: 'an empty weight that nobody has told is asked for',
    key: 'tare:tub 38',
    before: [['2026-05-04T08:00', cart(60, { container: 'tub', label: '38' })]],
    due: '2026-05-04T09:00',
    why: 'nets-wait',
    by: '2026-05-04',
    done: ['2026-05-04T10:00', { kind: 'setting', name: 'tare:tub 38', value: 11 }],
  },
  {
    rule: 'a problem comes back until it is resolved',
    key: 'problem:1',
    before: [['2026-05-04T08:00', { kind: 'problem', topic: 'leachate', place: 'pile B' }]],
    notYet: '2026-05-04T12:00',
    due: '2026-05-05T12:00',
    why: 'still-open',
    by: '2026-05-05',
    done: ['2026-05-05T13:00', { kind: 'resolved', topic: 'leachate', place: 'pile B' }],
  },
  {
    rule: 'the floor is swept after use',
    key: 'clean:sweep',
    before: [['2026-05-04T08:00', cart(60)]],
    due: '2026-05-04T09:00',
    why: 'floor-used',
    by: '2026-05-04',
    done: ['2026-05-04T15:00', chore('sweep')],
  },
  {
    rule: 'tools are cleaned after a turn',
    key: 'clean:clean-tools',
    before: [['2026-05-04T08:00', { kind: 'turning', pile: 'pile B' }]],
    due: '2026-05-05T09:00',
    why: 'tools-used',
    by: '2026-05-04',
    done: ['2026-05-05T15:00', chore('clean-tools')],
  },
  {
    rule: 'the scale is checked by interval',
    key: 'check:check-scale',
    before: [['2026-05-04T08:00', chore('check-scale', { reads: 20, against: 20 })]],
    notYet: '2026-08-01T12:00',
    due: '2026-08-02T12:00',
    why: 'last-checked',
    by: '2026-08-02',
    done: ['2026-08-02T13:00', chore('check-scale', { reads: 20.1, against: 20 })],
    after: '2026-10-30T12:00',
  },
  {
    rule: 'a scale that failed its check is dealt with today',
    key: 'check:check-scale',
    before: [['2026-05-04T08:00', chore('check-scale', { reads: 20.4, against: 20 })]],
    due: '2026-05-04T09:00',
    why: 'check-failed',
    by: '2026-05-04',
    done: ['2026-05-04T10:00', chore('check-scale', { reads: 20, against: 20 })],
  },
  {
    rule: 'the exit is insulated before frost',
    key: 'season:season-exit',
    before: [['2026-10-20T08:00', { kind: 'weather', expects: 'frost', when: '2026-10-24' }]],
    due: '2026-10-20T09:00',
    why: 'frost-expected',
    by: '2026-10-24',
    done: ['2026-10-21T09:00', { kind: 'duty-note', duty: 'season:season-exit', act: 'done' }],
    after: '2026-10-24T09:00',
  },
  {
    rule: 'empty carts are weighed again once a year',
    key: 'reweigh:cart',
    before: [
      ['2025-05-04T08:00', { kind: 'setting', name: 'tare:cart', value: 16 }],
      ['2025-05-04T09:00', cart(60)],
    ],
    notYet: '2026-05-03T12:00',
    due: '2026-05-04T12:00',
    why: 'weighed-empty',
    by: '2026-05-04',
    done: ['2026-05-04T13:00', { kind: 'setting', name: 'tare:cart', value: 16.2 }],
  },
  {
    rule: 'a permit is spoken of a month before it runs out',
    key: 'permit:site',
    before: [['2026-01-04T08:00', { kind: 'setting', name: 'permit:site', value: '2026-06-30' }]],
    notYet: '2026-05-30T12:00',
    due: '2026-05-31T12:00',
    why: 'runs-out',
    by: '2026-06-30',
    done: ['2026-06-01T12:00', { kind: 'setting', name: 'permit:site', value: '2027-06-30' }],
  },
  {
    rule: 'training that has run out is spoken of',
    key: 'training:Amy loader',
    before: [['2026-01-04T08:00', { kind: 'setting', name: 'training:Amy loader', value: '2026-05-03' }]],
    notYet: '2026-04-02T12:00',
    due: '2026-05-04T12:00',
    why: 'ran-out',
    by: '2026-05-03',
    done: ['2026-06-01T12:00', { kind: 'setting', name: 'training:Amy loader', value: null }],
  },
  {
    rule: 'the cap of a week is spoken of from nine tenths on',
    key: 'cap:week:2026-05-04',
    before: [
      ['2026-05-01T08:00', { kind: 'setting', name: 'cap:week', value: 100 }],
      ['2026-05-04T08:00', cart(61.5)],
      ['2026-05-05T08:00', cart(60)],
    ],
    notYet: '2026-05-04T12:00',
    due: '2026-05-05T12:00',
    why: 'near-cap',
    by: '2026-05-05',
    done: ['2026-05-06T08:00', { kind: 'setting', name: 'cap:week', value: 200 }],
  },
  {
    rule: 'more than the cap of a month lets in is spoken of',
    key: 'cap:month:2026-05-01',
    before: [
      ['2026-05-01T08:00', { kind: 'setting', name: 'cap:month', value: 100 }],
      ['2026-05-04T08:00', cart(61.5)],
      ['2026-05-11T08:00', cart(75.5)],
    ],
    notYet: '2026-05-10T12:00',
    due: '2026-05-11T12:00',
    why: 'over-cap',
    by: '2026-05-11',
    done: ['2026-05-12T08:00', { kind: 'setting', name: 'cap:month', value: null }],
  },
  {
    rule: 'room is made where no pile takes fresh material',
    key: 'room:piles',
    before: ['pile A', 'pile B', 'pile C', 'bay 1']
      .map((of, i): Line => [`2026-05-0${4 + i}T08:00`, pile('full', of)])
      .concat([['2026-05-08T08:00', pile('full', 'bay 2')]]),
    due: '2026-05-08T12:00',
    why: 'none-open',
    by: '2026-05-08',
    done: ['2026-05-08T13:00', pile('emptied', 'pile A')],
  },
  {
    rule: 'room is made before the last open pile is full',
    key: 'room:piles',
    before: [
      ['2026-05-04T08:00', pile('full', 'pile A')],
      ['2026-05-04T09:00', { kind: 'level', place: 'pile B', fraction: 0.5 }],
      ['2026-05-05T09:00', { kind: 'level', place: 'pile B', fraction: 0.9 }],
    ],
    due: '2026-05-05T12:00',
    why: 'nearly-full',
    by: '2026-05-05',
    done: ['2026-05-05T13:00', pile('started', 'pile C')],
    site: Site.parse({ ...site, name: 'Alder Yard', piles: ['A', 'B'] }),
  },
  {
    rule: 'the lift is washed after use',
    key: 'clean:wash-lift',
    before: [['2026-05-04T08:00', cart(60)]],
    due: '2026-05-04T09:00',
    why: 'lift-used',
    by: '2026-05-04',
    done: ['2026-05-04T15:00', chore('wash-lift')],
  },
  {
    rule: 'containers are washed after use',
    key: 'clean:wash-containers',
    before: [['2026-05-04T08:00', cart(60)]],
    due: '2026-05-04T09:00',
    why: 'containers-used',
    by: '2026-05-04',
    done: ['2026-05-04T15:00', chore('wash-containers')],
  },
  {
    rule: 'the stop button is checked at the interval that the site has set',
    key: 'check:check-stop-button',
    before: [
      ['2026-05-04T08:00', chore('check-stop-button')],
      ['2026-05-04T09:00', { kind: 'setting', name: 'every:check-stop-button', value: 7 }],
    ],
    notYet: '2026-05-10T12:00',
    due: '2026-05-11T12:00',
    why: 'last-checked',
    by: '2026-05-11',
    done: ['2026-05-11T13:00', chore('check-stop-button')],
    after: '2026-05-17T12:00',
  },
  {
    rule: 'the thermometer is checked by interval',
    key: 'check:check-thermometer',
    before: [['2026-05-04T08:00', chore('check-thermometer')]],
    notYet: '2026-08-01T12:00',
    due: '2026-08-02T12:00',
    why: 'last-checked',
    by: '2026-08-02',
    done: ['2026-08-02T13:00', chore('check-thermometer')],
  },
  {
    rule: 'the fan is checked by interval',
    key: 'check:check-fan',
    before: [['2026-05-04T08:00', chore('check-fan')]],
    notYet: '2026-06-02T12:00',
    due: '2026-06-03T12:00',
    why: 'last-checked',
    by: '2026-06-03',
    done: ['2026-06-03T13:00', chore('check-fan')],
  },
  {
    rule: 'dry chips go under a roof when the mornings turn cold',
    key: 'season:season-chips',
    before: [['2026-10-20T08:00', reading('ambient', 2)]],
    due: '2026-10-20T09:00',
    why: 'cold-air',
    by: '2026-10-20',
    done: ['2026-10-21T09:00', { kind: 'duty-note', duty: 'season:season-chips', act: 'done' }],
    after: '2026-10-22T09:00',
  },
  {
    rule: 'chips of which more was used than the book knows are counted',
    key: 'stock:wood-chips',
    before: [
      ['2026-05-04T08:00', { kind: 'delivery', material: 'wood-chips', litres: 100 }],
      ['2026-05-04T09:00', chips(60)],
    ],
    due: '2026-05-04T10:00',
    why: 'used-more-than-known',
    by: '2026-05-04',
    done: ['2026-05-04T11:00', { kind: 'level', material: 'wood-chips', litres: 2000 }],
  },
  {
    rule: 'results that have not come in are asked for after three weeks',
    key: 'results:pile B',
    before: [['2026-05-04T08:00', { kind: 'sample', pile: 'pile B' }]],
    notYet: '2026-05-24T12:00',
    due: '2026-05-25T12:00',
    why: 'sampled',
    by: '2026-05-25',
    done: [
      '2026-05-26T12:00',
      { kind: 'lab-result', place: 'pile B', analyte: 'lead', value: 40, unit: 'mg/kg' },
    ],
  },
  {
    rule: 'a duty of the site comes round on its weekday',
    key: 'own:check extinguishers',
    before: [['2026-05-04T08:00', { kind: 'duty', name: 'check extinguishers', every: 'friday' }]],
    notYet: '2026-05-07T12:00',
    due: '2026-05-08T07:00',
    why: 'own-never-done',
    by: '2026-05-08',
    done: ['2026-05-08T12:00', chore('check extinguishers')],
    after: '2026-05-14T12:00',
  },
];

describe.each(CASES)('$rule', (each) => {
  const written = (more: Line[] = []): Book => {
    const book = new Book(each.site ?? site);
    for (const [at, record] of [...each.before, ...more]) book.log(at, record);
    return book;
  };

  test('it appears when it should, with why and by when, and once', () => {
    const book = written();
    if (each.notYet) expect(keys(today(book, each.notYet))).not.toContain(each.key);
    const found = today(book, each.due).filter(({ key }) => key === each.key);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ by: each.by, heldBack: null, why: { code: each.why } });
  });

  test('it is gone once the real thing is logged', () => {
    const book = written([each.done]);
    expect(job(book, each.after ?? `${each.done[0].slice(0, 10)}T18:00`, each.key)).toBeNull();
  });
});

/** What a closed site cannot leave for later: heat that is to be shown, rain, a full drum, food left lying. */
const CANNOT_WAIT = new Set<string>([
  'a pile that was closed is read every day until it is proven',
  'a closed pile is read every day also where no rule set was chosen',
  'a problem comes back until it is resolved',
  'a run under way asks for the day that it would lose',
  'a pile that nobody has closed is read every day while it is hot',
  'a rule that counts an hour asks again within it',
  'a pile that was covered is covered again after a turn',
  'turns are spread over the days that a windrow needs',
  'piles are covered before rain',
  'some is let out before the drum is full',
  'the floor is swept after use',
  'a scale that failed its check is dealt with today',
  'the lift is washed after use',
  'containers are washed after use',
]);

describe.each(CASES)('held back: $rule', (each) => {
  const next = (days: number): string => addDays(each.due.slice(0, 10), days);
  const noted = (note: Record<string, unknown>): Duty => {
    const book = new Book(each.site ?? site);
    for (const [at, record] of each.before) book.log(at, record);
    book.log(each.due, { kind: 'duty-note', duty: each.key, ...note });
    return job(book, each.due, each.key)!;
  };

  test('put off with a reason, it stands at the end with it', () => {
    expect(noted({ act: 'postpone', until: next(2), reason: 'no key' }).heldBack).toEqual({
      code: 'postponed',
      args: { date: { date: next(2) }, reason: { text: 'no key' } },
    });
  });

  test('a closed site lets it wait, or keeps it where it cannot', () => {
    const book = new Book(each.site ?? site);
    for (const [at, record] of each.before) book.log(at, record);
    const value = { from: each.due.slice(0, 10), to: next(3) };
    book.log(each.due, { kind: 'setting', name: 'closed', value });
    const found = job(book, each.due, each.key);
    const held = CANNOT_WAIT.has(each.rule) ? null : { code: 'closed', args: { date: { date: next(3) } } };
    // Days on which nobody is here are none on which a source is missed.
    if (each.key.startsWith('source:')) expect(found).toBeNull();
    else expect(found?.heldBack).toEqual(held);
  });
});

describe('at the end of curing', () => {
  /** Proven, turned twice, cured and cooled to the air, with moisture right. */
  function cured(more: Line[] = []): Book {
    const book = new Book();
    const log = (day: number, record: Written, clock = '08:00'): void => {
      const date = new Date(Date.UTC(2026, 4, 1 + day)).toISOString().slice(0, 10);
      book.log(`${date}T${clock}`, record);
    };
    for (const [at, record] of more.filter(([at]) => at < '2026-05-01')) book.log(at, record);
    log(0, cart(66.5, { place: 'pile B' }), '07:00');
    log(0, pile('full'), '09:00');
    for (const day of [1, 2, 3]) log(day, reading('pile B', 60));
    log(10, { kind: 'turning', pile: 'pile B' });
    log(12, reading('pile B', 48));
    log(25, { kind: 'turning', pile: 'pile B' });
    for (const day of [28, 35, 42, 49, 56]) {
      log(day, reading('ambient', 18), '07:50');
      log(day, reading('pile B', day === 28 ? 30 : 21));
    }
    log(55, { kind: 'moisture', place: 'pile B', feel: 'right' });
    for (const [at, record] of more.filter(([at]) => at >= '2026-05-01')) book.log(at, record);
    return book;
  }

  test('a pile of which nothing is missing is looked at, until somebody says that it is ready', () => {
    const book = cured();
    expect(job(book, '2026-06-26T12:00', 'release:pile B')).toMatchObject({
      kind: 'release-pile',
      why: { code: 'nothing-missing' },
      log: { code: 'release' },
    });
    book.log('2026-06-26T13:00', pile('ready'));
    expect(job(book, '2026-06-26T14:00', 'release:pile B')).toBeNull();
  });

  test('a hold keeps it from being spoken of', () => {
    const book = cured();
    book.log('2026-06-26T09:00', { kind: 'setting', name: 'hold:pile B', value: 'smells odd' });
    expect(job(book, '2026-06-26T12:00', 'release:pile B')).toBeNull();
    book.log('2026-06-26T13:00', { kind: 'setting', name: 'hold:pile B', value: false });
    expect(job(book, '2026-06-26T14:00', 'release:pile B')).not.toBeNull();
  });

  test('where results are asked for, a sample, then its results', () => {
    const book = cured([['2026-04-30T08:00', { kind: 'setting', name: 'lab-standard', value: 'us-503' }]]);
    expect(job(book, '2026-06-26T12:00', 'release:pile B')).toBeNull();
    expect(job(book, '2026-06-26T12:00', 'sample:pile B')).toMatchObject({
      why: { code: 'results-missing' },
    });
    book.log('2026-06-26T13:00', { kind: 'sample', pile: 'pile B' });
    expect(job(book, '2026-06-26T14:00', 'sample:pile B')).toBeNull();
    expect(job(book, '2026-06-26T14:00', 'results:pile B')).toBeNull();
  });
});

test('a held line is asked about until it is answered', () => {
  const book = new Book();
  const doubt = {
    record: { kind: 'weigh-in', kg: 665 },
    why: 'too-heavy' as const,
    choices: [{ say: '66.5', record: null }],
    said: 'cart 665',
  };
  const held = { why: doubt.why, choices: doubt.choices, doubt };
  const line = book.log('2026-05-04T08:00', cart(665), { held });
  expect(job(book, '2026-05-04T09:00', 'doubt:1')).toMatchObject({
    risk: 3,
    why: { code: 'too-heavy' },
    log: { code: 'answer', args: { choice: { term: '66.5', of: 'choice' } } },
  });
  book.log('2026-05-04T10:00', cart(66.5));
  book.entries[line - 1] = { ...book.entries[line - 1]!, voidedBy: 2 };
  expect(job(book, '2026-05-04T11:00', 'doubt:1')).toBeNull();
});

describe('a pile so hot that it may burn', () => {
  const hot = (...more: Line[]): Book => {
    const book = new Book();
    book.log('2026-05-01T08:00', { kind: 'problem', topic: 'odour', place: 'pile B' });
    book.log('2026-05-01T09:00', { kind: 'pile', pile: 'pile B', event: 'full' });
    for (const [at, record] of more) book.log(at, record);
    return book;
  };
  const atPile = (book: Book, wall: string): string[] =>
    keys(today(book, wall)).filter((key) => key.endsWith('pile B'));

  test('it is kept away from: never turned, read or covered', () => {
    const book = hot(
      ['2026-05-03T08:00', { kind: 'weather', expects: 'rain', when: '2026-05-04' }],
      ['2026-05-04T08:00', reading('pile B', 82)],
    );
    expect(atPile(book, '2026-05-20T09:00')).toEqual(['keep-away:pile B']);
    expect(job(book, '2026-05-20T09:00', 'keep-away:pile B')).toMatchObject({ risk: 5, log: null });
  });

  test('smoke with no place said keeps people from every pile', () => {
    const book = hot(['2026-05-04T08:00', { kind: 'problem', topic: 'smoke' }]);
    expect(atPile(book, '2026-05-20T09:00')).toEqual(['keep-away:pile B']);
  });

  test('a degree below, it is turned the same day', () => {
    const book = hot(['2026-05-04T08:00', reading('pile B', 79)]);
    expect(job(book, '2026-05-04T09:00', 'turn:pile B')).toMatchObject({ risk: 4, by: '2026-05-04' });
  });
});

describe('what nobody can do is held back with the reason', () => {
  const curing = (): Book => {
    const book = new Book();
    book.log('2026-05-04T08:00', { kind: 'pile', pile: 'pile B', event: 'full' });
    return book;
  };

  test('no turning in frost', () => {
    const book = curing();
    book.log('2026-05-19T08:00', reading('ambient', -4));
    expect(keys(today(book, '2026-05-19T09:00'))).toContain('turn:pile B (frozen)');
    book.log('2026-05-20T08:00', reading('ambient', 6));
    expect(keys(today(book, '2026-05-20T09:00'))).toContain('turn:pile B');
  });

  test('no turning in wind, unless the pile is too hot', () => {
    const book = curing();
    book.log('2026-05-19T08:00', { kind: 'weather', expects: 'wind', when: '2026-05-19' });
    expect(keys(today(book, '2026-05-19T09:00'))).toContain('turn:pile B (windy)');
    book.log('2026-05-19T10:00', reading('pile B', 72));
    expect(keys(today(book, '2026-05-19T11:00'))).toContain('turn:pile B');
  });

  const wind = (from: string | null, more: Record<string, unknown> = {}) => ({
    kind: 'weather',
    expects: 'wind',
    when: '2026-05-19',
    ...(from ? { windFrom: from } : {}),
    ...more,
  });
  const turning = (...told: Written[]): Duty => {
    const book = curing();
    book.log('2026-05-19T07:00', { kind: 'setting', name: 'wards', value: 'north-east' });
    for (const one of told) book.log('2026-05-19T08:00', one);
    return job(book, '2026-05-19T09:00', 'turn:pile B')!;
  };

  test.each([
    ['south-west', true],
    ['south', true],
    ['west', true],
    ['north-west', false],
    ['north-east', false],
    ['east', false],
  ])('wards to the north-east, wind from the %s: held back %s', (from, held) => {
    const { heldBack } = turning(wind(from));
    expect(heldBack?.code ?? null).toBe(held ? 'windy' : null);
    if (held) expect(heldBack?.args).toMatchObject({ blows: { text: 'towards' }, from: { term: from } });
  });

  test('a wind whose direction nobody said is taken to reach the wards; the word that it does is enough', () => {
    expect(turning(wind(null)).heldBack?.args).toMatchObject({ blows: { text: 'unknown' } });
    expect(turning(wind(null, { windTo: 'wards' })).heldBack?.args).toMatchObject({
      blows: { text: 'towards' },
    });
  });

  test('of two winds of a day the one told last counts', () => {
    expect(turning(wind('south-west'), wind('north')).heldBack).toBeNull();
    expect(turning(wind('north'), wind('south-west')).heldBack?.code).toBe('windy');
  });

  test('a site with nobody near turns in any wind', () => {
    const book = new Book(Site.parse({ ...site, peopleNearby: 'none' }));
    book.log('2026-05-04T08:00', { kind: 'pile', pile: 'pile B', event: 'full' });
    book.log('2026-05-19T08:00', wind(null));
    expect(job(book, '2026-05-19T09:00', 'turn:pile B')?.heldBack).toBeNull();
  });

  test('a closed site lets wait what can wait, and keeps what cannot', () => {
    const book = curing();
    book.log('2026-05-05T08:00', reading('pile C', 40));
    book.log('2026-05-06T08:00', {
      kind: 'setting',
      name: 'closed',
      value: { from: '2026-05-07', to: '2026-05-20' },
    });
    const found = keys(today(book, '2026-05-19T09:00'));
    expect(found).toContain('read:pile B');
    expect(found).toContain('read:pile C (closed)');
    expect(keys(today(book, '2026-05-21T09:00'))).toContain('read:pile C');
  });
});

test('a source is not missed for the days on which the site was closed', () => {
  const book = new Book();
  for (const day of ['04', '05', '06', '07', '08'])
    book.log(`2026-05-${day}T08:00`, cart(60, { source: 'cafe' }));
  book.log('2026-05-08T09:00', {
    kind: 'setting',
    name: 'closed',
    value: { from: '2026-05-09', to: '2026-05-12' },
  });
  expect(job(book, '2026-05-14T12:00', 'source:cafe')).toBeNull();
  expect(job(book, '2026-05-15T12:00', 'source:cafe')).toMatchObject({ by: '2026-05-15' });
});

describe('who has what', () => {
  const key = 'problem:1';
  const noted = (note: Record<string, unknown>): Book => {
    const book = new Book();
    book.log('2026-05-04T08:00', { kind: 'problem', topic: 'flies', place: 'pile B' });
    book.log('2026-05-06T08:00', { kind: 'duty-note', duty: key, ...note }, { person: 7 });
    return book;
  };

  test('taken, and handed back', () => {
    const book = noted({ act: 'claim' });
    expect(job(book, '2026-05-06T09:00', key)?.claimedBy).toBe(7);
    book.log('2026-05-06T10:00', { kind: 'duty-note', duty: key, act: 'release' });
    expect(job(book, '2026-05-06T11:00', key)?.claimedBy).toBeNull();
  });

  test('put off with a reason until a day', () => {
    const book = noted({ act: 'postpone', until: '2026-05-09', reason: 'no key' });
    expect(job(book, '2026-05-08T09:00', key)?.heldBack).toEqual({
      code: 'postponed',
      args: { date: { date: '2026-05-09' }, reason: { text: 'no key' } },
    });
    expect(job(book, '2026-05-09T09:00', key)?.heldBack).toBeNull();
  });

  test('done by word is believed for the day, but the book has the last word', () => {
    const book = noted({ act: 'done' });
    expect(job(book, '2026-05-06T09:00', key)).toBeNull();
    expect(job(book, '2026-05-07T09:00', key)).not.toBeNull();
  });
});

test('the riskiest first, then by date; what is held back last', () => {
  const book = new Book();
  book.log('2026-05-01T08:00', cart(60));
  book.log('2026-05-02T08:00', { kind: 'pile', pile: 'pile B', event: 'full' });
  book.log('2026-05-03T08:00', { kind: 'problem', topic: 'smoke', place: 'pile C' });
  book.log('2026-05-16T08:05', { kind: 'weather', expects: 'frost', when: '2026-05-18' });
  const duties = today(book, '2026-05-18T09:00');
  const order = duties.map(({ heldBack, risk, by }) => `${heldBack ? 1 : 0}${5 - risk}${by}`);
  expect(order).toEqual([...order].sort());
  expect(duties.at(-1)?.heldBack).not.toBeNull();
});

test('a reading that cannot be does not stop the list', () => {
  const book = new Book();
  book.log('2026-05-04T08:00', reading('pile B', -80));
  book.log('2026-05-04T08:10', reading('pile C', 900));
  expect(keys(today(book, '2026-05-04T09:00'))).toEqual([]);
});

test('room is asked for by the last pile that was closed, and not before it', () => {
  const book = new Book();
  for (const of of ['pile A', 'pile B', 'pile C', 'bay 1']) book.log('2026-05-04T08:00', pile('full', of));
  expect(job(book, '2026-05-04T09:00', 'room:piles')).toBeNull();
  book.log('2026-05-04T10:00', pile('full', 'bay 2'));
  expect(job(book, '2026-05-04T11:00', 'room:piles')).toMatchObject({
    log: { code: 'started', args: { place: { place: 'pile D' } } },
  });
  book.log('2026-05-04T12:00', pile('ready', 'pile C'));
  expect(job(book, '2026-05-04T13:00', 'room:piles')).toMatchObject({
    log: { code: 'emptied', args: { place: { place: 'pile C' } } },
  });
});

test('a book with nothing in it asks for nothing', () => {
  expect(today(new Book(), '2026-05-04T08:00')).toEqual([]);
});

test('every kind of job is in the list of kinds, and each key is there once', () => {
  const book = new Book();
  for (const { before } of CASES) for (const [at, record] of before) book.log(at, record);
  const duties = today(book, '2026-05-20T08:00');
  expect(new Set(duties.map(({ key }) => key)).size).toBe(duties.length);
  for (const { kind } of duties) expect(DUTY_KINDS).toContain(kind);
});
