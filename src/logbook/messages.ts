import type Database from 'better-sqlite3';
import type { Incoming, NewOutgoing, OutgoingRow, StoredMessage } from '#assistant';
import { About, Choices, FileSent, PictureShown } from './shapes.ts';

type MessageRow = Omit<StoredMessage, 'edit'> & { edit: string };
type OutboxRow = {
  id: number;
  site: number;
  channel: string;
  chat: string;
  thread: string | null;
  answers: string | null;
  message: number | null;
  about: string | null;
  week_from: string | null;
  private: number;
  text: string;
  choices: string;
  picture: string | null;
  file: string | null;
  created_at: string;
  sent_at: string | null;
  sent_as: string | null;
};

const messageOf = (row: MessageRow): StoredMessage => ({ ...row, edit: row.edit === '' ? null : row.edit });

const outgoingOf = (row: OutboxRow): OutgoingRow => ({
  id: row.id,
  site: row.site,
  channel: row.channel,
  chat: row.chat,
  thread: row.thread,
  answers: row.answers,
  message: row.message,
  about: About.parse(row.about),
  weekFrom: row.week_from,
  private: row.private === 1,
  text: row.text,
  choices: Choices.parse(JSON.parse(row.choices)),
  picture: row.picture === null ? null : PictureShown.parse(JSON.parse(row.picture)),
  file: row.file === null ? null : FileSent.parse(JSON.parse(row.file)),
  createdAt: row.created_at,
  sentAt: row.sent_at,
  sentAs: row.sent_as,
});

/** What came in, under its unique key, and what goes out. */
export const messageQueries = (db: Database.Database) => {
  const columns = 'id, site, channel, chat, message, edit, sent_at AS sentAt, text, person, state';
  const messageOne = db.prepare<[number, string, string, string, string], MessageRow>(
    `SELECT ${columns} FROM message WHERE site = ? AND channel = ? AND chat = ? AND message = ? AND edit = ?`,
  );
  const history = db.prepare<[number, string, string, string], MessageRow>(
    `SELECT ${columns} FROM message WHERE site = ? AND channel = ? AND chat = ? AND message = ? ORDER BY id`,
  );
  // A message that failed by our own fault can be gone through again; one that is done can not.
  const messagePut = db.prepare<Record<string, string | number | null>>(
    `INSERT INTO message (site, channel, chat, thread, message, edit, sent_at, received_at, text, pictures, person, state)
     VALUES (@site, @channel, @chat, @thread, @message, @edit, @sentAt, @receivedAt, @text, @pictures, @person, @state)
     ON CONFLICT (site, channel, chat, message, edit)
     DO UPDATE SET person = excluded.person, state = excluded.state WHERE state = 'failed'`,
  );
  const received = 'site = @site AND received_at >= @from AND received_at < @before';
  const blanking = (sql: string) => db.prepare<{ site: number; from: string; before: string }>(sql);
  const blankTalk = blanking(
    `UPDATE message SET text = '', pictures = '[]' WHERE ${received} AND text <> '' AND state = 'done'
     AND NOT EXISTS (SELECT 1 FROM entry WHERE entry.message = message.id)`,
  );
  // An alarm holds the writer's words, and what happened to whom: gone with the talk, once its readers had it.
  const blankAlarms = blanking(
    `UPDATE outbox SET text = '' WHERE site = @site AND created_at >= @from AND created_at < @before
     AND about = 'alarm' AND sent_at IS NOT NULL AND text <> ''`,
  );
  const blankAll = blanking(`UPDATE message SET text = '', pictures = '[]' WHERE ${received} AND text <> ''`);
  // What a record says in words (a note, what was done about a trouble) is the line itself, and stays with it.
  const linesThen = `site = @site AND number IN (SELECT number FROM entry WHERE ${received})`;
  const blankSaid = blanking(
    `UPDATE said SET words = (SELECT json_group_array(json(value)) FROM json_each(said.words)
       WHERE json_extract(value, '$[0][#-1]') <> 'said') WHERE ${linesThen}`,
  );
  const dropEmpty = blanking(`DELETE FROM said WHERE words = '[]' AND ${linesThen}`);
  const inPictures = db
    .prepare<{ site: number; from: string; before: string }>(
      `SELECT min(happened_at) FROM entry WHERE ${received}
       AND (held IS NOT NULL OR json_extract(record, '$.kind') = 'resolved')`,
    )
    .pluck();

  const outNew = db.prepare<Record<string, string | number | null>>(
    `INSERT INTO outbox (site, channel, chat, thread, answers, message, about, week_from, private, text, choices,
       picture, file, created_at)
     VALUES (@site, @channel, @chat, @thread, @answers, @message, @about, @weekFrom, @private, @text, @choices,
       @picture, @file, @createdAt)`,
  );
  const outOne = db.prepare<[number], OutboxRow>('SELECT * FROM outbox WHERE id = ?');
  const outSentAs = db.prepare<[string, string, string], OutboxRow>(
    `SELECT outbox.* FROM sent_as JOIN outbox ON outbox.id = sent_as.outgoing
     WHERE sent_as.channel = ? AND sent_as.chat = ? AND sent_as.sent_as = ?`,
  );
  const outOfMessage = db.prepare<[number], OutboxRow>('SELECT * FROM outbox WHERE message = ? ORDER BY id');
  const outWaiting = db.prepare<[string, number], OutboxRow>(
    'SELECT * FROM outbox WHERE channel = ? AND sent_at IS NULL ORDER BY id LIMIT ?',
  );
  const outSent = db.prepare<[string, string | null, number]>(
    'UPDATE outbox SET sent_at = ?, sent_as = ? WHERE id = ? AND sent_at IS NULL',
  );
  // A link is kept hashed: once a reply that carries one is out, it is no longer to be read here.
  const outForget = db.prepare<[number]>(
    `UPDATE outbox SET text = replace(text, json_extract(picture, '$.data.token'), '…'), picture = NULL
     WHERE id = ? AND json_extract(picture, '$.draw') = 'share'`,
  );
  const outPart = db.prepare<[string, number]>(
    `INSERT OR IGNORE INTO sent_as (channel, chat, sent_as, outgoing)
     SELECT channel, chat, ?, id FROM outbox WHERE id = ?`,
  );

  const outgoing = (id: number): OutgoingRow | null => {
    const row = outOne.get(id);
    return row ? outgoingOf(row) : null;
  };
  const message = (
    site: number,
    channel: string,
    chat: string,
    id: string,
    edit: string | null,
  ): StoredMessage | null => {
    const row = messageOne.get(site, channel, chat, id, edit ?? '');
    return row ? messageOf(row) : null;
  };

  return {
    message,
    messageHistory: (site: number, channel: string, chat: string, id: string): StoredMessage[] =>
      history.all(site, channel, chat, id).map(messageOf),
    saveMessage: (incoming: Incoming, person: number | null, state: 'done' | 'failed'): StoredMessage => {
      const { site, channel, chat, thread, message: id, edit, sentAt, receivedAt, text, pictures } = incoming;
      const { changes } = messagePut.run({
        site,
        channel,
        chat,
        thread,
        message: id,
        edit: edit ?? '',
        sentAt,
        receivedAt,
        text,
        pictures: JSON.stringify(pictures),
        person,
        state,
      });
      if (changes === 0) throw new RangeError('message: it is in the book already');
      return message(site, channel, chat, id, edit)!;
    },
    blankTexts: (
      site: number,
      span: { from: string; before: string },
      which: 'talk' | 'all',
    ): string | null => {
      const statements = which === 'talk' ? [blankTalk, blankAlarms] : [blankAll, blankSaid, dropEmpty];
      for (const statement of statements) statement.run({ site, ...span });
      return which === 'talk' ? null : (inPictures.get({ site, ...span }) as string | null);
    },

    putOut: (row: NewOutgoing): OutgoingRow => {
      const { lastInsertRowid } = outNew.run({
        site: row.site,
        channel: row.channel,
        chat: row.chat,
        thread: row.thread,
        answers: row.answers,
        message: row.message,
        about: About.parse(row.about),
        weekFrom: row.weekFrom,
        private: row.private ? 1 : 0,
        text: row.text,
        choices: JSON.stringify(Choices.parse(row.choices)),
        picture: row.picture === null ? null : JSON.stringify(row.picture),
        file: row.file === null ? null : JSON.stringify(row.file),
        createdAt: row.createdAt,
      });
      return outgoing(Number(lastInsertRowid))!;
    },
    outgoing,
    outgoingSentAs: (channel: string, chat: string, sentAs: string): OutgoingRow | null => {
      const row = outSentAs.get(channel, chat, sentAs);
      return row ? outgoingOf(row) : null;
    },
    outgoingOfMessage: (id: number): OutgoingRow[] => outOfMessage.all(id).map(outgoingOf),
    waiting: (channel: string, howMany: number): OutgoingRow[] =>
      outWaiting.all(channel, howMany).map(outgoingOf),
    markSent: (rows: { id: number; sentAs: string | null; also?: string[] }[], at: string): void => {
      for (const { id, sentAs, also = [] } of rows) {
        outSent.run(at, sentAs, id);
        outForget.run(id);
        for (const part of [sentAs, ...also]) if (part !== null) outPart.run(part, id);
      }
    },
  };
};
