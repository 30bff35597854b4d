import { z } from 'zod';
import type { Assistant, Incoming, OutgoingRow, StoredMessage } from '#assistant';
import { instantOf } from '#core';
import type { OpenedBook } from '#logbook';
import { Language } from '#records';

const AT = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d+)?)?(Z|[+-]\d{2}:?\d{2})?$/;
const id = z.union([z.string(), z.number()]).transform(String);
const Line = z.object({
  at: z.string().regex(AT),
  from: z.string().min(1).optional(),
  text: z.string().optional(),
  id: id.nullish(),
  edits: id.nullish(),
  replyTo: id.nullish(),
  choose: z.object({ id, label: z.string() }).nullish(),
  coordinator: z.boolean().nullish(),
  chat: z.string().nullish(),
  private: z.boolean().nullish(),
  language: Language.nullish(),
});
type Line = z.infer<typeof Line>;

const CHANNEL = 'replay';
const GROUP = 'group';

type MessageKey = { chat: string; message: string; edit: string | null };
type Shown = { text: string; choices: string[]; picture: string | null };

/** A conversation with one site, line by line, at the times that the lines say. */
export class Conversation {
  readonly #parts: { book: OpenedBook; assistant: Assistant };
  readonly #site: number;
  readonly #zone: string;
  #last = '';

  constructor(parts: { book: OpenedBook; assistant: Assistant }, site: number, zone: string) {
    this.#parts = parts;
    this.#site = site;
    this.#zone = zone;
    this.#last = this.#book.memo<string>(site, 'replayed-to') ?? '';
    this.#book.setMemo(site, 'home', { channel: CHANNEL, chat: GROUP });
  }

  get #book(): OpenedBook {
    return this.#parts.book;
  }

  take(text: string): Record<string, unknown> {
    let raw: unknown;
    try {
      raw = JSON.parse(text);
    } catch {
      return { error: 'not JSON' };
    }
    const parsed = Line.safeParse(raw);
    if (!parsed.success)
      return { error: `bad field: ${parsed.error.issues[0]?.path.join('.') || 'the line'}` };
    const line = parsed.data;
    let at: string;
    try {
      at = instantOfLine(line.at, this.#zone);
    } catch {
      return { error: 'bad field: at' };
    }
    const timeOnly = line.from === undefined && line.text === undefined && !line.choose;
    if (!timeOnly && (line.from === undefined || (line.text === undefined && !line.choose))) {
      return { error: 'bad field: a message has "from" and "text"' };
    }
    const posts = this.#pass(at);
    if (timeOnly) return { id: null, replies: [], posts, entries: [] };
    const incoming = this.#incoming(line, at);
    if ('error' in incoming) return incoming;
    const received = this.#parts.assistant.receive(incoming);
    this.#sent(received.outgoing, at);
    const after = received.outgoing.filter((row) => row.about !== null);
    return {
      id: line.id ?? incoming.message,
      replies: received.outgoing.filter((row) => row.about === null).map(shown),
      posts: [...posts, ...after.map(post)],
      entries: received.entries.map((entry) => entry.number),
    };
  }

  /** Lets time pass up to a moment; a late delivery lets none pass. */
  #pass(at: string): Record<string, unknown>[] {
    if (at <= this.#last) return [];
    this.#last = at;
    this.#book.setMemo(this.#site, 'replayed-to', at);
    const rows = this.#parts.assistant.tick(at, this.#site);
    this.#sent(rows, at);
    return rows.map(post);
  }

  #incoming(line: Line, at: string): Incoming | { error: string } {
    const from = line.from ?? 'somebody';
    const chat = line.private ? `private:${from}` : (line.chat ?? GROUP);
    const own = line.id ?? `n${this.#book.memo<number>(this.#site, 'replay-count') ?? 1}`;
    if (line.id == null) {
      const count = this.#book.memo<number>(this.#site, 'replay-count') ?? 1;
      this.#book.setMemo(this.#site, 'replay-count', count + 1);
    }
    let choose: Incoming['choose'] = null;
    if (line.choose) {
      const found = this.#button(line.choose.id, line.choose.label);
      if (!found) return { error: `no button "${line.choose.label}" under the reply to ${line.choose.id}` };
      choose = found;
    }
    const edited = line.edits == null ? null : this.#find(line.edits);
    if (line.edits != null && !edited) return { error: `there is no message ${line.edits} to edit` };
    // An id is unique within the site, whatever the chat: by it a later line finds the message.
    const known = line.id == null ? null : this.#key(line.id);
    if (line.id != null && !known) {
      const key = { chat: edited?.chat ?? chat, message: edited?.message ?? own, edit: edited ? own : null };
      this.#book.setMemo(this.#site, `replay-id:${line.id}`, key);
    }
    return {
      site: this.#site,
      channel: CHANNEL,
      chat: known?.chat ?? edited?.chat ?? chat,
      thread: null,
      message: edited?.message ?? own,
      edit: line.edits == null ? null : own,
      sentAt: at,
      receivedAt: at > this.#last ? at : this.#last,
      sender: {
        id: from,
        name: from,
        coordinator: line.coordinator === true,
        language: line.language ?? null,
      },
      private: line.private === true,
      text: line.text ?? '',
      pictures: [],
      replyTo: this.#replyTo(line.replyTo ?? null),
      choose,
    };
  }

  #key(wanted: string): MessageKey | null {
    return this.#book.memo<MessageKey>(this.#site, `replay-id:${wanted}`);
  }

  #find(wanted: string): StoredMessage | null {
    const key = this.#key(wanted);
    return key ? this.#book.message(this.#site, CHANNEL, key.chat, key.message, key.edit) : null;
  }

  #replyTo(wanted: string | null): Incoming['replyTo'] {
    if (wanted === null) return null;
    if (/^#\d+$/.test(wanted)) return { entry: Number(wanted.slice(1)) };
    const message = this.#find(wanted);
    const [row] = message ? this.#book.outgoingOfMessage(message.id) : [];
    return row ? { outgoing: row.id } : { message: message?.message ?? wanted };
  }

  #button(wanted: string, label: string): Incoming['choose'] {
    const message = this.#find(wanted);
    if (!message) return null;
    for (const row of this.#book.outgoingOfMessage(message.id)) {
      const index = row.choices.findIndex((choice) => choice.label === label);
      if (index >= 0) return { outgoing: row.id, index };
    }
    return null;
  }

  #sent(rows: readonly OutgoingRow[], at: string): void {
    this.#book.markSent(
      rows.map((row) => ({ id: row.id, sentAs: `out${row.id}` })),
      at,
    );
  }
}

function instantOfLine(at: string, zone: string): string {
  if (/(Z|[+-]\d{2}:?\d{2})$/.test(at)) return new Date(at).toISOString();
  const minute = instantOf(at.slice(0, 16), zone);
  const seconds = Number(at.slice(17) || 0);
  return new Date(Date.parse(minute) + seconds * 1000).toISOString();
}

const shown = (row: OutgoingRow): Shown => ({
  text: row.file && 'text' in row.file ? `${row.text}\n${row.file.text}` : row.text,
  choices: row.choices.map((choice) => choice.label),
  picture: row.picture?.alt ?? null,
});

const post = (row: OutgoingRow): Record<string, unknown> => ({
  ...shown(row),
  about: row.about,
  ...(row.weekFrom ? { weekFrom: row.weekFrom } : {}),
  ...(row.private ? { private: true } : {}),
});
