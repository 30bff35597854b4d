import { mixPlace, type Picture, type Planned, plannedMix } from '#core';
import type { Request } from '#records';
import type { Draft } from '../draft.ts';
import {
  addedArgs,
  additionsOf,
  alsoAdd,
  byHandLines,
  correctionOf,
  isFeed,
  limitArgs,
  limitsOf,
  loadsOf,
  mixLines,
  ofPlace,
  ownFigures,
  solveLine,
} from '../matters/mix.ts';
import { mixDrawing } from '../pictures-of/mix.ts';
import { containersOf } from '../reading-context.ts';
import { type Line, say } from '../say.ts';
import { whyCorrection } from '../why/mix.ts';

/** What is planned, in the shape the reader hands it on. */
export type Expected = { container?: string; count?: number; kg?: number; material?: string };

/** `mix`: today's mix, or that of one place; `3 carts coming, how many chips?`: what they usually weigh, and the chips for it. */
export function mix(draft: Draft, request: Request): void {
  const expected = expectedOf(request.load);
  if (expected.length > 0) {
    beforeTipping(draft, expected);
    return;
  }
  const picture = draft.picture();
  const where = request.place ?? mixPlace(picture, draft.today);
  const parts = loadsOf(picture, draft.today, where);
  if (!parts.some(isFeed)) {
    const none = request.place
      ? say('mix-nothing-there', { place: { place: request.place } })
      : say(parts.length === 0 ? 'mix-nothing-today' : 'mix-no-food-today');
    draft.lines.push(none, ...byHandLines(draft, where));
    return;
  }
  const correction = correctionOf(picture, draft.today, parts, draft.now, where);
  const limits = limitsOf(picture, draft.today, draft.now, where);
  draft.lines.push(...ofPlace(draft, where, mixLines(correction)));
  draft.drawing ??= () => mixDrawing(correction, limits, draft.today);
  draft.why.push(...whyCorrection(correction, limits));
}

function expectedOf(load: unknown): Expected[] {
  if (load === null || load === undefined || typeof load !== 'object') return [];
  return (Array.isArray(load) ? load : [load]) as Expected[];
}

/** What is expected, by what such containers usually weigh, and what it takes to mix it. */
export function planOf(picture: Picture, today: string, now: string, expected: readonly Expected[]): Planned {
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
    limits: { ...limitsOf(picture, today, now), roomLitres: null },
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

/** A container whose weight is known neither from here nor from a table; a line that says so. */
export function noWeightLine({ noWeight }: Planned): Line[] {
  const [first] = noWeight;
  return first ? [say('planned-no-weight', { container: { container: first.container, count: 1 } })] : [];
}

function beforeTipping(draft: Draft, expected: Expected[]): void {
  const planned = planOf(draft.picture(), draft.today, draft.now, expected);
  const { correction } = planned;
  if (planned.noWeight.length > 0) {
    draft.lines.push(...noWeightLine(planned));
    return;
  }
  const blocked = correction.code === 'infeasible' ? correction.blocked : null;
  const adds = blocked?.best ?? (correction.add.length > 0 ? correction.add : (correction.ifWet ?? []));
  draft.lines.push(
    say(planned.from === 'published' ? 'planned-published' : 'planned', {
      ...addedArgs(adds),
      kg: { kg: planned.expectedKg, digits: 0 },
      low: { kg: planned.lowKg, digits: 0 },
      high: { kg: planned.highKg, digits: 0 },
      chips: { kg: adds[0]?.kg ?? 0, digits: 0 },
      hasAdd: { text: adds.length > 0 ? 'yes' : 'no' },
    }),
    ...alsoAdd(adds),
  );
  if (blocked) {
    draft.lines.push(say('planned-short', limitArgs(blocked)), ...solveLine(blocked));
  }
  if (planned.firstOnFloor) {
    draft.lines.push(
      say('planned-first-on-floor', { what: { container: planned.firstOnFloor.container, count: 1 } }),
    );
  }
  draft.why.push(
    say('why-planned', {
      what: { container: expected[0]?.container ?? 'cart', count: expected[0]?.count ?? 1 },
      kg: { kg: planned.expectedKg, digits: 0 },
      from: { term: planned.from === 'published' ? 'published' : 'learned', of: 'figure' },
    }),
    ...whyCorrection(correction, limitsOf(draft.picture(), draft.today, draft.now)),
  );
}
