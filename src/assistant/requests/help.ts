import { settingAt } from '#core';
import type { Draft } from '../draft.ts';
import { containersOf } from '../reading-context.ts';
import { type Line, say } from '../say.ts';
import { settingsOf } from '../settings-of.ts';

/** What can be typed, in the words of the crew. */
export function help(draft: Draft): void {
  const { base } = draft.picture();
  draft.lines.push(say('help-log'));
  draft.lines.push(say(base.drums.length > 0 ? 'help-log-drum' : 'help-log-piles'));
  draft.lines.push(say('help-ask'), say('help-mend'), say('help-set'), say('help-danger'));
}

/** Eight lines to start safely, from the site's own settings. */
export function newHere(draft: Draft): void {
  const picture = draft.picture();
  const { base } = picture;
  const { name, safety, recipe } = settingsOf(picture, draft.today);
  const wards = settingAt(picture, 'wards', draft.today);
  draft.lines.push(say('new-1', { site: { text: name } }));
  draft.lines.push([
    ...(safety.emergencyNumber
      ? [
          say('new-2-call', {
            number: { text: safety.emergencyNumber },
            address: { text: safety.address ?? '' },
            hasAddress: { text: safety.address ? 'yes' : 'no' },
          }),
        ]
      : [say('new-2-no-call')]),
    ...(safety.firstAider ? [say('new-2-aid', { who: { text: safety.firstAider } })] : []),
  ]);
  draft.lines.push(
    base.drums.length > 0
      ? say('new-3-drum', {
          isolator: { text: safety.isolator ?? '' },
          hasIsolator: { text: safety.isolator ? 'yes' : 'no' },
        })
      : say('new-3'),
  );
  draft.lines.push([
    say('new-4'),
    ...(base.peopleNearby && base.peopleNearby !== 'none'
      ? [
          say('new-4-near', {
            near: { term: base.peopleNearby, of: 'near' },
            point: typeof wards === 'string' ? { term: wards, of: 'compass' } : { text: '' },
            hasPoint: { text: typeof wards === 'string' ? 'yes' : 'no' },
          }),
        ]
      : []),
  ]);
  draft.lines.push(weighingLine(draft));
  draft.lines.push(
    recipe
      ? say('new-6-recipe', { chips: { number: recipe.chips }, food: { number: recipe.food } })
      : say('new-6'),
  );
  draft.lines.push(say('new-7'), say('new-8'));
}

/** How a load is weighed here: with the empty weight that is taken off, or asking for it. */
function weighingLine(draft: Draft): Line {
  const containers = containersOf(draft.picture(), draft.today);
  const names = Object.keys(containers);
  const usual = containers.cart ? 'cart' : (names[0] ?? 'cart');
  const tareKg = containers[usual]?.tareKg ?? null;
  const container = { container: usual, count: 1 };
  return tareKg === null
    ? say('new-5-no-tare', { container })
    : say('new-5', {
        container,
        tare: { kg: tareKg },
        // A load that a full one of them may well weigh, so that the example can be typed as it stands.
        gross: { kg: Math.round(tareKg + (containers[usual]?.litres ?? 100) * 0.2), bare: true },
      });
}
