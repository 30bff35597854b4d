import type { DoubtCode } from '#records';
import type { ReadContext } from './context.ts';
import type { Vocabulary } from './lexicon.ts';
import type { Plain } from './text.ts';
import { type DateSpan, findDates, findForecastDates } from './when.ts';

/** A date said in the message, by positions in its plain text. */
export type SaidDate = {
  start: number;
  end: number;
  when?: string | undefined;
  /** The same words read as a date that may lie ahead: for weather and for days off. */
  ahead?: string | undefined;
  future: boolean;
  problem?: DoubtCode | undefined;
  choices: readonly string[];
  heading: boolean;
};

const CODES: Readonly<Record<string, DoubtCode>> = {
  impossible: 'date-impossible',
  'contradicts-weekday': 'date-contradicts',
  'weekday-is-today': 'date-today-or-last',
  'in-future': 'date-in-future',
  ambiguous: 'date-contradicts',
};
const WORDS = /\p{L}+/gu;

/** The dates said in a message, in order; each also as a forecast where the message speaks of what is to come. */
export function datesIn(message: Plain, context: ReadContext, vocabulary: Vocabulary): SaidDate[] {
  const spans = findDates(message.original, [], context).filter(
    (span) => !namesPile(message.original.slice(span.start, span.end), context),
  );
  const looksAhead =
    spans.length === 0
      ? speaksOf(message.text, vocabulary, 'weather')
      : speaksAhead(message.text, vocabulary);
  const ahead = looksAhead ? findForecastDates(message.original, [], context) : [];
  const out = spans.map((span) =>
    saidDate(
      span,
      ahead.find((one) => one.start < span.end && one.end > span.start),
      message,
    ),
  );
  for (const one of ahead)
    if (!spans.some((span) => one.start < span.end && one.end > span.start))
      out.push({ ...saidDate(one, one, message), when: undefined, future: true });
  return out.sort((a, b) => a.start - b.start);
}

/** `de la 3 a la 4`: a number that names a pile is no hour of the day. */
function namesPile(text: string, context: ReadContext): boolean {
  const number = /^\p{L}+ \p{L}+ (\d{1,2})$/u.exec(text)?.[1];
  return number !== undefined && !/s \d+$/.test(text) && context.piles.includes(`pile ${number}`);
}

function saidDate(span: DateSpan, ahead: DateSpan | undefined, message: Plain): SaidDate {
  return {
    start: plainAt(message, span.start),
    end: plainAt(message, span.end),
    when: span.when,
    ahead: ahead?.when ?? span.when,
    future: span.future ?? false,
    problem: span.problem && CODES[span.problem],
    choices: span.choices ?? [],
    heading: span.heading,
  };
}

const speaksAhead = (text: string, vocabulary: Vocabulary) =>
  speaksOf(text, vocabulary, 'weather') || speaksOf(text, vocabulary, 'req');

type Cls = 'weather' | 'req';

function speaksOf(text: string, vocabulary: Vocabulary, cls: Cls): boolean {
  const words = wordsOf(vocabulary)[cls];
  WORDS.lastIndex = 0;
  for (let match = WORDS.exec(text); match; match = WORDS.exec(text)) if (words.has(match[0])) return true;
  return false;
}

const SPEAKING = new WeakMap<Vocabulary, Record<Cls, ReadonlySet<string>>>();

/** Every word that speaks of the weather or asks for something, worked out once for each vocabulary. */
function wordsOf(vocabulary: Vocabulary): Record<Cls, ReadonlySet<string>> {
  let known = SPEAKING.get(vocabulary);
  if (known) return known;
  const weather = new Set<string>();
  const req = new Set<string>();
  for (const [word, node] of vocabulary.root) {
    const after = node.next ? [...node.next.values()] : [];
    if ([node, ...after].some((one) => one.senses?.some((sense) => sense.cls === 'weather')))
      weather.add(word);
    if (node.senses?.some((sense) => sense.cls === 'req')) req.add(word);
  }
  known = { weather, req };
  SPEAKING.set(vocabulary, known);
  return known;
}

/** The position in the plain text of a position in what was typed. */
export function plainAt(message: Plain, index: number): number {
  if (!message.map) return index;
  let low = 0;
  let high = message.map.length - 1;
  while (low < high) {
    const mid = (low + high) >> 1;
    if (message.map[mid]! < index) low = mid + 1;
    else high = mid;
  }
  return low;
}
