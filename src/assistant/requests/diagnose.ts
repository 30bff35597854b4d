import { SYMPTOMS } from '#core';
import type { Request } from '#records';
import type { Draft } from '../draft.ts';
import { diagnosisLines } from '../matters/symptoms.ts';
import { say } from '../say.ts';

/** The answer to a question that separates the causes of a symptom: the likely cause, and what to do first. */
export function diagnose(draft: Draft, request: Request): void {
  const symptom = SYMPTOMS.find((each) => each === request.what);
  if (!symptom) return;
  const lines = diagnosisLines(draft, symptom, request.place ?? null, String(request.to ?? ''));
  draft.lines.push(...(lines.length > 0 ? lines : [say('cause-unknown')]));
}
