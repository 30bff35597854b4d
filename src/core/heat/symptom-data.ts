/** What somebody at the pile notices. */
export const SYMPTOMS = [
  'ammonia',
  'rotten',
  'odour',
  'odour-at-fence',
  'wet',
  'dry',
  'cold',
  'frozen',
  'fast-drop',
  'reheating',
  'too-hot',
  'cold-edge',
  'flies',
  'pests',
  'leachate',
  'pieces-remain',
  'drum-packed',
] as const;
export type Symptom = (typeof SYMPTOMS)[number];

/** What the book knows that tells one cause from another. */
export const HEAT_FACTS = [
  'wet',
  'dry',
  'moisture-right',
  'moisture-unknown',
  'just-turned',
  'frozen',
  'deep-cold',
  'been-hot',
  'never-hot',
  'young',
  'old',
  'rich-mix',
  'lean-mix',
  'fan-off',
  'small',
  'hot',
  'fire-hot',
  'smoke',
] as const;
export type HeatFact = (typeof HEAT_FACTS)[number];

export const CURE_ACTIONS = [
  'add-water-while-turning',
  'add-dry-carbon',
  'add-coarse-chips',
  'add-fine-material',
  'add-nitrogen',
  'cover-mature-compost',
  'cover-fresh-food',
  'cover-from-rain',
  'insulate',
  'turn',
  'turn-outside-in',
  'make-bigger',
  'make-smaller',
  'check-air',
  'fan-on',
  'less-air',
  'squeeze-test',
  'read-again-tomorrow',
  'read-at-depth',
  'wait',
  'wait-for-thaw',
  'leave-undisturbed',
  'start-with-hot-material',
  'check-readiness',
  'keep-curing',
  'drain-pad',
  'collect-liquid',
  'return-liquid-to-unsanitised-only',
  'same-day-cover',
  'clean-spills',
  'closed-containers',
  'screen-out-overs',
  'shred',
  'feed-less',
  'turn-drum-more',
  'note-wind-and-work',
  'turn-when-wind-is-away',
  'check-probe',
  'do-not-open-or-turn',
  'people-back',
  'fan-off-if-safe',
  'call-fire-service',
  'do-not-half-wet',
] as const;
export type CureAction = (typeof CURE_ACTIONS)[number];

/**
 * What must never be advised while a fact holds, whatever the cause. Kept apart from the causes, so that no row
 * added later can say "add water" to what is wet.
 */
export const NEVER_WHEN: Partial<Record<CureAction, readonly HeatFact[]>> = {
  'add-water-while-turning': ['wet', 'moisture-right', 'moisture-unknown', 'frozen', 'fire-hot', 'smoke'],
  'add-dry-carbon': ['dry', 'lean-mix'],
  'add-nitrogen': ['rich-mix', 'wet', 'frozen'],
  turn: ['just-turned', 'frozen', 'deep-cold', 'fire-hot', 'smoke'],
  'turn-outside-in': ['just-turned', 'frozen', 'deep-cold', 'fire-hot', 'smoke'],
  'turn-when-wind-is-away': ['just-turned', 'frozen', 'deep-cold', 'fire-hot', 'smoke'],
  'check-readiness': ['never-hot', 'frozen', 'just-turned', 'dry'],
  'keep-curing': ['never-hot'],
  'less-air': ['wet', 'hot'],
  'cover-from-rain': ['dry'],
};

export const CAUSES = [
  'fire-risk',
  'just-turned',
  'frozen',
  'too-rich',
  'no-air',
  'too-wet',
  'too-dry',
  'too-lean',
  'too-small',
  'too-large',
  'too-much-air',
  'air-blocked',
  'still-starting',
  'spent',
  'uneven',
  'rain',
  'fresh-food-bare',
  'spills',
  'thin-bulking',
  'woody',
  'overfed-drum',
  'not-done-before',
  'watered-or-mixed',
  'probe',
  'work-and-wind',
] as const;
export type Cause = (typeof CAUSES)[number];

export type CauseRow = {
  cause: Cause;
  /** Likely where all of these hold. */
  when: readonly HeatFact[];
  /** Not considered where one of these holds. */
  not: readonly HeatFact[];
  actions: readonly CureAction[];
  source: string;
};

export type SymptomRow = {
  /** The one question that separates the causes, with what each answer points to. */
  question: { code: string; answers: Record<string, readonly Cause[]> } | null;
  causes: readonly CauseRow[];
};

const EXTENSION =
  'general extension practice, On-Farm Composting Handbook trouble-shooting table (from memory)';
const COMMON = 'common practice, no source';

const row = (
  cause: Cause,
  when: readonly HeatFact[],
  not: readonly HeatFact[],
  actions: readonly CureAction[],
  source = EXTENSION,
): CauseRow => ({ cause, when, not, actions, source });

const tooWet = (actions: readonly CureAction[]) =>
  row('too-wet', ['wet'], ['dry', 'moisture-right'], actions);
const tooDry = (actions: readonly CureAction[]) =>
  row('too-dry', ['dry'], ['wet', 'moisture-right'], actions);
const noAir = row('no-air', ['fan-off'], [], ['check-air', 'fan-on', 'turn', 'add-coarse-chips']);
const tooRich = row(
  'too-rich',
  ['rich-mix'],
  ['lean-mix'],
  ['add-dry-carbon', 'cover-mature-compost', 'squeeze-test'],
);

const smell = {
  code: 'ammonia-or-rotten',
  answers: { ammonia: ['too-rich', 'too-dry'], rotten: ['too-wet', 'no-air'] },
} as const;
const squeeze = {
  code: 'drips-or-crumbles',
  answers: {
    drips: ['too-wet', 'no-air'],
    crumbles: ['too-dry'],
    right: ['too-rich', 'too-lean', 'too-small', 'no-air', 'spent'],
  },
} as const;

/**
 * Symptoms, the question that separates their causes, the causes in order, and what to do.
 * @source extension trouble-shooting tables (openings seen: environmental-expert.com, goats.langston.edu) and
 * On-Farm Composting Handbook (from memory); rows marked common practice have no source
 * @example SYMPTOM_DATA.ammonia.question?.code // 'drips-or-crumbles'
 */
export const SYMPTOM_DATA: Record<Symptom, SymptomRow> = {
  ammonia: {
    question: squeeze,
    causes: [
      tooRich,
      row('no-air', ['wet'], ['dry'], ['turn', 'add-coarse-chips', 'check-air']),
      tooWet(['add-dry-carbon', 'turn', 'cover-from-rain']),
      tooDry(['add-water-while-turning', 'cover-mature-compost']),
    ],
  },
  rotten: {
    question: {
      code: 'drips-or-not',
      answers: { drips: ['too-wet', 'no-air'], right: ['no-air', 'too-large'] },
    },
    causes: [
      tooWet(['add-dry-carbon', 'add-coarse-chips', 'turn', 'cover-from-rain', 'drain-pad']),
      noAir,
      row('too-large', [], [], ['make-smaller', 'turn']),
    ],
  },
  odour: {
    question: smell,
    causes: [
      tooWet(['add-dry-carbon', 'turn', 'cover-mature-compost']),
      noAir,
      tooRich,
      tooDry(['add-water-while-turning']),
    ],
  },
  'odour-at-fence': {
    question: smell,
    causes: [
      row(
        'work-and-wind',
        ['just-turned'],
        [],
        ['note-wind-and-work', 'turn-when-wind-is-away', 'cover-mature-compost'],
        COMMON,
      ),
      tooWet(['add-dry-carbon', 'cover-mature-compost', 'turn-when-wind-is-away']),
      noAir,
      tooRich,
      row('fresh-food-bare', [], [], ['cover-fresh-food', 'same-day-cover']),
    ],
  },
  wet: {
    question: { code: 'rain-or-mix', answers: { rain: ['rain'], mix: ['thin-bulking'] } },
    causes: [
      row('thin-bulking', [], ['dry'], ['add-dry-carbon', 'add-coarse-chips', 'turn']),
      row('rain', [], ['dry'], ['cover-from-rain', 'drain-pad', 'turn']),
    ],
  },
  dry: {
    question: null,
    causes: [row('too-dry', [], ['wet'], ['squeeze-test', 'add-water-while-turning', 'less-air'])],
  },
  cold: {
    question: squeeze,
    causes: [
      tooWet(['add-dry-carbon', 'add-coarse-chips', 'turn', 'cover-from-rain']),
      tooDry(['add-water-while-turning']),
      row('still-starting', ['young'], ['old'], ['wait', 'read-again-tomorrow', 'read-at-depth']),
      row('too-small', ['small'], [], ['make-bigger', 'insulate']),
      row('too-lean', ['lean-mix'], ['rich-mix'], ['add-nitrogen', 'turn']),
      row('no-air', ['fan-off'], [], ['check-air', 'fan-on', 'turn']),
      row('too-much-air', [], ['wet', 'fan-off'], ['add-fine-material', 'less-air', 'cover-mature-compost']),
      row(
        'spent',
        ['been-hot', 'old'],
        ['never-hot', 'young'],
        ['check-readiness', 'turn', 'read-again-tomorrow'],
      ),
    ],
  },
  frozen: {
    question: null,
    causes: [
      row('frozen', [], [], ['leave-undisturbed', 'insulate', 'wait-for-thaw', 'start-with-hot-material']),
    ],
  },
  'fast-drop': {
    question: squeeze,
    causes: [
      tooDry(['add-water-while-turning']),
      tooWet(['add-coarse-chips', 'turn', 'cover-from-rain']),
      noAir,
      row('probe', [], [], ['check-probe', 'read-at-depth'], COMMON),
      row(
        'spent',
        ['been-hot', 'old'],
        ['never-hot', 'young', 'dry', 'wet'],
        ['turn', 'read-again-tomorrow', 'check-readiness'],
      ),
    ],
  },
  reheating: {
    question: { code: 'added-or-left', answers: { added: ['watered-or-mixed'], left: ['not-done-before'] } },
    causes: [
      row('not-done-before', [], [], ['keep-curing', 'turn', 'read-again-tomorrow']),
      row('watered-or-mixed', ['just-turned'], [], ['keep-curing', 'read-again-tomorrow']),
    ],
  },
  'too-hot': {
    question: squeeze,
    causes: [
      row('too-large', [], ['small'], ['turn', 'make-smaller', 'check-air']),
      noAir,
      tooRich,
      tooDry(['add-water-while-turning', 'do-not-half-wet']),
    ],
  },
  'cold-edge': {
    question: null,
    causes: [
      row('uneven', [], [], ['turn-outside-in', 'read-again-tomorrow', 'insulate']),
      row('too-small', ['small'], [], ['make-bigger', 'insulate']),
    ],
  },
  flies: {
    question: { code: 'food-showing', answers: { yes: ['fresh-food-bare'], no: ['too-wet', 'spills'] } },
    causes: [
      row('fresh-food-bare', [], [], ['cover-fresh-food', 'same-day-cover']),
      tooWet(['add-dry-carbon', 'drain-pad', 'turn']),
      row('spills', [], [], ['clean-spills', 'closed-containers']),
    ],
  },
  pests: {
    question: { code: 'food-showing', answers: { yes: ['fresh-food-bare'], no: ['spills'] } },
    causes: [
      row('fresh-food-bare', [], [], ['cover-fresh-food', 'same-day-cover', 'closed-containers']),
      row('spills', [], [], ['clean-spills', 'closed-containers']),
    ],
  },
  leachate: {
    question: { code: 'rain-or-mix', answers: { rain: ['rain'], mix: ['thin-bulking', 'too-wet'] } },
    causes: [
      tooWet(['add-dry-carbon', 'turn', 'collect-liquid', 'return-liquid-to-unsanitised-only']),
      row(
        'thin-bulking',
        [],
        [],
        ['add-coarse-chips', 'collect-liquid', 'return-liquid-to-unsanitised-only'],
      ),
      row('rain', [], [], ['cover-from-rain', 'drain-pad', 'collect-liquid']),
    ],
  },
  'pieces-remain': {
    question: null,
    causes: [
      row('woody', [], [], ['screen-out-overs', 'shred']),
      tooDry(['add-water-while-turning']),
      row('too-lean', ['lean-mix'], ['rich-mix'], ['add-nitrogen', 'turn']),
    ],
  },
  'drum-packed': {
    question: {
      code: 'drips-or-not',
      answers: { drips: ['too-wet', 'overfed-drum'], right: ['overfed-drum'] },
    },
    causes: [
      row('overfed-drum', [], [], ['feed-less', 'add-coarse-chips', 'turn-drum-more']),
      tooWet(['add-dry-carbon', 'add-coarse-chips', 'turn-drum-more']),
    ],
  },
};
