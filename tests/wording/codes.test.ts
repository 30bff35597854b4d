import { describe, expect, it } from 'vitest';
import {
  CAUSES,
  COMPLAINT_FIELDS,
  CURE_ACTIONS,
  DANGER_BANDS,
  DRUM_ADVICE,
  HEAT_ASSUMPTIONS,
  HEAT_FACTS,
  type SanitisingReason,
  SYMPTOM_DATA,
} from '#core';
import { DOUBT_CODES, LANGUAGES } from '#records';
import { makeWords } from '#wording';
import { readTexts } from '../../src/commands/parts.ts';

const words = makeWords(readTexts(), () => undefined);

/** Every reason once: a new one does not compile until it stands here. */
const REASONS: Record<SanitisingReason['code'], true> = {
  'no-readings': true,
  'not-at-depth': true,
  'in-doubt': true,
  'too-short': true,
  'turns-short': true,
  'mean-too-low': true,
  low: true,
  'above-ceiling': true,
  'just-turned': true,
  gap: true,
  fresh: true,
  'joined-unproven': true,
  'proof-in-doubt': true,
  'cover-unproven': true,
  'still-open': true,
  'aeration-unknown': true,
  'aeration-breathing': true,
  'fed-daily': true,
  'exit-only': true,
  'one-point': true,
  'residence-unknown': true,
  'residence-short': true,
  'short-circuit-unknown': true,
  'short-circuit': true,
  'prove-in-closed-pile': true,
};

const questions = Object.values(SYMPTOM_DATA)
  .map(({ question }) => question)
  .filter((question) => question !== null);

const IDS = [
  ...Object.keys(REASONS).map((code) => `reason-${code}`),
  ...CAUSES.map((cause) => `cause-${cause}`),
  ...CURE_ACTIONS.map((action) => `cure-${action}`),
  ...HEAT_FACTS.map((fact) => `fact-${fact}`),
  ...HEAT_ASSUMPTIONS.map((code) => `taken-${code}`),
  ...DRUM_ADVICE.map((code) => `drum-${code}`),
  ...COMPLAINT_FIELDS.map((field) => `complaint-${field}`),
  ...DANGER_BANDS.filter((band) => band !== 'usual').map((band) => `band-${band}`),
  ...DOUBT_CODES.map((code) => `doubt-${code}`),
  ...questions.map(({ code }) => `ask-${code}`),
  ...questions.flatMap(({ code, answers }) => Object.keys(answers).map((each) => `answer-${code}-${each}`)),
];

describe('what core gives as a code has its words', () => {
  it.each(LANGUAGES)('in %s', (language) => {
    expect(IDS.length).toBeGreaterThan(180);
    expect(IDS.filter((id) => !words.has(language, id))).toEqual([]);
  });

  it.each(LANGUAGES)('no two answers to one question read alike in %s', (language) => {
    const manner = {
      language,
      units: { mass: 'kg', temperature: 'C', volume: 'L', length: 'cm' },
      dayOrder: 'dmy',
      timeZone: 'UTC',
      today: '2026-06-01',
    } as const;
    for (const { code, answers } of questions) {
      const labels = Object.keys(answers).map((each) =>
        words.label({ id: `answer-${code}-${each}` }, { ...manner }),
      );
      expect(new Set(labels).size).toBe(labels.length);
    }
  });
});
