import { type DrumPicture, type DrumRules, drumNow, drumRoom, drumRulesOf, drumStands } from '#core';
import type { Request } from '#records';
import type { Draft } from '../draft.ts';
import { addedArgs } from '../matters/mix.ts';
import { type Line, type Say, say } from '../say.ts';
import { whyDrum } from '../why/drum.ts';
import { noWeightLine, planOf } from './mix.ts';

type Coming = { material: string; kg: number };

/** `room for 2 more?`: what each drum, or the one that is named, still takes, with the chips that belong to it. */
export function room(draft: Draft, request: Request): void {
  const picture = draft.picture();
  const all = Object.values(picture.drums);
  const named = all.filter(({ name }) => name === request.place);
  const drums = named.length > 0 ? named : all;
  if (drums.length === 0) {
    draft.lines.push(say('room-no-drum'));
    return;
  }
  const count = request.count ?? 1;
  const planned = planOf(picture, draft.today, draft.now, [{ container: 'cart', count }]);
  const standing = drums.every(({ name }) => drumStands(picture, name));
  if (!standing && planned.noWeight.length > 0) {
    draft.lines.push(...noWeightLine(planned));
    return;
  }
  const { add, ifWet, blocked } = planned.correction;
  const chips = blocked?.best ?? (add.length > 0 ? add : (ifWet ?? []));
  const coming = [
    { material: 'food-scraps', kg: planned.expectedKg },
    ...chips.map(({ material, kg }) => ({ material, kg })),
  ];
  const rules = drumRulesOf({ picture, localDate: draft.today });
  const answers = drums.map((drum) => answerOf(draft, drum, coming, rules));
  for (const [at, { head, rest }] of answers.entries()) {
    // With several drums at a site it is said which one is meant, asked for by name or not.
    const which = all.length > 1 ? [say('mix-of', { place: { place: drums[at]!.name } })] : [];
    draft.lines.push(which.length > 0 ? [...which, head] : head, ...rest);
  }
  if (answers.some(({ rough }) => rough)) draft.lines.push(say('room-look'));
  const [first] = answers.flatMap(({ litres }) => (litres === null ? [] : [litres]));
  if (first === undefined) return;
  const taken: Line = say('why-room', {
    what: { container: 'cart', count },
    kg: { kg: planned.expectedKg, digits: 0 },
    from: { term: planned.from === 'published' ? 'published' : 'learned', of: 'figure' },
    litres: { litres: Math.round(first) },
  });
  const beside = chips.map((one) => say('mix-also-add', addedArgs([one])));
  draft.why.push(taken, ...beside);
  for (const [at, { litres }] of answers.entries()) {
    if (litres === null) continue;
    if (all.length > 1) draft.why.push(say('mix-of', { place: { place: drums[at]!.name } }));
    draft.why.push(...whyDrum(drums[at]!, drumNow(drums[at]!, draft.now, rules), rules));
  }
}

/** What one drum still takes; `litres` are what is coming, null where the drum stands still. */
function answerOf(draft: Draft, drum: DrumPicture, coming: Coming[], rules: DrumRules) {
  const stands = drumStands(draft.picture(), drum.name);
  if (stands) {
    const head: Say = say('room-stands', { entry: { entry: stands.entry } });
    return { head, rest: [] as Line[], rough: false, litres: null };
  }
  const answer = drumRoom(drum, coming, draft.now, rules);
  const head =
    answer.answer === 'unknown'
      ? say('room-unknown')
      : say(answer.answer === 'yes' ? 'room-yes' : 'room-no', {
          kg: { kg: Math.ceil((answer.dischargeFirstKg ?? 0) / 10) * 10 },
          fill: { pct: answer.fillAfterPct?.typical ?? 0 },
          days: { count: Math.floor(answer.oldestDays ?? 0) },
          hasDays: { text: answer.oldestDays === null ? 'no' : 'yes' },
        });
  const young = answer.answer === 'no' && answer.oldestTooYoung;
  const rest: Line[] = young
    ? [say('room-too-young', { days: { number: rules.daysInside ?? 0, digits: 1 } })]
    : [];
  return { head, rest, rough: answer.answer !== 'unknown' && !answer.sure, litres: answer.wantedLitres };
}
