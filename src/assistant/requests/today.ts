import { type Duty, dutiesNow, type Picture, weekdayOf } from '#core';
import { rememberDoubts } from '../doubts-here.ts';
import type { Draft } from '../draft.ts';
import type { Book } from '../ports.ts';
import { type Arg, type Line, type Say, say } from '../say.ts';
import { whoIs } from '../who.ts';

/** At most so many jobs are shown; the rest are counted. */
const SHOWN = 7;

/** The jobs of the moment: what needs doing first, and what is held back. */
export function jobsOf(picture: Picture, now: string, today: string): { open: Duty[]; heldBack: Duty[] } {
  const duties = dutiesNow(picture, { at: now, localDate: today });
  return {
    open: duties.filter((duty) => duty.heldBack === null),
    heldBack: duties.filter((duty) => duty.heldBack !== null),
  };
}

/** `today`: what needs doing, why, by when, who has it, and how to log it. */
export function today(draft: Draft): void {
  const { open, heldBack } = jobsOf(draft.picture(), draft.now, draft.today);
  listedIn(draft.book, draft.siteId, draft.incoming.chat, shownKeys(open));
  const doubts = open.slice(0, SHOWN).flatMap(({ key }) => /^doubt:(\d+)$/.exec(key)?.[1] ?? []);
  rememberDoubts(draft, doubts.map(Number));
  draft.lines.push(...jobLines(open, heldBack, draft.today, namesOf(draft.book)));
}

const shownKeys = (open: readonly Duty[]): string[] => open.slice(0, SHOWN).map((duty) => duty.key);

/** Remembers which jobs a chat was shown under which number. */
export const listedIn = (book: Book, siteId: number, chat: string, keys: string[]): void =>
  book.setMemo(siteId, `listed:${chat}`, keys);

const namesOf =
  (book: Book) =>
  (person: number): Arg =>
    whoIs(book, person);

/** The morning line, with the jobs that it numbers: only where something is due. */
export function morningLines(
  picture: Picture,
  { now, today: date, book }: { now: string; today: string; book: Book },
): { lines: Line[]; keys: string[] } {
  const { open, heldBack } = jobsOf(picture, now, date);
  const due = open.filter((duty) => duty.by <= date);
  if (due.length === 0) return { lines: [], keys: [] };
  return { lines: jobLines(due, heldBack, date, namesOf(book)), keys: shownKeys(due) };
}

function jobLines(
  open: readonly Duty[],
  heldBack: readonly Duty[],
  date: string,
  nameOf: (person: number) => Arg,
): Line[] {
  const day = { term: weekdayOf(date), of: 'weekday' };
  if (open.length === 0) return [say('today-nothing', { day }), ...laterLines(heldBack)];
  const lines: Line[] = [say('today-head', { day, count: { count: open.length } })];
  open.slice(0, SHOWN).forEach((duty, i) => {
    lines.push(jobLine(duty, i + 1, date, nameOf));
  });
  if (open.length > SHOWN) lines.push(say('today-more', { count: { count: open.length - SHOWN } }));
  lines.push(...laterLines(heldBack));
  const examples = open.map((duty) => duty.log).filter((log) => log !== null);
  const [first, second] = examples.map((log) => say(`log-${log.code}`, log.args));
  if (first && second) lines.push(say('today-send-two', { first: { say: first }, second: { say: second } }));
  else if (first) lines.push(say('today-send', { first: { say: first } }));
  return lines;
}

function jobLine(duty: Duty, n: number, date: string, nameOf: (person: number) => Arg): Line {
  const parts: Say[] = [
    say('today-job', { n: { count: n }, what: { say: dutySay(duty) }, why: { say: whySay(duty) } }),
  ];
  if (duty.by > date && !namesDay(duty, duty.by)) parts.push(say('today-by', { date: { date: duty.by } }));
  else if (duty.by < date && !namesDay(duty)) parts.push(say('today-since', { date: { date: duty.by } }));
  if (duty.claimedBy !== null) parts.push(say('today-taken', { who: nameOf(duty.claimedBy) }));
  return parts;
}

/** Whether the reason given holds a day already: two dates in one line say less than one. */
const namesDay = (duty: Duty, day?: string): boolean =>
  Object.values(duty.why.args).some((fact) => 'date' in fact && (day === undefined || fact.date === day));

/** What a duty is: `Read pile C`. */
export const dutySay = (duty: Duty): Say => say(`duty-${duty.kind}`, duty.args);

const whySay = (duty: Duty): Say =>
  duty.kind === 'answer-doubt'
    ? say('why-answer-doubt', duty.args)
    : say(`why-${duty.why.code}`, { ...duty.args, ...duty.why.args });

function laterLines(heldBack: readonly Duty[]): Line[] {
  return heldBack.slice(0, 3).map((duty) =>
    say('today-later', {
      what: { say: dutySay(duty) },
      why: {
        say: say(`later-${duty.heldBack!.code}`, {
          date: { text: '' },
          reason: { text: '' },
          from: { text: '' },
          ...duty.heldBack!.args,
          hasFrom: { text: hasFrom(duty.heldBack!.args?.from) ? 'yes' : 'no' },
          hasReason: { text: hasText(duty.heldBack!.args?.reason) ? 'yes' : 'no' },
        }),
      },
    }),
  );
}

/** Where a wind blows from was said. */
const hasFrom = (arg: unknown): boolean =>
  typeof arg === 'object' && arg !== null && 'term' in arg && arg.term !== 'unknown';

const hasText = (arg: unknown): boolean =>
  typeof arg === 'object' && arg !== null && 'text' in arg && arg.text !== '';
