import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  COMPLAINT_FIELDS,
  CURE_ACTIONS,
  complaintLacks,
  diagnose,
  factsOf,
  knowledgeOf,
  NEVER_WHEN,
  type PileKnowledge,
  SYMPTOM_DATA,
  SYMPTOMS,
} from '#core';
import { batchOf, joiningAt, momentAt, nowAt, readingAt, turnAt } from './build.ts';

const nothing: PileKnowledge = {
  moistureFeel: null,
  moisturePct: null,
  cn: null,
  ageDays: null,
  hoursSinceTurn: null,
  fan: null,
  hottestC: null,
  lowestC: null,
  hottestEverC: null,
  ambientC: null,
  litres: null,
  smoke: false,
};
const know = (more: Partial<PileKnowledge>): PileKnowledge => ({ ...nothing, ...more });
const causes = (found: ReturnType<typeof diagnose>) => found.causes.map(({ cause }) => cause);

describe('the data', () => {
  it.each(SYMPTOMS)(
    '%s: every answer points to a cause of the symptom, and every cause has actions',
    (symptom) => {
      const { question, causes: rows } = SYMPTOM_DATA[symptom];
      const own = rows.map(({ cause }) => cause);
      expect(new Set(own).size).toBe(own.length);
      for (const row of rows) {
        expect(row.actions.length).toBeGreaterThan(0);
        expect(row.source.length).toBeGreaterThan(0);
      }
      for (const [answer, pointed] of Object.entries(question?.answers ?? {})) {
        // Each answer must leave at least one cause, or asking it is idle
        expect([answer, pointed.some((cause) => own.includes(cause))]).toEqual([answer, true]);
      }
    },
  );

  it('uses every action somewhere', () => {
    const used = new Set(
      Object.values(SYMPTOM_DATA).flatMap(({ causes: rows }) => rows.flatMap(({ actions }) => actions)),
    );
    const fire = new Set(diagnose('odour', know({ smoke: true })).causes.flatMap(({ actions }) => actions));
    expect(CURE_ACTIONS.filter((action) => !used.has(action) && !fire.has(action))).toEqual([]);
  });
});

describe('facts, at the edges', () => {
  // LSU AgCenter 3838-D after NRAES-54: 40 to 65 % moisture, C:N 20 to 40
  it.each([
    [{ moisturePct: 65 }, 'moisture-right'],
    [{ moisturePct: 65.1 }, 'wet'],
    [{ moisturePct: 40 }, 'moisture-right'],
    [{ moisturePct: 39.9 }, 'dry'],
    [{ moistureFeel: 'dripping' }, 'wet'],
    [{ cn: 19.9 }, 'rich-mix'],
    [{ cn: 40.1 }, 'lean-mix'],
    [{ hoursSinceTurn: 24 }, 'just-turned'],
    [{ lowestC: 0 }, 'frozen'],
    [{ hottestC: 80 }, 'fire-hot'],
    [{ hottestC: 45 }, 'been-hot'],
    [{ hottestC: 44.9 }, 'never-hot'],
    [{ ageDays: 21 }, 'old'],
    [{ ageDays: 6 }, 'young'],
    [{ litres: 999 }, 'small'],
  ] as const)('%j: %s', (more, fact) => {
    expect(factsOf(know(more))).toContain(fact);
  });

  it.each([
    [{ cn: 20 }, 'rich-mix'],
    [{ cn: 40 }, 'lean-mix'],
    [{ hoursSinceTurn: 24.1 }, 'just-turned'],
    [{ lowestC: 0.1 }, 'frozen'],
    [{ hottestC: 79.9 }, 'fire-hot'],
    [{ ageDays: 20 }, 'old'],
    [{ litres: 1000 }, 'small'],
  ] as const)('%j: not %s', (more, fact) => {
    expect(factsOf(know(more))).not.toContain(fact);
  });
});

// Trouble-shooting rows: general extension practice, On-Farm Composting Handbook (from memory)
describe('diagnoses', () => {
  it('asks what separates the causes while the book does not know, and not once it does', () => {
    expect(diagnose('ammonia', nothing).question).toEqual({
      code: 'drips-or-crumbles',
      answers: ['drips', 'crumbles', 'right'],
    });
    expect(diagnose('ammonia', know({ cn: 15 })).question).toBeNull();
    expect(diagnose('odour', nothing).question?.code).toBe('ammonia-or-rotten');
    expect(causes(diagnose('odour', nothing, 'rotten'))).toEqual(['too-wet', 'no-air']);
    expect(diagnose('odour', nothing, 'rotten').question).toBeNull();
  });

  it('takes an answer about squeezing for a moisture check, where the book has none', () => {
    const dry = diagnose('cold', nothing, 'crumbles');
    expect(dry.causes).toMatchObject([
      { cause: 'too-dry', likely: true, actions: ['add-water-while-turning'] },
    ]);
    // Nobody knows the moisture: no water before the squeeze
    expect(diagnose('dry', nothing).causes[0]?.actions).toEqual(['squeeze-test', 'less-air']);
    expect(
      diagnose('ammonia', know({ moistureFeel: 'wet' }), 'crumbles').causes.flatMap((c) => c.actions),
    ).not.toContain('add-water-while-turning');
  });

  it('wet and ammonia: more carbon and air, never water', () => {
    const found = diagnose('ammonia', know({ moistureFeel: 'wet', cn: 16 }));
    expect(found.causes.filter(({ likely }) => likely).map(({ cause }) => cause)).toEqual([
      'too-rich',
      'no-air',
      'too-wet',
    ]);
    const actions = found.causes.flatMap((cause) => cause.actions);
    expect(actions).toContain('add-dry-carbon');
    expect(actions).not.toContain('add-water-while-turning');
  });

  it('cold after three weeks and wet: too wet, not finished', () => {
    const found = diagnose(
      'cold',
      know({ moistureFeel: 'dripping', ageDays: 22, hottestC: 24, lowestC: 20, hottestEverC: 31 }),
    );
    expect(found.causes[0]).toMatchObject({ cause: 'too-wet', likely: true, because: ['wet'] });
    expect(causes(found)).not.toContain('spent');
    expect(found.causes.flatMap(({ actions }) => actions)).not.toContain('check-readiness');
  });

  it('a drop with nothing left to eat: check readiness, after a turn', () => {
    const found = diagnose(
      'fast-drop',
      know({ moistureFeel: 'right', ageDays: 50, hottestC: 32, hottestEverC: 64 }),
    );
    expect(found.causes[0]).toMatchObject({ cause: 'spent', likely: true });
    expect(found.causes[0]?.actions).toContain('check-readiness');
  });

  it.each(['cold', 'fast-drop'] as const)('%s: frozen or just turned is not too cold', (symptom) => {
    const frozen = diagnose(symptom, know({ lowestC: -2, hottestC: 5, moistureFeel: 'dry' }));
    expect(causes(frozen)).toEqual(['frozen']);
    expect(frozen.causes[0]?.actions).not.toContain('turn');
    const turned = diagnose(symptom, know({ hoursSinceTurn: 5, lowestC: 30, hottestC: 33 }));
    expect(causes(turned)).toEqual(['just-turned']);
    expect(turned.question).toBeNull();
  });

  it('smoke or 80 °C comes before every symptom', () => {
    for (const symptom of SYMPTOMS) {
      for (const known of [
        know({ smoke: true, moistureFeel: 'dry' }),
        know({ hottestC: 80, moistureFeel: 'dry' }),
      ]) {
        const found = diagnose(symptom, known);
        expect(causes(found)).toEqual(['fire-risk']);
        expect(found.causes[0]?.actions[0]).toBe('do-not-open-or-turn');
      }
    }
  });

  it('keeps the causes of the book where an answer fits none of them', () => {
    const found = diagnose('cold', know({ moisturePct: 55 }), 'crumbles');
    expect(found.causes.length).toBeGreaterThan(0);
    expect(causes(found)).not.toContain('too-dry');
  });
});

it('never advises against a fact, whatever is known', () => {
  const maybe = <T>(arb: fc.Arbitrary<T>) => fc.option(arb, { nil: null });
  const knowledge: fc.Arbitrary<PileKnowledge> = fc.record({
    moistureFeel: maybe(fc.constantFrom('dry', 'right', 'wet', 'dripping')),
    moisturePct: maybe(fc.integer({ min: 10, max: 90 })),
    cn: maybe(fc.integer({ min: 8, max: 90 })),
    ageDays: maybe(fc.integer({ min: 0, max: 200 })),
    hoursSinceTurn: maybe(fc.integer({ min: 0, max: 100 })),
    fan: maybe(fc.constantFrom('off', 'low', 'high')),
    hottestC: maybe(fc.integer({ min: -10, max: 95 })),
    lowestC: maybe(fc.integer({ min: -15, max: 60 })),
    hottestEverC: maybe(fc.integer({ min: 0, max: 90 })),
    ambientC: maybe(fc.integer({ min: -20, max: 35 })),
    litres: maybe(fc.integer({ min: 100, max: 9000 })),
    smoke: fc.boolean(),
  });
  const answer = fc.constantFrom(
    null,
    'drips',
    'crumbles',
    'right',
    'ammonia',
    'rotten',
    'rain',
    'mix',
    'yes',
    'no',
    '?',
  );
  fc.assert(
    fc.property(fc.constantFrom(...SYMPTOMS), knowledge, answer, (symptom, known, said) => {
      const found = diagnose(symptom, known, said);
      const facts = factsOf(known);
      const actions = found.causes.flatMap((cause) => cause.actions);
      for (const [action, never] of Object.entries(NEVER_WHEN)) {
        if (never.some((fact) => fact !== 'moisture-unknown' && facts.includes(fact)))
          expect(actions).not.toContain(action);
      }
      const wet =
        known.moisturePct !== null ? known.moisturePct > 65 : /wet|dripping/.test(known.moistureFeel ?? '');
      if (wet) expect(actions).not.toContain('add-water-while-turning');
      if ((known.hottestEverC ?? known.hottestC ?? 0) < 45) expect(actions).not.toContain('check-readiness');
      if ((known.hottestC ?? 0) >= 80)
        expect(actions.filter((action) => action.startsWith('turn'))).toEqual([]);
      const squeezed: Record<string, string> = { drips: 'wet', crumbles: 'dry', right: 'moisture-right' };
      const told = squeezed[said ?? ''];
      const all = [...facts, told];
      expect(found.causes.every((cause) => cause.because.every((fact) => all.includes(fact)))).toBe(true);
    }),
    { numRuns: 1500, seed: 11 },
  );
});

describe('what the book knows', () => {
  it('takes the last day of readings, the age since fresh, and a moisture check of the last fortnight', () => {
    const batch = batchOf({
      joinings: [joiningAt(0, 'fresh')],
      readings: [readingAt(2, 62), readingAt(9, [41, 28]), readingAt(9.2, 44, { depthCm: 90 })],
      turns: [turnAt(8)],
      moisture: [{ ...momentAt(7, 70), feel: 'wet', percent: null }],
    });
    const ambient = [{ ...momentAt(9, 80), celsius: 11 }];
    expect(knowledgeOf(batch, ambient, nowAt(10), { cn: 27, fan: 'low' })).toEqual({
      moistureFeel: 'wet',
      moisturePct: null,
      cn: 27,
      ageDays: 10,
      hoursSinceTurn: 48,
      fan: 'low',
      hottestC: 44,
      lowestC: 28,
      hottestEverC: 62,
      ambientC: 11,
      litres: null,
      smoke: false,
    });
    expect(knowledgeOf(batch, ambient, nowAt(22)).moistureFeel).toBeNull();
  });
});

// 14 CCR 17869: complaints are kept with nature, date and action
it('asks for what a complaint lacks, and never for the name', () => {
  expect(complaintLacks({ when: '2026-06-17', where: 'east fence', nature: ' ', strength: 'faint' })).toEqual(
    ['nature', 'wind', 'weather', 'being-done', 'done-about-it', 'who-answers'],
  );
  expect(COMPLAINT_FIELDS.some((field) => field.includes('name'))).toBe(false);
});
