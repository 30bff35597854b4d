import { drumNow, drumRoom, type Picture, type Planned, plannedMix, siteLimits, usualKg } from '#core';
import type { Request } from '#records';
import type { Draft } from '../draft.ts';
import { additionsOf, alsoAdd, correctionOf, loadsOf, mixLines, ownFigures } from '../matters/mix.ts';
import { mixDrawing } from '../pictures-of/mix.ts';
import { containersOf } from '../reading-context.ts';
import { say } from '../say.ts';
import { whyMix } from '../why/mix.ts';

/** What is planned, in the shape the reader hands it on. */
type Expected = { container?: string; count?: number; kg?: number; material?: string };

/** `mix`: today's mix; `3 carts coming, how many chips?`: what they usually weigh, and the chips for it. */
export function mix(draft: Draft, request: Request): void {
  const expected = expectedOf(request.load);
  if (expected.length > 0) {
    beforeTipping(draft, expected);
    return;
  }
  const parts = loadsOf(draft.picture(), draft.today);
  if (parts.length === 0) {
    draft.lines.push(say('mix-nothing-today'));
    return;
  }
  const correction = correctionOf(draft.picture(), draft.today, parts, draft.now);
  draft.lines.push(...mixLines(correction));
  draft.drawing ??= () =>
    mixDrawing(correction, siteLimits(draft.picture(), draft.today, draft.now), draft.today);
  draft.why.push(...whyMix(correction.before));
}

function expectedOf(load: unknown): Expected[] {
  if (load === null || load === undefined || typeof load !== 'object') return [];
  return (Array.isArray(load) ? load : [load]) as Expected[];
}

function planOf(picture: Picture, today: string, now: string, expected: readonly Expected[]): Planned {
  const inDrum = picture.base.drums.length > 0;
  return plannedMix({
    loads: expected.map((each) => {
      const container = each.container ?? 'cart';
      const material = each.material ?? 'food-scraps';
      return {
        material,
        container,
        count: each.count ?? 1,
        usual: each.kg == null ? netTally(picture, container, today) : null,
        containerLitres: containersOf(picture, today)[container]?.litres ?? null,
        setKg: each.kg ?? null,
        own: ownFigures(picture, material, today),
      };
    }),
    additions: additionsOf(picture, today),
    // Whether there is room is a question of its own (`room`): what is planned is not in yet.
    limits: { ...siteLimits(picture, today, now), roomLitres: null },
    already: chipsWaiting(picture, today),
    inDrum,
  });
}

/** Chips that were put in ahead of the day's food; once food is in, they are spoken for. */
function chipsWaiting(picture: Picture, today: string) {
  const loads = loadsOf(picture, today);
  return loads.every((part) => part.material === 'wood-chips') ? loads : [];
}

/** Net weights of such containers so far: the gross tally less the empty weight in force. */
function netTally(picture: Picture, container: string, today: string) {
  const gross = picture.weights[container];
  const tare = containersOf(picture, today)[container]?.tareKg ?? null;
  return gross && tare !== null ? { ...gross, meanKg: gross.meanKg - tare } : null;
}

function beforeTipping(draft: Draft, expected: Expected[]): void {
  const planned = planOf(draft.picture(), draft.today, draft.now, expected);
  const { correction } = planned;
  const adds = correction.add.length > 0 ? correction.add : (correction.ifWet ?? []);
  const [add] = adds;
  if (planned.noWeight.length > 0) {
    const [first] = planned.noWeight;
    draft.lines.push(say('planned-no-weight', { container: { container: first!.container, count: 1 } }));
    return;
  }
  const [addition] = additionsOf(draft.picture(), draft.today);
  draft.lines.push(
    say(planned.from === 'published' ? 'planned-published' : 'planned', {
      kg: { kg: planned.expectedKg, digits: 0 },
      low: { kg: planned.lowKg, digits: 0 },
      high: { kg: planned.highKg, digits: 0 },
      what: { container: add?.container ?? addition!.container, count: add?.count ?? 0 },
      one: { text: add?.count === 1 ? '1 ' : '' },
      chips: { kg: add?.kg ?? 0, digits: 0 },
    }),
  );
  draft.lines.push(...alsoAdd(adds));
  if (planned.firstOnFloor) {
    draft.lines.push(
      say('planned-first-on-floor', { what: { container: planned.firstOnFloor.container, count: 1 } }),
    );
  }
  draft.why.push(...whyMix(correction.after));
}

/** `room for 2 more?`: what the drum still takes. */
export function room(draft: Draft, request: Request): void {
  const picture = draft.picture();
  const [drum] = Object.values(picture.drums);
  if (!drum) {
    draft.lines.push(say('room-no-drum'));
    return;
  }
  const tally = netTally(picture, 'cart', draft.today);
  const each = tally ? (usualKg(tally)?.typical ?? 50) : 50;
  const kg = each * (request.count ?? 1);
  const planned = planOf(picture, draft.today, draft.now, [{ container: 'cart', kg }]);
  const chips = planned.correction.add.reduce((sum, add) => sum + add.kg, 0);
  const answer = drumRoom(
    drum,
    [
      { material: 'food-scraps', kg },
      { material: 'wood-chips', kg: chips },
    ],
    draft.now,
  );
  const args = {
    kg: { kg: Math.ceil((answer.dischargeFirstKg ?? 0) / 10) * 10 },
    fill: { pct: answer.fillAfterPct?.typical ?? 0 },
    days: { number: answer.oldestDays ?? 0, digits: 0 },
    hasDays: { text: answer.oldestDays === null ? 'no' : 'yes' },
  };
  if (answer.answer === 'unknown') draft.lines.push(say('room-unknown'));
  else draft.lines.push(say(answer.answer === 'yes' ? 'room-yes' : 'room-no', args));
  if (answer.answer !== 'unknown' && !answer.sure) draft.lines.push(say('room-look'));
  draft.why.push(say('why-drum', { kg: { kg: drumNow(drum, draft.now).kg, digits: 0 } }));
}
