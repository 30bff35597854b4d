import { describe, expect, test } from 'vitest';
import { HOSPITAL, startScenario } from './harness.ts';

const SITE = {
  ...HOSPITAL,
  containers: { ...HOSPITAL.containers, cart: { tareKg: 15.5, litres: 240, holds: 'food-scraps' } },
};
const crewOf = () => {
  const crew = startScenario(SITE);
  crew.say('good morning', { from: 'Rosa', coordinator: true });
  return crew;
};
type Crew = ReturnType<typeof crewOf>;
/** Lines that count: number, date, and what they hold. */
const counting = (crew: Crew) =>
  crew
    .lines()
    .filter((line) => line.voidedBy === null && line.held === false && line.record.kind !== 'void')
    .map(({ by, localDate, record }) => {
      const { material, kg, basis } = record as { material?: string; kg?: number; basis?: string };
      return [by, localDate, material ?? record.kind, kg ?? null, basis ?? null].join(' ');
    });

describe('answering an entry’s message puts that entry right', () => {
  test.each([
    ['cart 61', 'it was yesterday', 'was net'],
    ['bac 61', 'c’était hier', 'c’était net'],
    ['carrito 61', 'fue ayer', 'era neto'],
  ])('%s: another day, net for gross, another weight', (said, day, basis) => {
    const crew = crewOf();
    crew.say(said, { id: 'a' });
    expect(crew.say(day, { replyTo: 'a' }).entries).toEqual([2]);
    expect(counting(crew)).toEqual(['Ana 2026-11-23 food-scraps 61 gross']);
    expect(crew.say(basis, { replyTo: 'a' }).entries).toEqual([3]);
    expect(crew.say('56,2', { replyTo: 'a' }).entries).toEqual([4]);
    expect(counting(crew)).toEqual(['Ana 2026-11-23 food-scraps 56.2 net']);
  });

  test('another day moves all that the message said; another number only where it can mean one line', () => {
    const crew = crewOf();
    crew.say('chips 12, leaves 14', { id: 'a' });
    expect(crew.say('yesterday', { replyTo: 'a' }).entries).toEqual([3, 4]);
    expect(crew.ask('16', { replyTo: 'a' })).toMatch(/^Which line should become 16\?/);
    expect(counting(crew)).toEqual(['Ana 2026-11-23 wood-chips 12 net', 'Ana 2026-11-23 leaves 14 net']);
  });

  test('a day is no number, and talk under an entry changes nothing', () => {
    const crew = crewOf();
    crew.say('chips 40', { id: 'a' });
    crew.say('12 people came', { replyTo: 'a' });
    crew.say('thanks', { replyTo: 'a' });
    expect(counting(crew)).toEqual(['Ana 2026-11-24 wood-chips 40 net']);
    crew.say('12 nov', { replyTo: 'a' });
    expect(counting(crew)).toEqual(['Ana 2026-11-12 wood-chips 40 net']);
  });

  test('another pile', () => {
    const crew = crewOf();
    crew.say('ambient 9');
    crew.say('B 51', { id: 'a' });
    crew.say('pile C', { replyTo: 'a' });
    expect(crew.lines().at(-1)!.record).toMatchObject({ place: 'pile C', celsius: [51] });
  });

  test('a question under an entry stays one', () => {
    const crew = crewOf();
    crew.say('B 51, ambient 9', { id: 'a' });
    expect(crew.say('how is C', { replyTo: 'a' }).entries).toEqual([]);
    expect(crew.say('pile C?', { replyTo: 'a' }).entries).toEqual([]);
    expect(crew.say('pile C', { replyTo: 'a' }).entries).toEqual([3]);
  });

  test('also while another question is open in the chat', () => {
    const crew = crewOf();
    crew.say('chips 12', { id: 'a' });
    crew.say('cart 665', { from: 'Ben' });
    expect(crew.ask('18', { replyTo: 'a' })).toContain('#3 Chips 18 kg · replaces #1');
    expect(counting(crew)).toEqual(['Ana 2026-11-24 wood-chips 18 net']);
  });

  test('a number no air can have puts the pile right, though the air was asked for in that reply', () => {
    const crew = crewOf();
    expect(crew.ask('B 51', { id: 'a' })).toContain('How warm is the air?');
    crew.say('58', { replyTo: 'a' });
    expect(crew.lines().at(-1)!.record).toMatchObject({ place: 'pile B', celsius: [58] });
  });

  test('somebody else’s is left as it is; a coordinator may', () => {
    const crew = crewOf();
    crew.say('chips 12', { id: 'a' });
    expect(crew.ask('18', { replyTo: 'a', from: 'Ben' })).toMatch(/#1 was logged by somebody else/);
    expect(crew.say('18', { replyTo: 'a', from: 'Rosa' }).entries).toEqual([2]);
  });
});

describe('undo', () => {
  test.each(['undo', 'annule', 'deshacer'])('"%s" under an entry’s message takes that one back', (word) => {
    const crew = crewOf();
    crew.say('chips 12', { id: 'a' });
    crew.say('chips 19', { id: 'b' });
    expect(crew.say(word, { replyTo: 'a', from: 'Ben' }).entries).toEqual([]);
    expect(crew.say(word, { replyTo: 'a' }).entries).toEqual([3]);
    expect(counting(crew)).toEqual(['Ana 2026-11-24 wood-chips 19 net']);
    expect(crew.say(word, { replyTo: 'a' }).entries).toEqual([]);
  });

  test('under a message that was put right since it takes back what stands now', () => {
    const crew = crewOf();
    crew.say('chips 12', { id: 'a' });
    crew.say('18', { replyTo: 'a' });
    crew.say('undo', { replyTo: 'a', from: 'Rosa' });
    expect(counting(crew)).toEqual([]);
  });

  test('its button says that a line was replaced, not undone', () => {
    const crew = crewOf();
    crew.say('chips 12', { id: 'a' });
    crew.say('18', { replyTo: 'a' });
    const press = crew.say('', { choose: { id: 'a', label: 'Undo' }, text: undefined });
    expect(press.replies[0]!.text).toBe('#1 was replaced by #2. To take that back: "undo #2".');
    expect(crew.say('undo #2').entries).toEqual([3]);
  });
});

describe('the same cart logged by two people', () => {
  const second = (first: string, text: string, more: Record<string, unknown> = {}) => {
    const crew = crewOf();
    crew.say(first, { from: 'Ana' });
    return crew.say(text, { from: 'Ben', ...more }).replies[0]!.choices.includes('same cart');
  };
  test.each<[boolean, string, string, string]>([
    [true, 'within 1 %', 'cart 60', 'cart 60.6'],
    [false, 'more than 1 %', 'cart 60', 'cart 60.7'],
    [true, 'both with the label', 'cart 5 60', 'cart 5 60.2'],
    [false, 'another label', 'cart 5 60', 'cart 6 60.2'],
    [false, 'a label and none', 'cart 5 60', 'cart 60.2'],
    [false, 'another container', 'barrel 60', 'cart 60'],
    [true, 'the hour said, 30 minutes apart', '7:30 cart 60', 'cart 60 at 8:00'],
    [false, 'the hour said, 31 minutes apart', '7:29 cart 60', 'cart 60 at 8:00'],
    [false, 'yesterday with no hour', 'cart 60', 'yesterday cart 60'],
  ])('%s: %s', (expected, _why, first, text) => {
    expect(second(first, text)).toBe(expected);
  });

  test('around midnight two dates are never the same cart', () => {
    const crew = startScenario(SITE, '2026-11-24T23:52');
    crew.say('cart 60', { from: 'Ana' });
    const [late, early] = ['2026-11-24T23:58', '2026-11-25T00:03'].map(
      (at) => crew.say('cart 60', { from: at, at }).replies[0]!.choices,
    );
    expect(late).toContain('same cart');
    expect(early).not.toContain('same cart');
  });

  test('the same person, and one that was taken back, are no twins', () => {
    const crew = crewOf();
    crew.say('cart 60');
    expect(crew.ask('cart 60')).toContain('net');
    crew.say('undo');
    crew.say('undo');
    expect(crew.ask('cart 60', { from: 'Ben' })).toContain('net');
  });

  test('however many lines were written in between', () => {
    const crew = crewOf();
    crew.say('cart 60', { from: 'Ana' });
    crew.say(Array.from({ length: 70 }, (_, n) => `bucket of coffee grounds ${5 + n / 20}`).join('\n'), {
      from: 'Luz',
    });
    expect(crew.say('cart 60.2', { from: 'Ben' }).replies[0]!.choices).toContain('same cart');
  });

  test.each([
    ['en', 'same', 'another'],
    ['fr', 'même', 'autre'],
    ['es', 'el mismo', 'otro'],
  ])(
    'a typed word settles it, whoever writes it and whatever came between (%s)',
    (_language, same, other) => {
      for (const [word, kept] of [
        [same, 2],
        [other, 3],
      ] as const) {
        const crew = crewOf();
        crew.say('cart 60', { from: 'Ana' });
        crew.say('cart 60.2', { from: 'Ben' });
        crew.say('chips 12', { from: 'Luz' });
        crew.say(word, { from: 'Luz' });
        expect(counting(crew)).toHaveLength(kept);
        expect(crew.lines()[1]!.voidedBy).toBe(4);
      }
    },
  );

  test.each([
    ['en', 'cart', 'same', 'another cart'],
    ['fr', 'bac', 'même', 'un autre bac'],
    ['es', 'carrito', 'el mismo', 'otro carrito'],
  ])('a pasted list that somebody else has pasted is one question (%s)', (_language, cart, same, other) => {
    for (const [word, kept] of [
      [same, 4],
      [other, 7],
    ] as const) {
      const crew = crewOf();
      crew.say('cart 40\ncart 42\ncart 44', { from: 'Ana' });
      const turn = crew.say(`${cart} 40\n${cart} 42\n${cart} 44\n${cart} 50`, { from: 'Ben' });
      expect(turn.replies[0]!.text.match(/#5, #6, #7/g)).toHaveLength(1);
      expect(turn.replies[0]!.choices).toHaveLength(3);
      crew.say('chips 12', { from: 'Luz' });
      crew.say('undo', { from: 'Luz' });
      crew.say(word, { from: 'Ana' });
      expect(counting(crew)).toHaveLength(kept);
    }
  });

  test('of two carts in a list only one can be the one that was logged before', () => {
    const crew = crewOf();
    crew.say('cart 42', { from: 'Ana' });
    const turn = crew.say('cart 42\ncart 42', { from: 'Ben', id: 'b' });
    expect(turn.entries).toEqual([2, 3]);
    expect(turn.replies[0]!.choices).toEqual(['same cart', 'another cart', 'Undo']);
    expect(counting(crew)).toHaveLength(2);
  });

  test('the second to answer hears that it was answered, and no cart of theirs is logged once more', () => {
    const crew = crewOf();
    crew.say('cart 60', { from: 'Ana' });
    crew.say('cart 60.2', { from: 'Ben' });
    crew.say('same', { from: 'Ben' });
    expect(crew.ask('same', { from: 'Ana' })).toMatch(/^#2 was answered already/);
    expect(counting(crew)).toHaveLength(1);
    expect(crew.say('same again', { from: 'Ana' }).entries).toHaveLength(1);
  });

  test('with no such question open, "same again" is one more of the same', () => {
    const crew = crewOf();
    crew.say('cart 60');
    expect(crew.say('same again').entries).toEqual([2]);
  });
});

describe('doubts of several people', () => {
  test('each is answered by its own number, in any order and by anybody', () => {
    const crew = crewOf();
    crew.say('cart 665', { from: 'Ana' });
    crew.say('cart 745', { from: 'Ben' });
    crew.say('66.5', { from: 'Ana' });
    crew.say('74,5', { from: 'Luz' });
    expect(counting(crew)).toEqual([
      'Ana 2026-11-24 food-scraps 66.5 gross',
      'Luz 2026-11-24 food-scraps 74.5 gross',
    ]);
  });

  test('the same number fits both: each settles their own', () => {
    const crew = crewOf();
    crew.say('cart 665', { from: 'Ana' });
    crew.say('cart 665', { from: 'Ben', at: '2026-11-24T11:00' });
    crew.say('66.5', { from: 'Ana', at: '2026-11-24T11:01' });
    expect(crew.lines().map((line) => line.voidedBy)).toEqual([3, null, null]);
  });

  test.each([
    ['yes', /^#1 cart 665: too heavy for that. Which\?/],
    ['oui', /^#1 cart 665\s/],
    ['sí', /^#1 cart 665: /],
  ])('"%s" is said of one’s own, and where it settles nothing the question comes again', (yes, again) => {
    const crew = crewOf();
    crew.say('cart 665', { from: 'Ana' });
    crew.say('cart 745', { from: 'Ben' });
    expect(crew.ask(yes, { from: 'Ana' })).toMatch(again);
    expect(counting(crew)).toEqual([]);
  });

  test('"the first" and "each" reach each their own, though somebody else was asked since', () => {
    const crew = crewOf();
    crew.say('cart 665', { from: 'Ana' });
    crew.say('2 carts 61', { from: 'Ben' });
    crew.say('pile D 55', { from: 'Luz' });
    crew.say('the first', { from: 'Ana' });
    crew.say('each', { from: 'Ben' });
    crew.say('yes', { from: 'Luz' });
    expect(counting(crew)).toEqual([
      'Ana 2026-11-24 food-scraps 66.5 gross',
      'Ben 2026-11-24 food-scraps 61 gross',
      'Ben 2026-11-24 food-scraps 61 gross',
      'Luz 2026-11-24 pile  ',
      'Luz 2026-11-24 temperature  ',
    ]);
  });

  test('old ones come back in today, and what it says to send settles them', () => {
    const crew = crewOf();
    crew.say('cart 60', { from: 'Ana' });
    crew.say('cart 60.2', { from: 'Ben' });
    crew.say('cart 665', { from: 'Ana' });
    const later = { at: '2026-11-26T09:00' };
    const today = crew.ask("aujourd'hui", { from: 'Luc', ...later });
    expect(today).toContain('#2 cart 60.2 : en attente');
    expect(today).toContain('#3 cart 665 : en attente');
    expect(today).toMatch(/Envoyez «\smême bac\s» ou «\s66,5\s»/);
    crew.say('66,5', { from: 'Luc', ...later });
    crew.say('même bac', { from: 'Luc', ...later });
    expect(counting(crew)).toEqual([
      'Ana 2026-11-24 food-scraps 60 gross',
      'Luc 2026-11-24 food-scraps 66.5 gross',
    ]);
  });

  test('a word said days later without a list is talk', () => {
    const crew = crewOf();
    crew.say('cart 60', { from: 'Ana' });
    crew.say('cart 60.2', { from: 'Ben' });
    expect(crew.say('same', { from: 'Luz', at: '2026-11-26T09:00' }).entries).toEqual([]);
  });
});

describe('questions of several people that are no doubts', () => {
  const noTare = () => {
    const crew = startScenario(HOSPITAL);
    crew.say('good morning', { from: 'Rosa', coordinator: true });
    return crew;
  };
  const settings = (crew: Crew) =>
    crew.lines().flatMap(({ record }) => (record.kind === 'setting' ? [[record.name, record.value]] : []));

  test('an empty weight reaches its question although another was asked since, of somebody else', () => {
    const crew = noTare();
    expect(crew.ask('cart 61', { from: 'Ana' })).toContain('What does an empty cart weigh?');
    crew.say('cart 665', { from: 'Ben' });
    crew.say('15.5', { from: 'Ana' });
    crew.say('66.5', { from: 'Ben' });
    expect(settings(crew)).toEqual([['tare:cart', 15.5]]);
    expect(crew.lines().at(-1)).toMatchObject({ by: 'Ben', netKg: 51 });
  });

  test('of somebody who has a question open, a number that does not fit it is nobody’s empty weight', () => {
    const crew = noTare();
    crew.say('cart 61', { from: 'Ana' });
    crew.say('cart 665', { from: 'Ben' });
    expect(crew.ask('56', { from: 'Ben' })).toBe('56: what was that? Nothing stored.');
    expect(crew.ask('15.5', { from: 'Luz' })).toMatch(/^#3 Set: empty cart 15.5 kg/);
  });

  test('an empty cart cannot weigh more than the full one that waits for it', () => {
    const crew = noTare();
    crew.say('cart 61', { from: 'Ana' });
    expect(crew.ask('66.5', { from: 'Ana' })).toBe('66.5: what was that? Nothing stored.');
    crew.say('15.5', { from: 'Ana' });
    expect(settings(crew)).toEqual([['tare:cart', 15.5]]);
  });

  test('the air of one, the doubt of another', () => {
    const crew = crewOf();
    crew.say('B 51', { from: 'Luz' });
    crew.say('cart 735', { from: 'Ana' });
    crew.say('9', { from: 'Luz' });
    crew.say('73.5', { from: 'Ana' });
    expect(
      crew
        .lines()
        .slice(-2)
        .map(({ by, record }) => [by, record.kind]),
    ).toEqual([
      ['Luz', 'temperature'],
      ['Ana', 'weigh-in'],
    ]);
  });
});

describe('a coordinator makes another', () => {
  test.each([
    ['chips 12', 'make coordinator'],
    ['copeaux 12', 'nomme coordonnateur'],
    ['astillas 12', 'haz coordinador'],
    ['good morning', 'make him coordinator'],
  ])('as an answer to "%s": %s', (said, word) => {
    const crew = crewOf();
    crew.say(said, { id: 'a', from: 'Ben' });
    expect(crew.ask('set target 60 t', { from: 'Ben' })).toMatch(/Only a coordinator|coordina/);
    expect(crew.ask(word, { replyTo: 'a', from: 'Rosa' })).toContain('Ben');
    expect(crew.say('set target 60 t', { from: 'Ben' }).entries).toHaveLength(1);
  });

  test('by a button with the name; anybody else may press it in vain', () => {
    const crew = crewOf();
    crew.say('chips 12', { from: 'Ben' });
    const asked = crew.say('haz coordinador', { id: 'q', from: 'Rosa' });
    expect(asked.replies[0]!.choices).toEqual(['Ben']);
    const press = (from: string) =>
      crew.say('', { from, choose: { id: 'q', label: 'Ben' }, text: undefined });
    expect(press('Ben').replies[0]!.text).toMatch(/coordina/);
    expect(crew.say('Ben', { from: 'Rosa' }).replies).toEqual([]);
    expect(crew.book.people(crew.site).filter((each) => each.coordinator)).toHaveLength(1);
    press('Rosa');
    expect(crew.book.people(crew.site).filter((each) => each.coordinator)).toHaveLength(2);
  });

  test('who it is may be asked; to say "I am the coordinator" under a message makes nobody one', () => {
    const crew = crewOf();
    crew.say('chips 12', { id: 'a', from: 'Ben' });
    expect(crew.ask('who is coordinator?', { from: 'Ben' })).toBe('Coordinators: Rosa');
    crew.say("i'm the coordinator", { replyTo: 'a', from: 'Rosa' });
    expect(crew.book.people(crew.site).filter((each) => each.coordinator)).toHaveLength(1);
  });
});
