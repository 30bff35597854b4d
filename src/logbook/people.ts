import type Database from 'better-sqlite3';
import type { Chat, Person, SiteRow } from '#assistant';
import { Language, Site } from '#records';

type PersonRow = { id: number; name: string; coordinator: number; language: string | null };
type ChatRow = Omit<Chat, 'active'> & { active: number };

const personOf = (row: PersonRow): Person => ({
  id: row.id,
  name: row.name,
  coordinator: row.coordinator === 1,
  language: row.language === null ? null : Language.parse(row.language),
});

/** Sites, the people of each, and the chats through which they speak. */
export const peopleQueries = (db: Database.Database, now: () => string) => {
  const allSites = db.prepare<[], { id: number; site: string }>('SELECT id, site FROM site ORDER BY id');
  const siteOne = db.prepare<[number], { id: number; site: string }>(
    'SELECT id, site FROM site WHERE id = ?',
  );
  const siteNamed = db.prepare<[string], { id: number; site: string }>(
    'SELECT id, site FROM site WHERE name = ?',
  );
  const siteNew = db.prepare<[string, string, string]>(
    'INSERT INTO site (name, site, added_at) VALUES (?, ?, ?)',
  );

  const known = db.prepare<[string, string, number], PersonRow>(
    `SELECT person.* FROM person_channel JOIN person ON person.id = person_channel.person
     WHERE channel = ? AND channel_id = ? AND person_channel.site = ?`,
  );
  const personOne = db.prepare<[number], PersonRow>('SELECT * FROM person WHERE id = ?');
  const personAll = db.prepare<[number], PersonRow>('SELECT * FROM person WHERE site = ? ORDER BY id');
  const personNew = db.prepare<[number, string]>('INSERT INTO person (site, name) VALUES (?, ?)');
  const channelNew = db.prepare<[string, string, number, number]>(
    'INSERT INTO person_channel VALUES (?, ?, ?, ?)',
  );
  const personSet = db.prepare<[string, number, string | null, number]>(
    'UPDATE person SET name = ?, coordinator = ?, language = ? WHERE id = ?',
  );
  const channelIds = db
    .prepare<[string, number]>('SELECT channel_id FROM person_channel WHERE channel = ? AND person = ?')
    .pluck();
  const sitesKnowing = db
    .prepare<[string, string]>(
      'SELECT site FROM person_channel WHERE channel = ? AND channel_id = ? ORDER BY site',
    )
    .pluck();
  const forgetting = [
    'DELETE FROM said WHERE (site, number) IN (SELECT site, number FROM entry WHERE person = @id AND site = @site)',
    "UPDATE message SET text = '', pictures = '[]' WHERE person = @id",
    // Replies and posts that were sent already may name the person or quote them.
    `UPDATE outbox SET text = '' WHERE site = @site AND sent_at IS NOT NULL AND text <> ''
     AND (message IN (SELECT id FROM message WHERE person = @id)
       OR EXISTS (SELECT 1 FROM person WHERE id = @id AND name <> '' AND instr(outbox.text, name) > 0))`,
    `DELETE FROM meta WHERE EXISTS (SELECT 1 FROM person_channel
     WHERE person = @id AND meta.key LIKE channel || ':%:' || channel_id)`,
    'DELETE FROM person_channel WHERE person = @id',
    "UPDATE person SET name = '', language = NULL, coordinator = 0 WHERE id = @id",
  ].map((sql) => db.prepare<{ id: number; site: number }>(sql));
  const firstLine = db.prepare<[number, number]>(
    'SELECT min(happened_at) FROM entry WHERE site = ? AND person = ?',
  );
  firstLine.pluck();
  const siteOfPerson = db.prepare<[number]>('SELECT site FROM person WHERE id = ?').pluck();

  const chatOne = db.prepare<[string, string], ChatRow>(
    'SELECT channel, chat, site, kind, topic, active, moved_to AS movedTo FROM chat WHERE channel = ? AND chat = ?',
  );
  const chatAll = db.prepare<[number], ChatRow>(
    'SELECT channel, chat, site, kind, topic, active, moved_to AS movedTo FROM chat WHERE site = ? ORDER BY added_at, chat',
  );
  const chatPut = db.prepare<[string, string, number, string, string]>(
    `INSERT INTO chat (channel, chat, site, kind, topic, active, moved_to, added_at) VALUES (?, ?, ?, ?, NULL, 1, NULL, ?)
     ON CONFLICT (channel, chat) DO UPDATE SET site = excluded.site, active = 1`,
  );
  const chatSet = db.prepare<[number, string | null, string | null, string, string]>(
    'UPDATE chat SET active = ?, topic = ?, moved_to = ? WHERE channel = ? AND chat = ?',
  );
  const waitingMoves = db.prepare<[string, string, string]>(
    'UPDATE outbox SET chat = ?, answers = NULL WHERE channel = ? AND chat = ? AND sent_at IS NULL',
  );

  // A site's JSON never changes, and reading one builds a time zone: kept by its text, so a rolled back one is harmless.
  const read = new Map<string, Site>();
  const siteOf = (row: { id: number; site: string }): SiteRow => {
    let site = read.get(row.site);
    if (!site) {
      site = Site.parse(JSON.parse(row.site));
      read.set(row.site, site);
    }
    return { id: row.id, site };
  };
  const chatOf = (row: ChatRow): Chat => ({ ...row, active: row.active === 1 });

  const siteById = (id: number): SiteRow => {
    const row = siteOne.get(id);
    if (!row) throw new RangeError(`site ${id} is not in this book`);
    return siteOf(row);
  };
  const personById = (id: number): Person | null => {
    const row = personOne.get(id);
    return row ? personOf(row) : null;
  };
  const chat = (channel: string, id: string): Chat | null => {
    const row = chatOne.get(channel, id);
    return row ? chatOf(row) : null;
  };

  return {
    sites: (): SiteRow[] => allSites.all().map(siteOf),
    siteById,
    siteByName: (name: string): SiteRow | null => {
      const row = siteNamed.get(name);
      return row ? siteOf(row) : null;
    },
    addSite: (site: Site, at: string): SiteRow => {
      const { lastInsertRowid } = siteNew.run(site.name, JSON.stringify(site), at);
      return siteById(Number(lastInsertRowid));
    },

    person: (site: number, channel: string, id: string, name: string): Person => {
      const row = known.get(channel, id, site);
      if (!row) {
        const made = Number(personNew.run(site, name).lastInsertRowid);
        channelNew.run(channel, id, site, made);
        return personById(made)!;
      }
      if (name === '' || row.name === name) return personOf(row);
      personSet.run(name, row.coordinator, row.language, row.id);
      return personById(row.id)!;
    },
    personById,
    people: (site: number): Person[] => personAll.all(site).map(personOf),
    changePerson: (id: number, change: Partial<Pick<Person, 'name' | 'coordinator' | 'language'>>): void => {
      const person = personById(id);
      if (!person) throw new RangeError(`person ${id} is not in this book`);
      const next = { ...person, ...change };
      personSet.run(next.name, next.coordinator ? 1 : 0, next.language, id);
    },
    forgetPerson: (id: number): string | null => {
      const site = siteOfPerson.get(id) as number | undefined;
      if (site === undefined) return null;
      // What is taken out is overwritten in the file as well.
      db.pragma('secure_delete = ON');
      for (const statement of forgetting) statement.run({ id, site });
      return firstLine.get(site, id) as unknown as string | null;
    },
    channelIds: (person: number, channel: string): string[] => channelIds.all(channel, person) as string[],
    sitesOfPerson: (channel: string, id: string): number[] => sitesKnowing.all(channel, id) as number[],

    chat,
    chats: (site: number): Chat[] => chatAll.all(site).map(chatOf),
    addChat: (site: number, channel: string, id: string, kind: Chat['kind']): Chat => {
      chatPut.run(channel, id, site, kind, now());
      return chat(channel, id)!;
    },
    changeChat: (channel: string, id: string, change: Partial<Pick<Chat, 'active' | 'topic'>>): void => {
      const row = chat(channel, id);
      if (!row) return;
      const next = { ...row, ...change };
      chatSet.run(next.active ? 1 : 0, next.topic, row.movedTo, channel, id);
    },
    moveChat: (channel: string, from: string, to: string): Chat | null => {
      const old = chat(channel, from);
      if (!old) return null;
      if (old.movedTo !== to) {
        chatPut.run(channel, to, old.site, old.kind, now());
        chatSet.run(1, old.topic, null, channel, to);
        chatSet.run(0, old.topic, to, channel, from);
      }
      // Replies that still wait go to the new chat, but the messages they answer have other numbers there.
      waitingMoves.run(to, channel, from);
      return chat(channel, to);
    },
  };
};
