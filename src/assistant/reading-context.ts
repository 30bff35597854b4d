import { localTimeOf, offsetMinOf, type Picture } from '#core';
import type { BookContext, ReadContext } from '#parsers';
import type { Container, FieldRecord } from '#records';
import type { Draft } from './draft.ts';
import { lastLoads } from './last-loads.ts';
import { openQuestion } from './questions.ts';
import { type Settings, settingsOf } from './settings-of.ts';

/** How long the last message of the same sender still explains `another 58.5` or `sorry 56.2 not 58.2`. */
const RECENT_MIN = 24 * 60;

/** What the reader is told about the site and the book before it reads a message. */
export function readingContext(draft: Draft): ReadContext {
  const picture = draft.picture();
  const settings = settingsOf(picture, draft.today);
  const book: BookContext = bookContext(draft, picture);
  const context = {
    ...vocabulary(picture, settings, draft.incoming.sentAt, draft.today),
    languages: languagesOf(draft, settings),
    book,
  };
  book.openQuestion = openQuestion(draft, context);
  return context;
}

/** Who comes by a link may speak a language that the crew does not. */
function languagesOf(draft: Draft, settings: Settings): Settings['languages'] {
  const { guest, sender } = draft.incoming;
  if (!guest || !sender.language || settings.languages.includes(sender.language)) return settings.languages;
  return [...settings.languages, sender.language];
}

function vocabulary(picture: Picture, settings: Settings, sentAt: string, today: string): ReadContext {
  const { base } = picture;
  return {
    nowLocal: localTimeOf(sentAt, settings.timeZone),
    offsetMin: offsetMinOf(sentAt, settings.timeZone),
    languages: settings.languages,
    units: settings.units,
    dayOrder: settings.dayOrder,
    containers: containersOf(picture, today),
    drums: base.drums,
    piles: Object.keys(picture.places),
    ceased: Object.fromEntries(
      Object.entries(picture.ceased).map(([place, { successor }]) => [place, successor]),
    ),
    sources: base.sources,
    materials: base.materials,
    duties: Object.keys(picture.ownDuties),
  };
}

/** The site's containers with what has been set since its file was written. */
export function containersOf(picture: Picture, _today: string): Record<string, Container> {
  const containers: Record<string, Container> = { ...picture.base.containers };
  for (const [name, timeline] of Object.entries(picture.settings)) {
    const [what, container] = name.split(':');
    const last = timeline.at(-1);
    if (!container || !last) continue;
    if (what === 'tare') containers[container] = { ...containers[container], tareKg: last.value as number };
    if (what === 'litres') containers[container] = { ...containers[container], litres: last.value as number };
    if (what === 'holds') containers[container] = { ...containers[container], holds: last.value as string };
  }
  return containers;
}

function bookContext(draft: Draft, picture: Picture): BookContext {
  return {
    weights: Object.fromEntries(
      Object.entries(picture.weights).map(([container, { n, meanKg, m2 }]) => [
        container,
        { n, meanKg, sdKg: n > 1 ? Math.sqrt(m2 / (n - 1)) : 0 },
      ]),
    ),
    lastReadings: lastReadings(picture),
    openProblems: picture.problems.map(({ entry, topic, place }) => ({ entry, topic, place })),
    lastOfSender: lastOfSender(draft),
    openQuestion: null,
    lastLoads: lastLoads(draft),
    listed: draft.book.memo<string[]>(draft.siteId, `listed:${draft.incoming.chat}`) ?? [],
  };
}

function lastReadings(picture: Picture): BookContext['lastReadings'] {
  const byPlace: BookContext['lastReadings'] = {};
  const put = (place: string, readings: readonly { localDate: string; celsius: number[] }[]): void => {
    if (readings.length > 0) {
      byPlace[place] = readings
        .slice(-5)
        .reverse()
        .map(({ localDate, celsius }) => ({ localDate, celsius }));
    }
  };
  for (const [place, id] of Object.entries(picture.places)) put(place, picture.batches[id]?.readings ?? []);
  for (const [name, drum] of Object.entries(picture.drums)) put(name, drum.readings);
  put('exit', picture.exit);
  put(
    'ambient',
    picture.ambient
      .filter(({ standIn }) => !standIn)
      .map(({ localDate, celsius }) => ({ localDate, celsius: [celsius] })),
  );
  return byPlace;
}

/** What the sender's last message made, voided lines left out. */
export function lastOfSender(draft: Draft): BookContext['lastOfSender'] {
  if (!draft.person) return null;
  const last = draft.book.memo<{ at: string; entries: number[] }>(draft.siteId, `last:${draft.person.id}`);
  if (!last) return null;
  const minutesAgo = (Date.parse(draft.now) - Date.parse(last.at)) / 60_000;
  if (minutesAgo > RECENT_MIN) return null;
  const entries = last.entries
    .map((number) => draft.book.entry(draft.siteId, number))
    .filter((entry) => entry !== null)
    .filter((entry) => entry.voidedBy === null && entry.held === null);
  if (entries.length === 0) return null;
  return {
    records: entries.map((entry) => entry.record as FieldRecord),
    entries: entries.map((entry) => entry.number),
    minutesAgo,
  };
}
