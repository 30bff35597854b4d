import { describe, expect, test } from 'vitest';
import { HOSPITAL, startScenario } from './harness.ts';

const SITE = { ...HOSPITAL, ruleSet: 'vessel-3d' };
const start = () => startScenario(SITE, '2026-10-07T08:00');

describe('finished: full, or ready?', () => {
  test('asked, held, and settled by either word', () => {
    const crew = start();
    const asked = crew.say('C is finished');
    expect(asked.replies[0]!.text).toMatch(/C is finished: full, or ready to use\?/);
    expect(asked.replies[0]!.choices).toEqual(['full', 'ready', 'Drop it']);
    expect(crew.lines()[0]).toMatchObject({ held: { why: 'full-or-ready' } });
    expect(crew.ask('full')).toMatch(/#2 Pile C is full and closed\nRead pile C every day from now on/);
    expect(crew.lines()[0]).toMatchObject({ voidedBy: 2 });
    expect(crew.ask('B is finished')).toMatch(/full, or ready/);
    expect(crew.ask('ready')).toMatch(/Pile B is said to be ready\nNoted\. The book does not show it/);
  });

  test('without a rule set nobody is told to read for proof', () => {
    const crew = startScenario(HOSPITAL);
    expect(crew.ask('pile C is full')).not.toMatch(/proves nothing/);
  });
});

describe('the gate', () => {
  test('salmonella holds the pile; only a coordinator lets anything leave', () => {
    const crew = start();
    crew.ask('settings', { from: 'Bo', coordinator: true });
    crew.ask('east kitchen cart 66 kg into pile C');
    crew.ask('2 barrows of compost from C to the allotment', { at: '2026-10-07T09:00' });
    const found = crew.say('lab says salmonella in C', { at: '2026-10-08T09:00' });
    expect(found.replies[0]!.text).toMatch(/Pile C is ON HOLD \(Salmonella\): nothing leaves it/);
    expect(found.replies[0]!.choices).toContain('Trace pile C');
    expect(found.posts).toMatchObject([{ about: 'alarm', private: true }]);
    expect(found.posts[0]!.text).toMatch(/Compost left pile C once/);
    // Who received from it and what went in stands in the reply, not behind a button alone.
    for (const { text } of [found.replies[0]!, found.posts[0]!]) {
      expect(text).toMatch(/Went to · .*allotment.*\nCame from · east kitchen/);
    }

    const refused = crew.say('3 barrows of compost from C to the market', {
      id: 'm1',
      at: '2026-10-08T09:05',
    });
    expect(refused.replies[0]!.text).toMatch(
      /pile C is on hold: nothing leaves it until a coordinator allows it/,
    );
    const held = crew.lines().at(-1)!;
    expect(held).toMatchObject({ held: { why: 'held-pile' }, record: { kind: 'removal' } });
    // Whoever took it cannot let it go.
    const press = { choose: { id: 'm1', label: 'allow it' } };
    expect(crew.take({ at: '2026-10-08T09:06', from: 'Ana', ...press }).replies[0]!.text).toMatch(
      /Only a coordinator/,
    );
    expect(crew.lines().at(-1)).toMatchObject({ held: { why: 'held-pile' } });
    const allowed = crew.take({ at: '2026-10-08T09:07', from: 'Bo', ...press });
    expect(allowed.replies[0]!.text).toMatch(/Left the site: finished compost · 3 barrows · from pile C/);

    const trace = crew.ask('can we give C away?', { at: '2026-10-08T09:10' });
    expect(trace).toMatch(/^No\. Pile C is ON HOLD \(Salmonella, #\d+, today\)/);
    expect(trace).toMatch(/Went to · .*allotment.* · .*market/);
    expect(trace).toMatch(/Came from · east kitchen/);
  });

  test('a hold is laid and lifted by a coordinator alone', () => {
    const crew = start();
    crew.ask('settings', { from: 'Bo', coordinator: true });
    expect(crew.ask('hold A: odd smell')).toMatch(/Only a coordinator/);
    expect(crew.ask('hold A: odd smell', { from: 'Bo' })).toMatch(/pile A on hold: odd smell/);
    expect(crew.ask('A?')).toMatch(/HELD: odd smell/);
    expect(crew.ask('1 barrow of compost from A to the allotment')).toMatch(/on hold/);
    expect(crew.ask('lift hold on A')).toMatch(/Only a coordinator/);
    expect(crew.ask('lift hold on A', { from: 'Bo' })).toMatch(/hold on pile A lifted/);
    expect(crew.ask('A?')).not.toMatch(/HELD/);
  });

  test('no way around a hold: undo, an edit, or no pile named', () => {
    const crew = start();
    crew.ask('settings', { from: 'Bo', coordinator: true });
    crew.ask('lab says salmonella in C');
    expect(crew.ask('undo')).toMatch(/only a coordinator/);
    expect(crew.ask('C?')).toMatch(/HELD: Salmonella/);
    const unnamed = crew.say('3 barrows of finished compost to the market');
    expect(unnamed.replies[0]!.text).toMatch(/which pile\?/i);
    expect(unnamed.replies[0]!.choices).toEqual(['pile A', 'pile B', 'Drop it']);
    crew.say('3 barrows of compost from B to the market', { id: 'e1' });
    const edited = crew.say('3 barrows of compost from C to the market', { id: 'e2', edits: 'e1' });
    expect(edited.replies[0]!.text).toMatch(/pile C is on hold/);
    expect(crew.lines().at(-1)).toMatchObject({ held: { why: 'held-pile' } });
    expect(crew.ask('undo', { from: 'Bo' })).not.toMatch(/only a coordinator/i);
  });

  test('no way around a hold: a correction, a reply to the entry, the line that laid it, a doubt of before', () => {
    const crew = start();
    crew.ask('settings', { from: 'Bo', coordinator: true });
    crew.ask('lab says salmonella in C', { from: 'Cy', id: 'lab' });
    crew.say('3 barrows of compost from B to the market', { id: 'r1' });
    expect(crew.ask('that was C not B')).toMatch(/pile C is on hold: nothing leaves it until a coordinator/);
    expect(crew.lines().at(-1)).toMatchObject({ held: { why: 'held-pile' }, record: { pile: 'pile C' } });
    crew.ask('not taken');
    crew.say('2 barrows of compost from B to the market', { id: 'r2' });
    expect(crew.ask('that was C not B', { replyTo: 'r2' })).toMatch(/pile C is on hold/);
    crew.ask('not taken');
    // Another amount off a pile that is free goes through as before.
    crew.say('3 barrows of compost from B to the market', { id: 'r3' });
    expect(crew.ask('sorry 2 not 3')).toMatch(/2 barrows/);

    expect(crew.ask('that was B not C', { from: 'Cy' })).toMatch(/Still on hold by #\d+: only a coordinator/);
    const edited = crew.say('lab says salmonella in A', { from: 'Cy', id: 'lab2', edits: 'lab' });
    expect(edited.replies[0]!.text).toMatch(/Still on hold by/);
    expect(crew.ask('C?')).toMatch(/HELD: Salmonella/);
    expect(crew.ask('A?')).toMatch(/HELD: Salmonella/);

    const unnamed = crew.say('4 barrows of finished compost to the market', { id: 'r4' });
    expect(unnamed.replies[0]!.choices).toEqual(['pile B', 'Drop it']);
    crew.ask('hold B: odd smell', { from: 'Bo' });
    const chosen = crew.take({ at: '2026-10-07T10:30', from: 'Ana', choose: { id: 'r4', label: 'pile B' } });
    expect(chosen.replies[0]!.text).toMatch(/pile B is on hold: nothing leaves it/);
  });

  test('a yes or an ok meant for something else lets nothing off a held pile', () => {
    const crew = start();
    crew.ask('settings', { from: 'Bo', coordinator: true });
    crew.ask('lab says salmonella in C');
    crew.ask('2 barrows from C to the market');
    crew.ask('flies on A');
    expect(crew.ask('yes', { from: 'Bo' })).toMatch(/^Likely fresh food lies bare/);
    for (const word of ['ok', 'yes', 'sure', 'oui']) crew.ask(word, { from: 'Bo' });
    expect(crew.lines().some(({ record, held }) => record.kind === 'removal' && !held)).toBe(false);
    expect(crew.ask('allow it', { from: 'Bo' })).toMatch(/Left the site: finished compost · 2 barrows/);
  });

  test('what a laboratory finds stands before a hold that was laid by word, whichever came first', () => {
    const crew = start();
    crew.ask('settings', { from: 'Bo', coordinator: true });
    crew.ask('hold B: odd smell', { from: 'Bo' });
    const found = crew.say('lab says salmonella in B');
    expect(found.replies[0]!.text).toMatch(/Pile B is ON HOLD \(Salmonella\)/);
    expect(found.posts).toMatchObject([{ about: 'alarm', private: true }]);
    crew.ask('hold B: wait for the boss', { from: 'Bo' });
    expect(crew.ask('B?')).toMatch(/HELD: Salmonella/);
    expect(crew.ask('lab says no salmonella in B')).toMatch(
      /Pile B stays ON HOLD \(Salmonella\) until a coordinator lifts it/,
    );
    crew.ask('joined B to A');
    expect(crew.ask('A?')).toMatch(/HELD: Salmonella/);
  });

  // Class table: Brinton et al., BioCycle, 1995 (from memory)
  test('a vessel in the laboratory is told by its class, and is no reading of the pile', () => {
    const crew = start();
    expect(crew.ask('lab C self-heating 12')).toMatch(
      /Vessel test: 12 °C over the room, class IV \(V stable, I fresh\)\. It says nothing of the pile's own rise/,
    );
    expect(crew.ask('lab C self-heating 20')).toMatch(/class III .*the less stable one is taken/);
    expect(crew.ask('lab C dewar rise 15 F')).toMatch(/8\.3 °C over the room, class V/);
    expect(crew.ask('C?')).toMatch(/no reading yet/);
    expect(crew.say('lab C self-heating 450').replies[0]!.choices).toEqual(['45', 'drop it']);
  });

  test('a message edited into "finished" is asked about as well', () => {
    const crew = start();
    crew.say('pile C is full', { id: 'f1' });
    const edited = crew.say('pile C is finished', { id: 'f2', edits: 'f1' });
    expect(edited.replies[0]!.text).toMatch(/full, or ready to use\?/);
  });

  test('compost from a pile that is not proven is stored and remarked', () => {
    const crew = start();
    const reply = crew.ask('3 barrows of compost from B to the allotment');
    expect(reply).toMatch(/#1 Left the site: finished compost/);
    expect(reply).toMatch(/Pile B: stored, but · 0 of 3 hot days or hours shown\nYour regulator decides/);
    expect(crew.lines()[0]).toMatchObject({ held: false });
    // Residue picked out is no compost given away.
    expect(crew.ask('3 kg plastic out of pile B')).not.toMatch(/stored, but/);
  });
});

describe('a rule for heat is chosen', () => {
  test('weekly readings can never show it', () => {
    const crew = startScenario(HOSPITAL);
    expect(crew.ask('set rule set windrow-15d')).toMatch(
      /Weekly readings can never show 15 days with 5 turns/,
    );
    expect(crew.ask('set rule set catering-70-1h')).toMatch(/readings at most 60 min apart/);
  });

  test('a site may be more careful about heat, never less; what is set is listed', () => {
    const crew = startScenario(HOSPITAL);
    expect(crew.ask('set do not open 81')).toMatch(/That value cannot be right for do not open/);
    expect(crew.ask('set do not open 75')).toMatch(/do not open from 75 °C/);
    expect(crew.ask('B 75.5')).toMatch(/^Pile B 75\.5 °C: DO NOT OPEN OR TURN IT/);
    expect(crew.ask('set lab standard foo')).toMatch(/It can be one of: ccme-a, .*ontario-aa/);
    crew.ask('set lab standard ontario AA');
    crew.ask('set depth 40-60 cm');
    expect(crew.ask('settings')).toMatch(
      /Heat · readings judged at 40 cm to 60 cm deep · laboratory limits of ontario-aa · do not open from 75 °C/,
    );
    // Copper over 100 mg/kg is over the limit of Ontario's AA, and not of category A.
    expect(crew.ask('lab C copper 101 mg/kg')).toMatch(/ON HOLD \(copper\)/);
  });

  test('a rule that came with the site file is told of at the first reading of a pile, once', () => {
    const crew = startScenario({ ...HOSPITAL, ruleSet: 'aerated-pile-3d' });
    const first = crew.say('B 60 at 40 cm');
    expect(first.replies[0]!.text).toMatch(/1 of 3 days hot.*\n.*\n?Weekly readings can never show 3 days/s);
    expect(first.replies[0]!.text).toMatch(/blown by a fan, or do they only breathe/);
    expect(first.replies[0]!.choices.slice(0, 2)).toEqual(['blown by a fan', 'they only breathe']);
    expect(crew.ask('C 60 at 40 cm')).not.toMatch(/Weekly|blown/);
    expect(startScenario(HOSPITAL).ask('B 60 at 40 cm')).not.toMatch(/Weekly/);
  });

  test('forced aeration: which it is, is asked once, and breathing pipes prove nothing', () => {
    const crew = startScenario(HOSPITAL);
    const asked = crew.say('set rule set aerated-pile-3d');
    expect(asked.replies[0]!.text).toMatch(/blown by a fan, or do they only breathe/);
    expect(asked.replies[0]!.choices).toEqual(['blown by a fan', 'they only breathe']);
    expect(crew.ask('they only breathe')).toMatch(/Set: pipes that only breathe/);
    expect(crew.ask('set rule set aerated-pile-3d')).not.toMatch(/blown by a fan/);
    for (const day of ['10', '11', '12', '13']) crew.ask('B 60 at 40 cm', { at: `2026-12-${day}T09:00` });
    expect(crew.ask('B?', { at: '2026-12-13T10:00' })).toMatch(
      /cannot be shown.*only breathe are no forced aeration/,
    );
    expect(crew.ask('set aeration forced', { at: '2026-12-13T10:01' })).toMatch(/Set: pipes blown by a fan/);
    expect(crew.ask('B?', { at: '2026-12-13T10:02' })).toMatch(
      /Time and temperature met on these readings; your regulator decides/,
    );
  });
});
