import { describe, expect, test } from 'vitest';
import { HOSPITAL, startScenario } from './harness.ts';

/** A crew that writes on days counted from a first one. */
function season(site: unknown, first: string) {
  const crew = startScenario(site, `${first}T08:00`);
  const at = (day: number, clock: string): string =>
    `${new Date(Date.parse(`${first}T00:00:00Z`) + day * 86_400_000).toISOString().slice(0, 10)}T${clock}`;
  return {
    crew,
    on: (day: number, text: string, clock = '09:00'): string => crew.ask(text, { at: at(day, clock) }),
    sayOn: (day: number, text: string, clock = '09:00') => crew.say(text, { at: at(day, clock) }),
    at,
  };
}

const BAYS = {
  name: 'Marl Yard',
  timeZone: 'Europe/London',
  piles: ['bay 1', 'bay 2', 'bay 3'],
  ruleSet: 'vessel-3d',
  containers: { barrow: { tareKg: 14, litres: 85 } },
};

describe('a bay from the first load to the market', () => {
  test('each step is answered with what counts', () => {
    const { on } = season(BAYS, '2026-05-01');
    on(0, 'barrow of food scraps 60 kg into bay 1');
    on(0, 'ambient 14', '09:10');
    expect(on(3, 'bay 1 is full')).toMatch(/Read bay 1 every day from now on/);
    expect(on(4, 'bay 1 58 61 63 at 45 cm')).toMatch(/1 of 3 days hot\. Next reading by tomorrow, Wed 6 May/);
    expect(on(5, 'bay 1 58 62 at 10 cm', '08:00')).toMatch(
      /At 10 cm deep: shown, not judged\. The rule asks for 30 cm to 61 cm deep/,
    );
    expect(on(5, 'bay 1 59 62 at 45 cm')).toMatch(/2 of 3 days hot/);
    expect(on(6, 'bay 1 57 60 at 45 cm')).toMatch(
      /3 of 3 days hot\. Time and temperature met on these readings; your regulator decides/,
    );
    const why = on(6, 'why', '09:05');
    expect(why).toMatch(/rule vessel-3d: 55 °C or more for 3 days; the lowest point at 30 cm to 61 cm deep/);
    expect(why).toMatch(/Counted 3 of 3 days, since Tue 5 May/);
    expect(why).toMatch(/Source: 40 CFR 503 Appendix B/);
    expect(why).toMatch(/Taken: all of it was inside the whole time/);
    on(8, 'turned bay 1');
    on(20, 'bay 1 49 51, ambient 15');
    on(27, 'turned bay 1');
    on(30, 'bay 1 41 43, ambient 15');
    expect(on(31, 'bay 1?')).toMatch(/No forecast yet: three days of readings since the last turn/);
    on(37, 'bay 1 33 35, ambient 16');
    on(44, 'bay 1 27 28, ambient 16');
    const status = on(44, 'bay 1?', '09:20');
    expect(status.split('\n').length).toBeLessThanOrEqual(8);
    expect(status).toMatch(
      /^Bay 1, closed · curing · 27, 28 °C \(today\) · 12 °C over the air · turned 2 times/,
    );
    expect(status).toMatch(/Not ready · cured 14 of 21 days · 12 °C over the air · a squeeze test/);
    // The rise goes 28, 19, 12 in a fortnight: down to 5 in about two weeks more, with room on both sides.
    expect(status).toMatch(/Near the air about Mon 29 Jun \(\w+ \d+ Jun to \w+ \d+ Jul, 4 times in 5\)/);
    expect(on(45, '1 barrow of compost from bay 1 to the market')).not.toMatch(/stored, but/);
    on(52, 'bay 1 20 21, ambient 16');
    on(52, 'bay 1 feels right', '09:02');
    expect(on(53, 'bay 1?')).toMatch(
      /Nothing missing on this book\. Have a look, then send "bay 1 is ready"/,
    );
    expect(on(53, 'bay 1 is ready', '10:00')).not.toMatch(/does not show/);
    const trace = on(54, 'can we give bay 1 away?');
    expect(trace).toMatch(
      /^Bay 1: nothing is missing on this book\.\nBay 1: 3 of 3 days hot\. Time and temperature met/,
    );
    expect(trace).toMatch(/Went to · market 85 L/);
  });
});

describe('a rule of an hour at 70 °C', () => {
  // WSI 2006/1293 Schedule 1 Part II: 70 °C for an hour
  const SITE = {
    name: 'Cold Brook',
    timeZone: 'Europe/London',
    piles: ['A', 'B'],
    ruleSet: 'catering-70-1h',
  };

  test('four readings in an hour meet it; until then nobody is told to turn the heat away', () => {
    const { on } = season(SITE, '2026-06-01');
    const first = on(0, 'A 71 at 45 cm', '09:00');
    expect(first).toMatch(/0 of 1 h hot\. Next reading by today 10:00, or it counts no further/);
    expect(first).toMatch(/as hot as your rule asks for/);
    expect(first).not.toMatch(/Turn it today/);
    expect(on(0, 'A 70 at 45 cm', '09:40')).toMatch(/0\.6 of 1 h hot\. Next reading by today 10:40/);
    const met = on(0, 'A 70 at 45 cm', '10:00');
    expect(met).toMatch(/1 of 1 h hot\. Time and temperature met on these readings/);
    expect(met).toMatch(/too hot\. Turn it today/);
    // At the fire watch no rule is an excuse.
    expect(on(0, 'B 75 at 45 cm', '11:00')).toMatch(/fire watch/);
  });

  test('a time too long between two readings is named as such; 69.9 breaks it', () => {
    const { on } = season(SITE, '2026-06-01');
    on(0, 'A 71 at 45 cm', '09:00');
    expect(on(0, 'A 71 at 45 cm', '10:01')).toMatch(
      /too long between two readings today: that time proves nothing/,
    );
    on(0, 'B 70 at 45 cm', '11:00');
    expect(on(0, 'B 69.9 at 45 cm', '11:30')).toMatch(
      /0 of 1 h hot so far\. · 69\.9 °C \(today\) is under 70 °C/,
    );
  });

  test('a paste of a logger: each line with its time', () => {
    const { on } = season(SITE, '2026-06-01');
    const pasted = on(1, '06:00 A 71\n06:30 A 72\n07:00 A 70.5', '08:00');
    expect(pasted).toMatch(/#1 Pile A 71 °C · 6:00\n#2 Pile A 72 °C · 6:30\n#3 Pile A 70\.5 °C · 7:00/);
    expect(pasted).toMatch(/1 of 1 h hot\. Time and temperature met/);
    expect(on(2, 'A 57 at 06:00, 58 at 12:00, 59 at 18:00', '20:00')).toMatch(
      /#4 .*6:00\n#5 .*12:00\n#6 .*18:00/,
    );
  });
});

describe('vector attraction', () => {
  const SITE = { name: 'Long Acre', timeZone: 'Europe/London', piles: ['A'], ruleSet: 'vessel-3d' };
  const days = (from: number, to: number) => Array.from({ length: to - from + 1 }, (_, i) => from + i);

  // 40 CFR 503.33(b)(5): 14 days or longer over 40 °C, mean over 45 °C (from memory)
  test('told beside the rule, asked for where the site sets it so', () => {
    const { on } = season(SITE, '2026-06-01');
    on(0, 'A is full');
    for (const day of days(1, 3)) on(day, 'A 58 at 45 cm');
    expect(on(3, 'A?', '10:00')).toMatch(
      /Vector attraction \(flies, rats\): 3 of 14 days over 40 °C in a row; the mean must be over 45 °C/,
    );
    expect(on(3, 'today', '10:05')).not.toMatch(/Read pile A/);
    on(3, 'set vector attraction on', '10:10');
    expect(on(4, 'today')).toMatch(/Read pile A: day 4 of 14; without it today cannot count/);
    expect(on(4, 'A 50 at 45 cm', '10:00')).toMatch(/Vector attraction .*4 of 14 days/);
    for (const day of days(5, 13)) on(day, 'A 41 at 45 cm');
    // 14 dates, the last one at 40.0: not over 40.
    on(14, 'A 40 at 45 cm');
    expect(on(14, 'can we give A away?', '10:00')).not.toMatch(/Vector attraction .*: met/);
    const gone = on(14, '1 barrow of compost from A to the market', '10:05');
    expect(gone).toMatch(/stored, but .*vector attraction/);
  });

  test('met with 14 days over 40 °C and a mean over 45 °C; the mean alone can fail it', () => {
    // 3 × 60 + 11 × 41 over 14 is 45.07; with 59 it is 44.86.
    for (const [hot, met] of [
      [60, true],
      [59, false],
    ] as const) {
      const { on } = season(SITE, '2026-06-01');
      for (const day of days(1, 3)) on(day, `A ${hot} at 45 cm`);
      for (const day of days(4, 14)) on(day, 'A 41 at 45 cm');
      const said = on(14, 'can we give A away?', '10:00');
      if (met) expect(said).toMatch(/Vector attraction .*: met, 14 days over 40 °C, mean over 45 °C/);
      else expect(said).toMatch(/over 40 °C for 14 days, but the mean of 44\.9 °C is not over 45 °C/);
    }
  });
});

describe('windrows', () => {
  const SITE = { name: 'Long Acre', timeZone: 'Europe/London', piles: ['A', 'B'], ruleSet: 'windrow-15d' };

  test('15 days with 5 turns; turned and dipped, the run goes on', () => {
    const { on } = season(SITE, '2026-06-01');
    on(0, 'A is full');
    for (let day = 1; day <= 15; day += 1) {
      const said = on(day, 'A 58 60 at 45 cm');
      expect(said).toContain(`${day} of 15 days hot`);
      if (day % 3 !== 0) continue;
      on(day, 'turned A', '11:00');
      const dipped = on(day, 'A 38 at 45 cm', '15:00');
      expect(dipped).toMatch(/Pile A 38 °C: turned within a day, so a low says nothing yet/);
      expect(dipped).not.toMatch(/cold|Squeeze|days hot/);
    }
    expect(on(16, 'A 58 60 at 45 cm')).toMatch(/15 of 15 days hot\. Time and temperature met/);
  });

  test('a reading before the turn in the same message counts, and is no dip', () => {
    const { on } = season(SITE, '2026-06-01');
    expect(on(0, 'A 57 59 at 45 cm, turned A')).toMatch(/1 of 15 days hot/);
  });

  test('weekly readings: cannot be shown, with the gap named', () => {
    const { on } = season(SITE, '2026-06-01');
    for (const day of [0, 7, 14]) on(day, 'B 57 60 at 45 cm');
    expect(on(21, 'B 58 60 at 45 cm')).toMatch(
      /cannot be shown on these readings .*no reading between Mon 15 Jun and today: that day proves nothing/,
    );
  });

  test('a drop with no turn asks whether it is wet or dry, and never says too cold of a frozen one', () => {
    const { sayOn } = season(SITE, '2026-06-01');
    sayOn(0, 'B 58 60 at 45 cm');
    const asked = sayOn(2, 'B 31 33 at 45 cm');
    expect(asked.replies[0]!.text).toMatch(/Squeeze a handful: does it drip, hold, or crumble\?/);
    expect(asked.replies[0]!.choices.slice(0, 3)).toEqual(['it drips', 'it crumbles', 'it holds']);
    expect(sayOn(2, 'it crumbles', '09:05').replies[0]!.text).toMatch(
      /Likely too dry · add water while turning/,
    );
  });
});

describe('what readings alone show to be wrong', () => {
  const SITE = { name: 'Long Acre', timeZone: 'Europe/London', piles: ['A'] };

  test('hot again in curing, with no turn in between', () => {
    const { on, sayOn } = season(SITE, '2026-05-01');
    on(0, 'A 60 62');
    on(5, 'turned A');
    on(9, 'A 41 43');
    on(16, 'A 38 40');
    const again = sayOn(23, 'A 48 50');
    expect(again.replies[0]!.text).toMatch(/Was it watered or mixed lately, or left alone\?/);
    expect(sayOn(23, 'left alone', '09:05').replies[0]!.text).toMatch(
      /it was not done before · let it cure on/,
    );
  });

  test('hot again after a turn is what a turn does', () => {
    const { on } = season(SITE, '2026-05-01');
    on(0, 'A 60 62');
    on(5, 'turned A');
    on(9, 'A 41 43');
    on(16, 'turned A');
    expect(on(18, 'A 48 50')).not.toMatch(/watered or mixed/);
  });

  test('cold after three weeks asks what it feels like; a wet one is not watered', () => {
    const { on } = season(SITE, '2026-05-01');
    on(0, 'started pile A');
    on(10, 'A 24 26');
    expect(on(10, 'A 25 27', '10:00')).not.toMatch(/Squeeze/);
    expect(on(22, 'A 24 26')).toMatch(/Squeeze a handful: does it drip, hold, or crumble\?/);
    on(23, 'A is dripping');
    const wet = on(24, 'A 23 25');
    expect(wet).toMatch(/Likely too wet · add dry chips or leaves · add coarse chips · turn it/);
    expect(wet).not.toMatch(/add water/);
  });
});

describe('split and joined', () => {
  const SITE = { name: 'Two Gates', timeZone: 'Europe/London', piles: ['A', 'B'], ruleSet: 'vessel-3d' };

  test('a split takes its proof along, a join with the unproven starts anew, a hold goes with it', () => {
    const { on, sayOn } = season(SITE, '2026-06-01');
    for (const day of [0, 1, 2]) on(day, 'A 58 60 at 45 cm');
    on(2, 'B 40 44 at 45 cm', '10:00');
    expect(on(3, 'split pile C from A')).toMatch(/Pile C takes its proof of heat along/);
    expect(on(3, 'pile C?', '10:00')).toMatch(/Time and temperature met on these readings/);
    expect(on(4, 'joined B to A')).toMatch(
      /Not both were shown hot for long enough: the count of pile A starts anew/,
    );
    expect(on(4, 'A?', '10:00')).toMatch(
      /0 of 3 days hot so far.* · joined today .* with what was not proven: starts anew/,
    );
    expect(sayOn(5, 'lab says salmonella in A').posts).toHaveLength(1);
    expect(on(6, '2 barrows from A onto pile C')).toMatch(/count of pile C starts anew/);
    expect(on(6, 'pile C?', '10:00')).toMatch(/HELD: Salmonella/);
    expect(on(6, 'can we give pile C away?', '10:05')).toMatch(/Joined with or split from · pile A/);
  });

  test('a probe that fails later takes back a proof that was handed on, by a split as by a join', () => {
    const { on } = season(SITE, '2026-06-01');
    on(0, 'thermometer check ice water 0.4', '08:00');
    for (const day of [1, 2, 3]) {
      on(day, 'A 58 60 at 45 cm');
      on(day, 'B 57 59 at 45 cm', '09:10');
    }
    expect(on(4, 'split pile C from A')).toMatch(/Pile C takes its proof of heat along/);
    on(4, 'started pile D', '09:05');
    expect(on(4, '3 barrows from B onto pile D', '09:10')).not.toMatch(/anew/);
    expect(on(4, 'joined A to B', '09:20')).toMatch(/Both were hot for long enough/);
    for (const pile of ['B', 'C', 'D']) expect(on(5, `${pile}?`)).toMatch(/Time and temperature met/);
    expect(on(6, 'thermometer check ice water 3')).toMatch(
      /Off by 3 °C: the readings since Mon 1 Jun prove nothing until a check is good/,
    );
    for (const pile of ['B', 'C', 'D']) expect(on(6, `${pile}?`, '10:00')).not.toMatch(/met on these/);
    expect(on(6, 'C?', '10:01')).toMatch(/3 readings in doubt since Mon 1 Jun: the probe failed its check/);
    expect(on(6, 'why', '10:02')).toMatch(/in doubt/);
    expect(on(6, 'B?', '10:03')).toMatch(/in doubt|failed its check/);
    expect(on(7, 'thermometer check ice water 0')).toMatch(
      /Good again\. What was read before stays in doubt/,
    );
    // A second bad check clears nothing of the first.
    on(9, 'thermometer check ice water -2');
    on(10, 'thermometer check ice water 0');
    expect(on(10, 'C?', '10:00')).toMatch(/3 readings in doubt since Mon 1 Jun/);
    for (const day of [11, 12, 13]) on(day, 'C 57 59 at 45 cm');
    expect(on(13, 'C?', '10:00')).toMatch(/Time and temperature met/);
  });

  test('mature compost of an unproven pile is no cover', () => {
    const { on } = season(SITE, '2026-06-01');
    expect(on(0, 'covered A with mature compost')).toMatch(/not shown to come from a proven pile/);
    expect(on(0, 'covered B with a tarp', '10:00')).not.toMatch(/proven/);
  });
});

describe('a drum fed every day', () => {
  const SITE = {
    ...HOSPITAL,
    containers: { ...HOSPITAL.containers, cart: { tareKg: 15, litres: 240, holds: 'food-scraps' } },
    ruleSet: 'vessel-3d',
  };

  test('fill, stay, feed, discharge and both ways of proof', () => {
    const { on } = season(SITE, '2026-06-01');
    for (let day = 0; day <= 5; day += 1) {
      on(day, 'east kitchen cart 66 kg, west kitchen cart 70 kg, chips 60 kg');
      on(day, `drum ${56 + day}, exit 44`, '09:30');
    }
    const status = on(5, 'drum?', '10:00');
    expect(status).toMatch(/^Drum: about \d+ kg inside · about \d+ % full \(\d+–\d+\)/);
    expect(status).toMatch(/Oldest load \(#1\) 5 days in · coldest \(#\d+, .*\) has seen \d+ °C at most/);
    // 6 × 166 kg over the seven days of a week. common practice, no source: plain division
    expect(status).toMatch(
      /Fed about 142 kg a day \(mean of 7 days\) · next discharge in about \d+ days \(by then it is full\)/,
    );
    expect(status).toMatch(/A drum fed daily proves heat in-vessel if your regulator accepts/);
    expect(status.split('\n').length).toBeLessThanOrEqual(8);
    on(5, 'set drum way in vessel', '10:01');
    expect(on(5, 'drum?', '10:02')).toMatch(
      /cannot be shown .*(one point is not enough|least time inside is not set)/,
    );
    expect(on(5, 'why', '10:03')).toMatch(/your regulator accepts this way of proving a drum/);
    const out = on(6, 'discharged 300 kg onto C');
    expect(out).toMatch(/The oldest had been in 6 days\. · It counts as fresh on pile C/);
    expect(on(6, 'C?', '10:00')).toMatch(/fresh material today/);
    expect(on(6, 'can we give C away?', '10:05')).toMatch(/Came from · east kitchen .* · west kitchen/);
  });

  test('proven in the drum, as the regulator accepts: what leaves is proven in the pile, until anything fresh joins it', () => {
    const { on } = season(SITE, '2026-06-01');
    for (const set of ['drum way in vessel', 'drum least hours 72', 'drum no short circuit yes'])
      on(0, `set ${set}`);
    for (let day = 0; day <= 4; day += 1) {
      on(day, 'east kitchen cart 66 kg, chips 20 kg');
      on(day, 'drum 57 60 58', '09:30');
    }
    expect(on(4, 'drum?', '10:00')).toMatch(/Drum: 3 of 3 days hot\. Time and temperature met/);
    expect(on(4, 'discharged 100 kg onto C', '11:00')).toMatch(
      /It goes to pile C proven hot in the drum, if your regulator accepts that/,
    );
    expect(on(4, 'C?', '11:05')).toMatch(
      /Time and temperature met on these readings; your regulator decides/,
    );
    on(5, 'drum 57 60 58');
    on(5, 'discharged 50 kg onto C', '10:00');
    expect(on(5, 'C?', '10:05')).toMatch(/Time and temperature met/);
    expect(on(5, 'can we give C away?', '10:10')).toMatch(
      /not yet\.\n.*met on these readings.*\n(.*\n)?Missing · 0 of 30 days/,
    );
    // One day at 54.9 and what leaves is fresh again; so is what never was in the drum.
    on(6, 'drum 54.9 60 58');
    expect(on(6, 'discharged 50 kg onto C', '10:00')).toMatch(/It counts as fresh on pile C/);
    expect(on(6, 'C?', '10:05')).toMatch(/0 of 3 days hot so far.* · fresh material today/);
    on(10, 'discharged 20 kg onto B');
    expect(on(10, 'B?', '10:05')).not.toMatch(/Time and temperature met/);
  });

  test('a probe that failed takes the proof of the drum back from the pile it went to', () => {
    const { on } = season(SITE, '2026-06-01');
    on(0, 'thermometer check ice water 0', '08:00');
    for (const set of ['drum way in vessel', 'drum least hours 72', 'drum no short circuit yes'])
      on(0, `set ${set}`);
    for (const day of [1, 2, 3]) on(day, 'drum 57 60 58');
    on(3, 'discharged 100 kg onto C', '11:00');
    expect(on(3, 'C?', '11:05')).toMatch(/Time and temperature met/);
    on(4, 'thermometer check ice water 3');
    expect(on(4, 'C?', '10:00')).not.toMatch(/met on these/);
  });

  test('an interval outside the check value, or the site’s rule, is remarked once', () => {
    const { on } = season(SITE, '2026-06-01');
    expect(on(0, 'drum auto 90 min')).toMatch(
      /machines of one kind often run every 30 min to 45 min \(common practice\)/,
    );
    expect(on(0, 'drum auto 90 min', '09:01')).not.toMatch(/machines/);
    on(0, 'set drum interval 40-60', '09:02');
    expect(on(0, 'drum auto 90 min', '09:03')).toMatch(/outside the site's rule \(40 min to 60 min\)/);
    expect(on(0, 'drum auto 45 min', '09:04')).not.toMatch(/outside/);
    expect(on(0, 'drum auto 45 min fan high', '09:05')).toMatch(/normal running low is enough/);
  });

  test('a level says what it leaves; a smell looks at wetness first', () => {
    const { on } = season(SITE, '2026-06-01');
    expect(on(0, 'drum half full')).toMatch(
      /About 2\.5 m³ inside \(about \d+ kg\); room for about 1\.25 m³ more/,
    );
    expect(on(0, 'drum 3/4 full', '09:05')).toMatch(/full\. Discharge before the next load/);
    expect(on(0, 'drum smells', '09:10')).toMatch(
      /wetness first.*\nThen more air: fan up a step\.\nMind where the exhaust goes/,
    );
    on(0, 'smell gone from the drum', '09:11');
    on(0, 'drum squeeze test just right', '09:12');
    expect(on(0, 'drum smells', '09:13')).not.toMatch(/wetness first/);
  });

  test('chips: days left at the present use, and when to order', () => {
    const { on } = season(SITE, '2026-06-01');
    expect(on(0, 'chips?')).toMatch(/never counted here/);
    expect(on(0, 'delivery of 2 m3 of chips', '09:05')).toMatch(/No use in the last two weeks/);
    for (let day = 1; day <= 4; day += 1) on(day, 'chips 120 kg');
    // 2 m³ of chips at 290 kg/m³ is 580 kg; 480 kg went in five days: 100 kg at 96 a day.
    const left = on(4, 'how many chips left?', '10:00');
    expect(left).toMatch(
      /about 345 L left \(about 100 kg\)\.\nAbout 1 day left at the present use .*Order now/,
    );
    expect(on(4, 'why', '10:01')).toMatch(/Use: about 96 kg a day/);
  });
});

describe('winter', () => {
  const SITE = { ...HOSPITAL, ruleSet: 'vessel-3d' };

  test('a frozen exit: the fan off for a time, and reminded of', () => {
    const { on, crew, at } = season(SITE, '2026-12-01');
    expect(on(0, 'exit frozen')).toMatch(/While it freezes: fan lowest or off, at most 4 h at a time/);
    expect(on(0, 'drum fan off', '09:10')).toMatch(/Fan off for 4 h more at most/);
    expect(crew.take({ at: at(0, '13:05') }).posts).toEqual([]);
    const reminded = crew.take({ at: at(0, '13:15') });
    expect(reminded.posts).toMatchObject([{ about: 'reminder' }]);
    expect(reminded.posts[0]!.text).toMatch(/the fan has been off for 4 h\. It needs air/);
    expect(crew.take({ at: at(0, '17:30') }).posts).toEqual([]);
    on(1, 'drum fan low');
    on(1, 'drum fan off', '09:30');
    on(1, 'drum fan low', '11:00');
    expect(crew.take({ at: at(1, '15:00') }).posts).toEqual([]);
  });

  test('a frozen pile is no finished one: no forecast, cannot tell', () => {
    const { on } = season(SITE, '2026-10-01');
    on(0, 'B is full');
    for (const day of [1, 2, 3]) on(day, 'B 60 62 at 45 cm, ambient 9');
    on(10, 'turned B');
    on(20, 'B 40 42, ambient 6');
    on(40, 'B 20 22, ambient 2');
    expect(on(60, 'B -1 3, ambient -4')).toMatch(/Likely frozen · leave it alone/);
    const status = on(60, 'B?', '10:00');
    expect(status).toMatch(/frozen, cannot tell/);
    expect(status).toMatch(/Cannot tell yet/);
    expect(status).not.toMatch(/Near the air about|Nothing missing/);
  });
});

describe('a season through', () => {
  test('a pile fed from the drum: fresh each time, proven once it is closed, traced to its kitchens', () => {
    const { on } = season(
      {
        ...HOSPITAL,
        containers: { ...HOSPITAL.containers, cart: { tareKg: 15, litres: 240, holds: 'food-scraps' } },
        ruleSet: 'vessel-3d',
      },
      '2026-06-01',
    );
    for (let day = 0; day <= 11; day += 1) {
      on(day, 'east kitchen cart 66 kg, chips 20 kg, drum 58');
      if (day % 2 === 1)
        expect(on(day, 'discharged 150 kg onto C', '10:00')).toMatch(/counts as fresh on pile C/);
      // Hot as it is, what is fed every other day never gets its three days.
      if (day > 2) expect(on(day, 'C 60 at 45 cm', '11:00')).not.toMatch(/Time and temperature met/);
    }
    expect(on(12, 'C is full')).toMatch(/Read pile C every day from now on/);
    expect(on(12, 'today', '09:05')).toMatch(/Read pile C/);
    expect(on(12, 'C 58 at 45 cm', '09:10')).toMatch(/2 of 3 days hot\. Next reading by tomorrow/);
    expect(on(13, 'C 58 61 at 45 cm, ambient 12')).toMatch(/3 of 3 days hot\. Time and temperature met/);
    expect(on(13, 'today', '09:05')).not.toMatch(/Read pile C/);
    on(16, 'turned C');
    on(24, 'C 50 52, ambient 13');
    on(30, 'turned C');
    on(33, 'C 38 40, ambient 14');
    on(40, 'C 30 31, ambient 14');
    expect(on(41, 'can we give C away?')).toMatch(/^Pile C: not yet\./);
    on(47, 'C 22 23, ambient 15');
    on(54, 'C 18 19, ambient 15');
    on(54, 'C feels right', '09:02');
    const trace = on(54, 'can we give C away?', '09:05');
    expect(trace).toMatch(/^Pile C: nothing is missing on this book\./);
    expect(trace).toMatch(/Came from · east kitchen \d+(\.\d)? kg \(Mon 1 Jun to /);
    on(55, 'C is ready');
    expect(on(55, '3 barrows from C to the market', '09:05')).not.toMatch(/stored, but/);
  });

  test('windrows: 15 days, 5 turns, then cured and gone', () => {
    const { on } = season(
      { name: 'Long Acre', timeZone: 'Europe/London', piles: ['A', 'B'], ruleSet: 'windrow-15d' },
      '2026-05-01',
    );
    on(0, 'A is full, ambient 11');
    for (let day = 1; day <= 15; day += 1) {
      on(day, 'A 58 60 at 45 cm, ambient 12');
      if (day % 3 === 0) on(day, 'turned A', '11:00');
    }
    // The fifth turn fell on the fifteenth day: the run is met with it.
    expect(on(16, 'A 57 at 45 cm')).toMatch(/15 of 15 days hot\. Time and temperature met/);
    expect(on(16, 'A?', '10:00')).toMatch(/turned 5 times/);
    on(26, 'turned A');
    for (const [day, celsius] of [
      [30, 43],
      [37, 34],
      [44, 27],
      [51, 21],
    ] as const) {
      on(day, `A ${celsius} at 45 cm, ambient 16`);
    }
    on(51, 'A feels right', '10:00');
    expect(on(52, 'can we give A away?')).toMatch(/^Pile A: nothing is missing on this book/);
  });

  test('winter: frozen through is neither cold nor finished; it is judged after the thaw', () => {
    const { on } = season(
      {
        name: 'North Field',
        timeZone: 'Europe/London',

        piles: ['A'],
        ruleSet: 'vessel-3d',
      },
      '2026-11-01',
    );
    on(0, 'A is full');
    for (const day of [1, 2, 3]) on(day, 'A 58 60 at 45 cm, ambient 6');
    on(10, 'turned A');
    on(20, 'A 43, ambient 2');
    for (const day of [40, 60, 80]) {
      const said = on(day, 'A -1 2, ambient -6');
      expect(said).toMatch(/Likely frozen · leave it alone/);
      expect(said).not.toMatch(/too cold|turn it|Squeeze/);
      const status = on(day, 'A?', '10:00');
      expect(status).toMatch(/frozen, cannot tell/);
      expect(status).not.toMatch(/Near the air about|Nothing missing/);
    }
    // Met before the frost, it stays met.
    expect(on(80, 'can we give A away?', '10:05')).toMatch(
      /3 of 3 days hot.*\n(.*\n)*.*wait for the thaw|thaw/,
    );
    on(130, 'A 12, ambient 8');
    expect(on(130, 'A?', '10:00')).toMatch(/Not ready|Cannot tell/);
    on(131, 'turned A');
    // It warms up again in spring: not done before the frost.
    expect(on(134, 'A 38, ambient 11')).not.toMatch(/too cold/);
    expect(on(134, 'A?', '10:00')).toMatch(/it heated again/);
    on(141, 'A 30, ambient 12');
    on(148, 'A 23, ambient 13');
    on(155, 'A 17, ambient 14');
    on(155, 'A feels right', '10:00');
    expect(on(156, 'A?')).toMatch(/Not ready · it heated again/);
    on(156, 'turned A', '10:00');
    on(159, 'A 17, ambient 15');
    expect(on(159, 'A?', '10:00')).toMatch(/Nothing missing on this book/);
  });

  test('turned and dipped, split and joined: what was proven goes on, what was not starts anew', () => {
    const { on } = season(
      { name: 'Two Gates', timeZone: 'Europe/London', piles: ['A', 'B'], ruleSet: 'vessel-3d' },
      '2026-06-01',
    );
    on(0, 'A is full, ambient 14');
    on(1, 'A 59 at 45 cm');
    on(1, 'turned A', '10:00');
    expect(on(1, 'A 37 at 45 cm', '16:00')).toMatch(/turned within a day, so a low says nothing yet/);
    expect(on(2, 'A 58 at 45 cm', '12:00')).toMatch(/2 of 3 days hot/);
    expect(on(3, 'A 58 at 45 cm', '12:00')).toMatch(/3 of 3 days hot\. Time and temperature met/);
    expect(on(4, 'split A, half of it is pile 5')).toMatch(/Pile 5 takes its proof of heat along/);
    expect(on(5, 'joined B to A')).toMatch(/count of pile A starts anew/);
    for (const day of [6, 7, 8]) on(day, 'A 57 at 45 cm, ambient 15');
    expect(on(8, 'joined 5 to A', '10:00')).toMatch(/Both were hot for long enough/);
    expect(on(8, 'A?', '10:05')).toMatch(/Time and temperature met/);
    expect(on(8, 'pile 5?', '10:06')).toMatch(/pile A/);
    const gone = on(9, 'can we give A away?');
    expect(gone).toMatch(/Joined with or split from · .*pile 5/);
    expect(gone).toMatch(/pile B/);
  });

  test('the evidence is a table of days, in the words of whoever asks', () => {
    const { on } = season(
      {
        name: 'Two Gates',
        timeZone: 'Europe/London',
        languages: ['en', 'fr'],
        piles: ['A'],
        ruleSet: 'vessel-3d',
      },
      '2026-06-01',
    );
    on(0, 'A is full, ambient 14');
    on(1, 'A 58 56 at 45 cm');
    on(2, 'A 54.9 at 45 cm');
    on(4, 'A 57 at 45 cm');
    const told = on(4, 'evidence for A', '10:00').split('\n');
    const days = told.filter((line) => /: (lowest|no reading)/.test(line));
    expect(days.map((line) => line.replace(/^.*: /, ''))).toEqual([
      'lowest 56 °C, counts',
      'lowest 54.9 °C, too low',
      'no reading',
      'lowest 57 °C, counts',
    ]);
    expect(on(4, 'preuve du tas A', '10:01')).toMatch(/plus basse 54,9 °C, trop basse/);
    expect(on(4, 'evidence', '10:02').split('\n')).toEqual(told);
  });
});
