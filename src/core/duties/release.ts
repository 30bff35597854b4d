import { addDays } from '../calendar.ts';
import { type Readiness, readiness } from '../heat/readiness.ts';
import { canLeave, type Release } from '../heat/release.ts';
import { sanitising } from '../heat/sanitising.ts';
import { labStandardOf, ruleSetOf, sanitisingOptionsOf, vectorsOf } from '../picture/proof.ts';
import type { Batch } from '../picture/types.ts';
import type { DutyContext, DutyRule, Found } from './duty.ts';
import { safeBatches } from './keep-away.ts';
import { lastOf, liveBatches, youngSince } from './live.ts';

/** A laboratory takes two to three weeks. @source common practice, no source */
const RESULTS_DAYS = 21;

type Judged = { batch: Batch; state: Readiness; release: Release };

/** Closed piles that have had time to cure, judged; young ones are not worth the work. */
function judged(context: DutyContext): Judged[] {
  const { picture, localDate } = context;
  const rule = ruleSetOf(picture, localDate);
  const labStandard = labStandardOf(picture, localDate);
  const young = addDays(localDate, -RESULTS_DAYS);
  return safeBatches(context).flatMap((batch) => {
    const since = youngSince(batch)?.localDate;
    if (batch.state !== 'closed' || since === undefined || since > young) return [];
    const proof = rule ? sanitising(batch, rule, sanitisingOptionsOf(picture, localDate), context) : null;
    const told = vectorsOf(picture, batch, context);
    const vectors = told?.asked ? told.proof : null;
    const { ambient, problems } = picture;
    const litres = batch.level?.litres ?? null;
    const state = readiness({ batch, ambient, sanitising: proof, labStandard, litres }, context);
    return [
      {
        batch,
        state,
        release: canLeave({ batch, readiness: state, sanitising: proof, vectors, problems, labStandard }),
      },
    ];
  });
}

const job = (batch: Batch, more: Pick<Found, 'key' | 'kind' | 'why' | 'by' | 'log'>): Found => ({
  place: batch.name,
  args: { place: { place: batch.name } },
  risk: 1,
  canWait: true,
  ...more,
});

/** Nothing is missing any more on this book: somebody should look, and say that it is ready. */
export const releasePile: DutyRule = {
  name: 'release-pile',
  find: (context) =>
    judged(context)
      .filter(({ state, release }) => state.verdict === 'ready' && release.may)
      .map(({ batch }) =>
        job(batch, {
          key: `release:${batch.name}`,
          kind: 'release-pile',
          why: { code: 'nothing-missing', args: {} },
          by: context.localDate,
          log: { code: 'release', args: { place: { place: batch.name } } },
        }),
      ),
};

/** All that is missing are laboratory results, and no sample was taken since anything was last added. */
export const samplePile: DutyRule = {
  name: 'sample-pile',
  find: (context) =>
    judged(context).flatMap(({ batch, release }): Found[] => {
      const missing = release.missing.find((gap) => gap.code === 'lab-missing');
      const others = release.missing.filter(
        ({ code }) => code !== 'lab-missing' && code !== 'lab-without-sample',
      );
      if (!missing || others.length > 0) return [];
      const since = youngSince(batch);
      const sample = lastOf(batch.samples, context);
      if (sample && (!since || sample.at >= since.at)) return [];
      return [
        job(batch, {
          key: `sample:${batch.name}`,
          kind: 'take-sample',
          why: { code: 'results-missing', args: { count: { count: missing.analytes.length } } },
          by: context.localDate,
          log: { code: 'sample', args: { place: { place: batch.name } } },
        }),
      ];
    }),
};

/** A sample whose results have not come in. */
export const chaseResults: DutyRule = {
  name: 'chase-results',
  find: (context) =>
    liveBatches(context).flatMap((batch): Found[] => {
      const sample = lastOf(batch.samples, context);
      if (!sample || batch.labs.some(({ at }) => at >= sample.at && at <= context.at)) return [];
      const by = addDays(sample.localDate, RESULTS_DAYS);
      if (by > context.localDate) return [];
      return [
        job(batch, {
          key: `results:${batch.name}`,
          kind: 'chase-results',
          why: { code: 'sampled', args: { date: { date: sample.localDate } } },
          by,
          log: { code: 'lab-result', args: { place: { place: batch.name } } },
        }),
      ];
    }),
};
