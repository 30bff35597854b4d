import { type Api, GrammyError, InputFile } from 'grammy';
import type { MessageEntity } from 'grammy/types';
import type { Logger } from 'pino';
import type { ChannelBook, MakePaper, OutgoingRow, PaperFile, Person, PictureSpec } from '#assistant';
import { CHANNEL } from './options.ts';
import { type Piece, piecesOf } from './pieces.ts';

type Outcome =
  | { is: 'sent' }
  /** This chat rests for a while; others go on. */
  | { is: 'later'; ms: number }
  /** Nobody there can be written to any more. */
  | { is: 'gone' }
  | { is: 'moved'; to: string }
  /** Refused for good, by a fault of ours. */
  | { is: 'refused' };

const LONGEST_REST_MS = 10 * 60_000;

/**
 * Takes replies from the outbox and sends them: in order within a chat, chats side by side, so that a chat which is
 * closed to us or has to wait holds up no other. What was sent is marked in batches.
 */
export const makeSender = (parts: {
  api: Api;
  book: ChannelBook;
  draw(picture: PictureSpec, site: number): Promise<Uint8Array | null>;
  make: MakePaper;
  log: Logger;
  now: () => Date;
  moved(from: string, to: string): void;
  /** None of these coordinators could be written to directly: they have never pressed Start, or closed the chat. */
  unreached(row: OutgoingRow, coordinators: Person[]): void;
  /** The book can not be read or written. */
  broken(error: unknown): void;
}) => {
  const { api, book, log, now } = parts;
  const ending = new AbortController();
  const busy = new Map<string, Promise<void>>();
  const restsUntil = new Map<string, number>();
  const failures = new Map<string, number>();
  /** Messages of a row that went out before it had to wait: not sent again. */
  const begun = new Map<number, string[]>();
  let sent: { id: number; sentAs: string | null; also?: string[] }[] = [];
  let soon: NodeJS.Immediate | null = null;
  let closing = false;

  const flush = (): void => {
    if (sent.length === 0) return;
    const rows = sent;
    sent = [];
    book.markSent(rows, now().toISOString());
  };

  const kick = (): void => {
    if (closing || soon) return;
    soon = setImmediate(() => {
      soon = null;
      if (closing) return;
      try {
        pump();
      } catch (error) {
        parts.broken(error);
      }
    });
  };

  const pump = (): void => {
    flush();
    const lines = new Map<string, OutgoingRow[]>();
    for (const row of book.waiting(CHANNEL, 1000)) {
      const line = row.private
        ? `coordinators of ${row.site}`
        : // A file takes its time to make: what is said meanwhile, an alarm perhaps, does not wait for it.
          row.file && 'paper' in row.file
          ? `files of ${row.chat}`
          : row.chat;
      lines.set(line, [...(lines.get(line) ?? []), row]);
    }
    for (const [line, rows] of lines) {
      if (busy.has(line) || (restsUntil.get(line) ?? 0) > Date.now()) continue;
      const work = sendLine(line, rows)
        .catch((error) => {
          log.error({ error: kindOf(error) }, 'a reply could not be sent for a fault of ours');
          restsUntil.set(line, Date.now() + 30_000);
        })
        .finally(() => {
          busy.delete(line);
          kick();
        });
      busy.set(line, work);
    }
  };

  const sendLine = async (line: string, rows: OutgoingRow[]): Promise<void> => {
    for (const row of rows) {
      if (closing) return;
      const outcome = await (line.startsWith('coordinators of ')
        ? sendToCoordinators(row)
        : sendRow(row, row.chat));
      if (outcome.is === 'later') {
        restsUntil.set(line, Date.now() + outcome.ms);
        return;
      }
      if (outcome.is === 'moved') {
        log.info('a group has a new id: its replies go there');
        flush();
        parts.moved(row.chat, outcome.to);
        return;
      }
      failures.delete(line);
      if (outcome.is === 'gone') {
        log.warn('a chat can not be written to any more: its replies are laid aside');
        book.changeChat(CHANNEL, row.chat, { active: false });
        for (const left of rows) if (left.id >= row.id) sent.push({ id: left.id, sentAs: null });
        begun.delete(row.id);
        return;
      }
      const [first = null, ...also] = begun.get(row.id) ?? [];
      begun.delete(row.id);
      sent.push({ id: row.id, sentAs: first, also });
    }
  };

  /** What is for coordinators alone goes to each one's own chat, whatever group it came from. */
  const sendToCoordinators = async (row: OutgoingRow): Promise<Outcome> => {
    const ids = coordinatorsOf(row.site).flatMap((person) => book.channelIds(person.id, CHANNEL));
    let reached = 0;
    for (const id of ids) {
      const chat = book.chat(CHANNEL, id);
      if (chat && !chat.active) continue;
      const outcome = await sendRow(row, id, `${row.id}/${id}`);
      if (outcome.is === 'later') return outcome;
      if (outcome.is === 'gone') book.changeChat(CHANNEL, id, { active: false });
      if (outcome.is === 'sent') reached += 1;
    }
    if (reached === 0) {
      log.warn('no coordinator could be written to directly');
      parts.unreached(row, coordinatorsOf(row.site));
    }
    return { is: 'sent' };
  };

  const coordinatorsOf = (site: number): Person[] =>
    book.people(site).filter((person) => person.coordinator && person.name !== '');

  /** An alarm put before the group rings with those it names, also where they have muted it. */
  const mentionsIn = (row: OutgoingRow, text: string): MessageEntity[] => {
    if (row.about !== 'alarm' || row.private) return [];
    return coordinatorsOf(row.site).flatMap(({ id, name }): MessageEntity[] => {
      const offset = text.indexOf(name);
      const user = Number(book.channelIds(id, CHANNEL)[0]);
      if (offset < 0 || !Number.isInteger(user)) return [];
      const who = { id: user, is_bot: false, first_name: name };
      return [{ type: 'text_mention', offset, length: name.length, user: who }];
    });
  };

  const doneFor = new Set<string>();
  const sendRow = async (row: OutgoingRow, chat: string, mark?: string): Promise<Outcome> => {
    if (mark !== undefined && doneFor.has(mark)) return { is: 'sent' };
    const ids = begun.get(row.id) ?? [];
    const pieces = piecesOf(row);
    for (const [index, piece] of pieces.entries()) {
      if (mark === undefined && index < ids.length) continue;
      try {
        const id = await sendPiece(row, chat, piece, index === 0);
        if (mark === undefined) begun.set(row.id, [...(begun.get(row.id) ?? []), id]);
      } catch (error) {
        const outcome = outcomeOf(error, chat);
        if (outcome.is !== 'refused') return outcome;
        log.error({ error: kindOf(error) }, 'a message was refused');
      }
    }
    if (mark !== undefined) doneFor.add(mark);
    return { is: 'sent' };
  };

  const sendPiece = async (row: OutgoingRow, chat: string, piece: Piece, first: boolean): Promise<string> => {
    const answers =
      first && Number(chat) < 0 && chat === row.chat ? Number.parseInt(row.answers ?? '', 10) : Number.NaN;
    const common = (thread: string | null) => ({
      ...(thread !== null && chat === row.chat ? { message_thread_id: Number(thread) } : {}),
      ...(Number.isNaN(answers)
        ? {}
        : { reply_parameters: { message_id: answers, allow_sending_without_reply: true } }),
    });
    const markup = (keyboard: { text: string }[][]) =>
      keyboard.length > 0 ? { reply_markup: { inline_keyboard: keyboard as never } } : {};
    const send = async (thread: string | null): Promise<{ message_id: number }> => {
      const { signal } = ending;
      switch (piece.send) {
        case 'text': {
          const entities = mentionsIn(row, piece.text);
          const other = {
            ...common(thread),
            ...markup(piece.keyboard),
            ...(entities.length > 0 ? { entities } : {}),
            link_preview_options: { is_disabled: true },
          };
          return api.sendMessage(chat, piece.text, other, signal as never);
        }
        case 'drawing': {
          const png = await drawn(row);
          if (!png) {
            const text = [piece.caption, row.picture!.alt].filter((part) => part !== '').join('\n');
            return api.sendMessage(
              chat,
              text,
              { ...common(thread), ...markup(piece.keyboard) },
              signal as never,
            );
          }
          const caption = piece.caption === '' ? {} : { caption: piece.caption };
          const other = { ...common(thread), ...markup(piece.keyboard), ...caption };
          return api.sendPhoto(chat, new InputFile(png, 'picture.png'), other, signal as never);
        }
        case 'kept-photo':
          return api.sendPhoto(chat, piece.file, common(thread), signal as never);
        case 'document': {
          const file = new InputFile(Buffer.from(piece.text, 'utf8'), piece.name);
          return api.sendDocument(chat, file, common(thread), signal as never);
        }
        case 'paper': {
          const bytes = await made(piece.file, row.site);
          if (!bytes) return api.sendMessage(chat, piece.file.failed, common(thread), signal as never);
          const file = new InputFile(bytes, piece.file.name);
          return api.sendDocument(chat, file, common(thread), signal as never);
        }
      }
    };
    try {
      return String((await send(row.thread)).message_id);
    } catch (error) {
      // The topic was closed or taken away: the answer goes to the group all the same.
      if (
        row.thread === null ||
        !(error instanceof GrammyError) ||
        !/thread not found|TOPIC_/i.test(error.description)
      )
        throw error;
      return String((await send(null)).message_id);
    }
  };

  const drawn = async (row: OutgoingRow): Promise<Uint8Array | null> => {
    try {
      return await parts.draw(row.picture!, row.site);
    } catch (error) {
      log.error({ error: kindOf(error) }, 'a picture could not be drawn');
      return null;
    }
  };

  const made = async (file: PaperFile, site: number): Promise<Uint8Array | null> => {
    try {
      return await parts.make(file, site);
    } catch (error) {
      log.error({ error: kindOf(error) }, 'a file could not be made');
      return null;
    }
  };

  const outcomeOf = (error: unknown, chat: string): Outcome => {
    const again = (): Outcome => {
      const times = (failures.get(chat) ?? 0) + 1;
      failures.set(chat, times);
      return { is: 'later', ms: Math.min(30_000, 500 * 2 ** Math.min(times, 10)) };
    };
    if (!(error instanceof GrammyError)) return again();
    const { error_code: code, description, parameters } = error;
    if (parameters.migrate_to_chat_id !== undefined)
      return { is: 'moved', to: String(parameters.migrate_to_chat_id) };
    if (code === 429)
      return { is: 'later', ms: Math.min(LONGEST_REST_MS, (parameters.retry_after ?? 30) * 1000) };
    // A group that became a supergroup can say that it was deleted before it says where to: its replies wait.
    if (code === 403 && /deleted|upgraded/i.test(description)) return { is: 'later', ms: LONGEST_REST_MS };
    if (code === 403 || /chat not found|deactivated/i.test(description)) return { is: 'gone' };
    if (/not enough rights|CHAT_WRITE_FORBIDDEN|have no rights/i.test(description))
      return { is: 'later', ms: LONGEST_REST_MS };
    if (code >= 500 || code === 401 || code === 404) return again();
    return { is: 'refused' };
  };

  return {
    kick,
    flush,
    /** Gives what is on its way a moment, then cuts it off: what is not marked goes out after the next start. */
    stop: async (graceMs: number): Promise<void> => {
      closing = true;
      const all = Promise.allSettled([...busy.values()]);
      const cut = setTimeout(() => ending.abort(), graceMs);
      await Promise.race([all, new Promise((done) => setTimeout(done, graceMs + 500).unref())]);
      clearTimeout(cut);
      ending.abort();
      flush();
    },
  };
};

/** What kind of error it was, without what anybody wrote and without the address that holds the token. */
export const kindOf = (error: unknown): string =>
  error instanceof GrammyError ? `${error.error_code}` : error instanceof Error ? error.name : 'unknown';
