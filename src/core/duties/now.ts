import { addDays, daysBetween } from '../calendar.ts';
import { own } from '../picture/change.ts';
import { askSource } from './ask-source.ts';
import { caps } from './caps.ts';
import { checks } from './checks.ts';
import { cleaning } from './cleaning.ts';
import { coverPile } from './cover-pile.ts';
import { dischargeDrum, readDrum } from './drum.ts';
import type { Coded, Duty, DutyContext, DutyRule, Found, HoldBack } from './duty.ts';
import { keepAway } from './keep-away.ts';
import { lookAgain } from './look-again.ts';
import { answerDoubts, weighEmpty } from './open-lines.ts';
import { ownDuties } from './own-duties.ts';
import { pileRoom } from './pile-room.ts';
import { readAmbient } from './read-ambient.ts';
import { readPile } from './read-pile.ts';
import { chaseResults, releasePile, samplePile } from './release.ts';
import { permits, reweighEmpty, season } from './season.ts';
import { stock } from './stock.ts';
import { turnPile } from './turn-pile.ts';

/** Every rule there is; the order shows only where risk, date and key are alike, which they never are. */
export const DUTY_RULES: readonly DutyRule[] = [
  keepAway,
  lookAgain,
  answerDoubts,
  readPile,
  turnPile,
  coverPile,
  weighEmpty,
  dischargeDrum,
  readDrum,
  readAmbient,
  releasePile,
  samplePile,
  chaseResults,
  stock,
  pileRoom,
  caps,
  askSource,
  checks,
  season,
  permits,
  reweighEmpty,
  cleaning,
  ownDuties,
];

/** A job that somebody took is theirs for so many days. @source common practice, no source */
const CLAIM_DAYS = 3;

/**
 * What needs doing on a day, the riskiest first, then by date; what nobody can do or what was put off stands at
 * the end with its reason. Logging the real thing closes it. `at` is a UTC instant, `localDate` the site's date of it.
 * @source each rule names its own
 * @example dutiesNow(picture, { at, localDate })[0]!.key // 'read:pile C'
 */
export function dutiesNow(picture: DutyContext['picture'], when: Omit<DutyContext, 'picture'>): Duty[] {
  const context: DutyContext = { ...when, picture };
  return DUTY_RULES.flatMap((rule) => rule.find(context))
    .filter((found) => !isDone(found, context))
    .map((found) => withNotes(found, context))
    .sort(byRisk);
}

function byRisk(a: Duty, b: Duty): number {
  return (
    Number(a.heldBack !== null) - Number(b.heldBack !== null) ||
    b.risk - a.risk ||
    (a.by < b.by ? -1 : a.by > b.by ? 1 : 0) ||
    (a.key < b.key ? -1 : a.key > b.key ? 1 : 0)
  );
}

/** `done 2` is believed for a while; what could hurt somebody goes only when the book shows it. */
function isDone({ key, risk, kind, doneHoldsDays = 0 }: Found, { picture, localDate }: DutyContext): boolean {
  const note = own(picture.dutyNotes, key);
  // The site's own duties know by themselves when they come round again.
  if (note?.act !== 'done' || risk === 5 || kind === 'own-duty') return false;
  return daysBetween(note.localDate, localDate) <= doneHoldsDays;
}

function withNotes(found: Found, context: DutyContext): Duty {
  const { heldBack = null, canWait = false, doneHoldsDays: _, ...duty } = found;
  const note = own(context.picture.dutyNotes, duty.key);
  const claimed = note?.act === 'claim' && daysBetween(note.localDate, context.localDate) <= CLAIM_DAYS;
  return {
    ...duty,
    canWait,
    heldBack: postponed(duty, context) ?? closedNow(canWait, context) ?? heldBack,
    claimedBy: claimed ? note.person : null,
  };
}

function postponed({ key, risk }: Pick<Found, 'key' | 'risk'>, context: DutyContext): Coded<HoldBack> | null {
  const note = own(context.picture.dutyNotes, key);
  if (note?.act !== 'postpone' || risk === 5) return null;
  // Put off without a day: till tomorrow.
  const until = note.until ?? addDays(note.localDate, 1);
  if (until <= context.localDate) return null;
  return {
    code: 'postponed',
    args: { date: { date: until }, ...(note.reason ? { reason: { text: note.reason } } : {}) },
  };
}

function closedNow(canWait: boolean, { picture, localDate }: DutyContext): Coded<HoldBack> | null {
  if (!canWait) return null;
  const closure = picture.closures.find(({ from, to }) => from <= localDate && localDate <= to);
  return closure ? { code: 'closed', args: { date: { date: closure.to } } } : null;
}
