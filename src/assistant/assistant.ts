import { localDateOf, settingAt } from '#core';
import { readMessage } from '#parsers';
import { type BookRecord, type Entry, LANGUAGES, type Language, type NewEntry } from '#records';
import { sayChangedWeeks } from './changed-weeks.ts';
import { decide } from './decide.ts';
import type { AddMore, Draft } from './draft.ts';
import { safetyCard, withoutMedicalDetail } from './emergency.ts';
import { type Outlook, writeForeseen } from './foreseen.ts';
import { languageFor, rememberSpoken } from './language.ts';
import { rememberLoads } from './last-loads.ts';
import { momentOf } from './moment-of.ts';
import { makePictures } from './pictures.ts';
import { pictureOf } from './pictures-of/drawing.ts';
import type {
  Book,
  Incoming,
  Manner,
  NewOutgoing,
  OutgoingRow,
  Person,
  StoredMessage,
  Words,
} from './ports.ts';
import { duePosts } from './posts.ts';
import { perform, press } from './press.ts';
import { readingContext } from './reading-context.ts';
import { answerRequest } from './requests/index.ts';
import { setting } from './requests/setting.ts';
import { rememberWhy } from './requests/why.ts';
import { readRevision } from './revision.ts';
import { type Line, type Say, say } from './say.ts';
import { settingsOf } from './settings-of.ts';
import { rememberOffered, typedChoice } from './typed-press.ts';

export type Received = {
  /** False where the same message had been received before: nothing was done. */
  fresh: boolean;
  message: StoredMessage | null;
  outgoing: OutgoingRow[];
  entries: Entry[];
};

export type Assistant = {
  /** Takes one message in: reads, decides, and writes message, entries and replies in one transaction. */
  receive(incoming: Incoming): Received;
  /** Puts out what is due unasked (the week, the morning line) up to an instant, for one site or all. */
  tick(now: string, site?: number): OutgoingRow[];
  /** What a page always shows of a site: its name, whom to call, and what to do in each danger. */
  board(site: number, language: Language | null, now: string): Board;
  /** What a site looks like is worked out anew from lines that happened from then on: words in them are gone. */
  forgetPictures(site: number, since: string): void;
  /** For how many days a site keeps the words of messages as evidence; null where it has set no end. */
  keepsDays(site: number, now: string): number | null;
  /** Where a site lies, as its file or a setting says; null where neither does. */
  placeOf(site: number, now: string): Place | null;
  /** Takes a forecast in: lines by nobody, marked as such, for what is expected from the site's today on. */
  foresee(site: number, expected: (today: string) => Outlook, now: string): Entry[];
};

type Place = { latitude: number; longitude: number };

export type Board = {
  name: string;
  language: Language;
  timeZone: string;
  emergencyNumber: string | null;
  call: string;
  /** `whats` are the kinds of danger that the lines answer. */
  dangers: { whats: string[]; title: string; text: string }[];
};

/** A chat that what goes out unasked is put into. */
export type Home = { channel: string; chat: string; thread: string | null };

/** Reports a fault of our own, with fixed words and without what anybody wrote. */
export type Complain = (what: string, error: unknown) => void;

export function makeAssistant(parts: {
  book: Book;
  words: Words;
  complain: Complain;
  homes: (site: number) => Home[];
}): Assistant {
  const { book, words, complain, homes } = parts;
  const pictures = makePictures(book);

  function receive(incoming: Incoming): Received {
    const nothing: Received = { fresh: false, message: null, outgoing: [], entries: [] };
    const known = book.message(
      incoming.site,
      incoming.channel,
      incoming.chat,
      incoming.message,
      incoming.edit,
    );
    if (known) return { ...nothing, message: known };
    try {
      return book.write(() => take(incoming));
    } catch (error) {
      pictures.forget(incoming.site);
      complain('a message could not be dealt with', error);
      return book.write(() => keepRaw(incoming));
    }
  }

  function take(incoming: Incoming): Received {
    const person = personOf(incoming);
    const message = book.saveMessage(incoming, person?.id ?? null, 'done');
    rememberSpoken(book, incoming, person, book.siteById(incoming.site).site.sources);
    const { draft, committed } = startDraft(incoming, person, message);
    if (incoming.choose) press(draft);
    else if (incoming.edit !== null) readRevision(draft);
    else if (incoming.ask) answerRequest(draft, { request: incoming.ask }, readingContext(draft));
    else if (incoming.location)
      setting(draft, { request: 'setting', name: 'place', value: incoming.location });
    else takeText(draft);
    sayChangedWeeks(draft);
    rememberWhy(draft);
    rememberLoads(draft);
    const outgoing = putOut(draft, message);
    rememberOffered(draft, outgoing);
    pictures.keep(incoming.site, committed());
    if (draft.forgotten !== null) forgetPictures(incoming.site, draft.forgotten);
    return { fresh: true, message, outgoing, entries: draft.entries };
  }

  /** Kept pictures hold words of what is held and of what was done: without them they are made anew. */
  function forgetPictures(site: number, since: string): void {
    book.dropSnapshotsFrom(site, since);
    pictures.forget(site);
  }

  function takeText(draft: Draft): void {
    const inAll = (one: Say) => LANGUAGES.map((language) => words.label(one, { ...draft.manner, language }));
    const typed = typedChoice(draft, inAll);
    if (typed) {
      perform(draft, typed);
      return;
    }
    const context = readingContext(draft);
    decide(draft, readMessage(draft.incoming.text, context), context);
  }

  /** Our own fault: the words are kept, and the sender is told so. */
  function keepRaw(incoming: Incoming): Received {
    const person = personOf(incoming);
    const message = book.saveMessage(incoming, person?.id ?? null, 'failed');
    const row = book.putOut({
      ...frame(incoming, message),
      text: words.text([say('kept-unread')], mannerOf(incoming, person)),
      choices: [],
      picture: null,
      file: null,
    });
    return { fresh: true, message, outgoing: [row], entries: [] };
  }

  function personOf(incoming: Incoming): Person | null {
    const { sender } = incoming;
    if (sender.id === null) return null;
    const person = book.person(incoming.site, incoming.channel, sender.id, sender.name);
    if (sender.coordinator && !person.coordinator) {
      book.changePerson(person.id, { coordinator: true });
      return { ...person, coordinator: true };
    }
    return person;
  }

  function mannerOf(incoming: Incoming, person: Person | null): Manner {
    const { site } = book.siteById(incoming.site);
    const settings = settingsOf(pictures.now(incoming.site), localDateOf(incoming.sentAt, site.timeZone));
    return {
      language: languageFor(book, incoming, person, settings.languages, site.sources),
      units: settings.units,
      dayOrder: settings.dayOrder,
      timeZone: settings.timeZone,
      today: localDateOf(incoming.sentAt, settings.timeZone),
    };
  }

  function startDraft(incoming: Incoming, person: Person | null, message: StoredMessage) {
    const manner = mannerOf(incoming, person);
    const before = pictures.now(incoming.site);
    let picture = before;
    let stale: Entry[] = [];
    let voided: number[] = [];
    const draft: Draft = {
      book,
      siteId: incoming.site,
      incoming,
      person,
      mayDecide:
        incoming.guest !== true &&
        (person?.coordinator === true || !book.people(incoming.site).some((each) => each.coordinator)),
      manner,
      now: incoming.sentAt,
      happenedAt: incoming.sentAt,
      today: manner.today,
      before,
      picture: () => {
        if (stale.length > 0) picture = pictures.with(incoming.site, picture, stale, voided);
        stale = [];
        voided = [];
        return picture;
      },
      entries: [],
      voided: [],
      lines: [],
      choices: [],
      drawing: null,
      file: null,
      posts: [],
      forgotten: null,
      why: [],
      word: (said) => words.label(said, manner),
      add: (record, more = {}) => {
        const [entry] = book.append(
          incoming.site,
          [
            newEntry(
              withoutMedicalDetail(record),
              { happenedAt: momentOf(record, draft.happenedAt, manner), ...more },
              incoming,
              person,
              manner,
            ),
          ],
          message.id,
        );
        draft.entries.push(entry!);
        stale.push(entry!);
        voided.push(...(more.voids ?? []));
        draft.voided.push(...(more.voids ?? []));
        return entry!;
      },
    };
    return { draft, committed: () => draft.picture() };
  }

  function newEntry(
    record: BookRecord | (Record<string, unknown> & { kind: string }),
    more: AddMore & { happenedAt: string },
    incoming: Incoming,
    person: Person | null,
    manner: Manner,
  ): NewEntry {
    const { happenedAt } = more;
    // A line that takes the place of another keeps what was there as evidence.
    const kept =
      record.kind === 'void'
        ? []
        : (more.voids ?? []).flatMap((number) => book.picturesOf(incoming.site, number));
    return {
      happenedAt,
      localDate: localDateOf(happenedAt, manner.timeZone),
      receivedAt: incoming.receivedAt,
      person: person?.id ?? null,
      record,
      typed: more.typed ?? null,
      assumed: more.assumed ?? [],
      held: more.held ?? null,
      voids: more.voids ?? [],
      pictures: [...kept, ...incoming.pictures.filter((file) => !kept.includes(file))],
    };
  }

  function putOut(draft: Draft, message: StoredMessage): OutgoingRow[] {
    const { incoming } = draft;
    const rows: OutgoingRow[] = [];
    if (draft.lines.length > 0 || draft.drawing || draft.file) {
      rows.push(
        book.putOut({
          ...frame(incoming, message),
          text: words.text(draft.lines, draft.manner),
          choices: draft.choices.map((choice) => ({
            label: words.label(choice.say, draft.manner),
            act: choice.act,
          })),
          picture: pictureOf(draft.drawing, { words, manner: draft.manner, complain }),
          file: draft.file,
        }),
      );
    }
    for (const post of draft.posts) {
      for (const place of placesFor(post, incoming)) {
        rows.push(
          book.putOut({
            ...frame(incoming, message),
            ...place,
            answers: null,
            about: post.about,
            private: post.private,
            text: postText(post, draft),
            choices: [],
            picture: null,
            file: null,
          }),
        );
      }
    }
    return rows;
  }

  /**
   * Where a post goes. What others must hear of is not put before somebody who came by a link, but where the crew is;
   * what is for coordinators alone goes out once, through the channel in which they are spoken to.
   */
  function placesFor(post: Draft['posts'][number], incoming: Incoming): (Home | null)[] {
    const crew = homes(incoming.site);
    if (!post.private) return incoming.guest ? crew : [null];
    return crew.length === 0 || crew.some(({ channel }) => channel === incoming.channel)
      ? [null]
      : crew.slice(0, 1);
  }

  /** What goes to others is said in the site's language, what is for coordinators in each language one of them chose. */
  function postText(post: Draft['posts'][number], draft: Draft): string {
    const [first = 'en'] = settingsOf(draft.picture(), draft.today).languages;
    const chosen = book
      .people(draft.siteId)
      .filter(({ coordinator }) => coordinator)
      .map(({ language }) => language ?? first);
    const languages = post.private && chosen.length > 0 ? new Set(chosen) : [first];
    const told = (lines: Line[], language: Language) => words.text(lines, { ...draft.manner, language });
    const each = [...languages].map((language) => told(post.lines, language));
    return [...each, ...(post.words ? [told(post.words, first)] : [])].join('\n');
  }

  function board(site: number, language: Language | null, now: string): Board {
    const picture = pictures.now(site);
    const settings = settingsOf(picture, localDateOf(now, picture.base.timeZone));
    const manner: Manner = {
      language: language ?? settings.languages[0] ?? 'en',
      units: settings.units,
      dayOrder: settings.dayOrder,
      timeZone: settings.timeZone,
      today: localDateOf(now, settings.timeZone),
    };
    const card = safetyCard(settings.safety, picture.base.drums.length > 0);
    return {
      name: settings.name,
      language: manner.language,
      timeZone: settings.timeZone,
      emergencyNumber: settings.safety.emergencyNumber ?? null,
      call: words.text(card.call, manner),
      dangers: card.dangers.map(({ whats, title, lines }) => ({
        whats,
        title: words.label(title, manner),
        text: words.text(lines, manner),
      })),
    };
  }

  return {
    receive,
    forgetPictures,
    board,
    tick: (now, site) => {
      const rows: OutgoingRow[] = [];
      for (const { id } of book.sites()) {
        if (site !== undefined && id !== site) continue;
        const picture = pictures.now(id);
        rows.push(
          ...book.write(() =>
            duePosts({ book, words, complain, siteId: id, picture, now, homes: homes(id) }),
          ),
        );
      }
      return rows;
    },
    keepsDays: (site, now) => {
      const picture = pictures.now(site);
      const today = localDateOf(now, picture.base.timeZone);
      return (settingAt(picture, 'keep-messages', today) as number | undefined) ?? null;
    },
    placeOf: (site, now) => {
      const picture = pictures.now(site);
      const today = localDateOf(now, picture.base.timeZone);
      return (settingAt(picture, 'place', today) as Place | undefined) ?? picture.base.place ?? null;
    },
    foresee: (site, expected, now) => {
      const picture = pictures.now(site);
      const { timeZone } = settingsOf(picture, localDateOf(now, picture.base.timeZone));
      const today = localDateOf(now, timeZone);
      try {
        return book.write(() => {
          const written = writeForeseen({
            book,
            siteId: site,
            picture,
            today,
            outlook: expected(today),
            now,
          });
          const { entries, voided } = written;
          if (entries.length > 0) pictures.keep(site, pictures.with(site, picture, entries, voided));
          return entries;
        });
      } catch (error) {
        pictures.forget(site);
        complain('a forecast could not be written', error);
        return [];
      }
    },
  };
}

function frame(
  incoming: Incoming,
  message: StoredMessage,
): Omit<NewOutgoing, 'text' | 'choices' | 'picture' | 'file'> {
  return {
    site: incoming.site,
    channel: incoming.channel,
    chat: incoming.chat,
    thread: incoming.thread,
    answers: incoming.message,
    message: message.id,
    about: null,
    weekFrom: null,
    private: false,
    createdAt: incoming.receivedAt,
  };
}
