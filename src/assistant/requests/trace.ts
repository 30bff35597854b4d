import { batchAt, type ReleaseGap, traceOf } from '#core';
import type { Request } from '#records';
import type { Draft } from '../draft.ts';
import { gapSay, holdWhy } from '../matters/gate.ts';
import { judge } from '../matters/judging.ts';
import { proofLine, vectorsSay } from '../matters/proof-lines.ts';
import { traceLines } from '../matters/trace-lines.ts';
import { type Line, say } from '../say.ts';
import { whyPile } from '../why/pile.ts';
import { missingSays } from './readiness-says.ts';
import { notThere } from './status.ts';

/** `can we give C away?`: what is missing; who received from it; what went in and when; its kin. */
export function trace(draft: Draft, request: Request): void {
  const place = request.place ?? '';
  const batch = batchAt(draft.picture(), place);
  if (!batch) {
    draft.lines.push(notThere(draft, place));
    return;
  }
  const judged = judge(draft, batch);
  const { release, proof, vectors, ready } = judged;
  const lines: Line[] = [];
  if (batch.hold) {
    lines.push(
      say('trace-held', {
        place: { place },
        why: holdWhy(batch.hold.why),
        entry: { entry: batch.hold.entry },
        date: { date: batch.hold.localDate },
      }),
    );
  } else lines.push(say(release.may ? 'trace-may' : 'trace-not-yet', { place: { place } }));
  if (proof) lines.push(proofLine(draft, place, proof));
  if (vectors && (vectors.asked || batch.readings.length > 0)) lines.push(vectorsSay(vectors));
  const gaps = release.missing.filter(({ code }) => !SAID_ELSEWHERE.includes(code)).map(gapSay);
  const missing = [...gaps, ...missingSays(ready)];
  if (missing.length > 0) lines.push([say('trace-missing'), ...missing.slice(0, SHOWN)]);
  lines.push(...traceLines(place, traceOf(batch)));
  if (proof?.verdict !== 'met') lines.push(say('regulator-decides'));
  draft.lines.push(...lines);
  draft.why.push(...whyPile(draft, place, judged));
}

const SHOWN = 5;
/** Gaps that have a line of their own. */
const SAID_ELSEWHERE: ReleaseGap['code'][] = ['hold', 'not-sanitised', 'vectors', 'not-ready'];
