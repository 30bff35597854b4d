import type { Assistant } from '#assistant';
import type { OpenedBook } from '#logbook';

const DAY_MS = 86_400_000;
const MEMO = 'talk-emptied-to';
const WORDS_MEMO = 'words-emptied-to';

/** Raw text of talk that made no line is not kept beyond a day; what was gone through before is not looked at again. */
export function emptyOldTalk(book: OpenedBook, now: string): void {
  const before = new Date(Date.parse(now) - DAY_MS).toISOString();
  for (const { id } of book.sites()) {
    const from = book.memo<string>(id, MEMO) ?? '';
    if (from >= before) continue;
    book.write(() => {
      book.blankTexts(id, { from, before }, 'talk');
      book.setMemo(id, MEMO, before);
    });
  }
}

/** The words of messages that made lines are kept as evidence for as long as the site has set; the lines stay. */
export function emptyOldWords(
  book: OpenedBook,
  assistant: Pick<Assistant, 'keepsDays' | 'forgetPictures'>,
  now: string,
): void {
  for (const { id } of book.sites()) {
    const days = assistant.keepsDays(id, now);
    if (days === null) continue;
    const before = new Date(Date.parse(now) - days * DAY_MS).toISOString();
    const from = book.memo<string>(id, WORDS_MEMO) ?? '';
    if (from >= before) continue;
    book.write(() => {
      const since = book.blankTexts(id, { from, before }, 'all');
      if (since !== null) assistant.forgetPictures(id, since);
      book.setMemo(id, WORDS_MEMO, before);
    });
  }
}
