import { SYMPTOM_DATA, SYMPTOMS } from '#core';
import type { Request } from '#records';
import { writeAndSay } from '../decide.ts';
import type { Draft } from '../draft.ts';
import { diagnosisLines } from '../matters/symptoms.ts';
import { say } from '../say.ts';

/** What a squeezed handful did, as the feel that the book keeps. */
const FELT = { drips: 'dripping', crumbles: 'dry', right: 'right' } as const;

/** The answer to a question that separates the causes of a symptom: the likely cause, and what to do first. */
export function diagnose(draft: Draft, request: Request): void {
  const symptom = SYMPTOMS.find((each) => each === request.what);
  if (!symptom) return;
  const place = request.place ?? null;
  const answer = request.to == null ? null : String(request.to);
  // Somebody squeezed a handful: that is a check of moisture, and is not asked for again tomorrow.
  const feel = SYMPTOM_DATA[symptom].question?.code === 'drips-or-crumbles' ? feelOf(answer) : null;
  if (feel && place) writeAndSay(draft, [{ kind: 'moisture', place, feel }]);
  const lines = diagnosisLines(draft, symptom, place, answer);
  draft.lines.push(...(lines.length > 0 ? lines : [say('cause-unknown')]));
}

const feelOf = (answer: string | null): (typeof FELT)[keyof typeof FELT] | null =>
  answer !== null && Object.hasOwn(FELT, answer) ? FELT[answer as keyof typeof FELT] : null;
