import type { Assistant, Book, Complain, OutgoingRow, PaperFile, PictureSpec } from '#assistant';

const CHANNEL = 'terminal';
const CHAT = 'terminal';

export type Terminal = {
  /** Prints what waits in the outbox for the terminal. */
  flush(): Promise<void>;
  /** Settles when the input has ended and everything is printed. */
  ended: Promise<void>;
};

type Parts = {
  book: Book;
  assistant: Assistant;
  site: number;
  lines: AsyncIterable<string>;
  print: (text: string) => Promise<void>;
  prompt: () => void;
  now: () => string;
  name: string;
  /** A picture in characters, or where it was saved; `row` is the reply that it goes with. */
  drawn?: (picture: PictureSpec, row: number) => Promise<string | null>;
  /** Where a file of the book was saved, as it is said; null where it could not be made. */
  made?: (file: PaperFile, site: number) => Promise<string | null>;
  /** Told of a picture that could not be drawn or saved; its words are printed in its place. */
  complain?: Complain;
};

/** Starts reading lines at once, so that nothing piped in is lost. */
export function startTerminal(parts: Parts): Terminal {
  const { book, assistant, site, print, now } = parts;
  let last: OutgoingRow | null = null;
  let count = 0;

  const making: Promise<void>[] = [];
  let flushing: Promise<void> = Promise.resolve();
  /** One after the other: two at once would print a reply twice. */
  function flush(): Promise<void> {
    flushing = flushing.then(printWaiting);
    return flushing;
  }

  async function printWaiting(): Promise<void> {
    for (const row of book.waiting(CHANNEL, 100)) {
      await print(shown(row));
      const picture = await pictured(row);
      if (picture) await print(picture);
      if (row.file && 'paper' in row.file) making.push(printMade(row.file, row.site));
      if (row.about === null) last = row;
      book.markSent([{ id: row.id, sentAs: `t${row.id}` }], now());
    }
  }

  /** Beside what goes on being said: a file takes its time. */
  async function printMade(file: PaperFile, site: number): Promise<void> {
    let saved: string | null = null;
    try {
      saved = (await parts.made?.(file, site)) ?? null;
    } catch (error) {
      parts.complain?.('a file could not be made', error);
    }
    await print(`  ${saved ?? file.failed}`);
  }

  async function pictured(row: OutgoingRow): Promise<string | null> {
    if (!row.picture) return null;
    try {
      return (await parts.drawn?.(row.picture, row.id)) ?? null;
    } catch (error) {
      parts.complain?.('a picture could not be drawn or saved', error);
      return row.picture.alt;
    }
  }

  /** A line that names a button of the last reply presses it: `drop it`, `66.5`. */
  function pressed(text: string): { outgoing: number; index: number } | null {
    const wanted = text.trim().toLowerCase();
    const index = last?.choices.findIndex((choice) => choice.label.toLowerCase() === wanted) ?? -1;
    return last && index >= 0 && last.choices[index]!.act.do !== 'undo' ? { outgoing: last.id, index } : null;
  }

  function take(text: string): void {
    count += 1;
    const at = now();
    const received = assistant.receive({
      site,
      channel: CHANNEL,
      chat: CHAT,
      thread: null,
      message: `${at}-${process.pid}-${count}`,
      edit: null,
      sentAt: at,
      receivedAt: at,
      sender: { id: parts.name, name: parts.name, coordinator: false, language: null },
      private: false,
      text: text.replaceAll('\\n', '\n'),
      pictures: [],
      replyTo: null,
      choose: pressed(text),
    });
    if (received.outgoing.some((row) => row.about === null)) last = null;
  }

  async function read(): Promise<void> {
    parts.prompt();
    for await (const line of parts.lines) {
      if (line.trim() !== '') take(line);
      await flush();
      parts.prompt();
    }
    await flush();
    await Promise.all(making);
  }

  return { flush, ended: read() };
}

/** A reply as text alone: buttons stand under it in brackets, what undoes is left to the word `undo`. */
function shown(row: OutgoingRow): string {
  const labels = row.choices
    .filter((choice) => choice.act.do !== 'undo')
    .map((choice) => `[${choice.label}]`);
  const lines = row.text.split('\n').map((line) => `  ${line}`);
  if (labels.length > 0) lines.push(`  ${labels.join(' ')}`);
  if (row.file && 'text' in row.file) lines.push(...row.file.text.split('\n').map((line) => `  ${line}`));
  return lines.join('\n');
}
