// Danger in a message: somebody hurt, caught or reaching in; fire, smoke, a burnt smell; sharps; gas; a cry for help.
// It is read before anything else, in all languages at once, and rather once too often than missed.
import { isDeniedAfter, isEnded, isNegated, settingOf } from './around.ts';
import { type Finding, readCry, readPiece } from './findings.ts';
import { cutPieces, mayHoldDanger } from './pieces.ts';
import type { DangerTopic, DangerWhat } from './words.ts';

/** One danger, with the slice of the message (string indices) that says it. */
export type Danger = {
  readonly topic: DangerTopic;
  readonly what: DangerWhat;
  readonly start: number;
  readonly end: number;
};

const topicOf: Readonly<Record<DangerWhat, DangerTopic>> = {
  caught: 'injury',
  'inside-drum': 'injury',
  hurt: 'injury',
  'reaching-in': 'injury',
  unwell: 'injury',
  fire: 'smoke',
  smoke: 'smoke',
  'burnt-smell': 'smoke',
  needle: 'sharps',
  pricked: 'sharps',
  gas: 'other',
  help: 'other',
};

/** Every danger there is, the gravest first: of two of one topic in a sentence the graver one is told; what the drum holds comes before any wound. */
export const DANGERS: readonly DangerWhat[] = [
  'caught',
  'inside-drum',
  'reaching-in',
  'hurt',
  'unwell',
  'fire',
  'smoke',
  'burnt-smell',
  'pricked',
  'needle',
  'gas',
  'help',
];

/**
 * Reads the dangers in a message, at most one of each topic a sentence, in English, French and Spanish at once, however badly it is typed; it never
 * throws, and its time grows with the length of the text alone.
 * Denied, ended, supposed and told things (`no smoke`, `smoke gone`, `what if …`) are none.
 * @example readDanger("marie's arm is stuck in teh drum") // [{ topic: 'injury', what: 'caught', start: 8, end: 32 }]
 * @example readDanger('smoke break at 10') // []
 */
export function readDanger(text: string): Danger[] {
  if (!mayHoldDanger(text)) return [];
  const dangers: Danger[] = [];
  const sentences = cutPieces(text);
  for (const sentence of sentences) {
    const setting = settingOf(sentence);
    const { pieces } = setting;
    const gravest = new Map<DangerTopic, Finding>();
    const add = (finding: Finding): void => {
      const known = gravest.get(topicOf[finding.what]);
      if (known !== undefined && DANGERS.indexOf(known.what) <= DANGERS.indexOf(finding.what)) return;
      gravest.set(topicOf[finding.what], finding);
    };
    const cry = readCry(sentence, sentences.length === 1);
    if (cry !== null) add(cry);
    if (!setting.isUnreal) {
      for (let i = 0; i < pieces.length && i < setting.supposedFrom; i += 1) {
        const finding = readPiece(setting, i);
        if (finding === null || isNegated(pieces, finding.from) || isNegated(pieces, i)) continue;
        if (isDeniedAfter(pieces, i) || isEnded(pieces, i, topicOf[finding.what])) continue;
        add(finding);
      }
    }
    const inOrder = [...gravest.values()].sort((a, b) => a.from - b.from);
    for (const { what, from, to } of inOrder) {
      dangers.push({ topic: topicOf[what], what, start: pieces[from]!.start, end: pieces[to]!.end });
    }
  }
  return dangers;
}
