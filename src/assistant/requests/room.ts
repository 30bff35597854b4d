import { drumNow, drumRoom, drumRulesOf, drumStands } from '#core';
import type { Request } from '#records';
import type { Draft } from '../draft.ts';
import { addedArgs } from '../matters/mix.ts';
import { type Line, say } from '../say.ts';
import { whyDrum } from '../why/drum.ts';
import { noWeightLine, planOf } from './mix.ts';

/** `room for 2 more?`: what the drum still takes, with the chips that belong to it. */
export function room(draft: Draft, request: Request): void {
  const picture = draft.picture();
  const [drum] = Object.values(picture.drums);
  if (!drum) {
    draft.lines.push(say('room-no-drum'));
    return;
  }
  const stands = drumStands(picture, drum.name);
  if (stands) {
    draft.lines.push(say('room-stands', { entry: { entry: stands.entry } }));
    return;
  }
  const count = request.count ?? 1;
  const planned = planOf(picture, draft.today, draft.now, [{ container: 'cart', count }]);
  if (planned.noWeight.length > 0) {
    draft.lines.push(...noWeightLine(planned));
    return;
  }
  const { add, ifWet, blocked } = planned.correction;
  const chips = blocked?.best ?? (add.length > 0 ? add : (ifWet ?? []));
  const rules = drumRulesOf({ picture, localDate: draft.today });
  const coming = [
    { material: 'food-scraps', kg: planned.expectedKg },
    ...chips.map(({ material, kg }) => ({ material, kg })),
  ];
  const answer = drumRoom(drum, coming, draft.now, rules);
  const args = {
    kg: { kg: Math.ceil((answer.dischargeFirstKg ?? 0) / 10) * 10 },
    fill: { pct: answer.fillAfterPct?.typical ?? 0 },
    days: { count: Math.floor(answer.oldestDays ?? 0) },
    hasDays: { text: answer.oldestDays === null ? 'no' : 'yes' },
  };
  if (answer.answer === 'unknown') draft.lines.push(say('room-unknown'));
  else draft.lines.push(say(answer.answer === 'yes' ? 'room-yes' : 'room-no', args));
  if (answer.answer === 'no' && answer.oldestTooYoung)
    draft.lines.push(say('room-too-young', { days: { number: rules.daysInside ?? 0, digits: 1 } }));
  if (answer.answer !== 'unknown' && !answer.sure) draft.lines.push(say('room-look'));
  const taken: Line = say('why-room', {
    what: { container: 'cart', count },
    kg: { kg: planned.expectedKg, digits: 0 },
    from: { term: planned.from === 'published' ? 'published' : 'learned', of: 'figure' },
    litres: { litres: Math.round(answer.wantedLitres) },
  });
  const beside = chips.map((one) => say('mix-also-add', addedArgs([one])));
  draft.why.push(taken, ...beside, ...whyDrum(drum, drumNow(drum, draft.now, rules), rules));
}
