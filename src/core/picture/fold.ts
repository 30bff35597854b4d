import type { BookKind, Entry } from '#records';
import { addDays } from '../calendar.ts';
import { onDay, own, plus, type Reducer, type Reducers } from './change.ts';
import { DRUM_DAYS, drum } from './drum.ts';
import { AIR_DAYS, heat } from './heat.ts';
import { intake, MIX_DAYS } from './intake.ts';
import { piles } from './piles.ts';
import { problems } from './problems.ts';
import { settings } from './settings.ts';
import type { Moment, Picture } from './types.ts';

/** One reducer for each kind of line: the compiler stops a new kind that has none. */
const REDUCERS: Reducers<BookKind> = { ...intake, ...drum, ...heat, ...piles, ...problems, ...settings };

/** Lines that a person's messages leave behind without having logged anything. */
const NOT_LOGGED = new Set<string>(['setting', 'void', 'duty', 'duty-note']);

/**
 * The picture with one more line in it. Lines come in order of happening, then number; voided lines change
 * nothing, held ones are only listed. Never changes the picture it was given.
 * @source none needed
 * @example applyEntry(emptyPicture(site), entry).lastEntry // 1
 */
export function applyEntry(picture: Picture, entry: Entry): Picture {
  const seen = seenBy(picture, entry);
  if (entry.voidedBy !== null) return seen;
  const now: Moment = { entry: entry.number, at: entry.happenedAt, localDate: entry.localDate };
  if (entry.held) {
    const { why, doubt } = entry.held;
    return { ...seen, held: [...seen.held, { ...now, kind: entry.record.kind, why, doubt }] };
  }
  const kind = entry.record.kind as BookKind;
  // A line of a later version of the program may be of a kind that this one does not know.
  if (!Object.hasOwn(REDUCERS, kind)) return seen;
  const reduce = REDUCERS[kind] as Reducer<BookKind>;
  const next = reduce(seen, entry.record as never, now, entry);
  if (NOT_LOGGED.has(kind) || entry.person === null) return next;
  const person = String(entry.person);
  return onDay(next, entry.localDate, (day) => ({ loggedBy: plus(day.loggedBy, person, 1) }));
}

/** Moves the picture's own clock; whatever has become too old falls off when a new day begins. */
function seenBy(picture: Picture, entry: Entry): Picture {
  const lastEntry = Math.max(picture.lastEntry, entry.number);
  if (entry.happenedAt < picture.asOf) return { ...picture, lastEntry };
  const moved = { ...picture, lastEntry, asOf: entry.happenedAt, asOfDate: entry.localDate };
  return entry.localDate > picture.asOfDate ? pruned(moved, entry.localDate) : moved;
}

/** How many days of each thing the picture keeps; older ones are asked of the book. */
const KEPT_DAYS = { days: 400, gone: 60, weather: 30, ended: 60, notes: 60, closures: 400 } as const;

function pruned(picture: Picture, today: string): Picture {
  const since = (days: number) => addDays(today, -days);
  const young = (days: number) => {
    const oldest = since(days);
    return <T extends { localDate: string }>(list: T[]): T[] =>
      list.some((each) => each.localDate < oldest) ? list.filter((each) => each.localDate >= oldest) : list;
  };
  const [oldestDay, oldestGone] = [since(KEPT_DAYS.days), since(KEPT_DAYS.gone)];
  const [oldestEnded, oldestClosure] = [since(KEPT_DAYS.ended), since(KEPT_DAYS.closures)];
  const oldestNote = since(KEPT_DAYS.notes);
  return {
    ...picture,
    months: youngDays(picture.months, oldestDay),
    batches: keepIf(picture.batches, ({ goneAt }) => goneAt === null || goneAt.localDate >= oldestGone),
    ceased: keepIf(picture.ceased, ({ on }) => on >= oldestDay),
    drums: Object.fromEntries(
      Object.entries(picture.drums).map(([name, each]) => [
        name,
        { ...each, loads: young(DRUM_DAYS)(each.loads) },
      ]),
    ),
    ambient: young(AIR_DAYS)(picture.ambient),
    exit: young(AIR_DAYS)(picture.exit),
    mixLoads: young(MIX_DAYS)(picture.mixLoads),
    weather: young(KEPT_DAYS.weather)(picture.weather),
    pending: young(KEPT_DAYS.days)(picture.pending),
    ended: picture.ended.filter(({ ended }) => ended.localDate >= oldestEnded),
    closures: picture.closures.filter(({ to }) => to >= oldestClosure),
    dutyNotes: keepIf(picture.dutyNotes, (note) => (note.until ?? note.localDate) >= oldestNote),
    lastFromSource: keepIf(picture.lastFromSource, (date) => date >= oldestDay),
  };
}

/** Whole months go as they are; the one in which the oldest day lies loses those before it. */
function youngDays(months: Picture['months'], oldestDay: string): Picture['months'] {
  const oldest = oldestDay.slice(0, 7);
  const young = keepIf(months, (_, month) => month >= oldest);
  const edge = own(young, oldest);
  if (!edge) return young;
  const kept = keepIf(edge, (_, date) => date >= oldestDay);
  return kept === edge ? young : { ...young, [oldest]: kept };
}

function keepIf<T>(record: Record<string, T>, keep: (value: T, key: string) => boolean): Record<string, T> {
  for (const key in record) {
    if (!keep(record[key]!, key)) {
      return Object.fromEntries(Object.entries(record).filter(([name, value]) => keep(value, name)));
    }
  }
  return record;
}

/**
 * The picture after a run of lines, from a snapshot on.
 * @source none needed
 * @example rebuild(emptyPicture(site), entries) // the same as applying them one by one
 */
export function rebuild(snapshot: Picture, entries: Iterable<Entry>): Picture {
  let picture = snapshot;
  for (const entry of entries) picture = applyEntry(picture, entry);
  return picture;
}
