import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Writable } from 'node:stream';
import { describe, expect, test } from 'vitest';
import { complainTo } from '../../src/commands/parts.ts';
import { emptyOldTalk, emptyOldWords } from '../../src/commands/tidy.ts';
import { HOSPITAL, startScenario } from './harness.ts';

const texts = (crew: ReturnType<typeof startScenario>, ids: string[]): string[] =>
  ids.map((id) => crew.book.message(crew.site, 'replay', 'group', id, null)?.text ?? '?');

describe('forget me', () => {
  test('takes the name and the words out, keeps the lines under the number, and says what stays and why', () => {
    const crew = startScenario(HOSPITAL);
    crew.say('cart 61.5', { from: 'Petronella', id: 'a' });
    crew.say('B 41 43', { from: 'Petronella', id: 'b' });
    crew.say("Dave's arm is in the drum", { from: 'Petronella', id: 'c' });
    crew.say('cart 58', { from: 'Ana', id: 'd' });
    const reply = crew.ask('forget me', { from: 'Petronella', id: 'e' });
    expect(reply).toContain('Your name, your messages and what they said are removed, notes too.');
    expect(reply).toContain('The entries stay, under the number 1 alone');
    expect(reply).toContain('the weights must still add up');
    expect(reply).toContain('Backups made before now keep the name');
    expect(texts(crew, ['a', 'b', 'c', 'd', 'e'])).toEqual(['', '', '', 'cart 58', '']);
    const lines = crew.lines();
    expect(lines.map(({ by }) => by)).toEqual(['person 1', 'person 1', 'person 1', 'Ana']);
    expect(lines[0]!.record).toMatchObject({ kind: 'weigh-in', kg: 61.5 });
    expect(JSON.stringify(lines)).not.toContain('Petronella');
    for (let id = 1; crew.book.outgoing(id); id++) {
      expect(crew.book.outgoing(id)!.text).not.toMatch(/Petronella|Dave/);
    }
    expect(crew.book.people(crew.site).map(({ name }) => name)).toEqual(['', 'Ana']);
  });

  test('takes the words of notes out of the book, and the chain of the lines still holds', () => {
    const crew = startScenario(HOSPITAL);
    crew.say('note: Petronella’s knee is bad', { from: 'Petronella' });
    crew.say('note: the tarp is blue', { from: 'Ana' });
    crew.say('forget me', { from: 'Petronella' });
    expect(crew.lines().map(({ record }) => record)).toMatchObject([
      { kind: 'note', text: '' },
      { kind: 'note', text: 'the tarp is blue' },
    ]);
    expect(crew.book.verify()).toEqual({ ok: true, lines: 2 });
    expect(crew.ask('show #1')).toContain('#1 Note: its words were removed');
    expect(crew.ask('show #1')).toContain('Logged by person 1');
  });

  test('leaves no word of theirs in the file: neither where it stood nor in what is kept beside it', () => {
    const folder = mkdtempSync(join(tmpdir(), 'forgotten-'));
    const path = join(folder, 'book.db');
    const crew = startScenario(HOSPITAL, undefined, undefined, path);
    crew.say('note: zanzibarine the first', { from: 'Petronella' });
    crew.say('cart 665', { from: 'Petronella' });
    crew.say('odour at B', { from: 'Petronella' });
    crew.say('smell gone at B zanzibarine', { from: 'Petronella' });
    // A week later a picture of the site is kept, with what is held and what was done in it.
    crew.say('cart 58', { from: 'Ana', at: '2026-12-14T09:00' });
    crew.say('cart 58', { from: 'Ana', at: '2026-12-22T09:00' });
    crew.say('forget me', { from: 'Petronella', at: '2026-12-22T09:05' });
    crew.say('cart 59', { from: 'Ana', at: '2026-12-30T09:05' });
    crew.book.close();
    const file = readFileSync(path, 'latin1');
    rmSync(folder, { recursive: true });
    expect(file).toContain('Ana');
    expect(file).not.toContain('zanzibarine');
    expect(file).not.toContain('Petronella');
  });

  test.each([
    ['oublie-moi', 'Les lignes restent', 'les poids doivent encore tomber juste', 'Les sauvegardes d’avant'],
    ['olvídame', 'Las líneas se quedan', 'los pesos deben seguir cuadrando', 'Las copias de antes'],
  ])('%s says it in that language', (asked, ...told) => {
    const crew = startScenario(HOSPITAL);
    crew.say('cart 61.5', { from: 'Luz' });
    const reply = crew.ask(asked, { from: 'Luz' }).replaceAll("'", '’');
    for (const each of told) expect(reply).toContain(each);
  });

  test('who comes back is somebody new', () => {
    const crew = startScenario(HOSPITAL);
    crew.say('cart 61.5', { from: 'Luz' });
    crew.say('olvídame', { from: 'Luz' });
    crew.say('cart 58', { from: 'Luz' });
    expect(crew.lines().map(({ by }) => by)).toEqual(['person 1', 'Luz']);
  });
});

describe('the words of messages', () => {
  test('an alarm’s words, and talk, are gone after a day; those of lines stay until the set time', () => {
    const crew = startScenario(HOSPITAL);
    crew.say('set keep messages 90 days', { id: 's' });
    crew.say('lovely morning, my knee is better', { id: 't' });
    crew.say('cart 61.5', { id: 'w' });
    const alarm = crew.say('Rosa is bleeding badly', { id: 'x' });
    expect(alarm.posts[0]!.text).toContain('Rosa is bleeding');
    const alarms = () => {
      const found: string[] = [];
      for (let id = 1; crew.book.outgoing(id); id++) {
        const row = crew.book.outgoing(id)!;
        if (row.about === 'alarm') found.push(row.text);
      }
      return found;
    };
    emptyOldTalk(crew.book, '2026-11-25T07:00:00.000Z');
    expect(texts(crew, ['t'])).toEqual(['lovely morning, my knee is better']);
    expect(alarms()).toHaveLength(1);
    expect(alarms()[0]).toContain('Rosa');
    emptyOldTalk(crew.book, '2026-11-25T09:00:00.000Z');
    expect(texts(crew, ['t', 'w'])).toEqual(['', 'cart 61.5']);
    expect(alarms()).toEqual(['']);
    emptyOldWords(crew.book, crew.assistant, '2027-02-21T09:00:00.000Z');
    expect(texts(crew, ['w'])).toEqual(['cart 61.5']);
    emptyOldWords(crew.book, crew.assistant, '2027-02-23T09:00:00.000Z');
    expect(texts(crew, ['w', 'x'])).toEqual(['', '']);
    expect(crew.lines()[1]!.record).toMatchObject({ kind: 'weigh-in', kg: 61.5 });
    expect(crew.lines()[1]!.record).not.toHaveProperty('said');
  });

  test('are no longer in what is kept of the site once they are gone', () => {
    const crew = startScenario(HOSPITAL);
    crew.say('set keep messages 30 days');
    crew.say('cart 665');
    expect(crew.ask('today')).toContain('cart 665');
    crew.say('cart 58', { at: '2026-12-14T09:00' });
    crew.say('cart 58', { at: '2026-12-30T09:00' });
    emptyOldWords(crew.book, crew.assistant, '2026-12-30T10:00:00.000Z');
    expect(crew.ask('today', { at: '2026-12-30T10:05' })).not.toContain('cart 665');
    expect(JSON.stringify(crew.book.snapshotBefore(crew.site, '9999'))).not.toContain('cart 665');
  });

  test('a note is the line itself: it stays when the words of messages go', () => {
    const crew = startScenario(HOSPITAL);
    crew.say('set keep messages 90 days');
    crew.say('note: the tarp is blue', { id: 'n' });
    emptyOldWords(crew.book, crew.assistant, '2027-02-23T09:00:00.000Z');
    expect(texts(crew, ['n'])).toEqual(['']);
    expect(crew.lines().at(-1)!.record).toEqual({ kind: 'note', text: 'the tarp is blue' });
  });

  test('are kept where the site has set no end', () => {
    const crew = startScenario(HOSPITAL);
    crew.say('cart 61.5', { id: 'w' });
    emptyOldWords(crew.book, crew.assistant, '2036-11-25T09:00:00.000Z');
    expect(texts(crew, ['w'])).toEqual(['cart 61.5']);
  });
});

test('nothing personal in the log: a fault of our own says what and where, not who or what was written', () => {
  let logged = '';
  const complain = complainTo(
    new Writable({
      write(chunk, _encoding, done) {
        logged += String(chunk);
        done();
      },
    }),
  );
  const crew = startScenario(HOSPITAL, undefined, complain);
  crew.say('cart 61.5 from Petronella', { from: 'Petronella' });
  const { append } = crew.book;
  crew.book.append = () => {
    throw new Error('cannot write: Petronella said cart 58.5');
  };
  const turn = crew.say('cart 58.5', { from: 'Petronella' });
  crew.book.append = append;
  expect(turn.replies[0]!.text).toContain('Your message is kept');
  expect(logged).toContain('a message could not be dealt with');
  expect(logged).not.toMatch(/Petronella|58\.5|cart/i);
});
