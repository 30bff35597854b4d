import type { RuleSetName } from '#records';
import { addDays, daysBetween } from '../calendar.ts';
import { RULE_SET_DATA } from '../heat/rule-sets.ts';
import { type Sanitising, sanitising } from '../heat/sanitising.ts';
import { ruleSetOf, sanitisingOptionsOf, vectorsOf, wasHotLately } from '../picture/proof.ts';
import type { Batch } from '../picture/types.ts';
import { coded, type DutyContext, type DutyRule, type Found } from './duty.ts';
import { safeBatches } from './keep-away.ts';
import { everyDays, lastOf, youngSince } from './live.ts';

/** Daily readings end so long after a pile is closed (or last fed) if no run is under way. @source common practice, no source */
const DAILY_DAYS = 21;
/** @source daily in the first weeks, then weekly in curing: common practice (from memory) */
const WEEKLY_DAYS = 7;

/** A pile whose proof is under way is read every day; any other once a week. */
export const readPile: DutyRule = {
  name: 'read-pile',
  find: (context) => safeBatches(context).flatMap((batch) => found(batch, context)),
};

function found(batch: Batch, context: DutyContext): Found[] {
  if (batch.state === 'ready') return [];
  const { picture, localDate } = context;
  const rule = ruleSetOf(picture, localDate);
  const last = lastOf(batch.readings, context);
  // A pile that is still fed starts anew with every load; only one that was hot since is worth the work.
  const proof =
    rule && (batch.state === 'closed' || wasHotLately(batch, rule, localDate))
      ? sanitising(batch, rule, sanitisingOptionsOf(picture, localDate), context)
      : null;
  if (last?.localDate === localDate && !wantsAnother(proof, rule, context)) return [];
  if (isProving(batch, proof, rule, context)) {
    return [
      duty(batch, localDate, 4, {
        code: proof?.unit === 'days' && proof.counted > 0 ? 'proving' : 'closed-unproven',
        args: {
          day: { count: (proof?.counted ?? 0) + 1 },
          needed: { count: proof?.needed ?? 0 },
          rule: { term: rule ?? 'none', of: 'rule-set' },
        },
      }),
    ];
  }
  const vectors = batch.state === 'closed' ? vectorsOf(picture, batch, context) : null;
  if (vectors?.asked && vectors.proof.verdict !== 'met' && vectors.proof.counted > 0) {
    const { counted, needed } = vectors.proof;
    const args = { day: { count: counted + 1 }, needed: { count: needed } };
    return [duty(batch, localDate, 4, { code: 'proving', args: { ...args, rule: NO_RULE } })];
  }
  const every = everyDays(context, 'read-pile', WEEKLY_DAYS);
  const since = last?.localDate ?? youngSince(batch)?.localDate ?? null;
  if (since === null) return [];
  const by = addDays(since, last ? every : 1);
  if (by > localDate) return [];
  const why = last
    ? coded('weekly', { date: { date: since }, days: { count: daysBetween(since, localDate) } })
    : coded('never-read', { date: { date: since } });
  return [{ ...duty(batch, by, 2, why), canWait: true }];
}

/** The count beside the rule set has no name of its own among the rules. */
const NO_RULE = { term: 'none', of: 'rule-set' } as const;

/** A rule that counts an hour asks for the next reading within it, though there was one today. */
const wantsAnother = (proof: Sanitising | null, rule: RuleSetName | null, { at }: DutyContext): boolean =>
  proof !== null &&
  proof.verdict !== 'met' &&
  rule !== null &&
  RULE_SET_DATA[rule].gapMin !== null &&
  proof.since !== null &&
  proof.next?.at != null &&
  proof.next.at >= at;

/** Whether a proof can still be had from this pile by reading it every day. */
function isProving(
  batch: Batch,
  proof: Sanitising | null,
  rule: RuleSetName | null,
  { localDate }: DutyContext,
): boolean {
  if (proof?.verdict === 'met') return false;
  if (proof !== null && proof.since !== null && proof.counted > 0) return true;
  if (batch.state !== 'closed') return false;
  const since = youngSince(batch)?.localDate;
  const needed = (rule && RULE_SET_DATA[rule].days) ?? 1;
  return since !== undefined && daysBetween(since, localDate) <= Math.max(DAILY_DAYS, needed + WEEKLY_DAYS);
}

const duty = (batch: Batch, by: string, risk: 2 | 4, why: Found['why']): Found => ({
  key: `read:${batch.name}`,
  kind: 'read-pile',
  place: batch.name,
  args: { place: { place: batch.name } },
  why,
  by,
  risk,
  // A figure to show the manner of it, not a value to copy.
  log: { code: 'reading', args: { place: { place: batch.name }, celsius: { celsius: 58 } } },
});
