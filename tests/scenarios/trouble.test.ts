import { describe, expect, test } from 'vitest';
import { HOSPITAL, startScenario } from './harness.ts';

const SITE = { ...HOSPITAL, ruleSet: 'vessel-3d' };
const start = () => startScenario(SITE, '2026-10-07T08:00');

describe('trouble is asked about once, then named', () => {
  test('flies: the question that separates, answered by its button or typed', () => {
    const crew = start();
    const asked = crew.say('flies on B');
    expect(asked.replies[0]!.text).toMatch(
      /#1 Problem noted: flies · pile B\nDoes food show at the surface\?/,
    );
    expect(asked.replies[0]!.choices).toEqual(['food shows', 'no food shows', 'Undo']);
    expect(crew.ask('food shows')).toMatch(/^Likely fresh food lies bare · cover fresh food at once/);
    // The question is answered: the same words later are talk.
    expect(crew.ask('cart 61 kg')).toMatch(/#2/);
    expect(crew.ask('food shows')).toBe('');
  });

  test('a pile that stays cold, said or asked: the question first; what the handful did is kept', () => {
    const crew = start();
    const asked = crew.say("B won't heat up");
    expect(asked.replies[0]!.text).toBe('Squeeze a handful: does it drip, hold, or crumble?');
    expect(asked.entries).toEqual([]);
    expect(crew.ask('it drips')).toMatch(
      /^#1 Pile B feels dripping\n(.*\n)?Likely too wet · add dry chips or leaves/,
    );
    const again = crew.ask("what's wrong with B?");
    expect(again).toMatch(/Is it rain that got in, or the mix itself\?/);
    expect(again).not.toMatch(/Squeeze|add water/);
    expect(crew.ask('B 21')).not.toMatch(/Squeeze/);
    expect(crew.ask('why is B cold?')).toMatch(/Likely too wet/);
    expect(crew.ask('C is cold')).toMatch(/Squeeze/);
    // Just turned, a pile is never called cold; frozen it is left alone.
    crew.ask('turned C');
    expect(crew.ask('C is cold')).toMatch(/only the turn · wait · read it again tomorrow/);
    crew.ask('A -2');
    expect(crew.ask('A is cold')).toMatch(/Likely frozen · leave it alone/);
  });

  test('a smell that says its kind is not asked which it is', () => {
    const crew = start();
    crew.ask('B is dripping');
    expect(crew.ask('B smells of ammonia')).toMatch(/Likely no air inside/);
    const other = start();
    other.ask('B is dripping');
    expect(other.ask('B smells rotten')).toMatch(/Likely too wet · add dry chips or leaves/);
  });

  test('a smell where the site ends asks which it is, unless it was said', () => {
    const crew = start();
    const asked = crew.say('smell at the fence');
    expect(asked.replies[0]!.text).toMatch(/#1 Problem noted: smell\nDoes it smell of ammonia, or rotten\?/);
    expect(asked.replies[0]!.choices.slice(0, 2)).toEqual(['ammonia', 'rotten']);
    expect(crew.ask('rotten smell at the east fence')).not.toMatch(/Does it smell/);
    expect(crew.ask('olor en la valla', { from: 'Eva' })).toMatch(/#3 /);
  });

  test.each([
    ["it's dripping", 'dripping'],
    ['drips', 'dripping'],
    ['it falls apart', 'dry'],
    ['holds together', 'right'],
    ["ça s'émiette", 'dry'],
    ['ça goutte', 'dripping'],
    ['se desmorona', 'dry'],
  ])('what the handful does, in other words than the button: %s', (said, feel) => {
    const crew = start();
    crew.ask(
      said.startsWith('ça')
        ? "B sent l'ammoniac"
        : said.startsWith('se')
          ? 'B huele a amoníaco'
          : 'B smells of ammonia',
    );
    crew.ask(said);
    expect(crew.lines().at(-1)!.record).toMatchObject({ kind: 'moisture', place: 'pile B', feel });
  });

  test('smoke that nobody said the place of stands before every pile', () => {
    const crew = start();
    crew.ask('smoke somewhere');
    expect(crew.ask('B?')).toMatch(/^Smoke was seen \(#1\), nobody said where: DO NOT OPEN OR TURN\./);
  });

  test('never water on what is wet, and why says what was known', () => {
    const crew = start();
    crew.ask('B is dripping');
    expect(crew.ask('leachate under B')).not.toMatch(/add water/);
    expect(crew.ask('why')).toMatch(/From the book · wet/);
  });

  test('smoke or fire heat stands before every other cause', () => {
    const crew = start();
    const hot = crew.say('B 82, ambient 12');
    expect(hot.replies[0]!.text).toMatch(/^Pile B 82 °C: DO NOT OPEN OR TURN IT\./);
    expect(hot.replies[0]!.text).not.toMatch(/over the air|days hot/);
    expect(hot.posts).toMatchObject([{ about: 'alarm', private: true }]);
    expect(crew.ask('flies on B')).toMatch(/Likely near fire · DO NOT OPEN OR TURN IT/);
  });

  test('asked how a smoking pile does, what not to do comes first', () => {
    const crew = startScenario(HOSPITAL);
    crew.ask('B 60 62');
    crew.ask('pile B smokes');
    expect(crew.ask('B?')).toMatch(/^Pile B smokes \(#2\): DO NOT OPEN OR TURN IT\. People back/);
  });

  test('a doubt about a value that would be a fire opens with what to do', () => {
    const crew = startScenario(HOSPITAL);
    expect(crew.ask('B 96')).toMatch(
      /^If that is true it is near fire: DO NOT OPEN OR TURN IT\. People back, fan off only if safe, call the fire service\. Do not half wet it\.\n#1 /,
    );
  });

  test('the bands in order, the hottest point first', () => {
    const crew = start();
    const reply = crew.ask('A 66 B 71 C 74, ambient 12');
    const lines = reply.split('\n').filter((line) => /: (hot|too hot|fire watch)/.test(line));
    expect(lines).toHaveLength(3);
    expect(lines[0]).toMatch(/^Pile C 74 °C: fire watch/);
    expect(lines[1]).toMatch(/^Pile B 71 °C: too hot\. Turn it today/);
    expect(lines[2]).toMatch(/^Pile A 66 °C: hot\./);
  });

  test('a complaint asks for what a regulator wants and keeps the name out of the group', () => {
    const crew = start();
    const reply = crew.ask('Mrs Baker complained about the smell at the east fence');
    expect(reply).toMatch(
      /For the regulator, still to note · .*how strong \(none, faint, strong\) · wind · weather/,
    );
    expect(reply).not.toMatch(/Baker/);
    expect(crew.ask('today')).not.toMatch(/Baker/);
    expect(crew.ask('what happened since monday?')).not.toMatch(/Baker/);
  });

  test('what is said after a complaint is noted on it, and only the rest is asked for again', () => {
    const crew = start();
    crew.say('complaint about the smell at the east fence', { id: 'c' });
    const answered = crew.ask('strong and rotten, wind SW, dry, we were turning A');
    expect(answered).toMatch(/^#2 Note: #1 strong and rotten, wind SW, dry, we were turning A\n/);
    expect(answered).toMatch(/still to note · what was done about it/);
    expect(answered).not.toMatch(/how strong|weather/);
    expect(crew.lines().map(({ record }) => record.kind)).toEqual(['problem', 'note']);
    // Work that was done is work, and a note on the complaint as well.
    const done = crew.ask('covered A with chips', { replyTo: 'c' });
    expect(done).toMatch(/#3 Covered pile A: chips\n#4 Note: #1 covered A with chips/);
    expect(done).toMatch(/Complaint #1: what a regulator asks for is all noted/);
    expect(crew.ask('today')).toMatch(/Complaint \(#1\)/);
    // What is said later, or of another matter, is read as ever.
    expect(crew.ask('turned B')).toMatch(/#5 Turned pile B/);
    expect(crew.ask('complaint gone')).toMatch(/Closed: complaint/);
    expect(crew.ask('today')).not.toMatch(/Complaint/);
    expect(crew.ask('strong wind, dry')).not.toMatch(/#1/);
  });

  test('what a neighbour rings about is asked about as a complaint, and a second one is no note on the first', () => {
    const crew = start();
    expect(crew.ask('a neighbour rang about the smell, faint')).toMatch(/For the regulator, still to note/);
    expect(crew.ask('the school called: strong ammonia smell')).toMatch(/#2 Problem noted: complaint/);
  });

  test('what ended it is kept with it', () => {
    const crew = start();
    crew.ask('B smells');
    expect(crew.ask('smell gone, added 2 barrows')).toMatch(
      /#2 Closed: smell · pile B\nOpen since today \(#1\)\. Done: added 2 barrows\./,
    );
    expect(crew.lines()).toHaveLength(2);
    expect(crew.lines()[1]).toMatchObject({
      record: { kind: 'resolved', topic: 'odour', note: 'added 2 barrows' },
    });
    expect(crew.ask('B?')).not.toMatch(/Open: smell/);
  });

  test('a frozen pile is left alone and not called too cold', () => {
    const crew = start();
    const reply = crew.ask('B -1, ambient -6');
    expect(reply).toMatch(/Likely frozen · leave it alone · insulate it · wait for the thaw/);
    expect(reply).not.toMatch(/too cold|turn it/);
  });
});

describe('a drum that stands still', () => {
  test.each(['drum jammed', 'power is out', 'drum stopped'])(
    '%s: people and locks first, never to start it',
    (said) => {
      const reply = start().ask(said);
      expect(reply).toMatch(/No new loads\. Log the hour/);
      expect(reply).not.toMatch(/reset|restart|release the|start it|switch it (back )?on|pull out the stop/i);
      if (said !== 'drum stopped') {
        expect(reply).toMatch(/Nobody inside or reaching in/);
        expect(reply).toMatch(/Locks and tags stay till their owner takes them off/);
      }
      // At most three lines of ours beside that of the entry; the cautions of lock-out come every time.
      expect(reply.split('\n').filter((line) => !/lock/i.test(line)).length).toBeLessThanOrEqual(4);
    },
  );

  test('a jam is for trained people, no power for those who mend it', () => {
    expect(start().ask('drum jammed')).toMatch(/A jam comes loose with force: leave it to trained people/);
    expect(start().ask('power is out')).toMatch(/power company or an electrician/);
  });
});
