import { addDays, instantOf, localDateOf, type Picture, weekdayOf, weekOf } from '#core';
import type { Complain, Home } from './assistant.ts';
import { fansOff, stopsToCall } from './matters/drum.ts';
import { pictureOf } from './pictures-of/drawing.ts';
import { weekDrawing } from './pictures-of/week.ts';
import type { Book, Manner, OutgoingRow, PictureSpec, PostAbout, Words } from './ports.ts';
import { listedIn, morningLines } from './requests/today.ts';
import { weekLines } from './requests/totals.ts';
import { type Line, say } from './say.ts';
import { type Settings, settingsOf } from './settings-of.ts';

type Parts = {
  book: Book;
  words: Words;
  complain: Complain;
  siteId: number;
  picture: Picture;
  now: string;
  homes: Home[];
};

/** A machine that slept looks back this far for what it missed. */
const LOOK_BACK_DAYS = 35;
/** A morning line this late is of no use any more. */
const MORNING_LATE_MS = 10 * 3_600_000;

/**
 * What is due unasked since the clock was last looked at: each week at its set hour, exactly once, also late, after
 * the machine slept through it; the morning line where there is something to do.
 */
export function duePosts(parts: Parts): OutgoingRow[] {
  const { book, siteId, picture, now } = parts;
  const before = book.memo<string>(siteId, 'ticked');
  const today = localDateOf(now, picture.base.timeZone);
  const settings = settingsOf(picture, today);
  if (before === null) {
    book.setMemo(siteId, 'ticked', now);
    return [];
  }
  if (now <= before) return [];
  const due = dueBetween(parts, settings, before, now);
  const rows = due.flatMap(({ post, at }) => post(at));
  // Kept with what was posted, else seldom: a missed minute is looked at twice, a posted week never.
  if (rows.length > 0 || Date.parse(now) - Date.parse(before) > 600_000) book.setMemo(siteId, 'ticked', now);
  return rows;
}

type Due = { at: string; post: (at: string) => OutgoingRow[] };

function dueBetween(parts: Parts, settings: Settings, before: string, now: string): Due[] {
  const due: Due[] = [];
  const zone = settings.timeZone;
  const last = localDateOf(now, zone);
  let day = localDateOf(before, zone);
  if (addDays(day, LOOK_BACK_DAYS) < last) day = addDays(last, -LOOK_BACK_DAYS);
  for (; day <= last; day = addDays(day, 1)) {
    const at = (clock: string): string => instantOf(`${day}T${clock.padStart(5, '0')}`, zone);
    const isDue = (instant: string): boolean => before < instant && instant <= now;
    const { summary, morning } = settings;
    if (summary && weekdayOf(day) === summary.day && isDue(at(summary.at))) {
      const weekFrom = reportedWeek(day, settings);
      due.push({ at: at(summary.at), post: () => postWeek(parts, settings, weekFrom) });
    }
    if (morning && isDue(at(morning.at)) && Date.parse(now) - Date.parse(at(morning.at)) < MORNING_LATE_MS) {
      const date = day;
      due.push({ at: at(morning.at), post: () => postMorning(parts, settings, date) });
    }
  }
  due.push(...fanReminders(parts, settings, before, now), ...callReminders(parts, settings, before, now));
  return due.sort((a, b) => a.at.localeCompare(b.at));
}

/**
 * Which week a summary is of: early in a week the one before, from its fifth day on the one that runs. A crew that
 * sets Friday afternoon or Sunday evening wants to hear of the week it has just had.
 */
function reportedWeek(day: string, settings: Settings): string {
  const week = weekOf(day, settings.weekStarts);
  return day >= addDays(week, 4) ? week : addDays(week, -7);
}

/** A fan that was turned off for frost is reminded of when its time is up: the drum needs air. */
function fanReminders(parts: Parts, settings: Settings, before: string, now: string): Due[] {
  return fansOff(parts.picture, localDateOf(now, settings.timeZone)).flatMap(
    ({ place, hours, dueAt }): Due[] => {
      if (dueAt <= before || dueAt > now) return [];
      const line = say('fan-reminder', { place: { place }, hours: { number: hours, digits: 1 } });
      return [{ at: dueAt, post: () => putOut(parts, mannerOf(settings, parts), 'reminder', [line], null) }];
    },
  );
}

/** A drum that has stood for as long as the site has set: whom to call, and what to look at meanwhile. */
function callReminders(parts: Parts, settings: Settings, before: string, now: string): Due[] {
  return stopsToCall(parts.picture, localDateOf(now, settings.timeZone)).flatMap(
    ({ place, entry, hours, whom, dueAt }): Due[] => {
      if (dueAt <= before || dueAt > now) return [];
      const line = say('stopped-call-now', {
        place: { place },
        entry: { entry },
        hours: { number: hours, digits: 1 },
        whom: { text: whom ?? '' },
        has: { text: whom ? 'yes' : 'no' },
      });
      return [{ at: dueAt, post: () => putOut(parts, mannerOf(settings, parts), 'reminder', [line], null) }];
    },
  );
}

function postWeek(parts: Parts, settings: Settings, weekFrom: string): OutgoingRow[] {
  const key = `posted-week:${weekFrom}`;
  if (parts.book.memo(parts.siteId, key)) return [];
  const manner = mannerOf(settings, parts);
  const { lines, totalKg } = weekLines(
    parts.picture,
    weekFrom,
    { at: parts.now, localDate: manner.today },
    parts.book,
  );
  parts.book.setMemo(parts.siteId, key, { at: parts.now, totalKg });
  const drawing = pictureOf(() => weekDrawing(parts.picture, weekFrom, parts.now, manner), {
    ...parts,
    manner,
  });
  return putOut(parts, manner, 'week', lines, weekFrom, drawing);
}

function postMorning(parts: Parts, settings: Settings, date: string): OutgoingRow[] {
  const key = 'posted-morning';
  if (parts.book.memo<string>(parts.siteId, key) === date) return [];
  parts.book.setMemo(parts.siteId, key, date);
  const manner = mannerOf(settings, parts);
  const { lines, keys } = morningLines(parts.picture, {
    now: parts.now,
    today: manner.today,
    book: parts.book,
  });
  if (lines.length === 0) return [];
  // `done 2` speaks of the list that the chat saw last, and that is this one now.
  for (const home of parts.homes) listedIn(parts.book, parts.siteId, home.chat, keys);
  return putOut(parts, manner, 'morning', lines, null);
}

const mannerOf = (settings: Settings, parts: Parts): Manner => ({
  language: settings.languages[0] ?? 'en',
  units: settings.units,
  dayOrder: settings.dayOrder,
  timeZone: settings.timeZone,
  today: localDateOf(parts.now, settings.timeZone),
});

function putOut(
  parts: Parts,
  manner: Manner,
  about: PostAbout,
  lines: Line[],
  weekFrom: string | null,
  picture: PictureSpec | null = null,
): OutgoingRow[] {
  const text = parts.words.text(lines, manner);
  return parts.homes.map((home) =>
    parts.book.putOut({
      site: parts.siteId,
      ...home,
      answers: null,
      message: null,
      about,
      weekFrom,
      private: false,
      text,
      choices: [],
      picture,
      file: null,
      createdAt: parts.now,
    }),
  );
}
