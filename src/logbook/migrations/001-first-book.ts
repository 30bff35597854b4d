/**
 * Every table is STRICT: a decimal comma that slips into a number column is an error, not a text that sums as 66.
 * Lines of the log book are never changed or taken out; triggers say so even to somebody with another program.
 */
export const firstBook = `
CREATE TABLE site (
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL UNIQUE COLLATE NOCASE,
  site TEXT NOT NULL,
  added_at TEXT NOT NULL
) STRICT;

CREATE TABLE chat (
  channel TEXT NOT NULL,
  chat TEXT NOT NULL,
  site INTEGER NOT NULL REFERENCES site (id),
  kind TEXT NOT NULL CHECK (kind IN ('group', 'direct')),
  topic TEXT,
  active INTEGER NOT NULL CHECK (active IN (0, 1)),
  moved_to TEXT,
  added_at TEXT NOT NULL,
  PRIMARY KEY (channel, chat)
) STRICT, WITHOUT ROWID;
CREATE INDEX chat_of_site ON chat (site, channel);

CREATE TABLE person (
  id INTEGER PRIMARY KEY,
  site INTEGER NOT NULL REFERENCES site (id),
  name TEXT NOT NULL,
  coordinator INTEGER NOT NULL DEFAULT 0 CHECK (coordinator IN (0, 1)),
  language TEXT
) STRICT;
CREATE INDEX person_of_site ON person (site);

CREATE TABLE person_channel (
  channel TEXT NOT NULL,
  channel_id TEXT NOT NULL,
  site INTEGER NOT NULL REFERENCES site (id),
  person INTEGER NOT NULL REFERENCES person (id),
  PRIMARY KEY (channel, channel_id, site)
) STRICT, WITHOUT ROWID;
CREATE INDEX channels_of_person ON person_channel (person);

CREATE TABLE message (
  id INTEGER PRIMARY KEY,
  site INTEGER NOT NULL REFERENCES site (id),
  channel TEXT NOT NULL,
  chat TEXT NOT NULL,
  thread TEXT,
  message TEXT NOT NULL,
  edit TEXT NOT NULL,
  sent_at TEXT NOT NULL,
  received_at TEXT NOT NULL,
  text TEXT NOT NULL,
  pictures TEXT NOT NULL,
  person INTEGER REFERENCES person (id),
  state TEXT NOT NULL CHECK (state IN ('done', 'failed')),
  UNIQUE (site, channel, chat, message, edit)
) STRICT;
CREATE INDEX message_of_person ON message (person);
CREATE INDEX message_received ON message (site, received_at) WHERE text <> '';

CREATE TABLE entry (
  site INTEGER NOT NULL REFERENCES site (id),
  number INTEGER NOT NULL CHECK (number > 0),
  happened_at TEXT NOT NULL CHECK (happened_at GLOB '????-??-??T??:??:??.???Z'),
  local_date TEXT NOT NULL CHECK (local_date GLOB '????-??-??'),
  received_at TEXT NOT NULL CHECK (received_at GLOB '????-??-??T??:??:??.???Z'),
  person INTEGER REFERENCES person (id),
  message INTEGER REFERENCES message (id),
  record TEXT NOT NULL,
  typed TEXT,
  assumed TEXT NOT NULL,
  held TEXT,
  voids TEXT NOT NULL,
  pictures INTEGER NOT NULL CHECK (pictures >= 0),
  hash TEXT NOT NULL CHECK (length(hash) = 64),
  PRIMARY KEY (site, number)
) STRICT;
CREATE INDEX entry_happened ON entry (site, happened_at, number);
CREATE INDEX entry_local_date ON entry (site, local_date, happened_at, number);
CREATE INDEX entry_of_person ON entry (site, person, local_date, number);
CREATE INDEX entry_of_message ON entry (message, number) WHERE message IS NOT NULL;

CREATE TRIGGER entry_is_never_changed BEFORE UPDATE ON entry
BEGIN SELECT RAISE(ABORT, 'a line of the log book is never changed'); END;
CREATE TRIGGER entry_is_never_taken_out BEFORE DELETE ON entry
BEGIN SELECT RAISE(ABORT, 'a line of the log book is never taken out'); END;
CREATE TRIGGER entry_follows_the_last BEFORE INSERT ON entry
WHEN NEW.number <> (SELECT coalesce(max(number), 0) + 1 FROM entry WHERE site = NEW.site)
BEGIN SELECT RAISE(ABORT, 'a line of the log book follows the last one'); END;

CREATE TABLE voided (
  site INTEGER NOT NULL,
  number INTEGER NOT NULL,
  by INTEGER NOT NULL,
  PRIMARY KEY (site, number),
  FOREIGN KEY (site, number) REFERENCES entry (site, number),
  FOREIGN KEY (site, by) REFERENCES entry (site, number),
  CHECK (by > number)
) STRICT, WITHOUT ROWID;
CREATE TRIGGER voided_is_never_changed BEFORE UPDATE ON voided
BEGIN SELECT RAISE(ABORT, 'a line taken back stays so'); END;
CREATE TRIGGER voided_is_never_taken_out BEFORE DELETE ON voided
BEGIN SELECT RAISE(ABORT, 'a line taken back stays so'); END;

-- The writer's own words and pictures stand beside the line, outside its chain: they can be forgotten.
CREATE TABLE said (
  site INTEGER NOT NULL,
  number INTEGER NOT NULL,
  words TEXT NOT NULL,
  PRIMARY KEY (site, number),
  FOREIGN KEY (site, number) REFERENCES entry (site, number)
) STRICT, WITHOUT ROWID;

CREATE TABLE picture_file (
  site INTEGER NOT NULL,
  number INTEGER NOT NULL,
  position INTEGER NOT NULL,
  file TEXT NOT NULL,
  PRIMARY KEY (site, number, position),
  FOREIGN KEY (site, number) REFERENCES entry (site, number)
) STRICT, WITHOUT ROWID;

CREATE TABLE outbox (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  site INTEGER NOT NULL REFERENCES site (id),
  channel TEXT NOT NULL,
  chat TEXT NOT NULL,
  thread TEXT,
  answers TEXT,
  message INTEGER REFERENCES message (id),
  about TEXT,
  week_from TEXT,
  private INTEGER NOT NULL CHECK (private IN (0, 1)),
  text TEXT NOT NULL,
  choices TEXT NOT NULL,
  picture TEXT,
  file TEXT,
  created_at TEXT NOT NULL,
  sent_at TEXT,
  sent_as TEXT
) STRICT;
CREATE INDEX outbox_waiting ON outbox (channel, id) WHERE sent_at IS NULL;
CREATE INDEX outbox_of_message ON outbox (message) WHERE message IS NOT NULL;

-- A long reply goes out as several messages: each leads back to its row.
CREATE TABLE sent_as (
  channel TEXT NOT NULL,
  chat TEXT NOT NULL,
  sent_as TEXT NOT NULL,
  outgoing INTEGER NOT NULL REFERENCES outbox (id),
  PRIMARY KEY (channel, chat, sent_as)
) STRICT, WITHOUT ROWID;

CREATE TABLE snapshot (
  site INTEGER NOT NULL REFERENCES site (id),
  at TEXT NOT NULL,
  picture TEXT NOT NULL,
  PRIMARY KEY (site, at)
) STRICT, WITHOUT ROWID;

CREATE TABLE memo (
  site INTEGER NOT NULL REFERENCES site (id),
  key TEXT NOT NULL,
  value TEXT NOT NULL,
  PRIMARY KEY (site, key)
) STRICT, WITHOUT ROWID;

CREATE TABLE link (
  hash TEXT PRIMARY KEY,
  site INTEGER NOT NULL REFERENCES site (id),
  made_at TEXT NOT NULL,
  ended_at TEXT
) STRICT, WITHOUT ROWID;
CREATE INDEX link_of_site ON link (site);

CREATE TABLE meta (
  key TEXT PRIMARY KEY,
  value TEXT NOT NULL
) STRICT, WITHOUT ROWID;
`;
