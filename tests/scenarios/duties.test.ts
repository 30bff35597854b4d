import { describe, expect, it } from 'vitest';
import { HOSPITAL, startScenario } from './harness.ts';

const SITE = {
  ...HOSPITAL,
  containers: { ...HOSPITAL.containers, cart: { tareKg: 15.5, litres: 240, holds: 'food-scraps' } },
  ruleSet: 'vessel-3d',
};
/** A Monday. */
const MONDAY = '2026-05-04';
const open = (more: object = {}) => startScenario({ ...SITE, ...more }, `${MONDAY}T08:00`);

describe.each([
  {
    language: 'en',
    make: [
      'every friday: check extinguishers',
      'every 2 weeks: oil the hinges',
      'on 1 march: renew the list',
    ],
    says: [/check extinguishers \(every Friday\)/, /oil the hinges \(every 2 weeks\)/, /on 1 Mar each year/],
    list: 'our duties',
    listed:
      /check extinguishers: every Friday\noil the hinges: every 2 weeks\nrenew the list: on 1 Mar each year/,
    change: 'every thursday: check extinguishers',
    changed: /check extinguishers \(every Thursday\)/,
    remove: 'remove duty oil the hinges',
    removed: /Duty removed: oil the hinges/,
    ask: 'today',
    due: /Check extinguishers: due .*7 May, not done yet/,
    done: 'done check extinguishers',
    unclear: 'new duty: polish the sign',
    asked: /How often\? Nothing stored yet/,
  },
  {
    language: 'fr',
    make: [
      'chaque vendredi : vérifier les extincteurs',
      'toutes les 2 semaines : graisser les gonds',
      'le 1er mars : renouveler la liste',
    ],
    says: [
      /vérifier les extincteurs \(chaque vendredi\)/,
      /\(toutes les 2 semaines\)/,
      /\(le 1 mars chaque année\)/,
    ],
    list: 'nos tâches',
    listed:
      /vérifier les extincteurs\s: chaque vendredi\ngraisser les gonds\s: toutes les 2 semaines\nrenouveler/,
    change: 'chaque jeudi : vérifier les extincteurs',
    changed: /vérifier les extincteurs \(chaque jeudi\)/,
    remove: 'supprime la tâche graisser les gonds',
    removed: /Tâche retirée\s: graisser les gonds/,
    ask: 'quoi faire',
    due: /Vérifier les extincteurs\s: prévu .*7 mai, pas encore fait/,
    done: 'fait vérifier les extincteurs',
    unclear: "nouvelle tâche : polir l'enseigne",
    asked: /Tous les combien\s\? Rien de noté encore/,
  },
  {
    language: 'es',
    make: [
      'cada viernes: revisar extintores',
      'cada 2 semanas: engrasar las bisagras',
      'el 1 de marzo: renovar la lista',
    ],
    says: [/revisar extintores \(cada viernes\)/, /\(cada 2 semanas\)/, /\(el 1 mar cada año\)/],
    list: 'nuestras tareas',
    listed:
      /revisar extintores: cada viernes\nengrasar las bisagras: cada 2 semanas\nrenovar la lista: el 1 mar cada año/,
    change: 'cada jueves: revisar extintores',
    changed: /revisar extintores \(cada jueves\)/,
    remove: 'quita la tarea engrasar las bisagras',
    removed: /Tarea quitada: engrasar las bisagras/,
    ask: 'qué hay que hacer',
    due: /Revisar extintores: tocaba .*7 may, sin hacer todavía/,
    done: 'hecho revisar extintores',
    unclear: 'nueva tarea: pulir el letrero',
    asked: /¿Cada cuánto\? Todavía nada anotado/,
  },
])('the site’s own duties, in $language', (said) => {
  it('are made, listed, changed, due, done and removed', () => {
    const site = open();
    const ask = (text: string, at?: string) =>
      site.ask(text, { language: said.language, coordinator: true, ...(at ? { at } : {}) });
    said.make.forEach((text, i) => {
      expect(ask(text)).toMatch(said.says[i]!);
    });
    expect(ask(said.list)).toMatch(said.listed);
    expect(ask(said.change)).toMatch(said.changed);
    expect(ask(said.remove)).toMatch(said.removed);
    expect(ask(said.list).split('\n')).toHaveLength(2);
    expect(ask(said.unclear)).toMatch(said.asked);
    expect(ask(said.ask, '2026-05-06T12:00')).not.toMatch(said.due);
    expect(ask(said.ask, '2026-05-08T12:00')).toMatch(said.due);
    ask(said.done, '2026-05-08T12:05');
    expect(ask(said.ask, '2026-05-08T12:10')).not.toMatch(said.due);
    expect(ask(said.ask, '2026-05-14T12:10')).not.toBe('');
    const kinds = site.lines().map((line) => (line as { record: { kind: string } }).record.kind);
    expect(kinds.filter((kind) => kind === 'duty')).toHaveLength(5);
    expect(kinds.filter((kind) => kind === 'chore')).toHaveLength(1);
  });
});

describe('who has what', () => {
  it('taken, handed back, put off with the reason, done', () => {
    const site = open();
    site.ask('cart 61.5');
    expect(site.ask('today')).toMatch(/1 Sweep the floor.*\n2 Wash the containers/);
    expect(site.ask("I'll do 2")).toMatch(/Yours: Wash the containers/);
    expect(site.ask('today', { from: 'Ben' })).toMatch(/Wash the containers: used today · Ana has it/);
    expect(site.ask('release 2')).toMatch(/Handed back: Wash the containers/);
    expect(site.ask('today')).not.toMatch(/has it/);
    site.ask('not today 2, no key');
    expect(site.ask('today')).toMatch(
      /Later: Wash the containers \(put off till tomorrow, Tue 5 May: no key\)/,
    );
    expect(site.ask('done 1')).toMatch(/Swept/i);
    expect(site.ask('today')).not.toMatch(/Sweep/);
  });

  it('a number before any list says to ask for the list, also where something else was asked last', () => {
    const site = open();
    expect(site.ask('done 2')).toMatch(/2: not in today's list\. Ask "today" first\./);
    expect(open().ask('fait 2', { language: 'fr' })).toMatch(/Demandez «\squoi faire\s» d'abord/);
    expect(site.ask('B 55')).toMatch(/How warm is the air/);
    expect(site.ask('done 3')).not.toMatch(/what was that/);
    expect(site.ask('chips 12')).toMatch(/Chips 12 kg/);
  });

  it('a number speaks of the list shown last, the morning one too', () => {
    const site = open({ morning: { at: '07:00' } });
    site.ask('cart 61.5');
    expect(site.ask('today')).toMatch(/1 Sweep the floor/);
    const [morning] = site.take({ at: '2026-05-05T07:00' }).posts;
    expect(morning!.text).toMatch(/1 Read drum/);
    expect(site.ask('claim 1', { at: '2026-05-05T07:05' })).toMatch(/Yours: Read drum/);
  });

  it('the morning line comes only where something is due', () => {
    const site = open({ morning: { at: '07:00' } });
    site.ask('hello');
    expect(site.take({ at: '2026-05-05T07:00' }).posts).toEqual([]);
    site.take({ at: '2026-05-05T09:00', from: 'Ana', text: 'cart 61.5' });
    expect(site.take({ at: '2026-05-06T06:59' }).posts).toEqual([]);
    expect(site.take({ at: '2026-05-06T07:00' }).posts).toMatchObject([{ about: 'morning' }]);
    expect(site.take({ at: '2026-05-06T07:30' }).posts).toEqual([]);
  });
});

describe('closed', () => {
  it('till a day, from today; open again before it', () => {
    const site = open();
    site.ask('every monday: check the gate', { coordinator: true });
    expect(site.ask('today')).toMatch(/1 Check the gate/);
    expect(site.ask('closed till 20 may')).toMatch(/Closed today to Wed 20 May/);
    expect(site.ask('today')).toMatch(/Later: Check the gate \(closed till Wed 20 May\)/);
    expect(site.ask('open again')).toMatch(/Open again from today/);
    expect(site.ask('today')).toMatch(/1 Check the gate/);
    expect(site.ask('open again')).toMatch(/not closed/);
  });
});
