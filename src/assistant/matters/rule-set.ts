import { RULE_SET_DATA, readingRhythm, ruleSetOf, settingAt } from '#core';
import type { RuleSetName } from '#records';
import type { Draft } from '../draft.ts';
import { type Line, say } from '../say.ts';

const WEEKLY_HOURS = 7 * 24;

const TOLD = 'told-rule-set';

/** What the site is told when it chooses its rule for heat: what weekly readings can never show, and what must be known. */
export function ruleSetChosen(draft: Draft, name: RuleSetName): void {
  const rule = RULE_SET_DATA[name];
  draft.book.setMemo(draft.siteId, TOLD, name);
  draft.lines.push(...rhythmLines(name));
  const picture = draft.picture();
  if (Object.keys(picture.drums).length > 0 && settingAt(picture, 'drum-way', draft.today) === undefined) {
    draft.lines.push(say('drum-proof-ways'));
  }
  if (rule.method === 'forced-aerated-pile') draft.lines.push(...askAeration(draft));
  for (const { title, part } of rule.citations)
    draft.why.push(say('why-source', { text: { text: `${title}, ${part}` } }));
}

/** A rule that came with the site's file was chosen by nobody here: its first pile reading is told the same, once. */
export function ruleSetFound(draft: Draft): Line[] {
  const name = ruleSetOf(draft.picture(), draft.today);
  if (!name || draft.book.memo(draft.siteId, TOLD) === name) return [];
  draft.book.setMemo(draft.siteId, TOLD, name);
  const asked = RULE_SET_DATA[name].method === 'forced-aerated-pile' ? askAeration(draft) : [];
  return [...rhythmLines(name), ...asked];
}

function rhythmLines(name: RuleSetName): Line[] {
  const rule = RULE_SET_DATA[name];
  const rhythm = readingRhythm(rule, WEEKLY_HOURS);
  if (rhythm.canShow) return [];
  return [
    say(rhythm.everyHours < 24 ? 'rule-set-minutes' : 'rule-set-readings', {
      needed: { number: rule.hours ?? rule.days ?? 0, digits: 0 },
      unit: { term: rule.hours === null ? 'days' : 'hours', of: 'unit' },
      minutes: { min: rhythm.everyHours * 60 },
      turns: { number: rule.turns, digits: 0 },
      hasTurns: { text: rule.turns > 0 ? 'yes' : 'no' },
    }),
  ];
}

/** Pipes that only breathe are not forced aeration: which it is, is asked once. */
function askAeration(draft: Draft): Line[] {
  if (settingAt(draft.picture(), 'aeration', draft.today) !== undefined) return [];
  if (draft.book.memo(draft.siteId, 'asked-aeration')) return [];
  draft.book.setMemo(draft.siteId, 'asked-aeration', draft.now);
  for (const value of ['forced', 'breathing']) {
    draft.choices.push({
      say: say(`answer-aeration-${value}`),
      act: { do: 'ask', request: { request: 'setting', name: 'aeration', value } },
    });
  }
  return [say('ask-aeration')];
}
