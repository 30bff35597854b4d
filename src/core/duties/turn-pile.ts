import { addDays, daysBetween } from '../calendar.ts';
import { dangerBand } from '../heat/danger-bands.ts';
import { RULE_SET_DATA } from '../heat/rule-sets.ts';
import { sanitising } from '../heat/sanitising.ts';
import { ruleSetOf, sanitisingOptionsOf } from '../picture/proof.ts';
import type { Batch } from '../picture/types.ts';
import type { Coded, DutyContext, DutyRule, DutyWhy, Found } from './duty.ts';
import { safeBatches } from './keep-away.ts';
import { everyDays, isReadable, lastHottest, lastOf, youngSince } from './live.ts';
import { noTurning } from './weather.ts';

/** Two or more turns in curing, spaced. @source two turns: common practice; the spacing: common practice, no source */
const CURING_TURNS = 2;
const CURING_EVERY_DAYS = 14;
/** A smell, or a rise that has stalled, brings the next turn forward to this. @source common practice, no source */
const SOONER_DAYS = 5;
/** A pile over this is turned soon, over 70 °C today. @source see DANGER_BAND_DATA */
const HOT_DAYS = 2;

type Due = { by: string; risk: 2 | 3 | 4; why: Coded<DutyWhy>; urgent?: boolean };

/** Turning is due when the rule set counts turns, when a pile is too hot or smells, and now and then in curing. */
export const turnPile: DutyRule = {
  name: 'turn-pile',
  find: (context) =>
    safeBatches(context).flatMap((batch) => {
      if (batch.state === 'ready') return [];
      const due = [hot, forProof, smells, inCuring]
        .map((reason) => reason(batch, context))
        .filter((each) => each !== null && each.by <= context.localDate)[0];
      return due ? [duty(batch, due, context)] : [];
    }),
};

function hot(batch: Batch, context: DutyContext): Due | null {
  const reading = lastOf(batch.readings, context);
  const celsius = lastHottest(batch, context);
  if (!reading || celsius === null || !isReadable(celsius)) return null;
  const turned = lastOf(batch.turns, context);
  if (turned && turned.at >= reading.at) return null;
  const danger = dangerBand(celsius);
  if (danger.doNotOpen || danger.band === 'usual') return null;
  const today = danger.actions.includes('turn-today');
  return {
    by: today ? context.localDate : addDays(reading.localDate, HOT_DAYS),
    risk: today ? 4 : 3,
    why: { code: 'too-hot', args: { celsius: { celsius } } },
    urgent: today,
  };
}

/** Spread over the days that the rule set asks for: 5 turns in 15 days are one every 3. */
function forProof(batch: Batch, context: DutyContext): Due | null {
  const { picture, localDate } = context;
  const name = ruleSetOf(picture, localDate);
  if (!name) return null;
  const rule = RULE_SET_DATA[name];
  if (rule.turns === 0 || rule.days === null) return null;
  const proof = sanitising(batch, name, sanitisingOptionsOf(picture, localDate), context);
  if (proof.verdict === 'met' || proof.since === null || proof.turns.counted >= rule.turns) return null;
  const since = proof.since.localDate;
  const turned = lastOf(batch.turns, context);
  const from = turned && turned.localDate > since ? turned.localDate : since;
  const every = Math.max(rule.turnsApartDays, Math.floor(rule.days / rule.turns));
  return {
    by: addDays(from, every),
    risk: 4,
    why: {
      code: 'turns-for-proof',
      args: { turn: { count: proof.turns.counted + 1 }, needed: { count: rule.turns } },
    },
  };
}

function smells(batch: Batch, context: DutyContext): Due | null {
  const odour = context.picture.problems.findLast(
    ({ topic, place }) => topic === 'odour' && place === batch.name,
  );
  if (!odour) return null;
  const turned = lastOf(batch.turns, context);
  if (turned && turned.at > odour.at) return null;
  const spaced = turned ? addDays(turned.localDate, SOONER_DAYS) : null;
  const by = spaced && spaced > odour.localDate ? spaced : odour.localDate;
  return { by, risk: 3, why: { code: 'smells', args: { entry: { entry: odour.entry } } } };
}

function inCuring(batch: Batch, context: DutyContext): Due | null {
  const since = youngSince(batch);
  if (batch.state !== 'closed' || !since) return null;
  const turns = batch.turns.filter(({ at }) => at > since.at && at <= context.at);
  const stalled = hasStalled(batch, context);
  if (turns.length >= CURING_TURNS && !stalled) return null;
  const every = stalled ? SOONER_DAYS : everyDays(context, 'turn-pile', CURING_EVERY_DAYS);
  const from = turns.at(-1)?.localDate ?? since.localDate;
  return {
    by: addDays(from, every),
    risk: 2,
    why: stalled
      ? { code: 'rise-stalled', args: { date: { date: from }, celsius: { celsius: stalled } } }
      : {
          code: 'turns-in-curing',
          args: {
            turn: { count: turns.length + 1 },
            turns: { count: turns.length },
            needed: { count: CURING_TURNS },
            date: { date: from },
            days: { count: daysBetween(from, context.localDate) },
          },
        },
  };
}

/**
 * A pile still warm whose last three readings since the last turn fall by 3 °C or more each has run out of air
 * before it ran out of food. Gives the last of them in °C. Frozen and dry piles are left out.
 * @source common practice, no source
 */
function hasStalled(batch: Batch, { at }: DutyContext): number | null {
  const turned = batch.turns.findLast((turn) => turn.at <= at)?.at ?? '';
  const since = batch.readings.filter((reading) => reading.at > turned && reading.at <= at).slice(-3);
  const [a, b, c] = since.map(({ celsius }) => Math.max(...celsius));
  if (a === undefined || b === undefined || c === undefined) return null;
  if (batch.moisture.findLast((moisture) => moisture.at <= at)?.feel === 'dry') return null;
  return a - b >= 3 && b - c >= 3 && a >= 50 && c >= 30 && c < 50 ? c : null;
}

function duty(batch: Batch, { by, risk, why, urgent }: Due, context: DutyContext): Found {
  return {
    key: `turn:${batch.name}`,
    kind: 'turn-pile',
    place: batch.name,
    args: { place: { place: batch.name } },
    why,
    by,
    risk,
    log: { code: 'turned', args: { place: { place: batch.name } } },
    // A pile that is too hot is a danger in any weather; any other turn waits for a better day.
    heldBack: urgent ? null : noTurning(context),
    canWait: !urgent && risk < 4,
  };
}
